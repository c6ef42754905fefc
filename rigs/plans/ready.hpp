// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be ready by which clock time: the day is then solved backwards.
#pragma once

#include <initializer_list>
#include <optional>
#include <string_view>
#include <utility>

#include "physics/units.hpp"

namespace rigs {

// Moments of a day that something may have to be ready for.
enum class Milestone { StrikeWater, EndOfMash, Boil, EndOfBoil, Pitching };

// As a plan writes them.
inline const std::initializer_list<std::pair<std::string_view, Milestone>> kMilestoneWords{
    {"strike water", Milestone::StrikeWater},
    {"end of mash", Milestone::EndOfMash},
    {"boil", Milestone::Boil},
    {"end of boil", Milestone::EndOfBoil},
    {"pitching", Milestone::Pitching}};
std::string_view milestoneWord(Milestone what);
std::optional<Milestone> milestoneCalled(std::string_view word);

struct Ready {
  Milestone what = Milestone::Boil;
  physics::Time at;  // from midnight, below 24 h

  bool operator==(const Ready&) const = default;
};

}  // namespace rigs
