// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan document says, read: one batch, one place, two or more rigs.
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
#include "rigs/documents/problems.hpp"
#include "rigs/plans/jacket_text.hpp"
#include "rigs/plans/room_plan.hpp"
#include "rigs/plans/tariff.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// One circuit of a rig and what hangs on it.
struct CircuitPlan {
  CircuitDetails details;
  std::vector<physics::Element> elements;  // as written; Rig has them combined
  physics::Wiring wiring = physics::Wiring::Parallel;
  double continuousShare = 1.0;  // of the current, for long use, as stated

  bool operator==(const CircuitPlan&) const = default;
};

// One column of every answer.
struct RigPlan {
  std::string name;
  physics::Rig rig;               // as planned
  physics::Rig bare;              // the same without any jacket
  physics::Rig jacketed;          // with its own jacket, or with the one to compare if it has none
  bool hasJacket = false;         // as planned
  bool jacketIsCompared = false;  // `jacketed` differs from `bare`
  bool hasLid = false;
  std::string finish;            // of the metal, in words: "brushed"; "emissivity 0.3" as stated
  JacketText jacket;             // of `jacketed`: "side 10 mm cork; lid 20 mm cork"
  std::string skin;              // of that jacket's outside, in words: "foil"
  std::string circuit;           // name in the catalogue; empty if voltage and current were given
  double continuousShare = 1.0;  // of the first circuit's current, as stated
  std::vector<CircuitPlan> circuits = {};  // one, or two; in plans made by readPlan()

  bool operator==(const RigPlan&) const = default;
};

// What the sizing questions aim at when nothing else is asked.
struct Goals {
  physics::Time boilWithin;      // heating from mash to boil
  double boilOffPerHour = 0.08;  // share of pre-boil volume
  double headspace = 0.10;       // share of the vessel kept free
  physics::Time unplugged;       // how long the kettle is left alone for the cooling question

  bool operator==(const Goals&) const = default;
};

struct Plan {
  std::string title;
  physics::Batch batch;
  physics::Place place;
  std::optional<physics::Length> altitude;  // empty where a pressure was given instead
  std::string region;  // whose electrical rules apply; empty: those of each rig's circuit
  std::shared_ptr<const CircuitRules> ownRules = {};  // a rules file's; then they apply instead
  RoomPlan room;
  Tariff tariff;
  physics::Time startOfDay;  // clock time the day begins, from midnight
  Goals goals;
  std::vector<RigPlan> rigs;

  bool operator==(const Plan&) const = default;
};

// Reads a plan document. Every problem is reported, each with its place, what was found, what is
// accepted and an example; the plan is returned only without errors. `folder` is where relative
// references of rigs are looked up. Nothing is simulated.
std::optional<Plan> readPlan(std::string_view document, const std::filesystem::path& folder,
                             Problems& problems);

// What an element would suffer on a supply above its rating, as a problem without a place: a
// warning up to kMostOverRated, an error beyond it.
std::optional<Problem> overVoltage(const physics::Element& element, const physics::Supply& supply);

// Contradictions that only show when the day is simulated: grain and water that do not fit, fill
// below the element, a boil that outlasts the water. Appends to problems, whose computed figures
// are in `units`. A kettle that does not boil is an answer, not a problem.
void checkPlan(const Plan& plan, Problems& problems, UnitSystem units = UnitSystem::SI);

}  // namespace rigs
