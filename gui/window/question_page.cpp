// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/question_page.hpp"

#include <QApplication>
#include <QBoxLayout>
#include <QClipboard>
#include <QComboBox>
#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>
#include <QTableWidget>
#include <algorithm>

#include "gui/window/answer_text.hpp"
#include "gui/window/plan_chart.hpp"

namespace gui {
namespace {

// From this width two pictures stand side by side.
constexpr int kSideBySide = 1050;
constexpr int kShortestPicture = 300;
constexpr int kTitleInSight = 24;
constexpr int kCellMargin = 8;

// Copies what is selected, for spreadsheets.
class AnswerTable : public QTableWidget {
 public:
  using QTableWidget::QTableWidget;

  // As tall as its rows: the page scrolls, not the table. Long labels and names of rigs wrap.
  void fit() {
    QHeaderView* header = horizontalHeader();
    if (columnCount() == 0) return;
    header->resizeSection(0, std::min(sizeHintForColumn(0) + kCellMargin, width() * 42 / 100));
    int tallest = 0;
    for (int column = 1; column < columnCount(); ++column) {
      const QTableWidgetItem* item = horizontalHeaderItem(column);
      const QRect within(0, 0, header->sectionSize(column) - kCellMargin, 1000);
      const QRect box = header->fontMetrics().boundingRect(within, Qt::TextWordWrap,
                                                           item ? item->text() : QString());
      tallest = std::max(tallest, box.height());
    }
    header->setFixedHeight(tallest + kCellMargin);
    resizeRowsToContents();
    int height = header->height() + 2 * frameWidth() + 2;
    for (int row = 0; row < rowCount(); ++row) height += rowHeight(row);
    if (horizontalScrollBar()->maximum() > 0) height += horizontalScrollBar()->sizeHint().height();
    setFixedHeight(height);
  }

 protected:
  void keyPressEvent(QKeyEvent* event) override {
    if (!event->matches(QKeySequence::Copy)) return QTableWidget::keyPressEvent(event);
    QStringList lines;
    for (const QTableWidgetSelectionRange& range : selectedRanges()) {
      for (int row = range.topRow(); row <= range.bottomRow(); ++row) {
        QStringList cells;
        for (int column = range.leftColumn(); column <= range.rightColumn(); ++column) {
          cells += item(row, column) ? item(row, column)->text() : QString();
        }
        lines += cells.join(QLatin1Char('\t'));
      }
    }
    QApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
  }
};

bool isHeading(const QVector<QString>& row) {
  return std::all_of(row.begin() + 1, row.end(),
                     [](const QString& cell) { return cell.isEmpty(); });
}

}  // namespace

struct QuestionPage::Parts {
  explicit Parts(QuestionPage* of);

  QuestionPage* page;
  SolutionPtr solution;
  rigs::UnitSystem units = rigs::UnitSystem::SI;
  Question question = Question::HowLong;
  QuestionView view;
  Answer answer;

  QLabel* title;
  QLabel* sentence;
  QWidget* options;
  QLabel* rigLabel;
  QComboBox* rig;
  QLabel* kindLabel;
  QComboBox* kind;
  QLabel* batchesLabel;
  QSpinBox* batches;
  QScrollArea* scroll;
  QBoxLayout* pictures;
  QVector<PlanChart*> charts;
  AnswerTable* table;
  QLabel* notes;
  QLabel* cautions;

  void refresh();
  void relabel();
  void fillOptions();
  void fillTable();
  void arrange();
  void optionChanged();
};

QuestionPage::Parts::Parts(QuestionPage* of) : page(of) {
  auto* column = new QVBoxLayout(of);
  title = new QLabel(of);
  title->setTextFormat(Qt::PlainText);
  sentence = new QLabel(of);
  sentence->setTextFormat(Qt::PlainText);
  sentence->setWordWrap(true);
  sentence->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  options = new QWidget(of);
  auto* row = new QHBoxLayout(options);
  row->setContentsMargins(0, 0, 0, 0);
  kindLabel = new QLabel(options);
  kind = new QComboBox(options);
  rigLabel = new QLabel(options);
  rig = new QComboBox(options);
  batchesLabel = new QLabel(options);
  batches = new QSpinBox(options);
  batches->setRange(1, 1000);
  batches->setKeyboardTracking(false);
  kindLabel->setBuddy(kind);
  rigLabel->setBuddy(rig);
  batchesLabel->setBuddy(batches);
  for (QWidget* widget : {static_cast<QWidget*>(kindLabel), static_cast<QWidget*>(kind),
                          static_cast<QWidget*>(rigLabel), static_cast<QWidget*>(rig),
                          static_cast<QWidget*>(batchesLabel), static_cast<QWidget*>(batches)}) {
    row->addWidget(widget);
  }
  row->addStretch(1);

  scroll = new QScrollArea(of);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* inside = new QWidget(scroll);
  auto* stack = new QVBoxLayout(inside);
  stack->setContentsMargins(0, 0, 0, 0);
  pictures = new QBoxLayout(QBoxLayout::TopToBottom);
  pictures->setSpacing(12);
  stack->addLayout(pictures);
  table = new AnswerTable(inside);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->verticalHeader()->hide();
  table->setShowGrid(false);
  table->setFrameShape(QFrame::NoFrame);
  table->setTabKeyNavigation(false);
  table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table->horizontalHeader()->setHighlightSections(false);
  stack->addWidget(table);
  notes = new QLabel(inside);
  notes->setTextFormat(Qt::PlainText);
  notes->setWordWrap(true);
  notes->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  notes->setContentsMargins(0, 8, 0, 8);
  stack->addWidget(notes);
  stack->addStretch(1);
  scroll->setWidget(inside);

  cautions = new QLabel(of);
  cautions->setTextFormat(Qt::PlainText);
  cautions->setWordWrap(true);
  cautions->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);

