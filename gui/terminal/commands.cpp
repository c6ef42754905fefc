// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/commands.hpp"

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <iterator>

#include "gui/telling/drawing.hpp"
#include "gui/telling/translations.hpp"
#include "gui/terminal/kettle_options.hpp"
#include "gui/terminal/options.hpp"
#include "gui/terminal/refusals.hpp"
#include "gui/terminal/relevance.hpp"
#include "gui/terminal/text_layout.hpp"
#include "gui/terminal/typed_words.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/readings/cells.hpp"

namespace gui {
namespace {

using rigs::Quoted;
using rigs::Told;
using rigs::Verbatim;

// Those that any command knows: one that this command does not know is told with its reason.
std::vector<OptionLook> knownOptions() {
  static const std::vector<OptionAbout> kAll = [] {
    std::vector<OptionAbout> all;
    for (const Verb& verb : verbs())
      for (OptionAbout& one : optionsOf(verb))
        if (std::none_of(all.begin(), all.end(),
                         [&](const OptionAbout& known) { return known.option == one.option; }))
          all.push_back(std::move(one));
    return all;
  }();
  std::vector<OptionLook> looks{{"-h", false}, {"--help", false}, {"--version", false}};
  for (const OptionAbout& one : kAll)
    looks.push_back({one.option, !one.value.empty(), one.mayRepeat});
  return looks;
}

// "%1 is no command; perhaps "answer" was meant."
Told unknownCommand(const std::string& typed) {
  std::vector<std::string_view> known{"help"};
  for (const Verb& verb : verbs()) known.push_back(verb.name);
  const std::string_view near = rigs::nearestWord(typed, known);
  if (near.empty()) return Told(TOLD("Terminal", "%1 is no command."), Quoted{typed});
  return Told(TOLD("Terminal", "%1 is no command; perhaps \"%2\" was meant."), Quoted{typed},
              word(near));
}

// The same of an option or a word that a command has no use for.
Told unknownWord(const std::string& typed, const Verb& verb) {
  std::vector<std::string_view> known;
  const std::vector<OptionLook> options = knownOptions();
  if (typed.starts_with('-'))
    for (const OptionLook& one : options) known.push_back(one.name);
  const std::string_view near = rigs::nearestWord(typed.substr(0, typed.find('=')), known);
  if (near.empty())
    return Told(TOLD("Terminal", "%1 is nothing that \"%2\" knows."), Quoted{typed},
                word(verb.name));
  return Told(TOLD("Terminal", "%1 is nothing that \"%2\" knows; perhaps \"%3\" was meant."),
              Quoted{typed}, word(verb.name), word(near));
}

Told noCommand(const TypedWords& typed, bool asksHelp) {
  const std::size_t at = asksHelp ? 1 : 0;  // "help brew" is about brew
  if (typed.words.size() <= at) {
    if (typed.unknown.empty())
      return rigs::sentences({Told(TOLD("Terminal", "no command was given.")), tryHelp(nullptr)});
    return rigs::sentences({unknownCommand(typed.unknown[0]), tryHelp(nullptr)});
  }
  const std::string& first = typed.words[at];
  if (first.ends_with(".json"))
    return Told(TOLD("Terminal", "%1 is no command; for a plan, type: heatledger answer %2"),
                Quoted{first}, word(rigs::shownPath(first)));
  return rigs::sentences({unknownCommand(first), tryHelp(nullptr)});
}

// A command's request on its way, and what is wrong with it: all of it is told at once.
struct Reading {
  const TypedWords& typed;
  const Verb& verb;
  Request request = {};
  std::vector<Told> wrong = {};

