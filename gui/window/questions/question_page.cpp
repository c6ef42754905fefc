// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question_page.hpp"

#include <QApplication>
#include <QBoxLayout>
#include <QCoreApplication>
#include <QEvent>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QToolButton>
#include <QWheelEvent>
#include <algorithm>
#include <vector>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/strip.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/questions/cautions_foot.hpp"
#include "gui/window/questions/question_options.hpp"
#include "gui/window/questions/rig_sentences.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {

using rigs::SolutionPtr;
using telling::Picture;
using telling::Question;
using telling::QuestionView;

namespace {

// From this width two pictures stand side by side.
constexpr int kSideBySide = 1050;
constexpr int kShortestPicture = 300;
constexpr int kShortestPlot = 180;
constexpr int kTitleInSight = 24;
// Below this height of the page an answer of more lines than these folds.
constexpr int kLowPage = 760;
constexpr int kMostLines = 4;
constexpr int kHandRests = 120;      // ms
constexpr int kBesideSentence = 90;  // what stands beside the sentence

}  // namespace

struct QuestionPage::Parts {
  explicit Parts(QuestionPage* of);

  QuestionPage* page;
  SolutionPtr solution;  // that is seen
  SolutionPtr newest, whole;
  std::optional<double> wanted;  // minutes
  rigs::UnitSystem units = rigs::UnitSystem::SI;
  Question question = Question::Overview;
  QuestionView view{.everyRule = true};  // the page has room for them
  telling::Answer answer;
  ShownAnswer shown;  // as it is read

  QLabel* title;
  QLabel* warning;  // never folds away
  QLabel* sentence;
  QToolButton* more;
  QuestionOptions* options;
  QScrollArea* scroll;
  RigSentences* rigs;      // of the overview
  QBoxLayout* shownBelow;  // pictures and tables
  QBoxLayout* pictures;
  std::vector<PlanChart*> charts;
  QStringList arrangedFor;  // what stands around the plots
  QVBoxLayout* below;       // tables, one below the other
  QVector<AnswerTable*> tables;
  QLabel* notes;
  QString noted;        // what the notes are to say
  QTimer* writesNotes;  // out of sight, when the hand rests
  CautionsFoot* foot;

  void note(const QString& text);
  void writeNotes();
  void choose();
  void refresh();
  void relabel();
  void placeWanted(Picture& picture) const;
  void putWanted();
  void say();
  void write();
  void holdStill(bool still);
  void nameTable(AnswerTable& table) const;
  void showPictures();
  void showTables();
  PlanChart* newChart();
  void arrange();

 private:
  QLabel* label() const;
  QWidget* scrolled();
};

// Whole sentences, which a person may copy.
QLabel* QuestionPage::Parts::label() const {
  auto* made = new QLabel(page);
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return made;
}

QWidget* QuestionPage::Parts::scrolled() {
  auto* inside = new QWidget;
  auto* stack = new QVBoxLayout(inside);
  stack->setContentsMargins(0, 0, 0, 0);
  rigs = new RigSentences;
  stack->addWidget(rigs);
  QObject::connect(rigs, &RigSentences::partChosen, page, &QuestionPage::partChosen);
  QObject::connect(rigs, &RigSentences::anotherWanted, page, &QuestionPage::anotherWanted);
  shownBelow = new QBoxLayout(QBoxLayout::TopToBottom);
  stack->addLayout(shownBelow);
  pictures = new QBoxLayout(QBoxLayout::TopToBottom);
  pictures->setSpacing(12);
  shownBelow->addLayout(pictures);
  below = new QVBoxLayout;
  shownBelow->addLayout(below);
  notes = label();
  notes->setContentsMargins(0, 8, 0, 8);
  stack->addWidget(notes);
  stack->addStretch(1);
  writesNotes = new QTimer(page);
  writesNotes->setSingleShot(true);
  writesNotes->setInterval(kHandRests);
  return inside;
}

