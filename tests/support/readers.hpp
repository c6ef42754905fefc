// SPDX-License-Identifier: GPL-3.0-or-later
// Readers in English, of SI and of US units.
#pragma once

#include "rigs/words/language.hpp"

namespace test_support {

inline const rigs::Reader kSi{};
inline const rigs::Reader kUs{.units = rigs::UnitSystem::UsCustomary};

}  // namespace test_support
