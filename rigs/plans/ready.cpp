// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/ready.hpp"

#include <algorithm>

namespace rigs {

std::string_view milestoneWord(Milestone what) {
  return kMilestoneWords[static_cast<std::size_t>(what)].word;
}

std::optional<Milestone> milestoneCalled(std::string_view word) {
  const auto found = std::find_if(kMilestoneWords.begin(), kMilestoneWords.end(),
                                  [&](const MilestoneWord& one) { return one.word == word; });
  return found == kMilestoneWords.end() ? std::nullopt : std::optional(found->what);
}

}  // namespace rigs
