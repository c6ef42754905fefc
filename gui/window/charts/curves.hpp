// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers on their way to a chart: ticks, cuts at the window's edge, thinning, dashes. Knows the
// locale, not the chart.
#pragma once

#include <QLocale>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QVector>
#include <optional>
#include <vector>

#include "gui/telling/picture.hpp"

namespace gui {

// What part of the plane is shown.
struct ChartWindow {
  double xFrom = 0.0, xTo = 1.0, yFrom = 0.0, yTo = 1.0;
  double width() const { return xTo - xFrom; }
  double height() const { return yTo - yFrom; }
};

using Points = QVector<QPointF>;
inline QPointF pointOf(const telling::PicturePoint& p) { return {p.x, p.y}; }
Points pointsOf(const std::vector<telling::PicturePoint>& line);

// The smallest step of 1, 2 or 5 times a power of ten that makes at most `most` steps of `range`;
// with `clock` one of the steps a clock has, in minutes. Range > 0, most >= 1.
double niceStep(double range, int most, bool clock = false);
// Multiples of the step within [from, to].
QVector<double> ticksWithin(double from, double to, double step);
// A tick with as many decimals as the step needs.
QString tickText(double value, double step, const QLocale& locale);
// "2:05"; minutes.
QString hoursAndMinutesText(double minutes);

// The parts of a line inside the window, cut at its edges.
QVector<Points> clipped(const Points& line, const ChartWindow& window);
// Douglas-Peucker: no point of the original is farther than `tolerance` pixels from the result.
// `scale` is pixels per unit along x and y.
Points thinned(const Points& line, QPointF scale, double tolerance = 0.25);
// The line as drawn dashes, in the line's own units, with a NaN point between them: a chart draws
// these much faster than a dashed pen. `pattern` in pixels, drawn first; {} gives the line itself.
Points dashed(const Points& line, const QVector<qreal>& pattern, QPointF scale);

// By straight interpolation; empty outside the line.
std::optional<double> valueAt(const Points& line, double x);

}  // namespace gui
