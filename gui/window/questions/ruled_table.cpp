// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/ruled_table.hpp"

#include <QApplication>
#include <QFontMetrics>
#include <QPainter>
#include <QStyle>
#include <algorithm>

#include "gui/window/charts/rig_swatch.hpp"

namespace gui {
namespace {

constexpr double kRule = 1.5;     // px
constexpr int kBetweenRules = 3;  // of the double rule, px
constexpr int kRowEdge = 5;       // above and below a row's words together, px
constexpr int kHeadSide = 5;      // left and right of a head's words, px
constexpr int kBelowHead = 4;
constexpr int kSwatchWide = 30;  // px
constexpr int kFocusFrame = 2;

void rule(QPainter& painter, const QColor& ink, double width, const QRect& along, double y) {
  painter.fillRect(QRectF(along.left(), y, along.width(), width), ink);
}

}  // namespace

QSize RuledDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QSize size = QStyledItemDelegate::sizeHint(option, index);
  size.rheight() += kRowEdge;
  if (static_cast<Rule>(index.data(kRuleRole).toInt()) == Rule::SumEnds)
    size.rheight() += kBetweenRules;
  return size;
}

void RuledDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
  const auto ruled = static_cast<Rule>(index.data(kRuleRole).toInt());
  const QPalette& palette = option.palette;
  const QColor ink = palette.color(QPalette::WindowText);
  const QRect& cell = option.rect;
  painter->save();
  if ((option.state & QStyle::State_Selected) != 0)
    painter->fillRect(cell, palette.color(QPalette::AlternateBase));
  // A style breaks and shapes the words three times over; a hand drags a value meanwhile.
  const int side =
      1 + option.widget->style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, option.widget);
  QRect words = cell.adjusted(side, 0, -side, 0);
  if (ruled == Rule::SumEnds) words.setBottom(cell.bottom() - kBetweenRules);
  const QVariant own = index.data(Qt::FontRole);
  painter->setFont(own.isValid() ? own.value<QFont>() : option.font);
  painter->setPen(ink);
  painter->drawText(words, index.data(Qt::TextAlignmentRole).toInt() | Qt::TextWordWrap,
                    index.data(Qt::DisplayRole).toString());
  if (ruled == Rule::SumEnds) {
    rule(*painter, ink, 1.0, cell, cell.bottom() - kBetweenRules);
    rule(*painter, ink, 1.0, cell, cell.bottom());
  } else {
    rule(*painter, palette.color(QPalette::Mid), 1.0 / painter->device()->devicePixelRatioF(), cell,
         cell.bottom());
  }
  const auto above = static_cast<Rule>(index.siblingAtRow(index.row() - 1).data(kRuleRole).toInt());
  if (ruled != Rule::Hairline && above == Rule::Hairline)
    rule(*painter, ink, kRule, cell, cell.top());
  if ((option.state & QStyle::State_HasFocus) != 0) {
    painter->setPen(QPen(palette.color(QPalette::Highlight), kFocusFrame));
    painter->drawRect(cell.adjusted(1, 1, -1, -1));
  }
  painter->restore();
}

RuledHeader::RuledHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
  setObjectName(QStringLiteral("heads"));
  viewport()->setBackgroundRole(QPalette::Window);
}

QString RuledHeader::textOf(int column) const {
  return model()->headerData(column, Qt::Horizontal).toString();
}

QFont RuledHeader::fontOf(int column) const {
  const QVariant own = model()->headerData(column, Qt::Horizontal, Qt::FontRole);
  return own.isValid() ? own.value<QFont>() : font();
}

// The swatch above the words, at the side where the figures end.
RuledHeader::Piece RuledHeader::piecesOf(int column, int width) const {
  const QFontMetrics metrics(fontOf(column));
  const int room = std::max(20, width - 2 * kHeadSide);
  const QSize words =
      metrics.boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, textOf(column)).size();
  const QVariant look = model()->headerData(column, Qt::Horizontal, kLookRole);
  const int bottom = -kBelowHead - 1;
  Piece piece;
  piece.text = QRect(kHeadSide, bottom - words.height(), room, words.height());
  if (!look.isValid() || look.toInt() < 0) return piece;
  const int line = metrics.height();
  piece.swatch = QRect(kHeadSide + room - kSwatchWide, piece.text.top() - line, kSwatchWide, line);
  return piece;
}

int RuledHeader::heightOf(int column) const {
  const Piece piece = piecesOf(column, sectionSize(column));
  const int top =
      piece.swatch.isEmpty() ? piece.text.top() : std::min(piece.text.top(), piece.swatch.top());
  return -top + kHeadSide;
}

void RuledHeader::paintSection(QPainter* painter, const QRect& rect, int column) const {
  const QColor ink = palette().color(QPalette::WindowText);
  const Piece piece = piecesOf(column, rect.width());
  const QPoint foot(rect.left(), rect.bottom() + 1);
  painter->save();
  painter->fillRect(rect, palette().color(QPalette::Window));
  painter->setPen(ink);
  painter->setFont(fontOf(column));
  const Qt::Alignment side = column == 0 ? Qt::AlignLeft : Qt::AlignRight;
  painter->drawText(piece.text.translated(foot), static_cast<int>(side) | Qt::TextWordWrap,
                    textOf(column));
  if (!piece.swatch.isEmpty())
    drawRigSwatch(*painter, model()->headerData(column, Qt::Horizontal, kLookRole).toInt(),
                  piece.swatch.translated(foot), lookOf(palette(), font()));
  rule(*painter, ink, kRule, rect, rect.bottom() + 1 - kRule);
  painter->restore();
}

}  // namespace gui
