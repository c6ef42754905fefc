// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/plan_fields.hpp"

#include <algorithm>

#include "gui/telling/tariff.hpp"
#include "gui/window/forms/circuit_fields.hpp"
#include "gui/window/forms/layer_fields.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

using namespace physics;

std::size_t entriesAt(const rigs::Texts& texts, const std::string& list) {
  std::size_t count = 0;
  for (;; ++count) {
    const std::string entry = list + '/' + std::to_string(count) + '/';
    const auto found = texts.lower_bound(entry);
    if (found == texts.end() || !found->first.starts_with(entry)) return count;
  }
}

constexpr std::size_t kMostRests = 12;
constexpr std::size_t kMostLayers = 10;

std::vector<std::string> daysOfWeek(std::string_view) { return {"weekday", "weekend"}; }

QString hoursOf(const rigs::Plan& plan) {
  return plan.tariff.dependsOnTheHour() ? told(telling::tariffText(plan.tariff)) : QString();
}
QString tiersOf(const rigs::Plan& plan) {
  return plan.tariff.dependsOnUse() ? told(telling::tariffText(plan.tariff)) : QString();
}

FieldSection rulesSection() {
  return {PlanFields::tr("Electrical rules"),
          {{.place = "/place/region",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Region"),
            .meaning = PlanFields::tr("Whose rules judge the circuits. Left empty: all that may "
                                      "apply to each rig's circuit. Local codes decide."),
            .usual = PlanFields::tr("of the circuits"),
            .choices = regions},
           {.place = "/place/edition",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Edition"),
            .meaning = PlanFields::tr("Of the region's rules: the one that is bundled. A plan that "
                                      "names another is refused instead of judged by this one."),
            .usual = PlanFields::tr("the bundled one"),
            .choices = editionsOf}}};
}

FieldSection airSection() {
  const std::vector<Companion> room{{"/place/air/volume", "40 m3"}};
  return {PlanFields::tr("The room's air"),
          {{.place = "/place/air/volume",
            .label = PlanFields::tr("Volume"),
            .meaning = PlanFields::tr("Of the room, 2 to 1000 m³. Left empty: an ordinary kitchen "
                                      "is assumed, and said so."),
            .usual = QStringLiteral("40 m3"),
            .conversion = converted<Volume>,
            .removes = "/place/air"},
           {.place = "/place/air/air_changes",
            .kind = FieldKind::Number,
            .label = PlanFields::tr("Air changes an hour"),
            .meaning = PlanFields::tr("Plain number, 0 to 60: how often its air is exchanged with "
                                      "outdoors. Stands instead of an airflow."),
            .usual = QStringLiteral("0.5"),
            .replaces = {"/place/air/airflow"},
            .companions = room},
           {.place = "/place/air/airflow",
            .label = PlanFields::tr("or airflow"),
            .meaning = PlanFields::tr("Exchanged with outdoors, such as 200 m3/h or 120 ft3/min. "
                                      "Stands instead of air changes."),
            .replaces = {"/place/air/air_changes"},
            .companions = room},
           {.place = "/place/air/outdoors",
            .label = PlanFields::tr("Outdoor air"),
            .meaning = PlanFields::tr("Temperature outdoors, -20 to 45 °C."),
            .usual = QStringLiteral("5 C"),
            .conversion = converted<Temperature>,
            .companions = room},
           {.place = "/place/air/outdoor_humidity",
            .label = PlanFields::tr("Its humidity"),
            .meaning = PlanFields::tr("Relative humidity outdoors, 1 to 100 %."),
            .usual = QStringLiteral("80 %"),
            .companions = room},
           {.place = "/place/air/hood_captures",
            .label = PlanFields::tr("Hood takes"),
            .meaning = PlanFields::tr("Share of the vapour that a hood leads outdoors before it "
                                      "mixes with the room, 0 to 100 %."),
            .usual = QStringLiteral("0 %"),
            .companions = room},
           {.place = "/place/air/hold_humidity",
            .label = PlanFields::tr("Humidity to hold"),
            .meaning = PlanFields::tr("What the airflow is to hold, 20 to 100 %."),
            .usual = QStringLiteral("60 %"),
            .companions = room},
           {.place = "/place/air/window_u",
            .label = PlanFields::tr("Window"),
            .meaning = PlanFields::tr("Its U value, 0.3 to 7 W/(m2 K): tells when it gets wet "
                                      "inside. Left empty: not told."),
            .usual = PlanFields::tr("not told"),
            .conversion = converted<HeatTransferCoefficient>,
            .companions = room}}};
}

