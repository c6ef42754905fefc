// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/additions.hpp"

#include <gtest/gtest.h>

#include <string>

#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

physics::Addition sugar() {
  return {.what = "white sugar",
          .mass = physics::kilograms(0.5),
          .extract = 1.0,
          .temperature = physics::celsius(20.0),
          .beforeEnd = physics::minutes(10.0)};
}

TEST(AdditionWords, WeighSugarAndMeasureWater) {
  EXPECT_EQ(rigs::inEnglish(additionInWords(sugar())), "500 g of white sugar");
  physics::Addition water = sugar();
  water.what = "cold water";
  water.mass = physics::kilograms(2.9946);
  water.extract = 0.0;
  EXPECT_EQ(rigs::inEnglish(additionInWords(water)), "2.99 kg of cold water");
  water.isPoured = true;
  EXPECT_EQ(rigs::inEnglish(additionInWords(water)), "3 L of cold water");
}

TEST(AdditionWords, SayAboutHowFarItDips) {
  physics::Added added{};
  added.before = physics::celsius(99.8);
  added.mixed = physics::celsius(97.54);
  EXPECT_EQ(rigs::inEnglish(dipText(added)), "dips by about 2.3 K, to 97.5 °C");
  added.mixed = added.before;
  EXPECT_EQ(rigs::inEnglish(dipText(added)), "hardly dips");
}

}  // namespace
}  // namespace gui::telling
