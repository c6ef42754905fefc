// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/walls.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <span>
#include <utility>
#include <vector>

#include "physics/convection.hpp"
#include "tests/support/between.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/printed_units.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::fahrenheit;
using test_support::kBtuPerHour;
using test_support::kFoot;
using test_support::layer;

// The units of the American books.
constexpr double kBtuPerHourFoot = kBtuPerHour / kFoot;                  // W/m
constexpr double kBtuPerHourSquareFoot = kBtuPerHour / (kFoot * kFoot);  // W/m2
constexpr double kBtuFilm = 5.678263;                                    // W/(m2 K)
constexpr double kBtuConductivity = kBtuFilm * kFoot;                    // W/(m K)
// Kern's Stefan-Boltzmann constant, 0.173e-8 Btu/(h ft2 R4), is 1 % above today's.
constexpr double kOverKern = kStefanBoltzmann / (0.173e-8 * kBtuPerHourSquareFoot * 10.4976);

// A pipe's loss, in W/m: layers outwards from the inner radius (in mm) between two films.
struct Pipe {
  double innerRadius;
  std::vector<Layer> layers;
  double outerFilm;
  double innerFilm = HUGE_VAL;

  ThermalInsulance insulance() const {
    const Length inside = millimetres(innerRadius);
    return squareMetreKelvinsPerWatt(1.0 / innerFilm) + cylindricalInsulance(inside, layers) +
           inside / outerRadius(inside, layers) / perSquareMetreKelvin(outerFilm);
  }
  HeatFlux innerFlux(double excess) const { return kelvins(excess) / insulance(); }
  double wattsPerMetre(double excess) const {
    return inWattsPerSquareMetre(innerFlux(excess)) * 2.0 * M_PI * 1e-3 * innerRadius;
  }
};

// Cengel, example 3.8: steam pipe 50/55 mm, k 80, in 30 mm of k 0.05; films 60 and 18; 320 C to
// 5 C. Printed: 120.8 W/m, and drops of 0.02 K in the pipe and 284 K in the insulation.
TEST(CylindricalInsulance, ReproducesTheInsulatedSteamPipe) {
  const Pipe pipe{25.0, {layer(2.5, 80.0), layer(30.0, 0.05)}, 18.0, 60.0};
  EXPECT_NEAR(pipe.wattsPerMetre(315.0), 120.8, 0.05);

  const HeatFlux flux = pipe.innerFlux(315.0);
  const std::span<const Layer> layers = pipe.layers;
  const auto steel = flux * cylindricalInsulance(millimetres(25.0), layers.first(1));
  const auto both = flux * cylindricalInsulance(millimetres(25.0), layers);
  EXPECT_WITHIN(steel, kelvins(0.02), kelvins(0.005));
  EXPECT_WITHIN(both - steel, kelvins(284.0), kelvins(0.5));
}

// Kreith, example 2.2: copper pipe 50/60 mm radius, films 1e4 and 15, 110 C to 30 C, bare and in
// 50 mm of k 0.2. Printed: 451 and 138 W/m.
TEST(CylindricalInsulance, ReproducesTheCopperSteamPipe) {
  EXPECT_NEAR((Pipe{50.0, {layer(10.0, 400.0)}, 15.0, 1e4}.wattsPerMetre(80.0)), 451.0, 0.5);
  EXPECT_NEAR((Pipe{50.0, {layer(10.0, 400.0), layer(50.0, 0.2)}, 15.0, 1e4}.wattsPerMetre(80.0)),
              138.0, 0.5);
}

// Holman, example 2.4: a steel tube 25 mm inside, wall 0.8 mm of k 16, films 3500 and 7.6, 50 C in
// 20 C. Printed: U 7.58 on the outside, 19 W/m: the metal wall never matters.
TEST(CylindricalInsulance, ReproducesTheThinSteelTube) {
  const Pipe tube{12.5, {layer(0.8, 16.0)}, 7.6, 3500.0};
  EXPECT_NEAR(tube.wattsPerMetre(30.0), 19.0, 0.05);
  EXPECT_NEAR(12.5 / 13.3 / inSquareMetreKelvinsPerWatt(tube.insulance()), 7.58, 0.005);
}

