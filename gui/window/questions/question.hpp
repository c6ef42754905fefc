// SPDX-License-Identifier: GPL-3.0-or-later
// The questions a person may ask, and each one's answer: sentence, picture, table, cautions.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

#include "gui/telling/question.hpp"
#include "gui/window/questions/qt_picture.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

using rigs::both;
using rigs::kEverySearch;
using rigs::RigSweeps;
using rigs::Searches;
using rigs::Solution;
using rigs::SolutionPtr;

using telling::Question;
using telling::QuestionView;

struct QtAnswer {
  QString title;
  QString sentence;             // numbers first
  QVector<QtPicture> pictures;  // one or two
  PictureTable table;           // the same numbers
  QStringList notes;            // what a table has no room for: rules, arithmetic, clauses, sources
  QStringList cautions;         // never empty where mains, heat, steam or warm wort are concerned
  // What this plan in particular should heed; with the notes on the screen, where `cautions` are
  // always in sight.
  QStringList furtherCautions;

  QStringList allCautions() const { return furtherCautions + cautions; }
};

// Pure: the same solution, units and view give the same answer. Numbers come from the solution.
QtAnswer qtAnswerTo(Question question, const Solution& solution, rigs::UnitSystem units,
                    const QuestionView& view = {});

}  // namespace gui
