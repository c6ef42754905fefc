// SPDX-License-Identifier: GPL-3.0-or-later
// What a command shows: how it begins, and the answers to one or several questions after another.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "gui/telling/answer.hpp"
#include "gui/terminal/screen.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace gui {

struct Page {
  rigs::Told title;
  std::vector<rigs::Told> opening;    // under the title: which plan, which place
  std::vector<std::string> rigNames;  // the legend, in the plan's order
  std::vector<rigs::Told> rigWords;   // behind the names: what rigs they are, or none
  std::vector<rigs::Told> verdicts;   // in place of these, or none
  std::vector<rigs::Told> warnings;   // before anything is said of any rig
  std::vector<rigs::Told> vital;    // of the cautions, what stands even where all else is left out
  std::optional<std::size_t> only;  // the one rig that all of it is about
  // All there is to read, in order; its headline stands among the blocks.
  telling::Answer answer;

  // Under its own title, unless the page has the same.
  void add(const telling::Answer& further);
};
// Title, batch, place and legend, before any answer; of all rigs or of the one that it is about.
Page pageAbout(const rigs::Plan& plan, const rigs::Reader& reader, std::optional<std::size_t> only);

// Whatever stands in a page, no control character of it reaches the terminal.
std::string pageText(const Page& page, const rigs::Reader& reader, const TextStyle& style);
// A line or two a rig under the title, and of the cautions those that every verdict hangs on.
std::string verdictsAlone(const Page& page, const rigs::Reader& reader, const TextStyle& style);
std::string pageCsv(const Page& page, const rigs::Reader& reader);

}  // namespace gui
