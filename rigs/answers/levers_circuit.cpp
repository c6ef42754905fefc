// SPDX-License-Identifier: GPL-3.0-or-later
// Levers that touch current: another element, another circuit of the region, a second of each.
#include <algorithm>
#include <utility>

#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/levers.hpp"
#include "rigs/answers/long_use.hpp"
#include "rigs/answers/nameplate.hpp"
#include "rigs/circuits/readings.hpp"
#include "rigs/plans/catalogue.hpp"

namespace rigs {
namespace {

using namespace physics;

using levers::onEach;

// What such elements are rated at: on 208 V, between two phases, those made for 240 V are used.
Voltage soldFor(Voltage nominal) {
  const bool twoPhases = std::abs(inVolts(nominal) - 208.0) < 1.0;
  return twoPhases ? volts(240.0) : nominal;
}

Element elementOf(double rating, const Supply& supply, Length top) {
  return {.rating = watts(rating), .ratedAt = soldFor(supply.nominal), .topHeight = top};
}

// The least that any rule that applies leaves, as the strictest reads it.
Current strictestLimit(const Plan& plan, const CircuitDetails& details, const Supply& supply,
                       double share) {
  const Current left = supply.rating - details.beside(supply.nominal);
  Current least = std::min(share, shareGrantedBy(rulesFor(plan, details))) * left;
  for (const CircuitRules* rules : rulesFor(plan, details))
    for (const Reading& reading : readingsOf(*rules, details, supply))
      least = std::min(least, reading.limit);
  if (details.pump) least -= *details.pump / details.pumpAt;
  return least;
}

void putIn(Plan& plan, std::size_t i, const Element& element) {
  RigPlan& rig = plan.rigs[i];
  onEach(rig, [&](Rig& one) { one.element = element; });
  if (rig.circuits.empty()) return;
  rig.circuits.front().elements = {element};
  rig.circuits.front().wiring = Wiring::Parallel;
}

// Why name plates forbid what the plan would then be; nothing where they do not.
Told forbiddenBy(const Plan& plan, std::size_t i) {
  const RigPlan& rig = plan.rigs[i];
  for (std::size_t k = 0; k < feedsOf(rig.rig).size(); ++k) {
    const Feed feed = feedsOf(rig.rig)[k];
    if (const auto over = overVoltage(feed.element, feed.supply);
        over && over->severity == Severity::Error)
      return Told(TOLD("Lever", "an element made for %1 must not be fed with %2"),
                  amount(feed.element.ratedAt), amount(feed.supply.nominal));
    const Finding plates = nameplate(plan, rig, k);
    if (plates.fit == Fit::DoesNotFit)
      return Told(TOLD("Lever", "it would draw %1 from a circuit of %2"), amount(*plates.load),
                  amount(*plates.limit));
  }
  return {};
}

void addChecked(const Plan& plan, std::size_t i, Change change, std::vector<Change>& all) {
  change.forbidden = forbiddenBy(rigs::changed(plan, i, {&change}), i);
  const bool known =
      std::any_of(all.begin(), all.end(), [&](const Change& one) { return one.id == change.id; });
  if (!known) all.push_back(std::move(change));
}

Change elementChange(const Element& element, std::optional<double> price) {
  return {.lever = Lever::Element,
          .id = "element-" + formatNumber(inWatts(element.rating)),
          .words = Told(TOLD("Lever", "an element of %1 at %2"), inWholeWatts(element.rating),
                        amount(element.ratedAt)),
          .make = [element](Plan& plan, std::size_t i) { putIn(plan, i, element); },
          .outlay = price ? Outlay::Priced : Outlay::NotKnown,
          .price = price};
}

// The next two steps up and the largest that the circuit is rated for, the first beyond it, which
// is none; and where the strictest reading leaves less than there is, the largest within that.
void addElements(const Plan& plan, std::size_t i, std::vector<Change>& all) {
  const RigPlan& rig = plan.rigs[i];
  const Supply& supply = rig.rig.supply;
  const Length top = rig.rig.element.topHeight;
  const Current now = branchCurrent(rig.rig.element, supply);
  const Current strict = strictestLimit(plan, detailsOf(rig, 0), supply, rig.continuousShare);
  std::vector<double> up;
  std::optional<double> beyond, within_;
  for (const double step : elementSteps()) {
    const Current draws = branchCurrent(elementOf(step, supply, top), supply);
    if (draws > 1.02 * now && within(draws, supply.rating)) up.push_back(step);
    if (draws > 1.02 * now && !within(draws, (1.0 + kSameVoltage) * supply.rating) && !beyond)
      beyond = step;
    if (draws < 0.98 * now && within(draws, strict)) within_ = step;
  }
  std::vector<double> steps;
  if (!within(now, strict) && within_) steps.push_back(*within_);
  for (std::size_t k = 0; k < up.size(); ++k)
    if (k < 2 || k + 1 == up.size()) steps.push_back(up[k]);
  if (beyond) steps.push_back(*beyond);
  for (const double step : steps)
    addChecked(plan, i, elementChange(elementOf(step, supply, top), plan.tariff.elementPrice), all);
}

bool isOfTheRegion(const Plan& plan, const CircuitDetails& details, const rigs::Circuit& circuit) {
  if (!details.circuitRegion.empty()) return circuit.region == details.circuitRegion;
  for (const CircuitRules* rules : rulesFor(plan, details))
    if (std::find(rules->circuitsOf.begin(), rules->circuitsOf.end(), circuit.region) !=
        rules->circuitsOf.end())
      return true;
  return false;
}

// The cable is as long as today's and thicker as its circuit is larger; what else hangs on the
// other circuit, nobody has said.
void moveTo(Plan& plan, std::size_t i, const rigs::Circuit& circuit) {
  RigPlan& rig = plan.rigs[i];
  const double larger = std::max(1.0, static_cast<double>(circuit.current / rig.rig.supply.rating));
  onEach(rig, [&](Rig& one) {
    one.supply = {.nominal = circuit.voltage,
                  .rating = circuit.current,
                  .cableLoop = one.supply.cableLoop / larger};
  });
  rig.circuit = circuit.name;
  rig.continuousShare = 1.0;
  if (rig.circuits.empty()) return;
  CircuitDetails& details = rig.circuits.front().details;
  details.circuitRegion = circuit.region;
  details.fuse = circuit.fuse;
  details.outlet.clear();
  details.feeds = Feeds::NotStated;
  details.otherLoad.reset();
  details.cable.reset();
  if (details.run) details.run->area *= larger;
  rig.circuits.front().continuousShare = 1.0;
}

std::string idOf(const rigs::Circuit& circuit) {
  return "circuit-" + formatNumber(inVolts(circuit.voltage)) + "-V-" +
         formatNumber(inAmperes(circuit.current)) + "-A";
}

// The same element where the voltage is the same and the circuit larger; and the largest element
// that the strictest reading leaves, where that is more than there is.
void addOtherCircuits(const Plan& plan, std::size_t i, std::vector<Change>& all) {
  const RigPlan& rig = plan.rigs[i];
  const Supply& now = rig.rig.supply;
  for (const rigs::Circuit& circuit : catalogue().circuits) {
    if (!isOfTheRegion(plan, detailsOf(rig, 0), circuit)) continue;
    const bool sameVoltage =
        std::abs(static_cast<double>(circuit.voltage / now.nominal) - 1.0) < kSameVoltage;
    if (sameVoltage && circuit.current <= now.rating) continue;
    const auto move = [circuit](Plan& to, std::size_t rig_) { moveTo(to, rig_, circuit); };
    if (sameVoltage)
      addChecked(plan, i,
                 {.lever = Lever::Circuit,
                  .id = idOf(circuit),
                  .words = Told(TOLD("Lever", "the same element on a circuit of %1 and %2"),
                                amount(circuit.voltage), amount(circuit.current)),
                  .make = move},
                 all);
    Plan moved = plan;
    moveTo(moved, i, circuit);
    const RigPlan& there = moved.rigs[i];
    const Current limit = strictestLimit(plan, detailsOf(there, 0), there.rig.supply, 1.0);
    std::optional<Element> largest;
    for (const double step : elementSteps()) {
      const Element one = elementOf(step, there.rig.supply, rig.rig.element.topHeight);
      if (within(branchCurrent(one, there.rig.supply), limit)) largest = one;
    }
    if (!largest || ratingAt(*largest, there.rig.supply.nominal) <
                        1.02 * ratingAt(rig.rig.element, now.nominal))
      continue;
    addChecked(plan, i,
               {.lever = Lever::Circuit,
                .id = idOf(circuit) + "-element-" + formatNumber(inWatts(largest->rating)),
                .words = Told(TOLD("Lever", "a circuit of %1 and %2 with an element of %3 at %4"),
                              amount(circuit.voltage), amount(circuit.current),
                              inWholeWatts(largest->rating), amount(largest->ratedAt)),
                .make =
                    [move, element = *largest](Plan& to, std::size_t rig_) {
                      move(to, rig_);
                      putIn(to, rig_, element);
                    }},
               all);
  }
}

void addSecond(const Plan& plan, std::size_t i, std::vector<Change>& all) {
  const RigPlan& rig = plan.rigs[i];
  if (rig.circuits.empty()) return;
  addChecked(
      plan, i,
      {.lever = Lever::SecondElement,
       .id = std::string(leverWord(Lever::SecondElement)),
       .words = Told(TOLD("Lever", "a second element like the first, on a second such circuit")),
       .make =
           [](Plan& to, std::size_t rig_) {
             RigPlan& of = to.rigs[rig_];
             onEach(of, [](Rig& one) {
               one.second = Feed{.element = one.element, .supply = one.supply};
             });
             CircuitPlan second = of.circuits.front();
             second.details.pump.reset();
             second.details.otherLoad.reset();
             second.details.heatsRinse = false;
             second.details.rinseHeater.reset();
             of.circuits.push_back(std::move(second));
           }},
      all);
}

}  // namespace

const std::vector<double>& elementSteps() {
  static const std::vector<double> kSteps{1000, 1200, 1400, 1500, 1650, 1800, 2000, 2200, 2400,
                                          2750, 3000, 3500, 4000, 4500, 5500, 6000, 7000, 9000};
  return kSteps;
}

// With two circuits already, what hangs on which is no single change.
void levers::addElectrical(const Plan& plan, std::size_t rig, std::vector<Change>& all) {
  if (plan.rigs[rig].rig.second) return;
  addElements(plan, rig, all);
  addOtherCircuits(plan, rig, all);
  addSecond(plan, rig, all);
}

}  // namespace rigs