// Kern, example 2.5: a 2.375 in pipe in rock wool to 3.375 in, k 0.033, 300 F in 70 F, for two
// trial films 2.23 and 2.10. Printed: 104.4 and 102.9 Btu/(h ft), and with the second a skin of
// 125.4 F.
TEST(CylindricalInsulance, ReproducesTheRockWoolPipe) {
  for (const auto& [film, printed] : {std::pair{2.23, 104.4}, {2.10, 102.9}}) {
    const Pipe pipe{
        0.5 * 2.375 * 25.4, {layer(0.5 * 25.4, 0.033 * kBtuConductivity)}, film * kBtuFilm};
    EXPECT_NEAR(pipe.wattsPerMetre(230.0 / 1.8), printed * kBtuPerHourFoot, 0.1);
    if (film > 2.2) continue;
    const auto skin =
        pipe.innerFlux(230.0 / 1.8) * (2.375 / 3.375) / perSquareMetreKelvin(pipe.outerFilm);
    EXPECT_WITHIN(fahrenheit(70.0) + skin, fahrenheit(125.4), kelvins(0.1 / 1.8));
  }
}

// Theodore, example 19.10: a steel pipe of 11/13 mm radius, k 19, covered to 38 mm with k 0.2;
// films 190 and 14; 124 C to 2 C. Printed: bare 128.1, covered 99.2 W/m, U inside 11.76, outside
// 3.4, and 116.3 C between steel and cover.
TEST(CylindricalInsulance, ReproducesTheCoveredSteelPipe) {
  const Layer steel = layer(2.0, 19.0);
  const Pipe bare{11.0, {steel}, 14.0, 190.0};
  const Pipe covered{11.0, {steel, layer(25.0, 0.2)}, 14.0, 190.0};
  EXPECT_NEAR(bare.wattsPerMetre(122.0), 128.1, 0.1);
  EXPECT_NEAR(covered.wattsPerMetre(122.0), 99.2, 0.05);

  const double inside = 1.0 / inSquareMetreKelvinsPerWatt(covered.insulance());
  EXPECT_NEAR(inside, 11.76, 0.005);
  EXPECT_NEAR(inside * 11.0 / 38.0, 3.4, 0.05);
  const auto inner = squareMetreKelvinsPerWatt(1.0 / 190.0) +
                     cylindricalInsulance(millimetres(11.0), std::array{steel});
  EXPECT_WITHIN(celsius(124.0) - covered.innerFlux(122.0) * inner, celsius(116.3), kelvins(0.05));
}

// Coulson & Richardson vol. 1, example 9.33: a steam main of 150/168 mm, k 45, films 8500 and (with
// radiation) 20 bare; 444 K in 294 K. Printed: 1.58 kW/m unlagged, by the outer film alone. Lagged
// with 50 mm of k 0.073 and a film of 10: 131.9 W/m, computed here.
TEST(CylindricalInsulance, ReproducesTheLaggedSteamMain) {
  const Layer steel = layer(9.0, 45.0);
  EXPECT_NEAR((Pipe{84.0, {}, 20.0}.wattsPerMetre(150.0)), 1580.0, 5.0);
  EXPECT_NEAR((Pipe{75.0, {steel, layer(50.0, 0.073)}, 10.0, 8500.0}.wattsPerMetre(150.0)), 131.9,
              0.1);
}

// Dutta, example 3.6: an oil tank of 1.5 m by 2.5 m, wall 6 mm, in 40 mm of k 0.05; films 4 at the
// side and 5.5 on top; 80 C in 25 C. Printed: skins of 38 C and 35 C; 700 kg/h of oil, c 2000, must
// enter at 82 C. The loss of 765.6 W and the side's height of 2.546 m are worked out from that.
TEST(CylindricalInsulance, ReproducesTheInsulatedOilTank) {
  const Layer wool = layer(40.0, 0.05);
  const auto topFlux =
      kelvins(55.0) / (flatInsulance(std::array{wool}) + 1.0 / perSquareMetreKelvin(5.5));
  const Pipe side{756.0, {wool}, 4.0};
  const double outer = 0.796;
  const double top = inWattsPerSquareMetre(topFlux) * M_PI * outer * outer;
  const double sides = side.wattsPerMetre(55.0) * 2.546;

  EXPECT_NEAR(sides + top, 765.6, 0.5);
  EXPECT_NEAR(80.0 + (sides + top) / (700.0 / 3600.0 * 2000.0), 82.0, 0.05);
  EXPECT_WITHIN(celsius(25.0) + topFlux / perSquareMetreKelvin(5.5), celsius(35.0), kelvins(0.5));
  EXPECT_WITHIN(celsius(25.0) + side.innerFlux(55.0) * (756.0 / 796.0) / perSquareMetreKelvin(4.0),
                celsius(38.0), kelvins(0.5));
}

