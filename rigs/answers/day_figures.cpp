// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/day_figures.hpp"

#include <algorithm>
#include <cmath>

namespace rigs {

Vigour vigourOf(const physics::BoilFigures& boil) {
  const double share = boil.shareOfPreBoilPerHour;
  if (share < kGentleFrom) return Vigour::Simmer;
  if (share < kSteadyFrom) return Vigour::Gentle;
  if (share < kStrongFrom) return Vigour::Steady;
  return share < kFierceFrom ? Vigour::Strong : Vigour::Fierce;
}

std::string_view vigourWord(Vigour vigour) {
  switch (vigour) {
    case Vigour::Simmer:
      return "simmer";
    case Vigour::Gentle:
      return "gentle";
    case Vigour::Steady:
      return "steady";
    case Vigour::Strong:
      return "strong";
    case Vigour::Fierce:
      return "fierce";
  }
  return "";
}

FractionPerTime perHour(double share) { return share / physics::hours(1.0); }

FractionPerTime boilOffRate(const physics::BoilFigures& boil) {
  return perHour(boil.shareOfPreBoilPerHour);
}

std::optional<physics::Power> netPer(const physics::BrewDay& day, physics::Volume volume) {
  if (!day.boil || day.preBoilCold <= physics::litres(0.0)) return std::nullopt;
  return day.boil->net * static_cast<double>(volume / day.preBoilCold);
}

physics::Time lasted(const physics::Stage& stage) { return stage.end - stage.begin; }

bool finished(const physics::BrewDay& day, const physics::Stage& stage) {
  return day.finished() || &stage != &day.stages.back();
}

std::optional<physics::Time> endOf(const physics::BrewDay& day, physics::StageKind kind) {
  const physics::Stage* stage = day.find(kind);
  return stage && finished(day, *stage) ? std::optional(stage->end) : std::nullopt;
}

std::optional<physics::Time> timeOf(const physics::BrewDay& day, physics::StageKind kind) {
  const physics::Stage* stage = day.find(kind);
  if (!stage || !finished(day, *stage)) return std::nullopt;
  return lasted(*stage);
}

std::optional<physics::Time> timeToBoil(const physics::BrewDay& day) {
  if (day.outcome != physics::Outcome::Done && !day.startsBoiling()) return std::nullopt;
  return timeOf(day, physics::StageKind::HeatingToBoil);
}

std::optional<physics::Energy> fromWall(const physics::BrewDay& day, physics::StageKind kind) {
  std::optional<physics::Energy> sum;
  for (const physics::Stage& stage : day.stages) {
    if (stage.kind == kind) sum = sum.value_or(physics::joules(0.0)) + stage.ledger.fromWall();
  }
  return sum;
}

double shareOfRating(const physics::Element& element, const physics::ElectricalLoad& load) {
  return load.delivered / element.rating;
}

bool overloads(const physics::Element& element, const physics::Supply& supply) {
  return physics::branchCurrent(element, supply) > (1.0 + 1e-9) * supply.rating;
}

std::vector<physics::Feed> feedsOf(const physics::Rig& rig) {
  std::vector<physics::Feed> feeds{{.element = rig.element, .supply = rig.supply}};
  if (rig.second) feeds.push_back(*rig.second);
  return feeds;
}

physics::Current alongside(const RigPlan& rig, std::size_t circuit) {
  const CircuitDetails& details = detailsOf(rig, circuit);
  physics::Current all = details.beside(feedsOf(rig.rig).at(circuit).supply.nominal);
  if (details.pump) all += *details.pump / details.pumpAt;
  return all;
}

physics::Current carried(const RigPlan& rig, std::size_t circuit) {
  const physics::Feed feed = feedsOf(rig.rig).at(circuit);
  return physics::branchCurrent(feed.element, feed.supply) + alongside(rig, circuit);
}

bool overloadsAny(const physics::Rig& rig) {
  const auto feeds = feedsOf(rig);
  return std::any_of(feeds.begin(), feeds.end(), [](const physics::Feed& feed) {
    return overloads(feed.element, feed.supply);
  });
}

physics::Power ratingAt(const physics::Element& element, physics::Voltage voltage) {
  return voltage * voltage / physics::resistance(element);
}

std::optional<physics::Element> elementFor(const physics::Rig& rig,
                                           const physics::PowerAnswer& wanted) {
  if (!wanted.power) return std::nullopt;
  const physics::Supply& supply = rig.supply;
  // A matched load takes V^2/(4 R) through a cable of resistance R, and nothing takes more.
  const bool carried = 4.0 * supply.cableLoop * *wanted.power < supply.nominal * supply.nominal;
  if (!carried) return std::nullopt;
  return physics::elementDelivering(*wanted.power, supply, rig.element.topHeight);
}

bool otherVoltage(const physics::Rig& rig) {
  return std::abs(static_cast<double>(rig.supply.nominal / rig.element.ratedAt) - 1.0) > 0.01;
}

std::optional<double> moneySaved(const physics::BrewDay& without, const physics::BrewDay& with,
                                 const Tariff& tariff, std::optional<physics::Time> begins) {
  // A day that stalls has cost something, but not for a batch; one that steams makes another wort.
  if (without.outcome != physics::Outcome::Done || with.outcome != physics::Outcome::Done)
    return std::nullopt;
  const auto dear = dayCost(without, tariff, begins);
  const auto cheap = dayCost(with, tariff, begins);
  if (!dear || !cheap) return std::nullopt;
  return *dear - *cheap;
}

namespace {

std::optional<double> shareSaved(const std::optional<physics::Time>& saved,
                                 const std::optional<physics::Time>& bare) {
  if (!bare || !saved || *bare <= physics::seconds(0.0)) return std::nullopt;
  return static_cast<double>(*saved / *bare);
}

}  // namespace

std::optional<double> shareOfHeatingSaved(const physics::JacketEffect& effect) {
  return shareSaved(effect.savedToBoil, timeToBoil(effect.bare));
}

std::optional<double> shareOfStrikeSaved(const physics::JacketEffect& effect) {
  return shareSaved(effect.savedToStrike, timeOf(effect.bare, physics::StageKind::Strike));
}

bool isOnTheEdge(const physics::JacketEffect& effect) {
  using physics::JacketVerdict;
  if (effect.verdict == JacketVerdict::MakesItBoil || effect.verdict == JacketVerdict::GetsFurther)
    return false;
  const double most =
      std::max(shareOfHeatingSaved(effect).value_or(0.0), shareOfStrikeSaved(effect).value_or(0.0));
  const double ofTheRule = most / physics::kWorthwhileShareOfTime;
  return ofTheRule * (1.0 + kJacketScatter) > 1.0 && ofTheRule < 1.0 + kJacketScatter;
}

double worstImbalance(const physics::BrewDay& day) {
  double worst = day.total.imbalance();
  for (const physics::Stage& stage : day.stages) worst = std::max(worst, stage.ledger.imbalance());
  return worst;
}

}  // namespace rigs
