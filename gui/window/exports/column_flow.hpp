// SPDX-License-Identifier: GPL-3.0-or-later
// What fills columns from top to bottom: lines of text, rows of tables. Lengths in any one unit.
#pragma once

#include <QPointF>
#include <QtGlobal>
#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

class QPainter;

namespace gui {

// A piece that no column's end may cut.
struct Strip {
  qreal height = 0.0;
  qreal gap = 0.0;         // above it; not at a column's top
  bool holdsNext = false;  // never the last of a column: a heading, an item's first line
  std::function<void(QPainter&, QPointF)> draw = {};  // its upper left corner
};
using Strips = std::vector<Strip>;

// How high so many of them are in one column.
qreal heightOf(const Strips& strips, std::size_t from, std::size_t count);
// How many of those from `from` on fit into a column so high, none left that holds the next one.
std::size_t fitting(const Strips& strips, std::size_t from, qreal height);
// How many fit into so many columns beside each other, each so high.
std::size_t fitting(const Strips& strips, std::size_t from, int columns, qreal height);
// The greatest height, up to `most`, at which the next page gets no mere few of them; `most` where
// none is.
qreal leavingEnough(const Strips& strips, std::size_t from, int columns, qreal most);
// The lowest height at which all from `from` on fit into so many columns beside each other;
// nullopt where that would be more than `most`.
std::optional<qreal> balanced(const Strips& strips, std::size_t from, int columns, qreal most);

}  // namespace gui
