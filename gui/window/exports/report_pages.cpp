// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report_pages.hpp"

#include <QCoreApplication>
#include <QMarginsF>
#include <QPageLayout>
#include <QPagedPaintDevice>
#include <algorithm>
#include <utility>

#include "gui/window/charts/chart_layouter.hpp"
#include "gui/window/charts/chart_legend.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/exports/sheet_paper.hpp"
#include "gui/window/exports/text_flow.hpp"

namespace gui {
namespace {

struct PageWords {
  Q_DECLARE_TR_FUNCTIONS(gui::ReportPages)
};

// Points.
constexpr qreal kPageMargin = 32.0;
constexpr qreal kFooter = 16.0;           // above the lower margin
constexpr qreal kBelowHeading = 40.0;     // at the least: a heading is never alone at a page's foot
constexpr qreal kMostBelowWords = 160.0;  // left empty where a picture goes on the next page
constexpr qreal kTableBegins = 40.0;      // its head and its first rows
constexpr qreal kLeastPiece = 40.0;       // of what goes on over a page's end
// Of a picture's plot, where its font has 8.
constexpr qreal kCurvesHigh = 94.0;
constexpr qreal kAreasHigh = 50.0;
constexpr qreal kBarHigh = 24.0;  // with its name, and room for the names of its parts
constexpr qreal kPlainBarHigh = 19.0;
constexpr qreal kLeastPlot = 0.6;  // of that, where a page has no more room
constexpr qreal kPictureScale = kSmallestType / 8.0;

constexpr qreal kGutter = 14.0 * kPoint;  // between two columns
constexpr qreal kIndent = 8.0 * kPoint;
constexpr qreal kFramePadding = 7.0 * kPoint;
constexpr qreal kReportLeading = 0.97;
constexpr qreal kBetweenItems = 1.2 * kPoint;
constexpr qreal kAboveNoteHeading = 3.0 * kPoint;
// Of an item with as many lines, two at the least stay together.
constexpr qsizetype kMayBreak = 4;

QString legendText(const telling::Picture& picture) {
  QStringList all;
  for (const LegendEntry& entry : legendOf(picture))
    all += QStringLiteral("%1 %2 %3")
               .arg(static_cast<int>(entry.kind))
               .arg(entry.index)
               .arg(entry.text);
  return all.join(u'\n');
}

}  // namespace

ReportPages::ReportPages(QPagedPaintDevice& device, const ChartLook& look, const QString& footer)
    : device_(device), type_(look), footer_(footer) {
  const QRectF paper = device.pageLayout().fullRect(QPageLayout::Point);
  const QRectF printable = device.pageLayout().paintRect(QPageLayout::Point);
  // The painter starts at the printable area, which a printer makes smaller than the paper.
  const QMarginsF margins(qMax(0.0, kPageMargin - printable.left()),
                          qMax(0.0, kPageMargin - printable.top()),
                          qMax(0.0, kPageMargin - (paper.right() - printable.right())),
                          qMax(0.0, kPageMargin - (paper.bottom() - printable.bottom())) + kFooter);
  const QRectF points = QRectF(QPointF(), printable.size()).marginsRemoved(margins);
  page_ = QRectF(points.topLeft() * kPoint, points.size() * kPoint);
  y_ = page_.top();
  fine_ = painter_.begin(&device);
  const qreal scale = static_cast<qreal>(device.logicalDpiX()) / 72.0 / kPoint;
  painter_.scale(scale, scale);
  painter_.setPen(type_.look.ink);
}

ReportPages::~ReportPages() { finishPage(); }

void ReportPages::finishPage() {
  const qreal y = page_.bottom() + kFooter * kPoint - lineHeight(type_.small);
  painter_.setPen(type_.look.quietInk);
  drawLines(painter_, {page_.left(), y}, {footer_}, type_.small);
  drawLines(painter_, {page_.right(), y}, {PageWords::tr("Page %1").arg(number_)}, type_.small,
            Side::Right);
  painter_.setPen(type_.look.ink);
}

void ReportPages::newPage() {
  finishPage();
  fine_ = device_.newPage() && fine_;
  ++number_;
  y_ = page_.top();
  legends_.clear();
}

void ReportPages::keepTogether(qreal height) {
  if (left() < height && !isFresh()) newPage();
}

qreal ReportPages::columnWidth(const Flow& how) const {
  const qreal all = page_.width() - 2.0 * how.inset - (how.columns - 1) * kGutter;
  return all / how.columns;
}

void ReportPages::flow(const Strips& strips, const Flow& how) {
  const qreal head = how.head ? how.head->height : 0.0;
  const qreal others = head + how.above + how.below;
  std::size_t from = 0;
  while (from < strips.size()) {
    const qreal room = left() - others;
    const auto whole = balanced(strips, from, how.columns, room);
    if (!whole && !isFresh() && (room < kLeastPiece * kPoint || fitting(strips, from, room) == 0)) {
      newPage();
      continue;
    }
    const qreal high = whole ? *whole : leavingEnough(strips, from, how.columns, room);
    qreal used = 0.0;
    if (how.atop) how.atop({page_.left() + how.inset, y_});
    for (int column = 0; column < how.columns && from < strips.size(); ++column) {
      QPointF at(page_.left() + how.inset + column * (columnWidth(how) + kGutter), y_ + how.above);
      if (how.head) how.head->draw(painter_, at);
      at.ry() += head;
      std::size_t count = fitting(strips, from, high);
      // What is higher than a page is cut by its end rather than never drawn.
      if (count == 0 && column == 0) count = 1;
      used = qMax(used, heightOf(strips, from, count));
      for (std::size_t i = 0; i < count; ++i, ++from) {
        if (i > 0) at.ry() += strips[from].gap;
        if (strips[from].draw) strips[from].draw(painter_, at);
        at.ry() += strips[from].height;
      }
    }
    if (how.around) how.around(QRectF(page_.left(), y_, page_.width(), used + others));
    y_ += used + others;
    if (from < strips.size()) newPage();
  }
}

// --- Text.

void ReportPages::say(const QString& text, const QFont& font) {
  flow(linesIn(text, font, page_.width()), {});
}

void ReportPages::title(const QString& text) { say(text, type_.title); }

void ReportPages::heading(const QString& text) {
  keepTogether(lineHeight(type_.heading) + kBelowHeading * kPoint);
  if (!isFresh()) gap(6.0);
  say(text, type_.heading);
  gap(2.0);
}

void ReportPages::paragraph(const QString& text) {
  say(text, type_.body);
  gap(4.0);
}

void ReportPages::strongParagraph(const QString& text) {
  say(text, type_.strong);
  gap(4.0);
}

void ReportPages::quietParagraph(const QString& text) {
  painter_.setPen(type_.look.quietInk);
  say(text, type_.body);
  painter_.setPen(type_.look.ink);
  gap(2.0);
}

Strips ReportPages::linesIn(const QString& text, const QFont& font, qreal width,
                            const QString& before) const {
  const qreal indent = before.isEmpty() ? 0.0 : kIndent;
  const QStringList lines = linesOfFigures(text, font, width - indent);
  Strips strips;
  for (qsizetype i = 0; i < lines.size(); ++i) {
    const bool whole = lines.size() < kMayBreak && i + 1 < lines.size();
    strips.push_back({.height = lineHeight(font, kReportLeading),
                      .gap = 0.0,
                      .holdsNext = whole || (lines.size() > 1 && (i == 0 || i == lines.size() - 2)),
                      .draw = [indent, font, line = lines[i], mark = i == 0 ? before : QString()](
                                  QPainter& painter, QPointF at) {
                        if (!mark.isEmpty())
                          drawLines(painter, at, {mark}, font, Side::Left, kReportLeading);
                        drawLines(painter, at + QPointF(indent, 0.0), {line}, font, Side::Left,
                                  kReportLeading);
                      }});
  }
  return strips;
}

void ReportPages::list(const QStringList& items) {
  const Flow how{.columns = 2};
  Strips all;
  for (const QString& item : items) {
    Strips lines = linesIn(item, type_.small, columnWidth(how), QStringLiteral("–"));
    lines.front().gap = kBetweenItems;
    all.insert(all.end(), lines.begin(), lines.end());
  }
  flow(all, how);
  gap(5.0);
}

void ReportPages::notes(const QVector<ShownNote>& items) {
  if (items.isEmpty()) return;
  const Flow how{.columns = 2};
  Strips all;
  for (const ShownNote& item : items) {
    Strips lines =
        linesIn(item.text, item.isHeading ? type_.smallStrong : type_.small, columnWidth(how));
    lines.front().gap = item.isHeading ? kAboveNoteHeading : kBetweenItems;
    // A heading takes what begins below it along.
    if (item.isHeading)
      for (Strip& line : lines) line.holdsNext = true;
    all.insert(all.end(), lines.begin(), lines.end());
  }
  flow(all, how);
  gap(4.0);
}

void ReportPages::framed(const QString& heading, const QStringList& items, bool strongly) {
  Flow how{.columns = strongly ? 1 : 2, .inset = kFramePadding};
  how.above = kFramePadding + lineHeight(type_.strong) + 2.0 * kPoint;
  how.below = kFramePadding;
  how.atop = [&](QPointF at) {
    drawLines(painter_, at + QPointF(0.0, kFramePadding), {heading}, type_.strong);
  };
  how.around = [&](QRectF box) {
    painter_.setPen(QPen(type_.look.ink, 1.2 * kPoint));
    painter_.drawRect(box);
    painter_.setPen(type_.look.ink);
  };
  Strips all;
  const QFont& font = strongly ? type_.strong : type_.small;
  const QString before = items.size() > 1 ? QStringLiteral("–") : QString();
  for (const QString& item : items) {
    Strips lines = linesIn(item, font, columnWidth(how), before);
    lines.front().gap = kBetweenItems;
    all.insert(all.end(), lines.begin(), lines.end());
  }
  flow(all, how);
  gap(8.0);
}

// --- Pictures, tables and the sheet.

ReportPages::PictureSize ReportPages::sizeOf(const telling::Picture& picture) const {
  using Kind = telling::Picture::Kind;
  const auto bars = static_cast<qreal>(picture.stacks.size());
  const bool inParts = picture.partNames.size() > 1;
  const qreal plot = picture.kind == Kind::Lines ? kCurvesHigh
                     : picture.kind == Kind::Areas
                         ? kAreasHigh
                         : qMax(1.0, bars) * (inParts ? kBarHigh : kPlainBarHigh);
  PictureSize size;
  size.legend = !legends_.contains(legendText(picture));
  ChartLook look = type_.look;
  look.legend = size.legend;
  const qreal around = aroundPlot(picture, qFloor(page_.width() / kPoint / kPictureScale), look);
  size.height = (around + plot) * kPictureScale;
  size.least = picture.kind == Kind::StackedBars ? size.height
                                                 : (around + kLeastPlot * plot) * kPictureScale;
  return size;
}

void ReportPages::picture(const telling::Picture& picture) {
  if (left() < sizeOf(picture).least * kPoint && !isFresh()) newPage();
  const PictureSize size = sizeOf(picture);
  const qreal height = qMax(size.least, qMin(size.height, left() / kPoint));
  ChartLook look = type_.look;
  look.legend = size.legend;
  legends_.insert(legendText(picture));
  painter_.save();
  painter_.translate(page_.left(), y_);
  painter_.scale(kPoint * kPictureScale, kPoint * kPictureScale);
  drawPicture(painter_,
              QRectF(0.0, 0.0, page_.width() / kPoint / kPictureScale, height / kPictureScale),
              picture, look);
  painter_.restore();
  gap(height + 4.0);
}

void ReportPages::table(const ShownTable& table, Beside halves) {
  for (const SetTable& part : setTable(table, type_, page_.width(), kGutter, halves)) {
    flow(part.rows, {.columns = part.columns, .head = part.head ? &*part.head : nullptr});
    gap(4.0);
  }
}

void ReportPages::sheet(const telling::Sheet& sheet, const rigs::Reader& reader) {
  if (!isFresh()) newPage();
  const QRectF points(page_.topLeft() / kPoint, page_.size() / kPoint);
  const auto inPoints = [this] {
    painter_.save();
    painter_.scale(kPoint, kPoint);
  };
  inPoints();
  drawSheetPaper(painter_, points, sheet, reader, [&] {
    painter_.restore();
    newPage();
    inPoints();
    return fine_;
  });
  painter_.restore();
  newPage();
}

void ReportPages::begin(const QString& title, const QString& sentences, const ShownAnswer& answer) {
  qreal height = 0.0;
  if (!title.isEmpty()) height += lineHeight(type_.heading) + 8.0 * kPoint;
  const QFont& font = title.isEmpty() ? type_.body : type_.strong;
  if (!sentences.isEmpty()) {
    const QStringList lines = linesOfFigures(sentences, font, page_.width());
    height += heightOf(lines, font, kReportLeading) + 4.0 * kPoint;
  }
  const qreal words = height;
  if (!answer.pictures.empty()) height += (sizeOf(answer.pictures.front()).least + 4.0) * kPoint;
  if (!answer.tables.isEmpty() && answer.pictures.size() < 2) height += kTableBegins * kPoint;
  // What is answered in words may stand at a page's foot, its figures on the next.
  const bool wordsAlone = !title.isEmpty() && left() < height && left() >= words &&
                          left() - words < kMostBelowWords * kPoint;
  keepTogether(wordsAlone ? words : height);
  if (!title.isEmpty()) heading(title);
  if (sentences.isEmpty()) return;
  say(sentences, font);
  gap(4.0);
}

}  // namespace gui
