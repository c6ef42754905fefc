// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/readings/readings_window.hpp"

#include <QBoxLayout>
#include <QCryptographicHash>
#include <QDate>
#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QScopedValueRollback>
#include <QShortcut>
#include <QSplitter>
#include <algorithm>
#include <utility>

#include "gui/telling/learned.hpp"
#include "gui/telling/learned_picture.hpp"
#include "gui/telling/strip.hpp"
#include "gui/window/forms/quantity_field.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/kept.hpp"
#include "rigs/documents/file_errors.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/cautions.hpp"

namespace gui {
namespace {

constexpr double kHeadline = 1.25;  // of the font
constexpr int kMostProblems = 12;
constexpr int kLinesEms = 22;
constexpr int kPictureEms = 18;

QLabel* textLabel(const QString& name) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return label;
}

}  // namespace

ReadingsWindow::ReadingsWindow(PlanDocument& document, const QString& folder, QWidget* parent)
    : QWidget(parent, Qt::Window), document_(document), folder_(folder) {
  setObjectName(QStringLiteral("readings"));
  rests_.setSingleShot(true);
  rests_.setInterval(kHandRests);
  auto* sides = new QSplitter;
  sides->addWidget(linesSide());
  sides->addWidget(answerSide());
  sides->setStretchFactor(1, 1);
  sides->setChildrenCollapsible(false);
  auto* all = new QVBoxLayout(this);
  all->addWidget(sides, 1);
  foot_ = new CautionsFoot(this);
  all->addWidget(foot_);
  // Of the plan; in the lines these keys are the lines' own.
  new QShortcut(QKeySequence::Undo, this, [this] { document_.undoStack().undo(); });
  new QShortcut(QKeySequence::Redo, this, [this] { document_.undoStack().redo(); });
  connect(&rests_, &QTimer::timeout, this, [this] {
    keepDraft();
    ask();
  });
  connect(&work_, &ReadingsWork::found, this, &ReadingsWindow::take);
  connect(&document_, &PlanDocument::changed, this, &ReadingsWindow::planChanged);
  connect(&document_, &PlanDocument::fileChanged, this, &ReadingsWindow::planChanged);
  planPath_ = document_.path();
  planText_ = document_.text();
  takeDraft();
  retranslate();
  resize(64 * fontMetrics().height(), 40 * fontMetrics().height());
}

ReadingsWindow::~ReadingsWindow() { keepDraft(); }

QWidget* ReadingsWindow::linesSide() {
  auto* side = new QWidget;
  auto* rows = new QVBoxLayout(side);
  rows->setContentsMargins(0, 0, 0, 0);
  auto* top = new QHBoxLayout;
  ofRig_ = new QLabel;
  rigs_ = new PlanComboBox;
  rigs_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  ofRig_->setBuddy(rigs_);
  top->addWidget(ofRig_);
  top->addWidget(rigs_, 1);
  rows->addLayout(top);
  how_ = textLabel(QStringLiteral("how"));
  rows->addWidget(how_);
  lines_ = new QPlainTextEdit;
  lines_->setObjectName(QStringLiteral("lines"));
  lines_->setTabChangesFocus(true);
  lines_->setLineWrapMode(QPlainTextEdit::NoWrap);
  rows->addWidget(lines_, 1);
  problems_ = textLabel(QStringLiteral("problems"));
  rows->addWidget(problems_);
  columns_ = new ColumnChoices;
  rows->addWidget(columns_);
  connect(columns_, &ColumnChoices::chosen, this, &ReadingsWindow::ask);
  checked_ = new QCheckBox;
  stirred_ = new QCheckBox;
  stirred_->setChecked(true);
  leaveOut_ = new QCheckBox;
  for (QCheckBox* box : {checked_, stirred_, leaveOut_}) {
    rows->addWidget(box);
    connect(box, &QCheckBox::toggled, this, &ReadingsWindow::ask);
  }
  auto* buttons = new QHBoxLayout;
  open_ = new QPushButton;
  save_ = new QPushButton;
  buttons->addWidget(open_);
  buttons->addWidget(save_);
  rows->addLayout(buttons);
  keep_ = new QPushButton;
  keep_->setObjectName(QStringLiteral("keep"));
  rows->addWidget(keep_);
  side->setMinimumWidth(kLinesEms * fontMetrics().height() * 2 / 3);
  connect(rigs_, &QComboBox::currentIndexChanged, this, &ReadingsWindow::ask);
  connect(lines_, &QPlainTextEdit::textChanged, this, [this] {
    if (!fills_) rests_.start();
  });
  connect(open_, &QPushButton::clicked, this, &ReadingsWindow::chooseAndOpen);
  connect(save_, &QPushButton::clicked, this, &ReadingsWindow::chooseAndSave);
  connect(keep_, &QPushButton::clicked, this, &ReadingsWindow::keepWithKettle);
  return side;
}

