// SPDX-License-Identifier: GPL-3.0-or-later
// Typing into the forms with real keys.
#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "gui/window/charts/plan_chart.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

struct Edit {
  std::string pointer;
  QString text;
};

class TheForms : public WindowTest {};

TEST_F(TheForms, ChangeEveryValueAndTakeItBack) {
  const Edit edits[] = {{"/batch/wort", "6 gal"},
                        {"/batch/boil", "1 h 30 min"},
                        {"/batch/mashing_in", "7 min"},
                        {"/batch/mash/rests/0/temperature", "152 F"},
                        {"/batch/mash/rests/1/time", "15 min"},
                        {"/batch/grain/mass", "11 lb 8 oz"},
                        {"/batch/grain/temperature", "12 C"},
                        {"/batch/grain/moisture", "5 %"},
                        {"/batch/grain/extract", "70 %"},
                        {"/batch/grain/absorption", "0.9 L/kg"},
                        {"/batch/grain/displacement", "0.7 L/kg"},
                        {"/batch/grain/specific_heat", "1700 J/(kg K)"},
                        {"/batch/grain/slaking_heat", "18 kJ/kg"},
                        {"/place/altitude", "2000 ft"},
                        {"/place/room", "17,5 C"},
                        {"/place/water", "50 F"},
                        {"/place/humidity", "60 %"},
                        {"/place/draught", "0.2 m/s"},
                        {"/goals/boil_within", "50 min"},
                        {"/goals/boil_off", "9 %/h"},
                        {"/goals/headspace", "12 %"},
                        {"/goals/unplugged", "2 h"},
                        {"/tariff/price", "0.30 EUR/kWh"},
                        {"/tariff/dated", "2026-03"},
                        {"/tariff/name", "House tariff"},
                        {"/tariff/rebate", "5 %"},
                        {"/tariff/brew_from", "07:00"},
                        {"/tariff/brews_per_year", "20"},
                        {"/tariff/jacket_price", "40"},
                        {"/tariff/element_price", "55.5"},
                        {"/tariff/co2_per_kWh", "380 g"},
                        {"/place/air/volume", "30 m3"},
                        {"/place/air/air_changes", "2"},
                        {"/place/air/airflow", "120 ft3/min"},
                        {"/place/air/outdoors", "-3 C"},
                        {"/place/air/outdoor_humidity", "85 %"},
                        {"/place/air/hood_captures", "70 %"},
                        {"/place/air/hold_humidity", "55 %"},
                        {"/place/air/window_u", "1.3 W/(m2 K)"},
                        {"/rigs/1/supply/other_load", "200 W"},
                        {"/rigs/1/cable/insulation", "60 C"},
                        {"/rigs/1/cable/ambient", "25 C"},
                        {"/rigs/1/cable/loaded_conductors", "2"},
                        {"/rigs/1/cable/layers_on_drum", "0"},
                        {"/rigs/1/pump/power", "30 W"},
                        {"/rigs/1/elements/1/power", "500 W"},
                        {"/title", "Another"},
                        {"/day_starts", "07:30"},
                        {"/ready/at", "10:30"},
                        {"/jacket_to_compare/side/0/thickness", "1 in"},
                        {"/rigs/0/name", "Old one"},
                        {"/rigs/1/element/power", "1,8 kW"},
                        {"/rigs/1/element/rated_voltage", "125 V"},
                        {"/rigs/1/element/top_height", "7 cm"},
                        {"/rigs/1/boil_power", "90 %"},
                        {"/rigs/1/supply/current", "16 A"},
                        {"/rigs/1/supply/voltage", "118 V"},
                        {"/rigs/1/supply/continuous", "80 %"},
                        {"/rigs/1/cable/length", "30 ft"},
                        {"/rigs/1/cable/conductor", "2.5 mm2"},
                        {"/rigs/1/cable/temperature", "45 C"},
                        {"/rigs/1/vessel/inner_diameter", "360 mm"},
                        {"/rigs/1/vessel/height", "16 in"},
                        {"/rigs/1/vessel/wall", "1 mm"},
                        {"/rigs/1/vessel/mass", "5 kg"},
                        {"/rigs/2/lid/thickness", "1 mm"},
                        {"/rigs/2/lid/open/boil", "40 %"},
                        {"/rigs/2/jacket/side/0/thickness", "R 1.8"},
                        {"/rigs/2/stands_on/thickness", "30 mm"},
                        {"/rigs/3/recirculation/hose_length", "1.5 m"},
                        {"/rigs/3/evaporation_factor", "1.1"}};
  const std::string before = document().text();
  for (const Edit& edit : edits) {
    SCOPED_TRACE(edit.pointer);
    type(edit.pointer, edit.text);
    const std::string place = edit.text == "R 1.8" ? "/rigs/2/jacket/side/0/R" : edit.pointer;
    EXPECT_EQ(textAt(place), edit.text.toStdString());
    EXPECT_FALSE(rigs::hasErrors(document().problems()));
    ASSERT_NE(line(edit.pointer), nullptr);
    EXPECT_EQ(problemAt(edit.pointer).startsWith("Problem"), false);
    undo();
    EXPECT_EQ(document().text(), before);
    redo();
    EXPECT_EQ(textAt(place), edit.text.toStdString());
    undo();
    ASSERT_EQ(document().text(), before);
  }
}

