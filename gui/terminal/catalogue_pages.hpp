// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan may name, each with its source.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "gui/terminal/page.hpp"
#include "gui/terminal/wording.hpp"

namespace gui {

// Subjects: "materials", "supplies", "rigs"; nothing for others.
std::optional<Page> cataloguePage(std::string_view subject, UnitSystem units);
// The catalogue's own documents of that subject, as a JSON array.
std::string catalogueJson(std::string_view subject);

}  // namespace gui
