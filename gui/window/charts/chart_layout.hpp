// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything in a picture goes: worked out before a line is drawn, so that a test can ask
// whether labels overlap or are cut.
#pragma once

#include <QFont>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QVector>

#include "gui/window/charts/chart_legend.hpp"
#include "gui/window/charts/curves.hpp"

namespace gui {

// All in logical pixels of the area.
struct ChartLayout {
  struct Label {
    QString text;
    QRectF box;
    int index = 0;        // of rig or part
    double value = 0.0;   // of a tick
    QPointF anchor = {};  // what it names
    QRectF sample = {};   // beside a legend's text
    LegendSample kind = LegendSample::None;
    bool isOut = false;   // of a legend: its rig is not drawn
    bool isRead = false;  // of a mark: a person's reading
    double reach = 0.0;   // of such: up and down, as far as its last digit leaves open
  };
  struct Bar {
    int rig = 0;
    double from = 0.0, to = 0.0;  // the bar's upper and lower edge
  };
  ChartWindow window;
  QRectF plot;
  QFont font, titleFont, smallFont;
  QVector<Label> xTicks, yTicks, lineEnds, marks, bands, limits, legend, titles;
  QVector<Label> parts;     // names inside areas and bars, or the legend's numbers
  QVector<Label> barNames;  // and totals
  QVector<Bar> bars;

  QPointF at(QPointF value) const;
  QPointF scale() const;  // pixels per unit
};

}  // namespace gui
