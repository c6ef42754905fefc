// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves a vessel, and by which path.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>

#include "physics/air.hpp"
#include "physics/air_films.hpp"
#include "physics/evaporation.hpp"
#include "physics/units.hpp"
#include "physics/vessel.hpp"
#include "physics/wall_conductance.hpp"

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
// skins as the next first guesses, and answers within 1e-8 K of skin whatever they were.
class HeatLossModel {
 public:
  // openFraction 0-1; evaporationFactor multiplies the open surface's law, lossFactor what walls,
  // lid, base and hose pass on (1: uncalibrated).
  HeatLossModel(const Vessel& vessel, const Hose& hose, const Surroundings& room, Length fill,
                double openFraction, double evaporationFactor = 1.0, double lossFactor = 1.0);

  // Where a law of loss bends: each a number that passes 0 there and is smooth on either side.
  enum class Seam : std::size_t {
    SideFilm,  // turns turbulent
    DryFilm,
    LidFilm,  // its law's crossing
    HeadspaceFilm,
    SurfaceFilm,
    WallCondenses  // vapour, in an open vessel
  };
  static constexpr std::size_t kSeams = 6;

  // What leaves at one temperature of the wort. Most of it does not ask how full the vessel is, and
  // is worked out once for many fills.
  class AtTemperature {
   public:
    Temperature wort() const { return wort_; }
    MassDensity waterDensity() const { return density_; }
    SpecificHeat waterSpecificHeat() const { return specificHeat_; }
    SpecificEnergy waterEnthalpy() const { return enthalpy_; }
    double seam(std::size_t which) const { return seams_[which]; }

   private:
    friend HeatLossModel;
    // The closed mouth's balance, and what changes with the dry wall's area, per m2 of it.
    struct Closed {
      double dryArea = -1.0;       // m2; negative before the first
      double lid, dryWall, below;  // W, and K of the headspace below the wort
      double lidSlope, dryWallSlope, belowSlope;
    };
    Temperature wort_;
    MassDensity density_;
    SpecificHeat specificHeat_;
    SpecificEnergy enthalpy_;
    SurfaceAir water_;
    SpecificEnergy latent_;
    HeatFlux side_, base_, hose_;
    // Of the open part.
    Power convection_{}, radiation_{};
    Power escapes_{};  // as vapour, were the whole mouth open
    WarmedFin dryWall_{};
    Closed closed_;
    std::array<double, kSeams> seams_;
    double& at(Seam s) { return seams_[static_cast<std::size_t>(s)]; }
  };

  // Range: liquid from -20 C, where it may be supercooled but never ice, to 109 C, fill from 0 to
  // the vessel's height.
  AtTemperature at(Temperature liquid);
  HeatFlows flows(AtTemperature& at, Length fill);
  HeatFlows flows(Temperature liquid, Length fill) {
    AtTemperature now = at(liquid);
    return flows(now, fill);
  }

  // Where Shah's law passes from one form to the other, K: at the dew point of the room's air, and
  // where the natural form overtakes the forced one, if it does below boiling.
  struct EvaporationBends {
    double dew, overtaken;
  };
  const EvaporationBends& evaporationBends();

  double openFraction() const { return open_; }
  Temperature room() const { return room_.air.temperature; }
  // What the pump gives the wort in this stage.
  Power pumpHeat() const { return hoseLength_ > metres(0.0) ? pumpHeat_ : watts(0.0); }

  // Outermost faces as the last flows() found them.
  struct Skins {
    Temperature side, base, lid;
  };
  Skins skins();

  // The same vessel and room in another stage of the day. A hose of no length: no pumping; one of
  // some only where it was made with a hose.
  void enterStage(Length fill, double openFraction, Length hoseLength);

 private:
  // A wall solved for its skin: the side, where the wort's own film lies inside, and the hose,
  // whose film's law is not smooth where WallConductance has its nodes.
  struct SolvedWall {
    WallFace face;
    // The last solution, a guess for the next.
    double lastSkin = 20.0;   // K over the room
    double lastWhole = 40.0;  // the inside, then
    double rises = 0.5;       // the skin per kelvin of the inside
    double through(double whole, double innerFilm, const AirFilms& air);
  };
  // How far below the wort the headspace lay, as solved last: a guess for the next. As a share of
  // what goes to zero with it, at the room's temperature and where the vapour alone fills it, it
  // changes slowly and steadily with the fourth root of what is lacking to that place.
  class LastHeadspaces {
   public:
    // K; `excess` is the wort's over the room, `lacking` what it lacks to boiling.
    double guess(double excess, double lacking) const;
    void remember(double excess, double lacking, double below);
    // In another stage. `left` is its distance where water boils.
    bool isNew() const { return new_; }
    void begin(double left) {
      left_ = left;
      new_ = false;
    }
    void end() {
      new_ = true;
      forgetTrend();
    }

   private:
    static constexpr std::size_t kMost = 4;
    std::array<double, kMost> share_{};  // the latest first
    std::array<double, kMost> root_{};
    std::size_t known_ = 0;
    bool warmer_ = true;  // than the room
    bool new_ = true;
    double left_ = 1e-3;
    void forgetTrend() { known_ = std::min<std::size_t>(known_, 1); }
  };
  struct HeadspaceTrial;
  void setFilmHeight(Length fill);
  Motion motion() const {
    return hoseLength_ > metres(0.0) && returnsAbove_ ? Motion::Pumped : Motion::Still;
  }
  void openMouthAt(AtTemperature& now);
  void openMouth(AtTemperature& now, Length dry, HeatFlows& flows) const;
  HeadspaceTrial headspace(const AtTemperature& now, double below, double dryArea);
  void closedMouthAt(AtTemperature& now, double dryArea);
  double leftAtBoiling(double dryArea);
  void closedMouth(AtTemperature& now, Length dry, HeatFlows& flows);

  Surroundings room_;
  Pressure saturatedInRoom_;  // vapour at the room's temperature
  AirFilms films_;
  Length diameter_, height_, hoseLength_, hoseDiameter_;
  Area mouth_;
  FaceSize quarter_;
  double open_, evaporationFactor_, lossFactor_;
  bool returnsAbove_;
  Power pumpHeat_;
  SolvedWall side_, hose_;
  WallConductance lid_, dry_, base_;
  double metalBase_;  // m2 K/W, of the base with its layers,
  double solidBase_;  // and with what it stands on; 0 on legs
  bool sideMayBend_;  // its film turn turbulent
  // K over the room, as last asked; for skins().
  double baseInside_ = 0.0, lidInside_ = 0.0;
  ThermalConductance wallAlong_;  // conductivity times thickness of the metal wall
  LastHeadspaces lastHeadspaces_;
  double waterBoils_;                                 // K
  std::optional<EvaporationBends> evaporationBends_;  // once asked for
};

}  // namespace physics
