// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_layouter.hpp"

#include <QtMath>
#include <algorithm>
#include <cmath>
#include <numeric>

#include "gui/window/charts/chart_window.hpp"

namespace gui {
namespace {

using telling::Picture;
using telling::PictureLimit;
using telling::PictureStack;

constexpr double kSampleWidth = 34.0;
constexpr double kShortSample = 24.0;
constexpr double kBetweenEntries = 18.0;  // of a legend
constexpr double kCloseEntries = 10.0;
constexpr double kRightOfPlot = 60.0;  // at the most

double sum(const std::vector<double>& parts) {
  return std::accumulate(parts.begin(), parts.end(), 0.0);
}

}  // namespace

Layouter::Layouter(const Picture& picture, QSizeF size, const ChartLook& look,
                   const std::optional<ChartWindow>& window)
    : picture_(picture), size_(size), look_(look), metrics_(look.font) {
  layout_.window = window.value_or(fullWindow(picture));
  layout_.font = look.font;
  layout_.smallFont = look.font;
  layout_.smallFont.setPixelSize(std::max(9, look.font.pixelSize() * 9 / 10));
  layout_.titleFont = look.font;
  layout_.titleFont.setBold(true);
  lineHeight_ = std::ceil(metrics_.height());
}

ChartLayout Layouter::take() {
  const double bottomOfHead = head();
  const double topOfFoot = foot();
  frame(bottomOfHead, topOfFoot);
  ticks();
  if (barsKind()) {
    bars();
    limits(bottomOfHead);
  } else {
    limits(bottomOfHead);
    traceLines();
    lineEnds();
    limitNames();
    marks();
    bands();
    areaNames();
  }
  return std::move(layout_);
}

double Layouter::widthOf(const QString& text, const QFont& font) const {
  return std::ceil(QFontMetricsF(font).horizontalAdvance(text)) + 1.0;
}

double Layouter::xTitleWidth() const {
  return widthOf(QString::fromStdString(telling::xTitleWith(picture_, "h:min")));
}

double Layouter::head() {
  double y = 2.0;
  const QString title = QString::fromStdString(picture_.title);
  const QString yTitle = QString::fromStdString(picture_.yTitle);
  const double besideTitle = 2.0 + widthOf(title, layout_.titleFont) + kBetweenEntries;
  if (look_.dense && !title.isEmpty() && besideTitle + widthOf(yTitle) < size_.width()) {
    const double high = std::ceil(QFontMetricsF(layout_.titleFont).height());
    layout_.titles = {{title, {2.0, y, besideTitle - kBetweenEntries, high}},
                      {yTitle, {besideTitle, y, widthOf(yTitle), high}}};
    layout_.titles[0].index = 0;
    layout_.titles[1].index = 1;
    return y + high + 2.0 + kLabelGap;
  }
  const auto add = [&](const QString& text, const QFont& font, int index) {
    if (text.isEmpty()) return;
    const QRectF box = QFontMetricsF(font).boundingRect(QRectF(2.0, y, size_.width() - 4.0, 1000.0),
                                                        Qt::TextWordWrap, text);
    Label label{text, {2.0, y, size_.width() - 4.0, std::ceil(box.height())}};
    label.index = index;
    layout_.titles.push_back(label);
    y += label.box.height() + 2.0;
  };
  add(title, layout_.titleFont, 0);
  add(yTitle, layout_.font, 1);
  return y + kLabelGap;
}

double Layouter::foot() {
  QVector<Label> legend;
  double x = 2.0;
  double y = 0.0;
  double rowHeight = lineHeight_;
  for (const LegendEntry& entry : look_.legend ? legendOf(picture_) : QVector<LegendEntry>()) {
    const double sample = entry.kind == LegendSample::Part ? 18.0
                          : look_.dense                    ? kShortSample
                                                           : kSampleWidth;
    const double most = size_.width() - 4.0 - sample - kLabelGap;
    const double wanted = widthOf(entry.text);
    if (x > 2.0 && x + sample + kLabelGap + wanted > size_.width() - 2.0) {
      x = 2.0;
      y += rowHeight + 2.0;
      rowHeight = lineHeight_;
    }
    Label label{entry.text, {x + sample + kLabelGap, y, std::min(wanted, most), lineHeight_}};
    if (wanted > most) {
      label.box.setHeight(
          std::ceil(metrics_.boundingRect(QRectF(0, 0, most, 1000.0), Qt::TextWordWrap, entry.text)
                        .height()));
      rowHeight = std::max(rowHeight, label.box.height());
    }
    label.index = entry.index;
    label.kind = entry.kind;
    label.isOut = entry.isOut;
    label.sample = {x, y, sample, lineHeight_};
    legend.push_back(label);
    x = label.box.right() + (look_.dense ? kCloseEntries : kBetweenEntries);
  }
  const double height = legend.isEmpty() ? 0.0 : y + rowHeight + 2.0;
  const double top = size_.height() - height;
  for (Label& label : legend) {
    label.box.translate(0.0, top);
    label.sample.translate(0.0, top);
  }
  layout_.legend = legend;
  double bottom = top - kLabelGap;
  // To the right of the legend's last line, where there is room.
  const double besideLegend = x + xTitleWidth() + kRightOfPlot;
  if (look_.dense && !legend.isEmpty() && rowHeight <= lineHeight_ &&
      besideLegend < size_.width()) {
    xTitleTop_ = top + y;
  } else if (!picture_.xTitle.empty()) {
    xTitleTop_ = bottom - lineHeight_;
    bottom = xTitleTop_;
  }
  return bottom - lineHeight_ - tickGap();
}

void Layouter::frame(double top, double bottom) {
  const int most = std::max(1, static_cast<int>((bottom - top) / (lineHeight_ * 2.2)));
  yStep_ = niceStep(layout_.window.height(), most);
  double left = barsKind() ? 0.5 * widthOf(QStringLiteral("0:00")) : 4.0;
  if (!barsKind()) {
    for (const double v : ticksWithin(layout_.window.yFrom, layout_.window.yTo, yStep_)) {
      left = std::max(left, widthOf(tickText(v, yStep_, look_.locale)) + kLabelGap + 2.0);
    }
  }
  double right = 16.0;
  if (picture_.kind == Picture::Kind::Lines) right = widthOf(QStringLiteral("(m)")) + 10.0;
  if (barsKind()) {
    for (const PictureStack& stack : picture_.stacks) {
      right = std::max(right, widthOf(totalText(stack)) + 10.0);
    }
  }
  limitRows_ = picture_.limits.empty() ? 0 : limitRowsNeeded();
  layout_.plot = QRectF(QPointF(left, top + limitRows_ * (lineHeight_ + 2.0)),
                        QPointF(size_.width() - right, bottom));
  if (layout_.plot.height() < 20.0) layout_.plot.setHeight(20.0);
  if (layout_.plot.width() < 20.0) layout_.plot.setWidth(20.0);
  if (!picture_.xTitle.empty()) {
    const QString title = QString::fromStdString(telling::xTitleWith(picture_, "h:min"));
    const double width = std::min(xTitleWidth(), size_.width() - 4.0);
    Label label{title,
                {std::max(2.0, layout_.plot.right() - width), xTitleTop_, width, lineHeight_}};
    label.index = 2;
    layout_.titles.push_back(label);
  }
}

int Layouter::limitRowsNeeded() const {
  int rows = 1;
  QVector<QPair<double, double>> spans;
  const double perUnit = (size_.width() - 90.0) / layout_.window.width();
  for (const PictureLimit& limit : picture_.limits) {
    const double half = 0.5 * widthOf(QString::fromStdString(limit.label)) + 8.0;
    const double x = (limit.x - layout_.window.xFrom) * perUnit;
    int touching = 1;
    for (const auto& span : spans) {
      if (span.first < x + 1.5 * half && x - 1.5 * half < span.second) ++touching;
    }
    spans.push_back({x - 1.5 * half, x + 1.5 * half});
    rows = std::max(rows, touching);
  }
  return rows;
}

void Layouter::ticks() {
  const ChartWindow& w = layout_.window;
  const QRectF& plot = layout_.plot;
  double each = picture_.xIsClock ? 52.0 : 64.0;
  each = std::max(each, widthOf(QStringLiteral("00000")) + 14.0);
  xStep_ =
      niceStep(w.width(), std::max(1, static_cast<int>(plot.width() / each)), picture_.xIsClock);
  for (const double v : ticksWithin(w.xFrom, w.xTo, xStep_)) {
    const QString text = picture_.xIsClock && xStep_ >= 1.0 ? hoursAndMinutesText(v)
                                                            : tickText(v, xStep_, look_.locale);
    const double width = widthOf(text);
    const QPointF at = layout_.at({v, w.yFrom});
    const double x = std::clamp(at.x() - 0.5 * width, 0.0, size_.width() - width);
    const QRectF box(x, plot.bottom() + tickGap(), width, lineHeight_);
    if (!layout_.xTicks.isEmpty() && layout_.xTicks.back().box.intersects(box)) continue;
    Label label{text, box};
    label.value = v;
    label.anchor = at;
    layout_.xTicks.push_back(label);
  }
  if (barsKind()) return;
  for (const double v : ticksWithin(w.yFrom, w.yTo, yStep_)) {
    const QString text = tickText(v, yStep_, look_.locale);
    const QPointF at = layout_.at({w.xFrom, v});
    const double width = widthOf(text);
    Label label{text,
                {plot.left() - kLabelGap - width, at.y() - 0.5 * lineHeight_, width, lineHeight_}};
    label.value = v;
    label.anchor = at;
    layout_.yTicks.push_back(label);
  }
}

QString Layouter::totalText(const PictureStack& stack) const {
  const double total = sum(stack.parts);
  if (picture_.xIsClock) return hoursAndMinutesText(total);
  const QString number = picture_.totalDecimals
                             ? look_.locale.toString(total, 'f', *picture_.totalDecimals)
                             : readingText(total, layout_.window.width(), false, look_.locale);
  return picture_.xUnit.empty()
             ? number
             : QStringLiteral("%1 %2").arg(number, QString::fromStdString(picture_.xUnit));
}

void Layouter::bars() {
  const QRectF& plot = layout_.plot;
  const auto count = static_cast<double>(std::max<std::size_t>(1, picture_.stacks.size()));
  const double pitch = plot.height() / count;
  for (std::size_t i = 0; i < picture_.stacks.size(); ++i) {
    const PictureStack& stack = picture_.stacks[i];
    const double top = plot.top() + static_cast<double>(i) * pitch;
    const double thick = std::clamp(std::min(pitch - lineHeight_ - 4.0, 0.45 * pitch), 4.0, 56.0);
    const double from = top + 0.5 * (pitch - lineHeight_ - thick) + lineHeight_;
    layout_.bars.push_back({stack.rig, from, from + thick});
    const QString name = rigInPicture(picture_, stack.rig, QString::fromStdString(stack.name));
    Label title{name, {plot.left() + 2.0, from - lineHeight_ - 1.0, 0.0, lineHeight_}, stack.rig};
    title.box.setWidth(std::min(widthOf(name), plot.width() - 2.0));
    layout_.barNames.push_back(title);
    const QString total = totalText(stack);
    const double end = layout_.at({std::min(sum(stack.parts), layout_.window.xTo), 0.0}).x();
    layout_.barNames.push_back(
        {total, {end + 5.0, from + 0.5 * (thick - lineHeight_), widthOf(total), lineHeight_}, -1});
    double x = 0.0;
    for (std::size_t part = 0; part < stack.parts.size(); ++part) {
      const double left = layout_.at({x, 0.0}).x();
      x += std::max(0.0, stack.parts[part]);
      const double right = layout_.at({x, 0.0}).x();
      if (stack.parts.size() < 2 || thick < lineHeight_ * 0.8) continue;
      const QString text = partText(part, right - left - 4.0);
      const double width = widthOf(text, layout_.smallFont);
      if (text.isEmpty()) continue;
      Label label{text, {0.5 * (left + right - width), from, width, thick}};
      label.index = static_cast<int>(part);
      layout_.parts.push_back(label);
    }
  }
}

// Its name where there is room for that, else the number by which the legend names it; "" where not
// even that fits.
QString Layouter::partText(std::size_t part, double room) const {
  const QString number = QString::number(part + 1);
  if (part < picture_.partNames.size()) {
    const QString name = QString::fromStdString(picture_.partNames[part]);
    if (widthOf(name, layout_.smallFont) <= room) return name;
  }
  return widthOf(number, layout_.smallFont) <= room ? number : QString();
}

void Layouter::limits(double top) {
  QVector<QRectF> taken;
  for (const PictureLimit& limit : picture_.limits) {
    if (limit.x < layout_.window.xFrom || limit.x > layout_.window.xTo) continue;
    const QString text = QString::fromStdString(limit.label);
    const double width = widthOf(text);
    const double x = layout_.at({limit.x, 0.0}).x();
    const double left = std::clamp(x - 0.5 * width, 0.0, std::max(0.0, size_.width() - width));
    for (int row = limitRows_ - 1; row >= 0; --row) {
      const QRectF box(left, top + row * (lineHeight_ + 2.0) - 2.0, width, lineHeight_);
      if (row > 0 && overlapsAny(box.adjusted(-kLabelGap, 0, kLabelGap, 0), taken)) continue;
      if (overlapsAny(box, taken)) continue;
      Label label{text, box};
      label.anchor = {x, layout_.plot.top()};
      layout_.limits.push_back(label);
      taken.push_back(box);
      break;
    }
  }
}

ChartLayout layOut(const Picture& picture, QSizeF size, const ChartLook& look,
                   std::optional<ChartWindow> window) {
  return Layouter(picture, size, look, window).take();
}

int aroundPlot(const Picture& picture, int width, const ChartLook& look) {
  constexpr double kAmple = 800.0;
  return qCeil(kAmple - layOut(picture, QSizeF(width, kAmple), look).plot.height());
}

QStringList aroundTexts(const std::vector<Picture>& pictures) {
  QStringList texts;
  for (const Picture& picture : pictures) {
    for (const LegendEntry& entry : legendOf(picture)) texts += entry.text;
    texts += QString::number(picture.limits.size());
  }
  return texts;
}

}  // namespace gui
