// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan says of the lifted grain: the water that rinses it, and how long it drains.
#pragma once

#include <optional>

#include "physics/batch.hpp"
#include "rigs/documents/json_cursor.hpp"

namespace rigs {

// Of the heat that warms rinsing water, what ends in it where a plan does not say: own estimate, an
// element inside a vessel with its lid on; a pot on a plate rather 70 %.
inline constexpr double kRinseHeaterEfficiency = 0.85;

// `at` is the batch. Nothing of the outer where one is wrong; nothing of the inner where none is
// stated.
template <class Stated>
using IfStated = std::optional<std::optional<Stated>>;
IfStated<physics::Rinse> readRinse(const JsonCursor& at, const physics::Place& place);
IfStated<physics::Draining> readDraining(const JsonCursor& at);

// Whether enough water is left for the mash of a wanted wort; otherwise a problem of the rinse.
bool leavesWaterToMash(const JsonCursor& at, const physics::Batch& batch);

}  // namespace rigs
