// SPDX-License-Identifier: GPL-3.0-or-later
// Values by the arrow keys, by Ctrl and the wheel, and by slider.
#include <gtest/gtest.h>

#include <QApplication>
#include <QSlider>
#include <QTest>
#include <QWheelEvent>

#include "gui/window/forms/value_slider.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/key_steps.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheHand : public WindowTest {
 protected:
  QLineEdit* into(const std::string& pointer) {
    QLineEdit* field = line(pointer);
    field->setFocus();
    return field;
  }
  static void turn(QWidget* over, int notches, Qt::KeyboardModifiers with) {
    const QPointF at(5, 5);
    QWheelEvent wheel(at, over->mapToGlobal(at), {}, {0, -120 * notches}, Qt::NoButton, with,
                      Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&wheel);
    qApp->notify(over, &wheel);
  }
  static QSlider* openSlider() {
    QWidget* popup = QApplication::activePopupWidget();
    return popup ? popup->findChild<QSlider*>() : nullptr;
  }
  const std::string kPower = "/rigs/0/element/power";
};

TEST_F(TheHand, OfArrowKeysAreOneStepBack) {
  type(kPower, QStringLiteral("3 kW"));
  const std::string before = document().text();
  const auto power = textAt(kPower);
  QLineEdit* field = into(kPower);
  const auto up = rigs::stepped(*rigs::keyAt(kPower), *power, 1);
  QTest::keyClick(field, Qt::Key_Up);
  EXPECT_EQ(textAt(kPower), up);
  EXPECT_EQ(field->text().toStdString(), *up);
  QTest::keyClick(field, Qt::Key_Up);
  QTest::keyClick(field, Qt::Key_Up, Qt::ShiftModifier);
  QTest::keyClick(field, Qt::Key_PageUp);
  EXPECT_EQ(textAt(kPower), rigs::stepped(*rigs::keyAt(kPower), *power, 22));
  QTest::keyClick(field, Qt::Key_PageDown);
  QTest::keyClick(field, Qt::Key_Down);
  EXPECT_EQ(textAt(kPower), rigs::stepped(*rigs::keyAt(kPower), *power, 11));
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheHand, AreAnotherStepBackThanWhatIsTyped) {
  type(kPower, QStringLiteral("3 kW"));
  const std::string typed = document().text();
  QLineEdit* field = line(kPower);
  QTest::keyClick(field, Qt::Key_Up);
  EXPECT_EQ(textAt(kPower), "3.1 kW");
  undo();
  EXPECT_EQ(document().text(), typed);
}

TEST_F(TheHand, GoOnFromWhatIsBeingTyped) {
  QLineEdit* field = into(kPower);
  field->selectAll();
  QTest::keyClicks(field, QStringLiteral("4000"));
  QTest::keyClick(field, Qt::Key_Up);
  EXPECT_EQ(textAt(kPower), "4100 W");
  EXPECT_EQ(field->text(), QStringLiteral("4100 W"));
}

TEST_F(TheHand, StateWhatWasNotStated) {
  QLineEdit* field = into("/rigs/0/boil_power");
  ASSERT_TRUE(field->text().isEmpty());
  QTest::keyClick(field, Qt::Key_Down);
  EXPECT_EQ(textAt("/rigs/0/boil_power"), "95 %");
}

TEST_F(TheHand, AreInTheUnitsThatAreShown) {
  window().setUnits(rigs::UnitSystem::UsCustomary);
  QLineEdit* field = into("/place/room");
  ASSERT_TRUE(field->text().endsWith(QStringLiteral("°F"))) << field->text().toStdString();
  QTest::keyClick(field, Qt::Key_Up);
  EXPECT_EQ(textAt("/place/room"), "70 °F");
}

TEST_F(TheHand, OfTheWheelNeedCtrlAndTheFocus) {
  type(kPower, QStringLiteral("3 kW"));
  QLineEdit* field = line(kPower);
  const std::string before = document().text();
  const auto power = textAt(kPower);
  window().page().setFocus();
  turn(field, -1, Qt::ControlModifier);
  EXPECT_EQ(document().text(), before);
  field->setFocus();
  turn(field, -1, Qt::NoModifier);
  EXPECT_EQ(document().text(), before);
  turn(field, -1, Qt::ControlModifier);
  EXPECT_EQ(textAt(kPower), rigs::stepped(*rigs::keyAt(kPower), *power, 1));
  turn(field, 1, Qt::ControlModifier);
  turn(field, 1, Qt::ControlModifier);
  EXPECT_EQ(textAt(kPower), rigs::stepped(*rigs::keyAt(kPower), *power, -1));
}

TEST_F(TheHand, OfASliderAreOneStepBackAndTheAnswerFollows) {
  ASSERT_TRUE(settles());
  type(kPower, QStringLiteral("3 kW"));
  const std::string before = document().text();
  const auto power = textAt(kPower);
  QLineEdit* field = into(kPower);
  QTest::keyClick(field, Qt::Key_Down, Qt::AltModifier);
  QSlider* slider = openSlider();
  ASSERT_NE(slider, nullptr);
  QTest::keyClick(slider, Qt::Key_Right);
  EXPECT_EQ(textAt(kPower), rigs::stepped(*rigs::keyAt(kPower), *power, 1));
  EXPECT_TRUE(slider->accessibleName().contains(field->text()));
  ASSERT_TRUE(settles());  // with the slider open
  ASSERT_EQ(openSlider(), slider);
  QTest::mousePress(slider, Qt::LeftButton, {}, QPoint(3, slider->height() / 2));
  QTest::mouseRelease(slider, Qt::LeftButton, {}, QPoint(3, slider->height() / 2));
  EXPECT_NE(textAt(kPower), rigs::stepped(*rigs::keyAt(kPower), *power, 1));
  QTest::keyClick(slider, Qt::Key_Escape);
  EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheHand, OfTwoSlidersAreTwoStepsBack) {
  QLineEdit* field = into("/place/altitude");
  for (int i = 0; i < 2; ++i) {
    QTest::keyClick(field, Qt::Key_Down, Qt::AltModifier);
    ASSERT_NE(openSlider(), nullptr);
    QTest::keyClick(openSlider(), Qt::Key_PageUp);
    QTest::keyClick(openSlider(), Qt::Key_Return);
    field->setFocus();
  }
  const auto twice = textAt("/place/altitude");
  undo();
  EXPECT_NE(textAt("/place/altitude"), twice);
  EXPECT_TRUE(textAt("/place/altitude"));
}

TEST_F(TheHand, ASliderIsOfferedWhereOneIsInTheFocusedFieldAlone) {
  const auto offers = [](const QLineEdit* field) {
    int seen = 0;
    for (const QAction* action : field->actions()) seen += action->isVisible() ? 1 : 0;
    return seen;
  };
  QLineEdit* power = into(kPower);
  EXPECT_EQ(offers(power), 1);
  QLineEdit* voltage = into("/rigs/0/element/rated_voltage");
  EXPECT_EQ(offers(power), 0);
  EXPECT_EQ(offers(voltage), 0);
}

}  // namespace
