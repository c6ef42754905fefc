// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of the start sheet are set in.
#pragma once

#include <QFrame>
#include <QLabel>

namespace gui {

// Wrapped text, so many times as large as its surroundings.
QLabel* note(const QString& text, double size, bool heavy = false);
QFrame* hairline();
// A warning: reversed ink and heavier letters, whatever the colours are.
void emphasize(QLabel& label, bool warns);

}  // namespace gui
