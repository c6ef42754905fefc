// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question.hpp"

#include <algorithm>

#include "gui/window/questions/answer_text.hpp"
#include "gui/window/words/phrases.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/safety.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui {
namespace {

QtAnswer answered(Question question, const Telling& tell) {
  switch (question) {
    case Question::HowLong:
      return howLong(tell);
    case Question::WhereHeat:
      return whereHeat(tell);
    case Question::BoilsEnough:
      return boilsEnough(tell);
    case Question::WorthJacket:
      return worthJacket(tell);
    case Question::WhichElement:
      return whichElement(tell);
    case Question::Circuit:
      return circuitCarries(tell);
    case Question::WhatCost:
      return whatCost(tell);
    case Question::HowFarCools:
      return howFarCools(tell);
    case Question::Room:
      return roomChanges(tell);
  }
  return {};
}

// The same warnings as everywhere, in the reader's language; a topic that has no words here yet
// keeps those of the plan.
QString cautionText(const rigs::Caution& caution, const Writer& write) {
  if (caution.topic == "mains") {
    return translate("Answer",
                     "Mains current kills. These figures are for planning only; rules differ from "
                     "place to place. Have a licensed electrician check circuit, plug, cable and "
                     "enclosure.");
  }
  if (caution.topic == "ground fault") {
    return translate("Answer",
                     "Use ground-fault protection (GFCI, RCD) and a sound earth; test it before "
                     "each use. If it trips, stop and find out why.");
  }
  if (caution.topic == "element") {
    return translate("Answer",
                     "Keep the element covered with liquid whenever it is on; dry, it burns out in "
                     "seconds.");
  }
  if (caution.topic == "steam") {
    return translate("Answer",
                     "Never close, clamp or block a vessel that is being heated, and never shut "
                     "the lid on a boil.");
  }
  if (caution.topic == "boil-over") {
    return translate("Answer", "Stay with the kettle: foam rises fast when the boil begins.");
  }
  if (caution.topic == "scald") {
    return translate("Answer",
                     "Hot wort and steam burn skin in a second. Keep children and pets away.");
  }
  if (caution.topic == "left warm") {
    // Hot-holding limit of food service, 135 F (FDA Food Code 3-501.16).
    return translate("Answer",
                     "Wort left below about %1 for hours can sour and grow bacteria. Boil it "
                     "promptly afterwards, or do not leave it that long.")
        .arg(write.text(physics::celsius(57.0), {.significantDigits = 2, .decimals = {}}));
  }
  return QString::fromStdString(caution.text);
}

rigs::About aboutOf(Question question) {
  switch (question) {
    case Question::HowLong:
    case Question::WhereHeat:
      return rigs::About::Day;
    case Question::BoilsEnough:
      return rigs::About::Boil;
    case Question::WorthJacket:
    case Question::HowFarCools:
      return rigs::About::Insulation;
    case Question::WhichElement:
      return rigs::About::Sizing;
    case Question::Circuit:
      return rigs::About::Circuit;
    case Question::WhatCost:
      return rigs::About::Cost;
    case Question::Room:
      return rigs::About::Room;
  }
  return rigs::About::Everything;
}

// Those of every page stay in sight, and a verdict's deferral to local codes and a licensed
// electrician ends them; what a question adds stands with its notes.
void addCautions(QtAnswer& answer, Question question, const Telling& tell, rigs::UnitSystem units) {
  const auto general = rigs::cautions(tell.plan, true, units);
  const auto isGeneral = [&](const rigs::Caution& one) {
    return std::any_of(general.begin(), general.end(),
                       [&](const rigs::Caution& other) { return other.topic == one.topic; });
  };
  for (const rigs::Caution& one :
       rigs::cautionsFor(aboutOf(question), tell.plan, tell.solution.answers, units)) {
    if (isGeneral(one)) {
      answer.cautions += cautionText(one, tell.write);
    } else {
      (one.topic == "deferral" ? answer.cautions : answer.furtherCautions) += phrase(one.text);
    }
  }
}

}  // namespace

QtAnswer qtAnswerTo(Question question, const Solution& solution, rigs::UnitSystem units,
                    const QuestionView& view) {
  const Telling tell{solution, solution.plan, Writer(units), view};
  QtAnswer answer = tell.count() > 0 ? answered(question, tell) : QtAnswer{};
  answer.title = told(telling::titleOf(question));
  addCautions(answer, question, tell, units);
  return answer;
}

}  // namespace gui
