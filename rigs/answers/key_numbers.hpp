// SPDX-License-Identifier: GPL-3.0-or-later
// The values of one of a plan's keys as numbers, so that there are some between any two: coherent
// SI units of quantities and shares, seconds from midnight of times of day, else as they are.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "rigs/plans/keys.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

bool hasNumbers(const Key& key);
bool isWhole(const Key& key);  // has none between 2 and 3

struct ReadNumber {
  std::optional<double> number;
  Told problem;  // why there is none: one sentence without a full stop
};
// What the key accepts whatever else the plan says. Precondition: hasNumbers().
ReadNumber readNumber(const Key& key, std::string_view text);
// From one value to the next: of temperatures a difference, of times of day a time. Above 0.
ReadNumber readStep(const Key& key, std::string_view text);
// As a plan has it, in the unit of a text that was read, to 15 digits where these bits allow it;
// times of day to the minute.
std::string writtenNumber(const Key& key, double number, std::string_view like);

}  // namespace rigs
