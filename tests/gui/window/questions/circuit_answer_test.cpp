// SPDX-License-Identifier: GPL-3.0-or-later
// The question about the circuit tells the terminal's own numbers, and in German too.
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "gui/window/charts/curves.hpp"
#include "gui/window/words/language.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/results/circuit_words.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::ShownAnswer;
using gui::telling::Question;
using test_support::solvedDemo;

ShownAnswer ask(Question question, const rigs::Solution& solution = *solvedDemo()) {
  const rigs::Reader reader = gui::readerOf(rigs::UnitSystem::SI);
  return gui::shown(gui::telling::answerTo(question, solution, reader, {.everyRule = true}),
                    gui::rigNamesOf(solution), reader);
}

bool isNoted(const ShownAnswer& answer, const QString& text) {
  return std::any_of(answer.notes.begin(), answer.notes.end(),
                     [&](const gui::ShownNote& note) { return note.text.contains(text); });
}

// What the terminal prints with --json.
QJsonArray terminalRigs(rigs::Depth depth) {
  const rigs::Plan& plan = solvedDemo()->plan;
  const std::string text = rigs::resultJson(plan, rigs::answer(plan, depth));
  return QJsonDocument::fromJson(QByteArray::fromStdString(text)).object()["rigs"].toArray();
}

QString cell(const ShownAnswer& answer, const QString& label, int rig) {
  for (const auto& row : answer.tables[0].rows) {
    if (!row.isHeading && row.cells[0].startsWith(label)) return row.cells[rig + 1];
  }
  return QStringLiteral("no such row");
}

// Rounded as the table rounds.
void expectNear(const QString& shown, double number, int decimals) {
  bool isNumber = false;
  EXPECT_NEAR(shown.toDouble(&isNumber), number, 0.51 * std::pow(10.0, -decimals));
  EXPECT_TRUE(isNumber) << shown.toStdString();
}

rigs::SolutionPtr edited(const std::vector<std::pair<std::string, std::string>>& edits) {
  std::string document(rigs::demoPlanText());
  for (const auto& [pointer, value] : edits) document = rigs::withValue(document, pointer, value);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, ".", problems);
  if (!plan)
    throw std::logic_error("the edited demo has errors: " + inEnglish(problems.front().message));
  return gui::solveAtOnce(*plan);
}

TEST(CircuitQuestion, TellsTheTerminalsNumbers) {
  const ShownAnswer answer = ask(Question::Circuit);
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
      EXPECT_TRUE(answer.headline().contains(region)) << answer.headline().toStdString();
      EXPECT_TRUE(answer.headline().contains(edition)) << answer.headline().toStdString();
      // The last verdict row under the region's heading is of all rules together.
      bool under = false;
      QString together;
      for (const auto& row : answer.tables[0].rows) {
        if (row.isHeading) under = row.cells[0].startsWith(region);
        if (under && row.cells[0] == QStringLiteral("all rules together"))
          together = row.cells[i + 1];
      }
      const QString said = verdict["verdict"].toString();
      EXPECT_TRUE(said == "fits only if" ? together.startsWith(QStringLiteral("fits only if ("))
                                         : together == said)
          << together.toStdString();
      // Arithmetic, clause and source of every rule stand below.
      for (const QJsonValue finding : verdict["findings"].toArray()) {
        const QString clause = finding["cite"]["clause"].toString();
        const QString rule = QStringLiteral("· ") + finding["rule"].toString();
        EXPECT_TRUE(isNoted(answer, clause.isEmpty() ? rule : rule + " [" + clause))
            << finding["text"].toString().toStdString();
      }
    }
    const QJsonArray list = circuit["readings"].toArray();
    ASSERT_FALSE(list.isEmpty());
    const QJsonObject reading = list[0].toObject();
    bool found = false;
    for (const auto& row : answer.tables[0].rows) {
      // Codes that say the same are named together.
      if (found || row.isHeading || !row.cells[0].contains(reading["region"].toString()) ||
          !row.cells[0].endsWith(", " + reading["reading"].toString()))
        continue;
      found = true;
      expectNear(row.cells[i + 1], reading["largest_element_W"].toDouble(), 0);
    }
    EXPECT_TRUE(found);
  }
}

