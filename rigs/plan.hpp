// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan document says, read: one batch, one place, two or more rigs.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/units.hpp"
#include "rigs/problems.hpp"

namespace rigs {

// A flat tariff. Prices are the person's own; bundled ones are dated examples.
struct Tariff {
  double perKilowattHour = 0.0;  // in `currency`
  std::string currency;          // as written, e.g. "EUR" or "$"; empty if no price was given
  std::string dated;             // "2026-01" or "2026-01-31"; empty if not stated
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
  std::string jacket;            // of `jacketed`, in words: "side 10 mm cork; lid 20 mm cork"
  std::string skin;              // of that jacket's outside, in words: "foil"
  std::string circuit;           // name in the catalogue; empty if voltage and current were given
  double continuousShare = 1.0;  // of the circuit's current, for long use, where a rule says so
};

// What the sizing questions aim at when nothing else is asked.
struct Goals {
  physics::Time boilWithin;      // heating from mash to boil
  double boilOffPerHour = 0.08;  // share of pre-boil volume
  double headspace = 0.10;       // share of the vessel kept free
  physics::Time unplugged;       // how long the kettle is left alone for the cooling question
};

struct Plan {
  std::string title;
  physics::Batch batch;
  physics::Place place;
  std::optional<physics::Length> altitude;  // empty where a pressure was given instead
  Tariff tariff;
  physics::Time startOfDay;  // clock time the day begins, from midnight
  Goals goals;
  std::vector<RigPlan> rigs;
};

// Reads a plan document. Every problem is reported, each with its place, what was found, what is
// accepted and an example; the plan is returned only without errors. `folder` is where relative
// references of rigs are looked up. Nothing is simulated.
std::optional<Plan> readPlan(std::string_view document, const std::filesystem::path& folder,
                             Problems& problems);

// Contradictions that only show when the day is simulated: grain and water that do not fit, fill
// below the element, a boil that outlasts the water. Appends to problems. A kettle that does not
// boil is an answer, not a problem.
void checkPlan(const Plan& plan, Problems& problems);

}  // namespace rigs
