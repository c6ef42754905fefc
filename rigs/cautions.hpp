// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan cannot keep anybody from: shown after every answer, carried in its JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/plan.hpp"
#include "rigs/quantity_text.hpp"

namespace rigs {

struct Caution {
  std::string_view topic;  // "mains", for programs
  std::string text;        // for people
};

// In the order of a day. The one about wort cooling by itself only for plans that leave it alone,
// or when `leftAlone` asks that very question.
std::vector<Caution> cautions(const Plan& plan, bool leftAlone, UnitSystem units);

}  // namespace rigs