FieldSection priceSection() {
  return {
      PlanFields::tr("Price of energy"),
      {{.place = "/tariff/price",
        .label = PlanFields::tr("Price"),
        .meaning = PlanFields::tr(
            "Number, currency and /kWh, such as 0.28 EUR/kWh or $0.17/kWh. Without it "
            "there is no money in the answers. Stands instead of hours or tiers."),
        .replaces = {"/tariff/times", "/tariff/tiers", "/tariff/used_this_month"},
        .removes = "/tariff"},
       {.place = "/tariff/times",
        .kind = FieldKind::Shown,
        .label = PlanFields::tr("by the hour"),
        .meaning =
            PlanFields::tr("Prices by the hour, as the plan's file has them; changed there."),
        .shown = hoursOf},
       {.place = "/tariff/tiers",
        .kind = FieldKind::Shown,
        .label = PlanFields::tr("by the month's use"),
        .meaning = PlanFields::tr("Prices by the month's use, as the plan's file has them; changed "
                                  "there."),
        .shown = tiersOf},
       {.place = "/tariff/name",
        .label = PlanFields::tr("Name"),
        .meaning = PlanFields::tr("What the tariff is called, for readers.")},
       {.place = "/tariff/dated",
        .label = PlanFields::tr("Dated"),
        .meaning = PlanFields::tr("Year and month, or a day: 2026-01 or 2026-01-31.")},
       {.place = "/tariff/day",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Day of the brew"),
        .meaning = PlanFields::tr("A weekday or a weekend, where prices differ by it."),
        .usual = QStringLiteral("weekday"),
        .choices = daysOfWeek},
       {.place = "/tariff/used_this_month",
        .label = PlanFields::tr("Used this month"),
        .meaning = PlanFields::tr("Energy used before this brew, where prices go by the month's "
                                  "use."),
        .usual = QStringLiteral("0 kWh")},
       {.place = "/tariff/rebate",
        .label = PlanFields::tr("Rebate"),
        .meaning = PlanFields::tr("Share of the sum that is not paid, -50 to 90 %; below 0 for a "
                                  "tax on top."),
        .usual = QStringLiteral("0 %")},
       {.place = "/tariff/brew_from",
        .label = PlanFields::tr("Could begin from"),
        .meaning = PlanFields::tr("Earliest start by the clock, such as 06:00, for the cheapest "
                                  "one."),
        .usual = QStringLiteral("00:00"),
        .companions = {{"/tariff/brew_until", "22:00"}}},
       {.place = "/tariff/brew_until",
        .label = PlanFields::tr("Could begin until"),
        .meaning = PlanFields::tr("Latest start by the clock, such as 22:00, for the cheapest "
                                  "one."),
        .usual = QStringLiteral("23:45"),
        .companions = {{"/tariff/brew_from", "06:00"}}},
       {.place = "/tariff/brews_per_year",
        .kind = FieldKind::Number,
        .label = PlanFields::tr("Batches a year"),
        .meaning = PlanFields::tr("Plain number, 0 to 1000."),
        .usual = QStringLiteral("12")},
       {.place = "/tariff/jacket_price",
        .kind = FieldKind::Number,
        .label = PlanFields::tr("Price of a jacket"),
        .meaning = PlanFields::tr("Plain number in the price's currency, for the payback.")},
       {.place = "/tariff/element_price",
        .kind = FieldKind::Number,
        .label = PlanFields::tr("Price of an element"),
        .meaning = PlanFields::tr("Plain number in the price's currency, for the payback.")},
       {.place = "/tariff/co2_per_kWh",
        .label = PlanFields::tr("CO₂ per kWh"),
        .meaning = PlanFields::tr("Mass of carbon dioxide that a kilowatt-hour makes, such as 380 "
                                  "g; state its source."),
        .conversion = converted<Mass>},
       {.place = "/tariff/co2_source",
        .label = PlanFields::tr("Its source"),
        .meaning = PlanFields::tr("Who says so, and for which year.")}}};
}

