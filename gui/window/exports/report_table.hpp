// SPDX-License-Identifier: GPL-3.0-or-later
// A table ruled like an account, set for paper: how wide its columns are, and its rows as pieces
// that fill the page.
#pragma once

#include <optional>
#include <vector>

#include "gui/window/exports/column_flow.hpp"
#include "gui/window/exports/paper_type.hpp"
#include "gui/window/questions/shown_answer.hpp"

namespace gui {

// Of narrow figures two halves stand beside each other on a page, as in a ledger: the rows go on in
// the second. There a rig's column has its letter alone.
enum class Beside { WhereWorth, Never };
struct SetTable {
  int columns = 1;
  std::optional<Strip> head;  // again above each; none of conditions that cells refer to
  Strips rows;
};
// Columns that do not fit beside each other follow in further tables, each with the labels. `type`
// and `table` outlive what is returned; `width` of the page, `gutter` between two halves.
std::vector<SetTable> setTable(const ShownTable& table, const PaperType& type, qreal width,
                               qreal gutter, Beside halves = Beside::WhereWorth);

}  // namespace gui
