// SPDX-License-Identifier: GPL-3.0-or-later
// Tables in columns of a terminal.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "gui/telling/table.hpp"
#include "rigs/words/language.hpp"

namespace gui {

// Lines of at most `width` columns: labels to the left, cells aligned to the right, a thin rule
// under the column heads. Columns that do not fit beside each other follow in further groups,
// each with all labels. What stands in the rows is as telling::shownRows() has it; `rigMarks`, of a
// table of rigs, stand below the heads.
std::vector<std::string> tableLines(const telling::Table& table, const rigs::Reader& reader,
                                    std::size_t width,
                                    const std::vector<rigs::Told>& rigMarks = {});

}  // namespace gui
