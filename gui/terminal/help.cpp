// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/help.hpp"

#include <string_view>

#include "gui/terminal/options.hpp"
#include "gui/terminal/text_layout.hpp"
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

void addOptions(Help& help, rigs::Template<0> heading, const std::vector<OptionAbout>& options) {
  if (options.empty()) return;
  help.heading(heading);
  for (const OptionAbout& one : options)
    help.line(one.value.empty() ? one.option : one.option + ' ' + one.value, one.about);
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
  addOptions(help, TOLD("Terminal", "What to start from"), startOptions(verb));
  addOptions(help, TOLD("Terminal", "Or a kettle of your own; what is left out is assumed"),
             kettleOptionsOf(verb));
  addOptions(help, TOLD("Terminal", "What is varied"), variedOptions(verb));
  addOptions(help, TOLD("Terminal", "What was read"), readingOptions(verb));
  addOptions(help, TOLD("Terminal", "How it is shown"), shownOptions(verb));
  if (verb.command == Command::Picture) addQuestions(help);
  addOptions(help, TOLD("Terminal", "What if? (changes the answer, not the file)"),
             whatIfOptions(verb));
  return help.take();
}

}  // namespace

std::string helpText(const HelpAsked& asked, std::size_t width, const rigs::Reader& reader) {
  return asked.about ? helpFor(verbOf(*asked.about), width, reader) : generalHelp(width, reader);
}

}  // namespace gui