QWidget* ReadingsWindow::answerSide() {
  scroll_ = new QScrollArea;
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* inside = new QWidget;
  auto* rows = new QVBoxLayout(inside);
  sentence_ = textLabel(QStringLiteral("sentence"));
  chart_ = new PlanChart;
  chart_->setMinimumHeight(kPictureEms * fontMetrics().height());
  notes_ = textLabel(QStringLiteral("notes"));
  tables_ = new QVBoxLayout;
  rows->addWidget(sentence_);
  rows->addWidget(chart_);
  rows->addWidget(notes_);
  rows->addLayout(tables_);
  rows->addStretch(1);
  scroll_->setWidget(inside);
  return scroll_;
}

void ReadingsWindow::retranslate() {
  setWindowTitle(tr("Does it match what I measured?"));
  ofRig_->setText(tr("Read o&f"));
  columns_->retranslate();
  rigs_->setAccessibleName(tr("The rig that was read of"));
  how_->setText(
      tr("A line for each look: the time, then what was read. A logger's lines can be pasted as "
         "they are."));
  lines_->setAccessibleName(tr("Lines of readings"));
  lines_->setPlaceholderText(tr("for example") +
                             QStringLiteral("\n20:48 unplugged\n20:49 66.6\n23:10 63.9"));
  problems_->setAccessibleName(tr("What is wrong with the lines"));
  checked_->setText(tr("The thermometer was held into &ice or boiling water"));
  stirred_->setText(tr("It was s&tirred before each look"));
  leaveOut_->setText(tr("Leave out lines that are &wrong"));
  open_->setText(tr("&Open a file ..."));
  save_->setText(tr("&Save the lines ..."));
  keep_->setText(tr("&Keep with the kettle"));
  keep_->setToolTip(
      tr("Writes what was learned into the plan, for every later day; Undo takes it back."));
  sentence_->setAccessibleName(tr("Answer"));
  scroll_->setAccessibleName(windowTitle());
  notes_->setAccessibleName(tr("What the readings say"));
  QFont large = font();
  large.setPointSizeF(font().pointSizeF() * kHeadline);
  large.setWeight(QFont::DemiBold);
  sentence_->setFont(large);
  QFont quiet = font();
  quiet.setPointSizeF(font().pointSizeF() * 0.88);
  foot_->setLetters(quiet);
  foot_->retranslate();
  listRigs();
  if (found_) take(found_);
}

// --- The plan.

void ReadingsWindow::listRigs() {
  const auto plan = document_.plan();
  if (!plan) return;
  const QScopedValueRollback<bool> filling(fills_, true);
  const QSignalBlocker blocker(rigs_);
  const int before = std::max(0, rigs_->currentIndex());
  rigs_->clear();
  const std::vector<std::size_t> slots = rigs::slotsOf(plan->rigs);
  for (std::size_t i = 0; i < slots.size(); ++i)
    rigs_->addItem(rigOf(slots.size(), static_cast<int>(slots[i]),
                         QString::fromStdString(plan->rigs[i].name)));
  rigs_->setCurrentIndex(std::min(before, rigs_->count() - 1));
  ofRig_->setVisible(rigs_->count() > 1);
  rigs_->setVisible(rigs_->count() > 1);
}

// While a hand drags a value the page's own pictures come first; out of sight nothing is asked.
void ReadingsWindow::planChanged() {
  if (document_.path() != planPath_) {
    keepDraft();
    planPath_ = document_.path();
    // The same plan under another name takes its lines along, unless that name has some.
    if (document_.text() != planText_ || QFileInfo::exists(draft())) takeDraft();
  }
  planText_ = document_.text();
  listRigs();
  if (isVisible()) rests_.start();
}

// --- What is typed is not lost.

