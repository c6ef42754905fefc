// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/heat_loss.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <vector>

#include "physics/convection.hpp"
#include "physics/evaporation.hpp"
#include "physics/roots.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

using std::numbers::pi;

// Water and wetted metal radiate nearly black (standard tables, from memory).
constexpr double kWaterEmissivity = 0.96;
constexpr int kMostIterations = 100;
constexpr Temperature kColdestLiquid = celsius(-20.0);
constexpr Temperature kHottestLiquid = celsius(109.0);
// How near a balance is solved, K: of a skin, and of a headspace, where a lid gives 1 W per kelvin.
// The last of Newton's steps errs by its square times a curvature, and by the thousandth that
// slopes may be wrong.
constexpr double kSkinLastStep = 3e-6;
constexpr double kHeadspaceTolerance = 2e-8;
constexpr double kHeadspaceLastStep = 3e-5;
// Between two faces that radiate like water.
constexpr double kHeadspaceExchange = kWaterEmissivity / (2.0 - kWaterEmissivity);
// Nearer to the room than that a wall conducts as it does there, K.
constexpr double kNearest = 1e-6;
// So little more or less dry wall moves a closed mouth's balance in proportion.
constexpr double kAboutTheSame = 3e-4;

std::vector<Layer> withMetal(const Vessel& vessel, const Covering& covering) {
  std::vector<Layer> layers{layerOf(vessel.wallThickness, vessel.wallConductivity)};
  layers.insert(layers.end(), covering.insulation.begin(), covering.insulation.end());
  return layers;
}

SlopedFlux scaled(const SlopedFlux& flux, double factor) {
  return {.flux = factor * flux.flux, .slope = factor * flux.slope};
}

}  // namespace

Time bedLag(const Hose& hose, Volume wort) {
  const bool delays = hose.length > metres(0.0) && hose.flow > VolumeFlow{};
  return delays ? wort / hose.flow : seconds(0.0);
}

HeatLossModel::HeatLossModel(const Vessel& vessel, const Hose& hose, const Surroundings& room,
                             Length fill, double openFraction, double evaporationFactor,
                             double lossFactor)
    : room_(room),
      saturatedInRoom_(saturationPressure(room.air.temperature)),
      films_(room.air.temperature, room.air.pressure),
      diameter_(vessel.innerDiameter),
      height_(vessel.height),
      hoseLength_(hose.length),
      hoseDiameter_(hose.outerDiameter),
      mouth_(crossSection(vessel)),
      quarter_(films_.sized(0.25 * vessel.innerDiameter)),
      open_(openFraction),
      evaporationFactor_(evaporationFactor),
      lossFactor_(lossFactor),
      returnsAbove_(hose.returnsAbove),
      pumpHeat_(hose.pumpHeat),
      wallAlong_(vessel.wallConductivity * vessel.wallThickness),
      waterBoils_(inKelvin(saturationTemperature(room.air.pressure))) {
  assert(openFraction >= 0.0 && openFraction <= 1.0);
  const Length radius = 0.5 * vessel.innerDiameter;
  const auto face = [&](ThermalInsulance insulance, double emissivity, Length size, auto film) {
    return WallFace{.insulance = inSquareMetreKelvinsPerWatt(insulance),
                    .emissivity = emissivity,
                    .film = film,
                    .size = films_.sized(size)};
  };
  const auto sideLayers = withMetal(vessel, vessel.side);
  WallFace side = face(cylindricalInsulance(radius, sideLayers), vessel.side.emissivity, height_,
                       &AirFilms::beside);
  side.areaRatio = outerRadius(radius, sideLayers) / radius;
  side_.face = side;
  setFilmHeight(fill);
  const TemperatureDifference leastBelow = kelvins(1.0);
  const WallConductance::Range most{
      .above = inKelvins(kHottestLiquid - room.air.temperature),
      .below = inKelvins(std::max(room.air.temperature - kColdestLiquid, leastBelow))};
  dry_ = WallConductance(side, most);
  const Length quarter = 0.25 * diameter_;
  lid_ = WallConductance(face(flatInsulance(withMetal(vessel, vessel.lid)), vessel.lid.emissivity,
                              quarter, &AirFilms::above),
                         most);
  const ThermalInsulance below = flatInsulance(withMetal(vessel, vessel.base));
  base_ = WallConductance(face(below, vessel.base.emissivity, quarter, &AirFilms::below), most);
  metalBase_ = inSquareMetreKelvinsPerWatt(below);
  solidBase_ =
      vessel.support.onLegs ? 0.0 : inSquareMetreKelvinsPerWatt(below + vessel.support.solid);
  if (hoseLength_ > metres(0.0)) {
    hose_.face = face(hose.wall, hose.emissivity, hoseDiameter_, &AirFilms::around);
  }
}

