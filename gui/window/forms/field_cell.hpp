// SPDX-License-Identifier: GPL-3.0-or-later
// One field in a form: an editor and, when there is one, its problem below.
#pragma once

#include <QWidget>
#include <optional>
#include <string>
#include <vector>

#include "gui/window/files/plan_document.hpp"
#include "gui/window/forms/plan_field.hpp"
#include "gui/window/forms/quantity_field.hpp"

class QVBoxLayout;

namespace rigs {
struct Key;
}

namespace gui {

// What all cells look at after a change; made once a change.
struct FormState {
  std::vector<std::vector<std::string>> origins;  // a rig: the documents it is from
  std::vector<rigs::Texts> inherited;             // a rig: what it has from them
  std::vector<std::string> originNames;
};
FormState formStateOf(const PlanDocument& document);

// Of two elements the first stands in a list: where its fields are then, else the same place.
std::string placeOfElement(const rigs::Texts& texts, std::optional<std::size_t> rig,
                           const std::string& place);

class FieldCell : public QWidget {
  Q_OBJECT

 public:
  FieldCell(PlanDocument& document, PlanField field, std::optional<std::size_t> rig,
            QWidget* parent = nullptr);

  const std::string& pointer() const { return pointer_; }  // in the document
  const PlanField& field() const { return field_; }
  // As the plan says it here, else as the rig has it from others; "" where neither does.
  const QString& stated() const { return stated_; }
  bool saysAsMuchAs(const FieldCell& other) const;  // as a number where both are
  QWidget* editor() const;
  void refresh(const FormState& state);
  void display(const QString& problem, bool isRemark);
  // Where its problems stand instead of below it: a narrow column would break them in too many
  // lines. With whose field it is, since others' stand there too.
  void tellProblemsIn(QVBoxLayout* room, const QString& whose);
  // That what stands here asks too much of a circuit, or is too little; "" where it does not.
  void displayOverload(const QString& sentence);
  bool hasProblem() const { return problem_ && !problem_->text().isEmpty(); }
  void commit();
  // Draws the eye here for a moment: a step back or again has changed this.
  void pointOut();
  static constexpr int kPointedOut = 1600;  // ms
  // What a person is in the middle of here, for the cell that takes this one's place.
  struct Visit {
    PlanLineEdit::Hand hand;
    QString unit;
    int number;
  };
  std::optional<Visit> visit() const;
  void resume(const Visit& visit);
  // The document as it will be once what is being typed here is committed.
  std::string textAsTyped() const;
  // For screen readers: "Power, New element, kitchen".
  void nameFor(const QString& owner);
  // So many sensible steps up, or down. A run of them is one step back, until something is typed
  // or the field is left.
  void step(int steps);
  // Opens the slider of a value that one plays with; its whole way is one step back.
  void slide();
  // As it is seen; "" where it is not known.
  QString valueInWords() const;

 Q_SIGNALS:
  void menuOpens(QMenu* menu);

 private:
  void apply(const QString& typed, const QString& hand = {});
  const rigs::Key* keyOfText(const std::string& text) const;
  QString textToStep() const;
  void offerSlider();
  QString stepName() const;
  // Nothing: no change.
  std::optional<std::string> textWith(const QString& typed, rigs::Problems& problems) const;
  void refreshShown();
  void refreshVolume(const FormState& state);
  void refreshText(const QString& own, const QString& inherited, const FormState& state);
  void refreshChoice(const QString& own, const QString& inherited, const FormState& state);
  void noteUnit(const QString& shown, const QString& hint);
  void showTip(const QString& tip);
  void describe();
  QString inheritedFrom(const FormState& state) const;
  QString choiceText(const QString& choice) const;

  PlanDocument& document_;
  PlanField field_;
  const rigs::Key* key_ = nullptr;  // null where the table has none, as for a rig's name
  std::optional<std::size_t> rig_;
  std::string pointer_;
  PlanLineEdit* line_ = nullptr;
  PlanComboBox* combo_ = nullptr;
  ProblemLabel* problem_ = nullptr;
  OverloadMark* overload_ = nullptr;
  QVBoxLayout* layout_ = nullptr;
  QVBoxLayout* room_ = nullptr;
  QString whose_;
  QString tip_;    // without the problem
  int visit_ = 0;  // each stay in the field is a step of its own
  QString stated_;
  QString shown_;  // as the plan says it, before any conversion
  QString unit_;   // a value in the unit that a bare number typed here has; "" where none is seen
  QStringList offered_;
};

}  // namespace gui
