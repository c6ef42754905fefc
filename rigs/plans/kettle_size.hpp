// SPDX-License-Identifier: GPL-3.0-or-later
// A kettle by its volume: a plan says diameter and height.
#pragma once

#include <numbers>
#include <optional>
#include <string>
#include <string_view>

#include "physics/units.hpp"
#include "rigs/documents/problems.hpp"

namespace rigs {

struct KettleSize {
  physics::Length diameter, height;

  physics::Volume volume() const { return std::numbers::pi / 4.0 * diameter * diameter * height; }
};

// So many times as high as it is wide, in whole millimetres; the height, in tenths of them, makes
// up for the rounded width.
KettleSize kettleOf(physics::Volume volume, double heightByWidth = 1.0);

// A volume as people type it, 1 L to 2000 L; told otherwise, at `place`.
std::optional<physics::Volume> readKettleVolume(std::string_view typed, std::string_view place,
                                                Problems& problems);

// "386 mm", "384.5 mm": to tenths.
std::string inMillimetresText(physics::Length length);

}  // namespace rigs
