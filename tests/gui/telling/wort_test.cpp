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
  EXPECT_TRUE(holds(inEnglish(answer.sentences[0]), " min at 100 °C is what a boil of "));
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
  EXPECT_TRUE(said.starts_with("The mash's starch is done after ")) << said;
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
