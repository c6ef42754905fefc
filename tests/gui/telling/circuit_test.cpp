// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it? The result's own numbers and verdicts, and nothing said twice.
#include "gui/telling/circuit.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "gui/telling/circuit_rules.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/element.hpp"
#include "gui/telling/words.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/circuit_words.hpp"
#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using rigs::Told;
using test_support::caseOf;
using test_support::demoCase;
using test_support::holds;
using test_support::inShort;
using test_support::saidOf;
using test_support::solvedDemo;
using ::testing::HasSubstr;

const Answer& ofDemo() {
  static const Answer answer = circuitCarries(demoCase());
  return answer;
}
const Answer& everyRuleOfDemo() {
  static const Answer answer = circuitCarries(demoCase({.everyRule = true}));
  return answer;
}

// The demo with values put at places of its document.
rigs::Solution edited(const std::vector<std::pair<std::string, std::string>>& edits) {
  std::string document(rigs::demoPlanText());
  for (const auto& [pointer, value] : edits) document = rigs::withValue(document, pointer, value);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, ".", problems);
  if (!plan) throw std::logic_error("the edited demo has errors");
  return {.plan = *plan,
          .answers = rigs::answer(*plan, rigs::Depth::Circuit),
          .sweeps = {},
          .done = {.circuit = true},
          .edition = 0};
}
const rigs::Solution& withTwoCircuits() {
  static const rigs::Solution solution =
      edited({{"/rigs/3/elements",
               R"([{"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
            {"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])"},
              {"/rigs/3/wired", R"("two circuits")"}});
  return solution;
}

// Every heading and sentence, a line each.
std::string spoken(const Answer& answer, const rigs::Reader& reader = test_support::siReader()) {
  std::string all;
  for (const Block& block : answer.blocks) {
    if (const auto* heading = std::get_if<Heading>(&block))
      all += rigs::tell(heading->text, reader) + '\n';
    if (const auto* one = std::get_if<Sentence>(&block))
      all += (one->rig && !one->goesOn ? letter(*one->rig) + ' ' : std::string()) +
             rigs::tell(one->text, reader) + '\n';
  }
  return all;
}

TEST(CircuitCarries, ShowsTheFiguresOfTheResult) {
  test_support::expectFiguresOfTheResult(ofDemo(), solvedDemo(), 14);
  test_support::expectFiguresOfTheResult(circuitCarries(caseOf(withTwoCircuits())),
                                         withTwoCircuits(), 17);
}

TEST(CircuitCarries, JudgesEveryRigByEveryCodeAsTheResultDoes) {
  const auto result =
      nlohmann::json::parse(rigs::resultJson(solvedDemo().plan, solvedDemo().answers));
  int judged = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    for (const auto& verdict : result["rigs"][i]["circuit"]["circuits"][0]["verdicts"]) {
      const std::string code = verdict["region"].get<std::string>() + ", " +
                               verdict["code"].get<std::string>() + ' ' +
                               verdict["edition"].get<std::string>();
      EXPECT_TRUE(holds(inShort(ofDemo()), code)) << code;
      const std::string said = verdict["verdict"];
      const std::string shown = test_support::cell(ofDemo(), code, "all rules together", i);
      EXPECT_TRUE(said == "fits only if" ? shown.starts_with("fits only if (") : shown == said)
          << shown;
      ++judged;
    }
  }
  EXPECT_GE(judged, 6);
}

