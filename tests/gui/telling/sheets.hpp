// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets of bundled plans, and what stands on them.
#pragma once

#include <string>
#include <vector>

#include "gui/telling/sheet.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/support/solved_demo.hpp"

namespace test_support {

// Days alone, as the terminal has them; without bands, which take their time.
inline rigs::Solution daysAlone(const rigs::Plan& plan) {
  return {.plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
}
// A bundled plan with another value of one of its keys.
inline rigs::Plan changedStart(const std::string& name, const std::string& place,
                               const std::string& json) {
  rigs::Problems problems;
  const std::string text = rigs::planStartText(name).value();
  return rigs::readPlan(rigs::withValue(text, place, json), ".", problems).value();
}

inline gui::telling::Sheet sheetOf(const rigs::Solution& solution, std::size_t rig = 0,
                                   const rigs::Reader& reader = siReader()) {
  return gui::telling::sheetOf(
      {solution, solution.plan, reader, {}}, rig,
      {.plan = rigs::Told::just(rigs::Verbatim{"plan.json"}), .version = "1.2"});
}

// "20:43 Element off. Grain in, 4.8 kg; stir it in, lid off | settles at 68 °C | temperature".
inline std::string lineText(const gui::telling::SheetLine& line, const rigs::Reader& reader = {}) {
  const auto tell = [&](const rigs::Told& told) { return rigs::tell(told, reader); };
  const std::string action = tell(line.action);
  const std::string more = tell(line.more);
  std::string all =
      tell(line.clock()) + ' ' + action + (action.empty() || more.empty() ? "" : "; ") + more;
  if (!line.expected.empty()) all += " | " + tell(gui::telling::sideBySide(line.expected));
  for (const rigs::Told& one : line.toWrite)
    all += (&one == &line.toWrite.front() ? " | " : " + ") + tell(one);
  return all;
}
inline std::vector<std::string> lineTexts(const gui::telling::Sheet& sheet,
                                          const rigs::Reader& reader = {}) {
  std::vector<std::string> all;
  for (const gui::telling::SheetLine& line : sheet.lines) all.push_back(lineText(line, reader));
  return all;
}

}  // namespace test_support
