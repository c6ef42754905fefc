// SPDX-License-Identifier: GPL-3.0-or-later
// What is brewed, and where: the batch with its mash and boil, and the place it is brewed at.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "physics/mash.hpp"
#include "physics/units.hpp"

namespace physics {

// A rest of a mash held by a controller; the first is reached by mashing in, each further one by
// a ramp at full power.
struct MashRest {
  Temperature temperature;
  Time duration;

  bool operator==(const MashRest&) const = default;
};
struct HeldMash {
  std::vector<MashRest> rests;

  bool operator==(const HeldMash&) const = default;
};
// A mash left alone: element off, lid as stated for the mash.
struct UnpluggedMash {
  Temperature start;
  Time duration;

  bool operator==(const UnpluggedMash&) const = default;
};

// Either the cold water poured in, or the cold wort wanted after the boil.
struct PouredWater {
  Volume atTwentyDegrees;

  bool operator==(const PouredWater&) const = default;
};
struct WantedWort {
  Volume atTwentyDegrees;

  bool operator==(const WantedWort&) const = default;
};

// Goes into the kettle while its wort boils: sugar, syrup, fruit, water. What of it is no extract
// counts as water.
struct Addition {
  std::string what;  // in its brewer's words; nothing is computed from it
  Mass mass;
  double extract = 0.0;     // kg of extract per kg, 0-1
  Temperature temperature;  // liquid water's, no hotter than where water boils
  Time beforeEnd;           // of the boil, as long as that at most
  bool isPoured = false;    // water by its volume; all else is weighed

  bool isAtTheEnd() const { return beforeEnd <= seconds(0.0); }
  bool operator==(const Addition&) const = default;
};

// Electricity that heats rinsing water, outside the vessel.
struct RinseHeater {
  bool onSameCircuit;          // as the vessel's element, while that is in use
  double efficiency;           // of the heat, what ends in the water, 0-1
  std::optional<Power> power;  // from the wall; nothing: not known

  bool operator==(const RinseHeater&) const = default;
};

// Of the wort that lifted grain holds, the share that rinsing water meets and mixes with: own
// estimate, halfway between water that finds its way past the grain (0) and one that mixes with all
// of it (1). No published measurement of grain rinsed in a bag or basket was found.
inline constexpr double kReachedByRinse = 0.5;

// Water poured over the grain once it is lifted.
struct Rinse {
  Volume atTwentyDegrees;
  Temperature temperature;  // liquid water's, no colder than drawn, no hotter than where it boils
  std::optional<RinseHeater> electric = {};  // nothing: heated by something else
  double reached = kReachedByRinse;          // 0-1

  bool operator==(const Rinse&) const = default;
};

// Lifted grain left to hang over the open vessel.
struct Draining {
  Time duration;
  bool elementOn = false;

  bool operator==(const Draining&) const = default;
};

struct Batch {
  std::variant<PouredWater, WantedWort> size;
  Grain grain;                 // mass 0: no mash, straight to the boil
  double extractYield = 0.72;  // kg of extract dissolved per kg of grain as weighed
  VolumePerMass displacement;  // of grain in the mash, about 0.67 L/kg
  VolumePerMass absorption;    // wort that stays in the lifted grain, at 20 C
  std::variant<HeldMash, UnpluggedMash> mash;
  Time mashingIn;  // grain going in, lid off, element off
  Time boil;
  std::vector<Addition> additions = {};  // in any order
  std::optional<Rinse> rinse = {};       // only with grain, as is
  std::optional<Draining> drain = {};    // after the rinse

  bool mashes() const { return grain.mass > kilograms(0.0); }
  bool operator==(const Batch&) const = default;
};

// Of the water or of the wort, whichever is stated; at 20 C.
inline Volume statedVolume(const Batch& batch) {
  return std::visit([](const auto& stated) { return stated.atTwentyDegrees; }, batch.size);
}

struct Place {
  Temperature room;
  double relativeHumidity = 0.5;  // 0-1
  Pressure pressure;              // sets the boiling point
  Temperature water;              // as drawn
  Velocity draught;

  bool operator==(const Place&) const = default;
};

}  // namespace physics