QuestionPage::Parts::Parts(QuestionPage* of) : page(of) {
  auto* column = new QVBoxLayout(of);
  title = new QLabel(of);
  title->setTextFormat(Qt::PlainText);
  warning = label();
  warning->setObjectName(QStringLiteral("warning"));
  sentence = label();
  more = new QToolButton(of);
  more->setObjectName(QStringLiteral("whole answer"));
  more->setCheckable(true);
  more->setAutoRaise(true);
  options = new QuestionOptions(of);
  scroll = new QScrollArea(of);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(scrolled());
  foot = new CautionsFoot(of);

  column->addWidget(title);
  column->addWidget(warning);
  auto* said = new QHBoxLayout;
  said->addWidget(sentence, 1);
  said->addWidget(more, 0, Qt::AlignTop);
  column->addLayout(said);
  column->addWidget(options);
  column->addWidget(scroll, 1);
  column->addWidget(foot);

  QObject::connect(more, &QToolButton::toggled, of, [this] { say(); });
  QObject::connect(options, &QuestionOptions::viewChosen, of, &QuestionPage::setView);
  QObject::connect(options, &QuestionOptions::yearChosen, of, &QuestionPage::yearChanged);
  QObject::connect(writesNotes, &QTimer::timeout, of, [this] { writeNotes(); });
  QObject::connect(scroll->verticalScrollBar(), &QScrollBar::valueChanged, of, [this] {
    if (writesNotes->isActive()) writeNotes();
  });
  scroll->viewport()->installEventFilter(of);
}

// Breaking pages of text into lines takes longer than drawing the picture that is dragged: what
// nobody sees can wait until the hand rests.
void QuestionPage::Parts::note(const QString& text) {
  noted = text;
  if (noted == notes->text()) {
    writesNotes->stop();
  } else if (notes->text().isEmpty() || noted.isEmpty() || !notes->visibleRegion().isEmpty()) {
    writeNotes();
  } else {
    writesNotes->start();
  }
  notes->setVisible(!noted.isEmpty());
}

void QuestionPage::Parts::writeNotes() {
  writesNotes->stop();
  if (notes->text() != noted) notes->setText(noted);
}

// Everything that is said in a language.
void QuestionPage::Parts::relabel() {
  page->setAccessibleName(told(telling::titleOf(question)));
  options->relabel(question);
  for (AnswerTable* table : tables) nameTable(*table);
  notes->setAccessibleName(
      QCoreApplication::translate("QuestionPage", "Rules, arithmetic and sources"));
  foot->retranslate();
  sentence->setAccessibleName(QCoreApplication::translate("QuestionPage", "Answer"));
  warning->setAccessibleName(QCoreApplication::translate("QuestionPage", "Warning"));
  more->setText(QCoreApplication::translate("QuestionPage", "&Whole answer"));
  more->setToolTip(QCoreApplication::translate(
      "QuestionPage", "Shows or folds away what follows the first sentence"));
}

// Pictures as tall as what is seen allows: one with the table's beginning still in view; of two
// below one another both, or the first with all of its legend and the second's title as a hint.
void QuestionPage::Parts::arrange() {
  // The overview is a table, which its picture only illustrates.
  shownBelow->setDirection(question == Question::Overview ? QBoxLayout::BottomToTop
                                                          : QBoxLayout::TopToBottom);
  const int width = scroll->viewport()->width();
  const int room = scroll->viewport()->height();
  const bool beside = charts.size() > 1 && width >= kSideBySide;
  pictures->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  int height = room * 70 / 100;
  if (!beside && charts.size() > 1) {
    const int half = (room - pictures->spacing()) / 2;
    height = half >= kShortestPicture ? half : room - pictures->spacing() - kTitleInSight;
  }
  height = std::max(kShortestPicture, height);
  // A tall legend must not squeeze the curves.
  const int each = beside ? width / static_cast<int>(charts.size()) : width;
  for (PlanChart* chart : charts)
    height = std::max(
        height, std::min(room, kShortestPlot + aroundPlot(chart->picture(), each,
                                                          lookOf(chart->palette(), chart->font(),
                                                                 chart->locale()))));
  for (PlanChart* chart : charts) {
    if (chart->minimumHeight() != height) chart->setFixedHeight(height);
  }
}

// Half an answer would make the curves vanish until the rest is there; an older one stays instead.
void QuestionPage::Parts::choose() {
  const rigs::Searches needed = telling::neededBy(question, view);
  if (!newest || newest->done.covers(needed)) {
    solution = newest;
  } else if (!solution || !solution->done.covers(needed)) {
    solution = whole ? whole : newest;
  }
}

void QuestionPage::Parts::placeWanted(Picture& picture) const {
  if (!picture.draggable || !wanted) return;
  picture.draggable = wanted;
  picture.draggableLabel = rigs::tell(
      rigs::Told(TOLD("Answer", "wanted: %1"), rigs::asChosen(physics::minutes(*wanted))),
      readerOf(units));
}

