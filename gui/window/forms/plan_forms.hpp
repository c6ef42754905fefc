// SPDX-License-Identifier: GPL-3.0-or-later
// The whole plan as forms: rigs as columns, side by side; the batch; the place, goals and price.
#pragma once

#include <QLabel>
#include <QTabWidget>
#include <QWidget>
#include <vector>

#include "gui/window/files/plan_document.hpp"
#include "gui/window/forms/field_cell.hpp"
#include "gui/window/forms/rig_columns.hpp"
#include "rigs/answers/solution.hpp"

namespace gui {

class PlanForms : public QWidget {
  Q_OBJECT

 public:
  explicit PlanForms(PlanDocument& document, QWidget* parent = nullptr);

  void commit();                    // whatever is being typed, now
  std::string textAsTyped() const;  // the document, with what is being typed
  // Contradictions that only a simulation finds.
  void setProblemsOfTheDay(const rigs::Problems& problems);
  // At the columns and fields of rigs that overload a circuit; null: none is known to.
  void showOverloads(const rigs::SolutionPtr& solution);
  void retranslate();
  RigColumns& rigColumns() { return *rigs_; }
  QTabWidget& tabs() { return *tabs_; }
  // What no field claims; for tests and the status line.
  QString otherProblems() const { return others_->text(); }
  int errorCount() const { return errors_; }
  // Brings the first field into view that says something else than with `before`, and points it
  // out.
  void showChanged(const rigs::Texts& before);
  // Brings the first of these places that has a field into view, and the hand into it.
  void showField(const QStringList& places);

 private:
  void refresh();
  void build();
  void bringIntoView(FieldCell* cell);
  void distributeProblems();
  std::vector<FieldCell*> allCells() const;
  QWidget* column(const std::vector<FieldSection>& sections, std::vector<FieldCell*>& cells);

  PlanDocument& document_;
  QLabel* others_ = nullptr;
  QTabWidget* tabs_ = nullptr;
  RigColumns* rigs_ = nullptr;
  QWidget* batch_ = nullptr;
  QWidget* place_ = nullptr;
  std::vector<FieldCell*> batchCells_, placeCells_;
  ListLengths lengths_;
  std::size_t rigCount_ = 0;
  FormState state_;
  rigs::Problems problemsOfTheDay_;
  int errors_ = 0;
};

}  // namespace gui
