// SPDX-License-Identifier: GPL-3.0-or-later
// Bundled plans that a new one may start from, each a scenario with a name of its own.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/words/told.hpp"

namespace rigs {

// "large-batch", "night-unplugged", "one-kettle", ... in alphabetical order.
std::vector<std::string> planStartNames();
// The document of that name; nothing where there is none.
std::optional<std::string> planStartText(std::string_view name);

// What it is about, for people who choose one: a few words, and a sentence. "" is the example that
// a new plan is a copy of where no name is given. Nothing where there is no such start.
struct PlanStartTold {
  Told title, about;
};
// All of them in the order in which a list shows them, the example first.
std::vector<std::string> planStartsToOffer();
std::optional<PlanStartTold> planStartTold(std::string_view name);

// The same plan with its volumes, masses, temperatures and lengths as they are written in the
// United States: "6.6 gal", "9.48 lb", "152.6 F", "15 in", to three digits, a temperature to
// 0.1 F. What is bought by other units there too stays as it is: watts, volts, mm2 of copper,
// prices; so does what is no quantity. Throws EditError where the document is not JSON.
std::string inUsUnits(std::string_view document);

}  // namespace rigs
