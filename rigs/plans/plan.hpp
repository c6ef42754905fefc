// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan document says, read: one batch, one place, one or more rigs.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/units.hpp"
#include "rigs/circuits/finding.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/chill_plan.hpp"
#include "rigs/plans/goals.hpp"
#include "rigs/plans/ready.hpp"
#include "rigs/plans/rig_plan.hpp"
#include "rigs/plans/room_plan.hpp"
#include "rigs/plans/tariff.hpp"

namespace rigs {

struct Plan {
  std::string title;
  physics::Batch batch;
  physics::Place place;
  std::optional<physics::Length> altitude;  // empty where a pressure was given instead
  std::string region;  // whose electrical rules apply; empty: those of each rig's circuit
  std::shared_ptr<const CircuitRules> ownRules = {};  // a rules file's; then they apply instead
  RoomPlan room;
  Tariff tariff;
  // Clock time the day begins, from midnight; says nothing where something is to be ready. Below 0
  // on the evening before, of a plan made by asBegun().
  physics::Time startOfDay;
  std::optional<Ready> ready = {};  // then each rig begins at its own time
  Goals goals;
  Chilling chilling = {};
  std::vector<RigPlan> rigs;

  // When all rigs begin; empty where each has its own time: see RigAnswer::begins.
  std::optional<physics::Time> start() const {
    return ready ? std::nullopt : std::optional(startOfDay);
  }
  bool operator==(const Plan&) const = default;
};
// With the rig at `index` alone, in full where it follows another. Its letter is as stated: of the
// first where it states none.
Plan onlyRig(const Plan& plan, std::size_t index);

// Whether the mash itself is left unplugged for a while.
bool hasOwnNight(const Plan& plan);
// How long a mash is left alone: in the plan's own unplugged rest, or else as its goal supposes.
physics::Time timeAlone(const Plan& plan);

// Reads a plan document. Every problem is reported, each with its place, what was found, what is
// accepted and an example; the plan is returned only without errors. `folder` is where relative
// references of rigs are looked up. Nothing is simulated.
std::optional<Plan> readPlan(std::string_view document, const std::filesystem::path& folder,
                             Problems& problems);

}  // namespace rigs
