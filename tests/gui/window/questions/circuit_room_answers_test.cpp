// SPDX-License-Identifier: GPL-3.0-or-later
// The questions about circuit and room tell the terminal's own numbers, and in German too.
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/exports/exports.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/phrases.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/results/circuit_words.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::Answer;
using gui::Question;
using rigs::UnitSystem;
using test_support::solvedDemo;

Answer ask(Question question, const gui::Solution& solution = *solvedDemo(),
           UnitSystem units = UnitSystem::SI) {
  return gui::answerTo(question, solution, units);
}

// What the terminal prints with --json.
QJsonArray terminalRigs(rigs::Depth depth) {
  const rigs::Plan& plan = solvedDemo()->plan;
  const std::string text = rigs::resultJson(plan, rigs::answer(plan, depth));
  return QJsonDocument::fromJson(QByteArray::fromStdString(text)).object()["rigs"].toArray();
}

QString cell(const Answer& answer, const QString& label, int rig) {
  for (const auto& row : answer.table.rows) {
    if (row[0].startsWith(label)) return row[rig + 1];
  }
  return QStringLiteral("no such row");
}

// Rounded as the table rounds.
void expectNear(const QString& shown, double number, int decimals) {
  bool isNumber = false;
  EXPECT_NEAR(shown.toDouble(&isNumber), number, 0.51 * std::pow(10.0, -decimals));
  EXPECT_TRUE(isNumber) << shown.toStdString();
}

gui::SolutionPtr edited(const std::vector<std::pair<std::string, std::string>>& edits) {
  std::string document(rigs::demoPlanText());
  for (const auto& [pointer, value] : edits) document = rigs::withValue(document, pointer, value);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, ".", problems);
  if (!plan)
    throw std::logic_error("the edited demo has errors: " + inEnglish(problems.front().message));
  return gui::solveAtOnce(*plan);
}

TEST(CircuitQuestion, TellsTheTerminalsNumbers) {
  const Answer answer = ask(Question::Circuit);
  const QJsonArray rigs = terminalRigs(rigs::Depth::Circuit);
  ASSERT_EQ(rigs.size(), 4);
  for (int i = 0; i < 4; ++i) {
    SCOPED_TRACE(i);
    const QJsonObject circuit = rigs[i]["circuit"].toObject();
    const QJsonObject first = circuit["circuits"].toArray()[0].toObject();
    expectNear(cell(answer, "current, cable included", i), first["peak_current_A"].toDouble(), 2);
    expectNear(cell(answer, "current, as codes", i), first["branch_current_A"].toDouble(), 2);
    expectNear(cell(answer, "mean over the day, A", i), first["mean_current_A"].toDouble(), 2);
    expectNear(cell(answer, "element hot", i), first["resistance_hot_ohm"].toDouble(), 2);
    expectNear(cell(answer, "lost in the cable", i), first["in_cable_W"].toDouble(), 0);
    if (circuit.contains("added_by_cable_s")) {
      expectNear(cell(answer, "added to heating", i), circuit["added_by_cable_s"].toDouble() / 60.0,
                 1);
    }
    EXPECT_EQ(cell(answer, "element enabled", i),
              gui::hoursAndMinutesText(circuit["duty"]["longest_enabled_s"].toDouble() / 60.0));
    const QJsonArray verdicts = first["verdicts"].toArray();
    ASSERT_FALSE(verdicts.isEmpty());
    for (const QJsonValue verdict : verdicts) {
      const QString region = verdict["region"].toString();
      const QString edition = verdict["edition"].toString();
      EXPECT_TRUE(answer.sentence.contains(region)) << answer.sentence.toStdString();
      EXPECT_TRUE(answer.sentence.contains(edition)) << answer.sentence.toStdString();
      // The last verdict row under the region's heading is of all rules together.
      bool under = false;
      QString together;
      for (const auto& row : answer.table.rows) {
        if (row[1].isEmpty()) under = row[0].startsWith(region);
        if (under && row[0] == QStringLiteral("all rules together")) together = row[i + 1];
      }
      const QString said = verdict["verdict"].toString();
      EXPECT_EQ(together, said == "fits only if" ? QStringLiteral("fits only if …") : said);
      // Arithmetic, clause and source of every rule stand below.
      for (const QJsonValue finding : verdict["findings"].toArray()) {
        const QString clause = finding["cite"]["clause"].toString();
        EXPECT_TRUE(std::any_of(answer.notes.begin(), answer.notes.end(), [&](const QString& note) {
          return note.contains(finding["rule"].toString()) && note.contains(clause);
        })) << finding["text"].toString().toStdString();
      }
    }
    const QJsonArray list = circuit["readings"].toArray();
    ASSERT_FALSE(list.isEmpty());
    const QJsonObject reading = list[0].toObject();
    bool found = false;
    for (const auto& row : answer.table.rows) {
      // Codes that say the same are named together.
      if (found || !row[0].contains(reading["region"].toString()) ||
          !row[0].endsWith(", " + reading["reading"].toString()))
        continue;
      found = true;
      expectNear(row[i + 1], reading["largest_element_W"].toDouble(), 0);
    }
    EXPECT_TRUE(found);
  }
}

