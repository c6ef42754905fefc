// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuit_answer.hpp"

#include <algorithm>

#include "rigs/figures.hpp"
#include "rigs/quantity_text.hpp"

namespace rigs {

using namespace physics;

namespace {

const CircuitDetails& detailsOf(const RigPlan& rig, std::size_t circuit) {
  static const CircuitDetails kNone;
  return circuit < rig.circuits.size() ? rig.circuits[circuit].details : kNone;
}

CircuitLoad loadOf(const Plan& plan, const RigPlan& rig, std::size_t circuit, const Feed& feed,
                   const Duty& duty) {
  CircuitLoad load{.element = feed.element,
                   .supply = feed.supply,
                   .load = electricalLoad(feed.element, feed.supply),
                   .hot = resistance(feed.element),
                   .cold = coldResistance(feed.element),
                   .mean = amperes(0.0),
                   .verdicts = {}};
  load.mean = duty.mean() * load.load.current;
  const CircuitDetails& details = detailsOf(rig, circuit);
  for (const CircuitRules* rules : rulesFor(plan.region, details)) {
    load.verdicts.push_back(
        judge(*rules, details, {.element = feed.element, .supply = feed.supply, .duty = duty}));
  }
  return load;
}

std::optional<Time> heatingTime(const BrewDay& day) {
  return timeOf(day, StageKind::HeatingToBoil);
}

// Enough for times that are read in minutes.
constexpr SimulationOptions kCoarse{.curves = false, .relativeTolerance = 1e-7};

// A current that an outlet or a reading allows, and the cable can bring.
bool reachable(const Supply& supply, Current limit) {
  return supply.nominal / limit > supply.cableLoop;
}

std::vector<ReadingDay> readingDays(const Plan& plan, const RigPlan& rig,
                                    const CircuitLoad& first) {
  std::vector<ReadingDay> days;
  const CircuitDetails& details = detailsOf(rig, 0);
  for (const CircuitRules* rules : rulesFor(plan.region, details)) {
    for (const Reading& reading : readingsOf(*rules, details, first.supply.rating)) {
      Supply limited = first.supply;
      limited.rating = reading.limit;
      if (details.pump) limited.rating -= *details.pump / details.pumpAt;
      if (limited.rating <= amperes(0.1) || !reachable(limited, limited.rating)) continue;
      Rig filled = rig.rig;
      filled.element = largestElementOn(limited, rig.rig.element.topHeight);
      const BrewDay day = simulate(filled, plan.batch, plan.place, kCoarse);
      days.push_back({.region = rules->region,
                      .reading = reading,
                      .largest = filled.element,
                      .delivered = electricalLoad(filled).delivered,
                      .outcome = day.outcome,
                      .toBoil = heatingTime(day),
                      .day = day.duration(),
                      .fits = first.load.current <= (1.0 + 1e-9) * limited.rating});
    }
  }
  return days;
}

std::optional<Split> splitOf(const Plan& plan, const RigPlan& rig, const CircuitLoad& first,
                             const std::vector<ReadingDay>& readings, const Duty& duty) {
  if (rig.rig.second || first.verdicts.empty()) return std::nullopt;
  const Element half = rated(first.element, 0.5 * first.element.rating);
  Split split{.each = half.rating,
              .current = electricalLoad(half, first.supply).current,
              .fits = {},
              .largestTogether = watts(0.0),
              .toBoil = {},
              .day = seconds(0.0)};
  for (const CircuitVerdict& verdict : first.verdicts) {
    split.fits.push_back(judge(*verdict.rules, detailsOf(rig, 0),
                               {.element = half, .supply = first.supply, .duty = duty})
                             .overall);
  }
  if (readings.empty()) return split;
  const auto strictest = std::min_element(
      readings.begin(), readings.end(),
      [](const auto& a, const auto& b) { return a.reading.limit < b.reading.limit; });
  Rig two = rig.rig;
  two.element = strictest->largest;
  two.second = Feed{.element = strictest->largest, .supply = rig.rig.supply};
  const BrewDay day = simulate(two, plan.batch, plan.place, kCoarse);
  split.largestTogether = electricalLoad(two).delivered;
  split.toBoil = heatingTime(day);
  split.day = day.duration();
  return split;
}

}  // namespace

Fit CircuitAnswer::overall() const {
  Fit worst = Fit::Fits;
  for (const CircuitLoad& circuit : circuits) {
    if (circuit.verdicts.empty()) worst = std::max(worst, Fit::CannotSay);
    for (const CircuitVerdict& verdict : circuit.verdicts) worst = std::max(worst, verdict.overall);
  }
  return worst;
}

CircuitAnswer circuitAnswer(const Plan& plan, const RigPlan& rig, const BrewDay& day,
                            bool inverse) {
  CircuitAnswer answer;
  answer.duty = dutyOf(day);
  answer.circuits.push_back(
      loadOf(plan, rig, 0, {.element = rig.rig.element, .supply = rig.rig.supply}, answer.duty));
  if (rig.rig.second) answer.circuits.push_back(loadOf(plan, rig, 1, *rig.rig.second, answer.duty));
  if (!inverse) return answer;
  Rig direct = rig.rig;
  direct.supply.cableLoop = ohms(0.0);
  if (direct.second) direct.second->supply.cableLoop = ohms(0.0);
  const auto with = heatingTime(day);
  const auto without = heatingTime(simulate(direct, plan.batch, plan.place, kCoarse));
  if (with && without) answer.addedByCable = *with - *without;
  answer.readings = readingDays(plan, rig, answer.circuits.front());
  answer.split = splitOf(plan, rig, answer.circuits.front(), answer.readings, answer.duty);
  return answer;
}

namespace {

std::string listedVoltages(const CircuitRules& rules) {
  std::string all;
  for (const VoltageRange& range : rules.voltages) {
    const std::string text = format(range.nominal, UnitSystem::SI);
    if (all.find(text) == std::string::npos) all += (all.empty() ? "" : ", ") + text;
  }
  return all;
}

void checkCircuit(const CircuitDetails& details, const Supply& supply, const CircuitRules& rules,
                  const std::string& supplyAt, const std::string& cableAt, Problems& problems) {
  if (rules.rangesOf(supply.nominal).empty())
    problems.push_back({Severity::Error, supplyAt + "/voltage",
                        format(supply.nominal, UnitSystem::SI) + " is no supply voltage of " +
                            rules.region + "; there it is " + listedVoltages(rules)});
  if (!details.outlet.empty() && !rules.outlet(details.outlet)) {
    std::string names;
    for (const Outlet& outlet : rules.outlets)
      names += (names.empty() ? "\"" : ", \"") + outlet.name + '"';
    problems.push_back({Severity::Error, supplyAt + "/outlet",
                        quotedText(details.outlet) + " is no outlet of " + rules.region +
                            "; write one of " + names});
  }
  if (!details.cable || rules.conductors.empty()) return;
  std::string nearest;
  if (ampacity(rules, *details.cable, nearest)) return;
  problems.push_back({Severity::Error, cableAt + "/conductor",
                      "no table for " + rules.region + " has this conductor at this length" +
                          (nearest.empty() ? std::string() : "; the nearest size is " + nearest)});
}

}  // namespace

void checkCircuits(const Plan& plan, Problems& problems) {
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    const RigPlan& rig = plan.rigs[i];
    const std::string at = "/rigs/" + std::to_string(i);
    const auto check = [&](std::size_t circuit, const Supply& supply, const std::string& supplyAt,
                           const std::string& cableAt) {
      const CircuitDetails& details = detailsOf(rig, circuit);
      const auto all = rulesFor(plan.region, details);
      // Of several sets of rules that may apply, one that knows all of it is enough; and a voltage
      // is held against a region only where somebody named the region.
      if (all.empty() || (plan.region.empty() && all.front()->rangesOf(supply.nominal).empty()))
        return;
      Problems least;
      for (std::size_t k = 0; k < all.size(); ++k) {
        Problems one;
        checkCircuit(details, supply, *all[k], supplyAt, cableAt, one);
        if (k == 0 || one.size() < least.size()) least = one;
      }
      problems.insert(problems.end(), least.begin(), least.end());
    };
    check(0, rig.rig.supply, at + "/supply", at + "/cable");
    if (rig.rig.second)
      check(1, rig.rig.second->supply, at + "/second_supply", at + "/second_cable");
  }
}

}  // namespace rigs
