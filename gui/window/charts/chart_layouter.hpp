// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out one picture: frame and ticks in chart_layouter.cpp, names beside lines and dots in
// chart_layouter_labels.cpp.
#pragma once

#include <QFontMetricsF>
#include <QSizeF>
#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>
#include <vector>

#include "gui/telling/picture.hpp"
#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/charts/chart_look.hpp"

namespace gui {

ChartLayout layOut(const telling::Picture& picture, QSizeF size, const ChartLook& look,
                   std::optional<ChartWindow> window = std::nullopt);
// What titles, ticks and legend of a picture so wide take of its height, rounded up; and what that
// depends on besides.
int aroundPlot(const telling::Picture& picture, int width, const ChartLook& look);
QStringList aroundTexts(const std::vector<telling::Picture>& pictures);

// The work of layOut(): its steps share what is taken already.
class Layouter {
 public:
  Layouter(const telling::Picture& picture, QSizeF size, const ChartLook& look,
           const std::optional<ChartWindow>& window);
  ChartLayout take();

 private:
  using Label = ChartLayout::Label;

  double widthOf(const QString& text, const QFont& font) const;
  double widthOf(const QString& text) const { return widthOf(text, layout_.font); }
  // Title and what the upward axis means; both wrap.
  double head();
  double xTitleWidth() const;
  // Legend and the rightward axis's meaning, from the bottom up; gives the top of all that.
  double foot();
  // Clear of the lowest label of the upward axis.
  double tickGap() const { return 0.5 * lineHeight_ - 1.0; }
  bool barsKind() const { return picture_.kind == telling::Picture::Kind::StackedBars; }
  void frame(double top, double bottom);
  // Labels above the plot; two that would touch take two rows. A guess before the plot's width is
  // known: every row that could be needed.
  int limitRowsNeeded() const;
  void ticks();
  QString totalText(const telling::PictureStack& stack) const;
  // Each rig's name above its bar, its total behind.
  void bars();
  void limits(double top);
  // Names at the ends of lines: beside the end, or above or below where another line is, too. From
  // the right, where there is room.
  void lineEnds();
  QRectF endBox(QPointF end, QSizeF size, double from) const;
  void bands();
  // Of lines that others are held against, in their accent.
  void limitNames();
  void nameAlong(const std::string& name, double y, bool always);
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
  // A part where it is thickest over the width of what names it.
  QRectF boxInArea(const QString& text, const std::vector<telling::PicturePoint>& low,
                   const std::vector<telling::PicturePoint>& high) const;
  void areaNames();
  QString partText(std::size_t part, double room) const;

  const telling::Picture& picture_;
  QSizeF size_;
  const ChartLook& look_;
  QFontMetricsF metrics_;
  ChartLayout layout_;
  double lineHeight_ = 0.0, xTitleTop_ = 0.0, yStep_ = 1.0, xStep_ = 1.0;
  int limitRows_ = 0;
  QVector<QRectF> taken_;
  Points traced_;  // along every line, from left to right
};
// Shared by the two sources of this class.
inline constexpr double kLabelGap = 6.0;
bool overlapsAny(const QRectF& box, const QVector<QRectF>& taken);

}  // namespace gui
