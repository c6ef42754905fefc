// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan cannot keep anybody from: shown after every answer, carried in its JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

struct Caution {
  std::string_view topic;  // "mains", for programs
  std::string text;        // for people
};

// In the order of a day. The one about wort cooling by itself only for plans that leave it alone,
// or when `leftAlone` asks that very question.
std::vector<Caution> cautions(const Plan& plan, bool leftAlone, UnitSystem units);

// What a page, a picture or a document tells of.
enum class About { Day, Boil, Insulation, Cost, Answer, Sizing, Circuit, Room, Everything };
// The cautions that belong to it, the same in every form it is shown in. Where it holds an
// electrical verdict the last one defers to local codes and a licensed electrician.
std::vector<Caution> cautionsFor(About about, const Plan& plan, const Answers& answers,
                                 UnitSystem units);
std::vector<std::string> cautionTexts(About about, const Plan& plan, const Answers& answers,
                                      UnitSystem units);

}  // namespace rigs
