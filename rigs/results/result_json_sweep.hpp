// SPDX-License-Identifier: GPL-3.0-or-later
// What a sweep over a plan's keys finds, line by line: of each combination a row for each rig, as
// JSON or as fields of a spreadsheet. Always in SI: every name ends in its unit.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/answers/combinations.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json_figures.hpp"

namespace rigs {

// Of the format of lines; in the first of them.
inline constexpr int kSweepVersion = 1;

// What each row of a sweep tells of.
struct Sweep {
  std::string document;          // the plan that is varied
  std::filesystem::path folder;  // where its relative references are looked up
  Combinations combinations;
  std::optional<std::size_t> rig;    // one alone; else all of them
  std::vector<std::string> figures;  // places as in result_json_figures.hpp
};
// Those that decide: what the summary of a plan shows side by side.
const std::vector<std::string>& decidingFigures();

struct SweepRow {
  std::string rig;      // its letter; "" where the combination is no plan
  std::string outcome;  // as the result's; "no plan", with problems
  std::vector<std::optional<Figure>> figures;
  Problems problems;
};
struct SweptCombination {
  std::uint64_t number;  // from 1
  std::vector<VariedValue> values;
  std::vector<SweepRow> rows;
  bool isPart = false;  // stopped amid a search: none of its rows may be shown

  bool isPlan() const { return rows.empty() || rows.front().problems.empty(); }
};
// The plan with the values of combination `i` answered. What cannot be a plan, or cannot be
// computed, is a row that says why; never throws for it. Where what helps most is among the
// figures, `stop` is asked now and then, maybe from several threads.
SweptCombination swept(const Sweep& sweep, std::uint64_t i, const std::function<bool()>& stop = {});

// "rigs/b/element/power_W", "batch/boil_s"; words and times of day have no unit.
std::string variedName(const Variation& variation);
// With the unit of that name; a text where there is no number.
Figure variedFigure(const Variation& variation, const VariedValue& value);

// What is wrong with a row's combination, in English: "/rigs/0/vessel: ...".
std::string problemsInLine(const SweepRow& row);

// Each ended by LF. The first line says what follows; then come the rows; the last says how it
// ended: "complete" or "stopped" after so many combinations, and what is to be taken care of.
std::string sweepHeadLine(const Sweep& sweep);
std::string sweepLines(const Sweep& sweep, const SweptCombination& combination);
struct SweepEnd {
  std::uint64_t done = 0, noPlan = 0, of = 0;

  std::string_view word() const { return done == of ? "complete" : "stopped"; }
};
std::string sweepEndLine(const SweepEnd& end, const std::vector<Caution>& cautions);

}  // namespace rigs
