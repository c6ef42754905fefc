// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the vessel at a moment of the day: water, dissolved extract, grain, warm metal.
#pragma once

#include "physics/batch.hpp"
#include "physics/units.hpp"

namespace physics {

// Heat stored relative to the cold start, part by part.
struct StoredHeat {
  Energy wort, grain, vessel;

  Energy total() const { return wort + grain + vessel; }
};

// Masses change; the cold starts belong to the day. Energies are exact integrals of the
// specific heats used in heatCapacity(), so that simulation and ledger can be compared.
class Contents {
 public:
  Contents(const Batch& batch, const Place& place, HeatCapacity vessel);

  Mass water, extract, grain;

  HeatCapacity heatCapacity(Temperature t) const;
  HeatCapacity heatCapacity(Temperature t, SpecificHeat ofWater) const;
  StoredHeat storedHeat(Temperature t) const;
  // Above the cold start, per kg of water that leaves as liquid at t.
  SpecificEnergy carried(Temperature t) const;
  SpecificEnergy carried(SpecificEnergy enthalpyOfWater) const {
    return enthalpyOfWater - coldWaterEnthalpy_;
  }
  double strength() const;                 // extract over wort, mass fraction
  Volume volume(Temperature t) const;      // all that fills the vessel
  Volume wortVolume(Temperature t) const;  // liquid only

  // Of the addition alone at t, above the cold start.
  Energy heatOf(const Addition& addition, Temperature t) const;
  // Takes it in, and tells the temperature at which wort at t, vessel and addition meet. Without
  // the heat of solution of what dissolves, about 16 kJ/kg for sucrose (from memory).
  Temperature take(const Addition& addition, Temperature t);

  // How hot all of it is that holds so much heat above the cold start; `guess` is near.
  Temperature holding(Energy heat, Temperature guess) const;

  // Temperature at which vessel and freshly poured water meet.
  Temperature filled() const;
  // How hot the water must be for the mash to settle at `goal` once the grain is in, and what
  // it settles at from `strike`. Exact in the water's enthalpy.
  Temperature strikeFor(Temperature goal, const Grain& batchGrain) const;
  Temperature settled(Temperature strike, const Grain& batchGrain) const;

 private:
  // Heat above the cold start of all but the grain.
  Energy hotSide(Temperature t) const;
  HeatCapacity vessel_;
  SpecificHeat grainHeat_;
  VolumePerMass displacement_;
  Temperature coldWater_, coldGrain_, coldVessel_;
  SpecificEnergy coldWaterEnthalpy_, coldExtractEnthalpy_;
};

}  // namespace physics
