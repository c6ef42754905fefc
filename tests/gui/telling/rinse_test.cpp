// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/rinse.hpp"

#include <gtest/gtest.h>

#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

TEST(RinseWords, SayHowMuchAndHowHot) {
  const physics::Rinse rinse{.atTwentyDegrees = physics::litres(4.0),
                             .temperature = physics::celsius(76.0)};
  EXPECT_EQ(rigs::inEnglish(rinseInWords(rinse)), "4 L of water at 76 °C");
}

// Between its two ends, never as sure as a reading.
TEST(RinseWords, TellGravityWithWhatItLiesBetween) {
  physics::Rinsed rinsed{};
  rinsed.gravity = 1.0472;
  rinsed.gravityIfNone = 1.0449;
  rinsed.gravityIfAll = 1.0494;
  EXPECT_EQ(rigs::inEnglish(rinsedGravities(rinsed)), "1.047 (1.045–1.049)");
}

}  // namespace
}  // namespace gui::telling
