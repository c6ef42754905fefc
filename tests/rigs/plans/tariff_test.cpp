// SPDX-License-Identifier: GPL-3.0-or-later
// Check values were computed here from the prices named beside them.
#include "rigs/plans/tariff.hpp"

#include <gtest/gtest.h>

#include "physics/water.hpp"
#include "rigs/plans/tariff_reader.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::demoWith;
using test_support::Json;
using test_support::readChecked;
using test_support::removed;
using test_support::told;

// United States, residential average of 2024 (EIA), in cents.
Tariff flat() { return {.perKilowattHour = 16.5, .currency = "ct", .dated = "2024-12"}; }

// Ontario, regulated, winter from 1 November 2024 (Ontario Energy Board announcement of 18 October
// 2024), in Canadian cents.
Tariff ontario() {
  Tariff t = {.perKilowattHour = 0.0, .currency = "ct", .dated = "2024-11"};
  t.weekday = {{hours(0), hours(7), 7.6},
               {hours(7), hours(11), 15.8},
               {hours(11), hours(17), 12.2},
               {hours(17), hours(19), 15.8},
               {hours(19), hours(24), 7.6}};
  t.weekend = {{hours(0), hours(24), 7.6}};
  return t;
}
Tariff ontarioTiers() {
  Tariff t = {.perKilowattHour = 0.0, .currency = "ct", .dated = "2024-11"};
  t.tiers = {{kilowattHours(1000.0), 9.3}, {std::nullopt, 11.0}};
  return t;
}
Tariff ontarioOvernight() {
  Tariff t = ontario();
  t.weekday = {{hours(0), hours(7), 2.8},
               {hours(7), hours(16), 12.2},
               {hours(16), hours(21), 28.4},
               {hours(21), hours(23), 12.2},
               {hours(23), hours(24), 2.8}};
  return t;
}

double cost(const Tariff& t, double kWh, double from, double to) {
  return costBetween(t, kilowattHours(kWh), hours(from), hours(to));
}

TEST(CostBetween, MatchesTheCheckValues) {
  EXPECT_NEAR(cost(flat(), 8.0, 9, 15), 132.0, 1e-9);                                   // C1
  EXPECT_NEAR(cost(ontario(), 3.0, 8, 11) + cost(ontario(), 5.0, 20, 23), 85.4, 1e-9);  // C2
  Tariff tiers = ontarioTiers();
  tiers.usedThisMonth = kilowattHours(990.0);
  EXPECT_NEAR(cost(tiers, 20.0, 9, 12), 203.0, 1e-9);  // C3
  const Tariff night = ontarioOvernight();
  EXPECT_NEAR(cost(night, 6.0, 1, 6) + cost(night, 2.0, 8, 10), 41.2, 1e-9);  // C5
  EXPECT_NEAR(cost(night, 4.0, 17, 20), 113.6, 1e-9);
  EXPECT_NEAR(cost(night, 4.0, 23, 26), 11.2, 1e-9);
  Tariff rebated = ontario();
  rebated.rebate = 0.131;
  EXPECT_NEAR(cost(rebated, 3.0, 8, 11) + cost(rebated, 5.0, 20, 23), 74.2, 0.05);  // C6
  // C8: 4.8 kWh spread evenly over 18:00 to 20:00, across the change of 19:00.
  EXPECT_NEAR(cost(ontario(), 4.8, 18, 20), 56.2, 0.05);
}

TEST(Co2Of, MatchesTheCheckValue) {  // C4: 0.367 kg/kWh, United States 2023 (EIA)
  Tariff t = flat();
  t.co2PerKilowattHour = kilograms(0.367);
  EXPECT_WITHIN(co2Of(kilowattHours(8.0), t).value(), kilograms(2.94), kilograms(0.005));
  EXPECT_FALSE(co2Of(kilowattHours(8.0), flat()));
}

// C7: 25 L of 1 kg/L and 4.186 kJ/(kg K) from 18 to 67 C; 3 kg boiled off at 2257 kJ/kg.
// Ours are of water as it is, whose specific heat is up to 0.5 % from the round 4.186 there.
TEST(Energies, MatchTheCheckValues) {
  const SpecificEnergy warmed = waterEnthalpy(celsius(67.0)) - waterEnthalpy(celsius(18.0));
  EXPECT_NEAR(inKilowattHours(kilograms(25.0) * warmed), 1.424, 0.005 * 1.424);
  EXPECT_NEAR(inKilowattHours(kilograms(3.0) * latentHeat(celsius(100.0))), 1.881, 0.0005 + 0.005);
}