// Where the plan has it: also when the hand lets go, for that is not always where the hand was.
void QuestionPage::Parts::putWanted() {
  for (std::size_t i = 0; i < std::min(charts.size(), answer.pictures.size()); ++i) {
    Picture& picture = answer.pictures[i];
    placeWanted(picture);
    shown.pictures[i].draggable = picture.draggable;
    shown.pictures[i].draggableLabel = picture.draggableLabel;
    if (picture.draggable)
      charts[i]->setDraggable(*picture.draggable, QString::fromStdString(picture.draggableLabel));
  }
}

// In a low window the first sentence decides and the rest folds away, so that the picture and the
// head of its table are in view. Exports always have all of it.
void QuestionPage::Parts::say() {
  const QStringList calm = shown.calmSentences();
  const QString all = calm.join(QLatin1Char(' '));
  const QString first = calm.value(0);
  warning->setText(shown.warnings.join(QLatin1Char('\n')));
  warning->setVisible(!shown.warnings.isEmpty());
  const QFontMetrics metrics(sentence->font());
  const QRect room(0, 0, std::max(100, page->width() - kBesideSentence), 10000);
  const int lines =
      metrics.boundingRect(room, Qt::TextWordWrap, all).height() / metrics.lineSpacing();
  // What a circuit's verdicts hang on is not to be out of sight.
  const bool folds = question != Question::Circuit && page->height() < kLowPage &&
                     lines > kMostLines && first != all;
  more->setVisible(folds);
  sentence->setText(folds && !more->isChecked() ? first : all);
  sentence->setAccessibleDescription(all);
}

// The overview's sentence is one rig's day in a line: a headline. Others go on for several.
void QuestionPage::Parts::write() {
  const bool headline = question == Question::Overview;
  QFont said = page->font();
  said.setPointSizeF(page->font().pointSizeF() * (headline ? 1.35 : 1.1));
  if (headline) said.setWeight(QFont::DemiBold);
  if (sentence->font() != said) sentence->setFont(said);
}

// What is under a dragging hand must not move because a sentence got longer.
void QuestionPage::Parts::holdStill(bool still) {
  for (QWidget* one : std::initializer_list<QWidget*>{warning, sentence, foot}) {
    if (still) {
      one->setFixedHeight(one->height());
    } else {
      one->setMinimumHeight(0);
      one->setMaximumHeight(QWIDGETSIZE_MAX);
    }
  }
}

void QuestionPage::Parts::refresh() {
  choose();
  options->show(question, view, solution);
  const rigs::Reader reader = readerOf(units);
  answer = {};
  answer.title = telling::titleOf(question);
  if (solution) {
    answer = telling::answerTo(question, *solution, reader, view);
    for (Picture& picture : answer.pictures) placeWanted(picture);
  }
  shown = gui::shown(answer, solution ? rigNamesOf(*solution) : std::vector<std::string>(), reader);
  title->setText(shown.title);
  write();
  say();
  rigs->show(question == Question::Overview ? solution : nullptr, reader);
  // Cautions of this plan in particular stand with the notes.
  foot->show(solution ? told(telling::stripOf({*solution, solution->plan, reader, view}), reader)
                      : QString(),
             shown.cautions);
  note((asLines(shown.notes) + shown.furtherCautions).join(QLatin1Char('\n')));
  showPictures();
  showTables();
}

void QuestionPage::Parts::showPictures() {
  while (charts.size() > shown.pictures.size()) {
    delete charts.back();
    charts.pop_back();
  }
  while (charts.size() < shown.pictures.size()) {
    charts.push_back(newChart());
    arrange();
  }
  for (std::size_t i = 0; i < charts.size(); ++i) {
    charts[i]->show(shown.pictures[i]);
    charts[i]->setAccessibleDescription(shown.headline());
  }
  if (const QStringList around = aroundTexts(shown.pictures); around != arrangedFor) {
    arrangedFor = around;
    arrange();
  }
}

PlanChart* QuestionPage::Parts::newChart() {
  auto* chart = new PlanChart(scroll->widget());
  QObject::connect(chart, &PlanChart::dragged, page, &QuestionPage::goalDragged);
  QObject::connect(chart, &PlanChart::handChanged, page, [this](bool on) {
    holdStill(on);
    if (!on) putWanted();
  });
  pictures->addWidget(chart, 1);
  if (!charts.empty()) QWidget::setTabOrder(charts.back(), chart);
  if (!tables.isEmpty()) QWidget::setTabOrder(chart, tables.front());
  return chart;
}

