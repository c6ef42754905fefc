// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/followed.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/night.hpp"
#include "rigs/answers/read_day.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace physics;
using rigs::AlarmOf;
using rigs::Band;
using rigs::Coming;
using rigs::DayCourse;
using rigs::Followed;
using rigs::Learned;
using rigs::Plan;
using rigs::readings::Event;
using test_support::startedPlan;

// A plan with one rig, its days, and what was read so far.
struct Brew {
  Plan plan;
  std::size_t rig = 0;
  std::vector<DayCourse> planned = rigs::plannedCourses(plan, rig).value();
  BrewDay day = physics::simulate(plan.rigs[rig].rig, plan.batch, plan.place, {.curves = true});
  std::vector<rigs::readings::Reading> read = {};

  Time clockOf(StageKind kind) const { return plan.startOfDay + day.find(kind)->begin; }
  void write(Time at, rigs::readings::Value value) {
    read.push_back({read.size() + 1, at, std::move(value), 0.1});
  }
  // As the plan's own day would show it, with events so much later.
  void look(Time sinceTheBeginning, Time later = seconds(0.0)) {
    const double shown = inCelsius(*rigs::ReadDay(day).wort(sinceTheBeginning));
    write(plan.startOfDay + sinceTheBeginning + later, celsius(0.1 * std::round(shown / 0.1)));
  }
  Learned learned() const {
    return rigs::learnedFrom(rigs::withTheNightThatWas(plan, read), rig, read, {}, {},
                             {.before = false, .next = false, .courses = true})
        .value();
  }
  Followed at(Time now) const {
    const bool measured = std::any_of(read.begin(), read.end(), [](const auto& one) {
      return !std::holds_alternative<Event>(one.value);
    });
    if (!measured) return rigs::followed(plan, planned, read, nullptr, now);
    const Learned all = learned();
    return rigs::followed(plan, planned, read, &all, now);
  }
};

const Brew& night() {
  static const Brew brew{startedPlan("night-unplugged"), 1};
  return brew;
}
const Brew& oneDay() {
  static const Brew brew{startedPlan("two-circuits"), 1};
  return brew;
}

const Coming* comingOf(const Followed& followed, std::optional<StageKind> kind) {
  for (const Coming& one : followed.coming)
    if (one.begins == kind) return &one;
  return nullptr;
}
const rigs::Alarm* alarmOf(const Followed& followed, AlarmOf what) {
  for (const rigs::Alarm& one : followed.alarms)
    if (one.what == what) return &one;
  return nullptr;
}

void expectSame(const Band<Time>& a, const Band<Time>& b, Time later, double within) {
  for (const auto side : {&Band<Time>::low, &Band<Time>::middle, &Band<Time>::high}) {
    ASSERT_TRUE((a.*side) && (b.*side));
    EXPECT_NEAR(inSeconds(*(a.*side)), inSeconds(*(b.*side) + later), within);
  }
}

TEST(FollowedDay, BeforeAnyReadingIsThePlanWithItsOwnBands) {
  const Brew& brew = oneDay();
  const rigs::Bands bands = rigs::bandsOf(brew.plan, brew.rig).value();
  const Followed followed = brew.at(brew.plan.startOfDay - hours(1.0));
  ASSERT_FALSE(followed.coming.empty());
  EXPECT_EQ(followed.coming.front().stage, 0u);
  EXPECT_FALSE(followed.last);
  EXPECT_TRUE(followed.alarms.empty());
  const Coming* boil = comingOf(followed, StageKind::Boil);
  ASSERT_TRUE(boil);
  expectSame(boil->at, bands.boilBegins, brew.plan.startOfDay, 1.0);
  expectSame(boil->planned, boil->at, seconds(0.0), 0.01);
  expectSame(comingOf(followed, std::nullopt)->at, bands.over, brew.plan.startOfDay, 1.0);
}

TEST(FollowedDay, ComesInTheOrderOfTheClockAndNothingOfThePast) {
  const Brew& brew = oneDay();
  std::size_t before = 99;
  for (double hour = -1.0; hour < inHours(brew.day.duration()) + 1.0; hour += 0.5) {
    const Time now = brew.plan.startOfDay + hours(hour);
    const Followed followed = brew.at(now);
    EXPECT_LE(followed.coming.size(), before);
    before = followed.coming.size();
    for (std::size_t i = 0; i < followed.coming.size(); ++i) {
      EXPECT_GE(*followed.coming[i].at.high, now);
      const std::size_t previous = i == 0 ? 0 : i - 1;
      EXPECT_GE(*followed.coming[i].at.middle, *followed.coming[previous].at.middle);
    }
  }
  EXPECT_TRUE(brew.at(brew.plan.startOfDay + 2.0 * brew.day.duration()).isOver);
}

