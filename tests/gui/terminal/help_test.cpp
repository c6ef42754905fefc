// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/help.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

#include "gui/telling/translations.hpp"
#include "gui/terminal/text_layout.hpp"

using namespace gui;
using testing::HasSubstr;
using testing::Not;

namespace {

std::string general(const std::string& language = "en") {
  return helpText({}, 80, {.language = &telling::languageOf(language)});
}
std::string about(Command command) { return helpText({command}, 80, {}); }

}  // namespace

TEST(Help, NamesEveryCommand) {
  for (const Verb& verb : verbs())
    EXPECT_THAT(general(), HasSubstr("\n  " + std::string(verb.name) + ' '));
}

TEST(Help, ShowsTheOptionsThatACommandKnows) {
  EXPECT_THAT(about(Command::Circuit), HasSubstr("--every-rule"));
  EXPECT_THAT(about(Command::Day), Not(HasSubstr("--every-rule")));
  EXPECT_THAT(about(Command::Day), HasSubstr("--alone TIME"));
  EXPECT_THAT(about(Command::List), Not(HasSubstr("--alone")));
  EXPECT_THAT(about(Command::Check), Not(HasSubstr("--csv")));
  EXPECT_THAT(about(Command::Report), HasSubstr("--to FILE"));
  EXPECT_THAT(about(Command::Picture), HasSubstr("how-far-cools"));
  for (const Command command : {Command::Night, Command::Picture})
    EXPECT_THAT(about(command), HasSubstr("--suppose-jacket"));
  EXPECT_THAT(about(Command::Insulate), Not(HasSubstr("--suppose-jacket")));
  EXPECT_THAT(about(Command::New), HasSubstr("night-unplugged"));
}

TEST(Help, StaysWithinTheWidthInEveryLanguage) {
  for (const std::string& language : telling::languageCodes()) {
    const rigs::Reader reader{.language = &telling::languageOf(language)};
    for (const std::size_t width : {60u, 80u, 132u}) {
      for (const Verb& verb : verbs()) {
        std::istringstream lines(helpText({verb.command}, width, reader));
        for (std::string line; std::getline(lines, line);) {
          if (line.find("heatledger ") != std::string::npos) continue;  // to be typed as it stands
          EXPECT_LE(displayWidth(line), width) << line;
        }
      }
    }
  }
}

TEST(Help, IsTranslated) {
  EXPECT_THAT(general("de"), HasSubstr("Fragen zu einem Plan"));
  EXPECT_THAT(general("de"), Not(HasSubstr("Questions about")));
}
