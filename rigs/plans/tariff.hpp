// SPDX-License-Identifier: GPL-3.0-or-later
// What energy costs, when, and how much of it. Prices are the person's own; bundled ones are dated
// examples. Fixed charges are left out: a brew day does not change them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace rigs {

// A price between two clock times of every day; `to` may be 24 h.
struct PriceWindow {
  physics::Time from, to;
  double perKilowattHour = 0.0;

  bool operator==(const PriceWindow&) const = default;
};
// The price up to a month's use; the last tier has no end.
struct PriceTier {
  std::optional<physics::Energy> upTo;
  double perKilowattHour = 0.0;

  bool operator==(const PriceTier&) const = default;
};
enum class DayOfWeek { Weekday, Weekend };

struct Tariff {
  std::string name = {};         // of a bundled tariff that the prices are from, or as written
  std::string source = {};       // of the prices, where one is stated
  std::string status = {};       // "published", "from memory", "estimate"
  double perKilowattHour = 0.0;  // in `currency`; of a flat tariff
  std::string currency;          // as written, e.g. "EUR" or "$"; empty if no price was given
  std::string dated;             // "2026-01" or "2026-01-31"; empty if not stated
  // By the hour: both cover the day without gap or overlap, in order, or both are empty.
  std::vector<PriceWindow> weekday = {}, weekend = {};
  DayOfWeek day = DayOfWeek::Weekday;  // of the brew; midnight does not change it
  // By the month's use: ascending, or empty.
  std::vector<PriceTier> tiers = {};
  physics::Energy usedThisMonth = physics::joules(0.0);
  double rebate = 0.0;  // share of the sum that is not paid; below 0 for a tax on top
  std::optional<physics::Mass> co2PerKilowattHour = {};
  std::string co2Source = {};
  // When a person could begin, both or neither; any hour where none is stated.
  std::optional<physics::Time> brewFrom = {}, brewUntil = {};
  std::optional<double> brewsPerYear = {};                    // a dozen where a payback needs one
  std::optional<double> jacketPrice = {}, elementPrice = {};  // in `currency`

  bool isStated() const { return !currency.empty(); }
  bool dependsOnTheHour() const { return !weekday.empty(); }
  bool dependsOnUse() const { return !tiers.empty(); }
  const std::vector<PriceWindow>& today() const {
    return day == DayOfWeek::Weekend ? weekend : weekday;
  }

  bool operator==(const Tariff&) const = default;
};

// Money for energy drawn evenly between two clock times, from midnight of the day; beyond 24 h the
// next day's prices are the same. `usedBefore` comes on top of the month's use. A tariff by the
// hour with to == from is asked at that instant. Precondition: a stated tariff.
double costBetween(const Tariff& tariff, physics::Energy energy, physics::Time from,
                   physics::Time to, physics::Energy usedBefore = physics::joules(0.0));
// Money for energy whenever; empty without a price, and where the hour decides.
std::optional<double> costOf(physics::Energy fromWall, const Tariff& tariff);

// Of its own day: 20:00 of the evening before, -4 h, is 20 h.
physics::Time clockOfDay(physics::Time clock);

// Of each stage, in order, for a day that begins at this clock time; below 0 on the evening before,
// whose prices are the same. Empty without a price, and for a day without a beginning where the
// hour decides.
std::vector<double> stageCosts(const physics::BrewDay& day, const Tariff& tariff,
                               std::optional<physics::Time> start);
// Of heating the rinsing water with electricity, which is done when the grain is lifted; over the
// last half hour before that where its heater's power is not known (own choice). After all that the
// day's stages use. Empty as above, and where there is none.
inline constexpr physics::Time kRinseHeatedWithin = physics::minutes(30.0);
std::optional<double> rinseCost(const physics::BrewDay& day, const Tariff& tariff,
                                std::optional<physics::Time> start);
// Stages and rinsing water.
std::optional<double> dayCost(const physics::BrewDay& day, const Tariff& tariff,
                              std::optional<physics::Time> start);

struct Start {
  physics::Time at;  // clock time, below 24 h
  double cost = 0.0;
};
struct StartChoice {
  Start cheapest, dearest;
};
inline constexpr physics::Time kStartStep = physics::minutes(15.0);
// Among starts every quarter of an hour from `earliest` on, `latest` included; of equally cheap
// ones the earliest. A `latest` before `earliest` is the next morning's. Empty where the hour makes
// no difference.
std::optional<StartChoice> cheapestStart(const physics::BrewDay& day, const Tariff& tariff,
                                         physics::Time earliest, physics::Time latest);
// Within the tariff's own window; at any hour of the day where it states none.
std::optional<StartChoice> cheapestStart(const physics::BrewDay& day, const Tariff& tariff);

struct Payback {
  double perBrew = 0.0;         // saved
  double perYear = 0.0;         // saved
  std::optional<double> years;  // until the price is saved; empty if it never is
};
Payback payback(double price, double savedPerBrew, double brewsPerYear);
// A brew a month, where the plan does not say.
inline constexpr double kBrewsPerYear = 12.0;
inline double brewsPerYear(const Tariff& tariff) {
  return tariff.brewsPerYear.value_or(kBrewsPerYear);
}

// Carbon dioxide of this energy; empty without a figure.
std::optional<physics::Mass> co2Of(physics::Energy fromWall, const Tariff& tariff);

}  // namespace rigs