// As learn has it: without events its day is the plan's.
TEST(FollowedDay, SaysOfTheBoilWhatLearnSays) {
  Brew brew = oneDay();
  const Time heats = brew.day.find(StageKind::HeatingToBoil)->begin;
  for (const double minute : {5.0, 10.0, 15.0}) brew.look(heats + minutes(minute));
  const Learned learned = rigs::learnedFrom(brew.plan, brew.rig, brew.read).value();
  const Followed followed = brew.at(brew.plan.startOfDay + heats + minutes(16.0));
  ASSERT_TRUE(comingOf(followed, StageKind::Boil));
  expectSame(comingOf(followed, StageKind::Boil)->at, learned.after.boilBegins,
             brew.plan.startOfDay, 0.01);
  ASSERT_TRUE(followed.last && followed.last->low && followed.last->high);
  EXPECT_LT(std::abs(followed.last->surprise), rigs::kABitOutside);
  EXPECT_LT(*followed.last->low, *followed.last->middle);
  EXPECT_FALSE(alarmOf(followed, AlarmOf::Late));
}

TEST(FollowedDay, MovesWithTheEventThatHappened) {
  const auto boilWith = [](Time later) {
    Brew brew = oneDay();
    brew.write(brew.clockOf(StageKind::HeatingToBoil) + later, Event::Heating);
    brew.look(brew.day.find(StageKind::HeatingToBoil)->begin + minutes(10.0), later);
    return brew.at(brew.read.back().at + minutes(1.0));
  };
  const Followed onTime = boilWith(minutes(0.0));
  const Followed late = boilWith(minutes(25.0));
  expectSame(comingOf(late, StageKind::Boil)->at, comingOf(onTime, StageKind::Boil)->at,
             minutes(25.0), 0.01);
  expectSame(comingOf(late, std::nullopt)->at, comingOf(onTime, std::nullopt)->at, minutes(25.0),
             0.01);
  EXPECT_FALSE(alarmOf(onTime, AlarmOf::Late));
  ASSERT_TRUE(alarmOf(late, AlarmOf::Late));
  EXPECT_NEAR(inMinutes(alarmOf(late, AlarmOf::Late)->by), 25.0, 8.0);
}

TEST(FollowedDay, WaitsForAnEventThatIsNotWrittenYet) {
  Brew brew = oneDay();
  brew.write(brew.clockOf(StageKind::Strike), Event::PluggedIn);
  const Time now = brew.clockOf(StageKind::MashingIn) + hours(1.0);
  const Followed followed = brew.at(now);
  ASSERT_FALSE(followed.coming.empty());
  EXPECT_EQ(followed.coming.front().begins, StageKind::MashingIn);
  EXPECT_TRUE(followed.coming.front().isDue);
  EXPECT_GT(*comingOf(followed, StageKind::HeatingToBoil)->at.low, now);
  EXPECT_TRUE(alarmOf(followed, AlarmOf::Late));
  // Read since then, the day went on without it.
  brew.look(brew.day.find(StageKind::MashingIn)->begin + minutes(50.0));
  EXPECT_FALSE(brew.at(now).coming.front().isDue);
}

TEST(FollowedNight, HasTheMorningAsLearnHasItOnceTheEveningIsOver) {
  Brew brew = night();
  brew.write(brew.clockOf(StageKind::UnpluggedRest) + minutes(12.0), Event::Unplugged);
  for (const double minute : {1.0, 30.0, 90.0})
    brew.look(brew.day.find(StageKind::UnpluggedRest)->begin + minutes(minute), minutes(12.0));
  const Learned learned = rigs::learnedFrom(brew.plan, brew.rig, brew.read).value();
  const Followed followed = brew.at(brew.read.back().at + minutes(1.0));
  const Coming& next = followed.coming.front();
  EXPECT_EQ(next.begins, StageKind::HeatingToBoil);
  EXPECT_NEAR(inHours(*next.at.middle - brew.read.front().at), 10.0, 1e-3);
  ASSERT_TRUE(next.wort.low && next.wort.middle && next.wort.high);
  EXPECT_NEAR(inCelsius(*next.wort.low), inCelsius(*learned.after.morning.low), 0.01);
  EXPECT_NEAR(inCelsius(*next.wort.high), inCelsius(*learned.after.morning.high), 0.01);
}

