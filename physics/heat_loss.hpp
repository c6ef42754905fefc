// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves a vessel, and by which path.
#pragma once

#include <array>
#include <cstddef>

#include "physics/air.hpp"
#include "physics/units.hpp"
#include "physics/vessel.hpp"

namespace physics {

// A hose outside the vessel through which wort is pumped during the mash.
struct Hose {
  Length length;  // 0: no recirculation
  Length outerDiameter;
  ThermalInsulance wall;  // of hose and insulation, referred to the outer area
  double emissivity = 0.9;
};

// The room the kettle stands in.
struct Surroundings {
  MoistAir air;
  Velocity draught;  // over the open surface
};

enum class Path : std::size_t {
  Side,     // the wall behind which there is wort
  DryWall,  // the wall above it
  Base,
  Lid,
  SurfaceConvection,  // from the open part of the mouth
  SurfaceRadiation,
  Evaporation,  // latent heat only
  Hose
};
inline constexpr std::size_t kPathCount = 8;

template <class Q>
struct ByPath {
  std::array<Q, kPathCount> values{};
  Q& operator[](Path p) { return values[static_cast<std::size_t>(p)]; }
  const Q& operator[](Path p) const { return values[static_cast<std::size_t>(p)]; }
  Q total() const {
    Q sum{};
    for (const Q& v : values) sum += v;
    return sum;
  }
};

struct HeatFlows {
  ByPath<Power> lost;
  MassFlow vapour;                          // leaving for good; condensate under a lid returns
  Temperature sideSkin, baseSkin, lidSkin;  // outermost faces; the room's where there is none
};

// Heat leaving a vessel at a liquid temperature and fill, by path, in the steady state of walls
// and lid: quasi-steady, since a jacket and a lid store well under 1 % of what wort does.
//
// Side and base: inner film, metal, layers, outer film with radiation, each solved for its skin.
// Open part of the mouth: evaporation, convection and radiation from the wort's surface, and the
// dry wall as a fin standing in the wort's heat. Closed part: the headspace brings vapour and
// radiation from wort to lid and dry wall, which pass it on to the room; what condenses drips
// back. A part-open lid mixes the two by area.
//
// The film on the wetted side keeps the length it was constructed with, while areas follow the
// fill: 1 % of fill is 0.3 % of the film. Not for two threads at once: it remembers the last
// skins as the next first guesses, and answers within 1e-9 K of skin whatever they were.
class HeatLossModel {
 public:
  // openFraction 0-1; evaporationFactor multiplies the open surface's law (1: uncalibrated).
  HeatLossModel(const Vessel& vessel, const Hose& hose, const Surroundings& room, Length fill,
                double openFraction, double evaporationFactor = 1.0);

  // Range: liquid from the ice point to 105 C, fill from 0 to the vessel's height.
  HeatFlows flows(Temperature liquid, Length fill);

 private:
  // One face's way from inside to room, per inner area.
  struct Wall {
    ThermalInsulance insulance;
    double areaRatio;  // outer area over inner
    double emissivity;
    TemperatureDifference excess;  // of the skin over the room, the last solution
    TemperatureDifference whole;   // of the inside over the room, then
    double slope;                  // of the balance about it
  };
  template <class Film, class InnerDrop>
  HeatFlux through(Wall& wall, Temperature inside, const Film& film, const InnerDrop& drop);
  Power fin(Temperature liquid, Length dry) const;
  void closedMouth(Temperature liquid, Area dryArea, double share, HeatFlows& flows);

  Surroundings room_;
  Length diameter_, height_, hoseLength_, hoseDiameter_;
  Area mouth_;
  double open_, evaporationFactor_;
  Wall side_, base_, lid_, dry_, hose_;
  bool onLegs_;
  Length filmHeight_;
  ThermalConductance wallAlong_;  // conductivity times thickness of the metal wall
  // Of lid and dry wall's inner face under the wort, the last solution, and how fast the flow
  // into the headspace outgrew the flow out of it, then.
  TemperatureDifference headspace_, headspaceWhole_;
  double headspaceSlope_;  // W/K
};

}  // namespace physics
