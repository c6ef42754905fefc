// SPDX-License-Identifier: GPL-3.0-or-later
// What readings say, told.
#include "gui/telling/learned.hpp"

#include <gmock/gmock.h>

#include <string>

#include "gui/telling/learned_picture.hpp"
#include "rigs/readings/readings_reader.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace gui::telling;
using testing::HasSubstr;
using testing::Not;

// All of an answer's sentences about the second rig of the plan of a night.
std::string toldOf(const std::string& lines) {
  const rigs::Plan plan = test_support::startedPlan("night-unplugged");
  const rigs::Solution solution{
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
  rigs::Problems problems;
  const auto read = rigs::readings::readLines(
      lines, {.name = "n", .startOfDay = plan.startOfDay, .boiling = physics::celsius(98.0)}, {},
      problems);
  const rigs::Learned learned = rigs::learnedFrom(plan, 1, read.readings).value();
  const rigs::Reader reader;
  const Answer answer = whatWasLearned({solution, solution.plan, reader, {}}, 1,
                                       {read.readings, read.layout, learned});
  EXPECT_FALSE(answer.cautions.empty());
  std::string all;
  for (const rigs::Told& one : answer.sentences) all += rigs::inEnglish(one) + "\n";
  for (const Block& block : answer.blocks)
    if (const auto* sentence = std::get_if<Sentence>(&block))
      all += rigs::inEnglish(sentence->text) + "\n";
  return all;
}

const std::string kHalfHour = "20:48 unplugged\n20:49 66.6\n21:00 66.2\n21:10 65.8\n21:19 65.5\n";

TEST(LearnedTold, NamesTheReadingThatDoesNotFitByHowMuch) {
  const std::string told = toldOf(kHalfHour + "23:00 52.4\n02:00 57.6\n05:00 53.0\n06:00 51.6\n");
  EXPECT_THAT(told, HasSubstr("52.4 °C at 23:00 does not fit the others, by 10"));
  EXPECT_THAT(told, Not(HasSubstr("57.6 °C at +1 d 02:00 does not fit")));
}

// Half of the last digit that was typed, along an axis whose degrees may be another's.
TEST(LearnedPicture, DrawsReadingsAsRoughAsTheyWereRead) {
  const rigs::Plan plan = test_support::startedPlan("night-unplugged");
  const rigs::Solution solution{
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
  rigs::Problems problems;
  const auto read = rigs::readings::readLines(
      "20:48 unplugged\n20:49 66.6\n21:00 66\n21:10 150 °F\n",
      {.name = "n", .startOfDay = plan.startOfDay, .boiling = physics::celsius(98.0)}, {},
      problems);
  for (const rigs::UnitSystem units : {rigs::UnitSystem::SI, rigs::UnitSystem::UsCustomary}) {
    const double degree = units == rigs::UnitSystem::SI ? 1.0 : 1.8;
    const rigs::Reader reader{.units = units};
    const Picture picture =
        learnedPicture({solution, solution.plan, reader, {}}, 1, {}, read.readings);
    ASSERT_EQ(picture.marks.size(), 3U) << "the event is no temperature";
    EXPECT_NEAR(picture.marks[0].rounding.value(), 0.05 * degree, 1e-9);
    EXPECT_NEAR(picture.marks[1].rounding.value(), 0.5 * degree, 1e-9);
    EXPECT_NEAR(picture.marks[2].rounding.value(), 0.5 / 1.8 * degree, 1e-9);
  }
}

TEST(LearnedTold, AsksForTheOtherUnit) {
  // 67 °C and less, typed as they stood in Fahrenheit but said to be Celsius by no one: as 20 °C.
  const std::string told = toldOf("20:48 unplugged\n20:49 19.2 °C\n21:00 19.0 °C\n21:10 18.8 °C\n");
  EXPECT_THAT(told, HasSubstr("would fit far better in the other unit"));
}

TEST(LearnedTold, SaysWhereReadingsFallIntoNoDay) {
  EXPECT_THAT(toldOf("2026-02-01T21:00 60.0\n2026-02-09T21:00 59.0\n2026-02-09T22:00 58.0\n"),
              Not(HasSubstr("nan")));
  EXPECT_THAT(toldOf("20:48 boil\n20:50 lid on\n"),
              HasSubstr("None of these readings falls into the plan's day"));
}

}  // namespace
