// SPDX-License-Identifier: GPL-3.0-or-later
// Brews whose kettle, water, room and thermometer are what is believed of them, drawn at random,
// and what a brewer reads of them; and how often it holds what is told of such brews.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <optional>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "rigs/answers/bands.hpp"
#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/answers/next_reading.hpp"
#include "rigs/answers/read_day.hpp"
#include "rigs/answers/reading_fit.hpp"

namespace test_support {

// Where a truth lies in a band: 1 of 10 below it, 4 in each half of it, 1 above.
struct Held {
  std::string figure;
  std::array<std::size_t, 4> places{};
  std::size_t untold = 0;  // brews of which no whole band was told

  template <class Q>
  void add(const rigs::Band<Q>& band, const std::optional<Q>& truth) {
    if (!band.low || !band.middle || !band.high || !truth)
      ++untold;
    else
      ++places[*truth < *band.low ? 0 : *truth < *band.middle ? 1 : *truth < *band.high ? 2 : 3];
  }
  std::size_t told() const { return places[0] + places[1] + places[2] + places[3]; }
  double within() const {
    return static_cast<double>(places[1] + places[2]) / static_cast<double>(told());
  }
  // Three degrees of freedom: above 11.34 once in a hundred if bands are what they say.
  double chiSquared() const {
    constexpr std::array kShares{0.1, 0.4, 0.4, 0.1};
    double sum = 0.0;
    for (std::size_t i = 0; i < places.size(); ++i) {
      const double expected = kShares[i] * static_cast<double>(told());
      sum += std::pow(static_cast<double>(places[i]) - expected, 2) / expected;
    }
    return sum;
  }
};

struct DrawnBrew {
  rigs::UnknownValues values{};
  double thermometer = 0.0;  // K that it shows too much
  physics::BrewDay day;      // with curves
  std::optional<physics::Temperature> morning;

  std::optional<physics::Time> boilBegins() const {
    if (day.outcome != physics::Outcome::Done) return std::nullopt;
    return day.find(physics::StageKind::HeatingToBoil)->end;
  }
};

class Brews {
 public:
  Brews(rigs::Plan plan, std::size_t rig, unsigned seed)
      : plan_(std::move(plan)), rig_(rig), days_(plan_, rig), random_(seed) {}

  const rigs::Plan& plan() const { return plan_; }

  DrawnBrew next() {
    DrawnBrew brew;
    for (std::size_t k = 0; k < rigs::kUnknowns; ++k)
      brew.values[k] = days_.priors()[k].at(normal(1.0));
    brew.thermometer = normal(rigs::kThermometerOff);
    brew.day = rigs::simulate(days_.with(brew.values), {.curves = true});
    // What the laws miss by is part of what is told of a morning that is hours away.
    const physics::Stage* night = brew.day.find(physics::StageKind::UnpluggedRest);
    if (night)
      brew.morning = night->last + physics::kelvins(normal(rigs::lawsMayBeOff(night->last, plan_)));
    return brew;
  }

  // Stirred, to a tenth of a kelvin, by a clock with minutes; one in twenty plainly wrong.
  rigs::readings::Reading look(const DrawnBrew& brew, physics::Time at) {
    const double off = uniform() < rigs::fitting::kSlips ? normal(kSlipOff) : 0.0;
    const double shown = physics::inCelsius(rigs::ReadDay(brew.day).wort(at).value()) +
                         brew.thermometer + normal(0.2) + off;
    return {0, onTheClock(at), physics::celsius(0.1 * std::round(10.0 * shown)), 0.1};
  }
  rigs::readings::Reading lookAtMeter(const DrawnBrew& brew, physics::Time at) {
    const double joules = physics::inJoules(rigs::ReadDay(brew.day).meter(at).value());
    const double shown = joules * (1.0 + normal(0.015));
    return {0, onTheClock(at), physics::joules(3.6e4 * std::round(shown / 3.6e4)), 3.6e4};
  }
  rigs::readings::Reading mark(const DrawnBrew& brew, rigs::readings::Event event,
                               physics::StageKind kind) {
    return {0, onTheClock(brew.day.find(kind)->begin), event};
  }
  rigs::Learned learned(const std::vector<rigs::readings::Reading>& read) const {
    return rigs::learnedFrom(plan_, rig_, read).value();
  }

