// SPDX-License-Identifier: GPL-3.0-or-later
// Ways to ask an answer for its cells, lines and figures, for the tests of every question.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "gui/telling/answer.hpp"
#include "gui/telling/case.hpp"
#include "tests/gui/telling/results.hpp"

namespace test_support {

using gui::telling::Answer;
using gui::telling::Case;

inline const rigs::Reader& siReader() {
  static const rigs::Reader reader{};
  return reader;
}

// A plan and answers made for a test, as a case of one.
struct OwnCase {
  rigs::Solution solution;

  explicit OwnCase(const rigs::Plan& plan)
      : solution{.plan = plan, .answers = {}, .sweeps = {}, .done = {}} {
    for (const rigs::RigPlan& rig : plan.rigs) {
      rigs::RigAnswer answer;
      answer.name = rig.name;
      answer.begins = plan.start();
      answer.day.electrical = physics::electricalLoad(rig.rig);
      solution.answers.rigs.push_back(answer);
    }
  }
  OwnCase(const rigs::Plan& plan, rigs::Depth depth)
      : solution{.plan = plan, .answers = rigs::answer(plan, depth), .sweeps = {}, .done = {}} {}

  Case get() const { return {solution, solution.plan, siReader(), {}}; }
  rigs::RigPlan& plan(std::size_t i = 0) { return solution.plan.rigs[i]; }
  rigs::RigAnswer& rig(std::size_t i = 0) { return solution.answers.rigs[i]; }
};

inline bool holds(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

inline std::string inShort(const Answer& answer, const rigs::Reader& reader = siReader()) {
  std::string all;
  for (const rigs::Told& one : answer.sentences)
    all += (all.empty() ? "" : " ") + rigs::tell(one, reader);
  return all;
}

// What is said of a rig, goings-on included.
inline std::string saidOf(const Answer& answer, std::size_t rig) {
  std::string all;
  for (const auto& block : answer.blocks) {
    const auto* sentence = std::get_if<gui::telling::Sentence>(&block);
    if (!sentence || sentence->rig != rig) continue;
    all += (all.empty() ? "" : " ") + rigs::tell(sentence->text, siReader());
  }
  return all;
}

// The first row of that name below a heading that begins so; "": from the top.
inline const gui::telling::Row* rowOf(const Answer& answer, std::string_view heading,
                                      std::string_view label) {
  for (const gui::telling::Table* table : answer.tables()) {
    bool below = heading.empty();
    for (const gui::telling::Row& row : table->rows) {
      const std::string text = rigs::inEnglish(row.label);
      if (row.isHeading()) {
        below = below || text.starts_with(heading);
      } else if (below && text == label) {
        return &row;
      }
    }
  }
  return nullptr;
}

inline std::string cell(const Answer& answer, std::string_view heading, std::string_view label,
                        std::size_t rig, const rigs::Reader& reader = siReader()) {
  const gui::telling::Row* row = rowOf(answer, heading, label);
  return row ? gui::telling::cellText(row->cells.at(rig), reader) : "no such row";
}
inline std::optional<double> number(const Answer& answer, std::string_view heading,
                                    std::string_view label, std::size_t rig) {
  const gui::telling::Row* row = rowOf(answer, heading, label);
  return row ? gui::telling::cellNumber(row->cells.at(rig), siReader()) : std::nullopt;
}

inline void expectFiniteAscendingPoints(const Answer& answer) {
  for (const gui::telling::Picture& picture : answer.pictures) {
    for (const gui::telling::PictureLine& line : picture.lines) {
      for (std::size_t i = 0; i < line.points.size(); ++i) {
        ASSERT_TRUE(std::isfinite(line.points[i].x) && std::isfinite(line.points[i].y));
        if (i > 0) {
          ASSERT_GE(line.points[i].x, line.points[i - 1].x);
        }
      }
    }
  }
}

inline bool contains(const std::vector<gui::telling::PicturePoint>& points,
                     const gui::telling::PicturePoint& one) {
  for (const auto& p : points)
    if (p == one) return true;
  return false;
}

}  // namespace test_support
