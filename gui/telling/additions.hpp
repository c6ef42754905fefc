// SPDX-License-Identifier: GPL-3.0-or-later
// What goes in during the boil: how far it dips, when it rolls again, what there is then.
#pragma once

#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

// A sentence or two an addition, in the order they go in; none where none are planned.
std::vector<rigs::Told> additionTexts(const Case& of, std::size_t rig);
// Right after each of them, below a heading of its own; none where none are planned.
void addAdditionRows(RigTable& table, const Case& of);
// "500 g of sugar, 10 min before the end"; "2 L of water, when the boil ends"
rigs::Told plannedAdditionInWords(const physics::Addition& addition);
// "500 g of sugar", "2 L of water"
rigs::Told additionInWords(const physics::Addition& addition);
// "dips by about 2 K, to 98 °C"
rigs::Told dipText(const physics::Added& added);
// "rolls again after about 3 min", or that it may not; nothing where it does not dip.
rigs::Told backText(const Case& of, std::size_t rig, const physics::Added& added);

}  // namespace gui::telling
