// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/helps.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/night.hpp"
#include "tests/support/solved_demo.hpp"

namespace rigs {
namespace {

using namespace physics;
using test_support::demoPlan;
using test_support::startedPlan;

const HelpsAnswer& kitchen() {
  static const HelpsAnswer answer = helps(demoPlan(), 1, 2);
  return answer;
}
const HelpsAnswer& oneKettle() {
  static const HelpsAnswer answer = helps(startedPlan("one-kettle"), 0, 2);
  return answer;
}

std::size_t placeOf(const HelpsAnswer& answer, std::string_view id) {
  for (std::size_t i = 0; i < answer.changes.size(); ++i)
    if (answer.changes[i].id == id) return i;
  ADD_FAILURE() << "no change " << id;
  return 0;
}

TEST(Helps, TodayIsTheDayThatEveryOtherAnswerTells) {
  const Plan plan = demoPlan();
  const RigAnswer rig = answer(plan, Depth::Day).rigs[1];
  const Effect& today = kitchen().today;

  EXPECT_EQ(today.day, rig.day.duration());
  EXPECT_EQ(today.fromWall, rig.day.total.fromWall());
  EXPECT_EQ(today.cost, rig.cost);
  EXPECT_EQ(today.circuit, rig.circuit.overall());
  EXPECT_EQ(today.rolling == Rolling::OnTheEdge, rig.edge.has_value());
  EXPECT_NEAR(*today.powerShare, rig.day.electrical.delivered / *rig.day.leastToBoil, 1e-4);
}

TEST(Helps, TheMorningIsTheOneOfThePlansOwnNight) {
  const Plan plan = startedPlan("night-unplugged");
  const RigAnswer rig = answer(plan, Depth::Night).rigs[0];
  EXPECT_EQ(*effectOf(plan, 0, plan).morning, rig.night->asItIs.morning);
  EXPECT_FALSE(kitchen().today.morning.has_value()) << "its mash is never left alone";
}

TEST(Helps, NobodyCanSayWhetherARigOnTheEdgeRolls) {
  const Plan plan = demoPlan();
  EXPECT_EQ(effectOf(plan, 0, plan).rolling, Rolling::No);
  EXPECT_EQ(effectOf(plan, 1, plan).rolling, Rolling::OnTheEdge);
  EXPECT_EQ(effectOf(plan, 2, plan).rolling, Rolling::Yes);
  EXPECT_EQ(effectOf(plan, 3, plan).rolling, Rolling::Yes);
}

TEST(Helps, WarmWaterIsPaidForWhereverItIsHeated) {
  const HelpsAnswer& answer = kitchen();
  const Effect& warm = answer.alone[placeOf(answer, "water-55")];
  EXPECT_LT(inMinutes(*warm.day), inMinutes(*answer.today.day) - 45.0);
  // What is saved is the loss of the longer heating, not the heat of 43 K.
  EXPECT_GT(inKilowattHours(warm.fromWall), 0.97 * inKilowattHours(answer.today.fromWall));
  EXPECT_LT(warm.fromWall, answer.today.fromWall);
  EXPECT_NEAR(*warm.cost / *answer.today.cost, warm.fromWall / answer.today.fromWall, 1e-6);
}

TEST(Helps, ASmallerBatchIsNotCheaperByItsSize) {
  const HelpsAnswer& answer = kitchen();
  const Effect& smaller = answer.alone[placeOf(answer, "batch-size-75")];
  EXPECT_NEAR(smaller.batches, 4.0 / 3.0, 1e-12);
  EXPECT_LT(*smaller.cost, *answer.today.cost);
  EXPECT_LT(*gainOf(Wish::Cheaper, smaller, answer.today, 12.0), 0.0);
}

TEST(Helps, ARatingOrARuleThatForbidsIsNeverAdvice) {
  for (const HelpsAnswer* answer : {&kitchen(), &oneKettle()}) {
    for (std::size_t i = 0; i < answer->changes.size(); ++i) {
      const Change& one = answer->changes[i];
      SCOPED_TRACE(one.id);
      const bool rules = touchesCircuit(one.lever) && answer->alone[i].circuit == Fit::DoesNotFit;
      if (!one.forbidden.empty() || rules || !answer->alone[i].getsThrough()) {
        EXPECT_FALSE(answer->advised[i]);
      }
    }
    for (const Wish wish : kWishes) {
      const WishAnswer& of = answer->of(wish);
      std::vector<Together> told = of.tradeOffs;
      for (const auto& best : of.best)
        if (best) told.push_back(*best);
      for (const auto* one : {&of.few, &of.allGoals})
        if (*one) told.push_back(**one);
      for (const Together& one : told) {
        EXPECT_TRUE(one.effect.getsThrough());
        const bool touches =
            std::any_of(one.changes.begin(), one.changes.end(), [&](std::size_t i) {
              EXPECT_TRUE(answer->changes[i].forbidden.empty());
              return touchesCircuit(answer->changes[i].lever);
            });
        if (touches || answer->today.circuit != Fit::DoesNotFit) {
          EXPECT_NE(one.effect.circuit, Fit::DoesNotFit);
        }
      }
    }
  }
  // 2000 W would do much, on a circuit that does not carry them; a second element of 1650 W would
  // be as long on its circuit as the first, which Canada's rules do not grant.
  EXPECT_FALSE(kitchen().advised[placeOf(kitchen(), "element-2000")]);
  EXPECT_FALSE(kitchen().advised[placeOf(kitchen(), "second")]);
  EXPECT_FALSE(kitchen().advised[placeOf(kitchen(), "stand-legs")]) << "does not roll";
  EXPECT_TRUE(kitchen().advised[placeOf(kitchen(), "lid-in-boil-50")]);
}

TEST(Helps, TheOneChangeIsTheBestOfAllThatMayBeAdvised) {
  for (const HelpsAnswer* answer : {&kitchen(), &oneKettle()})
    for (const Wish wish : kWishes) {
      const auto& best = answer->of(wish).best;
      const auto order = ranked(*answer, wish, 12.0);
      ASSERT_EQ(order.size(), answer->changes.size());
      const std::size_t first = order.front();
      const bool helpsAtAll =
          answer->advised[first] && isMore(wish, answer->alone[first], answer->today, 12.0);
      EXPECT_EQ(helpsAtAll, !best.empty() && best.front());
      if (helpsAtAll) {
        EXPECT_EQ(best.front()->changes, std::vector{first});
      }
      for (std::size_t k = 1; k < order.size(); ++k)
        EXPECT_LE(answer->advised[order[k]], answer->advised[order[k - 1]]);
    }
}

// The kettle in the kitchen boils once half its mouth is covered: no further lid makes that surer.
TEST(Helps, RollingNeedsNoMoreThanToRollForSure) {
  const HelpsAnswer& answer = kitchen();
  const auto& best = answer.of(Wish::Rolls).best;
  ASSERT_TRUE(best.front().has_value());
  EXPECT_EQ(answer.changes[best.front()->changes.front()].id, "lid-in-boil-50");
  EXPECT_EQ(answer.of(Wish::Rolls).few->changes.size(), 1u);
  EXPECT_NEAR(
      *gainOf(Wish::Rolls, answer.alone[placeOf(answer, "lid-in-boil-25")], answer.today, 12.0),
      0.30, 0.011);
}

TEST(Helps, AWishWithoutItsFigureHasNoAnswer) {
  EXPECT_TRUE(kitchen().of(Wish::Warmer).best.empty());
  EXPECT_FALSE(kitchen().of(Wish::Warmer).few.has_value());
  EXPECT_TRUE(oneKettle().of(Wish::Circuit).best.empty()) << "it fits already";
  EXPECT_FALSE(kitchen().of(Wish::Circuit).best.empty());
}

// --- Against brute force.

// All ways, told out one by one.
std::vector<Together> everyWay(const Plan& plan, const HelpsAnswer& answer, std::size_t atMost) {
  std::vector<Together> all;
  const std::size_t n = answer.changes.size();
  for (std::uint64_t bits = 1; bits < (std::uint64_t{1} << n); ++bits) {
    std::vector<std::size_t> way;
    std::vector<std::size_t> groups;
    std::vector<const Change*> made;
    bool good = true;
    for (std::size_t i = 0; i < n; ++i) {
      if (!((bits >> i) & 1)) continue;
      const std::size_t group = groupOf(answer.changes[i].lever);
      good =
          good && answer.tried[i] && std::find(groups.begin(), groups.end(), group) == groups.end();
      groups.push_back(group);
      way.push_back(i);
      made.push_back(&answer.changes[i]);
    }
    if (good && way.size() <= atMost)
      all.push_back({way, effectOf(changed(plan, 0, made), 0, plan, 1e-6)});
  }
  return all;
}

// A plan whose levers are few: jacketed, polished, on a region without other circuits.
Plan fewLevers() {
  Plan plan = startedPlan("one-kettle");
  plan.rigs[0].circuits.front().details.circuitRegion = "Nowhere";
  plan.rigs[0].rig.element.rating = watts(1900.0);
  plan.place.water = celsius(40.0);
  return plan;
}

TEST(Helps, TheFewestChangesAndTheBestAreThoseOfBruteForce) {
  const Plan plan = fewLevers();
  const HelpsAnswer answer = helps(plan, 0, 3);
  ASSERT_LE(answer.changes.size(), 20u);
  const auto all = everyWay(plan, answer, 3);
  EXPECT_EQ(answer.ways, all.size());
  EXPECT_EQ(answer.done, all.size());
  EXPECT_FALSE(answer.isPart());
  const auto advised = [&](const Together& one) {
    const bool touches = std::any_of(one.changes.begin(), one.changes.end(), [&](std::size_t i) {
      return touchesCircuit(answer.changes[i].lever);
    });
    return mayBeAdvised(one.effect, answer.today, touches, false);
  };
  ASSERT_FALSE(answer.goalsMetToday);
  std::size_t fewest = 99;
  for (const Together& one : all)
    if (advised(one) && goalsMet(one.effect, plan).all())
      fewest = std::min(fewest, one.changes.size());
  for (const Wish wish : kWishes) {
    SCOPED_TRACE(wishWord(wish));
    ASSERT_EQ(answer.of(wish).allGoals.has_value(), fewest < 99);
    if (answer.of(wish).allGoals) {
      EXPECT_EQ(answer.of(wish).allGoals->changes.size(), fewest);
      EXPECT_TRUE(goalsMet(answer.of(wish).allGoals->effect, plan).all());
    }
    for (const Together& one : all) {
      if (!advised(one) || !isMore(wish, one.effect, answer.today, 12.0)) continue;
      const auto& best = answer.of(wish).best;
      ASSERT_GE(best.size(), one.changes.size());
      ASSERT_TRUE(best[one.changes.size() - 1].has_value());
      // Single days are simulated finely, others to the minute.
      const auto gain = [&](const Effect& of) {
        return gainOf(wish, of, answer.today, 12.0).value_or(0.0);
      };
      const Effect& told = best[one.changes.size() - 1]->effect;
      EXPECT_GE(standing(wish, told), standing(wish, one.effect));
      if (standing(wish, told) == standing(wish, one.effect)) {
        EXPECT_GE(gain(told) + 0.011, gain(one.effect));
      }
    }
    // No way that is told is beaten by any way at all, nor by today.
    for (const Together& told : answer.of(wish).tradeOffs) {
      const Burden burden = burdenOf(told, plan);
      EXPECT_FALSE(dominates(burdenOf({{}, answer.today}, plan), burden));
      for (const Together& one : all)
        if (advised(one) && one.changes.size() > 1) {
          EXPECT_FALSE(dominates(burdenOf(one, plan), burden));
        }
    }
    EXPECT_LE(answer.of(wish).tradeOffs.size(), kMostTradeOffs);
  }
}

RC_GTEST_PROP(Helps, WhatNothingDominatesIsKeptAndNothingElse, ()) {
  const auto width = *rc::gen::inRange<std::size_t>(1, 5);
  const auto count = *rc::gen::inRange<std::size_t>(0, 40);
  std::vector<Burden> all;
  for (std::size_t i = 0; i < count; ++i) {
    Burden one;
    for (std::size_t k = 0; k < width; ++k) one.push_back(*rc::gen::inRange(0, 6));
    all.push_back(one);
  }
  Unbeaten unbeaten;
  for (std::size_t i = 0; i < count; ++i) unbeaten.take({{i}, {}}, all[i]);
  std::vector<std::size_t> kept;
  for (const Together& one : unbeaten.all()) kept.push_back(one.changes.front());
  const auto isKept = [&](std::size_t i) {
    return std::find(kept.begin(), kept.end(), i) != kept.end();
  };
  for (std::size_t i = 0; i < count; ++i) {
    bool beaten = false;
    for (std::size_t j = 0; j < count; ++j)
      beaten = beaten || dominates(all[j], all[i]) || (j < i && all[j] == all[i]);
    RC_ASSERT(isKept(i) == !beaten);
    // What is left out has one among the kept that is as good at least.
    if (!isKept(i))
      RC_ASSERT(std::any_of(kept.begin(), kept.end(), [&](std::size_t k) {
        return all[k] == all[i] || dominates(all[k], all[i]);
      }));
  }
}

RC_GTEST_PROP(Helps, WaysAreCountedAsTheyAreTaken, ()) {
  std::vector<std::size_t> groups =
      *rc::gen::container<std::vector<std::size_t>>(rc::gen::inRange<std::size_t>(1, 4));
  groups.resize(std::min<std::size_t>(groups.size(), 6));
  const auto atMost = *rc::gen::inRange<std::size_t>(0, 7);
  std::uint64_t counted = 0;
  // Mixed radix: 0 of a group is none of it.
  std::vector<std::size_t> at(groups.size(), 0);
  for (bool over = groups.empty(); !over;) {
    const auto pulled =
        groups.size() - static_cast<std::size_t>(std::count(at.begin(), at.end(), 0u));
    if (pulled > 0 && pulled <= atMost) ++counted;
    over = true;
    for (std::size_t k = 0; k < at.size() && over; ++k) {
      over = at[k] == groups[k];
      at[k] = over ? 0 : at[k] + 1;
    }
  }
  RC_ASSERT(waysOf(groups, atMost) == counted);
}

TEST(Helps, WhatWasFoundBeforeAStopStaysAndIsMarkedAsPart) {
  const Plan plan = startedPlan("one-kettle");
  std::vector<std::uint64_t> told;
  std::uint64_t of = 0;
  const Watched watched{.stop = [&] { return !told.empty() && told.back() >= 128; },
                        .progress =
                            [&](std::uint64_t done, std::uint64_t all) {
                              told.push_back(done);
                              of = all;
                            }};
  const HelpsAnswer part = helps(plan, 0, 3, watched);

  EXPECT_EQ(told.front(), 0u) << "the number of ways is told before the first";
  EXPECT_EQ(of, part.ways);
  EXPECT_TRUE(part.isPart());
  EXPECT_GE(part.done, 128u);
  EXPECT_LT(part.done, part.ways);
  ASSERT_FALSE(part.of(Wish::Sooner).best.empty());
  EXPECT_EQ(part.of(Wish::Sooner).best.front()->changes,
            oneKettle().of(Wish::Sooner).best.front()->changes);
}

TEST(Helps, IsTheSameEveryTime) {
  const HelpsAnswer again = helps(demoPlan(), 1, 2);
  ASSERT_EQ(again.changes.size(), kitchen().changes.size());
  for (const Wish wish : kWishes) {
    ASSERT_EQ(again.of(wish).tradeOffs.size(), kitchen().of(wish).tradeOffs.size());
    for (std::size_t i = 0; i < again.of(wish).tradeOffs.size(); ++i)
      EXPECT_EQ(again.of(wish).tradeOffs[i].changes, kitchen().of(wish).tradeOffs[i].changes);
  }
}

TEST(Helps, APaybackIsToldWhereAPriceIsAndNeverWithout) {
  Plan plan = startedPlan("one-kettle");
  plan.tariff.jacketPrice = 30.0;
  const HelpsAnswer priced = helps(plan, 0, 1);
  const std::size_t jacket = placeOf(priced, "side-jacket-25");
  const auto back = paybackOf(priced, {jacket}, priced.alone[jacket], 12.0);
  ASSERT_TRUE(back && back->years);
  EXPECT_NEAR(*back->years, 30.0 / *savedInAYear(priced.alone[jacket], priced.today, 12.0), 1e-9);
  const std::size_t board = placeOf(priced, "stand-board");
  EXPECT_FALSE(priceOf(priced, {board}).has_value());
  EXPECT_FALSE(priceOf(priced, {jacket, board}).has_value()) << "a part is no sum";
  const std::size_t lid = placeOf(priced, "lid-jacket-20");
  EXPECT_EQ(priceOf(priced, {jacket, lid}), 30.0) << "one jacket, two faces";
  EXPECT_FALSE(paybackOf(oneKettle(), {jacket}, oneKettle().alone[jacket], 12.0).has_value());
}

}  // namespace
}  // namespace rigs
