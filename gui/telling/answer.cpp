// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/answer.hpp"

namespace gui::telling {

std::vector<rigs::Told> Answer::allCautions() const {
  std::vector<rigs::Told> all = furtherCautions;
  all.insert(all.end(), cautions.begin(), cautions.end());
  return all;
}

std::vector<const Table*> Answer::tables() const {
  std::vector<const Table*> all;
  for (const Block& block : blocks)
    if (const auto* table = std::get_if<Table>(&block)) all.push_back(table);
  return all;
}

}  // namespace gui::telling
