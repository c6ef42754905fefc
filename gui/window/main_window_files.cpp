// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does with files: opening, saving, recovering, handing out.
#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QSettings>
#include <QStatusBar>

#include <system_error>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/overview.hpp"
#include "gui/window/exports/exports.hpp"
#include "gui/window/exports/report.hpp"
#include "gui/window/forms/plan_differences.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/questions/solver.hpp"
#include "gui/window/start/start_sheet.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/json_edit.hpp"

namespace gui {
namespace {

constexpr int kRecentFiles = 8;
constexpr int kConfirmationStays = 8000;  // ms

QString planFilter() { return MainWindow::tr("Plans (*.json);;All files (*)"); }

QString tellWritten(const QDateTime& when) {
  const QString clock = when.toString(QStringLiteral("HH:mm"));
  if (when.date() == QDate::currentDate())
    return MainWindow::tr("Its copy is from %1 today.").arg(clock);
  return MainWindow::tr("Its copy is from %1 on %2.")
      .arg(clock, QLocale().toString(when.date(), QLocale::LongFormat));
}

// With the sheet of the rig that the others are compared with.
ReportInput reportOf(const rigs::SolutionPtr& solution, const PlanDocument& document,
                     rigs::UnitSystem units, const telling::QuestionView& view) {
  return {.solution = solution,
          .units = units,
          .planName = document.displayName(),
          .document = QByteArray::fromStdString(document.text()),
          .rig = telling::baseOf({*solution, solution->plan, readerOf(units), view}),
          .changed = document.isModified()
                         ? rigs::Told(TOLD("Sheet", "with changes that are not saved"))
                         : rigs::Told()};
}

// What restoring would change in the file; "" where there is no file to compare with.
QString tellDifferences(const Leftover& leftover) {
  if (leftover.path.isEmpty()) return {};
  PlanDifferences differences;
  try {
    differences = differencesOf(rigs::readFile(leftover.path.toStdString()), leftover.text);
  } catch (const rigs::FileError&) {
    return {};
  } catch (const rigs::EditError&) {
    return {};  // one of them is no JSON by now
  }
  if (differences.count == 0) return MainWindow::tr("Its values are those of the file.");
  QStringList shown = differences.first;
  if (shown.size() < differences.count) shown += QStringLiteral("…");
  const QString all = shown.join(QStringLiteral("; "));
  return differences.count == 1 ? MainWindow::tr("1 value differs from the file: %1.").arg(all)
                                : MainWindow::tr("%1 values differ from the file: %2.")
                                      .arg(QString::number(differences.count), all);
}

}  // namespace

void MainWindow::complain(const QString& what, const QString& why) {
  QMessageBox box(QMessageBox::Warning, tr("Heat Ledger"), what, QMessageBox::Ok, this);
  box.setInformativeText(why);
  box.exec();
}

// Asks before anything unsaved is left behind.
bool MainWindow::mayLosePlan() {
  forms_->commit();
  if (!document_.isModified()) return true;
  QMessageBox box(QMessageBox::Question, tr("Heat Ledger"),
                  tr("Save the changes to %1?").arg(document_.displayName()),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
  box.setInformativeText(tr("Without saving, what you changed is lost."));
  box.setDefaultButton(QMessageBox::Save);
  const int answer = box.exec();
  if (answer == QMessageBox::Save) return savePlan();
  return answer == QMessageBox::Discard;
}

QString MainWindow::openAtStart(const QString& path) {
  try {
    document_.open(path);
  } catch (const rigs::FileError& error) {
    return told(error.told());
  }
  remember(document_.path());
  return {};
}

void MainWindow::offerStart() {
  auto* sheet =
      new StartSheet(shownUnits_, QSettings().value(QStringLiteral("recent")).toStringList(), this);
  sheet->setAttribute(Qt::WA_DeleteOnClose);
  connect(sheet, &StartSheet::exampleChosen, this, [this, sheet](const std::string& text) {
    if (!mayLosePlan()) return;
    document_.startAnew(text);
    sheet->accept();
  });
  connect(sheet, &StartSheet::kettleChosen, this, [this, sheet](const std::string& text) {
    if (!mayLosePlan()) return;
    document_.restore(text, {});  // somebody's own figures: not saved yet
    sheet->accept();
  });
  connect(sheet, &StartSheet::openWanted, this, [this, sheet](const QString& path) {
    if (path.isEmpty() ? chooseAndOpen() : openPlan(path)) sheet->accept();
  });
  sheet->open();
}

bool MainWindow::openPlan(const QString& path) {
  if (!mayLosePlan()) return false;
  try {
    document_.open(path);
  } catch (const rigs::FileError& error) {
    complain(tr("The plan was not opened."), told(error.told()));
    return false;
  }
  remember(document_.path());
  return true;
}

bool MainWindow::chooseAndOpen() {
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Open a plan"), QString::fromStdString(document_.folder().string()), planFilter());
  return !path.isEmpty() && openPlan(path);
}

bool MainWindow::savePlan() {
  forms_->commit();
  if (document_.path().isEmpty()) return chooseAndSave();
  if (!document_.isFileAsKnown()) {
    QMessageBox box(QMessageBox::Warning, tr("Heat Ledger"),
                    tr("Someone else changed %1.").arg(document_.displayName()),
                    QMessageBox::Save | QMessageBox::Cancel, this);
    box.setInformativeText(tr("Saving replaces what now stands in the file."));
    box.setDefaultButton(QMessageBox::Cancel);
    if (box.exec() != QMessageBox::Save) return false;
  }
  return savePlanAs(document_.path());
}

bool MainWindow::savePlanAs(const QString& path) {
  forms_->commit();
  try {
    document_.saveAs(path);
  } catch (const rigs::FileError& error) {
    complain(tr("The plan was not saved."), told(error.told()));
    return false;
  }
  recovery_.discard();
  banner_->drop(Banner::Subject::PlanFile);
  remember(document_.path());
  return true;
}

bool MainWindow::chooseAndSave() {
  const QString suggested =
      document_.path().isEmpty()
          ? QString::fromStdString((document_.folder() / "my-plan.json").string())
          : document_.path();
  QString path = QFileDialog::getSaveFileName(this, tr("Save the plan"), suggested, planFilter());
  if (path.isEmpty()) return false;
  if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".json");
  return savePlanAs(path);
}

void MainWindow::remember(const QString& path) {
  QSettings settings;
  QStringList recent = settings.value(QStringLiteral("recent")).toStringList();
  recent.removeAll(path);
  recent.prepend(path);
  settings.setValue(QStringLiteral("recent"), recent.mid(0, kRecentFiles));
}

void MainWindow::fillRecent(QMenu& menu) {
  menu.clear();
  const QStringList recent = QSettings().value(QStringLiteral("recent")).toStringList();
  for (const QString& path : recent) {
    QString shown = path;
    shown.replace(QLatin1Char('&'), QLatin1String("&&"));
    menu.addAction(shown, this, [this, path] { openPlan(path); });
  }
  if (recent.isEmpty()) menu.addAction(tr("No plans yet"))->setEnabled(false);
}

// Later changes do not put it off: somebody who types without a pause would have no copy at all.
void MainWindow::noteUnsaved() {
  if (!autosave_.isActive() && !closed_) autosave_.start();
}

void MainWindow::keepCopy() {
  autosave_.stop();
  if (closed_) return;
  const std::string text = forms_->textAsTyped();
  if (document_.isSaved(text)) {
    recovery_.discard();
    return;
  }
  try {
    recovery_.keep(text, document_.path());
  } catch (const rigs::FileError& error) {
    status_->setText(tr("No safety copy could be kept: %1.").arg(told(error.told())));
  }
}

// Where nobody may be left to ask: the program or the session is ended from outside. And where the
// reader turns to something else, which may be to switch the machine off.
void MainWindow::keepCopyAtEveryEnd() {
  connect(qApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState now) {
    if (now != Qt::ApplicationActive) keepCopy();
  });
  // Directly, since the session waits for no event.
  connect(
      qApp, &QGuiApplication::commitDataRequest, this, [this] { keepCopy(); },
      Qt::DirectConnection);
  connect(qApp, &QCoreApplication::aboutToQuit, this, [this] {
    if (closed_) return;
    keepCopy();
    storeLayout();
  });
}

