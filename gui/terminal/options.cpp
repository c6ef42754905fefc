// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/options.hpp"

#include <iterator>
#include <utility>

#include "gui/telling/question.hpp"
#include "gui/telling/translations.hpp"
#include "gui/terminal/kettle_options.hpp"
#include "gui/terminal/overrides.hpp"
#include "gui/terminal/relevance.hpp"
#include "rigs/answers/combinations.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/plans/plan_starts.hpp"

namespace gui {
namespace {

using rigs::Told;

std::string alternatives(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : "|") + word;
  return all;
}

OptionAbout chosen(std::string option, std::vector<std::string> choices, Told about) {
  std::string value = alternatives(choices);
  return {.option = std::move(option),
          .value = std::move(value),
          .about = std::move(about),
          .choices = std::move(choices)};
}
OptionAbout flag(std::string option, Told about) {
  return {.option = std::move(option), .value = {}, .about = std::move(about), .choices = {}};
}

std::vector<std::string> wishWords() {
  std::vector<std::string> all;
  for (const rigs::Wish wish : rigs::kWishes) all.emplace_back(rigs::wishWord(wish));
  return all;
}

void addTarget(std::vector<OptionAbout>& all, Command command) {
  all.push_back({.option = "--to",
                 .value = "FILE",
                 .about = command == Command::Sheet
                              ? Told(TOLD("Terminal",
                                          "a page for paper and phone (.html) in place of text; "
                                          "replaces what this program wrote of the same kind, and "
                                          "no other file"))
                              : Told(TOLD("Terminal",
                                          "what to write; replaces what this program wrote of the "
                                          "same kind, and no other file")),
                 .choices = {},
                 .isFile = true});
  all.push_back(flag(
      "--force",
      Told(TOLD("Terminal", "replaces whatever stands in --to FILE, but never the plan itself"))));
}

// What is supposed, wished for and tried out on a page.
void addWishes(std::vector<OptionAbout>& all, Command command) {
  if (command == Command::Night || command == Command::Picture)
    all.push_back(flag("--suppose-jacket",
                       Told(TOLD("Terminal",
                                 "how far it cools with the plan's jacket to compare, too; and "
                                 "without the one that a rig has"))));
  if (command == Command::Helps || command == Command::Picture)
    all.push_back({.option = "--wish",
                   .value = "WISH",
                   .about = Told(TOLD("Terminal",
                                      "%1: to roll, to be ready sooner, warmer in the morning, "
                                      "cheaper, or on a circuit that fits; what lacks most if not "
                                      "given"),
                                 rigs::Verbatim{alternatives(wishWords())}),
                   .choices = wishWords()});
  if (command == Command::Helps)
    all.push_back({.option = "--together",
                   .value = "N|all",
                   .about = Told(TOLD("Terminal",
                                      "at most so many changes at once; %1 if not given. Their "
                                      "number of ways is told, and Ctrl-C keeps what was found"),
                                 rigs::Count{rigs::kUsualTogether}),
                   .choices = {}});
}

// Forms, and what of a page is shown.
void addForms(std::vector<OptionAbout>& all, Command command) {
  if (!mayWrite(command) && command != Command::New && command != Command::Schema)
    all.push_back(flag(
        "--json", Told(TOLD("Terminal", "for programs; always in SI, every key names its unit"))));
  if (hasTable(command))
    all.push_back(flag("--csv", Told(TOLD("Terminal", "the tables, for spreadsheets"))));
  if (isAboutOneRig(command))
    all.push_back({.option = "--rig",
                   .value = "N",
                   .about = Told(TOLD("Terminal", "one rig alone, by number or letter: 2 or b")),
                   .choices = {}});
  if (isExplained(command))
    all.push_back(flag("--explain", Told(TOLD("Terminal",
                                              "how the figures were computed, too: law, source "
                                              "and how sure"))));
  if (command == Command::Answer)
    all.push_back(flag("--brief", Told(TOLD("Terminal", "one verdict a rig, and no more"))));
  if (command == Command::Circuit)
    all.push_back(
        flag("--every-rule",
             Told(TOLD("Terminal", "the rules that are kept too, each with clause and source"))));
  addWishes(all, command);
  if (command == Command::Picture)
    all.push_back(chosen("--over", {"thickness", "power"},
                         Told(TOLD("Terminal", "what a jacket is drawn against"))));
}

}  // namespace

std::vector<OptionAbout> shownOptions(const Verb& verb) {
  std::vector<OptionAbout> all;
  if (verb.command != Command::Sweep)
    all.push_back(chosen("--units", {"SI", "US"},
                         Told(TOLD("Terminal",
                                   "all numbers at once, SI if not given; units of choice stand "
                                   "behind it, as in SI,F,gal"))));
  all.push_back(chosen("--language", telling::languageCodes(),
                       Told(TOLD("Terminal", "that of your messages if not given"))));
  if (mayWrite(verb.command)) addTarget(all, verb.command);
  addForms(all, verb.command);
  all.push_back({.option = "--width",
                 .value = "N",
                 .about = Told(TOLD("Terminal",
                                    "columns of text; the terminal's, COLUMNS, or 80, if not "
                                    "given")),
                 .choices = {}});
  return all;
}

std::vector<OptionAbout> startOptions(const Verb& verb) {
  if (verb.command != Command::New) return {};
  std::vector<std::string> names = rigs::planStartNames();
  rigs::List told{.items = {}, .joint = rigs::Joint::Or};
  for (const std::string& name : names) told.items.emplace_back(rigs::Verbatim{name});
  return {{.option = "--like",
           .value = "NAME",
           .about = Told(TOLD("Terminal", "another plan than the example: %1"), std::move(told)),
           .choices = std::move(names)}};
}

