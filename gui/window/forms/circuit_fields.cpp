// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/circuit_fields.hpp"

#include <algorithm>

#include "rigs/circuits/rules.hpp"
#include "rigs/plans/catalogue.hpp"

namespace gui {
namespace {

using namespace physics;

std::vector<std::string> circuits(std::string_view) {
  std::vector<std::string> names;
  for (const rigs::Circuit& circuit : rigs::catalogue().circuits) names.push_back(circuit.name);
  return names;
}

// Of the plan's region; of all of them where it names none.
std::vector<std::string> outlets(std::string_view region) {
  std::vector<std::string> names;
  for (const rigs::CircuitRules& rules : rigs::bundledRules()) {
    if (!region.empty() && rules.region != region) continue;
    for (const rigs::Outlet& outlet : rules.outlets) {
      if (std::find(names.begin(), names.end(), outlet.name) == names.end())
        names.push_back(outlet.name);
    }
  }
  return names;
}

std::vector<std::string> feeds(std::string_view) { return {"one outlet", "several outlets"}; }
std::vector<std::string> cableUses(std::string_view) {
  return {"building wire", "cord", "extension set"};
}
std::vector<std::string> wirings(std::string_view) {
  return {"parallel", "series", "two circuits"};
}

// A table of conductors needs the cable's use; that needs the cable.
std::vector<Companion> withCable(bool use) {
  std::vector<Companion> all{{"/cable/length", "5 m"}, {"/cable/conductor", "2.5 mm2"}};
  if (use) all.push_back({"/cable/use", "building wire"});
  return all;
}

}  // namespace

std::vector<std::string> regions(std::string_view) {
  std::vector<std::string> names;
  for (const rigs::CircuitRules& rules : rigs::bundledRules()) names.push_back(rules.region);
  return names;
}

std::vector<std::string> editionsOf(std::string_view region) {
  std::vector<std::string> editions;
  for (const rigs::CircuitRules& rules : rigs::bundledRules()) {
    if (region.empty() || rules.region == region) editions.push_back(rules.edition);
  }
  return editions;
}

FieldSection supplySection() {
  return {
      PlanFields::tr("Circuit and cable"),
      {{.place = "/supply/from",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Circuit"),
        .meaning =
            PlanFields::tr("A usual circuit at its nominal voltage. Your own numbers below stand "
                           "instead of the catalogue's. Mains current kills: have a licensed "
                           "electrician check circuit, plug, cable and enclosure."),
        .choices = circuits},
       {.place = "/supply/voltage",
        .label = PlanFields::tr("Voltage"),
        .meaning = PlanFields::tr("Nominal, 12 to 690 V."),
        .usual = PlanFields::tr("of the circuit")},
       {.place = "/supply/current",
        .label = PlanFields::tr("Breaker"),
        .meaning = PlanFields::tr("Rated current of breaker or fuse, 1 to 400 A."),
        .usual = PlanFields::tr("of the circuit")},
       {.place = "/supply/continuous",
        .label = PlanFields::tr("For long use"),
        .meaning =
            PlanFields::tr("Share of the current that a rule grants to long use, 50 to 100 %."),
        .usual = PlanFields::tr("of the circuit")},
       {.place = "/supply/outlet",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Outlet"),
        .meaning = PlanFields::tr("What the plug goes into, by the names of the region's rules. "
                                  "Left empty: the outlet is not judged."),
        .usual = PlanFields::tr("not judged"),
        .choices = outlets},
       {.place = "/supply/feeds",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Feeds"),
        .meaning = PlanFields::tr("Whether the circuit feeds one outlet alone or several, which "
                                  "some rules treat differently. Left empty: both are told."),
        .usual = PlanFields::tr("both told"),
        .choices = feeds},
       {.place = "/supply/other_load",
        .label = PlanFields::tr("Other loads"),
        .meaning = PlanFields::tr("Power of whatever else runs on the circuit at the same time, 0 "
                                  "to 20 kW."),
        .usual = QStringLiteral("0 W")},
       {.place = "/cable/length",
        .label = PlanFields::tr("Cable length"),
        .meaning =
            PlanFields::tr("From panel to element, one way, 0 to 200 m. Left empty: no loss in the "
                           "cable."),
        .usual = PlanFields::tr("no loss"),
        .conversion = converted<Length>,
        .replaces = {"/cable/loop_resistance"},
        .companions = {{"/cable/conductor", "2.5 mm2"}},
        .removes = "/cable"},
       {.place = "/cable/conductor",
        .label = PlanFields::tr("Conductor"),
        .meaning = PlanFields::tr("Area of the copper, 0.3 to 150 mm², or as 14 AWG; always "
                                  "shown as written, since cable is sold by that name."),
        .replaces = {"/cable/loop_resistance"},
        .companions = {{"/cable/length", "5 m"}}},
       {.place = "/cable/temperature",
        .label = PlanFields::tr("Copper temperature"),
        .meaning = PlanFields::tr("Of the copper in use, -20 to 105 °C."),
        .usual = QStringLiteral("40 C"),
        .conversion = converted<Temperature>,
        .replaces = {"/cable/loop_resistance"},
        .companions = {{"/cable/length", "5 m"}, {"/cable/conductor", "2.5 mm2"}}},
       {.place = "/cable/loop_resistance",
        .label = PlanFields::tr("or loop resistance"),
        .meaning =
            PlanFields::tr("Of the cable there and back, 0 to 10 ohm. Stands instead of length and "
                           "conductor."),
        .replaces = {"/cable/length", "/cable/conductor", "/cable/temperature"},
        .removes = "/cable"}}};
}

FieldSection cableUseSection() {
  return {PlanFields::tr("How the cable is used"),
          {{.place = "/cable/use",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Used as"),
            .meaning = PlanFields::tr("Decides which table of conductors applies. Left empty: the "
                                      "conductor is not judged."),
            .usual = PlanFields::tr("not judged"),
            .choices = cableUses,
            .replaces = {"/cable/loop_resistance"},
            .companions = withCable(false)},
           {.place = "/cable/insulation",
            .label = PlanFields::tr("Insulation for"),
            .meaning = PlanFields::tr("Temperature that the insulation is made for, 40 to 200 °C; "
                                      "the most cautious table if not stated."),
            .usual = PlanFields::tr("most cautious"),
            .conversion = converted<Temperature>,
            .companions = withCable(true)},
           {.place = "/cable/ambient",
            .label = PlanFields::tr("Air around it"),
            .meaning = PlanFields::tr("-20 to 90 °C; as the table supposes if not stated."),
            .usual = PlanFields::tr("of the table"),
            .conversion = converted<Temperature>,
            .companions = withCable(true)},
           {.place = "/cable/loaded_conductors",
            .kind = FieldKind::Number,
            .label = PlanFields::tr("Loaded conductors"),
            .meaning = PlanFields::tr("Conductors in it that carry current, 2 or 3."),
            .usual = QStringLiteral("2"),
            .companions = withCable(true)},
           {.place = "/cable/layers_on_drum",
            .kind = FieldKind::Number,
            .label = PlanFields::tr("Layers on a drum"),
            .meaning = PlanFields::tr("Layers left on its drum, 0 to 10. Uncoil a cord fully."),
            .usual = QStringLiteral("0"),
            .companions = withCable(true)},
           {.place = "/cable/method",
            .label = PlanFields::tr("Installation"),
            .meaning = PlanFields::tr("Method of installation as the region's tables name it, "
                                      "such as B2 or C."),
            .usual = PlanFields::tr("most cautious"),
            .companions = withCable(true)}}};
}

FieldSection secondElementSection() {
  const auto alike = PlanFields::tr("as the first circuit");
  return {
      PlanFields::tr("Second element and pump"),
      {{.place = "/elements/1/power",
        .label = PlanFields::tr("Second element"),
        .meaning = PlanFields::tr("Power of a second element, 50 W to 60 kW; it begins as a twin "
                                  "of the first. Left empty: there is none."),
        .usual = PlanFields::tr("none")},
       {.place = "/elements/1/rated_voltage",
        .label = PlanFields::tr("Its rated voltage"),
        .meaning = PlanFields::tr("As on the name plate, 12 to 690 V.")},
       {.place = "/elements/1/top_height",
        .label = PlanFields::tr("Height of its top"),
        .meaning = PlanFields::tr("Above the inside of the base, 0 to 1.5 m."),
        .conversion = converted<Length>},
       {.place = "/wired",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Wired"),
        .meaning = PlanFields::tr("How two elements are fed: in parallel or in series on one "
                                  "circuit, or each on a circuit of its own."),
        .choices = wirings},
       {.place = "/second_supply/from",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Second circuit"),
        .meaning = PlanFields::tr("What feeds the second element, wired on two circuits."),
        .usual = alike,
        .choices = circuits},
       {.place = "/second_supply/voltage",
        .label = PlanFields::tr("Its voltage"),
        .meaning = PlanFields::tr("Nominal, 12 to 690 V."),
        .usual = alike},
       {.place = "/second_supply/current",
        .label = PlanFields::tr("Its breaker"),
        .meaning = PlanFields::tr("Rated current of breaker or fuse, 1 to 400 A."),
        .usual = alike},
       {.place = "/second_supply/outlet",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Its outlet"),
        .meaning = PlanFields::tr("What its plug goes into, by the names of the region's rules."),
        .usual = PlanFields::tr("not judged"),
        .choices = outlets},
       {.place = "/second_cable/length",
        .label = PlanFields::tr("Its cable length"),
        .meaning = PlanFields::tr("From panel to element, one way, 0 to 200 m."),
        .usual = alike,
        .conversion = converted<Length>,
        .companions = {{"/second_cable/conductor", "2.5 mm2"}},
        .removes = "/second_cable"},
       {.place = "/second_cable/conductor",
        .label = PlanFields::tr("Its conductor"),
        .meaning = PlanFields::tr("Area of the copper, 0.3 to 150 mm², or as 14 AWG."),
        .usual = alike,
        .companions = {{"/second_cable/length", "5 m"}}},
       {.place = "/pump/power",
        .label = PlanFields::tr("Pump"),
        .meaning = PlanFields::tr("Power of a pump on the first circuit, 1 to 5000 W. Left empty: "
                                  "there is none."),
        .usual = PlanFields::tr("none"),
        .removes = "/pump"},
       {.place = "/pump/voltage",
        .label = PlanFields::tr("Its voltage"),
        .meaning = PlanFields::tr("Of the pump, 12 to 690 V; the circuit's if not stated. Another "
                                  "voltage needs the outlet's neutral."),
        .usual = PlanFields::tr("of the circuit"),
        .companions = {{"/pump/power", "30 W"}}}}};
}

}  // namespace gui
