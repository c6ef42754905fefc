// SPDX-License-Identifier: GPL-3.0-or-later
// What does it cost? Prices by the hour and by the month's use, starts, paybacks, carbon dioxide.
#include <gtest/gtest.h>

#include <cmath>

#include "gui/window/exports/report_inputs.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/questions/question.hpp"
#include "gui/window/questions/tariff_text.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/documents/json_edit.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::Answer;
using gui::Question;
using rigs::UnitSystem;

gui::SolutionPtr withTariff(const std::string& tariff) {
  const std::string document =
      rigs::withValue(std::string(rigs::demoPlanText()), "/tariff", tariff);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, ".", problems);
  if (!plan) throw std::logic_error(inEnglish(problems.front().message));
  return gui::solveAtOnce(*plan);
}

// Cheap nights and mornings; the brew begins at nine.
const gui::SolutionPtr& byTheHour() {
  static const gui::SolutionPtr solution = withTariff(
      R"({"times": {"weekday": [{"from": "00:00", "to": "07:00", "price": "0.08 CAD/kWh"},
                                {"from": "07:00", "to": "19:00", "price": "0.16 CAD/kWh"},
                                {"from": "19:00", "to": "24:00", "price": "0.10 CAD/kWh"}]},
          "brews_per_year": 20, "jacket_price": 40, "element_price": 60, "brew_from": "06:00",
          "brew_until": "22:00", "co2_per_kWh": "0.1 kg", "co2_source": "an example"})");
  return solution;
}

QString cell(const Answer& answer, const QString& heading, const QString& label, int rig) {
  bool under = false;
  for (const auto& row : answer.table.rows) {
    if (row[1].isEmpty()) under = row[0].startsWith(heading);
    if (under && row[0].startsWith(label)) return row[rig + 1];
  }
  return QStringLiteral("no such row");
}

double number(const QString& text) {
  bool isNumber = false;
  const double value = text.toDouble(&isNumber);
  EXPECT_TRUE(isNumber) << text.toStdString();
  return value;
}

TEST(Cost, ByTheHourIsPricedStageByStage) {
  const Answer answer = gui::answerTo(Question::WhatCost, *byTheHour(), UnitSystem::SI);
  for (int i = 0; i < 4; ++i) {
    const rigs::RigAnswer& rig = byTheHour()->answers.rigs[static_cast<std::size_t>(i)];
    double sum = 0.0;
    for (const double part : answer.pictures[0].stacks[i].parts) sum += part;
    ASSERT_TRUE(rig.cost);
    EXPECT_GT(sum, 0.1);
    EXPECT_NEAR(sum, *rig.cost, 1e-9);
    // All of the day lies between seven and nineteen.
    EXPECT_NEAR(sum, 0.16 * physics::inKilowattHours(rig.day.total.fromWall()), 1e-9);
    EXPECT_NEAR(number(cell(answer, "Cost, ", "boiling", i)),
                *rigs::costOf(rig, physics::StageKind::Boil), 0.0051);
  }
}

TEST(Cost, ByUseGoesUpFromTierToTier) {
  const auto solution = withTariff(
      R"({"tiers": [{"up_to": "600 kWh", "price": "0.10 CAD/kWh"}, {"price": "0.20 CAD/kWh"}],
          "used_this_month": "598 kWh"})");
  const Answer answer = gui::answerTo(Question::WhatCost, *solution, UnitSystem::SI);
  for (int i = 0; i < 4; ++i) {
    const rigs::RigAnswer& rig = solution->answers.rigs[static_cast<std::size_t>(i)];
    const double used = physics::inKilowattHours(rig.day.total.fromWall());
    double sum = 0.0;
    for (const double part : answer.pictures[0].stacks[i].parts) sum += part;
    EXPECT_NEAR(sum, 0.2 * used - 0.2, 1e-6);  // the first two kilowatt-hours at half the price
    EXPECT_NEAR(sum, *rig.cost, 1e-9);
  }
}

TEST(Cost, TellsTheCheapestStart) {
  const Answer answer = gui::answerTo(Question::WhatCost, *byTheHour(), UnitSystem::SI);
  const rigs::RigAnswer& rig = byTheHour()->answers.rigs[3];
  const auto choice = rigs::cheapestStart(rig.day, byTheHour()->plan.tariff, physics::hours(6.0),
                                          physics::hours(22.0));
  ASSERT_TRUE(choice);
  EXPECT_LT(choice->cheapest.cost, *rig.cost);
  EXPECT_NEAR(number(cell(answer, "When to begin", "a batch begun then", 3)), choice->cheapest.cost,
              0.0051);
  const gui::Writer write(UnitSystem::SI);
  EXPECT_EQ(cell(answer, "When to begin", "cheapest start", 3), write.clock(choice->cheapest.at));
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("Begun at ")))
      << answer.sentence.toStdString();
  ASSERT_EQ(answer.pictures.size(), 2);
  // The picture's lowest point within the window is the table's.
  double least = 1e9;
  for (const QPointF& p : answer.pictures[1].lines[3].points) {
    if (p.x() >= 360.0 && p.x() <= 1320.0) least = std::min(least, p.y());
  }
  EXPECT_NEAR(least, choice->cheapest.cost, 1e-9);
}

