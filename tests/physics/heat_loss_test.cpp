// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/heat_loss.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <initializer_list>

#include "physics/convection.hpp"
#include "physics/evaporation.hpp"
#include "physics/water.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/printed_losses.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::layer;
using test_support::steelKettle;

constexpr double kPi = 3.14159265358979;
const Pressure kSeaLevel = pascals(101325.0);

Surroundings still(double celsiusRoom, double relativeHumidity = 0.5) {
  return {.air = moistAir(celsius(celsiusRoom), relativeHumidity, kSeaLevel),
          .draught = metresPerSecond(0.0)};
}
HeatFlows flowsOf(const Vessel& v, double at, double fillInMetres, double open,
                  double celsiusRoom = 20.0) {
  return HeatLossModel(v, Hose{}, still(celsiusRoom), metres(fillInMetres), open)
      .flows(celsius(at), metres(fillInMetres));
}
double inW(Power p) { return inWatts(p); }
constexpr double kBrimful = 0.40;  // of the steel kettle: no dry wall

// Each face's heat, passed on from skin to room, worked out here from the skin alone.
TEST(HeatLoss, LeavesTheSkinByFilmAndRadiation) {
  Vessel v = steelKettle();
  v.side = {{layer(10.0, 0.04)}, 0.85};
  v.base = {{layer(5.0, 0.04)}, 0.7};
  HeatLossModel model(v, Hose{}, still(20.0), metres(0.3), 0.0);
  const HeatFlows flows = model.flows(celsius(90.0), metres(0.3));
  const auto skins = model.skins();
  const Temperature room = celsius(20.0);
  const auto airAt = [&](Temperature skin) { return dryAir(midpoint(skin, room), kSeaLevel); };

  const double outerSide = kPi * (0.355 + 0.002 + 0.020) * 0.3;
  const auto side =
      verticalWallFilm(skins.side, room, metres(0.3), airAt(skins.side)).h * (skins.side - room) +
      radiationToRoom(0.85, skins.side, room);
  EXPECT_NEAR(inW(flows.lost[Path::Side]), outerSide * inWattsPerSquareMetre(side), 1e-4);

  const double mouth = 0.25 * kPi * 0.355 * 0.355;
  const Length quarter = metres(0.25 * 0.355);
  const auto base =
      plateFacingDownFilm(skins.base, room, quarter, airAt(skins.base)).h * (skins.base - room) +
      radiationToRoom(0.7, skins.base, room);
  EXPECT_NEAR(inW(flows.lost[Path::Base]), mouth * inWattsPerSquareMetre(base), 1e-4);

  const auto lid =
      plateFacingUpFilm(skins.lid, room, quarter, airAt(skins.lid)).h * (skins.lid - room) +
      radiationToRoom(0.3, skins.lid, room);
  EXPECT_NEAR(inW(flows.lost[Path::Lid]), mouth * inWattsPerSquareMetre(lid), 1e-4);
}

// And the same heat reaching the skin from inside through water film, metal and foam.
TEST(HeatLoss, ReachesTheSkinThroughTheLayers) {
  Vessel v = steelKettle();
  v.side = {{layer(10.0, 0.04)}, 0.85};
  HeatLossModel model(v, Hose{}, still(20.0), metres(0.3), 1.0);
  const HeatFlows flows = model.flows(celsius(90.0), metres(0.3));
  const HeatFlux q = flows.lost[Path::Side] / squareMetres(kPi * 0.355 * 0.3);
  const double radius = 0.5 * 0.355;
  const double layers = radius * (std::log((radius + 0.001) / radius) / 15.0 +
                                  std::log((radius + 0.011) / (radius + 0.001)) / 0.04);
  const double inside = inCelsius(model.skins().side) + inWattsPerSquareMetre(q) * layers +
                        inKelvins(waterFilmDrop(q, celsius(90.0)));
  EXPECT_NEAR(inside, 90.0, 1e-6);
}

