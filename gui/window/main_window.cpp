// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/main_window.hpp"

#include <QApplication>
#include <QCloseEvent>
#include <QDateTime>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFontInfo>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSettings>
#include <QSignalBlocker>
#include <QStatusBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "gui/telling/case.hpp"
#include "gui/telling/overview.hpp"
#include "gui/telling/shortest.hpp"
#include "gui/window/appearance.hpp"
#include "gui/window/questions/search_bar.hpp"
#include "gui/window/words/reader.hpp"
#include "gui/window/words/text_access.hpp"
#include "rigs/documents/json_edit.hpp"

namespace gui {

using rigs::SolutionPtr;
using telling::Question;

namespace {

Question questionAt(int place) { return telling::allQuestions()[static_cast<std::size_t>(place)]; }

int placeOf(Question question) {
  const auto all = telling::allQuestions();
  return static_cast<int>(std::find(all.begin(), all.end(), question) - all.begin());
}

// Wide enough for four rigs beside each other.
constexpr int kFormsEms = 48;
// A pause this long (ms) ends a drag: the next one is a step of its own.
constexpr qint64 kDragPause = 800;

rigs::UnitSystem unitsToStartWith() {
  const QString stored = QSettings().value(QStringLiteral("units")).toString();
  if (const auto units = rigs::unitsFromText(stored.toStdString())) return *units;
  return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
             ? rigs::UnitSystem::UsCustomary
             : rigs::UnitSystem::SI;
}

QString singleFile(const QMimeData& data) {
  const QList<QUrl> urls = data.urls();
  return urls.size() == 1 && urls.front().isLocalFile() ? urls.front().toLocalFile() : QString();
}

}  // namespace

MainWindow::MainWindow(const QString& plan, const QString& recoveryFolder)
    : recovery_(recoveryFolder) {
  setAcceptDrops(true);
  speakTextsWhole();  // of all that is made from here on
  document_.startWithUnits(unitsToStartWith());
  shownUnits_ = document_.units();
  QString complaint;
  if (!plan.isEmpty()) complaint = openAtStart(plan);
  // Before the widgets are made: the first answer is ready when they are.
  askedEdition_ = document_.edition();
  if (document_.plan()) solver_.solve(document_.plan(), askedEdition_);
  connect(&solver_, &Solver::solved, this, &MainWindow::onSolved);
  connect(&solver_, &Solver::checked, this, [this](const rigs::Problems& problems, int edition) {
    if (edition == document_.edition()) forms_->setProblemsOfTheDay(problems);
    showState();
  });
  connect(&solver_, &Solver::failed, this, [this](const rigs::Told& why, int edition) {
    unsolved_ = edition == document_.edition() ? why : rigs::Told();
    showState();
  });
  connect(&solver_, &Solver::busyChanged, this, [this](bool busy) {
    busy_ = busy;
    showState();
  });
  buildCentre();
  connect(&document_, &PlanDocument::changed, this, &MainWindow::onDocumentChanged);
  connect(&document_, &PlanDocument::fileChanged, this, [this] {
    setWindowTitle(tr("%1[*] - Heat Ledger").arg(document_.displayName()));
    setWindowModified(document_.isModified());
    noteUnsaved();
  });
  connect(&document_, &PlanDocument::changedOnDisk, this, &MainWindow::askAboutFile);
  connect(&document_, &PlanDocument::changed, this, &MainWindow::noteUnsaved);
  connect(&document_, &PlanDocument::beingTyped, this, &MainWindow::noteUnsaved);
  autosave_.setSingleShot(true);
  autosave_.setInterval(kAutosaveDelay);
  connect(&autosave_, &QTimer::timeout, this, &MainWindow::keepCopy);
  keepCopyAtEveryEnd();
  retranslate();
  restoreLayout();
  Q_EMIT document_.fileChanged();
  showWanted();
  onDocumentChanged();
  if (complaint.isEmpty()) return;
  QMetaObject::invokeMethod(
      this, [this, complaint] { complain(tr("The plan was not opened."), complaint); },
      Qt::QueuedConnection);
}

MainWindow::~MainWindow() {
  disconnect(&document_, nullptr, this, nullptr);
  delete readings_;  // it follows the document
  // The fields outlive the document: as they lose the focus they would give it what they hold.
  forms_->commit();
}

void MainWindow::buildCentre() {
  auto* centre = new QWidget;
  auto* rows = new QVBoxLayout(centre);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(0);
  banner_ = new Banner;
  rows->addWidget(banner_);

  questions_ = new QuestionColumn;
  questions_->setObjectName(QStringLiteral("questions"));
  units_ = new PlanComboBox;
  units_->setObjectName(QStringLiteral("units"));
  units_->addItems({QString(), QString()});
  units_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  units_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  showsForms_ = new QAction(this);
  showsForms_->setCheckable(true);
  showsForms_->setShortcut(Qt::Key_F4);
  connect(showsForms_, &QAction::triggered, this, &MainWindow::setFormsShown);
  auto* toForms = new QToolButton;
  toForms->setObjectName(QStringLiteral("forms"));
  toForms->setDefaultAction(showsForms_);
  auto* corner = new QWidget;
  auto* side = new QHBoxLayout(corner);
  side->setContentsMargins(0, 2, 6, 2);
  side->addWidget(toForms);
  side->addWidget(units_);
  menuBar()->setCornerWidget(corner);

  splitter_ = new QSplitter;
  splitter_->setChildrenCollapsible(false);
  forms_ = new PlanForms(document_);
  splitter_->addWidget(forms_);
  auto* right = new QWidget;
  auto* answer = new QVBoxLayout(right);
  answer->setContentsMargins(0, 0, 0, 0);
  stale_ = new QLabel;
  stale_->setObjectName(QStringLiteral("stale"));
  stale_->setWordWrap(true);
  stale_->setMargin(6);
  stale_->setAutoFillBackground(true);
  stale_->setBackgroundRole(QPalette::Highlight);
  stale_->setForegroundRole(QPalette::HighlightedText);
  stale_->hide();
  answer->addWidget(stale_);
  page_ = new QuestionPage;
  answer->addWidget(page_, 1);
  splitter_->addWidget(right);
  splitter_->setStretchFactor(0, 2);
  splitter_->setStretchFactor(1, 3);
  auto* columns = new QHBoxLayout;
  columns->setSpacing(0);
  columns->addWidget(questions_);
  columns->addWidget(splitter_, 1);
  rows->addLayout(columns, 1);
  setCentralWidget(centre);

  status_ = new QLabel;
  status_->setObjectName(QStringLiteral("status"));
  statusBar()->addWidget(status_, 1);
  auto* search = new SearchBar;
  statusBar()->addPermanentWidget(search);
  connect(&solver_, &Solver::searching, search, &SearchBar::setProgress);
  connect(&solver_, &Solver::searched, search, &SearchBar::finish);
  connect(search, &SearchBar::enough, &solver_, &Solver::endSearch);

  connect(splitter_, &QSplitter::splitterMoved, this, [this] { splitByHand_ = true; });
  listQuestions();
  questions_->viewport()->installEventFilter(this);
  questions_->setCurrentRow(placeOf(page_->question()));
  connect(questions_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0) page_->setQuestion(questionAt(row));
  });
  connect(page_, &QuestionPage::questionChanged, this, [this](Question question) {
    questions_->setCurrentRow(placeOf(question));
    solver_.lookAt(page_->needed());
  });
  connect(page_, &QuestionPage::viewChanged, this, [this] {
    solver_.lookAt(page_->needed());
    listQuestions();
  });
  connect(page_, &QuestionPage::picturePointedAt, this, &MainWindow::hintAtPictures);
  connect(page_, &QuestionPage::goalDragged, this, &MainWindow::onGoalDragged);
  connect(page_, &QuestionPage::yearChanged, this, &MainWindow::onYearChanged);
  connect(page_, &QuestionPage::partChosen, this, [this](const QStringList& places) {
    setFormsShown(true);
    forms_->showField(places);
  });
  connect(page_, &QuestionPage::anotherWanted, this, [this] {
    const SolutionPtr seen = page_->solution();
    if (!seen) return;
    const std::size_t base = telling::baseOf({*seen, seen->plan, page_->reader(), page_->view()});
    setFormsShown(true);
    forms_->commit();
    forms_->rigColumns().duplicate(base, Variant::Following);
    forms_->showField({QStringLiteral("/rigs/%1/element/power").arg(base + 1)});
  });
  connect(units_, &QComboBox::activated, this, [this](int index) {
    if (index > 1) return;  // as they are
    setUnits(index == 1 ? rigs::UnitSystem::UsCustomary : rigs::UnitSystem::SI);
  });
}