// Cengel, example 3.17: of a wall's insulance of 2.23 m2 K/W a part of 0.23 is replaced by one of
// 0.98. Printed: 2.98.
TEST(FlatInsulance, AddsStatedInsulances) {
  const auto stated = [](double r) {
    return Layer{.thickness = millimetres(90.0), .flatInsulance = squareMetreKelvinsPerWatt(r)};
  };
  EXPECT_WITHIN(flatInsulance(std::array{stated(2.0), stated(0.98)}),
                squareMetreKelvinsPerWatt(2.98), squareMetreKelvinsPerWatt(0.005));
  EXPECT_WITHIN(flatInsulance({}), squareMetreKelvinsPerWatt(0.0), squareMetreKelvinsPerWatt(0.0));
}

// The wrap formula of an energy-rating program (US units): a tank of 2 in of R 5 per in, films 1.3
// and 52.8, gets a jacket of R 10. Computed here from it: u 0.526 W/(m2 K) before, 0.253 saved,
// which is 48 % of the side's loss.
TEST(FlatInsulance, SavesByTheWrapFormula) {
  const auto us = [](double r) {
    return Layer{.thickness = millimetres(50.0),
                 .flatInsulance = squareMetreKelvinsPerWatt(r / kBtuFilm)};
  };
  const std::array before{us(1.0 / 52.8), us(2.0 * 5.0), us(1.0 / 1.3)};
  const std::array after{us(1.0 / 52.8), us(2.0 * 5.0), us(10.0), us(1.0 / 1.3)};
  const double u = 1.0 / inSquareMetreKelvinsPerWatt(flatInsulance(before));
  const double saved = u - 1.0 / inSquareMetreKelvinsPerWatt(flatInsulance(after));
  EXPECT_NEAR(u, 0.526, 0.0005);
  EXPECT_NEAR(saved, 0.253, 0.0005);
  EXPECT_NEAR(saved / u, 0.48, 0.005);
}

// Cengel, example 1.11: 10 mm between black faces at 300 K and 200 K. Printed: through still air of
// k 0.0219 219 W/m2 and by radiation 369 W/m2; through foam of k 0.026 260 W/m2.
TEST(FlatInsulance, ReproducesTheGapThatFoamFillsBetterThanAir) {
  const auto through = [](double k) {
    return kelvins(100.0) / flatInsulance(std::array{layer(10.0, k)});
  };
  EXPECT_WITHIN(through(0.0219), wattsPerSquareMetre(219.0), wattsPerSquareMetre(0.5));
  EXPECT_WITHIN(through(0.026), wattsPerSquareMetre(260.0), wattsPerSquareMetre(0.5));
  EXPECT_WITHIN(radiationBetween(1.0, 1.0, 1.0, kelvin(300.0), kelvin(200.0)),
                wattsPerSquareMetre(369.0), wattsPerSquareMetre(0.5));
}

// Holman, example 2.5: a pipe of 50 mm at 200 C in 20 C air, h 3, cover of k 0.17. Printed:
// critical radius 5.67 cm, where it loses 105.7 W/m; bare 84.8 W/m.
TEST(CriticalRadius, IsWhereACoveredPipeLosesMost) {
  const Length worst = criticalRadius(wattsPerMetreKelvin(0.17), perSquareMetreKelvin(3.0));
  EXPECT_WITHIN(worst, metres(0.0567), metres(0.00005));
  const auto loss = [](double outer) {
    return Pipe{25.0, {layer(outer - 25.0, 0.17)}, 3.0}.wattsPerMetre(180.0);
  };
  EXPECT_NEAR(loss(inMillimetres(worst)), 105.7, 0.05);
  EXPECT_NEAR(loss(25.0), 84.8, 0.05);
  EXPECT_LT(loss(inMillimetres(worst) - 5.0), loss(inMillimetres(worst)));
  EXPECT_LT(loss(inMillimetres(worst) + 5.0), loss(inMillimetres(worst)));
}

