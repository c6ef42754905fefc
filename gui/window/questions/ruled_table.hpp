// SPDX-License-Identifier: GPL-3.0-or-later
// How a table is ruled, as an account is: a rule under the heads, hairlines between rows, a rule
// above what it comes to and a double one below.
#pragma once

#include <QHeaderView>
#include <QStyledItemDelegate>

namespace gui {

// Of a cell: how its row is ruled; above the first row of a sum stands a rule.
enum class Rule { Hairline, Sum, SumEnds };
inline constexpr int kRuleRole = Qt::UserRole + 1;
// Of a head: the slot of its rig's look, below 0 where it is no rig's.
inline constexpr int kLookRole = Qt::UserRole + 2;

class RuledDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
};

class RuledHeader : public QHeaderView {
  Q_OBJECT

 public:
  explicit RuledHeader(QWidget* parent);
  // That the head of a column needs at its width, its rig's swatch and the rule included.
  int heightOf(int column) const;

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int column) const override;

 private:
  struct Piece {
    QRect text, swatch;  // within a section of this size, its bottom at 0
  };
  Piece piecesOf(int column, int width) const;
  QString textOf(int column) const;
  QFont fontOf(int column) const;
};

}  // namespace gui