// A safety condition is told in full wherever a verdict is: in the short answer, with the verdicts,
// with each rule, and with the figures, in cells by a number that stands below them.
TEST(CircuitCarries, NeverLeavesOutACondition) {
  const auto ofTable = [](const Answer& answer) {
    std::vector<std::string> legend;
    for (const Told& one : answer.tables().front()->legend) legend.push_back(rigs::inEnglish(one));
    return legend;
  };
  int seen = 0;
  for (const rigs::Solution* solution : {&solvedDemo(), &withTwoCircuits()}) {
    const Answer answer = circuitCarries(caseOf(*solution));
    const std::vector<std::string> legend = ofTable(answer);
    const auto shown = shownRows(*answer.tables().front(), test_support::siReader());
    const std::string csv = csvOf(answer, {"a", "b", "c", "d"}, test_support::siReader());
    for (const std::string& text : {spoken(answer), inShort(answer), csv})
      EXPECT_FALSE(holds(text, "only if …")) << text;
    for (std::size_t i = 0; i < solution->answers.rigs.size(); ++i) {
      for (const rigs::CircuitLoad& circuit : solution->answers.rigs[i].circuit.circuits) {
        for (const rigs::CircuitVerdict& verdict : circuit.verdicts) {
          for (const Told& one : rigs::conditionsOf(verdict)) {
            const std::string condition = rigs::inEnglish(one);
            EXPECT_THAT(inShort(answer), HasSubstr(condition));
            EXPECT_THAT(saidOf(answer, i), HasSubstr(condition));
            const auto at = std::find(legend.begin(), legend.end(), condition);
            ASSERT_NE(at, legend.end()) << condition;
            const std::string number = '(' + std::to_string(at - legend.begin() + 1) + ')';
            EXPECT_THAT(test_support::cell(answer, rigs::inEnglish(rigs::rulesText(*verdict.rules)),
                                           "all rules together", i),
                        HasSubstr(number));
            EXPECT_TRUE(std::any_of(shown.begin(), shown.end(), [&](const ShownRow& row) {
              return row.label == number + ' ' + condition;
            }));
            EXPECT_THAT(csv, HasSubstr(number + ' ' + condition));
            ++seen;
          }
          for (const rigs::Finding& finding : verdict.findings) {
            if (finding.fit != rigs::Fit::OnlyIf) continue;
            EXPECT_THAT(spoken(answer), HasSubstr(rigs::inEnglish(finding.condition)));
          }
        }
      }
    }
  }
  EXPECT_GT(seen, 6);
}

// Word for word what programs get: each verdict with its rig, each rule with its arithmetic.
TEST(CircuitCarries, TellsEveryRuleWithItsArithmeticAndClauseWhereAsked) {
  const std::string all = spoken(everyRuleOfDemo());
  int shown = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    for (const rigs::CircuitVerdict& verdict :
         solvedDemo().answers.rigs[i].circuit.circuits[0].verdicts) {
      EXPECT_THAT(saidOf(everyRuleOfDemo(), i),
                  HasSubstr(rigs::inEnglish(rigs::verdictText(verdict))));
      for (const rigs::Finding& finding : verdict.findings) {
        const std::string cite = rigs::inEnglish(rigs::citeText(finding.cite));
        EXPECT_THAT(all, HasSubstr("· " + rigs::inEnglish(finding.name) +
                                   (cite.empty() ? "\n" : " [" + cite + "]\n")));
        EXPECT_THAT(all, HasSubstr(rigs::inEnglish(rigs::outcomeText(finding)) + '\n'));
        ++shown;
      }
    }
  }
  EXPECT_GT(shown, 20);
}

TEST(CircuitCarries, NamesARuleOncePerCodeAndSaysNothingTwice) {
  for (const Answer* answer : {&ofDemo(), &everyRuleOfDemo()}) {
    std::vector<std::string> rules;
    for (const Block& block : answer->blocks) {
      if (std::holds_alternative<Heading>(block)) rules.clear();
      const auto* one = std::get_if<Sentence>(&block);
      if (!one || one->rig) continue;
      const std::string text = rigs::inEnglish(one->text);
      if (text.starts_with("· ")) rules.push_back(text);
      std::vector<std::string> sorted = rules;
      std::sort(sorted.begin(), sorted.end());
      EXPECT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end()) << text;
    }
    const std::string all = spoken(*answer);
    EXPECT_FALSE(holds(all, "only if only"));
    EXPECT_FALSE(holds(all, "IEC 60898-1; IEC 60898-1"));
  }
}

TEST(CircuitCarries, NamesKeptRulesOnlyUntilTheyAreAskedFor) {
  const std::string brief = spoken(ofDemo());
  const std::string all = spoken(everyRuleOfDemo());
  EXPECT_THAT(brief, HasSubstr("rules that fit: "));
  EXPECT_THAT(brief, HasSubstr("--every-rule"));
  EXPECT_FALSE(holds(all, "rules that fit: "));
  EXPECT_FALSE(holds(all, "--every-rule"));
  EXPECT_LT(2 * brief.size(), 3 * all.size());
  for (const char* part :
       {"· the circuit's rating [", "utilization, Range A", "service, Range B"}) {
    EXPECT_TRUE(holds(all, part)) << part;
    EXPECT_FALSE(holds(brief, part)) << part;
  }
}

