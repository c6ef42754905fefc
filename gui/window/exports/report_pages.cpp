// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report_pages.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPageLayout>
#include <QPagedPaintDevice>
#include <algorithm>

#include "gui/window/charts/rig_swatch.hpp"
#include "gui/window/exports/text_flow.hpp"

namespace gui {
namespace {

struct PageWords {
  Q_DECLARE_TR_FUNCTIONS(gui::ReportPages)
};

constexpr qreal kPageMargin = 48.0;    // points
constexpr qreal kFooter = 26.0;        // above the lower margin
constexpr qreal kNarrowColumn = 74.0;  // of a rig, where its cells hold words
constexpr qreal kNarrowNumbers = 40.0;
constexpr qreal kLabels = 0.30;       // of the width, for the first column
constexpr qreal kShortLabels = 0.24;  // the same where they are short and the columns many
constexpr qreal kLabelOfPair = 0.55;  // the same in a table of two columns
constexpr qreal kCellGap = 8.0;
constexpr qreal kIndent = 12.0;
constexpr qreal kSwatchWide = 26.0;  // above a rig's name
constexpr qreal kSwatchRow = 10.0;

// Without ligatures, so that whoever searches the PDF for "fits" finds it: Qt joins no letters
// whose spacing is set, be it to the usual one.
QFont searchable(QFont font) {
  font.setLetterSpacing(QFont::PercentageSpacing, 100.0);
  return font;
}

}  // namespace

ReportPages::ReportPages(QPagedPaintDevice& device, const ChartLook& look, const QString& footer)
    : device_(device),
      look_(look),
      footer_(footer),
      body_(searchable(sized(look.font, 8.5))),
      strong_(searchable(sized(look.font, 8.5, true))),
      headingFont_(searchable(sized(look.font, 13.0, true))),
      titleFont_(searchable(sized(look.font, 20.0, true))),
      note_(searchable(sized(look.font, 7.5))),
      noteHeading_(searchable(sized(look.font, 7.5, true))),
      small_(searchable(sized(look.font, 7.0))) {
  look_.font = searchable(sized(look.font, 8.0));
  const QRectF paper = device.pageLayout().fullRect(QPageLayout::Point);
  const QRectF printable = device.pageLayout().paintRect(QPageLayout::Point);
  // The painter starts at the printable area, which a printer makes smaller than the paper.
  const QMarginsF margins(qMax(0.0, kPageMargin - printable.left()),
                          qMax(0.0, kPageMargin - printable.top()),
                          qMax(0.0, kPageMargin - (paper.right() - printable.right())),
                          qMax(0.0, kPageMargin - (paper.bottom() - printable.bottom())) + kFooter);
  page_ = QRectF(QPointF(), printable.size()).marginsRemoved(margins);
  y_ = page_.top();
  fine_ = painter_.begin(&device);
  const qreal scale = static_cast<qreal>(device.logicalDpiX()) / 72.0;
  painter_.scale(scale, scale);
  painter_.setPen(look_.ink);
}

ReportPages::~ReportPages() { finishPage(); }

void ReportPages::finishPage() {
  const qreal y = page_.bottom() + kFooter - lineHeight(small_);
  painter_.setPen(look_.quietInk);
  drawLines(painter_, {page_.left(), y}, {footer_}, small_);
  drawLines(painter_, {page_.right(), y}, {PageWords::tr("Page %1").arg(number_)}, small_,
            Side::Right);
  painter_.setPen(look_.ink);
}

void ReportPages::newPage() {
  finishPage();
  fine_ = device_.newPage() && fine_;
  ++number_;
  y_ = page_.top();
}

void ReportPages::keepTogether(qreal points) {
  if (left() < points && y_ > page_.top()) newPage();
}

void ReportPages::gap(qreal points) { y_ += points; }

void ReportPages::title(const QString& text) {
  y_ +=
      drawLines(painter_, {page_.left(), y_}, linesOf(text, titleFont_, page_.width()), titleFont_);
  gap(4.0);
}

void ReportPages::heading(const QString& text) {
  keepTogether(90.0);  // never alone at the foot of a page
  gap(6.0);
  y_ += drawLines(painter_, {page_.left(), y_}, linesOf(text, headingFont_, page_.width()),
                  headingFont_);
  gap(3.0);
}

void ReportPages::paragraph(const QString& text) {
  for (const QString& line : linesOf(text, body_, page_.width())) {
    keepTogether(lineHeight(body_));
    y_ += drawLines(painter_, {page_.left(), y_}, {line}, body_);
  }
  gap(5.0);
}

void ReportPages::strongParagraph(const QString& text) {
  const QFont plain = body_;
  body_ = strong_;
  paragraph(text);
  body_ = plain;
}

void ReportPages::list(const QStringList& items) {
  for (const QString& item : items) {
    const QStringList lines = linesOf(item, body_, page_.width() - kIndent);
    keepTogether(heightOf(lines, body_));
    drawLines(painter_, {page_.left(), y_}, {QStringLiteral("–")}, body_);
    y_ += drawLines(painter_, {page_.left() + kIndent, y_}, lines, body_);
  }
  gap(5.0);
}

void ReportPages::notes(const QVector<ShownNote>& items) {
  for (const ShownNote& item : items) {
    const QFont& font = item.isHeading ? noteHeading_ : note_;
    const QStringList lines = linesOf(item.text, font, page_.width());
    // A heading takes what begins below it along.
    keepTogether(heightOf(lines, font) + (item.isHeading ? 2.0 * lineHeight(note_) : 0.0));
    gap(item.isHeading ? 5.0 : 1.0);
    y_ += drawLines(painter_, {page_.left(), y_}, lines, font);
  }
  gap(5.0);
}

void ReportPages::framed(const QString& heading, const QStringList& items, bool strongly) {
  const qreal head = lineHeight(strong_) + 2.0 * kIndent;
  const auto linesIn = [&](const QFont& of) {
    QStringList all;
    for (const QString& item : items) all += linesOf(item, of, page_.width() - 2.0 * kIndent);
    return all;
  };
  QFont font = strongly ? strong_ : body_;
  QStringList lines = linesIn(font);
  if (head + heightOf(lines, font) > left()) {
    font = note_;
    lines = linesIn(font);
  }
  keepTogether(head + 3.0 * lineHeight(font));
  // What is longer than the page goes on in a frame of its own.
  for (qsizetype from = 0; from < lines.size();) {
    if (from > 0) newPage();
    const auto room = static_cast<qsizetype>((left() - head) / lineHeight(font));
    const QStringList here = lines.mid(from, qMax(qsizetype{1}, room));
    painter_.setPen(QPen(look_.ink, 1.2));
    painter_.drawRect(QRectF(page_.left(), y_, page_.width(), head + heightOf(here, font)));
    y_ += kIndent;
    const qreal x = page_.left() + kIndent;
    y_ += drawLines(painter_, {x, y_}, {heading}, strong_);
    y_ += drawLines(painter_, {x, y_}, here, font) + kIndent;
    from += here.size();
  }
  gap(8.0);
}

void ReportPages::picture(const telling::Picture& picture, qreal height) {
  const qreal fits = qMin(height, page_.height());
  keepTogether(fits);
  painter_.save();
  drawPicture(painter_, QRectF(page_.left(), y_, page_.width(), fits), picture, look_);
  painter_.restore();
  y_ += fits;
  gap(8.0);
}

// Over the hairline that ended the row above.
void ReportPages::overRule() {
  y_ -= 2.0;
  rule(1.0, look_.ink);
}

void ReportPages::swatchRow(const QVector<int>& looks, const QVector<qreal>& widths) {
  qreal right = page_.left() + widths[0];
  for (qsizetype i = 0; i < looks.size(); ++i) {
    right += widths[i + 1];
    if (looks[i] < 0) continue;
    drawRigSwatch(painter_, looks[i], QRectF(right - kSwatchWide, y_, kSwatchWide, kSwatchRow),
                  look_, 1.4);
  }
  painter_.setPen(look_.ink);
  y_ += kSwatchRow;
}

void ReportPages::rule(qreal width, const QColor& color) {
  painter_.setPen(QPen(color, width));
  painter_.drawLine(QPointF(page_.left(), y_), QPointF(page_.right(), y_));
  painter_.setPen(look_.ink);
  y_ += 2.0;
}

void ReportPages::table(const ShownTable& table) {
  const qsizetype columnsInAll = table.head.size();
  if (columnsInAll < 2) return;
  const qreal narrow = narrowestColumn(table);
  const qreal label = narrow < kNarrowColumn ? kShortLabels : kLabels;
  const auto most =
      qMax(qsizetype{1}, static_cast<qsizetype>(page_.width() * (1.0 - label) / narrow));
  // Groups of about the same size: 7 columns as 4 and 3, not as 6 and 1.
  const qsizetype groups = (columnsInAll - 1 + most - 1) / most;
  const qsizetype each = (columnsInAll - 1 + groups - 1) / groups;
  for (qsizetype from = 1; from < columnsInAll; from += each) {
    columns(table, from, qMin(each, columnsInAll - from), label);
  }
}

// Columns of mere numbers may be as narrow as the longest word of their heads.
qreal ReportPages::narrowestColumn(const ShownTable& table) const {
  const QFontMetricsF plain(body_), bold(strong_);
  qreal widest = kNarrowNumbers;
  for (const QString& head : table.head.mid(1) + table.marks) {
    for (const QString& word : head.split(u' ')) {
      widest = qMax(widest, bold.horizontalAdvance(word) + kCellGap);
    }
  }
  for (const ShownTable::Row& row : table.rows) {
    if (row.isHeading) continue;  // takes the whole width
    if (plain.horizontalAdvance(row.cells.value(0)) + kCellGap > kShortLabels * page_.width())
      return kNarrowColumn;
    for (const QString& cell : row.cells.mid(1)) {
      if (plain.horizontalAdvance(cell) + kCellGap > widest) return kNarrowColumn;
    }
  }
  return qMin(widest, kNarrowColumn);
}

void ReportPages::columns(const ShownTable& table, qsizetype from, qsizetype count, qreal labels) {
  const qreal label = count == 1 ? kLabelOfPair : labels;
  const qreal others = page_.width() * (1.0 - label) / static_cast<qreal>(count);
  QVector<qreal> widths{page_.width() * label};
  for (qsizetype i = 0; i < count; ++i) widths.push_back(others);
  const auto cellsOf = [&](const QStringList& row) {
    return QStringList{row.value(0)} + row.mid(from, count);
  };
  QStringList heads;
  for (qsizetype i = 0; i < table.head.size(); ++i) heads.push_back(table.headWithMark(i));
  const QStringList head = cellsOf(heads);
  const bool swatches =
      std::any_of(table.looks.begin(), table.looks.end(), [](int look) { return look >= 0; });
  const auto drawHead = [&] {
    if (swatches) swatchRow(table.looks.mid(from, count), widths);
    tableRow(head, widths, strong_);
    rule(1.0, look_.ink);
  };
  const qreal first =
      table.rows.isEmpty() ? 0.0 : rowHeight(cellsOf(table.rows[0].cells), widths, body_);
  keepTogether(rowHeight(head, widths, strong_) + first + 4.0 + (swatches ? kSwatchRow : 0.0));
  drawHead();
  for (qsizetype at = 0; at < table.rows.size(); ++at) {
    const ShownTable::Row& row = table.rows[at];
    const QStringList cells = cellsOf(row.cells);
    // A heading takes its first row along, and the whole width.
    const qreal needed =
        row.isHeading ? 2.5 * lineHeight(strong_) + 2.0 : rowHeight(cells, widths, body_) + 2.0;
    if (left() < needed && y_ > page_.top()) {
      newPage();
      drawHead();
    }
    if (row.isHeading) {
      gap(3.0);
      tableRow({row.cells.value(0)}, {page_.width()}, strong_);
    } else if (row.isSum) {
      // As in an account: what it comes to stands between a rule and two.
      if (at > 0 && !table.rows[at - 1].isSum) overRule();
      tableRow(cells, widths, strong_);
      const bool goesOn = at + 1 < table.rows.size() && table.rows[at + 1].isSum;
      rule(goesOn ? 0.25 : 0.6, goesOn ? look_.grid : look_.ink);
      if (!goesOn) rule(0.6, look_.ink);
    } else {
      tableRow(cells, widths, body_);
      rule(0.25, look_.quietInk);
    }
  }
  gap(8.0);
}

qreal ReportPages::rowHeight(const QStringList& cells, const QVector<qreal>& widths,
                             const QFont& font) const {
  qreal height = lineHeight(font);
  for (qsizetype i = 0; i < cells.size(); ++i) {
    height = qMax(height, heightOf(linesOf(cells[i], font, widths[i] - kCellGap), font));
  }
  return height;
}

void ReportPages::tableRow(const QStringList& cells, const QVector<qreal>& widths,
                           const QFont& font) {
  qreal x = page_.left();
  for (qsizetype i = 0; i < cells.size(); ++i) {
    const QStringList lines = linesOf(cells[i], font, widths[i] - kCellGap);
    const bool label = i == 0;
    const QPointF corner(label ? x : x + widths[i], y_);
    drawLines(painter_, corner, lines, font, label ? Side::Left : Side::Right);
    x += widths[i];
  }
  y_ += rowHeight(cells, widths, font);
}

}  // namespace gui
