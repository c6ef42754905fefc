// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question_column.hpp"

#include <QEvent>
#include <QFontInfo>
#include <QFontMetrics>
#include <QPainter>
#include <QRegularExpression>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <algorithm>

namespace gui {
namespace {

// In ems of the desktop's own font, so that larger letters get a wider column.
constexpr double kWidth = 20.0;
constexpr double kBeside = 1.1;  // left and right of the words
constexpr double kAbove = 0.5;   // and below
// Of short names: closer where not all of them are in sight else.
constexpr double kAboveShort = 0.3;
constexpr double kAboveShortLeast = 0.05;
constexpr double kSmall = 0.92;
constexpr double kAnswer = 1.08;
constexpr double kMark = 0.85;
constexpr int kEdge = 3;       // of the one that is chosen, px
constexpr int kFocus = 2;      // frame, px
constexpr int kMarkInset = 4;  // px, left and right of the mark's word

QFont sized(QFont font, double share, QFont::Weight weight) {
  if (font.pixelSize() > 0)
    font.setPixelSize(std::max(1, qRound(share * font.pixelSize())));
  else
    font.setPointSizeF(share * font.pointSizeF());
  font.setWeight(weight);
  return font;
}

// No line begins with a unit whose number ends the one before.
QString keptTogether(QString text) {
  static const QRegularExpression behindANumber(QStringLiteral("(?<=\\d) "));
  text.replace(behindANumber, QStringLiteral("\u00a0"));
  return text.replace(QLatin1Char('/'), QStringLiteral("\u2060/\u2060"));
}

QRect around(const QFont& font, int width, const QString& text) {
  return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, text);
}

class Painter : public QStyledItemDelegate {
 public:
  explicit Painter(QuestionColumn* of) : QStyledItemDelegate(of), column_(*of) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
    return {column_.viewport()->width(), column_.heightOf(index.row())};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    const QPalette& palette = option.palette;
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    painter->save();
    painter->fillRect(option.rect,
                      palette.color(chosen ? QPalette::AlternateBase : QPalette::Window));
    if (chosen)
      painter->fillRect(QRect(option.rect.topLeft(), QSize(kEdge, option.rect.height())),
                        palette.color(QPalette::Highlight));
    for (const QuestionColumn::Piece& piece : column_.piecesOf(index.row()))
      paintPiece(*painter, palette, piece, option.rect.topLeft());
    if ((option.state & QStyle::State_HasFocus) != 0) paintFocus(*painter, palette, option.rect);
    painter->restore();
  }

 private:
  using Kind = QuestionColumn::Piece::Kind;

  void paintPiece(QPainter& painter, const QPalette& palette, const QuestionColumn::Piece& piece,
                  const QPoint& at) const {
    const QRect room = piece.room.translated(at);
    painter.setFont(piece.font);
    if (piece.kind == Kind::Mark) {
      painter.fillRect(room, palette.color(QPalette::WindowText));
      painter.setPen(palette.color(QPalette::Window));
      painter.drawText(room, Qt::AlignCenter, piece.text);
      return;
    }
    const bool quiet = piece.kind == Kind::Question && !column_.isFolded();
    painter.setPen(palette.color(quiet ? QPalette::PlaceholderText : QPalette::WindowText));
    painter.drawText(room, Qt::TextWordWrap, piece.text);
  }

  static void paintFocus(QPainter& painter, const QPalette& palette, const QRect& row) {
    painter.setPen(QPen(palette.color(QPalette::Highlight), kFocus));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(row.adjusted(1, 1, -1, -1));
  }

  const QuestionColumn& column_;
};

}  // namespace

QuestionColumn::QuestionColumn(QWidget* parent) : QListWidget(parent) {
  setFrameShape(QFrame::NoFrame);
  setItemDelegate(new Painter(this));
  setSelectionMode(QAbstractItemView::SingleSelection);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setResizeMode(QListView::Adjust);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
  // As paper, not as a field to write in.
  viewport()->setBackgroundRole(QPalette::Window);
}

int QuestionColumn::em() const { return QFontInfo(font()).pixelSize(); }

void QuestionColumn::fill(const QVector<Entry>& entries) {
  if (entries == entries_) return;
  entries_ = entries;
  while (count() > entries.size()) delete takeItem(count() - 1);
  while (count() < entries.size()) addItem(new QListWidgetItem);
  for (int row = 0; row < count(); ++row) {
    item(row)->setText(entries[row].shortly);
    item(row)->setToolTip(entries[row].whole);
    item(row)->setData(Qt::AccessibleTextRole, entries[row].whole);
  }
  layOut();
}

void QuestionColumn::setMark(const QString& mark) {
  if (mark == mark_) return;
  mark_ = mark;
  layOut();
}

