// SPDX-License-Identifier: GPL-3.0-or-later
// The questions a person may ask.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/answers/wish.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

enum class Question {
  Overview,      // all of it in short
  HowLong,       // How long does it take?
  WhereHeat,     // Where does the heat go?
  BoilsEnough,   // Does it boil hard enough?
  WorthJacket,   // Is insulation worth it?
  WhichElement,  // What element do I need?
  Circuit,       // Can the circuit carry it?
  WhatCost,      // What does it cost?
  HowFarCools,   // How far does it cool?
  Room,          // What happens to the room?
  HelpsMost,     // What helps most?
  HowChills,     // How long does it take to chill?
  WortChanges,   // What do time and heat do to the wort?
  HowSure        // How sure is this?
};
// In the order in which they are offered.
std::span<const Question> allQuestions();

rigs::Told titleOf(Question question);
rigs::Told shortTitleOf(Question question);        // a word or two, where room is short
std::string_view identifierOf(Question question);  // "how-long", for files and options

struct QuestionView {
  // Whom the others are compared with (Overview), whose power by path is drawn (WhereHeat), whose
  // jacket (WorthJacket), who is helped (HelpsMost), whose band is drawn (HowSure).
  int rig = 0;
  bool overThickness = true;  // WorthJacket: against thickness, else against element power
  bool savings = false;       // WorthJacket: what a jacket saves, else the day with and without
  // WhichElement: against the power written on the element, else rated at its supply's voltage.
  bool asWritten = true;
  bool asBars = false;  // WhereHeat: energy of all rigs as stacked bars, else power over time
  // HowFarCools: with the jacket to compare, and of a rig that has one without, too.
  bool supposed = false;
  bool allFigures = false;                // of all questions side by side: for spreadsheets
  bool everyRule = false;                 // Circuit: kept rules too, with their arithmetic
  std::optional<rigs::Wish> wish = {};    // HelpsMost: empty: what the rig lacks most
  bool everyRig = false;                  // HelpsMost, HowSure: each in short
  std::vector<std::string> undrawn = {};  // names of the rigs that pictures leave out
  std::optional<std::size_t> only = {};   // the rig that somebody wants to read about alone
};

}  // namespace gui::telling