FieldSection sizeSection() {
  return {PlanFields::tr("Batch"),
          {{.place = "/batch/wort",
            .label = PlanFields::tr("Wort wanted"),
            .meaning = PlanFields::tr(
                "Cold finished wort after the boil, at 20 °C; 0.5 to 2000 L. The water to "
                "pour follows from it. Stands instead of the water."),
            .conversion = converted<Volume>,
            .replaces = {"/batch/water"}},
           {.place = "/batch/water",
            .label = PlanFields::tr("or water poured"),
            .meaning = PlanFields::tr(
                "Cold water poured in, at 20 °C; 0.5 to 2000 L. The wort follows from it. "
                "Stands instead of the wort."),
            .conversion = converted<Volume>,
            .replaces = {"/batch/wort"}},
           {.place = "/batch/boil",
            .label = PlanFields::tr("Length of the boil"),
            .meaning = PlanFields::tr("How long it is kept boiling, 0 to 12 h.")},
           {.place = "/batch/mashing_in",
            .label = PlanFields::tr("Mashing in"),
            .meaning = PlanFields::tr("Grain going in, with lid and element off; 0 to 60 min."),
            .usual = QStringLiteral("5 min")}}};
}

FieldSection mashSection(std::size_t rests) {
  FieldSection mash{PlanFields::tr("Mash"), {}};
  for (std::size_t i = 0; i < rests; ++i) {
    const std::string rest = "/batch/mash/rests/" + std::to_string(i);
    const QString number = QString::number(i + 1);
    mash.fields.push_back(
        {.place = rest + "/temperature",
         .label = PlanFields::tr("Rest %1").arg(number),
         .meaning = PlanFields::tr(
             "Temperature that a controller holds, 20 to 100 °C and at least 1 K below "
             "boiling. The strike temperature follows from the first rest."),
         .conversion = converted<Temperature>,
         .replaces = {"/batch/mash/unplugged"},
         .companions = {{rest + "/time", i == 0 ? "60 min" : "10 min"}},
         .removes = rest});
    mash.fields.push_back({.place = rest + "/time",
                           .label = PlanFields::tr("Rest %1 lasts").arg(number),
                           .meaning = PlanFields::tr("How long the rest is held, 0 to 24 h."),
                           .replaces = {"/batch/mash/unplugged"}});
  }
  mash.fields.push_back(
      {.place = "/batch/mash/unplugged/temperature",
       .label = PlanFields::tr("or unplugged from"),
       .meaning = PlanFields::tr(
           "Temperature at which the mash is left alone with the element off. Stands "
           "instead of the rests."),
       .conversion = converted<Temperature>,
       .replaces = {"/batch/mash/rests"},
       .companions = {{"/batch/mash/unplugged/time", "60 min"}},
       .removes = "/batch/mash/unplugged"});
  mash.fields.push_back({.place = "/batch/mash/unplugged/time",
                         .label = PlanFields::tr("Unplugged for"),
                         .meaning = PlanFields::tr("How long the mash is left alone, 0 to 48 h."),
                         .replaces = {"/batch/mash/rests"}});
  return mash;
}

