// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by in columns of a terminal, or of plain text for a printer.
#pragma once

#include <string>

#include "gui/telling/sheet.hpp"
#include "gui/terminal/screen.hpp"
#include "rigs/words/language.hpp"

namespace gui {

// Times to the left with what to do beside them; no control character of a plan gets through.
std::string sheetText(const telling::Sheet& sheet, const rigs::Reader& reader,
                      const TextStyle& style);

}  // namespace gui
