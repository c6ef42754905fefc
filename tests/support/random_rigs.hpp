// SPDX-License-Identifier: GPL-3.0-or-later
// Any vessel, rig, batch and room, for properties that hold for all of them.
#pragma once

#include <rapidcheck.h>

#include <cmath>

#include "tests/support/between.hpp"
#include "tests/support/kettles.hpp"

namespace test_support {

inline bool coin() { return between(0.0, 1.0) < 0.5; }

inline physics::Covering someCovering() {
  using namespace physics;
  Covering covering{.insulation = {}, .emissivity = between(0.05, 0.95)};
  while (covering.insulation.size() < 2 && coin()) {
    covering.insulation.push_back(layer(between(0.0, 40.0), between(0.025, 0.25)));
  }
  return covering;
}

inline physics::Support someSupport(physics::Length diameter) {
  using namespace physics;
  const double kind = between(0.0, 3.0);
  if (kind < 1.0) return {};
  if (kind < 2.0) {
    return onTable(diameter, millimetres(between(10.0, 50.0)),
                   wattsPerMetreKelvin(between(0.08, 0.3)));
  }
  return onThickFloor(diameter, wattsPerMetreKelvin(between(0.1, 2.0)));
}

inline double someOpening() {
  const double kind = between(0.0, 3.0);
  return kind < 1.0 ? 0.0 : kind < 2.0 ? 1.0 : between(0.0, 1.0);
}

// Steel, aluminium, copper or plastic; thin or thick.
inline physics::Vessel someVessel() {
  using namespace physics;
  Vessel vessel = steelKettle();
  vessel.innerDiameter = metres(between(0.20, 0.50));
  vessel.height = metres(between(0.20, 0.60));
  vessel.wallThickness = millimetres(between(0.5, 4.0));
  vessel.wallConductivity = wattsPerMetreKelvin(std::exp(between(std::log(0.2), std::log(390.0))));
  vessel.mass = kilograms(between(0.5, 12.0));
  vessel.specificHeat = joulesPerKilogramKelvin(between(380.0, 1900.0));
  vessel.side = someCovering();
  vessel.base = someCovering();
  vessel.lid = someCovering();
  vessel.open = {.strike = someOpening(),
                 .mash = someOpening(),
                 .heating = someOpening(),
                 .boil = someOpening()};
  vessel.support = someSupport(vessel.innerDiameter);
  return vessel;
}

struct Case {
  physics::Rig rig;
  physics::Batch batch;
  physics::Place place;
};

inline Case someCase() {
  using namespace physics;
  Case c{.rig = rigOf(someVessel(), between(300.0, 9000.0)),
         .batch = {},
         .place = roomAt(between(-5.0, 40.0))};
  c.rig.element.topHeight = metres(coin() ? 0.0 : between(0.01, 0.06));
  c.rig.supply.cableLoop = ohms(between(0.0, 0.5));
  c.rig.boilPower = coin() ? 1.0 : between(0.5, 1.0);
  c.rig.evaporationFactor = coin() ? 1.0 : between(0.5, 2.0);
  if (coin()) c.rig.hose.length = metres(between(0.3, 3.0));
  c.place.relativeHumidity = between(0.05, 0.95);
  c.place.pressure = pascals(between(60e3, 105e3));
  c.place.water = celsius(between(2.0, 30.0));
  if (coin()) c.place.draught = metresPerSecond(between(0.0, 0.5));
  const double litre = between(0.3, 0.75) * inLitres(capacity(c.rig.vessel));
  const double thickness = between(2.5, 6.0);
  c.batch = mashOf(litre, coin() ? litre / thickness : 0.0, inCelsius(c.place.room));
  c.batch.mashingIn = minutes(coin() ? 0.0 : between(0.0, 15.0));
  c.batch.boil = minutes(coin() ? 0.0 : between(0.0, 90.0));
  if (coin()) {
    c.batch.mash = UnpluggedMash{celsius(between(60.0, 72.0)), hours(between(0.0, 16.0))};
  } else {
    c.batch.mash = HeldMash{{{celsius(between(45.0, 66.0)), minutes(between(0.0, 40.0))},
                             {celsius(between(60.0, 72.0)), minutes(between(0.0, 40.0))}}};
  }
  return c;
}

}  // namespace test_support
