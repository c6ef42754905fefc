// SPDX-License-Identifier: GPL-3.0-or-later
// Names beside lines, dots, bands and areas: where they cover least, and nowhere else's place.
#include <algorithm>
#include <cmath>
#include <limits>

#include "gui/telling/curve.hpp"
#include "gui/window/charts/chart_layouter.hpp"

namespace gui {

using telling::Picture;
using telling::PictureBand;
using telling::PictureLine;
using telling::PictureMark;
using telling::PicturePoint;

bool overlapsAny(const QRectF& box, const QVector<QRectF>& taken) {
  return std::any_of(taken.begin(), taken.end(),
                     [&](const QRectF& other) { return other.intersects(box); });
}

void Layouter::lineEnds() {
  if (picture_.kind != Picture::Kind::Lines) return;
  QVector<Label> ends;
  for (const PictureLine& line : picture_.lines) {
    if (line.faint || line.rig < 0) continue;
    auto runs = clipped(pointsOf(line.points), layout_.window);
    // One that goes on thin ends where that ends.
    for (const PictureLine& other : picture_.lines) {
      const bool goesOn = other.faint && other.rig == line.rig && !line.points.empty() &&
                          !other.points.empty() && other.points.front() == line.points.back();
      if (goesOn) runs += clipped(pointsOf(other.points), layout_.window);
    }
    if (runs.isEmpty()) continue;
    // The name in the legend has the word.
    const bool marked = !telling::markOfRig(picture_, line.rig).empty();
    const QString letter = picture_.lettered ? letterInPicture(picture_, line.rig) : QString();
    const QString text =
        marked ? letter + QString::fromStdString(std::string(telling::kMarkShape)) : letter;
    if (text.isEmpty()) continue;
    ends.push_back({.text = text, .box = {}, .index = line.rig});
    ends.back().anchor = layout_.at(runs.back().back());
  }
  std::stable_sort(ends.begin(), ends.end(), [](const Label& a, const Label& b) {
    return std::pair(-a.anchor.x(), a.anchor.y()) < std::pair(-b.anchor.x(), b.anchor.y());
  });
  QFont strong = layout_.font;  // as they are drawn
  strong.setBold(true);
  for (Label& end : ends) {
    const QSizeF size(widthOf(end.text, strong), lineHeight_);
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

QRectF Layouter::endBox(QPointF end, QSizeF size, double from) const {
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
      const double apart = 2.0 * row + (inside ? 10.0 : 0.0) + (box.top() < from ? 30.0 : 0.0);
      if (apart >= least) continue;
      const double cost = apart + 20.0 * covered(box);
      if (cost >= least) continue;
      least = cost;
      best = box;
    }
  }
  return best.isNull() ? QRectF(end + QPointF(4.0, -0.5 * size.height()), size) : best;
}

void Layouter::bands() {
  for (const PictureBand& band : picture_.bands) {
    if (band.alongX) continue;
    const QString text = QString::fromStdString(band.label);
    const double width = widthOf(text, layout_.smallFont);
    const double low = layout_.at({0.0, std::max(band.from, layout_.window.yFrom)}).y();
    const double high = layout_.at({0.0, std::min(band.to, layout_.window.yTo)}).y();
    if (low - high < lineHeight_ || width > layout_.plot.width() - 2.0 * kLabelGap) continue;
    const double right = layout_.plot.right() - kLabelGap - width;
    QRectF box;
    double least = std::numeric_limits<double>::infinity();
    for (const QPointF corner :
         {QPointF(layout_.plot.left() + kLabelGap, high + 1.0), QPointF(right, high + 1.0),
          QPointF(layout_.plot.left() + kLabelGap, low - lineHeight_ - 1.0),
          QPointF(right, low - lineHeight_ - 1.0)}) {
      const QRectF there(corner, QSizeF(width, lineHeight_));
      if (overlapsAny(there, taken_) || covered(there) >= least) continue;
      least = covered(there);
      box = there;
    }
    if (box.isNull()) continue;
    layout_.bands.push_back({text, box});
    taken_.push_back(box);
  }
  if (!picture_.draggable || picture_.draggableLabel.empty()) return;
  nameAlong(picture_.draggableLabel, *picture_.draggable, false);
}

void Layouter::limitNames() {
  for (const PictureLine& line : picture_.lines)
    if (line.limit && !line.points.empty()) nameAlong(line.name, line.points.back().y, true);
}

// Above or below a level line, as far to its end as nothing else stands there.
void Layouter::nameAlong(const std::string& name, double y, bool always) {
  const QString text = QString::fromStdString(name);
  const double height = layout_.at({0.0, y}).y();
  if (height < layout_.plot.top() - 1.0 || height > layout_.plot.bottom() + 1.0) return;
  const double width = widthOf(text);
  const double right = layout_.plot.right() - width - kLabelGap;
  const double left = std::min(right, layout_.plot.left() + 2.0 * kLabelGap);
  QRectF best;
  double least = std::numeric_limits<double>::infinity();
  for (const double share : {1.0, 0.75, 0.5, 0.25, 0.0}) {
    for (const double top : {height - lineHeight_ - 1.0, height + 2.0}) {
      const QRectF there(left + share * (right - left), top, width, lineHeight_);
      const bool inside = layout_.plot.top() <= top && there.bottom() <= layout_.plot.bottom();
      if (!inside) continue;
      const bool taken = overlapsAny(there, taken_);
      if (taken && !always) continue;
      const double cost = covered(there) + (1.0 - share) * 2.0 + (taken ? 1e6 : 0.0);
      if (cost >= least) continue;
      least = cost;
      best = there;
    }
  }
  if (best.isNull()) return;
  Label label{text, best};
  label.index = 3;
  layout_.titles.push_back(label);
  taken_.push_back(best);
}

// Asked for hundreds of places of every name: only those side by side with the box are looked at.
int Layouter::covered(const QRectF& box) const {
  const auto from =
      std::lower_bound(traced_.begin(), traced_.end(), box.left(),
                       [](const QPointF& point, double left) { return point.x() < left; });
  const auto to =
      std::upper_bound(from, traced_.end(), box.right(),
                       [](double right, const QPointF& point) { return right < point.x(); });
  return static_cast<int>(std::count_if(from, to, [&](const QPointF& point) {
    return box.top() <= point.y() && point.y() <= box.bottom();
  }));
}

void Layouter::traceLines() {
  constexpr double kApart = 4.0;  // px, about
  for (const PictureLine& line : picture_.lines) {
    for (const Points& run : clipped(pointsOf(line.points), layout_.window)) {
      Points at;
      for (const QPointF& p : thinned(run, layout_.scale(), 1.0)) at.push_back(layout_.at(p));
      for (qsizetype i = 1; i < at.size(); ++i) {
        const QPointF way = at[i] - at[i - 1];
        const int pieces = std::max(1, static_cast<int>(std::hypot(way.x(), way.y()) / kApart));
        for (int k = 0; k <= pieces; ++k)
          traced_.push_back(at[i - 1] + static_cast<double>(k) / pieces * way);
      }
    }
  }
  std::sort(traced_.begin(), traced_.end(),
            [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
}

void Layouter::marks() {
  for (const PictureMark& mark : picture_.marks) {
    const QPointF at = layout_.at(pointOf(mark.at));
    if (!layout_.plot.adjusted(-1, -1, 1, 1).contains(at)) continue;
    Label label{QString::fromStdString(mark.label), {}, mark.rig};
    label.anchor = at;
    if (mark.rounding) {
      label.isRead = true;
      label.reach = *mark.rounding * layout_.scale().y();
    }
    if (!label.text.isEmpty()) label.box = placeFor(label.text, at);
    layout_.marks.push_back(label);
  }
  events();
}

void Layouter::events() {
  QStringList told;
  for (const PictureMark& mark : picture_.marks) {
    const QString event = QString::fromStdString(mark.event);
    if (event.isEmpty() || !mark.label.empty() || told.contains(event)) continue;
    const QPointF at = layout_.at(pointOf(mark.at));
    const auto dot = std::find_if(
        layout_.marks.begin(), layout_.marks.end(),
        [&](const Label& label) { return label.anchor == at && label.index == mark.rig; });
    if (dot == layout_.marks.end() || !dot->box.isEmpty()) continue;
    dot->box = placeFor(event, at, true);
    if (dot->box.isEmpty()) continue;
    dot->text = event;
    told += event;
  }
}

bool Layouter::onADot(const QRectF& box) const {
  constexpr double kDot = 4.5;  // pixels
  return std::any_of(layout_.marks.begin(), layout_.marks.end(), [&](const Label& mark) {
    return box.adjusted(-kDot, -kDot, kDot, kDot).contains(mark.anchor);
  });
}

bool Layouter::nearerToAnother(const QRectF& box, QPointF own) const {
  const auto distance = [&box](QPointF p) {
    return std::hypot(std::max({box.left() - p.x(), p.x() - box.right(), 0.0}),
                      std::max({box.top() - p.y(), p.y() - box.bottom(), 0.0}));
  };
  return std::any_of(picture_.marks.begin(), picture_.marks.end(), [&](const PictureMark& mark) {
    const QPointF other = layout_.at(pointOf(mark.at));
    return other != own && distance(other) < distance(own) + 3.0;
  });
}

QRectF Layouter::placeFor(const QString& text, QPointF at, bool free) {
  const double width = widthOf(text, layout_.smallFont);
  const double height = lineHeight_;
  const QRectF within = layout_.plot.adjusted(2, 0, -2, 0);
  QRectF best;
  double least = std::numeric_limits<double>::infinity();
  for (int ring = 0; ring < (free ? 1 : 4); ++ring) {
    const double off = 6.0 + ring * 0.8 * height;
    for (const QPointF corner :
         {QPointF(at.x() + 7.0, at.y() - off - height), QPointF(at.x() + 7.0, at.y() + off),
          QPointF(at.x() - 7.0 - width, at.y() - off - height),
          QPointF(at.x() - 7.0 - width, at.y() + off),
          QPointF(at.x() - 0.5 * width, at.y() - off - height),
          QPointF(at.x() - 0.5 * width, at.y() + off)}) {
      const QRectF box(corner, QSizeF(width, height));
      if (!within.contains(box) || overlapsAny(box, taken_)) continue;
      const bool crowded = overlapsAny(box.adjusted(-kLabelGap, 0, kLabelGap, 0), taken_);
      if (free && (crowded || covered(box) > 0 || onADot(box) || nearerToAnother(box, at)))
        continue;
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

// Where an area is the thickest and the text lies within it; nothing where it nowhere does.
QRectF Layouter::boxInArea(const QString& text, const std::vector<PicturePoint>& low,
                           const std::vector<PicturePoint>& high) const {
  const double width = widthOf(text, layout_.smallFont);
  double thickest = lineHeight_ * 0.9;
  QRectF best;
  for (double x = layout_.plot.left() + width; x < layout_.plot.right() - width; x += 6.0) {
    double top = layout_.plot.top();
    double bottom = layout_.plot.bottom();
    for (const double off : {-0.8, -0.4, 0.0, 0.4, 0.8}) {
      bottom = std::min(bottom, telling::valueAt(low, x + off * width).value_or(top));
      top = std::max(top, telling::valueAt(high, x + off * width).value_or(bottom));
    }
    const QRectF box(x - 0.5 * width, 0.5 * (top + bottom - lineHeight_), width, lineHeight_);
    if (bottom - top <= thickest || overlapsAny(box, taken_) || covered(box) > 0) continue;
    thickest = bottom - top;
    best = box;
  }
  return best;
}

// By its name where that lies within the area, else by the number that the legend has.
void Layouter::areaNames() {
  std::vector<double> base(picture_.areas.empty() ? 0 : picture_.areas[0].size(), 0.0);
  for (std::size_t part = 0; part < picture_.areas.size(); ++part) {
    const auto& area = picture_.areas[part];
    std::vector<PicturePoint> low, high;  // in pixels
    const auto atPixel = [this](double x, double y) -> PicturePoint {
      const QPointF at = layout_.at({x, y});
      return {at.x(), at.y()};
    };
    for (std::size_t i = 0; i < std::min(area.size(), base.size()); ++i) {
      low.push_back(atPixel(area[i].x, base[i]));
      base[i] += area[i].y;
      high.push_back(atPixel(area[i].x, base[i]));
    }
    QStringList texts{QString::number(part + 1)};
    if (part < picture_.partNames.size())
      texts.prepend(QString::fromStdString(picture_.partNames[part]));
    for (const QString& text : texts) {
      const QRectF box = boxInArea(text, low, high);
      if (box.isNull()) continue;
      Label label{text, box};
      label.index = static_cast<int>(part);
      layout_.parts.push_back(label);
      taken_.push_back(box);
      break;
    }
  }
}

}  // namespace gui
