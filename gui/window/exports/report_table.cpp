// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report_table.hpp"

#include <QFontMetricsF>
#include <QPainter>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/window/charts/rig_swatch.hpp"
#include "gui/window/exports/text_flow.hpp"

namespace gui {
namespace {

constexpr qreal kTableLeading = 0.95;  // the rules between rows keep them apart
constexpr qreal kCellGap = 7.0 * kPoint;
constexpr qreal kBelowRow = 0.7 * kPoint;  // to the rule, and from there to the next row
constexpr qreal kAboveGroup = 2.5 * kPoint;
constexpr qreal kSwatchWide = 26.0, kSwatchRow = 9.0;  // points
constexpr qreal kLeastLabels = 62.0 * kPoint;
constexpr qsizetype kLeastRows = 8;  // below that halves are too short
constexpr qsizetype kFewOf = 7;      // one of so many is few
constexpr qreal kWorthHalves = 0.8;  // of the height in one

// Column by column from the left edge, the labels' first.
using Widths = std::vector<qreal>;

// Rows that stand together: from a heading to the next.
struct Section {
  qsizetype from = 0, to = 0;
};

class Setter {
 public:
  Setter(const ShownTable& table, const PaperType& type) : table_(table), type_(type) {
    const QFontMetricsF plain(type.small), bold(type.smallStrong);
    for (const ShownTable::Row& row : table.rows) {
      const QFontMetricsF& of = row.isSum ? bold : plain;
      std::vector<qreal> natural;
      for (const QString& cell : row.cells) natural.push_back(of.horizontalAdvance(cell));
      natural_.push_back(std::move(natural));
    }
  }

  std::vector<SetTable> take(qreal width, qreal gutter, Beside besides) {
    std::vector<SetTable> all;
    if (count() < 1) return all;
    const qreal half = 0.5 * (width - gutter);
    std::vector<std::pair<Section, bool>> runs;  // and whether it is set in halves
    for (const Section& section : sections()) {
      const bool inHalves = besides != Beside::Never && fitsHalf(section, half, width);
      if (!runs.empty() && runs.back().second == inHalves)
        runs.back().first.to = section.to;
      else
        runs.emplace_back(section, inHalves);
    }
    // A few rows in halves are not worth a head of their own.
    for (auto& [run, inHalves] : runs)
      if (run.to - run.from < kLeastRows) inHalves = false;
    for (std::size_t i = 0; i < runs.size();) {
      Section run = runs[i].first;
      const bool inHalves = runs[i].second;
      for (++i; i < runs.size() && runs[i].second == inHalves; ++i) run.to = runs[i].first.to;
      const bool stillHalf = inHalves && fitsHalf(run, half, width);
      for (SetTable& made : stillHalf ? halves(run, half) : wide(run, width))
        all.push_back(std::move(made));
    }
    if (const Section below = conditions(); below.from < below.to)
      all.push_back(legend(below, half));
    return all;
  }

 private:
  struct Fit {
    qreal label = 0.0, each = 0.0;
    qreal lines = 0.0;  // of all rows; 0: they do not fit
  };

  qsizetype count() const { return table_.head.size() - 1; }
  bool hasLetters() const {
    return std::any_of(table_.looks.begin(), table_.looks.end(), [](int at) { return at >= 0; });
  }
  // What cells refer to by number, below all rows.
  Section conditions() const {
    Section last{table_.rows.size(), table_.rows.size()};
    while (last.from > 0 && table_.rows[last.from - 1].isHeading) --last.from;
    return last;
  }
  std::vector<Section> sections() const {
    std::vector<Section> all;
    const auto& rows = table_.rows;
    for (qsizetype i = 0; i < conditions().from; ++i) {
      const bool begins = rows[i].isHeading && i + 1 < rows.size() && !rows[i + 1].isHeading;
      if (all.empty() || begins) all.push_back({i, i});
      all.back().to = i + 1;
    }
    return all;
  }
  // Of a rig in half a page: "(b)", and what must not be overlooked.
  QString headOf(qsizetype column, bool inShort) const {
    const QString mark = table_.marks.value(column);
    if (!inShort || !hasLetters() || column == 0) return table_.headWithMark(column);
    const QString letter = table_.head.value(column).section(u' ', 0, 0);
    return mark.isEmpty() ? letter : letter + u'\n' + mark;
  }

  qreal widestWord(const Section& of, bool inShort) const {
    const QFontMetricsF bold(type_.smallStrong);
    QStringList texts;
    for (qsizetype i = 1; i <= count(); ++i) texts += headOf(i, inShort);
    for (qsizetype i = of.from; i < of.to; ++i)
      if (!table_.rows[i].isHeading) texts += table_.rows[i].cells.mid(1);
    qreal widest = 0.0;
    static const QRegularExpression kBetween(QStringLiteral("[ \n]"));
    for (const QString& text : std::as_const(texts))
      for (const QString& word : text.split(kBetween))
        widest = qMax(widest, bold.horizontalAdvance(word));
    return widest;
  }
  qreal widestOf(const Section& of, bool labels) const {
    qreal widest = 0.0;
    for (qsizetype i = of.from; i < of.to; ++i) {
      if (table_.rows[i].isHeading) continue;  // takes the whole width
      const auto& natural = natural_[static_cast<std::size_t>(i)];
      for (std::size_t k = labels ? 0 : 1; k < (labels ? 1 : natural.size()); ++k)
        widest = qMax(widest, natural[k]);
    }
    return widest;
  }
  // About how many lines its rows take.
  qreal linesAt(const Section& of, qreal label, qreal each) const {
    qreal lines = 0.0;
    for (qsizetype i = of.from; i < of.to; ++i) {
      if (table_.rows[i].isHeading) continue;
      qreal most = 1.0;
      const auto& natural = natural_[static_cast<std::size_t>(i)];
      for (std::size_t k = 0; k < natural.size(); ++k)
        most = qMax(most, std::ceil(natural[k] / ((k == 0 ? label : each) - kCellGap)));
      lines += most;
    }
    return lines;
  }
  // The widths at which the rows take the fewest lines.
  Fit fitOf(const Section& of, qreal width, qsizetype columns, bool inShort) const {
    const qreal least = widestWord(of, inShort) + kCellGap;
    const qreal most = qMax(least, widestOf(of, false) + kCellGap);
    Fit best;
    constexpr int kSteps = 12;
    for (int step = 0; step <= kSteps; ++step) {
      const qreal each = most + (least - most) * step / kSteps;
      const qreal label = width - each * static_cast<qreal>(columns);
      if (label < kLeastLabels) continue;
      const qreal lines = linesAt(of, label, each);
      if (best.lines <= 0.0 || lines < best.lines) best = {label, each, lines};
    }
    return best;
  }

