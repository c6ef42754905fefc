// SPDX-License-Identifier: GPL-3.0-or-later
// What energy costs, and when.
#include "rigs/plans/key_rows.hpp"

namespace rigs::key_rows {
namespace {

using enum QuantityKind;

constexpr std::string_view kDay = R"([{"from": "07:00", "to": "22:00", "price": "0.30 EUR/kWh"}, )"
                                  R"({"from": "22:00", "to": "07:00", "price": "0.20 EUR/kWh"}])";

std::vector<Row> prices() {
  return {
      {.name = "price",
       .value = only(ValueKind::Price),
       .need = Need::OneOf,
       .example = "0.28 EUR/kWh",
       .label = TOLD("PlanFields", "Price"),
       .meaning = TOLD("PlanFields",
                       "Number, currency and /kWh, such as 0.28 EUR/kWh or $0.17/kWh. Without it "
                       "there is no money in the answers. Stands instead of hours or tiers.")},
      {.name = "times",
       .value = object(),
       .need = Need::OneOf,
       .example = R"({"weekday": [{"from": "00:00", "to": "24:00", "price": "0.28 EUR/kWh"}]})",
       .label = TOLD("PlanFields", "by the hour"),
       .meaning =
           TOLD("PlanFields", "Prices by the hour, as the plan's file has them; changed there.")},
      {.name = "tiers",
       .value = list("2", "20"),
       .need = Need::OneOf,
       .example = R"([{"up_to": "1000 kWh", "price": "0.10 CAD/kWh"}, {"price": "0.15 CAD/kWh"}])",
       .label = TOLD("PlanFields", "by the month's use"),
       .meaning = TOLD("PlanFields",
                       "Prices by the month's use, as the plan's file has them; changed there.")},
      {.name = "from",
       .value = text(),
       .need = Need::OneOf,
       .example = "Ontario time of use, winter 2024",
       .meaning = TOLD("PlanFields", "A bundled tariff by its name, in place of prices.")}};
}

std::vector<Row> use() {
  return {
      {.name = "used_this_month",
       .value = quantity(Energy, "0 kWh", "100000 kWh"),
       .standard = "0 kWh",
       .example = "990 kWh",
       .label = TOLD("PlanFields", "Used this month"),
       .meaning =
           TOLD("PlanFields", "Energy used before this brew, where prices go by the month's use.")},
      {.name = "day",
       .value = word({"weekday", "weekend"}),
       .standard = "weekday",
       .example = "weekend",
       .label = TOLD("PlanFields", "Day of the brew"),
       .meaning = TOLD("PlanFields", "A weekday or a weekend, where prices differ by it.")},
      {.name = "rebate",
       .value = share("-50 %", "90 %"),
       .standard = "0 %",
       .example = "13 %",
       .label = TOLD("PlanFields", "Rebate"),
       .meaning = TOLD("PlanFields",
                       "Share of the sum that is not paid, -50 to 90 %; below 0 for a tax on "
                       "top.")},
      {.name = "brew_from",
       .value = only(ValueKind::Clock),
       .need = Need::Paired,
       .standard = "00:00",
       .example = "06:00",
       .label = TOLD("PlanFields", "Could begin from"),
       .meaning =
           TOLD("PlanFields", "Earliest start by the clock, such as 06:00, for the cheapest one.")},
      {.name = "brew_until",
       .value = only(ValueKind::Clock),
       .need = Need::Paired,
       .standard = "23:45",
       .example = "22:00",
       .label = TOLD("PlanFields", "Could begin until"),
       .meaning =
           TOLD("PlanFields", "Latest start by the clock, such as 22:00, for the cheapest one.")},
      {.name = "brews_per_year",
       .value = number("0", "1000"),
       .standard = "12",
       .example = "12",
       .label = TOLD("PlanFields", "Batches a year"),
       .meaning = TOLD("PlanFields", "Plain number, 0 to 1000.")},
      {.name = "jacket_price",
       .value = number("0", "10000000"),
       .example = "40",
       .label = TOLD("PlanFields", "Price of a jacket"),
       .meaning = TOLD("PlanFields", "Plain number in the price's currency, for the payback.")},
      {.name = "element_price",
       .value = number("0", "10000000"),
       .example = "50",
       .label = TOLD("PlanFields", "Price of an element"),
       .meaning = TOLD("PlanFields", "Plain number in the price's currency, for the payback.")}};
}

std::vector<Row> origin() {
  return {{.name = "co2_per_kWh",
           .value = quantity(Mass, "0 kg", "5 kg"),
           .example = "0.367 kg",
           .label = TOLD("PlanFields", "CO₂ per kWh"),
           .meaning = TOLD("PlanFields",
                           "Mass of carbon dioxide that a kilowatt-hour makes, such as 380 g; "
                           "state its source.")},
          {.name = "co2_source",
           .value = text("4000"),
           .example = "the utility's report of 2025",
           .label = TOLD("PlanFields", "Its source"),
           .meaning = TOLD("PlanFields", "Who says so, and for which year.")},
          {.name = "dated",
           .value = only(ValueKind::Date),
           .example = "2026-01",
           .label = TOLD("PlanFields", "Dated"),
           .meaning = TOLD("PlanFields", "Year and month, or a day: 2026-01 or 2026-01-31.")},
          {.name = "name",
           .value = text(),
           .example = "Night tariff",
           .label = TOLD("PlanFields", "Name"),
           .meaning = TOLD("PlanFields", "What the tariff is called, for readers.")},
          {.name = "source",
           .value = text("4000"),
           .example = "the utility's price list",
           .meaning = TOLD("PlanFields", "Where the prices are from.")},
          {.name = "status",
           .value = text(),
           .example = "published",
           .meaning = TOLD("PlanFields", "How sure the prices are.")},
          {.name = "region",
           .example = R"("Ontario")",
           .meaning = TOLD("PlanFields", "Where the tariff is in force.")},
          {.name = "about",
           .example = R"("energy alone, without fixed charges")",
           .meaning = TOLD("PlanFields", "What the prices are and what is not in them.")},
          {.name = "format",
           .example = R"({"name": "heat-ledger-tariff", "version": 1})",
           .meaning = TOLD("PlanFields", "Of a tariff in a document of its own.")}};
}

Part tariff() {
  Part part{.places = {"/tariff"}, .rows = prices()};
  for (Row& row : use()) part.rows.push_back(std::move(row));
  for (Row& row : origin()) part.rows.push_back(std::move(row));
  return part;
}

Part times() {
  return {.places = {"/tariff/times"},
          .rows = {{.name = "weekday",
                    .value = list("1", "48"),
                    .need = Need::Required,
                    .example = kDay,
                    .meaning = TOLD("PlanFields", "The day in pieces, each with its price.")},
                   {.name = "weekend",
                    .value = list("1", "48"),
                    .example = kDay,
                    .meaning = TOLD("PlanFields",
                                    "The same for Saturday and Sunday; as on weekdays if not "
                                    "stated.")}}};
}

Part window() {
  return {.places = {"/tariff/times/weekday/*", "/tariff/times/weekend/*"},
          .rows = {{.name = "from",
                    .value = only(ValueKind::Clock),
                    .need = Need::Required,
                    .example = "07:00",
                    .meaning = TOLD("PlanFields", "Clock time at which this price begins.")},
                   {.name = "to",
                    .value = only(ValueKind::Clock),
                    .need = Need::Required,
                    .example = "22:00",
                    .meaning = TOLD("PlanFields", "Clock time at which it ends.")},
                   {.name = "price",
                    .value = only(ValueKind::Price),
                    .need = Need::Required,
                    .example = "0.28 EUR/kWh",
                    .meaning = TOLD("PlanFields", "Number, currency and /kWh.")}}};
}

Part tier() {
  return {.places = {"/tariff/tiers/*"},
          .rows = {{.name = "up_to",
                    .value = quantity(Energy, "0 kWh", "100000 kWh"),
                    .need = Need::Paired,
                    .example = "1000 kWh",
                    .meaning = TOLD("PlanFields",
                                    "Where the price ends, of the month's use; the last has no "
                                    "end.")},
                   {.name = "price",
                    .value = only(ValueKind::Price),
                    .need = Need::Required,
                    .example = "0.28 EUR/kWh",
                    .meaning = TOLD("PlanFields", "Number, currency and /kWh.")}}};
}

}  // namespace

std::vector<Part> tariffParts() { return {tariff(), times(), window(), tier()}; }

}  // namespace rigs::key_rows
