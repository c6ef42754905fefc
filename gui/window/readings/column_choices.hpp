// SPDX-License-Identifier: GPL-3.0-or-later
// What stands where in a logger's lines: shown as it was found, and corrected by whoever knows
// better. Not there for lines typed by hand.
#pragma once

#include <QWidget>
#include <array>
#include <cstddef>

#include "rigs/readings/layout.hpp"

class QComboBox;
class QLabel;

namespace gui {

class ColumnChoices : public QWidget {
  Q_OBJECT

 public:
  explicit ColumnChoices(QWidget* parent = nullptr);

  // What was read, with the corrections that were chosen here.
  void take(const rigs::readings::Layout& layout);
  void forget();  // other lines: all is as it is found again
  // Only what somebody chose.
  rigs::readings::Corrections corrections() const;
  void retranslate();

 Q_SIGNALS:
  void chosen();

 private:
  enum Which : std::size_t { Time, Counted, Temperature, Unit };
  static constexpr std::size_t kCount = 4;

  QString foundText(Which which) const;
  void list(Which which);

  rigs::readings::Layout layout_;
  std::array<QString, kCount> found_;  // as it was before anybody chose otherwise
  std::array<QLabel*, kCount> labels_{};
  std::array<QComboBox*, kCount> boxes_{};
};

}  // namespace gui
