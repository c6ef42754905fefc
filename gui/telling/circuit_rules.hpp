// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that judge the rigs' circuits, one by one: arithmetic, clause, edition and source. A
// rule stands once, and below it what comes of it for whom.
#pragma once

#include <string>
#include <vector>

#include <utility>

#include "gui/telling/case.hpp"
#include "rigs/circuits/verdict.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// Outcomes that are short enough for a table's cells, and the conditions they hang on in full:
// "fits only if (1)", and below the table "(1) the circuit feeds one outlet alone".
class Conditions {
 public:
  rigs::Told label(rigs::Fit fit, const std::vector<rigs::Told>& conditions);
  std::vector<rigs::Told> take() { return std::move(all_); }

 private:
  std::vector<rigs::Told> all_;
};
// Every set of rules that judges any rig, in the order met.
std::vector<const rigs::CircuitRules*> rulesInUse(const Case& of);
// The worst of a rig's circuits under one set of rules; empty where it does not judge them.
std::optional<rigs::Fit> fitUnder(const rigs::CircuitAnswer& answer,
                                  const rigs::CircuitRules* rules);

// Each code under a heading of its own: all its rules, or those that are not simply kept, the
// others by name alone.
void sayRules(Answer& answer, const Case& of, bool everyRule);

}  // namespace gui::telling
