// SPDX-License-Identifier: GPL-3.0-or-later
// Rigs as columns: adding, making variants, moving, renaming, removing; each a step to take back.
#include <QAction>
#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QMenu>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/charts/rig_sample.hpp"
#include "gui/window/forms/rig_columns.hpp"
#include "rigs/documents/json_edit.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheColumns : public WindowTest {
 protected:
  // What the rig's own menu offers under this name.
  QAction* action(int rig, const QString& text) {
    auto* button = window().findChild<QToolButton*>(QStringLiteral("rig menu %1").arg(rig));
    if (!button) return nullptr;
    for (QAction* one : button->menu()->actions())
      if (one->text() == text) return one;
    return nullptr;
  }
  std::vector<std::string> names() {
    std::vector<std::string> all;
    for (std::size_t i = 0; i < rigs::rigCount(document().text()); ++i)
      all.push_back(textAt("/rigs/" + std::to_string(i) + "/name").value_or("?"));
    return all;
  }
  // With the mouse, as a person opens that menu and chooses from it.
  void click(int rig, const QString& text) {
    auto* button = window().findChild<QToolButton*>(QStringLiteral("rig menu %1").arg(rig));
    ASSERT_NE(button, nullptr);
    bool found = false;
    QTimer::singleShot(50, &hands_, [&] {
      auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
      if (!menu) return;
      for (QAction* one : menu->actions()) {
        if (one->text() != text) continue;
        found = true;
        QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(one).center());
        return;
      }
      menu->close();
    });
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return found; }, 5000)) << text.toStdString();
    // Without a window manager nobody gives the focus back when a menu closes.
    window().activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  // At the heads of the columns.
  QStringList letters() {
    QStringList all;
    for (std::size_t i = 0; i < names().size(); ++i) {
      auto* menu = window().findChild<QToolButton*>(QStringLiteral("rig menu %1").arg(i));
      for (const QLabel* label : menu->parentWidget()->findChildren<QLabel*>())
        if (label->text().startsWith(QLatin1Char('('))) all += label->text();
    }
    return all;
  }
  // A piece of its line there, always of one size.
  QImage lineOf(int rig) {
    auto* menu = window().findChild<QToolButton*>(QStringLiteral("rig menu %1").arg(rig));
    auto* sample = menu->parentWidget()->findChild<gui::RigSample*>();
    sample->resize(60, 12);
    return sample->grab().toImage();
  }
  // In the picture that is seen.
  std::vector<int> looks() {
    EXPECT_TRUE(settles());
    const auto& picture = window().page().findChild<gui::PlanChart*>()->picture();
    std::vector<int> all;
    for (std::size_t i = 0; i < names().size(); ++i)
      all.push_back(gui::telling::slotOfRig(picture, static_cast<int>(i)));
    return all;
  }
  int columns() {
    return static_cast<int>(window().forms().findChildren<gui::RigSample*>().size());
  }
};

TEST_F(TheColumns, TakeARigFromTheCatalogue) {
  const std::string before = document().text();
  auto* add = window().findChild<QToolButton*>("add rig");
  ASSERT_NE(add, nullptr);
  ASSERT_FALSE(add->menu()->actions().isEmpty());
  const QString name = add->menu()->actions().back()->text();
  add->menu()->actions().back()->trigger();
  EXPECT_EQ(names().size(), 5U);
  EXPECT_EQ(names().back(), name.toStdString());
  EXPECT_EQ(columns(), 5);
  EXPECT_NE(document().plan(), nullptr);
  undo();
  EXPECT_EQ(document().text(), before);
  EXPECT_EQ(columns(), 4);
}

