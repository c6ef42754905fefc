// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan cannot keep anybody from: shown after every answer, carried in its JSON. Each has its
// words here and nowhere else.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

struct Caution {
  std::string_view topic;  // "mains", for programs
  Told text;               // for people
};

// In the order of a day. The one about wort left warm for plans that leave it alone, or when
// `leftAlone` asks that very question; with the plan's own hours where `answers` have its night.
std::vector<Caution> cautions(const Plan& plan, bool leftAlone, const Answers* answers = nullptr);

// What a page, a picture or a document tells of.
enum class About {
  Day,
  Boil,
  Insulation,
  Cost,
  Answer,
  Sizing,
  Circuit,
  Room,
  Chilling,
  Everything
};
// The cautions that belong to it, the same in every form it is shown in. Where it holds an
// electrical verdict the last one defers to local codes and a licensed electrician.
std::vector<Caution> cautionsFor(About about, const Plan& plan, const Answers& answers);

// Whether a caution about this topic is what the page is read for. What it is not read for is of
// the day around it: a page of its own tells all of that.
bool isOfThePage(About about, std::string_view topic);

// What belongs to electrical verdicts beside the cautions of every page, and what to the room.
std::vector<Caution> circuitCautions(const Plan& plan, const Answers& answers);
Caution roomCaution(const Answers& answers);
// What belongs to chilling: water that scalds, vessels that are shut, wort left warm.
std::vector<Caution> chillCautions(const Answers& answers);

// "At 55 °C bare skin burns to the second degree in 17 s and to the third in 30 s"; above the
// table's end, 60 C, in its last times at the most. Nothing below the table.
Told scaldText(physics::Temperature water);

}  // namespace rigs
