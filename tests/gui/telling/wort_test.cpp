// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/wort.hpp"

#include <gtest/gtest.h>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/shortest.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using rigs::inEnglish;
using test_support::caseOf;
using test_support::cell;
using test_support::holds;
using test_support::saidOf;

const rigs::Solution& heated() {
  static const rigs::Solution solution = [] {
    const rigs::Plan plan = test_support::solvedDemo().plan;
    return rigs::Solution{
        .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Wort), .sweeps = {}, .done = {}};
  }();
  return solution;
}

TEST(HowWortChanges, BeginsWithTheMinutesThatDecide) {
  const Answer answer = howWortChanges(caseOf(heated()));
  ASSERT_GE(answer.sentences.size(), 2U);
  EXPECT_TRUE(holds(inEnglish(answer.sentences[0]), " min at 100 °C is what 1 h 10 min in place"));
  EXPECT_TRUE(holds(inEnglish(answer.sentences[1]), " min at 100 °C is what a boil of "));
  EXPECT_TRUE(inEnglish(answer.sentences[0]).ends_with(": the least."));
  EXPECT_TRUE(inEnglish(answer.sentences[1]).ends_with(": the most."));
}

TEST(HowWortChanges, TellsBoilAltitudeChillingAndDms) {
  const Answer answer = howWortChanges(caseOf(heated()));
  const std::string said = saidOf(answer, 1);
  EXPECT_TRUE(holds(said, "for hops and ")) << said;
  EXPECT_TRUE(holds(said, "at sea level are.")) << said;
  EXPECT_TRUE(holds(said, "left to cool by itself instead it would be about ")) << said;
  // A kettle that steams, at less than was measured.
  const std::string steams = saidOf(answer, 0);
  EXPECT_TRUE(holds(steams, "What stands for the boil, ")) << steams;
  EXPECT_TRUE(holds(steams, " rising from ") || holds(steams, " falling from ")) << steams;
  EXPECT_TRUE(holds(steams, "colder than the hops' rate was measured, from 90 °C up")) << steams;
  EXPECT_TRUE(holds(steams, "It steams without rolling: ")) << steams;
  EXPECT_FALSE(holds(steams, "sea level")) << steams;
}

rigs::Solution mashedBy(const physics::Batch& batch) {
  rigs::Plan plan = test_support::solvedDemo().plan;
  plan.batch = batch;
  plan.rigs.resize(3);
  plan.rigs.erase(plan.rigs.begin());
  return {.plan = plan, .answers = rigs::answer(plan, rigs::Depth::Wort), .sweeps = {}, .done = {}};
}
std::string allSaid(const Answer& answer) {
  std::string said;
  for (const Block& block : answer.blocks)
    if (const auto* sentence = std::get_if<Sentence>(&block))
      said += inEnglish(sentence->text) + '\n';
  return said;
}

TEST(HowWortChanges, TellsTheMashOfAllRigsOnce) {
  const std::string said = allSaid(howWortChanges(caseOf(heated())));
  EXPECT_TRUE(said.starts_with("The mash's starch is done after about ")) << said;
  EXPECT_TRUE(holds(said, "at the latest")) << said;
  EXPECT_EQ(said.find("starch is done"), said.rfind("starch is done")) << said;
  EXPECT_TRUE(holds(said, "Its wort can ferment to about ")) << said;
  EXPECT_TRUE(holds(said, "4 points either way at best")) << said;
  // Nobody left it alone.
  EXPECT_FALSE(holds(said, "nobody has measured")) << said;
  EXPECT_FALSE(holds(said, "nobody stirs, the middle")) << said;
}

TEST(HowWortChanges, SaysWhatNobodyKnowsOfALongNight) {
  physics::Batch batch = heated().plan.batch;
  batch.mash = physics::UnpluggedMash{physics::celsius(67.0), physics::hours(10.0)};
  const rigs::Solution solution = mashedBy(batch);
  const Answer answer = howWortChanges(caseOf(solution));
  const std::string said = allSaid(answer);
  EXPECT_TRUE(holds(said, " it is at 45 to 60 °C. What enzymes go on trimming")) << said;
  EXPECT_TRUE(holds(said, "the middle of the grain may be 6 to 28 K warmer")) << said;
  EXPECT_GT(test_support::comparedWithResult(answer, solution), 20);
}

TEST(HowWortChanges, WarnsOfAColdMash) {
  physics::Batch batch = heated().plan.batch;
  batch.mash =
      physics::HeldMash{{{.temperature = physics::celsius(61.0), .duration = physics::hours(1.0)}}};
  const std::string said = allSaid(howWortChanges(caseOf(mashedBy(batch))));
  EXPECT_TRUE(holds(said, "The mash is never above 62 °C, where starch of some malts")) << said;
  EXPECT_TRUE(holds(said, "gravity be lower than planned")) << said;
  EXPECT_FALSE(holds(said, "starch is done")) << said;
}

