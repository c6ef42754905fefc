// SPDX-License-Identifier: GPL-3.0-or-later
// What a picture's legend has to name.
#pragma once

#include <QString>
#include <QVector>

#include "gui/telling/picture.hpp"

namespace gui {

// What is drawn beside a legend's text.
enum class LegendSample { None, Line, FaintLine, Part, Band, PlainLine, Outline };
struct LegendEntry {
  QString text;
  int index = 0;  // of rig or part
  LegendSample kind = LegendSample::Line;
  bool isOut = false;  // of the picture: a click brings it back
};
// In the order in which they stand.
QVector<LegendEntry> legendOf(const telling::Picture& picture);

}  // namespace gui
