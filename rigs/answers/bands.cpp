// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/bands.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/even_points.hpp"
#include "rigs/answers/pool.hpp"
#include "rigs/answers/priors.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr double kNever = std::numeric_limits<double>::infinity();
// A band needs no more digits than people see.
constexpr SimulationOptions kForBands{.relativeTolerance = 1e-6};

struct Drawn {
  Rig rig;
  Batch batch;
  Place place;
};

// By what the plan's value is multiplied, or what is added to it.
double drawn(const Prior& prior, double share) {
  const double z = normalQuantile(share);
  if (prior.what == Unknown::Room) return prior.median + prior.spread * z;
  return prior.median * std::exp(prior.spread * z);
}

Drawn dayOf(const Plan& plan, const Rig& rig, Volume poured,
            const std::array<double, kUnknowns>& values) {
  const auto value = [&](Unknown what) { return values[static_cast<std::size_t>(what)]; };
  Drawn day{rig, plan.batch, plan.place};
  day.rig.lossFactor *= value(Unknown::ClosedLosses);
  day.rig.evaporationFactor *= value(Unknown::OpenSurface);
  day.batch.size = PouredWater{value(Unknown::Amount) * poured};
  day.batch.grain.mass *= value(Unknown::Amount);
  day.rig.element.rating *= value(Unknown::Power);
  if (day.rig.second) day.rig.second->element.rating *= value(Unknown::Power);
  day.place.room += kelvins(value(Unknown::Room));
  return day;
}

// What a day comes to, in SI; never where it does not.
struct Figures {
  bool rolls, ends;
  double waterReady, boilBegins, over, boilOff, result, fromWall, cost, leastToRoll, morning;
};

Figures figuresOf(const BrewDay& day, const Plan& plan) {
  const bool ends = day.finished();
  const bool rolls = day.outcome == Outcome::Done;
  const auto orNever = [](bool there, double value) { return there ? value : kNever; };
  const Stage* strike = day.find(StageKind::Strike);
  const Stage* heating = day.find(StageKind::HeatingToBoil);
  const Stage* night = day.find(StageKind::UnpluggedRest);
  const auto cost = ends ? dayCost(day, plan.tariff, plan.startOfDay) : std::nullopt;
  return {.rolls = rolls,
          .ends = ends,
          .waterReady =
              orNever(strike && finished(day, *strike), strike ? inSeconds(strike->end) : kNever),
          .boilBegins = orNever(rolls && heating, heating ? inSeconds(heating->end) : kNever),
          .over = orNever(ends, inSeconds(day.duration())),
          .boilOff = orNever(ends && day.boil, day.boil ? day.boil->shareOfPreBoilPerHour : kNever),
          .result = orNever(ends, inLitres(day.resultCold)),
          .fromWall = orNever(ends, inJoules(day.total.element + day.total.cable)),
          .cost = cost.value_or(kNever),
          .leastToRoll = day.leastToBoil ? inWatts(*day.leastToBoil) : kNever,
          .morning = night ? inKelvin(night->last) : kNever};
}

template <class Make>
auto band(const std::vector<Figures>& all, double Figures::*which, const Make& make) {
  std::vector<double> numbers;
  for (const Figures& one : all) numbers.push_back(one.*which);
  std::sort(numbers.begin(), numbers.end());
  const auto at = [&](double share) {
    const auto number = quantileOf(numbers, share);
    return number ? std::optional(make(*number)) : std::nullopt;
  };
  return Band<decltype(make(0.0))>{at(0.1), at(0.5), at(0.9)};
}

}  // namespace

std::optional<double> quantileOf(std::vector<double> numbers, double share) {
  assert(share > 0.0 && share < 1.0);
  if (numbers.empty()) return std::nullopt;
  std::sort(numbers.begin(), numbers.end());
  // Number i of n stands for the share (i + 1/2)/n; between two of them by the straight line.
  const double n = static_cast<double>(numbers.size());
  const double place = std::clamp(share * n - 0.5, 0.0, n - 1.0);
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, numbers.size() - 1);
  const double along = place - static_cast<double>(below);
  if (!std::isfinite(numbers[below]) || (along > 0.0 && !std::isfinite(numbers[above])))
    return std::nullopt;
  return along > 0.0 ? numbers[below] + along * (numbers[above] - numbers[below]) : numbers[below];
}

Bands bandsOf(const Plan& plan, std::size_t rig, std::size_t days) {
  const Rig& planned = plan.rigs[rig].rig;
  const Volume poured = simulate(planned, plan.batch, plan.place, kForBands).water;
  const auto priors = priorsOf(planned);
  const auto points = evenPoints(days, kUnknowns);
  const std::vector<Figures> all = forAll(days, [&](std::size_t i) {
    std::array<double, kUnknowns> values{};
    for (std::size_t k = 0; k < kUnknowns; ++k) values[k] = drawn(priors[k], points[i][k]);
    const Drawn one = dayOf(plan, planned, poured, values);
    return figuresOf(simulate(one.rig, one.batch, one.place, kForBands), plan);
  });
  const auto share = [&](bool Figures::*which) {
    return static_cast<double>(std::count_if(all.begin(), all.end(),
                                             [&](const Figures& one) { return one.*which; })) /
           static_cast<double>(days);
  };
  const auto same = [](double number) { return number; };
  const auto time = [](double number) { return seconds(number); };
  return {.days = days,
          .rolls = share(&Figures::rolls),
          .ends = share(&Figures::ends),
          .waterReady = band(all, &Figures::waterReady, time),
          .boilBegins = band(all, &Figures::boilBegins, time),
          .over = band(all, &Figures::over, time),
          .boilOff = band(all, &Figures::boilOff, same),
          .result = band(all, &Figures::result, [](double n) { return litres(n); }),
          .fromWall = band(all, &Figures::fromWall, [](double n) { return joules(n); }),
          .cost = band(all, &Figures::cost, same),
          .leastToRoll = band(all, &Figures::leastToRoll, [](double n) { return watts(n); }),
          .morning = band(all, &Figures::morning, [](double n) { return kelvin(n); })};
}

}  // namespace rigs
