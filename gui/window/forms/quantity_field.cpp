// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/quantity_field.hpp"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <cctype>
#include <memory>

#include "gui/telling/case.hpp"
#include "gui/window/forms/choice_access.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {

namespace {

template <rigs::Writable Q>
std::optional<std::string> convertedLike(std::string_view text, const char* sample) {
  const auto quantity = rigs::parseQuantity<Q>(text);
  if (!quantity) return std::nullopt;
  return rigs::formatLike(*quantity, sample, {.significantDigits = 4, .decimals = {}});
}

}  // namespace

std::optional<std::string> convertedRoom(std::string_view text, rigs::UnitSystem system) {
  return convertedLike<physics::Volume>(
      text, system.isMetric(rigs::QuantityKind::Volume) ? "1 m³" : "1 ft³");
}

std::optional<std::string> convertedAirflow(std::string_view text, rigs::UnitSystem system) {
  return convertedLike<physics::VolumeFlow>(
      text, system.isMetric(rigs::QuantityKind::Volume) ? "1 m³/h" : "1 ft³/min");
}

std::optional<std::string> convertedPumped(std::string_view text, rigs::UnitSystem system) {
  return convertedLike<physics::VolumeFlow>(
      text, system.isMetric(rigs::QuantityKind::Volume) ? "1 L/min" : "1 gal/min");
}

bool isCustomary(std::string_view text) {
  static constexpr std::array<std::string_view, 33> kWords{
      "gal",    "gallon", "gallons", "qt",   "quart", "quarts", "pt",     "pint",       "pints",
      "cup",    "cups",   "oz",      "lb",   "lbs",   "pound",  "pounds", "in",         "inch",
      "inches", "ft",     "foot",    "feet", "yd",    "F",      "degF",   "fahrenheit", "psi",
      "inHg",   "mph",    "Btu",     "R",    "AWG",   "floz"};
  std::string word;
  const auto isKnown = [&word] {
    return std::find(kWords.begin(), kWords.end(), word) != kWords.end();
  };
  for (const char c : text) {
    if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
      word += c;
      continue;
    }
    if (isKnown()) return true;
    word.clear();
  }
  return isKnown();
}

namespace {

enum class Kin { Metric, Customary, Imperial };
Kin kinOf(std::string_view text) {
  if (text.find("imp") != std::string_view::npos) return Kin::Imperial;
  return isCustomary(text) ? Kin::Customary : Kin::Metric;
}

}  // namespace

QString shownText(std::string_view written, rigs::UnitSystem system, Conversion conversion) {
  const QString asWritten =
      QString::fromUtf8(written.data(), static_cast<qsizetype>(written.size()));
  if (!conversion) return asWritten;
  const auto other = conversion(written, system);
  if (!other || kinOf(written) == kinOf(*other)) return asWritten;
  QString text = QString::fromStdString(*other);
  const QString point = QLocale().decimalPoint();
  if (point != QLatin1String(".")) text.replace(QLatin1Char('.'), point);
  return text;
}

PlanLineEdit::PlanLineEdit(QWidget* parent) : QLineEdit(parent) {
  setAcceptDrops(false);  // a plan file dropped here is for the window
  pause_.setSingleShot(true);
  pause_.setInterval(kPause);
  connect(&pause_, &QTimer::timeout, this, &PlanLineEdit::commit);
  connect(this, &QLineEdit::textEdited, this, [this] {
    typed_ = true;
    inHand_ = true;
    pause_.start();
  });
  connect(this, &QLineEdit::editingFinished, this, [this] {
    commit();
    finish();
  });
}

void PlanLineEdit::display(const QString& newText) {
  const bool asBefore = newText == settled_;
  settled_ = newText;
  if (typed_) return;  // it will be committed, and then win
  // The plan's word for what was typed ("152 °F" for "152") waits; that of a step back does not.
  if (inHand_ && (committing_ || asBefore)) return;
  inHand_ = false;
  if (text() == newText) return;
  const bool atStart = !hasFocus();
  setText(newText);
  if (atStart) setCursorPosition(0);
}

void PlanLineEdit::commit() {
  pause_.stop();
  if (!typed_) return;
  typed_ = false;
  committing_ = true;
  Q_EMIT committed(text());
  committing_ = false;
}

// All of it selected, so that nothing typed next lands in the middle of a unit.
void PlanLineEdit::finish() {
  inHand_ = false;
  if (text() == settled_) return;
  setText(settled_);
  if (hasFocus())
    selectAll();
  else
    setCursorPosition(0);
}

void PlanLineEdit::takeOver(const Hand& hand) {
  setText(hand.text);
  setCursorPosition(hand.cursor);
  inHand_ = true;
}

void PlanLineEdit::showStep(const QString& stepped) {
  pause_.stop();
  typed_ = false;
  inHand_ = false;
  setText(stepped);
}

void PlanLineEdit::keyPressEvent(QKeyEvent* event) {
  const bool shift = event->modifiers() == Qt::ShiftModifier;
  const bool plain = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
  const int key = event->key();
  if ((key == Qt::Key_Down || key == Qt::Key_Up) && event->modifiers() == Qt::AltModifier)
    return Q_EMIT slideWanted();
  if (hasSteps_ && (shift || plain)) {
    if (key == Qt::Key_Up || key == Qt::Key_Down)
      return Q_EMIT stepWanted((key == Qt::Key_Up ? 1 : -1) * (shift ? kManySteps : 1));
    if (key == Qt::Key_PageUp || key == Qt::Key_PageDown)
      return Q_EMIT stepWanted(key == Qt::Key_PageUp ? kManySteps : -kManySteps);
  }
  QLineEdit::keyPressEvent(event);
}

