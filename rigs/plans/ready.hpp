// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be ready by which clock time: the day is then solved backwards.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "physics/units.hpp"

namespace rigs {

// Moments of a day that something may have to be ready for.
enum class Milestone { StrikeWater, EndOfMash, Boil, EndOfBoil, Pitching };

struct MilestoneWord {
  std::string_view word;  // as a plan writes it
  Milestone what;
};
inline constexpr std::array kMilestoneWords{MilestoneWord{"strike water", Milestone::StrikeWater},
                                            MilestoneWord{"end of mash", Milestone::EndOfMash},
                                            MilestoneWord{"boil", Milestone::Boil},
                                            MilestoneWord{"end of boil", Milestone::EndOfBoil},
                                            MilestoneWord{"pitching", Milestone::Pitching}};
std::string_view milestoneWord(Milestone what);
std::optional<Milestone> milestoneCalled(std::string_view word);

struct Ready {
  Milestone what = Milestone::Boil;
  physics::Time at;  // from midnight, below 24 h

  bool operator==(const Ready&) const = default;
};

}  // namespace rigs
