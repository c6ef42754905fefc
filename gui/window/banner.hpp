// SPDX-License-Identifier: GPL-3.0-or-later
// A line above everything else that asks without stopping the work.
#pragma once

#include <QFrame>
#include <QString>
#include <functional>
#include <utility>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace gui {

class Banner : public QFrame {
  Q_OBJECT

 public:
  using Choice = std::pair<QString, std::function<void()>>;

  explicit Banner(QWidget* parent = nullptr);
  // Each choice takes the banner away, then acts. Replaces a question not yet answered.
  void ask(const QString& text, std::vector<Choice> choices);
  QString text() const;

 private:
  QHBoxLayout* row_;
  QLabel* text_;
  std::vector<QWidget*> buttons_;
};

}  // namespace gui
