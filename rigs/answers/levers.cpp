// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/levers.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <variant>

#include "physics/sizing.hpp"
#include "physics/vessel.hpp"
#include "physics/walls.hpp"
#include "rigs/plans/catalogue.hpp"

namespace rigs {
namespace {

using namespace physics;

// In the order of the enumerators.
constexpr std::array<std::string_view, 14> kLeverWords{"lid-in-boil", "lid-while-heating",
                                                       "side-jacket", "lid-jacket",
                                                       "base-jacket", "finish",
                                                       "stand",       "water",
                                                       "batch-size",  "boil-power",
                                                       "element",     "circuit",
                                                       "second",      "start"};

std::string numberedId(Lever lever, double number) {
  return std::string(leverWord(lever)) + '-' + formatNumber(std::round(number));
}

using levers::onEach;

Amount percentOf(double share) { return amount(share, {.significantDigits = 2, .decimals = 0}); }

// --- Lids.

// Never less: the lid of a boil is never shut.
constexpr std::array kOpenInBoil{0.5, 0.35, 0.25};

void addLids(const RigPlan& rig, std::vector<Change>& all) {
  const LidUse& open = rig.rig.vessel.open;
  const Outlay outlay = rig.hasLid ? Outlay::Nothing : Outlay::NotKnown;
  for (const double share : kOpenInBoil) {
    if (share > open.boil - 0.05) continue;
    all.push_back({.lever = Lever::LidInBoil,
                   .id = numberedId(Lever::LidInBoil, 100.0 * share),
                   .words = Told(TOLD("Lever", "the lid over the boil, %1 of the mouth open"),
                                 percentOf(share)),
                   .make =
                       [share](Plan& plan, std::size_t i) {
                         plan.rigs[i].hasLid = true;
                         onEach(plan.rigs[i], [&](Rig& one) { one.vessel.open.boil = share; });
                       },
                   .outlay = outlay});
  }
  const double loosest = std::max({open.strike, open.mash, open.heating});
  if (loosest < 0.1) return;
  all.push_back({.lever = Lever::LidWhileHeating,
                 .id = std::string(leverWord(Lever::LidWhileHeating)),
                 .words = Told(TOLD("Lever", "the lid on until the boil begins")),
                 .make =
                     [](Plan& plan, std::size_t i) {
                       plan.rigs[i].hasLid = true;
                       onEach(plan.rigs[i], [](Rig& one) {
                         LidUse& use = one.vessel.open;
                         for (double* share : {&use.strike, &use.mash, &use.heating})
                           *share = std::min(*share, kRimGap);
                       });
                     },
                 .outlay = outlay});
}

// --- Jackets.

struct Stuff {
  ThermalConductivity conductivity;
  double emissivity = 0.9;
  std::string name;
};
// That of the jacket to compare, where it is one layer of a material of the catalogue.
Stuff jacketStuff(const RigPlan& rig) {
  const Material* material = nullptr;
  for (const FaceText& face : rig.jacket.faces)
    if (face.layers.size() == 1) material = catalogue().material(face.layers.front().material);
  if (!material) material = catalogue().material("closed-cell rubber foam");
  return {material->conductivity, material->finishes.front().emissivity, material->name};
}

struct JacketedFace {
  Lever lever;
  Covering Vessel::*covering;
  // Whole sentences for each: other languages inflect.
  Template<2> bare, more;
  std::string_view where;  // as a jacket's text has it
};
const std::array<JacketedFace, 3>& jacketedFaces() {
  static const std::array<JacketedFace, 3> kFaces{
      JacketedFace{Lever::SideJacket, &Vessel::side, TOLD("Lever", "%1 of %2 around the side"),
                   TOLD("Lever", "%1 more around the side, of %2"), "side"},
      JacketedFace{Lever::LidJacket, &Vessel::lid, TOLD("Lever", "%1 of %2 on the lid"),
                   TOLD("Lever", "%1 more on the lid, of %2"), "lid"},
      JacketedFace{Lever::BaseJacket, &Vessel::base, TOLD("Lever", "%1 of %2 under the base"),
                   TOLD("Lever", "%1 more under the base, of %2"), "base"}};
  return kFaces;
}

bool wears(const RigPlan& rig, std::string_view where) {
  return rig.hasJacket && std::any_of(rig.jacket.faces.begin(), rig.jacket.faces.end(),
                                      [&](const FaceText& face) { return face.where == where; });
}

// Usual thicknesses of sheets.
std::vector<double> thicknessesOf(Lever lever) {
  if (lever == Lever::SideJacket) return {10.0, 25.0};
  return {20.0};
}

void addJackets(const Plan& plan, const RigPlan& rig, std::vector<Change>& all) {
  const Stuff stuff = jacketStuff(rig);
  const auto price = plan.tariff.jacketPrice;
  for (const JacketedFace& face : jacketedFaces()) {
    // A lid that is never there keeps nothing warm; what stands on a board has no air below.
    if (face.lever == Lever::LidJacket && !rig.hasLid) continue;
    if (face.lever == Lever::BaseJacket && !rig.rig.vessel.support.onLegs) continue;
    for (const double millimetre : thicknessesOf(face.lever)) {
      const Length thick = millimetres(millimetre);
      const Layer layer = layerOf(thick, stuff.conductivity);
      all.push_back({.lever = face.lever,
                     .id = numberedId(face.lever, millimetre),
                     .words = Told(wears(rig, face.where) ? face.more : face.bare, amount(thick),
                                   Bundled{"Catalogue", stuff.name}),
                     .make =
                         [layer, covering = face.covering, emissivity = stuff.emissivity](
                             Plan& to, std::size_t i) {
                           Covering& on = to.rigs[i].rig.vessel.*covering;
                           on.insulation.push_back(layer);
                           on.emissivity = emissivity;
                         },
                     .outlay = price ? Outlay::Priced : Outlay::NotKnown,
                     .price = price});
    }
  }
}

// --- Metal, stand, water.

const Material* metalOf(const Vessel& vessel) {
  for (const Material& one : catalogue().materials)
    if (one.isFor(Use::Vessel) && one.conductivity == vessel.wallConductivity &&
        one.specificHeat == vessel.specificHeat)
      return &one;
  return nullptr;
}

void addFinish(const RigPlan& rig, std::vector<Change>& all) {
  const Vessel& vessel = rig.rig.vessel;
  const Material* metal = metalOf(vessel);
  const rigs::Finish* bright = metal ? metal->finish("bright") : nullptr;
  if (!bright || wears(rig, "side") || vessel.side.emissivity < bright->emissivity + 0.05) return;
  all.push_back({.lever = Lever::Finish,
                 .id = "finish-bright",
                 .words = Told(TOLD("Lever", "the bare metal polished bright")),
                 // What a jacket covers stays as dark as the jacket is.
                 .make = [before = vessel.side.emissivity, after = bright->emissivity](
                             Plan& plan, std::size_t i) {
                   onEach(plan.rigs[i], [&](Rig& one) {
                     for (Covering* face : {&one.vessel.side, &one.vessel.base, &one.vessel.lid})
                       if (face->emissivity == before) face->emissivity = after;
                   });
                 }});
}

void addStand(const RigPlan& rig, std::vector<Change>& all) {
  const Support& stands = rig.rig.vessel.support;
  if (!stands.onLegs)
    all.push_back({.lever = Lever::Stand,
                   .id = "stand-legs",
                   .words = Told(TOLD("Lever", "the kettle on legs, with air beneath")),
                   .make = [](Plan& plan, std::size_t i) {
                     onEach(plan.rigs[i], [](Rig& one) { one.vessel.support = {}; });
                   }});
  const Material& cork = *catalogue().material("cork");
  const Length thick = millimetres(20.0);
  // On legs a board must lie on something: the table that most kettles stand on.
  const Support below = stands.onLegs ? onTable(rig.rig.vessel.innerDiameter, millimetres(25.0),
                                                catalogue().material("plywood")->conductivity)
                                      : stands;
  const std::vector<Layer> board{layerOf(thick, cork.conductivity)};
  const Support after{.onLegs = false, .solid = below.solid + flatInsulance(board)};
  all.push_back({.lever = Lever::Stand,
                 .id = "stand-board",
                 .words = Told(TOLD("Lever", "the kettle on a table, %1 of %2 under it"),
                               amount(thick), Bundled{"Catalogue", cork.name}),
                 .make = [after](Plan& plan, std::size_t i) {
                   onEach(plan.rigs[i], [&](Rig& one) { one.vessel.support = after; });
                 }});
}

// Warm from a household's tap, and as hot as taps are.
constexpr std::array kWarmWater{40.0, 55.0};

void addWater(const Plan& plan, const BrewDay& today, std::vector<Change>& all) {
  const bool mashes = plan.batch.mashes();
  for (const double degrees : kWarmWater) {
    const Temperature water = celsius(degrees);
    if (water < plan.place.water + kelvins(5.0)) continue;
    if (mashes && water > today.strike - kelvins(5.0)) continue;
    all.push_back({.lever = Lever::Water,
                   .id = numberedId(Lever::Water, degrees),
                   .words = Told(TOLD("Lever", "water of %1 from the tap"), amount(water)),
                   .make = [water](Plan& to, std::size_t) { to.place.water = water; },
                   .outlay = Outlay::Nothing});
  }
}

// --- The batch and how it is boiled.

constexpr std::array kBatchSizes{0.75, 0.9, 1.15};

void addBatchSizes(const Plan& plan, std::vector<Change>& all) {
  for (const double factor : kBatchSizes) {
    const bool poured = std::holds_alternative<PouredWater>(plan.batch.size);
    const Amount then = amount(factor * statedVolume(plan.batch));
    const Template<1> text =
        poured ? Template<1>(TOLD("Lever", "a batch of %1 of water, and grain in proportion"))
               : Template<1>(TOLD("Lever", "a batch of %1, and grain in proportion"));
    all.push_back({.lever = Lever::BatchSize,
                   .id = numberedId(Lever::BatchSize, 100.0 * factor),
                   .words = Told(text, then),
                   .make = [factor](Plan& to, std::size_t) { to.batch = scaled(to.batch, factor); },
                   .outlay = Outlay::Nothing});
  }
}

constexpr std::array kBoilPowers{1.0, 0.8, 0.6};

void addBoilPowers(const RigPlan& rig, std::vector<Change>& all) {
  for (const double share : kBoilPowers) {
    if (std::abs(share - rig.rig.boilPower) < 0.05) continue;
    all.push_back({.lever = Lever::BoilPower,
                   .id = numberedId(Lever::BoilPower, 100.0 * share),
                   .words = Told(TOLD("Lever", "%1 of the power in the boil"), percentOf(share)),
                   .make =
                       [share](Plan& plan, std::size_t i) {
                         onEach(plan.rigs[i], [&](Rig& one) { one.boilPower = share; });
                       },
                   .outlay = Outlay::Nothing});
  }
}

void addStart(const Plan& plan, const BrewDay& today, std::vector<Change>& all) {
  const auto choice = cheapestStart(today, plan.tariff);
  if (plan.ready || !choice || choice->cheapest.at == plan.startOfDay) return;
  const Time at = choice->cheapest.at;
  all.push_back({.lever = Lever::Start,
                 .id = numberedId(Lever::Start, inMinutes(at)),
                 .words = Told(TOLD("Lever", "the day begun at %1"), Clock{at}),
                 .make = [at](Plan& to, std::size_t) { to.startOfDay = at; },
                 .outlay = Outlay::Nothing});
}

}  // namespace

std::string_view leverWord(Lever lever) { return kLeverWords[static_cast<std::size_t>(lever)]; }

bool touchesCircuit(Lever lever) {
  return lever == Lever::Element || lever == Lever::Circuit || lever == Lever::SecondElement;
}

std::size_t groupOf(Lever lever) {
  if (touchesCircuit(lever)) return static_cast<std::size_t>(Lever::Element);
  return lever == Lever::Start ? kLeverGroups - 1 : static_cast<std::size_t>(lever);
}

std::vector<Change> changesOf(const Plan& plan, std::size_t i, const BrewDay& today) {
  const RigPlan& rig = plan.rigs[i];
  std::vector<Change> all;
  addLids(rig, all);
  addJackets(plan, rig, all);
  addFinish(rig, all);
  addStand(rig, all);
  addWater(plan, today, all);
  addBatchSizes(plan, all);
  addBoilPowers(rig, all);
  levers::addElectrical(plan, i, all);
  addStart(plan, today, all);
  return all;
}

Plan changed(const Plan& plan, std::size_t rig, const std::vector<const Change*>& changes) {
  Plan other = plan;
  for (const Change* one : changes) one->make(other, rig);
  return other;
}

}  // namespace rigs
