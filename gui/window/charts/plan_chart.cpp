// SPDX-License-Identifier: GPL-3.0-or-later
// The one file that knows Qt Charts. The chart draws what follows the data (lines, areas, bars);
// all text, ticks and marks are placed by the layout and drawn here, since the chart's own axis
// labels and legend are cut off when room is short.
#include "gui/window/charts/plan_chart.hpp"

#include <QAreaSeries>
#include <QBarCategoryAxis>
#include <QBarSet>
#include <QBuffer>
#include <QChart>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QHorizontalStackedBarSeries>
#include <QLegend>
#include <QLineSeries>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QSvgGenerator>
#include <QValueAxis>
#include <algorithm>
#include <cmath>
#include <limits>

#include "gui/telling/curve.hpp"
#include "gui/window/charts/chart_labels.hpp"
#include "gui/window/charts/chart_washes.hpp"
#include "gui/window/charts/rig_swatch.hpp"

namespace gui {
namespace {

constexpr double kLiftedWidth = 3.0;
const QVector<qreal> kOutline{2.0, 3.0};  // pixels, of what was thought before
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
using Label = ChartLayout::Label;
using Sample = LegendSample;
using telling::Picture;
using telling::PictureBand;
using telling::PictureLine;
using telling::PicturePoint;

QVector<qreal> inPixels(QVector<qreal> pattern, double width) {
  for (qreal& piece : pattern) piece *= width;
  return pattern;
}

QPen flatPen(const QColor& color, double width) {
  QPen pen(color, width);
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::RoundJoin);
  return pen;
}

QPen penOf(const Picture& picture, const PictureLine& line, const ChartLook& look) {
  const QColor ofNone = line.limit ? look.accent : line.faint ? look.quietInk : look.ink;
  if (line.rig < 0) return flatPen(ofNone, kFaintWidth);
  return flatPen(shadeOfRig(telling::slotOfRig(picture, line.rig), lookOfRig(line.rig, look)),
                 line.faint                ? kFaintWidth
                 : line.rig == look.lifted ? kLiftedWidth
                                           : kLineWidth);
}

// Cut, thinned and dashed: what the chart is given.
Points drawn(const Picture& picture, const PictureLine& line, const ChartLayout& layout) {
  const double width = line.faint ? kFaintWidth : kLineWidth;
  const auto pattern = line.rig < 0
                           ? line.faint ? kOutline : QVector<qreal>()
                           : inPixels(dashesOfRig(telling::slotOfRig(picture, line.rig)), width);
  Points all;
  for (const Points& run : clipped(pointsOf(line.points), layout.window)) {
    if (!all.isEmpty()) all.push_back({kNone, kNone});
    all += dashed(thinned(run, layout.scale()), pattern, layout.scale());
  }
  return all;
}

// The running total of the parts, cut to the window.
QVector<Points> edgesOf(const Picture& picture, const ChartLayout& layout) {
  QVector<Points> edges;
  if (picture.areas.empty()) return edges;
  std::vector<PicturePoint> sum = picture.areas[0];
  for (PicturePoint& p : sum) p.y = 0.0;
  const ChartWindow& w = layout.window;
  const auto cut = [&](const std::vector<PicturePoint>& line) {
    Points inside;
    const auto clamped = [&](double x, double y) {
      return QPointF(x, std::clamp(y, w.yFrom, w.yTo));
    };
    if (const auto first = telling::valueAt(line, w.xFrom))
      inside.push_back(clamped(w.xFrom, *first));
    for (const PicturePoint& p : line) {
      if (p.x > w.xFrom && p.x < w.xTo) inside.push_back(clamped(p.x, p.y));
    }
    if (const auto last = telling::valueAt(line, w.xTo)) inside.push_back(clamped(w.xTo, *last));
    return inside;
  };
  edges.push_back(cut(sum));
  for (const auto& area : picture.areas) {
    for (std::size_t i = 0; i < std::min(sum.size(), area.size()); ++i) sum[i].y += area[i].y;
    edges.push_back(cut(sum));
  }
  return edges;
}

void sampleOf(QPainter& painter, const Label& label, const Picture& picture,
              const ChartLook& look) {
  const QRectF& box = label.sample;
  const double y = box.center().y();
  switch (label.kind) {
    case Sample::None:
      return;
    case Sample::Part:
      painter.fillRect(QRectF(box.left(), y - 6.0, box.width(), 12.0),
                       shadeOfPart(label.index, static_cast<int>(picture.partNames.size()), look));
      return;
    case Sample::Band:
      painter.fillRect(QRectF(box.left(), y - 6.0, box.width(), 12.0), look.bandFill);
      return;
    case Sample::PlainLine:
    case Sample::Outline: {
      QPen pen = flatPen(label.kind == Sample::Outline ? look.quietInk : look.ink, kFaintWidth);
      if (label.kind == Sample::Outline) pen.setDashPattern(kOutline);
      painter.setPen(pen);
      painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
      return;
    }
    case Sample::Line:
    case Sample::FaintLine:
      break;
  }
  const bool faint = label.kind == Sample::FaintLine;
  const double width = faint ? kFaintWidth : kLineWidth;
  const int slot = telling::slotOfRig(picture, label.index);
  ChartLook own = lookOfRig(label.index, look);
  if (label.isOut) own.faded = kFaded;
  drawRigSwatch(painter, slot, box, own, width, !faint);
}

}  // namespace

