// SPDX-License-Identifier: GPL-3.0-or-later
// Pages filled from top to bottom, whatever the device's resolution. Lengths are in points (1/72
// inch) where a function says so, else in tenths of them.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QSet>
#include <QString>
#include <QStringList>
#include <functional>

#include "gui/telling/sheet.hpp"
#include "gui/window/exports/column_flow.hpp"
#include "gui/window/exports/paper_type.hpp"
#include "gui/window/exports/report_table.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "rigs/words/language.hpp"

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

  void title(const QString& text);
  void heading(const QString& text);
  void paragraph(const QString& text);
  void strongParagraph(const QString& text);
  void quietParagraph(const QString& text);
  // In two columns, as notes are.
  void list(const QStringList& items);
  // Smaller, in two columns, below headings of their own.
  void notes(const QVector<ShownNote>& items);
  // In a frame, so that nobody overlooks it; it goes on over the page's end. `strongly` in heavier
  // letters over the whole width, for what is wrong with this very plan.
  void framed(const QString& heading, const QStringList& items, bool strongly = false);
  // As high as it is read well, or a little less where it would not fit on the page. A legend that
  // stands on the same page above another picture is not said again.
  void picture(const telling::Picture& picture);
  // More columns than fit follow in further groups, each with the first column.
  void table(const ShownTable& table, Beside halves = Beside::WhereWorth);
  // On pages of its own, as somebody may take it to the kettle.
  void sheet(const telling::Sheet& sheet, const rigs::Reader& reader);
  // Heading and sentences of an answer, or of another view of it ("": none). On a new page unless
  // its first picture and where its table begins fit below them, too, or little room is left.
  void begin(const QString& heading, const QString& sentences, const ShownAnswer& answer);

 private:
  struct Flow {
    int columns = 1;
    const Strip* head = nullptr;  // above each column
    qreal inset = 0.0;            // to the left and right of all columns
    qreal above = 0.0, below = 0.0;
    std::function<void(QPointF)> atop = {};   // on each page, at its upper left corner
    std::function<void(QRectF)> around = {};  // what a page has of it
  };
  void finishPage();
  qreal left() const { return page_.bottom() - y_; }
  bool isFresh() const { return y_ <= page_.top(); }
  void keepTogether(qreal height);
  void gap(qreal points) { y_ += points * kPoint; }
  void flow(const Strips& strips, const Flow& how);
  void say(const QString& text, const QFont& font);
  qreal columnWidth(const Flow& how) const;
  // On the page as it stands; in points.
  struct PictureSize {
    qreal height = 0.0, least = 0.0;
    bool legend = true;
  };
  PictureSize sizeOf(const telling::Picture& picture) const;
  // To the right of what stands before the first of them, where anything does.
  Strips linesIn(const QString& text, const QFont& font, qreal width,
                 const QString& before = {}) const;

  QPagedPaintDevice& device_;
  PaperType type_;
  QString footer_;
  QRectF page_;  // inside the margins, above the footer
  qreal y_ = 0.0;
  int number_ = 1;
  bool fine_ = false;
  QSet<QString> legends_;  // that stand on this page
  QPainter painter_;       // last: ends first
};

}  // namespace gui