// Lienhard, example 2.7: a wire of 2.5 mm radius, cover k 0.074, h 20. Printed: critical radius
// 3.7 mm, and the bare wire's loss is met again at 5.8 mm.
TEST(CriticalRadius, IsPassedByAThickerCover) {
  EXPECT_WITHIN(criticalRadius(wattsPerMetreKelvin(0.074), perSquareMetreKelvin(20.0)),
                millimetres(3.7), millimetres(0.05));
  const auto loss = [](double outer) {
    return Pipe{2.5, {layer(outer - 2.5, 0.074)}, 20.0}.wattsPerMetre(1.0);
  };
  EXPECT_GT(loss(5.75), loss(2.5));
  EXPECT_LT(loss(5.85), loss(2.5));
}

// Incropera & DeWitt, example 1.2: a pipe of 70 mm, emissivity 0.8, h 15, at 200 C in 25 C (473 K
// and 298 K in the book). Printed: emits 2270, receives 447 W/m2, loses 998 W/m.
TEST(RadiationToRoom, ReproducesTheUninsulatedSteamPipe) {
  EXPECT_WITHIN(radiationToRoom(0.8, kelvin(473.0), kelvin(0.0)), wattsPerSquareMetre(2270.0),
                wattsPerSquareMetre(5.0));
  EXPECT_WITHIN(radiationToRoom(1.0, kelvin(298.0), kelvin(0.0)), wattsPerSquareMetre(447.0),
                wattsPerSquareMetre(0.5));
  const HeatFlux total = perSquareMetreKelvin(15.0) * kelvins(175.0) +
                         radiationToRoom(0.8, kelvin(473.0), kelvin(298.0));
  EXPECT_NEAR(inWattsPerSquareMetre(total) * M_PI * 0.07, 998.0, 0.5);
}

// Holman, example 1.6: a pipe of 50 mm, 50 C in 20 C, h 6.5, emissivity 0.8: printed 55.67 W/m.
// Cengel, example 1.10: a person of 1.6 m2, 29 C in 20 C, emissivity 0.95: printed 81.7 W; example
// 9.2: a black plate 0.6 m square, 90 C in 30 C: printed 182 W.
TEST(RadiationToRoom, ReproducesPrintedLosses) {
  const HeatFlux pipe = perSquareMetreKelvin(6.5) * kelvins(30.0) +
                        radiationToRoom(0.8, kelvin(323.0), kelvin(293.0));
  EXPECT_NEAR(inWattsPerSquareMetre(pipe) * M_PI * 0.05, 55.67, 0.02);
  EXPECT_WITHIN(squareMetres(1.6) * radiationToRoom(0.95, kelvin(302.0), kelvin(293.0)),
                watts(81.7), watts(0.05));
  EXPECT_WITHIN(squareMetres(0.36) * radiationToRoom(1.0, kelvin(363.0), kelvin(303.0)),
                watts(182.0), watts(0.5));
}

// Lienhard, example 2.8: a resistor of 1.33e-4 m2 gives off 0.1 W by a film of 13 and emissivity
// 0.9 into 35 C. Printed: 72.3 C with a linear film for radiation, which is good to 0.1 K.
TEST(RadiationToRoom, WarmsTheTextbooksResistor) {
  const Temperature room = celsius(35.0);
  double low = 35.0;
  double high = 200.0;
  for (int i = 0; i < 60; ++i) {
    const Temperature t = celsius(0.5 * (low + high));
    const Power lost = squareMetres(1.33e-4) *
                       (perSquareMetreKelvin(13.0) * (t - room) + radiationToRoom(0.9, t, room));
    (lost < watts(0.1) ? low : high) = inCelsius(t);
  }
  EXPECT_NEAR(low, 72.3, 0.1 + 0.05);
}

// A public heat-transfer library's own tests, with the Stefan-Boltzmann constant of CODATA 2014.
TEST(RadiationToRoom, ReproducesTheLibraryValues) {
  EXPECT_NEAR(inWattsPerSquareMetre(radiationToRoom(1.0, kelvin(400.0), kelvin(0.0))), 1451.613952,
              2e-6 * 1451.6);
  EXPECT_NEAR(inWattsPerSquareMetre(radiationToRoom(0.85, kelvin(400.0), kelvin(305.0))),
              816.7821722650002, 2e-6 * 816.8);
}

