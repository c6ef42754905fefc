// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most? Each change of a rig by itself against the day as planned, the few that together
// bring most of what is wished, and ways between wishes that none beats in everything. Every answer
// is a simulated day; nothing is fitted.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/sizing.hpp"
#include "rigs/answers/levers.hpp"
#include "rigs/answers/wish.hpp"
#include "rigs/circuits/finding.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

std::string_view wishWord(Wish wish);  // "rolls", "sooner", "warmer", "cheaper", "circuit"
std::optional<Wish> wishCalled(std::string_view word);

// OnTheEdge: more or less may evaporate than the law of the open surface says, by its own scatter,
// and then it would be the other.
enum class Rolling { No, OnTheEdge, Yes };

// What a day comes to, as far as somebody may wish something of it.
struct Effect {
  physics::Outcome outcome = physics::Outcome::Done;
  bool overflows = false;
  Rolling rolling = Rolling::No;
  std::optional<double> powerShare;                    // heat it gets over the least that rolls
  std::optional<physics::Time> toStrike, toBoil, day;  // empty where it does not get there
  std::optional<double> boilOffPerHour;                // of a day that rolls
  std::optional<physics::Temperature> morning;         // of a mash that the plan leaves unplugged
  // Of one batch; with the heat of warmer water, wherever that is heated.
  physics::Energy fromWall = physics::joules(0.0);
  std::optional<double> cost;  // the same in money: empty without a price
  double batches = 1.0;        // that make as much as one of today's
  Fit circuit = Fit::Fits;     // all circuits and rules
  double circuitShare = 0.0;   // most of a circuit's rating that name plates ask for

  // Comes to its end, rolling from when the clock of the boil starts.
  bool getsThrough() const { return outcome == physics::Outcome::Done && !overflows; }
};

// Money for as much wort as today's batch, or without a price its kilowatt-hours; nothing where the
// day does not get through.
std::optional<double> spentOn(const Effect& effect);

// The effect of the plan's day on this rig. `today` is the plan before anything was changed.
// `tolerance` is the integrator's.
Effect effectOf(const Plan& plan, std::size_t rig, const Plan& today, double tolerance = 1e-9);

// Whether a day may be advised: it gets through, no rating forbids it, and rules do not say that
// its circuit does not fit, unless that circuit is today's and was not touched.
bool mayBeAdvised(const Effect& then, const Effect& today, bool touchesCircuit, bool forbidden);

// --- What is wished. All of it is compared in the digits that are told, so that nothing is
// preferred for seconds that no law knows.

// More heat than this share of the least that rolls makes no boil surer: evaporation, whose law
// scatters, is not all of what is lost at boiling.
inline constexpr double kRollsForSure = 1.0 + 1.5 * physics::kEvaporationScatter;
// A hundredth of a year's money makes no way worth telling.
inline constexpr double kWorthTelling = 0.01;

// How much more of it a day has than today's: points of the least power that rolls, up to
// kRollsForSure; minutes; kelvin; money a year (or kilowatt-hours for as much wort, without a
// price); points of the circuit's rating. Empty where one of the days has no such figure.
std::optional<double> gainOf(Wish wish, const Effect& then, const Effect& today,
                             double brewsPerYear);
// What comes before any gain: a boil that rolls before one on the edge, a circuit that fits before
// one that does not. The better the greater.
int standing(Wish wish, const Effect& then);
// More of what is wished than today. A circuit that fits is not wished to fit better.
bool isMore(Wish wish, const Effect& then, const Effect& today, double brewsPerYear);
// What is to be told first: of equal gains, what is cheaper by more than kWorthTelling.
bool isBetter(Wish wish, const Effect& a, const Effect& b, const Effect& today,
              double brewsPerYear);

// What the plan aims at: to roll for sure, to strike and to the boil within its time, its boil-off,
// and a circuit that fits.
struct GoalsMet {
  bool rolls = false, strike = false, boil = false, boilOff = false, circuit = false;

