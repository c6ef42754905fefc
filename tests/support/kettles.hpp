// SPDX-License-Identifier: GPL-3.0-or-later
// Rigs, batches and places for tests: plain ones to start from.
#pragma once

#include <cmath>
#include <vector>

#include "physics/brewday.hpp"

namespace test_support {

inline physics::Layer layer(double millimetre, double wattPerMetreKelvin) {
  return physics::layerOf(physics::millimetres(millimetre),
                          physics::wattsPerMetreKelvin(wattPerMetreKelvin));
}

inline physics::LidUse openAt(double everywhere) {
  return {.strike = everywhere, .mash = everywhere, .heating = everywhere, .boil = everywhere};
}

// Brushed stainless steel 1 mm thick, 0.355 m wide and 0.40 m high (39.6 L), on legs.
inline physics::Vessel steelKettle() {
  using namespace physics;
  const Covering bare{.insulation = {}, .emissivity = 0.3};
  return {.innerDiameter = metres(0.355),
          .height = metres(0.40),
          .wallThickness = millimetres(1.0),
          .wallConductivity = wattsPerMetreKelvin(15.0),
          .mass = kilograms(5.0),
          .specificHeat = joulesPerKilogramKelvin(500.0),
          .side = bare,
          .base = bare,
          .lid = bare,
          .open = {.strike = 0.0, .mash = 0.0, .heating = 1.0, .boil = 1.0},
          .support = {}};
}

// An element that gets exactly `watt`: fed at its rated voltage through no cable.
inline physics::Element fedWith(double watt) {
  return {.rating = physics::watts(watt),
          .ratedAt = physics::volts(230.0),
          .topHeight = physics::metres(0.0)};
}
inline physics::Supply socket() {
  return {.nominal = physics::volts(230.0),
          .rating = physics::amperes(16.0),
          .cableLoop = physics::ohms(0.0)};
}

inline physics::Rig rigOf(const physics::Vessel& vessel, double watt) {
  return {.name = "test",
          .vessel = vessel,
          .element = fedWith(watt),
          .supply = socket(),
          .hose = {.length = physics::metres(0.0),
                   .outerDiameter = physics::millimetres(20.0),
                   .wall = physics::squareMetreKelvinsPerWatt(0.02)}};
}
inline physics::Rig steelRig(double watt = 3000.0) { return rigOf(steelKettle(), watt); }

inline physics::Place roomAt(double celsiusRoom) {
  using namespace physics;
  return {.room = celsius(celsiusRoom),
          .relativeHumidity = 0.5,
          .pressure = pascals(101325.0),
          .water = celsius(12.0),
          .draught = metresPerSecond(0.0)};
}

// Pale malt of 4.5 % moisture.
inline physics::Grain paleMalt(double kilogram, double celsiusGrain) {
  using namespace physics;
  return {.mass = kilograms(kilogram),
          .temperature = celsius(celsiusGrain),
          .specificHeat = maltSpecificHeat(0.045),
          .slakingHeat = maltSlakingHeat(0.045)};
}

inline physics::Batch mashOf(double litre, double kilogram, double celsiusGrain = 18.0) {
  using namespace physics;
  return {.size = PouredWater{litres(litre)},
          .grain = paleMalt(kilogram, celsiusGrain),
          .displacement = litresPerKilogram(0.67),
          .absorption = litresPerKilogram(0.8),
          .mash = HeldMash{{{celsius(66.0), minutes(60.0)}, {celsius(77.0), minutes(10.0)}}},
          .mashingIn = minutes(5.0),
          .boil = minutes(60.0)};
}
// No grain: straight to the boil.
inline physics::Batch waterOnly(double litre, physics::Time boil = physics::minutes(60.0)) {
  physics::Batch batch = mashOf(litre, 0.0);
  batch.boil = boil;
  return batch;
}

// A vessel that loses next to nothing: thick insulation everywhere, lid closed all day.
inline physics::Vessel nearlyLossless(physics::Vessel vessel) {
  using namespace physics;
  const Covering thick{
      .insulation = {{.thickness = metres(0.0), .flatInsulance = squareMetreKelvinsPerWatt(1e6)}},
      .emissivity = 0.0};
  vessel.side = vessel.base = vessel.lid = thick;
  vessel.open = openAt(0.0);
  vessel.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e6)};
  return vessel;
}

// A kettle that loses through its base alone, exactly `conductance` W/K times the excess over the
// room.
inline physics::Rig constantLoss(double litre, double watt, double conductance) {
  using namespace physics;
  Vessel v = nearlyLossless(steelKettle());
  v.innerDiameter = metres(std::cbrt(4e-3 * litre / 3.14159265358979));
  v.height = 1.2 * v.innerDiameter;
  v.mass = kilograms(1e-6);
  v.base.insulation.clear();
  const ThermalInsulance metal = v.wallThickness / v.wallConductivity;
  v.support.solid = crossSection(v) / wattsPerKelvin(conductance) - metal;
  return rigOf(v, watt);
}

}  // namespace test_support
