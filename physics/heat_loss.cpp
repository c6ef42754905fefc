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
constexpr int kMostIterations = 100;
constexpr Temperature kColdestLiquid = celsius(0.0);
// How near a balance is solved, K: of a skin, and of a headspace, where a lid gives 1 W per kelvin.
constexpr double kSkinTolerance = 1e-10;
constexpr double kHeadspaceTolerance = 2e-8;
// The last of Newton's steps errs by its square times a curvature, which is that of a power law
// with so many kelvins to go, and by the few thousandths that slopes may be wrong.
constexpr double kHeadspaceLastStep = 3e-5;
// Between two faces that radiate like water.
constexpr double kHeadspaceExchange = kWaterEmissivity / (2.0 - kWaterEmissivity);

// Inside a headspace or a hose, wort or steam meets the wall without a film worth counting.
constexpr auto kNoFilm = [](Temperature) { return [](HeatFlux) { return kelvins(0.0); }; };

// What a balance is at a trial place, and the flow wanted where it is none.
struct Trial {
  double surplus;
  double flow;
};
struct Balance {
  double at;
  double flow;
};

// Where an increasing surplus is zero, between low and high: secant steps from a guess, the first
// with a given slope, halving the bracket whenever a step would leave it. A step's error is about
// the curvature times itself times the step before, and a film law's curvature a fraction of 1/x:
// once that is small enough, the last step is taken without asking again, the flow going along the
// chord. The last slope is left for the next, nearby root.
template <class F>
Balance solveBalance(const F& trial, double low, double high, double guess, double& slope,
                     double tolerance) {
  double x = std::clamp(guess, low, high);
  Trial here = trial(x);
  double before = x;
  Trial there = here;
  for (int i = 0; i < kMostIterations; ++i) {
    (here.surplus < 0.0 ? low : high) = x;
    double next = x - here.surplus / slope;
    const bool inside = next > low && next < high;
    if (!inside) next = 0.5 * (low + high);
    const double move = next - x;
    // The first step goes by another root's slope, which may be far too steep here.
    if (std::abs(move) <= (i == 0 ? 1e-3 * tolerance : tolerance)) break;
    const double moved = x - before;
    if (inside && moved != 0.0 && std::abs(move * moved) <= tolerance * std::abs(next)) {
      return {next, here.flow + (here.flow - there.flow) * (move / moved)};
    }
    before = x;
    there = here;
    x = next;
    here = trial(x);
    const double chord = (here.surplus - there.surplus) / move;
    if (chord > 0.0) slope = chord;
  }
  return {x, here.flow};
}

// A headspace at a trial place below the wort: what comes up and does not go out, and the two ways
// out, in W; each with its slope against the kelvins below, in W/K.
struct HeadspaceTrial {
  double surplus, surplusSlope;
  double lid, lidSlope;
  double dryWall, dryWallSlope;
  double rises;  // K until no vapour rises any more
  bool exact;    // the slopes, to a few thousandths; else they are guesses
};

