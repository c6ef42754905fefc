// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/overrides.hpp"

#include <fmt/format.h>

#include <functional>

#include "physics/air.hpp"
#include "rigs/quantity_text.hpp"

namespace gui {
namespace {

using physics::celsius;
using physics::hours;
using rigs::Plan;

// A quantity within [low, high], or a problem.
template <class Q>
std::optional<Q> quantity(const Override& given, Q low, Q high, std::string_view example,
                          rigs::Problems& problems) {
  const auto read = rigs::parseQuantity<Q>(given.text);
  if (!read) {
    problems.push_back({rigs::Severity::Error, given.option, read.problem});
    return std::nullopt;
  }
  if (*read < low || high < *read) {
    problems.push_back(
        {rigs::Severity::Error, given.option,
         fmt::format("{} was given; {} to {} is accepted, for example {}",
                     rigs::quotedText(given.text), rigs::formatLike(low, given.text),
                     rigs::formatLike(high, given.text), rigs::quotedText(example))});
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
  const auto t = quantity(given, celsius(-20.0), celsius(45.0), "16 C", problems);
  if (!t) return;
  // Grain that was as warm as the room still is.
  if (plan.batch.grain.temperature == plan.place.room) plan.batch.grain.temperature = *t;
  plan.place.room = *t;
}

void water(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const auto t = quantity(given, celsius(1.0), celsius(90.0), "10 C", problems)) {
    plan.place.water = *t;
  }
}

void humidity(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const auto share = quantity(given, 0.0, 1.0, "50 %", problems)) {
    plan.place.relativeHumidity = *share;
  }
}

void altitude(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto height =
      quantity(given, physics::metres(-450.0), physics::metres(5000.0), "1600 m", problems);
  if (!height) return;
  plan.altitude = *height;
  plan.place.pressure = physics::standardAtmosphere(*height).pressure;
}

void supplyVoltage(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto v = quantity(given, physics::volts(12.0), physics::volts(480.0), "208 V", problems);
  if (v) forEachRig(plan, [&](physics::Rig& rig) { rig.supply.nominal = *v; });
}

void circuit(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto i = quantity(given, physics::amperes(1.0), physics::amperes(200.0), "16 A", problems);
  if (!i) return;
  forEachRig(plan, [&](physics::Rig& rig) { rig.supply.rating = *i; });
}

void within(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto t = quantity(given, physics::minutes(1.0), hours(24.0), "45 min", problems);
  if (t) plan.goals.boilWithin = *t;
}

void boilOff(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto rate = quantity(given, rigs::FractionPerTime(0.001 / hours(1.0)),
                             rigs::FractionPerTime(0.5 / hours(1.0)), "8 %/h", problems);
  if (rate) plan.goals.boilOffPerHour = *rate * hours(1.0);
}

void headspace(const Override& given, Plan& plan, rigs::Problems& problems) {
  if (const auto share = quantity(given, 0.0, 0.9, "10 %", problems)) {
    plan.goals.headspace = *share;
  }
}

void alone(const Override& given, Plan& plan, rigs::Problems& problems) {
  const auto t = quantity(given, physics::minutes(1.0), hours(48.0), "10 h", problems);
  if (t) plan.goals.unplugged = *t;
}

struct Known {
  OverrideKind kind;
  void (*apply)(const Override&, Plan&, rigs::Problems&);
};
const std::vector<Known>& known() {
  static const std::vector<Known> all{
      {{"--room", "TEMPERATURE", "of the room", "16 °C"}, room},
      {{"--water", "TEMPERATURE", "of the water as drawn", "10 °C"}, water},
      {{"--humidity", "SHARE", "of the room's air", "50 %"}, humidity},
      {{"--altitude", "HEIGHT", "above the sea", "1600 m"}, altitude},
      {{"--supply-voltage", "VOLTAGE", "of every rig's supply", "208 V"}, supplyVoltage},
      {{"--circuit", "CURRENT", "every rig's circuit is rated for", "16 A"}, circuit},
      {{"--within", "TIME", "wanted to strike, and from mash to boil", "45 min"}, within},
      {{"--boil-off", "RATE", "wanted, of the volume before the boil", "8 %/h"}, boilOff},
      {{"--headspace", "SHARE", "of the vessel to keep free", "10 %"}, headspace},
      {{"--alone", "TIME", "unplugged at the mash temperature", "10 h"}, alone}};
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
