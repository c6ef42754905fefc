// SPDX-License-Identifier: GPL-3.0-or-later
// Hands that play what was recorded: on an X server keys and buttons go through it, as from a
// keyboard and a mouse, where xdotool is there to press them; else Qt is handed the same events.
// Counted are clicks and typed values, as a person would.
#pragma once

#include <QPoint>
#include <QString>
#include <QStringList>
#include <QWidget>

namespace test_support {

class Hands {
 public:
  Hands();

  bool areReal() const { return !xdotool_.isEmpty(); }
  void turnTo(QWidget& window);  // its keys come next
  // Into what has the focus: what stands there is replaced, as every field is selected by Tab.
  void type(const QString& keys);
  void tab();
  void click(QWidget& on, QPoint at);
  void click(QWidget& on) { click(on, on.rect().center()); }
  int clicks() const { return clicks_; }
  int values() const { return values_; }

 private:
  void press(const QStringList& arguments);

  QString xdotool_;
  int clicks_ = 0;
  int values_ = 0;
};

}  // namespace test_support