// Where an increasing surplus is zero, between low and high: Newton's steps from a guess, or secant
// steps where slopes are guesses, halving the bracket whenever a step would leave it or is not half
// as long as the one before, as where vapour begins to rise and the surplus with it. A step short
// enough by exact slopes is taken without asking again, the flows going along theirs.
template <class F>
HeadspaceTrial solveHeadspace(const F& trial, double low, double high, double& x) {
  x = std::clamp(x, low, high);
  HeadspaceTrial here = trial(x);
  double slope = here.surplusSlope;
  double before = high - low;
  for (int i = 0; i < kMostIterations; ++i) {
    (here.surplus < 0.0 ? low : high) = x;
    double next = x - here.surplus / slope;
    const bool fast = next > low && next < high && std::abs(next - x) < 0.5 * before;
    if (!fast) next = 0.5 * (low + high);
    const double move = next - x;
    before = std::abs(move);
    // Where vapour only just rises the surplus is so steep that a step says little.
    const bool steep = std::abs(move) > 0.01 * here.rises;
    if (!steep && std::abs(move) <= (here.exact || i > 0 ? 1.0 : 1e-3) * kHeadspaceTolerance) break;
    x = next;
    if (here.exact && fast && std::abs(move) <= kHeadspaceLastStep &&
        move * move <= 0.5 * kHeadspaceTolerance * here.rises) {
      here.lid += here.lidSlope * move;
      here.dryWall += here.dryWallSlope * move;
      break;
    }
    const double surplus = here.surplus;
    here = trial(x);
    const double chord = (here.surplus - surplus) / move;
    slope = here.exact ? here.surplusSlope : chord > 0.0 ? chord : slope;
  }
  return here;
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

Time bedLag(const Hose& hose, Volume wort) {
  const bool delays = hose.length > metres(0.0) && hose.flow > VolumeFlow{};
  return delays ? wort / hose.flow : seconds(0.0);
}

HeatLossModel::HeatLossModel(const Vessel& vessel, const Hose& hose, const Surroundings& room,
                             Length fill, double openFraction, double evaporationFactor)
    : room_(room),
      saturatedInRoom_(saturationPressure(room.air.temperature)),
      diameter_(vessel.innerDiameter),
      height_(vessel.height),
      hoseLength_(hose.length),
      hoseDiameter_(hose.outerDiameter),
      mouth_(crossSection(vessel)),
      open_(openFraction),
      evaporationFactor_(evaporationFactor),
      returnsAbove_(hose.returnsAbove),
      pumpHeat_(hose.pumpHeat),
      onLegs_(vessel.support.onLegs),
      filmHeight_(std::max(fill, 0.02 * vessel.height)),
      wallAlong_(vessel.wallConductivity * vessel.wallThickness),
      headspace_{} {
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

// Flux per inner area through a wall whose inside is `whole` above the room; film(skin) is the
// outer convection, innerFilm(inside)(flux) the drop across a liquid film. The slope is a guess:
// a film law's.
template <class Film, class InnerFilm>
SlopedFlux HeatLossModel::solved(Wall& wall, TemperatureDifference whole, const Film& film,
                                 const InnerFilm& innerFilm) {
  const Temperature room = room_.air.temperature;
  const auto drop = innerFilm(room + whole);
  HeatTransferCoefficient outer{};
  const auto balance = [&](double skin) {
    const TemperatureDifference excess = kelvins(skin);
    const Temperature face = room + excess;
    outer = wall.areaRatio * (film(face) + radiationFilm(wall.emissivity, face, room));
    const HeatFlux flux = outer * excess;
    return Trial{inKelvins(excess + flux * wall.insulance + drop(flux) - whole),
                 inWattsPerSquareMetre(flux)};
  };
  // The skin lies between room and inside, about as far between them as last time.
  const double limit = inKelvins(whole);
  const Balance skin =
      solveBalance(balance, std::min(0.0, limit), std::max(0.0, limit),
                   limit * guessedShare(wall.excess, wall.whole), wall.slope, kSkinTolerance);
  wall.excess = kelvins(skin.at);
  wall.whole = whole;
  return {wattsPerSquareMetre(skin.flow), 1.2 / (1.0 / outer + wall.insulance)};
}

// The same from the table, where it covers.
template <class Film, class InnerFilm>
HeatFlux HeatLossModel::through(Wall& wall, Temperature inside, const Film& film,
                                const InnerFilm& innerFilm) {
  const TemperatureDifference whole = inside - room_.air.temperature;
  const auto solve = [&](TemperatureDifference w) { return solved(wall, w, film, innerFilm).flux; };
  if (!wall.table.covers(whole)) return solve(whole);
  return wall.table.at(FluxTable::Place(wall.table, whole), solve).flux;
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

HeatFlux HeatLossModel::throughDryWall(Temperature inside) {
  return through(
      dry_, inside, [&](Temperature skin) { return filmBeside(skin, height_); }, kNoFilm);
}

void HeatLossModel::tabulate(Temperature hottest) {
  const Temperature room = room_.air.temperature;
  const TemperatureDifference most = hottest - room;
  for (Wall* wall : {&lid_, &dry_}) wall->table.cover(kColdestLiquid - room, most);
  // Other powers than the fourth root rule a hose's film and the water's at the side, which the
  // table follows badly near the room; a base's law bends below it.
  constexpr TemperatureDifference kNear = kelvins(4.0);
  for (Wall* wall : {&base_, &hose_}) wall->table.cover(kNear, most);
  // The water film's law bends at both ends of its range, and sharply already above the lower one.
  side_.table.cover(std::max(WaterFilm::kColdest + kelvins(10.0) - room, kNear),
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

// Between rim and wort stands moist air which warms the wall's inner face; the wall's foot is as
// hot as the wort. The outside is cooled as where the inner face is as warm as that air.
WarmedFin HeatLossModel::openDryWall(Temperature liquid, const WellAir& well, Length dry) {
  const Temperature room = room_.air.temperature;
  // At the room's temperature nothing flows; what the films would be there is asked beside it.
  constexpr TemperatureDifference kBeside = kelvins(1e-3);
  const TemperatureDifference warmth = well.temperature - room;
  const TemperatureDifference asked = abs(warmth) < kBeside ? kBeside : warmth;
  return {.width = pi * diameter_,
          .length = dry,
          .along = wallAlong_,
          .warm = well.film,
          .cool = throughDryWall(room + asked) / asked,
          .foot = liquid - room,
          .warmth = warmth};
}

// The well of moist air stands between two alike resistances, each half of that to what the surface
// evaporates, E. A wall that draws C out of it lowers its excess over the room by C/(2 E) of
// itself, draws C/2 more out of the wort, and lets C/2 less over the rim. What condenses drips
// back.
void HeatLossModel::openMouth(Temperature liquid, const SurfaceAir& water, SpecificEnergy latent,
                              Length dry, HeatFlows& flows) {
  const Temperature room = room_.air.temperature;
  const Area surface = open_ * mouth_;
  flows.lost[Path::SurfaceConvection] = surface * filmAbove(liquid) * (liquid - room);
  flows.lost[Path::SurfaceRadiation] = surface * radiationToRoom(kWaterEmissivity, liquid, room);
  const MassFlux flux = surfaceRenewal(motion()) * evaporationFactor_ *
                        draughtyEvaporation(water, room_.air, room_.draught);
  Power escapes = mouth_ * flux * latent;
  if (dry > metres(0.0)) {
    const WellAir well = wellAir(water, saturatedInRoom_, latent, room_.air.pressure);
    WarmedFin wall = openDryWall(liquid, well, dry);
    const Power drawn = std::max(flowsThrough(wall).warmed, watts(0.0));
    const double share =
        escapes > watts(0.0) ? static_cast<double>(escapes / (escapes + 0.5 * drawn)) : 0.0;
    wall.warmth = share * wall.warmth;
    flows.lost[Path::DryWall] = open_ * flowsThrough(wall).cooled;
    escapes -= 0.5 * share * drawn;
  }
  flows.lost[Path::Evaporation] = open_ * escapes;
  flows.vapour = flows.lost[Path::Evaporation] / latent;
}

// Wort, headspace, then lid and dry wall side by side: their inner faces share one temperature.
void HeatLossModel::closedMouth(Temperature liquid, const SurfaceAir& water, SpecificEnergy latent,
                                Area dryArea, double share, HeatFlows& flows) {
  const Temperature room = room_.air.temperature;
  const Pressure p = room_.air.pressure;
  const Length quarter = 0.25 * diameter_;
  const double mouth = inSquareMetres(mouth_);
  const double dry = inSquareMetres(dryArea);
  const auto besideDryWall = [&](TemperatureDifference whole) {
    return solved(
        dry_, whole, [&](Temperature skin) { return filmBeside(skin, height_); }, kNoFilm);
  };
  const auto aboveLid = [&](TemperatureDifference whole) {
    return solved(
        lid_, whole, [&](Temperature skin) { return filmAbove(skin); }, kNoFilm);
  };
  const auto fluxOf = [](const auto& solve) {
    return [&solve](TemperatureDifference whole) { return solve(whole).flux; };
  };
  const auto trial = [&](double below) {
    const TemperatureDifference drop = kelvins(below);
    const Temperature inner = liquid - drop;
    const TemperatureDifference whole = inner - room;
    const bool tabled = lid_.table.covers(whole);
    SlopedFlux lid, wall;
    if (tabled) {
      const FluxTable::Place place(lid_.table, whole);
      lid = lid_.table.at(place, fluxOf(aboveLid));
      wall = dry_.table.at(place, fluxOf(besideDryWall));
    } else {
      lid = aboveLid(whole);
      wall = besideDryWall(whole);
    }
    const SlopedMassFlux drips = headspaceCondensation(water, inner, p);
    const AirProperties air = dryAir(midpoint(liquid, inner), p);
    const HeatTransferCoefficient film = plateFacingUpFilm(liquid, inner, quarter, air).h;
    const HeatFlux up =
        latent * drips.flux + film * drop + radiationFilm(kHeadspaceExchange, liquid, inner) * drop;
    // Films follow the fourth root of their difference, or little more.
    const double upSlope =
        -inJoulesPerKilogram(latent) * drips.perKelvinOfLid +
        inWattsPerSquareMetreKelvin(1.25 * film + radiationFilm(kHeadspaceExchange, inner, inner));
    HeadspaceTrial t{};
    t.lid = mouth * inWattsPerSquareMetre(lid.flux);
    t.lidSlope = -mouth * inWattsPerSquareMetreKelvin(lid.slope);
    t.dryWall = dry * inWattsPerSquareMetre(wall.flux);
    t.dryWallSlope = -dry * inWattsPerSquareMetreKelvin(wall.slope);
    t.surplus = mouth * inWattsPerSquareMetre(up) - t.lid - t.dryWall;
    t.surplusSlope = mouth * upSlope - t.lidSlope - t.dryWallSlope;
    t.rises = inKelvins(drips.rises);
    t.exact = tabled;
    return t;
  };
  // The headspace takes a share of the way to the room that changes slowly and steadily with the
  // wort's temperature: continued from the last solutions, the guess is nearly right.
  const double limit = inKelvins(liquid - room);
  double below = limit * headspace_.shareAt(liquid);
  const HeadspaceTrial found =
      solveHeadspace(trial, std::min(0.0, limit), std::max(0.0, limit), below);
  headspace_.remember(liquid, below / limit);
  flows.lost[Path::Lid] = share * watts(found.lid);
  flows.lost[Path::DryWall] += share * watts(found.dryWall);
}

HeatFlows HeatLossModel::flows(Temperature liquid, Length fill) {
  const Length dry = std::max(height_ - fill, metres(0.0));
  const SpecificEnergy latent = tabledLatentHeat(liquid);
  const SurfaceAir water = surfaceAir(liquid, room_.air.pressure);
  HeatFlows flows{};

  flows.lost[Path::Side] = pi * diameter_ * fill * throughSide(liquid);
  flows.lost[Path::Base] = mouth_ * throughBase(liquid);

  if (open_ > 0.0) openMouth(liquid, water, latent, dry, flows);
  if (open_ < 1.0) {
    closedMouth(liquid, water, latent, pi * diameter_ * dry, 1.0 - open_, flows);
  }

  if (hoseLength_ > metres(0.0)) {
    flows.lost[Path::Hose] = pi * hoseDiameter_ * hoseLength_ * throughHose(liquid);
  }
  return flows;
}

}  // namespace physics
