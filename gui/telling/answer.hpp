// SPDX-License-Identifier: GPL-3.0-or-later
// A question's answer as data: sentences, typed tables, pictures, notes and cautions. Made once,
// shown by the terminal, the window, the report and every export.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "gui/telling/picture.hpp"
#include "gui/telling/table.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct Heading {
  rigs::Told text;
};
// A sentence about one rig, whose letter leads it, or about all.
struct Sentence {
  std::optional<std::size_t> rig;
  rigs::Told text;
  bool goesOn = false;  // about the same rig as the one before: the letter is not said again
  // Of several rigs, or of what one would be: it names them itself. Empty: of all.
  std::vector<std::size_t> about = {};
  bool ofTheOneBefore = false;  // what comes of it, and may stand behind it where room is short
};
using Block = std::variant<Heading, Sentence, Table>;

struct Answer {
  rigs::Told title;
  bool lettered = true;               // rigs have letters; not the only one of a plan
  std::vector<rigs::Told> sentences;  // the answer in short, numbers first: the window's headline
  std::size_t warnings = 0;           // the first of them, which a reader must not miss
  // Of rigs that overload their circuit: stands beside the letter wherever the rig does, so that no
  // figure of it is read without. In the plan's order, "" of the others; none where no rig does.
  std::vector<rigs::Told> rigMarks;
  // The rigs' letters and looks, in the plan's order; beyond the last: as in that order.
  std::vector<std::size_t> slots;
  std::vector<Block> blocks;      // rig by rig, then the figures
  std::vector<Picture> pictures;  // none, one or two
  // What a table has no room for: rules, arithmetic, clauses, sources.
  std::vector<rigs::Told> notes;
  // Never empty where mains, heat, steam or warm wort are concerned.
  std::vector<rigs::Told> cautions;
  // What this plan in particular should heed; the window shows them with the notes, where
  // `cautions` are always in sight.
  std::vector<rigs::Told> furtherCautions;
  // The same of its whole day, beside what this question is about. The terminal has a page of its
  // own for them, and names it.
  std::vector<rigs::Told> dayCautions;

  void heading(rigs::Told text) { blocks.emplace_back(Heading{std::move(text)}); }
  void say(rigs::Told text) { blocks.emplace_back(Sentence{{}, std::move(text)}); }
  void say(std::size_t rig, rigs::Told text) {
    blocks.emplace_back(Sentence{rig, std::move(text)});
  }
  void sayAbout(std::vector<std::size_t> rigs, rigs::Told text) {
    blocks.emplace_back(Sentence{.rig = {}, .text = std::move(text), .about = std::move(rigs)});
  }
  void goOn(std::size_t rig, rigs::Told text) {
    if (!text.empty()) blocks.emplace_back(Sentence{rig, std::move(text), true});
  }
  void show(Table table) { blocks.emplace_back(std::move(table)); }

  void setSlots(std::vector<std::size_t> ofRigs);  // of its pictures too
  // Of a plan with one rig, which needs no letter to be told from others.
  void dropLetters();
  std::string letterOf(std::size_t rig) const;  // "(c)"
  std::vector<rigs::Told> allCautions() const;  // those of this plan first
  rigs::Told markOf(std::size_t rig) const;     // "" without one
  // As people read it behind the rig's letter: its mark first.
  rigs::Told textOf(const Sentence& sentence) const;
  // All tables in order.
  std::vector<const Table*> tables() const;
};

// Without what is drawn of these rigs; where nothing else would be left, the pictures stay whole.
void leaveOutOfPictures(Answer& answer, const std::vector<std::size_t>& rigs);

// What is said of one rig and of all: without the other rigs' sentences, columns, tables and lines.
// Headline, notes and cautions stay whole: they tell how the rigs compare, and what is dangerous.
Answer aboutRig(Answer all, std::size_t rig);

}  // namespace gui::telling
