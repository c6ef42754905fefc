// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/learned.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/read_day.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace rigs;
using namespace physics;
using readings::Event;
using readings::Reading;
using test_support::startedPlan;

// A day of a kettle that is not quite as planned, with what a thermometer shows of it.
struct RealDay {
  Plan plan;
  BrewDay day;
  std::vector<Reading> read = {};
  double thermometer = 0.0;  // K, that it shows too much

  RealDay(Plan planned, const UnknownValues& values, std::size_t rig = 0)
      : plan(std::move(planned)),
        day(simulate(dayWith(plan, rig, waterPlanned(plan, rig), values), {.curves = true})) {}

  Time beginOf(StageKind kind) const { return day.find(kind)->begin; }
  void mark(Event event, StageKind kind) { read.push_back({0, clock(beginOf(kind)), event}); }
  void look(Time at, double step = 0.1) {
    const double shown = inCelsius(*ReadDay(day).wort(at)) + thermometer;
    read.push_back({0, clock(at), celsius(step * std::round(shown / step)), step});
  }
  void lookAtMeter(Time at) {
    const double kWh = inJoules(*ReadDay(day).meter(at)) / 3.6e6;
    read.push_back({0, clock(at), joules(3.6e6 * 0.01 * std::round(kWh / 0.01)), 3.6e4});
  }
  Time clock(Time at) const { return plan.startOfDay + at; }
};

UnknownValues valuesWith(Unknown what, double value) {
  UnknownValues values = asPlannedValues();
  values[placeOf(what)] = value;
  return values;
}

const LearnedUnknown& of(const Learned& learned, Unknown what) {
  return learned.unknowns.at(placeOf(what));
}

RealDay lossyNight() {
  RealDay real(startedPlan("night-unplugged"), valuesWith(Unknown::ClosedLosses, 1.3));
  real.mark(Event::Unplugged, StageKind::UnpluggedRest);
  for (const double minute : {0.0, 10.0, 20.0, 30.0})
    real.look(real.beginOf(StageKind::UnpluggedRest) + minutes(minute));
  return real;
}

Temperature trueMorning(const RealDay& real) {
  return real.day.find(StageKind::UnpluggedRest)->last;
}

TEST(LearnedFromANight, FourReadingsNarrowTheMorningAndAFifthFarMore) {
  RealDay real = lossyNight();
  const Learned four = learnedFrom(real.plan, 0, real.read).value();
  real.look(real.beginOf(StageKind::UnpluggedRest) + hours(5.0));
  const Learned five = learnedFrom(real.plan, 0, real.read).value();
  const auto width = [](const Bands& bands) {
    return inKelvins(*bands.morning.high - *bands.morning.low);
  };
  EXPECT_LT(width(four.after), width(four.before));
  EXPECT_LT(width(five.after), 0.5 * width(four.after));
  EXPECT_LT(*five.after.morning.low, trueMorning(real));
  EXPECT_GT(*five.after.morning.high, trueMorning(real));
  EXPECT_TRUE(of(five, Unknown::ClosedLosses).learned());
  EXPECT_LT(of(five, Unknown::ClosedLosses).after.low, 1.3);
  EXPECT_GT(of(five, Unknown::ClosedLosses).after.high, 1.3);
  EXPECT_FALSE(of(five, Unknown::Power).learned());
  EXPECT_EQ(five.stories, 1u);
  EXPECT_FALSE(five.otherUnit || five.twelveHoursOff);
  EXPECT_GT(five.effective, 100.0);
}

TEST(LearnedFromANight, TheNextReadingKeepsWhatItPromises) {
  RealDay real = lossyNight();
  const Learned now = learnedFrom(real.plan, 0, real.read).value();
  ASSERT_TRUE(now.next.earliest && now.next.best);
  EXPECT_EQ(now.next.awaited, Awaited::Morning);
  EXPECT_LE(now.next.earliest->at, now.next.best->at);
  EXPECT_LT(now.next.best->halfWidth, now.next.halfWidthNow);
  real.look(now.next.earliest->at - real.plan.startOfDay);
  const Learned then = learnedFrom(real.plan, 0, real.read).value();
  // By straight lines: its own reading moves the losses, and with them how fast all goes.
  EXPECT_NEAR(then.next.halfWidthNow, now.next.earliest->halfWidth,
              0.25 * now.next.earliest->halfWidth);
}

