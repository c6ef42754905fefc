// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/circuit_answer.hpp"

#include <algorithm>
#include <array>
#include <memory>
#include <utility>

#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/long_use.hpp"
#include "rigs/answers/nameplate.hpp"

namespace rigs {

using namespace physics;

namespace {

CircuitLoad loadOf(const Plan& plan, const RigPlan& rig, std::size_t circuit, const Feed& feed,
                   const Duty& duty) {
  CircuitLoad load{.element = feed.element,
                   .supply = feed.supply,
                   .load = electricalLoad(feed.element, feed.supply),
                   .branch = branchCurrent(feed.element, feed.supply),
                   .hot = resistance(feed.element),
                   .cold = coldResistance(feed.element),
                   .mean = amperes(0.0),
                   .nameplate = nameplate(plan, rig, circuit),
                   .granted = {},
                   .verdicts = {}};
  load.mean = duty.mean() * load.load.current;
  const CircuitDetails& details = detailsOf(rig, circuit);
  const auto all = rulesFor(plan, details);
  // What rules grant is in their verdicts.
  if (longUseShare(plan, rig, circuit) < shareGrantedBy(all))
    load.granted = longUseCurrent(plan, rig, circuit);
  for (const CircuitRules* rules : all) {
    load.verdicts.push_back(
        judge(*rules, details, {.element = feed.element, .supply = feed.supply, .duty = duty}));
  }
  return load;
}

// Enough for times that are read in minutes.
constexpr SimulationOptions kCoarse{.curves = false, .relativeTolerance = 1e-7};

// Several readings and regions leave the same amperes: their day is simulated once.
class FilledDays {
 public:
  explicit FilledDays(const Plan& plan) : plan_(plan) {}
  const BrewDay& of(const Rig& filled) {
    for (const auto& [rig, day] : days_)
      if (rig == filled) return *day;
    days_.push_back({filled, std::make_unique<const BrewDay>(
                                 simulate(filled, plan_.batch, plan_.place, kCoarse))});
    return *days_.back().second;
  }