TEST(HeatLoss, OfTheOpenSurfaceIsShahsLawPlusFilmPlusRadiation) {
  const HeatFlows flows = flowsOf(steelKettle(), 80.0, kBrimful, 1.0);
  const double mouth = 0.25 * kPi * 0.355 * 0.355;
  const Temperature t = celsius(80.0);
  const Temperature room = celsius(20.0);
  const double perHour = inKilogramsPerSquareMetreHour(openSurfaceEvaporation(t, still(20.0).air));
  EXPECT_NEAR(inKilogramsPerHour(flows.vapour), mouth * perHour, 1e-9);
  EXPECT_NEAR(inW(flows.lost[Path::Evaporation]),
              mouth * perHour / 3600.0 * inJoulesPerKilogram(latentHeat(t)), 1e-6);
  EXPECT_NEAR(inW(flows.lost[Path::SurfaceRadiation]),
              mouth * inWattsPerSquareMetre(radiationToRoom(0.96, t, room)), 1e-6);
  const auto film =
      plateFacingUpFilm(t, room, metres(0.25 * 0.355), dryAir(midpoint(t, room), kSeaLevel));
  EXPECT_NEAR(inW(flows.lost[Path::SurfaceConvection]),
              mouth * inWattsPerSquareMetreKelvin(film.h) * 60.0, 1e-6);
  EXPECT_WITHIN(flows.lost[Path::Lid], watts(0.0), watts(0.0));
}

// The open dry wall stands between a fin with an idle inner face, all of whose heat climbs from the
// wort (q = sqrt(h P k A) tanh(m L), any heat transfer text), and a wall as hot as the wort.
TEST(HeatLoss, OfTheOpenDryWallLiesBetweenAnIdleFinAndAWallAsHotAsWort) {
  for (const double at : {66.0, 90.0, 99.9}) {
    for (const double wallHeight : {0.24, 0.28, 0.40, 0.60}) {
      SCOPED_TRACE(at);
      SCOPED_TRACE(wallHeight);
      Vessel v = steelKettle();
      v.height = metres(wallHeight);
      const double open = inW(flowsOf(v, at, 0.2, 1.0).lost[Path::DryWall]);
      const Temperature room = celsius(20.0);
      const auto outward = [&](double face) {
        const AirProperties air = dryAir(midpoint(celsius(face), room), kSeaLevel);
        return inWattsPerSquareMetreKelvin(verticalWallFilm(celsius(face), room, v.height, air).h +
                                           radiationFilm(0.3, celsius(face), room));
      };
      const double h = outward(0.5 * (at + 20.0));
      const double m = std::sqrt(h / (15.0 * 0.001));
      const double idle = kPi * 0.355 * h / m * std::tanh(m * (wallHeight - 0.2)) * (at - 20.0);
      const double hot = kPi * 0.357 * outward(at) * (wallHeight - 0.2) * (at - 20.0);
      EXPECT_GT(open, idle);
      EXPECT_LT(open, hot);
    }
  }
  EXPECT_NEAR(inW(flowsOf(steelKettle(), 90.0, 0.40, 1.0).lost[Path::DryWall]), 0.0, 1e-12);
}

// Half of the wort's vapour pressure stands between rim and wort: by a steam table 52.9 C over wort
// of 66 C, 82.2 C over boiling wort. Latent over sensible heat of saturated air at 52.9 C is
// hfg drho/dT/(rho cp) = 2.343e6 x 4.25e-3/(1.083 x 1006) = 9.1. So a thin wall far above the wort
// is at 48 C, and 28 K above the room the films of a wall of 60 cm, 3.7 and 2.0 W/(m2 K), carry 163
// W/m2 off.
TEST(HeatLoss, WarmsTheOpenDryWallByHalfOfTheVapour) {
  const auto over = [](double at) {
    return wellAir(surfaceAir(celsius(at), kSeaLevel), saturationPressure(celsius(20.0)),
                   latentHeat(celsius(at)), kSeaLevel);
  };
  EXPECT_NEAR(inCelsius(over(66.0).temperature), 52.9, 0.1);
  EXPECT_NEAR(inCelsius(over(99.9).temperature), 82.2, 0.1);
  EXPECT_NEAR(inWattsPerSquareMetreKelvin(over(66.0).film), 4.0 * (1.0 + 9.1), 0.5);
  // With a wall that conducts little along itself, half a metre of it would draw C = 91
  // W. The well is one of two resistances: as the wall draws, it has C/(2 E) less, E being Shah's.
  Vessel tall = steelKettle();
  tall.height = metres(0.60);
  tall.wallConductivity = wattsPerMetreKelvin(1.0);
  const HeatFlows flows = flowsOf(tall, 66.0, 0.1, 1.0);
  const double drawn = 163.0 * kPi * 0.355 * 0.5;
  const double shah = inW(flowsOf(steelKettle(), 66.0, kBrimful, 1.0).lost[Path::Evaporation]);
  const double wall = inW(flows.lost[Path::DryWall]);
  EXPECT_NEAR(wall, drawn / (1.0 + drawn / (2.0 * shah)), 3.0);
  // Half of what condenses there is what the wort gives off more, half what the room gets less.
  EXPECT_NEAR(inW(flows.lost[Path::Evaporation]), shah - 0.5 * wall, 3.0);
}

