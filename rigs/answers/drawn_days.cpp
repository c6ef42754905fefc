// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/drawn_days.hpp"

#include <algorithm>
#include <cassert>

#include "rigs/answers/even_points.hpp"

namespace rigs {

using namespace physics;

namespace {

// Of what its lid lets out all round; a lid that is left open is as open as it was stated.
void scaleGap(LidUse& open, double factor) {
  for (double* share : {&open.strike, &open.mash, &open.heating, &open.boil})
    if (*share <= kLoosestRimGap) *share = std::min(1.0, factor * *share);
}

// However cold or hot the plan's own water is.
Temperature liquid(Temperature water, Temperature planned) {
  constexpr Temperature kColdest = celsius(0.1);
  constexpr Temperature kHottest = celsius(70.0);  // boils nowhere that people brew
  return std::clamp(water, std::min(kColdest, planned), std::max(kHottest, planned));
}

}  // namespace

UnknownValues asPlannedValues() {
  UnknownValues values{};
  for (std::size_t k = 0; k < kUnknowns; ++k)
    values[k] = isOffset(static_cast<Unknown>(k)) ? 0.0 : 1.0;
  return values;
}

UnknownValues medianValues(const Priors& priors) {
  UnknownValues values{};
  for (std::size_t k = 0; k < kUnknowns; ++k) values[k] = priors[k].median;
  return values;
}

Volume waterPlanned(const Plan& plan, std::size_t rig) {
  return physics::simulate(plan.rigs[rig].rig, plan.batch, plan.place, kForBands).water;
}

DrawnDay dayWith(const Plan& plan, std::size_t rig, Volume water, const UnknownValues& values) {
  const auto value = [&](Unknown what) { return values[placeOf(what)]; };
  DrawnDay day{plan.rigs[rig].rig, plan.batch, plan.place};
  day.rig.lossFactor *= value(Unknown::ClosedLosses);
  day.rig.evaporationFactor *= value(Unknown::OpenSurface);
  day.batch.size = PouredWater{value(Unknown::Amount) * water};
  day.batch.grain.mass *= value(Unknown::Amount);
  day.rig.element.rating *= value(Unknown::Power);
  if (day.rig.second) day.rig.second->element.rating *= value(Unknown::Power);
  day.place.room += kelvins(value(Unknown::Room));
  day.place.water = liquid(day.place.water + kelvins(value(Unknown::Water)), plan.place.water);
  scaleGap(day.rig.vessel.open, value(Unknown::RimGap));
  day.batch.absorption *= value(Unknown::Absorption);
  return day;
}

BrewDay simulate(const DrawnDay& day, const SimulationOptions& options) {
  return physics::simulate(day.rig, day.batch, day.place, options);
}

DaysOfARig::DaysOfARig(const Plan& plan, std::size_t rig)
    : plan_(plan), rig_(rig), water_(waterPlanned(plan, rig)), priors_(priorsOf(plan.rigs[rig])) {}

UnknownValues DaysOfARig::valuesAt(const std::vector<double>& point) const {
  assert(point.size() >= kUnknowns);
  UnknownValues values{};
  for (std::size_t k = 0; k < kUnknowns; ++k) values[k] = priors_[k].at(normalQuantile(point[k]));
  return values;
}

}  // namespace rigs
