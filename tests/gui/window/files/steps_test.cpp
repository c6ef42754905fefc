// SPDX-License-Identifier: GPL-3.0-or-later
// Steps back and again: what they are called, where they show, and what they keep in memory.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QScrollBar>
#include <QStatusBar>
#include <QTest>
#include <QToolButton>

#include "gui/window/files/text_change.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::PlanDocument;
using gui::TextChange;
using test_support::WindowTest;

RC_GTEST_PROP(ATextChange, GoesThereAndBackToTheByte,
              (const std::string& a, const std::string& b)) {
  const TextChange change(a, b);
  RC_ASSERT(change.done(a) == b);
  RC_ASSERT(change.undone(b) == a);
  RC_ASSERT(change.isNothing() == (a == b));
}

TEST(ATextChange, KeepsWhatDiffersAlone) {
  const std::string plan = rigs::withText(rigs::newPlanText(), "/place/room", "22.5 C");
  const std::string other = rigs::withText(plan, "/place/room", "23 C");
  EXPECT_LT(TextChange(plan, other).bytes(), 64u);
  EXPECT_EQ(TextChange(plan, other).done(plan), other);
}

TEST(TheSteps, AreFewEnoughAfterTenThousandEdits) {
  PlanDocument document;
  document.startAnew(*rigs::planStartText("one-kettle"));
  const std::string before = document.text();
  std::string last;
  for (int i = 0; i < 10000; ++i) {
    const std::string room = std::to_string(10 + i % 25) + '.' + std::to_string(i % 10) + " C";
    last = rigs::withText(document.text(), "/place/room", room);
    document.change(QStringLiteral("change of Room (Place)"), last);
  }
  EXPECT_EQ(document.undoStack().count(), PlanDocument::kMostSteps);
  EXPECT_LT(document.bytesForSteps(), 400u * PlanDocument::kMostSteps);
  EXPECT_EQ(document.text(), last);
  while (document.undoStack().canUndo()) document.undoStack().undo();
  EXPECT_EQ(document.text(), rigs::withText(before, "/place/room", "34.9 C")) << "of step 9000";
  while (document.undoStack().canRedo()) document.undoStack().redo();
  EXPECT_EQ(document.text(), last);
}

TEST(TheSteps, ThatBecomeOneGoBackToBeforeTheFirst) {
  PlanDocument document;
  const std::string before = document.text();
  for (const char* room : {"2 C", "22 C", "22.5 C"})
    document.change("typing", rigs::withText(document.text(), "/place/room", room), "room#0");
  EXPECT_EQ(document.undoStack().count(), 1);
  document.undoStack().undo();
  EXPECT_EQ(document.text(), before);
  document.undoStack().redo();
  EXPECT_EQ(rigs::textAt(document.text(), "/place/room"), "22.5 C");
  document.change("typing", before, "room#0");
  EXPECT_EQ(document.undoStack().count(), 0) << "typed and taken back is no step";
}

class AStep : public WindowTest {
 protected:
  QMenu* edit() {
    QMenu* menu = window().menuBar()->actions()[1]->menu();
    Q_EMIT menu->aboutToShow();
    return menu;
  }
  QString undoText() { return edit()->actions()[0]->text(); }
  QString redoText() { return edit()->actions()[1]->text(); }
  bool isPointedOut(const std::string& pointer) {
    return window()
        .findChild<QWidget*>(QString::fromStdString(pointer))
        ->property("pointed out")
        .toBool();
  }
};

TEST_F(AStep, IsCalledByWhatItChangesInMenuAndTip) {
  EXPECT_EQ(undoText(), "&Undo");
  EXPECT_EQ(edit()->actions()[0]->toolTip(), "There is no step back");
  type("/rigs/1/element/power", "1800 W");
  EXPECT_EQ(undoText(), "&Undo: change of Power (Element) of (b)");
  EXPECT_EQ(edit()->actions()[0]->toolTip(), "Undo: change of Power (Element) of (b)");
  EXPECT_TRUE(edit()->toolTipsVisible());
  EXPECT_EQ(redoText(), "&Redo");
  undo();
  EXPECT_EQ(redoText(), "&Redo: change of Power (Element) of (b)");
  EXPECT_EQ(edit()->actions()[1]->toolTip(), "Redo: change of Power (Element) of (b)");
  type("/batch/boil", "80 min");
  EXPECT_EQ(undoText(), "&Undo: change of Length of the boil (Batch)");
  type("/rigs/2/name", "Jacketed");
  EXPECT_EQ(undoText(), "&Undo: change of Name of (c)");
  window().forms().rigColumns().remove(0);
  EXPECT_EQ(undoText(), "&Undo: removing (a) Old element, kitchen");
}

TEST_F(AStep, IsNamedWithWhatIsStillBeingTyped) {
  QLineEdit* boil = line("/batch/boil");
  boil->setFocus();
  boil->selectAll();
  QTest::keyClicks(boil, "80 min");
  EXPECT_EQ(undoText(), "&Undo: change of Length of the boil (Batch)");
}

TEST_F(AStep, BackShowsItsFieldAndSaysWhatItDid) {
  type("/batch/boil", "80 min");
  line("/rigs/0/name")->setFocus();  // another tab
  auto& tabs = window().forms().tabs();
  ASSERT_EQ(tabs.currentIndex(), 0);
  undo();
  EXPECT_EQ(tabs.currentIndex(), 1);
  EXPECT_TRUE(isPointedOut("/batch/boil"));
  EXPECT_FALSE(isPointedOut("/batch/wort"));
  EXPECT_EQ(window().statusBar()->currentMessage(), "Undone: change of Length of the boil (Batch)");
  EXPECT_TRUE(QTest::qWaitFor([&] { return !isPointedOut("/batch/boil"); },
                              3 * gui::FieldCell::kPointedOut));
  redo();
  EXPECT_TRUE(isPointedOut("/batch/boil"));
  EXPECT_EQ(window().statusBar()->currentMessage(),
            "Done again: change of Length of the boil (Batch)");
}

// In a section that is shut, below what is seen.
TEST_F(AStep, BackOpensTheSectionAndScrollsToTheField) {
  type("/rigs/1/evaporation_factor", "1.1");
  QScrollArea& columns = window().forms().rigColumns();
  line("/rigs/0/name")->setFocus();
  for (auto* head : columns.findChildren<QToolButton*>())
    if (head->text() == "From your own measurement") head->setChecked(false);
  columns.verticalScrollBar()->setValue(0);
  undo();
  QLineEdit* field = window().findChild<QLineEdit*>("/rigs/1/evaporation_factor");
  QCoreApplication::processEvents();
  EXPECT_TRUE(field->isVisible());
  EXPECT_FALSE(field->visibleRegion().isEmpty());
}

TEST_F(AStep, OfTheUnitsPointsNothingOut) {
  window().setUnits(rigs::UnitSystem::UsCustomary);
  undo();
  EXPECT_EQ(window().statusBar()->currentMessage(), "Undone: change of units");
  for (const auto* field : window().forms().findChildren<QWidget*>())
    EXPECT_FALSE(field->property("pointed out").toBool());
}

}  // namespace
