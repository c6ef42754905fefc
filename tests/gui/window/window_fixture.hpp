// SPDX-License-Identifier: GPL-3.0-or-later
// A window, exposed, on the bundled example, and hands to type and click with.
#pragma once

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QMessageBox>
#include <QObject>
#include <QTemporaryDir>
#include <memory>
#include <optional>
#include <string>

#include "gui/window/main_window.hpp"

namespace test_support {

class WindowTest : public testing::Test {
 protected:
  void SetUp() override;
  void TearDown() override;
  void reopen(const QString& plan = {});

  gui::MainWindow& window() { return *window_; }
  gui::PlanDocument& document() { return window_->document(); }
  QString recoveryFolder() const { return folder_.filePath(QStringLiteral("unsaved")); }
  QString fileIn(const QString& name) const { return folder_.filePath(name); }

  // Fields by their JSON pointer; null where there is none. Opens the tab and section it is in.
  QLineEdit* line(const std::string& pointer);
  QComboBox* choice(const std::string& pointer);
  QString problemAt(const std::string& pointer);  // "" without one
  // As a person would: into the field, all of it selected, then the keys, then Enter.
  void type(const std::string& pointer, const QString& text);
  void choose(const std::string& pointer, const QString& text);
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers);  // on the window
  void undo() { press(Qt::Key_Z, Qt::ControlModifier); }
  void redo() { press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier); }

  std::optional<std::string> textAt(const std::string& pointer);
  bool settles();  // everything computed and shown
  // Presses this button in the next message box; how many boxes came is in boxes_.
  void answerBoxWith(QMessageBox::StandardButton button);
  void clickBanner(const QString& button);

  QTemporaryDir folder_;
  std::unique_ptr<gui::MainWindow> window_;
  int boxes_ = 0;
  QObject hands_;
};

void writeFile(const QString& path, const std::string& text);
std::string readFile(const QString& path);

}  // namespace test_support
