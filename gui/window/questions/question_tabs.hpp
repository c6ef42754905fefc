// SPDX-License-Identifier: GPL-3.0-or-later
// The questions as tabs, in one row, each with what its answer rests on.
#pragma once

#include <QString>
#include <QTabBar>

namespace gui {

class QuestionTabs : public QTabBar {
  Q_OBJECT

 public:
  using QTabBar::QTabBar;

  // A word or two below every question, in heavier letters; "" takes them away. Every answer tells
  // of every rig, so that what is wrong with one stands at all of them.
  void setMark(const QString& mark);
  QString mark() const { return mark_; }

 protected:
  QSize tabSizeHint(int index) const override;
  void initStyleOption(QStyleOptionTab* option, int index) const override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QFont fontOfMark() const;

  QString mark_;
};

}  // namespace gui
