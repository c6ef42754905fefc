// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/overload.hpp"

namespace gui::telling {

std::vector<Overload> overloads(const Case& of) {
  std::vector<Overload> all;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto& circuits = of.rig(i).circuit.circuits;
    for (std::size_t k = 0; k < circuits.size(); ++k) {
      if (!isOverloaded(circuits[k])) continue;
      all.push_back(
          {i, k,
           rigs::Told(TOLD("Answer",
                           "▲ Overload: %1 draws %2 from its circuit of %3. Do not run "
                           "it like that."),
                      rigs::Verbatim{of.plainlyNamed(i)}, rigs::amount(*circuits[k].nameplate.load),
                      rigs::amount(circuits[k].supply.rating))});
    }
  }
  return all;
}

void addOverloads(Answer& answer, const Case& of) {
  const std::vector<Overload> all = overloads(of);
  if (all.empty()) return;
  answer.rigMarks.resize(of.count());
  std::vector<rigs::Told> warnings;
  for (const Overload& one : all) {
    answer.rigMarks[one.rig] = overloadMark();
    warnings.push_back(one.text);
  }
  answer.sentences.insert(answer.sentences.begin(), warnings.begin(), warnings.end());
  answer.warnings = warnings.size();
  for (Picture& picture : answer.pictures)
    for (const rigs::Told& mark : answer.rigMarks) picture.rigMarks.push_back(of.text(mark));
}

}  // namespace gui::telling
