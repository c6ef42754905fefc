// SPDX-License-Identifier: GPL-3.0-or-later
// Check values of room air were computed here with the Magnus formula (WMO), vapour pressures that
// differ from ours by up to 0.2 %; "pub." marks figures printed by a ventilation handbook's page.
#include "physics/room.hpp"

#include <gtest/gtest.h>

#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;

const Pressure kSea = pascals(101325.0);
MoistAir air(double celsiusAir, double percent) {
  return moistAir(celsius(celsiusAir), percent / 100.0, kSea);
}
double gramsPerCubicMetre(const MoistAir& a) {
  return 1e3 * inKilogramsPerCubicMetre(vapourDensity(a));
}
VolumeFlow cubicMetresPerHour(double n) { return litresPerHour(1e3 * n); }
double inCubicMetresPerHour(VolumeFlow v) { return 1e-3 * inLitresPerHour(v); }
// As the check values turn mass of dry air into airflow.
double standardAir(MassFlow dry) { return inKilogramsPerHour(dry) / 1.2; }

TEST(VapourDensity, MatchesTheCheckValues) {
  EXPECT_NEAR(gramsPerCubicMetre(air(20, 60)), 10.35, 0.05);  // H1
  EXPECT_NEAR(1e3 * air(20, 60).humidityRatio, 8.71, 0.05);   // H1
  EXPECT_NEAR(inCelsius(dewPoint(air(20, 60).vapourPressure)), 12.0, 0.06);
  EXPECT_NEAR(gramsPerCubicMetre(air(25, 60)), 13.78, 0.07);  // H10
  EXPECT_NEAR(gramsPerCubicMetre(air(5, 80)), 5.43, 0.03);    // H10
  EXPECT_NEAR(1e3 * air(5, 80).humidityRatio, 4.31, 0.03);    // H10
}

// H2, pub.: each cubic metre of ventilation carries 7.0 or 3.8 g (computed 6.95 and 3.78).
TEST(VapourDensity, DiffersIndoorsAndOutAsPrinted) {
  EXPECT_NEAR(gramsPerCubicMetre(air(20, 60)) - gramsPerCubicMetre(air(0, 70)), 6.95, 0.06);
  EXPECT_NEAR(gramsPerCubicMetre(air(20, 60)) - gramsPerCubicMetre(air(10, 70)), 3.78, 0.06);
  // At 30 m3/h, printed as 210 and 110 g/h, computed as 209 and 113; what cannot be told apart
  // differs by the 0.06 g/m3 above.
  const auto carried = [](double outdoors) {
    return 1e3 * inKilogramsPerHour(cubicMetresPerHour(30.0) * (vapourDensity(air(20, 60)) -
                                                                vapourDensity(air(outdoors, 70))));
  };
  EXPECT_NEAR(carried(0), 209.0, 30.0 * 0.06);
  EXPECT_NEAR(carried(10), 113.0, 30.0 * 0.06);
}

// What the product itself asks for is by humidity ratios: the same 209 and 113 g/h need 5 to 10 %
// less air than by vapour densities, as the ventilation pages say of the two ways.
TEST(AirflowToCarry, AsksLessThanTheOlderWay) {
  for (const auto& [grams, outdoors] : {std::pair{209.0, 0.0}, std::pair{113.0, 10.0}}) {
    const auto flow =
        airflowToCarry(kilogramsPerHour(1e-3 * grams), air(20, 60), air(outdoors, 70));
    ASSERT_TRUE(flow);
    EXPECT_LT(inCubicMetresPerHour(*flow), 0.98 * 30.0);
    EXPECT_GT(inCubicMetresPerHour(*flow), 0.85 * 30.0);
  }
}

struct Carry {
  const char* id;
  double kilogramsPerHour, indoors, humidity, outdoors, humidityOut, airflow;
};

// H3, H4, H11 by humidity ratios, +-1 %. By vapour densities they would be 611, 122 and 265 m3/h;
// that way is not ours.
TEST(DryAirToCarry, MatchesTheCheckValuesByHumidityRatio) {
  constexpr Carry kCases[] = {{"H3", 3.0, 20, 60, 5, 80, 568},
                              {"H4", 0.2 * 3.0, 20, 60, 5, 80, 114},
                              {"H11", 1.0, 20, 60, 10, 70, 245}};
  for (const Carry& c : kCases) {
    SCOPED_TRACE(c.id);
    const auto dry = dryAirToCarry(kilogramsPerHour(c.kilogramsPerHour), air(c.indoors, c.humidity),
                                   air(c.outdoors, c.humidityOut));
    ASSERT_TRUE(dry);
    EXPECT_NEAR(standardAir(*dry), c.airflow, 0.01 * c.airflow);
  }
}

