// SPDX-License-Identifier: GPL-3.0-or-later
// Element, circuit, cable and pump.
#include "rigs/plans/key_rows.hpp"

namespace rigs::key_rows {
namespace {

using enum QuantityKind;

Part element() {
  return {
      .places = {"/rigs/*/element", "/rigs/*/elements/*"},
      .rows = {{.name = "power",
                .value = quantity(Power, "50 W", "60 kW"),
                .need = Need::Required,
                .example = "3000 W",
                .label = TOLD("PlanFields", "Power"),
                .meaning = TOLD("PlanFields", "As on the name plate, 50 W to 60 kW.")},
               {.name = "rated_voltage",
                .value = quantity(Voltage, "12 V", "690 V"),
                .need = Need::Required,
                .example = "230 V",
                .label = TOLD("PlanFields", "Rated voltage"),
                .meaning = TOLD("PlanFields",
                                "As on the name plate, 12 to 690 V. On another voltage the power "
                                "follows its square.")},
               {.name = "top_height",
                .value = quantity(Length, "0 m", "1.5 m"),
                .need = Need::Required,
                .example = "60 mm",
                .label = TOLD("PlanFields", "Height of its top"),
                .meaning = TOLD("PlanFields",
                                "Highest heated point above the inside of the base, 0 to 1.5 m; 0 "
                                "mm for a heater outside. It must stay covered.")},
               {.name = "diameter",
                .value = quantity(Length, "3 mm", "40 mm"),
                .need = Need::Paired,
                .example = "11 mm",
                .label = TOLD("PlanFields", "Thickness of its rod"),
                .meaning = TOLD("PlanFields",
                                "Of the heated rod, 3 to 40 mm; with its heated length that tells "
                                "how hot its skin gets."),
                .otherwise = TOLD("PlanFields", "not asked")},
               {.name = "heated_length",
                .value = quantity(Length, "50 mm", "20 m"),
                .need = Need::Paired,
                .example = "1.8 m",
                .label = TOLD("PlanFields", "Its heated length"),
                .meaning = TOLD("PlanFields",
                                "Of the rod that gives off heat, all its bends along, 50 mm to 20 "
                                "m."),
                .otherwise = TOLD("PlanFields", "not asked")}},
      .own = {{.place = "/rigs/*/elements/*/power",
               .label = TOLD("PlanFields", "Second element"),
               .meaning = TOLD("PlanFields",
                               "Power of a second element, 50 W to 60 kW; it begins as a twin of "
                               "the first. Left empty: there is none."),
               .otherwise = TOLD("PlanFields", "none")},
              {.place = "/rigs/*/elements/*/rated_voltage",
               .label = TOLD("PlanFields", "Its rated voltage"),
               .meaning = TOLD("PlanFields", "As on the name plate, 12 to 690 V.")},
              {.place = "/rigs/*/elements/*/top_height",
               .meaning = TOLD("PlanFields", "Above the inside of the base, 0 to 1.5 m.")}}};
}

std::vector<Row> rating() {
  return {{.name = "from",
           .value = text(),
           .need = Need::OneOf,
           .example = "Europe 230 V 16 A",
           .label = TOLD("PlanFields", "Circuit"),
           .meaning = TOLD("PlanFields",
                           "A usual circuit at its nominal voltage. Your own numbers below stand "
                           "instead of the catalogue's. Mains current kills: have a licensed "
                           "electrician check circuit, plug, cable and enclosure.")},
          {.name = "voltage",
           .value = quantity(Voltage, "12 V", "690 V"),
           .need = Need::OneOf,
           .example = "230 V",
           .label = TOLD("PlanFields", "Voltage"),
           .meaning = TOLD("PlanFields", "Nominal, 12 to 690 V."),
           .otherwise = TOLD("PlanFields", "of the circuit")},
          {.name = "current",
           .value = quantity(Current, "1 A", "400 A"),
           .need = Need::OneOf,
           .example = "16 A",
           .label = TOLD("PlanFields", "Breaker"),
           .meaning = TOLD("PlanFields", "Rated current of breaker or fuse, 1 to 400 A."),
           .otherwise = TOLD("PlanFields", "of the circuit")},
          {.name = "continuous",
           .value = share("50 %", "100 %"),
           .standard = "100 %",
           .example = "80 %",
           .label = TOLD("PlanFields", "For long use"),
           .meaning = TOLD("PlanFields",
                           "Share of the current that a rule grants to long use, 50 to 100 %.")}};
}

std::vector<Row> outlet() {
  return {{.name = "outlet",
           .value = text(),
           .example = "14-30",
           .label = TOLD("PlanFields", "Outlet"),
           .meaning = TOLD("PlanFields",
                           "What the plug goes into, by the names of the region's rules. Left "
                           "empty: the outlet is not judged."),
           .otherwise = TOLD("PlanFields", "not judged")},
          {.name = "feeds",
           .value = word({"one outlet", "several outlets"}),
           .example = "one outlet",
           .label = TOLD("PlanFields", "Feeds"),
           .meaning = TOLD("PlanFields",
                           "Whether the circuit feeds one outlet alone or several, which some "
                           "rules treat differently. Left empty: both are told."),
           .otherwise = TOLD("PlanFields", "both told")},
          {.name = "other_load",
           .value = quantity(Power, "0 kW", "20 kW"),
           .standard = "0 W",
           .example = "500 W",
           .label = TOLD("PlanFields", "Other loads"),
           .meaning = TOLD("PlanFields",
                           "Power of whatever else runs on the circuit at the same time, 0 to 20 "
                           "kW.")}};
}

Part supply() {
  constexpr Marked kAlike = TOLD("PlanFields", "as the first circuit");
  Part part{.places = {"/rigs/*/supply", "/rigs/*/second_supply"}, .rows = rating()};
  for (Row& row : outlet()) part.rows.push_back(std::move(row));
  part.own = {
      {.place = "/rigs/*/second_supply/from",
       .label = TOLD("PlanFields", "Second circuit"),
       .meaning = TOLD("PlanFields", "What feeds the second element, wired on two circuits."),
       .otherwise = kAlike},
      {.place = "/rigs/*/second_supply/voltage",
       .label = TOLD("PlanFields", "Its voltage"),
       .otherwise = kAlike},
      {.place = "/rigs/*/second_supply/current",
       .label = TOLD("PlanFields", "Its breaker"),
       .otherwise = kAlike},
      {.place = "/rigs/*/second_supply/outlet",
       .label = TOLD("PlanFields", "Its outlet"),
       .meaning =
           TOLD("PlanFields", "What its plug goes into, by the names of the region's rules.")}};
  return part;
}

std::vector<Row> wire() {
  return {{.name = "length",
           .value = quantity(Length, "0.1 m", "200 m"),
           .need = Need::OneOf,
           .example = "5 m",
           .label = TOLD("PlanFields", "Cable length"),
           .meaning = TOLD("PlanFields",
                           "From panel to element, one way, 0.1 to 200 m. Left empty: no loss in "
                           "the cable."),
           .otherwise = TOLD("PlanFields", "no loss")},
          {.name = "conductor",
           .value = quantity(Area, "0.3 mm2", "150 mm2"),
           .need = Need::OneOf,
           .example = "2.5 mm2",
           .label = TOLD("PlanFields", "Conductor"),
           .meaning = TOLD("PlanFields",
                           "Area of the copper, 0.3 to 150 mm², or as 14 AWG; always shown as "
                           "written, since cable is sold by that name.")},
          {.name = "temperature",
           .value = quantity(Temperature, "-20 C", "105 C"),
           .standard = "40 C",
           .example = "40 °C",
           .label = TOLD("PlanFields", "Copper temperature"),
           .meaning = TOLD("PlanFields", "Of the copper in use, -20 to 105 °C.")},
          {.name = "loop_resistance",
           .value = quantity(Resistance, "0 ohm", "10 ohm"),
           .need = Need::OneOf,
           .example = "0.1 ohm",
           .label = TOLD("PlanFields", "or loop resistance"),
           .meaning = TOLD("PlanFields",
                           "Of the cable there and back, 0 to 10 ohm. Stands instead of length and "
                           "conductor.")}};
}

std::vector<Row> laying() {
  return {{.name = "use",
           .value = word({"building wire", "cord", "extension set"}),
           .example = "building wire",
           .label = TOLD("PlanFields", "Used as"),
           .meaning = TOLD("PlanFields",
                           "Decides which table of conductors applies. Left empty: the conductor "
                           "is not judged."),
           .otherwise = TOLD("PlanFields", "not judged")},
          {.name = "insulation",
           .value = quantity(Temperature, "40 C", "200 C"),
           .example = "75 °C",
           .label = TOLD("PlanFields", "Insulation for"),
           .meaning = TOLD("PlanFields",
                           "Temperature that the insulation is made for, 40 to 200 °C; the most "
                           "cautious table if not stated."),
           .otherwise = TOLD("PlanFields", "most cautious")},
          {.name = "ambient",
           .value = quantity(Temperature, "-20 C", "90 C"),
           .example = "30 °C",
           .label = TOLD("PlanFields", "Air around it"),
           .meaning = TOLD("PlanFields", "-20 to 90 °C; as the table supposes if not stated."),
           .otherwise = TOLD("PlanFields", "of the table")},
          {.name = "loaded_conductors",
           .value = integer("2", "40"),
           .standard = "2",
           .example = "3",
           .label = TOLD("PlanFields", "Loaded conductors"),
           .meaning = TOLD("PlanFields", "Conductors in it that carry current, 2 to 40.")},
          {.name = "layers_on_drum",
           .value = integer("0", "10"),
           .standard = "0",
           .example = "1",
           .label = TOLD("PlanFields", "Layers on a drum"),
           .meaning = TOLD("PlanFields", "Layers left on its drum, 0 to 10. Uncoil a cord fully.")},
          {.name = "method",
           .value = text("10"),
           .example = "B2",
           .label = TOLD("PlanFields", "Installation"),
           .meaning = TOLD("PlanFields",
                           "Method of installation as the region's tables name it, such as B2 or "
                           "C."),
           .otherwise = TOLD("PlanFields", "most cautious")}};
}

Part cable() {
  constexpr Marked kAlike = TOLD("PlanFields", "as the first circuit");
  Part part{.places = {"/rigs/*/cable", "/rigs/*/second_cable"}, .rows = wire()};
  for (Row& row : laying()) part.rows.push_back(std::move(row));
  part.own = {{.place = "/rigs/*/second_cable/length",
               .label = TOLD("PlanFields", "Its cable length"),
               .meaning = TOLD("PlanFields", "From panel to element, one way, 0.1 to 200 m."),
               .otherwise = kAlike},
              {.place = "/rigs/*/second_cable/conductor",
               .label = TOLD("PlanFields", "Its conductor"),
               .meaning = TOLD("PlanFields", "Area of the copper, 0.3 to 150 mm², or as 14 AWG."),
               .otherwise = kAlike}};
  return part;
}

Part pump() {
  return {
      .places = {"/rigs/*/pump"},
      .rows = {{.name = "power",
                .value = quantity(Power, "1 W", "5000 W"),
                .need = Need::Required,
                .example = "30 W",
                .label = TOLD("PlanFields", "Pump"),
                .meaning = TOLD("PlanFields",
                                "Power of a pump on the first circuit, 1 to 5000 W. Left empty: "
                                "there is none."),
                .otherwise = TOLD("PlanFields", "none")},
               {.name = "voltage",
                .value = quantity(Voltage, "12 V", "690 V"),
                .example = "230 V",
                .label = TOLD("PlanFields", "Its voltage"),
                .meaning = TOLD("PlanFields",
                                "Of the pump, 12 to 690 V; the circuit's if not stated. Another "
                                "voltage needs the outlet's neutral."),
                .otherwise = TOLD("PlanFields", "of the circuit")}}};
}

}  // namespace

std::vector<Part> circuitParts() { return {element(), supply(), cable(), pump()}; }

}  // namespace rigs::key_rows
