// SPDX-License-Identifier: GPL-3.0-or-later
// Which options and subjects a command knows, for help, for shells that complete them, and for
// guesses at what was meant.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "gui/terminal/verbs.hpp"
#include "rigs/words/told.hpp"

namespace gui {

struct OptionAbout {
  std::string option;  // "--units"
  std::string value;   // as help names it: "SI|US", "FILE"; "" for none
  rigs::Told about;
  std::vector<std::string> choices;  // where there are few
  bool isFile = false;
  bool mayRepeat = false;
};
// How its answer is shown and where it goes, in the order of the help.
std::vector<OptionAbout> shownOptions(const Verb& verb);
// What a new plan starts from; of New alone.
std::vector<OptionAbout> startOptions(const Verb& verb);
// One's own kettle, to make a plan of; of New alone.
std::vector<OptionAbout> kettleOptionsOf(const Verb& verb);
// Which keys of a plan take which values; of Sweep alone.
std::vector<OptionAbout> variedOptions(const Verb& verb);
// What was read, and how it is understood; of Learn and Follow alone.
std::vector<OptionAbout> readingOptions(const Verb& verb);
// What a question about a plan may suppose. Of pictures: what any question may.
std::vector<OptionAbout> whatIfOptions(const Verb& verb);
// All of these.
std::vector<OptionAbout> optionsOf(const Verb& verb);

// What its first word may be: a question of picture, a list, a schema; none for a file.
std::vector<std::string> subjectsOf(Command command);

}  // namespace gui
