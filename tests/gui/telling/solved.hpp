// SPDX-License-Identifier: GPL-3.0-or-later
// Solved plans for tests of what is told, and the figures of an answer's tables by their labels.
#pragma once

#include <gtest/gtest.h>

#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace test_support {

// The bundled demo with values put at places of its document, and every figure of its days.
inline rigs::Solution demoWith(const std::vector<std::pair<std::string, std::string>>& edits) {
  std::string document(rigs::demoPlanText());
  for (const auto& [pointer, value] : edits) document = rigs::withValue(document, pointer, value);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, ".", problems);
  if (!plan)
    throw std::logic_error("the edited demo has errors: " +
                           rigs::inEnglish(problems.front().message));
  return {.plan = *plan,
          .answers = rigs::answer(*plan, rigs::Depth::DayAndJacket, true),
          .sweeps = {},
          .done = {},
          .edition = 0};
}
inline const rigs::Solution& demoDays() {
  static const rigs::Solution solution = demoWith({});
  return solution;
}

inline gui::telling::Case caseOf(const rigs::Solution& solution, const rigs::Reader& reader) {
  return {solution, solution.plan, reader, {}};
}

// In English, within the answer's first row of that label below a heading.
inline const gui::telling::Row& rowBelow(const gui::telling::Answer& answer,
                                         const std::string& heading, const std::string& label) {
  for (const gui::telling::Table* table : answer.tables()) {
    bool under = false;
    for (const gui::telling::Row& row : table->rows) {
      const std::string text = rigs::inEnglish(row.label);
      if (row.isHeading()) under = text == heading;
      if (under && !row.isHeading() && text == label) return row;
    }
  }
  throw std::out_of_range("no row \"" + label + "\" below \"" + heading + '"');
}
// With all its digits; nothing where there is no figure.
inline std::optional<double> figureBelow(const gui::telling::Answer& answer,
                                         const std::string& heading, const std::string& label,
                                         std::size_t rig, const rigs::Reader& reader = {}) {
  return gui::telling::cellNumber(rowBelow(answer, heading, label).cells.at(rig), reader);
}
inline std::string cellBelow(const gui::telling::Answer& answer, const std::string& heading,
                             const std::string& label, std::size_t rig,
                             const rigs::Reader& reader = {}) {
  return gui::telling::cellText(rowBelow(answer, heading, label).cells.at(rig), reader);
}

inline std::string joined(const std::vector<rigs::Told>& all,
                          rigs::UnitSystem units = rigs::UnitSystem::SI) {
  return rigs::inEnglish(rigs::sentences(all), units);
}
// Headings and sentences, a line each, led by a rig's letter where they are about one.
inline std::string spokenBlocks(const gui::telling::Answer& answer,
                                rigs::UnitSystem units = rigs::UnitSystem::SI) {
  std::string text;
  for (const gui::telling::Block& block : answer.blocks) {
    if (const auto* heading = std::get_if<gui::telling::Heading>(&block))
      text += rigs::inEnglish(heading->text, units) + '\n';
    if (const auto* one = std::get_if<gui::telling::Sentence>(&block)) {
      if (one->rig && !one->goesOn) text += answer.letterOf(*one->rig) + ' ';
      text += rigs::inEnglish(one->text, units) + '\n';
    }
  }
  return text;
}

}  // namespace test_support