// Flux per inner area where the inside is `whole` above the room and across the wort's film drops
// innerFilm times flux^(3/4). Newton's steps on a nearly straight line, from where the last
// solution points to.
double HeatLossModel::SolvedWall::through(double whole, double innerFilm, const AirFilms& air) {
  if (std::abs(whole) < kNearest) return through(kNearest, innerFilm, air) / kNearest * whole;
  const double insulance = face.insulance;
  double skin = lastSkin + rises * (whole - lastWhole);
  if (!(skin * whole > 0.0 && std::abs(skin) < std::abs(whole))) skin = rises * whole;
  double flux = 0.0;
  double slope = 1.0;
  for (int i = 0; i < kMostIterations; ++i) {
    const SlopedFlux out = face.outOf(skin, air);
    const double size = std::abs(out.flux);
    const double drop = innerFilm * std::sqrt(size * std::sqrt(size));
    slope = 1.0 + out.slope * (insulance + 0.75 * drop / size);
    const double surplus = skin + out.flux * insulance + std::copysign(drop, out.flux) - whole;
    double step = -surplus / slope;
    // Never past either end.
    if ((skin + step) * whole <= 0.0) step = -0.9 * skin;
    if (std::abs(skin + step) > std::abs(whole)) step = 0.5 * (whole - skin);
    skin += step;
    flux = out.flux + out.slope * step;
    if (std::abs(step) <= kSkinLastStep * std::min(1.0, std::abs(whole))) break;
  }
  lastSkin = skin;
  lastWhole = whole;
  rises = 1.0 / slope;
  return flux;
}

HeatLossModel::Skins HeatLossModel::skins() {
  const Temperature room = room_.air.temperature;
  const double base = solidBase_ > 0.0 ? baseInside_ * (1.0 - metalBase_ / solidBase_)
                                       : base_.skinAt(baseInside_, films_);
  return {room + kelvins(side_.lastSkin), room + kelvins(base),
          room + kelvins(lid_.skinAt(lidInside_, films_))};
}

namespace {

// What goes to zero with the headspace's distance from the wort, all but what is left of it where
// water boils.
double vanishing(double excess, double lacking, double left) {
  const double sum = lacking + 7.5 * std::cbrt(left) * left;
  const double power = sum / fourthRoot(sum);
  return excess * power / (power + 3.0);
}

}  // namespace

// Newton's polynomial through the last solutions.
double HeatLossModel::LastHeadspaces::guess(double excess, double lacking) const {
  // Above boiling it is where steam begins to condense, and a little colder.
  if (lacking <= 0.0) return left_ - lacking;
  if (known_ == 0) return 0.1 * vanishing(excess, lacking, left_);
  const double root = fourthRoot(lacking);
  std::array<double, kMost> difference = share_;
  double share = difference[0];
  double product = 1.0;
  for (std::size_t order = 1; order < known_; ++order) {
    for (std::size_t i = 0; i + order < known_; ++i) {
      difference[i] = (difference[i] - difference[i + 1]) / (root_[i] - root_[i + order]);
    }
    product *= root - root_[order - 1];
    share += product * difference[0];
  }
  const bool likely = 0.3 * share_[0] < share && share < 3.0 * share_[0];
  return (likely ? share : share_[0]) * vanishing(excess, lacking, left_);
}

void HeatLossModel::LastHeadspaces::remember(double excess, double lacking, double below) {
  if (lacking <= 0.0) left_ = std::max(below + lacking, 1e-9);
  const double share = below / vanishing(excess, lacking, left_);
  if (lacking <= 0.0 || !(share > 0.0)) return;
  const double root = fourthRoot(lacking);
  if (warmer_ != (excess > 0.0)) forgetTrend();
  warmer_ = excess > 0.0;
  // Two solutions at one place tell no trend, and guess() divides by the way between any two: the
  // newer replaces every older one that near, so that no two ever are.
  const LastHeadspaces old = *this;
  known_ = 1;
  for (std::size_t i = 0; i < old.known_ && known_ < kMost; ++i) {
    if (std::abs(root - old.root_[i]) < 1e-4) continue;
    root_[known_] = old.root_[i];
    share_[known_++] = old.share_[i];
  }
  root_[0] = root;
  share_[0] = share;
}

