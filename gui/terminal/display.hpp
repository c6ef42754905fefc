// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a window can open beside the terminal. A variable that names a display is no display:
// Qt, which does not come back from one that is not there, must never be sent to it.
#pragma once

namespace gui {

// Whether a display that the environment names answers, with this person's right to draw on it.
// QT_QPA_PLATFORM, where somebody set it, says which are meant; "offscreen" and its like need none.
bool hasScreen();

// Where only one kind of display answers, names it in QT_QPA_PLATFORM, unless somebody did. Before
// any thread is started, as all changes of the environment.
void preferDisplayThatAnswers();

}  // namespace gui
