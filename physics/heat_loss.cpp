// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/heat_loss.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <numbers>
#include <vector>

#include "physics/convection.hpp"
#include "physics/evaporation.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

using std::numbers::pi;

// Water and wetted metal radiate nearly black (standard tables, from memory).
constexpr double kWaterEmissivity = 0.96;
constexpr double kSkinTolerance = 1e-11;  // K
constexpr double kPowerTolerance = 1e-7;  // W, well above what skins within their tolerance give
constexpr int kMostIterations = 60;

// Root of an increasing f with f(low) <= 0 <= f(high): secant steps from a guess, the first with a
// given slope, halving the bracket whenever a step would leave it. A warm guess needs two or
// three evaluations. The last slope is left behind for the next, nearby root.
template <class F>
double bracketedSecant(const F& f, double low, double high, double guess, double& slope,
                       double tolerance) {
  double x = std::clamp(guess, low, high);
  double y = f(x);
  for (int i = 0; i < kMostIterations && std::abs(y) > tolerance; ++i) {
    (y < 0.0 ? low : high) = x;
    double next = x - y / slope;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    if (next == x) break;
    const double nextY = f(next);
    const double chord = (nextY - y) / (next - x);
    if (chord > 0.0) slope = chord;
    x = next;
    y = nextY;
  }
  return x;
}

// The last solution as a share of the way, for a guess; any, where there was no way.
double guessedShare(TemperatureDifference part, TemperatureDifference whole) {
  const double share = part / whole;
  return std::isfinite(share) ? share : 0.5;
}

std::vector<Layer> withMetal(const Vessel& vessel, const Covering& covering) {
  std::vector<Layer> layers{layerOf(vessel.wallThickness, vessel.wallConductivity)};
  layers.insert(layers.end(), covering.insulation.begin(), covering.insulation.end());
  return layers;
}

}  // namespace

HeatLossModel::HeatLossModel(const Vessel& vessel, const Hose& hose, const Surroundings& room,
                             Length fill, double openFraction, double evaporationFactor)
    : room_(room),
      diameter_(vessel.innerDiameter),
      height_(vessel.height),
      hoseLength_(hose.length),
      hoseDiameter_(hose.outerDiameter),
      mouth_(crossSection(vessel)),
      open_(openFraction),
      evaporationFactor_(evaporationFactor),
      onLegs_(vessel.support.onLegs),
      filmHeight_(std::max(fill, 0.02 * vessel.height)),
      wallAlong_(vessel.wallConductivity * vessel.wallThickness),
      headspace_(kelvins(5.0)),
      headspaceWhole_(kelvins(40.0)),
      headspaceSlope_(50.0 * inSquareMetres(mouth_)) {
  assert(openFraction >= 0.0 && openFraction <= 1.0);
  const Length radius = 0.5 * vessel.innerDiameter;
  // First guesses of a lukewarm wall; the first solution replaces them.
  const auto wall = [](ThermalInsulance insulance, double areaRatio, double emissivity) {
    return Wall{.insulance = insulance,
                .areaRatio = areaRatio,
                .emissivity = emissivity,
                .excess = kelvins(20.0),
                .whole = kelvins(40.0),
                .slope = 1.0 + areaRatio * insulance * perSquareMetreKelvin(12.0)};
  };
  const auto sideLayers = withMetal(vessel, vessel.side);
  side_ = dry_ = wall(cylindricalInsulance(radius, sideLayers),
                      outerRadius(radius, sideLayers) / radius, vessel.side.emissivity);
  ThermalInsulance below = flatInsulance(withMetal(vessel, vessel.base));
  if (!onLegs_) below += vessel.support.solid;
  base_ = wall(below, 1.0, vessel.base.emissivity);
  lid_ = wall(flatInsulance(withMetal(vessel, vessel.lid)), 1.0, vessel.lid.emissivity);
  hose_ = wall(hose.wall, 1.0, hose.emissivity);
}

// Flux per inner area through a wall whose inside is at `inside`, less drop(flux) for a liquid
// film; film(skin) is the outer convection.
template <class Film, class InnerDrop>
HeatFlux HeatLossModel::through(Wall& wall, Temperature inside, const Film& film,
                                const InnerDrop& drop) {
  const Temperature room = room_.air.temperature;
  const TemperatureDifference whole = inside - room;
  HeatFlux flux{};
  HeatTransferCoefficient h{};
  const auto excessOfInside = [&](double skin) {
    const TemperatureDifference excess = kelvins(skin);
    const Temperature face = room + excess;
    h = film(face).h + radiationFilm(wall.emissivity, face, room);
    flux = wall.areaRatio * h * excess;
    return inKelvins(excess + flux * wall.insulance + drop(flux) - whole);
  };
  // The skin lies between room and inside, about as far between them as last time.
  const double limit = inKelvins(whole);
  wall.excess = kelvins(bracketedSecant(excessOfInside, std::min(0.0, limit), std::max(0.0, limit),
                                        limit * guessedShare(wall.excess, wall.whole), wall.slope,
                                        kSkinTolerance));
  wall.whole = whole;
  return flux;
}

// The dry wall above an open liquid: a straight fin of the wall's metal, its foot at the wort's
// temperature, its inner face idle. Its outer film is taken halfway between wort and room.
Power HeatLossModel::fin(Temperature liquid, Length dry) const {
  if (dry <= metres(0.0)) return watts(0.0);
  const Temperature room = room_.air.temperature;
  const Temperature halfway = midpoint(liquid, room);
  const AirProperties air = dryAir(midpoint(halfway, room), room_.air.pressure);
  const HeatTransferCoefficient outer =
      dry_.areaRatio * (verticalWallFilm(halfway, room, height_, air).h +
                        radiationFilm(dry_.emissivity, halfway, room));
  const HeatTransferCoefficient h = 1.0 / (1.0 / outer + dry_.insulance);
  const double length = dry * sqrt(h / wallAlong_);
  return pi * diameter_ * sqrt(h * wallAlong_) * std::tanh(length) * (liquid - room);
}

