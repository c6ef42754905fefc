// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that answers show for one state of the plan: the days, and the searches beyond them.
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/sweeps.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// One rig's pictures beyond its day.
struct RigSweeps {
  std::vector<PowerPoint> power;
  std::vector<JacketPoint> thickness;         // empty without a jacket to compare
  std::vector<JacketPowerPoint> jacketPower;  // likewise
};

// What takes longer than the days, and may therefore be missing for a moment.
struct Searches {
  bool sizing = false;  // the powers that the plan's goals need
  bool power = false;
  bool thickness = false;
  bool jacketPower = false;
  bool circuit = false;  // what the readings of the rules leave
  bool rest = false;     // largest batches, and what would make a kettle boil: no picture shows it
  bool helps = false;    // what helps most: a thousand days a rig
  bool bands = false;    // how sure the figures are: some hundred days a rig
  bool sure = false;     // and what makes them unsure: over a thousand

  bool covers(const Searches& needed) const {
    return (sizing || !needed.sizing) && (power || !needed.power) &&
           (thickness || !needed.thickness) && (jacketPower || !needed.jacketPower) &&
           (circuit || !needed.circuit) && (rest || !needed.rest) && (helps || !needed.helps) &&
           (bands || !needed.bands) && (sure || !needed.sure);
  }
  bool operator==(const Searches&) const = default;
};
inline Searches both(const Searches& a, const Searches& b) {
  return {a.sizing && b.sizing,
          a.power && b.power,
          a.thickness && b.thickness,
          a.jacketPower && b.jacketPower,
          a.circuit && b.circuit,
          a.rest && b.rest,
          a.helps && b.helps,
          a.bands && b.bands,
          a.sure && b.sure};
}
// All that is done before anybody asks for it. What helps most, and what makes bands wide, is done
// where it is looked at; bands come last of all.
inline constexpr Searches kEverySearch{true, true, true, true, true, true, false, false, false};
// One at a time, what is looked at most first.
inline constexpr std::array kSearchesInTurn{
    Searches{.sizing = true},      Searches{.power = true},   Searches{.thickness = true},
    Searches{.jacketPower = true}, Searches{.circuit = true}, Searches{.rest = true}};

// Immutable once made: shared between threads and views.
struct Solution {
  Plan plan;
  Answers answers;                // with curves
  std::vector<RigSweeps> sweeps;  // one a rig, plan order; empty before the first search is done
  Searches done;                  // of every rig
  int edition = 0;                // of the document it belongs to; newer wins
};
using SolutionPtr = std::shared_ptr<const Solution>;

}  // namespace rigs
