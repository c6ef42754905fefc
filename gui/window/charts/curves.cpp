// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/curves.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

namespace gui {
namespace {

constexpr std::array kClockSteps{1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 180.0, 360.0, 720.0};

// Liang & Barsky (1984): the part of a segment inside a window, as fractions of it.
std::optional<std::pair<double, double>> partInside(QPointF a, QPointF b,
                                                    const ChartWindow& window) {
  const QPointF way = b - a;
  double from = 0.0;
  double to = 1.0;
  const std::array<std::pair<double, double>, 4> edges{{{-way.x(), a.x() - window.xFrom},
                                                        {way.x(), window.xTo - a.x()},
                                                        {-way.y(), a.y() - window.yFrom},
                                                        {way.y(), window.yTo - a.y()}}};
  for (const auto& [p, q] : edges) {
    if (p == 0.0) {
      if (q < 0.0) return std::nullopt;
      continue;
    }
    const double at = q / p;
    if (p < 0.0) {
      from = std::max(from, at);
    } else {
      to = std::min(to, at);
    }
    if (from > to) return std::nullopt;
  }
  return std::pair{from, to};
}

double distanceFrom(QPointF p, QPointF a, QPointF b) {
  const QPointF way = b - a;
  const double length = std::hypot(way.x(), way.y());
  if (length == 0.0) return std::hypot(p.x() - a.x(), p.y() - a.y());
  return std::abs(way.x() * (p.y() - a.y()) - way.y() * (p.x() - a.x())) / length;
}

}  // namespace

Points pointsOf(const std::vector<telling::PicturePoint>& line) {
  Points points;
  points.reserve(static_cast<qsizetype>(line.size()));
  for (const telling::PicturePoint& p : line) points.push_back(pointOf(p));
  return points;
}

double niceStep(double range, int most, bool clock) {
  const double least = range / std::max(most, 1);
  if (!(least > 0.0) || !std::isfinite(least)) return 1.0;
  if (clock) {
    for (const double step : kClockSteps) {
      if (step >= least) return step;
    }
    return 1440.0 * std::ceil(least / 1440.0);
  }
  const double decade = std::pow(10.0, std::floor(std::log10(least)));
  for (const double digit : {1.0, 2.0, 5.0, 10.0}) {
    if (digit * decade >= least * (1.0 - 1e-9)) return digit * decade;
  }
  return 10.0 * decade;
}

QVector<double> ticksWithin(double from, double to, double step) {
  QVector<double> ticks;
  if (!(step > 0.0) || !((to - from) / step < 1000.0)) return ticks;
  const double slack = 1e-6;
  const auto first = static_cast<long long>(std::ceil(from / step - slack));
  const auto last = static_cast<long long>(std::floor(to / step + slack));
  for (long long i = first; i <= last; ++i) ticks.push_back(static_cast<double>(i) * step);
  return ticks;
}

QString tickText(double value, double step, const QLocale& locale) {
  const int decimals = step >= 1.0 ? 0 : static_cast<int>(std::ceil(-std::log10(step) - 1e-9));
  QLocale plain = locale;
  plain.setNumberOptions(QLocale::OmitGroupSeparator);
  // "-0" is a rounding left-over, not a number.
  return plain.toString(std::abs(value) < 0.5 * std::pow(10.0, -decimals) ? 0.0 : value, 'f',
                        decimals);
}

QString hoursAndMinutesText(double minutes) {
  const long long whole = std::llround(minutes);
  const QString sign = whole < 0 ? QStringLiteral("-") : QString();
  const long long size = std::abs(whole);
  return sign + QStringLiteral("%1:%2").arg(size / 60).arg(size % 60, 2, 10, QLatin1Char('0'));
}

QVector<Points> clipped(const Points& line, const ChartWindow& window) {
  QVector<Points> runs;
  if (line.size() == 1) {
    if (partInside(line[0], line[0], window)) runs.push_back(line);
    return runs;
  }
  bool open = false;
  for (qsizetype i = 1; i < line.size(); ++i) {
    const QPointF a = line[i - 1];
    const QPointF b = line[i];
    const auto part = partInside(a, b, window);
    if (!part) {
      open = false;
      continue;
    }
    if (!open || part->first > 0.0) runs.push_back({a + part->first * (b - a)});
    runs.back().push_back(part->second < 1.0 ? a + part->second * (b - a) : b);
    open = part->second >= 1.0;
  }
  return runs;
}

Points thinned(const Points& line, QPointF scale, double tolerance) {
  if (line.size() < 3) return line;
  Points pixels;
  pixels.reserve(line.size());
  for (const QPointF& p : line) pixels.push_back({p.x() * scale.x(), p.y() * scale.y()});
  QVector<bool> keep(line.size(), false);
  keep.front() = keep.back() = true;
  QVector<std::pair<qsizetype, qsizetype>> open{{0, line.size() - 1}};
  while (!open.isEmpty()) {
    const auto [first, last] = open.takeLast();
    double farthest = tolerance;
    qsizetype at = -1;
    for (qsizetype i = first + 1; i < last; ++i) {
      const double off = distanceFrom(pixels[i], pixels[first], pixels[last]);
      if (off > farthest) {
        farthest = off;
        at = i;
      }
    }
    if (at < 0) continue;
    keep[at] = true;
    open.push_back({first, at});
    open.push_back({at, last});
  }
  Points result;
  for (qsizetype i = 0; i < line.size(); ++i) {
    if (keep[i]) result.push_back(line[i]);
  }
  return result;
}

Points dashed(const Points& line, const QVector<qreal>& pattern, QPointF scale) {
  if (pattern.isEmpty() || line.size() < 2) return line;
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  Points result{line.front()};
  int piece = 0;
  double left = pattern[0];
  for (qsizetype i = 1; i < line.size(); ++i) {
    QPointF at = line[i - 1];
    const QPointF end = line[i];
    double length = std::hypot((end.x() - at.x()) * scale.x(), (end.y() - at.y()) * scale.y());
    while (length > left) {
      at += left / length * (end - at);
      length -= left;
      const bool drawn = piece % 2 == 0;
      result.push_back(at);
      if (drawn) result.push_back({kNone, kNone});
      piece = (piece + 1) % static_cast<int>(pattern.size());
      left = pattern[piece];
    }
    left -= length;
    if (piece % 2 == 0) result.push_back(end);
  }
  if (std::isnan(result.back().x())) result.pop_back();
  return result;
}

std::optional<double> valueAt(const Points& line, double x) {
  if (line.isEmpty() || !(line.front().x() <= x && x <= line.back().x())) return std::nullopt;
  const auto after = std::lower_bound(line.begin(), line.end(), x,
                                      [](const QPointF& p, double to) { return p.x() < to; });
  if (after == line.begin()) return after->y();
  const QPointF b = *after;
  const QPointF a = *(after - 1);
  if (b.x() <= a.x()) return b.y();
  return a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
}

}  // namespace gui