struct Plot::Parts {
  Picture picture;
  ChartLayout layout;
  ChartLook look;
  bool vector = false;
  QGraphicsScene scene;
  QChart* chart = nullptr;  // of the scene
  QValueAxis* x = nullptr;
  QValueAxis* y = nullptr;
  QBarCategoryAxis* rigs = nullptr;
  QVector<QLineSeries*> lines;
  QVector<QLineSeries*> edges;
  QVector<QAreaSeries*> areas;
  QHorizontalStackedBarSeries* bars = nullptr;

  Parts();
  bool fits(const Picture& other) const;
  void rebuild();
  void fill();
  void under(QPainter& painter) const;
  void over(QPainter& painter) const;
  void veil(QPainter& painter) const;
  void limitLine(QPainter& painter, const Label& label) const;
  void paths(QPainter& painter) const;
};

Plot::Parts::Parts() {
  chart = new QChart;
  chart->setAnimationOptions(QChart::NoAnimation);
  chart->setBackgroundVisible(false);
  chart->setPlotAreaBackgroundVisible(false);
  chart->setBackgroundRoundness(0.0);
  chart->setDropShadowEnabled(false);
  chart->setMargins({});
  chart->layout()->setContentsMargins(0, 0, 0, 0);
  chart->legend()->hide();
  scene.addItem(chart);
  x = new QValueAxis(chart);
  y = new QValueAxis(chart);
  rigs = new QBarCategoryAxis(chart);
  for (QAbstractAxis* axis : {static_cast<QAbstractAxis*>(x), static_cast<QAbstractAxis*>(y),
                              static_cast<QAbstractAxis*>(rigs)}) {
    axis->setVisible(false);
  }
  chart->addAxis(x, Qt::AlignBottom);
  chart->addAxis(y, Qt::AlignLeft);
  chart->addAxis(rigs, Qt::AlignLeft);
}

bool Plot::Parts::fits(const Picture& other) const {
  if ((bars != nullptr) != (other.kind == Picture::Kind::StackedBars)) return false;
  const auto count = [](const auto& all) { return static_cast<qsizetype>(all.size()); };
  if (bars && (count(other.stacks) != rigs->count() || count(other.partNames) != bars->count()))
    return false;
  return lines.size() == count(other.lines) && areas.size() == count(other.areas);
}