void PlanLineEdit::contextMenuEvent(QContextMenuEvent* event) {
  const std::unique_ptr<QMenu> menu(createStandardContextMenu());
  menu->addSeparator();
  Q_EMIT menuOpens(menu.get());
  menu->exec(event->globalPos());
}

// Without Ctrl the wheel scrolls: the pointer often rests on a field by accident.
void PlanLineEdit::wheelEvent(QWheelEvent* event) {
  if (!hasSteps_ || !hasFocus() || event->modifiers() != Qt::ControlModifier)
    return event->ignore();
  constexpr int kNotch = 120;
  turned_ += event->angleDelta().y();
  const int steps = turned_ / kNotch;
  turned_ -= steps * kNotch;
  if (steps != 0) Q_EMIT stepWanted(steps);
  event->accept();
}

bool PlanLineEdit::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
      event->ignore();
      return false;
    }
  }
  return QLineEdit::event(event);
}

void PlanLineEdit::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  commit();
  if (event->reason() == Qt::PopupFocusReason) return;  // its own menu: the caret stays
  if (offer_) offer_->setVisible(false);
  if (inHand_) finish();
  Q_EMIT left();
}

void PlanLineEdit::focusInEvent(QFocusEvent* event) {
  QLineEdit::focusInEvent(event);
  if (offer_) offer_->setVisible(true);
}

void PlanLineEdit::offerInFocus(QAction* offer) {
  offer_ = offer;
  addAction(offer, QLineEdit::TrailingPosition);
  offer->setVisible(false);
}

PlanComboBox::PlanComboBox(QWidget* parent) : QComboBox(parent) {
  nameChoicesByTheirLabels();
  setFocusPolicy(Qt::StrongFocus);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(4);
}

void PlanComboBox::focusOutEvent(QFocusEvent* event) {
  QComboBox::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason) Q_EMIT left();
}

// The usual one cuts a long choice in the middle of a letter, without a word.
void PlanComboBox::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionComboBox option;
  initStyleOption(&option);
  painter.drawComplexControl(QStyle::CC_ComboBox, option);
  option.currentText = shownChoice();
  // Not stated here, as the other fields' placeholders.
  if (isUnstated())
    option.palette.setColor(QPalette::ButtonText, palette().color(QPalette::PlaceholderText));
  painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

QString PlanComboBox::shownChoice() const {
  QStyleOptionComboBox option;
  initStyleOption(&option);
  const QRect room =
      style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
  const int width = room.width() - 3;
  // What stands in brackets behind a choice says where it is from: the first that can go. Circuits
  // differ in the amperes at their end.
  QString text = option.currentText;
  const qsizetype bracket = text.lastIndexOf(QLatin1String(" ("));
  if (isUnstated() && bracket > 0 && fontMetrics().horizontalAdvance(text) > width) {
    text.truncate(bracket);
  }
  if (fontMetrics().horizontalAdvance(text) <= width) return text;
  for (qsizetype i = 1; i < text.size(); ++i) {
    const QString end = QChar(0x2026) + text.mid(i);
    const bool amount = text[i - 1] == QLatin1Char(' ') && text[i].isDigit();
    // Volts and amperes are the whole circuit: "120 V 15 A".
    const QString alone = text.mid(i);
    if (amount && alone.contains(QLatin1String(" V ")) &&
        fontMetrics().horizontalAdvance(alone) <= width)
      return alone;
    if (amount && fontMetrics().horizontalAdvance(end) <= width) return end;
  }
  return fontMetrics().elidedText(text, Qt::ElideRight, width);
}

bool PlanComboBox::isUnstated() const {
  const QVariant choice = currentData();
  return choice.typeId() == QMetaType::QString && choice.toString().isEmpty();
}

void PlanComboBox::wheelEvent(QWheelEvent* event) { event->ignore(); }

PlanSpinBox::PlanSpinBox(QWidget* parent) : QSpinBox(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setKeyboardTracking(false);
}

void PlanSpinBox::wheelEvent(QWheelEvent* event) {
  if (hasFocus())
    QSpinBox::wheelEvent(event);
  else
    event->ignore();
}

ProblemLabel::ProblemLabel(QWidget* parent) : QLabel(parent) {
  setWordWrap(true);
  setTextFormat(Qt::PlainText);
  setTextInteractionFlags(Qt::TextSelectableByMouse);
  QFont smaller = font();
  smaller.setPointSizeF(smaller.pointSizeF() * 0.9);
  setFont(smaller);
  hide();
}

void ProblemLabel::display(const QString& problem, bool isRemark, const QString& whose) {
  QString sentence = problem;
  if (!sentence.isEmpty() && !sentence.endsWith(QLatin1Char('.'))) sentence += QLatin1Char('.');
  setText(sentence.isEmpty() ? QString()
          : isRemark         ? tr("Remark: %1").arg(sentence)
                             : tr("Problem: %1").arg(sentence));
  if (!sentence.isEmpty() && !whose.isEmpty()) setText(whose + QLatin1Char(' ') + text());
  QFont weight = font();
  weight.setBold(!isRemark);
  setFont(weight);
  setVisible(!sentence.isEmpty());
}

OverloadMark::OverloadMark(const QString& name, QWidget* parent) : QLabel(parent) {
  setObjectName(name);
  setTextFormat(Qt::PlainText);
  QFont heavy = font();
  heavy.setBold(true);
  setFont(heavy);
  setText(told(telling::overloadMark()));
  hide();
}

}  // namespace gui