rigs::Solution heldAt(double degrees) {
  physics::Batch batch = heated().plan.batch;
  batch.mash = physics::HeldMash{
      {{.temperature = physics::celsius(degrees), .duration = physics::hours(1.0)}}};
  return mashedBy(batch);
}

// Common malt is done; malt that swells late is not.
TEST(HowWortChanges, PromisesNothingOfLateMalt) {
  const rigs::Solution solution = heldAt(63.0);
  const Answer answer = howWortChanges(caseOf(solution));
  const std::string said = allSaid(answer);
  EXPECT_TRUE(holds(said, "With common malt the starch is done after about ")) << said;
  EXPECT_TRUE(holds(said, "malt that swells late leaves up to 16 %")) << said;
  EXPECT_FALSE(holds(said, "at the latest")) << said;
  const Table& table = *answer.tables().front();
  EXPECT_NE(cell(table, "starch done after, with common malt", 0), "–");
  EXPECT_EQ(cell(table, "gravity at the limit, at least", 0), "–");
}

TEST(HowWortChanges, HasWordsForHardlyAnyStarch) {
  const std::string said = allSaid(howWortChanges(caseOf(heldAt(40.0))));
  EXPECT_TRUE(holds(said, "hardly any starch swells so cold")) << said;
  EXPECT_FALSE(holds(said, "0 to 0 %")) << said;
}

TEST(HowWortChanges, SaysHowLongARangeReaches) {
  physics::Batch batch = heated().plan.batch;
  batch.mash = physics::UnpluggedMash{physics::celsius(67.0), physics::hours(48.0)};
  const std::string days = allSaid(howWortChanges(caseOf(mashedBy(batch))));
  EXPECT_TRUE(holds(days, "and of longer no range is known")) << days;
  batch.mash = physics::UnpluggedMash{physics::celsius(62.5), physics::hours(12.0)};
  const std::string night = allSaid(howWortChanges(caseOf(mashedBy(batch))));
  // Told as far as it is computed, and as nobody's measurement.
  EXPECT_TRUE(holds(night, "nobody has measured: 0 to 6 points more, at most 11.")) << night;
  EXPECT_FALSE(holds(night, "no range is known")) << night;
}

// The headline of a plan without a boil is its mash, and nothing of hops or DMS follows.
TEST(HowWortChanges, BeginsWithTheMashWhereNothingBoils) {
  physics::Batch batch = heated().plan.batch;
  batch.boil = physics::seconds(0.0);
  const Answer answer = howWortChanges(caseOf(mashedBy(batch)));
  ASSERT_EQ(answer.sentences.size(), 1U);
  EXPECT_TRUE(holds(inEnglish(answer.sentences[0]), " % is about how far the mash's wort ferments"))
      << inEnglish(answer.sentences[0]);
  const std::string said = allSaid(answer);
  EXPECT_FALSE(holds(said, "bitter")) << said;
  EXPECT_TRUE(answer.pictures.empty());
  for (const rigs::Told& note : answer.notes) EXPECT_FALSE(holds(inEnglish(note), "DMS"));
}

TEST(HowWortChanges, TellsNoDmsWithoutMalt) {
  physics::Batch batch = heated().plan.batch;
  batch.grain.mass = physics::kilograms(0.0);
  const rigs::Solution solution = mashedBy(batch);
  const Answer answer = howWortChanges(caseOf(solution));
  const std::string said = allSaid(answer);
  EXPECT_TRUE(holds(said, " at 100 °C for hops; heating up to it adds ")) << said;
  EXPECT_FALSE(holds(said, "DMS")) << said;
  EXPECT_EQ(answer.pictures.size(), 1U);
  for (const Row& row : answer.tables().front()->rows)
    EXPECT_FALSE(holds(inEnglish(row.label), "DMS")) << inEnglish(row.label);
  for (const rigs::Told& note : answer.notes) EXPECT_FALSE(holds(inEnglish(note), "DMS"));
  EXPECT_GT(test_support::comparedWithResult(answer, solution), 5);
}

// Nobody can say whether it rolls, so nothing is told flatly.
TEST(HowWortChanges, SaysIfItRollsOnTheEdge) {
  rigs::Solution solution = heated();
  solution.answers.rigs[1].edge = physics::EdgeOfTheBoil{};
  const Answer answer = howWortChanges(caseOf(solution));
  const std::string said = saidOf(answer, 1);
  EXPECT_TRUE(holds(said, ", if it rolls, is worth ")) << said;
  EXPECT_TRUE(holds(said, "evaporates, whether it rolls or not")) << said;
}