void MainWindow::setQuestion(Question question) { questions_->setCurrentRow(placeOf(question)); }

void MainWindow::setFormsShown(bool shown) {
  formsChosen_ = shown;
  fitToWidth();
}

// In a narrow window forms, questions and answer do not fit beside each other: the forms are there
// when they are asked for, and then the questions make do with their short names.
void MainWindow::fitToWidth() {
  const int em = QFontInfo(font()).pixelSize();
  const int wide = std::max(kWide, kWideEms * em);
  const bool forms = formsChosen_.value_or(width() >= wide);
  showsForms_->setChecked(forms);
  forms_->setVisible(forms);
  foldQuestions();
  if (!forms || splitByHand_) return;
  const int most = std::max(kFormsEms * em, width() * 36 / 100);
  splitter_->setSizes({most, width() - questions_->maximumWidth() - most});
}

void MainWindow::setUnits(rigs::UnitSystem units) {
  forms_->commit();
  document_.setUnits(units);
}

bool MainWindow::isSettled() const {
  const SolutionPtr newest = page_->newestSolution();
  return solver_.isIdle() && page_->isWritten() &&
         (!document_.plan() || (newest && newest->edition == document_.edition() &&
                                newest->done.covers(page_->needed())));
}

// A third entry as long as some quantities have a unit of choice.
void MainWindow::showUnits() {
  const rigs::UnitSystem units = document_.units();
  constexpr int kOwn = 2;
  if (units.hasChoices() && units_->count() == kOwn) units_->addItem(tr("Units of choice"));
  if (!units.hasChoices() && units_->count() > kOwn) units_->removeItem(kOwn);
  units_->setCurrentIndex(units.hasChoices()                              ? kOwn
                          : units.base() == rigs::UnitSystem::UsCustomary ? 1
                                                                          : 0);
  for (const UnitAction& one : unitActions_)
    one.action->setChecked(units.choiceOf(one.group) == one.choice);
}

