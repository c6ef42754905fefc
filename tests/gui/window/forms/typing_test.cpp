// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed stays as typed until the person is done; a bare number has the unit that is seen.
#include <gtest/gtest.h>

#include <QSpinBox>
#include <QTest>

#include "gui/window/forms/bare_number.hpp"
#include "rigs/documents/json_edit.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::withUnitOf;
using rigs::UnitSystem;
using test_support::WindowTest;

TEST(ABareNumber, TakesTheUnitBesideIt) {
  struct Typed {
    const char *shown, *typed, *meant;
  };
  for (const Typed& one : {Typed{"66 °C", "152", "152 °C"},
                           {"69.8 °F", "152", "152 °F"},
                           {"1413 ft³", "1500", "1500 ft³"},
                           {"40 m3", "30,5", "30,5 m3"},
                           {"90 min", "75", "75 min"},
                           {"1.5 h", "2", "2 h"},
                           {"13,98 in", "1 1/2", "1 1/2 in"},
                           {"R 7", "10", "R 10"},
                           {"14 AWG", "12", "12 AWG"},
                           {"5.68 W/(m2 K)", "3", "3 W/(m2 K)"},
                           {"70 %", ".5", ".5 %"},
                           {"$0.17/kWh", "0.20", "$0.20/kWh"},
                           {"-3 C", " -5 ", "-5 C"},
                           {"2000L", "1e3", "1e3L"}})
    EXPECT_EQ(withUnitOf(one.shown, one.typed), one.meant) << one.shown;
}

TEST(ABareNumber, IsLeftAloneWhereNoOneUnitIsSeen) {
  for (const char* shown : {"", "0.5", "1 h 30 min", "11 lb 8 oz", "soon"})
    EXPECT_EQ(withUnitOf(shown, "75"), "75") << shown;
}

TEST(ABareNumber, IsNoTextWithAUnit) {
  for (const char* typed : {"", "152 C", "75 min", "1 h 30", "none", "1,250.5", "12 AWG", "7:30"})
    EXPECT_EQ(withUnitOf("66 °C", typed), typed);
}

class TheTyping : public WindowTest {
 protected:
  // Into the field, all of it selected, then the keys; nothing more.
  QLineEdit* begin(const std::string& pointer, const QString& text) {
    QLineEdit* field = line(pointer);
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, text);
    return field;
  }
  static void pause() { QTest::qWait(gui::PlanLineEdit::kPause + 150); }
};

TEST_F(TheTyping, TakesABareNumberInTheUnitThatTheFieldShows) {
  struct Bare {
    const char *pointer, *typed, *meant;
  };
  type("/batch/mash/rests/0/time", "1.5 h");
  type("/place/air/volume", "1413 ft3");
  for (const Bare& one : {Bare{"/place/room", "20", "20 C"},
                          {"/batch/mash/rests/0/time", "2", "2 h"},
                          {"/batch/boil", "75", "75 min"},
                          {"/rigs/1/element/power", "1500", "1500 W"},
                          // Not stated at this rig: as the hint has it.
                          {"/rigs/0/element/power", "2900", "2900 W"},
                          {"/place/humidity", "45", "45 %"}}) {
    type(one.pointer, one.typed);
    EXPECT_EQ(textAt(one.pointer), one.meant) << one.pointer;
    EXPECT_EQ(line(one.pointer)->text(), one.meant) << "done, the field says what was taken";
  }
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
}

TEST_F(TheTyping, TakesABareNumberInUsUnitsWhereThoseAreShown) {
  window().setUnits(UnitSystem::UsCustomary);
  ASSERT_EQ(line("/place/room")->text(), "69.8 °F");
  type("/place/room", "72");
  EXPECT_EQ(textAt("/place/room"), "72 °F");
  type("/batch/wort", "6");
  EXPECT_EQ(textAt("/batch/wort"), "6 US gal");
  type("/rigs/1/vessel/inner_diameter", "14");
  EXPECT_EQ(textAt("/rigs/1/vessel/inner_diameter"), "14 in");
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
}

TEST_F(TheTyping, StaysAsTypedThroughPausesAndAnswers) {
  window().setUnits(UnitSystem::UsCustomary);
  QLineEdit* room = begin("/place/room", "7");
  pause();
  ASSERT_EQ(textAt("/place/room"), "7 °F");
  EXPECT_EQ(room->text(), "7");
  QTest::keyClicks(room, "2");
  pause();
  ASSERT_TRUE(settles());
  EXPECT_EQ(room->text(), "72");
  QTest::keyClicks(room, ".5");
  EXPECT_EQ(room->text(), "72.5");
  QTest::keyClick(room, Qt::Key_Tab);
  EXPECT_EQ(room->text(), "72.5 °F");
  EXPECT_EQ(textAt("/place/room"), "72.5 °F");
  undo();
  EXPECT_EQ(textAt("/place/room"), "21 C") << "a visit is one step";
}

// Metric text typed in a window of US units is converted when the person is done, not before.
TEST_F(TheTyping, IsNotConvertedUnderTheCaret) {
  window().setUnits(UnitSystem::UsCustomary);
  QLineEdit* room = begin("/place/room", "2 C");
  pause();
  ASSERT_TRUE(settles());
  EXPECT_EQ(room->text(), "2 C");
  QTest::keyClick(room, Qt::Key_Home);
  QTest::keyClicks(room, "2");
  EXPECT_EQ(room->text(), "22 C");
  QTest::keyClick(room, Qt::Key_Return);
  EXPECT_EQ(room->text(), "71.6 °F");
  EXPECT_EQ(room->selectedText(), room->text()) << "typing on replaces it";
  EXPECT_EQ(textAt("/place/room"), "22 C");
}

// A rest more makes the form anew, with one more row for the next.
TEST_F(TheTyping, GoesOnInAFormThatIsMadeAnew) {
  const std::string rest = "/batch/mash/rests/2/temperature";
  type("/batch/mash/rests/1/temperature", "72 C");
  begin(rest, "7 ");
  QTest::keyClicks(line(rest), "C");
  QTest::keyClick(line(rest), Qt::Key_Home);
  QTest::keyClick(line(rest), Qt::Key_Right);
  pause();
  ASSERT_NE(line("/batch/mash/rests/3/temperature"), nullptr);
  QTest::keyClicks(line(rest), "8");
  EXPECT_EQ(line(rest)->text(), "78 C");
  EXPECT_TRUE(line(rest)->hasFocus());
}

TEST_F(TheTyping, GivesWayToAStepBack) {
  QLineEdit* room = begin("/place/room", "25");
  pause();
  EXPECT_EQ(room->text(), "25");
  undo();
  EXPECT_EQ(room->text(), "21 C");
  redo();
  EXPECT_EQ(room->text(), "25 C");
}

TEST_F(TheTyping, OfTheYearIsNotReplacedByAnAnswer) {
  window().setQuestion(gui::telling::Question::WhatCost);
  ASSERT_TRUE(settles());
  auto* year = window().page().findChild<QSpinBox*>();
  ASSERT_TRUE(year->isVisible());
  year->setFocus();
  year->selectAll();
  QTest::keyClicks(year, "7");
  // An answer comes while it is typed.
  document().change("elsewhere", rigs::withText(document().text(), "/place/room", "23 C"));
  ASSERT_TRUE(settles());
  QTest::keyClicks(year, "3");
  QTest::keyClick(year, Qt::Key_Return);
  EXPECT_EQ(year->value(), 73);
  EXPECT_EQ(rigs::valueAt(document().text(), "/tariff/brews_per_year"), "73");
}

}  // namespace
