// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/window/hands.hpp"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QProcess>
#include <QStandardPaths>
#include <QTest>

namespace test_support {
namespace {

constexpr int kPatience = 5000;  // ms

}  // namespace

Hands::Hands() {
  if (QGuiApplication::platformName() == QLatin1String("xcb"))
    xdotool_ = QStandardPaths::findExecutable(QStringLiteral("xdotool"));
}

void Hands::press(const QStringList& arguments) {
  QProcess process;
  process.start(xdotool_, arguments);
  ASSERT_TRUE(QTest::qWaitFor([&] { return process.state() == QProcess::NotRunning; }, kPatience));
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
}

void Hands::turnTo(QWidget& window) {
  if (areReal()) press({QStringLiteral("windowfocus"), QString::number(window.winId())});
  if (!QTest::qWaitFor([&] { return window.isActiveWindow(); }, areReal() ? kPatience : 200))
    QApplication::setActiveWindow(&window);
}

void Hands::type(const QString& keys) {
  ++values_;
  auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(line, nullptr);
  if (areReal())
    press({QStringLiteral("type"), QStringLiteral("--delay"), QStringLiteral("5"), keys});
  else
    QTest::keyClicks(line, keys);
  EXPECT_TRUE(QTest::qWaitFor([&] { return line->text().startsWith(keys); }, kPatience))
      << line->text().toStdString();
}

void Hands::tab() {
  QWidget* before = QApplication::focusWidget();
  ASSERT_NE(before, nullptr);
  if (areReal())
    press({QStringLiteral("key"), QStringLiteral("Tab")});
  else
    QTest::keyClick(before, Qt::Key_Tab);
  EXPECT_TRUE(QTest::qWaitFor([&] { return QApplication::focusWidget() != before; }, kPatience));
}

void Hands::click(QWidget& on, QPoint at) {
  ++clicks_;
  if (!areReal()) {
    QTest::mouseMove(&on, at);
    QTest::mouseClick(&on, Qt::LeftButton, {}, at);
    return;
  }
  const QPoint there = on.mapToGlobal(at);
  press({QStringLiteral("mousemove"), QString::number(there.x()), QString::number(there.y()),
         QStringLiteral("click"), QStringLiteral("1")});
}

}  // namespace test_support
