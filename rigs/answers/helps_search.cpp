// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most, searched: every change alone, then all ways to pull a few levers together.
#include <algorithm>
#include <cmath>
#include <utility>

#include "rigs/answers/begins.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/answers/pool.hpp"

namespace rigs {
namespace {

using namespace physics;

// Told to the minute: the integrator may be coarse.
constexpr double kToTheMinute = 1e-6;
// Between two looks at the clock and at whoever wants to stop.
constexpr std::size_t kAtOnce = 128;

long long inWhole(double value, double step) { return std::llround(value / step); }

template <class T, class In>
bool sameIn(const std::optional<T>& a, const std::optional<T>& b, const In& steps) {
  if (a.has_value() != b.has_value()) return false;
  return !a || steps(*a) == steps(*b);
}

// Nothing that anybody wishes differs in what is told.
bool doesNothing(const Effect& then, const Effect& today) {
  const auto minutes = [](Time time) { return inWhole(inMinutes(time), 1.0); };
  const auto points = [](double share) { return inWhole(share, 0.01); };
  const auto tenths = [](Temperature t) { return inWhole(inCelsius(t), 0.1); };
  const auto near = [](double a, double b) {
    return std::abs(a - b) <= 0.5 * kWorthTelling * std::abs(b);
  };
  return then.outcome == today.outcome && then.overflows == today.overflows &&
         then.rolling == today.rolling && then.circuit == today.circuit &&
         sameIn(then.powerShare, today.powerShare, points) &&
         sameIn(then.toStrike, today.toStrike, minutes) &&
         sameIn(then.toBoil, today.toBoil, minutes) && sameIn(then.day, today.day, minutes) &&
         sameIn(then.morning, today.morning, tenths) &&
         points(then.circuitShare) == points(today.circuitShare) &&
         near(then.batches * inJoules(then.fromWall), inJoules(today.fromWall)) &&
         near(then.batches * then.cost.value_or(0.0), today.cost.value_or(0.0));
}

// Changes that are tried with others, by the group of their lever.
using Groups = std::vector<std::vector<std::size_t>>;
Groups groupsOf(const HelpsAnswer& answer) {
  Groups all(kLeverGroups);
  for (std::size_t i = 0; i < answer.changes.size(); ++i)
    if (answer.tried[i]) all[groupOf(answer.changes[i].lever)].push_back(i);
  std::erase_if(all, [](const auto& group) { return group.empty(); });
  return all;
}

std::vector<std::size_t> sizesOf(const Groups& groups) {
  std::vector<std::size_t> sizes;
  for (const auto& group : groups) sizes.push_back(group.size());
  return sizes;
}

// All ways to take one change from each of `size` groups, one after the other.
class Ways {
 public:
  Ways(const Groups& groups, std::size_t size) : groups_(groups), from_(size), at_(size) {
    for (std::size_t k = 0; k < size; ++k) from_[k] = k;
    over_ = size > groups.size() || size == 0;
  }
  bool isOver() const { return over_; }
  std::vector<std::size_t> take() {
    std::vector<std::size_t> way;
    for (std::size_t k = 0; k < from_.size(); ++k) way.push_back(groups_[from_[k]][at_[k]]);
    step();
    std::sort(way.begin(), way.end());
    return way;
  }

 private:
  void step() {
    for (std::size_t k = at_.size(); k-- > 0;) {
      if (++at_[k] < groups_[from_[k]].size()) return;
      at_[k] = 0;
    }
    // The next groups in order.
    for (std::size_t k = from_.size(); k-- > 0;) {
      if (from_[k] + from_.size() - k >= groups_.size()) continue;
      ++from_[k];
      for (std::size_t later = k + 1; later < from_.size(); ++later)
        from_[later] = from_[later - 1] + 1;
      return;
    }
    over_ = true;
  }

  const Groups& groups_;
  std::vector<std::size_t> from_, at_;
  bool over_ = false;
};

// Keeps of what passes only what will be told, so that a million ways need no memory.
class Sieve {
 public:
  Sieve(const Plan& plan, HelpsAnswer& answer) : plan_(plan), answer_(answer) {
    const Together today{{}, answer.today};
    front_.take(today, burdenOf(today, plan));
    goals_ = goalsMet(answer.today, plan).all();
  }

