// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report_table.hpp"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <utility>

#include "gui/window/charts/rig_swatch.hpp"
#include "gui/window/exports/text_flow.hpp"

namespace gui {
namespace {

constexpr qreal kTableLeading = 1.0;  // the rules between rows keep them apart
constexpr qreal kCellGap = 7.0 * kPoint;
constexpr qreal kBelowRow = 0.9 * kPoint;  // to the rule, and from there to the next row
constexpr qreal kAboveGroup = 3.0 * kPoint;
constexpr qreal kSwatchWide = 26.0, kSwatchRow = 9.0;  // points
constexpr qreal kWordsWide = 84.0 * kPoint;            // longer cells are broken
constexpr qreal kLeastLabels = 62.0 * kPoint;          // beside figures in half a page
constexpr qsizetype kLeastRows = 8;                    // below that halves are too short
constexpr qreal kLabelsOfPair = 0.55;                  // of the width, beside one column of words

// Column by column from the left edge, the labels' first.
using Widths = std::vector<qreal>;

class Setter {
 public:
  Setter(const ShownTable& table, const PaperType& type) : table_(table), type_(type) {
    const QFontMetricsF plain(type.small), bold(type.smallStrong);
    for (const ShownTable::Row& row : table.rows) {
      if (row.isHeading) continue;  // takes the whole width
      const QFontMetricsF& of = row.isSum ? bold : plain;
      labels_.push_back(of.horizontalAdvance(row.cells.value(0)));
      widestLabel_ = qMax(widestLabel_, labels_.back());
      for (const QString& cell : row.cells.mid(1))
        widestCell_ = qMax(widestCell_, of.horizontalAdvance(cell));
    }
  }

  std::vector<SetTable> take(qreal width, qreal gutter) {
    if (count() < 1) return {};
    if (const auto widths = halves(0.5 * (width - gutter)); !widths.empty())
      return {set(1, count(), widths, 2)};
    return wide(width);
  }

 private:
  qsizetype count() const { return table_.head.size() - 1; }
  bool hasLetters() const {
    return std::any_of(table_.looks.begin(), table_.looks.end(), [](int at) { return at >= 0; });
  }
  // Of a rig in half a page: "(b)", and what must not be overlooked.
  QString headOf(qsizetype column, bool inShort) const {
    const QString mark = table_.marks.value(column);
    if (!inShort || !hasLetters() || column == 0) return table_.headWithMark(column);
    const QString letter = table_.head.value(column).section(u' ', 0, 0);
    return mark.isEmpty() ? letter : letter + u'\n' + mark;
  }
  qreal widestWord(bool inShort) const {
    const QFontMetricsF bold(type_.smallStrong);
    qreal widest = 0.0;
    for (qsizetype i = 1; i <= count(); ++i)
      for (const QString& line : headOf(i, inShort).split(u'\n'))
        for (const QString& word : line.split(u' '))
          widest = qMax(widest, bold.horizontalAdvance(word));
    return widest;
  }

  // Empty where the table needs the whole page: many labels would be broken, or few rows are left.
  Widths halves(qreal width) const {
    if (labels_.size() < kLeastRows) return {};
    qreal each = qMax(widestCell_, widestWord(true)) + kCellGap;
    if (count() == 1) each = qMin(each, 0.5 * width);
    const qreal label = width - each * static_cast<qreal>(count());
    if (label < kLeastLabels) return {};
    const auto broken = std::count_if(labels_.begin(), labels_.end(),
                                      [&](qreal one) { return one > label - kCellGap; });
    if (4 * broken > static_cast<std::ptrdiff_t>(labels_.size())) return {};
    Widths widths(static_cast<std::size_t>(count()) + 1, each);
    widths.front() = label;
    return widths;
  }

