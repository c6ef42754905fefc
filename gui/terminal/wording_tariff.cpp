// SPDX-License-Identifier: GPL-3.0-or-later
// Prices as they are stated.
#include <fmt/format.h>

#include <cctype>

#include "gui/terminal/wording.hpp"

namespace gui {
namespace {

// As a tariff states it, where an amount of money would be rounded.
std::string price(double perKilowattHour, const rigs::Tariff& tariff) {
  const std::string number =
      rigs::formatNumber(perKilowattHour, {.significantDigits = 5, .decimals = {}});
  const bool code = std::isalpha(static_cast<unsigned char>(tariff.currency.back())) != 0;
  return code ? number + ' ' + tariff.currency : tariff.currency + number;
}

// The windows of one kind of day, in order; one price alone needs no hours.
std::string windowsText(const std::vector<rigs::PriceWindow>& windows, const rigs::Tariff& tariff) {
  std::string text;
  for (const rigs::PriceWindow& window : windows) {
    text += fmt::format("{}{}/kWh {} to {}", text.empty() ? "" : ", ",
                        price(window.perKilowattHour, tariff), clockTime(window.from),
                        window.to >= physics::hours(24.0) ? "24:00" : clockTime(window.to));
  }
  return text;
}

std::string tiersText(const rigs::Tariff& tariff) {
  std::string text;
  for (const rigs::PriceTier& tier : tariff.tiers) {
    text += (text.empty() ? "" : ", ") + price(tier.perKilowattHour, tariff) + "/kWh ";
    text += tier.upTo ? "up to " + rigs::format(*tier.upTo, UnitSystem::SI) + " a month"
                      : std::string("above");
  }
  return text;
}

}  // namespace

std::string tariffText(const rigs::Tariff& tariff) {
  if (tariff.dependsOnTheHour()) {
    return windowsText(tariff.today(), tariff) +
           (tariff.day == rigs::DayOfWeek::Weekend ? ", at a weekend" : ", on a weekday");
  }
  if (tariff.dependsOnUse()) {
    return tiersText(tariff) + ", " + rigs::format(tariff.usedThisMonth, UnitSystem::SI) +
           " used this month";
  }
  return price(tariff.perKilowattHour, tariff) + "/kWh";
}

std::string wholeTariffText(const rigs::Tariff& tariff) {
  if (tariff.dependsOnTheHour()) {
    return fmt::format("On a weekday {}; at a weekend {}.", windowsText(tariff.weekday, tariff),
                       windowsText(tariff.weekend, tariff));
  }
  return sentence((tariff.dependsOnUse() ? tiersText(tariff) : tariffText(tariff)) + '.');
}

}  // namespace gui