  void take(Together one) {
    const bool touches = std::any_of(one.changes.begin(), one.changes.end(), [&](std::size_t i) {
      return touchesCircuit(answer_.changes[i].lever);
    });
    if (!mayBeAdvised(one.effect, answer_.today, touches, false)) return;
    const bool meets = !goals_ && goalsMet(one.effect, plan_).all();
    for (const Wish wish : kWishes) {
      WishAnswer& to = answer_.wishes[static_cast<std::size_t>(wish)];
      keepBest(wish, one, to.best);
      if (meets && (!to.allGoals || (to.allGoals->changes.size() == one.changes.size() &&
                                     better(wish, one, *to.allGoals))))
        to.allGoals = one;
    }
    const Burden burden = burdenOf(one, plan_);
    front_.take(std::move(one), burden);
  }

  void finish() {
    for (const Wish wish : kWishes) {
      WishAnswer& to = answer_.wishes[static_cast<std::size_t>(wish)];
      to.few = fewOf(wish, to.best);
      to.tradeOffs = chosen(wish);
    }
  }

 private:
  bool better(Wish wish, const Together& a, const Together& b) const {
    return isBetter(wish, a.effect, b.effect, answer_.today, brewsPerYear(plan_.tariff));
  }
  bool more(Wish wish, const Together& one) const {
    return isMore(wish, one.effect, answer_.today, brewsPerYear(plan_.tariff));
  }

  void keepBest(Wish wish, const Together& one, std::vector<std::optional<Together>>& best) const {
    if (!more(wish, one)) return;
    const std::size_t size = one.changes.size();
    if (best.size() < size) best.resize(size);
    auto& of = best[size - 1];
    if (!of || better(wish, one, *of)) of = one;
  }

  std::optional<Together> fewOf(Wish wish, const std::vector<std::optional<Together>>& best) const {
    const std::optional<Together>* top = nullptr;
    for (const auto& one : best)
      if (one && (!top || better(wish, *one, **top))) top = &one;
    if (!top) return std::nullopt;
    const auto gain = [&](const Together& one) {
      return gainOf(wish, one.effect, answer_.today, brewsPerYear(plan_.tariff)).value_or(0.0);
    };
    for (const auto& one : best)
      if (one && standing(wish, one->effect) == standing(wish, (*top)->effect) &&
          gain(*one) >= kMostOfIt * gain(**top))
        return one;
    return *top;
  }

  // This wish's best, then every other wish's, then the fewest changes.
  std::vector<Together> chosen(Wish wish) const {
    std::vector<const Together*> left, taken;
    for (const Together& one : front_.all())
      if (!one.changes.empty()) left.push_back(&one);
    const auto takeBest = [&](Wish of) {
      const Together* best = nullptr;
      for (const Together* one : left)
        if (more(of, *one) && (!best || better(of, *one, *best))) best = one;
      if (best && std::find(taken.begin(), taken.end(), best) == taken.end()) taken.push_back(best);
    };
    takeBest(wish);
    for (const Wish other : kWishes)
      if (other != wish) takeBest(other);
    for (const Together* one : left)
      if (taken.size() < kMostTradeOffs &&
          std::find(taken.begin(), taken.end(), one) == taken.end())
        taken.push_back(one);
    if (taken.size() > kMostTradeOffs) taken.resize(kMostTradeOffs);
    std::vector<Together> all;
    for (const Together* one : taken) all.push_back(*one);
    return all;
  }

