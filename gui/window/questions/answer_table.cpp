// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/answer_table.hpp"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QFontInfo>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QResizeEvent>
#include <QScrollBar>
#include <algorithm>
#include <numeric>
#include <set>

#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

constexpr qsizetype kLongestNumber = 8;  // characters
constexpr int kHeadEdge = 10;            // around the words of the labels
constexpr int kNarrowestNumbers = 84;    // a column; then the table scrolls sideways
constexpr int kFiguresEms = 17;          // a column, at most; and one of words
constexpr int kWordsEms = 26;

Rule ruleOf(const ShownTable& table, qsizetype row) {
  const auto isSum = [&](qsizetype at) {
    return at >= 0 && at < table.rows.size() && table.rows[at].isSum;
  };
  if (!isSum(row)) return Rule::Hairline;
  return isSum(row + 1) ? Rule::Sum : Rule::SumEnds;
}

}  // namespace

AnswerTable::AnswerTable(QWidget* parent) : QTableWidget(parent) {
  setHorizontalHeader(new RuledHeader(this));
  setItemDelegate(new RuledDelegate(this));
  viewport()->setBackgroundRole(QPalette::Window);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  verticalHeader()->hide();
  setShowGrid(false);
  setFrameShape(QFrame::NoFrame);
  setTabKeyNavigation(false);
  connect(this, &QTableWidget::cellClicked, this, &AnswerTable::open);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setTextElideMode(Qt::ElideNone);  // it wraps
  horizontalHeader()->setMinimumSectionSize(kNarrowestNumbers);
}

void AnswerTable::open(int row) {
  if (const auto question = rows_.value(row).opens) Q_EMIT opened(*question);
}

void AnswerTable::fill(const ShownTable& from) {
  rows_ = from.rows;
  const bool any =
      std::any_of(rows_.begin(), rows_.end(), [](const auto& row) { return row.opens; });
  viewport()->setCursor(any ? Qt::PointingHandCursor : Qt::ArrowCursor);
  const auto columns = static_cast<int>(from.head.size());
  const auto rows = static_cast<int>(from.rows.size());
  const bool sameShape = columnCount() == columns && rowCount() == rows;
  if (!sameShape) {
    clear();
    clearSpans();
    setColumnCount(columns);
    setRowCount(rows);
  }
  bool reshaped = !sameShape;  // what may change a height
  for (int column = 0; column < columns; ++column)
    reshaped |= setHead(column, from.headWithMark(column), !from.marks.value(column).isEmpty(),
                        from.looks.value(column, -1));
  for (int row = 0; row < rows; ++row) {
    const bool heading = from.rows[row].isHeading;
    if (columnSpan(row, 0) != (heading ? columns : 1)) setSpan(row, 0, 1, heading ? columns : 1);
    for (int column = 0; column < columns; ++column)
      reshaped |= setCell(row, column, from.rows[row].cells.value(column),
                          heading || from.rows[row].isSum, ruleOf(from, row));
  }
  if (!sameShape) horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  if (reshaped) fit();
}

bool AnswerTable::setHead(int column, const QString& text, bool strongly, int look) {
  QTableWidgetItem* head = horizontalHeaderItem(column);
  if (head && head->text() == text && head->data(kLookRole) == QVariant(look)) return false;
  if (!head) {
    head = new QTableWidgetItem;
    setHorizontalHeaderItem(column, head);
  }
  head->setText(text);
  head->setData(kLookRole, look);
  QFont weight = font();
  weight.setBold(strongly);  // what must not be overlooked
  head->setFont(weight);
  const Qt::Alignment side = column == 0 ? Qt::AlignLeft : Qt::AlignRight;
  // The type has no name for wrapping, the header heeds it all the same.
  using Flags = Qt::Alignment::Int;
  head->setTextAlignment(Qt::Alignment::fromInt(static_cast<Flags>(side | Qt::AlignBottom) |
                                                static_cast<Flags>(Qt::TextWordWrap)));
  head->setToolTip(text);
  return true;
}

bool AnswerTable::setCell(int row, int column, const QString& text, bool strongly, Rule rule) {
  QTableWidgetItem* cell = item(row, column);
  if (!cell) {
    cell = new QTableWidgetItem;
    cell->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    setItem(row, column, cell);
  }
  bool reshaped = false;
  if (cell->text() != text) {
    // Numbers are as tall as numbers; words wrap.
    reshaped = column == 0 || std::max(cell->text().size(), text.size()) > kLongestNumber;
    cell->setText(text);
    cell->setToolTip(text.size() > 24 ? text : QString());
  }
  if (cell->data(kRuleRole) != QVariant(static_cast<int>(rule))) {
    cell->setData(kRuleRole, static_cast<int>(rule));
    reshaped = true;
  }
  QFont weight = font();
  weight.setBold(strongly);
  if (cell->font() == weight) return reshaped;
  cell->setFont(weight);
  return true;
}

// All figures' columns alike: as wide as there is room, but never so wide that the eye loses the
// way from a name to its figure.
int AnswerTable::columnWidthFor(int room, int narrowest) const {
  const int columns = columnCount() - 1;
  if (columns < 1) return narrowest;
  const int em = QFontInfo(font()).pixelSize();
  int wanted = kFiguresEms * em;
  for (int column = 1; column <= columns; ++column)
    wanted = std::max(wanted, std::min(sizeHintForColumn(column) + kHeadEdge, kWordsEms * em));
  return std::max(narrowest, std::min(wanted, room / columns));
}