void QuestionColumn::setFolded(bool folded) {
  if (folded == folded_) return;
  folded_ = folded;
  layOut();
}

QVector<QuestionColumn::Piece> QuestionColumn::piecesOf(int row) const {
  return piecesOf(row, folded_, viewport()->width());
}

QVector<QuestionColumn::Piece> QuestionColumn::piecesOf(int row, bool folded, int wide) const {
  const Entry& of = entries_[row];
  const int left = qRound(kBeside * em());
  const int width = std::max(1, wide - 2 * left);
  int y = folded ? aboveShort_ : qRound(kAbove * em());
  QVector<Piece> pieces;
  const auto add = [&](Piece::Kind kind, const QString& text, const QFont& font) {
    const int height = around(font, width, text).height();
    pieces.push_back({kind, text, font, QRect(left, y, width, height)});
    y += height;
  };
  if (folded) {
    add(Piece::Kind::Question, of.shortly, font());
  } else {
    // In one line: the list with its answers is to be in sight as a whole.
    const QFont small = sized(font(), kSmall, QFont::Normal);
    const bool wraps = QFontMetrics(small).horizontalAdvance(of.question) > width;
    add(Piece::Kind::Question, wraps ? of.shortly : of.question, small);
    const QString answer = keptTogether(of.answer);
    if (!answer.isEmpty())
      add(Piece::Kind::Answer, answer, sized(font(), kAnswer, QFont::DemiBold));
  }
  if (mark_.isEmpty()) return pieces;
  // Beside the question where there is room for both, else below all of it.
  const QFont heavy = sized(font(), kMark, QFont::Bold);
  const QSize size(QFontMetrics(heavy).horizontalAdvance(mark_) + 2 * kMarkInset,
                   QFontMetrics(heavy).height());
  QRect& question = pieces[0].room;
  const int free = width - around(pieces[0].font, width, pieces[0].text).width();
  const bool beside = free >= size.width() + em() / 2 &&
                      question.height() < 2 * QFontMetrics(pieces[0].font).height();
  if (beside) question.setWidth(width - size.width() - em() / 4);
  const QPoint at = beside ? QPoint(left + width - size.width(), question.top()) : QPoint(left, y);
  pieces.push_back({Piece::Kind::Mark, mark_, heavy, QRect(at, size)});
  return pieces;
}

int QuestionColumn::heightOf(int row) const { return heightOf(piecesOf(row)); }

int QuestionColumn::heightOf(const QVector<Piece>& pieces) const {
  int bottom = 0;
  for (const Piece& piece : pieces) bottom = std::max(bottom, piece.room.bottom() + 1);
  return bottom + pieces.front().room.top();
}

int QuestionColumn::unfoldedHeight() const {
  int height = 0;
  for (int row = 0; row < entries_.size(); ++row)
    height += heightOf(piecesOf(row, false, qRound(kWidth * em())));
  return height;
}

// What is left of the height when every short name is set, above and below each.
void QuestionColumn::spreadShortNames() {
  aboveShort_ = 0;
  int words = 0;
  for (int row = 0; row < entries_.size(); ++row)
    words += heightOf(piecesOf(row, true, viewport()->width()));
  const auto rows = static_cast<int>(std::max<qsizetype>(entries_.size(), 1));
  aboveShort_ = std::clamp((viewport()->height() - words) / (2 * rows),
                           qRound(kAboveShortLeast * em()), qRound(kAboveShort * em()));
}

// As wide as the answers ask, or as the longest of the short names.
void QuestionColumn::layOut() {
  int width = qRound(kWidth * em());
  if (folded_) {
    const QFontMetrics metrics(font());
    width = QFontMetrics(sized(font(), kMark, QFont::Bold)).horizontalAdvance(mark_);
    for (const Entry& one : entries_)
      width = std::max(width, metrics.horizontalAdvance(one.shortly));
    width += qRound(2.0 * kBeside * em()) + 2 * kMarkInset;
  }
  // Room for the bar that scrolls, so that nothing is set anew when it comes.
  setFixedWidth(width + verticalScrollBar()->sizeHint().width());
  spreadShortNames();
  scheduleDelayedItemsLayout();
  viewport()->update();
}

void QuestionColumn::changeEvent(QEvent* event) {
  QListWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) layOut();
}

// Ruled off from the page.
void QuestionColumn::paintEvent(QPaintEvent* event) {
  QListWidget::paintEvent(event);
  QPainter painter(viewport());
  painter.setPen(QPen(palette().color(QPalette::Mid), 0));
  const int edge = viewport()->width() - 1;
  painter.drawLine(edge, 0, edge, viewport()->height());
}

void QuestionColumn::resizeEvent(QResizeEvent* event) {
  QListWidget::resizeEvent(event);
  spreadShortNames();
  scheduleDelayedItemsLayout();
}

}  // namespace gui
