// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that includes CLI11: it takes long to compile.
#include "gui/terminal/commands.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <array>
#include <map>
#include <string_view>

#include "gui/terminal/desktop.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "version.hpp"

namespace gui {
namespace {

struct Verb {
  Command command;
  const char* name;
  const char* file;  // what its argument is called; "" for none
  const char* about;
  std::array<const char*, 3> examples;
};

constexpr std::array kVerbs{
    Verb{Command::Answer,
         "answer",
         "[PLAN]",
         "everything, all rigs side by side",
         {"heatledger answer", "heatledger answer my-plan.json --units US",
          "heatledger answer my-plan.json --supply-voltage \"208 V\""}},
    Verb{Command::Day,
         "day",
         "[PLAN]",
         "the day stage by stage, and where the heat went",
         {"heatledger day my-plan.json", "heatledger day my-plan.json --csv > day.csv", nullptr}},
    Verb{Command::Size,
         "size",
         "[PLAN]",
         "the element, the circuit and the batch that fit each other",
         {"heatledger size my-plan.json --within \"45 min\"",
          "heatledger size my-plan.json --boil-off \"8 %/h\" --supply-voltage \"208 V\"", nullptr}},
    Verb{Command::Insulate,
         "insulate",
         "[PLAN]",
         "what a jacket saves, and whether it is worth it",
         {"heatledger insulate my-plan.json", "heatledger insulate my-plan.json --alone \"10 h\"",
          nullptr}},
    Verb{Command::Boil,
         "boil",
         "[PLAN]",
         "how hard it boils, and what is left afterwards",
         {"heatledger boil my-plan.json", "heatledger boil my-plan.json --altitude \"1600 m\"",
          nullptr}},
    Verb{Command::Cost,
         "cost",
         "[PLAN]",
         "energy and money, by stage, batch and volume",
         {"heatledger cost my-plan.json", "heatledger cost my-plan.json --json", nullptr}},
    Verb{Command::Circuit,
         "circuit",
         "[PLAN]",
         "whether the circuit carries it, rule by rule, with the clauses",
         {"heatledger circuit my-plan.json", "heatledger circuit my-plan.json --region Canada",
          "heatledger circuit my-plan.json --circuit \"20 A\""}},
    Verb{Command::Room,
         "room",
         "[PLAN]",
         "vapour, heat and humidity in the room, and the airflow that helps",
         {"heatledger room my-plan.json", "heatledger room my-plan.json --humidity \"60 %\"",
          nullptr}},
    Verb{Command::Picture,
         "picture",
         "QUESTION [PLAN]",
         "one question as a picture (.svg, .png) or as the numbers behind it (.csv, .json)",
         {"heatledger picture how-long my-plan.json --to day.svg",
          "heatledger picture where-heat my-plan.json --rig 2 --to heat.png",
          "heatledger picture worth-jacket my-plan.json --over power --to jacket.csv"}},
    Verb{Command::Report,
         "report",
         "[PLAN]",
         "all questions with pictures and tables, as a PDF document",
         {"heatledger report my-plan.json --to day.pdf",
          "heatledger report my-plan.json --language de --units US --to tag.pdf", nullptr}},
    Verb{Command::Check,
         "check",
         "PLAN",
         "what is wrong with a plan, and nothing else",
         {"heatledger check my-plan.json", nullptr, nullptr}},
    Verb{Command::New,
         "new",
         "FILE",
         "writes a plan to start from; never over a file that exists",
         {"heatledger new my-plan.json", nullptr, nullptr}},
    Verb{Command::List,
         "list",
         "SUBJECT",
         "what a plan may name: materials, supplies, rigs or tariffs, with sources",
         {"heatledger list materials", "heatledger list supplies", "heatledger list tariffs"}},
    Verb{Command::Schema,
         "schema",
         "[SUBJECT]",
         "the JSON Schema of plans, rules, tariffs, the catalogue or results, for editors and "
         "validators",
         {"heatledger schema > plan.schema.json", "heatledger schema rules > rules.schema.json",
          "heatledger schema tariff > tariff.schema.json"}}};

bool isAboutAPlan(Command command) {
  return command != Command::New && command != Command::List && command != Command::Schema;
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
    if (isAboutAPlan(verb.command)) help.line(verb.name, verb.about);
  }
  help.heading("Plans and what they may name");
  for (const Verb& verb : kVerbs) {
    if (!isAboutAPlan(verb.command)) help.line(verb.name, verb.about);
  }
  help.heading("More");
  help.plain("heatledger help COMMAND            its options, with examples");
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
  if (isDrawn(verb.command)) {
    help.line("--to FILE", "what to write; a file of that name is replaced");
    help.line("--language en|de", "English if not given");
  } else if (verb.command != Command::New && verb.command != Command::Schema) {
    help.line("--json", "for programs; always in SI, every key names its unit");
    if (verb.command != Command::Check) help.line("--csv", "the tables, for spreadsheets");
  }
  if (verb.command == Command::Circuit)
    help.line("--every-rule", "the rules that are kept too, each with clause and source");
  help.line("--width N", "columns of text; the terminal's, COLUMNS, or 80, if not given");
  if (verb.command == Command::Picture) {
    help.heading("Questions");
    help.line("how-long", "how long does it take?");
    help.line("where-heat", "where does the heat go? --rig N: over time in rig N alone");
    help.line("boils-enough", "does it boil hard enough?");
    help.line("worth-jacket", "is insulation worth it? --over thickness|power, --rig N");
    help.line("which-element", "what element do I need?");
    help.line("circuit", "can the circuit carry it?");
    help.line("what-cost", "what does it cost?");
    help.line("how-far-cools", "how far does it cool?");
    help.line("room", "what happens to the room?");
  }
  if (isAboutAPlan(verb.command)) {
    help.heading("What if? (changes the answer, not the file)");
    for (const OverrideKind& kind : overrideKinds()) {
      help.line(fmt::format("{} {}", kind.option, kind.value),
                fmt::format("{}: \"{}\"", kind.about, kind.example));
    }
  }
  const std::string file = *verb.file == '\0' ? "" : fmt::format(" {}", verb.file);
  std::string text = fmt::format("heatledger {}{}\n\n", verb.name, file);
  for (const std::string& line : wrapped(verb.about, width - 2)) text += "  " + line + '\n';
  if (std::string_view(verb.file).ends_with("[PLAN]")) {
    text += "  Without a plan: the bundled example. \"-\" reads the plan from standard input.\n";
  }
  return text + help.take();
}

CommandLine complain(std::string text) {
  return {.request = {}, .output = {}, .complaint = std::move(text), .exitCode = 2};
}

// CLI11's words are for programmers; what is left to it is an option without its value.
std::string whatWasWrong(const CLI::ParseError& error) {
  const std::string text = plainText(error.what());
  if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) && text.rfind("--", 0) == 0) {
    return fmt::format("{} needs a value after it", text.substr(0, text.find(':')));
  }
  return text;
}