TEST(LearnedFromANight, OneSlipIsFoundAndLeftNearlyOut) {
  RealDay real = lossyNight();
  for (const double hour : {2.0, 5.0, 8.0})
    real.look(real.beginOf(StageKind::UnpluggedRest) + hours(hour));
  real.read[3].value = std::get<Temperature>(real.read[3].value) - kelvins(10.0);
  const Learned learned = learnedFrom(real.plan, 0, real.read).value();
  for (const JudgedReading& one : learned.judged)
    EXPECT_EQ(one.good < 0.5, one.which == 3) << one.which;
  EXPECT_GT(of(learned, Unknown::ClosedLosses).after.high, 1.3);
  EXPECT_LT(of(learned, Unknown::ClosedLosses).after.low, 1.3);
}

TEST(LearnedFromANight, AWholeSetInTheOtherUnitIsToldAsOne) {
  RealDay real = lossyNight();
  // Typed as they stood, in Fahrenheit, where Celsius was understood... but the wort is no 40 °C.
  for (Reading& one : real.read)
    if (auto* wort = std::get_if<Temperature>(&one.value))
      *wort = celsius((inCelsius(*wort) - 32.0) / 1.8);
  const Learned learned = learnedFrom(real.plan, 0, real.read).value();
  EXPECT_TRUE(learned.otherUnit);
  EXPECT_FALSE(learnedFrom(real.plan, 0, lossyNight().read).value().otherUnit);
}

TEST(LearnedFromAHeating, TemperaturesAloneTellOnlyPowerPerLitreAndAMeterTellsThemApart) {
  RealDay real(startedPlan("one-kettle"), valuesWith(Unknown::Power, 0.9));
  const Time begin = real.beginOf(StageKind::Strike);
  const Time lasts = real.day.find(StageKind::Strike)->end - begin;
  for (const double share : {0.05, 0.3, 0.6, 0.9}) real.look(begin + share * lasts);
  const Learned without = learnedFrom(real.plan, 0, real.read).value();
  EXPECT_TRUE(without.onlyPowerPerLitre);
  real.lookAtMeter(begin + 0.9 * lasts);
  const Learned with = learnedFrom(real.plan, 0, real.read).value();
  EXPECT_LT(of(with, Unknown::Power).spreadLeft, 0.6 * of(without, Unknown::Power).spreadLeft);
  EXPECT_LT(of(with, Unknown::Power).after.low, 0.9);
  EXPECT_GT(of(with, Unknown::Power).after.high, 0.9);
}

TEST(LearnedFromALog, PromisesNoMoreThanTheLawsKeep) {
  RealDay real = lossyNight();
  for (double minute = 31.0; minute < 300.0; minute += 0.25)
    real.look(real.beginOf(StageKind::UnpluggedRest) + minutes(minute));
  const Learned learned = learnedFrom(real.plan, 0, real.read).value();
  EXPECT_LE(learned.judged.size(), 40u);
  EXPECT_GT(inKelvins(*learned.after.morning.high - *learned.after.morning.low), 2.56 * 0.3);
  EXPECT_LT(*learned.after.morning.low, trueMorning(real));
  EXPECT_GT(*learned.after.morning.high, trueMorning(real));
}

TEST(LearnedFromNothing, SaysWhy) {
  const Plan plan = startedPlan("night-unplugged");
  EXPECT_EQ(learnedFrom(plan, 0, {}).value().nothing, NothingLearned::NothingUsable);
  // Days later there is no day any more.
  EXPECT_EQ(learnedFrom(plan, 0, {{1, hours(90.0), celsius(40.0), 0.1}}).value().nothing,
            NothingLearned::NothingUsable);
  EXPECT_FALSE(learnedFrom(plan, 0, lossyNight().read, {}, [] { return true; }));
}

TEST(LearnedFromAnything, IsTheSameEveryTime) {
  const RealDay real = lossyNight();
  const Learned first = learnedFrom(real.plan, 0, real.read).value();
  const Learned second = learnedFrom(real.plan, 0, real.read).value();
  EXPECT_EQ(first.after.morning.low, second.after.morning.low);
  EXPECT_EQ(first.effective, second.effective);
}

}  // namespace
