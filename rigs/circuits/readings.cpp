// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/readings.hpp"

#include <algorithm>

#include "rigs/circuits/rating.hpp"

namespace rigs {

using namespace physics;

Counts countsAsLong(const LongUse& rule, const Duty& duty) {
  // "3 h or more" without a break, but "more than 1 h" within a longer stretch.
  const auto lasts = [&](Time t) { return rule.within ? t > rule.lasts : t >= rule.lasts; };
  if (lasts(rule.within ? duty.mostCurrentWithin(*rule.within) : duty.longestFull()))
    return Counts::Yes;
  if (lasts(rule.within ? duty.mostEnabledWithin(*rule.within) : duty.longestEnabled()))
    return Counts::Perhaps;
  return Counts::No;
}

std::vector<Reading> readingsOf(const CircuitRules& rules, const CircuitDetails& details,
                                const Supply& supply) {
  const Outlet* outlet = details.outlet.empty() ? nullptr : rules.outlet(details.outlet);
  const Current other = details.beside(supply.nominal);
  const Current rating = supply.rating;
  Current whole = rating - other;
  if (outlet) whole = std::min(whole, outlet->current);
  if (outlet && outlet->bothSockets) whole = std::min(whole, *outlet->bothSockets - other);
  const Told widest(other > amperes(0.0)
                        ? Template<0>(TOLD("Phrases", "what the other loads leave of the circuit"))
                        : Template<0>(TOLD("Phrases", "the circuit's whole rating")));
  const Guard guard = guardOf(rules, details, rating);
  std::vector<Reading> all{{widest, whole,
                            guard.fuse    ? guard.fuse->cite
                            : guard.fused ? Cite{}
                                          : rules.breakers.cite}};
  const auto add = [&](Told name, Current limit, const Cite& cite) {
    all.push_back({std::move(name), std::min(limit, whole), cite});
  };
  for (const LongUse& rule : rules.longUse)
    add(Told(TOLD("Phrases", "counted as %1"), fromRules(rule.name)), rule.share * (rating - other),
        rule.cite);
  if (details.feeds != Feeds::OneOutlet) {
    for (const SharedUse& rule : rules.shared)
      if (within(rating, rule.upTo))
        add(Told::just(fromRules(rule.name)), rule.share * rating, rule.cite);
    for (const OutletLoad& row : rules.outletLoads)
      if (outlet && row.circuit == rating && row.outlet == outlet->current)
        add(Told(TOLD("Phrases", "outlet among several on a circuit")), row.most, row.cite);
  }
  const bool household = outlet ? outlet->household : within(rating, amperes(16.0));
  if (rules.householdSockets && household && within(rules.householdSockets->moreThan, whole))
    add(Told(TOLD("Phrases", "a household socket for hours")), rules.householdSockets->moreThan,
        rules.householdSockets->cite);
  std::stable_sort(all.begin(), all.end(),
                   [](const Reading& a, const Reading& b) { return a.limit > b.limit; });
  return all;
}

Current allowedLeakage(const Leakage& leakage, Power power) {
  const Current byPower = inWatts(power) / 1000.0 * leakage.perKilowatt;
  return std::clamp(byPower, leakage.atLeast, leakage.atMost);
}

}  // namespace rigs
