// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/main_window.hpp"

#include <QCloseEvent>
#include <QDateTime>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSettings>
#include <QSignalBlocker>
#include <QStatusBar>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "gui/telling/case.hpp"
#include "gui/window/questions/search_bar.hpp"
#include "gui/window/words/reader.hpp"
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

// A pause this long (ms) ends a drag: the next one is a step of its own.
constexpr qint64 kDragPause = 800;

rigs::UnitSystem unitsToStartWith() {
  const QString stored = QSettings().value(QStringLiteral("units")).toString();
  if (stored == QLatin1String("us")) return rigs::UnitSystem::UsCustomary;
  if (stored == QLatin1String("si")) return rigs::UnitSystem::SI;
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

  auto* top = new QHBoxLayout;
  questions_ = new QuestionTabs;
  questions_->setObjectName(QStringLiteral("questions"));
  questions_->setDocumentMode(true);
  questions_->setExpanding(false);
  questions_->setDrawBase(false);
  for (std::size_t i = 0; i < telling::allQuestions().size(); ++i) questions_->addTab(QString());
  top->addWidget(questions_, 1);
  units_ = new PlanComboBox;
  units_->setObjectName(QStringLiteral("units"));
  units_->addItems({QString(), QString()});
  units_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  units_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  top->addWidget(units_);
  rows->addLayout(top);

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
  rows->addWidget(splitter_, 1);
  setCentralWidget(centre);

  status_ = new QLabel;
  status_->setObjectName(QStringLiteral("status"));
  statusBar()->addWidget(status_, 1);
  auto* search = new SearchBar;
  statusBar()->addPermanentWidget(search);
  connect(&solver_, &Solver::searching, search, &SearchBar::setProgress);
  connect(&solver_, &Solver::searched, search, &SearchBar::finish);
  connect(search, &SearchBar::enough, &solver_, &Solver::endSearch);

  connect(questions_, &QTabBar::currentChanged, this,
          [this](int index) { page_->setQuestion(questionAt(index)); });
  connect(page_, &QuestionPage::questionChanged, this, [this](Question question) {
    questions_->setCurrentIndex(placeOf(question));
    solver_.lookAt(page_->needed());
  });
  connect(page_, &QuestionPage::viewChanged, this, [this] { solver_.lookAt(page_->needed()); });
  connect(page_, &QuestionPage::goalDragged, this, &MainWindow::onGoalDragged);
  connect(page_, &QuestionPage::yearChanged, this, &MainWindow::onYearChanged);
  connect(units_, &QComboBox::activated, this, [this](int index) {
    setUnits(index == 1 ? rigs::UnitSystem::UsCustomary : rigs::UnitSystem::SI);
  });
}

void MainWindow::setQuestion(Question question) { questions_->setCurrentIndex(placeOf(question)); }

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

void MainWindow::onDocumentChanged() {
  {
    const QSignalBlocker quiet(units_);
    units_->setCurrentIndex(document_.units() == rigs::UnitSystem::UsCustomary ? 1 : 0);
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
    showOverloads();
  }
  showState();
}

void MainWindow::onSolved(const SolutionPtr& solution) {
  page_->show(solution, shownUnits_);
  forms_->showOverloads(solution);
  showOverloads();
  showState();
  Q_EMIT answerShown();
}

void MainWindow::showWanted() {
  if (document_.plan())
    page_->setWantedMinutes(physics::inMinutes(document_.plan()->goals.boilWithin));
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

// As the page has it, which may still wait for the newest solution.
void MainWindow::showOverloads() {
  const ShownAnswer answer = page_->currentAnswer();
  questions_->setMark(answer.warnings.isEmpty() ? QString() : told(telling::overloadMark()));
  for (int i = 0; i < questions_->count(); ++i) {
    const QString title = told(telling::titleOf(questionAt(i)));
    const QString whole = (QStringList{title} + answer.warnings).join(QLatin1Char('\n'));
    questions_->setTabToolTip(i, whole);
    questions_->setAccessibleTabName(i, whole);
  }
}

void MainWindow::retranslate() {
  // A word or two each, so that all of them stand in one row; the page asks the whole question.
  for (int i = 0; i < questions_->count(); ++i) {
    questions_->setTabText(i, told(telling::shortTitleOf(questionAt(i))));
  }
  showOverloads();
  questions_->setAccessibleName(tr("Questions"));
  units_->setItemText(0, tr("Metric units"));
  units_->setItemText(1, tr("US units"));
  units_->setAccessibleName(tr("Units"));
  units_->setToolTip(
      tr("Units of every number that is shown. What you wrote stays as you wrote "
         "it."));
  setWindowTitle(tr("%1[*] - Heat Ledger").arg(document_.displayName()));
  buildMenus();
}

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() != QEvent::LanguageChange || !forms_) return;
  forms_->commit();
  retranslate();
  forms_->retranslate();
  page_->retranslate();
  forms_->showOverloads(page_->newestSolution());
  showOverloads();
  showState();
}

void MainWindow::restoreLayout() {
  QSettings settings;
  resize(QSize(1280, 720).boundedTo(screen()->availableSize()));
  restoreGeometry(settings.value(QStringLiteral("geometry")).toByteArray());
  if (!splitter_->restoreState(settings.value(QStringLiteral("splitter")).toByteArray()))
    splitter_->setSizes({width() * 43 / 100, width() * 57 / 100});
  forms_->tabs().setCurrentIndex(settings.value(QStringLiteral("tab"), 0).toInt());
  const QString stored = settings.value(QStringLiteral("question")).toString();
  for (const Question question : telling::allQuestions()) {
    if (telling::identifierOf(question) == stored.toStdString()) setQuestion(question);
  }
}

void MainWindow::storeLayout() {
  QSettings settings;
  settings.setValue(QStringLiteral("geometry"), saveGeometry());
  settings.setValue(QStringLiteral("splitter"), splitter_->saveState());
  settings.setValue(QStringLiteral("tab"), forms_->tabs().currentIndex());
  const std::string_view question = telling::identifierOf(page_->question());
  settings.setValue(QStringLiteral("question"),
                    QString::fromUtf8(question.data(), static_cast<qsizetype>(question.size())));
  settings.setValue(QStringLiteral("units"), document_.units() == rigs::UnitSystem::UsCustomary
                                                 ? QStringLiteral("us")
                                                 : QStringLiteral("si"));
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
