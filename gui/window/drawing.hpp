// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and reports without a window or a display.
#pragma once

#include "gui/telling/drawing.hpp"

namespace gui {

// What telling::draw() does.
void drawFile(const telling::Drawing& drawing, const rigs::Plan& plan, const rigs::Reader& reader);

}  // namespace gui
