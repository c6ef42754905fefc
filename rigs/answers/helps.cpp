// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/helps.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <variant>

#include "physics/sizing.hpp"
#include "physics/water.hpp"
#include "rigs/answers/circuit_answer.hpp"
#include "rigs/answers/day_figures.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr std::array<std::string_view, kWishes.size()> kWishWords{"rolls", "sooner", "warmer",
                                                                  "cheaper", "circuit"};

double inSteps(double value, double step) { return std::round(value / step); }

// In the steps of what is told.
constexpr double kMinute = 60.0, kTenthOfKelvin = 0.1, kPoint = 0.01, kCent = 0.01,
                 kTenWattHours = 0.01;
long long minutesOf(Time time) { return std::llround(inSteps(inSeconds(time), kMinute)); }

Rolling rollingOf(const Rig& rig, const Plan& plan, const BrewDay& day,
                  const SimulationOptions& options) {
  const bool rolls = day.outcome == Outcome::Done;
  const Rolling told = rolls ? Rolling::Yes : Rolling::No;
  if (!day.finished() || !day.boil || !day.leastToBoil) return told;
  // As edgeFor() has it: evaporation is not all of what is lost at boiling.
  const double share = day.electrical.delivered / *day.leastToBoil;
  if (std::abs(share - 1.0) > kRollsForSure - 1.0) return told;
  Rig other = rig;
  other.evaporationFactor *= rolls ? 1.0 + kEvaporationScatter : 1.0 - kEvaporationScatter;
  const auto least = simulate(other, plan.batch, plan.place, options).leastToBoil;
  if (!least) return told;
  const bool rollsThen = day.electrical.delivered >= *least;
  return rollsThen == rolls ? told : Rolling::OnTheEdge;
}

// The heat that warmer water brings along: somebody pays for it elsewhere.
Energy warmth(const BrewDay& day, const Batch& batch, Temperature water, Temperature today) {
  const bool heatsRinse = batch.rinse && batch.rinse->electric;
  const Volume all = day.water + (heatsRinse ? batch.rinse->atTwentyDegrees : litres(0.0));
  const Mass mass = all * waterDensity(celsius(20.0));
  return mass * (waterEnthalpy(water) - waterEnthalpy(today));
}

void addCircuitLoads(Effect& effect, const Plan& plan, const RigPlan& rig, const BrewDay& day) {
  const CircuitAnswer circuit = circuitAnswer(plan, rig, day, false);
  effect.circuit = circuit.overall();
  for (const CircuitLoad& load : circuit.circuits) {
    effect.circuit = std::max(effect.circuit, load.nameplate.fit);
    effect.circuitShare = std::max(
        effect.circuitShare, static_cast<double>(*load.nameplate.load / *load.nameplate.limit));
  }
}

int rankOf(Fit fit) { return -static_cast<int>(fit); }

}  // namespace

std::optional<double> spentOn(const Effect& effect) {
  if (!effect.getsThrough()) return std::nullopt;
  if (effect.cost) return *effect.cost * effect.batches;
  return inKilowattHours(effect.fromWall) * effect.batches;
}

std::string_view wishWord(Wish wish) { return kWishWords[static_cast<std::size_t>(wish)]; }

std::optional<Wish> wishCalled(std::string_view word) {
  for (const Wish wish : kWishes)
    if (wishWord(wish) == word) return wish;
  return std::nullopt;
}

Effect effectOf(const Plan& plan, std::size_t i, const Plan& today, double tolerance) {
  const RigPlan& rig = plan.rigs[i];
  const SimulationOptions options{
      .curves = false, .relativeTolerance = tolerance, .leastForAnyPower = false};
  const BrewDay day = simulate(rig.rig, plan.batch, plan.place, options);
  Effect effect;
  effect.outcome = day.outcome;
  const Volume full =
      std::max(day.fullest, day.water + plan.batch.grain.mass * plan.batch.displacement);
  effect.overflows = full > capacity(rig.rig.vessel);
  effect.rolling = rollingOf(rig.rig, plan, day, options);
  if (day.leastToBoil) effect.powerShare = day.electrical.delivered / *day.leastToBoil;
  effect.toStrike = timeOf(day, StageKind::Strike);
  effect.toBoil = timeToBoil(day);
  if (day.outcome == Outcome::Done) {
    effect.day = day.duration();
    if (day.boil) effect.boilOffPerHour = day.boil->shareOfPreBoilPerHour;
  }
  if (hasOwnNight(plan))
    if (const Stage* night = day.find(StageKind::UnpluggedRest)) effect.morning = night->last;
  const Energy elsewhere = warmth(day, plan.batch, plan.place.water, today.place.water);
  effect.fromWall = day.total.fromWall() + elsewhere;
  const std::optional<Time> begins = plan.start();
  effect.cost = dayCost(day, plan.tariff, begins);
  if (effect.cost && elsewhere > joules(0.0)) {
    const Time then = begins.value_or(hours(0.0));
    *effect.cost += costBetween(plan.tariff, elsewhere, then, then, day.total.fromWall());
  }
  effect.batches = static_cast<double>(statedVolume(today.batch) / statedVolume(plan.batch));
  addCircuitLoads(effect, plan, rig, day);
  return effect;
}

bool mayBeAdvised(const Effect& then, const Effect& today, bool touchesCircuit, bool forbidden) {
  if (forbidden || !then.getsThrough()) return false;
  if (then.circuit != Fit::DoesNotFit) return true;
  return !touchesCircuit && today.circuit == Fit::DoesNotFit;
}

