// SPDX-License-Identifier: GPL-3.0-or-later
// One switch for the units of everything; what a person wrote is never rounded.
#include <gtest/gtest.h>

#include <QLocale>
#include <QRegularExpression>
#include <QTest>

#include "gui/window/forms/quantity_field.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
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

TEST_F(TheUnits, OfChoiceAreRememberedSeenEverywhereAndTakenBack) {
  ASSERT_TRUE(settles());
  const std::string before = document().text();
  const auto choose = [this](const QString& unit) {
    for (QAction* action : window().findChildren<QAction*>())
      if (action->text() == unit && action->isCheckable()) action->trigger();
  };
  choose(QStringLiteral("°F"));
  choose(QStringLiteral("imp gal"));
  EXPECT_EQ(line("/place/room")->text(), "69.8 °F");
  EXPECT_TRUE(line("/batch/wort")->text().endsWith(" imp gal"));
  EXPECT_TRUE(line("/place/altitude")->text().endsWith(" m"));
  EXPECT_EQ(document().text(), before);
  auto* units = window().findChild<QComboBox*>("units");
  EXPECT_EQ(units->currentText(), QStringLiteral("Units of choice"));
  window().setQuestion(gui::telling::Question::HowFarCools);
  ASSERT_TRUE(settles());
  const auto shown = window().page().currentAnswer();
  EXPECT_TRUE(shown.tables.front().rows.front().cells.front().contains(QStringLiteral("°F")) ||
              shown.headline().contains(QStringLiteral("°F")))
      << shown.headline().toStdString();
  window().close();
  reopen();
  EXPECT_EQ(rigs::unitsText(document().units()), "SI,°F,imp gal");
  window().setUnits(UnitSystem::SI);
  EXPECT_EQ(window().findChild<QComboBox*>("units")->count(), 2);
}

// Every field of the form, of every plan to start from: what has a unit has a US one, or one that
// is the same everywhere, and no more digits than mean something.
TEST_F(TheUnits, AreUsOnesInEveryFieldOfEveryPlanToStartFrom) {
  static const QRegularExpression kMetric(QStringLiteral(
      "\\d ?(mL|L|m3|m³|m|cm|mm|g|kg|K|°?C|Pa|kPa|L/h|L/min|m3/h|m³/h|m/s|L/kg|W/\\(m2 "
      "K\\)|kJ/kg)$"));
  static const QRegularExpression kDigits(QStringLiteral("^-?0*[.,]?0*([\\d.,]*) ?(\\D.*)?$"));
  std::vector<std::string> starts = rigs::planStartNames();
  starts.emplace_back();  // the example
  for (const std::string& start : starts) {
    SCOPED_TRACE(start);
    std::string text = start.empty() ? rigs::newPlanText() : *rigs::planStartText(start);
    text = rigs::withText(text, "/place/air/volume", "40 m3");
    text = rigs::withText(text, "/place/air/airflow", "150 m3/h");
    text = rigs::withText(text, "/place/draught", "0.2 m/s");
    text = rigs::withText(text, "/rigs/0/recirculation/hose_length", "1.5 m");
    text = rigs::withText(text, "/rigs/0/recirculation/outer_diameter", "19 mm");
    text = rigs::withText(text, "/rigs/0/recirculation/wall", "3 mm");
    text = rigs::withText(text, "/rigs/0/recirculation/flow", "10 L/min");
    document().startAnew(text);
    document().setUnits(UnitSystem::UsCustomary);
    int seen = 0;
    for (const auto* field : window().forms().findChildren<gui::PlanLineEdit*>()) {
      const QString name = field->objectName();
      if (name.endsWith("/name") || name == "/title" || name.endsWith("/co2_source")) continue;
      if (name.endsWith("/conductor") || name == "/tariff/co2_per_kWh") continue;  // mm2; per kWh
      for (const QString& shown : {field->text(), field->placeholderText()}) {
        if (shown.isEmpty()) continue;
        ++seen;
        EXPECT_FALSE(shown.contains(kMetric)) << (name + ": " + shown).toStdString();
        const QRegularExpressionMatch number = kDigits.match(shown);
        if (!number.hasMatch()) continue;
        QString digits = number.captured(1);
        const bool isWhole = !digits.contains('.') && !digits.contains(',');
        digits.remove('.').remove(',');
        EXPECT_TRUE(isWhole || digits.size() <= 4) << (name + ": " + shown).toStdString();
      }
    }
    EXPECT_GT(seen, 30);
    EXPECT_EQ(line("/place/air/volume")->text(), "1413 ft³");
    EXPECT_EQ(line("/place/air/airflow")->text(), "88.29 ft³/min");
    EXPECT_EQ(line("/rigs/0/recirculation/flow")->text(), "2.642 gal/min");
  }
}

TEST_F(TheUnits, OfARoomAreReadFromWhatTheFieldShows) {
  window().setUnits(UnitSystem::UsCustomary);
  ASSERT_EQ(line("/place/air/volume")->text(), "");
  ASSERT_EQ(line("/place/air/volume")->placeholderText(), "1413 ft³");
  type("/place/air/volume", "1500");
  EXPECT_EQ(textAt("/place/air/volume"), "1500 ft³");
  type("/place/air/airflow", "90 ft3/min");
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  window().setUnits(UnitSystem::SI);
  EXPECT_EQ(line("/place/air/volume")->text(), "42.48 m³");
  EXPECT_EQ(line("/place/air/airflow")->text(), "152.9 m³/h");
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
