// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/element_skin.hpp"

#include <algorithm>
#include <variant>
#include <vector>

#include "rigs/answers/day_figures.hpp"

namespace rigs {
namespace {

using physics::HeatFlux;

// Of what the elements of one circuit deliver together, each by its resistance.
double shareOf(const CircuitPlan& circuit, std::size_t which) {
  const auto weight = [&](std::size_t i) {
    const auto r = physics::resistance(circuit.elements[i]);
    const double ohms = static_cast<double>(r / physics::ohms(1.0));
    return circuit.wiring == physics::Wiring::Series ? ohms : 1.0 / ohms;
  };
  double all = 0.0;
  for (std::size_t i = 0; i < circuit.elements.size(); ++i) all += weight(i);
  return weight(which) / all;
}

struct Loaded {
  HeatFlux flux;
  physics::Length diameter;
};

// The element with most heat through its skin.
std::optional<Loaded> mostLoaded(const RigPlan& rig) {
  std::optional<Loaded> most;
  const std::vector<physics::Feed> feeds = feedsOf(rig.rig);
  for (std::size_t c = 0; c < std::min(feeds.size(), rig.circuits.size()); ++c) {
    const CircuitPlan& circuit = rig.circuits[c];
    const physics::Feed& feed = feeds[c];
    const physics::Power delivered = physics::electricalLoad(feed.element, feed.supply).delivered;
    for (std::size_t i = 0; i < circuit.elements.size(); ++i) {
      const auto& rod = circuit.elements[i].rod;
      if (!rod) continue;
      const Loaded one{.flux = shareOf(circuit, i) * delivered / rod->surface(),
                       .diameter = rod->diameter};
      if (!most || one.flux > most->flux) most = one;
    }
  }
  return most;
}

// As it is when heat first goes through an element into it: of an unplugged mash when the water is
// ready, of one that is held at its first rest.
physics::Temperature mashOf(const physics::Batch& batch, physics::Temperature boils) {
  if (!batch.mashes()) return boils;
  if (const auto* left = std::get_if<physics::UnpluggedMash>(&batch.mash))
    return std::min(left->start, boils);
  const auto& rests = std::get<physics::HeldMash>(batch.mash).rests;
  return rests.empty() ? boils : std::min(rests.front().temperature, boils);
}

}  // namespace

std::optional<ElementSkin> elementSkin(const Plan& plan, const RigPlan& rig,
                                       const RigAnswer& answer) {
  const auto loaded = mostLoaded(rig);
  if (!loaded) return std::nullopt;
  const physics::Pressure pressure = plan.place.pressure;
  const physics::Temperature boils = answer.day.boilingPoint;
  const physics::Temperature mash = mashOf(plan.batch, boils);
  const bool heatsTheMash =
      plan.batch.mashes() && std::holds_alternative<physics::HeldMash>(plan.batch.mash);
  const auto [flux, diameter] = *loaded;
  const physics::Temperature inStillMash = physics::skinInStillMash(flux, mash, pressure, boils);
  return ElementSkin{
      .flux = flux,
      .mostInPractice = heatsTheMash ? physics::kMashFluxInPractice : physics::kBoilFluxInPractice,
      .sizzlesFrom = physics::sizzlesFrom(flux, diameter, pressure),
      .mash = mash,
      .inStillWater = physics::skinInStillWater(flux, mash, diameter, pressure, boils),
      .inStillMash = inStillMash,
      .boilsInStillMash = inStillMash > boils,
      .heatsTheMash = heatsTheMash};
}

}  // namespace rigs
