// SPDX-License-Identifier: GPL-3.0-or-later
// Single figures of a rig's result, by the place where they stand in it: "day/duration_s" of what
// resultJson() writes for a rig, "day/stages/0/last_C" within a list.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// All there may be, as the result's schema has them; "*" for the index of a list.
const std::vector<std::string>& figurePlaces();
bool isFigurePlace(std::string_view place);
// What may have been meant; "" where nothing is near.
std::string_view nearestFigurePlace(std::string_view written);

struct Figure {
  std::string text;     // with all the digits that the result has; "true", "false"; a word
  bool isWord = false;  // a text in JSON, else a number or one of true and false

  bool operator==(const Figure&) const = default;
};
// In the order of `places`; nothing where this result has no such figure, and of a day that stops
// early for wort and duration of the whole.
// Throws std::domain_error if a number is not finite, naming its key.
std::vector<std::optional<Figure>> figuresOf(const Plan& plan, const Answers& answers,
                                             std::size_t rig,
                                             const std::vector<std::string>& places);

// What has to be answered for them: one or more.
std::vector<Depth> depthsFor(const std::vector<std::string>& places);
// Whether what helps most has to be searched for, too: no depth does.
bool needsWhatHelps(const std::vector<std::string>& places);
// Whether a figure is against the other rigs of the plan.
bool needsAllRigs(const std::vector<std::string>& places);

}  // namespace rigs
