// SPDX-License-Identifier: GPL-3.0-or-later
// One's own kettle on the command line of "new": the few things that a plan of it is made from.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/terminal/typed_words.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/first_kettle.hpp"
#include "rigs/words/told.hpp"

namespace gui {

struct KettleOption {
  std::string_view option;  // "--power"
  std::string_view value;   // for help: "POWER"; "" for none
  rigs::Told about;
};
// In the order of the help.
std::vector<KettleOption> kettleOptions();
bool isKettleOption(std::string_view option);

// Nothing where none of these options was typed. A region or a circuit that is not there is told.
std::optional<rigs::FirstKettle> kettleFrom(const TypedWords& typed,
                                            std::vector<rigs::Told>& wrong);

// The plan's text; "" after adding what is wrong with the kettle, at its options.
std::string kettlePlan(const rigs::FirstKettle& kettle, const rigs::Reader& reader,
                       rigs::Problems& problems);

}  // namespace gui