void Plot::Parts::rebuild() {
  chart->removeAllSeries();
  qDeleteAll(edges);
  lines.clear();
  edges.clear();
  areas.clear();
  bars = nullptr;
  const auto attach = [this](QAbstractSeries* series, QAbstractAxis* upward) {
    chart->addSeries(series);
    series->attachAxis(x);
    series->attachAxis(upward);
  };
  if (picture.kind == Picture::Kind::StackedBars) {
    bars = new QHorizontalStackedBarSeries(chart);
    for (const std::string& name : picture.partNames)
      bars->append(new QBarSet(QString::fromStdString(name), bars));
    rigs->clear();
    for (std::size_t i = 0; i < picture.stacks.size(); ++i) rigs->append(QString::number(i));
    attach(bars, rigs);
    return;
  }
  const auto parts = static_cast<qsizetype>(picture.areas.size());
  for (qsizetype i = 0; i <= parts && parts > 0; ++i) edges.push_back(new QLineSeries(chart));
  for (qsizetype i = 0; i < parts; ++i) {
    areas.push_back(new QAreaSeries(edges[i + 1], edges[i]));
    areas.back()->setParent(chart);
    attach(areas.back(), y);
  }
  for (std::size_t i = 0; i < picture.lines.size(); ++i) {
    lines.push_back(new QLineSeries(chart));
    attach(lines.back(), y);
  }
}

void Plot::Parts::fill() {
  const ChartWindow& w = layout.window;
  x->setRange(w.xFrom, w.xTo);
  y->setRange(w.yFrom, w.yTo);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    const PictureLine& line = picture.lines[static_cast<std::size_t>(i)];
    lines[i]->setPen(penOf(picture, line, look));
    lines[i]->replace(vector ? Points() : drawn(picture, line, layout));
  }
  const QVector<Points> sums = edgesOf(picture, layout);
  for (qsizetype i = 0; i < edges.size(); ++i) edges[i]->replace(sums[i]);
  for (qsizetype i = 0; i < areas.size(); ++i) {
    const QColor shade = shadeOfPart(static_cast<int>(i), static_cast<int>(areas.size()), look);
    areas[i]->setBrush(shade);
    areas[i]->setPen(QPen(shade, 1.0));
  }
  if (!bars) return;
  const auto sets = bars->barSets();
  const std::size_t count = picture.stacks.size();
  for (qsizetype part = 0; part < sets.size(); ++part) {
    sets[part]->remove(0, sets[part]->count());
    QList<qreal> values;
    // Categories run from the bottom up, rigs from the top down.
    for (std::size_t i = count; i-- > 0;) {
      const auto& parts = picture.stacks[i].parts;
      const auto at = static_cast<std::size_t>(part);
      values.push_back(at < parts.size() ? std::max(0.0, parts[at]) : 0.0);
    }
    sets[part]->append(values);
    sets[part]->setColor(shadeOfPart(static_cast<int>(part), static_cast<int>(sets.size()), look));
    sets[part]->setBorderColor(look.paper);
  }
}

Plot::Plot() : parts_(std::make_unique<Parts>()) {}
Plot::~Plot() = default;

void Plot::show(const Picture& picture, const ChartLayout& layout, const ChartLook& look,
                bool vector) {
  Parts& p = *parts_;
  p.vector = vector;
  p.picture = picture;
  p.layout = layout;
  p.look = look;
  QRectF area = layout.plot;
  if (picture.kind == Picture::Kind::StackedBars && !layout.bars.isEmpty()) {
    // The names stand above the bars: shift the chart so that its bars fall where they belong.
    const double pitch = layout.plot.height() / static_cast<double>(layout.bars.size());
    const ChartLayout::Bar& first = layout.bars.front();
    area.translate(0.0, 0.5 * (first.from + first.to) - (layout.plot.top() + 0.5 * pitch));
  }
  if (!p.fits(picture)) p.rebuild();
  if (p.bars && !layout.bars.isEmpty()) {
    const double pitch = layout.plot.height() / static_cast<double>(layout.bars.size());
    p.bars->setBarWidth((layout.bars[0].to - layout.bars[0].from) / pitch);
  }
  const QSizeF whole(area.right() + 40.0, area.bottom() + 40.0);
  if (p.chart->size() != whole) {
    p.chart->resize(whole);
    p.scene.setSceneRect({{}, whole});
  }
  if (p.chart->plotArea() != area) p.chart->setPlotArea(area);
  p.fill();
  p.chart->layout()->activate();
}

