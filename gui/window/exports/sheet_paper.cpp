// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/sheet_paper.hpp"

#include <QPageLayout>
#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

#include "gui/telling/drawing.hpp"
#include "gui/telling/plain_text.hpp"
#include "gui/telling/sheet_html.hpp"
#include "gui/window/charts/chart_look.hpp"
#include "gui/window/exports/pdf.hpp"
#include "gui/window/exports/text_flow.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/written_files.hpp"

namespace gui {
namespace {

using rigs::Told;
using telling::Sheet;
using telling::SheetLine;

// Fonts have whole pixels, which are tenths of a point here.
constexpr qreal kUnits = 10.0;
// Points (1/72 inch) at full size.
constexpr qreal kSheetMargin = 38.0;
constexpr qreal kTick = 9.0, kTickColumn = 17.0, kTimeColumn = 58.0, kExpectedColumn = 104.0;
constexpr qreal kBoxWide = 48.0, kBoxHigh = 21.0, kBetween = 5.0;
constexpr qreal kRowPadding = 4.0;

// Words go on under each other; the first `heavy` letters in bold.
class Paragraph {
 public:
  Paragraph(const QString& text, const QFont& font, qsizetype heavy, qreal width)
      : layout_(text, font) {
    if (heavy > 0) {
      QTextLayout::FormatRange range;
      range.start = 0;
      range.length = static_cast<int>(heavy);
      range.format.setFontWeight(QFont::Bold);
      layout_.setFormats({range});
    }
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout_.setTextOption(option);
    layout_.beginLayout();
    for (QTextLine line = layout_.createLine(); line.isValid(); line = layout_.createLine()) {
      line.setLineWidth(width);
      line.setPosition({0.0, height_});
      height_ += lineHeight(font);
    }
    layout_.endLayout();
  }
  qreal height() const { return height_; }
  void draw(QPainter& painter, QPointF corner) const { layout_.draw(&painter, corner); }

 private:
  QTextLayout layout_;
  qreal height_ = 0.0;
};

// Measured without a painter and drawn with one, so that the two cannot disagree.
class SheetPaper {
 public:
  SheetPaper(const Sheet& sheet, const rigs::Reader& reader, QRectF page)
      : sheet_(sheet),
        reader_(reader),
        page_(page),
        look_(paperLook()),
        title_(font(17.0, true)),
        body_(font(8.6)),
        strong_(font(8.6, true)),
        clock_(font(12.0, true)),
        figure_(font(11.5, true)),
        quiet_(font(7.4)),
        tiny_(font(6.2)),
        y_(page.top()) {}

  // What it takes of paper.
  qreal height() {
    flow();
    return y_ - page_.top();
  }
  // True if all of it was drawn.
  bool draw(QPainter& painter, const std::function<bool()>& newPage) {
    painter_ = &painter;
    newPage_ = newPage;
    flow();
    return fine_;
  }

 private:
  void flow() {
    heading(title_, sheet_.title);
    gap(2.0);
    say(body_, sheet_.rig);
    say(body_, rigs::sentences(sheet_.circuits));
    say(quiet_, rigs::sentences({sheet_.batch, sheet_.place, sheet_.origin}), true);
    warnings();
    gap(4.0);
    rule(1.2);
    for (const SheetLine& line : sheet_.lines) row(line);
    gap(2.0);
    say(quiet_, sheet_.ofBands, true);
    sums();
    cautions();
  }

  // --- The list.

  void row(const SheetLine& line) {
    const qreal words = inner() - scaled(kTickColumn + kTimeColumn + kExpectedColumn) - boxesWide();
    const QString action = text(line.action);
    const QString more = text(line.more);
    const QString between = action.isEmpty() || more.isEmpty() ? QString()
                            : line.isToDo                      ? QStringLiteral("; ")
                                                               : QStringLiteral(": ");
    const Paragraph what(action + between + more, body_, action.size(), words - scaled(kBetween));
    QStringList expected;
    for (const Told& one : line.expected)
      expected += linesOf(text(one), body_, scaled(kExpectedColumn) - scaled(kBetween));
    const qreal times = lineHeight(clock_) + (line.band.empty() ? 0.0 : lineHeight(tiny_));
    qreal high = std::max({what.height(), heightOf(expected, body_), times});
    if (!line.toWrite.empty()) high = std::max(high, scaled(kBoxHigh));
    keepTogether(high + 2.0 * scaled(kRowPadding) +
                 (line.newDay.empty() ? 0.0 : lineHeight(quiet_)));
    if (!line.newDay.empty()) say(quiet_, line.newDay, true, scaled(2.0));
    y_ += scaled(kRowPadding);
    if (painter_) paintRow(line, what, expected);
    y_ += high + scaled(kRowPadding);
    rule(0.25, true);
  }

