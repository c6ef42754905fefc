// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question_page_parts.hpp"

#include <QApplication>
#include <QBoxLayout>
#include <QCoreApplication>
#include <QEvent>
#include <QFontInfo>
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
#include "gui/window/help_note.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {

using rigs::SolutionPtr;
using telling::Picture;
using telling::Question;
using telling::QuestionView;

namespace {

// Below this height of the page an answer of more lines than these folds.
constexpr int kLowPage = 760;
constexpr int kBetween = 6;     // what stands below one another, px
constexpr int kCloser = 2;      // the same where room is short
constexpr int kNarrowest = 27;  // ems: the line at its foot is to stay one of a few lines
constexpr int kPageSide = 9;    // left and right
// A page of fewer lines than these does without the question, which stands in the list.
constexpr int kLinesForTitle = 26;
constexpr int kMostLines = 3;
constexpr int kTallest = 30;       // % of the page, of the verdicts on circuits
constexpr double kHeadline = 1.4;  // of the font
constexpr double kSmallerHeadline = 1.15;
constexpr int kHeadlineLines = 2;
constexpr int kHandRests = 120;      // ms
constexpr int kBesideSentence = 90;  // what stands beside the sentence

int linesOf(const QString& text, const QFont& font, int width) {
  if (text.isEmpty()) return 0;
  const QFontMetrics metrics(font);
  const QRect room(0, 0, std::max(100, width), 10000);
  return metrics.boundingRect(room, Qt::TextWordWrap, text).height() / metrics.lineSpacing();
}

}  // namespace

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
  column->setSpacing(kBetween);
  column->setContentsMargins(kPageSide, kCloser, kPageSide, kCloser);
  title = new QLabel(of);
  title->setTextFormat(Qt::PlainText);
  warning = label();
  warning->setObjectName(QStringLiteral("warning"));
  sentence = label();
  rest = label();
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

  head = new QHBoxLayout;
  head->addWidget(title);
  head->addStretch(1);
  column->addLayout(head);
  column->addWidget(warning);
  auto* said = new QHBoxLayout;
  said->addWidget(sentence, 1);
  said->addWidget(more, 0, Qt::AlignTop);
  column->addLayout(said);
  column->addWidget(rest);
  column->addWidget(options);
  column->addWidget(scroll, 1);
  column->addWidget(foot);

  QObject::connect(more, &QToolButton::toggled, of, [this] { say(); });
  QObject::connect(options, &QuestionOptions::viewChosen, of, &QuestionPage::setView);
  QObject::connect(options, &QuestionOptions::yearChosen, of, &QuestionPage::yearChanged);
  QObject::connect(writesNotes, &QTimer::timeout, of, [this] { writeNotes(); });
  QObject::connect(scroll->verticalScrollBar(), &QScrollBar::valueChanged, of, [this] {
    if (writesNotes->isActive()) writeNotes();
    freezeHeads();
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
  scroll->setAccessibleName(page->accessibleName());
  options->relabel(question);
  for (AnswerTable* table : tables) nameTable(*table);
  notes->setAccessibleName(
      QCoreApplication::translate("QuestionPage", "Rules, arithmetic and sources"));
  foot->retranslate();
  sentence->setAccessibleName(QCoreApplication::translate("QuestionPage", "Answer"));
  rest->setAccessibleName(sentence->accessibleName());
  warning->setAccessibleName(QCoreApplication::translate("QuestionPage", "Warning"));
  more->setText(QCoreApplication::translate("QuestionPage", "&Whole answer"));
  more->setToolTip(QCoreApplication::translate(
      "QuestionPage", "Shows or folds away what follows the first sentence"));
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

// In large letters, as long as they take two lines; a low window has no room for more of them.
double QuestionPage::Parts::headlineSize(const QString& text) const {
  for (const double size : {kHeadline, kSmallerHeadline}) {
    QFont font = page->font();
    font.setPointSizeF(page->font().pointSizeF() * size);
    font.setWeight(QFont::DemiBold);
    if (linesOf(text, font, page->width() - kBesideSentence) <= kHeadlineLines) return size;
  }
  return 1.0;
}

// The first sentence is the answer. In a low window it decides and the rest folds away, so that the
// picture and the head of its table are in view. Exports always have all of it.
void QuestionPage::Parts::say() {
  const QStringList calm = shown.calmSentences();
  const QString others = calm.mid(1).join(QLatin1Char(' '));
  warning->setText(shown.warnings.join(QLatin1Char('\n')));
  sentence->setText(calm.value(0));
  sentence->setAccessibleDescription(calm.join(QLatin1Char(' ')));
  rest->setText(others);
  if (isHeld) return;
  warning->setVisible(!shown.warnings.isEmpty());
  sentence->setVisible(!calm.isEmpty());
  write();
  placeOptions();
  const int lines = linesOf(sentence->text(), sentence->font(), page->width() - kBesideSentence) +
                    linesOf(others, rest->font(), page->width());
  // What a circuit's verdicts hang on is out of sight only where it would press everything else.
  const bool tooTall =
      question == Question::Circuit
          ? lines * QFontMetrics(rest->font()).lineSpacing() > page->height() * kTallest / 100
          : lines > kMostLines;
  const bool folds = page->height() < kLowPage && tooTall && !others.isEmpty();
  more->setVisible(folds);
  rest->setVisible(!others.isEmpty() && (!folds || more->isChecked()));
}

// Beside the question where there is room, so that the picture has what they would take; those of
// the overview, which are many, below its answer.
void QuestionPage::Parts::placeOptions() {
  title->setVisible(page->height() >= kLinesForTitle * QFontMetrics(page->font()).lineSpacing());
  const int spacing = title->isHidden() ? kCloser : kBetween;
  if (page->layout()->spacing() != spacing) page->layout()->setSpacing(spacing);
  const int together = (title->isHidden() ? 0 : title->sizeHint().width()) +
                       options->sizeHint().width() + kBesideSentence;
  const bool beside = question != Question::Overview && together <= page->width();
  auto* column = static_cast<QVBoxLayout*>(page->layout());
  if (beside == (head->indexOf(options) >= 0)) return;
  if (beside) {
    column->removeWidget(options);
    head->addWidget(options);
  } else {
    head->removeWidget(options);
    column->insertWidget(column->indexOf(scroll), options);
  }
}

void QuestionPage::Parts::write() {
  QFont said = page->font();
  said.setPointSizeF(page->font().pointSizeF() * headlineSize(sentence->text()));
  said.setWeight(QFont::DemiBold);
  if (sentence->font() != said) sentence->setFont(said);
}

// Whoever reads down a long table still sees whose column it is.
void QuestionPage::Parts::freezeHeads() {
  for (AnswerTable* table : tables)
    table->freezeHead(-table->mapTo(scroll->viewport(), QPoint()).y());
}

// What is under a dragging hand must not move because a sentence got longer.
void QuestionPage::Parts::holdStill(bool still) {
  isHeld = still;
  for (QWidget* one : std::initializer_list<QWidget*>{warning, sentence, rest, foot}) {
    if (still) {
      one->setFixedHeight(one->height());
    } else {
      one->setMinimumHeight(0);
      one->setMaximumHeight(QWIDGETSIZE_MAX);
    }
  }
  if (!still) say();
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
    QObject::connect(table, &AnswerTable::explanationWanted, page, [this, table](int row) {
      explainFigure(*table, row, question, page->reader());
    });
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

rigs::Reader QuestionPage::reader() const { return readerOf(parts_->units); }

void QuestionPage::retranslate() {
  setMinimumWidth(kNarrowest * QFontInfo(font()).pixelSize());
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
