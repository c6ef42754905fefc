// SPDX-License-Identifier: GPL-3.0-or-later
// Reads how wort is chilled.
#pragma once

#include <optional>

#include "physics/vessel.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/chill_plan.hpp"
#include "rigs/plans/layers.hpp"

namespace rigs {

// A rig's "chiller"; as usual where none is stated. Nullopt, with an error, where it is wrong:
// beyond the ranges, or a coil that the kettle has no room for. `vessel` null where that is wrong.
std::optional<Chiller> readChiller(const Layers& rig, const physics::Vessel* vessel);

// What batch and place say of it; either may be missing from the document. Nullopt, with an error,
// where the wort is wanted colder than stated water can make it.
std::optional<Chilling> readChilling(const std::optional<JsonCursor>& batch,
                                     const std::optional<JsonCursor>& place);

}  // namespace rigs