// A kettle that never boils is not said to.
TEST(HowWortChanges, CallsNoBoilWhatIsNone) {
  rigs::Solution solution = heated();
  solution.answers.rigs.resize(1);
  solution.plan.rigs.resize(1);
  const Answer answer = howWortChanges(caseOf(solution));
  const std::string headline = inEnglish(answer.sentences[0]);
  EXPECT_TRUE(holds(headline, " in place of a boil is worth for hops")) << headline;
  EXPECT_FALSE(holds(headline, "a boil of")) << headline;
}

TEST(HowWortChanges, SaysAboutOnce) {
  rigs::Solution solution = heated();
  rigs::WortAnswer wort = *solution.answers.rigs[1].wort;
  wort.boiled->byItself.worth = {};
  solution.answers.rigs[1].wort = std::make_shared<const rigs::WortAnswer>(wort);
  const std::string said = saidOf(howWortChanges(caseOf(solution)), 1);
  EXPECT_TRUE(holds(said, "it would be less than 1 min and less than 1 min")) << said;
}

TEST(HowWortChanges, FollowsTheReadersUnits) {
  const rigs::Reader american{.units = rigs::UnitSystem::UsCustomary};
  const Case of{heated(), heated().plan, american, {}};
  const Answer answer = howWortChanges(of);
  std::string labels;
  for (const Row& row : answer.tables().front()->rows)
    labels += rigs::tell(row.label, american) + '\n';
  EXPECT_TRUE(holds(labels, "time at 113 to 140 °F")) << labels;
  EXPECT_TRUE(holds(labels, "by itself, below 176 °F")) << labels;
}

// Both rows of what is left by itself have figures, or neither.
TEST(HowWortChanges, AgreesOnWhatIsLeftByItself) {
  rigs::Solution solution = heated();
  rigs::WortAnswer wort = *solution.answers.rigs[1].wort;
  wort.boiled->isLeftByItself = true;
  solution.answers.rigs[1].wort = std::make_shared<const rigs::WortAnswer>(wort);
  const Answer answer = howWortChanges(caseOf(solution));
  for (const Row& row : answer.tables().front()->rows)
    if (holds(row.result, "left_by_itself/")) {
      EXPECT_FALSE(row.cells[1]) << row.result;
    }
}

// Above what is warned of it may still be too cold, or too short.
TEST(HowWortChanges, SaysWhereStarchIsLeft) {
  physics::Batch batch = heated().plan.batch;
  batch.mash = physics::UnpluggedMash{physics::celsius(63.0), physics::hours(2.0)};
  const std::string said = allSaid(howWortChanges(caseOf(mashedBy(batch))));
  EXPECT_TRUE(holds(said, "The mash does not get all its starch: about ")) << said;
  EXPECT_FALSE(holds(said, "never above")) << said;
}

TEST(HowWortChanges, SaysWhereAttenuationWasNotMeasured) {
  physics::Batch batch = heated().plan.batch;
  const auto at = [&](double degrees) {
    batch.mash = physics::HeldMash{
        {{.temperature = physics::celsius(degrees), .duration = physics::hours(1.0)}}};
    return allSaid(howWortChanges(caseOf(mashedBy(batch))));
  };
  EXPECT_TRUE(holds(at(78.0), "that was measured from 60 to 75 °C only"));
  EXPECT_TRUE(holds(at(50.0), "So cold nobody can tell how far its wort ferments"));
}

TEST(HowWortChanges, SaysWhatMinutesAreNot) {
  const Answer answer = answerTo(Question::WortChanges, heated(), {}, {});
  std::string said;
  for (const Block& block : answer.blocks)
    if (const auto* sentence = std::get_if<Sentence>(&block)) said += inEnglish(sentence->text);
  EXPECT_TRUE(holds(said, "They are no bitterness")) << said;
  EXPECT_TRUE(holds(said, "Below 80 °C")) << said;
  bool warm = false;
  for (const rigs::Told& caution : answer.cautions)
    warm = warm || holds(inEnglish(caution), "Never close a hot vessel");
  for (const rigs::Told& caution : answer.furtherCautions)
    warm = warm || holds(inEnglish(caution), "Never close a hot vessel");
  EXPECT_TRUE(warm);
}

TEST(HowWortChanges, HasTheResultsFigures) {
  const Answer answer = howWortChanges(caseOf(heated()));
  EXPECT_GT(test_support::comparedWithResult(answer, heated()), 20);
  const Table& table = *answer.tables().front();
  EXPECT_EQ(cell(table, "a boil worth as much as at sea level", 0), "–");
  EXPECT_EQ(cell(table, "hot stand", 1), "–");
  ASSERT_EQ(answer.pictures.size(), 2U);
  EXPECT_EQ(answer.pictures[0].stacks.size(), heated().plan.rigs.size());
  EXPECT_TRUE(
      holds(inEnglish(shortestOf(Question::WortChanges, caseOf(heated()), 1)), "at 100 °C"));
}

}  // namespace
}  // namespace gui::telling