TEST(DryAirToCarry, HasNoAnswerWhereOutdoorsIsNoDrier) {
  EXPECT_FALSE(dryAirToCarry(kilogramsPerHour(1.0), air(20, 60), air(20, 60)));
  EXPECT_FALSE(airflowToCarry(kilogramsPerHour(1.0), air(18, 50), air(28, 70)));
}

double levelHumidity(double vapour, double airflow, const MoistAir& in, const MoistAir& out) {
  const double w =
      levelHumidityRatio(kilogramsPerHour(vapour), cubicMetresPerHour(airflow), in, out);
  return relativeHumidityOf(w, in.temperature, in.pressure);
}

// H5, H12, by humidity ratios: 129 % and 61.0 %; by vapour densities, which is not our way, 134 and
// 63.4 %. The check values take 1.2 kg of dry air in a cubic metre, we the room's own (1 % less):
// 1 % more vapour for the same airflow.
TEST(LevelHumidityRatio, SettlesAsComputed) {
  EXPECT_NEAR(levelHumidity(3.0, 170, air(20, 60), air(5, 80)), 1.29, 0.01 * 1.29 + 0.005);
  EXPECT_NEAR(levelHumidity(3.5, 510, air(21, 50), air(2, 85)), 0.610, 0.01 * 0.610);
}

TEST(TimeToSaturation, MatchesTheCheckValue) {  // H6: 345 g, 6.9 min
  const MoistAir start = air(20, 50);
  EXPECT_WITHIN(timeToSaturation(kilogramsPerHour(3.0), litres(40e3), start), minutes(6.9),
                minutes(0.05));
}

TEST(VolumeSaturatedBy, IsFiftyEightCubicMetresForAKilogram) {  // H16; a page prints 56
  EXPECT_NEAR(inCubicMetres(volumeSaturatedBy(kilograms(1.0), celsius(20.0), kSea)), 58.0, 0.3);
}

TEST(InnerFace, MatchesTheCheckValues) {  // H7, H14; R_si 0.13 (ISO 6946, from memory)
  EXPECT_WITHIN(innerFace(perSquareMetreKelvin(2.8), celsius(20.0), celsius(0.0)), celsius(12.7),
                kelvins(0.05));
  EXPECT_WITHIN(innerFace(perSquareMetreKelvin(1.2), celsius(20.0), celsius(-5.0)), celsius(16.1),
                kelvins(0.05));
}

TEST(ExhaustHeat, MatchesTheCheckValue) {  // H8
  EXPECT_WITHIN(exhaustHeat(cubicMetresPerHour(170.0), kelvins(20.0)), watts(1140.0), watts(6.0));
}

// H9, H15: net heat over a latent heat of 2257 kJ/kg.
TEST(BoilOff, MatchesTheCheckValues) {
  const SpecificEnergy latent = joulesPerKilogram(2257e3);
  EXPECT_NEAR(inKilogramsPerHour(0.9 * watts(3000.0) / latent), 4.31, 0.005);
  EXPECT_NEAR(inKilogramsPerHour(0.8 * watts(2000.0) / latent), 2.55, 0.005);
}

// H17: 30 L/s and 400 ft3/min.
TEST(Airflow, Converts) {
  EXPECT_NEAR(inCubicMetresPerHour(litresPerHour(30.0 * 3600.0)), 108.0, 1e-9);
  EXPECT_NEAR(400.0 * 60.0 * 0.3048 * 0.3048 * 0.3048, 679.6, 0.05);
}

// A day that does nothing but release vapour.
BrewDay steadyVapour(double kilogramsAnHour, double hour, int pieces = 60) {
  BrewDay day;
  Stage stage{};
  stage.kind = StageKind::Boil;
  stage.end = hours(hour);
  for (int i = 0; i <= pieces; ++i) {
    CurvePoint point{};
    point.time = hours(hour * i / pieces);
    point.vapour = kilogramsPerHour(kilogramsAnHour);
    stage.curve.push_back(point);
  }
  day.stages.push_back(stage);
  return day;
}

