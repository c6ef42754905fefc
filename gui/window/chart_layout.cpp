// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/chart_layout.hpp"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace gui {
namespace {

using Label = ChartLayout::Label;
using Sample = ChartLayout::Sample;

constexpr double kGap = 6.0;
constexpr double kSampleWidth = 34.0;

double sum(const QVector<double>& parts) {
  return std::accumulate(parts.begin(), parts.end(), 0.0);
}

bool overlapsAny(const QRectF& box, const QVector<QRectF>& taken) {
  return std::any_of(taken.begin(), taken.end(),
                     [&](const QRectF& other) { return other.intersects(box); });
}

class Layouter {
 public:
  Layouter(const Picture& picture, QSizeF size, const ChartLook& look,
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

  ChartLayout take() {
    const double bottomOfHead = head();
    const double topOfFoot = foot();
    frame(bottomOfHead, topOfFoot);
    ticks();
    if (picture_.kind == Picture::Kind::StackedBars) {
      bars();
      limits(bottomOfHead);
    } else {
      limits(bottomOfHead);
      traceLines();
      lineEnds();
      marks();
      bands();
      areaNumbers();
    }
    return std::move(layout_);
  }

 private:
  double widthOf(const QString& text, const QFont& font) const {
    return std::ceil(QFontMetricsF(font).horizontalAdvance(text)) + 1.0;
  }
  double widthOf(const QString& text) const { return widthOf(text, layout_.font); }

  // Title and what the upward axis means; both wrap.
  double head() {
    double y = 2.0;
    const auto add = [&](const QString& text, const QFont& font, int index) {
      if (text.isEmpty()) return;
      const QRectF box = QFontMetricsF(font).boundingRect(
          QRectF(2.0, y, size_.width() - 4.0, 1000.0), Qt::TextWordWrap, text);
      Label label{text, {2.0, y, size_.width() - 4.0, std::ceil(box.height())}};
      label.index = index;
      layout_.titles.push_back(label);
      y += label.box.height() + 2.0;
    };
    add(picture_.title, layout_.titleFont, 0);
    add(picture_.yTitle, layout_.font, 1);
    return y + kGap;
  }

  // Legend and the rightward axis's meaning, from the bottom up; gives the top of all that.
  double foot() {
    QVector<Label> legend;
    double x = 2.0;
    double y = 0.0;
    double rowHeight = lineHeight_;
    for (const LegendEntry& entry : legendOf(picture_)) {
      const double sample = entry.kind == Sample::Part ? 18.0 : kSampleWidth;
      const double most = size_.width() - 4.0 - sample - kGap;
      const double wanted = widthOf(entry.text);
      if (x > 2.0 && x + sample + kGap + wanted > size_.width() - 2.0) {
        x = 2.0;
        y += rowHeight + 2.0;
        rowHeight = lineHeight_;
      }
      Label label{entry.text, {x + sample + kGap, y, std::min(wanted, most), lineHeight_}};
      if (wanted > most) {
        label.box.setHeight(std::ceil(
            metrics_.boundingRect(QRectF(0, 0, most, 1000.0), Qt::TextWordWrap, entry.text)
                .height()));
        rowHeight = std::max(rowHeight, label.box.height());
      }
      label.index = entry.index;
      label.kind = entry.kind;
      label.sample = {x, y, sample, lineHeight_};
      legend.push_back(label);
      x = label.box.right() + 18.0;
    }
    const double height = legend.isEmpty() ? 0.0 : y + rowHeight + 2.0;
    const double top = size_.height() - height;
    for (Label& label : legend) {
      label.box.translate(0.0, top);
      label.sample.translate(0.0, top);
    }
    layout_.legend = legend;
    double bottom = top - kGap;
    if (!picture_.xTitle.isEmpty()) {
      xTitleTop_ = bottom - lineHeight_;
      bottom = xTitleTop_;
    }
    return bottom - lineHeight_ - tickGap();
  }

  // Clear of the lowest label of the upward axis.
  double tickGap() const { return 0.5 * lineHeight_ - 1.0; }
  bool barsKind() const { return picture_.kind == Picture::Kind::StackedBars; }

  void frame(double top, double bottom) {
    const int most = std::max(1, static_cast<int>((bottom - top) / (lineHeight_ * 2.2)));
    yStep_ = niceStep(layout_.window.height(), most);
    double left = barsKind() ? 0.5 * widthOf(QStringLiteral("0:00")) : 4.0;
    if (!barsKind()) {
      for (const double v : ticksWithin(layout_.window.yFrom, layout_.window.yTo, yStep_)) {
        left = std::max(left, widthOf(tickText(v, yStep_, look_.locale)) + kGap + 2.0);
      }
    }
    double right = 16.0;
    if (picture_.kind == Picture::Kind::Lines) right = widthOf(QStringLiteral("(m)")) + 10.0;
    if (barsKind()) {
      for (const PictureStack& stack : picture_.stacks) {
        right = std::max(right, widthOf(totalText(stack)) + 10.0);
      }
    }
    limitRows_ = picture_.limits.isEmpty() ? 0 : limitRowsNeeded();
    layout_.plot = QRectF(QPointF(left, top + limitRows_ * (lineHeight_ + 2.0)),
                          QPointF(size_.width() - right, bottom));
    if (layout_.plot.height() < 20.0) layout_.plot.setHeight(20.0);
    if (layout_.plot.width() < 20.0) layout_.plot.setWidth(20.0);
    if (!picture_.xTitle.isEmpty()) {
      const double width = std::min(widthOf(picture_.xTitle), size_.width() - 4.0);
      Label label{picture_.xTitle,
                  {std::max(2.0, layout_.plot.right() - width), xTitleTop_, width, lineHeight_}};
      label.index = 2;
      layout_.titles.push_back(label);
    }
  }

  // Labels above the plot; two that would touch take two rows. A guess before the plot's width is
  // known: every row that could be needed.
  int limitRowsNeeded() const {
    int rows = 1;
    QVector<QPair<double, double>> spans;
    const double perUnit = (size_.width() - 90.0) / layout_.window.width();
    for (const PictureLimit& limit : picture_.limits) {
      const double half = 0.5 * widthOf(limit.label) + 8.0;
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

  void ticks() {
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
                  {plot.left() - kGap - width, at.y() - 0.5 * lineHeight_, width, lineHeight_}};
      label.value = v;
      label.anchor = at;
      layout_.yTicks.push_back(label);
    }
  }

  QString totalText(const PictureStack& stack) const {
    const double total = sum(stack.parts);
    if (picture_.xIsClock) return hoursAndMinutesText(total);
    const QString number = readingText(total, layout_.window.width(), false, look_.locale);
    return picture_.xUnit.isEmpty() ? number : QStringLiteral("%1 %2").arg(number, picture_.xUnit);
  }

  // Each rig's name above its bar, its total behind.
  void bars() {
    const QRectF& plot = layout_.plot;
    const auto count = static_cast<double>(std::max<qsizetype>(1, picture_.stacks.size()));
    const double pitch = plot.height() / count;
    for (qsizetype i = 0; i < picture_.stacks.size(); ++i) {
      const PictureStack& stack = picture_.stacks[i];
      const double top = plot.top() + static_cast<double>(i) * pitch;
      const double thick = std::clamp(std::min(pitch - lineHeight_ - 8.0, 0.45 * pitch), 4.0, 56.0);
      const double from = top + 0.5 * (pitch - lineHeight_ - thick) + lineHeight_;
      layout_.bars.push_back({stack.rig, from, from + thick});
      const QString name = QStringLiteral("%1 %2").arg(letterOfRig(stack.rig), stack.name);
      Label title{name, {plot.left() + 2.0, from - lineHeight_ - 1.0, 0.0, lineHeight_}};
      title.box.setWidth(std::min(widthOf(name), plot.width() - 2.0));
      layout_.barNames.push_back(title);
      const QString total = totalText(stack);
      const double end = layout_.at({std::min(sum(stack.parts), layout_.window.xTo), 0.0}).x();
      layout_.barNames.push_back(
          {total, {end + 5.0, from + 0.5 * (thick - lineHeight_), widthOf(total), lineHeight_}});
      double x = 0.0;
      for (qsizetype part = 0; part < stack.parts.size(); ++part) {
        const double left = layout_.at({x, 0.0}).x();
        x += std::max(0.0, stack.parts[part]);
        const double right = layout_.at({x, 0.0}).x();
        const QString number = QString::number(part + 1);
        const double width = widthOf(number, layout_.smallFont);
        if (stack.parts.size() < 2) continue;
        if (right - left < width + 4.0 || thick < lineHeight_ * 0.8) continue;
        Label label{number, {0.5 * (left + right - width), from, width, thick}};
        label.index = static_cast<int>(part);
        layout_.parts.push_back(label);
      }
    }
  }

  void limits(double top) {
    QVector<QRectF> taken;
    for (const PictureLimit& limit : picture_.limits) {
      if (limit.x < layout_.window.xFrom || limit.x > layout_.window.xTo) continue;
      const double width = widthOf(limit.label);
      const double x = layout_.at({limit.x, 0.0}).x();
      const double left = std::clamp(x - 0.5 * width, 0.0, std::max(0.0, size_.width() - width));
      for (int row = limitRows_ - 1; row >= 0; --row) {
        const QRectF box(left, top + row * (lineHeight_ + 2.0) - 2.0, width, lineHeight_);
        if (row > 0 && overlapsAny(box.adjusted(-kGap, 0, kGap, 0), taken)) continue;
        if (overlapsAny(box, taken)) continue;
        Label label{limit.label, box};
        label.anchor = {x, layout_.plot.top()};
        layout_.limits.push_back(label);
        taken.push_back(box);
        break;
      }
    }
  }

  // Names at the ends of lines: beside the end, or above or below where another line is, too. From
  // the right, where there is room.
  void lineEnds() {
    if (picture_.kind != Picture::Kind::Lines) return;
    QVector<Label> ends;
    for (const PictureLine& line : picture_.lines) {
      if (line.faint || line.rig < 0) continue;
      auto runs = clipped(line.points, layout_.window);
      // One that goes on thin ends where that ends.
      for (const PictureLine& other : picture_.lines) {
        const bool goesOn = other.faint && other.rig == line.rig && !line.points.isEmpty() &&
                            other.points.value(0) == line.points.back();
        if (goesOn) runs += clipped(other.points, layout_.window);
      }
      if (runs.isEmpty()) continue;
      ends.push_back({.text = letterOfRig(line.rig), .box = {}, .index = line.rig});
      ends.back().anchor = layout_.at(runs.back().back());
    }
    std::stable_sort(ends.begin(), ends.end(), [](const Label& a, const Label& b) {
      return std::pair(-a.anchor.x(), a.anchor.y()) < std::pair(-b.anchor.x(), b.anchor.y());
    });
    for (Label& end : ends) {
      const QSizeF size(widthOf(end.text), lineHeight_);
      // Below the names of lines that end higher, as far as the eye can tell.
      double from = -1e9;
      for (const Label& other : layout_.lineEnds) {
        const QPointF apart = end.anchor - other.anchor;
        if (apart.y() > 2.5 && std::abs(apart.x()) < size.width())
          from = std::max(from, other.box.center().y());
      }
      end.box = endBox(end.anchor, size, from);
      layout_.lineEnds.push_back(end);
      taken_.push_back(end.box);
    }
  }

  QRectF endBox(QPointF end, QSizeF size, double from) const {
    const QRectF within(0.0, layout_.plot.top() - 0.5 * size.height(), size_.width(),
                        layout_.plot.height() + 0.5 * size.height() - 1.0);
    QRectF best;
    double least = std::numeric_limits<double>::infinity();
    for (int row = 0; row <= 32; ++row) {
      const double off = 0.25 * row * size.height();
      const double above = end.y() - size.height() - 3.0 - off;
      const double below = end.y() + 3.0 + off;
      for (const QPointF corner : {QPointF(end.x() + 4.0, end.y() - 0.5 * size.height() - off),
                                   QPointF(end.x() + 4.0, end.y() - 0.5 * size.height() + off),
                                   QPointF(end.x() - size.width() + 2.0, above),
                                   QPointF(end.x() - size.width() + 2.0, below),
                                   QPointF(end.x() - size.width() - 4.0, below),
                                   QPointF(end.x() - size.width() - 4.0, above)}) {
        const QRectF box(corner, size);
        if (!within.contains(box) || overlapsAny(box, taken_)) continue;
        const bool inside = corner.x() < end.x() && end.x() > layout_.plot.right() - 2.0;
        const double cost = 2.0 * row + 20.0 * covered(box) + (inside ? 10.0 : 0.0) +
                            (box.top() < from ? 30.0 : 0.0);
        if (cost >= least) continue;
        least = cost;
        best = box;
      }
    }
    return best.isNull() ? QRectF(end + QPointF(4.0, -0.5 * size.height()), size) : best;
  }

  void bands() {
    for (const PictureBand& band : picture_.bands) {
      if (band.alongX) continue;
      const double width = widthOf(band.label, layout_.smallFont);
      const double low = layout_.at({0.0, std::max(band.from, layout_.window.yFrom)}).y();
      const double high = layout_.at({0.0, std::min(band.to, layout_.window.yTo)}).y();
      if (low - high < lineHeight_ || width > layout_.plot.width() - 2.0 * kGap) continue;
      const double right = layout_.plot.right() - kGap - width;
      QRectF box;
      double least = std::numeric_limits<double>::infinity();
      for (const QPointF corner :
           {QPointF(layout_.plot.left() + kGap, high + 1.0), QPointF(right, high + 1.0),
            QPointF(layout_.plot.left() + kGap, low - lineHeight_ - 1.0),
            QPointF(right, low - lineHeight_ - 1.0)}) {
        const QRectF there(corner, QSizeF(width, lineHeight_));
        if (overlapsAny(there, taken_) || covered(there) >= least) continue;
        least = covered(there);
        box = there;
      }
      if (box.isNull()) continue;
      layout_.bands.push_back({band.label, box});
      taken_.push_back(box);
    }
    if (!picture_.draggable || picture_.draggableLabel.isEmpty()) return;
    const double y = layout_.at({0.0, *picture_.draggable}).y();
    if (y < layout_.plot.top() || y > layout_.plot.bottom()) return;
    const double width = widthOf(picture_.draggableLabel);
    const double above = y - lineHeight_ - 1.0;
    const double below = y + 2.0;
    QRectF box;
    for (const double x :
         {layout_.plot.right() - width - kGap, layout_.plot.center().x() - 0.5 * width,
          layout_.plot.left() + 2.0 * kGap}) {
      for (const double top : {above, below}) {
        const QRectF there(x, top, width, lineHeight_);
        const bool inside = layout_.plot.top() <= top && there.bottom() <= layout_.plot.bottom();
        if (box.isNull() && inside && !overlapsAny(there, taken_)) box = there;
      }
    }
    if (box.isNull()) return;
    Label label{picture_.draggableLabel, box};
    label.index = 3;
    layout_.titles.push_back(label);
    taken_.push_back(box);
  }

  // How much of the lines a box would cover, in points of them.
  int covered(const QRectF& box) const {
    int count = 0;
    for (const auto& run : pixels_) {
      for (qsizetype i = 1; i < run.size(); ++i) {
        const QPointF a = run[i - 1];
        const QPointF b = run[i];
        const int pieces =
            std::max(1, static_cast<int>(std::hypot(b.x() - a.x(), b.y() - a.y()) / 4));
        for (int k = 0; k <= pieces; ++k) {
          if (box.contains(a + static_cast<double>(k) / pieces * (b - a))) ++count;
        }
      }
    }
    return count;
  }

  void traceLines() {
    for (const PictureLine& line : picture_.lines) {
      for (const Points& run : clipped(line.points, layout_.window)) {
        Points at;
        for (const QPointF& p : thinned(run, layout_.scale(), 1.0)) at.push_back(layout_.at(p));
        pixels_.push_back(at);
      }
    }
  }

  void marks() {
    for (const PictureMark& mark : picture_.marks) {
      const QPointF at = layout_.at(mark.at);
      if (!layout_.plot.adjusted(-1, -1, 1, 1).contains(at)) continue;
      Label label{mark.label, {}, mark.rig};
      label.anchor = at;
      if (!mark.label.isEmpty()) label.box = placeFor(mark.label, at);
      layout_.marks.push_back(label);
    }
  }

  bool nearerToAnother(const QRectF& box, QPointF own) const {
    const auto distance = [&box](QPointF p) {
      return std::hypot(std::max({box.left() - p.x(), p.x() - box.right(), 0.0}),
                        std::max({box.top() - p.y(), p.y() - box.bottom(), 0.0}));
    };
    return std::any_of(picture_.marks.begin(), picture_.marks.end(), [&](const PictureMark& mark) {
      const QPointF other = layout_.at(mark.at);
      return other != own && distance(other) < distance(own) + 3.0;
    });
  }

  // The place beside a mark that covers least; none where every place is taken.
  QRectF placeFor(const QString& text, QPointF at) {
    const double width = widthOf(text, layout_.smallFont);
    const double height = lineHeight_;
    const QRectF within = layout_.plot.adjusted(2, 0, -2, 0);
    QRectF best;
    double least = std::numeric_limits<double>::infinity();
    for (int ring = 0; ring < 4; ++ring) {
      const double off = 6.0 + ring * 0.8 * height;
      for (const QPointF corner :
           {QPointF(at.x() + 7.0, at.y() - off - height), QPointF(at.x() + 7.0, at.y() + off),
            QPointF(at.x() - 7.0 - width, at.y() - off - height),
            QPointF(at.x() - 7.0 - width, at.y() + off),
            QPointF(at.x() - 0.5 * width, at.y() - off - height),
            QPointF(at.x() - 0.5 * width, at.y() + off)}) {
        const QRectF box(corner, QSizeF(width, height));
        if (!within.contains(box) || overlapsAny(box, taken_)) continue;
        const double cost = covered(box) + 2.0 * ring + (nearerToAnother(box, at) ? 20.0 : 0.0);
        if (cost < least) {
          least = cost;
          best = box;
        }
      }
    }
    if (!best.isNull()) taken_.push_back(best);
    return best;
  }

  // A part's number where the part is thickest over the number's width.
  void areaNumbers() {
    QVector<double> base(picture_.areas.isEmpty() ? 0 : picture_.areas[0].size(), 0.0);
    for (qsizetype part = 0; part < picture_.areas.size(); ++part) {
      const auto& area = picture_.areas[part];
      const QString number = QString::number(part + 1);
      const double width = widthOf(number, layout_.smallFont);
      Points low, high;
      for (qsizetype i = 0; i < std::min(area.size(), base.size()); ++i) {
        low.push_back(layout_.at({area[i].x(), base[i]}));
        base[i] += area[i].y();
        high.push_back(layout_.at({area[i].x(), base[i]}));
      }
      double thickest = lineHeight_ * 0.9;
      std::optional<QPointF> middle;
      for (double x = layout_.plot.left() + width; x < layout_.plot.right() - width; x += 6.0) {
        double top = layout_.plot.top();
        double bottom = layout_.plot.bottom();
        for (const double off : {-0.8 * width, 0.0, 0.8 * width}) {
          bottom = std::min(bottom, valueAt(low, x + off).value_or(top));
          top = std::max(top, valueAt(high, x + off).value_or(bottom));
        }
        const QRectF box(x - 0.5 * width, 0.5 * (top + bottom - lineHeight_), width, lineHeight_);
        if (bottom - top <= thickest || overlapsAny(box, taken_) || covered(box) > 0) continue;
        thickest = bottom - top;
        middle = box.center();
      }
      if (!middle) continue;
      const QRectF box(middle->x() - 0.5 * width, middle->y() - 0.5 * lineHeight_, width,
                       lineHeight_);
      Label label{number, box};
      label.index = static_cast<int>(part);
      layout_.parts.push_back(label);
      taken_.push_back(box);
    }
  }

  const Picture& picture_;
  QSizeF size_;
  const ChartLook& look_;
  QFontMetricsF metrics_;
  ChartLayout layout_;
  double lineHeight_ = 0.0, xTitleTop_ = 0.0, yStep_ = 1.0, xStep_ = 1.0;
  int limitRows_ = 0;
  QVector<QRectF> taken_;
  QVector<Points> pixels_;
};

}  // namespace

QPointF ChartLayout::scale() const {
  return {plot.width() / window.width(), plot.height() / window.height()};
}

QPointF ChartLayout::at(QPointF value) const {
  return {plot.left() + (value.x() - window.xFrom) * scale().x(),
          plot.bottom() - (value.y() - window.yFrom) * scale().y()};
}

ChartLayout layOut(const Picture& picture, QSizeF size, const ChartLook& look,
                   std::optional<ChartWindow> window) {
  return Layouter(picture, size, look, window).take();
}

}  // namespace gui