  std::vector<SetTable> wide(qreal width) const {
    const qreal least = qMax(qMin(widestCell_, kWordsWide), widestWord(false)) + kCellGap;
    const qreal wanted = qMin(widestLabel_ + kCellGap, 0.5 * width);
    const auto most =
        qMax(qsizetype{1}, static_cast<qsizetype>((width - qMin(wanted, 0.3 * width)) / least));
    // Groups of about the same size: 7 columns as 4 and 3, not as 6 and 1.
    const qsizetype groups = (count() + most - 1) / most;
    const qsizetype each = (count() + groups - 1) / groups;
    std::vector<SetTable> all;
    for (qsizetype from = 1; from <= count(); from += each) {
      const qsizetype here = qMin(each, count() + 1 - from);
      const auto columns = static_cast<qreal>(here);
      const qreal label = count() == 1 ? qMin(wanted, kLabelsOfPair * width)
                                       : qMax(0.2 * width, qMin(wanted, width - columns * least));
      Widths widths(static_cast<std::size_t>(here) + 1, (width - label) / columns);
      widths.front() = label;
      all.push_back(set(from, here, widths, 1));
    }
    return all;
  }

  SetTable set(qsizetype from, qsizetype columns, const Widths& widths, int beside) const {
    SetTable made{.columns = beside, .head = head(from, columns, widths, beside > 1), .rows = {}};
    const auto& rows = table_.rows;
    for (qsizetype at = 0; at < rows.size(); ++at) {
      const bool afterSum = at > 0 && rows[at - 1].isSum;
      const bool beforeSum = at + 1 < rows.size() && rows[at + 1].isSum;
      if (rows[at].isHeading) {
        made.rows.push_back(group(rows[at].cells.value(0), widths));
        continue;
      }
      const QStringList cells =
          QStringList{rows[at].cells.value(0)} + rows[at].cells.mid(from, columns);
      made.rows.push_back(rows[at].isSum ? sum(cells, widths, !afterSum, !beforeSum)
                                         : row(cells, widths, beforeSum));
    }
    return made;
  }

  // --- Pieces.

  std::vector<QStringList> broken(const QStringList& cells, const Widths& widths,
                                  const QFont& font) const {
    std::vector<QStringList> all;
    for (std::size_t i = 0; i < widths.size(); ++i)
      all.push_back(linesOf(cells.value(static_cast<qsizetype>(i)), font, widths[i] - kCellGap));
    return all;
  }
  static qreal heightOf(const std::vector<QStringList>& cells, const QFont& font) {
    qreal height = lineHeight(font, kTableLeading);
    for (const QStringList& lines : cells)
      height = qMax(height, gui::heightOf(lines, font, kTableLeading));
    return height;
  }
  // The labels to the left, figures to the right of their columns; `low`: all on the lowest line.
  static void draw(QPainter& painter, QPointF at, const std::vector<QStringList>& cells,
                   const Widths& widths, const QFont& font, bool low = false) {
    const qreal height = heightOf(cells, font);
    qreal x = at.x();
    for (std::size_t i = 0; i < widths.size(); ++i) {
      const qreal down = low ? height - gui::heightOf(cells[i], font, kTableLeading) : 0.0;
      const QPointF corner(i == 0 ? x : x + widths[i], at.y() + down);
      drawLines(painter, corner, cells[i], font, i == 0 ? Side::Left : Side::Right, kTableLeading);
      x += widths[i];
    }
  }
  static qreal sumOf(const Widths& widths) {
    qreal all = 0.0;
    for (const qreal one : widths) all += one;
    return all;
  }
  static void rule(QPainter& painter, QPointF from, qreal length, qreal points,
                   const QColor& colour) {
    const QPen before = painter.pen();
    painter.setPen(QPen(colour, points * kPoint));
    painter.drawLine(from, from + QPointF(length, 0.0));
    painter.setPen(before);
  }

