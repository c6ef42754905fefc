// SPDX-License-Identifier: GPL-3.0-or-later
// A slider that opens at a field, for a value that one plays with: the answer moves along.
#pragma once

#include <QFrame>
#include <QIcon>
#include <QString>

#include "rigs/plans/key_steps.hpp"

class QSlider;

namespace gui {

class ValueSlider : public QFrame {
  Q_OBJECT

 public:
  // Opens right below the field and deletes itself when it closes.
  ValueSlider(rigs::Slide slide, const QString& name, QWidget& field);

 Q_SIGNALS:
  void moved(const QString& value);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void tellValue();

  rigs::Slide slide_;
  QString name_;
  QSlider* slider_ = nullptr;
};

// A knob on its way, in the colour that text has when it is painted.
QIcon sliderIcon();

}  // namespace gui
