// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/begins.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/bands.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/answers/levers.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/answers/surely_begins.hpp"
#include "rigs/plans/tariff_reader.hpp"
#include "rigs/results/result_json_object.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/solved_demo.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace rigs;
using namespace physics;
using test_support::demoPlan;
using test_support::demoWith;
using test_support::removed;
using test_support::startedPlan;

constexpr Milestone kAll[] = {Milestone::StrikeWater, Milestone::EndOfMash, Milestone::Boil,
                              Milestone::EndOfBoil, Milestone::Pitching};

Plan wanting(Plan plan, Milestone what, Time at) {
  plan.ready = Ready{.what = what, .at = at};
  for (RigPlan& rig : plan.rigs) rig.chiller.isStated = true;
  return plan;
}

const Tariff& byTheHour() {
  static const Tariff tariff = [] {
    for (const BundledTariff& one : bundledTariffs())
      if (one.tariff.dependsOnTheHour()) return one.tariff;
    return Tariff{};
  }();
  return tariff;
}

// It rolls on every day.
Plan strongKettle() {
  Plan plan = startedPlan("one-kettle");
  RigPlan& rig = plan.rigs.front();
  for (Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) one->element.rating = watts(3200.0);
  return plan;
}

// The moment as pages tell it, looked up on its own: from the stages, and from chilling.
std::optional<Time> momentOf(Milestone what, const RigAnswer& rig, const Plan& plan) {
  const auto at = [&](StageKind kind, bool end) -> std::optional<Time> {
    for (const Stage& stage : rig.day.stages)
      if (stage.kind == kind) return end ? stage.end : stage.begin;
    return std::nullopt;
  };
  switch (what) {
    case Milestone::StrikeWater:
      return at(StageKind::Strike, true);
    case Milestone::EndOfMash:
      return at(StageKind::HeatingToBoil, false);
    case Milestone::Boil:
      return at(StageKind::Boil, false);
    case Milestone::EndOfBoil:
      return rig.day.stages.back().end;
    case Milestone::Pitching:
      return rig.day.stages.back().end + plan.chilling.hotStand +
             *(rig.chill->chiller.stirred ? rig.chill->stirred : rig.chill->stillAtWorst)->toGoal;
  }
  return std::nullopt;
}

// The same rig's answer as JSON, without what says that its beginning was solved.
std::string jsonOf(const Plan& plan, std::size_t i, Depth depth) {
  auto json = rigJson(plan, answer(plan, depth), i);
  json.erase("begins_s");
  return json.dump();
}

TEST(Begins, MakeTheMomentFallOnTheWantedClock) {
  for (const Milestone what : kAll) {
    const Plan plan = wanting(demoPlan(), what, hours(11.0));
    const Answers answers = answer(plan, Depth::Day);
    for (const RigAnswer& rig : answers.rigs) {
      const bool boils = rig.day.outcome == Outcome::Done;
      const bool ofTheMash = what == Milestone::StrikeWater || what == Milestone::EndOfMash;
      ASSERT_EQ(rig.begins.has_value(), boils || ofTheMash) << milestoneWord(what) << rig.name;
      if (!rig.begins) continue;
      EXPECT_WITHIN(*rig.begins + *momentOf(what, rig, plan), hours(11.0), seconds(1e-6));
    }
  }
}

// Of a tariff by the hour, and at every depth.
TEST(Begins, AreAllThatThePlanWithThatStartHasOtherwise) {
  Plan plan = startedPlan("120-or-240-volts");
  plan.tariff = byTheHour();
  ASSERT_TRUE(plan.tariff.dependsOnTheHour());
  for (const Milestone what : kAll) {
    const Plan wished = wanting(plan, what, hours(9.25));
    const Answers answers = answer(wished, Depth::Day);
    for (std::size_t i = 0; i < wished.rigs.size(); ++i) {
      const auto& begins = answers.rigs[i].begins;
      if (!begins) continue;
      Plan stated = wished;
      stated.ready.reset();
      stated.startOfDay = clockOfDay(*begins);
      for (const Depth depth : {Depth::DayAndJacket, Depth::Circuit})
        EXPECT_EQ(jsonOf(wished, i, depth), jsonOf(stated, i, depth)) << milestoneWord(what);
      EXPECT_EQ(asBegun(wished, i).startOfDay, *begins);
    }
  }
}

TEST(Begins, AreTheStartOfTheDayWhereNothingIsToBeReady) {
  const Plan plan = demoPlan();
  for (const RigAnswer& rig : answer(plan, Depth::Figures).rigs)
    EXPECT_EQ(rig.begins, std::optional(plan.startOfDay));
  EXPECT_EQ(asBegun(plan, 0), plan);
}

RC_GTEST_PROP(Begins, MoveWithTheClockAlone, ()) {
  const auto of = static_cast<std::size_t>(*rc::gen::inRange(0, 4));
  const Time at = minutes(*rc::gen::inRange(0, 24 * 60));
  const Plan plan = wanting(startedPlan("one-kettle"), kAll[of], at);
  const Plan atMidnight = wanting(plan, kAll[of], hours(0.0));
  const RigAnswer one = answer(plan, Depth::Figures).rigs.front();
  const RigAnswer other = answer(atMidnight, Depth::Figures).rigs.front();
  RC_ASSERT(std::abs(inSeconds(*one.begins - *other.begins - at)) < 1e-6);
  RC_ASSERT(one.day.total.fromWall() == other.day.total.fromWall());
  RC_ASSERT(one.day.duration() == other.day.duration());
}

