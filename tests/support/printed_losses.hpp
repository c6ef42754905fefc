// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves a vessel, by the printed laws alone: every skin and headspace found between its
// bounds by bracketing, nothing remembered, no image, no slope. Slow; a second opinion for
// HeatLossModel.
#pragma once

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <functional>
#include <numbers>
#include <vector>

#include "physics/convection.hpp"
#include "physics/evaporation.hpp"
#include "physics/heat_loss.hpp"
#include "physics/vessel.hpp"
#include "physics/walls.hpp"
#include "physics/water.hpp"

namespace test_support {

class PrintedLosses {
 public:
  // As HeatLossModel: the wetted side's film has the height of `filmFill`.
  PrintedLosses(const physics::Vessel& vessel, const physics::Hose& hose,
                const physics::Surroundings& room, physics::Length filmFill, double open,
                double evaporationFactor = 1.0)
      : vessel_(vessel),
        hose_(hose),
        room_(room),
        film_(std::max(filmFill, 0.02 * vessel.height)),
        open_(open),
        factor_(evaporationFactor) {}

  physics::HeatFlows flows(physics::Temperature liquid, physics::Length fill) const {
    using namespace physics;
    HeatFlows flows{};
    const auto around = std::numbers::pi * vessel_.innerDiameter;
    const Area mouth = crossSection(vessel_);
    const Length dry = std::max(vessel_.height - fill, metres(0.0));
    const Temperature room = room_.air.temperature;
    const SpecificEnergy latent = latentHeat(liquid);
    flows.lost[Path::Side] = around * fill * side(liquid);
    flows.lost[Path::Base] = mouth * base(liquid);
    if (hose_.length > metres(0.0)) {
      flows.lost[Path::Hose] =
          std::numbers::pi * hose_.outerDiameter * hose_.length * throughHose(liquid);
    }
    if (open_ > 0.0) {
      flows.lost[Path::SurfaceConvection] = open_ * mouth * above(liquid) * (liquid - room);
      flows.lost[Path::SurfaceRadiation] = open_ * mouth * radiationToRoom(0.96, liquid, room);
      const bool pumped = hose_.length > metres(0.0) && hose_.returnsAbove;
      Power escapes = mouth * surfaceRenewal(pumped ? Motion::Pumped : Motion::Still) * factor_ *
                      draughtyEvaporation(liquid, room_.air, room_.draught) * latent;
      if (dry > metres(0.0)) {
        const WellAir well = wellAir(surfaceAir(liquid, room_.air.pressure),
                                     saturationPressure(room), latent, room_.air.pressure);
        const TemperatureDifference warmth = well.temperature - room;
        const TemperatureDifference asked = abs(warmth) < kelvins(1e-3) ? kelvins(1e-3) : warmth;
        WarmedFin fin{.width = around,
                      .length = dry,
                      .along = vessel_.wallConductivity * vessel_.wallThickness,
                      .warm = well.film,
                      .cool = dryWall(room + asked) / asked,
                      .foot = liquid - room,
                      .warmth = warmth};
        const Power drawn = std::max(flowsThrough(fin).warmed, watts(0.0));
        const double share =
            escapes > watts(0.0) ? static_cast<double>(escapes / (escapes + 0.5 * drawn)) : 0.0;
        fin.warmth = share * warmth;
        flows.lost[Path::DryWall] = open_ * flowsThrough(fin).cooled;
        escapes -= 0.5 * share * drawn;
      }
      flows.lost[Path::Evaporation] = open_ * escapes;
      flows.vapour = flows.lost[Path::Evaporation] / latent;
    }
    if (open_ < 1.0) addClosed(liquid, around * dry, flows);
    return flows;
  }

 private:
  using FilmOf = std::function<physics::HeatTransferCoefficient(physics::Temperature skin)>;
  using DropOf = std::function<physics::TemperatureDifference(physics::HeatFlux)>;

  // Where a rising function of kelvins is zero, to the last digits.
  static double root(const std::function<double(double)>& surplus, double low, double high) {
    const double atLow = surplus(low);
    const double atHigh = surplus(high);
    if (atLow >= 0.0) return low;
    if (atHigh <= 0.0) return high;
    std::uintmax_t most = 200;
    const auto found = boost::math::tools::toms748_solve(
        surplus, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(52), most);
    return 0.5 * (found.first + found.second);
  }

  physics::AirProperties airAt(physics::Temperature skin) const {
    return physics::dryAir(physics::midpoint(skin, room_.air.temperature), room_.air.pressure);
  }
  // Of a face that looks up or down, hotter or colder than the air.
  physics::HeatTransferCoefficient level(physics::Temperature face, bool looksUp) const {
    const physics::Temperature room = room_.air.temperature;
    const physics::Length quarter = 0.25 * vessel_.innerDiameter;
    return (looksUp == (face >= room)
                ? physics::plateFacingUpFilm(face, room, quarter, airAt(face))
                : physics::plateFacingDownFilm(face, room, quarter, airAt(face)))
        .h;
  }
  physics::HeatTransferCoefficient above(physics::Temperature face) const {
    return level(face, true);
  }
  physics::HeatTransferCoefficient below(physics::Temperature face) const {
    return level(face, false);
  }
  FilmOf beside(physics::Length height) const {
    return [this, height](physics::Temperature skin) {
      return verticalWallFilm(skin, room_.air.temperature, height, airAt(skin)).h;
    };
  }