  bool all() const { return rolls && strike && boil && boilOff && circuit; }
  bool operator==(const GoalsMet&) const = default;
};
GoalsMet goalsMet(const Effect& effect, const Plan& plan);

// --- Several changes together.

struct Together {
  std::vector<std::size_t> changes;  // ascending places in the answer's list; none: today
  Effect effect;
};

// Figures of which less is better, in whole steps of what is told.
using Burden = std::vector<long long>;
Burden burdenOf(const Together& one, const Plan& plan);
// No more in anything and less in something.
bool dominates(const Burden& a, const Burden& b);
// Of all that it was given those that none dominates; of equal ones the first alone.
class Unbeaten {
 public:
  void take(Together one, const Burden& burden);
  const std::vector<Together>& all() const { return all_; }

 private:
  std::vector<Together> all_;
  std::vector<Burden> burdens_;
};

// How many ways there are to pull at most `atMost` levers, of groups with so many changes each, at
// least one. 0 groups: 0.
std::uint64_t waysOf(const std::vector<std::size_t>& changesOfGroups, std::size_t atMost);

inline constexpr std::size_t kUsualTogether = 3;
inline constexpr std::size_t kAllTogether = kLeverGroups;
inline constexpr std::size_t kMostTradeOffs = 5;
// Of all that could be had, most: fewer changes that bring this share of it are told instead.
inline constexpr double kMostOfIt = 0.9;

struct WishAnswer {
  // The best of each number of changes that may be advised, fewest first: one, two, ... Empty where
  // none of them brings more than today.
  std::vector<std::optional<Together>> best;
  // The fewest changes that bring kMostOfIt of the most that was found; empty where nothing helps.
  std::optional<Together> few;
  // The fewest that meet all goals, of several the best for this wish; empty where none does.
  std::optional<Together> allGoals;
  std::vector<Together> tradeOffs;  // up to kMostTradeOffs, this wish's best first
};

struct HelpsAnswer {
  std::vector<Change> changes;
  Effect today;
  std::vector<Effect> alone;  // of each change
  std::vector<bool> advised;  // each by itself
  std::vector<bool> tried;    // with others: what does nothing by itself is left out
  bool goalsMetToday = false;
  std::size_t together = 0;   // at most so many changes at once
  std::uint64_t ways = 0;     // of them
  std::uint64_t done = 0;     // fewer where it was stopped
  std::uint64_t allWays = 0;  // however many at once
  std::array<WishAnswer, kWishes.size()> wishes;

  bool isPart() const { return done < ways; }
  const WishAnswer& of(Wish wish) const { return wishes[static_cast<std::size_t>(wish)]; }
};

// Asked now and then, between days; either may be empty.
struct Watched {
  std::function<bool()> stop = {};
  std::function<void(std::uint64_t done, std::uint64_t of)> progress = {};
};

// What is tried is told by waysOf() before it begins: `progress` is called with 0 first. What was
// found before a stop stays. Preconditions: a plan without errors.
HelpsAnswer helps(const Plan& plan, std::size_t rig, std::size_t together = kUsualTogether,
                  const Watched& watched = {});

// The changes by what they bring alone, best first: those that may be advised and help, then those
// that do not help, then those that may not be advised.
std::vector<std::size_t> ranked(const HelpsAnswer& answer, Wish wish, double brewsPerYear);

// Of changes whose prices are known, and whose money is: empty else, and for what costs nothing.
std::optional<double> priceOf(const HelpsAnswer& answer, const std::vector<std::size_t>& changes);
std::optional<Payback> paybackOf(const HelpsAnswer& answer, const std::vector<std::size_t>& changes,
                                 const Effect& then, double brewsPerYear);
// Saved in a year against today; empty without a price of energy and where a day stops early.
std::optional<double> savedInAYear(const Effect& then, const Effect& today, double brewsPerYear);

}  // namespace rigs
