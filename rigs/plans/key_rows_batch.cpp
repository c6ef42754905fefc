// SPDX-License-Identifier: GPL-3.0-or-later
// The plan itself, and what is brewed.
#include "rigs/plans/key_rows.hpp"

namespace rigs::key_rows {
namespace {

using enum QuantityKind;

constexpr std::string_view kJacket = R"({"side": [{"material": "cork", "thickness": "10 mm"}]})";

constexpr std::string_view kAdditions =
    R"([{"what": "sugar", "mass": "500 g", "extract": "100 %", "before_end": "10 min"}])";

constexpr std::string_view kRinse =
    R"({"volume": "4 L", "temperature": "75 C", "heated": "another circuit"})";

Part plan() {
  return {
      .places = {""},
      .rows = {
          {.name = "format",
           .value = object(),
           .need = Need::Required,
           .example = R"({"name": "heat-ledger-plan", "version": 1})",
           .meaning = TOLD("PlanFields", "What this document is, and of which version.")},
          {.name = "title",
           .value = text("200"),
           .example = "Altbier",
           .label = TOLD("PlanFields", "Title"),
           .meaning = TOLD("PlanFields", "Shown above every answer, up to 200 characters.")},
          {.name = "batch",
           .value = object(),
           .need = Need::Required,
           .example = R"({"wort": "23 L", "boil": "60 min"})",
           .meaning = TOLD("PlanFields", "What is brewed.")},
          {.name = "place",
           .value = object(),
           .need = Need::Required,
           .example = R"({"altitude": "120 m", "room": "20 C", "water": "12 C"})",
           .meaning = TOLD("PlanFields", "Where it is brewed.")},
          {.name = "tariff",
           .value = object(),
           .example = R"({"price": "0.30 EUR/kWh"})",
           .meaning = TOLD("PlanFields", "What energy costs. Left out: no money in the answers.")},
          {.name = "day_starts",
           .value = only(ValueKind::Clock),
           .standard = "08:00",
           .example = "08:00",
           .label = TOLD("PlanFields", "Day starts"),
           .meaning = TOLD("PlanFields",
                           "Clock time at which the brew day begins, such as 09:00. Stands "
                           "instead of what is to be ready.")},
          {.name = "ready",
           .value = object(),
           .example = R"({"what": "boil", "at": "11:00"})",
           .meaning = TOLD("PlanFields",
                           "What is to be ready by which clock time: each rig then begins at its "
                           "own. Stands instead of the day's start.")},
          {.name = "jacket_to_compare",
           .value = objectOrNone(),
           .standard = "none",
           .example = kJacket,
           .meaning = TOLD("PlanFields", "A jacket for rigs that have none.")},
          {.name = "goals",
           .value = object(),
           .example = R"({"boil_within": "45 min", "boil_off": "8 %/h"})",
           .meaning = TOLD("PlanFields", "What the sizing questions aim at.")},
          {.name = "rigs",
           .value = list("1", "12"),
           .need = Need::Required,
           .example = R"([{"name": "A", "from": "40 L steel kettle"}, )"
                      R"({"name": "B", "from": "60 L steel kettle"}])",
           .meaning = TOLD("PlanFields", "The rigs: 1 to 12, side by side.")}}};
}

Part format() {
  return {.places = {"/format"},
          .rows = {{.name = "name",
                    .value = word({"heat-ledger-plan"}),
                    .need = Need::Required,
                    .example = "heat-ledger-plan",
                    .meaning = TOLD("PlanFields", "Which kind of document this is.")},
                   {.name = "version",
                    .value = integer(),
                    .need = Need::Required,
                    .example = "1",
                    .meaning = TOLD("PlanFields", "Version of the format.")}},
          .mayHaveNote = false};
}

Part ready() {
  return {
      .places = {"/ready"},
      .rows = {{.name = "what",
                .value = word({"strike water", "end of mash", "boil", "end of boil", "pitching"}),
                .need = Need::Required,
                .example = "boil",
                .label = TOLD("PlanFields", "or to be ready"),
                .meaning = TOLD("PlanFields",
                                "What the clock time below is of: strike water hot enough to "
                                "mash in, the end of the mash, the wort rolling, the end of "
                                "the boil, or wort chilled for pitching. Each rig begins so "
                                "much earlier. Stands instead of the day's start.")},
               {.name = "at",
                .value = only(ValueKind::Clock),
                .need = Need::Required,
                .example = "11:00",
                .label = TOLD("PlanFields", "Ready at"),
                .meaning =
                    TOLD("PlanFields", "Clock time by which it is to be ready, such as 11:00.")}}};
}

Part batch() {
  return {
      .places = {"/batch"},
      .rows = {
          {.name = "wort",
           .value = quantity(Volume, "0.5 L", "2000 L"),
           .need = Need::OneOf,
           .example = "23 L",
           .label = TOLD("PlanFields", "Wort wanted"),
           .meaning = TOLD("PlanFields",
                           "Cold finished wort after the boil, at 20 °C; 0.5 to 2000 L. The water "
                           "to pour follows from it. Stands instead of the water.")},
          {.name = "water",
           .value = quantity(Volume, "0.5 L", "2000 L"),
           .need = Need::OneOf,
           .example = "28 L",
           .label = TOLD("PlanFields", "or water poured"),
           .meaning = TOLD("PlanFields",
                           "Cold water poured in, at 20 °C; 0.5 to 2000 L. The wort follows from "
                           "it. Stands instead of the wort.")},
          {.name = "grain",
           .value = object(),
           .example = R"({"mass": "5 kg"})",
           .meaning = TOLD("PlanFields",
                           "The grain that is mashed. Left out: no mash, straight to the boil.")},
          {.name = "mash",
           .value = object(),
           .need = Need::Paired,
           .example = R"({"rests": [{"temperature": "66 C", "time": "60 min"}]})",
           .meaning = TOLD("PlanFields",
                           "Rests held by a controller, or a mash left alone. Grain needs it.")},
          {.name = "mashing_in",
           .value = quantity(Time, "0 min", "60 min"),
           .standard = "5 min",
           .example = "5 min",
           .label = TOLD("PlanFields", "Mashing in"),
           .meaning = TOLD("PlanFields", "Grain going in, with lid and element off; 0 to 60 min.")},
          {.name = "boil",
           .value = quantity(Time, "0 h", "12 h"),
           .need = Need::Required,
           .example = "60 min",
           .label = TOLD("PlanFields", "Length of the boil"),
           .meaning = TOLD("PlanFields", "How long it is kept boiling, 0 to 12 h.")},
          {.name = "additions",
           .value = list("1", "12"),
           .example = kAdditions,
           .meaning = TOLD("PlanFields",
                           "What goes into the kettle during the boil: sugar, syrup, fruit, water; "
                           "1 to 12.")},
          {.name = "rinse",
           .value = object(),
           .example = kRinse,
           .meaning = TOLD("PlanFields",
                           "Water poured over the lifted grain. Left out: it is not rinsed.")},
          {.name = "drain",
           .value = object(),
           .example = R"({"time": "15 min"})",
           .meaning = TOLD("PlanFields",
                           "How long the lifted grain hangs over the kettle. Left out: heating to "
                           "the boil begins at once.")},
          {.name = "hot_stand",
           .value = quantity(Time, "0 h", "12 h"),
           .standard = "0 min",
           .example = "20 min",
           .label = TOLD("PlanFields", "Hot stand"),
           .meaning = TOLD("PlanFields",
                           "How long it stands after the boil before it is chilled, 0 to 12 h.")},
          {.name = "pitching_temperature",
           .value = quantity(Temperature, "2 C", "50 C"),
           .standard = "20 C",
           .example = "18 °C",
           .label = TOLD("PlanFields", "Pitching at"),
           .meaning = TOLD("PlanFields",
                           "Temperature the wort is chilled to, 2 to 50 °C; water brings it to "
                           "2 K above its own at best.")}}};
}

Part addition() {
  return {
      .places = {"/batch/additions/*"},
      .rows = {
          {.name = "what",
           .value = text("80"),
           .need = Need::Required,
           .example = "sugar",
           .label = TOLD("PlanFields", "Addition %1"),
           .meaning = TOLD("PlanFields",
                           "What goes into the kettle during the boil, in your own words, up to "
                           "80 characters.")},
          {.name = "mass",
           .value = quantity(Mass, "1 g", "500 kg"),
           .need = Need::OneOf,
           .example = "500 g",
           .label = TOLD("PlanFields", "Addition %1, mass"),
           .meaning = TOLD("PlanFields",
                           "As weighed, 1 g to 500 kg; its extract is stated beside it. Water may "
                           "be stated by volume instead.")},
          {.name = "water",
           .value = quantity(Volume, "0.001 L", "500 L"),
           .need = Need::OneOf,
           .example = "2 L",
           .label = TOLD("PlanFields", "or addition %1 as water"),
           .meaning = TOLD("PlanFields",
                           "Water that is added, at 20 °C; 0.001 to 500 L. Stands instead of the "
                           "mass.")},
          {.name = "extract",
           .value = share("0 %", "100 %"),
           .need = Need::Paired,
           .example = "100 %",
           .label = TOLD("PlanFields", "Addition %1, extract"),
           .meaning = TOLD("PlanFields",
                           "Share of the mass that dissolves as sugar, 0 to 100 %; the rest counts "
                           "as water. Dry sugar 100 %, syrup about 75 to 80 %, fruit about 10 %.")},
          {.name = "temperature",
           .value = quantity(Temperature, "0 C", "100 C"),
           .example = "20 °C",
           .label = TOLD("PlanFields", "Addition %1, temperature"),
           .meaning = TOLD("PlanFields",
                           "0 to 100 °C and no hotter than boiling water here; as warm as the room "
                           "if not stated."),
           .otherwise = TOLD("PlanFields", "as the room")},
          {.name = "before_end",
           .value = quantity(Time, "0 h", "12 h"),
           .need = Need::Required,
           .example = "10 min",
           .label = TOLD("PlanFields", "Addition %1, before the end"),
           .meaning = TOLD("PlanFields",
                           "How long before the end of the boil it goes in, by the boil's clock; "
                           "no longer than the boil.")}}};
}

Part rinse() {
  return {
      .places = {"/batch/rinse"},
      .rows = {
          {.name = "volume",
           .value = quantity(Volume, "0.1 L", "500 L"),
           .need = Need::Required,
           .example = "4 L",
           .label = TOLD("PlanFields", "Rinsing water"),
           .meaning = TOLD("PlanFields",
                           "Poured over the grain once it is lifted, at 20 °C; 0.1 to 500 L. A "
                           "wort that is wanted then needs so much less water poured at first.")},
          {.name = "temperature",
           .value = quantity(Temperature, "0 C", "100 C"),
           .need = Need::Required,
           .example = "75 °C",
           .label = TOLD("PlanFields", "Rinsing water at"),
           .meaning = TOLD("PlanFields",
                           "0 to 100 °C, no colder than the water is drawn and no hotter than it "
                           "boils here.")},
          {.name = "heated",
           .value = word({"same circuit", "another circuit", "not electric"}),
           .need = Need::Required,
           .example = "another circuit",
           .label = TOLD("PlanFields", "Rinsing water heated"),
           .meaning = TOLD("PlanFields",
                           "By electricity on the kettle's own first circuit while the kettle is "
                           "in use, by electricity on another circuit, or by something else, as "
                           "gas or the tap.")},
          {.name = "power",
           .value = quantity(Power, "50 W", "30 kW"),
           .example = "2 kW",
           .label = TOLD("PlanFields", "Rinsing water's heater"),
           .meaning = TOLD("PlanFields",
                           "Power of what heats it, from the wall, 50 W to 30 kW. On the kettle's "
                           "own circuit it is counted beside the element; left empty, it must "
                           "still be added."),
           .otherwise = TOLD("PlanFields", "not known")},
          {.name = "efficiency",
           .value = share("30 %", "100 %"),
           .standard = "85 %",
           .example = "85 %",
           .label = TOLD("PlanFields", "Its efficiency"),
           .meaning = TOLD("PlanFields",
                           "Share of the heater's electricity that ends in the rinsing water, 30 "
                           "to 100 %; about 85 % for an element in a covered vessel, 70 % for a "
                           "pot on a plate.")},
          {.name = "reached",
           .value = share("0 %", "100 %"),
           .standard = "50 %",
           .example = "50 %",
           .label = TOLD("PlanFields", "Rinse reaches"),
           .meaning = TOLD("PlanFields",
                           "Share of the wort held by the grain that the rinsing water mixes "
                           "with, 0 to 100 %. Nobody knows it beforehand; a gravity read before "
                           "and after tells.")}}};
}

Part drain() {
  return {
      .places = {"/batch/drain"},
      .rows = {
          {.name = "time",
           .value = quantity(Time, "1 min", "2 h"),
           .need = Need::Required,
           .example = "15 min",
           .label = TOLD("PlanFields", "Grain drains for"),
           .meaning = TOLD("PlanFields",
                           "How long the lifted grain hangs over the open kettle, 1 min to 2 h.")},
          {.name = "element",
           .value = word({"off", "on"}),
           .standard = "off",
           .example = "off",
           .label = TOLD("PlanFields", "Element meanwhile"),
           .meaning = TOLD("PlanFields",
                           "Off: the wort cools while the grain drains. On: heating goes on, to "
                           "just below boiling at most.")}}};
}

Part grain() {
  return {
      .places = {"/batch/grain"},
      .rows = {
          {.name = "mass",
           .value = quantity(Mass, "1 g", "500 kg"),
           .need = Need::Required,
           .example = "5 kg",
           .label = TOLD("PlanFields", "Mass"),
           .meaning =
               TOLD("PlanFields",
                    "As weighed, 1 g to 500 kg. Left empty: no mash, straight to the boil.")},
          {.name = "temperature",
           .value = quantity(Temperature, "-20 C", "60 C"),
           .example = "20 °C",
           .label = TOLD("PlanFields", "Temperature"),
           .meaning = TOLD("PlanFields",
                           "Of the grain before mashing in, -20 to 60 °C; as warm as the room if "
                           "not stated."),
           .otherwise = TOLD("PlanFields", "as the room")},
          {.name = "moisture",
           .value = share("0 %", "15 %"),
           .standard = "4.5 %",
           .example = "4.5 %",
           .label = TOLD("PlanFields", "Moisture"),
           .meaning = TOLD("PlanFields", "Share of water in the grain, 0 to 15 %.")},
          {.name = "extract",
           .value = share("10 %", "95 %"),
           .standard = "72 %",
           .example = "72 %",
           .label = TOLD("PlanFields", "Extract"),
           .meaning = TOLD("PlanFields",
                           "Mass dissolved from each mass of grain, 10 to 95 %: yield and "
                           "efficiency together.")},
          {.name = "absorption",
           .value = quantity(VolumePerMass, "0 L/kg", "3 L/kg"),
           .standard = "0.8 L/kg",
           .example = "0.8 L/kg",
           .label = TOLD("PlanFields", "Absorption"),
           .meaning = TOLD("PlanFields", "Wort that stays in the lifted grain, 0 to 3 L/kg.")},
          {.name = "displacement",
           .value = quantity(VolumePerMass, "0.3 L/kg", "1.5 L/kg"),
           .standard = "0.67 L/kg",
           .example = "0.67 L/kg",
           .label = TOLD("PlanFields", "Displacement"),
           .meaning =
               TOLD("PlanFields", "Volume that the grain takes in the mash, 0.3 to 1.5 L/kg.")},
          {.name = "specific_heat",
           .value = quantity(SpecificHeat, "500 J/(kg K)", "4200 J/(kg K)"),
           .example = "1700 J/(kg K)",
           .label = TOLD("PlanFields", "Specific heat"),
           .meaning =
               TOLD("PlanFields", "500 to 4200 J/(kg K); follows from the moisture if not stated."),
           .otherwise = TOLD("PlanFields", "from moisture")},
          {.name = "slaking_heat",
           .value = quantity(SpecificEnergy, "0 kJ/kg", "100 kJ/kg"),
           .example = "18 kJ/kg",
           .label = TOLD("PlanFields", "Slaking heat"),
           .meaning = TOLD("PlanFields",
                           "Given off when the grain is wetted, 0 to 100 kJ/kg; follows from the "
                           "moisture if not stated."),
           .otherwise = TOLD("PlanFields", "from moisture")}}};
}

Part mash() {
  return {.places = {"/batch/mash"},
          .rows = {{.name = "rests",
                    .value = list("1", "12"),
                    .need = Need::OneOf,
                    .example = R"([{"temperature": "66 C", "time": "60 min"}])",
                    .meaning = TOLD("PlanFields",
                                    "Temperatures held by a controller, 1 to 12 in their order.")},
                   {.name = "unplugged",
                    .value = object(),
                    .need = Need::OneOf,
                    .example = R"({"temperature": "66 C", "time": "90 min"})",
                    .meaning = TOLD("PlanFields",
                                    "A mash left alone with the element off: the temperature it "
                                    "starts from, and how long.")}}};
}

Part rest() {
  return {.places = {"/batch/mash/rests/*"},
          .rows = {{.name = "temperature",
                    .value = quantity(Temperature, "20 C", "100 C"),
                    .need = Need::Required,
                    .example = "66 °C",
                    .label = TOLD("PlanFields", "Rest %1"),
                    .meaning = TOLD("PlanFields",
                                    "Temperature that a controller holds, 20 to 100 °C and at "
                                    "least 1 K below boiling. The strike temperature follows from "
                                    "the first rest.")},
                   {.name = "time",
                    .value = quantity(Time, "0 h", "24 h"),
                    .need = Need::Required,
                    .example = "60 min",
                    .label = TOLD("PlanFields", "Rest %1 lasts"),
                    .meaning = TOLD("PlanFields", "How long the rest is held, 0 to 24 h.")}}};
}

Part unplugged() {
  return {
      .places = {"/batch/mash/unplugged"},
      .rows = {{.name = "temperature",
                .value = quantity(Temperature, "20 C", "100 C"),
                .need = Need::Required,
                .example = "66 °C",
                .label = TOLD("PlanFields", "or unplugged from"),
                .meaning = TOLD("PlanFields",
                                "Temperature at which the mash is left alone with the element off. "
                                "Stands instead of the rests.")},
               {.name = "time",
                .value = quantity(Time, "0 h", "48 h"),
                .need = Need::Required,
                .example = "90 min",
                .label = TOLD("PlanFields", "Unplugged for"),
                .meaning = TOLD("PlanFields", "How long the mash is left alone, 0 to 48 h.")}}};
}

}  // namespace

std::vector<Part> batchParts() {
  return {plan(),  format(), ready(), batch(), addition(), rinse(),
          drain(), grain(),  mash(),  rest(),  unplugged()};
}

}  // namespace rigs::key_rows