  column->addWidget(title);
  column->addWidget(sentence);
  column->addWidget(options);
  column->addWidget(scroll, 1);
  column->addWidget(cautions);

  QObject::connect(kind, &QComboBox::activated, of, [this] { optionChanged(); });
  QObject::connect(rig, &QComboBox::activated, of, [this] { optionChanged(); });
  QObject::connect(batches, &QSpinBox::valueChanged, of, &QuestionPage::yearChanged);
  scroll->viewport()->installEventFilter(of);
}

void QuestionPage::Parts::optionChanged() {
  QuestionView changed = view;
  changed.rig = std::max(0, rig->currentIndex());
  if (question == Question::WhereHeat) changed.asBars = kind->currentIndex() == 1;
  if (question == Question::WorthJacket) changed.overThickness = kind->currentIndex() == 0;
  page->setView(changed);
}

// Everything that is said in a language.
void QuestionPage::Parts::relabel() {
  page->setAccessibleName(titleOf(question));
  rigLabel->setText(translate("QuestionPage", "&Rig"));
  batchesLabel->setText(translate("QuestionPage", "&Batches a year"));
  kindLabel->setText(question == Question::WhereHeat ? translate("QuestionPage", "&Show")
                                                     : translate("QuestionPage", "&Against"));
  const QStringList kinds =
      question == Question::WhereHeat
          ? QStringList{translate("QuestionPage", "power over time, one rig"),
                        translate("QuestionPage", "energy of the day, all rigs")}
          : QStringList{translate("QuestionPage", "thickness of the insulation"),
                        translate("QuestionPage", "power of the element")};
  const QSignalBlocker quiet(kind);
  kind->clear();
  kind->addItems(kinds);
  table->setAccessibleName(translate("QuestionPage", "The same numbers as a table"));
  notes->setAccessibleName(translate("QuestionPage", "Rules, arithmetic and sources"));
  cautions->setAccessibleName(translate("QuestionPage", "Cautions"));
  sentence->setAccessibleName(translate("QuestionPage", "Answer"));
}

void QuestionPage::Parts::fillOptions() {
  const bool kinds = question == Question::WhereHeat || question == Question::WorthJacket;
  // Bars show every rig, but the sentence is still about one.
  const bool oneRig = question == Question::WhereHeat;
  const bool cost = question == Question::WhatCost && solution && solution->plan.tariff.isStated();
  kindLabel->setVisible(kinds);
  kind->setVisible(kinds);
  rigLabel->setVisible(oneRig);
  rig->setVisible(oneRig);
  batchesLabel->setVisible(cost);
  batches->setVisible(cost);
  options->setVisible(kinds || oneRig || cost);
  const QSignalBlocker quietRig(rig);
  const QSignalBlocker quietKind(kind);
  const QSignalBlocker quietBatches(batches);
  QStringList names;
  if (solution) {
    for (std::size_t i = 0; i < solution->answers.rigs.size(); ++i) {
      names += QStringLiteral("%1 %2").arg(letterOfRig(static_cast<int>(i)),
                                           QString::fromStdString(solution->answers.rigs[i].name));
    }
  }
  QStringList shown;
  for (int i = 0; i < rig->count(); ++i) shown += rig->itemText(i);
  if (shown != names) {
    rig->clear();
    rig->addItems(names);
  }
  rig->setCurrentIndex(std::clamp(view.rig, 0, std::max(0, rig->count() - 1)));
  kind->setCurrentIndex(question == Question::WhereHeat ? (view.asBars ? 1 : 0)
                                                        : (view.overThickness ? 0 : 1));
  if (solution) batches->setValue(qRound(brewsPerYear(solution->plan)));
}