FieldSection grainSection() {
  return {
      PlanFields::tr("Grain"),
      {{.place = "/batch/grain/mass",
        .label = PlanFields::tr("Mass"),
        .meaning =
            PlanFields::tr("As weighed, 1 g to 500 kg. Left empty: no mash, straight to the boil."),
        .conversion = converted<Mass>,
        .companions = {{"/batch/mash/rests/0/temperature", "66 C"},
                       {"/batch/mash/rests/0/time", "60 min"}},
        .removes = "/batch/grain"},
       {.place = "/batch/grain/temperature",
        .label = PlanFields::tr("Temperature"),
        .meaning = PlanFields::tr(
            "Of the grain before mashing in, -20 to 60 °C; as warm as the room if not "
            "stated."),
        .usual = PlanFields::tr("as the room"),
        .conversion = converted<Temperature>},
       {.place = "/batch/grain/moisture",
        .label = PlanFields::tr("Moisture"),
        .meaning = PlanFields::tr("Share of water in the grain, 0 to 15 %."),
        .usual = QStringLiteral("4.5 %")},
       {.place = "/batch/grain/extract",
        .label = PlanFields::tr("Extract"),
        .meaning = PlanFields::tr(
            "Mass dissolved from each mass of grain, 10 to 95 %: yield and efficiency "
            "together."),
        .usual = QStringLiteral("72 %")},
       {.place = "/batch/grain/absorption",
        .label = PlanFields::tr("Absorption"),
        .meaning = PlanFields::tr("Wort that stays in the lifted grain, 0 to 3 L/kg."),
        .usual = QStringLiteral("0.8 L/kg"),
        .conversion = converted<VolumePerMass>},
       {.place = "/batch/grain/displacement",
        .label = PlanFields::tr("Displacement"),
        .meaning = PlanFields::tr("Volume that the grain takes in the mash, 0.3 to 1.5 L/kg."),
        .usual = QStringLiteral("0.67 L/kg"),
        .conversion = converted<VolumePerMass>},
       {.place = "/batch/grain/specific_heat",
        .label = PlanFields::tr("Specific heat"),
        .meaning = PlanFields::tr("500 to 4200 J/(kg K); follows from the moisture if not stated."),
        .usual = PlanFields::tr("from moisture"),
        .conversion = converted<SpecificHeat>},
       {.place = "/batch/grain/slaking_heat",
        .label = PlanFields::tr("Slaking heat"),
        .meaning =
            PlanFields::tr("Given off when the grain is wetted, 0 to 100 kJ/kg; follows from the "
                           "moisture if not stated."),
        .usual = PlanFields::tr("from moisture"),
        .conversion = converted<SpecificEnergy>}}};
}

FieldSection placeSection() {
  return {PlanFields::tr("Place"),
          {{.place = "/place/altitude",
            .label = PlanFields::tr("Altitude"),
            .meaning = PlanFields::tr(
                "Above the sea in the standard atmosphere, -430 to 5200 m. It decides when "
                "water boils. Stands instead of a pressure."),
            .conversion = converted<Length>,
            .replaces = {"/place/pressure"}},
           {.place = "/place/pressure",
            .label = PlanFields::tr("or air pressure"),
            .meaning = PlanFields::tr(
                "As it is at the place, not reduced to the sea; 50 to 110 kPa. Stands "
                "instead of an altitude."),
            .conversion = converted<Pressure>,
            .replaces = {"/place/altitude"}},
           {.place = "/place/room",
            .label = PlanFields::tr("Room"),
            .meaning =
                PlanFields::tr("Temperature of the air, -10 to 50 °C; the kettle starts as warm."),
            .conversion = converted<Temperature>},
           {.place = "/place/water",
            .label = PlanFields::tr("Water"),
            .meaning = PlanFields::tr("Temperature of the water as drawn, 0.5 to 95 °C."),
            .conversion = converted<Temperature>},
           {.place = "/place/humidity",
            .label = PlanFields::tr("Humidity"),
            .meaning = PlanFields::tr("Relative humidity of the room, 1 to 100 %."),
            .usual = QStringLiteral("50 %")},
           {.place = "/place/draught",
            .label = PlanFields::tr("Draught"),
            .meaning = PlanFields::tr("Speed of the air over an open kettle, 0 to 5 m/s."),
            .usual = QStringLiteral("0 m/s"),
            .conversion = converted<Velocity>}}};
}