// Several sentences under one name.
class Complaint {
 public:
  explicit Complaint(std::size_t width) : width_(width) {}
  void add(const std::string& sentence) { text_ += complaintText(sentence, width_); }
  bool empty() const { return text_.empty(); }
  const std::string& text() const { return text_; }

 private:
  std::size_t width_;
  std::string text_;
};

// "help", or "help day": the same as --help.
std::optional<CommandLine> helpAsked(int argc, const char* const* argv, std::size_t width) {
  if (argc < 2 || argc > 3 || std::string_view(argv[1]) != "help") return std::nullopt;
  if (argc == 2) return CommandLine{.request = {}, .output = generalHelp(width), .complaint = {}};
  for (const Verb& verb : kVerbs) {
    if (std::string_view(argv[2]) == verb.name)
      return CommandLine{.request = {}, .output = helpFor(verb, width), .complaint = {}};
  }
  return std::nullopt;
}

}  // namespace

CommandLine readCommandLine(int argc, const char* const* argv, std::size_t width) {
  if (argc < 2)
    return {.request = {}, .output = generalHelp(width), .complaint = {}, .exitCode = 0};
  if (const auto asked = helpAsked(argc, argv, width)) return *asked;
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
  app.add_flag("--every-rule", request.everyRule);
  app.add_option("--units", request.units);
  app.add_option("--width", request.width);
  app.add_option("--to", request.to);
  app.add_option("--language", request.language);
  app.add_option("--rig", request.rig);
  app.add_option("--over", request.over);
  std::map<std::string_view, std::string> texts;
  for (const OverrideKind& kind : overrideKinds()) {
    app.add_option(std::string(kind.option), texts[kind.option]);
  }
  std::map<Command, CLI::App*> commands;
  for (const Verb& verb : kVerbs) {
    CLI::App* command = app.add_subcommand(verb.name, verb.about);
    command->set_help_flag();
    command->fallthrough();
    command->allow_extras();
    if (verb.command == Command::List || verb.command == Command::Picture ||
        verb.command == Command::Schema)
      command->add_option("SUBJECT", request.subject);
    if (verb.command != Command::List && verb.command != Command::Schema)
      command->add_option("FILE", request.file);
    commands[verb.command] = command;
  }
  app.require_subcommand(0, 1);

  app.allow_extras();  // so that they can be told of all at once
  Complaint wrong(width);
  const auto tryHelp = [](const std::string& command) {
    return command.empty() ? std::string("\"heatledger --help\" shows the commands.")
                           : fmt::format("\"heatledger {} --help\" shows its options.", command);
  };
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    wrong.add(fmt::format("{}. {}", whatWasWrong(error), tryHelp({})));
    return complain(wrong.text());
  }
  if (version) {
    return {.request = {}, .output = fmt::format("heatledger {}\n", kVersion), .complaint = {}};
  }
  const Verb* chosen = nullptr;
  for (const Verb& verb : kVerbs) {
    if (commands[verb.command]->parsed()) chosen = &verb;
  }
  if (help) {
    return {.request = {},
            .output = chosen ? helpFor(*chosen, width) : generalHelp(width),
            .complaint = {}};
  }
  std::vector<std::string> unknown = app.remaining(true);
  if (!chosen) {
    if (unknown.empty()) {
      wrong.add("no command was given. " + tryHelp({}));
    } else {
      // "help brew" is about brew.
      const bool asksHelp = unknown.size() > 1 && unknown.front() == "help";
      const std::string first = rigs::quotedText(unknown[asksHelp ? 1 : 0]);
      const bool plan = unknown.front().ends_with(".json");
      wrong.add(plan ? fmt::format("{} is no command; for a plan, type: heatledger answer {}",
                                   first, plainText(unknown.front()))
                     : fmt::format("{} is no command. {}", first, tryHelp({})));
    }
    return complain(wrong.text());
  }
  for (const std::string& word : unknown) {
    wrong.add(fmt::format("{} is nothing that \"{}\" knows. {}", rigs::quotedText(word),
                          chosen->name, tryHelp(chosen->name)));
  }
  request.command = chosen->command;
  request.form = json ? Form::Json : csv ? Form::Csv : Form::Text;
  for (const OverrideKind& kind : overrideKinds()) {
    if (app.count(std::string(kind.option)) > 0) {
      request.overrides.push_back({std::string(kind.option), texts[kind.option]});
    }
  }
  if (json && csv) wrong.add("--json and --csv exclude each other.");
  const bool hasTable = isAboutAPlan(request.command) || request.command == Command::List;
  const bool drawn = isDrawn(request.command);
  if (csv && !drawn && (!hasTable || request.command == Command::Check)) {
    wrong.add(fmt::format("--csv: \"{}\" has no table.", chosen->name));
  }
  if (drawn && (json || csv)) {
    wrong.add(fmt::format("{}: \"{}\" writes what the ending of --to FILE names.",
                          json ? "--json" : "--csv", chosen->name));
  }
  for (const char* option : {"--to", "--language", "--rig", "--over"}) {
    if (!drawn && app.count(option) > 0) {
      wrong.add(fmt::format("{}: only \"picture\" and \"report\" know it.", option));
    }
  }
  if (request.everyRule && request.command != Command::Circuit) {
    wrong.add("--every-rule: only \"circuit\" knows it.");
  }
  if (drawn && request.to.empty()) {
    wrong.add(fmt::format("\"{}\" needs the name of a file to write, for example \"--to {}\".",
                          chosen->name,
                          request.command == Command::Report ? "day.pdf" : "day.svg"));
  }
  if (!isAboutAPlan(request.command) && !request.overrides.empty()) {
    wrong.add(fmt::format("{}: \"{}\" is not about a plan.", request.overrides.front().option,
                          chosen->name));
  }
  if (request.file.empty() &&
      (request.command == Command::New || request.command == Command::Check)) {
    wrong.add(
        fmt::format("\"{0}\" needs the name of a file, for example \"heatledger {0} "
                    "my-plan.json\".",
                    chosen->name));
  }
  if (!wrong.empty()) return complain(wrong.text());
  return {.request = std::move(request), .output = {}, .complaint = {}};
}

}  // namespace gui
