// SPDX-License-Identifier: GPL-3.0-or-later
// One switch for the units of everything; what a person wrote is never rounded.
#include <gtest/gtest.h>

#include <QLocale>
#include <QTest>

#include "gui/window/forms/quantity_field.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using namespace physics;
using gui::converted;
using gui::shownText;
using rigs::UnitSystem;
using test_support::WindowTest;

TEST(ShownText, IsAsWrittenInItsOwnSystem) {
  EXPECT_EQ(shownText("10 gal", UnitSystem::UsCustomary, converted<Volume>), "10 gal");
  EXPECT_EQ(shownText("23,0 L", UnitSystem::SI, converted<Volume>), "23,0 L");
  EXPECT_EQ(shownText("5,5 kW", UnitSystem::UsCustomary, nullptr), "5,5 kW");
}

// 1 US gallon is 3.785411784 L, 1 in 25.4 mm, both by definition; 152 F is 66.67 C.
TEST(ShownText, IsConvertedIntoTheOther) {
  EXPECT_EQ(shownText("10 gal", UnitSystem::SI, converted<Volume>), "37.85 L");
  EXPECT_EQ(shownText("152 F", UnitSystem::SI, converted<Temperature>), "66.67 °C");
  EXPECT_EQ(shownText("1/2 in", UnitSystem::SI, converted<Length>), "12.7 mm");
}

TEST(ShownText, LeavesBadTextAlone) {
  EXPECT_EQ(shownText("10 gallonen", UnitSystem::UsCustomary, converted<Volume>), "10 gallonen");
  EXPECT_EQ(shownText("", UnitSystem::UsCustomary, converted<Volume>), "");
}

TEST(ShownText, HasTheReadersDecimalSignOnlyWhereConverted) {
  QLocale::setDefault(QLocale(QLocale::German));
  EXPECT_EQ(shownText("10 gal", UnitSystem::SI, converted<Volume>), "37,85 L");
  EXPECT_EQ(shownText("23.5 L", UnitSystem::SI, converted<Volume>), "23.5 L");
  QLocale::setDefault(QLocale::c());
}

class TheUnits : public WindowTest {};

TEST_F(TheUnits, ChangeEverythingAtOnceAndRoundNothing) {
  type("/batch/wort", "6 gal");
  const std::string before = document().text();
  ASSERT_TRUE(settles());
  const QString metric = window().page().currentAnswer().headline();
  EXPECT_EQ(line("/batch/wort")->text(), "22.71 L");
  EXPECT_EQ(line("/place/room")->text(), "21 C");

  auto* units = window().findChild<QComboBox*>("units");
  units->setFocus();
  QTest::keyClick(units, Qt::Key_Down);
  EXPECT_EQ(document().units(), UnitSystem::UsCustomary);
  EXPECT_EQ(window().page().units(), UnitSystem::UsCustomary);
  EXPECT_EQ(line("/batch/wort")->text(), "6 gal");
  EXPECT_EQ(line("/place/room")->text(), "69.8 °F");
  EXPECT_EQ(line("/rigs/1/vessel/inner_diameter")->placeholderText(), "13.98 in");
  EXPECT_EQ(document().text(), before);
  EXPECT_EQ(rigs::format(document().plan()->place.room, UnitSystem::SI), "21 °C");

  undo();
  EXPECT_EQ(document().units(), UnitSystem::SI);
  EXPECT_EQ(window().page().units(), UnitSystem::SI);
  EXPECT_EQ(window().page().currentAnswer().headline(), metric);
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheUnits, AreNotAReasonToSave) {
  window().setUnits(UnitSystem::UsCustomary);
  EXPECT_FALSE(document().isModified());
}

// A field that shows a conversion and is only visited keeps what was written.
TEST_F(TheUnits, VisitingAConvertedFieldChangesNothing) {
  window().setUnits(UnitSystem::UsCustomary);
  const std::string before = document().text();
  QLineEdit* room = line("/place/room");
  room->setFocus();
  QTest::keyClick(room, Qt::Key_Tab);
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheUnits, AreRememberedByTheNextWindow) {
  window().setUnits(UnitSystem::UsCustomary);
  window().close();
  reopen();
  EXPECT_EQ(document().units(), UnitSystem::UsCustomary);
}

}  // namespace
