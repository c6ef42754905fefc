// SPDX-License-Identifier: GPL-3.0-or-later
// One page per question. All take the answers they show at the depth they need: Day for the day,
// the boil, DayAndJacket for insulation and the cost, Circuit and Room for these, Everything for
// the rest.
#pragma once

#include "gui/terminal/page.hpp"
#include "gui/terminal/wording.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"

namespace gui {

Page answerPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);
Page dayPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);
Page sizePage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);
Page insulatePage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);
Page boilPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);
Page costPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);
// `everyRule` shows also the rules that are kept.
Page circuitPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units,
                 bool everyRule = false);
Page roomPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units);

// What all pages have in common: title, place and batch, legend, cautions.
Page startPage(const rigs::Plan& plan, UnitSystem units, bool leftAlone = false);

}  // namespace gui
