// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/overrides.hpp"

#include <algorithm>
#include <filesystem>
#include <functional>
#include <variant>

#include "physics/air.hpp"
#include "rigs/answers/key_numbers.hpp"
#include "rigs/circuits/rules_file.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/documents/quantity_problems.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/ranges.hpp"
#include "rigs/plans/ready_reader.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {
namespace {

using physics::celsius;
using physics::hours;
using rigs::Plan;
using rigs::Quoted;
using rigs::Told;
namespace ranges = rigs::ranges;

// A quantity within [low, high], or a problem.
template <class Q>
std::optional<Q> quantity(const Override& given, const rigs::Range<Q>& range,
                          std::string_view example, rigs::Problems& problems) {
  const auto& [low, high] = range;
  const auto read = rigs::parseQuantity<Q>(given.text);
  const rigs::AcceptedQuantity accepted{rigs::kKindOf<Q>, rigs::detail::siNumber(low),
                                        rigs::detail::siNumber(high), std::string(example)};
  if (!read) {
    problems.push_back({rigs::Severity::Error, given.option,
                        rigs::quantityProblem(*read.fault, given.text, accepted)});
    return std::nullopt;
  }
  if (*read < low || high < *read) {
    problems.push_back(
        {rigs::Severity::Error, given.option,
         Told(TOLD("Terminal", "%1 was given; %2 is accepted, for example %3"), Quoted{given.text},
              rigs::acceptedRange(accepted, given.text), rigs::inQuotes(example))});
    return std::nullopt;
  }
  return *read;
}

template <class Change>
void forEachRig(Plan& plan, const Change& change) {
  for (rigs::RigPlan& rig : plan.rigs) {
    for (physics::Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) change(*one);
  }
}

void room(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto t = quantity(given, ranges::kRoom, "16 C", problems);
  if (!t) return;
  // Grain that was as warm as the room still is.
  if (plan.batch.grain.temperature == plan.place.room) plan.batch.grain.temperature = *t;
  plan.place.room = *t;
}

void water(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const auto t = quantity(given, ranges::kWater, "10 C", problems)) {
    plan.place.water = *t;
  }
}

void humidity(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const auto share = quantity(given, ranges::kHumidity, "50 %", problems)) {
    plan.place.relativeHumidity = *share;
  }
}

void altitude(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto height = quantity(given, ranges::kAltitude, "1600 m", problems);
  if (!height) return;
  plan.altitude = *height;
  plan.place.pressure = physics::standardAtmosphere(*height).pressure;
}

void supplyVoltage(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto v = quantity(given, ranges::kVoltage, "208 V", problems);
  if (!v) return;
  forEachRig(plan, [&](physics::Rig& rig) { rig.supply.nominal = *v; });
  for (rigs::RigPlan& rig : plan.rigs) {
    // What a region grants its own circuit says nothing of another voltage.
    rig.circuit.clear();
    rig.continuousShare = 1.0;
    // Nor is it that region's circuit any more, where that region has no such voltage.
    for (rigs::CircuitPlan& one : rig.circuits) {
      const auto all = rigs::rulesForCircuitsOf(one.details.circuitRegion);
      const bool known = std::any_of(all.begin(), all.end(), [&](const rigs::CircuitRules* rules) {
        return !rules->rangesOf(*v).empty() || rules->nominalOf(*v);
      });
      if (known) continue;
      one.details.circuitRegion.clear();
      one.details.fuse.clear();
    }
    if (const auto problem = rigs::overVoltage(rig.rig.element, rig.rig.supply)) {
      problems.push_back({problem->severity, given.option,
                          Told(TOLD("Terminal", "%1: %2"), Quoted{rig.name}, problem->message)});
    }
  }
}

void circuit(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto i = quantity(given, ranges::kCircuit, "16 A", problems);
  if (!i) return;
  forEachRig(plan, [&](physics::Rig& rig) { rig.supply.rating = *i; });
  for (rigs::RigPlan& rig : plan.rigs) rig.circuit.clear();
}

void region(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const rigs::CircuitRules* rules = rigs::rulesOf(given.text)) {
    plan.region = rules->region;
    plan.ownRules.reset();
    return;
  }
  rigs::List known{.items = {}, .joint = rigs::Joint::Comma};
  for (const rigs::CircuitRules& rules : rigs::bundledRules())
    known.items.emplace_back(rigs::Verbatim{rules.region});  // as it is to be typed
  problems.push_back(
      {rigs::Severity::Error, given.option,
       Told(
           TOLD(
               "Terminal",
               "%1 was given; one of %2 is accepted, for example \"Canada\"; rules of your own are "
               "a file: --rules here, \"rules\" in a plan's \"place\""),
           Quoted{given.text}, std::move(known))});
}

// A file that cannot be read is no mistake in the rules: like a plan's, its error is thrown.
void rulesFile(const Override& given, Plan& plan, rigs::Problems& problems) {
  const std::string text = rigs::readText(given.text, rigs::kLargestRules);
  const std::string name = std::filesystem::path(given.text).filename().string();
  if (auto rules = rigs::rulesIn(text, name, given.option, problems)) {
    plan.ownRules = std::move(rules);
    plan.region.clear();
  }
}