 private:
  static constexpr double kSlipOff = 5.0;  // K
  double normal(double spread) { return std::normal_distribution(0.0, spread)(random_); }
  double uniform() { return std::uniform_real_distribution()(random_); }
  // Its whole minute nearest by.
  physics::Time onTheClock(physics::Time at) const {
    return physics::minutes(std::round(physics::inMinutes(plan_.startOfDay + at)));
  }

  rigs::Plan plan_;
  std::size_t rig_;
  rigs::DaysOfARig days_;
  std::mt19937 random_;
};

// Before anything is read: the bands of one day, against `count` brews.
inline std::vector<Held> heldBefore(Brews brews, std::size_t rig, std::size_t count) {
  const rigs::Bands told = rigs::bandsOf(brews.plan(), rig).value();
  Held boil{"boil begins"}, boilOff{"boil-off"}, energy{"energy"}, morning{"morning"};
  for (std::size_t i = 0; i < count; ++i) {
    const DrawnBrew brew = brews.next();
    boil.add(told.boilBegins, brew.boilBegins());
    const bool boils = brew.day.finished() && brew.day.boil;
    boilOff.add(told.boilOff,
                boils ? std::optional(brew.day.boil->shareOfPreBoilPerHour) : std::nullopt);
    energy.add(told.fromWall, boils ? std::optional(brew.day.total.fromWall()) : std::nullopt);
    const physics::Stage* night = brew.day.find(physics::StageKind::UnpluggedRest);
    morning.add(told.morning, night ? std::optional(night->last) : std::nullopt);
  }
  return {boil, boilOff, energy, morning};
}

// A night alone: read at once and for half an hour, and once two hours later.
inline Held heldInTheMorning(Brews brews, std::size_t count) {
  Held held{"morning, five readings"};
  for (std::size_t i = 0; i < count; ++i) {
    const DrawnBrew brew = brews.next();
    const physics::Time alone = brew.day.find(physics::StageKind::UnpluggedRest)->begin;
    std::vector read{
        brews.mark(brew, rigs::readings::Event::Unplugged, physics::StageKind::UnpluggedRest)};
    for (const double minutes : {1.0, 10.0, 20.0, 30.0, 120.0})
      read.push_back(brews.look(brew, alone + physics::minutes(minutes)));
    held.add(brews.learned(read).after.morning, brew.morning);
  }
  return held;
}

// While the strike water heats: four temperatures, and a meter near the end.
inline std::vector<Held> heldWhileHeating(Brews brews, std::size_t count) {
  Held boil{"boil begins, five readings"}, boilOff{"boil-off, five readings"},
      energy{"energy, five readings"};
  for (std::size_t i = 0; i < count; ++i) {
    const DrawnBrew brew = brews.next();
    const physics::Time lasts = brew.day.find(physics::StageKind::Strike)->end;
    std::vector<rigs::readings::Reading> read;
    for (const double share : {0.1, 0.35, 0.6, 0.85})
      read.push_back(brews.look(brew, share * lasts));
    read.push_back(brews.lookAtMeter(brew, 0.9 * lasts));
    const rigs::Bands told = brews.learned(read).after;
    boil.add(told.boilBegins, brew.boilBegins());
    boilOff.add(told.boilOff,
                brew.day.boil ? std::optional(brew.day.boil->shareOfPreBoilPerHour) : std::nullopt);
    energy.add(told.fromWall, std::optional(brew.day.total.fromWall()));
  }
  return {boil, boilOff, energy};
}

}  // namespace test_support