  void paintRow(const SheetLine& line, const Paragraph& what, const QStringList& expected) {
    const qreal left = page_.left();
    if (line.isToDo) {
      painter_->setPen(QPen(look_.ink, 0.7 * kUnits));
      painter_->drawRect(QRectF(left, y_ + scaled(3.0), scaled(kTick), scaled(kTick)));
    }
    painter_->setPen(look_.ink);
    const QPointF time(left + scaled(kTickColumn), y_);
    drawLines(*painter_, time, {text(line.clock())}, clock_);
    what.draw(*painter_, time + QPointF(scaled(kTimeColumn), scaled(1.5)));
    painter_->setPen(look_.quietInk);
    if (!line.band.empty())
      drawLines(*painter_, time + QPointF(0.0, lineHeight(clock_)), {text(line.band)}, tiny_);
    const qreal right = page_.right() - boxesWide();
    drawLines(*painter_, {right - scaled(kBetween), y_ + scaled(1.5)}, expected, body_,
              Side::Right);
    // To the right, so that what is written stands in columns.
    qreal box = page_.right() - static_cast<qreal>(line.toWrite.size()) * scaled(kBoxWide + 4.0);
    for (const Told& one : line.toWrite) {
      box += scaled(4.0);
      painter_->setPen(QPen(look_.quietInk, 0.6 * kUnits));
      painter_->drawRect(QRectF(box, y_, scaled(kBoxWide), scaled(kBoxHigh)));
      drawLines(*painter_, {box + scaled(2.0), y_ + scaled(0.5)}, {text(one)}, tiny_);
      box += scaled(kBoxWide);
    }
    painter_->setPen(look_.ink);
  }

  qreal boxesWide() const {
    std::size_t most = 0;
    for (const SheetLine& line : sheet_.lines) most = std::max(most, line.toWrite.size());
    return static_cast<qreal>(most) * scaled(kBoxWide + 4.0);
  }

  // --- What it comes to, and what to take care of.

  void sums() {
    if (sheet_.sums.empty()) return;
    const qreal wide = inner() / static_cast<qreal>(sheet_.sums.size());
    std::vector<QStringList> labels;
    qreal high = 0.0;
    for (const telling::SheetSum& one : sheet_.sums) {
      labels.push_back(linesOf(text(one.label), quiet_, wide - scaled(8.0)));
      high = std::max(high, lineHeight(figure_) + heightOf(labels.back(), quiet_));
    }
    gap(4.0);
    keepTogether(high + scaled(8.0));
    for (std::size_t i = 0; painter_ && i < labels.size(); ++i) {
      const QPointF at(page_.left() + static_cast<qreal>(i) * wide, y_);
      drawLines(*painter_, at, {text(sheet_.sums[i].figure)}, figure_);
      painter_->setPen(look_.quietInk);
      drawLines(*painter_, at + QPointF(0.0, lineHeight(figure_)), labels[i], quiet_);
      painter_->setPen(look_.ink);
    }
    y_ += high + scaled(3.0);
    rule(0.6);
    rule(0.6);
  }

  void warnings() {
    if (sheet_.warnings.empty()) return;
    QStringList all;
    for (const Told& one : sheet_.warnings)
      all += linesOf(text(one), strong_, inner() - 2.0 * scaled(8.0));
    gap(5.0);
    frame(heightOf(all, strong_) + lineHeight(strong_) + scaled(12.0), 1.6, [&](QPointF at) {
      const qreal head =
          drawLines(*painter_, at, {text(Told(TOLD("Sheet", "Before anything else")))}, strong_);
      drawLines(*painter_, at + QPointF(0.0, head), all, strong_);
    });
  }

  // In two columns, each caution whole in one of them.
  void cautions() {
    const qreal wide = (inner() - 3.0 * scaled(8.0)) / 2.0;
    std::vector<QStringList> items;
    qreal all = 0.0;
    for (const Told& one : sheet_.cautions) {
      items.push_back(linesOf(text(one), quiet_, wide - scaled(7.0)));
      all += heightOf(items.back(), quiet_);
    }
    std::size_t first = 0;
    qreal left = 0.0;
    while (first < items.size() && left + 0.5 * heightOf(items[first], quiet_) < all / 2.0)
      left += heightOf(items[first++], quiet_);
    const qreal head = lineHeight(strong_) + scaled(2.0);
    gap(6.0);
    frame(head + std::max(left, all - left) + scaled(12.0), 1.2, [&](QPointF at) {
      drawLines(*painter_, at, {text(sheet_.danger)}, strong_);
      QPointF item = at + QPointF(0.0, head);
      for (std::size_t i = 0; i < items.size(); ++i) {
        if (i == first) item = at + QPointF(wide + scaled(8.0), head);
        drawLines(*painter_, item, {QStringLiteral("–")}, quiet_);
        item.ry() += drawLines(*painter_, item + QPointF(scaled(7.0), 0.0), items[i], quiet_);
      }
    });
  }

  // --- Paper.

