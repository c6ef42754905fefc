// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt, in a line that stays in sight: what holds of every plan, this plan's own most
// urgent matter between. All of the cautions stand behind it.
#pragma once

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "Mains current and boiling wort can kill. (c) asks more of its circuit than that is rated for.
// Have a licensed electrician check; local codes decide."
rigs::Told stripOf(const Case& of);

}  // namespace gui::telling
