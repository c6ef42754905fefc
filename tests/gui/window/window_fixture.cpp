// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

#include <QAbstractButton>
#include <QApplication>
#include <QFile>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <QWhatsThis>

#include "rigs/documents/json_edit.hpp"

namespace test_support {

void WindowTest::SetUp() {
  QSettings().clear();
  QSettings().setValue(QStringLiteral("units"), QStringLiteral("si"));
  // Whose hands type into fields has them before their eyes, however narrow the window.
  QSettings().setValue(QStringLiteral("forms shown"), true);
  reopen();
}

void WindowTest::TearDown() {
  QWhatsThis::leaveWhatsThisMode();
  window_.reset();
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
}

void WindowTest::reopen(const QString& plan) {
  window_.reset();
  window_ = std::make_unique<gui::MainWindow>(plan, recoveryFolder());
  window_->show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
  window_->activateWindow();
  // Without a window manager nobody makes a window the active one, and short cuts need that.
  if (!QTest::qWaitFor([this] { return window_->isActiveWindow(); }, 200))
    QApplication::setActiveWindow(window_.get());
}

QLineEdit* WindowTest::line(const std::string& pointer) {
  auto* found = window_->findChild<QLineEdit*>(QString::fromStdString(pointer));
  if (!found) return nullptr;
  for (int i = 0; i < window_->forms().tabs().count(); ++i) {
    if (window_->forms().tabs().widget(i)->isAncestorOf(found))
      window_->forms().tabs().setCurrentIndex(i);
  }
  for (const gui::FieldCell* cell : window_->forms().rigColumns().cells())
    if (cell->editor() == found) window_->forms().rigColumns().showSectionOf(cell);
  return found;
}

QComboBox* WindowTest::choice(const std::string& pointer) {
  auto* found = window_->findChild<QComboBox*>(QString::fromStdString(pointer));
  for (const gui::FieldCell* cell : window_->forms().rigColumns().cells())
    if (cell->editor() == found) window_->forms().rigColumns().showSectionOf(cell);
  return found;
}

QString WindowTest::problemAt(const std::string& pointer) {
  const auto* label = window_->findChild<QLabel*>(QString::fromStdString(pointer + "?"));
  return label && !label->isHidden() ? label->text() : QString();
}

void WindowTest::type(const std::string& pointer, const QString& text) {
  QLineEdit* field = line(pointer);
  ASSERT_NE(field, nullptr) << pointer;
  field->setFocus();
  field->selectAll();
  if (text.isEmpty())
    QTest::keyClick(field, Qt::Key_Delete);
  else
    QTest::keyClicks(field, text);
  QTest::keyClick(field, Qt::Key_Return);
}

void WindowTest::choose(const std::string& pointer, const QString& text) {
  QComboBox* box = choice(pointer);
  ASSERT_NE(box, nullptr) << pointer;
  const int index = box->findText(text);
  ASSERT_GE(index, 0) << text.toStdString();
  box->setFocus();
  // Home, then down to the entry: what a keyboard does to a closed box.
  QTest::keyClick(box, Qt::Key_Home);
  for (int guard = 0; guard < 100; ++guard) {
    QComboBox* now = choice(pointer);  // a choice may build the form anew
    if (now->currentText() == text) return;
    QTest::keyClick(now, Qt::Key_Down);
  }
  ADD_FAILURE() << "never reached " << text.toStdString();
}

void WindowTest::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QWidget* target = QApplication::focusWidget();
  QTest::keyClick(target ? target : window_.get(), key, modifiers);
}

std::optional<std::string> WindowTest::textAt(const std::string& pointer) {
  return rigs::textAt(document().text(), pointer);
}

bool WindowTest::settles() {
  const bool all =
      QTest::qWaitFor([this] { return window_->isSettled(); }, test_support::kPatience);
  QCoreApplication::processEvents();  // layouts follow their contents
  return all;
}

void WindowTest::answerBoxWith(QMessageBox::StandardButton button) {
  auto* timer = new QTimer(&hands_);  // outlives a window that is opened anew
  QObject::connect(timer, &QTimer::timeout, timer, [this, timer, button] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) return;
    timer->deleteLater();
    ++boxes_;
    QTest::mouseClick(box->button(button), Qt::LeftButton);
  });
  timer->start(10);
}

void WindowTest::clickBanner(const QString& text) {
  for (QPushButton* button : window_->banner().findChildren<QPushButton*>()) {
    if (button->text() != text || !button->isVisible()) continue;
    QTest::mouseClick(button, Qt::LeftButton);
    return;
  }
  ADD_FAILURE() << "no button " << text.toStdString();
}

void writeFile(const QString& path, const std::string& text) {
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
  ASSERT_EQ(file.write(text.data(), static_cast<qint64>(text.size())),
            static_cast<qint64>(text.size()));
}

std::string readFile(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return file.readAll().toStdString();
}

}  // namespace test_support
