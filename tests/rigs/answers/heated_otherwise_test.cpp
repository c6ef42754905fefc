// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/heated_otherwise.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/between.hpp"

namespace rigs {
namespace {

using namespace physics;
using test_support::between;

BrewDay dayOf(Energy heat) {
  BrewDay day;
  day.total.element = heat;
  return day;
}

// 4.4 kWh into the wort are 5.2 kWh by induction at 85 %, and 0.7 to 1.0 kg of propane where 50 to
// 35 % of a flame's heat arrives: by hand from the published shares.
TEST(HeatedOtherwise, IsWhatTheSharesSay) {
  const BrewDay day = dayOf(kilowattHours(4.4));
  const auto induction = usedInstead(day, {OtherHeat::Induction, 0.84, 0.85});
  ASSERT_TRUE(induction);
  EXPECT_NEAR(inKilowattHours(induction->least), 5.18, 0.005);
  const auto gas = usedInstead(day, {OtherHeat::GasFlame, 0.35, 0.50});
  ASSERT_TRUE(gas);
  EXPECT_NEAR(inKilowattHours(gas->least), 8.8, 1e-9);
  EXPECT_NEAR(inKilowattHours(gas->most), 12.57, 0.005);
  EXPECT_NEAR(inKilograms(propaneFor(gas->least)), 0.68, 0.005);
  EXPECT_NEAR(inKilograms(propaneFor(gas->most)), 0.975, 0.005);
}

// A 20 lb bottle holds about 430 000 Btu, 126 kWh (a dealer's table).
TEST(HeatedOtherwise, KnowsWhatABottleHolds) {
  EXPECT_NEAR(inKilograms(propaneFor(kilowattHours(126.0))), 20.0 * 0.4536, 0.1 * 9.07);
}

RC_GTEST_PROP(HeatedOtherwise, NeverTakesLessThanTheWortGets, ()) {
  const BrewDay day = dayOf(kilowattHours(between(0.0, 40.0)));
  for (const ReachesVessel& share : kReachesVessel) {
    const auto used = usedInstead(day, share);
    RC_ASSERT(used.has_value());
    RC_ASSERT(used->least >= day.total.element);
    RC_ASSERT(used->most >= used->least);
  }
}

TEST(HeatedOtherwise, TellsNothingOfADayThatStops) {
  BrewDay day = dayOf(kilowattHours(4.0));
  day.outcome = Outcome::DoesNotReachStrike;
  for (const ReachesVessel& share : kReachesVessel) EXPECT_FALSE(usedInstead(day, share));
}

}  // namespace
}  // namespace rigs
