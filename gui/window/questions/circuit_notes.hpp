// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that judge the rigs' circuits, one by one: arithmetic, clause, edition and source.
#pragma once

#include <QStringList>
#include <QVector>

#include "gui/window/questions/answer_text.hpp"
#include "rigs/answers/circuit_answer.hpp"

namespace gui {

// "fits only if …": short enough for a cell and a sentence; the condition stands in the notes.
QString fitLabel(rigs::Fit fit);
// "Canada, CEC (CSA C22.1) 2021", in the reader's language.
QString rulesLabel(const rigs::CircuitRules& rules);
// Every set of rules that judges any rig, in the order met.
QVector<const rigs::CircuitRules*> rulesInUse(const Telling& tell);
// "13.8 A".
QString ampereText(const Telling& tell, physics::Current current);

// A rule stands once, with its clause and source, and what comes of it for each rig below it, begun
// with kEntry and the rig's letter. Rigs of which the very same is true are named together.
QStringList circuitNotes(const Telling& tell);
inline constexpr char16_t kEntry = u'\u2003';  // em space

}  // namespace gui