void Plot::Parts::under(QPainter& painter) const {
  painter.setRenderHint(QPainter::Antialiasing, false);
  for (const PictureBand& band : picture.bands) {
    if (!band.shaded) continue;
    const ChartWindow& w = layout.window;
    const double from =
        std::clamp(band.from, band.alongX ? w.xFrom : w.yFrom, band.alongX ? w.xTo : w.yTo);
    const double to =
        std::clamp(band.to, band.alongX ? w.xFrom : w.yFrom, band.alongX ? w.xTo : w.yTo);
    const QPointF a = layout.at(band.alongX ? QPointF(from, w.yTo) : QPointF(w.xFrom, to));
    const QPointF b = layout.at(band.alongX ? QPointF(to, w.yFrom) : QPointF(w.xTo, from));
    painter.fillRect(QRectF(a, b), look.bandFill);
  }
  drawWashes(painter, picture, layout, look);
  painter.setPen(flatPen(look.grid, 1.0));
  for (const Label& tick : layout.yTicks) {
    painter.drawLine(QPointF(layout.plot.left(), tick.anchor.y()),
                     QPointF(layout.plot.right(), tick.anchor.y()));
  }
  if (picture.kind == Picture::Kind::StackedBars) {
    for (const Label& tick : layout.xTicks) {
      painter.drawLine(QPointF(tick.anchor.x(), layout.plot.top()),
                       QPointF(tick.anchor.x(), layout.plot.bottom()));
    }
    // Below the bars and their names, which they would cross.
    for (const Label& label : layout.limits) limitLine(painter, label);
  }
}

void Plot::Parts::limitLine(QPainter& painter, const Label& label) const {
  painter.setPen(QPen(look.accent, 1.0, Qt::DotLine));
  painter.drawLine(QPointF(label.anchor.x(), label.box.bottom()),
                   QPointF(label.anchor.x(), layout.plot.bottom()));
}

void Plot::Parts::paths(QPainter& painter) const {
  painter.setBrush(Qt::NoBrush);
  for (const PictureLine& line : picture.lines) {
    QPainterPath path;
    bool open = false;
    for (const QPointF& p : drawn(picture, line, layout)) {
      const bool gap = std::isnan(p.x());
      if (!gap && open) path.lineTo(layout.at(p));
      if (!gap && !open) path.moveTo(layout.at(p));
      open = !gap;
    }
    painter.strokePath(path, penOf(picture, line, look));
  }
}

// Over the bars of all rigs but the one that stands out.
void Plot::Parts::veil(QPainter& painter) const {
  QColor paper = look.paper;
  paper.setAlphaF(0.6F);
  for (const ChartLayout::Bar& bar : layout.bars) {
    if (bar.rig == *look.lifted) continue;
    painter.fillRect(QRectF(QPointF(layout.plot.left(), bar.from - 1.0),
                            QPointF(layout.plot.right(), bar.to + 1.0)),
                     paper);
  }
}

