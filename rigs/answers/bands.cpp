// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/bands.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "rigs/answers/begins.hpp"
#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/even_points.hpp"
#include "rigs/plans/tariff.hpp"

namespace rigs {
namespace {

using namespace physics;

struct OneDay {
  bool rolls = false, ends = false;
  DayNumbers numbers{};
};

Bands gathered(const std::vector<OneDay>& all) {
  std::vector<DayNumbers> numbers;
  for (const OneDay& one : all) numbers.push_back(one.numbers);
  Bands bands = bandsFrom(numbers, quantileOf);
  const auto share = [&](bool OneDay::*which) {
    const auto there =
        std::count_if(all.begin(), all.end(), [&](const OneDay& one) { return one.*which; });
    return static_cast<double>(there) / static_cast<double>(all.size());
  };
  bands.rolls = share(&OneDay::rolls);
  bands.ends = share(&OneDay::ends);
  return bands;
}

}  // namespace

DayNumbers dayNumbers(const BrewDay& day, const Plan& plan) {
  DayNumbers numbers;
  numbers.fill(kNoSuchDay);
  const auto put = [&](BandOf which, double number) { numbers[placeOf(which)] = number; };
  if (const Stage* strike = day.find(StageKind::Strike); strike && finished(day, *strike))
    put(BandOf::WaterReady, inSeconds(strike->end));
  if (const Stage* heating = day.find(StageKind::HeatingToBoil);
      heating && day.outcome == Outcome::Done)
    put(BandOf::BoilBegins, inSeconds(heating->end));
  if (day.finished()) {
    put(BandOf::Over, inSeconds(day.duration()));
    if (day.boil) put(BandOf::BoilOff, day.boil->shareOfPreBoilPerHour);
    put(BandOf::Result, 1e-3 * inLitres(day.resultCold));
    put(BandOf::FromWall, inJoules(day.total.fromWall()));
    if (const auto cost = dayCost(day, plan.tariff, plan.start())) put(BandOf::Cost, *cost);
  }
  if (day.leastToBoil) put(BandOf::LeastToRoll, inWatts(*day.leastToBoil));
  if (const Stage* night = day.find(StageKind::UnpluggedRest); night && finished(day, *night))
    put(BandOf::Morning, inKelvin(night->last));
  return numbers;
}

std::optional<double> quantileOf(std::vector<double> numbers, double share) {
  assert(share > 0.0 && share < 1.0);
  if (numbers.empty()) return std::nullopt;
  if (!std::is_sorted(numbers.begin(), numbers.end())) std::sort(numbers.begin(), numbers.end());
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

Bands bandsFrom(const std::vector<DayNumbers>& days, const Quantile& quantile) {
  const auto band = [&](BandOf which, const auto& make) {
    std::vector<double> numbers;
    for (const DayNumbers& one : days) numbers.push_back(one[placeOf(which)]);
    return bandFrom(numbers, make, quantile);
  };
  const auto same = [](double number) { return number; };
  const auto time = [](double number) { return seconds(number); };
  Bands bands;
  bands.days = days.size();
  bands.waterReady = band(BandOf::WaterReady, time);
  bands.boilBegins = band(BandOf::BoilBegins, time);
  bands.over = band(BandOf::Over, time);
  bands.boilOff = band(BandOf::BoilOff, same);
  bands.result = band(BandOf::Result, [](double n) { return litres(1e3 * n); });
  bands.fromWall = band(BandOf::FromWall, [](double n) { return joules(n); });
  bands.cost = band(BandOf::Cost, same);
  bands.leastToRoll = band(BandOf::LeastToRoll, [](double n) { return watts(n); });
  bands.morning = band(BandOf::Morning, [](double n) { return kelvin(n); });
  return bands;
}

std::optional<Bands> bandsOf(const Plan& asked, std::size_t rig, const std::function<bool()>& stop,
                             std::size_t days) {
  const Plan plan = asBegun(asked, rig);
  const DaysOfARig drawn(plan, rig);
  const auto all = forAllUnless(stop, evenPoints(days, kUnknowns), [&](const auto& point) {
    const BrewDay day = simulate(drawn.at(point), kForBands);
    return OneDay{.rolls = day.outcome == Outcome::Done,
                  .ends = day.finished(),
                  .numbers = dayNumbers(day, plan)};
  });
  return all ? std::optional(gathered(*all)) : std::nullopt;
}

}  // namespace rigs