void within(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto t = quantity(given, ranges::kWithin, "45 min", problems);
  if (t) plan.goals.boilWithin = *t;
}

void boilOff(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto rate = quantity(given, ranges::kBoilOff, "8 %/h", problems);
  if (rate) plan.goals.boilOffPerHour = *rate * hours(1.0);
}

void headspace(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const auto share = quantity(given, ranges::kHeadspace, "10 %", problems)) {
    plan.goals.headspace = *share;
  }
}

void alone(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto t = quantity(given, ranges::kUnplugged, "10 h", problems);
  if (!t) return;
  plan.goals.unplugged = *t;
  // The plan's own night is what it is left alone for.
  if (auto* left = std::get_if<physics::UnpluggedMash>(&plan.batch.mash)) left->duration = *t;
}

// "boil 11:00": what is to be ready, and when.
std::optional<rigs::Ready> readyFrom(std::string_view text) {
  const std::size_t space = text.rfind(' ');
  if (space == std::string_view::npos) return std::nullopt;
  std::string_view word = text.substr(0, space);
  while (word.ends_with(' ')) word.remove_suffix(1);
  const auto what = rigs::milestoneCalled(word);
  const auto clock = rigs::readNumber(*rigs::keyAt("/ready/at"), text.substr(space + 1)).number;
  if (!what || !clock) return std::nullopt;
  return rigs::Ready{.what = *what, .at = physics::seconds(*clock)};
}

void ready(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto wanted = readyFrom(given.text);
  if (!wanted) {
    rigs::List words{.items = {}, .joint = rigs::Joint::Or};
    for (const auto& [word, what] : rigs::kMilestoneWords)
      words.items.emplace_back(rigs::Verbatim{std::string(word)});
    problems.push_back({rigs::Severity::Error, given.option,
                        Told(TOLD("Terminal",
                                  "%1 was given; what is to be ready and a clock time from 00:00 "
                                  "to 23:59 are accepted, for example \"boil 11:00\"; that may be "
                                  "%2"),
                             Quoted{given.text}, std::move(words))});
    return;
  }
  plan.ready = wanted;
  // A plan that could not be read has no rigs, and problems enough.
  if (plan.rigs.empty()) return;
  if (Told why = rigs::neverComes(wanted->what, plan.batch, plan.rigs); !why.empty())
    problems.push_back({rigs::Severity::Error, given.option, std::move(why)});
}

struct Known {
  OverrideKind kind;
  void (*apply)(const Override&, Plan&, rigs::Problems&);
};
const std::vector<Known>& known() {
  static const std::vector<Known> all{
      {{"--room", "TEMPERATURE", TOLD("Terminal", "of the room"), "16 °C"}, room},
      {{"--water", "TEMPERATURE", TOLD("Terminal", "of the water as drawn"), "10 °C"}, water},
      {{"--humidity", "SHARE", TOLD("Terminal", "of the room's air"), "50 %"}, humidity},
      {{"--altitude", "HEIGHT", TOLD("Terminal", "above the sea"), "1600 m"}, altitude},
      {{"--supply-voltage", "VOLTAGE", TOLD("Terminal", "of every rig's supply"), "208 V"},
       supplyVoltage},
      {{"--circuit", "CURRENT", TOLD("Terminal", "every rig's circuit is rated for"), "16 A"},
       circuit},
      {{"--region", "NAME", TOLD("Terminal", "whose electrical rules apply"), "Canada"}, region},
      {{"--rules", "FILE", TOLD("Terminal", "electrical rules of a region of your own"),
        "my-region.json"},
       rulesFile},
      {{"--within", "TIME", TOLD("Terminal", "wanted to strike, and from mash to boil"), "45 min"},
       within},
      {{"--boil-off", "RATE", TOLD("Terminal", "wanted, of the volume before the boil"), "8 %/h"},
       boilOff},
      {{"--headspace", "SHARE", TOLD("Terminal", "of the vessel to keep free"), "10 %"}, headspace},
      {{"--ready", "MOMENT",
        TOLD("Terminal", "to be ready in time; the day then begins when it must"), "boil 11:00"},
       ready},
      {{"--alone", "TIME", TOLD("Terminal", "unplugged at the mash temperature"), "10 h"}, alone}};
  return all;
}

}  // namespace

const std::vector<OverrideKind>& overrideKinds() {
  static const std::vector<OverrideKind> kinds = [] {
    std::vector<OverrideKind> all;
    for (const Known& one : known()) all.push_back(one.kind);
    return all;
  }();
  return kinds;
}

void applyOverrides(const Overrides& overrides, Plan& plan, rigs::Problems& problems) {
  for (const Override& given : overrides) {
    for (const Known& one : known()) {
      if (one.kind.option == given.option) one.apply(given, plan, problems);
    }
  }
}

}  // namespace gui
