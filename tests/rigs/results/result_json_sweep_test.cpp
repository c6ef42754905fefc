// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_sweep.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <nlohmann/json.hpp>
#include <set>
#include <stdexcept>

#include "rigs/answers/helps.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/result_json.hpp"

namespace rigs {
namespace {

using nlohmann::ordered_json;
using testing::ElementsAre;
using testing::HasSubstr;

Sweep sweepOf(std::initializer_list<const char*> typed, std::vector<std::string> figures,
              std::optional<std::size_t> rig = {}) {
  static const std::vector<std::size_t> slots{0, 1, 2, 3};
  Problems problems;
  std::vector<Variation> all;
  for (const char* one : typed) {
    auto read = readVariation(one, {demoPlanText(), ".", slots}, problems);
    if (!read) throw std::logic_error(inEnglish(problems.front().message));
    all.push_back(std::move(*read));
  }
  return {.document = std::string(demoPlanText()),
          .folder = ".",
          .combinations = Combinations(std::move(all), problems),
          .rig = rig,
          .figures = std::move(figures)};
}

ordered_json resultOf(const std::string& document, Depth depth) {
  Problems problems;
  const auto plan = readPlan(document, ".", problems);
  return ordered_json::parse(resultJson(*plan, answer(*plan, depth)));
}

// --- Figures.

TEST(FigurePlaces, AreThoseOfTheResultsSchema) {
  EXPECT_GE(figurePlaces().size(), 300u);
  for (const char* place : {"cost", "day/duration_s", "day/stages/0/last_C", "day/outcome",
                            "sizing/to_boil_within/power_W", "jacket/bare/boil/net_W", "letter"})
    EXPECT_TRUE(isFigurePlace(place)) << place;
  for (const char* place : {"", "day", "day/", "/cost", "day/duration", "day/stages/last_C",
                            "day/stages/*/last_C", "day/stages/x/last_C", "cost/0"})
    EXPECT_FALSE(isFigurePlace(place)) << place;
}

TEST(FigurePlaces, AreGuessed) {
  EXPECT_EQ(nearestFigurePlace("duration_s"), "day/duration_s");
  EXPECT_EQ(nearestFigurePlace("day/durration_s"), "day/duration_s");
  EXPECT_EQ(nearestFigurePlace("cots"), "cost");
  EXPECT_EQ(nearestFigurePlace("day_s"), "helps/today/day_s") << "before one of a list";
  EXPECT_EQ(nearestFigurePlace("last_C"), "day/stages/*/last_C") << "in lists alone";
  EXPECT_EQ(nearestFigurePlace("xylophone"), "");
}

// Whatever a result holds of a rig, its schema knows, and the figure has the same digits.
TEST(Figures, AreThoseOfTheResult) {
  const std::string document(demoPlanText());
  Problems problems;
  const auto plan = readPlan(document, ".", problems);
  ASSERT_TRUE(plan);
  const Answers answers = answer(*plan, Depth::Everything);
  const auto result = ordered_json::parse(resultJson(*plan, answers));
  int compared = 0;
  for (std::size_t i = 0; i < plan->rigs.size(); ++i) {
    const auto flat = result["rigs"][i].flatten();
    std::vector<std::string> places;
    for (const auto& one : flat.items())
      if (!one.value().is_null() && !one.value().is_structured())
        places.push_back(one.key().substr(1));
    const auto figures = figuresOf(*plan, answers, i, places);
    for (std::size_t f = 0; f < places.size(); ++f) {
      EXPECT_TRUE(isFigurePlace(places[f])) << places[f];
      ASSERT_TRUE(figures[f]) << places[f];
      const ordered_json& there = flat['/' + places[f]];
      EXPECT_EQ(figures[f]->isWord, there.is_string());
      EXPECT_EQ(figures[f]->text, there.is_string() ? there.get<std::string>() : there.dump());
      ++compared;
    }
  }
  EXPECT_GE(compared, 2000);
}

TEST(Figures, AreLeftOutWhereADayNeverHadThem) {
  // Too weak to strike: no boil, no wort in the end, no duration of the whole.
  const Sweep sweep =
      sweepOf({"rigs/a/element/power=150 W"},
              {"day/outcome", "day/duration_s", "day/result_cold_L", "day/pre_boil_cold_L",
               "day/lifted_cold_L", "day/to_strike_s", "cost", "day/total/from_wall_kWh"},
              0);
  const SweptCombination found = swept(sweep, 0);
  ASSERT_EQ(found.rows.size(), 1u);
  const auto& figures = found.rows.front().figures;
  ASSERT_EQ(figures.size(), 8u);
  EXPECT_EQ(figures[0], (Figure{"does not reach strike", true}));
  for (std::size_t i = 1; i <= 5; ++i) EXPECT_FALSE(figures[i]) << sweep.figures[i];
  EXPECT_TRUE(figures[6]);  // what was drawn until then
  EXPECT_TRUE(figures[7]);
}

TEST(Figures, AskForNoMoreThanTheyNeed) {
  EXPECT_THAT(depthsFor(decidingFigures()), ElementsAre(Depth::Figures));
  EXPECT_THAT(depthsFor({}), ElementsAre(Depth::Figures));
  EXPECT_THAT(depthsFor({"cost", "on_the_edge/least_W"}), ElementsAre(Depth::Day));
  EXPECT_THAT(depthsFor({"cost", "jacket/saved_cost"}), ElementsAre(Depth::DayAndJacket));
  EXPECT_THAT(depthsFor({"sizing/most_on_circuit_W", "room/released_kg", "cost"}),
              ElementsAre(Depth::Everything, Depth::Room));
}

TEST(Figures, OfSeveralQuestionsStandInOneRow) {
  const std::vector<std::string> wanted{"night/morning_C", "jacket/verdict",
                                        "room/peak_vapour_kg_per_h", "sizing/most_on_circuit_W",
                                        "cost"};
  for (const std::string& place : wanted) ASSERT_TRUE(isFigurePlace(place)) << place;
  const SweptCombination found = swept(sweepOf({"batch/boil=60 min"}, wanted, 1), 0);
  ASSERT_EQ(found.rows.size(), 1u);
  for (const auto& figure : found.rows.front().figures) EXPECT_TRUE(figure);
}

// As "helps --json" has them: no depth of a plan's answers does.
TEST(Figures, OfWhatHelpsMostAreSearchedForWhereTheyAreAskedFor) {
  EXPECT_TRUE(needsWhatHelps({"cost", "helps/today/day_s"}));
  EXPECT_FALSE(needsWhatHelps(decidingFigures()));
  const std::vector<std::string> wanted{"helps/changes/0/id", "helps/wishes/rolls/few/changes/0",
                                        "helps/ways", "helps/today/day_s", "cost"};
  for (const std::string& place : wanted) ASSERT_TRUE(isFigurePlace(place)) << place;
  const Sweep sweep = sweepOf({"rigs/d/element/power=1.5 kW"}, wanted, 3);
  Problems problems;
  const auto plan = readPlan(sweep.combinations.document(sweep.document, sweep.combinations.at(0)),
                             ".", problems);
  Answers answers = answer(*plan, Depth::Figures);
  answers.rigs[3].helps = std::make_shared<const HelpsAnswer>(helps(*plan, 3));
  const SweptCombination found = swept(sweep, 0);
  ASSERT_EQ(found.rows.size(), 1u);
  EXPECT_FALSE(found.isPart);
  EXPECT_EQ(found.rows.front().figures, figuresOf(*plan, answers, 3, wanted));
  for (std::size_t f = 0; f < 3; ++f) EXPECT_TRUE(found.rows.front().figures[f]) << wanted[f];

  // Of a search that was stopped there is no row: it would tell the best of what was tried.
  const SweptCombination stopped = swept(sweep, 0, [] { return true; });
  EXPECT_TRUE(stopped.isPart);
  EXPECT_TRUE(stopped.rows.empty());
}

// --- Rows.

// Each number is the one that "answer --json" has of a plan in which somebody wrote these values.
TEST(SweepRows, HaveTheFiguresOfThePlanThatSomebodyWrites) {
  const Sweep sweep = sweepOf(
      {"rigs/b/element/power=1.5 kW..2.5 kW in 3", "batch/boil=45 min, 60 min"}, decidingFigures());
  for (const std::uint64_t i : {1u, 2u, 5u}) {
    const SweptCombination found = swept(sweep, i);
    EXPECT_EQ(found.number, i + 1);
    ASSERT_EQ(found.rows.size(), 4u);
    const auto result =
        resultOf(sweep.combinations.document(sweep.document, found.values), Depth::Day);
    for (std::size_t rig = 0; rig < 4; ++rig) {
      const SweepRow& row = found.rows[rig];
      EXPECT_EQ(row.rig, std::string(1, static_cast<char>('a' + rig)));
      EXPECT_EQ(row.outcome, result["rigs"][rig]["day"]["outcome"]);
      for (std::size_t f = 0; f < sweep.figures.size(); ++f) {
        SCOPED_TRACE(sweep.figures[f]);
        ASSERT_TRUE(row.figures[f]);
        EXPECT_EQ(
            row.figures[f]->text,
            result["rigs"][rig].at(ordered_json::json_pointer('/' + sweep.figures[f])).dump());
      }
    }
  }
}

TEST(SweepRows, OfOneRigAreTheSameAsAmongAll) {
  for (const char* figure : {"cost", "element_payback/saved_per_brew", "letter"}) {
    const SweptCombination all = swept(sweepOf({"batch/boil=60 min"}, {figure}), 0);
    const SweptCombination one = swept(sweepOf({"batch/boil=60 min"}, {figure}, 3), 0);
    ASSERT_EQ(one.rows.size(), 1u);
    EXPECT_EQ(one.rows.front().rig, "d");
    EXPECT_EQ(one.rows.front().figures, all.rows[3].figures);
  }
}

TEST(SweepRows, SayWhyACombinationIsNoPlan) {
  const Sweep both = sweepOf({"batch/water=20 L"}, {"cost"});
  const SweptCombination refused = swept(both, 0);
  EXPECT_FALSE(refused.isPlan());
  ASSERT_EQ(refused.rows.size(), 1u);
  EXPECT_EQ(refused.rows.front().outcome, "no plan");
  EXPECT_THAT(problemsInLine(refused.rows.front()), HasSubstr("/batch: both \"wort\" and"));
  // What only the day finds out, at the place that the rig has in the plan.
  const SweptCombination overfull = swept(sweepOf({"batch/wort=35 L, 23 L"}, {"cost"}, 2), 0);
  EXPECT_THAT(problemsInLine(overfull.rows.front()), HasSubstr("/rigs/2/vessel: "));
  EXPECT_TRUE(swept(sweepOf({"batch/wort=35 L, 23 L"}, {"cost"}, 2), 1).isPlan());
}

// --- Names and lines.

TEST(SweepNames, EndInTheirUnit) {
  const auto named = [](const char* typed) {
    const Sweep sweep = sweepOf({typed}, {"cost"});
    const Variation& one = sweep.combinations.variations().front();
    return variedName(one) + ' ' + variedFigure(one, one.at(0)).text;
  };
  EXPECT_EQ(named("rigs/b/element/power=1,8 kW"), "rigs/b/element/power_W 1800");
  EXPECT_EQ(named("batch/wort=23 L"), "batch/wort_L 23");
  EXPECT_EQ(named("batch/boil=1 h 5 min"), "batch/boil_s 3900");
  EXPECT_EQ(named("place/room=68 F"), "place/room_C 20");
  EXPECT_EQ(named("goals/boil_off=8 %/h"), "goals/boil_off_per_h 0.08");
  EXPECT_EQ(named("place/humidity=45 %"), "place/humidity 0.45");
  EXPECT_EQ(named("rigs/b/vessel/finish=bright"), "rigs/b/vessel/finish bright");
  EXPECT_EQ(named("tariff/brews_per_year=20"), "tariff/brews_per_year 20");
  EXPECT_EQ(named("day_starts=09:00"), "day_starts 09:00");
}

// Every kind of quantity that a plan may hold has an ending of its own kind.
TEST(SweepNames, AreKnownForEveryKeyOfAPlan) {
  std::set<std::string> places;
  for (const Key& key : planKeys()) {
    if (key.kind != ValueKind::Quantity) continue;
    const auto last = key.place.rfind('/');
    const std::string typed = key.place + '=' + std::string(key.example);
    std::string document(demoPlanText());
    if (key.place.find('*') != std::string::npos || last == 0) continue;  // needs entries
    Problems problems;
    const std::vector<std::size_t> slots{0, 1, 2, 3};
    const auto one = readVariation(typed, {document, ".", slots}, problems);
    if (!one) continue;  // where this plan has something else in its way
    EXPECT_NE(variedName(*one), one->place()) << key.place;
    EXPECT_FALSE(variedFigure(*one, one->at(0)).isWord);
    places.insert(key.place);
  }
  EXPECT_GE(places.size(), 15u);
}

TEST(SweepLines, TellWhatFollowsThenRowsThenTheEnd) {
  const Sweep sweep = sweepOf({"batch/boil=45 min, 60 min", "batch/wort=23 L, 60 L"},
                              {"cost", "day/boil/vigour", "supply/overloaded"}, 3);
  const auto head = ordered_json::parse(sweepHeadLine(sweep));
  EXPECT_EQ(head["format"]["name"], "heat-ledger-sweep");
  EXPECT_EQ(head["combinations"], 4);
  EXPECT_EQ(head["varied"][1], (ordered_json{{"name", "batch/wort_L"}, {"values", 2}}));
  EXPECT_EQ(head["figures"].size(), 3u);

  const std::string line = sweepLines(sweep, swept(sweep, 0));
  EXPECT_EQ(std::count(line.begin(), line.end(), '\n'), 1);
  const auto row = ordered_json::parse(line);
  EXPECT_EQ(row["combination"], 1);
  EXPECT_EQ(row["varied"]["batch/boil_s"], 2700);
  EXPECT_EQ(row["rig"], "d");
  EXPECT_EQ(row["outcome"], "done");
  EXPECT_TRUE(row["figures"]["cost"].is_number());
  EXPECT_TRUE(row["figures"]["day/boil/vigour"].is_string());
  EXPECT_TRUE(row["figures"]["supply/overloaded"].is_boolean());
  EXPECT_FALSE(row.contains("problems"));

  const auto refused = ordered_json::parse(sweepLines(sweep, swept(sweep, 1)));
  EXPECT_EQ(refused["outcome"], "no plan");
  EXPECT_FALSE(refused.contains("rig"));
  EXPECT_FALSE(refused.contains("figures"));
  EXPECT_EQ(refused["problems"][0]["where"], "/rigs/3/vessel");

  const auto end = ordered_json::parse(
      sweepEndLine({.done = 3, .noPlan = 1, .of = 4}, cautionsFor(About::Answer, {}, {})));
  EXPECT_EQ(end["end"], "stopped");
  EXPECT_EQ(end["done"], 3);
  EXPECT_EQ(end["no_plan"], 1);
  EXPECT_EQ(end["cautions"][0]["topic"], "mains");
  EXPECT_EQ(end["cautions"].back()["topic"], "deferral");
  EXPECT_EQ(ordered_json::parse(sweepEndLine({.done = 4, .noPlan = 0, .of = 4}, {}))["end"],
            "complete");
}

TEST(SweepLines, AreTheSameBytesEachTime) {
  const Sweep sweep = sweepOf({"rigs/b/element/power=1 kW..3 kW in 8"}, decidingFigures(), 1);
  const auto all = [&] {
    std::string lines;
    inOrder(
        8, [&](std::uint64_t i) { return sweepLines(sweep, swept(sweep, i)); },
        [&](const std::string& line) {
          lines += line;
          return true;
        });
    return lines;
  };
  std::string oneByOne;
  for (std::uint64_t i = 0; i < 8; ++i) oneByOne += sweepLines(sweep, swept(sweep, i));
  EXPECT_EQ(all(), oneByOne);
}

}  // namespace
}  // namespace rigs
