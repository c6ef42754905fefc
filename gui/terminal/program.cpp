// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/program.hpp"

#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <exception>
#include <new>
#include <span>
#include <string_view>
#include <system_error>

#include "gui/telling/translations.hpp"
#include "gui/terminal/catalogue_pages.hpp"
#include "gui/terminal/commands.hpp"
#include "gui/terminal/display.hpp"
#include "gui/terminal/follow_command.hpp"
#include "gui/terminal/help.hpp"
#include "gui/terminal/kettle_options.hpp"
#include "gui/terminal/learn_command.hpp"
#include "gui/terminal/plan_command.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/screen.hpp"
#include "gui/terminal/sweep_command.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "version.hpp"

namespace gui {
namespace {

using rigs::Count;
using rigs::Quoted;
using rigs::Told;
using rigs::Verbatim;

std::string complaint(const Told& sentence, const Audience& audience) {
  return complaintText(sentence, audience.reader, audience.style.width);
}

Finished wrongOptions(const rigs::Problems& problems, const Audience& audience) {
  return {{},
          problemText(problems, Told(TOLD("Terminal", "the command")), audience.reader,
                      audience.style.width),
          2};
}

// As the terminal is, but for what was asked for.
Audience audienceOf(const Request& request, Audience audience, rigs::Problems& problems) {
  if (const auto units = rigs::unitsFromText(request.units)) {
    audience.reader.units = *units;
  } else {
    problems.push_back({rigs::Severity::Error, "--units",
                        Told(TOLD("Terminal",
                                  "%1 was given; SI or US is accepted, and units of choice behind "
                                  "it, for example \"SI,F,gal\""),
                             Quoted{request.units})});
  }
  if (request.width.empty()) return audience;
  if (const auto width = columnsFrom(request.width)) {
    audience.style.width = *width;
  } else {
    problems.push_back(
        {rigs::Severity::Error, "--width",
         Told(TOLD("Terminal",
                   "%1 was given; a whole number from %2 to %3 is accepted, for example \"80\""),
              Quoted{request.width}, Count{kNarrowest}, Count{kWidest})});
  }
  return audience;
}

// In the units that were asked for; what we bundle is written in SI.
std::string newText(const Request& request, rigs::UnitSystem units) {
  const std::string text = rigs::planStartText(request.like).value_or(rigs::newPlanText());
  return units.base() == rigs::UnitSystem::SI ? text : rigs::inUsUnits(text);
}

Finished newPlan(const Request& request, const Audience& audience, rigs::Problems problems) {
  const std::string text = request.kettle ? kettlePlan(*request.kettle, audience.reader, problems)
                                          : newText(request, audience.reader.units);
  if (!problems.empty()) return wrongOptions(problems, audience);
  // Made in one step, so that two people, or a link, lose no file, and nobody finds half a plan.
  if (!rigs::createText(request.file, text))
    return {{},
            complaint(Told(TOLD("Terminal", "%1 is there already; nothing was written."),
                           rigs::quotedPath(request.file)),
                      audience),
            1};
  const Told wrote(TOLD("Terminal", "Wrote %1. Edit it, then type:  heatledger answer %1"),
                   Verbatim{rigs::shownPath(request.file)});
  return {plainText(rigs::tell(wrote, audience.reader)) + '\n', {}, 0};
}

Finished schema(const Request& request, const Audience& audience) {
  const std::string wanted = request.subject.empty() ? "plan" : request.subject;
  for (const rigs::EmbeddedDocument& document : rigs::embeddedDocuments()) {
    if (document.name == "schemas/" + wanted + ".schema.json")
      return {std::string(document.text), {}, 0};
  }
  return wrongOptions(
      {{rigs::Severity::Error, "schema",
        Told(TOLD("Terminal",
                  "%1 was given; plan, rules, tariff, catalogue or result is accepted, for example "
                  "\"heatledger schema rules\""),
             Quoted{wanted})}},
      audience);
}

Told unknownList(const std::string& subject) {
  if (subject.empty())
    return Told(TOLD("Terminal",
                     "nothing was given; materials, supplies, rigs or tariffs is accepted, for "
                     "example \"heatledger list supplies\""));
  return Told(TOLD("Terminal",
                   "%1 was given; materials, supplies, rigs or tariffs is accepted, for example "
                   "\"heatledger list supplies\""),
              Quoted{subject});
}

Finished list(const Request& request, const Audience& audience, rigs::Problems problems) {
  const auto page = cataloguePage(request.subject, audience.reader.units);
  if (!page) problems.push_back({rigs::Severity::Error, "list", unknownList(request.subject)});
  if (!problems.empty()) return wrongOptions(problems, audience);
  if (request.form == Form::Json) return {catalogueJson(request.subject), {}, 0};
  if (request.form == Form::Csv) return {pageCsv(*page, audience.reader), {}, 0};
  return {pageText(*page, audience.reader, audience.style), {}, 0};
}

Finished carryOut(const Request& request, const Audience& terminal, telling::Draw draw) {
  rigs::Problems problems;
  const Audience audience = audienceOf(request, terminal, problems);
  try {
    switch (request.command) {
      case Command::New:
        return newPlan(request, audience, std::move(problems));
      case Command::List:
        return list(request, audience, std::move(problems));
      case Command::Schema:
        return schema(request, audience);
      case Command::Learn:
        return learnFromReadings(request, audience, std::move(problems));
      case Command::Follow:
        return followADay(request, audience, std::move(problems));
      case Command::Sweep:
        return sweepPlan(request, audience, std::move(problems));
      default:
        return askAboutPlan(request, audience, std::move(problems), draw);
    }
  } catch (const rigs::FileError& error) {
    return {{}, complaint(Told(TOLD("Terminal", "%1."), error.told()), audience), 1};
  } catch (const std::bad_alloc&) {
    return {
        {}, complaint(Told(TOLD("Terminal", "there is not enough memory for it.")), audience), 1};
  } catch (const std::exception& error) {
    return {{}, complaint(Told(TOLD("Terminal", "%1."), Verbatim{error.what()}), audience), 1};
  }
}

// What is done about each kind of thing that may have been typed.
struct Doing {
  const Audience& terminal;
  telling::Draw draw;

