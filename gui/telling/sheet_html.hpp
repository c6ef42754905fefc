// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by as one HTML file that needs nothing else: no script, no network, no font.
#pragma once

#include <string>

#include "gui/telling/sheet.hpp"
#include "rigs/words/language.hpp"

namespace gui::telling {

// Well-formed as XML, too. For a phone in light and dark, and for one page of A4, or of letter size
// for readers of US units. Whatever a plan calls itself, no markup comes of it.
std::string sheetHtml(const Sheet& sheet, const rigs::Reader& reader);

}  // namespace gui::telling