TEST(FollowedNight, TellsWhenTheMashFallsBelowHotHolding) {
  Brew brew = night();
  const Time rest = brew.day.find(StageKind::UnpluggedRest)->begin;
  brew.write(brew.clockOf(StageKind::UnpluggedRest), Event::Unplugged);
  for (const double minute : {1.0, 30.0}) brew.look(rest + minutes(minute));
  const Followed evening = brew.at(brew.read.back().at);
  const rigs::Alarm* alarm = alarmOf(evening, AlarmOf::MashBelowHolding);
  ASSERT_TRUE(alarm && alarm->at.low && alarm->at.middle);
  EXPECT_FALSE(alarm->isNow);
  // The plan's own day passes there.
  const auto& curve = brew.day.find(StageKind::UnpluggedRest)->curve;
  const auto passes = std::find_if(curve.begin(), curve.end(), [](const CurvePoint& point) {
    return point.wort < rigs::kWarmUpTo;
  });
  ASSERT_NE(passes, curve.end());
  EXPECT_GT(brew.plan.startOfDay + passes->time, *alarm->at.low);
  EXPECT_LT(brew.plan.startOfDay + passes->time, *alarm->at.high + minutes(10.0));
  brew.look(rest + hours(9.5));
  const Followed morning = brew.at(brew.read.back().at);
  ASSERT_TRUE(alarmOf(morning, AlarmOf::MashBelowHolding));
  EXPECT_TRUE(alarmOf(morning, AlarmOf::MashBelowHolding)->isNow);
}

// A kettle exactly as planned that was left alone for three hours longer.
TEST(FollowedNight, TakesTheNightAsLongAsItWas) {
  Brew brew = night();
  auto& mash = std::get<UnpluggedMash>(brew.plan.batch.mash);
  const Time planned = mash.duration;
  mash.duration = planned + hours(3.0);
  brew.day =
      physics::simulate(brew.plan.rigs[1].rig, brew.plan.batch, brew.plan.place, {.curves = true});
  mash.duration = planned;
  const Time rest = brew.day.find(StageKind::UnpluggedRest)->begin;
  const Stage& heating = *brew.day.find(StageKind::HeatingToBoil);
  brew.write(brew.plan.startOfDay + rest, Event::Unplugged);
  for (const double hour : {0.02, 0.5, 1.0, 11.0}) brew.look(rest + hours(hour));
  brew.write(brew.plan.startOfDay + heating.begin, Event::Heating);
  brew.look(heating.begin + minutes(2.0));
  brew.look(heating.begin + minutes(10.0));
  const Plan was = rigs::withTheNightThatWas(brew.plan, brew.read);
  EXPECT_NEAR(inHours(std::get<UnpluggedMash>(was.batch.mash).duration), inHours(planned) + 3.0,
              1e-9);
  const Learned learned = brew.learned();
  for (const rigs::JudgedReading& one : learned.judged)
    EXPECT_LT(std::abs(one.surprise), rigs::kABitOutside) << one.which;
  EXPECT_EQ(learned.judged.size(), 6u);
  const Followed followed = brew.at(brew.read.back().at);
  const Coming* boil = comingOf(followed, StageKind::Boil);
  ASSERT_TRUE(boil && boil->at.low && boil->at.high);
  EXPECT_LT(*boil->at.low, brew.plan.startOfDay + heating.end + minutes(1.0));
  EXPECT_GT(*boil->at.high, brew.plan.startOfDay + heating.end - minutes(1.0));
}

TEST(FollowedNight, AsksForTheEventWithoutWhichAReadingIsOfNoDay) {
  Brew brew = night();
  brew.write(brew.clockOf(StageKind::UnpluggedRest), Event::Unplugged);
  brew.look(brew.day.find(StageKind::UnpluggedRest)->begin + minutes(5.0));
  brew.write(brew.clockOf(StageKind::HeatingToBoil) + hours(1.0), celsius(80.0));
  const Followed followed = brew.at(brew.read.back().at);
  EXPECT_TRUE(alarmOf(followed, AlarmOf::EventMissing));
  EXPECT_FALSE(followed.last->isOfTheDay);
}