// However high the wall, something always escapes over it, and no more than without it.
TEST(HeatLoss, LetsLessVapourOutOverAHighWallButNeverNone) {
  const auto escapes = [](double wallHeight) {
    Vessel v = steelKettle();
    v.height = metres(wallHeight);
    return inW(flowsOf(v, 66.0, 0.1, 1.0).lost[Path::Evaporation]);
  };
  double before = escapes(0.1);
  for (const double wallHeight : {0.2, 0.5, 2.0, 10.0}) {
    EXPECT_LT(escapes(wallHeight), before);
    before = escapes(wallHeight);
  }
  EXPECT_GT(before, 0.0);
}

// The foot's own heat counts where the metal conducts well.
TEST(HeatLoss, ClimbsFurtherInCopperThanInSteel) {
  Vessel v = steelKettle();
  const double steel = inW(flowsOf(v, 90.0, 0.3, 1.0).lost[Path::DryWall]);
  v.wallConductivity = wattsPerMetreKelvin(390.0);
  EXPECT_GT(inW(flowsOf(v, 90.0, 0.3, 1.0).lost[Path::DryWall]), 1.1 * steel);
}

TEST(HeatLoss, IsNoneAtRoomTemperature) {
  for (const double open : {0.0, 0.4, 1.0}) {
    SCOPED_TRACE(open);
    Vessel v = steelKettle();
    const HeatLossModel closed(v, Hose{}, still(20.0, 1.0), metres(0.3), open);
    HeatLossModel model = closed;
    EXPECT_NEAR(inW(model.flows(celsius(20.0), metres(0.3)).lost.total()), 0.0, 1e-9);
  }
}

// A cold mash in a warm room takes heat up by every path but evaporation.
TEST(HeatLoss, TurnsRoundInAWarmerRoom) {
  for (const double open : {0.0, 0.4, 1.0}) {
    SCOPED_TRACE(open);
    HeatLossModel model(steelKettle(), Hose{}, still(30.0), metres(0.3), open);
    const HeatFlows flows = model.flows(celsius(10.0), metres(0.3));
    for (const Path p : {Path::Side, Path::DryWall, Path::Base, Path::Lid, Path::SurfaceConvection,
                         Path::SurfaceRadiation}) {
      EXPECT_LE(flows.lost[p], watts(1e-9)) << static_cast<int>(p);
    }
    EXPECT_LT(flows.lost.total(), watts(-5.0));
    EXPECT_LT(model.skins().side, celsius(30.0));
    EXPECT_GT(model.skins().side, celsius(10.0));
  }
}

// Without a lid's help nothing condenses, with it nearly everything comes back.
TEST(HeatLoss, KeepsItsVapourUnderAClosedLid) {
  HeatLossModel model(steelKettle(), Hose{}, still(20.0), metres(0.3), 0.0);
  const HeatFlows flows = model.flows(celsius(80.0), metres(0.3));
  EXPECT_EQ(flows.vapour, kilogramsPerSecond(0.0));
  EXPECT_EQ(flows.lost[Path::Evaporation], watts(0.0));
  EXPECT_GT(flows.lost[Path::Lid], watts(10.0));
  EXPECT_LT(model.skins().lid, celsius(80.0));
  // Headspace vapour carries so much that the bare lid is nearly as hot as the wort.
  EXPECT_GT(model.skins().lid, celsius(70.0));
}

