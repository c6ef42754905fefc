// SPDX-License-Identifier: GPL-3.0-or-later
// One question's page: its sentence, its picture or pictures, its table, its cautions.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "gui/telling/answer.hpp"
#include "gui/telling/question.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "rigs/answers/solution.hpp"

class QMenu;

namespace gui {

class QuestionPage : public QWidget {
  Q_OBJECT

 public:
  explicit QuestionPage(QWidget* parent = nullptr);
  ~QuestionPage() override;

  using QWidget::show;
  // The last solution with everything the question needs stays visible until the next such one;
  // null empties the page.
  void show(const rigs::SolutionPtr& solution, rigs::UnitSystem units);
  rigs::SolutionPtr solution() const;        // that is seen
  rigs::SolutionPtr newestSolution() const;  // perhaps still without what the question needs
  rigs::SolutionPtr wholeSolution() const;   // the newest with everything; null before the first
  bool isWritten() const;                    // all of it, text below the pictures included
  rigs::Searches needed() const;             // by the question as it is looked at
  // The wanted time as the plan has it now: its line is an input and waits for no solution.
  void setWantedMinutes(std::optional<double> minutes);
  rigs::UnitSystem units() const;

  void setQuestion(telling::Question question);
  telling::Question question() const;
  // Which rig, which axis; the page's own switches change it as well.
  void setView(const telling::QuestionView& view);
  telling::QuestionView view() const;

  ShownAnswer currentAnswer() const;
  // The same with each picture as far as it is zoomed in; for exports.
  telling::Answer seenAnswer() const;
  rigs::Reader reader() const;  // of both
  // What its pictures offer.
  void fillPictureMenu(QMenu& menu);
  // Re-reads all text after a change of language.
  void retranslate();

 Q_SIGNALS:
  void questionChanged(gui::telling::Question question);
  void viewChanged();
  // The wanted time was dragged to this many minutes of heating from mash to boil.
  void goalDragged(double minutes);
  void picturePointedAt();
  // A part of a rig's sentence: the places of its fields.
  void partChosen(const QStringList& places);
  // A rig that is the same as the one compared with, but for something.
  void anotherWanted();
  // The plan's batches a year were changed here.
  void yearChanged(int batches);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;  // above and below what scrolls, too

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace gui
