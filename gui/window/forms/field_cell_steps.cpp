// SPDX-License-Identifier: GPL-3.0-or-later
// A field's value by steps and by slider.
#include <QAction>

#include "gui/window/forms/bare_number.hpp"
#include "gui/window/forms/field_cell.hpp"
#include "gui/window/forms/value_slider.hpp"
#include "rigs/plans/key_steps.hpp"

namespace gui {

// A layer's field says a thickness or an R-value.
const rigs::Key* FieldCell::keyOfText(const std::string& text) const {
  const bool isR = field_.kind == FieldKind::LayerAmount &&
                   rigs::isQuantity(rigs::QuantityKind::ThermalInsulance, text);
  if (!isR) return key_;
  return rigs::keyAt(pointer_.substr(0, pointer_.rfind('/')) + "/R");
}

// What is not stated is stepped from what holds instead.
QString FieldCell::textToStep() const {
  return line_->text().isEmpty() ? line_->placeholderText() : withUnitOf(unit_, line_->text());
}

bool FieldCell::saysAsMuchAs(const FieldCell& other) const {
  const auto holds = [](const FieldCell& cell) {
    return cell.stated_.isEmpty() ? cell.field_.usual : cell.stated_;
  };
  const QString here = holds(*this);
  const QString there = holds(other);
  if (here == there || !key_) return here == there;
  const rigs::Key* key = keyOfText(here.toStdString());
  const auto one = rigs::detail::read(key->quantity, here.toStdString()).si;
  return one && one == rigs::detail::read(key->quantity, there.toStdString()).si;
}

void FieldCell::step(int steps) {
  if (!line_ || !key_) return;
  const std::string from = textToStep().toStdString();
  const auto to = rigs::stepped(*keyOfText(from), from, steps);
  if (!to) return;
  line_->commit();  // a step of its own
  const QString text = QString::fromStdString(*to);
  line_->showStep(text);
  apply(text, QStringLiteral(" by steps"));
}

void FieldCell::slide() {
  if (!line_ || !key_ || line_->isReadOnly()) return;
  const std::string from = textToStep().toStdString();
  auto slide = rigs::slideOf(*key_, from);
  if (!slide) return;
  line_->commit();
  auto* slider = new ValueSlider(*std::move(slide), line_->accessibleName(), *line_);
  static int opened = 0;
  const QString hand = QStringLiteral(" by slider %1").arg(++opened);
  connect(slider, &ValueSlider::moved, this, [this, hand](const QString& value) {
    line_->showStep(value);
    apply(value, hand);
  });
  slider->show();
  slider->setFocus(Qt::PopupFocusReason);
}

// Only while the field has the focus: elsewhere it would take room from the value.
void FieldCell::offerSlider() {
  if (!line_ || !key_ || !rigs::slideOf(*key_, key_->example)) return;
  auto* offer = new QAction(sliderIcon(), tr("Slider (Alt+Down)"), line_);
  connect(offer, &QAction::triggered, this, &FieldCell::slide);
  line_->offerInFocus(offer);
}

}  // namespace gui