void QuestionPage::Parts::nameTable(AnswerTable& table) const {
  table.setAccessibleName(
      QCoreApplication::translate("QuestionPage", "The same numbers as a table"));
}

void QuestionPage::Parts::showTables() {
  while (tables.size() > shown.tables.size()) delete tables.takeLast();
  while (tables.size() < shown.tables.size()) {
    auto* table = new AnswerTable(scroll->widget());
    nameTable(*table);
    QObject::connect(table, &AnswerTable::opened, page, &QuestionPage::setQuestion);
    below->addWidget(table);
    QWidget* before = !tables.isEmpty() ? static_cast<QWidget*>(tables.back())
                      : charts.empty()  ? nullptr
                                        : static_cast<QWidget*>(charts.back());
    if (before) QWidget::setTabOrder(before, table);
    tables.push_back(table);
  }
  for (qsizetype i = 0; i < tables.size(); ++i) tables[i]->fill(shown.tables[i]);
}

QuestionPage::QuestionPage(QWidget* parent)
    : QWidget(parent), parts_(std::make_unique<Parts>(this)) {
  setFocusProxy(parts_->scroll);
  retranslate();
}
QuestionPage::~QuestionPage() = default;

void QuestionPage::show(const SolutionPtr& solution, rigs::UnitSystem units) {
  const SolutionPtr seen = parts_->solution;
  const bool sameUnits = parts_->units == units;
  parts_->newest = solution;
  if (!solution || solution->done.covers(rigs::kEverySearch)) parts_->whole = solution;
  parts_->units = units;
  parts_->choose();
  if (parts_->solution != seen || !sameUnits) parts_->refresh();
}

SolutionPtr QuestionPage::solution() const { return parts_->solution; }
SolutionPtr QuestionPage::newestSolution() const { return parts_->newest; }
SolutionPtr QuestionPage::wholeSolution() const { return parts_->whole; }
bool QuestionPage::isWritten() const { return !parts_->writesNotes->isActive(); }
rigs::Searches QuestionPage::needed() const {
  return telling::neededBy(parts_->question, parts_->view);
}

void QuestionPage::setWantedMinutes(std::optional<double> minutes) {
  if (parts_->wanted == minutes) return;
  parts_->wanted = minutes;
  parts_->putWanted();
}

rigs::UnitSystem QuestionPage::units() const { return parts_->units; }

void QuestionPage::setQuestion(Question question) {
  if (question == parts_->question) return;
  parts_->question = question;
  parts_->relabel();
  parts_->refresh();
  parts_->writeNotes();
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

ShownAnswer QuestionPage::currentAnswer() const { return parts_->shown; }

telling::Answer QuestionPage::seenAnswer() const {
  telling::Answer seen = parts_->answer;
  for (std::size_t i = 0; i < std::min(seen.pictures.size(), parts_->charts.size()); ++i) {
    const PlanChart& chart = *parts_->charts[i];
    if (!chart.isZoomed()) continue;
    const ChartWindow window = chart.visibleWindow();
    Picture& picture = seen.pictures[i];
    picture.xFrom = window.xFrom;
    picture.xTo = window.xTo;
    picture.yFrom = window.yFrom;
    picture.yTo = window.yTo;
    picture.exactly = true;
  }
  return seen;
}

rigs::Reader QuestionPage::reader() const { return readerOf(parts_->units); }

void QuestionPage::retranslate() {
  QFont quiet = font();
  quiet.setPointSizeF(font().pointSizeF() * 0.88);
  parts_->foot->setLetters(quiet);
  parts_->write();
  QFont said = font();
  said.setPointSizeF(font().pointSizeF() * 1.1);
  said.setBold(true);
  parts_->warning->setFont(said);
  QFont asked = font();
  asked.setBold(true);
  parts_->title->setFont(asked);
  parts_->relabel();
  parts_->refresh();
  for (AnswerTable* table : parts_->tables) table->fit();
}

bool QuestionPage::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) {
    parts_->say();
    parts_->arrange();
    for (AnswerTable* table : parts_->tables) table->fit();
  }
  return QWidget::eventFilter(watched, event);
}

void QuestionPage::wheelEvent(QWheelEvent* event) {
  QCoreApplication::sendEvent(parts_->scroll->verticalScrollBar(), event);
}

void QuestionPage::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::LocaleChange ||
      event->type() == QEvent::FontChange) {
    if (parts_) retranslate();
  }
  QWidget::changeEvent(event);
}

}  // namespace gui
