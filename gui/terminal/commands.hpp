// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed, understood: one command with its options, or what to say instead.
#pragma once

#include <optional>
#include <string>

#include "gui/terminal/overrides.hpp"

namespace gui {

enum class Command {
  Answer,
  Day,
  Size,
  Insulate,
  Boil,
  Cost,
  Circuit,
  Room,
  Picture,
  Report,
  Check,
  New,
  List,
  Schema
};
enum class Form { Text, Json, Csv };

struct Request {
  Command command = Command::Answer;
  std::string file;  // plan to read, or file to write; "" for the bundled example
  // Of List: "materials", "supplies", "rigs"; of Schema: "plan", "rules"; of Picture: the question.
  std::string subject;
  Form form = Form::Text;
  std::string units = "SI";                // as typed
  std::string width;                       // as typed; "" for the terminal's
  std::string to;                          // file that a picture or report becomes
  std::string language = "en", rig, over;  // of pictures and reports, as typed
  bool everyRule = false;                  // of Circuit: kept rules too
  Overrides overrides;
};

struct CommandLine {
  std::optional<Request> request;
  // Without a request: what to print, and the exit code.
  std::string output, complaint;
  int exitCode = 0;
};

// `width` is for help texts.
CommandLine readCommandLine(int argc, const char* const* argv, std::size_t width);

}  // namespace gui
