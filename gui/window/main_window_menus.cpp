// SPDX-License-Identifier: GPL-3.0-or-later
#include <QActionGroup>
#include <QApplication>
#include <QMenuBar>
#include <QMessageBox>
#include <QSettings>
#include <QStatusBar>
#include <QWhatsThis>
#include <array>
#include <utility>

#include "gui/window/appearance.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"
#include "version.hpp"

namespace gui {

void MainWindow::buildMenus() {
  menuBar()->clear();
  // clear() keeps submenus and their short cuts alive, which would then be ambiguous.
  qDeleteAll(menuBar()->findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly));
  buildFileMenu();
  buildEditMenu();
  buildRigMenu();
  buildViewMenu();
  buildHelpMenu();
}

void MainWindow::buildFileMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&File"));
  menu->addAction(tr("&New plan ..."), QKeySequence::New, this, &MainWindow::offerStart);
  menu->addAction(tr("&Open a plan ..."), QKeySequence::Open, this, &MainWindow::chooseAndOpen);
  QMenu* recent = menu->addMenu(tr("Open &recent"));
  connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
  menu->addSeparator();
  menu->addAction(tr("&Save"), QKeySequence::Save, this, [this] { savePlan(); });
  menu->addAction(tr("Save &as ..."), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), this,
                  [this] { chooseAndSave(); });
  menu->addSeparator();
  QMenu* exports = menu->addMenu(tr("&Export what is seen"));
  const auto entry = [&](const QString& text, const QString& ending, const QString& filter) {
    exports->addAction(text, this,
                       [this, ending, filter] { exportNumbersOrPicture(ending, filter); });
  };
  entry(tr("Picture as P&NG ..."), QStringLiteral("png"), tr("PNG pictures (*.png)"));
  entry(tr("Picture as &SVG ..."), QStringLiteral("svg"), tr("SVG pictures (*.svg)"));
  entry(tr("Numbers as &CSV ..."), QStringLiteral("csv"), tr("CSV tables (*.csv)"));
  entry(tr("Numbers as &JSON ..."), QStringLiteral("json"), tr("JSON documents (*.json)"));
  exports->addSeparator();
  QAction* paper = exports->addAction(tr("Pictures black on &white"));
  paper->setCheckable(true);
  paper->setChecked(QSettings().value(QLatin1String(kOnPaper), false).toBool());
  connect(paper, &QAction::toggled, this,
          [](bool on) { QSettings().setValue(QLatin1String(kOnPaper), on); });
  menu->addAction(tr("Export a&ll questions ..."), this, &MainWindow::chooseAndExportAll);
  menu->addAction(tr("Report as P&DF ..."), this, &MainWindow::exportReport);
  QMenu* sheets = menu->addMenu(tr("Sheet to &brew by"));
  connect(sheets, &QMenu::aboutToShow, this, [this, sheets] { fillSheets(*sheets); });
  menu->addAction(tr("&Print ..."), QKeySequence::Print, this, &MainWindow::print);
  menu->addSeparator();
  menu->addAction(tr("&Quit"), QKeySequence::Quit, this, [this] { close(); });
}

void MainWindow::buildEditMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&Edit"));
  menu->setToolTipsVisible(true);
  QAction* undo = menu->addAction(tr("&Undo"), QKeySequence::Undo, this, [this] { step(true); });
  QAction* redo = menu->addAction(tr("&Redo"), this, [this] { step(false); });
  redo->setShortcuts(QKeySequence::keyBindings(QKeySequence::Redo) +
                     QList<QKeySequence>{QKeySequence(Qt::CTRL | Qt::Key_Y)});
  // What the step was, but always possible: something may still be being typed.
  const auto name = [this, undo, redo] {
    const QString back = document_.undoStack().undoText();
    const QString again = document_.undoStack().redoText();
    undo->setText(back.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(back));
    redo->setText(again.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(again));
    undo->setToolTip(back.isEmpty() ? tr("There is no step back") : tr("Undo: %1").arg(back));
    redo->setToolTip(again.isEmpty() ? tr("No step was taken back") : tr("Redo: %1").arg(again));
  };
  connect(&document_.undoStack(), &QUndoStack::undoTextChanged, undo, name);
  connect(&document_.undoStack(), &QUndoStack::redoTextChanged, redo, name);
  connect(menu, &QMenu::aboutToShow, this, [this, name] {
    forms_->commit();
    name();
  });
  name();
}

