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
constexpr int kMostIterations = 60;
// How near a balance is solved, K: of a skin, and of a headspace, where a lid gives 1 W per kelvin.
constexpr double kSkinTolerance = 1e-10;
constexpr double kHeadspaceTolerance = 1e-7;

// Inside a headspace or a hose, wort or steam meets the wall without a film worth counting.
constexpr auto kNoFilm = [](Temperature) { return [](HeatFlux) { return kelvins(0.0); }; };

// What a balance is at a trial place, and the flows wanted where it is none.
template <std::size_t N>
struct Trial {
  double surplus;
  std::array<double, N> flows;
};
template <std::size_t N>
struct Balance {
  double at;
  std::array<double, N> flows;
};

// Where an increasing surplus is zero, between low and high: secant steps from a guess, the first
// with a given slope, halving the bracket whenever a step would leave it. A step's error is about
// the curvature times itself times the step before, and a film law's curvature a fraction of 1/x:
// once that is small enough, a single flow's last step is taken without asking again, the flow
// going along the chord. Not where vapour condenses: its law is no film's. The last slope is left
// for the next, nearby root.
template <std::size_t N, class F>
Balance<N> solveBalance(const F& trial, double low, double high, double guess, double& slope,
                        double tolerance) {
  double x = std::clamp(guess, low, high);
  Trial<N> here = trial(x);
  double before = x;
  Trial<N> there = here;
  for (int i = 0; i < kMostIterations; ++i) {
    (here.surplus < 0.0 ? low : high) = x;
    double next = x - here.surplus / slope;
    const bool inside = next > low && next < high;
    if (!inside) next = 0.5 * (low + high);
    const double move = next - x;
    // The first step goes by another root's slope, which may be far too steep here.
    if (std::abs(move) <= (i == 0 ? 1e-3 * tolerance : tolerance)) break;
    const double moved = x - before;
    if (N == 1 && inside && moved != 0.0 && std::abs(move * moved) <= tolerance * std::abs(next)) {
      for (std::size_t k = 0; k < N; ++k) {
        here.flows[k] += (here.flows[k] - there.flows[k]) * (move / moved);
      }
      return {next, here.flows};
    }
    before = x;
    there = here;
    x = next;
    here = trial(x);
    const double chord = (here.surplus - there.surplus) / move;
    if (chord > 0.0) slope = chord;
  }
  return {x, here.flows};
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
      headspace_{.stiffness = 500.0 * inSquareMetres(mouth_)} {
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

// Flux per inner area through a wall whose inside is at `inside`; film(skin) is the outer
// convection, innerFilm(inside)(flux) the drop across a liquid film.
template <class Film, class InnerFilm>
HeatFlux HeatLossModel::through(Wall& wall, Temperature inside, const Film& film,
                                const InnerFilm& innerFilm) {
  const Temperature room = room_.air.temperature;
  const auto solved = [&](TemperatureDifference whole) {
    const auto drop = innerFilm(room + whole);
    const auto balance = [&](double skin) {
      const TemperatureDifference excess = kelvins(skin);
      const Temperature face = room + excess;
      const HeatTransferCoefficient h = film(face) + radiationFilm(wall.emissivity, face, room);
      const HeatFlux flux = wall.areaRatio * h * excess;
      return Trial<1>{inKelvins(excess + flux * wall.insulance + drop(flux) - whole),
                      {inWattsPerSquareMetre(flux)}};
    };
    // The skin lies between room and inside, about as far between them as last time.
    const double limit = inKelvins(whole);
    const Balance<1> skin =
        solveBalance<1>(balance, std::min(0.0, limit), std::max(0.0, limit),
                        limit * guessedShare(wall.excess, wall.whole), wall.slope, kSkinTolerance);
    wall.excess = kelvins(skin.at);
    wall.whole = whole;
    return wattsPerSquareMetre(skin.flows[0]);
  };
  const TemperatureDifference whole = inside - room;
  return wall.table.covers(whole) ? wall.table.at(whole, solved) : solved(whole);
}

// Newton's polynomial through the last solutions; only through those near enough to tell.
double HeatLossModel::Headspace::shareAt(Temperature liquid) const {
  const double t = inKelvin(liquid);
  std::array<double, kRemembered> difference = share;
  double guess = difference[0];
  double product = 1.0;
  for (std::size_t order = 1; order < known; ++order) {
    if (std::abs(at[order] - t) > kNear) break;
    for (std::size_t i = 0; i + order < known; ++i) {
      difference[i] = (difference[i] - difference[i + 1]) / (at[i] - at[i + order]);
    }
    product *= t - at[order - 1];
    guess += product * difference[0];
  }
  return std::clamp(guess, 0.0, 1.0);
}

void HeatLossModel::Headspace::remember(Temperature liquid, double newShare) {
  if (!std::isfinite(newShare)) return;
  const double t = inKelvin(liquid);
  // Two solutions at one place tell no trend, and shareAt() divides by the way between any two:
  // the newer replaces every older one that near, so that no two ever are.
  const Headspace old = *this;
  known = 1;
  for (std::size_t i = 0; i < old.known && known < kRemembered; ++i) {
    if (std::abs(t - old.at[i]) < 1e-3) continue;
    at[known] = old.at[i];
    share[known++] = old.share[i];
  }
  at[0] = t;
  share[0] = newShare;
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
  return through(
      side_, liquid, [&](Temperature skin) { return filmBeside(skin, filmHeight_); },
      [](Temperature inside) {
        return [film = WaterFilm(inside)](HeatFlux q) { return film.drop(q); };
      });
}

HeatFlux HeatLossModel::throughDryWall(Temperature inner) {
  return through(
      dry_, inner, [&](Temperature skin) { return filmBeside(skin, height_); }, kNoFilm);
}

HeatFlux HeatLossModel::throughLid(Temperature inner) {
  return through(
      lid_, inner, [&](Temperature skin) { return filmAbove(skin); }, kNoFilm);
}

HeatFlux HeatLossModel::throughBase(Temperature liquid) {
  if (!onLegs_) return (liquid - room_.air.temperature) / base_.insulance;
  return through(
      base_, liquid, [&](Temperature skin) { return filmBelow(skin); }, kNoFilm);
}

HeatFlux HeatLossModel::throughHose(Temperature liquid) {
  return through(
      hose_, liquid,
      [&](Temperature skin) {
        return horizontalCylinderFilm(skin, room_.air.temperature, hoseDiameter_, filmAir(skin)).h;
      },
      kNoFilm);
}

void HeatLossModel::tabulate(Temperature hottest) {
  const Temperature room = room_.air.temperature;
  for (Wall* wall : {&base_, &lid_, &dry_, &hose_}) {
    wall->table.cover(kelvins(0.0), hottest - room);
  }
  // The water film's law bends at both ends of its range, and sharply already above the lower one.
  side_.table.cover(WaterFilm::kColdest + kelvins(10.0) - room,
                    std::min(hottest, WaterFilm::kHottest) - room);
}

void HeatLossModel::enterStage(Length fill, double openFraction, Length hoseLength) {
  assert(openFraction >= 0.0 && openFraction <= 1.0);
  open_ = openFraction;
  hoseLength_ = hoseLength;
  headspace_.known = 1;  // the dry wall may have changed
  const Length film = std::max(fill, 0.02 * height_);
  if (film != filmHeight_) {
    filmHeight_ = film;
    side_.table.forget();
  }
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
  const auto balance = [&](double below) {
    const Temperature inner = liquid - kelvins(below);
    const AirProperties air = dryAir(midpoint(liquid, inner), p);
    const HeatFlux up = latent * headspaceCondensation(water, surfaceAir(inner, p)) +
                        plateFacingUpFilm(liquid, inner, quarter, air).h * (liquid - inner) +
                        radiationBetween(kWaterEmissivity, kWaterEmissivity, 1.0, liquid, inner);
    const Power byLid = mouth_ * throughLid(inner);
    const Power byDryWall = dryArea * throughDryWall(inner);
    return Trial<2>{inWatts(up * mouth_ - byLid - byDryWall), {inWatts(byLid), inWatts(byDryWall)}};
  };
  // The headspace takes a share of the way to the room that changes slowly and steadily with the
  // wort's temperature: continued from the last solutions, the guess is nearly right.
  const double limit = inKelvins(liquid - room_.air.temperature);
  const double guess = limit * headspace_.shareAt(liquid);
  double slope = headspace_.stiffness / std::max(std::abs(guess), 1e-3);
  const Balance<2> below = solveBalance<2>(balance, std::min(0.0, limit), std::max(0.0, limit),
                                           guess, slope, kHeadspaceTolerance);
  headspace_.stiffness = slope * std::max(std::abs(below.at), 1e-3);
  headspace_.remember(liquid, below.at / limit);
  flows.lost[Path::Lid] = share * watts(below.flows[0]);
  flows.lost[Path::DryWall] += share * watts(below.flows[1]);
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
