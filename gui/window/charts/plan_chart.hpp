// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures drawn: on the screen, and on any painter at any size.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QSize>
#include <QStringList>
#include <QWidget>
#include <memory>
#include <optional>

#include "gui/telling/picture.hpp"
#include "gui/window/charts/chart_layouter.hpp"

class QMenu;
class QPainter;

namespace gui {

// Draws chart and legend into `area`, in the painter's logical pixels. Vector devices get vectors.
void drawPicture(QPainter& painter, const QRectF& area, const telling::Picture& picture,
                 const ChartLook& look);
QImage pictureImage(const telling::Picture& picture, QSize size, const ChartLook& look,
                    qreal sharpness = 1.0);
// An SVG document of that size in pixels.
QByteArray pictureSvg(const telling::Picture& picture, QSize size, const ChartLook& look);

// A chart kept from one picture to the next, so that an edit only replaces its points.
class Plot {
 public:
  Plot();
  ~Plot();
  // Vector devices draw lines as paths: they know no gaps in a polyline.
  void show(const telling::Picture& picture, const ChartLayout& layout, const ChartLook& look,
            bool vector = false);
  // The whole picture, text included, with its upper left corner at the painter's origin.
  void draw(QPainter& painter) const;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

// The picture on the screen: cross-hair with a read-out of all rigs (Ctrl and an arrow go from
// event to event; in bars from piece to piece), zoom (wheel, +, -, 0; with Shift upward, too), pan
// (drag, arrows with Shift), and the draggable line. A rig that is pointed at stands out; a click
// on its name asks to take it out, or to bring it back. Its context menu has all of that.
class PlanChart : public QWidget {
  Q_OBJECT

 public:
  explicit PlanChart(QWidget* parent = nullptr);
  ~PlanChart() override;

  void show(const telling::Picture& picture);
  using QWidget::show;
  const telling::Picture& picture() const;
  // The line alone; one that is in the hand only takes the label.
  void setDraggable(double y, const QString& label);
  // All of it while it is zoomed out.
  ChartWindow visibleWindow() const;
  bool isZoomed() const;
  void setLook(const ChartLook& look);  // else from palette, font and locale
  void resetZoom();
  void zoomAtCrosshair(double factor, bool upward);
  void showOnly(double xFrom, double xTo);  // as high as the lines are there
  // This rig stands out of the others, or none does.
  void lift(std::optional<int> rig);
  std::optional<int> lifted() const;
  // Zoom, the rigs that are drawn, a copy and what explains it: also for a menu of the window.
  void fillMenu(QMenu& menu);
  void copyPicture();

  // Cross-hair at this x, read-out as text; empty without a cross-hair.
  void setCrosshair(double x);
  void clearCrosshair();
  QStringList readOut() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 Q_SIGNALS:
  void dragged(double y);     // the draggable line, while it moves
  void handChanged(bool on);  // the line is taken, let go
  void rigPointed(int rig);   // it stands out now; -1: none
  void rigToggled(int rig);   // to be left out of pictures, or drawn again
  void pointedAt();           // with the mouse
  void explanationWanted();   // of what it shows; offered where somebody has one
  void painted();             // after each paint, for measurements

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  static constexpr double kZoomStep = 1.5;
  void point(std::optional<int> rig);
  void setPiece(std::size_t stack, std::size_t part);
  void pieceByKey(QKeyEvent* event);
  void fillRigs(QMenu& menu);

  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace gui
