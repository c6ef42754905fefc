// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/answer.hpp"

#include <utility>

namespace gui::telling {

void Answer::dropLetters() {
  lettered = false;
  for (Picture& picture : pictures) picture.lettered = false;
}

std::vector<rigs::Told> Answer::allCautions() const {
  std::vector<rigs::Told> all = furtherCautions;
  all.insert(all.end(), cautions.begin(), cautions.end());
  return all;
}

rigs::Told Answer::markOf(std::size_t rig) const {
  return rig < rigMarks.size() ? rigMarks[rig] : rigs::Told();
}

rigs::Told Answer::textOf(const Sentence& sentence) const {
  if (!sentence.rig || sentence.goesOn || sentence.text.empty()) return sentence.text;
  rigs::Told mark = markOf(*sentence.rig);
  if (mark.empty()) return sentence.text;
  return rigs::Told(TOLD("Answer", "[%1] %2"), std::move(mark), sentence.text);
}

std::vector<const Table*> Answer::tables() const {
  std::vector<const Table*> all;
  for (const Block& block : blocks)
    if (const auto* table = std::get_if<Table>(&block)) all.push_back(table);
  return all;
}

}  // namespace gui::telling