TEST(CircuitQuestion, DrawsTheCurrentOfEachPartOfTheDay) {
  const gui::Picture picture = ask(Question::Circuit).pictures[0];
  const rigs::CircuitAnswer& circuit = solvedDemo()->answers.rigs[1].circuit;
  const auto& points = picture.lines[1].points;
  ASSERT_EQ(points.size(), static_cast<qsizetype>(2 * circuit.duty.spans.size()));
  const double whole = 100.0 * static_cast<double>(circuit.circuits[0].load.current /
                                                   circuit.circuits[0].supply.rating);
  double area = 0.0;
  for (qsizetype k = 0; k + 1 < points.size(); k += 2) {
    area += points[k].y() * (points[k + 1].x() - points[k].x());
  }
  EXPECT_NEAR(area, whole * physics::inMinutes(circuit.duty.current()), 1e-6 * area);
  ASSERT_EQ(picture.bands.size(), 1);
  EXPECT_DOUBLE_EQ(picture.bands[0].from, 80.0);
  EXPECT_TRUE(picture.bands[0].source.contains(QStringLiteral("United States")));
}

TEST(CircuitQuestion, EndsWithTheDeferralAndShowsThePlansOwnCautions) {
  const Answer answer = ask(Question::Circuit);
  const auto deferral = rigs::electricianText();
  EXPECT_EQ(answer.cautions.back().toStdString(), std::string(deferral));
  EXPECT_EQ(answer.allCautions().back(), answer.cautions.back());
  EXPECT_GE(answer.furtherCautions.size(), 5);
  EXPECT_TRUE(answer.furtherCautions.join(QString()).contains(QStringLiteral("Dry firing")));
}

TEST(CircuitQuestion, SaysThatNoRulesApply) {
  const auto solution = edited({{"/rigs/0/supply", R"({"voltage": "120 V", "current": "15 A"})"}});
  const Answer answer = ask(Question::Circuit, *solution);
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("Old element, kitchen: cannot say.")))
      << answer.sentence.toStdString();
}

