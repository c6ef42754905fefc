// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/question.hpp"

#include <algorithm>
#include <array>

namespace gui::telling {
namespace {

struct Entry {
  Question question;
  rigs::Template<0> title, shortTitle;
  std::string_view identifier;
};

constexpr std::array kEntries{
    Entry{Question::Overview, TOLD("Answer", "Overview"), TOLD("Answer", "Overview"), "overview"},
    Entry{Question::HowLong, TOLD("Answer", "How long does it take?"), TOLD("Answer", "How long?"),
          "how-long"},
    Entry{Question::WhereHeat, TOLD("Answer", "Where does the heat go?"),
          TOLD("Answer", "Heat to where?"), "where-heat"},
    Entry{Question::BoilsEnough, TOLD("Answer", "Does it boil hard enough?"),
          TOLD("Answer", "Boils hard enough?"), "boils-enough"},
    Entry{Question::WorthJacket, TOLD("Answer", "Is insulation worth it?"),
          TOLD("Answer", "Insulate?"), "worth-jacket"},
    Entry{Question::WhichElement, TOLD("Answer", "What element do I need?"),
          TOLD("Answer", "Which element?"), "which-element"},
    Entry{Question::Circuit, TOLD("Answer", "Can the circuit carry it?"),
          TOLD("Answer", "Circuit carries it?"), "circuit"},
    Entry{Question::WhatCost, TOLD("Answer", "What does it cost?"), TOLD("Answer", "What cost?"),
          "what-cost"},
    Entry{Question::HowFarCools, TOLD("Answer", "How far does it cool?"),
          TOLD("Answer", "Cools how far?"), "how-far-cools"},
    Entry{Question::Room, TOLD("Answer", "What happens to the room?"), TOLD("Answer", "The room?"),
          "room"},
    Entry{Question::HelpsMost, TOLD("Answer", "What helps most?"), TOLD("Answer", "Helps most?"),
          "helps-most"},
    Entry{Question::HowChills, TOLD("Answer", "How long does it take to chill?"),
          TOLD("Answer", "Chills how fast?"), "chilling"},
    Entry{Question::WortChanges, TOLD("Answer", "What do time and heat do to the wort?"),
          TOLD("Answer", "What of the wort?"), "wort"},
    Entry{Question::HowSure, TOLD("Answer", "How sure is this?"), TOLD("Answer", "How sure?"),
          "how-sure"}};

const Entry& entryOf(Question question) {
  return *std::find_if(kEntries.begin(), kEntries.end(),
                       [&](const Entry& one) { return one.question == question; });
}

}  // namespace

std::span<const Question> allQuestions() {
  static const auto kAll = [] {
    std::array<Question, kEntries.size()> all{};
    std::transform(kEntries.begin(), kEntries.end(), all.begin(),
                   [](const Entry& one) { return one.question; });
    return all;
  }();
  return kAll;
}

rigs::Told titleOf(Question question) { return rigs::Told(entryOf(question).title); }
rigs::Told shortTitleOf(Question question) { return rigs::Told(entryOf(question).shortTitle); }
std::string_view identifierOf(Question question) { return entryOf(question).identifier; }

}  // namespace gui::telling
