// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question.hpp"

#include <algorithm>

#include "gui/window/questions/answer_text.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/results/cautions.hpp"

namespace gui {
namespace {

Answer answered(Question question, const Telling& tell) {
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
  const auto general = rigs::cautions(tell.plan, true);
  const auto isGeneral = [&](const rigs::Caution& one) {
    return std::any_of(general.begin(), general.end(),
                       [&](const rigs::Caution& other) { return other.topic == one.topic; });
  };
  for (const rigs::Caution& one :
       rigs::cautionsFor(aboutOf(question), tell.plan, tell.solution.answers)) {
    const bool inSight = isGeneral(one) || one.topic == "deferral";
    (inSight ? answer.cautions : answer.furtherCautions) += told(one.text, units);
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
  Answer answer = tell.count() > 0 ? answered(question, tell) : Answer{};
  answer.title = titleOf(question);
  addCautions(answer, question, tell, units);
  return answer;
}

}  // namespace gui
