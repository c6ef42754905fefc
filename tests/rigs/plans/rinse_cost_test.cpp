// SPDX-License-Identifier: GPL-3.0-or-later
// Money for rinsing water: at the price of the time before the grain is lifted.
#include <gtest/gtest.h>

#include "rigs/plans/tariff.hpp"

namespace rigs {
namespace {

using namespace physics;

// 1 kWh, done when the grain is lifted an hour into the day.
BrewDay dayWithRinse(std::optional<Time> heating) {
  BrewDay day;
  day.rinsed.emplace();
  day.rinsed->at = hours(1.0);
  day.rinsed->fromWall = kilowattHours(1.0);
  day.rinsed->heating = heating;
  day.total.apart = kilowattHours(1.0);
  return day;
}

// Dear until 9, cheap from then on.
Tariff byTheHour() {
  Tariff tariff;
  tariff.currency = "EUR";
  tariff.weekday =
      tariff.weekend = {{hours(0.0), hours(9.0), 0.40}, {hours(9.0), hours(24.0), 0.10}};
  return tariff;
}

// By hand: lifted at 9:15, heated for half an hour, so half of it at either price: 0.25; lifted at
// 9:00, all of it before: 0.40; with a heater that takes 15 min lifted at 9:15, all after: 0.10.
TEST(RinseCost, IsThatOfTheTimeBeforeTheLift) {
  const Tariff tariff = byTheHour();
  EXPECT_NEAR(*rinseCost(dayWithRinse({}), tariff, hours(8.25)), 0.25, 1e-9);
  EXPECT_NEAR(*rinseCost(dayWithRinse({}), tariff, hours(8.0)), 0.40, 1e-9);
  EXPECT_NEAR(*rinseCost(dayWithRinse(minutes(15.0)), tariff, hours(8.25)), 0.10, 1e-9);
  EXPECT_NEAR(*dayCost(dayWithRinse({}), tariff, hours(8.25)), 0.25, 1e-9);
}

TEST(RinseCost, IsNoFigureWithoutAPriceABeginningOrElectricity) {
  EXPECT_FALSE(rinseCost(dayWithRinse({}), byTheHour(), std::nullopt));
  EXPECT_FALSE(rinseCost(dayWithRinse({}), Tariff{}, hours(8.0)));
  BrewDay gas = dayWithRinse({});
  gas.rinsed->fromWall.reset();
  EXPECT_FALSE(rinseCost(gas, byTheHour(), hours(8.0)));
  EXPECT_FALSE(rinseCost(BrewDay{}, byTheHour(), hours(8.0)));
}

// The month's last kilowatt-hour is the dearest: 0.5 kWh are left of the cheap ones.
TEST(RinseCost, ComesAfterAllThatTheStagesUse) {
  Tariff tariff;
  tariff.currency = "EUR";
  tariff.tiers = {{kilowattHours(10.0), 0.10}, {std::nullopt, 0.30}};
  tariff.usedThisMonth = kilowattHours(7.5);
  BrewDay day = dayWithRinse({});
  day.total.element = kilowattHours(2.0);
  EXPECT_NEAR(*rinseCost(day, tariff, hours(8.0)), 0.5 * 0.10 + 0.5 * 0.30, 1e-9);
  EXPECT_NEAR(*dayCost(day, tariff, hours(8.0)), 2.5 * 0.10 + 0.5 * 0.30, 1e-9);
}

}  // namespace
}  // namespace rigs
