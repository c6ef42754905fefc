// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question.hpp"

#include <algorithm>

#include "gui/window/questions/answer_text.hpp"
#include "gui/window/words/phrases.hpp"
#include "rigs/answers/safety.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui {
namespace {

Answer told(Question question, const Telling& tell) {
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
void addCautions(Answer& answer, Question question, const Telling& tell, rigs::UnitSystem units) {
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

const QVector<Question>& allQuestions() {
  static const QVector<Question> kAll{
      Question::HowLong,     Question::WhereHeat,    Question::BoilsEnough,
      Question::WorthJacket, Question::WhichElement, Question::Circuit,
      Question::WhatCost,    Question::HowFarCools,  Question::Room};
  return kAll;
}

QString titleOf(Question question) {
  switch (question) {
    case Question::HowLong:
      return translate("Answer", "How long does it take?");
    case Question::WhereHeat:
      return translate("Answer", "Where does the heat go?");
    case Question::BoilsEnough:
      return translate("Answer", "Does it boil hard enough?");
    case Question::WorthJacket:
      return translate("Answer", "Is insulation worth it?");
    case Question::WhichElement:
      return translate("Answer", "What element do I need?");
    case Question::WhatCost:
      return translate("Answer", "What does it cost?");
    case Question::HowFarCools:
      return translate("Answer", "How far does it cool?");
    case Question::Circuit:
      return translate("Answer", "Can the circuit carry it?");
    case Question::Room:
      return translate("Answer", "What happens to the room?");
  }
  return {};
}

QString shortTitleOf(Question question) {
  switch (question) {
    case Question::HowLong:
      return translate("Answer", "How long?");
    case Question::WhereHeat:
      return translate("Answer", "Heat to where?");
    case Question::BoilsEnough:
      return translate("Answer", "Boils hard enough?");
    case Question::WorthJacket:
      return translate("Answer", "Insulate?");
    case Question::WhichElement:
      return translate("Answer", "Which element?");
    case Question::Circuit:
      return translate("Answer", "Circuit carries it?");
    case Question::WhatCost:
      return translate("Answer", "What cost?");
    case Question::HowFarCools:
      return translate("Answer", "Cools how far?");
    case Question::Room:
      return translate("Answer", "The room?");
  }
  return {};
}

QString identifierOf(Question question) {
  switch (question) {
    case Question::HowLong:
      return QStringLiteral("how-long");
    case Question::WhereHeat:
      return QStringLiteral("where-heat");
    case Question::BoilsEnough:
      return QStringLiteral("boils-enough");
    case Question::WorthJacket:
      return QStringLiteral("worth-jacket");
    case Question::WhichElement:
      return QStringLiteral("which-element");
    case Question::WhatCost:
      return QStringLiteral("what-cost");
    case Question::HowFarCools:
      return QStringLiteral("how-far-cools");
    case Question::Circuit:
      return QStringLiteral("circuit");
    case Question::Room:
      return QStringLiteral("room");
  }
  return {};
}

Answer answerTo(Question question, const Solution& solution, rigs::UnitSystem units,
                const QuestionView& view) {
  const Telling tell{solution, solution.plan, Writer(units), view};
  Answer answer = tell.count() > 0 ? told(question, tell) : Answer{};
  answer.title = titleOf(question);
  addCautions(answer, question, tell, units);
  return answer;
}

}  // namespace gui