TEST_F(TheForms, ChooseByKeyboardAndTakeItBack) {
  const Edit choices[] = {{"/rigs/0/supply/from", "Europe 230 V 16 A"},
                          {"/place/region", "United States"},
                          {"/tariff/day", "weekend"},
                          {"/ready/what", "end of boil"},
                          {"/rigs/1/supply/outlet", "5-15"},
                          {"/rigs/1/supply/feeds", "one outlet"},
                          {"/rigs/1/cable/use", "building wire"},
                          {"/rigs/1/vessel/material", "aluminium"},
                          {"/rigs/1/vessel/finish", "dull"},
                          {"/rigs/1/lid/material", "glass"},
                          {"/rigs/1/jacket/side/0/material", "cork"},
                          {"/rigs/2/jacket/outside", "foil"},
                          {"/rigs/2/stands_on/kind", "legs"}};
  const std::string before = document().text();
  for (const Edit& edit : choices) {
    SCOPED_TRACE(edit.pointer);
    choose(edit.pointer, edit.text);
    EXPECT_EQ(textAt(edit.pointer), edit.text.toStdString());
    window().centralWidget()->setFocus();
    undo();
    EXPECT_EQ(document().text(), before);
    while (document().undoStack().canUndo()) undo();
  }
}

TEST_F(TheForms, OfferOutletsAndEditionsOfThePlansRegion) {
  const auto offered = [this](const char* pointer) {
    QStringList all;
    for (int i = 1; i < choice(pointer)->count(); ++i) all += choice(pointer)->itemText(i);
    return all;
  };
  EXPECT_TRUE(offered("/rigs/1/supply/outlet").contains("BS 1363 13 A"));
  choose("/place/region", "United States");
  EXPECT_FALSE(offered("/rigs/1/supply/outlet").contains("BS 1363 13 A"));
  EXPECT_TRUE(offered("/rigs/1/supply/outlet").contains("14-30"));
  EXPECT_EQ(offered("/place/edition"), QStringList{"2023"});
}

TEST_F(TheForms, SayWhatIsWrongWithRegionOutletAndRoom) {
  choose("/rigs/1/supply/outlet", "BS 1363 13 A");
  // Told together with what only the simulation finds.
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return problemAt("/rigs/1/supply/outlet").contains("no outlet"); }, 30000))
      << problemAt("/rigs/1/supply/outlet").toStdString();
  undo();
  type("/place/air/volume", "30 kg");
  EXPECT_TRUE(problemAt("/place/air/volume").contains("a volume is needed"));
  type("/place/air/volume", "");
  EXPECT_EQ(textAt("/place/air/volume"), std::nullopt);
  type("/tariff/brews_per_year", "many");
  EXPECT_FALSE(problemAt("/tariff/brews_per_year").isEmpty());
}