void Plot::Parts::over(QPainter& painter) const {
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setPen(flatPen(look.quietInk, 1.0));
  painter.drawLine(layout.plot.bottomLeft(), layout.plot.bottomRight());
  for (const Label& tick : layout.xTicks) {
    painter.drawLine(tick.anchor, tick.anchor + QPointF(0.0, 3.0));
  }
  if (bars && look.lifted) veil(painter);
  const int parts = static_cast<int>(picture.partNames.size());
  for (const Label& label : layout.parts) {
    drawLabel(painter, label, layout.smallFont, inkOn(shadeOfPart(label.index, parts, look)),
              Qt::AlignCenter);
  }
  for (const Label& label : layout.limits) {
    if (!bars) limitLine(painter, label);
    drawLabel(painter, label, layout.font, look.accent, Qt::AlignCenter);
  }
  if (picture.draggable) {
    const double height = layout.at({0.0, *picture.draggable}).y();
    if (layout.plot.top() - 1.0 <= height && height <= layout.plot.bottom() + 1.0) {
      painter.setPen(flatPen(look.accent, 1.5));
      painter.drawLine(QPointF(layout.plot.left(), height), QPointF(layout.plot.right(), height));
      painter.setBrush(look.accent);
      painter.drawEllipse(QPointF(layout.plot.left(), height), 5.0, 5.0);
      painter.setBrush(Qt::NoBrush);
    }
  }
  for (const Label& label : layout.bands) {
    drawLabel(painter, label, layout.smallFont, look.quietInk);
  }
  drawMarks(painter, picture, layout, look);
  for (const Label& label : layout.lineEnds) {
    drawLeader(painter, label, look.quietInk);
    QFont strong = layout.font;
    strong.setBold(true);
    drawLabel(painter, label, strong,
              shadeOfRig(telling::slotOfRig(picture, label.index), lookOfRig(label.index, look)));
  }
  for (const auto* labels : {&layout.xTicks, &layout.yTicks}) {
    for (const Label& label : *labels) drawLabel(painter, label, layout.font, look.quietInk);
  }
  for (const Label& label : layout.barNames) {
    if (!layout.limits.isEmpty()) painter.fillRect(label.box, look.paper);
    drawLabel(painter, label, layout.font, look.ink);
  }
  for (const Label& label : layout.titles) {
    const QColor color = label.index == 0   ? look.ink
                         : label.index == 3 ? look.accent
                                            : look.quietInk;
    drawLabel(painter, label, label.index == 0 ? layout.titleFont : layout.font, color,
              label.index == 2 || label.index == 3 ? Qt::AlignRight | Qt::AlignVCenter
                                                   : Qt::AlignLeft | Qt::TextWordWrap);
  }
  for (const Label& label : layout.legend) {
    sampleOf(painter, label, picture, look);
    QFont font = layout.font;
    font.setStrikeOut(label.isOut);
    drawLabel(painter, label, font, label.isOut ? look.quietInk : look.ink,
              Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap);
  }
}

void Plot::draw(QPainter& painter) const {
  Parts& p = *parts_;
  painter.save();
  p.under(painter);
  painter.setRenderHint(QPainter::Antialiasing, true);
  p.scene.render(&painter, p.scene.sceneRect(), p.scene.sceneRect(), Qt::IgnoreAspectRatio);
  if (p.vector) p.paths(painter);
  p.over(painter);
  painter.restore();
}

void drawPicture(QPainter& painter, const QRectF& area, const Picture& picture,
                 const ChartLook& look) {
  Plot plot;
  const bool vector = painter.paintEngine()->type() != QPaintEngine::Raster;
  plot.show(picture, layOut(picture, area.size(), look), look, vector);
  painter.save();
  painter.fillRect(area, look.paper);
  painter.translate(area.topLeft());
  plot.draw(painter);
  painter.restore();
}

QImage pictureImage(const Picture& picture, QSize size, const ChartLook& look, qreal sharpness) {
  QImage image((QSizeF(size) * sharpness).toSize(), QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(sharpness);
  image.fill(look.paper);
  QPainter painter(&image);
  drawPicture(painter, QRectF({}, QSizeF(size)), picture, look);
  return image;
}

QByteArray pictureSvg(const Picture& picture, QSize size, const ChartLook& look) {
  QByteArray svg;
  QBuffer buffer(&svg);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setSize(size);
  generator.setViewBox(QRect({}, size));
  generator.setTitle(QString::fromStdString(picture.title));
  generator.setResolution(96);
  QPainter painter(&generator);
  drawPicture(painter, QRectF({}, QSizeF(size)), picture, look);
  painter.end();
  return svg;
}

}  // namespace gui
