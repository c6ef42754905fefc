// SPDX-License-Identifier: GPL-3.0-or-later
// What a person may choose about a question: which rig, against what, how many batches a year.
#pragma once

#include <QWidget>
#include <memory>

#include "gui/telling/question.hpp"
#include "rigs/answers/solution.hpp"

namespace gui {

class QuestionOptions : public QWidget {
  Q_OBJECT

 public:
  explicit QuestionOptions(QWidget* parent = nullptr);
  ~QuestionOptions() override;

  // Those of this question as they are chosen; hidden where it has none. Null: no rigs yet.
  void show(telling::Question question, const telling::QuestionView& view,
            const rigs::SolutionPtr& solution);
  using QWidget::show;
  // Everything that is said in a language.
  void relabel(telling::Question question);

 Q_SIGNALS:
  void viewChosen(const gui::telling::QuestionView& view);
  void yearChosen(int batches);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace gui