TEST(HeatLoss, MixesOpenAndClosedByArea) {
  const HeatFlows open = flowsOf(steelKettle(), 80.0, 0.3, 1.0);
  const HeatFlows closed = flowsOf(steelKettle(), 80.0, 0.3, 0.0);
  const HeatFlows ajar = flowsOf(steelKettle(), 80.0, 0.3, 0.25);
  for (std::size_t i = 0; i < kPathCount; ++i) {
    SCOPED_TRACE(i);
    EXPECT_NEAR(inW(ajar.lost.values[i]),
                0.25 * inW(open.lost.values[i]) + 0.75 * inW(closed.lost.values[i]), 1e-4);
  }
}

TEST(HeatLoss, OfAFullAndOfAnEmptyKettleIsFinite) {
  for (const double open : {0.0, 0.5, 1.0}) {
    for (const double at : {5.0, 20.0, 60.0, 100.0}) {
      const HeatFlows full = flowsOf(steelKettle(), at, 0.40, open);
      EXPECT_NEAR(inW(full.lost[Path::DryWall]), 0.0, 1e-9);
      EXPECT_TRUE(std::isfinite(inW(full.lost.total())));
      const HeatFlows empty = flowsOf(steelKettle(), at, 0.0, open);
      EXPECT_EQ(inW(empty.lost[Path::Side]), 0.0);
      EXPECT_TRUE(std::isfinite(inW(empty.lost.total())));
    }
  }
}

// On something solid the base's loss is a conductance: metal, layers and what it stands on.
TEST(HeatLoss, ThroughATableIsProportional) {
  Vessel v = steelKettle();
  v.base = {{layer(5.0, 0.06)}, 0.9};
  v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(0.3)};
  const double mouth = 0.25 * kPi * 0.355 * 0.355;
  EXPECT_NEAR(inW(flowsOf(v, 70.0, 0.3, 0.0).lost[Path::Base]),
              50.0 * mouth / (0.001 / 15.0 + 0.005 / 0.06 + 0.3), 1e-9);
}

// Reference: pi d L (t_skin - t_room) h, the film and radiation on the outside.
TEST(HeatLoss, OfAHoseGrowsWithItsLength) {
  const auto lost = [](double metre) {
    const Hose hose{.length = metres(metre),
                    .outerDiameter = millimetres(18.0),
                    .wall = squareMetreKelvinsPerWatt(0.015)};
    return inW(HeatLossModel(steelKettle(), hose, still(20.0), metres(0.3), 0.0)
                   .flows(celsius(66.0), metres(0.3))
                   .lost[Path::Hose]);
  };
  EXPECT_EQ(lost(0.0), 0.0);
  EXPECT_NEAR(lost(2.0), 2.0 * lost(1.0), 1e-9);
  // h about 7 + 6 at the skin, in series with 0.015: 46 K / 0.092 x 0.0565 m2.
  EXPECT_NEAR(lost(1.0), 28.0, 4.0);
}

// The answer is the kettle's, not the last question's.
TEST(HeatLoss, DoesNotDependOnWhatWasAskedBefore) {
  Vessel v = steelKettle();
  v.side = {{layer(20.0, 0.035)}, 0.9};
  for (const double open : {0.0, 0.3, 1.0}) {
    HeatLossModel used(v, Hose{}, still(20.0), metres(0.3), open);
    for (const double before : {99.0, 20.0, 5.0, 20.000001, 100.0, 19.9}) {
      used.flows(celsius(before), metres(0.3));
      const HeatFlows again = used.flows(celsius(63.0), metres(0.3));
      const HeatFlows fresh = flowsOf(v, 63.0, 0.3, open);
      EXPECT_NEAR(inW(again.lost.total()), inW(fresh.lost.total()), 1e-5);
    }
  }
}

// Draught and calibration act on the open surface alone.
TEST(HeatLoss, EvaporatesMoreInADraughtAndByItsFactor) {
  Surroundings room = still(20.0);
  const auto vapour = [&](double factor) {
    return inKilogramsPerHour(
        HeatLossModel(steelKettle(), Hose{}, room, metres(kBrimful), 1.0, factor)
            .flows(celsius(60.0), metres(kBrimful))
            .vapour);
  };
  const double calm = vapour(1.0);
  EXPECT_NEAR(vapour(1.5), 1.5 * calm, 1e-12);
  room.draught = metresPerSecond(3.0);
  EXPECT_GT(vapour(1.0), calm);
}