// Kern, example 4.3: a pipe of 3.375 in at 125 F in 70 F, emissivity 0.9. Printed: 52.4 Btu/(h ft)
// (52.6 with the area unrounded) and a film of 1.08 Btu/(h ft2 F).
TEST(RadiationFilm, ReproducesThePipeAtALowTemperature) {
  const auto film = radiationFilm(0.9, fahrenheit(125.0), fahrenheit(70.0));
  EXPECT_NEAR(inWattsPerSquareMetreKelvin(film), 1.08 * kBtuFilm * kOverKern, 0.005 * kBtuFilm);
  EXPECT_NEAR(inWattsPerSquareMetre(film * kelvins(55.0 / 1.8)) * M_PI * 3.375 * 0.0254,
              52.4 * kBtuPerHourFoot * kOverKern, 0.005 * 52.4 * kBtuPerHourFoot);
}

// Kern, examples 4.1 and 4.2: parallel walls at 1000 F and 800 F, black and with emissivities 0.6
// and 0.8. Printed: 3500 and 1826 Btu/(h ft2), with 460 for 459.67.
TEST(RadiationBetween, ReproducesParallelWalls) {
  const auto flux = [](double e1, double e2) {
    return inWattsPerSquareMetre(
        radiationBetween(e1, e2, 1.0, fahrenheit(1000.0), fahrenheit(800.0)));
  };
  EXPECT_NEAR(flux(1.0, 1.0), 3500.0 * kBtuPerHourSquareFoot * kOverKern, 0.002 * 11041.0);
  EXPECT_NEAR(flux(0.6, 0.8), 1826.0 * kBtuPerHourSquareFoot * kOverKern, 0.002 * 5760.0);
}

// A kettle's side without an inner film: skin temperature from loss through the jacket = film +
// radiation, with the film scaled by `share`.
struct Skin {
  double lossPerKettleArea;  // W/m2
  double temperature;        // C
};
Skin kettleSide(double kettle, const std::vector<Layer>& jacket, double emissivity, double share) {
  const Length radius = metres(0.175);
  const Temperature room = celsius(20.0);
  const double areaRatio = outerRadius(radius, jacket) / radius;
  const ThermalInsulance jacketInsulance = cylindricalInsulance(radius, jacket);
  const auto outward = [&](Temperature skin) -> HeatFlux {
    const AirProperties air = dryAir(midpoint(skin, room), pascals(101325.0));
    return areaRatio * (share * verticalWallFilm(skin, room, metres(0.40), air).h * (skin - room) +
                        radiationToRoom(emissivity, skin, room));
  };
  Temperature low = room;
  Temperature high = celsius(kettle);
  for (int step = 0; step < 60; ++step) {
    const Temperature skin = midpoint(low, high);
    const bool tooHot = outward(skin) * jacketInsulance > celsius(kettle) - skin;
    (tooHot ? high : low) = skin;
  }
  return {inWattsPerSquareMetre(outward(low)), inCelsius(low)};
}

// Computed here for a kettle 0.35 m wide and 0.40 m high in air at 20 C with the film of ISO 12241:
// the answers must lie where the +-13 % spread of published wall films puts ours.
TEST(JacketedKettle, AgreesWithTheStandardsFilmWithinTheSpread) {
  struct Row {
    std::vector<Layer> jacket;
    double emissivity, at65, at100;
  };
  for (const Row& row :
       {Row{{}, 0.16, 245, 506}, Row{{}, 0.9, 484, 1010}, Row{{layer(5, 0.05)}, 0.9, 223, 417},
        Row{{layer(10, 0.04)}, 0.9, 128, 233}, Row{{layer(20, 0.04)}, 0.9, 77, 139},
        Row{{layer(20, 0.04)}, 0.1, 64, 118}}) {
    for (const auto& [kettle, loss] : {std::pair{65.0, row.at65}, {100.0, row.at100}}) {
      SCOPED_TRACE(loss);
      EXPECT_LE(kettleSide(kettle, row.jacket, row.emissivity, 0.87).lossPerKettleArea, loss);
      EXPECT_GE(kettleSide(kettle, row.jacket, row.emissivity, 1.13).lossPerKettleArea, loss);
    }
  }
  EXPECT_NEAR(kettleSide(100.0, {layer(5, 0.05)}, 0.9, 1.0).temperature, 58.9, 1.5);
  EXPECT_NEAR(kettleSide(100.0, {layer(20, 0.04)}, 0.1, 1.0).temperature, 44.3, 1.5);
}

