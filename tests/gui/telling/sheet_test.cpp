// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by: the day's own figures in the order of the clock, and no more than is true.
#include "gui/telling/sheet.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <memory>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "gui/telling/translations.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/telling/sheets.hpp"

namespace gui::telling {
namespace {

using rigs::Told;
using test_support::changedStart;
using test_support::daysAlone;
using test_support::lineText;
using test_support::lineTexts;
using test_support::sheetOf;
using test_support::startedPlan;
using testing::Contains;
using testing::ContainsRegex;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

std::string allOf(const std::vector<Told>& told) {
  std::string all;
  for (const Told& one : told) all += rigs::inEnglish(one) + '\n';
  return all;
}

// Only a chiller that the plan states: the times are those of its own question.
TEST(Sheet, EndsWithChillingAndPitchingWhereTheyAreStated) {
  const auto lastLines = [](const char* chiller) {
    const auto all =
        lineTexts(sheetOf(daysAlone(changedStart("one-kettle", "/rigs/0/chiller", chiller))));
    return std::vector<std::string>(all.end() - 2, all.end());
  };
  EXPECT_THAT(lastLines(R"({"kind": "coil", "wort": "stirred"})"),
              ElementsAre(ContainsRegex("Coil in, water on; stir all the time; hoses fastened "
                                        "first: the water leaves scalding . from .* to 20 °C"),
                          ContainsRegex("Pitch . 20 °C . temperature . gravity")));
  EXPECT_THAT(lastLines(R"({"kind": "coil", "wort": "still"})").back(),
              ContainsRegex("Pitch; or as late as ..:..: still wort chills as it will"));
  EXPECT_THAT(lastLines(R"({"kind": "counterflow"})").front(),
              HasSubstr("Water on; run it through the chiller"));
  EXPECT_THAT(lastLines(R"({"kind": "air"})").front(), HasSubstr("never closed"));
  EXPECT_THAT(lineTexts(sheetOf(daysAlone(startedPlan("one-kettle")))).back(),
              HasSubstr("Element off; unplug"));
  // A temperature alone sends nobody for a coil.
  EXPECT_THAT(lineTexts(sheetOf(daysAlone(
                            changedStart("one-kettle", "/batch/pitching_temperature", "\"18 C\""))))
                  .back(),
              HasSubstr("Element off; unplug"));
}

TEST(Sheet, SaysOfItsHoursAfterTheBoilWhatIsTrueOfThem) {
  const auto cautions = [](const rigs::Plan& plan) {
    return allOf(sheetOf(daysAlone(plan)).cautions);
  };
  const std::string none = "No hours after the boil are counted here";
  EXPECT_THAT(cautions(startedPlan("one-kettle")), HasSubstr(none));
  const std::string chilled =
      cautions(changedStart("one-kettle", "/rigs/0/chiller", R"({"kind": "coil"})"));
  EXPECT_THAT(chilled, Not(HasSubstr(none)));
  EXPECT_THAT(chilled, HasSubstr("it scalds"));
  EXPECT_THAT(chilled, HasSubstr("Never close a hot vessel"));
  // Once is enough.
  const std::string sealed = "Do not seal unfermented wort";
  EXPECT_EQ(chilled.find(sealed), chilled.rfind(sealed));
  EXPECT_THAT(chilled, HasSubstr(sealed));
}

TEST(Sheet, GoesThroughAnOrdinaryDay) {
  const rigs::Solution solution = daysAlone(startedPlan("large-batch"));
  const Sheet sheet = sheetOf(solution);
  EXPECT_EQ(rigs::inEnglish(sheet.title), solution.plan.title);
  EXPECT_THAT(rigs::inEnglish(sheet.rig), HasSubstr("5500 W: a kettle of "));
  EXPECT_THAT(allOf(sheet.circuits), StartsWith("Circuit: 22.92 A of 30 A: "));
  EXPECT_EQ(rigs::inEnglish(sheet.origin), "By Heat Ledger 1.2, from plan.json.");
  EXPECT_TRUE(sheet.warnings.empty());
  EXPECT_THAT(
      lineTexts(sheet),
      ElementsAre(ContainsRegex("^..:.. Heat .* of water from .*; lid on, full power . to "),
                  ContainsRegex("Element off. Grain in, .*; stir it in, lid off . settles"),
                  HasSubstr("Heat to 67 °C; full power, lid on"),
                  HasSubstr("Hold 67 °C for 1 h 15 min; lid on | 67 °C | temperature"),
                  HasSubstr("Lift the grain, full power; lid on, stay with it, and open "
                            "the lid before it rolls"),
                  ContainsRegex("It rolls; .* boil off, stay: foam rises fast"),
                  ContainsRegex("Element off; unplug .* . volume . gravity . meter$")));
  ASSERT_EQ(sheet.sums.size(), 4U);
  EXPECT_THAT(rigs::inEnglish(sheet.sums[2].label), StartsWith("in the end, cold, at 1.0"));
}

TEST(Sheet, TellsANightAsNextDayAndWhenToLook) {
  const rigs::Solution solution = daysAlone(startedPlan("night-unplugged"));
  const Sheet sheet = sheetOf(solution);
  const auto texts = lineTexts(sheet);
  ASSERT_EQ(texts.size(), 8U) << testing::PrintToString(texts);
  EXPECT_EQ(texts[2], "20:49 Lid on, unplug; leave it alone for 10 h | 66.5 °C | temperature");
  EXPECT_EQ(texts[3], "21:19 Read the mash | 63.5 °C | temperature");
  EXPECT_THAT(texts[4], StartsWith("23:49 Read the mash if you are awake"));
  EXPECT_THAT(texts[5], StartsWith("06:49 Lift the grain, plug in, full power"));
  EXPECT_THAT(texts[5], HasSubstr("It was below 57 °C for 8 h 14 min: boil it at once. | 33.7 °C"));
  EXPECT_EQ(rigs::inEnglish(sheet.lines[5].newDay), "Next day");
  for (const std::size_t i : {0u, 1u, 2u, 3u, 4u, 6u, 7u})
    EXPECT_TRUE(sheet.lines[i].newDay.empty()) << i;
  EXPECT_THAT(allOf(sheet.cautions), HasSubstr("of its 10 h unplugged (Bare)"));
  EXPECT_THAT(allOf(sheetOf(solution, 1).cautions), HasSubstr("(In a jacket)"));
}

TEST(Sheet, HasBandsWhereTheyAreKnown) {
  rigs::Solution solution = daysAlone(startedPlan("night-unplugged"));
  EXPECT_TRUE(sheetOf(solution).ofBands.empty());
  rigs::addBands(solution, 0, 16);
  const rigs::Bands& bands = *solution.answers.rigs[0].bands;
  const Sheet sheet = sheetOf(solution);
  EXPECT_THAT(rigs::inEnglish(sheet.ofBands), HasSubstr("8 of 10"));
  const auto clock = [&](physics::Time since) {
    const long minutes =
        std::lround(physics::inMinutes(solution.plan.startOfDay + since)) % (24 * 60);
    return Told::just(rigs::Clock{physics::minutes(static_cast<double>(minutes))});
  };
  const auto expectBand = [&](std::size_t line, const rigs::Band<physics::Time>& band) {
    EXPECT_EQ(rigs::inEnglish(sheet.lines[line].band),
              rigs::inEnglish(clock(*band.low)) + "–" + rigs::inEnglish(clock(*band.high)));
  };
  expectBand(1, bands.waterReady);
  expectBand(6, bands.boilBegins);
  expectBand(7, bands.over);
  EXPECT_THAT(lineText(sheet.lines[5]), ContainsRegex("33\\.7 °C \\(3.–3.\\)"));
}

TEST(Sheet, SaysWhatHardlyBoils) {
  const Sheet edge = sheetOf(daysAlone(startedPlan("hardly-boils")));
  EXPECT_THAT(allOf(edge.warnings), StartsWith("Whether it rolls or only steams nobody can say. "
                                               "That is on the edge"));
  EXPECT_THAT(lineTexts(edge), Contains(HasSubstr("Perhaps it rolls: its clock begins")));
  EXPECT_THAT(lineTexts(edge), Not(Contains(HasSubstr("It rolls"))));

  const rigs::Solution demo = daysAlone(test_support::demoPlan());
  const Sheet never = sheetOf(demo, 0);
  EXPECT_THAT(allOf(never.warnings), StartsWith("It cannot hold the boil."));
  EXPECT_THAT(lineTexts(never), Contains(HasSubstr("It boils and cannot hold it")));
  EXPECT_THAT(lineTexts(never), Contains(HasSubstr("97.2 °C to 83.1 °C")));
  EXPECT_THAT(lineTexts(never), Not(Contains(HasSubstr("It rolls"))));
}

// No flat yes and no flat no where the bands know better.
TEST(Sheet, TellsOnHowManyDaysItRollsWhereThatIsNotSure) {
  rigs::Solution solution = daysAlone(startedPlan("large-batch"));
  ASSERT_FALSE(solution.answers.rigs[0].edge);
  rigs::Bands bands;
  for (const auto& [rolls, said] : {std::pair(0.85, "It rolls on 17 of 20 such days.\n"),
                                    std::pair(1.0, ""), std::pair(0.0, "")}) {
    bands.rolls = rolls;
    solution.answers.rigs[0].bands = std::make_shared<const rigs::Bands>(bands);
    EXPECT_EQ(allOf(sheetOf(solution).warnings), said);
  }
}

// Water to the boil and nothing more: no hydrometer, no grain.
TEST(Sheet, OfWaterAloneHasNoGravity) {
  rigs::Plan plan = startedPlan("large-batch");
  plan.batch.grain.mass = physics::kilograms(0.0);
  const std::string all = testing::PrintToString(lineTexts(sheetOf(daysAlone(plan))));
  EXPECT_THAT(all, HasSubstr("Heat "));
  EXPECT_THAT(all, HasSubstr("Element off"));
  EXPECT_THAT(all, Not(HasSubstr("gravity")));
  EXPECT_THAT(all, Not(HasSubstr("rain")));
  plan.batch.boil = physics::seconds(0.0);
  const Sheet sheet = sheetOf(daysAlone(plan));
  ASSERT_EQ(sheet.lines.size(), 2U);
  EXPECT_THAT(lineText(sheet.lines[1]), HasSubstr("Element off; unplug"));
}

TEST(Sheet, TellsNoTimesBeyondWhereADayStops) {
  const rigs::Solution solution =
      daysAlone(changedStart("one-kettle", "/rigs/0/element/power", "\"60 W\""));
  ASSERT_EQ(solution.answers.rigs[0].day.outcome, physics::Outcome::DoesNotReachStrike);
  const Sheet sheet = sheetOf(solution);
  ASSERT_EQ(sheet.lines.size(), 2U);
  EXPECT_THAT(lineText(sheet.lines[0]), StartsWith("10:00 Heat "));
  EXPECT_FALSE(sheet.lines[1].at.has_value());
  EXPECT_FALSE(sheet.lines[1].isToDo);
  EXPECT_THAT(lineText(sheet.lines[1]),
              StartsWith(" The day stops here; Does not reach the strike temperature."));
  EXPECT_THAT(allOf(sheet.warnings), HasSubstr("do not brew by it"));
  ASSERT_GE(sheet.sums.size(), 1U);
  EXPECT_EQ(rigs::inEnglish(sheet.sums[0].label), "at the meter by then");
  for (const SheetSum& sum : sheet.sums)
    EXPECT_THAT(rigs::inEnglish(sum.label), Not(HasSubstr("in the end")));
}

TEST(Sheet, DoesNotBeginAStrikeThatWouldBoil) {
  rigs::Plan plan = changedStart("one-kettle", "/batch/wort", "\"5 L\"");
  plan.batch.grain.mass = physics::kilograms(12.0);
  plan.batch.mash = physics::HeldMash{{{physics::celsius(90.0), physics::hours(1.0)}}};
  const rigs::Solution solution = daysAlone(plan);
  ASSERT_EQ(solution.answers.rigs[0].day.outcome, physics::Outcome::StrikeTooHot);
  const Sheet sheet = sheetOf(solution);
  ASSERT_EQ(sheet.lines.size(), 1U);
  EXPECT_THAT(lineText(sheet.lines[0]), HasSubstr("the water would have to boil"));
}

TEST(Sheet, IsOfOneRigOfFourWithEveryConditionOfItsCircuit) {
  const rigs::Solution solution = daysAlone(test_support::demoPlan());
  for (std::size_t i = 0; i < 4; ++i) {
    const Sheet sheet = sheetOf(solution, i);
    const std::string& own = solution.plan.rigs[i].name;
    EXPECT_THAT(rigs::inEnglish(sheet.rig), HasSubstr(own));
    EXPECT_EQ(lineTexts(sheet).size(), 9U);
    const std::string said = allOf(sheet.circuits) + allOf(sheet.cautions) + allOf(sheet.warnings);
    for (std::size_t other = 0; other < 4; ++other)
      if (other != i) {
        EXPECT_THAT(said, Not(HasSubstr(solution.plan.rigs[other].name)));
      }
  }
  EXPECT_THAT(allOf(sheetOf(solution, 1).circuits), HasSubstr("does not fit: continuous load"));
  EXPECT_THAT(allOf(sheetOf(solution, 1).circuits),
              HasSubstr("an electrician's or inspector's judgement decides"));
  EXPECT_THAT(allOf(sheetOf(solution, 3).circuits), HasSubstr("fits only if the kettle's maker"));
}

TEST(Sheet, WarnsOfAnOverloadBeforeAnythingElse) {
  rigs::Solution solution = daysAlone(test_support::demoPlan());
  auto& circuit = solution.answers.rigs[2].circuit.circuits.front();
  circuit.nameplate.fit = rigs::Fit::DoesNotFit;
  circuit.nameplate.load = 1.4 * circuit.supply.rating;
  EXPECT_THAT(allOf(sheetOf(solution, 2).warnings), StartsWith("▲ Overload: "));
  EXPECT_THAT(rigs::inEnglish(sheetOf(solution, 2).rig), HasSubstr("▲\u00a0overload"));
  EXPECT_THAT(allOf(sheetOf(solution, 3).warnings), Not(HasSubstr("Overload")));
}

TEST(Sheet, EndsWithTheDeferralToAnElectrician) {
  for (const std::string& name : rigs::planStartNames()) {
    const rigs::Solution solution = daysAlone(startedPlan(name));
    for (std::size_t i = 0; i < solution.plan.rigs.size(); ++i) {
      const Sheet sheet = sheetOf(solution, i);
      ASSERT_FALSE(sheet.cautions.empty());
      EXPECT_THAT(rigs::inEnglish(sheet.cautions.back()), HasSubstr("licensed electrician"));
      const std::string all = allOf(sheet.cautions);
      for (const char* kept : {"ground-fault protection", "Keep the element covered",
                               "Never close, clamp or block", "earthed", "Stay with a heating"})
        EXPECT_THAT(all, HasSubstr(kept)) << name;
    }
  }
}

// Whenever the day begins; a midnight is told once.
TEST(Sheet, NeverGoesBackInTime) {
  for (const std::string& name : rigs::planStartNames()) {
    rigs::Solution solution = daysAlone(startedPlan(name));
    for (int quarter = 0; quarter < 96; quarter += 5) {
      solution.plan.startOfDay = physics::minutes(15.0 * quarter);
      for (std::size_t i = 0; i < solution.plan.rigs.size(); ++i) {
        double last = 0.0;
        long day = 0;
        for (const SheetLine& line : sheetOf(solution, i).lines) {
          if (!line.at) continue;
          const double now = physics::inMinutes(*line.at);
          EXPECT_GE(now, last) << name;
          EXPECT_NEAR(now, std::round(now), 1e-9);
          EXPECT_EQ(!line.newDay.empty(), std::lround(now) / 1440 > day) << name;
          EXPECT_EQ(rigs::inEnglish(line.clock()).size(), 5U);
          day = std::lround(now) / 1440;
          last = now;
        }
      }
    }
  }
}

// --- Every figure is one of the result's.

void addFigures(const rigs::Argument& argument, std::vector<std::string>& figures);
void addFigures(const Told& told, std::vector<std::string>& figures) {
  for (const rigs::Argument& one : told.arguments()) addFigures(one, figures);
}
void addFigures(const rigs::Argument& argument, std::vector<std::string>& figures) {
  if (const auto* told = std::get_if<Told>(&argument.value)) return addFigures(*told, figures);
  if (const auto* list = std::get_if<rigs::List>(&argument.value)) {
    for (const rigs::Argument& one : list->items) addFigures(one, figures);
    return;
  }
  const bool isFigure = std::holds_alternative<rigs::Amount>(argument.value) ||
                        std::holds_alternative<rigs::Money>(argument.value) ||
                        std::holds_alternative<rigs::Number>(argument.value);
  if (isFigure) figures.push_back(rigs::tell(argument, test_support::siReader()));
}

// What a rig's part of the JSON would read as, in every way in which a sheet tells it.
void addReadings(const nlohmann::json& value, const std::string& key, std::set<std::string>& all) {
  if (value.is_structured()) {
    for (const auto& [inner, of] : value.items())
      addReadings(of, value.is_array() ? key : inner, all);
    return;
  }
  if (!value.is_number()) return;
  const double number = value.get<double>();
  all.insert(rigs::formatNumber(number, {.decimals = 3}));
  all.insert(rigs::tell(rigs::Argument(rigs::Money{number, "EUR"}), {}));
  const auto add = [&](const auto& quantity) {
    all.insert(rigs::tell(rigs::Argument(rigs::amount(quantity)), {}));
  };
  if (key.ends_with("_L")) add(physics::litres(number));
  if (key.ends_with("_C")) add(physics::celsius(number));
  if (key.ends_with("_kWh")) add(physics::kilowattHours(number));
  if (key.ends_with("_L_per_h")) add(physics::litresPerHour(number));
  if (key.ends_with("_s")) all.insert(rigs::inEnglish(rigs::roughly(physics::seconds(number))));
}

TEST(Sheet, HasTheFiguresOfTheResult) {
  const rigs::Solution solution = daysAlone(startedPlan("night-unplugged"));
  const auto result = nlohmann::json::parse(rigs::resultJson(solution.plan, solution.answers));
  for (std::size_t i = 0; i < 2; ++i) {
    std::set<std::string> known{"4.8 kg", "10 h", "9 °C", "57 °C", "0.32 EUR"};  // the plan's
    addReadings(result["rigs"][i], "", known);
    double steam = 0.0;
    for (const auto& stage : result["rigs"][i]["day"]["stages"])
      steam += stage["evaporated_kg"].get<double>();
    known.insert(rigs::tell(rigs::Argument(rigs::amount(physics::kilograms(steam))), {}));
    std::vector<std::string> figures;
    const Sheet sheet = sheetOf(solution, i);
    for (const SheetLine& line : sheet.lines) {
      for (const Told* told : {&line.action, &line.more}) addFigures(*told, figures);
      for (const Told& told : line.expected) addFigures(told, figures);
    }
    for (const SheetSum& sum : sheet.sums) {
      addFigures(sum.figure, figures);
      addFigures(sum.label, figures);
    }
    EXPECT_GE(figures.size(), 25U);
    for (const std::string& one : figures) EXPECT_TRUE(known.contains(one)) << one;
  }
}

TEST(Sheet, SpeaksGermanAndUnitsOfChoice) {
  const rigs::Solution solution = daysAlone(startedPlan("night-unplugged"));
  const rigs::Reader german{.units = rigs::UnitSystem::UsCustomary, .language = &languageOf("de")};
  const Sheet sheet = sheetOf(solution, 0, german);
  EXPECT_THAT(lineTexts(sheet, german),
              Contains(StartsWith("20:49 Deckel auflegen, Stecker ziehen; 10 h stehen lassen | "
                                  "151,7 °F")));
  EXPECT_EQ(rigs::tell(sheet.lines[5].newDay, german), "Am nächsten Tag");
}

}  // namespace
}  // namespace gui::telling
