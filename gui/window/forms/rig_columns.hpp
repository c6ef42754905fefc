// SPDX-License-Identifier: GPL-3.0-or-later
// The rigs side by side: one column each, always in the plan's order, with the letter, dash and
// shade that the rig has in every picture and keeps for life.
#pragma once

#include <QGridLayout>
#include <QPointer>
#include <QScrollArea>
#include <QToolButton>
#include <QWidget>
#include <vector>

#include "gui/window/files/plan_document.hpp"
#include "gui/window/forms/field_cell.hpp"
#include "gui/window/forms/plan_edits.hpp"
#include "gui/window/forms/plan_fields.hpp"

class QLabel;
class QMenu;

namespace gui {

// That a rig asks more of a circuit than it is rated for. By name: columns may move before the next
// answer is there.
struct RigOverload {
  std::string rig;
  std::size_t circuit;  // 0, or 1 of two
  bool ofTwo;
  QString sentence;

  bool operator==(const RigOverload&) const = default;
};

class RigColumns : public QScrollArea {
  Q_OBJECT

 public:
  explicit RigColumns(PlanDocument& document, QWidget* parent = nullptr);

  void rebuild(const ListLengths& lengths, std::size_t count, const FormState& state);
  void refresh(const FormState& state);
  const std::vector<FieldCell*>& cells() const { return cells_; }
  // By which the columns are called and drawn, in the plan's order.
  const std::vector<std::size_t>& letters() const { return letters_; }
  void showSectionOf(const FieldCell* cell);
  // At the heads of their columns, and at the fields that say so much power and so few amperes.
  void showOverloads(std::vector<RigOverload> overloads, const FormState& state);

  // What a person can do to a rig as a whole. Indexes as in the plan.
  void addFromCatalogue(const QString& name);
  void duplicate(std::size_t rig, Variant variant);
  void move(std::size_t rig, int by);
  void remove(std::size_t rig);
  void fillCatalogueMenu(QMenu& menu);
  std::size_t currentRig() const;  // the one with the focus, else the first

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Row {
    QWidget* label = nullptr;
    QWidget* problems = nullptr;  // below, as wide as all columns
    std::vector<QWidget*> cells;
  };
  struct Section {
    QString title;
    QToolButton* head = nullptr;
    std::vector<Row> rows;
  };
  void addHead(QGridLayout& grid, std::size_t rig, const FormState& state);
  void setOpen(Section& section, bool open);
  void keepLabelsInSight();
  void showWholeNames();
  void markOverloads(std::size_t rig, const std::string& name, const FormState& state);
  QMenu* menuFor(std::size_t rig);
  QString focusedField() const;
  QString calledInSteps(std::size_t rig) const;
  QString letterOf(std::size_t rig) const;  // "(c)"
  // As one step: every rig then has the letter it had, whatever its place.
  void changeRigs(const QString& step, std::string document,
                  const std::vector<std::size_t>& letters);
  void focusSameFieldOf(std::size_t rig, const QString& field);

  PlanDocument& document_;
  std::vector<RigOverload> overloads_;
  std::vector<QLabel*> marks_;  // a rig's, at the head of its column
  std::vector<FieldCell*> cells_;
  std::vector<FieldCell*> names_;
  std::vector<QLabel*> wholeNames_;
  std::vector<Section> sections_;
  std::vector<std::size_t> letters_;
  std::size_t count_ = 0;
};

}  // namespace gui
