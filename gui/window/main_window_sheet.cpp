// SPDX-License-Identifier: GPL-3.0-or-later
// What is of one rig's day: a sheet to brew by, from the menu of files, and what was read of it.
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <utility>

#include "gui/telling/case.hpp"
#include "gui/telling/sheet.hpp"
#include "gui/window/charts/chart_look.hpp"
#include "gui/window/exports/sheet_paper.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/documents/file_errors.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "version.hpp"

namespace gui {

// Anew each time: rigs come and go.
void MainWindow::fillSheets(QMenu& menu) {
  menu.clear();
  const rigs::SolutionPtr solution = page_->wholeSolution();
  if (!solution) {
    menu.addAction(tr("The first answer is still being computed."))->setEnabled(false);
    return;
  }
  const std::vector<std::size_t> slots = rigs::slotsOf(solution->plan.rigs);
  for (std::size_t i = 0; i < slots.size(); ++i) {
    // A single "&" would be taken for a short cut's.
    QString name = rigOf(slots.size(), static_cast<int>(slots[i]),
                         QString::fromStdString(solution->plan.rigs[i].name));
    menu.addAction(name.replace(u'&', QLatin1String("&&")) + QStringLiteral(" ..."), this,
                   [this, i] { exportSheet(i); });
  }
}

void MainWindow::exportSheet(std::size_t rig) {
  const QString pdf = tr("PDF documents (*.pdf)");
  const QString html = tr("HTML pages, for a phone too (*.html)");
  QString chosen = pdf;
  QString path =
      QFileDialog::getSaveFileName(this, tr("Save a sheet to brew by"), QStringLiteral("sheet.pdf"),
                                   pdf + QStringLiteral(";;") + html, &chosen);
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty())
    path += chosen == html ? QLatin1String(".html") : QLatin1String(".pdf");
  saveSheet(path, rig);
}

void MainWindow::saveSheet(const QString& path, std::size_t rig) {
  const rigs::SolutionPtr solved = page_->wholeSolution();
  if (!solved || rig >= solved->answers.rigs.size() || isOpenPlan(path)) return;
  const rigs::Reader reader = page_->reader();
  rigs::Told name = rigs::Told::just(rigs::Verbatim{document_.displayName().toStdString()});
  const bool changed = document_.isModified();
  try {
    // A moment, where nobody has waited for its bands yet.
    rigs::Solution solution = *solved;
    rigs::addBands(solution, rig);
    const telling::Sheet sheet = telling::sheetOf(
        {solution, solution.plan, reader, {}}, rig,
        {.plan = std::move(name),
         .but =
             changed ? rigs::Told(TOLD("Sheet", "with changes that are not saved")) : rigs::Told(),
         .version = std::string(kVersion)});
    writeSheet(path.toStdString(), sheet, reader);
    confirmSaved(path);
  } catch (const rigs::FileError& error) {
    complain(tr("The sheet was not saved."), told(error.told()));
  }
}

ReadingsWindow& MainWindow::showReadings() {
  forms_->commit();
  if (!readings_) readings_ = new ReadingsWindow(document_, recovery_.folder(), this);
  readings_->show();
  readings_->raise();
  readings_->activateWindow();
  return *readings_;
}

}  // namespace gui
