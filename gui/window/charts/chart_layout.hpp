// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything in a picture goes: worked out before a line is drawn, so that a test can ask
// whether labels overlap or are cut.
#pragma once

#include <QColor>
#include <QFont>
#include <QLocale>
#include <QPalette>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>

#include "gui/window/charts/curves.hpp"
#include "gui/window/charts/picture.hpp"

namespace gui {

// Everything about a picture's look that is not in the picture.
struct ChartLook {
  QColor paper, ink, quietInk, grid, bandFill, accent;
  QFont font;
  QLocale locale;  // for the decimal sign of ticks and read-outs
  bool dark = false;
};
ChartLook lookOf(const QPalette& palette, const QFont& font, const QLocale& locale = QLocale());
// Black on white at 9 pt in a named font, whatever the screen looks like.
ChartLook paperLook(const QLocale& locale = QLocale());

// Shade of a rig's line and of a stacked part; told apart by lightness, not by hue.
QColor shadeOfRig(int rig, const ChartLook& look);
QColor shadeOfPart(int part, int parts, const ChartLook& look);
// Black or white, whichever is read better on it.
QColor inkOn(const QColor& shade);
// Drawn and missing lengths in multiples of the line's width; {} is solid.
QVector<qreal> dashesOfRig(int rig);
// "(a)", "(b)" ...
QString letterOfRig(int rig);
// As WCAG 2.1 defines it, 1 to 21.
double contrastRatio(const QColor& a, const QColor& b);

inline constexpr double kLineWidth = 2.0;
inline constexpr double kFaintWidth = 1.2;

// All in logical pixels of the area.
struct ChartLayout {
  enum class Sample { None, Line, FaintLine, Part, Band, PlainLine };
  struct Label {
    QString text;
    QRectF box;
    int index = 0;        // of rig or part
    double value = 0.0;   // of a tick
    QPointF anchor = {};  // what it names
    QRectF sample = {};   // beside a legend's text
    Sample kind = Sample::None;
  };
  struct Bar {
    int rig = 0;
    double from = 0.0, to = 0.0;  // the bar's upper and lower edge
  };
  ChartWindow window;
  QRectF plot;
  QFont font, titleFont, smallFont;
  QVector<Label> xTicks, yTicks, lineEnds, marks, bands, limits, legend, titles;
  QVector<Label> parts;     // numbers inside areas and bars
  QVector<Label> barNames;  // and totals
  QVector<Bar> bars;

  QPointF at(QPointF value) const;
  QPointF scale() const;  // pixels per unit
};
// What a legend has to name, in its order.
struct LegendEntry {
  QString text;
  int index = 0;
  ChartLayout::Sample kind = ChartLayout::Sample::Line;
};
QVector<LegendEntry> legendOf(const Picture& picture);
// All data, rounded outwards where nothing else is asked.
ChartWindow fullWindow(const Picture& picture);
ChartLayout layOut(const Picture& picture, QSizeF size, const ChartLook& look,
                   std::optional<ChartWindow> window = std::nullopt);
// What titles, ticks and legend of a picture so wide take of its height, rounded up; and what that
// depends on besides.
int aroundPlot(const Picture& picture, int width, const ChartLook& look);
QStringList aroundTexts(const QVector<Picture>& pictures);
// One value along an axis as text, finer than a tick.
QString readingText(double value, double range, bool clock, const QLocale& locale);

}  // namespace gui
