// SPDX-License-Identifier: GPL-3.0-or-later
// What the output stands on: how wide it is, whether it can be bold.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace gui {

struct TextStyle {
  std::size_t width = 80;  // columns, at least kNarrowest
  bool bold = false;       // headings, on terminals that can
};
inline constexpr std::size_t kNarrowest = 40;
inline constexpr std::size_t kWidest = 1000;  // columns anybody may ask for

// Columns as somebody writes them; empty unless it is a whole number that a page can have.
std::optional<std::size_t> columnsFrom(std::string_view text);

// Of standard output. COLUMNS is a person's wish, for pipes too; a terminal knows better.
TextStyle screenStyle();

}  // namespace gui