// A pump's return onto the wort renews its skin: evaporation alone grows, of whatever is open, and
// no further than the hottest skin and waves allow.
TEST(HeatLoss, EvaporatesMoreWhereAPumpRenewsTheSurface) {
  Hose hose{.length = metres(1.2),
            .outerDiameter = millimetres(18.0),
            .wall = squareMetreKelvinsPerWatt(0.015)};
  const auto lost = [&](double open, bool above) {
    hose.returnsAbove = above;
    return HeatLossModel(steelKettle(), hose, still(20.0), metres(kBrimful), open)
        .flows(celsius(66.0), metres(kBrimful))
        .lost;
  };
  for (const double open : {0.02, 1.0}) {
    const auto above = lost(open, true);
    const auto below = lost(open, false);
    EXPECT_NEAR(inW(above[Path::Evaporation]), kPumpedRenewal * inW(below[Path::Evaporation]),
                1e-9);
    EXPECT_NEAR(inW(above.total() - below.total()),
                inW(above[Path::Evaporation] - below[Path::Evaporation]), 1e-9);
  }
  EXPECT_EQ(inW(lost(0.0, true).total()), inW(lost(0.0, false).total()));
}

// At the edge of the boil the same law holds on either side, or the least power that comes to the
// boil would not keep it.
TEST(HeatLoss, IsTheSameJustBeforeTheBoilAndRolling) {
  EXPECT_EQ(surfaceRenewal(Motion::Rolling), surfaceRenewal(Motion::Still));
  EXPECT_GT(surfaceRenewal(Motion::Pumped), kLeastPumpedRenewal);
  EXPECT_LT(surfaceRenewal(Motion::Pumped), kMostPumpedRenewal);
}

// Every skin found between its bounds, by the printed laws alone.
TEST(HeatLoss, IsThatOfThePrintedLaws) {
  Vessel v = steelKettle();
  v.side = {{layer(10.0, 0.04)}, 0.85};
  const Hose hose{.length = metres(2.0),
                  .outerDiameter = millimetres(16.0),
                  .wall = squareMetreKelvinsPerWatt(0.01),
                  .emissivity = 0.9};
  for (const double open : {0.0, 0.35, 1.0}) {
    HeatLossModel model(v, hose, still(20.0), metres(0.3), open);
    const test_support::PrintedLosses printed(v, hose, still(20.0), metres(0.3), open);
    for (double t = 3.0; t < 104.0; t += 11.3) {
      SCOPED_TRACE(t);
      const HeatFlows a = printed.flows(celsius(t), metres(0.3));
      const HeatFlows b = model.flows(celsius(t), metres(0.3));
      for (std::size_t i = 0; i < kPathCount; ++i) {
        EXPECT_NEAR(inW(b.lost.values[i]), inW(a.lost.values[i]),
                    2e-9 * std::abs(inW(a.lost.total())));
      }
    }
  }
}

// Above boiling nothing rises to a lid that is nearly as hot, and much to one a little colder: the
// balance is found all the same, and vapour brings what lid and dry wall pass on.
TEST(HeatLoss, FindsTheLidsBalanceAboveBoiling) {
  for (double t = 100.5; t < 105.0; t += 0.5) {
    SCOPED_TRACE(t);
    Vessel v = steelKettle();
    v.lid = {{layer(20.0, 0.04)}, 0.85};
    HeatLossModel model(v, Hose{}, still(20.0), metres(0.3), 0.0);
    const double lid = inW(model.flows(celsius(t), metres(0.3)).lost[Path::Lid]);
    const double printed = inW(test_support::PrintedLosses(v, Hose{}, still(20.0), metres(0.3), 0.0)
                                   .flows(celsius(t), metres(0.3))
                                   .lost[Path::Lid]);
    EXPECT_NEAR(lid, printed, 1e-8 * lid);
    // The lid's inside is where steam begins to condense at one atmosphere.
    const double area = inSquareMetres(crossSection(v));
    const double inner =
        inCelsius(model.skins().lid) +
        lid / area *
            (0.02 / 0.04 + inMetres(v.wallThickness) / inWattsPerMetreKelvin(v.wallConductivity));
    EXPECT_NEAR(inner, 99.974, 0.02);
  }
}

}  // namespace
}  // namespace physics
