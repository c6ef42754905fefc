// SPDX-License-Identifier: GPL-3.0-or-later
// Light, dark, or as the system has it.
#pragma once

#include <QPalette>
#include <QString>

namespace gui {

enum class Appearance { AsSystem, Light, Dark };

// Our own, so that both are known to be readable whatever the desktop brings.
QPalette lightPalette();
QPalette darkPalette();

// What the settings say.
Appearance chosenAppearance();
// Dresses the application and remembers it.
void choose(Appearance appearance);
// At start, before the first window.
void wearChosenAppearance();

}  // namespace gui
