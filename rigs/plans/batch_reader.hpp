// SPDX-License-Identifier: GPL-3.0-or-later
// What is brewed: water or wort, grain, mash, boil.
#pragma once

#include <optional>

#include "physics/brewday.hpp"
#include "rigs/documents/json_cursor.hpp"

namespace rigs {

// Reports all problems of its part and returns nullopt if any of them is an error. `place` sets
// the grain's temperature if none is stated, and the boiling point.
std::optional<physics::Batch> readBatch(const JsonCursor& at, const physics::Place& place);

}  // namespace rigs
