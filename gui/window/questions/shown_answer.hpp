// SPDX-License-Identifier: GPL-3.0-or-later
// An answer as text, in one reader's units and language: what the screen, a sheet and a page show.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>
#include <string>
#include <vector>

#include "gui/telling/answer.hpp"
#include "rigs/answers/solution.hpp"

namespace gui {

struct ShownTable {
  struct Row {
    QStringList cells;  // the label first; of a heading nothing else
    bool isHeading = false;
    bool isSum = false;
    std::optional<telling::Question> opens = {};  // which tells more of it
    std::string result = {};                      // the figure's place in the result

    bool operator==(const Row&) const = default;
  };
  QStringList head;   // above the labels, then of each column
  QStringList marks;  // of each head what must not be overlooked, or ""; empty where none has any
  QVector<Row> rows;
  // Of each column the slot of its rig's look, from that of the labels on; -1: none.
  QVector<int> looks = {};

  // As people read it, over several lines.
  QString headWithMark(qsizetype column) const;
  bool operator==(const ShownTable&) const = default;
};

struct ShownNote {
  QString text;
  bool isHeading = false;
  bool ofTheOneBefore = false;  // may stand behind it where room is short

  bool operator==(const ShownNote&) const = default;
};

struct ShownAnswer {
  QString title;
  QStringList sentences;  // the answer in short
  std::vector<telling::Picture> pictures;
  QVector<ShownTable> tables;  // of the rigs, then those with other columns
  QVector<ShownNote> notes;    // sentences about single rigs, then what a table has no room for
  QStringList cautions;        // always in sight
  QStringList furtherCautions;

  QStringList warnings;  // the first of the sentences, for heavier letters

  QString headline() const;           // all its sentences
  QStringList calmSentences() const;  // those after the warnings
  // What this plan in particular should heed first.
  QStringList allCautions() const { return furtherCautions + cautions; }
};

// `rigNames` in the order of the plan.
ShownAnswer shown(const telling::Answer& answer, const std::vector<std::string>& rigNames,
                  const rigs::Reader& reader);
std::vector<std::string> rigNamesOf(const rigs::Solution& solution);

// What stands with the heads of a table of rigs: first above the labels; empty where no rig has
// any.
QStringList marksOf(const telling::Answer& answer, const rigs::Reader& reader);

// Notes line by line.
QStringList asLines(const QVector<ShownNote>& notes);

}  // namespace gui