// Says what it did and shows where: the field may be out of sight.
void MainWindow::step(bool back) {
  forms_->commit();
  QUndoStack& steps = document_.undoStack();
  if (back ? !steps.canUndo() : !steps.canRedo()) return;
  const QString what = back ? steps.undoText() : steps.redoText();
  const rigs::Texts before = document_.texts();
  back ? steps.undo() : steps.redo();
  forms_->showChanged(before);
  statusBar()->showMessage((back ? tr("Undone: %1") : tr("Done again: %1")).arg(what), kToldFor);
}

void MainWindow::buildRigMenu() {
  QMenu* menu = menuBar()->addMenu(tr("R&igs"));
  QMenu* add = menu->addMenu(tr("&Add from the catalogue"));
  forms_->rigColumns().fillCatalogueMenu(*add);
  menu->addSeparator();
  const auto entry = [this, menu](const QString& text, const QKeySequence& keys, auto act) {
    menu->addAction(text, keys, this, [this, act] {
      forms_->commit();
      act(forms_->rigColumns(), forms_->rigColumns().currentRig());
    });
  };
  entry(tr("&Same, with ..."), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D),
        [](RigColumns& rigs, std::size_t rig) { rigs.duplicate(rig, Variant::Following); });
  entry(tr("&Duplicate"), QKeySequence(Qt::CTRL | Qt::Key_D),
        [](RigColumns& rigs, std::size_t rig) { rigs.duplicate(rig, Variant::Same); });
  entry(tr("Duplicate with a &jacket"), QKeySequence(Qt::CTRL | Qt::Key_J),
        [](RigColumns& rigs, std::size_t rig) { rigs.duplicate(rig, Variant::WithJacket); });
  entry(tr("Duplicate &without a jacket"), {},
        [](RigColumns& rigs, std::size_t rig) { rigs.duplicate(rig, Variant::WithoutJacket); });
  entry(tr("Duplicate with a &lid"), {},
        [](RigColumns& rigs, std::size_t rig) { rigs.duplicate(rig, Variant::WithLid); });
  menu->addAction(tr("Sa&me for all rigs"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), this,
                  [this] {
                    forms_->commit();
                    if (const FieldCell* cell = forms_->rigColumns().focusedCell())
                      forms_->rigColumns().sameForAll(*cell);
                  });
  menu->addSeparator();
  menu->addAction(tr("Does it match what I measured? ..."), QKeySequence(Qt::CTRL | Qt::Key_M),
                  this, [this] { showReadings(); });
  menu->addSeparator();
  entry(tr("Move to the le&ft"), QKeySequence(Qt::ALT | Qt::Key_Left),
        [](RigColumns& rigs, std::size_t rig) { rigs.move(rig, -1); });
  entry(tr("Move to the ri&ght"), QKeySequence(Qt::ALT | Qt::Key_Right),
        [](RigColumns& rigs, std::size_t rig) { rigs.move(rig, 1); });
  menu->addSeparator();
  entry(tr("&Remove"), {}, [](RigColumns& rigs, std::size_t rig) { rigs.remove(rig); });
}

void MainWindow::buildViewMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&View"));
  // The overview has a key of its own, so that each question keeps its number, and so has what no
  // number is left for.
  int number = 0;
  for (const telling::Question question : telling::allQuestions()) {
    const QKeySequence keys =
        question == telling::Question::Overview      ? QKeySequence(Qt::ALT | Qt::Key_Home)
        : question == telling::Question::HowChills   ? QKeySequence(Qt::ALT | Qt::Key_PageDown)
        : question == telling::Question::WortChanges ? QKeySequence(Qt::ALT | Qt::Key_PageUp)
        : question == telling::Question::HowSure
            ? QKeySequence(Qt::ALT | Qt::Key_End)
            : QKeySequence(QStringLiteral("Ctrl+%1").arg(number % 10));
    ++number;
    menu->addAction(told(telling::titleOf(question)), keys, this,
                    [this, question] { setQuestion(question); });
  }
  menu->addSeparator();
  menu->addAction(showsForms_);
  menu->addAction(tr("&Next area"), QKeySequence(Qt::Key_F6), this, [this] { goToArea(1); });
  menu->addAction(tr("Pre&vious area"), QKeySequence(Qt::SHIFT | Qt::Key_F6), this,
                  [this] { goToArea(-1); });
  QMenu* picture = menu->addMenu(tr("&Picture"));
  connect(picture, &QMenu::aboutToShow, this, [this, picture] {
    picture->clear();
    page_->fillPictureMenu(*picture);
  });
  buildUnitsMenu(*menu);
  buildAppearanceMenu(*menu);
  QMenu* spoken = menu->addMenu(tr("&Language"));
  auto* group = new QActionGroup(spoken);
  for (const QString& code : languages()) {
    QAction* action = spoken->addAction(nameOfLanguage(code), this, [this, code] {
      QSettings().setValue(QStringLiteral("language"), code);
      // The menu that this came from is made anew; let it close first.
      QMetaObject::invokeMethod(
          this, [code] { speak(code); }, Qt::QueuedConnection);
    });
    action->setCheckable(true);
    action->setChecked(code == spokenLanguage());
    group->addAction(action);
  }
}

