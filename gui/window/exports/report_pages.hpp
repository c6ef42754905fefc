// SPDX-License-Identifier: GPL-3.0-or-later
// Pages filled from top to bottom, in points (1/72 inch), whatever the device's resolution.
#pragma once

#include <QMarginsF>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <QStringList>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/questions/shown_answer.hpp"

class QPagedPaintDevice;

namespace gui {

class ReportPages {
 public:
  // `footer` stands at the foot of every page, beside its number.
  ReportPages(QPagedPaintDevice& device, const ChartLook& look, const QString& footer);
  ~ReportPages();
  ReportPages(const ReportPages&) = delete;
  ReportPages& operator=(const ReportPages&) = delete;

  bool isFine() const { return fine_; }
  void newPage();
  // Ends the page unless so much of it is left.
  void keepTogether(qreal points);
  void gap(qreal points);

  void title(const QString& text);
  void heading(const QString& text);
  void paragraph(const QString& text);
  void strongParagraph(const QString& text);
  void list(const QStringList& items);
  // Smaller, below headings of their own.
  void notes(const QVector<ShownNote>& items);
  // In a frame, so that nobody overlooks it; it goes on over the page's end. `strongly` in heavier
  // letters, for what is wrong with this very plan.
  void framed(const QString& heading, const QStringList& items, bool strongly = false);
  // `height` in points; less where the page is smaller.
  void picture(const telling::Picture& picture, qreal height);
  // More columns than fit follow in further groups, each with the first column.
  void table(const ShownTable& table);

 private:
  void finishPage();
  qreal left() const { return page_.bottom() - y_; }
  void columns(const ShownTable& table, qsizetype from, qsizetype count, qreal labels);
  qreal narrowestColumn(const ShownTable& table) const;
  void tableRow(const QStringList& cells, const QVector<qreal>& widths, const QFont& font);
  qreal rowHeight(const QStringList& cells, const QVector<qreal>& widths, const QFont& font) const;
  void rule(qreal width, const QColor& color);
  void overRule();
  void swatchRow(const QVector<int>& looks, const QVector<qreal>& widths);

  QPagedPaintDevice& device_;
  ChartLook look_;
  QString footer_;
  QRectF page_;  // inside the margins, above the footer
  qreal y_ = 0.0;
  int number_ = 1;
  bool fine_ = false;
  QFont body_, strong_, headingFont_, titleFont_, note_, noteHeading_, small_;
  QPainter painter_;  // last: ends first
};

}  // namespace gui
