// SPDX-License-Identifier: GPL-3.0-or-later
// Light, dark, or as the system has it.
#pragma once

#include <QPalette>
#include <QString>

namespace gui {

enum class Appearance { AsSystem, Light, Dark };

// Our own, so that both are known to be readable whatever the desktop brings: paper, ink, hairlines
// (Mid) and one accent (Highlight), for what is chosen, has the focus or is a limit. AlternateBase
// is a wash, PlaceholderText what is secondary.
QPalette lightPalette();
QPalette darkPalette();
// The one of them that is light or dark as the desktop is; the desktop's own where that is of high
// contrast.
QPalette likeDesktop(const QPalette& desktop);

// What the settings say.
Appearance chosenAppearance();
// Dresses the application and remembers it.
void choose(Appearance appearance);
// At start, before the first window.
void wearChosenAppearance();

}  // namespace gui
