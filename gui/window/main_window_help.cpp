// SPDX-License-Identifier: GPL-3.0-or-later
// Help where one is, the list of keys, the way from one area to the next.
#include <QApplication>
#include <QDialog>
#include <QHeaderView>
#include <QMenuBar>
#include <QTableWidget>
#include <QVBoxLayout>

#include "gui/window/help_note.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

struct KeyRow {
  QString does, keys;
};

QString withoutMnemonic(QString text) {
  return text.remove(QLatin1Char('&')).remove(QStringLiteral(" ...")).trimmed();
}

// As the menus have them, so that the list cannot say what no key does.
void collectKeys(const QMenu& menu, QVector<KeyRow>& rows) {
  for (const QAction* action : menu.actions()) {
    if (action->menu()) {
      collectKeys(*action->menu(), rows);
      continue;
    }
    const QString keys = QKeySequence::listToString(action->shortcuts(), QKeySequence::NativeText);
    if (!keys.isEmpty()) rows.push_back({withoutMnemonic(action->text()), keys});
  }
}

QString nativeKey(int key) { return QKeySequence(key).toString(QKeySequence::NativeText); }

QRect onScreen(const QWidget& widget) { return {widget.mapToGlobal(QPoint(0, 0)), widget.size()}; }

void openNote(const QString& heading, const QString& text, QWidget& about) {
  (new HelpNote(heading, text, about))->openAt(onScreen(about));
}

}  // namespace

void MainWindow::helpOnFocus() {
  QWidget* focused = QApplication::focusWidget();
  for (QWidget* at = focused; at && at != this; at = at->parentWidget()) {
    if (auto* table = qobject_cast<AnswerTable*>(at)) {
      const int row = std::max(0, table->currentRow());
      if (table->asked(row)) return explainFigure(*table, row, page_->question(), page_->reader());
    }
    if (auto* cell = qobject_cast<FieldCell*>(at))
      return openNote(cell->field().label, focused->whatsThis(), *focused);
    if (at == questions_ || at == page_)
      return explainQuestion(page_->question(), page_->reader(), at == page_ ? *focused : *this);
    const QString text = at->whatsThis().isEmpty() ? at->toolTip() : at->whatsThis();
    if (!text.isEmpty()) return openNote(focused->accessibleName(), text, *focused);
  }
  showKeys();
}

void MainWindow::showKeys() {
  QVector<KeyRow> rows;
  for (const QAction* action : menuBar()->actions())
    if (action->menu()) collectKeys(*action->menu(), rows);
  const QString up = nativeKey(Qt::Key_Up) + QStringLiteral(", ") + nativeKey(Qt::Key_Down);
  rows += {{tr("In a field: a step up or down"), up},
           {tr("In a field: ten steps"),
            QKeySequence(Qt::SHIFT | Qt::Key_Up).toString(QKeySequence::NativeText) +
                QStringLiteral(", ") + nativeKey(Qt::Key_PageUp)},
           {tr("In a field: open its slider"),
            QKeySequence(Qt::ALT | Qt::Key_Down).toString(QKeySequence::NativeText)},
           {tr("In a field or table: its menu"), nativeKey(Qt::Key_Menu)},
           {tr("In a table: open the question that tells more"), nativeKey(Qt::Key_Return)},
           {tr("In a table: copy what is selected"),
            QKeySequence(QKeySequence::Copy).toString(QKeySequence::NativeText)}};
  auto* dialog = new QDialog(this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setObjectName(QStringLiteral("keys"));
  dialog->setWindowTitle(tr("Keys"));
  auto* table = new QTableWidget(static_cast<int>(rows.size()), 2);
  table->setAccessibleName(tr("Keys"));
  table->setHorizontalHeaderLabels({tr("What it does"), tr("Key")});
  table->verticalHeader()->hide();
  table->setShowGrid(false);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  for (int row = 0; row < table->rowCount(); ++row) {
    table->setItem(row, 0, new QTableWidgetItem(rows[row].does));
    table->setItem(row, 1, new QTableWidgetItem(rows[row].keys));
  }
  table->resizeColumnsToContents();
  table->horizontalHeader()->setStretchLastSection(true);
  (new QVBoxLayout(dialog))->addWidget(table);
  const int width = table->columnWidth(0) + table->columnWidth(1) + 6 * fontMetrics().height();
  dialog->resize(std::min(width, this->width()), std::min(height(), 40 * fontMetrics().height()));
  dialog->show();
}

// Where the hand was last in the area, else the first place that takes keys.
QWidget* MainWindow::entryOf(QWidget* area) const {
  if (QWidget* last = lastIn_.value(area); last && last->isVisible() && area->isAncestorOf(last))
    return last;
  if (area->focusPolicy() & Qt::TabFocus) return area;
  for (QWidget* next = area->nextInFocusChain(); next && next != area;
       next = next->nextInFocusChain())
    if (area->isAncestorOf(next) && (next->focusPolicy() & Qt::TabFocus) && next->isVisible() &&
        next->isEnabled())
      return next;
  return nullptr;
}

void MainWindow::goToArea(int by) {
  QVector<QWidget*> areas;
  for (QWidget* area : {static_cast<QWidget*>(questions_), static_cast<QWidget*>(forms_),
                        static_cast<QWidget*>(page_)})
    if (area->isVisible()) areas += area;
  QWidget* focused = focusWidget();
  qsizetype from = -1;
  for (qsizetype i = 0; i < areas.size(); ++i)
    if (focused && (areas[i] == focused || areas[i]->isAncestorOf(focused))) from = i;
  if (from >= 0) lastIn_[areas[from]] = focused;
  const qsizetype count = areas.size();
  const qsizetype to = from < 0 ? 0 : (from + by + count) % count;
  if (QWidget* entry = entryOf(areas[to])) entry->setFocus(Qt::ShortcutFocusReason);
}

}  // namespace gui
