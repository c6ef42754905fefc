// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/kettle_size.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "rigs/quantities/quantity_text.hpp"

namespace {

using namespace rigs;
using physics::inLitres;
using physics::inMillimetres;
using physics::litres;

RC_GTEST_PROP(KettleSize, HasTheVolumeAndTheShape, ()) {
  const double volume = 0.1 * *rc::gen::inRange(10, 20001);
  const double ratio = 0.01 * *rc::gen::inRange(40, 251);
  const KettleSize size = kettleOf(litres(volume), ratio);
  // Half a tenth of a millimetre of the height, of 60 mm at the least.
  RC_ASSERT(std::abs(inLitres(size.volume()) / volume - 1.0) < 0.001);
  RC_ASSERT(std::abs(size.height / size.diameter / ratio - 1.0) < 0.03);
  const double width = inMillimetres(size.diameter);
  RC_ASSERT(std::abs(width - std::round(width)) < 1e-9);
}

TEST(KettleSize, IsWrittenAsPeopleWriteIt) {
  const KettleSize size = kettleOf(litres(45.0));
  EXPECT_EQ(inMillimetresText(size.diameter), "386 mm");
  EXPECT_EQ(inMillimetresText(size.height), "384.5 mm");
  EXPECT_EQ(format(size.volume(), UnitSystem::SI), "45 L");
}

TEST(KettleSize, IsReadFromAVolumeAndToldWhereItCannotBe) {
  Problems problems;
  EXPECT_NEAR(inLitres(readKettleVolume("12 gal", "/here", problems).value()), 45.42, 0.01);
  EXPECT_TRUE(problems.empty());
  for (const char* wrong : {"0.5 L", "3000 L", "45 kg", "a pot", ""})
    EXPECT_FALSE(readKettleVolume(wrong, "/here", problems)) << wrong;
  ASSERT_EQ(problems.size(), 5u);
  for (const Problem& one : problems) {
    EXPECT_EQ(one.where, "/here");
    EXPECT_EQ(one.severity, Severity::Error);
    EXPECT_NE(inEnglish(one.message).find("40 L"), std::string::npos) << inEnglish(one.message);
  }
  EXPECT_FALSE(readKettleVolume("45", "/here", problems));
  EXPECT_NE(inEnglish(problems.back().message).find("no unit"), std::string::npos);
}

}  // namespace