  template <class Inside>
  void frame(qreal high, qreal line, const Inside& paintInside) {
    keepTogether(high);
    if (painter_) {
      painter_->setPen(QPen(look_.ink, line * kUnits));
      painter_->drawRect(QRectF(page_.left(), y_, inner(), high));
      paintInside({page_.left() + scaled(8.0), y_ + scaled(6.0)});
    }
    y_ += high;
  }
  void heading(const QFont& with, const Told& told) { say(with, told); }
  void say(const QFont& with, const Told& told, bool quietly = false, qreal before = 0.0) {
    if (told.empty()) return;
    const QStringList lines = linesOf(text(told), with, inner());
    y_ += before;
    keepTogether(heightOf(lines, with));
    if (painter_) {
      painter_->setPen(quietly ? look_.quietInk : look_.ink);
      drawLines(*painter_, {page_.left(), y_}, lines, with);
      painter_->setPen(look_.ink);
    }
    y_ += heightOf(lines, with);
  }
  void rule(qreal width, bool faint = false) {
    if (painter_) {
      painter_->setPen(QPen(faint ? look_.quietInk : look_.ink, width * kUnits));
      painter_->drawLine(QPointF(page_.left(), y_), QPointF(page_.right(), y_));
      painter_->setPen(look_.ink);
    }
    y_ += scaled(1.6);
  }
  void gap(qreal points) { y_ += scaled(points); }
  void keepTogether(qreal points) {
    if (!painter_ || y_ + points <= page_.bottom() + 0.01 || y_ <= page_.top()) return;
    fine_ = newPage_() && fine_;
    y_ = page_.top();
  }

  qreal inner() const { return page_.width(); }
  qreal scaled(qreal points) const { return points * kUnits; }
  QFont font(qreal points, bool strong = false) const {
    QFont made = sized(look_.font, scaled(points), strong);
    made.setLetterSpacing(QFont::PercentageSpacing, 100.0);  // "fi" stays two letters to search for
    return made;
  }
  // A number stays with its unit.
  QString text(const Told& told) const {
    QString all = QString::fromStdString(telling::plainText(rigs::tell(told, reader_)));
    for (qsizetype i = 1; i < all.size(); ++i)
      if (all[i] == QLatin1Char(' ') && all[i - 1].isDigit()) all[i] = QChar(QChar::Nbsp);
    return all;
  }

  const Sheet& sheet_;
  const rigs::Reader& reader_;
  QRectF page_;
  ChartLook look_;
  QFont title_, body_, strong_, clock_, figure_, quiet_, tiny_;
  qreal y_;
  QPainter* painter_ = nullptr;
  std::function<bool()> newPage_;
  bool fine_ = true;
};

// Within the margins, wherever a printer's own begin.
QRectF pageOf(const QPagedPaintDevice& device) {
  const QRectF paper = device.pageLayout().fullRect(QPageLayout::Point);
  const QRectF printable = device.pageLayout().paintRect(QPageLayout::Point);
  return paper.adjusted(kSheetMargin, kSheetMargin, -kSheetMargin, -kSheetMargin)
      .intersected(printable)
      .translated(-printable.topLeft());
}

}  // namespace

bool drawSheetPaper(QPainter& painter, QRectF page, const Sheet& sheet, const rigs::Reader& reader,
                    const std::function<bool()>& newPage) {
  // Set smaller, the same page has room for more.
  const auto roomAt = [&](qreal size) {
    const qreal units = kUnits / size;
    return QRectF(page.topLeft() * units, page.size() * units);
  };
  qreal size = 1.0;
  while (size > kSmallestSheet &&
         SheetPaper(sheet, reader, roomAt(size)).height() > roomAt(size).height())
    size -= 0.02;
  const auto setSmaller = [&] {
    painter.save();
    painter.scale(size / kUnits, size / kUnits);
  };
  setSmaller();
  const bool fine = SheetPaper(sheet, reader, roomAt(size)).draw(painter, [&] {
    painter.restore();
    const bool goesOn = newPage();
    setSmaller();
    return goesOn;
  });
  painter.restore();
  return fine;
}

bool paintSheetPaper(QPagedPaintDevice& device, const Sheet& sheet, const rigs::Reader& reader) {
  QPainter painter;
  if (!painter.begin(&device)) return false;
  const qreal scale = static_cast<qreal>(device.logicalDpiX()) / 72.0;
  painter.scale(scale, scale);
  return drawSheetPaper(painter, pageOf(device), sheet, reader, [&] { return device.newPage(); });
}

void writeSheet(const std::filesystem::path& path, const Sheet& sheet, const rigs::Reader& reader) {
  if (telling::endsInOneOf(path, telling::sheetEndings())) {
    rigs::saveText(path, telling::sheetHtml(sheet, reader));
    return;
  }
  const QByteArray bytes =
      pdfOf({.title = QString::fromStdString(telling::plainText(rigs::tell(sheet.title, reader))),
             .mark = rigs::kOwnSheetPdfMark,
             .units = reader.units},
            [&](QPagedPaintDevice& device) { return paintSheetPaper(device, sheet, reader); });
  rigs::saveText(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace gui
