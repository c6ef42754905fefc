// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most? One change, the few together, and ways between wishes. Declared in words.hpp:
// helpsMost().
#pragma once

#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "to be ready sooner": for choosers.
rigs::Told wishWords(rigs::Wish wish);
// What a rig lacks most: to roll, then a warm morning where a mash is left alone, then time.
rigs::Wish mostPressing(const rigs::HelpsAnswer& helps);
// The wish that is told: of a day without a rolling end nothing is sooner or cheaper, so that it is
// to roll first.
rigs::Wish wishToldOf(const Case& of, const rigs::HelpsAnswer& helps);

// "water of 55 °C from the tap and the lid on until the boil begins".
rigs::Told changesText(const rigs::HelpsAnswer& helps, const std::vector<std::size_t>& changes);
// What it brings: "34 min sooner", "0.62 USD less a year".
rigs::Told gainText(const Case& of, rigs::Wish wish, const rigs::Effect& then,
                    const rigs::Effect& today);
// "40 EUR", "nothing to buy"; nothing where no price is stated.
rigs::Told outlayText(const Case& of, const rigs::HelpsAnswer& helps,
                      const std::vector<std::size_t>& changes);

// By the name of "helps" in spreadsheets: every change, then those together.
Table helpsTable(const Case& of, std::size_t rig);
// A bar a lever, as long as what its best change brings; none where no lever helps.
Picture helpsPicture(const Case& of, std::size_t rig);

}  // namespace gui::telling