// Of these columns, px: no line breaks in it.
int AnswerTable::longestWord(int from, int to) const {
  int longest = 0;
  for (int row = 0; row < rowCount(); ++row) {
    if (columnSpan(row, 0) > 1) continue;
    for (int column = from; column < to; ++column) {
      const QTableWidgetItem* cell = item(row, column);
      if (!cell) continue;
      const QFontMetrics metrics(cell->font());
      for (const QString& word : cell->text().split(QLatin1Char(' ')))
        longest = std::max(longest, metrics.horizontalAdvance(word));
    }
  }
  return longest;
}

void AnswerTable::freezeHead(int above) {
  above_ = above;
  QHeaderView& head = *horizontalHeader();
  const int last = rowCount() > 0 ? rowHeight(rowCount() - 1) : 0;
  const int lowest = std::max(0, height() - head.height() - last);
  head.move(head.x(), frameWidth() + std::clamp(above, 0, lowest));
  head.raise();
}

void AnswerTable::updateGeometries() {
  QTableWidget::updateGeometries();
  freezeHead(above_);
}

void AnswerTable::fit() {
  if (columnCount() == 0) return;
  QHeaderView& head = *horizontalHeader();
  // Rather a label over more lines than a column out of sight.
  const int narrowest = std::max(kNarrowestNumbers, longestWord(1, columnCount()) + kHeadEdge);
  const int beside = width() - (columnCount() - 1) * narrowest;
  const int most = std::clamp(beside, width() * 25 / 100, width() * 42 / 100);
  const int labels = std::min(sizeHintForColumn(0) + kHeadEdge, most);
  head.resizeSection(0, std::max({labels, longestWord(0, 1) + kHeadEdge, kNarrowestNumbers}));
  const int each = columnWidthFor(width() - head.sectionSize(0), narrowest);
  for (int column = 1; column < columnCount(); ++column) head.resizeSection(column, each);
  resizeRowsToContents();
  const auto& ruled = static_cast<const RuledHeader&>(head);
  int tallest = fontMetrics().height();
  for (int column = 0; column < columnCount(); ++column)
    tallest = std::max(tallest, ruled.heightOf(column));
  if (head.height() != tallest) head.setFixedHeight(tallest);
  int height = tallest + 2 * frameWidth() + 2;
  for (int row = 0; row < rowCount(); ++row) height += rowHeight(row);
  if (horizontalScrollBar()->maximum() > 0) height += horizontalScrollBar()->sizeHint().height();
  setFixedHeight(height);
}

// One that was filled before it had its place was fitted to another.
void AnswerTable::resizeEvent(QResizeEvent* event) {
  QTableWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) fit();
}

void AnswerTable::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return open(currentRow());
  if (event->matches(QKeySequence::Copy)) return copySelected();
  QTableWidget::keyPressEvent(event);
}

std::optional<telling::Row> AnswerTable::asked(int row) const {
  if (row < 0 || row >= rows_.size() || rows_[row].isHeading) return std::nullopt;
  telling::Row of;
  of.result = rows_[row].result;
  of.opens = rows_[row].opens;
  return of;
}

QRect AnswerTable::placeOf(int row) const {
  const QRect at = visualRect(model()->index(row, 0));
  return {viewport()->mapToGlobal(at.topLeft()), QSize(viewport()->width(), at.height())};
}

QString AnswerTable::asText(const QVector<int>& rows, const QVector<int>& columns) const {
  QStringList heads;
  for (const int column : columns) {
    const QTableWidgetItem* head = horizontalHeaderItem(column);
    heads += head ? head->text().simplified() : QString();
  }
  QStringList lines{heads.join(QLatin1Char('\t'))};
  for (const int row : rows) {
    QStringList cells;
    for (const int column : columns)
      cells += item(row, column) ? item(row, column)->text() : QString();
    lines += cells.join(QLatin1Char('\t'));
  }
  return lines.join(QLatin1Char('\n'));
}

void AnswerTable::copySelected() const {
  std::set<int> rows, columns;
  for (const QModelIndex& index : selectedIndexes()) {
    rows.insert(index.row());
    columns.insert(index.column());
  }
  if (rows.size() == 1 && columns.size() == 1) {
    const QTableWidgetItem* cell = item(*rows.begin(), *columns.begin());
    QApplication::clipboard()->setText(cell ? cell->text() : QString());
    return;
  }
  if (rows.empty()) return;
  columns.insert(0);
  QApplication::clipboard()->setText(
      asText({rows.begin(), rows.end()}, {columns.begin(), columns.end()}));
}

void AnswerTable::copyAll() const {
  QVector<int> rows(rowCount()), columns(columnCount());
  std::iota(rows.begin(), rows.end(), 0);
  std::iota(columns.begin(), columns.end(), 0);
  QApplication::clipboard()->setText(asText(rows, columns));
}

void AnswerTable::contextMenuEvent(QContextMenuEvent* event) {
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  const QTableWidgetItem* under =
      byKey ? currentItem() : itemAt(viewport()->mapFromGlobal(event->globalPos()));
  const int row = under ? under->row() : -1;
  QMenu menu(this);
  if (under) {
    menu.addAction(tr("&Copy cell"), this,
                   [text = under->text()] { QApplication::clipboard()->setText(text); });
    menu.addAction(tr("Copy what is &selected"), QKeySequence::Copy, this,
                   [this] { copySelected(); });
  }
  menu.addAction(tr("Copy the &table with its heads"), this, [this] { copyAll(); });
  if (asked(row)) {
    menu.addSeparator();
    menu.addAction(tr("&How was this computed?"), QKeySequence::HelpContents, this,
                   [this, row] { Q_EMIT explanationWanted(row); });
  }
  if (const auto question = row >= 0 ? rows_[row].opens : std::nullopt)
    menu.addAction(tr("&Open \"%1\"").arg(told(telling::titleOf(*question))), this,
                   [this, row] { open(row); });
  menu.exec(byKey && row >= 0 ? placeOf(row).bottomLeft() : event->globalPos());
}

}  // namespace gui
