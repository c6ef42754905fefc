// SPDX-License-Identifier: GPL-3.0-or-later
// Where the brewing happens, and what a person aims at. Each reports all problems of its part and
// returns nullopt if any of them is an error.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "physics/brewday.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/goals.hpp"
#include "rigs/plans/room_plan.hpp"

namespace rigs {

struct PlaceRead {
  physics::Place place;
  std::optional<physics::Length> altitude;
  std::string region;
  std::shared_ptr<const CircuitRules> ownRules;
  RoomPlan room;
};
// `folder` is where a rules file is looked up.
std::optional<PlaceRead> readPlace(const JsonCursor& at, const std::filesystem::path& folder,
                                   Problems& problems);
std::optional<Goals> readGoals(const JsonCursor& at);

}  // namespace rigs