void MainWindow::askAboutFile(bool gone) {
  if (gone) {
    banner_->ask(Banner::Subject::PlanFile,
                 tr("%1 is no longer there. Saving writes it again.").arg(document_.displayName()),
                 {{tr("All right"), {}}});
    return;
  }
  const QString text =
      document_.isModified()
          ? tr("Someone else changed %1. Loading it replaces your changes; undo brings them back.")
                .arg(document_.displayName())
          : tr("Someone else changed %1.").arg(document_.displayName());
  banner_->ask(Banner::Subject::PlanFile, text,
               {{tr("Load the file"),
                 [this] {
                   try {
                     document_.reload();
                   } catch (const rigs::FileError& error) {
                     complain(tr("The plan was not loaded."), told(error.told()));
                   }
                 }},
                {tr("Keep mine"), [this] { document_.keepMine(); }}});
}

bool MainWindow::offerLeftovers() {
  const QVector<Leftover> leftovers = recovery_.leftovers();
  if (leftovers.isEmpty()) return false;
  const Leftover first = leftovers.front();
  const QString name =
      first.path.isEmpty() ? tr("a plan that was never saved") : QFileInfo(first.path).fileName();
  const QString text = QStringList{tr("A window ended without saving %1.").arg(name),
                                   tellWritten(first.written), tellDifferences(first)}
                           .join(QLatin1Char(' '))
                           .trimmed();
  banner_->ask(Banner::Subject::Leftover, text,
               {{tr("Restore it"), [this, first] { restore(first); }},
                {tr("Throw it away"),
                 [this, first] {
                   recovery_.forget(first);
                   offerLeftovers();
                 }},
                {tr("Later"), {}}});
  return true;
}

