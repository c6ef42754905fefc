// SPDX-License-Identifier: GPL-3.0-or-later
// An answer's numbers as a table: for eyes, keyboard, screen reader and clipboard.
#pragma once

#include <QTableWidget>

#include "gui/window/questions/ruled_table.hpp"
#include "gui/window/questions/shown_answer.hpp"

namespace gui {

class AnswerTable : public QTableWidget {
  Q_OBJECT

 public:
  explicit AnswerTable(QWidget* parent = nullptr);
  void fill(const ShownTable& from);
  // As tall as its rows: the page scrolls, not the table. Long labels wrap, and a rig's name takes
  // as many lines in the head as its column needs.
  void fit();
  // By which a row's figure can be explained; nothing of headings.
  std::optional<telling::Row> asked(int row) const;
  QRect placeOf(int row) const;  // of the row, on the screen
  // So many pixels of it are above what is seen: its heads stay in sight.
  void freezeHead(int above);

 Q_SIGNALS:
  // A row that another question tells more of was clicked, or Enter pressed in it.
  void opened(gui::telling::Question question);
  void explanationWanted(int row);

 protected:
  void updateGeometries() override;
  // Copies what is selected, for spreadsheets: below the heads of its columns, beside the labels of
  // its rows; a cell alone as it is.
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  void copySelected() const;
  void copyAll() const;
  QString asText(const QVector<int>& rows, const QVector<int>& columns) const;
  // True where a height may have changed.
  void open(int row);
  bool setHead(int column, const QString& text, bool strongly, int look);
  bool setCell(int row, int column, const QString& text, bool strongly, Rule rule);

  int columnWidthFor(int room, int narrowest) const;
  int longestWord(int from, int to) const;

  QVector<ShownTable::Row> rows_;
  int above_ = 0;
};

}  // namespace gui
