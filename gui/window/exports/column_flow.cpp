// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/column_flow.hpp"

#include <algorithm>

namespace gui {
namespace {

// Rounding must not push out what was measured to fit.
constexpr qreal kHair = 0.01;

// Of a table's end, as of a text's: less looks lost on a page of its own.
constexpr std::size_t kEnough = 4;

bool holdsAll(const Strips& strips, std::size_t from, int columns, qreal height) {
  return from + fitting(strips, from, columns, height) >= strips.size();
}

}  // namespace

qreal heightOf(const Strips& strips, std::size_t from, std::size_t count) {
  qreal height = 0.0;
  for (std::size_t i = from; i < from + count && i < strips.size(); ++i)
    height += strips[i].height + (i > from ? strips[i].gap : 0.0);
  return height;
}

std::size_t fitting(const Strips& strips, std::size_t from, qreal height) {
  std::size_t to = from;
  qreal used = 0.0;
  while (to < strips.size()) {
    used += strips[to].height + (to > from ? strips[to].gap : 0.0);
    if (used > height + kHair) break;
    ++to;
  }
  if (to == strips.size()) return to - from;
  while (to > from && strips[to - 1].holdsNext) --to;
  return to - from;
}

std::size_t fitting(const Strips& strips, std::size_t from, int columns, qreal height) {
  std::size_t to = from;
  for (int column = 0; column < columns && to < strips.size(); ++column)
    to += fitting(strips, to, height);
  return to - from;
}

qreal leavingEnough(const Strips& strips, std::size_t from, int columns, qreal most) {
  const std::size_t count = strips.size() - from;
  if (count < 3 * kEnough) return most;
  constexpr int kSteps = 20;
  for (int step = 0; step < kSteps; ++step) {
    const qreal height = most * (1.0 - 0.5 * step / kSteps);
    if (fitting(strips, from, columns, height) + kEnough <= count) return height;
  }
  return most;
}

std::optional<qreal> balanced(const Strips& strips, std::size_t from, int columns, qreal most) {
  if (!holdsAll(strips, from, columns, most)) return std::nullopt;
  qreal low = 0.0;
  qreal high = std::min(most, heightOf(strips, from, strips.size() - from));
  while (high - low > 1.0) {
    const qreal middle = 0.5 * (low + high);
    (holdsAll(strips, from, columns, middle) ? high : low) = middle;
  }
  return high;
}

}  // namespace gui
