// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody wants to know in the first minute, of one kettle: when it rolls, whether its
// circuit carries it, and what a jacket would bring.
#pragma once

#include <vector>

#include "rigs/answers/solution.hpp"
#include "rigs/words/language.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct FirstMinute {
  rigs::Told headline;               // when it rolls, and how; or that it does not, and why
  std::vector<rigs::Told> day;       // how sure it is, water, mash to boil, what is spent
  rigs::Told circuit;                // whether it carries the kettle; of an overload, that warning
  bool overloaded = false;           // then it is to be shown so that nobody can miss it
  rigs::Told jacket;                 // what one brings, or would
  rigs::Told assumed;                // what nobody was asked about
  std::vector<rigs::Told> cautions;  // never empty
};

// Of the plan's first rig. Needs days and jackets; whether nobody can say that it rolls is known
// once `rest` was searched for.
FirstMinute firstMinute(const rigs::Solution& solution, const rigs::Reader& reader);

}  // namespace gui::telling
