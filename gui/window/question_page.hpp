// SPDX-License-Identifier: GPL-3.0-or-later
// One question's page: its sentence, its picture or pictures, its table, its cautions.
#pragma once

#include <QWidget>
#include <memory>

#include "gui/window/picture.hpp"
#include "gui/window/question.hpp"
#include "gui/window/solution.hpp"

namespace gui {

class QuestionPage : public QWidget {
  Q_OBJECT

 public:
  explicit QuestionPage(QWidget* parent = nullptr);
  ~QuestionPage() override;

  using QWidget::show;
  // The last solution stays visible until the next; null empties the page.
  void show(const SolutionPtr& solution, rigs::UnitSystem units);
  SolutionPtr solution() const;
  rigs::UnitSystem units() const;

  void setQuestion(Question question);
  Question question() const;
  // Which rig, which axis; the page's own switches change it as well.
  void setView(const QuestionView& view);
  QuestionView view() const;

  // What is seen; for exports.
  Answer currentAnswer() const;
  // Re-reads all text after a change of language.
  void retranslate();

 Q_SIGNALS:
  void questionChanged(gui::Question question);
  void viewChanged();
  // The wanted time was dragged to this many minutes of heating from mash to boil.
  void goalDragged(double minutes);
  // The plan's batches a year were changed here.
  void yearChanged(int batches);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace gui
