// SPDX-License-Identifier: GPL-3.0-or-later
// How a plan begins: as a copy of an example, with one's own kettle, or from a file. Closing it
// leaves everything as it is.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QStringList>
#include <QTabBar>
#include <string>

#include "gui/window/start/kettle_page.hpp"

namespace gui {

class StartSheet : public QDialog {
  Q_OBJECT

 public:
  enum class Way { Example, Kettle, Open };

  // `recent`: paths of plans, the latest first.
  StartSheet(rigs::UnitSystem units, const QStringList& recent, QWidget* parent);

  KettlePage& kettle() { return *kettle_; }
  Way way() const;
  void setWay(Way way);

 Q_SIGNALS:
  // Whoever takes it closes the sheet.
  void exampleChosen(const std::string& document);
  void kettleChosen(const std::string& document);
  void openWanted(const QString& path);  // "": a file is still to be chosen

 private:
  QWidget* examplesPage();
  QWidget* openPage(const QStringList& recent);
  QLabel* heading(const QString& text);
  void takeWay();
  void showWay();

  rigs::UnitSystem units_;
  QTabBar* ways_ = nullptr;
  QStackedWidget* pages_ = nullptr;
  KettlePage* kettle_ = nullptr;
  QListWidget* examples_ = nullptr;
  QListWidget* recent_ = nullptr;
  QPushButton* take_ = nullptr;
};

}  // namespace gui