void MainWindow::onDocumentChanged() {
  {
    const QSignalBlocker quiet(units_);
    showUnits();
  }
  if (document_.edition() != askedEdition_) {
    askedEdition_ = document_.edition();
    unsolved_ = {};
    if (document_.plan()) solver_.solve(document_.plan(), document_.edition());
    showWanted();
  }
  if (document_.units() != shownUnits_) {
    shownUnits_ = document_.units();
    page_->show(page_->newestSolution(), shownUnits_);
    listQuestions();
  }
  showState();
}

void MainWindow::onSolved(const SolutionPtr& solution) {
  page_->show(solution, shownUnits_);
  forms_->showOverloads(solution);
  listQuestions();
  showState();
  Q_EMIT answerShown();
}

void MainWindow::showWanted() {
  if (document_.plan())
    page_->setWantedMinutes(physics::inMinutes(document_.plan()->goals.boilWithin));
}

// Once for all: whoever has read it knows where to look.
void MainWindow::hintAtPictures() {
  if (hinted_) return;
  hinted_ = true;
  const QString key = QStringLiteral("pictures hinted at");
  if (QSettings().value(key, false).toBool()) return;
  QSettings().setValue(key, true);
  statusBar()->showMessage(
      tr("A click on a rig's name takes it out of the pictures; Ctrl and the wheel zoom; a right "
         "click has more"),
      2 * kToldFor);
}

// The line follows the hand; the plan says what it means.
void MainWindow::onGoalDragged(double minutes) {
  const qint64 now = QDateTime::currentMSecsSinceEpoch();
  if (now - lastDrag_ > kDragPause) ++drag_;
  lastDrag_ = now;
  const double halves = std::round(2.0 * minutes) / 2.0;
  document_.change(
      tr("drag of the wanted time"),
      rigs::withText(document_.text(), "/goals/boil_within", rigs::formatNumber(halves) + " min"),
      QStringLiteral("drag#%1").arg(drag_));
}

void MainWindow::onYearChanged(int batches) {
  document_.change(
      tr("change of the batches a year"),
      rigs::withValue(document_.text(), "/tariff/brews_per_year", std::to_string(batches)),
      QStringLiteral("batches a year"));
}

void MainWindow::showState() {
  const int errors = forms_->errorCount();
  // What is wrong stands at its field.
  if (errors > 0 && !forms_->isVisible()) setFormsShown(true);
  const bool unsolved = errors == 0 && !unsolved_.empty();
  stale_->setVisible(errors > 0 || unsolved);
  stale_->setText(unsolved ? tr("This plan was not computed: %1. What is shown is the last answer.")
                                 .arg(told(unsolved_))
                  : page_->solution() ? tr("This answers the plan as it last was without problems.")
                                      : tr("There is no answer yet: the plan has problems."));
  status_->setText(errors == 1  ? tr("1 problem in the plan")
                   : errors > 1 ? tr("%1 problems in the plan").arg(errors)
                   : busy_      ? tr("Computing")
                                : QString());
}

