// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan may name, with sources.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "gui/terminal/page.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

// Of "materials", "supplies", "rigs" or "tariffs"; empty for anything else. `units` are those of
// whoever will read it.
std::optional<Page> cataloguePage(std::string_view subject, rigs::UnitSystem units);
// As a list of the bundled documents.
std::string catalogueJson(std::string_view subject);

}  // namespace gui
