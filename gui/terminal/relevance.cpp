// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/relevance.hpp"

namespace gui {
namespace {

using telling::Question;

bool sizes(Command command, const std::optional<Question>& question) {
  return command == Command::Answer || command == Command::Size ||
         question == Question::WhichElement;
}

bool tellsOfNights(Command command, const std::optional<Question>& question) {
  return command == Command::Night || command == Command::Insulate ||
         question == Question::HowFarCools || question == Question::WorthJacket;
}

}  // namespace

bool dependsOn(std::string_view option, Command command, const std::optional<Question>& question) {
  // All questions in full, and what is wrong with any of them.
  if (command == Command::Report || command == Command::Check) return true;
  const bool ofGoals = option == "--within" || option == "--boil-off";
  if (ofGoals && (command == Command::Helps || question == Question::HelpsMost)) return true;
  if (ofGoals || option == "--headspace") return sizes(command, question);
  if (option == "--alone") return tellsOfNights(command, question);
  return true;  // place, supply and region are in every day and in every verdict
}

}  // namespace gui