void MainWindow::restore(const Leftover& leftover) {
  if (!mayLosePlan()) return;
  try {
    document_.restore(leftover.text, leftover.path);
    recovery_.keep(document_.text(), document_.path());  // before the old copy goes
    recovery_.forget(leftover);
  } catch (const rigs::FileError& error) {
    complain(tr("The plan was not restored."), told(error.told()));
  }
}

void MainWindow::exportNumbersOrPicture(const QString& ending, const QString& filter) {
  if (!page_->solution()) return;
  const std::string name(telling::identifierOf(page_->question()));
  const QString suggested = QString::fromStdString(name) + QLatin1Char('.') + ending;
  QString path = QFileDialog::getSaveFileName(this, tr("Export what is seen"), suggested, filter);
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix() != ending) path += QLatin1Char('.') + ending;
  exportSeen(path);
}

ChartLook MainWindow::exportLook() const {
  const ChartLook paper = paperLook(locale());
  if (QSettings().value(QLatin1String(kOnPaper), false).toBool()) return paper;
  ChartLook look = lookOf(page_->palette(), font(), locale());
  look.font = paper.font;  // a named one, which looks the same elsewhere
  return look;
}

void MainWindow::chooseAndExportAll() {
  if (!page_->wholeSolution()) {
    statusBar()->showMessage(tr("The first answer is still being computed."), kConfirmationStays);
    return;
  }
  const QString parent =
      QFileDialog::getExistingDirectory(this, tr("Export all questions into a new folder here"));
  if (!parent.isEmpty()) exportAll(parent);
}

void MainWindow::exportAll(const QString& parent) {
  const rigs::SolutionPtr solution = reportedSolution();
  if (!solution) return;
  const QDir here(parent);
  const QString wanted =
      tr("%1, answers").arg(QFileInfo(document_.displayName()).completeBaseName());
  QString name = wanted;
  for (int i = 2; here.exists(name); ++i) name = wanted + QLatin1Char(' ') + QString::number(i);
  const QDir folder(here.filePath(name));
  const ChartLook look = exportLook();
  try {
    if (!here.mkdir(name))
      return complain(tr("Nothing was exported."), tr("%1 cannot be made.").arg(folder.path()));
    int number = 0;
    for (const telling::Question question : telling::allQuestions()) {
      const SeenAnswer seen{question, page_->view(),
                            telling::answerTo(question, *solution, page_->reader(), page_->view()),
                            solution, page_->reader()};
      const QString file = folder.filePath(
          QStringLiteral("%1-%2")
              .arg(++number, 2, 10, QLatin1Char('0'))
              .arg(QString::fromStdString(std::string(telling::identifierOf(question)))));
      exportAnswer((file + QStringLiteral(".csv")).toStdString(), seen, look);
      exportAnswer((file + QStringLiteral(".png")).toStdString(), seen, look);
    }
    confirmSaved(folder.path());
  } catch (const rigs::FileError& error) {
    complain(tr("Not everything was exported."), told(error.told()));
  }
}

