// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/tariff.hpp"

#include <utility>

namespace gui::telling {
namespace {

using rigs::Told;
using rigs::Verbatim;

Told price(double perKilowattHour, const rigs::Tariff& tariff) {
  const char last = tariff.currency.empty() ? ' ' : tariff.currency.back();
  const bool code = ('a' <= last && last <= 'z') || ('A' <= last && last <= 'Z');
  // A symbol stands in front, a code such as EUR behind.
  const auto text = code ? rigs::Template<2>(TOLD("Tariff", "%1 %2 per kWh"))
                         : rigs::Template<2>(TOLD("Tariff", "%2%1 per kWh"));
  return Told(text, rigs::Number{perKilowattHour, {.significantDigits = 5, .decimals = {}}},
              Verbatim{tariff.currency});
}

rigs::Argument clockText(physics::Time at) {
  // The end of a day is not the next one's beginning.
  if (at >= physics::hours(24.0)) return Verbatim{"24:00"};
  return rigs::Clock{at};
}

// The windows of one kind of day, in order.
rigs::List windows(const std::vector<rigs::PriceWindow>& all, const rigs::Tariff& tariff) {
  rigs::List list{.items = {}, .joint = rigs::Joint::Semicolon};
  for (const rigs::PriceWindow& one : all) {
    list.items.emplace_back(Told(TOLD("Tariff", "%1 from %2 to %3"),
                                 price(one.perKilowattHour, tariff), clockText(one.from),
                                 clockText(one.to)));
  }
  return list;
}

rigs::List tiers(const rigs::Tariff& tariff) {
  rigs::List list{.items = {}, .joint = rigs::Joint::Semicolon};
  for (const rigs::PriceTier& one : tariff.tiers) {
    Told each = price(one.perKilowattHour, tariff);
    list.items.emplace_back(one.upTo ? Told(TOLD("Tariff", "%1 up to %2 a month"), std::move(each),
                                            rigs::amount(*one.upTo))
                                     : Told(TOLD("Tariff", "%1 above"), std::move(each)));
  }
  return list;
}

Told ofTheBrewsDay(const rigs::Tariff& tariff) {
  if (tariff.dependsOnTheHour()) {
    const auto text = tariff.day == rigs::DayOfWeek::Weekend
                          ? rigs::Template<1>(TOLD("Tariff", "at a weekend: %1"))
                          : rigs::Template<1>(TOLD("Tariff", "on a weekday: %1"));
    return Told(text, windows(tariff.today(), tariff));
  }
  if (tariff.dependsOnUse()) {
    return Told(TOLD("Tariff", "%1; %2 used this month before"), tiers(tariff),
                rigs::amount(tariff.usedThisMonth));
  }
  return price(tariff.perKilowattHour, tariff);
}

// What a document may say of its prices; other words stand as they were written.
Told statusWord(const std::string& status) {
  if (status == "published") return Told(TOLD("Tariff", "published"));
  if (status == "from memory") return Told(TOLD("Tariff", "from memory"));
  if (status == "estimate") return Told(TOLD("Tariff", "estimate"));
  return Told::just(Verbatim{status});
}

}  // namespace

Told tariffText(const rigs::Tariff& tariff) {
  if (!tariff.isStated()) return Told(TOLD("Tariff", "no price stated"));
  Told text = ofTheBrewsDay(tariff);
  if (tariff.rebate > 0.0) {
    text = Told(TOLD("Tariff", "%1; %2 of the sum not paid"), std::move(text),
                rigs::amount(tariff.rebate));
  } else if (tariff.rebate < 0.0) {
    text = Told(TOLD("Tariff", "%1; %2 on top of the sum"), std::move(text),
                rigs::amount(-tariff.rebate));
  }
  if (tariff.dated.empty()) return text;
  return Told(TOLD("Tariff", "%1, as of %2"), std::move(text), Verbatim{tariff.dated});
}

Told wholeTariffText(const rigs::Tariff& tariff) {
  if (!tariff.isStated()) return Told(TOLD("Tariff", "No price is stated."));
  if (tariff.dependsOnTheHour()) {
    return Told(TOLD("Tariff", "On a weekday %1. At a weekend %2."),
                windows(tariff.weekday, tariff), windows(tariff.weekend, tariff));
  }
  if (tariff.dependsOnUse()) return Told(TOLD("Tariff", "%1."), tiers(tariff));
  return Told(TOLD("Tariff", "%1."), price(tariff.perKilowattHour, tariff));
}

Told tariffSource(const rigs::Tariff& tariff) {
  const Verbatim name{tariff.name};
  const Verbatim source{tariff.source};
  const Told status = statusWord(tariff.status);
  if (tariff.source.empty()) {
    return tariff.name.empty() ? Told() : Told(TOLD("Tariff", "The prices are those of %1."), name);
  }
  if (tariff.name.empty()) {
    return tariff.status.empty()
               ? Told(TOLD("Tariff", "Source of the prices: %1."), source)
               : Told(TOLD("Tariff", "Source of the prices: %1 (%2)."), source, status);
  }
  return tariff.status.empty()
             ? Told(TOLD("Tariff", "The prices are those of %1: %2."), name, source)
             : Told(TOLD("Tariff", "The prices are those of %1: %2 (%3)."), name, source, status);
}

}  // namespace gui::telling
