// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/kettle_options.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "rigs/answers/plan_check.hpp"
#include "rigs/plans/plan.hpp"

namespace gui {
namespace {

using rigs::KettleFigure;
using rigs::Told;
using rigs::Verbatim;

struct FigureOption {
  KettleFigure figure;
  std::string_view option, value;
  rigs::Template<0> about;
  std::string_view example;
};
const std::array kFigures{
    FigureOption{KettleFigure::Volume, "--kettle", "VOLUME",
                 TOLD("Terminal", "your own kettle, of this size to the brim"), "45 L"},
    FigureOption{KettleFigure::Power, "--power", "POWER",
                 TOLD("Terminal", "of its element, as its plate says"), "2.2 kW"},
    FigureOption{KettleFigure::Voltage, "--voltage", "VOLTAGE",
                 TOLD("Terminal", "that the plate states it for"), "230 V"},
    FigureOption{KettleFigure::Batch, "--batch", "VOLUME",
                 TOLD("Terminal", "of finished wort; 55 % of the kettle if not given"), "25 L"},
    FigureOption{KettleFigure::Altitude, "--altitude", "HEIGHT", TOLD("Terminal", "above the sea"),
                 "1600 m"},
    FigureOption{KettleFigure::Room, "--room", "TEMPERATURE", TOLD("Terminal", "of the room"),
                 "16 °C"}};
constexpr std::string_view kRegion = "--region", kCircuit = "--circuit", kNoLid = "--no-lid",
                           kJacket = "--jacket";

// The catalogue's circuit by its name, or the first of that country with this current.
const rigs::Circuit* circuitCalled(const std::string& text, std::string_view region) {
  const auto current = rigs::parseQuantity<physics::Current>(text);
  for (const rigs::Circuit* one : rigs::circuitsToOffer(region))
    if (one->name == text || (current && one->current == *current)) return one;
  return nullptr;
}

Told noSuchCircuit(const std::string& text, std::string_view region) {
  rigs::List known{{}, rigs::Joint::Comma};
  for (const rigs::Circuit* one : rigs::circuitsToOffer(region))
    known.items.emplace_back(Verbatim{'"' + one->name + '"'});
  return Told(
      TOLD("Terminal", "--circuit: %1 was given; %2 has %3, or the current of one of them."),
      rigs::Quoted{text}, rigs::fromRules(std::string(region)), std::move(known));
}

void readRegion(const TypedWords& typed, rigs::FirstKettle& kettle, std::vector<Told>& wrong) {
  const auto text = typed.valueOf(kRegion);
  if (!text) return;
  rigs::List known{{}, rigs::Joint::Or};
  for (const std::string& region : rigs::regionsToOffer()) {
    if (rigs::sameRegion(region, *text)) kettle.region = region;
    known.items.emplace_back(Verbatim{region});
  }
  if (kettle.region.empty())
    wrong.push_back(Told(TOLD("Terminal", "--region: %1 was given; for a kettle %2 is accepted."),
                         rigs::Quoted{*text}, std::move(known)));
}

void readCircuit(const TypedWords& typed, rigs::FirstKettle& kettle, std::vector<Told>& wrong) {
  const auto text = typed.valueOf(kCircuit);
  if (!text) return;
  const std::string_view region =
      kettle.region.empty() ? rigs::kUsualRegion : std::string_view(kettle.region);
  if (const rigs::Circuit* circuit = circuitCalled(*text, region))
    kettle.circuit = circuit->name;
  else
    wrong.push_back(noSuchCircuit(*text, region));
}

std::string optionAt(const std::string& where) {
  const auto figure = rigs::kettleFigureAt(where, false);
  for (const FigureOption& one : kFigures)
    if (figure && one.figure == *figure) return std::string(one.option);
  return where;
}

}  // namespace

std::vector<KettleOption> kettleOptions() {
  std::vector<KettleOption> all;
  const auto add = [&all](std::string_view option, std::string_view value, Told about) {
    all.push_back({option, value, std::move(about)});
  };
  for (const FigureOption& one : kFigures)
    add(one.option, one.value,
        Told(TOLD("Terminal", "%1: \"%2\""), Told(one.about), Verbatim{std::string(one.example)}));
  add(kRegion, "NAME",
      Told(TOLD("Terminal", "%1: \"%2\""), Told(TOLD("Terminal", "whose circuits and rules apply")),
           Verbatim{"United States"}));
  add(kCircuit, "CURRENT",
      Told(TOLD("Terminal", "%1: \"%2\""),
           Told(TOLD("Terminal", "it is plugged into, or its name in the catalogue")),
           Verbatim{"16 A"}));
  add(kNoLid, "", Told(TOLD("Terminal", "it heats without a lid")));
  add(kJacket, "", Told(TOLD("Terminal", "it has a jacket of 19 mm foam")));
  return all;
}

bool isKettleOption(std::string_view option) {
  const auto all = kettleOptions();
  return std::any_of(all.begin(), all.end(),
                     [&](const KettleOption& one) { return one.option == option; });
}

std::optional<rigs::FirstKettle> kettleFrom(const TypedWords& typed, std::vector<Told>& wrong) {
  const auto all = kettleOptions();
  if (std::none_of(all.begin(), all.end(),
                   [&](const KettleOption& one) { return typed.has(one.option); }))
    return std::nullopt;
  rigs::FirstKettle kettle;
  for (const FigureOption& one : kFigures)
    if (const auto text = typed.valueOf(one.option)) kettle.typed[one.figure] = *text;
  kettle.lid = !typed.has(kNoLid);
  kettle.jacket = typed.has(kJacket);
  readRegion(typed, kettle, wrong);
  readCircuit(typed, kettle, wrong);
  return kettle;
}

std::string kettlePlan(const rigs::FirstKettle& kettle, const rigs::Reader& reader,
                       rigs::Problems& problems) {
  rigs::StartedKettle started =
      rigs::startWith(kettle, rigs::tell(rigs::firstKettleName(), reader), reader.units);
  if (started.plan) rigs::checkPlan(*started.plan, started.problems);
  for (rigs::Problem& one : started.problems) {
    if (one.severity != rigs::Severity::Error) continue;  // "check" tells of remarks
    one.where = optionAt(one.where);
    problems.push_back(std::move(one));
  }
  return rigs::hasErrors(problems) ? std::string() : std::move(started.document);
}

}  // namespace gui
