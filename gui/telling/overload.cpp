// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/overload.hpp"

namespace gui::telling {

std::vector<rigs::Told> overloads(const Case& of) {
  std::vector<rigs::Told> told;
  for (std::size_t i = 0; i < of.count(); ++i) {
    for (const rigs::CircuitLoad& circuit : of.rig(i).circuit.circuits) {
      const rigs::Finding& found = circuit.nameplate;
      if (found.fit != rigs::Fit::DoesNotFit || !found.load) continue;
      told.push_back(rigs::Told(TOLD("Answer",
                                     "Overload: %1 draws %2 from its circuit of %3. Do not run it "
                                     "like that."),
                                of.named(i), rigs::amount(*found.load),
                                rigs::amount(circuit.supply.rating)));
    }
  }
  return told;
}

}  // namespace gui::telling