TEST_F(TheForms, MakeTwoElementsOfOneAndOneOfTwo) {
  const std::string before = document().text();
  type("/rigs/1/elements/1/power", "400 W");
  EXPECT_EQ(textAt("/rigs/1/elements/0/power"), "1650 W");
  EXPECT_EQ(textAt("/rigs/1/elements/1/rated_voltage"), "120 V");
  EXPECT_EQ(textAt("/rigs/1/wired"), "parallel");
  EXPECT_EQ(textAt("/rigs/1/element/power"), std::nullopt);
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  // The first one's fields follow it.
  EXPECT_EQ(line("/rigs/1/element/power")->text(), "1650 W");
  type("/rigs/1/element/power", "1200 W");
  EXPECT_EQ(textAt("/rigs/1/elements/0/power"), "1200 W");
  choose("/rigs/1/wired", "two circuits");
  ASSERT_NE(document().plan(), nullptr);
  EXPECT_TRUE(document().plan()->rigs[1].rig.second.has_value());
  type("/rigs/1/element/power", "12 horses");
  EXPECT_FALSE(problemAt("/rigs/1/element/power").isEmpty());
  undo();
  type("/rigs/1/elements/1/power", "");
  EXPECT_EQ(textAt("/rigs/1/element/power"), "1200 W");
  EXPECT_EQ(textAt("/rigs/1/wired"), std::nullopt);
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  while (document().undoStack().canUndo()) undo();
  EXPECT_EQ(document().text(), before);
  // A kettle that has its element from the catalogue.
  type("/rigs/0/elements/1/power", "1 kW");
  EXPECT_EQ(textAt("/rigs/0/elements/0/power"), "3000 W");
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
}

TEST_F(TheForms, ShowPricesByTheHourWithoutChangingThem) {
  const std::string times =
      R"({"weekday": [{"from": "00:00", "to": "24:00", "price": "0.10 EUR/kWh"}]})";
  const std::string text = document().text();
  document().change(QStringLiteral("test"),
                    rigs::withValue(rigs::without(text, "/tariff/price"), "/tariff/times", times));
  QLineEdit* hours = line("/tariff/times");
  EXPECT_TRUE(hours->isReadOnly());
  EXPECT_TRUE(hours->text().contains("0.1 EUR per kWh from 00:00 to 24:00"))
      << hours->text().toStdString();
  EXPECT_TRUE(hours->toolTip().contains("0.1 EUR"));
  EXPECT_EQ(line("/tariff/tiers")->text(), "");
  type("/tariff/price", "0.2 EUR/kWh");
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  EXPECT_EQ(hours->text(), "");
}

TEST_F(TheForms, SayWhatIsWrongBesideTheFieldAndKeepTheLastAnswer) {
  ASSERT_TRUE(settles());
  const auto good = window().page().solution();
  ASSERT_NE(good, nullptr);
  type("/rigs/1/element/power", "1650 L");
  EXPECT_TRUE(problemAt("/rigs/1/element/power").contains("a power is needed"))
      << problemAt("/rigs/1/element/power").toStdString();
  EXPECT_EQ(problemAt("/rigs/0/element/power"), QString());
  EXPECT_EQ(window().page().solution(), good);
  EXPECT_TRUE(window().findChild<QLabel*>("stale")->isVisible());
  // Below its row, as wide as all columns, with whose it is; and in the tip that may cover it.
  const auto* told = window().findChild<QLabel*>("/rigs/1/element/power?");
  EXPECT_TRUE(told->text().startsWith("(b) ")) << told->text().toStdString();
  EXPECT_GT(told->width(), 3 * line("/rigs/1/element/power")->width());
  EXPECT_TRUE(line("/rigs/1/element/power")->toolTip().contains("a power is needed"));
  // What was typed stays to be mended.
  EXPECT_EQ(line("/rigs/1/element/power")->text(), "1650 L");

  type("/rigs/1/element/power", "1700 W");
  EXPECT_EQ(problemAt("/rigs/1/element/power"), QString());
  EXPECT_FALSE(window().findChild<QLabel*>("stale")->isVisible());
  ASSERT_TRUE(settles());
  EXPECT_NE(window().page().solution(), good);
}

TEST_F(TheForms, ShowWhatOnlyTheSimulationFinds) {
  ASSERT_TRUE(settles());
  type("/batch/wort", "38 L");  // more than the 40 L kettle holds with the grain
  ASSERT_TRUE(QTest::qWaitFor([&] { return window().forms().errorCount() > 0; }, 30000));
  EXPECT_TRUE(window().findChild<QLabel*>("stale")->isVisible());
  undo();
  ASSERT_TRUE(settles());
  EXPECT_EQ(window().forms().errorCount(), 0);
}