TEST(CircuitQuestion, TellsOfASecondCircuit) {
  const auto solution =
      edited({{"/rigs/3/elements",
               R"([{"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
            {"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])"},
              {"/rigs/3/wired", R"("two circuits")"}});
  const Answer answer = ask(Question::Circuit, *solution);
  const auto& circuits = solution->answers.rigs[3].circuit.circuits;
  ASSERT_EQ(circuits.size(), 2U);
  expectNear(cell(answer, "current in it, cable", 3), physics::inAmperes(circuits[1].load.current),
             2);
  EXPECT_EQ(cell(answer, "current in it, cable", 0), QStringLiteral("–"));
  EXPECT_EQ(std::count_if(answer.pictures[0].lines.begin(), answer.pictures[0].lines.end(),
                          [](const gui::PictureLine& line) { return line.faint; }),
            1);
}

TEST(RoomQuestion, TellsTheTerminalsNumbers) {
  const Answer answer = ask(Question::Room);
  const QJsonArray rigs = terminalRigs(rigs::Depth::Room);
  for (int i = 0; i < 4; ++i) {
    SCOPED_TRACE(i);
    const QJsonObject room = rigs[i]["room"].toObject();
    expectNear(cell(answer, "vapour, kg", i), room["released_kg"].toDouble(), 2);
    expectNear(cell(answer, "most vapour", i), room["peak_vapour_kg_per_h"].toDouble(), 2);
    expectNear(cell(answer, "condensed", i), room["condensed_kg"].toDouble(), 2);
    expectNear(cell(answer, "highest humidity", i), 100.0 * room["peak_humidity"].toDouble(), 0);
    expectNear(cell(answer, "to hold 60 %", i), room["airflow_L_per_h"].toDouble() / 1e3, 0);
    const QJsonArray points = room["points"].toArray();
    const auto& line = answer.pictures[0].lines[i].points;
    ASSERT_EQ(line.size(), points.size());
    for (qsizetype k = 0; k < line.size(); k += 50) {
      EXPECT_NEAR(line[k].x(), points[k].toObject()["time_s"].toDouble() / 60.0, 1e-6);
      EXPECT_NEAR(line[k].y(), 100.0 * points[k].toObject()["relative_humidity"].toDouble(), 1e-6);
    }
    expectNear(QString::number(answer.pictures[1].stacks[i].parts[0]),
               room["airflow_L_per_h"].toDouble() / 1e3, 0);
  }
  EXPECT_EQ(answer.pictures[1].limits.size(), 3);
  EXPECT_TRUE(answer.furtherCautions.join(QString()).contains(QStringLiteral("water vapour")));
}

TEST(RoomQuestion, FollowsTheRoom) {
  const auto aired = edited({{"/place/air", R"({"volume": "40 m3", "airflow": "900 m3/h"})"}});
  const Answer answer = ask(Question::Room, *aired, UnitSystem::UsCustomary);
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("or below")))
      << answer.sentence.toStdString();
  EXPECT_TRUE(answer.pictures[0].marks.isEmpty());
  EXPECT_TRUE(answer.notes[0].contains(QStringLiteral("ft³/min"))) << answer.notes[0].toStdString();
  EXPECT_FALSE(answer.notes[0].contains(QStringLiteral("assumed")));
}

TEST(Exports, OfCircuitAndRoomCarryTheTerminalsResultOfThatQuestion) {
  const rigs::Plan& plan = solvedDemo()->plan;
  for (const auto& [question, depth] : {std::pair{Question::Circuit, rigs::Depth::Circuit},
                                        std::pair{Question::Room, rigs::Depth::Room}}) {
    const Answer answer = ask(question);
    const std::string json = gui::answerJson(question, answer, *solvedDemo()).toStdString();
    const std::string terminal = rigs::resultJson(plan, rigs::answer(plan, depth));
    EXPECT_NE(json.find(terminal.substr(0, terminal.size() - 1)), std::string::npos);
    const QByteArray csv = gui::answerCsv(answer);
    for (const QString& caution : answer.furtherCautions) {
      EXPECT_TRUE(csv.contains(caution.left(30).toUtf8())) << caution.toStdString();
    }
    EXPECT_EQ(csv.count("\nnote,"), answer.notes.size());
  }
}

// An English word that no German text has, outside of what is cited and named.
QStringList englishWordsIn(QString text) {
  text.remove(QRegularExpression(QStringLiteral("\\[[^\\]]*\\]")));  // clauses and sources
  static const QRegularExpression kWord(
      QStringLiteral("\\b(the|and|fits|only|cannot|does|against|load|circuit|outlets?|current|"
                     "breaker|element|rule|from|with|need|water|never|your|cable|for)\\b"),
      QRegularExpression::CaseInsensitiveOption);
  QStringList words;
  for (auto it = kWord.globalMatch(text); it.hasNext();) words += it.next().captured();
  return words;
}

