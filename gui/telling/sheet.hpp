// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by: one rig's day in the order of the clock, on one page, with room for what is
// read beside what is expected. The same words and figures on paper, on a phone and in a terminal.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// What the figures were computed from, as nobody at the kettle remembers.
struct SheetOrigin {
  rigs::Told plan;      // "my-plan.json", "the bundled example"
  rigs::Told but = {};  // how what was computed differs from it: options, changes not saved
  std::string version;
};

struct SheetLine {
  // From the midnight of the day, in whole minutes; below 0 on the evening before. Empty where the
  // plan never gets there, and then there is no clock.
  std::optional<physics::Time> at = {};
  bool counted = false;                   // `at` is since the beginning, of a day that has no clock
  rigs::Told newDay = {};                 // "Next day", of the first line after a midnight
  rigs::Told band = {};                   // where 8 of 10 such days lie, where that is known
  rigs::Told action = {};                 // two to six words
  rigs::Told more = {};                   // what goes with it
  std::vector<rigs::Told> expected = {};  // what is to be seen then
  std::vector<rigs::Told> toWrite = {};   // what to read: each has a box
  bool isToDo = true;                     // else it tells why nothing more is to be done
  // Which stage of the day begins with it; the number of stages: with which the day ends, and what
  // follows is the chilling. Empty of lines within a stage.
  std::optional<std::size_t> stage = {};

  rigs::Told clock() const;  // of its own day: "07:34"; "" without one
};

struct SheetSum {
  rigs::Told figure, label;
};

struct Sheet {
  rigs::Told title;                  // of the plan
  rigs::Told rig;                    // whose sheet: its name, and what it is
  std::vector<rigs::Told> circuits;  // how it stands on each, with every condition
  rigs::Told batch, place, origin;
  std::vector<rigs::Told> warnings;  // before anything is done: overloads, a day that stops
  std::vector<SheetLine> lines;      // never back in time
  rigs::Told ofBands;                // what the small times are; "" where there are none
  std::vector<SheetSum> sums;
  rigs::Told danger;                 // the head of what follows
  std::vector<rigs::Told> cautions;  // of this plan and this rig; the last defers to electricians
};

// Needs days, and the plan's own night; bands are told where they are known. `rig` is of the case.
Sheet sheetOf(const Case& of, std::size_t rig, const SheetOrigin& origin);

// Parts of it.
std::vector<SheetLine> sheetLines(const Case& of, std::size_t rig);
std::vector<rigs::Told> sheetCautions(const Case& of, std::size_t rig);

// What people read of several figures: "27.1 L cold · 1.044".
rigs::Told sideBySide(const std::vector<rigs::Told>& figures);

}  // namespace gui::telling
