// SPDX-License-Identifier: GPL-3.0-or-later
// A plan built in code, for tests that are about showing and not about reading.
#pragma once

#include "rigs/plans/plan.hpp"

namespace test_support {

// A kettle of 40 L on a table; `bare` and `jacketed` differ by 10 mm of foam on the side.
inline rigs::RigPlan kettle(const std::string& name, double watt, double ratedVolts,
                            double supplyVolts) {
  using namespace physics;
  Rig bare;
  bare.name = name;
  bare.vessel = {.innerDiameter = metres(0.36),
                 .height = metres(0.40),
                 .wallThickness = millimetres(1.0),
                 .wallConductivity = wattsPerMetreKelvin(15.0),
                 .mass = kilograms(5.0),
                 .specificHeat = joulesPerKilogramKelvin(500.0),
                 .side = {{}, 0.3},
                 .base = {{}, 0.3},
                 .lid = {{}, 0.3},
                 .open = {0.0, 0.0, 0.5, 1.0},
                 .support = onTable(metres(0.36), millimetres(30.0), wattsPerMetreKelvin(0.15))};
  bare.element = {watts(watt), volts(ratedVolts), metres(0.05)};
  bare.supply = {volts(supplyVolts), amperes(16.0), ohms(0.1)};
  Rig jacketed = bare;
  jacketed.vessel.side = {{layerOf(millimetres(10.0), wattsPerMetreKelvin(0.04))}, 0.9};
  rigs::RigPlan plan;
  plan.name = name;
  plan.rig = bare;
  plan.bare = bare;
  plan.jacketed = jacketed;
  plan.jacketIsCompared = true;
  plan.finish = "brushed";
  plan.jacket = {{{"side", {{.material = "foam", .thickness = millimetres(10.0)}}}}};
  plan.skin = "foam";
  return plan;
}

// Two rigs that boil and, if asked for, one that does not.
inline rigs::Plan planInCode(bool withWeakRig = false) {
  using namespace physics;
  rigs::Plan plan;
  plan.title = "Test ale";
  plan.batch.size = PouredWater{litres(28.0)};
  plan.batch.grain = {kilograms(5.0), celsius(18.0), maltSpecificHeat(0.045),
                      maltSlakingHeat(0.045)};
  plan.batch.displacement = litresPerKilogram(0.67);
  plan.batch.absorption = litresPerKilogram(0.8);
  plan.batch.mash = HeldMash{{{celsius(66.0), minutes(60.0)}}};
  plan.batch.mashingIn = minutes(5.0);
  plan.batch.boil = minutes(60.0);
  plan.place = {celsius(18.0), 0.5, pascals(101325.0), celsius(12.0), metresPerSecond(0.0)};
  plan.altitude = metres(0.0);
  plan.tariff = {.perKilowattHour = 0.30, .currency = "EUR", .dated = "2026-01"};
  plan.startOfDay = hours(9.0);
  plan.goals = {.boilWithin = minutes(45.0),
                .boilOffPerHour = 0.08,
                .headspace = 0.10,
                .unplugged = hours(2.0)};
  plan.rigs = {kettle("Urn", 3000.0, 230.0, 230.0), kettle("Import", 3500.0, 240.0, 208.0)};
  if (withWeakRig) plan.rigs.push_back(kettle("Travel", 1000.0, 230.0, 230.0));
  return plan;
}

}  // namespace test_support
