// SPDX-License-Identifier: GPL-3.0-or-later
// The inside of a question's page, for the sources that share it: what is said and listed
// (question_page_parts.cpp), and what is drawn (question_page_parts_pictures.cpp).
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QStringList>
#include <QTimer>
#include <QToolButton>
#include <QVector>
#include <optional>
#include <vector>

#include "gui/telling/answer.hpp"
#include "gui/telling/question.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/questions/cautions_foot.hpp"
#include "gui/window/questions/question_options.hpp"
#include "gui/window/questions/question_page.hpp"
#include "gui/window/questions/rig_sentences.hpp"
#include "gui/window/questions/shown_answer.hpp"

namespace gui {

struct QuestionPage::Parts {
  explicit Parts(QuestionPage* of);

  QuestionPage* page;
  rigs::SolutionPtr solution;  // that is seen
  rigs::SolutionPtr newest, whole;
  std::optional<double> wanted;  // minutes
  rigs::UnitSystem units = rigs::UnitSystem::SI;
  telling::Question question = telling::Question::Overview;
  telling::QuestionView view{.asBars = true,
                             .everyRule = true};  // the page has room for every rule
  telling::Answer answer;
  ShownAnswer shown;  // as it is read

  QHBoxLayout* head;  // of the page
  QLabel* title;
  QLabel* warning;   // never folds away
  QLabel* sentence;  // the first, in large letters
  QLabel* rest;      // of the answer
  QToolButton* more;
  QuestionOptions* options;
  QScrollArea* scroll;
  RigSentences* rigs;      // of the overview
  QBoxLayout* shownBelow;  // pictures and tables
  QBoxLayout* pictures;
  std::vector<PlanChart*> charts;
  QStringList arrangedFor;  // what stands around the plots
  QVBoxLayout* below;       // tables, one below the other
  QVector<AnswerTable*> tables;
  QLabel* notes;
  QString noted;        // what the notes are to say
  QTimer* writesNotes;  // out of sight, when the hand rests
  CautionsFoot* foot;
  bool isHeld = false;  // by a dragging hand

  void note(const QString& text);
  void writeNotes();
  void choose();
  void refresh();
  void relabel();
  void placeWanted(telling::Picture& picture) const;
  void putWanted();
  void say();
  void write();
  void placeOptions();
  double headlineSize(const QString& text) const;
  void freezeHeads();
  void holdStill(bool still);
  void nameTable(AnswerTable& table) const;
  void showPictures();
  void toggleDrawn(int rig);
  void showTables();
  PlanChart* newChart();
  void arrange();

 private:
  QLabel* label() const;
  QWidget* scrolled();
};

}  // namespace gui
