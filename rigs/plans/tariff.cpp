// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/tariff.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rigs {

using namespace physics;

namespace {

double byUse(const Tariff& tariff, Energy energy, Energy usedBefore) {
  Energy begin = tariff.usedThisMonth + usedBefore;
  const Energy end = begin + energy;
  double money = 0.0;
  for (const PriceTier& tier : tariff.tiers) {
    const Energy upTo = tier.upTo ? std::min(*tier.upTo, end) : end;
    if (upTo <= begin) continue;
    money += inKilowattHours(upTo - begin) * tier.perKilowattHour;
    begin = upTo;
  }
  return money;
}

double byTheHour(const Tariff& tariff, Energy energy, Time from, Time to) {
  const auto& windows = tariff.today();
  const Time midnight = hours(24.0);
  const auto daysBefore = std::floor(inHours(from) / 24.0);
  if (to <= from) {
    const Time clock = from - daysBefore * midnight;
    for (const PriceWindow& window : windows) {
      if (window.from <= clock && clock < window.to)
        return inKilowattHours(energy) * window.perKilowattHour;
    }
    return 0.0;
  }
  double money = 0.0;
  for (Time day = daysBefore * midnight; day < to; day += midnight) {
    for (const PriceWindow& window : windows) {
      const Time overlap =
          std::min(to, Time(day + window.to)) - std::max(from, Time(day + window.from));
      if (overlap <= seconds(0.0)) continue;
      money += inKilowattHours(energy) * static_cast<double>(overlap / (to - from)) *
               window.perKilowattHour;
    }
  }
  return money;
}

}  // namespace

double costBetween(const Tariff& tariff, Energy energy, Time from, Time to, Energy usedBefore) {
  assert(tariff.isStated());
  const double money = tariff.dependsOnTheHour() ? byTheHour(tariff, energy, from, to)
                       : tariff.dependsOnUse()   ? byUse(tariff, energy, usedBefore)
                                                 : inKilowattHours(energy) * tariff.perKilowattHour;
  return (1.0 - tariff.rebate) * money;
}

std::optional<double> costOf(Energy fromWall, const Tariff& tariff) {
  if (!tariff.isStated() || tariff.dependsOnTheHour()) return std::nullopt;
  return costBetween(tariff, fromWall, seconds(0.0), seconds(0.0));
}

Time clockOfDay(Time clock) { return clock - std::floor(inHours(clock) / 24.0) * hours(24.0); }

std::vector<double> stageCosts(const BrewDay& day, const Tariff& tariff,
                               std::optional<Time> start) {
  std::vector<double> costs;
  if (!tariff.isStated() || (!start && tariff.dependsOnTheHour())) return costs;
  const Time begins = clockOfDay(start.value_or(hours(0.0)));
  Energy used = joules(0.0);
  for (const Stage& stage : day.stages) {
    const Energy energy = stage.ledger.fromWall();
    costs.push_back(costBetween(tariff, energy, begins + stage.begin, begins + stage.end, used));
    used += energy;
  }
  return costs;
}

std::optional<double> rinseCost(const BrewDay& day, const Tariff& tariff,
                                std::optional<Time> start) {
  if (!day.rinsed || !day.rinsed->fromWall) return std::nullopt;
  if (!tariff.isStated() || (!start && tariff.dependsOnTheHour())) return std::nullopt;
  const Time ready = clockOfDay(start.value_or(hours(0.0))) + day.rinsed->at;
  const Time begins = ready - day.rinsed->heating.value_or(kRinseHeatedWithin);
  return costBetween(tariff, *day.rinsed->fromWall, begins, ready,
                     day.total.fromWall() - *day.rinsed->fromWall);
}

std::optional<double> dayCost(const BrewDay& day, const Tariff& tariff, std::optional<Time> start) {
  if (!tariff.isStated()) return std::nullopt;
  if (!tariff.dependsOnTheHour()) return costOf(day.total.fromWall(), tariff);
  if (!start) return std::nullopt;
  double sum = 0.0;
  for (const double cost : stageCosts(day, tariff, start)) sum += cost;
  return sum + rinseCost(day, tariff, start).value_or(0.0);
}

std::optional<StartChoice> cheapestStart(const BrewDay& day, const Tariff& tariff, Time earliest,
                                         Time latest) {
  if (!tariff.isStated() || !tariff.dependsOnTheHour()) return std::nullopt;
  if (latest < earliest) latest += hours(24.0);
  std::optional<StartChoice> choice;
  const auto consider = [&](Time at) {
    if (at >= hours(24.0)) at -= hours(24.0);  // every day has the same prices
    const Start start{.at = at, .cost = *dayCost(day, tariff, at)};
    if (!choice) choice = StartChoice{start, start};
    // Sums of the same prices in another order may differ in their last digits.
    if (start.cost < choice->cheapest.cost * (1.0 - 1e-9)) choice->cheapest = start;
    if (start.cost > choice->dearest.cost * (1.0 + 1e-9)) choice->dearest = start;
  };
  for (Time at = earliest; at < latest; at += kStartStep) consider(at);
  consider(latest);
  return choice;
}

std::optional<StartChoice> cheapestStart(const BrewDay& day, const Tariff& tariff) {
  return cheapestStart(day, tariff, tariff.brewFrom.value_or(hours(0.0)),
                       tariff.brewUntil.value_or(hours(24.0) - kStartStep));
}

Payback payback(double price, double savedPerBrew, double brewsPerYear) {
  Payback result{.perBrew = savedPerBrew, .perYear = savedPerBrew * brewsPerYear, .years = {}};
  if (result.perYear > 0.0) result.years = price / result.perYear;
  return result;
}

std::optional<Mass> co2Of(Energy fromWall, const Tariff& tariff) {
  if (!tariff.co2PerKilowattHour) return std::nullopt;
  return inKilowattHours(fromWall) * *tariff.co2PerKilowattHour;
}

}  // namespace rigs
