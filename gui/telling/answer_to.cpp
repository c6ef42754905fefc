// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/answer_to.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/case.hpp"
#include "gui/telling/overload.hpp"
#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

Answer answered(Question question, const Case& of) {
  switch (question) {
    case Question::Overview:
      return overview(of);
    case Question::HowLong:
      return howLong(of);
    case Question::WhereHeat:
      return whereHeat(of);
    case Question::BoilsEnough:
      return boilsEnough(of);
    case Question::WorthJacket:
      return worthJacket(of);
    case Question::WhichElement:
      return whichElement(of);
    case Question::Circuit:
      return circuitCarries(of);
    case Question::WhatCost:
      return whatCost(of);
    case Question::HowFarCools:
      return howFarCools(of);
    case Question::Room:
      return roomChanges(of);
    case Question::HelpsMost:
      return helpsMost(of);
    case Question::HowChills:
      return howLongChills(of);
    case Question::WortChanges:
      return howWortChanges(of);
    case Question::HowSure:
      return howSure(of);
  }
  return {};
}

rigs::About aboutOf(Question question) {
  switch (question) {
    case Question::Overview:
      return rigs::About::Answer;
    case Question::HowLong:
    case Question::HowSure:
    case Question::WhereHeat:
      return rigs::About::Day;
    case Question::BoilsEnough:
      return rigs::About::Boil;
    case Question::WorthJacket:
    case Question::HowFarCools:
      return rigs::About::Insulation;
    case Question::WhichElement:
    case Question::HelpsMost:
      return rigs::About::Sizing;
    case Question::Circuit:
      return rigs::About::Circuit;
    case Question::WhatCost:
      return rigs::About::Cost;
    case Question::Room:
      return rigs::About::Room;
    case Question::HowChills:
    case Question::WortChanges:
      return rigs::About::Chilling;
  }
  return rigs::About::Everything;
}

std::vector<std::size_t> undrawnOf(const Case& of) {
  const auto& names = of.view.undrawn;
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < of.count(); ++i)
    if (std::find(names.begin(), names.end(), of.name(i)) != names.end()) all.push_back(i);
  return all;
}

}  // namespace

Answer answerTo(Question question, const rigs::Solution& solution, const rigs::Reader& reader,
                const QuestionView& view) {
  const Case of{solution, solution.plan, reader, view};
  Answer answer = of.count() > 0 ? answered(question, of) : Answer{};
  if (of.isAlone()) answer.dropLetters();
  answer.setSlots(of.slots());
  addOverloads(answer, of);
  leaveOutOfPictures(answer, undrawnOf(of));
  answer.title = titleOf(question);
  addCautions(answer, aboutOf(question), solution);
  return view.only ? aboutRig(std::move(answer), *view.only) : answer;
}

void addCautions(Answer& answer, rigs::About about, const rigs::Solution& solution) {
  const auto general = rigs::cautions(solution.plan, true);
  const auto isGeneral = [&](const rigs::Caution& one) {
    return std::any_of(general.begin(), general.end(),
                       [&](const rigs::Caution& other) { return other.topic == one.topic; });
  };
  for (rigs::Caution& one : rigs::cautionsFor(about, solution.plan, solution.answers)) {
    const bool inSight = isGeneral(one) || one.topic == "deferral";
    auto& place = inSight                               ? answer.cautions
                  : rigs::isOfThePage(about, one.topic) ? answer.furtherCautions
                                                        : answer.dayCautions;
    place.push_back(std::move(one.text));
  }
}

rigs::Depth depthOf(Question question) {
  switch (question) {
    case Question::Overview:
    case Question::HowLong:
    case Question::WhereHeat:
    case Question::BoilsEnough:
    case Question::HelpsMost:
    case Question::HowSure:
      return rigs::Depth::Day;
    case Question::WorthJacket:
    case Question::WhatCost:
      return rigs::Depth::DayAndJacket;
    case Question::HowFarCools:
      return rigs::Depth::Night;
    case Question::WhichElement:
      return rigs::Depth::Everything;
    case Question::Circuit:
      return rigs::Depth::Circuit;
    case Question::Room:
      return rigs::Depth::Room;
    case Question::HowChills:
      return rigs::Depth::Chill;
    case Question::WortChanges:
      return rigs::Depth::Wort;
  }
  return rigs::Depth::Everything;
}

rigs::Searches neededBy(Question question, const QuestionView& view) {
  switch (question) {
    case Question::Overview:
      return {.sizing = true};  // what a kettle needs that does not roll
    case Question::BoilsEnough:
      return {.power = true, .rest = true};  // what would make a kettle boil
    case Question::WorthJacket:
      return view.overThickness ? rigs::Searches{.thickness = true}
                                : rigs::Searches{.jacketPower = true};
    case Question::WhichElement:
      return {.sizing = true, .power = true, .rest = true};
    case Question::Circuit:
      return {.circuit = true};
    case Question::HelpsMost:
      return {.helps = true};
    case Question::HowSure:
      return {.bands = true, .sure = true};
    case Question::HowLong:
    case Question::WhereHeat:
    case Question::WhatCost:
    case Question::HowFarCools:
    case Question::HowChills:
    case Question::WortChanges:
    case Question::Room:
      return {};
  }
  return {};
}

}  // namespace gui::telling
