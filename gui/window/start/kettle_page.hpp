// SPDX-License-Identifier: GPL-3.0-or-later
// One kettle asked for in six plain things, and what it comes to beside them while they are typed.
#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QVBoxLayout>
#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "gui/telling/first_minute.hpp"
#include "gui/window/forms/quantity_field.hpp"
#include "gui/window/questions/solver.hpp"
#include "rigs/plans/first_kettle.hpp"

class QGridLayout;

namespace gui {

class KettlePage : public QWidget {
  Q_OBJECT

 public:
  explicit KettlePage(rigs::UnitSystem units, QWidget* parent = nullptr);

  // What is still in a field counts.
  void commit();
  // A plan of this kettle alone, as far as it is typed.
  const std::string& document() const { return started_.document; }
  bool isFine() const { return isFine_; }  // nothing that is typed is wrong
  bool isSettled() const;                  // the answer is of what is typed
  // Of the machine's country: a region of the rules, the usual one where there are none.
  static std::string usualRegion();

 Q_SIGNALS:
  void fineChanged(bool fine);

 private:
  struct Field {
    PlanLineEdit* line = nullptr;
    QLabel* label = nullptr;
    ProblemLabel* problem = nullptr;
  };
  void buildQuestions(QVBoxLayout& column);
  void buildAnswer(QVBoxLayout& column);
  void addKettle(QGridLayout& grid);
  void addCircuit(QGridLayout& grid);
  void addLidAndJacket(QGridLayout& grid);
  void addField(QGridLayout& grid, rigs::KettleFigure figure, const QString& label,
                const char* name);
  static void addRow(QGridLayout& grid, QLabel* label, QWidget* widget);
  void fillCircuits();
  void take(rigs::KettleFigure figure, const QString& text);
  void startAnew();  // the plan, from what is asked
  void showFields();
  void showProblems(const rigs::Problems& ofTheDay);
  void showAnswer(const rigs::SolutionPtr& solution);
  QString assumed(rigs::KettleFigure figure) const;
  void setFine(bool fine);

  rigs::UnitSystem units_;
  rigs::FirstKettle kettle_;
  rigs::StartedKettle started_;
  std::map<rigs::KettleFigure, Field> fields_;
  PlanComboBox* statedBy_ = nullptr;
  PlanComboBox* region_ = nullptr;
  PlanComboBox* circuit_ = nullptr;
  QLabel* proportions_ = nullptr;
  QLabel* headline_ = nullptr;
  QLabel* circuitSays_ = nullptr;
  QLabel* day_ = nullptr;
  QLabel* jacketSays_ = nullptr;
  QLabel* assumed_ = nullptr;
  QLabel* cautions_ = nullptr;
  ProblemLabel* otherProblem_ = nullptr;
  bool isFine_ = true;
  int edition_ = 0;
  int shown_ = 0;
  Solver solver_;
};

}  // namespace gui