  const Plan& plan_;
  HelpsAnswer& answer_;
  bool goals_ = false;
  Unbeaten front_;  // with today, which beats what is worse in everything
};

std::vector<const Change*> changesAt(const HelpsAnswer& answer,
                                     const std::vector<std::size_t>& places) {
  std::vector<const Change*> all;
  for (const std::size_t i : places) all.push_back(&answer.changes[i]);
  return all;
}

void addAlone(const Plan& plan, HelpsAnswer& answer) {
  answer.alone = forAll(answer.changes.size(), [&](std::size_t i) {
    return effectOf(changed(plan, 0, {&answer.changes[i]}), 0, plan);
  });
  for (std::size_t i = 0; i < answer.changes.size(); ++i) {
    const Change& change = answer.changes[i];
    const bool forbidden = !change.forbidden.empty();
    answer.advised.push_back(
        mayBeAdvised(answer.alone[i], answer.today, touchesCircuit(change.lever), forbidden));
    answer.tried.push_back(!forbidden && !doesNothing(answer.alone[i], answer.today));
  }
}

// Those of one number of changes; false where it was stopped.
bool searchSize(const Plan& plan, const Groups& groups, std::size_t size, const Watched& watched,
                HelpsAnswer& answer, Sieve& sieve) {
  for (Ways ways(groups, size); !ways.isOver();) {
    if (watched.stop && watched.stop()) return false;
    std::vector<std::vector<std::size_t>> some;
    while (!ways.isOver() && some.size() < kAtOnce) some.push_back(ways.take());
    auto effects = forAll(some.size(), [&](std::size_t k) {
      if (some[k].size() == 1) return answer.alone[some[k].front()];
      return effectOf(changed(plan, 0, changesAt(answer, some[k])), 0, plan, kToTheMinute);
    });
    for (std::size_t k = 0; k < some.size(); ++k)
      sieve.take({std::move(some[k]), std::move(effects[k])});
    answer.done += effects.size();
    if (watched.progress) watched.progress(answer.done, answer.ways);
  }
  return true;
}

}  // namespace

Burden burdenOf(const Together& one, const Plan& plan) {
  const Effect& effect = one.effect;
  // A day that does not get there is worse than any.
  constexpr long long kNever = 1'000'000'000;
  const bool through = effect.getsThrough();
  const auto asMuch = spentOn(effect);
  // In steps of a share: equal ratios are equal steps.
  const long long money = !asMuch         ? kNever
                          : *asMuch > 0.0 ? std::llround(std::log(*asMuch) / kWorthTelling)
                                          : -kNever;
  const GoalsMet met = goalsMet(effect, plan);
  return {static_cast<long long>(one.changes.size()),
          through ? inWhole(inMinutes(*effect.day), 1.0) : kNever,
          money,
          effect.morning ? -inWhole(inCelsius(*effect.morning), 0.1) : 0,
          -static_cast<long long>(effect.rolling),
          static_cast<long long>(effect.circuit),
          met.boilOff ? 0 : 1};
}

bool dominates(const Burden& a, const Burden& b) {
  bool less = false;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (a[i] > b[i]) return false;
    less = less || a[i] < b[i];
  }
  return less;
}

void Unbeaten::take(Together one, const Burden& burden) {
  for (const Burden& known : burdens_)
    if (known == burden || dominates(known, burden)) return;
  std::size_t kept = 0;
  for (std::size_t i = 0; i < all_.size(); ++i) {
    if (dominates(burden, burdens_[i])) continue;
    if (kept != i) {
      all_[kept] = std::move(all_[i]);
      burdens_[kept] = std::move(burdens_[i]);
    }
    ++kept;
  }
  all_.resize(kept);
  burdens_.resize(kept);
  all_.push_back(std::move(one));
  burdens_.push_back(burden);
}

std::uint64_t waysOf(const std::vector<std::size_t>& changesOfGroups, std::size_t atMost) {
  // By how many levers are pulled: elementary symmetric sums.
  std::vector<std::uint64_t> ways{1};
  for (const std::size_t changes : changesOfGroups) {
    ways.push_back(0);
    for (std::size_t k = ways.size() - 1; k > 0; --k) ways[k] += changes * ways[k - 1];
  }
  std::uint64_t sum = 0;
  for (std::size_t k = 1; k < ways.size() && k <= atMost; ++k) sum += ways[k];
  return sum;
}

HelpsAnswer helps(const Plan& whole, std::size_t rig, std::size_t together,
                  const Watched& watched) {
  const Plan plan = asBegun(onlyRig(whole, rig), 0);
  HelpsAnswer answer;
  answer.today = effectOf(plan, 0, plan);
  const BrewDay day = simulate(plan.rigs[0].rig, plan.batch, plan.place);
  answer.changes = changesOf(plan, 0, day);
  // Who begins at another hour is ready at another one.
  if (whole.ready)
    std::erase_if(answer.changes, [](const Change& one) { return one.lever == Lever::Start; });
  addAlone(plan, answer);
  answer.goalsMetToday = goalsMet(answer.today, plan).all();
  const Groups groups = groupsOf(answer);
  answer.together = std::min(together, groups.size());
  answer.ways = waysOf(sizesOf(groups), answer.together);
  answer.allWays = waysOf(sizesOf(groups), groups.size());
  if (watched.progress) watched.progress(0, answer.ways);
  Sieve sieve(plan, answer);
  for (std::size_t size = 1; size <= answer.together; ++size)
    if (!searchSize(plan, groups, size, watched, answer, sieve)) break;
  sieve.finish();
  return answer;
}

}  // namespace rigs
