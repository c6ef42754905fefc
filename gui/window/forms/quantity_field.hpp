// SPDX-License-Identifier: GPL-3.0-or-later
// One value of the plan on the screen: what stands there, what is wrong with it, what it means.
#pragma once

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QSpinBox>
#include <QTimer>
#include <QWidget>
#include <optional>
#include <string>
#include <string_view>

#include "rigs/quantities/quantity_text.hpp"

namespace gui {

// Text in the other unit system, to four digits, below 1 to three; nothing where it does not parse.
// A function for each quantity, so that a table of fields can name one.
using Conversion = std::optional<std::string> (*)(std::string_view text, rigs::UnitSystem system);
template <rigs::Writable Q>
std::optional<std::string> converted(std::string_view text, rigs::UnitSystem system) {
  const auto quantity = rigs::parseQuantity<Q>(text);
  if (!quantity) return std::nullopt;
  std::string shown = rigs::format(*quantity, system, {.significantDigits = 4, .decimals = {}});
  return shown.starts_with("0.") || shown.starts_with("-0.") ? rigs::format(*quantity, system)
                                                             : shown;
}
// As rooms and fans are sold: m³ and m³/h, ft³ and ft³/min. Nobody fills a room with gallons.
std::optional<std::string> convertedRoom(std::string_view text, rigs::UnitSystem system);
std::optional<std::string> convertedAirflow(std::string_view text, rigs::UnitSystem system);
// Through a pump: gal/min in US units.
std::optional<std::string> convertedPumped(std::string_view text, rigs::UnitSystem system);

// Whether the text is written in US customary units, as far as it has units that tell.
bool isCustomary(std::string_view text);
// As written if it belongs to the system, else converted; never back into the document.
QString shownText(std::string_view written, rigs::UnitSystem system, Conversion conversion);

// Undo belongs to the plan, not to a field; commits by itself when typing pauses. What is typed
// stays as typed until the person is done with it (Enter, or another field): only then stands
// there what the plan makes of it, such as a unit, and never under the caret.
class PlanLineEdit : public QLineEdit {
  Q_OBJECT

 public:
  explicit PlanLineEdit(QWidget* parent = nullptr);

  // What stands here while it is in hand: of a field that is made anew under the hands.
  struct Hand {
    QString text;
    int cursor = 0;
  };

  // What the plan says.
  void display(const QString& text);
  void commit();                                // now, if something was typed
  bool isBeingTyped() const { return typed_; }  // and not yet committed
  bool isInHand() const { return inHand_; }     // typed in, and not yet left or ended by Enter
  Hand hand() const { return {text(), cursorPosition()}; }
  void takeOver(const Hand& hand);
  // With steps, the arrow keys, Page keys and Ctrl with the wheel ask for them; without, they
  // scroll what the field stands on.
  void setHasSteps(bool has) { hasSteps_ = has; }
  void showStep(const QString& text);  // in place of what is typed
  // Seen at its end while it has the focus.
  void offerInFocus(QAction* offer);
  static constexpr int kManySteps = 10;
  static constexpr int kPause = 250;  // ms after the last key

 Q_SIGNALS:
  void committed(const QString& text);
  void left();  // the next key begins a new step
  void stepWanted(int steps);
  void slideWanted();
  void menuOpens(QMenu* menu);  // its own context menu, which takes more entries

 protected:
  bool event(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  void finish();

  QTimer pause_;
  bool typed_ = false;
  bool inHand_ = false;
  bool committing_ = false;
  bool hasSteps_ = false;
  int turned_ = 0;  // of the wheel, in eighths of a degree, short of a notch
  QAction* offer_ = nullptr;
  QString settled_;  // what the plan says
};

// A choice that the wheel turns in its open list only. Closed it scrolls what it stands on: the
// pointer still rests here when somebody has chosen and scrolls on.
class PlanComboBox : public QComboBox {
  Q_OBJECT

 public:
  explicit PlanComboBox(QWidget* parent = nullptr);
  QString shownChoice() const;  // as far as there is room, "…" in place of what is cut

 Q_SIGNALS:
  void left();

 protected:
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  bool isUnstated() const;  // the choice that leaves it to something else
};

// A number that the wheel only turns with focus, which the wheel does not give it; taken when the
// person is done with it.
class PlanSpinBox : public QSpinBox {
  Q_OBJECT

 public:
  explicit PlanSpinBox(QWidget* parent = nullptr);

 protected:
  void wheelEvent(QWheelEvent* event) override;
};

// What is wrong, or worth a remark, below the field that it is about. Empty: no space taken.
class ProblemLabel : public QLabel {
  Q_OBJECT

 public:
  explicit ProblemLabel(QWidget* parent = nullptr);
  void display(const QString& problem, bool isRemark, const QString& whose = {});
};

// "▲ overload", a word, a shape and a weight: at a rig and at what overloads its circuit. Hidden
// until it is true; the tool tip has the sentence.
class OverloadMark : public QLabel {
  Q_OBJECT

 public:
  explicit OverloadMark(const QString& name, QWidget* parent = nullptr);
};

}  // namespace gui
