// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that includes CLI11: it takes long to compile.
#include "gui/commands.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <array>
#include <map>
#include <string_view>

#include "gui/text_layout.hpp"
#include "rigs/quantity_text.hpp"
#include "version.hpp"

namespace gui {
namespace {

struct Verb {
  Question question;
  const char* name;
  const char* file;  // what its argument is called; "" for none
  const char* about;
  std::array<const char*, 3> examples;
};

constexpr std::array kVerbs{
    Verb{Question::Answer,
         "answer",
         "[PLAN]",
         "everything, all rigs side by side",
         {"heatledger answer", "heatledger answer my-plan.json --units US",
          "heatledger answer my-plan.json --supply-voltage \"208 V\""}},
    Verb{Question::Day,
         "day",
         "[PLAN]",
         "the day stage by stage, and where the heat went",
         {"heatledger day my-plan.json", "heatledger day my-plan.json --csv > day.csv", nullptr}},
    Verb{Question::Size,
         "size",
         "[PLAN]",
         "the element, the circuit and the batch that fit each other",
         {"heatledger size my-plan.json --within \"45 min\"",
          "heatledger size my-plan.json --boil-off \"8 %/h\" --supply-voltage \"208 V\"", nullptr}},
    Verb{Question::Insulate,
         "insulate",
         "[PLAN]",
         "what a jacket saves, and whether it is worth it",
         {"heatledger insulate my-plan.json", "heatledger insulate my-plan.json --alone \"10 h\"",
          nullptr}},
    Verb{Question::Boil,
         "boil",
         "[PLAN]",
         "how hard it boils, and what is left afterwards",
         {"heatledger boil my-plan.json", "heatledger boil my-plan.json --altitude \"1600 m\"",
          nullptr}},
    Verb{Question::Cost,
         "cost",
         "[PLAN]",
         "energy and money, by stage, batch and volume",
         {"heatledger cost my-plan.json", "heatledger cost my-plan.json --json", nullptr}},
    Verb{Question::Check,
         "check",
         "PLAN",
         "what is wrong with a plan, and nothing else",
         {"heatledger check my-plan.json", nullptr, nullptr}},
    Verb{Question::New,
         "new",
         "FILE",
         "writes a plan to start from; never over a file that exists",
         {"heatledger new my-plan.json", nullptr, nullptr}},
    Verb{Question::List,
         "list",
         "SUBJECT",
         "what a plan may name: materials, supplies or rigs, with sources",
         {"heatledger list materials", "heatledger list supplies", "heatledger list rigs"}},
    Verb{Question::Schema,
         "schema",
         "",
         "the JSON Schema of plans, for editors that know how to use it",
         {"heatledger schema > plan.schema.json", nullptr, nullptr}}};

bool isAboutAPlan(Question question) {
  return question != Question::New && question != Question::List && question != Question::Schema;
}

// A name and what it is, in two columns.
class TwoColumns {
 public:
  TwoColumns(std::size_t width, std::size_t first) : width_(width), first_(first) {}
  void heading(std::string_view text) { text_ += fmt::format("\n{}\n", text); }
  void line(std::string_view name, std::string_view about) {
    const std::vector<std::string> lines = wrapped(about, width_ - first_ - 4);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      text_ += "  " + padded(i == 0 ? name : "", first_) + "  " + lines[i] + '\n';
    }
  }
  void plain(std::string_view text) { text_ += fmt::format("  {}\n", text); }
  std::string take() { return std::move(text_); }

