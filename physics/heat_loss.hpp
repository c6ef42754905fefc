// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves a vessel, and by which path.
#pragma once

#include <array>
#include <cstddef>

#include "physics/air.hpp"
#include "physics/evaporation.hpp"
#include "physics/flux_table.hpp"
#include "physics/units.hpp"
#include "physics/vessel.hpp"

namespace physics {

// A hose outside the vessel through which wort is pumped during the mash.
struct Hose {
  Length length;  // 0: no recirculation
  Length outerDiameter;
  ThermalInsulance wall;  // of hose and insulation, referred to the outer area
  double emissivity = 0.9;
  // Its return falls on the wort and renews the surface; false where it ends below it.
  bool returnsAbove = true;
  // What of the pump's power ends in the wort while it runs: 20-30 W of the small magnetically
  // coupled pumps sold to brewers (common practice, no source), all of it where the wort cools the
  // motor. 0: left out.
  Power pumpHeat = watts(0.0);
  // The pump's flow through the mash; 0: the bed follows a ramp at once. See bedLag().
  VolumeFlow flow = litres(0.0) / seconds(1.0);

  bool operator==(const Hose&) const = default;
};

// How long what is heated below the bed needs to displace what stands in it: volume over flow, plug
// flow; 7 min for 28 L at 4 L/min. A bed that mixes or channels has most of it sooner and the last
// of it later. 0 without a pump or where the flow is not stated. Own choice.
Time bedLag(const Hose& hose, Volume wort);

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
  MassFlow vapour;  // leaving for good; condensate under a lid returns
};

// Heat leaving a vessel at a liquid temperature and fill, by path, in the steady state of walls
// and lid: quasi-steady, since a jacket and a lid store well under 1 % of what wort does.
//
// Side and base: inner film, metal, layers, outer film with radiation, each solved for its skin.
// Open part of the mouth: evaporation, convection and radiation from the wort's surface, and the
// dry wall as a fin standing in the wort's heat, warmed inside by the moist air over the wort. What
// radiates from the wort to that wall is in the surface's radiation, which counts as if all of the
// surface saw the room. Closed part: the headspace brings vapour and
// radiation from wort to lid and dry wall, which pass it on to the room; what condenses drips
// back. A part-open lid mixes the two by area.
//
// While wort is pumped through a hose that returns above it, the open surface evaporates
// surfaceRenewal(Motion::Pumped) times as much, however long the hose.
//
// The film on the wetted side keeps the length it was constructed with, while areas follow the
// fill: 1 % of fill is 0.3 % of the film. Not for two threads at once: it remembers the last
// skins as the next first guesses, and answers within 1e-9 K of skin whatever they were.
class HeatLossModel {
 public:
  // openFraction 0-1; evaporationFactor multiplies the open surface's law (1: uncalibrated).
  HeatLossModel(const Vessel& vessel, const Hose& hose, const Surroundings& room, Length fill,
                double openFraction, double evaporationFactor = 1.0);

  // Range: liquid from -20 C, where it may be supercooled but never ice, to 105 C, fill from 0 to
  // the vessel's height.
  HeatFlows flows(Temperature liquid, Length fill);

  // What the pump gives the wort in this stage.
  Power pumpHeat() const { return hoseLength_ > metres(0.0) ? pumpHeat_ : watts(0.0); }

  // Outermost faces as the last flows() found them. Not once tabulated: a table knows no skins.
  struct Skins {
    Temperature side, base, lid;
  };
  Skins skins() const {
    const Temperature room = room_.air.temperature;
    return {room + side_.excess, room + base_.excess, room + lid_.excess};
  }

  // Makes flows() several times faster for wort between the ice point and `hottest` by remembering
  // each wall's flux in tables that fill as they are asked: within 1e-8 of it (above 95 C 5e-8, and
  // 1e-6 behind a headspace full of vapour), and 1e-3 some kelvins either side of where an outer
  // film's law bends (a lid at Ra 4.7e6, an upright wall at 1e9). Side, base and hose are solved as
  // ever less than 4 K above the room and below it, and a side with wort below 20 or above 105 C,
  // where the water film's law bends.
  void tabulate(Temperature hottest);
  // The same vessel and room in another stage of the day; keeps what does not depend on it. A hose
  // of no length: no pumping.
  void enterStage(Length fill, double openFraction, Length hoseLength);

 private:
  // One face's way from inside to room, per inner area.
  struct Wall {
    ThermalInsulance insulance;
    double areaRatio;  // outer area over inner
    double emissivity;
    TemperatureDifference excess;  // of the skin over the room, the last solution
    TemperatureDifference whole;   // of the inside over the room, then
    double slope;                  // of the balance about it
    FluxTable table;
  };
  // How far down from wort to room the headspace lies, as solved last, the latest first.
  struct Headspace {
    static constexpr std::size_t kRemembered = 4;
    static constexpr double kNear = 10.0;  // K
    std::array<double, kRemembered> share{0.1, 0.0, 0.0, 0.0};
    std::array<double, kRemembered> at{};  // K, of the wort then
    std::size_t known = 1;
    double shareAt(Temperature liquid) const;
    void remember(Temperature liquid, double newShare);
  };
  template <class Film, class InnerFilm>
  SlopedFlux solved(Wall& wall, TemperatureDifference whole, const Film& film,
                    const InnerFilm& innerFilm);
  template <class Film, class InnerFilm>
  HeatFlux through(Wall& wall, Temperature inside, const Film& film, const InnerFilm& innerFilm);
  HeatFlux throughSide(Temperature liquid);
  HeatFlux throughBase(Temperature liquid);
  HeatFlux throughHose(Temperature liquid);
  AirProperties filmAir(Temperature skin) const;
  HeatTransferCoefficient filmAbove(Temperature face) const;
  HeatTransferCoefficient filmBelow(Temperature face) const;
  HeatTransferCoefficient filmBeside(Temperature face, Length height) const;
  Motion motion() const {
    return hoseLength_ > metres(0.0) && returnsAbove_ ? Motion::Pumped : Motion::Still;
  }
  void openMouth(Temperature liquid, const SurfaceAir& water, SpecificEnergy latent, Length dry,
                 HeatFlows& flows);
  WarmedFin openDryWall(Temperature liquid, const WellAir& well, Length dry);
  HeatFlux throughDryWall(Temperature inside);
  void closedMouth(Temperature liquid, const SurfaceAir& water, SpecificEnergy latent, Area dryArea,
                   double share, HeatFlows& flows);

  Surroundings room_;
  Pressure saturatedInRoom_;  // vapour at the room's temperature
  Length diameter_, height_, hoseLength_, hoseDiameter_;
  Area mouth_;
  double open_, evaporationFactor_;
  bool returnsAbove_;
  Power pumpHeat_;
  Wall side_, base_, lid_, dry_, hose_;
  bool onLegs_;
  Length filmHeight_;
  ThermalConductance wallAlong_;  // conductivity times thickness of the metal wall
  Headspace headspace_;
};

}  // namespace physics
