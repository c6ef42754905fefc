// SPDX-License-Identifier: GPL-3.0-or-later
// Bundled plans that a new one may start from, each a scenario with a name of its own.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rigs {

// "large-batch", "night-unplugged", "one-kettle", ... in alphabetical order.
std::vector<std::string> planStartNames();
// The document of that name; nothing where there is none.
std::optional<std::string> planStartText(std::string_view name);

// The same plan with its volumes, masses, temperatures and lengths as they are written in the
// United States: "6.6 gal", "9.48 lb", "152.6 F", "15 in", to three digits, a temperature to
// 0.1 F. What is bought by other units there too stays as it is: watts, volts, mm2 of copper,
// prices; so does what is no quantity. Throws EditError where the document is not JSON.
std::string inUsUnits(std::string_view document);

}  // namespace rigs