// Wort, headspace, then lid and dry wall side by side: their inner faces share one temperature.
void HeatLossModel::closedMouth(Temperature liquid, Area dryArea, double share, HeatFlows& flows) {
  const Temperature room = room_.air.temperature;
  const Pressure p = room_.air.pressure;
  const Length quarter = 0.25 * diameter_;
  const auto noDrop = [](HeatFlux) { return kelvins(0.0); };
  const auto outer = [&](Temperature skin) {
    const AirProperties air = dryAir(midpoint(skin, room), p);
    return skin >= room ? plateFacingUpFilm(skin, room, quarter, air)
                        : plateFacingDownFilm(skin, room, quarter, air);
  };
  const auto wall = [&](Temperature skin) {
    return verticalWallFilm(skin, room, height_, dryAir(midpoint(skin, room), p));
  };
  const SpecificEnergy latent = latentHeat(liquid);
  const SurfaceAir water = surfaceAir(liquid, p);
  Power byLid{}, byDryWall{};
  const auto surplus = [&](double below) {
    const Temperature inner = liquid - kelvins(below);
    const AirProperties air = dryAir(midpoint(liquid, inner), p);
    const HeatFlux up = latent * headspaceCondensation(water, surfaceAir(inner, p)) +
                        plateFacingUpFilm(liquid, inner, quarter, air).h * (liquid - inner) +
                        radiationBetween(kWaterEmissivity, kWaterEmissivity, 1.0, liquid, inner);
    byLid = mouth_ * through(lid_, inner, outer, noDrop);
    byDryWall = dryArea * through(dry_, inner, wall, noDrop);
    return inWatts(up * mouth_ - byLid - byDryWall);
  };
  const double limit = inKelvins(liquid - room);
  headspace_ = kelvins(bracketedSecant(surplus, std::min(0.0, limit), std::max(0.0, limit),
                                       limit * guessedShare(headspace_, headspaceWhole_),
                                       headspaceSlope_, kPowerTolerance));
  headspaceWhole_ = kelvins(limit);
  flows.lost[Path::Lid] = share * byLid;
  flows.lost[Path::DryWall] += share * byDryWall;
  flows.lidSkin = room + lid_.excess;
}

HeatFlows HeatLossModel::flows(Temperature liquid, Length fill) {
  const Temperature room = room_.air.temperature;
  const Pressure p = room_.air.pressure;
  const Length quarter = 0.25 * diameter_;
  const Length dry = std::max(height_ - fill, metres(0.0));
  const WaterFilm waterFilm(liquid);
  const auto filmDrop = [&](HeatFlux q) { return waterFilm.drop(q); };
  const auto noDrop = [](HeatFlux) { return kelvins(0.0); };
  HeatFlows flows{.lost = {}, .vapour = {}, .sideSkin = room, .baseSkin = room, .lidSkin = room};

  const auto besideSide = [&](Temperature skin) {
    return verticalWallFilm(skin, room, filmHeight_, dryAir(midpoint(skin, room), p));
  };
  flows.lost[Path::Side] = pi * diameter_ * fill * through(side_, liquid, besideSide, filmDrop);
  flows.sideSkin = room + side_.excess;

  if (onLegs_) {
    const auto below = [&](Temperature skin) {
      const AirProperties air = dryAir(midpoint(skin, room), p);
      return skin >= room ? plateFacingDownFilm(skin, room, quarter, air)
                          : plateFacingUpFilm(skin, room, quarter, air);
    };
    flows.lost[Path::Base] = mouth_ * through(base_, liquid, below, noDrop);
    flows.baseSkin = room + base_.excess;
  } else {
    flows.lost[Path::Base] = mouth_ * ((liquid - room) / base_.insulance);
  }

  if (open_ > 0.0) {
    const Area surface = open_ * mouth_;
    const AirProperties air = dryAir(midpoint(liquid, room), p);
    const HeatTransferCoefficient film =
        (liquid >= room ? plateFacingUpFilm(liquid, room, quarter, air)
                        : plateFacingDownFilm(liquid, room, quarter, air))
            .h;
    flows.lost[Path::SurfaceConvection] = surface * film * (liquid - room);
    flows.lost[Path::SurfaceRadiation] = surface * radiationToRoom(kWaterEmissivity, liquid, room);
    const MassFlux vapour =
        evaporationFactor_ * draughtyEvaporation(liquid, room_.air, room_.draught);
    flows.vapour = surface * vapour;
    flows.lost[Path::Evaporation] = flows.vapour * latentHeat(liquid);
    flows.lost[Path::DryWall] = open_ * fin(liquid, dry);
  }
  if (open_ < 1.0) {
    closedMouth(liquid, pi * diameter_ * dry, 1.0 - open_, flows);
  }

  if (hoseLength_ > metres(0.0)) {
    const auto around = [&](Temperature skin) {
      return horizontalCylinderFilm(skin, room, hoseDiameter_, dryAir(midpoint(skin, room), p));
    };
    flows.lost[Path::Hose] =
        pi * hoseDiameter_ * hoseLength_ * through(hose_, liquid, around, noDrop);
  }
  return flows;
}

}  // namespace physics
