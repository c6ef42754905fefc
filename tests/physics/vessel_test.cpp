// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/vessel.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/between.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::steelKettle;

Power throughBase(const Support& support, Length diameter, double kelvin) {
  return 0.25 * 3.14159265358979 * diameter * diameter * kelvins(kelvin) / support.solid;
}

// pi/4 D^2 H.
TEST(Vessel, HoldsItsCylinder) {
  EXPECT_WITHIN(capacity(steelKettle()), litres(39.592), litres(0.001));
}

// Shape factor S = 2 D of a disk on a thick solid (shape-factor tables, from memory): a 0.35 m
// kettle 60 K hotter than thick wood of k 0.15 loses 6.3 W (computed here).
TEST(OnThickFloor, LosesByTheDisksShapeFactor) {
  const Support floor = onThickFloor(metres(0.35), wattsPerMetreKelvin(0.15));
  EXPECT_FALSE(floor.onLegs);
  EXPECT_WITHIN(throughBase(floor, metres(0.35), 60.0), watts(6.3), watts(0.01));
}

// ISO 6946 by hand without the sideways part: 30 mm of wood, k 0.15, over still air is
// 0.2 + 0.17 m2 K/W. The board's fin can only add to what goes straight down, and not more than
// the disk on thick wood of the same conductivity with films on both sides of infinite area would.
TEST(OnTable, LosesMoreThanStraightDown) {
  const Support table = onTable(metres(0.355), millimetres(30.0), wattsPerMetreKelvin(0.15));
  EXPECT_FALSE(table.onLegs);
  EXPECT_LT(table.solid, squareMetreKelvinsPerWatt(0.37));
  EXPECT_GT(table.solid, squareMetreKelvinsPerWatt(0.15));
}

// A board that conducts nothing sideways worth mentioning (very thin) is its films alone.
TEST(OnTable, OfAThinBoardIsTheFilmBelow) {
  const Support paper = onTable(metres(0.355), millimetres(0.05), wattsPerMetreKelvin(0.05));
  EXPECT_WITHIN(paper.solid, squareMetreKelvinsPerWatt(0.17 + 0.001),
                squareMetreKelvinsPerWatt(0.005));
}

RC_GTEST_PROP(OnTable, InsulatesMoreTheWiderTheKettle, ()) {
  const Length thickness = millimetres(between(5.0, 60.0));
  const ThermalConductivity k = wattsPerMetreKelvin(between(0.05, 0.5));
  const Length narrow = metres(between(0.1, 0.5));
  RC_ASSERT(onTable(1.5 * narrow, thickness, k).solid > onTable(narrow, thickness, k).solid);
}

RC_GTEST_PROP(WettedHeatCapacity, GrowsWithFillUpToTheWholeShell, ()) {
  const Vessel vessel = steelKettle();
  const HeatCapacity whole = vessel.mass * vessel.specificHeat;
  const Length fill = between(0.0, 1.0) * vessel.height;
  RC_ASSERT(wettedHeatCapacity(vessel, fill) <= (1.0 + 1e-12) * whole);
  RC_ASSERT(wettedHeatCapacity(vessel, fill) >= wettedHeatCapacity(vessel, 0.9 * fill));
}

TEST(WettedHeatCapacity, IsTheBaseWhenEmptyAndTheShellWhenFullOrOverfull) {
  const Vessel vessel = steelKettle();
  // Base over base and side: 1 / (1 + 4 H/D).
  const double base = 1.0 / (1.0 + 4.0 * 0.40 / 0.355);
  EXPECT_WITHIN(wettedHeatCapacity(vessel, metres(0.0)), joulesPerKelvin(base * 2500.0),
                joulesPerKelvin(1e-9));
  for (const double full : {0.40, 0.60}) {
    EXPECT_WITHIN(wettedHeatCapacity(vessel, metres(full)), joulesPerKelvin(2500.0),
                  joulesPerKelvin(1e-9));
  }
}

}  // namespace
}  // namespace physics