// A thin sleeve swaps bright steel's emissivity for its own.
TEST(JacketedKettle, SavesLittleOnBrightSteelAndMuchOnDullSteel) {
  for (const double kettle : {65.0, 100.0}) {
    const auto saved = [&](double bareEmissivity) {
      return 1.0 - kettleSide(kettle, {layer(5, 0.05)}, 0.9, 1.0).lossPerKettleArea /
                       kettleSide(kettle, {}, bareEmissivity, 1.0).lossPerKettleArea;
    };
    EXPECT_GT(saved(0.16), 0.0);
    EXPECT_LT(saved(0.16), 0.20);
    EXPECT_GT(saved(0.9), 0.50);
  }
}

TEST(CylindricalInsulance, CountsAThinLayerWhereItLies) {
  const auto around = [](double millimetre) {
    return inSquareMetreKelvinsPerWatt(cylindricalInsulance(
        millimetres(10.0),
        std::array{layer(10.0, 1e9), Layer{.thickness = millimetres(millimetre),
                                           .flatInsulance = squareMetreKelvinsPerWatt(0.1)}}));
  };
  EXPECT_NEAR(around(0.0), 0.05, 1e-10);
  EXPECT_NEAR(around(1e-6), around(0.0), 1e-8);
}

RC_GTEST_PROP(CylindricalInsulance, OfALayerSplitInTwoEqualsTheWhole, ()) {
  const Length radius = metres(between(0.003, 0.5));
  const double thickness = between(0.1, 100.0);
  const double share = between(0.0, 1.0);
  const double k = between(0.02, 400.0);
  const std::array whole{layer(thickness, k)};
  const std::array parts{layer(share * thickness, k), layer((1.0 - share) * thickness, k)};
  RC_ASSERT(std::abs(cylindricalInsulance(radius, parts) / cylindricalInsulance(radius, whole) -
                     1.0) < 1e-9);
  RC_ASSERT(std::abs(flatInsulance(parts) / flatInsulance(whole) - 1.0) < 1e-9);
  RC_ASSERT(abs(outerRadius(radius, parts) - outerRadius(radius, whole)) < metres(1e-12));
}

RC_GTEST_PROP(CylindricalInsulance, LiesBelowTheFlatOneAndTendsToItForLargeRadii, ()) {
  const std::array jacket{layer(between(0.1, 50.0), between(0.02, 1.0)),
                          layer(between(0.1, 50.0), between(0.02, 1.0))};
  const ThermalInsulance flat = flatInsulance(jacket);
  RC_ASSERT(cylindricalInsulance(metres(between(0.003, 1.0)), jacket) < flat);
  RC_ASSERT(cylindricalInsulance(metres(1e6), jacket) > (1.0 - 1e-6) * flat);
}

RC_GTEST_PROP(CylindricalInsulance, NeverLosesMoreWithMoreOutsideTheCriticalRadius, ()) {
  const double k = between(0.02, 0.3);
  const double h = between(2.0, 30.0);
  const double radius = 1e3 * k / h * between(1.001, 60.0);
  const double thickness = between(0.0, 100.0);
  const auto loss = [&](double mm) { return Pipe{radius, {layer(mm, k)}, h}.wattsPerMetre(50.0); };
  RC_ASSERT(loss(thickness + 0.5) < loss(thickness));
}

RC_GTEST_PROP(Radiation, VanishesAtEqualTemperatureAndIsAntisymmetric, ()) {
  const double e = between(0.0, 1.0);
  const double e2 = between(0.0, 1.0);
  const Temperature a = celsius(between(-20.0, 300.0));
  const Temperature b = celsius(between(-20.0, 300.0));
  RC_ASSERT(radiationToRoom(e, a, a) == wattsPerSquareMetre(0.0));
  RC_ASSERT(radiationBetween(e, e2, 0.8, a, a) == wattsPerSquareMetre(0.0));
  RC_ASSERT(radiationToRoom(e, a, b) == -radiationToRoom(e, b, a));
  RC_ASSERT(radiationBetween(e, e2, 0.8, a, b) == -radiationBetween(e, e2, 0.8, b, a));
}

RC_GTEST_PROP(Radiation, BetweenFacesIsThatToARoomWhenTheOuterIsLargeOrBlack, ()) {
  const double e = between(0.0, 1.0);
  const Temperature a = celsius(between(0.0, 100.0));
  const Temperature b = celsius(between(0.0, 100.0));
  const HeatFlux toRoom = radiationToRoom(e, a, b);
  const HeatFlux tiny = wattsPerSquareMetre(1e-9);
  RC_ASSERT(abs(radiationBetween(e, between(0.01, 1.0), 0.0, a, b) - toRoom) < tiny);
  RC_ASSERT(abs(radiationBetween(e, 1.0, between(0.0, 1.0), a, b) - toRoom) < tiny);
}