TEST(CircuitCarries, PutsWhatDoesNotFitFirst) {
  const auto order = [](const std::string& text) {
    for (const char* word : {"does not fit", "cannot say", "fits only if", "fits"})
      if (holds(text, word)) return word;
    return "";
  };
  const std::vector<std::string_view> wanted{"does not fit", "cannot say", "fits only if", "fits"};
  std::size_t last = 0;
  ASSERT_EQ(ofDemo().sentences.size(), 5u);
  for (std::size_t k = 0; k < 4; ++k) {
    const auto at = static_cast<std::size_t>(
        std::find(wanted.begin(), wanted.end(), order(rigs::inEnglish(ofDemo().sentences[k]))) -
        wanted.begin());
    ASSERT_LT(at, wanted.size());
    EXPECT_GE(at, last);
    last = at;
  }
  EXPECT_THAT(rigs::inEnglish(ofDemo().sentences[4]), HasSubstr("for planning only"));
}

TEST(CircuitCarries, DrawsTheCurrentOfEachPartOfTheDay) {
  const Picture picture = currentPicture(demoCase());
  const rigs::CircuitAnswer& circuit = solvedDemo().answers.rigs[1].circuit;
  const auto& points = picture.lines[1].points;
  ASSERT_EQ(points.size(), 2 * circuit.duty.spans.size());
  const double whole = 100.0 * static_cast<double>(circuit.circuits[0].load.current /
                                                   circuit.circuits[0].supply.rating);
  double area = 0.0;
  for (std::size_t k = 0; k + 1 < points.size(); k += 2)
    area += points[k].y * (points[k + 1].x - points[k].x);
  EXPECT_NEAR(area, whole * physics::inMinutes(circuit.duty.current()), 1e-6 * area);
  ASSERT_EQ(picture.bands.size(), 1u);
  EXPECT_DOUBLE_EQ(picture.bands[0].from, 80.0);
  EXPECT_THAT(picture.bands[0].source, HasSubstr("United States, continuous load"));
  ASSERT_EQ(picture.lines.back().points.size(), 2u);
  EXPECT_DOUBLE_EQ(picture.lines.back().points[1].y, 100.0);
  EXPECT_TRUE(picture.lines.back().limit);
  test_support::expectFiniteAscendingPoints(ofDemo());
}

TEST(CircuitCarries, DrawsTheWholeDayAsHoursOfCurrent) {
  const Picture picture = dutyPicture(demoCase());
  ASSERT_EQ(picture.stacks.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    const physics::Duty& duty = solvedDemo().answers.rigs[i].circuit.duty;
    const auto& parts = picture.stacks[i].parts;
    ASSERT_EQ(parts.size(), picture.partNames.size());
    EXPECT_NEAR(parts[0] + parts[1], physics::inMinutes(duty.current()), 1e-6);
    const double whole = physics::inMinutes(duty.spans.back().end - duty.spans.front().begin);
    EXPECT_NEAR(parts[0] + parts[1] + parts[2] + parts[3], whole, 1e-6);
  }
}

TEST(CircuitCarries, SaysThatNoRulesApply) {
  const rigs::Solution solution =
      edited({{"/rigs/0/supply", R"({"voltage": "120 V", "current": "15 A"})"}});
  const Answer answer = circuitCarries(caseOf(solution));
  // 3 kW at 230 V are 6.81 A at 120 V.
  EXPECT_THAT(inShort(answer),
              HasSubstr("6.805 A of 15 A with (a) Old element, kitchen: within its "
                        "rating, and no rules to say more."));
  EXPECT_THAT(saidOf(answer, 0), HasSubstr("By name plates alone, no clause claimed: 6.805 A "
                                           "against 15 A: fits."));
  EXPECT_THAT(saidOf(answer, 0), HasSubstr("Write \"region\" into the plan's \"place\"."));
  EXPECT_EQ(test_support::cell(answer, "Verdict", "all codes together", 0), "cannot say");
  EXPECT_EQ(test_support::cell(answer, "United States", "all rules together", 0), "–");
}

// Rules of no share for long use, and a plan that grants 75 % of its 16 A: 13.04 A are more.
TEST(CircuitCarries, SaysWhatThePlanItselfGrantsToLongUse) {
  const rigs::Solution solution =
      edited({{"/place/region", R"("Europe")"},
              {"/rigs/0/supply", R"({"from": "Europe 230 V 16 A", "continuous": "75 %"})"}});
  EXPECT_THAT(saidOf(circuitCarries(caseOf(solution)), 0),
              HasSubstr("More than the 12 A that the plan grants to long use."));
  EXPECT_FALSE(solution.answers.rigs[1].circuit.circuits[0].granted);
}

