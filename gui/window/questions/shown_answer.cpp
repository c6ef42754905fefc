// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/shown_answer.hpp"

#include <algorithm>
#include <variant>

#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

using telling::Answer;
using telling::Heading;
using telling::Sentence;
using telling::Table;

QStringList allTold(const std::vector<rigs::Told>& texts, const rigs::Reader& reader) {
  QStringList all;
  for (const rigs::Told& text : texts)
    if (const QString one = told(text, reader); !one.isEmpty()) all += one;
  return all;
}

QStringList headOf(const Table& table, const std::vector<std::string>& rigNames,
                   const rigs::Reader& reader) {
  QStringList head{QString()};
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    QString column = told(table.columns[i], reader);
    if (table.ofRigs && i < rigNames.size())
      column += QLatin1Char(' ') + QString::fromStdString(rigNames[i]);
    head += column.trimmed();
  }
  return head;
}

void addRows(ShownTable& to, const Table& from, const rigs::Reader& reader) {
  for (const telling::ShownRow& row : telling::shownRows(from, reader)) {
    ShownTable::Row added{
        {QString::fromStdString(row.label)}, row.isHeading, row.isSum, row.opens, row.result};
    for (const std::string& cell : row.cells) added.cells += QString::fromStdString(cell);
    to.rows.push_back(added);
  }
}

// A rig alone is not told from others.
QVector<int> looksOf(const Answer& answer, qsizetype columns) {
  if (!answer.lettered) return {};
  QVector<int> looks{-1};
  for (qsizetype i = 1; i < columns; ++i) {
    const auto rig = static_cast<std::size_t>(i) - 1;
    looks += static_cast<int>(rig < answer.slots.size() ? answer.slots[rig] : rig);
  }
  return looks;
}

// Those of the rigs become one table, since their columns are the same.
QVector<ShownTable> tablesOf(const Answer& answer, const std::vector<std::string>& rigNames,
                             const rigs::Reader& reader) {
  ShownTable ofRigs;
  QVector<ShownTable> others;
  for (const Table* table : answer.tables()) {
    if (!table->ofRigs) others.push_back({headOf(*table, rigNames, reader), {}, {}});
    ShownTable& to = table->ofRigs ? ofRigs : others.back();
    if (to.head.isEmpty()) to.head = headOf(*table, rigNames, reader);
    if (table->ofRigs) to.marks = marksOf(answer, reader);
    if (table->ofRigs) to.looks = looksOf(answer, to.head.size());
    addRows(to, *table, reader);
  }
  if (!ofRigs.rows.isEmpty()) others.push_front(ofRigs);
  others.removeIf([](const ShownTable& table) { return table.rows.isEmpty(); });
  return others;
}

// A sentence about a rig stands behind its letter; one that goes on, behind the one before.
void addSentence(QVector<ShownNote>& notes, const Answer& of, const Sentence& sentence,
                 const rigs::Reader& reader) {
  const QString text = told(of.textOf(sentence), reader);
  if (text.isEmpty()) return;
  if (sentence.goesOn && !notes.isEmpty()) {
    notes.back().text += QLatin1Char(' ') + text;
  } else if (sentence.rig && of.lettered) {
    const QString letter = QString::fromStdString(of.letterOf(*sentence.rig));
    notes.push_back({letter + QLatin1Char(' ') + text, false, sentence.ofTheOneBefore});
  } else {
    notes.push_back({text, false, sentence.ofTheOneBefore});
  }
}

QVector<ShownNote> notesOf(const Answer& answer, const rigs::Reader& reader) {
  QVector<ShownNote> notes;
  for (const telling::Block& block : answer.blocks) {
    if (const auto* heading = std::get_if<Heading>(&block))
      notes.push_back({told(heading->text, reader), true});
    if (const auto* sentence = std::get_if<Sentence>(&block))
      addSentence(notes, answer, *sentence, reader);
  }
  // Above tables, which stand elsewhere here, a heading has nothing below it.
  const auto isEmptyHeading = [&](qsizetype at) {
    return notes[at].isHeading && (at + 1 == notes.size() || notes[at + 1].isHeading);
  };
  for (qsizetype i = notes.size(); i-- > 0;)
    if (isEmptyHeading(i)) notes.removeAt(i);
  for (const QString& note : allTold(answer.notes, reader)) notes.push_back({note});
  return notes;
}

}  // namespace

QString ShownTable::headWithMark(qsizetype column) const {
  const QString mark = marks.value(column);
  return mark.isEmpty() ? head.value(column) : head.value(column) + QLatin1Char('\n') + mark;
}

QString ShownAnswer::headline() const { return sentences.join(QLatin1Char(' ')); }
QStringList ShownAnswer::calmSentences() const { return sentences.mid(warnings.size()); }

ShownAnswer shown(const Answer& answer, const std::vector<std::string>& rigNames,
                  const rigs::Reader& reader) {
  return {.title = told(answer.title, reader),
          .sentences = allTold(answer.sentences, reader),
          .pictures = answer.pictures,
          .tables = tablesOf(answer, rigNames, reader),
          .notes = notesOf(answer, reader),
          .cautions = allTold(answer.cautions, reader),
          .furtherCautions =
              allTold(answer.furtherCautions, reader) + allTold(answer.dayCautions, reader),
          .warnings = allTold(answer.sentences, reader).first(qsizetype(answer.warnings))};
}

QStringList marksOf(const Answer& answer, const rigs::Reader& reader) {
  if (answer.rigMarks.empty()) return {};
  QStringList marks{QString()};  // above the labels
  for (const rigs::Told& mark : answer.rigMarks) marks += told(mark, reader);
  return marks;
}

std::vector<std::string> rigNamesOf(const rigs::Solution& solution) {
  std::vector<std::string> names;
  for (const rigs::RigAnswer& rig : solution.answers.rigs) names.push_back(rig.name);
  return names;
}

QStringList asLines(const QVector<ShownNote>& notes) {
  QStringList lines;
  for (const ShownNote& note : notes) lines += note.text;
  return lines;
}

}  // namespace gui