void MainWindow::exportSeen(const QString& path) {
  if (!page_->solution() || isOpenPlan(path)) return;
  const ChartLook look = exportLook();
  const SeenAnswer seen{page_->question(), page_->view(), page_->seenAnswer(), page_->solution(),
                        page_->reader()};
  const auto write = [path, seen, look]() -> rigs::Told {
    try {
      exportAnswer(path.toStdString(), seen, look);
    } catch (const rigs::FileError& error) {
      return error.told();
    } catch (const std::exception& error) {  // no memory, no thread
      return rigs::Told::just(rigs::Verbatim{error.what()});
    }
    return {};
  };
  const auto tell = [this, path](const rigs::Told& problem) {
    if (problem.empty()) {
      confirmSaved(path);
    } else {
      complain(tr("Nothing was exported."), told(problem));
    }
  };
  const QString ending = QFileInfo(path).suffix().toLower();
  if (ending != QLatin1String("json") && ending != QLatin1String("csv")) {
    tell(write());
    return;
  }
  // The terminal's very numbers are computed anew for it, which takes longer than a click may.
  try {
    exporting_ = std::async(std::launch::async, [this, write, tell] {
      const rigs::Told problem = write();
      QMetaObject::invokeMethod(
          this, [tell, problem] { tell(problem); }, Qt::QueuedConnection);
    });
  } catch (const std::system_error&) {  // no thread is left: then it takes its time
    tell(write());
  }
}

// The dialogs ask before they replace a file; over the plan that is open nobody means to write.
bool MainWindow::isOpenPlan(const QString& path) {
  if (document_.path().isEmpty() ||
      !rigs::isSameFile(document_.path().toStdString(), path.toStdString()))
    return false;
  complain(tr("Nothing was written."),
           tr("%1 is the plan that is open. Choose another name.").arg(document_.displayName()));
  return true;
}

void MainWindow::confirmSaved(const QString& path) {
  statusBar()->showMessage(tr("Saved %1.").arg(path), kConfirmationStays);
}

void MainWindow::exportReport() {
  if (!page_->wholeSolution()) {
    statusBar()->showMessage(tr("The first answer is still being computed."), kConfirmationStays);
    return;
  }
  QString path = QFileDialog::getSaveFileName(
      this, tr("Save the report"), QStringLiteral("report.pdf"), tr("PDF documents (*.pdf)"));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".pdf");
  saveReport(path);
}

// With what helps most, few changes at once, and how sure it is: a moment, where nobody has looked.
rigs::SolutionPtr MainWindow::reportedSolution() const {
  return withHowSure(withWhatHelps(page_->wholeSolution(), kTogetherInReports));
}

void MainWindow::saveReport(const QString& path) {
  if (!page_->wholeSolution() || isOpenPlan(path)) return;
  try {
    writeReport(path.toStdString(),
                reportOf(reportedSolution(), document_, shownUnits_, page_->view()));
    confirmSaved(path);
  } catch (const rigs::FileError& error) {
    complain(tr("The report was not saved."), told(error.told()));
  }
}

void MainWindow::print() {
  if (!page_->wholeSolution()) return;
  QPrinter printer;
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  if (!printer.outputFileName().isEmpty() && isOpenPlan(printer.outputFileName())) return;
  if (!paintReport(printer, reportOf(reportedSolution(), document_, shownUnits_, page_->view())))
    complain(tr("Not everything was printed."), tr("The printer did not take all pages."));
}

}  // namespace gui