FieldSection goalsSection() {
  return {
      PlanFields::tr("Goals"),
      {{.place = "/goals/boil_within",
        .label = PlanFields::tr("Boil within"),
        .meaning = PlanFields::tr("Time wanted to strike, and from mash to boil; 1 min to 12 h."),
        .usual = QStringLiteral("60 min")},
       {.place = "/goals/boil_off",
        .label = PlanFields::tr("Boil-off"),
        .meaning = PlanFields::tr(
            "Share of the volume before the boil that is to boil off, 0.1 to 50 %/h."),
        .usual = QStringLiteral("8 %/h")},
       {.place = "/goals/headspace",
        .label = PlanFields::tr("Headspace"),
        .meaning = PlanFields::tr("Share of the vessel to be kept free, 0 to 80 %."),
        .usual = QStringLiteral("10 %")},
       {.place = "/goals/unplugged",
        .label = PlanFields::tr("Left alone for"),
        .meaning = PlanFields::tr(
            "How long the kettle is left alone for the question how far it cools, 1 min "
            "to 48 h."),
        .usual = QStringLiteral("8 h")}}};
}

FieldSection planSection() {
  return {PlanFields::tr("Plan"),
          {{.place = "/title",
            .label = PlanFields::tr("Title"),
            .meaning = PlanFields::tr("Shown above every answer, up to 200 characters.")},
           {.place = "/day_starts",
            .label = PlanFields::tr("Day starts"),
            .meaning = PlanFields::tr("Clock time at which the brew day begins, such as 09:00."),
            .usual = QStringLiteral("08:00")}}};
}

FieldSection comparedSection(const ListLengths& lengths) {
  FieldSection compared{PlanFields::tr("Jacket to compare"), {}};
  addLayers(compared, "/jacket_to_compare/side", PlanFields::tr("Side layer %1"), lengths.compared);
  addLayers(compared, "/jacket_to_compare/lid", PlanFields::tr("Lid layer %1"),
            lengths.comparedLid);
  compared.fields.push_back(outsideField("/jacket_to_compare"));
  return compared;
}

}  // namespace

ListLengths listLengths(const rigs::Texts& texts, const std::vector<rigs::Texts>& inherited) {
  ListLengths lengths;
  const auto layers = [&texts](const std::string& list, std::size_t& length) {
    length = std::max(length, std::min(entriesAt(texts, list) + 1, kMostLayers));
  };
  lengths.rests = std::min(entriesAt(texts, "/batch/mash/rests") + 1, kMostRests);
  layers("/jacket_to_compare/side", lengths.compared);
  layers("/jacket_to_compare/lid", lengths.comparedLid);
  for (std::size_t i = 0; i < inherited.size(); ++i) {
    const std::string rig = "/rigs/" + std::to_string(i);
    layers(rig + "/jacket/side", lengths.ofRigs.side);
    layers(rig + "/jacket/base", lengths.ofRigs.base);
    layers(rig + "/jacket/lid", lengths.ofRigs.lid);
    layers(rig + "/recirculation/insulation", lengths.ofRigs.hose);
    const auto from = [&](const std::string& list, std::size_t& length) {
      length = std::max(length, std::min(entriesAt(inherited[i], list) + 1, kMostLayers));
    };
    from("/jacket/side", lengths.ofRigs.side);
    from("/jacket/base", lengths.ofRigs.base);
    from("/jacket/lid", lengths.ofRigs.lid);
  }
  return lengths;
}

std::vector<FieldSection> batchSections(const ListLengths& lengths) {
  return {sizeSection(), mashSection(lengths.rests), grainSection()};
}

std::vector<FieldSection> placeSections(const ListLengths& lengths) {
  return {placeSection(), rulesSection(),          airSection(), goalsSection(), priceSection(),
          planSection(),  comparedSection(lengths)};
}

}  // namespace gui