void HeatLossModel::setFilmHeight(Length fill) {
  side_.face.size = films_.sized(std::max(fill, 0.02 * height_));
  const double most = inKelvins(kHottestLiquid - room_.air.temperature);
  sideMayBend_ = side_.face.seamAt(most, films_) > kNoSeam;
}

void HeatLossModel::enterStage(Length fill, double openFraction, Length hoseLength) {
  assert(openFraction >= 0.0 && openFraction <= 1.0);
  assert(hoseLength <= metres(0.0) || hose_.face.film);  // was there from the beginning
  open_ = openFraction;
  hoseLength_ = hoseLength;
  lastHeadspaces_.end();  // the dry wall may have changed
  setFilmHeight(fill);
}

const HeatLossModel::EvaporationBends& HeatLossModel::evaporationBends() {
  if (evaporationBends_) return *evaporationBends_;
  const auto ahead = [&](double kelvins) {
    const SurfaceAir water = surfaceAir(kelvin(kelvins), room_.air.pressure);
    const ShahsForms forms = shahsForms(water, room_.air, room_.draught);
    return forms.natural - forms.forced;
  };
  // In dry air the dew point lies where no formula reaches.
  const Pressure least = saturationPressure(kColdestLiquid);
  const double dew = inKelvin(dewPoint(std::max(room_.air.vapourPressure, least)));
  const double boils = waterBoils_;
  EvaporationBends bends{dew, boils};
  const double low = dew + 1e-6;
  const double atLow = ahead(low);
  const double atHigh = ahead(boils);
  if (atLow < 0.0 && atHigh > 0.0) {
    std::uintmax_t most = 60;
    bends.overtaken =
        boost::math::tools::toms748_solve(ahead, low, boils, atLow, atHigh,
                                          boost::math::tools::eps_tolerance<double>(40), most)
            .second;
  }
  return evaporationBends_.emplace(bends);
}

// Between rim and wort stands moist air which warms the wall's inner face; the wall's foot is as
// hot as the wort. The outside is cooled as where the inner face is as warm as that air.
void HeatLossModel::openMouthAt(AtTemperature& now) {
  const Temperature room = room_.air.temperature;
  const TemperatureDifference whole = now.wort_ - room;
  const Area surface = open_ * mouth_;
  const SlopedFilm above = films_.above(inKelvins(whole), quarter_);
  now.at(Seam::SurfaceFilm) = above.seam;
  now.convection_ = surface * perSquareMetreKelvin(above.h) * whole;
  now.radiation_ = surface * radiationToRoom(kWaterEmissivity, now.wort_, room);
  const MassFlux flux = surfaceRenewal(motion()) * evaporationFactor_ *
                        draughtyEvaporation(now.water_, room_.air, room_.draught);
  now.escapes_ = mouth_ * flux * now.latent_;
  const WellAir well = wellAir(now.water_, saturatedInRoom_, now.latent_, room_.air.pressure);
  const double warmth = inKelvins(well.temperature - room);
  // At the room's temperature nothing flows; what the films would be there is asked beside it.
  constexpr double kBeside = 1e-3;
  const double asked = std::abs(warmth) < kBeside ? kBeside : warmth;
  now.dryWall_ = {.width = pi * diameter_,
                  .length = metres(0.0),
                  .along = wallAlong_,
                  .warm = well.film,
                  .cool = perSquareMetreKelvin(lossFactor_ * dry_.at(asked, films_).flux / asked),
                  .foot = whole,
                  .warmth = kelvins(warmth)};
  now.at(Seam::DryFilm) = dry_.seam();
}

// The well of moist air stands between two alike resistances, each half of that to what the surface
// evaporates, E. A wall that draws C out of it lowers its excess over the room by C/(2 E) of
// itself, draws C/2 more out of the wort, and lets C/2 less over the rim. What condenses drips
// back.
void HeatLossModel::openMouth(AtTemperature& now, Length dry, HeatFlows& flows) const {
  flows.lost[Path::SurfaceConvection] = now.convection_;
  flows.lost[Path::SurfaceRadiation] = now.radiation_;
  Power escapes = now.escapes_;
  if (dry > metres(0.0)) {
    WarmedFin wall = now.dryWall_;
    wall.length = dry;
    const FinResponse fin = responseOf(wall);
    const Power warmed = fin.flows(wall.foot, wall.warmth).warmed;
    // As a share of what it would be in air as hot as the wort: neither has a size at the room's.
    const Power asWort = wall.width * wall.length * wall.warm * wall.foot;
    now.at(Seam::WallCondenses) =
        static_cast<double>(warmed / asWort) * (wall.foot < kelvins(0.0) ? -1.0 : 1.0);
    const Power drawn = std::max(warmed, watts(0.0));
    const double share =
        escapes > watts(0.0) ? static_cast<double>(escapes / (escapes + 0.5 * drawn)) : 0.0;
    flows.lost[Path::DryWall] = open_ * fin.flows(wall.foot, share * wall.warmth).cooled;
    escapes -= 0.5 * share * drawn;
  }
  flows.lost[Path::Evaporation] = open_ * escapes;
  flows.vapour = flows.lost[Path::Evaporation] / now.latent_;
}