TEST(Cost, CountsThePlansYear) {
  const Answer answer = gui::answerTo(Question::WhatCost, *byTheHour(), UnitSystem::SI);
  const double cost = *byTheHour()->answers.rigs[1].cost;
  EXPECT_NEAR(number(cell(answer, "Cost, ", "a year of 20 batches", 1)), 20.0 * cost, 0.0051);
  EXPECT_EQ(cell(answer, "Cost, ", "a year of 20 batches", 0), QStringLiteral("–"));
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("a year of 20 batches")));
  // A plan that does not say brews once a month.
  const Answer demo =
      gui::answerTo(Question::WhatCost, *test_support::solvedDemo(), UnitSystem::SI);
  EXPECT_TRUE(demo.sentence.contains(QStringLiteral("a year of 12 batches")));
}

TEST(Cost, TellsPaybacksAndCarbonDioxide) {
  const Answer answer = gui::answerTo(Question::WhatCost, *byTheHour(), UnitSystem::SI);
  const rigs::RigAnswer& rig = byTheHour()->answers.rigs[1];
  ASSERT_TRUE(rig.jacket);
  const double saved =
      20.0 * *rigs::moneySaved(rig.jacket->bare, rig.jacket->jacketed, byTheHour()->plan);
  EXPECT_NEAR(number(cell(answer, "A jacket for", "saves in a year", 1)), saved, 0.0051);
  EXPECT_NEAR(number(cell(answer, "A jacket for", "paid back after", 1)), 40.0 / saved, 0.051);
  EXPECT_EQ(cell(answer, "A jacket for", "paid back after", 0), QStringLiteral("–"));
  EXPECT_NEAR(number(cell(answer, "An element for", "for each batch", 1)), 3.0, 1e-9);
  const double kilowattHours = physics::inKilowattHours(rig.day.total.fromWall());
  EXPECT_NEAR(number(cell(answer, "Carbon dioxide", "a batch", 1)), 0.1 * kilowattHours, 0.0051);
  EXPECT_NEAR(number(cell(answer, "Carbon dioxide", "a year", 1)), 2.0 * kilowattHours, 0.0051);
  EXPECT_TRUE(answer.notes.join(QString()).contains(QStringLiteral("an example")));
}

TEST(Jacket, SavesWhatTheDaysDifferByTheHour) {
  const Answer answer =
      gui::answerTo(Question::WorthJacket, *byTheHour(), UnitSystem::SI, {.savings = true});
  const rigs::RigAnswer& rig = byTheHour()->answers.rigs[1];
  const double saved = *rigs::moneySaved(rig.jacket->bare, rig.jacket->jacketed, byTheHour()->plan);
  EXPECT_GT(saved, 0.0);
  EXPECT_NEAR(number(cell(answer, "Cost of a batch, CAD", "saved", 1)), saved, 0.00051);
  EXPECT_FALSE(answer.pictures[1].lines[1].points.isEmpty());
  EXPECT_NEAR(answer.pictures[1].lines[1].points.front().y(), 0.0, 1e-9);
}

TEST(TariffText, TellsEveryHourAndTier) {
  const QString hours = gui::tariffText(byTheHour()->plan.tariff);
  for (const char* part : {"0.08 CAD per kWh from 00:00 to 07:00", "0.16 CAD per kWh from 07:00",
                           "0.1 CAD per kWh from 19:00 to 24:00", "weekday"}) {
    EXPECT_TRUE(hours.contains(QString::fromLatin1(part))) << hours.toStdString();
  }
  const auto inputs = gui::dayInputs(byTheHour()->plan, UnitSystem::SI);
  bool found = false;
  for (const auto& row : inputs.rows) found = found || row[1] == hours;
  EXPECT_TRUE(found);
  rigs::Tariff tiers;
  tiers.currency = "EUR";
  tiers.tiers = {{physics::kilowattHours(600.0), 0.1}, {std::nullopt, 0.2}};
  const QString text = gui::tariffText(tiers);
  EXPECT_TRUE(text.contains(QStringLiteral("0.1 EUR per kWh up to 600 kWh a month")))
      << text.toStdString();
  EXPECT_TRUE(text.contains(QStringLiteral("0.2 EUR per kWh above"))) << text.toStdString();
  EXPECT_FALSE(text.contains(QStringLiteral("0 EUR")) && !text.contains(QStringLiteral("0.")));
}

}  // namespace