 private:
  std::size_t width_, first_;
  std::string text_;
};

std::string generalHelp(std::size_t width) {
  TwoColumns help(width, 10);
  help.heading("Type first");
  help.plain("heatledger answer                  the bundled example");
  help.plain("heatledger new my-plan.json        your own copy of it, to edit");
  help.plain("heatledger answer my-plan.json     your own brew day");
  help.heading("Questions about a plan");
  for (const Verb& verb : kVerbs) {
    if (isAboutAPlan(verb.question)) help.line(verb.name, verb.about);
  }
  help.heading("Plans and what they may name");
  for (const Verb& verb : kVerbs) {
    if (!isAboutAPlan(verb.question)) help.line(verb.name, verb.about);
  }
  help.heading("More");
  help.plain("heatledger COMMAND --help          its options, with examples");
  help.plain("heatledger --version");
  return fmt::format("heatledger {}: where the heat of an electric brew day goes\n{}", kVersion,
                     help.take());
}

std::string helpFor(const Verb& verb, std::size_t width) {
  TwoColumns help(width, 28);
  help.heading("Examples");
  for (const char* example : verb.examples) {
    if (example) help.plain(example);
  }
  help.heading("How it is shown");
  help.line("--units SI|US", "all numbers at once; SI if not given");
  if (verb.question != Question::New && verb.question != Question::Schema) {
    help.line("--json", "for programs; always in SI, every key names its unit");
    if (verb.question != Question::Check) help.line("--csv", "the tables, for spreadsheets");
  }
  help.line("--width N", "columns of text; the terminal's, or 80, if not given");
  if (isAboutAPlan(verb.question)) {
    help.heading("What if? (changes the answer, not the file)");
    for (const OverrideKind& kind : overrideKinds()) {
      help.line(fmt::format("{} {}", kind.option, kind.value),
                fmt::format("{}: \"{}\"", kind.about, kind.example));
    }
  }
  const std::string file = *verb.file == '\0' ? "" : fmt::format(" {}", verb.file);
  std::string text = fmt::format("heatledger {}{}\n\n", verb.name, file);
  for (const std::string& line : wrapped(verb.about, width - 2)) text += "  " + line + '\n';
  if (std::string_view(verb.file) == "[PLAN]") {
    text += "  Without a plan: the bundled example. \"-\" reads the plan from standard input.\n";
  }
  return text + help.take();
}

CommandLine complain(std::string text) {
  return {.request = {}, .output = {}, .complaint = std::move(text), .exitCode = 2};
}

// CLI11 stops at its first problem; its words are for programmers.
std::string whatWasWrong(const CLI::ParseError& error) {
  std::string text = error.what();
  for (char& c : text) {
    if (c == '\n') c = ' ';
  }
  return plainText(text);
}

}  // namespace

CommandLine readCommandLine(int argc, const char* const* argv, std::size_t width) {
  if (argc < 2)
    return {.request = {}, .output = generalHelp(width), .complaint = {}, .exitCode = 0};
  CLI::App app("", "heatledger");
  app.set_help_flag();
  bool help = false;
  bool version = false;
  bool json = false;
  bool csv = false;
  Request request;
  app.add_flag("-h,--help", help);
  app.add_flag("--version", version);
  app.add_flag("--json", json);
  app.add_flag("--csv", csv);
  app.add_option("--units", request.units);
  app.add_option("--width", request.width);
  std::map<std::string_view, std::string> texts;
  for (const OverrideKind& kind : overrideKinds()) {
    app.add_option(std::string(kind.option), texts[kind.option]);
  }
  std::map<Question, CLI::App*> commands;
  for (const Verb& verb : kVerbs) {
    CLI::App* command = app.add_subcommand(verb.name, verb.about);
    command->set_help_flag();
    command->fallthrough();
    if (verb.question == Question::List)
      command->add_option("SUBJECT", request.subject);
    else if (verb.question != Question::Schema)
      command->add_option("FILE", request.file);
    commands[verb.question] = command;
  }
  app.require_subcommand(0, 1);

  const char* tryHelp = "\"heatledger --help\" shows the commands.";
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return complain(fmt::format("heatledger: {}. {}", whatWasWrong(error), tryHelp));
  }
  if (version) {
    return {.request = {}, .output = fmt::format("heatledger {}\n", kVersion), .complaint = {}};
  }
  const Verb* chosen = nullptr;
  for (const Verb& verb : kVerbs) {
    if (commands[verb.question]->parsed()) chosen = &verb;
  }
  if (help) {
    return {.request = {},
            .output = chosen ? helpFor(*chosen, width) : generalHelp(width),
            .complaint = {}};
  }
  if (!chosen) return complain(fmt::format("heatledger: no command was given. {}", tryHelp));

  request.question = chosen->question;
  request.form = json ? Form::Json : csv ? Form::Csv : Form::Text;
  for (const OverrideKind& kind : overrideKinds()) {
    if (app.count(std::string(kind.option)) > 0) {
      request.overrides.push_back({std::string(kind.option), texts[kind.option]});
    }
  }
  std::string wrong;
  const auto add = [&](const std::string& sentence) {
    wrong += (wrong.empty() ? "heatledger: " : "\nheatledger: ") + sentence;
  };
  if (json && csv) add("--json and --csv exclude each other.");
  const bool hasTable = isAboutAPlan(request.question) || request.question == Question::List;
  if (csv && (!hasTable || request.question == Question::Check)) {
    add(fmt::format("--csv: \"{}\" has no table.", chosen->name));
  }
  if (!isAboutAPlan(request.question) && !request.overrides.empty()) {
    add(fmt::format("{}: \"{}\" is not about a plan.", request.overrides.front().option,
                    chosen->name));
  }
  if (request.file.empty() &&
      (request.question == Question::New || request.question == Question::Check)) {
    add(
        fmt::format("\"{0}\" needs the name of a file, for example \"heatledger {0} "
                    "my-plan.json\".",
                    chosen->name));
  }
  if (!wrong.empty()) return complain(wrong);
  return {.request = std::move(request), .output = {}, .complaint = {}};
}

}  // namespace gui
