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
    if (!region.empty() && !rigs::sameRegion(rules.region, region)) continue;
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
    if (region.empty() || rigs::sameRegion(rules.region, region)) editions.push_back(rules.edition);
  }
  return editions;
}

FieldSection supplySection() {
  return {PlanFields::tr("Circuit and cable"),
          {{.place = "/supply/from", .kind = FieldKind::Choice, .choices = circuits},
           {.place = "/supply/voltage"},
           {.place = "/supply/current"},
           {.place = "/supply/continuous"},
           {.place = "/supply/outlet", .kind = FieldKind::Choice, .choices = outlets},
           {.place = "/supply/feeds", .kind = FieldKind::Choice, .choices = feeds},
           {.place = "/supply/other_load"},
           {.place = "/cable/length",
            .conversion = converted<Length>,
            .replaces = {"/cable/loop_resistance"},
            .companions = {{"/cable/conductor", "2.5 mm2"}},
            .removes = "/cable"},
           {.place = "/cable/conductor",
            .replaces = {"/cable/loop_resistance"},
            .companions = {{"/cable/length", "5 m"}}},
           {.place = "/cable/temperature",
            .conversion = converted<Temperature>,
            .replaces = {"/cable/loop_resistance"},
            .companions = {{"/cable/length", "5 m"}, {"/cable/conductor", "2.5 mm2"}}},
           {.place = "/cable/loop_resistance",
            .replaces = {"/cable/length", "/cable/conductor", "/cable/temperature"},
            .removes = "/cable"}}};
}

FieldSection cableUseSection() {
  return {
      PlanFields::tr("How the cable is used"),
      {{.place = "/cable/use",
        .kind = FieldKind::Choice,
        .choices = cableUses,
        .replaces = {"/cable/loop_resistance"},
        .companions = withCable(false)},
       {.place = "/cable/insulation",
        .conversion = converted<Temperature>,
        .companions = withCable(true)},
       {.place = "/cable/ambient",
        .conversion = converted<Temperature>,
        .companions = withCable(true)},
       {.place = "/cable/loaded_conductors",
        .kind = FieldKind::Number,
        .companions = withCable(true)},
       {.place = "/cable/layers_on_drum", .kind = FieldKind::Number, .companions = withCable(true)},
       {.place = "/cable/method", .companions = withCable(true)}}};
}

FieldSection secondElementSection() {
  return {PlanFields::tr("Second element and pump"),
          {{.place = "/elements/1/power"},
           {.place = "/elements/1/rated_voltage"},
           {.place = "/elements/1/top_height", .conversion = converted<Length>},
           {.place = "/wired", .kind = FieldKind::Choice, .choices = wirings},
           {.place = "/second_supply/from", .kind = FieldKind::Choice, .choices = circuits},
           {.place = "/second_supply/voltage"},
           {.place = "/second_supply/current"},
           {.place = "/second_supply/outlet", .kind = FieldKind::Choice, .choices = outlets},
           {.place = "/second_cable/length",
            .conversion = converted<Length>,
            .companions = {{"/second_cable/conductor", "2.5 mm2"}},
            .removes = "/second_cable"},
           {.place = "/second_cable/conductor", .companions = {{"/second_cable/length", "5 m"}}},
           {.place = "/pump/power", .removes = "/pump"},
           {.place = "/pump/voltage", .companions = {{"/pump/power", "30 W"}}}}};
}

}  // namespace gui