TEST_F(TheForms, RemarkOnEqualRestsOnce) {
  for (const char* rest : {"1", "2", "3"}) {
    const std::string place = std::string("/batch/mash/rests/") + rest;
    type(place + "/temperature", "66 C");
  }
  type("/batch/mash/rests/0/temperature", "66 C");
  const QString told = problemAt("/batch/mash/rests/1/temperature");
  EXPECT_TRUE(told.contains("does not rise")) << told.toStdString();
  EXPECT_EQ(told.count("does not rise"), 1);
  EXPECT_TRUE(told.contains("The same at: Rest 3, Rest 4")) << told.toStdString();
  EXPECT_EQ(problemAt("/batch/mash/rests/2/temperature"), QString());
  EXPECT_EQ(problemAt("/batch/mash/rests/3/temperature"), QString());
  // Another remark is another.
  type("/batch/mash/rests/2/temperature", "64 C");
  EXPECT_TRUE(problemAt("/batch/mash/rests/2/temperature").contains("64"));
}

TEST_F(TheForms, OneVisitIsOneStep) {
  const std::string before = document().text();
  QLineEdit* power = line("/rigs/1/element/power");
  power->setFocus();
  power->selectAll();
  for (const char key : std::string("1800")) {
    QTest::keyClick(power, key);
    QTest::qWait(gui::PlanLineEdit::kPause + 50);  // the plan follows each key
  }
  EXPECT_EQ(textAt("/rigs/1/element/power"), "1800 W");
  QTest::keyClicks(power, " W");
  QTest::keyClick(power, Qt::Key_Tab);
  EXPECT_EQ(textAt("/rigs/1/element/power"), "1800 W");
  type("/rigs/1/element/top_height", "70 mm");
  undo();
  EXPECT_EQ(textAt("/rigs/1/element/power"), "1800 W");
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheForms, TakeBackWhatIsStillBeingTyped) {
  const std::string before = document().text();
  QLineEdit* power = line("/rigs/1/element/power");
  power->setFocus();
  power->selectAll();
  QTest::keyClicks(power, "2 kW");
  undo();  // within the pause
  EXPECT_EQ(document().text(), before);
  EXPECT_EQ(power->text(), "1650 W");
}

TEST_F(TheForms, EmptyingAFieldBringsBackWhatItIsFrom) {
  QLineEdit* power = line("/rigs/0/element/power");
  EXPECT_EQ(power->text(), QString());
  EXPECT_EQ(power->placeholderText(), "3000 W");  // of the 40 L steel kettle
  type("/rigs/0/element/power", "2500 W");
  ASSERT_TRUE(settles());
  EXPECT_EQ(window().page().solution()->plan.rigs[0].rig.element.rating, physics::watts(2500.0));
  type("/rigs/0/element/power", "");
  EXPECT_EQ(textAt("/rigs/0/element/power"), std::nullopt);
  ASSERT_TRUE(settles());
  EXPECT_EQ(window().page().solution()->plan.rigs[0].rig.element.rating, physics::watts(3000.0));
}

TEST_F(TheForms, AcceptACommaAndKeepIt) {
  type("/rigs/3/element/power", "5,5 kW");
  EXPECT_EQ(textAt("/rigs/3/element/power"), "5,5 kW");
  ASSERT_NE(document().plan(), nullptr);
  EXPECT_NEAR(physics::inWatts(document().plan()->rigs[3].rig.element.rating), 5500.0, 1e-9);
  type("/place/room", "18,5");
  EXPECT_EQ(textAt("/place/room"), "18,5 C");
}

TEST_F(TheForms, NameEveryFieldForScreenReaders) {
  int fields = 0;
  for (QWidget* field : window().forms().findChildren<QWidget*>()) {
    if (!field->objectName().startsWith('/') || field->objectName().endsWith('?')) continue;
    ++fields;
    EXPECT_FALSE(field->accessibleName().isEmpty()) << field->objectName().toStdString();
    EXPECT_FALSE(field->toolTip().isEmpty()) << field->objectName().toStdString();
  }
  EXPECT_GT(fields, 200);
  EXPECT_EQ(line("/rigs/1/element/power")->accessibleName(), "Power, (b) New element, kitchen");
}

TEST_F(TheForms, StandInTheSmallestWindowPromised) {
  EXPECT_LE(window().minimumSizeHint().width(), 1280);
  EXPECT_LE(window().minimumSizeHint().height(), 720);
}

void expectWholeHeads(const QTableWidget& table) {
  const QHeaderView& head = *table.horizontalHeader();
  for (int column = 0; column < table.columnCount(); ++column) {
    const QTableWidgetItem* item = table.horizontalHeaderItem(column);
    const QRect room(0, 0, head.sectionSize(column) - 8, 1000);
    const QRect needed = head.fontMetrics().boundingRect(
        room, int(Qt::AlignRight) | int(Qt::TextWordWrap), item->text());
    EXPECT_LE(needed.width(), room.width()) << item->text().toStdString();
    EXPECT_LE(needed.height(), head.height()) << item->text().toStdString();
    EXPECT_EQ(item->toolTip(), item->text());
  }
}