QString ReadingsWindow::draft() const {
  const QByteArray mark =
      QCryptographicHash::hash(planPath_.toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
  return QDir(folder_).filePath(QStringLiteral("readings-%1.txt").arg(QString::fromLatin1(mark)));
}

void ReadingsWindow::takeDraft() {
  const QScopedValueRollback<bool> filling(fills_, true);
  QString text;
  try {
    if (QFileInfo::exists(draft()))
      text = QString::fromStdString(rigs::readText(draft().toStdString(), kLargest));
  } catch (const rigs::FileError&) {
    // Unreadable is as good as gone.
  }
  lines_->setPlainText(text);
  columns_->forget();
}

void ReadingsWindow::keepDraft() {
  const std::string text = lines_->toPlainText().toStdString();
  try {
    if (text.empty()) {
      QFile::remove(draft());
    } else {
      QDir().mkpath(folder_);
      rigs::saveText(draft().toStdString(), text);
    }
  } catch (const rigs::FileError& error) {
    problems_->setText(tr("What is typed here could not be kept: %1.").arg(told(error.told())));
    problems_->show();
  }
}

void ReadingsWindow::showEvent(QShowEvent* event) {
  if (!isOfToday()) ask();
  QWidget::showEvent(event);
}

void ReadingsWindow::hideEvent(QHideEvent* event) {
  keepDraft();
  QWidget::hideEvent(event);
}

void ReadingsWindow::openReadings(const QString& path) {
  try {
    const std::string text = rigs::readText(path.toStdString(), kLargest);
    const QScopedValueRollback<bool> filling(fills_, true);
    lines_->setPlainText(QString::fromStdString(text));
    columns_->forget();
  } catch (const rigs::FileError& error) {
    complain(tr("The readings were not opened."), told(error.told()));
    return;
  }
  keepDraft();
  ask();
}

void ReadingsWindow::saveReadings(const QString& path) {
  try {
    std::string text = lines_->toPlainText().toStdString();
    if (!text.empty() && text.back() != '\n') text += '\n';
    rigs::saveText(path.toStdString(), text);
  } catch (const rigs::FileError& error) {
    complain(tr("The readings were not saved."), told(error.told()));
  }
}

void ReadingsWindow::chooseAndOpen() {
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Open readings"), {}, tr("Readings (*.csv *.txt *.log);;All files (*)"));
  if (!path.isEmpty()) openReadings(path);
}

void ReadingsWindow::chooseAndSave() {
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Save the lines"), QStringLiteral("readings.csv"), tr("Readings (*.csv)"));
  if (!path.isEmpty()) saveReadings(path);
}

void ReadingsWindow::complain(const QString& what, const QString& why) {
  QMessageBox box(QMessageBox::Warning, windowTitle(), what, QMessageBox::Ok, this);
  box.setInformativeText(why);
  box.exec();
}

// --- What they say.

bool ReadingsWindow::isOfToday() const {
  return found_ && found_->of.plan == document_.plan() &&
         found_->of.rig == static_cast<std::size_t>(rigs_->currentIndex()) &&
         found_->of.text == lines_->toPlainText().toStdString() &&
         found_->of.corrections == corrections();
}

rigs::readings::Corrections ReadingsWindow::corrections() const {
  rigs::readings::Corrections all = columns_->corrections();
  all.leaveOutBadRows = leaveOut_->isChecked();
  return all;
}

bool ReadingsWindow::isSettled() const { return !rests_.isActive() && work_.isIdle(); }

void ReadingsWindow::ask() {
  const auto plan = document_.plan();
  const int rig = rigs_->currentIndex();
  const QString text = lines_->toPlainText();
  if (!plan || rig < 0) {
    clearAnswer(tr("The plan has to be right first: its forms say what is wrong."));
    return;
  }
  if (text.trimmed().isEmpty()) {
    columns_->forget();
    clearAnswer(tr("Nothing was read yet."));
    return;
  }
  work_.learn({.plan = plan,
               .rig = static_cast<std::size_t>(rig),
               .text = text.toStdString(),
               .thermometer = {.step = {},
                               .checked = checked_->isChecked(),
                               .stirred = stirred_->isChecked()},
               .corrections = corrections()});
}

void ReadingsWindow::clearAnswer(const QString& why) {
  found_ = nullptr;
  problems_->hide();
  sentence_->setText(why);
  chart_->hide();
  notes_->clear();
  qDeleteAll(shownTables_);
  shownTables_.clear();
  keep_->setEnabled(false);
  foot_->hide();
}

void ReadingsWindow::take(const ReadingsFoundPtr& found) {
  // Lines that were taken away, or a plan that went wrong, while it was worked out.
  if (lines_->toPlainText().trimmed().isEmpty() || !document_.plan()) return;
  columns_->take(found->read.layout);
  if (found->of.corrections != corrections()) return ask();  // a column chosen is there no more
  if (found->learned) {
    found_ = found;
    showAnswer();
    keep_->setEnabled(!found->learned->unknowns.empty());
  } else {
    clearAnswer(found->failed.empty()
                    ? tr("These lines cannot be used yet; what is wrong stands beside them.")
                    : tr("It could not be worked out: %1.").arg(told(found->failed)));
    found_ = found;
  }
  showProblems();
}

void ReadingsWindow::showProblems() {
  const rigs::UnitSystem units = document_.units();
  QStringList all;
  for (const rigs::Problem& one : found_->problems) {
    if (all.size() == kMostProblems) {
      all += tr("… and more");
      break;
    }
    // ":12" of lines, which have no file's name here.
    const QString line =
        one.where.starts_with(':')
            ? tr("Line %1:").arg(QString::fromStdString(one.where.substr(1))) + QLatin1Char(' ')
            : QString();
    all += line + told(one.message, units) + QLatin1Char('.');
  }
  problems_->setText(all.join(QLatin1Char('\n')));
  problems_->setVisible(!all.isEmpty());
}

void ReadingsWindow::showAnswer() {
  const rigs::Solution& solution = *found_->solution;
  const rigs::Reader reader = readerOf(document_.units());
  const std::size_t rig = found_->of.rig;
  const telling::QuestionView view{.rig = static_cast<int>(rig), .only = rig};
  const telling::Case of{solution, solution.plan, reader, view};
  const telling::Answer answer = telling::whatWasLearned(
      of, rig, {found_->read.readings, found_->read.layout, *found_->learned});
  const ShownAnswer shown = gui::shown(answer, rigNamesOf(solution), reader);
  sentence_->setText(shown.headline());
  notes_->setText(asLines(shown.notes).join(QLatin1Char('\n')));
  chart_->show(telling::learnedPicture(of, rig, found_->course, found_->read.readings));
  chart_->show();
  while (shownTables_.size() > shown.tables.size()) delete shownTables_.takeLast();
  while (shownTables_.size() < shown.tables.size()) {
    shownTables_ += new AnswerTable;
    tables_->addWidget(shownTables_.back());
  }
  for (qsizetype i = 0; i < shown.tables.size(); ++i) {
    shownTables_[i]->fill(shown.tables[i]);
    shownTables_[i]->setAccessibleName(tr("The same numbers as a table"));
  }
  const rigs::Solution alone = telling::ofThisRigAlone(solution, rig);
  foot_->show(told(telling::stripOf({alone, alone.plan, reader, {}}), reader), shown.allCautions());
  foot_->setVisible(!shown.allCautions().isEmpty());
}

void ReadingsWindow::keepWithKettle() {
  if (!isSettled() || !isOfToday() || !found_->learned) return;
  rigs::Problems problems;
  auto kept =
      rigs::withLearned(document_.text(), found_->solution->plan, found_->of.rig, *found_->learned,
                        {.name = "readings",
                         .lines = found_->read.readings.size(),
                         .day = QDate::currentDate().toString(Qt::ISODate).toStdString(),
                         .text = found_->of.text},
                        problems);
  if (kept) rigs::readPlan(kept->document, document_.folder(), problems);
  if (!kept || rigs::hasErrors(problems)) {
    QStringList why;
    for (const rigs::Problem& one : problems)
      why += told(one.message, document_.units()) + QLatin1Char('.');
    complain(tr("Nothing was kept."), why.join(QLatin1Char('\n')));
    return;
  }
  if (!kept->losses && !kept->surface) {
    complain(tr("Nothing was kept."),
             tr("These readings tell neither its losses nor what its open surface gives off."));
    return;
  }
  document_.change(tr("Keep what was read"), std::move(kept->document));
}

void ReadingsWindow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) retranslate();
  QWidget::changeEvent(event);
}

}  // namespace gui