TEST(Radiation, StopsAtAMirror) {
  EXPECT_WITHIN(radiationBetween(0.0, 0.0, 1.0, celsius(100.0), celsius(20.0)),
                wattsPerSquareMetre(0.0), wattsPerSquareMetre(0.0));
  EXPECT_WITHIN(radiationBetween(0.9, 0.0, 1.0, celsius(100.0), celsius(20.0)),
                wattsPerSquareMetre(0.0), wattsPerSquareMetre(0.0));
}

// 4 eps sigma T^3, where the film law has 0/0 in its textbook form.
TEST(RadiationFilm, IsFiniteAtEqualTemperatures) {
  const double h = inWattsPerSquareMetreKelvin(radiationFilm(0.9, kelvin(300.0), kelvin(300.0)));
  EXPECT_NEAR(h, 4.0 * 0.9 * 5.670374419e-8 * 2.7e7, 1e-12);
}

WarmedFin strip(double length, double warm, double cool) {
  return {.width = metres(1.1),
          .length = metres(length),
          .along = wattsPerKelvin(0.015),
          .warm = perSquareMetreKelvin(warm),
          .cool = perSquareMetreKelvin(cool),
          .foot = kelvins(46.0),
          .warmth = kelvins(33.0)};
}

// Without warmth the textbook fin, width sqrt(h k t) tanh(m L) theta; so long or so badly
// conducting that the foot does not tell, the two films in series.
TEST(WarmedFin, IsATextbookFinOrAPlainWallAtItsLimits) {
  const double m = std::sqrt(7.0 / 0.015);
  EXPECT_NEAR(inWatts(flowsThrough(strip(0.12, 0.0, 7.0)).cooled),
              1.1 * std::sqrt(7.0 * 0.015) * std::tanh(0.12 * m) * 46.0, 1e-10);
  WarmedFin paper = strip(0.12, 40.0, 7.0);
  paper.along = wattsPerKelvin(1e-14);
  EXPECT_NEAR(inWatts(flowsThrough(paper).cooled), 1.1 * 0.12 * 33.0 / (1.0 / 40.0 + 1.0 / 7.0),
              1e-4);
  EXPECT_EQ(inWatts(flowsThrough(strip(0.0, 40.0, 7.0)).cooled), 0.0);
}

// Against the equation itself, theta'' = [cool theta - warm (warmth - theta)]/(k t), solved on a
// grid with theta given at the foot and no slope at the end.
TEST(WarmedFin, SolvesItsEquation) {
  constexpr std::size_t kCells = 4000;
  const WarmedFin fin = strip(0.12, 40.0, 7.0);
  const double dx = 0.12 / double(kCells);
  const double b = 47.0 / 0.015 * dx * dx;
  const double source = 40.0 * 33.0 / 0.015 * dx * dx;
  // Cell centres; Thomas' elimination.
  std::vector<double> c(kCells), d(kCells);
  for (std::size_t i = 0; i < kCells; ++i) {
    const double below = i == 0 ? 2.0 : 1.0;
    const double above = i == kCells - 1 ? 0.0 : 1.0;
    const double fed = source + (i == 0 ? 2.0 * 46.0 : 0.0);
    const double diagonal = below + above + b - (i == 0 ? 0.0 : c[i - 1]);
    c[i] = above / diagonal;
    d[i] = (fed + (i == 0 ? 0.0 : d[i - 1])) / diagonal;
  }
  double theta = 0.0;
  double sum = 0.0;
  for (std::size_t i = kCells; i-- > 0;) {
    theta = d[i] + c[i] * theta;
    sum += theta * dx;
  }
  const FinFlows flows = flowsThrough(fin);
  EXPECT_NEAR(inWatts(flows.cooled), 1.1 * 7.0 * sum, 1e-4 * 1.1 * 7.0 * sum);
  EXPECT_NEAR(inWatts(flows.warmed), 1.1 * 40.0 * (33.0 * 0.12 - sum), 1e-4 * 1.1 * 7.0 * sum);
}

}  // namespace
}  // namespace physics