void MainWindow::buildUnitsMenu(QMenu& view) {
  QMenu* menu = view.addMenu(tr("&Units"));
  menu->addAction(tr("&Metric units"), this, [this] { setUnits(rigs::UnitSystem::SI); });
  menu->addAction(tr("&US units"), this, [this] { setUnits(rigs::UnitSystem::UsCustomary); });
  menu->addSeparator();
  using rigs::UnitGroup;
  const std::array<std::pair<UnitGroup, QString>, rigs::kUnitGroups> groups{
      {{UnitGroup::Temperature, tr("&Temperatures")},
       {UnitGroup::Volume, tr("&Volumes")},
       {UnitGroup::Mass, tr("M&asses")},
       {UnitGroup::Length, tr("&Lengths")},
       {UnitGroup::Power, tr("&Power")},
       {UnitGroup::Energy, tr("&Energy")},
       {UnitGroup::Pressure, tr("P&ressure")}}};
  unitActions_.clear();
  for (const auto& [group, name] : groups) {
    QMenu* own = menu->addMenu(name);
    auto* one = new QActionGroup(own);
    const auto all = rigs::unitsOf(group);
    for (std::size_t choice = 0; choice < all.size(); ++choice) {
      const QString unit = QString::fromUtf8(all[choice].data(), qsizetype(all[choice].size()));
      QAction* action = own->addAction(unit, this, [this, group = group, choice] {
        setUnits(document_.units().with(group, choice));
      });
      action->setCheckable(true);
      one->addAction(action);
      unitActions_.push_back({group, choice, action});
    }
  }
  showUnits();
}

void MainWindow::buildAppearanceMenu(QMenu& view) {
  QMenu* menu = view.addMenu(tr("&Appearance"));
  auto* group = new QActionGroup(menu);
  const auto entry = [&](const QString& text, Appearance appearance) {
    QAction* action = menu->addAction(text, this, [appearance] { choose(appearance); });
    action->setCheckable(true);
    action->setChecked(appearance == chosenAppearance());
    group->addAction(action);
  };
  entry(tr("As the &system"), Appearance::AsSystem);
  entry(tr("&Light"), Appearance::Light);
  entry(tr("&Dark"), Appearance::Dark);
}

void MainWindow::buildHelpMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&Help"));
  menu->addAction(tr("Help on &this"), QKeySequence(Qt::Key_F1), this, &MainWindow::helpOnFocus);
  menu->addAction(tr("&What is this?"), QKeySequence(Qt::SHIFT | Qt::Key_F1), this,
                  &QWhatsThis::enterWhatsThisMode);
  menu->addAction(tr("&Keys ..."), QKeySequence(Qt::CTRL | Qt::Key_F1), this,
                  &MainWindow::showKeys);
  menu->addSeparator();
  menu->addAction(tr("&About Heat Ledger"), this, &MainWindow::about);
  menu->addAction(tr("About &Qt"), qApp, &QApplication::aboutQt);
}

void MainWindow::about() {
  QMessageBox box(QMessageBox::NoIcon, tr("About Heat Ledger"),
                  tr("Heat Ledger %1").arg(QString::fromUtf8(std::string(kVersion).c_str())),
                  QMessageBox::Ok, this);
  box.setInformativeText(
      tr("Plans a brew day with an electric kettle and accounts for every joule.\n\n"
         "Free software under the GNU General Public License, version 3 or later. It comes "
         "without any warranty.\n\n"
         "Made with Qt %1 (LGPL 3) and Qt Charts (GPL 3), Boost (Boost Software License) "
         "and nlohmann/json (MIT).")
          .arg(QString::fromUtf8(qVersion())));
  box.exec();
}

}  // namespace gui