// H13 is printed for the older way, over vapour densities, which forgets that the outdoor air
// swells as it warms: 65.0 % after 15 min and 65.6 % in the end, two points more than what we
// answer.
TEST(VapourDensity, LeavesMoreVapourByTheOlderWay) {
  const double outside = gramsPerCubicMetre(air(5, 80));
  const double full = 1e3 * inKilogramsPerCubicMetre(saturatedVapour(celsius(20.0), kSea));
  const double level = outside + 3000.0 / 510.0;
  const double after =
      level + (gramsPerCubicMetre(air(20, 50)) - level) * std::exp(-510.0 * 0.25 / 40.0);
  EXPECT_NEAR(after / full, 0.650, 0.003);
  EXPECT_NEAR(level / full, 0.656, 0.003);
}

// The same case by humidity ratios, whose closed form is taken with this room's own air.
TEST(RoomOver, FollowsTheExponentialOfAWellMixedRoom) {
  const Room room{.volume = litres(40e3),
                  .start = air(20, 50),
                  .outdoors = air(5, 80),
                  .airflow = cubicMetresPerHour(510.0)};
  const double level =
      levelHumidityRatio(kilogramsPerHour(3.0), room.airflow, room.start, room.outdoors);
  for (const int pieces : {3, 60}) {
    const RoomDay day = roomOver(steadyVapour(3.0, 0.25, pieces), room, std::nullopt);
    const double expected =
        level + (room.start.humidityRatio - level) * std::exp(-510.0 * 0.25 / 40.0);
    EXPECT_NEAR(day.points.back().humidityRatio, expected, 1e-9);
    // H13's figure for the older way is 65.0 %; ours is lower, since cold air swells as it warms.
    EXPECT_LT(day.points.back().relativeHumidity, 0.650);
    EXPECT_GT(day.points.back().relativeHumidity, 0.9 * 0.650);
    EXPECT_FALSE(day.saturatedAt);
    EXPECT_WITHIN(day.released, kilograms(0.75), kilograms(1e-9));
  }
}

TEST(RoomOver, FillsAClosedRoomAndThenRains) {
  const Room closed{.volume = litres(40e3),
                    .start = air(20, 50),
                    .outdoors = air(5, 80),
                    .airflow = litresPerHour(0.0)};
  const RoomDay day = roomOver(steadyVapour(3.0, 1.0, 600), closed, celsius(15.0));
  ASSERT_TRUE(day.saturatedAt);
  EXPECT_WITHIN(*day.saturatedAt, minutes(6.9), minutes(0.2));  // H6
  ASSERT_TRUE(day.windowWetAt);
  EXPECT_LT(*day.windowWetAt, *day.saturatedAt);
  EXPECT_DOUBLE_EQ(day.peakHumidity, 1.0);
  // What the air cannot hold is what was released less what was missing at the start; by humidity
  // ratios that is 2.5 % more than by vapour densities, since the vapour pushes dry air aside.
  EXPECT_WITHIN(day.condensed, kilograms(3.0 - 0.345), kilograms(0.012));
}

TEST(RoomOver, TakesFromTheRoomWhatTheHoodCatches) {
  Room room{.volume = litres(40e3),
            .start = air(20, 50),
            .outdoors = air(5, 80),
            .airflow = cubicMetresPerHour(170.0)};
  const RoomDay without = roomOver(steadyVapour(3.0, 1.0), room, std::nullopt);
  room.captured = 0.8;
  const RoomDay with = roomOver(steadyVapour(3.0, 1.0), room, std::nullopt);
  EXPECT_WITHIN(with.intoRoom, 0.2 * without.intoRoom, kilograms(1e-9));
  EXPECT_LT(with.peakHumidity, without.peakHumidity);
}

// The vapour of a simulated day is what its stages say evaporated.
TEST(RoomOver, ReleasesWhatTheDayEvaporates) {
  const BrewDay day = simulate(test_support::steelRig(), test_support::mashOf(28.0, 5.0),
                               test_support::roomAt(20.0), {.curves = true});
  Mass evaporated = kilograms(0.0);
  Energy latent = joules(0.0);
  for (const Stage& stage : day.stages) evaporated += stage.evaporated;
  for (const Stage& stage : day.stages) latent += stage.ledger.lost[Path::Evaporation];
  const Room room{.volume = litres(60e3),
                  .start = air(20, 50),
                  .outdoors = air(5, 80),
                  .airflow = cubicMetresPerHour(60.0)};
  const RoomDay released = roomOver(day, room, std::nullopt);
  EXPECT_WITHIN(released.released, evaporated, 0.01 * evaporated);
  EXPECT_WITHIN(released.sensible, day.total.lost.total() - latent, 0.01 * day.total.lost.total());
}

}  // namespace