  physics::HeatFlux through(physics::Temperature inside, physics::ThermalInsulance insulance,
                            double areaRatio, double emissivity, const FilmOf& film,
                            const DropOf& drop) const {
    using namespace physics;
    const Temperature room = room_.air.temperature;
    const auto fluxAt = [&](double skin) {
      const Temperature face = room + kelvins(skin);
      return areaRatio * (film(face) + radiationFilm(emissivity, face, room)) * kelvins(skin);
    };
    const double whole = inKelvins(inside - room);
    const double skin = root(
        [&](double s) {
          const HeatFlux flux = fluxAt(s);
          return s + inKelvins(flux * insulance + drop(flux)) - whole;
        },
        std::min(0.0, whole), std::max(0.0, whole));
    return fluxAt(skin);
  }
  std::vector<physics::Layer> withMetal(const physics::Covering& covering) const {
    std::vector<physics::Layer> layers{
        physics::layerOf(vessel_.wallThickness, vessel_.wallConductivity)};
    layers.insert(layers.end(), covering.insulation.begin(), covering.insulation.end());
    return layers;
  }
  static physics::TemperatureDifference none(physics::HeatFlux) { return physics::kelvins(0.0); }

  physics::HeatFlux upright(physics::Temperature inside, physics::Length height,
                            const DropOf& drop) const {
    using namespace physics;
    const Length radius = 0.5 * vessel_.innerDiameter;
    const auto layers = withMetal(vessel_.side);
    return through(inside, cylindricalInsulance(radius, layers),
                   outerRadius(radius, layers) / radius, vessel_.side.emissivity, beside(height),
                   drop);
  }
  physics::HeatFlux side(physics::Temperature liquid) const {
    return upright(liquid, film_,
                   [&](physics::HeatFlux q) { return physics::waterFilmDrop(q, liquid); });
  }
  physics::HeatFlux dryWall(physics::Temperature inside) const {
    return upright(inside, vessel_.height, none);
  }
  physics::HeatFlux base(physics::Temperature liquid) const {
    using namespace physics;
    const ThermalInsulance metal = flatInsulance(withMetal(vessel_.base));
    if (!vessel_.support.onLegs) {
      return (liquid - room_.air.temperature) / (metal + vessel_.support.solid);
    }
    return through(
        liquid, metal, 1.0, vessel_.base.emissivity, [&](Temperature t) { return below(t); }, none);
  }
  physics::HeatFlux lid(physics::Temperature inside) const {
    return through(
        inside, flatInsulance(withMetal(vessel_.lid)), 1.0, vessel_.lid.emissivity,
        [&](physics::Temperature t) { return above(t); }, none);
  }
  physics::HeatFlux throughHose(physics::Temperature liquid) const {
    return through(
        liquid, hose_.wall, 1.0, hose_.emissivity,
        [&](physics::Temperature skin) {
          return horizontalCylinderFilm(skin, room_.air.temperature, hose_.outerDiameter,
                                        airAt(skin))
              .h;
        },
        none);
  }

  void addClosed(physics::Temperature liquid, physics::Area dryArea,
                 physics::HeatFlows& flows) const {
    using namespace physics;
    const Area mouth = crossSection(vessel_);
    const Pressure p = room_.air.pressure;
    const double limit = inKelvins(liquid - room_.air.temperature);
    const auto surplus = [&](double down) {
      const TemperatureDifference drop = kelvins(down);
      const Temperature inner = liquid - drop;
      const AirProperties air = dryAir(midpoint(liquid, inner), p);
      const HeatFlux up =
          latentHeat(liquid) * headspaceCondensation(liquid, inner, p) +
          plateFacingUpFilm(liquid, inner, 0.25 * vessel_.innerDiameter, air).h * drop +
          radiationBetween(0.96, 0.96, 1.0, liquid, inner);
      return inWatts(mouth * up - mouth * lid(inner) - dryArea * dryWall(inner));
    };
    const double down = root(surplus, std::min(0.0, limit), std::max(0.0, limit));
    const Temperature inner = liquid - kelvins(down);
    flows.lost[Path::Lid] = (1.0 - open_) * (mouth * lid(inner));
    flows.lost[Path::DryWall] += (1.0 - open_) * (dryArea * dryWall(inner));
  }

  const physics::Vessel& vessel_;
  const physics::Hose& hose_;
  physics::Surroundings room_;
  physics::Length film_;
  double open_, factor_;
};

}  // namespace test_support
