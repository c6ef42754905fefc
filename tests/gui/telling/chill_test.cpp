// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/chill.hpp"

#include <gtest/gtest.h>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/shortest.hpp"
#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using rigs::inEnglish;
using test_support::caseOf;
using test_support::cell;
using test_support::holds;
using test_support::inShort;
using test_support::saidOf;

// The demo's rigs, each with another chiller.
rigs::Plan chilledDemo() {
  rigs::Plan plan = test_support::solvedDemo().plan;
  plan.chilling.isStated = true;
  for (rigs::RigPlan& rig : plan.rigs) rig.chiller.isStated = true;
  plan.rigs[1].chiller.stirred = true;
  plan.rigs[2].chiller.kind = rigs::Chiller::Kind::Air;
  plan.rigs[3].chiller.kind = rigs::Chiller::Kind::Counterflow;
  return plan;
}
rigs::Solution solvedChill(const rigs::Plan& plan) {
  return {
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Chill), .sweeps = {}, .done = {}};
}
const rigs::Solution& chilled() {
  static const rigs::Solution solution = solvedChill(chilledDemo());
  return solution;
}

TEST(HowLongChills, BeginsWithTheTimeThatDecides) {
  const Answer answer = howLongChills(caseOf(chilled()));
  ASSERT_EQ(answer.sentences.size(), 2U);
  const std::string first = inEnglish(answer.sentences.front());
  EXPECT_TRUE(std::isdigit(static_cast<unsigned char>(first.front()))) << first;
  EXPECT_TRUE(holds(first, "the quickest")) << first;
  EXPECT_TRUE(holds(inEnglish(answer.sentences.back()), ", left still: the slowest."))
      << inShort(answer);
}

TEST(HowLongChills, TellsStirredAndStillAsAPairAndStillAsABand) {
  const Answer answer = howLongChills(caseOf(chilled()));
  const std::string said = saidOf(answer, 1);
  EXPECT_TRUE(holds(said, "Stirred all the time it comes to 20 °C in about ")) << said;
  EXPECT_TRUE(holds(said, ", left still in about ")) << said;
  EXPECT_TRUE(holds(said, " min with ")) << said;
  EXPECT_TRUE(holds(said, "The water leaves at up to about ")) << said;
  EXPECT_TRUE(holds(saidOf(answer, 3), "one pass takes ")) << saidOf(answer, 3);
  EXPECT_TRUE(holds(saidOf(answer, 2), "Take the jacket off for that")) << saidOf(answer, 2);
  for (std::size_t i = 0; i < 4; ++i)
    if (chillOf(caseOf(chilled()), i)) {
      EXPECT_FALSE(holds(saidOf(answer, i), "No chiller is stated"));
    }
}

TEST(HowLongChills, SaysWhatIsOnlySupposed) {
  const rigs::Solution solution = solvedChill(test_support::solvedDemo().plan);
  const Answer answer = howLongChills(caseOf(solution));
  std::string all;
  for (const Block& block : answer.blocks)
    if (const auto* one = std::get_if<Sentence>(&block)) all += inEnglish(one->text) + '\n';
  const std::string supposed =
      "No chiller is stated: a common one is supposed, a copper coil of 9.5 mm tube, 7.5 m long, "
      "with 8 L/min of water.";
  ASSERT_TRUE(holds(all, supposed)) << all;
  EXPECT_EQ(all.find(supposed), all.rfind(supposed));  // once for all of them
  // The same coil in four kettles of one size: times within its scatter tell none from another.
  EXPECT_TRUE(holds(inEnglish(answer.sentences.front()), " is what they all take;"));
  EXPECT_TRUE(holds(all, "The cooling water is taken to be as cold as the water for brewing, 12"))
      << all;
}

TEST(HowLongChills, SaysWhatWouldDoItWhereTheTapIsTooWarm) {
  rigs::Plan plan = chilledDemo();
  plan.chilling.water = physics::celsius(24.0);
  const rigs::Solution solution = solvedChill(plan);
  const std::string said = saidOf(howLongChills(caseOf(solution)), 1);
  EXPECT_TRUE(holds(said,
                    "20 °C is out of reach: water of 24 °C brings wort to about 26 °C at best. "
                    "What would do it: about "))
      << said;
  EXPECT_TRUE(holds(said,
                    " of ice in a bath round it; water of 18 °C or colder; or pitching at "
                    "26 °C."))
      << said;
}

TEST(HowLongChills, HasTheFiguresOfTheResult) {
  const Answer answer = howLongChills(caseOf(chilled()));
  test_support::expectFiguresOfTheResult(answer, chilled(), 12);
  const Table& table = *answer.tables().at(0);
  EXPECT_EQ(table.name, "chill");
  EXPECT_EQ(cell(table, "down to the goal", 2, "With a coil, stirred"), "–");
  EXPECT_EQ(cell(table, "for all of the wort", 1), "–");
  EXPECT_NE(cell(table, "for all of the wort", 3), "–");
}

TEST(HowLongChills, DrawsThePlannedWayAndTheOthersThin) {
  const Answer answer = howLongChills(caseOf(chilled()));
  const Picture& picture = answer.pictures.at(0);
  int own = 0;
  int thin = 0;
  for (const PictureLine& line : picture.lines) {
    ASSERT_GT(line.points.size(), line.rig == 3 ? 1U : 5U);
    for (std::size_t i = 1; i < line.points.size(); ++i) {
      EXPECT_GT(line.points[i].x, line.points[i - 1].x);
      EXPECT_LE(line.points[i].y, line.points[i - 1].y);
    }
    (line.faint ? thin : own) += 1;
    if (line.rig == 1 && line.faint) {
      EXPECT_TRUE(holds(line.name, "still")) << line.name;
    }
  }
  EXPECT_EQ(thin % 2, 0);
  EXPECT_GT(own, 1);
}

TEST(HowLongChills, IsShortInTheList) {
  const Case of = caseOf(chilled());
  EXPECT_TRUE(inEnglish(shortestOf(Question::HowChills, of, 1)).ends_with(" to 20 °C"));
  const Answer whole = answerTo(Question::HowChills, chilled(), {}, {});
  EXPECT_FALSE(whole.cautions.empty());
}

}  // namespace
}  // namespace gui::telling
