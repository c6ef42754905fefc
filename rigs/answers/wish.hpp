// SPDX-License-Identifier: GPL-3.0-or-later
// What a person may want more of from a kettle.
#pragma once

#include <array>

namespace rigs {

enum class Wish { Rolls, Sooner, Warmer, Cheaper, Circuit };
inline constexpr std::array kWishes{Wish::Rolls, Wish::Sooner, Wish::Warmer, Wish::Cheaper,
                                    Wish::Circuit};

}  // namespace rigs