// Ten hours unplugged, and on its way to the boil by seven: it begins on the evening before.
TEST(Begins, MayBeOnTheDayBefore) {
  const Plan plan = wanting(startedPlan("night-unplugged"), Milestone::EndOfMash, hours(7.0));
  for (const RigAnswer& rig : answer(plan, Depth::Day).rigs) {
    ASSERT_TRUE(rig.begins);
    EXPECT_LT(*rig.begins, hours(-3.0));
    EXPECT_GT(*rig.begins, hours(-6.0));
  }
}

// Whoever never comes to it has no beginning, and where the hour decides no price.
TEST(Begins, AreNoneForARigThatNeverComesToIt) {
  Plan plan = wanting(demoPlan(), Milestone::Boil, hours(11.0));
  plan.rigs.front().rig.element.rating = watts(600.0);
  const auto first = [&] { return answer(plan, Depth::Day).rigs.front(); };
  EXPECT_FALSE(first().begins);
  EXPECT_TRUE(first().cost) << "a flat price needs no clock";
  plan.tariff = byTheHour();
  EXPECT_FALSE(first().cost);
  EXPECT_TRUE(first().stageCosts.empty());
  EXPECT_FALSE(asBegun(plan, 0).start());
  EXPECT_FALSE(bandsOf(plan, 0, {}, 16).value().cost.middle);
}

// Wort that one pass leaves too warm, or water that cannot chill so far, is none to pitch.
TEST(Begins, AreNoneForWortThatIsNeverChilled) {
  Plan plan = wanting(startedPlan("one-kettle"), Milestone::Pitching, hours(19.0));
  ASSERT_TRUE(answer(plan, Depth::Day).rigs.front().begins);
  plan.chilling.pitching = celsius(2.0);
  EXPECT_FALSE(answer(plan, Depth::Day).rigs.front().begins);
}

TEST(BeginsForNineOfTen, AreEarlierByTheBandsUpperHalf) {
  const Plan plan = wanting(strongKettle(), Milestone::Boil, hours(11.0));
  const RigAnswer rig = answer(plan, Depth::Day).rigs.front();
  const Bands bands = bandsOf(plan, 0).value();
  const auto by = beginsForNineOfTen(plan, rig.day, rig.chill.get(), bands);
  ASSERT_TRUE(by && bands.boilBegins.high);
  EXPECT_WITHIN(*by + *bands.boilBegins.high, hours(11.0), seconds(1e-6));
  EXPECT_LT(*by, *rig.begins);
  // A boil lasts as long as it was stated, whatever came before it.
  const Plan over = wanting(plan, Milestone::EndOfBoil, hours(12.0));
  const auto overBy = beginsForNineOfTen(over, rig.day, rig.chill.get(), bands);
  EXPECT_WITHIN(*overBy + plan.batch.boil, *by + hours(1.0), seconds(1e-6));
}

// Of several rests no band is known, and of days that mostly do not roll no moment.
TEST(BeginsForNineOfTen, AreNotToldWhereNobodyKnows) {
  const Plan several = wanting(demoPlan(), Milestone::EndOfMash, hours(11.0));
  const RigAnswer rig = answer(several, Depth::Day).rigs.front();
  ASSERT_EQ(rig.day.stages.at(4).kind, StageKind::Ramp);
  EXPECT_FALSE(beginsForNineOfTen(several, rig.day, nullptr, bandsOf(several, 0, {}, 16).value()));
  const Plan one = wanting(strongKettle(), Milestone::EndOfMash, hours(11.0));
  const RigAnswer single = answer(one, Depth::Day).rigs.front();
  EXPECT_LT(*beginsForNineOfTen(one, single.day, nullptr, bandsOf(one, 0, {}, 16).value()),
            *single.begins);
  const Plan edge = wanting(startedPlan("hardly-boils"), Milestone::Boil, hours(11.0));
  const RigAnswer hardly = answer(edge, Depth::Day).rigs.front();
  EXPECT_FALSE(beginsForNineOfTen(edge, hardly.day, nullptr, bandsOf(edge, 0, {}, 64).value()));
}

// Who begins at another hour is ready at another one: that is no help.
TEST(Begins, AreNotShiftedByWhatHelps) {
  Plan plan = startedPlan("one-kettle");
  plan.tariff = byTheHour();
  const auto offersAStart = [](const Plan& one) {
    const HelpsAnswer all = helps(one, 0, 1);
    return std::any_of(all.changes.begin(), all.changes.end(),
                       [](const Change& change) { return change.lever == Lever::Start; });
  };
  EXPECT_TRUE(offersAStart(plan));
  EXPECT_FALSE(offersAStart(wanting(plan, Milestone::Boil, hours(17.0))));
}

// What the window remembers of one clock is not told of another.
TEST(Begins, AreSearchedAnewWhereTheClockChanges) {
  Plan plan = startedPlan("one-kettle");
  plan.tariff = byTheHour();
  Memory memory;
  const auto costs = [&](const Plan& one) {
    Search search(one, memory);
    search.addDays();
    search.add({.jacketPower = true});
    return *search.solution().sweeps.front().jacketPower.back().bare.cost;
  };
  const double morning = costs(wanting(plan, Milestone::Boil, hours(5.0)));
  const double evening = costs(wanting(plan, Milestone::Boil, hours(19.0)));
  EXPECT_NE(morning, evening);
  EXPECT_EQ(costs(wanting(plan, Milestone::Boil, hours(5.0))), morning);
}

}  // namespace
