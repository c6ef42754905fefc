// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/help.hpp"

#include <string_view>

#include "gui/terminal/relevance.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "version.hpp"

namespace gui {
namespace {

using rigs::Told;

// Headings, examples as they are typed, and names with what they are, in two columns.
class Help {
 public:
  Help(std::size_t width, std::size_t names, const rigs::Reader& reader)
      : width_(width), names_(names), reader_(reader) {}

  void say(const Told& text, std::string_view indent = "  ") {
    for (const std::string& line : wrapped(rigs::tell(text, reader_), width_ - indent.size()))
      text_ += std::string(indent) + line + '\n';
  }
  void heading(rigs::Template<0> text) { text_ += '\n' + rigs::tell(Told(text), reader_) + '\n'; }
  void line(std::string_view name, const Told& about) {
    const std::vector<std::string> lines = wrapped(rigs::tell(about, reader_), width_ - names_ - 4);
    for (std::size_t i = 0; i < lines.size(); ++i)
      text_ += "  " + padded(i == 0 ? name : "", names_) + "  " + lines[i] + '\n';
  }
  void line(std::string_view name, rigs::Template<0> about) { line(name, Told(about)); }
  void typed(std::string_view words) { text_ += "  " + std::string(words) + '\n'; }
  void typed(std::string_view words, rigs::Template<0> about) {
    constexpr std::size_t kWidth = 35;
    typed(padded(words, kWidth) + rigs::tell(Told(about), reader_));
  }
  void gap() { text_ += '\n'; }
  void title(std::string_view text) { text_ += std::string(text) + '\n'; }
  std::string take() { return std::move(text_); }

 private:
  std::size_t width_, names_;
  const rigs::Reader& reader_;
  std::string text_;
};

void listVerbs(Help& help, bool aboutAPlan) {
  for (const Verb& verb : verbs())
    if (isAboutAPlan(verb.command) == aboutAPlan) help.line(verb.name, verb.about);
}

std::string generalHelp(std::size_t width, const rigs::Reader& reader) {
  Help help(width, 10, reader);
  help.title(rigs::tell(
      Told(TOLD("Terminal", "heatledger %1: where the heat of an electric brew day goes"),
           rigs::Verbatim{std::string(kVersion)}),
      reader));
  help.heading(TOLD("Terminal", "Type first"));
  help.typed("heatledger answer", TOLD("Terminal", "the bundled example"));
  help.typed("heatledger new my-plan.json", TOLD("Terminal", "your own copy of it, to edit"));
  help.typed("heatledger answer my-plan.json", TOLD("Terminal", "your own brew day"));
  help.heading(TOLD("Terminal", "Questions about a plan"));
  listVerbs(help, true);
  help.heading(TOLD("Terminal", "Plans and what they may name"));
  listVerbs(help, false);
  help.heading(TOLD("Terminal", "More"));
  help.typed("heatledger help COMMAND", TOLD("Terminal", "its options, with examples"));
  help.typed("heatledger --version");
  return help.take();
}

void addShown(Help& help, const Verb& verb) {
  const bool drawn = isDrawn(verb.command);
  help.heading(TOLD("Terminal", "How it is shown"));
  help.line("--units SI|US", TOLD("Terminal", "all numbers at once; SI if not given"));
  help.line("--language en|de", TOLD("Terminal", "that of your messages if not given"));
  if (drawn) {
    help.line("--to FILE", TOLD("Terminal",
                                "what to write; replaces what this program wrote of the same kind, "
                                "and no other file"));
    help.line("--force",
              TOLD("Terminal", "replaces whatever stands in --to FILE, but never the plan itself"));
  }
  if (!drawn && verb.command != Command::New && verb.command != Command::Schema)
    help.line("--json", TOLD("Terminal", "for programs; always in SI, every key names its unit"));
  if (hasTable(verb.command)) help.line("--csv", TOLD("Terminal", "the tables, for spreadsheets"));
  if (isAboutAPlan(verb.command) && verb.command != Command::Check &&
      verb.command != Command::Report)
    help.line("--rig N", TOLD("Terminal", "one rig alone, by number or letter: 2 or b"));
  if (verb.command == Command::Answer)
    help.line("--brief", TOLD("Terminal", "one verdict a rig, and no more"));
  if (verb.command == Command::Circuit)
    help.line("--every-rule",
              TOLD("Terminal", "the rules that are kept too, each with clause and source"));
  if (verb.command == Command::Night || verb.command == Command::Picture)
    help.line("--suppose-jacket",
              TOLD("Terminal",
                   "how far it cools with the plan's jacket to compare, too; and without the one "
                   "that a rig has"));
  help.line("--width N",
            TOLD("Terminal", "columns of text; the terminal's, COLUMNS, or 80, if not given"));
}

void addStarts(Help& help) {
  rigs::List names{.items = {}, .joint = rigs::Joint::Or};
  for (std::string& name : rigs::planStartNames())
    names.items.emplace_back(rigs::Verbatim{std::move(name)});
  help.heading(TOLD("Terminal", "What to start from"));
  help.line("--like NAME", Told(TOLD("Terminal", "another plan than the example: %1"), names));
}

void addQuestions(Help& help) {
  help.heading(TOLD("Terminal", "Questions"));
  for (const telling::Question question : telling::allQuestions()) {
    std::vector<Told> about{telling::titleOf(question)};
    if (question == telling::Question::WhereHeat)
      about.push_back(Told(TOLD("Terminal", "--rig N: over time in rig N alone")));
    if (question == telling::Question::WorthJacket)
      about.push_back(Told::just(rigs::Verbatim{"--over thickness|power, --rig N"}));
    help.line(telling::identifierOf(question), rigs::sentences(std::move(about)));
  }
}

void addOverrides(Help& help, const Verb& verb) {
  help.heading(TOLD("Terminal", "What if? (changes the answer, not the file)"));
  for (const OverrideKind& kind : overrideKinds()) {
    const bool anyQuestion = verb.command == Command::Picture;
    if (!anyQuestion && kind.option != "--alone" && !dependsOn(kind.option, verb.command, {}))
      continue;
    help.line(std::string(kind.option) + ' ' + std::string(kind.value),
              Told(TOLD("Terminal", "%1: \"%2\""), Told(kind.about),
                   rigs::Verbatim{std::string(kind.example)}));
  }
}

std::string helpFor(const Verb& verb, std::size_t width, const rigs::Reader& reader) {
  Help help(width, 28, reader);
  help.title("heatledger " + std::string(verb.name) + ' ' + std::string(verb.words));
  help.gap();
  help.say(Told(verb.about));
  if (verb.words.ends_with("[PLAN]"))
    help.say(Told(TOLD("Terminal",
                       "Without a plan: the bundled example. \"-\" reads the plan from standard "
                       "input.")));
  help.heading(TOLD("Terminal", "Examples"));
  for (const std::string_view example : verb.examples) help.typed(example);
  if (verb.command == Command::New) addStarts(help);
  addShown(help, verb);
  if (verb.command == Command::Picture) addQuestions(help);
  if (isAboutAPlan(verb.command)) addOverrides(help, verb);
  return help.take();
}

}  // namespace

std::string helpText(const HelpAsked& asked, std::size_t width, const rigs::Reader& reader) {
  return asked.about ? helpFor(verbOf(*asked.about), width, reader) : generalHelp(width, reader);
}

}  // namespace gui
