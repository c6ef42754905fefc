// SPDX-License-Identifier: GPL-3.0-or-later
// The plan that a command is about: where it comes from, what it says, and what is wrong with it.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>

#include "gui/terminal/commands.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace gui {

struct PlanInput {
  rigs::Told name;
  std::string document;
  std::filesystem::path folder;  // where relative references are looked up
  std::optional<rigs::Plan> plan;
  std::optional<std::size_t> rig;  // that was asked for alone
  rigs::Problems ofOptions, ofDocument;

  bool fine() const { return plan && !rigs::hasErrors(ofOptions) && !rigs::hasErrors(ofDocument); }
  rigs::Problems allProblems() const;
};

// With the request's what-ifs. Nothing is simulated. Throws rigs::FileError where a file cannot be
// read.
PlanInput readPlanInput(const Request& request, rigs::Problems ofOptions);

// A problem where the plan has several rigs and none was named; `text` says what is of one rig, and
// has a place for the letters there are: "a, b or c".
void askForRig(PlanInput& read, const rigs::Template<1>& text);

// What problems of options are headed with.
rigs::Told theCommand();

}  // namespace gui