// The newest answers in short. What is searched for and not found yet keeps the last that is known;
// warnings are as the page has them, which may still wait for the newest solution.
void MainWindow::listQuestions() {
  const SolutionPtr solution = page_->newestSolution();
  const ShownAnswer answer = page_->currentAnswer();
  const rigs::Reader reader = page_->reader();
  QVector<QuestionColumn::Entry> entries;
  for (const Question question : telling::allQuestions()) {
    const QString title = told(telling::titleOf(question));
    QuestionColumn::Entry entry{title, told(telling::shortTitleOf(question)), {}, {}};
    if (solution) {
      const telling::Case of{*solution, solution->plan, reader, page_->view()};
      entry.answer = told(telling::shortestOf(question, of, telling::baseOf(of)), reader);
      const bool searching = !solution->done.covers(kEverySearch);
      if (entry.answer.isEmpty() && searching && questions_->count() > entries.size())
        entry.answer = questions_->entry(static_cast<int>(entries.size())).answer;
    }
    QStringList whole{title};
    if (!entry.answer.isEmpty()) whole += entry.answer;
    entry.whole = (whole + answer.warnings).join(QLatin1Char('\n'));
    entries += entry;
  }
  questions_->setMark(answer.warnings.isEmpty() ? QString() : told(telling::overloadMark()));
  questions_->fill(entries);
  foldQuestions();
}

// All of them are to be in sight, with their answers where there is room for these.
void MainWindow::foldQuestions() {
  const int em = QFontInfo(font()).pixelSize();
  const int least = forms_->isVisibleTo(this) ? std::max(kWide, kWideEms * em)
                                              : std::max(kNarrow, kNarrowEms * em);
  questions_->setFolded(width() < least ||
                        questions_->unfoldedHeight() > questions_->viewport()->height());
}

void MainWindow::retranslate() {
  listQuestions();
  showsForms_->setText(tr("Plan and rigs"));
  showsForms_->setToolTip(tr("Shows the plan's forms beside the answer, or folds them away (%1)")
                              .arg(showsForms_->shortcut().toString(QKeySequence::NativeText)));
  questions_->setAccessibleName(tr("Questions"));
  units_->setItemText(0, tr("Metric units"));
  units_->setItemText(1, tr("US units"));
  if (units_->count() > 2) units_->setItemText(2, tr("Units of choice"));
  units_->setAccessibleName(tr("Units"));
  units_->setToolTip(
      tr("Units of every number that is shown. What you wrote stays as you wrote "
         "it."));
  setWindowTitle(tr("%1[*] - Heat Ledger").arg(document_.displayName()));
  buildMenus();
}

// The desktop turned light or dark.
bool MainWindow::event(QEvent* event) {
  if (event->type() == QEvent::ThemeChange)
    QMetaObject::invokeMethod(qApp, &wearChosenAppearance, Qt::QueuedConnection);
  return QMainWindow::event(event);
}

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::FontChange && forms_) fitToWidth();
  if (event->type() != QEvent::LanguageChange || !forms_) return;
  forms_->commit();
  retranslate();
  forms_->retranslate();
  page_->retranslate();
  forms_->showOverloads(page_->newestSolution());
  listQuestions();
  showState();
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && watched == questions_->viewport()) foldQuestions();
  return QMainWindow::eventFilter(watched, event);
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  fitToWidth();
}

void MainWindow::restoreLayout() {
  QSettings settings;
  resize(QSize(1280, 720).boundedTo(screen()->availableSize()));
  restoreGeometry(settings.value(QStringLiteral("geometry")).toByteArray());
  const QVariant forms = settings.value(QStringLiteral("forms shown"));
  if (forms.isValid()) formsChosen_ = forms.toBool();
  splitByHand_ = splitter_->restoreState(settings.value(QStringLiteral("splitter")).toByteArray());
  fitToWidth();
  forms_->tabs().setCurrentIndex(settings.value(QStringLiteral("tab"), 0).toInt());
  const QString stored = settings.value(QStringLiteral("question")).toString();
  for (const Question question : telling::allQuestions()) {
    if (telling::identifierOf(question) == stored.toStdString()) setQuestion(question);
  }
}

void MainWindow::storeLayout() {
  QSettings settings;
  settings.setValue(QStringLiteral("geometry"), saveGeometry());
  if (splitByHand_) settings.setValue(QStringLiteral("splitter"), splitter_->saveState());
  if (formsChosen_) settings.setValue(QStringLiteral("forms shown"), *formsChosen_);
  settings.setValue(QStringLiteral("tab"), forms_->tabs().currentIndex());
  const std::string_view question = telling::identifierOf(page_->question());
  settings.setValue(QStringLiteral("question"),
                    QString::fromUtf8(question.data(), static_cast<qsizetype>(question.size())));
  settings.setValue(QStringLiteral("units"),
                    QString::fromStdString(rigs::unitsText(document_.units())));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!mayLosePlan()) {
    event->ignore();
    return;
  }
  closed_ = true;
  autosave_.stop();
  recovery_.discard();
  storeLayout();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (!singleFile(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QString path = singleFile(*event->mimeData());
  if (path.isEmpty()) return;
  event->acceptProposedAction();
  openPlan(path);
}

}  // namespace gui