  bool is(Command command) const { return verb.command == command; }
  std::string valueOf(std::string_view option) const { return typed.valueOf(option).value_or(""); }
};

void readOptionLooks(Reading& reading) {
  for (const std::string& option : reading.typed.lackingValue)
    reading.wrong.push_back(
        rigs::sentences({Told(TOLD("Terminal", "%1 needs a value after it."), word(option)),
                         tryHelp(&reading.verb)}));
  for (const std::string& option : reading.typed.needingNone)
    reading.wrong.push_back(Told(TOLD("Terminal", "%1 takes no value."), word(option)));
  for (const std::string& option : reading.typed.repeated)
    reading.wrong.push_back(Told(TOLD("Terminal", "%1 was given twice."), word(option)));
}

// Subject, file, and what there is no use for.
void readWords(Reading& reading) {
  std::vector<std::string> words(reading.typed.words.begin() + 1, reading.typed.words.end());
  const auto take = [&words]() -> std::string {
    if (words.empty()) return {};
    const std::string first = words.front();
    words.erase(words.begin());
    return first;
  };
  if (hasSubject(reading.verb.command)) reading.request.subject = take();
  if (!reading.is(Command::List) && !reading.is(Command::Schema)) reading.request.file = take();
  words.insert(words.end(), reading.typed.unknown.begin(), reading.typed.unknown.end());
  for (const std::string& unknown : words)
    reading.wrong.push_back(
        rigs::sentences({unknownWord(unknown, reading.verb), tryHelp(&reading.verb)}));
}

void readForm(Reading& reading) {
  const bool json = reading.typed.has("--json");
  const bool csv = reading.typed.has("--csv");
  reading.request.form = json ? Form::Json : csv ? Form::Csv : Form::Text;
  if (json && csv)
    reading.wrong.push_back(Told(TOLD("Terminal", "--json and --csv exclude each other.")));
  if (reading.is(Command::Sheet)) {
    if (json || csv)
      reading.wrong.push_back(
          Told(TOLD("Terminal", "%1: a sheet is for people; \"answer\" knows it."),
               word(json ? "--json" : "--csv")));
  } else if (isDrawn(reading.verb.command)) {
    if (json || csv)
      reading.wrong.push_back(
          Told(TOLD("Terminal", "%1: \"%2\" writes what the ending of --to FILE names."),
               word(json ? "--json" : "--csv"), word(reading.verb.name)));
  } else if (csv && !hasTable(reading.verb.command)) {
    reading.wrong.push_back(
        Told(TOLD("Terminal", "--csv: \"%1\" has no table."), word(reading.verb.name)));
  }
}

void readShown(Reading& reading) {
  reading.request.units = reading.typed.valueOf("--units").value_or(reading.request.units);
  reading.request.width = reading.valueOf("--width");
  reading.request.explained = reading.typed.has("--explain");
  if (reading.request.explained && !isExplained(reading.verb.command))
    reading.wrong.push_back(
        Told(TOLD("Terminal", "--explain: only the pages of one question know it.")));
  else if (reading.request.explained && reading.request.form != Form::Text)
    reading.wrong.push_back(Told(
        TOLD("Terminal", "--explain: what is for programs or spreadsheets has no words for it.")));
  reading.request.brief = reading.typed.has("--brief");
  if (reading.request.brief && !reading.is(Command::Answer))
    reading.wrong.push_back(Told(TOLD("Terminal", "--brief: only \"answer\" knows it.")));
  else if (reading.request.brief && reading.request.form != Form::Text)
    reading.wrong.push_back(Told(
        TOLD("Terminal", "--brief: what is for programs or spreadsheets is never shortened.")));
  reading.request.everyRule = reading.typed.has("--every-rule");
  if (reading.request.everyRule && !reading.is(Command::Circuit))
    reading.wrong.push_back(Told(TOLD("Terminal", "--every-rule: only \"circuit\" knows it.")));
  reading.request.supposed = reading.typed.has("--suppose-jacket");
  if (reading.request.supposed && !reading.is(Command::Night) && !reading.is(Command::Picture))
    reading.wrong.push_back(
        Told(TOLD("Terminal", "--suppose-jacket: only \"night\" and \"picture\" know it.")));
}

void readOverrides(Reading& reading) {
  for (const OverrideKind& kind : overrideKinds())
    if (const auto text = reading.typed.valueOf(kind.option);
        text && !(reading.is(Command::New) && isKettleOption(kind.option)))
      reading.request.overrides.push_back({std::string(kind.option), *text});
  if (!isAboutAPlan(reading.verb.command) && !reading.request.overrides.empty())
    reading.wrong.push_back(Told(TOLD("Terminal", "%1: \"%2\" is not about a plan."),
                                 word(reading.request.overrides.front().option),
                                 word(reading.verb.name)));
  if (reading.is(Command::Sweep))
    for (const Override& one : reading.request.overrides)
      reading.wrong.push_back(
          Told(TOLD("Terminal",
                    "%1: \"sweep\" takes keys of the plan instead, one value or several: --vary "
                    "\"place/room=16 C\"."),
               word(one.option)));
}

// After the question is known. What depends on the plan is refused once that is read.
void refuseUnused(Reading& reading) {
  if (!isAboutAPlan(reading.verb.command) || reading.is(Command::Sweep)) return;
  for (const Override& one : reading.request.overrides) {
    if (one.option == "--alone" ||
        dependsOn(one.option, reading.verb.command, reading.request.question))
      continue;
    reading.wrong.push_back(
        Told(TOLD("Terminal", "%1: \"%2\" does not depend on it; \"size\" does."), word(one.option),
             word(reading.verb.name)));
  }
}

void readQuestion(Reading& reading) {
  const std::vector<std::string> known = subjectsOf(Command::Picture);
  for (const telling::Question question : telling::allQuestions())
    if (telling::identifierOf(question) == reading.request.subject)
      reading.request.question = question;
  if (!reading.request.question)
    reading.wrong.push_back(onlyAccepted("picture", reading.request.subject, asTold(known)));
}

void readTarget(Reading& reading) {
  reading.request.to = reading.valueOf("--to");
  reading.request.force = reading.typed.has("--force");
  const bool report = reading.is(Command::Report);
  const bool sheet = reading.is(Command::Sheet);
  if (sheet && !reading.typed.has("--to")) return;  // then it is told on the terminal
  if (reading.request.to.empty()) {
    reading.wrong.push_back(
        Told(TOLD("Terminal", "\"%1\" needs the name of a file to write, for example \"--to %2\"."),
             word(reading.verb.name),
             word(report  ? "day.pdf"
                  : sheet ? "sheet.html"
                          : "day.svg")));
    return;
  }
  const auto endings = report  ? telling::reportEndings()
                       : sheet ? telling::sheetEndings()
                               : telling::pictureEndings();
  if (!telling::endsInOneOf(reading.request.to, endings))
    reading.wrong.push_back(
        onlyAccepted("--to", reading.request.to,
                     {Told(TOLD("Terminal", "a name that ends in %1"),
                           rigs::List{{endings.begin(), endings.end()}, rigs::Joint::Or})}));
}

void readRig(Reading& reading) {
  if (!reading.typed.has("--rig")) return;
  reading.request.rig = reading.valueOf("--rig");
  if (reading.request.rig.empty())
    reading.wrong.push_back(Told(TOLD("Terminal", "%1 needs a value after it."), word("--rig")));
  const Command command = reading.verb.command;
  if (!isAboutOneRig(command))
    reading.wrong.push_back(Told(TOLD("Terminal", "--rig: \"%1\" is not about one rig alone."),
                                 word(reading.verb.name)));
  else if (reading.request.form == Form::Json && command != Command::Sweep &&
           command != Command::Learn && command != Command::Follow)
    reading.wrong.push_back(
        Told(TOLD("Terminal",
                  "--rig: --json has every rig, each under its name; --csv can have one alone.")));
}

void readDrawing(Reading& reading) {
  readRig(reading);
  if (!mayWrite(reading.verb.command))
    for (const char* option : {"--to", "--force"})
      if (reading.typed.has(option))
        reading.wrong.push_back(
            Told(TOLD("Terminal", "%1: only \"picture\", \"report\" and \"sheet\" know it."),
                 word(option)));
  if (!isDrawn(reading.verb.command) && reading.typed.has("--over"))
    reading.wrong.push_back(
        Told(TOLD("Terminal", "%1: only \"picture\" and \"report\" know it."), word("--over")));
  if (reading.is(Command::Sheet)) readTarget(reading);
  if (!isDrawn(reading.verb.command)) return;
  if (reading.is(Command::Picture)) readQuestion(reading);
  readTarget(reading);
  const auto over = reading.typed.valueOf("--over").value_or("thickness");
  reading.request.overThickness = over == "thickness";
  if (over != "thickness" && over != "power")
    reading.wrong.push_back(onlyAccepted("--over", over, asTold({"thickness", "power"})));
}

void readSweep(Reading& reading) {
  reading.request.vary = reading.typed.valuesOf("--vary");
  reading.request.figures = reading.typed.valueOf("--figures");
  reading.request.atMost = reading.typed.valueOf("--at-most");
  if (!reading.is(Command::Sweep)) {
    for (const char* option : {"--vary", "--figures", "--at-most"})
      if (reading.typed.has(option))
        reading.wrong.push_back(
            Told(TOLD("Terminal", "%1: only \"sweep\" knows it."), word(option)));
    return;
  }
  if (reading.typed.has("--units"))
    reading.wrong.push_back(Told(TOLD(
        "Terminal", "--units: \"sweep\" writes for programs, in SI; every name has its unit.")));
  if (reading.request.vary.empty() && !reading.typed.has("--vary"))
    reading.wrong.push_back(rigs::sentences(
        {Told(TOLD(
             "Terminal",
             "\"sweep\" needs a key to vary, for example --vary \"batch/boil=45 min, 60 min\".")),
         tryHelp(&reading.verb)}));
}

// Those of two commands, told by whoever does not know them.
void refuseReadings(Reading& reading) {
  const auto knownTo = [](Command command, const std::string& option) {
    const std::vector<OptionAbout> all = readingOptions(verbOf(command));
    return std::any_of(all.begin(), all.end(),
                       [&](const OptionAbout& one) { return one.option == option; });
  };
  std::vector<OptionAbout> all = readingOptions(verbOf(Command::Learn));
  for (OptionAbout& one : readingOptions(verbOf(Command::Follow)))
    if (!knownTo(Command::Learn, one.option)) all.push_back(std::move(one));
  for (const OptionAbout& one : all) {
    if (!reading.typed.has(one.option) || knownTo(reading.verb.command, one.option)) continue;
    const bool learns = knownTo(Command::Learn, one.option);
    const bool follows = knownTo(Command::Follow, one.option);
    reading.wrong.push_back(
        learns && follows
            ? Told(TOLD("Terminal", "%1: only \"learn\" and \"follow\" know it."), word(one.option))
        : learns ? Told(TOLD("Terminal", "%1: only \"learn\" knows it."), word(one.option))
                 : Told(TOLD("Terminal", "%1: only \"follow\" knows it."), word(one.option)));
  }
}

void readNow(Reading& reading) {
  const auto& now = reading.request.readings.now;
  if (!now) return;
  const auto moment = rigs::readings::momentFrom(*now);
  if (!moment || !moment->secondsOfDay)
    reading.wrong.push_back(
        onlyAccepted("--now", *now,
                     {Told(TOLD("Terminal", "a time of the clock, with or without a date (%1)"),
                           word("21:30, 2026-03-01T21:30"))}));
}

void readReadings(Reading& reading) {
  refuseReadings(reading);
  if (!reading.is(Command::Learn) && !reading.is(Command::Follow)) return;
  reading.request.readings = {.file = reading.valueOf("--readings"),
                              .time = reading.typed.valueOf("--time"),
                              .temperature = reading.typed.valueOf("--temperature"),
                              .unit = reading.typed.valueOf("--read-in"),
                              .since = reading.typed.valueOf("--since-start"),
                              .separator = reading.typed.valueOf("--separator"),
                              .checked = reading.typed.has("--checked"),
                              .unstirred = reading.typed.has("--unstirred"),
                              .leaveOut = reading.typed.has("--leave-out"),
                              .keep = reading.typed.has("--keep"),
                              .once = reading.typed.has("--once"),
                              .now = reading.typed.valueOf("--now")};
  if (reading.request.readings.keep &&
      (reading.request.file.empty() || reading.request.file == "-"))
    reading.wrong.push_back(Told(TOLD(
        "Terminal", "--keep: what is learned is written into a plan of yours; name its file.")));
  if (reading.request.readings.file.empty() && !reading.typed.has("--readings"))
    reading.wrong.push_back(rigs::sentences(
        {Told(TOLD("Terminal", "\"%1\" needs what was read, for example --readings night.csv."),
              word(reading.verb.name)),
         tryHelp(&reading.verb)}));
  for (const OptionAbout& one : readingOptions(reading.verb)) {
    const auto given = reading.typed.valueOf(one.option);
    if (!given || one.choices.empty()) continue;
    if (std::find(one.choices.begin(), one.choices.end(), *given) == one.choices.end())
      reading.wrong.push_back(onlyAccepted(one.option, *given, asTold(one.choices)));
  }
  if (const auto& unit = reading.request.readings.unit; unit && !rigs::readings::unitFrom(*unit))
    reading.wrong.push_back(onlyAccepted("--read-in", *unit, asTold({"C", "F", "K"})));
  readNow(reading);
  // What is watched is a file; what is typed comes from standard input.
  if (reading.is(Command::Follow) && reading.request.readings.file == "-" &&
      !reading.request.readings.once)
    reading.wrong.push_back(
        Told(TOLD("Terminal",
                  "--readings: what is followed is a file, for example --readings night.csv; "
                  "standard input can be read once, with --once.")));
}

// What is wished, and how many changes are tried at once.
void readWish(Reading& reading) {
  if (const auto word = reading.typed.valueOf("--wish")) {
    reading.request.wish = rigs::wishCalled(*word);
    if (!reading.request.wish) {
      std::vector<std::string> known;
      for (const rigs::Wish wish : rigs::kWishes) known.emplace_back(rigs::wishWord(wish));
      reading.wrong.push_back(onlyAccepted("--wish", *word, asTold(known)));
    }
    const bool asksIt =
        reading.is(Command::Helps) || reading.request.question == telling::Question::HelpsMost;
    if (!asksIt)
      reading.wrong.push_back(Told(
          TOLD("Terminal", "--wish: only \"helps\" and its picture, \"helps-most\", know it.")));
  }
  const auto together = reading.typed.valueOf("--together");
  if (!together) return;
  if (!reading.is(Command::Helps)) {
    reading.wrong.push_back(Told(TOLD("Terminal", "--together: only \"helps\" knows it.")));
    return;
  }
  std::size_t number = *together == "all" ? rigs::kAllTogether : 0;
  const char* end = together->data() + together->size();
  if (number == 0) {
    const auto read = std::from_chars(together->data(), end, number);
    if (read.ec != std::errc() || read.ptr != end || number > rigs::kAllTogether) number = 0;
  }
  if (number == 0)
    reading.wrong.push_back(onlyAccepted(
        "--together", *together,
        {Told(TOLD("Terminal", "a whole number from 1 to %1"), rigs::Count{rigs::kAllTogether}),
         Told::just(word("all"))}));
  reading.request.together = number;
}

// Those that no other command knows.
void refuseKettle(Reading& reading) {
  const auto& overrides = overrideKinds();
  for (const KettleOption& one : kettleOptions()) {
    const bool supposes =
        std::any_of(overrides.begin(), overrides.end(),
                    [&](const OverrideKind& kind) { return kind.option == one.option; });
    if (!supposes && reading.typed.has(one.option))
      reading.wrong.push_back(
          Told(TOLD("Terminal", "%1: only \"new\" knows it."), word(one.option)));
  }
}

// A start for a new plan: one of the bundled ones, by name, or one's own kettle.
void readStart(Reading& reading) {
  const auto like = reading.typed.valueOf("--like");
  if (reading.is(Command::New)) {
    reading.request.kettle = kettleFrom(reading.typed, reading.wrong);
    if (like && reading.request.kettle)
      reading.wrong.push_back(
          Told(TOLD("Terminal", "--like: a plan is either like another or of a kettle of yours.")));
  } else {
    refuseKettle(reading);
  }
  if (!like) return;
  if (!reading.is(Command::New)) {
    reading.wrong.push_back(Told(TOLD("Terminal", "--like: only \"new\" knows it.")));
    return;
  }
  const std::vector<std::string> known = rigs::planStartNames();
  reading.request.like = *like;
  if (std::find(known.begin(), known.end(), *like) == known.end())
    reading.wrong.push_back(onlyAccepted("--like", *like, asTold(known)));
}

void askForFile(Reading& reading) {
  if (!reading.request.file.empty()) return;
  if (reading.is(Command::New) || reading.is(Command::Check))
    reading.wrong.push_back(
        Told(TOLD("Terminal",
                  "\"%1\" needs the name of a file, for example \"heatledger %1 my-plan.json\"."),
             word(reading.verb.name)));
}

// Leaves the one that is spoken where there are no texts for what was typed.
void readLanguage(const TypedWords& typed, std::string& spoken, std::vector<Told>& wrong) {
  const auto wanted = typed.valueOf("--language");
  if (!wanted) return;
  const std::vector<std::string> known = telling::languageCodes();
  if (std::find(known.begin(), known.end(), *wanted) != known.end())
    spoken = *wanted;
  else
    wrong.push_back(onlyAccepted("--language", *wanted, asTold(known)));
}

// "--help" wins over whatever else was typed; "help brew" is about a command that is none.
std::optional<HelpAsked> helpAsked(const TypedWords& typed, const Verb* verb) {
  const bool byOption = typed.has("--help") || typed.has("-h");
  const bool byWord = !typed.words.empty() && typed.words.front() == "help";
  if (verb && (byOption || byWord)) return HelpAsked{verb->command};
  if (byOption || (byWord && typed.words.size() == 1)) return HelpAsked{};
  return std::nullopt;
}

}  // namespace

CommandLine readCommandLine(std::span<const char* const> words, std::string language) {
  if (words.empty()) return {HelpAsked{}, language};
  const TypedWords typed = tellApart(words, knownOptions());
  std::vector<Told> wrong;
  readLanguage(typed, language, wrong);
  const bool asksHelp = !typed.words.empty() && typed.words.front() == "help";
  const std::size_t at = asksHelp ? 1 : 0;
  const Verb* verb = typed.words.size() > at ? verbCalled(typed.words[at]) : nullptr;

  if (typed.has("--version")) return {VersionAsked{}, language};
  if (const auto help = helpAsked(typed, verb)) return {*help, language};
  if (!verb) return {NotUnderstood{{noCommand(typed, asksHelp)}}, language};

  Reading reading{.typed = typed, .verb = *verb, .wrong = std::move(wrong)};
  reading.request.command = verb->command;
  for (const auto& read :
       {readOptionLooks, readWords, readForm, readShown, readOverrides, readDrawing, readStart,
        readSweep, readReadings, readWish, refuseUnused, askForFile})
    read(reading);
  if (!reading.wrong.empty()) return {NotUnderstood{std::move(reading.wrong)}, language};
  return {std::move(reading.request), language};
}

}  // namespace gui