TEST(FollowedDay, WarnsOfTheBoilWhereItIsNearAndOnlyThere) {
  Brew brew = oneDay();
  const Stage& heating = *brew.day.find(StageKind::HeatingToBoil);
  brew.write(brew.plan.startOfDay + heating.begin, Event::Heating);
  brew.look(heating.begin + minutes(3.0));
  EXPECT_FALSE(alarmOf(brew.at(brew.read.back().at), AlarmOf::NearBoil));
  brew.look(heating.end - minutes(1.0));
  const Followed hot = brew.at(brew.read.back().at);
  ASSERT_TRUE(alarmOf(hot, AlarmOf::NearBoil));
  EXPECT_TRUE(alarmOf(hot, AlarmOf::NearBoil)->isNow);
  EXPECT_EQ(hot.alarms.front().what, AlarmOf::NearBoil);
  brew.write(brew.plan.startOfDay + heating.end, Event::Boil);
  EXPECT_TRUE(alarmOf(brew.at(brew.read.back().at + minutes(2.0)), AlarmOf::NearBoil));
  EXPECT_FALSE(alarmOf(brew.at(brew.read.back().at + minutes(30.0)), AlarmOf::NearBoil));
}

TEST(FollowedDay, WarnsOfAnElementThatSomeOfItsDaysUncover) {
  Brew brew = oneDay();
  const Time now = brew.plan.startOfDay + hours(1.0);
  EXPECT_FALSE(alarmOf(brew.at(now), AlarmOf::ElementUncovered));
  const std::size_t many = brew.planned.size() / 4;
  for (std::size_t i = 0; i < many; ++i) brew.planned[i].outcome = Outcome::UncoversElement;
  const Followed followed = brew.at(now);
  const rigs::Alarm* alarm = alarmOf(followed, AlarmOf::ElementUncovered);
  ASSERT_TRUE(alarm && alarm->at.low);
  EXPECT_NEAR(alarm->share, 0.25, 1e-9);
  EXPECT_FALSE(alarm->isNow);
  EXPECT_GT(*alarm->at.low, now);
  EXPECT_TRUE(alarmOf(brew.at(*alarm->at.low - minutes(1.0)), AlarmOf::ElementUncovered)->isNow);
}

TEST(FollowedNight, TellsAReadingThatDoesNotFitAndOneOfTheFuture) {
  Brew brew = night();
  const Time rest = brew.day.find(StageKind::UnpluggedRest)->begin;
  brew.write(brew.clockOf(StageKind::UnpluggedRest), Event::Unplugged);
  for (const double minute : {1.0, 20.0, 40.0, 60.0}) brew.look(rest + minutes(minute));
  const Time now = brew.read.back().at;
  EXPECT_FALSE(alarmOf(brew.at(now), AlarmOf::ReadingContradicted));
  EXPECT_FALSE(alarmOf(brew.at(now - minutes(1.9)), AlarmOf::FromTheFuture));
  ASSERT_TRUE(alarmOf(brew.at(now - minutes(7.0)), AlarmOf::FromTheFuture));
  EXPECT_NEAR(inMinutes(alarmOf(brew.at(now - minutes(7.0)), AlarmOf::FromTheFuture)->by), 7.0,
              1e-6);
  brew.write(now + minutes(20.0), celsius(48.0));
  const Followed wrong = brew.at(brew.read.back().at);
  EXPECT_TRUE(alarmOf(wrong, AlarmOf::ReadingContradicted));
  EXPECT_TRUE(wrong.last->contradicted || std::abs(wrong.last->surprise) > rigs::kAsksAgain);
}

TEST(FollowedNight, JudgesTheLastRowOfALogAgainstAllOfIt) {
  Brew brew = night();
  const Time rest = brew.day.find(StageKind::UnpluggedRest)->begin;
  brew.write(brew.clockOf(StageKind::UnpluggedRest), Event::Unplugged);
  for (double minute = 0.0; minute < 240.0; minute += 1.0) brew.look(rest + minutes(minute));
  const Followed followed = brew.at(brew.read.back().at);
  ASSERT_TRUE(followed.last && followed.last->low);
  EXPECT_EQ(followed.last->which, brew.read.size() - 1);
  EXPECT_TRUE(followed.last->isOfTheDay);
  EXPECT_LT(std::abs(followed.last->surprise), rigs::kABitOutside);
}

TEST(DayCourses, AreStraightBetweenTheirPointsAndEndAsTheyEnded) {
  const DayCourse course{.stages = {},
                         .over = hours(2.0),
                         .outcome = Outcome::Done,
                         .boiling = celsius(100.0),
                         .wort = {{hours(0.0), celsius(20.0)}, {hours(2.0), celsius(60.0)}}};
  EXPECT_NEAR(inCelsius(course.wortAt(hours(0.5))), 30.0, 1e-9);
  EXPECT_NEAR(inCelsius(course.wortAt(hours(-1.0))), 20.0, 1e-9);
  EXPECT_NEAR(inCelsius(course.wortAt(hours(9.0))), 60.0, 1e-9);
  EXPECT_FALSE(course.begin(StageKind::Boil));
}

}  // namespace