// Plans that meet rules which the demo does not: every region, with outlets, cables and a pump.
TEST(Phrases, LeaveNoEnglishInGermanVerdicts) {
  const std::string mains230 = R"({"voltage": "230 V", "current": "16 A"})";
  std::vector<gui::SolutionPtr> solutions{solvedDemo()};
  const auto with = [&](std::vector<std::pair<std::string, std::string>> edits) {
    for (const char* rig : {"0", "1", "2", "3"}) {
      const std::string at = std::string("/rigs/") + rig;
      edits.push_back({at + "/name", std::string("\"Kessel ") + rig + "\""});
    }
    solutions.push_back(edited(edits));
  };
  with({{"/place/region", R"("United States")"},
        {"/rigs/1/supply/outlet", R"("5-15")"},
        {"/rigs/1/supply/feeds", R"("several outlets")"},
        {"/rigs/1/supply/other_load", R"("300 W")"},
        {"/rigs/1/cable/use", R"("building wire")"},
        {"/rigs/1/pump", R"({"power": "30 W"})"},
        {"/rigs/3/supply/outlet", R"("10-30")"},
        {"/rigs/3/cable/use", R"("cord")"},
        {"/rigs/3/pump", R"({"power": "30 W", "voltage": "120 V"})"}});
  for (const std::string region : {"Europe", "United Kingdom", "Australia and New Zealand"}) {
    std::vector<std::pair<std::string, std::string>> edits{{"/place/region", '"' + region + '"'}};
    for (const char* rig : {"0", "1", "2", "3"}) {
      const std::string at = std::string("/rigs/") + rig;
      edits.push_back({at + "/supply", mains230});
      edits.push_back({at + "/element",
                       R"({"power": "3 kW", "rated_voltage": "230 V", "top_height": "6 cm"})"});
      edits.push_back(
          {at + "/cable", R"({"length": "10 m", "conductor": "1.5 mm2", "use": "building wire"})"});
    }
    with(edits);
  }
  gui::speak(QStringLiteral("de"));
  for (const gui::SolutionPtr& solution : solutions) {
    const bool demo = solution == solvedDemo();
    for (const Question question : {Question::Circuit, Question::Room}) {
      const Answer answer = ask(question, *solution);
      for (QString text : answer.notes + answer.allCautions()) {
        if (demo) {
          for (const auto& rig : solution->plan.rigs) text.remove(QString::fromStdString(rig.name));
        }
        EXPECT_EQ(englishWordsIn(text).join(QLatin1Char(' ')).toStdString(), "")
            << text.toStdString();
      }
      for (const auto& row : answer.table.rows) {
        EXPECT_EQ(englishWordsIn(row[0]).join(QLatin1Char(' ')).toStdString(), "")
            << row[0].toStdString();
      }
    }
  }
  gui::speak(QStringLiteral("en"));
}

TEST(Phrases, AreThemselvesInEnglish) {
  gui::speak(QStringLiteral("en"));
  EXPECT_EQ(gui::phrase(std::string_view("13.4 A against 80 % of 15 A = 12 A")),
            QStringLiteral("13.4 A against 80 % of 15 A = 12 A"));
  EXPECT_EQ(gui::phrase(std::string_view("a text that is not known; nor this")),
            QStringLiteral("a text that is not known; nor this"));
}

TEST(Phrases, PutGermanNumbersIntoGermanText) {
  gui::speak(QStringLiteral("de"));
  const QString text = gui::phrase(std::string_view("13.4 A against 80 % of 15 A = 12 A"));
  const QString clause = gui::phrase(std::string_view("Art. 100, 210.19(A)(1)"));
  gui::speak(QStringLiteral("en"));
  EXPECT_TRUE(text.contains(QStringLiteral("13,4 A"))) << text.toStdString();
  EXPECT_FALSE(text.contains(QStringLiteral("against"))) << text.toStdString();
  EXPECT_EQ(clause, QStringLiteral("Art. 100, 210.19(A)(1)"));
}

}  // namespace
