// SPDX-License-Identifier: GPL-3.0-or-later
// A day that goes on, told.
#include "gui/telling/followed.hpp"

#include <gmock/gmock.h>

#include <string>

#include "gui/telling/translations.hpp"
#include "rigs/answers/followed.hpp"
#include "rigs/readings/readings_reader.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace gui::telling;
using testing::HasSubstr;
using testing::Not;

constexpr physics::Time clockAt(double hour, double minute) {
  return physics::hours(hour) + physics::minutes(minute);
}

// All sentences about the second rig of the plan of a night.
std::string followedAs(const std::string& lines, physics::Time now, const char* language = "en") {
  static const rigs::Plan plan = test_support::startedPlan("night-unplugged");
  static const auto planned = rigs::plannedCourses(plan, 1).value();
  const rigs::Solution solution{
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
  rigs::Problems problems;
  const auto read = rigs::readings::readLines(
      lines, {.name = "n", .startOfDay = plan.startOfDay, .boiling = physics::celsius(98.0)}, {},
      problems);
  const auto learned = rigs::learnedFrom(plan, 1, read.readings, {}, {},
                                         {.before = false, .next = false, .courses = true});
  const rigs::Followed followed =
      rigs::followed(plan, planned, read.readings, &learned.value(), now);
  const rigs::Reader reader{.units = rigs::UnitSystem::SI, .language = &languageOf(language)};
  const Answer answer =
      howItGoesOn({solution, solution.plan, reader, {}}, 1, {read.readings, followed});
  EXPECT_FALSE(answer.cautions.empty());
  EXPECT_EQ(actionsOf({solution, solution.plan, reader, {}}, 1, followed).size(),
            followed.coming.size());
  std::string all = rigs::tell(answer.title, reader) + "\n";
  for (const rigs::Told& one : answer.sentences) all += rigs::tell(one, reader) + "\n";
  for (const Block& block : answer.blocks)
    if (const auto* sentence = std::get_if<Sentence>(&block))
      all += rigs::tell(sentence->text, reader) + "\n";
  return all;
}

const std::string kLooks = "20:48 unplugged\n20:49 66.6\n21:00 66.2\n21:10 65.8\n21:19 65.5\n";

TEST(FollowedTold, SaysWhatWasReadWhatComesAndWhatToHeed) {
  const std::string told = followedAs(kLooks, clockAt(21, 20));
  EXPECT_THAT(told, HasSubstr("21:20, (b) In a jacket\n"));
  EXPECT_THAT(told, HasSubstr("Read last, at 21:19: 65.5 °C, as expected, 65."));
  EXPECT_THAT(told, HasSubstr("At +1 d 06:48: Lift the grain, plug in, full power; lid on"));
  EXPECT_THAT(told, HasSubstr("The mash then has about 50."));
  EXPECT_THAT(told, HasSubstr("(8 of 10 such days): It rolls; lid off"));
  EXPECT_THAT(told, HasSubstr("The mash falls below 57 °C between +1 d 01:"));
  // What the plan's own night came to is none of these words.
  EXPECT_THAT(told, Not(HasSubstr("It was below")));
}

TEST(FollowedTold, SaysClocksAsSeenFromToday) {
  const std::string told = followedAs(kLooks + "06:50 heating\n06:52 52.0\n", clockAt(24 + 6, 53));
  EXPECT_THAT(told, HasSubstr("06:53, (b) In a jacket\n"));
  EXPECT_THAT(told, HasSubstr("Read last, at 06:52"));
  EXPECT_THAT(told, Not(HasSubstr("+1 d")));
  EXPECT_THAT(followedAs(kLooks, clockAt(24 + 2, 0)), HasSubstr("Read last, at 21:19: 65.5 °C"));
}

TEST(FollowedTold, AsksForTheEventThatIsDue) {
  const std::string told = followedAs(kLooks, clockAt(24 + 7, 30));
  EXPECT_THAT(told, HasSubstr("By now, and not written yet: Lift the grain, plug in"));
  EXPECT_THAT(told, HasSubstr("Type \"heating\" when it happens"));
  EXPECT_THAT(told, HasSubstr("The mash is below 57 °C"));
  EXPECT_THAT(told, HasSubstr("Late by about"));
}

TEST(FollowedTold, SaysHowFarAReadingIsOff) {
  EXPECT_THAT(followedAs(kLooks + "22:00 58.0\n", clockAt(22, 1)),
              HasSubstr("58.0 °C, far outside what was expected, 6"));
  EXPECT_THAT(followedAs(kLooks + "22:00 58.0\n", clockAt(22, 1)),
              HasSubstr("The last reading does not fit what was expected"));
  EXPECT_THAT(followedAs(kLooks + "22:00 lid on\n", clockAt(22, 1)),
              HasSubstr("Written last, at 22:00: lid on."));
  EXPECT_THAT(followedAs(kLooks + "05:30 heating\n", clockAt(29, 31)),
              HasSubstr("heating; planned was 06:48."));
}

TEST(FollowedTold, SaysTheSameInGerman) {
  const std::string told = followedAs(kLooks, clockAt(24 + 7, 30), "de");
  EXPECT_THAT(told, HasSubstr("„heizen“"));
  EXPECT_THAT(told, Not(HasSubstr("By now")));
  EXPECT_THAT(told, Not(HasSubstr("Late by")));
}

}  // namespace
