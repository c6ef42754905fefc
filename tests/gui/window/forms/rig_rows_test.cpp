// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the table of rigs: which are seen, what stays while it scrolls, one value for all.
#include <QApplication>
#include <QContextMenuEvent>
#include <QLabel>
#include <QMenu>
#include <QScrollBar>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include "gui/window/forms/field_words.hpp"
#include "gui/window/forms/rig_columns.hpp"
#include "rigs/documents/json_edit.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheRows : public WindowTest {
 protected:
  gui::RigColumns& table() { return window().forms().rigColumns(); }
  QComboBox* rows() { return window().findChild<QComboBox*>(QStringLiteral("rig rows")); }
  bool isSeen(const std::string& pointer) {
    auto* field = table().findChild<QWidget*>(QString::fromStdString(pointer));
    return field && field->isVisibleTo(table().widget());
  }
  void chooseRows(int index) {
    rows()->setFocus();
    QTest::keyClick(rows(), Qt::Key_Home);
    for (int i = 0; i < index; ++i) QTest::keyClick(rows(), Qt::Key_Down);
  }
  // The entry that begins so, of the next menu that opens.
  void chooseFromMenu(const QString& beginning) {
    QTimer::singleShot(50, &hands_, [this, beginning] {
      auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
      if (!menu) return;
      for (QAction* one : menu->actions()) {
        if (!one->text().startsWith(beginning)) continue;
        ++chosen_;
        QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(one).center());
        return;
      }
      menu->close();
    });
  }
  int chosen_ = 0;
};

TEST_F(TheRows, AreAllOrTheEssentialOrThoseThatDiffer) {
  type("/rigs/0/element/top_height", "70 mm");
  type("/rigs/1/element/top_height", "70 mm");
  type("/rigs/2/element/top_height", "7 cm");
  type("/rigs/3/element/top_height", "70 mm");
  EXPECT_TRUE(isSeen("/rigs/0/element/top_height"));
  chooseRows(1);
  EXPECT_FALSE(isSeen("/rigs/0/element/top_height"));
  EXPECT_TRUE(isSeen("/rigs/0/element/power"));
  EXPECT_TRUE(isSeen("/rigs/3/vessel/height"));
  chooseRows(2);
  EXPECT_FALSE(isSeen("/rigs/0/element/top_height"));  // 7 cm are 70 mm
  EXPECT_TRUE(isSeen("/rigs/0/element/power"));
  chooseRows(0);
  EXPECT_TRUE(isSeen("/rigs/0/element/top_height"));
}

