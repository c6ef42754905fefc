// SPDX-License-Identifier: GPL-3.0-or-later
// The questions a person may ask, and each one's answer: sentence, picture, table, cautions.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

#include "gui/window/picture.hpp"
#include "gui/window/solution.hpp"
#include "rigs/quantity_text.hpp"

namespace gui {

enum class Question {
  HowLong,        // How long does it take?
  WhereHeat,      // Where does the heat go?
  BoilsEnough,    // Does it boil hard enough?
  WorthJacket,    // Is insulation worth it?
  WhichElement,   // What element do I need?
  WhatCost,       // What does it cost?
  HowFarCools     // How far does it cool?
};
const QVector<Question>& allQuestions();
QString titleOf(Question question);        // translated
QString identifierOf(Question question);   // "how-long", for files and options; never translated

struct QuestionView {
  int rig = 0;       // whose power by path is drawn (WhereHeat), whose jacket (WorthJacket)
  bool overThickness = true;  // WorthJacket: against thickness, else against element power
  bool asBars = false;        // WhereHeat: energy of all rigs as stacked bars, else power over time
  int batchesPerYear = 12;    // WhatCost
};

struct Answer {
  QString title;
  QString sentence;      // numbers first
  QVector<Picture> pictures;  // one or two
  PictureTable table;    // the same numbers
  QStringList cautions;  // never empty where mains, heat, steam or warm wort are concerned
};

// Pure: the same solution, units and view give the same answer. Numbers come from the solution.
Answer answerTo(Question question, const Solution& solution, rigs::UnitSystem units,
                const QuestionView& view = {});

}  // namespace gui
