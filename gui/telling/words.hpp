// SPDX-License-Identifier: GPL-3.0-or-later
// Words that several answers share: the same thing is called the same everywhere.
#pragma once

#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {

// "Strike", "Mash in", "Rest 1", ... one for each stage; numbered where there are several.
std::vector<rigs::Told> stageNames(const physics::BrewDay& day);
// "side", "dry wall above the wort", "surface, radiated".
rigs::Told pathName(physics::Path path);
// "rolls", "steams", "runs dry": two or three words, for tables.
rigs::Told outcomeWord(physics::Outcome outcome);
// "gentle"; and "a gentle boil", for sentences.
rigs::Told vigourWord(rigs::Vigour vigour);
rigs::Told boilWord(rigs::Vigour vigour);
// What bound a search, in a word or two: "circuit".
rigs::Told limitWord(physics::Limit limit);

// A day that does not roll or could not be finished, told with its numbers; nothing for one that
// rolls. `named` says which rig, for sentences that stand without its letter.
rigs::Told unfinishedText(const Case& of, std::size_t rig);
rigs::Told unfinishedNamed(const Case& of, std::size_t rig);
std::vector<rigs::Told> unfinishedOfAll(const Case& of);  // named
// That nobody can say whether it rolls, with the watts; nothing for a rig that is not on the edge.
rigs::Told edgeText(const Case& of, std::size_t rig);
// What a day takes from the wall and costs; what was spent by then, of a day that stopped.
rigs::Told costText(const Case& of, std::size_t rig);
rigs::Told costInBrief(const Case& of, std::size_t rig);  // without that of a litre

// "12 %": a share to two digits.
rigs::Amount percent(double share);

// A brew a month where the plan does not say.
double brewsPerYear(const rigs::Plan& plan);

// One for each question, by the file of its name; answer_to.cpp adds title and cautions.
Answer overview(const Case& of);
Answer howLong(const Case& of);
Answer whereHeat(const Case& of);
Answer boilsEnough(const Case& of);
Answer worthJacket(const Case& of);
Answer whichElement(const Case& of);
Answer circuitCarries(const Case& of);
Answer whatCost(const Case& of);
Answer howFarCools(const Case& of);
Answer roomChanges(const Case& of);
Answer helpsMost(const Case& of);
Answer howLongChills(const Case& of);
Answer howWortChanges(const Case& of);
Answer howSure(const Case& of);

}  // namespace gui::telling