// What `answer` says of a circuit, this question says without a region too: never less.
TEST(CircuitCarries, SaysNoLessThanTheSummaryWithoutARegion) {
  struct Own {
    const char* supply;
    const char* element;
    rigs::Fit fit;
    const char* said;
  };
  for (const Own& c :
       {Own{R"({"voltage": "127 V", "current": "10 A"})",
            R"({"power": "2 kW", "rated_voltage": "127 V", "top_height": "6 cm"})",
            rigs::Fit::DoesNotFit,
            "15.75 A against 10 A; how soon its breaker or fuse acts is not "
            "known here: does not fit."},
        Own{R"({"voltage": "127 V", "current": "15 A"})",
            R"({"power": "1950 W", "rated_voltage": "127 V", "top_height": "6 cm"})",
            rigs::Fit::OnTheEdge, "15.35 A against 15 A, 2.36 % more; "},
        Own{R"({"voltage": "127 V", "current": "20 A", "continuous": "75 %"})",
            R"({"power": "2 kW", "rated_voltage": "127 V", "top_height": "6 cm"})", rigs::Fit::Fits,
            "More than the 15 A that the plan grants to long use."}}) {
    SCOPED_TRACE(c.said);
    const rigs::Solution solution =
        edited({{"/rigs/0/supply", c.supply}, {"/rigs/0/element", c.element}});
    const rigs::CircuitAnswer& circuit = solution.answers.rigs[0].circuit;
    EXPECT_EQ(circuit.circuits[0].nameplate.fit, c.fit);
    EXPECT_EQ(circuit.overall(), std::max(c.fit, rigs::Fit::CannotSay));
    const Answer answer = circuitCarries(caseOf(solution));
    EXPECT_THAT(saidOf(answer, 0), HasSubstr(c.said));
    EXPECT_EQ(test_support::cell(answer, "Load", "by name plates alone", 0),
              rigs::inEnglish(rigs::fitWords(c.fit)));
    test_support::expectFiguresOfTheResult(answer, solution, 14);
  }
}

// 2.5 kW and 1 kW at 230 V: 10.87 and 4.348 A. The headline has all that runs on the circuit.
TEST(CircuitCarries, CountsWhatElseRunsOnTheCircuitInItsHeadline) {
  const rigs::Solution solution =
      edited({{"/rigs/0/supply", R"({"from": "Europe 230 V 16 A", "other_load": "1 kW"})"},
              {"/rigs/0/element", R"({"power": "2.5 kW", "rated_voltage": "230 V"})"}});
  EXPECT_THAT(inShort(circuitCarries(caseOf(solution))),
              HasSubstr("15.22 A of 16 A with (a) Old element, kitchen, 4.348 A of that for what "
                        "else runs on it: "));
  EXPECT_FALSE(holds(inShort(ofDemo()), "what else runs on it"));
  // 10.87 A and 200 W at 230 V; the pump is the rig's own.
  const rigs::Solution pumped =
      edited({{"/rigs/0/supply", R"({"from": "Europe 230 V 16 A"})"},
              {"/rigs/0/pump", R"({"power": "200 W"})"},
              {"/rigs/0/element", R"({"power": "2.5 kW", "rated_voltage": "230 V"})"}});
  EXPECT_THAT(inShort(circuitCarries(caseOf(pumped))),
              HasSubstr("11.74 A of 16 A with (a) Old element, kitchen: "));
}

// 2.5 kW beside 2 kW: 19.57 A on 16 A are an overload, whether a region has rules or none is named.
TEST(CircuitCarries, IsOverloadedByWhatElseRunsOnIt) {
  for (const char* supply : {R"({"from": "Europe 230 V 16 A", "other_load": "2 kW"})",
                             R"({"voltage": "230 V", "current": "16 A", "other_load": "2 kW"})"}) {
    const rigs::Solution solution =
        edited({{"/rigs/0/supply", supply},
                {"/rigs/0/element", R"({"power": "2.5 kW", "rated_voltage": "230 V"})"}});
    EXPECT_EQ(solution.answers.rigs[0].circuit.circuits[0].nameplate.fit, rigs::Fit::DoesNotFit);
    EXPECT_THAT(rigs::inEnglish(circuitText(caseOf(solution), 0)),
                HasSubstr("8.696 A of that are for what else runs on the circuit."));
  }
}