// At 1280 x 720 every name is whole, and what a choice cannot show says so and has a tip.
TEST_F(TheForms, CutNothingSilentlyInTheSmallestWindow) {
  window().resize(1280, 720);
  ASSERT_TRUE(settles());
  QTest::qWait(20);
  for (int rig = 0; rig < 4; ++rig) {
    const QString name = QString::fromStdString(document().plan()->rigs[std::size_t(rig)].name);
    const auto* field = line("/rigs/" + std::to_string(rig) + "/name");
    const auto* whole = window().findChild<QLabel*>(QStringLiteral("whole name %1").arg(rig));
    ASSERT_NE(whole, nullptr);
    EXPECT_EQ(whole->text(), name);
    const bool fits = field->fontMetrics().horizontalAdvance(name) <= field->width() - 8;
    EXPECT_TRUE(fits || whole->isVisible()) << name.toStdString();
    if (whole->isVisible()) {
      EXPECT_GE(whole->height(), whole->heightForWidth(whole->width())) << name.toStdString();
    }
    EXPECT_TRUE(field->toolTip().startsWith(name));
  }
  int cut = 0;
  for (const auto* box : window().forms().findChildren<gui::PlanComboBox*>()) {
    if (!box->isVisible()) continue;
    const QString shown = box->shownChoice();
    if (shown == box->currentText()) continue;
    ++cut;
    // Without the brackets behind what is not stated here, else one of its ends.
    const bool bare = box->currentText().startsWith(shown + QLatin1String(" ("));
    const bool circuit = shown.contains(QLatin1String(" V ")) &&
                         box->currentText().endsWith(QLatin1Char(' ') + shown);
    EXPECT_TRUE(bare || circuit || shown.contains(QChar(0x2026))) << shown.toStdString();
    EXPECT_GE(shown.size(), 4) << box->currentText().toStdString();
    EXPECT_TRUE(box->toolTip().startsWith(box->currentText()));
  }
  for (const int rig : {0, 1, 2, 3}) {
    const std::string place = "/rigs/" + std::to_string(rig) + "/supply/";
    const auto shownAt = [&](const std::string& pointer) {
      return static_cast<gui::PlanComboBox*>(choice(pointer))->shownChoice();
    };
    EXPECT_TRUE(shownAt(place + "from").endsWith(rig == 3 ? "30 A" : "15 A"));
    EXPECT_EQ(shownAt(place + "outlet"), "not judged");
    EXPECT_EQ(shownAt(place + "feeds"), "both told");
  }
  EXPECT_GT(cut, 0);  // "stainless steel" in so narrow a column
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    window().setQuestion(question);
    if (question == gui::telling::Question::HelpsMost ||
        question == gui::telling::Question::HowSure) {
      ASSERT_TRUE(settles());
    }
    QTest::qWait(20);
    const auto tables = window().page().findChildren<QTableWidget*>();
    EXPECT_FALSE(tables.isEmpty());
    for (const QTableWidget* table : tables) expectWholeHeads(*table);
  }
}

TEST_F(TheForms, RememberWhichSectionsAreOpen) {
  const QString shut = "/rigs/0/stands_on/kind";
  const auto* kind = window().findChild<QWidget*>(shut);
  ASSERT_NE(kind, nullptr);
  EXPECT_TRUE(kind->isHidden() || !kind->isVisible());
  choice(shut.toStdString());  // opens its section
  EXPECT_TRUE(window().findChild<QWidget*>(shut)->isVisible());
  reopen();
  EXPECT_TRUE(window().findChild<QWidget*>(shut)->isVisible());
}

TEST_F(TheForms, FollowTheTabKeyThroughAColumnsFields) {
  QLineEdit* power = line("/rigs/0/element/power");
  power->setFocus();
  QSet<QString> reached;
  for (int i = 0; i < 12; ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    reached.insert(QApplication::focusWidget()->objectName());
  }
  EXPECT_TRUE(reached.contains("/rigs/0/element/rated_voltage"));
  EXPECT_TRUE(reached.contains("/rigs/0/supply/from"));
  EXPECT_FALSE(reached.contains("/rigs/1/element/power"));  // its turn comes after all of the first
}

}  // namespace