// A headspace at a trial place below the wort: what comes up and does not go out, and the two ways
// out, in W; each with its slope against the kelvins below, in W/K.
struct HeatLossModel::HeadspaceTrial {
  double surplus, surplusSlope;
  double lid, lidSlope;
  double perDryArea, perDryAreaSlope;  // W/m2, W/(m2 K)
  double rises;                        // K until no vapour rises any more
  double filmSeam;
};

// Wort, headspace, then lid and dry wall side by side: their inner faces share one temperature.
HeatLossModel::HeadspaceTrial HeatLossModel::headspace(const AtTemperature& now, double below,
                                                       double dryArea) {
  const double wort = inKelvin(now.wort_);
  const double inner = wort - below;
  const double mouth = inSquareMetres(mouth_);
  const double whole = inner - inKelvin(room_.air.temperature);
  const SlopedFlux lid = scaled(lid_.at(whole, films_), lossFactor_);
  const SlopedFlux wall = scaled(dry_.at(whole, films_), lossFactor_);
  const SlopedMassFlux drips = headspaceCondensation(now.water_, kelvin(inner), room_.air.pressure);
  const double latent = inJoulesPerKilogram(now.latent_);
  // Where nothing lies between the two, films are asked beside it.
  const double difference = std::max(std::abs(below), kNearest);
  const SlopedFilm film = films_.between(wort - 0.5 * below, difference, quarter_);
  const SlopedFilm shone = slopedRadiation(kHeadspaceExchange, inner, wort);
  const double up =
      latent * inKilogramsPerSquareMetreHour(drips.flux) / 3600.0 + (film.h + shone.h) * below;
  const double upSlope = -latent * drips.perKelvinOfLid + film.h + film.slope * difference +
                         shone.h - shone.slope * below;
  HeadspaceTrial t{};
  t.lid = mouth * lid.flux;
  t.lidSlope = -mouth * lid.slope;
  t.perDryArea = wall.flux;
  t.perDryAreaSlope = -wall.slope;
  t.surplus = mouth * up - t.lid - dryArea * wall.flux;
  t.surplusSlope = mouth * upSlope - t.lidSlope - dryArea * t.perDryAreaSlope;
  t.rises = inKelvins(drips.rises);
  t.filmSeam = film.seam;
  return t;
}

// Steam alone rises by the cube root of the dry air that a colder face above holds: 13 kW/m2 where
// that is 1 kg/m3, of which a kelvin colder brings 0.033. For a first guess.
double HeatLossModel::leftAtBoiling(double dryArea) {
  const double whole = waterBoils_ - inKelvin(room_.air.temperature);
  const double flux =
      lossFactor_ * (lid_.at(whole, films_).flux +
                     dryArea / inSquareMetres(mouth_) * dry_.at(whole, films_).flux);
  const double share = std::max(flux, 1.0) / 12950.0;
  return share * share * share / 0.0334;
}

