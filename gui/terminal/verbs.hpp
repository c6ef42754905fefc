// SPDX-License-Identifier: GPL-3.0-or-later
// The program's commands: what each is called and what it is about.
#pragma once

#include <span>
#include <string_view>

#include "rigs/words/told.hpp"

namespace gui {

enum class Command {
  Answer,
  Overview,
  Day,
  Size,
  Insulate,
  Night,
  Boil,
  Cost,
  Circuit,
  Room,
  Chill,
  Wort,
  Helps,
  Sure,
  Safety,
  Learn,
  Follow,
  Sweep,
  Sheet,
  Picture,
  Report,
  Check,
  New,
  List,
  Schema
};

struct Verb {
  Command command;
  std::string_view name;
  std::string_view words;  // what follows it, for help: "[PLAN]"
  rigs::Template<0> about;
  std::span<const std::string_view> examples;
};
// In the order of the help.
std::span<const Verb> verbs();
const Verb& verbOf(Command command);
// nullptr where no command is called so.
const Verb* verbCalled(std::string_view name);

bool isAboutAPlan(Command command);
// What only the half of the program that knows Qt can do.
bool isDrawn(Command command);
// May be told where to write: what is drawn, and a sheet.
bool mayWrite(Command command);
// Can be asked of one rig of a plan alone.
bool isAboutOneRig(Command command);
// Has rows and columns that spreadsheets read.
bool hasTable(Command command);
// Is the page of one question, of whose figures can be told how they were computed.
bool isExplained(Command command);
// Its first word is no file: a question, a list, a schema.
bool hasSubject(Command command);

}  // namespace gui
