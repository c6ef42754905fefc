// SPDX-License-Identifier: GPL-3.0-or-later
// A kettle's size by its volume, in the table of rigs.
#include "gui/window/forms/kettle_volume.hpp"

#include <gtest/gtest.h>

#include <QTest>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/rig_variants.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

std::optional<std::string> withVolume(const std::string& document, const char* typed) {
  const std::vector<std::string> none;
  rigs::Problems problems;
  auto made =
      gui::withKettleVolume(document, {.rig = 0, .origins = &none, .folder = "."}, typed, problems);
  EXPECT_EQ(made.has_value(), problems.empty());
  return made;
}

// A cylinder as high as it is wide holds 40 L at 370.6 mm.
TEST(AKettlesVolume, SetsDiameterAndHeightAlikeWhereNoShapeIsKnown) {
  const auto made = withVolume(R"({"rigs": [{"name": "x"}]})", "40 L");
  ASSERT_TRUE(made);
  EXPECT_EQ(rigs::textAt(*made, "/rigs/0/vessel/inner_diameter"), "371 mm");
  EXPECT_EQ(rigs::textAt(*made, "/rigs/0/vessel/height"), "370 mm");
  EXPECT_FALSE(withVolume(*made, "40 kg"));
  EXPECT_FALSE(withVolume(*made, "0 L"));
}

// 400 mm by 200 mm hold 25.13 L; twice each is eight times that.
TEST(AKettlesVolume, KeepsTheShapeAndInches) {
  const auto flat = withVolume(
      R"({"rigs": [{"vessel": {"inner_diameter": "400 mm", "height": "200 mm"}}]})", "201.06 L");
  EXPECT_EQ(rigs::textAt(*flat, "/rigs/0/vessel/inner_diameter"), "800 mm");
  EXPECT_EQ(rigs::textAt(*flat, "/rigs/0/vessel/height"), "400 mm");
  const auto inches = withVolume(
      R"({"rigs": [{"vessel": {"inner_diameter": "14 in", "height": "14 in"}}]})", "10 gal");
  EXPECT_TRUE(rigs::textAt(*inches, "/rigs/0/vessel/height")->ends_with(" in"));
}

class TheVolume : public WindowTest {};

TEST_F(TheVolume, IsSeenTypedAndTakenBackInOneStep) {
  const std::string before = document().text();
  QLineEdit* volume = line("/rigs/0/vessel/volume");
  ASSERT_NE(volume, nullptr);
  EXPECT_EQ(volume->text(), QStringLiteral("40.1 L"));
  type("/rigs/0/vessel/volume", QStringLiteral("60"));  // in the unit that is seen
  EXPECT_EQ(volume->text(), QStringLiteral("60 L"));
  ASSERT_NE(document().plan(), nullptr);
  const auto& vessel = document().plan()->rigs[0].rig.vessel;
  EXPECT_NEAR(vessel.innerDiameter / vessel.height, 355.0 / 405.0, 0.01);
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheVolume, ThatNoKettleHasIsToldBesideTheField) {
  const std::string before = document().text();
  for (const char* wrong : {"5000 L", "40 kg"}) {
    type("/rigs/0/vessel/volume", QLatin1String(wrong));
    EXPECT_TRUE(problemAt("/rigs/0/vessel/volume").contains(QLatin1String("40 L"))) << wrong;
    EXPECT_EQ(document().text(), before);
  }
  type("/rigs/0/vessel/volume", QStringLiteral("60 L"));
  EXPECT_EQ(problemAt("/rigs/0/vessel/volume"), QString());
}

TEST_F(TheVolume, IsSteppedAndGoesAlongWithTheDiameter) {
  QLineEdit* volume = line("/rigs/1/vessel/volume");
  volume->setFocus();
  QTest::keyClick(volume, Qt::Key_Up);
  EXPECT_EQ(volume->text(), QStringLiteral("41 L"));
  type("/rigs/1/vessel/inner_diameter", QStringLiteral("500 mm"));
  EXPECT_NE(volume->text(), QStringLiteral("41 L"));
}

}  // namespace