std::vector<OptionAbout> variedOptions(const Verb& verb) {
  if (verb.command != Command::Sweep) return {};
  std::vector<OptionAbout> all(3);
  all[0].option = "--vary";
  all[0].value = "KEY=VALUES";
  all[0].about = Told(
      TOLD("Terminal",
           "a key of the plan, and its values between \", \" or \"; \"; a range is \"1 kW..5 kW in "
           "9\" or \"1 kW..5 kW by 500 W\"; once or several times"));
  all[0].mayRepeat = true;
  all[1].option = "--figures";
  all[1].value = "NAMES";
  all[1].about = Told(TOLD("Terminal",
                           "which columns: places of a rig in what --json of \"answer\" writes, "
                           "such as \"cost, day/duration_s\""));
  all[2].option = "--at-most";
  all[2].value = "N";
  all[2].about = Told(TOLD("Terminal", "combinations that may be begun; %1 if not given"),
                      rigs::Count{static_cast<long long>(rigs::kMostUnasked)});
  return all;
}

OptionAbout valued(std::string option, std::string value, Told about) {
  return {.option = std::move(option),
          .value = std::move(value),
          .about = std::move(about),
          .choices = {}};
}

// Which columns of a file mean what.
void addColumns(std::vector<OptionAbout>& all) {
  all.push_back(
      valued("--time", "COLUMN",
             Told(TOLD("Terminal", "the column of the time, by its head or its number"))));
  all.push_back(valued("--temperature", "COLUMN",
                       Told(TOLD("Terminal", "the column of the wort's temperature"))));
  all.push_back(valued("--read-in", "UNIT",
                       Told(TOLD("Terminal", "what its bare numbers are in: C, F or K"))));
  all.push_back(chosen("--since-start", {"s", "min", "h"},
                       Told(TOLD("Terminal", "what times without a clock count"))));
  all.push_back(valued(
      "--separator", "SIGN",
      Told(TOLD("Terminal", "what stands between columns: comma, semicolon, tab or blank"))));
  all.back().choices = {"comma", "semicolon", "tab", "blank"};
}

std::vector<OptionAbout> readingOptions(const Verb& verb) {
  const bool follows = verb.command == Command::Follow;
  if (verb.command != Command::Learn && !follows) return {};
  std::vector<OptionAbout> all{
      valued(
          "--readings", "FILE",
          Told(TOLD("Terminal",
                    "what was read: lines such as \"21:05 66.3 °C\", or the CSV of a logger; - for "
                    "standard input"))),
      flag("--leave-out",
           Told(TOLD("Terminal", "leaves out lines that are wrong, instead of stopping there")))};
  all.front().isFile = true;
  addColumns(all);
  all.push_back(
      flag("--checked",
           Told(TOLD("Terminal", "the thermometer was held into ice or boiling water before"))));
  all.push_back(
      flag("--unstirred", Told(TOLD("Terminal", "nobody stirred before reading while it heated"))));
  if (follows) {
    all.push_back(flag("--once", Told(TOLD("Terminal",
                                           "tells how it stands now and ends, instead of watching "
                                           "the file and what you type"))));
    all.push_back(valued("--now", "CLOCK",
                         Told(TOLD("Terminal", "another clock than that of this machine: 21:30"))));
  } else {
    all.push_back(flag("--keep", Told(TOLD("Terminal",
                                           "writes what is learned of the kettle into the plan, "
                                           "for every later day"))));
  }
  return all;
}

std::vector<OptionAbout> whatIfOptions(const Verb& verb) {
  std::vector<OptionAbout> all;
  // What a sweep supposes is a key of the plan, too.
  if (!isAboutAPlan(verb.command) || verb.command == Command::Sweep) return all;
  for (const OverrideKind& kind : overrideKinds()) {
    const bool anyQuestion = verb.command == Command::Picture;
    if (!anyQuestion && kind.option != "--alone" && !dependsOn(kind.option, verb.command, {}))
      continue;
    all.push_back({.option = std::string(kind.option),
                   .value = std::string(kind.value),
                   .about = Told(TOLD("Terminal", "%1: \"%2\""), Told(kind.about),
                                 rigs::Verbatim{std::string(kind.example)}),
                   .choices = {},
                   .isFile = kind.value == "FILE"});
  }
  return all;
}

std::vector<OptionAbout> kettleOptionsOf(const Verb& verb) {
  std::vector<OptionAbout> all;
  if (verb.command != Command::New) return all;
  for (KettleOption& one : kettleOptions())
    all.push_back({.option = std::string(one.option),
                   .value = std::string(one.value),
                   .about = std::move(one.about),
                   .choices = {}});
  return all;
}

std::vector<OptionAbout> optionsOf(const Verb& verb) {
  std::vector<OptionAbout> all = startOptions(verb);
  for (std::vector<OptionAbout> group :
       {kettleOptionsOf(verb), variedOptions(verb), readingOptions(verb), shownOptions(verb),
        whatIfOptions(verb)})
    all.insert(all.end(), std::move_iterator(group.begin()), std::move_iterator(group.end()));
  return all;
}

std::vector<std::string> subjectsOf(Command command) {
  switch (command) {
    case Command::Picture: {
      std::vector<std::string> all;
      for (const telling::Question question : telling::allQuestions())
        all.emplace_back(telling::identifierOf(question));
      return all;
    }
    case Command::List:
      return {"materials", "supplies", "rigs", "tariffs"};
    case Command::Schema:
      return {"plan", "rules", "tariff", "catalogue", "result"};
    default:
      return {};
  }
}

}  // namespace gui
