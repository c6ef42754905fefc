// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed, understood: one command with its options, or what to say instead.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include "gui/telling/question.hpp"
#include "gui/terminal/overrides.hpp"
#include "gui/terminal/verbs.hpp"
#include "rigs/plans/first_kettle.hpp"
#include "rigs/words/told.hpp"

namespace gui {

enum class Form { Text, Json, Csv };

// What Learn and Follow read, as typed.
struct ReadingOptions {
  std::string file;
  std::optional<std::string> time = {}, temperature = {}, unit = {}, since = {}, separator = {};
  bool checked = false, unstirred = false, leaveOut = false, keep = false;
  bool once = false;                    // of Follow
  std::optional<std::string> now = {};  // of Follow: a moment of the clock
};

struct Request {
  Command command = Command::Answer;
  std::string file;  // plan to read, or file to write; "" for the bundled example
  std::string like;  // of New: the bundled plan to start from; "" for the example
  std::optional<rigs::FirstKettle> kettle = {};  // of New: one's own, to make a plan of
  std::string subject;                           // of List: "materials"; of Schema: "rules"
  Form form = Form::Text;
  std::string units = "SI";  // as typed
  std::string width;         // as typed; "" for the terminal's
  bool brief = false;        // of Answer: the verdicts alone
  bool explained = false;    // how the figures were computed, too
  bool everyRule = false;    // of Circuit: kept rules too
  bool supposed = false;     // of Night: with the jacket to compare, too
  // Of pictures and reports: the file, the rig as typed, what a jacket is shown against.
  std::string to, rig;
  bool force = false;  // over whatever --to names, but the plan
  bool overThickness = true;
  std::optional<telling::Question> question;  // of Picture
  std::optional<rigs::Wish> wish;             // of Helps and of its picture
  std::size_t together = 0;                   // of Helps: changes at once; 0: the usual number
  Overrides overrides;
  // Of Sweep, as typed.
  std::vector<std::string> vary;
  std::optional<std::string> figures, atMost;
  ReadingOptions readings;  // of Learn and Follow
};

struct HelpAsked {
  std::optional<Command> about;
};
struct VersionAsked {};
struct NotUnderstood {
  std::vector<rigs::Told> sentences;
};

struct CommandLine {
  std::variant<Request, HelpAsked, VersionAsked, NotUnderstood> asked;
  std::string language;  // a code there are texts for
};

// `typed` is without the program's name; `language` is the code where none was typed.
CommandLine readCommandLine(std::span<const char* const> typed, std::string language);

}  // namespace gui