TEST_F(TheRows, ThatDifferAreSeenAsSoonAsTheyDo) {
  const std::string wall = "/rigs/1/vessel/wall";
  type(wall, "2 mm");
  QTest::keyClick(line(wall), Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
  chooseRows(2);
  ASSERT_FALSE(isSeen(wall));
  document().change(QStringLiteral("thick"), rigs::withText(document().text(), wall, "3 mm"));
  EXPECT_TRUE(isSeen(wall));
}

TEST_F(TheRows, WithAProblemAreAlwaysSeen) {
  chooseRows(1);
  document().change(QStringLiteral("thick"),
                    rigs::withText(document().text(), "/rigs/1/vessel/wall", "thick"));
  EXPECT_TRUE(isSeen("/rigs/1/vessel/wall"));
}

TEST_F(TheRows, AreRememberedAndOneIsLedTo) {
  chooseRows(1);
  reopen();
  EXPECT_EQ(rows()->currentIndex(), 1);
  window().setFormsShown(true);
  EXPECT_FALSE(isSeen("/rigs/0/vessel/mass"));
  window().forms().showField({QStringLiteral("/rigs/0/vessel/mass")});
  EXPECT_TRUE(isSeen("/rigs/0/vessel/mass"));
  chooseRows(0);
}

TEST_F(TheRows, TakeOneValueForAllRigsByKeyInOneStep) {
  const std::string before = document().text();
  QLineEdit* power = line("/rigs/1/element/power");
  power->setFocus();
  QTest::keyClick(power, Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
  for (int i = 0; i < 4; ++i)
    EXPECT_EQ(line("/rigs/" + std::to_string(i) + "/element/power")->text(), power->text());
  EXPECT_NE(document().plan(), nullptr);
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheRows, TakeOneValueForAllRigsFromTheMenuOfFieldAndLabel) {
  QLineEdit* height = line("/rigs/2/vessel/height");
  type("/rigs/2/vessel/height", "444 mm");
  chooseFromMenu(QStringLiteral("All as (c)"));
  QContextMenuEvent onField(QContextMenuEvent::Keyboard, QPoint(4, 4),
                            height->mapToGlobal(QPoint(4, 4)));
  qApp->sendEvent(height, &onField);
  EXPECT_EQ(chosen_, 1);
  EXPECT_EQ(line("/rigs/0/vessel/height")->text(), "444 mm");

  QLabel* label = nullptr;
  for (auto* one : table().findChildren<QLabel*>())
    if (one->text() == gui::labelAt("/rigs/0/vessel/height")) label = one;
  ASSERT_NE(label, nullptr);
  type("/rigs/0/vessel/height", "450 mm");
  chooseFromMenu(QStringLiteral("All as (a)"));
  QContextMenuEvent onLabel(QContextMenuEvent::Mouse, QPoint(4, 4),
                            label->mapToGlobal(QPoint(4, 4)));
  qApp->sendEvent(label, &onLabel);
  EXPECT_EQ(chosen_, 2);
  EXPECT_EQ(line("/rigs/3/vessel/height")->text(), "450 mm");
}

TEST_F(TheRows, OfAFollowerStateNothingThatTheFollowedSays) {
  table().duplicate(0, gui::Variant::Following);
  type("/rigs/1/element/power", "5 kW");
  ASSERT_TRUE(textAt("/rigs/1/element/power"));
  QLineEdit* power = line("/rigs/0/element/power");
  power->setFocus();
  QTest::keyClick(power, Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_FALSE(textAt("/rigs/1/element/power"));
  EXPECT_EQ(textAt("/rigs/4/element/power"), "3000 W");
}

TEST_F(TheRows, KeepHeadsAndLabelsInSight) {
  window().resize(1000, 600);
  window().setFormsShown(true);
  QScrollBar* down = table().verticalScrollBar();
  ASSERT_GT(down->maximum(), 0);
  down->setValue(down->maximum());
  for (int rig = 0; rig < 4; ++rig) {
    auto* head = table().findChild<QWidget*>(QStringLiteral("rig head %1").arg(rig));
    ASSERT_NE(head, nullptr);
    EXPECT_EQ(head->mapTo(table().viewport(), QPoint(0, 0)).y(), 0);
  }
  EXPECT_EQ(rows()->parentWidget()->mapTo(table().viewport(), QPoint(0, 0)).y(), 0);
  document().change(QStringLiteral("again"),
                    rigs::withText(document().text(), "/rigs/0/element/power", "3.3 kW"));
  auto* head = table().findChild<QWidget*>(QStringLiteral("rig head 0"));
  EXPECT_EQ(head->mapTo(table().viewport(), QPoint(0, 0)).y(), 0);
}

TEST_F(TheRows, AreNeverReachedBelowTheHeads) {
  window().resize(1000, 600);
  window().setFormsShown(true);
  auto* head = table().findChild<QWidget*>(QStringLiteral("rig head 0"));
  line("/rigs/0/element/power")->setFocus();
  for (int i = 0; i < 60; ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    QWidget* now = QApplication::focusWidget();
    if (!table().widget()->isAncestorOf(now) || head->isAncestorOf(now)) continue;
    bool isInHead = false;
    for (QWidget* one = now; one; one = one->parentWidget())
      isInHead = isInHead || one->objectName().startsWith(QLatin1String("rig head"));
    if (isInHead) continue;
    EXPECT_GE(now->mapTo(table().viewport(), QPoint(0, 0)).y(),
              head->mapTo(table().viewport(), QPoint(0, 0)).y() + head->height() - 1)
        << now->objectName().toStdString();
  }
}

TEST_F(TheRows, AreGoneThroughDownARig) {
  QLineEdit* name = line("/rigs/1/name");
  name->setFocus();
  QStringList way;
  for (int i = 0; i < 8; ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    way += QApplication::focusWidget()->objectName();
  }
  EXPECT_EQ(way.front(), QStringLiteral("/rigs/1/element/power"));
  for (const QString& one : way)
    EXPECT_TRUE(one.startsWith(QLatin1String("/rigs/1/"))) << one.toStdString();
}

}  // namespace
