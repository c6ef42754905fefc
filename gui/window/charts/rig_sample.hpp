// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of a rig's line as in the pictures, to stand beside its name.
#pragma once

#include <QWidget>

namespace gui {

class RigSample : public QWidget {
  Q_OBJECT

 public:
  // `slot` is that of the rig's letter, 0 for a.
  explicit RigSample(int slot, QWidget* parent = nullptr);
  void setSlot(int slot);
  QSize sizeHint() const override { return {48, 12}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  int slot_;
};

}  // namespace gui
