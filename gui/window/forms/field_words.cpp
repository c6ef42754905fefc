// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/field_words.hpp"

#include <cassert>
#include <sstream>

#include "rigs/plans/keys.hpp"

namespace gui {
namespace {

QString fieldWord(const rigs::Marked& text) {
  return *text.english == '\0' ? QString() : PlanFields::tr(text.english);
}

// Of the last list on the way, counted from 1; 0 where there is none.
int entryNumber(const std::string& place) {
  int number = 0;
  std::istringstream steps(place);
  for (std::string step; std::getline(steps, step, '/');)
    if (!step.empty() && step.find_first_not_of("0123456789") == std::string::npos)
      number = std::stoi(step) + 1;
  return number;
}

QString labelOf(const rigs::Key& key, const std::string& place) {
  const QString label = fieldWord(key.label);
  return label.contains(QLatin1String("%1")) ? label.arg(entryNumber(place)) : label;
}

// A meaning mostly has the range already.
QString helpOf(const rigs::Key& key, const QString& meaning) {
  QStringList all;
  if (!meaning.isEmpty()) all += meaning;
  const QString range = QString::fromStdString(rigs::acceptedText(key));
  const bool isAmount = key.kind == rigs::ValueKind::Quantity ||
                        key.kind == rigs::ValueKind::Share || key.kind == rigs::ValueKind::Number;
  if (isAmount && !range.isEmpty() && !meaning.contains(range))
    all += PlanFields::tr("Accepted: %1.").arg(range);
  const bool isPlain = key.kind != rigs::ValueKind::Object && key.kind != rigs::ValueKind::List &&
                       key.kind != rigs::ValueKind::Anything;
  if (isPlain && !key.example.empty())
    all += PlanFields::tr("For example: %1")
               .arg(QString::fromUtf8(key.example.data(), qsizetype(key.example.size())));
  return all.join(QLatin1Char('\n'));
}

void addWords(PlanField& field, const std::string& root) {
  const rigs::Key* key = rigs::keyAt(root + field.place);
  assert(key != nullptr);
  field.label = labelOf(*key, field.place);
  field.meaning = fieldWord(key->meaning);
  field.help = helpOf(*key, field.meaning);
  field.usual =
      key->standard.empty()
          ? fieldWord(key->otherwise)
          : QString::fromUtf8(key->standard.data(), static_cast<qsizetype>(key->standard.size()));
}

}  // namespace

std::vector<FieldSection> inWords(std::vector<FieldSection> sections, const std::string& root) {
  for (FieldSection& section : sections)
    for (PlanField& field : section.fields) {
      addWords(field, root);
      field.section = section.title;
    }
  return sections;
}

QString labelAt(const std::string& place) {
  const rigs::Key* key = rigs::keyAt(place);
  return key ? labelOf(*key, place) : QString();
}

}  // namespace gui
