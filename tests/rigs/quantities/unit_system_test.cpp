// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/quantities/unit_system.hpp"

#include <gtest/gtest.h>

#include "rigs/quantities/quantity_text.hpp"

namespace {

using namespace physics;
using rigs::UnitGroup;
using rigs::unitsFromText;
using rigs::UnitSystem;

TEST(UnitsOfChoice, ChangeTheirKindsAndNoOthers) {
  const UnitSystem units = UnitSystem::SI.with(UnitGroup::Temperature, 1);
  EXPECT_EQ(rigs::format(celsius(100.0), units), "212 °F");
  EXPECT_EQ(rigs::format(kelvins(5.0), units), "9 °F");
  EXPECT_EQ(rigs::format(litres(27.0), units), "27 L");
  EXPECT_EQ(rigs::unitLabel(rigs::QuantityKind::TemperatureRate, units), "°F/min");
  EXPECT_EQ(rigs::unitLabel(rigs::QuantityKind::Volume, units), "L");
}

// An imperial gallon is 4.54609 L by definition, 1 kWh 3.6 MJ; 3412.14 Btu/h are a kilowatt and
// 14.696 psi an atmosphere (NIST SP 811).
TEST(UnitsOfChoice, AreImperialGallonsMegajoulesBtuAndPsi) {
  const UnitSystem units = *unitsFromText("SI,imp gal,MJ,Btu/h,psi");
  EXPECT_EQ(rigs::format(litres(45.4609), units), "10 imp gal");
  EXPECT_EQ(rigs::format(kilowattHours(1.0), units), "3.6 MJ");
  EXPECT_EQ(rigs::format(watts(1000.0), units, {.significantDigits = 6, .decimals = {}}),
            "3412.14 Btu/h");
  EXPECT_EQ(rigs::format(pascals(101325.0), units), "14.7 psi");
  EXPECT_EQ(rigs::unitLabel(rigs::QuantityKind::VolumeFlow, units), "imp gal/h");
  EXPECT_EQ(rigs::numberIn(kilowattHours(2.0), units), 7.2);
}

TEST(UnitsOfChoice, AreNoneWhereTheSystemHasThemAnyway) {
  EXPECT_EQ(UnitSystem::SI.with(UnitGroup::Mass, 0), UnitSystem::SI);
  EXPECT_EQ(UnitSystem::UsCustomary.with(UnitGroup::Mass, 1), UnitSystem::UsCustomary);
  const UnitSystem other = UnitSystem::UsCustomary.with(UnitGroup::Mass, 0);
  EXPECT_TRUE(other.hasChoices());
  EXPECT_EQ(other.with(UnitGroup::Mass, 1), UnitSystem::UsCustomary);
  EXPECT_EQ(other.base(), UnitSystem::UsCustomary);
}

TEST(UnitsAsText, AreReadAsTheyAreWrittenAndAsPeopleTypeThem) {
  EXPECT_EQ(unitsFromText("SI"), UnitSystem::SI);
  EXPECT_EQ(unitsFromText("us"), UnitSystem::UsCustomary);
  EXPECT_EQ(unitsFromText("SI,F,GAL"), unitsFromText("si, °F, gal"));
  EXPECT_EQ(unitsFromText("F"), unitsFromText("SI,F"));
  EXPECT_FALSE(unitsFromText(""));
  EXPECT_FALSE(unitsFromText("SI,"));
  EXPECT_FALSE(unitsFromText("SI,stone"));
  EXPECT_FALSE(unitsFromText("F,US"));
}

TEST(UnitsAsText, ComeBackAsTheyWere) {
  for (const UnitSystem base : {UnitSystem::SI, UnitSystem::UsCustomary}) {
    EXPECT_EQ(unitsFromText(rigs::unitsText(base)), base);
    for (std::size_t group = 0; group < rigs::kUnitGroups; ++group) {
      const auto all = rigs::unitsOf(static_cast<UnitGroup>(group));
      for (std::size_t choice = 0; choice < all.size(); ++choice) {
        const UnitSystem units = base.with(static_cast<UnitGroup>(group), choice);
        EXPECT_EQ(unitsFromText(rigs::unitsText(units)), units) << rigs::unitsText(units);
        EXPECT_EQ(units.choiceOf(static_cast<UnitGroup>(group)), choice);
      }
    }
  }
}

}  // namespace
