// SPDX-License-Identifier: GPL-3.0-or-later
// What is brewed and where. The rigs' fields stand in rig_fields.cpp.
#include "gui/window/plan_fields.hpp"

#include <algorithm>

#include "gui/window/layer_fields.hpp"

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
    layers(rig + "/jacket/side", lengths.side);
    layers(rig + "/jacket/base", lengths.base);
    layers(rig + "/jacket/lid", lengths.lid);
    layers(rig + "/recirculation/insulation", lengths.hose);
    const auto from = [&](const std::string& list, std::size_t& length) {
      length = std::max(length, std::min(entriesAt(inherited[i], list) + 1, kMostLayers));
    };
    from("/jacket/side", lengths.side);
    from("/jacket/base", lengths.base);
    from("/jacket/lid", lengths.lid);
  }
  return lengths;
}

std::vector<FieldSection> batchSections(const ListLengths& lengths) {
  FieldSection size{
      PlanFields::tr("Batch"),
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
  FieldSection mash{PlanFields::tr("Mash"), {}};
  for (std::size_t i = 0; i < lengths.rests; ++i) {
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
  FieldSection grain{
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
  return {std::move(size), std::move(mash), std::move(grain)};
}

std::vector<FieldSection> placeSections(const ListLengths& lengths) {
  FieldSection place{
      PlanFields::tr("Place"),
      {{.place = "/place/altitude",
        .label = PlanFields::tr("Altitude"),
        .meaning = PlanFields::tr(
            "Above the sea in the standard atmosphere, -430 to 5200 m. It decides when "
            "water boils. Stands instead of a pressure."),
        .conversion = converted<Length>,
        .replaces = {"/place/pressure"}},
       {.place = "/place/pressure",
        .label = PlanFields::tr("or air pressure"),
        .meaning =
            PlanFields::tr("As it is at the place, not reduced to the sea; 50 to 110 kPa. Stands "
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
  FieldSection goals{
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
  FieldSection price{
      PlanFields::tr("Price of energy"),
      {{.place = "/tariff/price",
        .label = PlanFields::tr("Price"),
        .meaning = PlanFields::tr(
            "Number, currency and /kWh, such as 0.28 EUR/kWh or $0.17/kWh. Without it "
            "there is no money in the answers."),
        .removes = "/tariff"},
       {.place = "/tariff/dated",
        .label = PlanFields::tr("Dated"),
        .meaning = PlanFields::tr("Year and month, or a day: 2026-01 or 2026-01-31.")}}};
  FieldSection plan{
      PlanFields::tr("Plan"),
      {{.place = "/title",
        .label = PlanFields::tr("Title"),
        .meaning = PlanFields::tr("Shown above every answer, up to 200 characters.")},
       {.place = "/day_starts",
        .label = PlanFields::tr("Day starts"),
        .meaning = PlanFields::tr("Clock time at which the brew day begins, such as 09:00."),
        .usual = QStringLiteral("08:00")}}};
  FieldSection compared{PlanFields::tr("Jacket to compare"), {}};
  addLayers(compared, "/jacket_to_compare/side", PlanFields::tr("Side layer %1"), lengths.compared);
  addLayers(compared, "/jacket_to_compare/lid", PlanFields::tr("Lid layer %1"),
            lengths.comparedLid);
  compared.fields.push_back(outsideField("/jacket_to_compare"));
  return {std::move(place), std::move(goals), std::move(price), std::move(plan),
          std::move(compared)};
}

}  // namespace gui