// From a guess by the last solutions Newton's steps, halving the bracket whenever a step would
// leave it or is not half as long as the one before, as where vapour begins to rise and the surplus
// with it. A step short enough is taken without asking again, the flows going along their slopes.
void HeatLossModel::closedMouthAt(AtTemperature& now, double dryArea) {
  const double limit = inKelvins(now.wort_ - room_.air.temperature);
  const double lacking = waterBoils_ - inKelvin(now.wort_);
  if (lastHeadspaces_.isNew()) lastHeadspaces_.begin(leftAtBoiling(dryArea));
  double low = std::min(0.0, limit);
  double high = std::max(0.0, limit);
  const AtTemperature::Closed& known = now.closed_;
  const double guess = known.dryArea < 0.0
                           ? lastHeadspaces_.guess(limit, lacking)
                           : known.below + known.belowSlope * (dryArea - known.dryArea);
  double below = std::clamp(guess, low, high);
  HeadspaceTrial here = headspace(now, below, dryArea);
  double before = high - low;
  for (int i = 0; i < kMostIterations; ++i) {
    (here.surplus < 0.0 ? low : high) = below;
    double next = below - here.surplus / here.surplusSlope;
    const bool fast = next > low && next < high && std::abs(next - below) < 0.5 * before;
    if (!fast) next = 0.5 * (low + high);
    const double move = next - below;
    before = std::abs(move);
    // Where vapour only just rises the surplus is so steep that a step says little.
    const bool steep = before > 0.01 * here.rises;
    if (!steep && before <= kHeadspaceTolerance) break;
    below = next;
    if (fast && before <= kHeadspaceLastStep &&
        move * move <= 0.5 * kHeadspaceTolerance * here.rises) {
      here.lid += here.lidSlope * move;
      here.perDryArea += here.perDryAreaSlope * move;
      break;
    }
    here = headspace(now, below, dryArea);
  }
  lastHeadspaces_.remember(limit, lacking, below);
  lidInside_ = limit - below;
  // More dry wall draws the headspace further down.
  const double perArea = here.perDryArea / here.surplusSlope;
  now.closed_ = {.dryArea = dryArea,
                 .lid = here.lid,
                 .dryWall = dryArea * here.perDryArea,
                 .below = below,
                 .lidSlope = here.lidSlope * perArea,
                 .dryWallSlope = here.perDryArea + dryArea * here.perDryAreaSlope * perArea,
                 .belowSlope = perArea};
  now.at(Seam::HeadspaceFilm) = here.filmSeam;
  now.at(Seam::LidFilm) = lid_.seam();
  now.at(Seam::DryFilm) = dry_.seam();
}

void HeatLossModel::closedMouth(AtTemperature& now, Length dry, HeatFlows& flows) {
  const double dryArea = inSquareMetres(pi * diameter_ * dry);
  AtTemperature::Closed& known = now.closed_;
  if (known.dryArea < 0.0 || std::abs(dryArea - known.dryArea) > kAboutTheSame * known.dryArea) {
    closedMouthAt(now, dryArea);
  }
  const double more = dryArea - known.dryArea;
  const double share = 1.0 - open_;
  flows.lost[Path::Lid] = share * watts(known.lid + known.lidSlope * more);
  flows.lost[Path::DryWall] += share * watts(known.dryWall + known.dryWallSlope * more);
}

HeatLossModel::AtTemperature HeatLossModel::at(Temperature liquid) {
  AtTemperature now;
  now.seams_.fill(kNoSeam);
  now.wort_ = liquid;
  now.density_ = waterDensity(liquid);
  now.specificHeat_ = waterSpecificHeat(liquid);
  now.enthalpy_ = waterEnthalpy(liquid);
  now.latent_ = latentHeatByImage(liquid);
  now.water_ = surfaceAir(liquid, room_.air.pressure);
  const double whole = inKelvins(liquid - room_.air.temperature);
  baseInside_ = whole;
  const double side = side_.through(whole, waterFilmDropPerFlux(liquid), films_);
  now.side_ = lossFactor_ * wattsPerSquareMetre(side);
  if (sideMayBend_) now.at(Seam::SideFilm) = side_.face.seamAt(side_.lastSkin, films_);
  now.base_ = lossFactor_ * wattsPerSquareMetre(solidBase_ > 0.0 ? whole / solidBase_
                                                                 : base_.at(whole, films_).flux);
  if (hoseLength_ > metres(0.0))
    now.hose_ = lossFactor_ * wattsPerSquareMetre(hose_.through(whole, 0.0, films_));
  if (open_ > 0.0) openMouthAt(now);
  return now;
}

HeatFlows HeatLossModel::flows(AtTemperature& now, Length fill) {
  const Length dry = std::max(height_ - fill, metres(0.0));
  HeatFlows flows{};
  flows.lost[Path::Side] = pi * diameter_ * fill * now.side_;
  flows.lost[Path::Base] = mouth_ * now.base_;
  if (open_ > 0.0) openMouth(now, dry, flows);
  if (open_ < 1.0) closedMouth(now, dry, flows);
  if (hoseLength_ > metres(0.0)) {
    flows.lost[Path::Hose] = pi * hoseDiameter_ * hoseLength_ * now.hose_;
  }
  return flows;
}

}  // namespace physics
