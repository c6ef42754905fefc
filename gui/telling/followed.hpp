// SPDX-License-Identifier: GPL-3.0-or-later
// A brew day while it goes on, in a few lines: what was read last, what comes next, what to heed.
#pragma once

#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/answers/day_ahead.hpp"
#include "rigs/readings/reading.hpp"

namespace gui::telling {

struct ReadAndFollowed {
  const std::vector<rigs::readings::Reading>& read;
  const rigs::Followed& followed;
};

// With title and cautions. Needs days with the plan's own night, and chilling where it is stated.
Answer howItGoesOn(const Case& of, std::size_t rig, const ReadAndFollowed& from);

// Of what comes, one after another, what is done then: "It rolls".
std::vector<rigs::Told> actionsOf(const Case& of, std::size_t rig, const rigs::Followed& followed);

}  // namespace gui::telling