const Tariff& bundled(std::string_view name) {
  for (const BundledTariff& one : bundledTariffs())
    if (one.tariff.name == name) return one.tariff;
  throw std::runtime_error("no such tariff");
}

// The same check values from the documents that are part of the program, in CAD and USD.
TEST(BundledTariffs, GiveTheCheckValues) {
  EXPECT_NEAR(cost(bundled("United States average 2024"), 8.0, 9, 15), 1.320, 1e-9);  // C1
  const Tariff& hourly = bundled("Ontario time of use, winter 2024");
  EXPECT_NEAR(cost(hourly, 3.0, 8, 11) + cost(hourly, 5.0, 20, 23), 0.854, 1e-9);  // C2
  Tariff tiers = bundled("Ontario tiered, winter 2024");
  tiers.usedThisMonth = kilowattHours(990.0);
  EXPECT_NEAR(cost(tiers, 20.0, 9, 12), 2.030, 1e-9);  // C3
  EXPECT_WITHIN(co2Of(kilowattHours(8.0), bundled("United States average 2024")).value(),
                kilograms(2.94), kilograms(0.005));  // C4
  const Tariff& night = bundled("Ontario ultra-low overnight 2024");
  EXPECT_NEAR(cost(night, 6.0, 1, 6) + cost(night, 2.0, 8, 10), 0.412, 1e-9);  // C5
  EXPECT_NEAR(cost(night, 4.0, 17, 20), 1.136, 1e-9);
}

TEST(BundledTariffs, SayWhoWhenAndHowSure) {
  ASSERT_GE(bundledTariffs().size(), 6u);
  for (const BundledTariff& one : bundledTariffs()) {
    SCOPED_TRACE(one.tariff.name);
    EXPECT_FALSE(one.tariff.source.empty());
    EXPECT_FALSE(one.tariff.dated.empty());
    EXPECT_EQ(one.tariff.status, "published");
    EXPECT_FALSE(one.about.empty());
  }
}

