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

void addWords(PlanField& field, const std::string& root) {
  const rigs::Key* key = rigs::keyAt(root + field.place);
  assert(key != nullptr);
  field.label = labelOf(*key, field.place);
  field.meaning = fieldWord(key->meaning);
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
