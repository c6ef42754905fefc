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
  enum class Subject { PlanFile, Leftover };

  explicit Banner(QWidget* parent = nullptr);
  // One question after another: a new one waits until the last is answered, and takes the place
  // of one about the same subject. Each choice takes its question away, then acts.
  void ask(Subject subject, const QString& text, std::vector<Choice> choices);
  // What was asked about this has been settled elsewhere.
  void drop(Subject subject);
  QString text() const;  // of the question that is seen

 private:
  struct Asked {
    Subject subject;
    QString text;
    std::vector<Choice> choices;
  };
  void showFirst();

  QHBoxLayout* row_;
  QLabel* text_;
  std::vector<QWidget*> buttons_;
  std::vector<Asked> asked_;  // the first is seen
};

}  // namespace gui