TEST(ReadTariff, StartsFromABundledOneAndKeepsWhatThePlanSays) {
  const auto read = readChecked(demoWith({{"/tariff", Json::parse(R"({
      "from": "Ontario tiered, winter 2024", "used_this_month": "990 kWh", "rebate": "13.1 %",
      "brews_per_year": 20})")}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const Tariff& t = read.plan->tariff;
  EXPECT_EQ(t.name, "Ontario tiered, winter 2024");
  EXPECT_EQ(t.currency, "CAD");
  EXPECT_EQ(t.dated, "2024-11");
  EXPECT_EQ(t.brewsPerYear, 20.0);
  EXPECT_NEAR(cost(t, 20.0, 9, 12), 2.030 * 0.869, 1e-9);
  EXPECT_TRUE(read.problems.empty()) << told(read.problems);
}

TEST(CostBetween, SplitsAnIntervalWithoutChangingItsCost) {
  for (const Tariff& t : {flat(), ontario(), ontarioOvernight()}) {
    for (double from = 0.0; from < 48.0; from += 1.7) {
      const double middle = from + 1.3;
      EXPECT_NEAR(cost(t, 4.0, from, from + 2.6),
                  cost(t, 2.0, from, middle) + cost(t, 2.0, middle, from + 2.6), 1e-9);
    }
  }
}

TEST(CostBetween, KnowsPricesAfterMidnightAndAtAnInstant) {
  EXPECT_NEAR(cost(ontario(), 2.0, 23, 25), 2.0 * 7.6, 1e-9);
  EXPECT_NEAR(cost(ontario(), 2.0, 31, 35), 2.0 * 15.8, 1e-9);
  EXPECT_NEAR(cost(ontario(), 2.0, 18.5, 18.5), 2.0 * 15.8, 1e-9);
  Tariff weekend = ontario();
  weekend.day = DayOfWeek::Weekend;
  EXPECT_NEAR(cost(weekend, 2.0, 18.5, 20), 2.0 * 7.6, 1e-9);
}

BrewDay steadyDay(double kWh, double hour) {
  BrewDay day;
  Stage stage{};
  stage.end = hours(hour);
  stage.ledger.element = kilowattHours(kWh);
  day.stages.push_back(stage);
  day.total = stage.ledger;
  return day;
}

TEST(CheapestStart, FindsTheNightAndNamesTheDearest) {
  const auto choice = cheapestStart(steadyDay(6.0, 2.0), ontarioOvernight(), hours(8), hours(23));
  ASSERT_TRUE(choice);
  EXPECT_WITHIN(choice->cheapest.at, hours(23.0), seconds(1.0));
  EXPECT_NEAR(choice->cheapest.cost, 6.0 * 2.8, 1e-9);
  EXPECT_NEAR(choice->dearest.cost, 6.0 * 28.4, 1e-9);
  EXPECT_WITHIN(choice->dearest.at, hours(16.0), seconds(1.0));
  EXPECT_FALSE(cheapestStart(steadyDay(6.0, 2.0), flat(), hours(8), hours(22)));
}

TEST(CheapestStart, SearchesAWindowOverMidnight) {
  Tariff night = ontarioOvernight();
  const BrewDay day = steadyDay(6.0, 2.0);
  // From 20:00 to 06:00: dear until 21:00, cheap from 23:00 on. The last start, at 06:00, pays an
  // hour of the morning, so it is neither.
  const auto choice = cheapestStart(day, night, hours(20), hours(6));
  ASSERT_TRUE(choice);
  EXPECT_WITHIN(choice->cheapest.at, hours(23.0), seconds(1.0));
  EXPECT_WITHIN(choice->dearest.at, hours(20.0), seconds(1.0));
  const auto after = cheapestStart(day, night, hours(23.5), hours(4));
  EXPECT_WITHIN(after->cheapest.at, hours(23.5), seconds(1.0));
  EXPECT_NEAR(after->dearest.cost, 6.0 * 2.8, 1e-9);
  const auto late = cheapestStart(day, night, hours(21.5), hours(0.5));
  EXPECT_WITHIN(late->cheapest.at, hours(23.0), seconds(1.0));
  EXPECT_LT(late->cheapest.at, hours(24.0));
}

TEST(CheapestStart, TakesTheTariffsOwnWindowOrAnyHour) {
  Tariff night = ontarioOvernight();
  const BrewDay day = steadyDay(6.0, 2.0);
  const auto any = cheapestStart(day, night);
  ASSERT_TRUE(any);
  EXPECT_NEAR(any->cheapest.cost, 6.0 * 2.8, 1e-9);
  EXPECT_NEAR(any->dearest.cost, 6.0 * 28.4, 1e-9);
  night.brewFrom = hours(9.0);
  night.brewUntil = hours(17.0);
  const auto within = cheapestStart(day, night);
  EXPECT_WITHIN(within->cheapest.at, hours(9.0), seconds(1.0));
  EXPECT_NEAR(within->cheapest.cost, 6.0 * 12.2, 1e-9);
}

TEST(StageCosts, ClimbTheTiersStageByStage) {
  BrewDay day = steadyDay(20.0, 2.0);
  day.stages.push_back(day.stages.front());
  day.total += day.stages.back().ledger;
  Tariff tiers = ontarioTiers();
  tiers.usedThisMonth = kilowattHours(990.0);
  const auto costs = stageCosts(day, tiers, hours(9.0));
  ASSERT_EQ(costs.size(), 2u);
  EXPECT_NEAR(costs[0], 203.0, 1e-9);
  EXPECT_NEAR(costs[1], 220.0, 1e-9);
  EXPECT_NEAR(dayCost(day, tiers, hours(9.0)).value(), 423.0, 1e-9);
}

TEST(Payback, DividesThePriceByTheYear) {
  EXPECT_NEAR(payback(45.0, 0.15, 12.0).years.value(), 25.0, 1e-9);
  EXPECT_FALSE(payback(45.0, -0.1, 12.0).years);
}

struct WrongTariff {
  const char* tariff;
  const char* where;
  const char* says;
};

TEST(ReadTariff, NamesGapsOverlapsAndMixtures) {
  for (const WrongTariff& c :
       {WrongTariff{
            R"({"times": {"weekday": [{"from": "07:00", "to": "19:00", "price": "0.2 EUR/kWh"}]}})",
            "/tariff/times/weekday", "no price is stated from 00:00 to 07:00"},
        WrongTariff{
            R"({"times": {"weekday": [{"from": "00:00", "to": "12:00", "price": "0.2 EUR/kWh"},
                                           {"from": "11:30", "to": "24:00", "price": "0.1 EUR/kWh"}]}})",
            "/tariff/times/weekday", "two prices are stated from 11:30 to 12:00"},
        WrongTariff{
            R"({"times": {"weekday": [{"from": "00:00", "to": "24:00", "price": "0.2 EUR/kWh"}],
                               "weekend": [{"from": "00:00", "to": "23:00", "price": "0.2 EUR/kWh"}]}})",
            "/tariff/times/weekend", "no price is stated from 23:00 to 24:00"},
        WrongTariff{
            R"({"times": {"weekday": [{"from": "19:00", "to": "07:00", "price": "0.2 EUR/kWh"},
                                           {"from": "07:00", "to": "19:00", "price": "$0.1/kWh"}]}})",
            "/tariff/times/weekday/1/price", "keep to one"},
        WrongTariff{R"({"price": "0.2 EUR/kWh", "tiers": []})", "/tariff/tiers", "keep one"},
        WrongTariff{R"({"price": "0.2 EUR/kWh", "from": "Germany average 2025"})", "/tariff/price",
                    "keep one"},
        WrongTariff{R"({"from": "Germany average 2026"})", "/tariff/from",
                    "perhaps \"Germany average 2025\" was meant"},
        WrongTariff{R"({"tiers": [{"up_to": "1000 kWh", "price": "0.09 CAD/kWh"},
                               {"up_to": "900 kWh", "price": "0.1 CAD/kWh"},
                               {"price": "0.11 CAD/kWh"}]})",
                    "/tariff/tiers/1/up_to", "ended already"},
        WrongTariff{
            R"({"times": {"weekday": [{"from": "25:00", "to": "24:00", "price": "0.2 EUR/kWh"}]}})",
            "/tariff/times/weekday/0/from", "is no time of day"}}) {
    SCOPED_TRACE(c.tariff);
    const auto read = readChecked(demoWith({{"/tariff", Json::parse(c.tariff)}}));
    EXPECT_FALSE(read.plan);
    bool found = false;
    for (const Problem& p : read.problems)
      found =
          found || (p.where == c.where && inEnglish(p.message).find(c.says) != std::string::npos);
    EXPECT_TRUE(found) << told(read.problems);
  }
}