TEST(CircuitQuestion, DrawsTheCurrentOfEachPartOfTheDay) {
  const gui::telling::Picture picture = ask(Question::Circuit).pictures[0];
  const rigs::CircuitAnswer& circuit = solvedDemo()->answers.rigs[1].circuit;
  const auto& points = picture.lines[1].points;
  ASSERT_EQ(points.size(), 2 * circuit.duty.spans.size());
  const double whole = 100.0 * static_cast<double>(circuit.circuits[0].load.current /
                                                   circuit.circuits[0].supply.rating);
  double area = 0.0;
  for (std::size_t k = 0; k + 1 < points.size(); k += 2)
    area += points[k].y * (points[k + 1].x - points[k].x);
  EXPECT_NEAR(area, whole * physics::inMinutes(circuit.duty.current()), 1e-6 * area);
  ASSERT_EQ(picture.bands.size(), 1U);
  EXPECT_DOUBLE_EQ(picture.bands[0].from, 80.0);
  EXPECT_NE(picture.bands[0].source.find("United States"), std::string::npos);
}

TEST(CircuitQuestion, EndsWithTheDeferralAndShowsThePlansOwnCautions) {
  const ShownAnswer answer = ask(Question::Circuit);
  const auto deferral = rigs::inEnglish(rigs::electricianText());
  EXPECT_EQ(answer.cautions.back().toStdString(), deferral);
  EXPECT_EQ(answer.allCautions().back(), answer.cautions.back());
  EXPECT_GE(answer.furtherCautions.size(), 5);
  EXPECT_TRUE(answer.furtherCautions.join(QString()).contains(QStringLiteral("Dry firing")));
}

TEST(CircuitQuestion, SaysThatNoRulesApply) {
  const auto solution = edited({{"/rigs/0/supply", R"({"voltage": "120 V", "current": "15 A"})"}});
  const ShownAnswer answer = ask(Question::Circuit, *solution);
  EXPECT_TRUE(answer.headline().contains(
      QStringLiteral("Old element, kitchen: within its rating, and no rules to say more.")))
      << answer.headline().toStdString();
}

TEST(CircuitQuestion, TellsOfASecondCircuit) {
  const auto solution =
      edited({{"/rigs/3/elements",
               R"([{"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
            {"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])"},
              {"/rigs/3/wired", R"("two circuits")"}});
  const ShownAnswer answer = ask(Question::Circuit, *solution);
  const auto& circuits = solution->answers.rigs[3].circuit.circuits;
  ASSERT_EQ(circuits.size(), 2U);
  expectNear(cell(answer, "current in it, cable", 3), physics::inAmperes(circuits[1].load.current),
             2);
  EXPECT_EQ(cell(answer, "current in it, cable", 0), QStringLiteral("–"));
  EXPECT_EQ(std::count_if(answer.pictures[0].lines.begin(), answer.pictures[0].lines.end(),
                          [](const gui::telling::PictureLine& line) { return line.faint; }),
            1);
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
TEST(CircuitQuestion, LeavesNoEnglishInGermanVerdicts) {
  const std::string mains230 = R"({"voltage": "230 V", "current": "16 A"})";
  std::vector<rigs::SolutionPtr> solutions{solvedDemo()};
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
  for (const rigs::SolutionPtr& solution : solutions) {
    const bool demo = solution == solvedDemo();
    for (const Question question : {Question::Circuit, Question::Room}) {
      const ShownAnswer answer = ask(question, *solution);
      for (QString text : gui::asLines(answer.notes) + answer.allCautions()) {
        if (demo) {
          for (const auto& rig : solution->plan.rigs) text.remove(QString::fromStdString(rig.name));
        }
        EXPECT_EQ(englishWordsIn(text).join(QLatin1Char(' ')).toStdString(), "")
            << text.toStdString();
      }
      for (const auto& row : answer.tables[0].rows) {
        EXPECT_EQ(englishWordsIn(row.cells[0]).join(QLatin1Char(' ')).toStdString(), "")
            << row.cells[0].toStdString();
      }
    }
  }
  gui::speak(QStringLiteral("en"));
}

}  // namespace
