// SPDX-License-Identifier: GPL-3.0-or-later
// The lifted grain: what rinsing it does and what its water costs to heat, and how it drains.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

// A few sentences of a rig's day; none where the grain is neither rinsed nor left to drain, or the
// day ends before.
std::vector<rigs::Told> liftTexts(const Case& of, std::size_t rig);
// Of the rinse: volume, temperature, gravity; none where none is planned.
void addRinseRows(RigTable& table, const Case& of);
// Whose load the circuit's verdict counts, and whose it does not; nothing where none is planned.
rigs::Told rinseOnCircuit(const Case& of, std::size_t rig);
// "4 L of water at 75 °C"
rigs::Told rinseInWords(const physics::Rinse& rinse);
// "gravity 1.045–1.049", or one of them where they are the same.
rigs::Told rinsedGravities(const physics::Rinsed& rinsed);
bool isAnyRinsed(const Case& of);

}  // namespace gui::telling