void QuestionPage::Parts::fillTable() {
  const PictureTable& from = answer.table;
  const auto columns = static_cast<int>(from.head.size());
  const auto rows = static_cast<int>(from.rows.size());
  const bool sameShape = table->columnCount() == columns && table->rowCount() == rows;
  if (!sameShape) {
    table->clear();
    table->clearSpans();
    table->setColumnCount(columns);
    table->setRowCount(rows);
  }
  table->setHorizontalHeaderLabels({from.head.begin(), from.head.end()});
  for (int column = 0; column < columns; ++column) {
    const int side = column == 0 ? Qt::AlignLeft : Qt::AlignRight;
    table->horizontalHeaderItem(column)->setData(
        Qt::TextAlignmentRole, side | int{Qt::AlignBottom} | int{Qt::TextWordWrap});
  }
  for (int row = 0; row < rows; ++row) {
    const bool heading = isHeading(from.rows[row]);
    if (table->columnSpan(row, 0) != (heading ? columns : 1)) {
      table->setSpan(row, 0, 1, heading ? columns : 1);
    }
    for (int column = 0; column < columns; ++column) {
      QTableWidgetItem* cell = table->item(row, column);
      if (!cell) {
        cell = new QTableWidgetItem;
        table->setItem(row, column, cell);
      }
      const QString& text = from.rows[row][column];
      if (cell->text() != text) cell->setText(text);
      cell->setToolTip(text.size() > 24 ? text : QString());
      cell->setTextAlignment(column == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                         : Qt::AlignRight | Qt::AlignVCenter);
      QFont font = table->font();
      font.setBold(heading);
      if (cell->font() != font) cell->setFont(font);
    }
  }
  if (!sameShape) {
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Fixed);
    table->fit();
  }
}

// Pictures as tall as what is seen allows: one with the table's beginning still in view; of two
// below one another both, or the first with all of its legend and the second's title as a hint.
void QuestionPage::Parts::arrange() {
  const int width = scroll->viewport()->width();
  const int room = scroll->viewport()->height();
  const bool beside = charts.size() > 1 && width >= kSideBySide;
  pictures->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  int height = room * 68 / 100;
  if (!beside && charts.size() > 1) {
    const int half = (room - pictures->spacing()) / 2;
    height = half >= kShortestPicture ? half : room - pictures->spacing() - kTitleInSight;
  }
  height = std::max(kShortestPicture, height);
  for (PlanChart* chart : charts) {
    if (chart->minimumHeight() != height) chart->setFixedHeight(height);
  }
}

void QuestionPage::Parts::refresh() {
  fillOptions();
  if (!solution) {
    answer = {};
    answer.title = titleOf(question);
  } else {
    answer = answerTo(question, *solution, units, view);
  }
  title->setText(answer.title);
  sentence->setText(answer.sentence);
  cautions->setText(answer.cautions.join(QLatin1Char(' ')));
  const QString below = (answer.notes + answer.furtherCautions).join(QLatin1Char('\n'));
  if (notes->text() != below) notes->setText(below);
  notes->setVisible(!below.isEmpty());
  while (charts.size() > answer.pictures.size()) delete charts.takeLast();
  while (charts.size() < answer.pictures.size()) {
    auto* chart = new PlanChart(scroll->widget());
    QObject::connect(chart, &PlanChart::dragged, page, &QuestionPage::goalDragged);
    pictures->addWidget(chart, 1);
    if (!charts.isEmpty()) QWidget::setTabOrder(charts.back(), chart);
    charts.push_back(chart);
    QWidget::setTabOrder(chart, table);
    arrange();
  }
  for (qsizetype i = 0; i < charts.size(); ++i) {
    charts[i]->show(answer.pictures[i]);
    charts[i]->setAccessibleDescription(answer.sentence);
  }
  fillTable();
}

QuestionPage::QuestionPage(QWidget* parent)
    : QWidget(parent), parts_(std::make_unique<Parts>(this)) {
  setFocusProxy(parts_->scroll);
  retranslate();
}
QuestionPage::~QuestionPage() = default;

void QuestionPage::show(const SolutionPtr& solution, rigs::UnitSystem units) {
  parts_->solution = solution;
  parts_->units = units;
  parts_->refresh();
}

SolutionPtr QuestionPage::solution() const { return parts_->solution; }
rigs::UnitSystem QuestionPage::units() const { return parts_->units; }

void QuestionPage::setQuestion(Question question) {
  if (question == parts_->question) return;
  parts_->question = question;
  parts_->relabel();
  parts_->refresh();
  parts_->arrange();
  parts_->scroll->verticalScrollBar()->setValue(0);
  Q_EMIT questionChanged(question);
}
Question QuestionPage::question() const { return parts_->question; }

void QuestionPage::setView(const QuestionView& view) {
  parts_->view = view;
  parts_->refresh();
  Q_EMIT viewChanged();
}
QuestionView QuestionPage::view() const { return parts_->view; }

Answer QuestionPage::currentAnswer() const { return parts_->answer; }

void QuestionPage::retranslate() {
  QFont quiet = font();
  quiet.setPointSizeF(font().pointSizeF() * 0.88);
  parts_->cautions->setFont(quiet);
  QFont said = font();
  said.setPointSizeF(font().pointSizeF() * 1.1);
  parts_->sentence->setFont(said);
  QFont asked = font();
  asked.setBold(true);
  parts_->title->setFont(asked);
  parts_->relabel();
  parts_->refresh();
  parts_->table->fit();
}

bool QuestionPage::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) {
    parts_->arrange();
    parts_->table->fit();
  }
  return QWidget::eventFilter(watched, event);
}

void QuestionPage::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::LocaleChange ||
      event->type() == QEvent::FontChange) {
    if (parts_) retranslate();
  }
  QWidget::changeEvent(event);
}

}  // namespace gui
