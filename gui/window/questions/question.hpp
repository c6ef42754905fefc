// SPDX-License-Identifier: GPL-3.0-or-later
// The questions a person may ask, and each one's answer: sentence, picture, table, cautions.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

#include "gui/window/charts/picture.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

using rigs::both;
using rigs::kEverySearch;
using rigs::RigSweeps;
using rigs::Searches;
using rigs::Solution;
using rigs::SolutionPtr;

enum class Question {
  HowLong,       // How long does it take?
  WhereHeat,     // Where does the heat go?
  BoilsEnough,   // Does it boil hard enough?
  WorthJacket,   // Is insulation worth it?
  WhichElement,  // What element do I need?
  Circuit,       // Can the circuit carry it?
  WhatCost,      // What does it cost?
  HowFarCools,   // How far does it cool?
  Room           // What happens to the room?
};
const QVector<Question>& allQuestions();
QString titleOf(Question question);       // translated
QString shortTitleOf(Question question);  // translated; a word or two, where room is short
QString identifierOf(Question question);  // "how-long", for files and options; never translated

struct QuestionView {
  int rig = 0;  // whose power by path is drawn (WhereHeat), whose jacket (WorthJacket)
  bool overThickness = true;  // WorthJacket: against thickness, else against element power
  bool savings = false;       // WorthJacket: what a jacket saves, else the day with and without
  // WhichElement: against the power written on the element, else rated at its supply's voltage.
  bool asWritten = true;
  bool asBars = false;  // WhereHeat: energy of all rigs as stacked bars, else power over time
};

struct Answer {
  QString title;
  QString sentence;           // numbers first
  QVector<Picture> pictures;  // one or two
  PictureTable table;         // the same numbers
  QStringList notes;          // what a table has no room for: rules, arithmetic, clauses, sources
  QStringList cautions;       // never empty where mains, heat, steam or warm wort are concerned
  // What this plan in particular should heed; with the notes on the screen, where `cautions` are
  // always in sight.
  QStringList furtherCautions;

  QStringList allCautions() const { return furtherCautions + cautions; }
};

// Pure: the same solution, units and view give the same answer. Numbers come from the solution.
Answer answerTo(Question question, const Solution& solution, rigs::UnitSystem units,
                const QuestionView& view = {});

}  // namespace gui
