// SPDX-License-Identifier: GPL-3.0-or-later
// An answer on its way to a person: a title, the rigs' letters, sentences, tables, cautions.
// Built once per question, shown as text or as a spreadsheet.
#pragma once

#include <cstddef>
#include <string>
#include <variant>
#include <vector>

#include "gui/terminal/table.hpp"

namespace gui {

struct Heading {
  std::string text;
};
struct Sentence {
  std::string lead;  // the rig's letter, "(a)", or "" for a sentence about all
  std::string text;
};
using Block = std::variant<Heading, Sentence, Table>;

struct Page {
  std::string title;
  std::vector<std::string> notes;     // under the title: which plan, which place
  std::vector<std::string> rigNames;  // the legend; letters follow the order
  std::vector<Block> blocks;
  std::vector<std::string> cautions;

  void heading(std::string text) { blocks.emplace_back(Heading{std::move(text)}); }
  void say(std::string text) { blocks.emplace_back(Sentence{{}, std::move(text)}); }
  void say(std::string lead, std::string text) {
    blocks.emplace_back(Sentence{std::move(lead), std::move(text)});
  }
  void show(Table table) { blocks.emplace_back(std::move(table)); }
};

// "(a)", "(b)", ... "(z)", "(aa)".
std::string letter(std::size_t rig);

struct TextStyle {
  std::size_t width = 80;  // columns, at least kNarrowest
  bool bold = false;       // headings, on terminals that can
};
inline constexpr std::size_t kNarrowest = 40;

// Whatever stands in a page, no control character of it reaches the terminal.
std::string pageText(const Page& page, const TextStyle& style);

}  // namespace gui
