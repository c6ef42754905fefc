// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that judge the rigs' circuits, one by one: arithmetic, clause, edition and source. A
// rule stands once, and below it what comes of it for whom.
#pragma once

#include <string>
#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/circuits/verdict.hpp"

namespace gui::telling {

// "fits only if …": short enough for a cell and a list; the condition stands with its rule.
rigs::Told fitLabel(rigs::Fit fit);
// Every set of rules that judges any rig, in the order met.
std::vector<const rigs::CircuitRules*> rulesInUse(const Case& of);
// The worst of a rig's circuits under one set of rules; empty where it does not judge them.
std::optional<rigs::Fit> fitUnder(const rigs::CircuitAnswer& answer,
                                  const rigs::CircuitRules* rules);

// Each code under a heading of its own: all its rules, or those that are not simply kept, the
// others by name alone.
void sayRules(Answer& answer, const Case& of, bool everyRule);

}  // namespace gui::telling
