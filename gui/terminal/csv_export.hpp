// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of a page for a spreadsheet (RFC 4180, lines ended by LF, UTF-8).
#pragma once

#include <string>

#include "gui/terminal/page.hpp"

namespace gui {

// One line per figure: table, group, figure, unit, then the table's columns. Numbers carry all
// their digits and a decimal point. A new table with other columns begins with a new head line.
// Text that a spreadsheet would run as a formula gets an apostrophe in front.
std::string pageCsv(const Page& page);

}  // namespace gui
