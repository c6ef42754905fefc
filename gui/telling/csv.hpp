// SPDX-License-Identifier: GPL-3.0-or-later
// The one writer of spreadsheets (RFC 4180, lines ended by LF, UTF-8).
#pragma once

#include <string>
#include <vector>

#include "gui/telling/answer.hpp"

namespace gui::telling {

// One line per figure: table, group, figure, unit, then the table's columns. Numbers carry all
// their digits and a decimal point whatever the reader's language; no figure is an empty field. A
// new table with other columns begins with a new head line; the columns of rigs bear their names.
// Where a rig overloads its circuit, each table of rigs begins with a line "state" that says so;
// the names stay as they are. Cautions follow. Text that a spreadsheet would run as a formula gets
// an apostrophe in front.
std::string csvOf(const Answer& answer, const std::vector<std::string>& rigNames,
                  const rigs::Reader& reader);

// What a field may hold of a text: one line, quoted where needed.
std::string csvField(const std::string& text);

}  // namespace gui::telling