// A price that cannot be read hides no gap: all problems at once.
TEST(ReadTariff, HoldsTheHoursAgainstTheDayWhateverThePrices) {
  const auto read = readChecked(demoWith({{"/tariff", Json::parse(R"({"times": {"weekday": [
      {"from": "00:00", "to": "06:00", "price": "0.1 EUR/kWh"},
      {"from": "05:00", "to": "23:00", "price": "dear"}]}})")}}));
  EXPECT_FALSE(read.plan);
  const std::string all = told(read.problems);
  for (const char* part :
       {"/tariff/times/weekday/1/price", "two prices are stated from 05:00 to 06:00",
        "no price is stated from 23:00 to 24:00"})
    EXPECT_NE(all.find(part), std::string::npos) << part << "\n" << all;
}

TEST(ReadTariff, CutsAWindowOverMidnightInTwo) {
  const auto read = readChecked(demoWith({{"/tariff", Json::parse(R"({"times": {"weekday": [
          {"from": "19:00", "to": "07:00", "price": "0.076 CAD/kWh"},
          {"from": "07:00", "to": "19:00", "price": "0.122 CAD/kWh"}]}, "rebate": "13.1 %"})")}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const Tariff& t = read.plan->tariff;
  ASSERT_EQ(t.weekday.size(), 3u);
  EXPECT_EQ(t.weekend.size(), 3u);
  EXPECT_NEAR(costBetween(t, kilowattHours(1.0), hours(2.0), hours(3.0)), 0.076 * 0.869, 1e-12);
}

}  // namespace