  Strip head(qsizetype from, qsizetype columns, const Widths& widths, bool inShort) const {
    QStringList texts{headOf(0, inShort)};
    for (qsizetype i = from; i < from + columns; ++i) texts += headOf(i, inShort);
    const auto cells = broken(texts, widths, type_.smallStrong);
    const QVector<int> looks = hasLetters() ? table_.looks.mid(from, columns) : QVector<int>();
    const qreal swatches = looks.isEmpty() ? 0.0 : kSwatchRow * kPoint;
    const qreal words = heightOf(cells, type_.smallStrong);
    const auto draw = [&type = type_, cells, widths, looks, swatches, words](QPainter& painter,
                                                                             QPointF at) {
      swatchRow(painter, at, looks, widths, type.look);
      Setter::draw(painter, at + QPointF(0.0, swatches), cells, widths, type.smallStrong, true);
      rule(painter, at + QPointF(0.0, swatches + words + kBelowRow), sumOf(widths), 1.0,
           type.look.ink);
    };
    return {.height = swatches + words + 2.5 * kBelowRow, .holdsNext = true, .draw = draw};
  }

  static void swatchRow(QPainter& painter, QPointF at, const QVector<int>& looks,
                        const Widths& widths, const ChartLook& look) {
    qreal right = at.x() + widths.front();
    for (qsizetype i = 0; i < looks.size(); ++i) {
      right += widths[static_cast<std::size_t>(i) + 1];
      if (looks[i] < 0) continue;
      painter.save();
      painter.translate(right, at.y());
      painter.scale(kPoint, kPoint);
      drawRigSwatch(painter, looks[i], QRectF(-kSwatchWide, 0.0, kSwatchWide, kSwatchRow), look,
                    1.4);
      painter.restore();
    }
    painter.setPen(look.ink);
  }

  // Of the rows below it; it takes the first one along.
  Strip group(const QString& text, const Widths& widths) const {
    const QStringList lines = linesOf(text, type_.smallStrong, sumOf(widths));
    return {.height = gui::heightOf(lines, type_.smallStrong, kTableLeading) + kBelowRow,
            .gap = kAboveGroup,
            .holdsNext = true,
            .draw = [&type = type_, lines](QPainter& painter, QPointF at) {
              drawLines(painter, at, lines, type.smallStrong, Side::Left, kTableLeading);
            }};
  }

  Strip row(const QStringList& texts, const Widths& widths, bool holdsNext) const {
    const auto cells = broken(texts, widths, type_.small);
    const qreal height = heightOf(cells, type_.small) + 2.0 * kBelowRow;
    return {.height = height,
            .holdsNext = holdsNext,
            .draw = [&type = type_, cells, widths, height](QPainter& painter, QPointF at) {
              Setter::draw(painter, at, cells, widths, type.small);
              rule(painter, at + QPointF(0.0, height - kBelowRow), sumOf(widths), 0.25,
                   type.look.quietInk);
            }};
  }

  // As in an account: what it comes to stands between a rule and two.
  Strip sum(const QStringList& texts, const Widths& widths, bool first, bool last) const {
    const auto cells = broken(texts, widths, type_.smallStrong);
    const qreal height = heightOf(cells, type_.smallStrong) + 2.0 * kBelowRow;
    const auto draw = [&type = type_, cells, widths, height, first, last](QPainter& painter,
                                                                          QPointF at) {
      const qreal length = sumOf(widths);
      if (first) rule(painter, at - QPointF(0.0, kBelowRow), length, 1.0, type.look.ink);
      Setter::draw(painter, at, cells, widths, type.smallStrong);
      const QPointF below = at + QPointF(0.0, height - kBelowRow);
      rule(painter, below, length, last ? 0.6 : 0.25, last ? type.look.ink : type.look.quietInk);
      if (last) rule(painter, below + QPointF(0.0, 2.0 * kPoint), length, 0.6, type.look.ink);
    };
    return {.height = height + (last ? 2.0 * kPoint : 0.0), .holdsNext = !last, .draw = draw};
  }

  const ShownTable& table_;
  const PaperType& type_;
  std::vector<qreal> labels_;
  qreal widestLabel_ = 0.0, widestCell_ = 0.0;
};

}  // namespace

std::vector<SetTable> setTable(const ShownTable& table, const PaperType& type, qreal width,
                               qreal gutter) {
  return Setter(table, type).take(width, gutter);
}

}  // namespace gui
