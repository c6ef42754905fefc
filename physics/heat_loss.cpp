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

// Inside a headspace or a hose, wort or steam meets the wall without a film worth counting.
constexpr auto kNoDrop = [](HeatFlux) { return kelvins(0.0); };

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
      headspace_{.slope = 50.0 * inSquareMetres(mouth_)} {
  assert(openFraction >= 0.0 && openFraction <= 1.0);
  const Length radius = 0.5 * vessel.innerDiameter;
  // First guesses of a lukewarm wall; the first solution replaces them.
  const auto wall = [](ThermalInsulance insulance, double areaRatio, double emissivity) {
    return Wall{.insulance = insulance,
                .areaRatio = areaRatio,
                .emissivity = emissivity,
                .excess = kelvins(20.0),
                .whole = kelvins(40.0),
                .slope = 1.0 + areaRatio * insulance * perSquareMetreKelvin(12.0),
                .table = {}};
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
  if (wall.table.covers(whole)) return wall.table.at(whole);
  HeatFlux flux{};
  HeatTransferCoefficient h{};
  const auto excessOfInside = [&](double skin) {
    const TemperatureDifference excess = kelvins(skin);
    const Temperature face = room + excess;
    h = film(face) + radiationFilm(wall.emissivity, face, room);
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

double HeatLossModel::Headspace::shareAt(Temperature liquid) const {
  return std::clamp(share + perKelvin * inKelvins(liquid - last), 0.0, 1.0);
}

void HeatLossModel::Headspace::remember(Temperature liquid, double newShare) {
  if (!std::isfinite(newShare)) return;
  const double moved = inKelvins(liquid - last);
  // Neighbours tell the trend; far apart or at the same place they do not.
  const bool near = std::abs(moved) > 1e-6 && std::abs(moved) < 10.0;
  perKelvin = near ? (newShare - share) / moved : 0.0;
  last = liquid;
  share = newShare;
}

AirProperties HeatLossModel::filmAir(Temperature skin) const {
  return dryAir(midpoint(skin, room_.air.temperature), room_.air.pressure);
}

HeatTransferCoefficient HeatLossModel::filmAbove(Temperature face) const {
  const Temperature room = room_.air.temperature;
  const Length quarter = 0.25 * diameter_;
  return (face >= room ? plateFacingUpFilm(face, room, quarter, filmAir(face))
                       : plateFacingDownFilm(face, room, quarter, filmAir(face)))
      .h;
}

HeatTransferCoefficient HeatLossModel::filmBelow(Temperature face) const {
  const Temperature room = room_.air.temperature;
  const Length quarter = 0.25 * diameter_;
  return (face >= room ? plateFacingDownFilm(face, room, quarter, filmAir(face))
                       : plateFacingUpFilm(face, room, quarter, filmAir(face)))
      .h;
}

HeatTransferCoefficient HeatLossModel::filmBeside(Temperature face, Length height) const {
  return verticalWallFilm(face, room_.air.temperature, height, filmAir(face)).h;
}

HeatFlux HeatLossModel::throughSide(Temperature liquid) {
  const TemperatureDifference whole = liquid - room_.air.temperature;
  if (side_.table.covers(whole)) return side_.table.at(whole);
  const WaterFilm film(liquid);
  return through(
      side_, liquid, [&](Temperature skin) { return filmBeside(skin, filmHeight_); },
      [&](HeatFlux q) { return film.drop(q); });
}

HeatFlux HeatLossModel::throughDryWall(Temperature inner) {
  return through(
      dry_, inner, [&](Temperature skin) { return filmBeside(skin, height_); }, kNoDrop);
}

HeatFlux HeatLossModel::throughLid(Temperature inner) {
  return through(
      lid_, inner, [&](Temperature skin) { return filmAbove(skin); }, kNoDrop);
}

HeatFlux HeatLossModel::throughBase(Temperature liquid) {
  if (!onLegs_) return (liquid - room_.air.temperature) / base_.insulance;
  return through(
      base_, liquid, [&](Temperature skin) { return filmBelow(skin); }, kNoDrop);
}

HeatFlux HeatLossModel::throughHose(Temperature liquid) {
  return through(
      hose_, liquid,
      [&](Temperature skin) {
        return horizontalCylinderFilm(skin, room_.air.temperature, hoseDiameter_, filmAir(skin)).h;
      },
      kNoDrop);
}

void HeatLossModel::tabulate(Temperature hottest) {
  const Temperature room = room_.air.temperature;
  const TemperatureDifference widest = hottest - room;
  if (widest <= kelvins(1.0)) return;
  const auto fill = [&](Wall& wall, const auto& fluxAt) {
    if (wall.table.covers(widest)) return;
    FluxTable table;
    table.fill(widest, [&](TemperatureDifference excess) { return fluxAt(room + excess); });
    wall.table = table;
  };
  fill(side_, [&](Temperature t) { return throughSide(t); });
  if (open_ < 1.0) {
    fill(dry_, [&](Temperature t) { return throughDryWall(t); });
    fill(lid_, [&](Temperature t) { return throughLid(t); });
  }
  if (onLegs_) fill(base_, [&](Temperature t) { return throughBase(t); });
  if (hoseLength_ > metres(0.0)) fill(hose_, [&](Temperature t) { return throughHose(t); });
}

HeatLossModel HeatLossModel::forStage(Length fill, double openFraction, Length hoseLength) const {
  assert(openFraction >= 0.0 && openFraction <= 1.0);
  HeatLossModel other = *this;
  other.open_ = openFraction;
  other.hoseLength_ = hoseLength;
  const Length film = std::max(fill, 0.02 * height_);
  if (film != filmHeight_) {
    other.filmHeight_ = film;
    other.side_.table = FluxTable();
  }
  return other;
}

// The dry wall above an open liquid: a straight fin of the wall's metal, its foot at the wort's
// temperature, its inner face idle. Its outer film is taken halfway between wort and room.
Power HeatLossModel::fin(Temperature liquid, Length dry) const {
  if (dry <= metres(0.0)) return watts(0.0);
  const Temperature room = room_.air.temperature;
  const Temperature halfway = midpoint(liquid, room);
  const HeatTransferCoefficient outer =
      dry_.areaRatio *
      (filmBeside(halfway, height_) + radiationFilm(dry_.emissivity, halfway, room));
  const HeatTransferCoefficient h = 1.0 / (1.0 / outer + dry_.insulance);
  const double length = dry * sqrt(h / wallAlong_);
  return pi * diameter_ * sqrt(h * wallAlong_) * std::tanh(length) * (liquid - room);
}

// Wort, headspace, then lid and dry wall side by side: their inner faces share one temperature.
void HeatLossModel::closedMouth(Temperature liquid, SpecificEnergy latent, Area dryArea,
                                double share, HeatFlows& flows) {
  const Pressure p = room_.air.pressure;
  const Length quarter = 0.25 * diameter_;
  const SurfaceAir water = surfaceAir(liquid, p);
  Power byLid{}, byDryWall{};
  const auto surplus = [&](double below) {
    const Temperature inner = liquid - kelvins(below);
    const AirProperties air = dryAir(midpoint(liquid, inner), p);
    const HeatFlux up = latent * headspaceCondensation(water, surfaceAir(inner, p)) +
                        plateFacingUpFilm(liquid, inner, quarter, air).h * (liquid - inner) +
                        radiationBetween(kWaterEmissivity, kWaterEmissivity, 1.0, liquid, inner);
    byLid = mouth_ * throughLid(inner);
    byDryWall = dryArea * throughDryWall(inner);
    return inWatts(up * mouth_ - byLid - byDryWall);
  };
  // The headspace takes a share of the way to the room that changes slowly and steadily with the
  // wort's temperature: continued from the last two solutions, the guess is nearly right.
  const double limit = inKelvins(liquid - room_.air.temperature);
  const double guess = headspace_.shareAt(liquid);
  const double below = bracketedSecant(surplus, std::min(0.0, limit), std::max(0.0, limit),
                                       limit * guess, headspace_.slope, kPowerTolerance);
  headspace_.remember(liquid, below / limit);
  flows.lost[Path::Lid] = share * byLid;
  flows.lost[Path::DryWall] += share * byDryWall;
}

HeatFlows HeatLossModel::flows(Temperature liquid, Length fill) {
  const Temperature room = room_.air.temperature;
  const Length dry = std::max(height_ - fill, metres(0.0));
  const SpecificEnergy latent = latentHeat(liquid);
  HeatFlows flows{};

  flows.lost[Path::Side] = pi * diameter_ * fill * throughSide(liquid);
  flows.lost[Path::Base] = mouth_ * throughBase(liquid);

  if (open_ > 0.0) {
    const Area surface = open_ * mouth_;
    flows.lost[Path::SurfaceConvection] = surface * filmAbove(liquid) * (liquid - room);
    flows.lost[Path::SurfaceRadiation] = surface * radiationToRoom(kWaterEmissivity, liquid, room);
    flows.vapour =
        surface * (evaporationFactor_ * draughtyEvaporation(liquid, room_.air, room_.draught));
    flows.lost[Path::Evaporation] = flows.vapour * latent;
    flows.lost[Path::DryWall] = open_ * fin(liquid, dry);
  }
  if (open_ < 1.0) closedMouth(liquid, latent, pi * diameter_ * dry, 1.0 - open_, flows);

  if (hoseLength_ > metres(0.0)) {
    flows.lost[Path::Hose] = pi * hoseDiameter_ * hoseLength_ * throughHose(liquid);
  }
  return flows;
}

}  // namespace physics