std::optional<double> savedInAYear(const Effect& then, const Effect& today, double brewsPerYear) {
  if (!then.cost || !today.cost || !then.getsThrough() || !today.getsThrough()) return std::nullopt;
  return brewsPerYear * (*spentOn(today) - *spentOn(then));
}

std::optional<double> gainOf(Wish wish, const Effect& then, const Effect& today,
                             double brewsPerYear) {
  const auto less = [](const auto& before, const auto& after,
                       double step) -> std::optional<double> {
    if (!before || !after) return std::nullopt;
    return step * (inSteps(*before, step) - inSteps(*after, step));
  };
  const auto negative = [](std::optional<double> gain) {
    return gain ? std::optional(*gain == 0.0 ? 0.0 : -*gain) : gain;
  };
  switch (wish) {
    case Wish::Rolls: {
      const auto enough = [](std::optional<double> share) {
        return share ? std::optional(std::min(*share, kRollsForSure)) : share;
      };
      return negative(less(enough(today.powerShare), enough(then.powerShare), kPoint));
    }
    case Wish::Sooner:
      if (!today.day || !then.day) return std::nullopt;
      return static_cast<double>(minutesOf(*today.day) - minutesOf(*then.day));
    case Wish::Warmer:
      if (!today.morning || !then.morning) return std::nullopt;
      return kTenthOfKelvin * (inSteps(inCelsius(*then.morning), kTenthOfKelvin) -
                               inSteps(inCelsius(*today.morning), kTenthOfKelvin));
    case Wish::Cheaper: {
      if (const auto saved = savedInAYear(then, today, brewsPerYear))
        return kCent * inSteps(*saved, kCent);
      return less(spentOn(today), spentOn(then), kTenWattHours);
    }
    case Wish::Circuit:
      return kPoint * (inSteps(today.circuitShare, kPoint) - inSteps(then.circuitShare, kPoint));
  }
  return std::nullopt;
}

int standing(Wish wish, const Effect& then) {
  switch (wish) {
    case Wish::Rolls:
      return static_cast<int>(then.rolling);
    case Wish::Circuit:
      return rankOf(then.circuit);
    default:
      return 0;
  }
}

bool isMore(Wish wish, const Effect& then, const Effect& today, double brewsPerYear) {
  const int by = standing(wish, then) - standing(wish, today);
  if (by != 0 || wish == Wish::Circuit) return by > 0;
  return gainOf(wish, then, today, brewsPerYear).value_or(0.0) > 0.0;
}

bool isBetter(Wish wish, const Effect& a, const Effect& b, const Effect& today,
              double brewsPerYear) {
  const int by = standing(wish, a) - standing(wish, b);
  if (by != 0) return by > 0;
  const auto gain = [&](const Effect& one) {
    return gainOf(wish, one, today, brewsPerYear).value_or(0.0);
  };
  if (gain(a) != gain(b)) return gain(a) > gain(b);
  const auto dear = [](const Effect& one) { return spentOn(one).value_or(1e9); };
  return dear(a) < (1.0 - kWorthTelling) * dear(b);
}

GoalsMet goalsMet(const Effect& effect, const Plan& plan) {
  const auto within = [&](const std::optional<Time>& time) {
    return time && *time <= plan.goals.boilWithin;
  };
  const bool mashes = plan.batch.mashes();
  return {.rolls = effect.getsThrough() && effect.rolling == Rolling::Yes,
          .strike = !mashes || within(effect.toStrike),
          .boil = within(effect.toBoil),
          .boilOff = effect.boilOffPerHour &&
                     *effect.boilOffPerHour >= (1.0 - 1e-6) * plan.goals.boilOffPerHour,
          .circuit = effect.circuit != Fit::DoesNotFit};
}

std::vector<std::size_t> ranked(const HelpsAnswer& answer, Wish wish, double brewsPerYear) {
  std::vector<std::size_t> order(answer.changes.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  const auto classOf = [&](std::size_t i) {
    if (!answer.advised[i]) return 2;
    return isMore(wish, answer.alone[i], answer.today, brewsPerYear) ? 0 : 1;
  };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    if (classOf(a) != classOf(b)) return classOf(a) < classOf(b);
    return isBetter(wish, answer.alone[a], answer.alone[b], answer.today, brewsPerYear);
  });
  return order;
}

std::optional<double> priceOf(const HelpsAnswer& answer, const std::vector<std::size_t>& changes) {
  // A jacket's price is that of the whole jacket, whatever it covers.
  std::optional<double> jacket, others;
  for (const std::size_t i : changes) {
    const Change& one = answer.changes[i];
    if (one.outlay == Outlay::NotKnown) return std::nullopt;
    if (one.outlay == Outlay::Nothing) continue;
    if (one.lever == Lever::Element)
      others = others.value_or(0.0) + *one.price;
    else
      jacket = one.price;
  }
  if (!jacket && !others) return std::nullopt;
  return jacket.value_or(0.0) + others.value_or(0.0);
}

std::optional<Payback> paybackOf(const HelpsAnswer& answer, const std::vector<std::size_t>& changes,
                                 const Effect& then, double brewsPerYear) {
  const auto price = priceOf(answer, changes);
  const auto saved = savedInAYear(then, answer.today, brewsPerYear);
  if (!price || !saved || brewsPerYear <= 0.0) return std::nullopt;
  return payback(*price, *saved / brewsPerYear, brewsPerYear);
}

}  // namespace rigs
