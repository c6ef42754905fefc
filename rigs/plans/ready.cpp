// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/ready.hpp"

#include <algorithm>

namespace rigs {

std::string_view milestoneWord(Milestone what) {
  return std::find_if(kMilestoneWords.begin(), kMilestoneWords.end(),
                      [&](const auto& one) { return one.second == what; })
      ->first;
}

std::optional<Milestone> milestoneCalled(std::string_view word) {
  const auto found = std::find_if(kMilestoneWords.begin(), kMilestoneWords.end(),
                                  [&](const auto& one) { return one.first == word; });
  return found == kMilestoneWords.end() ? std::nullopt : std::optional(found->second);
}

}  // namespace rigs
