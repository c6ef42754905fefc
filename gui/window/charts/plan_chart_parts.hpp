// SPDX-License-Identifier: GPL-3.0-or-later
// The inside of the picture on the screen, for the sources that share it: what it is drawn from and
// kept as (plan_chart_parts_widget.cpp), what is read from it (plan_chart_parts_reading.cpp), which
// piece of it is seen (plan_chart_parts_zoom.cpp), and its menu (plan_chart_parts_menu.cpp).
#pragma once

#include <QPixmap>
#include <QPointF>
#include <QString>
#include <QStringList>
#include <optional>
#include <utility>
#include <vector>

#include "gui/window/charts/chart_window.hpp"
#include "gui/window/charts/plan_chart.hpp"

class QPainter;

namespace gui {

// A piece of a bar: the stack's place and the part's.
using BarPiece = std::pair<std::size_t, std::size_t>;

struct PlanChart::Parts {
  telling::Picture picture;
  ChartLook look;
  bool ownLook = false;
  ChartLayout layout;
  Plot plot;
  std::optional<ChartWindow> window;  // zoomed
  bool ownHeight = false;             // of it; else as high as what is seen
  std::optional<ChartWindow> held;    // while the line is in the hand: axes that move would pull it
  std::optional<double> crosshair;
  std::optional<BarPiece> piece;  // pointed at
  QPixmap kept;
  bool stale = true;      // laid out for something else
  bool repaints = false;  // laid out, but to be drawn otherwise
  enum class Hand { Free, Panning, Dragging, Choosing } hand = Hand::Free;
  QPointF grabbed;
  ChartWindow grabbedWindow;
  std::optional<int> chosen;  // the rig whose name is pressed

  double xAt(double pixel) const {
    return layout.window.xFrom + (pixel - layout.plot.left()) / layout.scale().x();
  }
  double yAt(double pixel) const {
    return layout.window.yFrom + (layout.plot.bottom() - pixel) / layout.scale().y();
  }
  bool zoomable() const { return picture.kind != telling::Picture::Kind::StackedBars; }

  // plan_chart_parts_reading.cpp
  bool onGrip(QPointF at) const;
  QString eventAt(int rig, double x, const ChartWindow& w) const;
  const telling::PictureMark* markAt(QPointF at) const;  // if it tells of an event
  std::optional<double> eventAfter(double x, double sign) const;
  std::optional<int> namedAt(QPointF at) const;  // the rig whose name stands there
  std::optional<int> rigAt(QPointF at) const;    // whose name, line or bar is there
  std::optional<BarPiece> pieceAt(QPointF at) const;
  std::optional<BarPiece> pieceBeside(int right, int down) const;
  QString withUnit(const QString& number, const std::string& unit) const;
  QString readAlongY(double value) const;
  QStringList readOut() const;
  QStringList pieceReadOut() const;
  QString readOutOf(const telling::PictureLine& line, double value, const ChartWindow& w) const;
  void drawReadOut(QPainter& painter) const;
  void drawBeside(QPainter& painter, double x) const;
  void drawBox(QPainter& painter, const QStringList& lines, QPointF at) const;

  // plan_chart_parts_zoom.cpp
  ChartWindow visible() const;
  void zoom(double factor, double xCentre, double yCentre, bool upward);
  void pan(double byX, double byY);
  void settle(ChartWindow w, const ChartWindow& all);
  void showOnly(double xFrom, double xTo);
};

// A stage as all rigs together spend it.
struct PictureStage {
  std::string name;
  double from = 0.0, to = 0.0;
};
std::vector<PictureStage> stagesOf(const telling::Picture& picture);

}  // namespace gui