  // Words in more than a few cells: they are read worse there than labels are.
  bool breaksCells(const Section& of, qreal each) const {
    const auto isBroken = [&](qsizetype row) {
      const auto& natural = natural_[static_cast<std::size_t>(row)];
      return std::any_of(natural.begin() + 1, natural.end(),
                         [&](qreal one) { return one > each - kCellGap; });
    };
    qsizetype rows = 0, broken = 0;
    for (qsizetype i = of.from; i < of.to; ++i) {
      if (table_.rows[i].isHeading) continue;
      ++rows;
      if (isBroken(i)) ++broken;
    }
    return broken * kFewOf > rows;
  }
  // Whether it takes less of the page in two halves beside each other.
  bool fitsHalf(const Section& of, qreal half, qreal width) const {
    const Fit narrow = fitOf(of, half, count(), true);
    if (narrow.lines <= 0.0 || breaksCells(of, narrow.each)) return false;
    const Fit whole = fitOf(of, width, count(), false);
    return whole.lines <= 0.0 || 0.5 * narrow.lines <= kWorthHalves * whole.lines;
  }
  std::vector<SetTable> halves(const Section& of, qreal half) const {
    const Fit fit = fitOf(of, half, count(), true);
    Widths widths(static_cast<std::size_t>(count()) + 1, fit.each);
    widths.front() = fit.label;
    return {set(of, 1, count(), widths, 2)};
  }
  std::vector<SetTable> wide(const Section& of, qreal width) const {
    // Groups of about the same size: 7 columns as 4 and 3, not as 6 and 1.
    qsizetype groups = 1;
    while (groups < count() && fitOf(of, width, inEach(groups), false).lines <= 0.0) ++groups;
    const qsizetype each = inEach(groups);
    std::vector<SetTable> all;
    for (qsizetype from = 1; from <= count(); from += each) {
      const qsizetype here = qMin(each, count() + 1 - from);
      const Fit fit = fitOf(of, width, here, false);
      // What labels do not need the columns share.
      const qreal wanted = qMax(kLeastLabels, widestOf(of, true) + kCellGap);
      const qreal label = qMin(fit.lines > 0.0 ? fit.label : 0.5 * width, wanted);
      Widths widths(static_cast<std::size_t>(here) + 1, (width - label) / static_cast<qreal>(here));
      widths.front() = label;
      all.push_back(set(of, from, here, widths, 1));
    }
    return all;
  }
  qsizetype inEach(qsizetype groups) const { return (count() + groups - 1) / groups; }

  SetTable set(const Section& of, qsizetype from, qsizetype columns, const Widths& widths,
               int beside) const {
    SetTable made{.columns = beside, .head = head(from, columns, widths, beside > 1), .rows = {}};
    const auto& rows = table_.rows;
    for (qsizetype at = of.from; at < of.to; ++at) {
      const bool afterSum = at > of.from && rows[at - 1].isSum;
      const bool beforeSum = at + 1 < of.to && rows[at + 1].isSum;
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

  SetTable legend(const Section& of, qreal width) const {
    SetTable made{.columns = 2, .head = {}, .rows = {}};
    for (qsizetype i = of.from; i < of.to; ++i) {
      const QStringList lines = linesOfFigures(table_.rows[i].cells.value(0), type_.small, width);
      made.rows.push_back({.height = gui::heightOf(lines, type_.small, kTableLeading),
                           .gap = kBelowRow,
                           .draw = [&type = type_, lines](QPainter& painter, QPointF at) {
                             drawLines(painter, at, lines, type.small, Side::Left, kTableLeading);
                           }});
    }
    return made;
  }

  // --- Pieces.

  std::vector<QStringList> broken(const QStringList& cells, const Widths& widths,
                                  const QFont& font) const {
    std::vector<QStringList> all;
    for (std::size_t i = 0; i < widths.size(); ++i)
      all.push_back(
          linesOfFigures(cells.value(static_cast<qsizetype>(i)), font, widths[i] - kCellGap));
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
    const QStringList lines = linesOfFigures(text, type_.smallStrong, sumOf(widths));
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
  std::vector<std::vector<qreal>> natural_;  // widths of each row's cells, unbroken
};

}  // namespace

std::vector<SetTable> setTable(const ShownTable& table, const PaperType& type, qreal width,
                               qreal gutter, Beside halves) {
  return Setter(table, type).take(width, gutter, halves);
}

}  // namespace gui
