// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out one picture: frame and ticks in chart_layout.cpp, names beside lines and dots in
// chart_labels.cpp. Nobody else includes this.
#pragma once

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "gui/window/charts/chart_layout.hpp"

namespace gui {

using Label = ChartLayout::Label;
using Sample = ChartLayout::Sample;

inline constexpr double kGap = 6.0;

bool overlapsAny(const QRectF& box, const QVector<QRectF>& taken);

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
  double widthOf(const QString& text, const QFont& font) const;
  double widthOf(const QString& text) const { return widthOf(text, layout_.font); }
  // Title and what the upward axis means; both wrap.
  double head();
  // Legend and the rightward axis's meaning, from the bottom up; gives the top of all that.
  double foot();
  // Clear of the lowest label of the upward axis.
  double tickGap() const { return 0.5 * lineHeight_ - 1.0; }
  bool barsKind() const { return picture_.kind == Picture::Kind::StackedBars; }
  void frame(double top, double bottom);
  // Labels above the plot; two that would touch take two rows. A guess before the plot's width is
  // known: every row that could be needed.
  int limitRowsNeeded() const;
  void ticks();
  QString totalText(const PictureStack& stack) const;
  // Each rig's name above its bar, its total behind.
  void bars();
  void limits(double top);
  // Names at the ends of lines: beside the end, or above or below where another line is, too. From
  // the right, where there is room.
  void lineEnds();
  QRectF endBox(QPointF end, QSizeF size, double from) const;
  void bands();
  // How much of the lines a box would cover, in points of them.
  int covered(const QRectF& box) const;
  void traceLines();
  void marks();
  // One dot of each kind says what it is, where that covers nothing.
  void events();
  bool onADot(const QRectF& box) const;
  bool nearerToAnother(const QRectF& box, QPointF own) const;
  // The place beside a mark that covers least; none where every place is taken. `free`: right
  // beside it and only where nothing at all is covered.
  QRectF placeFor(const QString& text, QPointF at, bool free = false);
  // A part's number where the part is thickest over the number's width.
  void areaNumbers();

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

}  // namespace gui