TEST(CircuitCarries, TellsTwoCircuitsOneByOne) {
  const Answer answer = circuitCarries(caseOf(withTwoCircuits()));
  const auto& circuits = withTwoCircuits().answers.rigs[3].circuit.circuits;
  ASSERT_EQ(circuits.size(), 2u);
  EXPECT_NEAR(*test_support::number(answer, "Load", "current in it, cable included", 3),
              physics::inAmperes(circuits[1].load.current), 1e-9);
  EXPECT_EQ(test_support::cell(answer, "Load", "current in it, cable included", 0), "–");
  for (const char* part : {"Two circuits: first: ", "First circuit: ", "Second circuit: ",
                           "On the first circuit, the second as planned:"})
    EXPECT_THAT(saidOf(answer, 3), HasSubstr(part));
  EXPECT_FALSE(holds(saidOf(answer, 0), "circuit: "));
  EXPECT_THAT(inShort(answer), HasSubstr("on circuit 2 of (d) "));
  EXPECT_THAT(spoken(circuitCarries(caseOf(withTwoCircuits(), {.everyRule = true}))),
              HasSubstr("(d) circuit 2"));
  EXPECT_EQ(std::count_if(answer.pictures[0].lines.begin(), answer.pictures[0].lines.end(),
                          [](const PictureLine& line) { return line.faint; }),
            1);
}

// Of a rig in North America: under the strictest reading 80 % of 15 A at 120 V, 1440 W, and 12 A.
TEST(CircuitCarries, TellsWhatEachReadingLeavesAndTheShortestDay) {
  const std::string said = saidOf(ofDemo(), 1);
  EXPECT_THAT(spoken(ofDemo()),
              HasSubstr("What would each way of counting allow, and how long is the day"));
  EXPECT_THAT(said, HasSubstr("counted as continuous load: 12 A at most, an element of 1440 W at "
                              "120 V; "));
  EXPECT_THAT(said, HasSubstr("on two such circuits"));
  EXPECT_THAT(said, HasSubstr("The rig's own power over two such circuits: "));
  // Canada and the United States leave the same: named together, in the table too.
  const Row* row = test_support::rowOf(ofDemo(), "Largest element by each way of counting",
                                       "Canada and United States, counted as continuous load");
  ASSERT_TRUE(row);
  EXPECT_EQ(cellText(row->cells[1], {}), "1440");
  EXPECT_THAT(said, HasSubstr("Canada and United States, counted as continuous load: "));
}

// What a reading leaves on the one circuit stands there and is not told again as the shortest day.
TEST(CircuitCarries, TellsOneElementOnTheOnlyCircuitOnce) {
  EXPECT_FALSE(holds(spoken(ofDemo()), "one element of "));
  EXPECT_THAT(saidOf(ofDemo(), 1), HasSubstr("(15 A and 15 A): two elements of 1800 W at 120 V"));
  EXPECT_THAT(saidOf(circuitCarries(caseOf(withTwoCircuits())), 3), HasSubstr("one element of "));
}

// Before the search is done there is nothing to say of readings; the rest stands.
TEST(CircuitCarries, LeavesOutReadingsThatAreNotThereYet) {
  rigs::Solution solution = solvedDemo();
  for (rigs::RigAnswer& rig : solution.answers.rigs) {
    rig.circuit.readings.clear();
    rig.circuit.shortest.clear();
    rig.circuit.split.reset();
    rig.circuit.addedByCable.reset();
  }
  const Answer answer = circuitCarries(caseOf(solution));
  EXPECT_FALSE(holds(spoken(answer), "What would each way of counting allow"));
  EXPECT_EQ(test_support::rowOf(answer, "", "on the first"), nullptr);
  EXPECT_EQ(test_support::cell(answer, "Load", "supply", 0), "120");
}

// Electrical units are the same everywhere; a termination's temperature is not.
TEST(CircuitCarries, SpeaksToTheReaderOfOtherUnits) {
  const rigs::Reader us{.units = rigs::UnitSystem::UsCustomary};
  const std::string all = spoken(everyRuleOfDemo(), us);
  EXPECT_FALSE(holds(all, "°C"));
  EXPECT_THAT(all, HasSubstr("80 % of 15 A = 12 A"));
}

}  // namespace
}  // namespace gui::telling