 private:
  const Plan& plan_;
  std::vector<std::pair<Rig, std::unique_ptr<const BrewDay>>> days_;
};

// What a reading leaves for the element; the pump runs beside it.
Supply limitedTo(const Reading& reading, const CircuitDetails& details, const Supply& supply) {
  Supply limited = supply;
  limited.rating = reading.limit;
  if (details.pump) limited.rating -= *details.pump / details.pumpAt;
  return limited;
}
bool leavesSomething(const Supply& limited) { return limited.rating > amperes(0.1); }

std::vector<ReadingDay> readingDays(const Plan& plan, const RigPlan& rig, const CircuitLoad& first,
                                    FilledDays& filledDays) {
  std::vector<ReadingDay> days;
  const CircuitDetails& details = detailsOf(rig, 0);
  for (const CircuitRules* rules : rulesFor(plan, details)) {
    for (const Reading& reading : readingsOf(*rules, details, first.supply)) {
      const Supply limited = limitedTo(reading, details, first.supply);
      if (!leavesSomething(limited)) continue;
      Rig filled = rig.rig;
      filled.element = largestElementOn(limited, rig.rig.element.topHeight);
      const BrewDay& day = filledDays.of(filled);
      days.push_back({.region = rules->region,
                      .reading = reading,
                      .largest = filled.element,
                      .delivered = electricalLoad(filled).delivered,
                      .outcome = day.outcome,
                      .toBoil = timeToBoil(day),
                      .day = day.duration(),
                      .fits = first.branch <= (1.0 + 1e-9) * limited.rating});
    }
  }
  return days;
}

// The circuits that two elements would hang on: the rig's own two, or two like its one.
struct Pair {
  std::array<const CircuitDetails*, 2> details;
  std::array<Supply, 2> supply;
  bool imagined;
};
Pair pairOf(const RigPlan& rig) {
  if (rig.rig.second)
    return {
        {&detailsOf(rig, 0), &detailsOf(rig, 1)}, {rig.rig.supply, rig.rig.second->supply}, false};
  return {{&detailsOf(rig, 0), &detailsOf(rig, 0)}, {rig.rig.supply, rig.rig.supply}, true};
}

// The first of equally strict ones.
const Reading& strictest(const std::vector<Reading>& readings) {
  return *std::min_element(readings.begin(), readings.end(),
                           [](const Reading& a, const Reading& b) { return a.limit < b.limit; });
}

ShortestDay shortestDay(const RigPlan& rig, const Rig& filled, FilledDays& filledDays) {
  const BrewDay& day = filledDays.of(filled);
  ShortestDay shortest;
  shortest.elements.push_back(filled.element);
  if (filled.second) shortest.elements.push_back(filled.second->element);
  shortest.imagined = filled.second && !rig.rig.second;
  shortest.delivered = electricalLoad(filled).delivered;
  shortest.outcome = day.outcome;
  shortest.toBoil = timeToBoil(day);
  shortest.day = day.duration();
  return shortest;
}

// More power never makes a day longer, so the shortest is the largest element's: under the widest
// and under the strictest reading, with one element and with one on each of two circuits.
std::vector<ShortestDay> shortestDays(const Plan& plan, const RigPlan& rig,
                                      FilledDays& filledDays) {
  std::vector<ShortestDay> days;
  const Pair pair = pairOf(rig);
  const Length top = rig.rig.element.topHeight;
  for (const CircuitRules* rules : rulesFor(plan, *pair.details[0])) {
    const auto first = readingsOf(*rules, *pair.details[0], pair.supply[0]);
    const auto second = readingsOf(*rules, *pair.details[1], pair.supply[1]);
    const bool same =
        first.front().limit == first.back().limit && second.front().limit == second.back().limit;
    for (const bool strict : {false, true}) {
      if (strict && same) continue;
      const Reading& one = strict ? strictest(first) : first.front();
      const Reading& two = strict ? strictest(second) : second.front();
      const Supply limitedOne = limitedTo(one, *pair.details[0], pair.supply[0]);
      const Supply limitedTwo = limitedTo(two, *pair.details[1], pair.supply[1]);
      Rig filled = rig.rig;
      filled.second.reset();
      for (const bool both : {false, true}) {
        if (!leavesSomething(limitedOne) || (both && !leavesSomething(limitedTwo))) continue;
        filled.element = largestElementOn(limitedOne, top);
        if (both)
          filled.second =
              Feed{.element = largestElementOn(limitedTwo, top), .supply = pair.supply[1]};
        ShortestDay day = shortestDay(rig, filled, filledDays);
        day.region = rules->region;
        day.reading = one.name;
        day.limits.push_back(limitedOne.rating);
        if (both) day.limits.push_back(limitedTwo.rating);
        days.push_back(std::move(day));
      }
    }
  }
  return days;
}

// Each circuit takes what it may carry under the strictest reading, as a share of what both may.
std::optional<Split> splitOf(const Plan& plan, const RigPlan& rig, const Duty& duty) {
  const Pair pair = pairOf(rig);
  const auto all = rulesFor(plan, *pair.details[0]);
  if (all.empty()) return std::nullopt;
  std::array<Power, 2> carries{};
  Power whole = watts(0.0);  // at the nominal voltages
  for (std::size_t i = 0; i < 2; ++i) {
    Current least = pair.supply[i].rating;
    for (const CircuitRules* rules : all) {
      const Reading strictest = readingsOf(*rules, *pair.details[i], pair.supply[i]).back();
      least = std::min(least, limitedTo(strictest, *pair.details[i], pair.supply[i]).rating);
    }
    if (least <= amperes(0.1)) return std::nullopt;
    carries[i] = least * pair.supply[i].nominal;
  }
  whole = ratingAt(rig.rig.element, rig.rig.supply.nominal);
  if (rig.rig.second) whole += ratingAt(rig.rig.second->element, rig.rig.second->supply.nominal);
  Split split{.parts = {}, .imagined = pair.imagined};
  for (std::size_t i = 0; i < 2; ++i) {
    const double share = static_cast<double>(carries[i] / (carries[0] + carries[1]));
    SplitPart part{.element = {.rating = share * whole,
                               .ratedAt = pair.supply[i].nominal,
                               .topHeight = rig.rig.element.topHeight},
                   .current = amperes(0.0),
                   .verdicts = {}};
    part.current = branchCurrent(part.element, pair.supply[i]);
    for (const CircuitRules* rules : all)
      part.verdicts.push_back(
          judge(*rules, *pair.details[i],
                {.element = part.element, .supply = pair.supply[i], .duty = duty}));
    split.parts.push_back(std::move(part));
  }
  return split;
}

}  // namespace

Fit Split::overall() const {
  Fit worst = Fit::Fits;
  for (const SplitPart& part : parts)
    for (const CircuitVerdict& verdict : part.verdicts) worst = std::max(worst, verdict.overall);
  return worst;
}

Fit worstOf(const CircuitLoad& circuit) {
  if (circuit.verdicts.empty()) return std::max(Fit::CannotSay, circuit.nameplate.fit);
  Fit worst = Fit::Fits;
  for (const CircuitVerdict& verdict : circuit.verdicts) worst = std::max(worst, verdict.overall);
  return worst;
}

Fit CircuitAnswer::overall() const {
  Fit worst = Fit::Fits;
  for (const CircuitLoad& circuit : circuits) worst = std::max(worst, worstOf(circuit));
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
  const auto with = timeToBoil(day);
  const auto without = timeToBoil(simulate(direct, plan.batch, plan.place, kCoarse));
  if (with && without) answer.addedByCable = *with - *without;
  FilledDays filledDays(plan);
  answer.readings = readingDays(plan, rig, answer.circuits.front(), filledDays);
  answer.shortest = shortestDays(plan, rig, filledDays);
  answer.split = splitOf(plan, rig, answer.duty);
  return answer;
}

}  // namespace rigs