TEST_F(TheColumns, MakeTheSameWithAJacket) {
  const std::string before = document().text();
  QAction* wrap = action(1, "Duplicate with a jacket");
  ASSERT_NE(wrap, nullptr);
  wrap->trigger();
  EXPECT_EQ(names()[2], "New element, kitchen, with a jacket");
  ASSERT_NE(document().plan(), nullptr);
  EXPECT_TRUE(document().plan()->rigs[2].hasJacket);
  ASSERT_TRUE(settles());
  // Same rig, same water, less lost through the wall.
  const auto& rigs = window().page().solution()->answers.rigs;
  EXPECT_LT(rigs[2].day.total.fromWall(), rigs[1].day.total.fromWall());
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheColumns, MakeTheSameThatFollows) {
  const std::string before = document().text();
  press(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);  // of the first
  ASSERT_EQ(names().size(), 5u);
  EXPECT_EQ(names()[1], "Old element, kitchen, otherwise");
  EXPECT_EQ(textAt("/rigs/1/same_as"), "a");
  ASSERT_NE(document().plan(), nullptr);
  EXPECT_TRUE(document().plan()->rigs[1].rig.vessel == document().plan()->rigs[0].rig.vessel);
  // It has what is said of it alone, and all else as the first has it by then.
  type("/rigs/1/boil_power", QStringLiteral("80 %"));
  type("/rigs/0/vessel/height", QStringLiteral("42 cm"));
  ASSERT_NE(document().plan(), nullptr);
  const rigs::Plan& plan = *document().plan();
  EXPECT_NEAR(physics::inMetres(plan.rigs[1].rig.vessel.height), 0.42, 1e-9);
  EXPECT_EQ(plan.rigs[1].rig.boilPower, 0.8);
  EXPECT_EQ(plan.rigs[0].rig.boilPower, 1.0);
  undo();
  undo();
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheColumns, KeepTheHandOnTheRigThatMoves) {
  QLineEdit* power = line("/rigs/1/element/power");
  power->setFocus();
  const std::string name = names()[1];
  press(Qt::Key_Right, Qt::AltModifier);
  EXPECT_EQ(QApplication::focusWidget()->objectName(), "/rigs/2/element/power");
  press(Qt::Key_Right, Qt::AltModifier);
  EXPECT_EQ(names()[3], name);
  EXPECT_EQ(QApplication::focusWidget()->objectName(), "/rigs/3/element/power");
  press(Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(names()[2], name);
  press(Qt::Key_D, Qt::ControlModifier);
  EXPECT_EQ(names()[3], name + ", copy");
  EXPECT_EQ(QApplication::focusWidget()->objectName(), "/rigs/3/element/power");
}

TEST_F(TheColumns, MoveAndTakeItBack) {
  const auto before = names();
  ASSERT_NE(action(0, "Move to the right"), nullptr);
  EXPECT_FALSE(action(0, "Move to the left")->isEnabled());
  EXPECT_FALSE(action(3, "Move to the right")->isEnabled());
  action(0, "Move to the right")->trigger();
  EXPECT_EQ(names()[0], before[1]);
  EXPECT_EQ(names()[1], before[0]);
  EXPECT_EQ(line("/rigs/0/name")->text().toStdString(), before[1]);
  undo();
  EXPECT_EQ(names(), before);
}

TEST_F(TheColumns, MoveByKeyboardTheRigThatHasTheFocus) {
  const auto before = names();
  line("/rigs/2/element/power")->setFocus();
  press(Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(names()[1], before[2]);
}

TEST_F(TheColumns, AreNeverFewerThanOne) {
  action(3, "Remove")->trigger();
  action(2, "Remove")->trigger();
  EXPECT_EQ(names().size(), 2U);
  action(1, "Remove")->trigger();
  ASSERT_EQ(names().size(), 1U);
  EXPECT_NE(document().plan(), nullptr);
  // The last one stays, and why is said where a person looks for it.
  EXPECT_EQ(action(0, "Remove"), nullptr);
  QAction* last = action(0, "Remove (a plan needs at least one rig)");
  ASSERT_NE(last, nullptr);
  EXPECT_FALSE(last->isEnabled());
  undo();
  undo();
  undo();
  EXPECT_EQ(names().size(), 4U);
}

TEST_F(TheColumns, AreNeverMoreThanTwelve) {
  for (int i = 4; i < 12; ++i) action(0, "Duplicate")->trigger();
  EXPECT_EQ(names().size(), 12U);
  EXPECT_FALSE(action(0, "Duplicate")->isEnabled());
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
}

TEST_F(TheColumns, KeepLetterAndLookWhenOthersGo) {
  action(3, "Remove")->trigger();
  ASSERT_EQ(letters(), (QStringList{"(a)", "(b)", "(c)"}));
  const std::string before = document().text();
  EXPECT_EQ(before.find("\"letter\""), std::string::npos);
  const QImage first = lineOf(0);
  const QImage third = lineOf(2);
  ASSERT_NE(third, lineOf(1));

  click(1, "Remove");
  const auto expectBoth = [&] {
    EXPECT_EQ(letters(), (QStringList{"(a)", "(c)"}));
    EXPECT_EQ(lineOf(0), first);
    EXPECT_EQ(lineOf(1), third);
    EXPECT_EQ(looks(), (std::vector<int>{0, 2}));
  };
  expectBoth();
  EXPECT_EQ(textAt("/rigs/0/letter"), std::nullopt);
  EXPECT_EQ(textAt("/rigs/1/letter"), "c");

  const QString path = fileIn("two.json");
  ASSERT_TRUE(window().savePlanAs(path));
  undo();
  EXPECT_EQ(document().text(), before);
  EXPECT_EQ(letters(), (QStringList{"(a)", "(b)", "(c)"}));
  redo();
  ASSERT_TRUE(window().savePlan());
  reopen(path);
  expectBoth();
}

TEST_F(TheColumns, GiveANewRigTheFirstLetterThatIsFree) {
  action(1, "Remove")->trigger();
  EXPECT_EQ(letters(), (QStringList{"(a)", "(c)", "(d)"}));
  window().findChild<QToolButton*>("add rig")->menu()->actions().back()->trigger();
  EXPECT_EQ(letters(), (QStringList{"(a)", "(c)", "(d)", "(b)"}));
  action(1, "Duplicate")->trigger();
  EXPECT_EQ(letters(), (QStringList{"(a)", "(c)", "(e)", "(d)", "(b)"}));
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  for (int i = 0; i < 3; ++i) undo();
  EXPECT_EQ(letters(), (QStringList{"(a)", "(b)", "(c)", "(d)"}));
}

TEST_F(TheColumns, MoveWithTheirLetters) {
  const QImage second = lineOf(1);
  line("/rigs/1/element/power")->setFocus();
  press(Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(letters(), (QStringList{"(b)", "(a)", "(c)", "(d)"}));
  EXPECT_EQ(lineOf(0), second);
  EXPECT_EQ(looks(), (std::vector<int>{1, 0, 2, 3}));
  // One rig says so; the others have theirs as before.
  EXPECT_EQ(textAt("/rigs/0/letter"), "b");
  EXPECT_EQ(textAt("/rigs/1/letter"), std::nullopt);
  undo();
  EXPECT_EQ(letters(), (QStringList{"(a)", "(b)", "(c)", "(d)"}));
  EXPECT_EQ(textAt("/rigs/1/letter"), std::nullopt);
}

TEST_F(TheColumns, SayWhenTwoRigsHaveOneName) {
  type("/rigs/1/name", "Old element, kitchen");
  EXPECT_TRUE(problemAt("/rigs/1/name").contains("two rigs are called"))
      << problemAt("/rigs/1/name").toStdString();
  undo();
  EXPECT_EQ(problemAt("/rigs/1/name"), QString());
}

}  // namespace