  Finished operator()(const Request& request) const { return carryOut(request, terminal, draw); }
  Finished operator()(const HelpAsked& asked) const {
    return {helpText(asked, terminal.style.width, terminal.reader), {}, 0};
  }
  Finished operator()(const VersionAsked&) const {
    return {"heatledger " + std::string(kVersion) + '\n', {}, 0};
  }
  Finished operator()(const NotUnderstood& wrong) const {
    Finished finished{{}, {}, 2};
    for (const Told& sentence : wrong.sentences)
      finished.complaint += complaint(sentence, terminal);
    return finished;
  }
};

std::span<const char* const> wordsOf(int argc, const char* const* argv) {
  if (argc < 1) return {};
  return std::span(argv, static_cast<std::size_t>(argc)).subspan(1);
}

// The plan where nothing but its name was typed; "" for anything else.
std::string planAlone(std::span<const char* const> words) {
  if (words.size() == 2 && std::string_view(words[0]) == "--") words = words.subspan(1);
  if (words.size() != 1 || !std::string_view(words[0]).ends_with(".json")) return {};
  return words[0];
}

Told whyNoWindow() {
  return hasScreen()
             ? Told(TOLD("Terminal",
                         "the part of this program that has a window is not installed; the answer "
                         "stands here."))
             : Told(TOLD("Terminal", "no display was found; the answer stands here."));
}

}  // namespace

bool asksForWindow(int argc, const char* const* argv) {
  const auto words = wordsOf(argc, argv);
  return words.empty() || !planAlone(words).empty();
}

bool asksForDrawing(int argc, const char* const* argv) {
  const CommandLine line = readCommandLine(wordsOf(argc, argv), "en");
  const auto* request = std::get_if<Request>(&line.asked);
  return request && isDrawn(request->command);
}

int withoutMemory() {
  constexpr std::string_view kSaid = "heatledger: there is not enough memory for it.\n";
  static_cast<void>(rigs::writeAll(STDERR_FILENO, kSaid));
  return 1;
}

void endQuietlyWithoutMemory() {
  static const std::terminate_handler usual = std::get_terminate();
  std::set_terminate([] {
    try {
      if (const auto why = std::current_exception()) std::rethrow_exception(why);
    } catch (const std::bad_alloc&) {
      ::_exit(withoutMemory());
    } catch (...) {
    }
    usual();
  });
}

int runInTerminal(int argc, const char* const* argv, telling::Draw draw) try {
  // A reader who leaves early is told about by write(), not by a signal.
  std::signal(SIGPIPE, SIG_IGN);
  const auto words = wordsOf(argc, argv);
  const std::string plan = planAlone(words);
  const char* const asked[] = {"answer", "--", plan.c_str()};
  const CommandLine line =
      readCommandLine(plan.empty() ? words : std::span(asked), telling::languageFromEnvironment());
  const Audience terminal{
      {.units = rigs::UnitSystem::SI, .language = &telling::languageOf(line.language)},
      screenStyle()};
  Finished finished = std::visit(Doing{terminal, draw}, line.asked);
  if (!plan.empty()) finished.complaint = complaint(whyNoWindow(), terminal) + finished.complaint;
  if (!rigs::writeAll(STDOUT_FILENO, finished.output)) {
    // Who has read enough, as "head" has, has nothing to complain about.
    if (errno == EPIPE) return finished.exitCode;
    finished.complaint += complaint(Told(TOLD("Terminal", "the answer could not be written: %1."),
                                         Verbatim{std::generic_category().message(errno)}),
                                    terminal);
    finished.exitCode = 1;
  }
  if (!rigs::writeAll(STDERR_FILENO, finished.complaint) && finished.exitCode == 0) return 1;
  return finished.exitCode;
} catch (const std::bad_alloc&) {
  return withoutMemory();
}

}  // namespace gui
