// SPDX-License-Identifier: GPL-3.0-or-later
// A picture as plain data: what is drawn, in the reader's units and language, without a word about
// how. The chart, the table beside it, the exports and the tests all read this.
#pragma once

#include <QPointF>
#include <QString>
#include <QVector>
#include <optional>

namespace gui {

// What a rig is about along a piece of its line, told where a person points.
struct QtPicturePhase {
  double until = 0.0;  // x; ascending
  QString name;
};

// Rigs keep their place, dash and shade in every picture: `rig` is the index in the plan.
struct QtPictureLine {
  int rig = 0;
  QString name;
  QVector<QPointF> points;  // finite, x ascending; a gap is a second line of the same rig
  bool faint = false;       // a companion, such as the same rig without its jacket
  QVector<QtPicturePhase> phases = {};
};

struct QtPictureMark {  // an event, an operating point
  int rig = 0;
  QPointF at;
  QString label;       // short; empty: a dot
  QString event = {};  // what happens there: told where a person points, and beside one such dot
};

struct QtPictureBand {  // a published range of y (or of x), with its source
  double from = 0.0;
  double to = 0.0;
  bool alongX = false;
  QString label;
  QString source;
  bool shaded = true;  // else only its label stands there
};

struct QtPictureLimit {  // a vertical line, e.g. what a circuit can carry
  double x = 0.0;
  QString label;
};

struct QtPictureStack {  // one bar of stacked parts
  int rig = 0;
  QString name;
  QVector<double> parts;  // same order and length as QtPicture::partNames
};

struct QtPicture {
  enum class Kind { Lines, Areas, StackedBars };
  Kind kind = Kind::Lines;
  QString title;
  QString xTitle, yTitle;  // with their units
  QString xUnit, yUnit;    // for the read-out; empty: none
  bool xIsClock = false;   // minutes shown as h:mm
  // The window first shown, where it is not simply all the data.
  std::optional<double> xFrom, xTo, yFrom, yTo;
  bool exactly = false;          // no rounding of these outwards: a piece that a person zoomed to
  QVector<QtPictureLine> lines;  // Lines
  QVector<QtPictureMark> marks;
  QVector<QtPictureBand> bands;
  QVector<QtPictureLimit> limits;
  QVector<QString> partNames;       // Areas and StackedBars
  QVector<QtPictureStack> stacks;   // StackedBars
  QVector<QVector<QPointF>> areas;  // Areas: one per part, stacked from the bottom up by the chart
  // A horizontal line a person may drag, e.g. the wanted time; and what dragging it means.
  std::optional<double> draggable;
  QString draggableLabel;
};

// The table with the same numbers: first column says what, one column a rig.
struct PictureTable {
  QVector<QString> head;
  QVector<QVector<QString>> rows;
};

}  // namespace gui
