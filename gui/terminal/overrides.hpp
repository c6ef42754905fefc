// SPDX-License-Identifier: GPL-3.0-or-later
// "What if" options: they change the plan that was read, never its file.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace gui {

// As typed: quantities with their units.
struct Override {
  std::string option;  // "--room"
  std::string text;
};
using Overrides = std::vector<Override>;

struct OverrideKind {
  std::string_view option;
  std::string_view value;  // for help: "TIME"
  rigs::Template<0> about;
  std::string_view example;
};
// In the order of the help.
const std::vector<OverrideKind>& overrideKinds();

// Every problem names its option where a document's would name its place. Throws rigs::FileError
// where a rules file cannot be read.
void applyOverrides(const Overrides& overrides, rigs::Plan& plan, rigs::Problems& problems);

}  // namespace gui
