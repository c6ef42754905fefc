// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader is told of a text that may be selected, such as an answer or a warning. Qt
// tells either what it is called or what it says; somebody who cannot see it needs both.
#pragma once

namespace gui {

// From now on such a text is called by its accessible name and by its words. Once is enough; more
// does nothing.
void speakTextsWhole();

}  // namespace gui
