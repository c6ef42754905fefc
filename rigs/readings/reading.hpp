// SPDX-License-Identifier: GPL-3.0-or-later
// What a brewer or a logger read on a day.
#pragma once

#include <cstddef>
#include <optional>
#include <variant>

#include "physics/units.hpp"

namespace rigs::readings {

// The moments that a day and its plan have in common: what follows is counted from them.
enum class Event { PluggedIn, GrainIn, Unplugged, Heating, Boil, LidOn, LidOff };

struct ReadVolume {
  physics::Volume volume;
  bool hot = false;  // as hot as it was; else at 20 C

  bool operator==(const ReadVolume&) const = default;
};
struct ReadGravity {
  double gravity;  // 20/20, read cold

  bool operator==(const ReadGravity&) const = default;
};
// An energy is a meter's, counted from wherever it began.
using Value = std::variant<physics::Temperature, physics::Energy, ReadVolume, ReadGravity, Event>;

struct Reading {
  std::size_t line = 0;  // of the text, 1 the first
  physics::Time at;      // from the midnight before the plan's day: 26 h is two at night
  Value value;
  double step = 0.0;  // of the last digit, in the value's SI unit

  bool operator==(const Reading&) const = default;
};

// What is known of the thermometer, and how it was used.
struct Thermometer {
  std::optional<physics::TemperatureDifference> step = {};  // where digits do not tell it
  bool checked = false;                                     // in ice or boiling water
  bool stirred = true;

  bool operator==(const Thermometer&) const = default;
};

}  // namespace rigs::readings
