// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/program.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cctype>
#include <cerrno>
#include <charconv>
#include <exception>
#include <filesystem>

#include "gui/terminal/catalogue_pages.hpp"
#include "gui/terminal/csv_export.hpp"
#include "gui/terminal/desktop.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/terminal.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/answers/plan_check.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/result_json.hpp"

namespace gui {
namespace {

using rigs::Count;
using rigs::Quoted;
using rigs::Told;

constexpr std::size_t kWidest = 1000;  // columns anybody may ask for

struct Asked {
  UnitSystem units = UnitSystem::SI;
  TextStyle style;

  rigs::Reader reader() const { return {.units = units, .language = &rigs::english()}; }
};

std::optional<UnitSystem> unitsFrom(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
  if (text == "SI") return UnitSystem::SI;
  if (text == "US") return UnitSystem::UsCustomary;
  return std::nullopt;
}

Asked understand(const Request& request, const TextStyle& terminal, rigs::Problems& problems) {
  Asked asked{.units = UnitSystem::SI, .style = terminal};
  if (const auto units = unitsFrom(request.units)) {
    asked.units = *units;
  } else {
    problems.push_back(
        {rigs::Severity::Error, "--units",
         Told(TOLD("Terminal", "%1 was given; SI or US is accepted, for example \"US\""),
              Quoted{request.units})});
  }
  if (!request.width.empty()) {
    const auto width = columnsFrom(request.width);
    if (!width) {
      problems.push_back(
          {rigs::Severity::Error, "--width",
           Told(TOLD("Terminal",
                     "%1 was given; a whole number from %2 to %3 is accepted, for example \"80\""),
                Quoted{request.width}, Count{kNarrowest}, Count{kWidest})});
    } else {
      asked.style.width = *width;
    }
  }
  return asked;
}

// For what must be said whatever else is wrong.
Asked understandQuietly(const Request& request, const TextStyle& terminal) {
  rigs::Problems ignored;
  return understand(request, terminal, ignored);
}

rigs::Depth depthOf(Command command) {
  switch (command) {
    case Command::Answer:
    case Command::Size:
      return rigs::Depth::Everything;
    case Command::Insulate:
    case Command::Cost:
      return rigs::Depth::DayAndJacket;
    case Command::Circuit:
      return rigs::Depth::Circuit;
    case Command::Room:
      return rigs::Depth::Room;
    default:
      return rigs::Depth::Day;
  }
}

Page pageOf(const Request& request, const rigs::Plan& plan, const rigs::Answers& answers,
            UnitSystem units) {
  switch (request.command) {
    case Command::Day:
      return dayPage(plan, answers, units);
    case Command::Size:
      return sizePage(plan, answers, units);
    case Command::Insulate:
      return insulatePage(plan, answers, units);
    case Command::Boil:
      return boilPage(plan, answers, units);
    case Command::Cost:
      return costPage(plan, answers, units);
    case Command::Circuit:
      return circuitPage(plan, answers, units, request.everyRule);
    case Command::Room:
      return roomPage(plan, answers, units);
    default:
      return answerPage(plan, answers, units);
  }
}

std::string shown(const Page& page, Form form, const TextStyle& style) {
  return form == Form::Csv ? pageCsv(page) : pageText(page, style);
}

Finished questionAboutPlan(const Request& request, const TextStyle& terminal, Drawing draw) {
  rigs::Problems ofOptions;
  rigs::Problems problems;  // of the document
  const Asked asked = understand(request, terminal, ofOptions);
  const bool demo = request.file.empty();
  const bool fromInput = request.file == "-";
  const std::string name = demo        ? "the bundled example"
                           : fromInput ? "standard input"
                                       : plainText(request.file);
  const std::filesystem::path path = fromInput ? "/dev/stdin" : request.file;
  const std::string text = demo ? std::string(rigs::demoPlanText()) : rigs::readText(path);
  const std::filesystem::path folder =
      demo || fromInput ? std::filesystem::path(".") : path.parent_path();
  std::optional<rigs::Plan> plan = rigs::readPlan(text, folder, problems);
  // Without a plan the options are read all the same, so that nobody meets their problems only
  // after mending the document.
  rigs::Plan none;
  applyOverrides(request.overrides, plan ? *plan : none, ofOptions);
  const bool optionsFine = !rigs::hasErrors(ofOptions);
  if (plan && optionsFine) rigs::checkPlan(*plan, problems);
  const std::string complaint = problemText(ofOptions, "the command", asked.reader(), asked.style) +
                                problemText(problems, name, asked.reader(), asked.style);
  const bool fine = optionsFine && plan && !rigs::hasErrors(problems);
  // Who asked for JSON gets problems as JSON, whatever the question was.
  if (request.form == Form::Json && (!fine || request.command == Command::Check)) {
    rigs::Problems all = ofOptions;
    all.insert(all.end(), problems.begin(), problems.end());
    return {rigs::problemsJson(all, name, asked.units), {}, fine ? 0 : 2};
  }
  if (!fine) return {{}, complaint, 2};
  if (request.command == Command::Check) {
    const std::string verdict =
        fmt::format("{}: {}; {} rigs.\n", name,
                    problems.empty() ? "no problems" : "nothing in the way", plan->rigs.size());
    return {verdict, complaint, 0};
  }
  if (isDrawn(request.command)) {
    if (!draw)
      return {
          {},
          complaintText("the part of this program that draws is not installed.", asked.style.width),
          1};
    Finished drawn = draw(request, *plan, {name, text}, asked.units);
    drawn.complaint = complaint + drawn.complaint;
    return drawn;
  }
  const rigs::Answers answers = rigs::answer(*plan, depthOf(request.command));
  if (request.form == Form::Json) return {rigs::resultJson(*plan, answers), complaint, 0};
  Page page = pageOf(request, *plan, answers, asked.units);
  if (demo) {
    page.notes.insert(page.notes.begin(),
                      "The bundled example. \"heatledger new my-plan.json\" writes you a copy.");
  }
  return {shown(page, request.form, asked.style), complaint, 0};
}

Finished newPlan(const Request& request, const TextStyle& terminal) {
  // Taking the name first keeps two people, or a link, from losing a file.
  const int file = ::open(request.file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
  if (file < 0 && errno == EEXIST) {
    return {{},
            complaintText(fmt::format("{} is there already; nothing was written.",
                                      rigs::quotedText(request.file)),
                          terminal.width),
            1};
  }
  if (file >= 0) {
    ::close(file);
    try {
      rigs::savePlan(request.file, rigs::newPlanText());
    } catch (...) {
      ::unlink(request.file.c_str());
      throw;
    }
  } else {
    rigs::savePlan(request.file, rigs::newPlanText());  // tells why it cannot
  }
  const std::string name = plainText(request.file);
  return {fmt::format("Wrote {0}. Edit it, then type:  heatledger answer {0}\n", name), {}, 0};
}

Finished schema(const Request& request, const TextStyle& terminal) {
  const std::string wanted = request.subject.empty() ? "plan" : request.subject;
  for (const rigs::EmbeddedDocument& document : rigs::embeddedDocuments()) {
    if (document.name == "schemas/" + wanted + ".schema.json")
      return {std::string(document.text), {}, 0};
  }
  const rigs::Problems problems{
      {rigs::Severity::Error, "schema",
       Told(TOLD("Terminal",
                 "%1 was given; plan, rules, tariff, catalogue or result is accepted, for example "
                 "\"heatledger schema rules\""),
            Quoted{wanted})}};
  const Asked asked = understandQuietly(request, terminal);
  return {{}, problemText(problems, "the command", asked.reader(), terminal), 2};
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

Finished list(const Request& request, const TextStyle& terminal) {
  rigs::Problems problems;
  const Asked asked = understand(request, terminal, problems);
  const auto page = cataloguePage(request.subject, asked.units);
  if (!page) {
    problems.push_back({rigs::Severity::Error, "list", unknownList(request.subject)});
  }
  if (!problems.empty())
    return {{}, problemText(problems, "the command", asked.reader(), asked.style), 2};
  if (request.form == Form::Json) return {catalogueJson(request.subject), {}, 0};
  return {shown(*page, request.form, asked.style), {}, 0};
}

}  // namespace

std::optional<std::size_t> columnsFrom(std::string_view text) {
  const char* end = text.data() + text.size();
  std::size_t width = 0;
  const auto read = std::from_chars(text.data(), end, width);
  if (read.ec != std::errc() || read.ptr != end || width < kNarrowest || width > kWidest)
    return std::nullopt;
  return width;
}

Finished carryOut(const Request& request, const TextStyle& terminal, Drawing draw) {
  try {
    switch (request.command) {
      case Command::New:
        return newPlan(request, terminal);
      case Command::List:
        return list(request, terminal);
      case Command::Schema:
        return schema(request, terminal);
      default:
        return questionAboutPlan(request, terminal, draw);
    }
  } catch (const rigs::FileError& error) {
    const Asked asked = understandQuietly(request, terminal);
    const std::string sentence = plainText(rigs::tell(error.told(), asked.reader()));
    return {{}, complaintText(sentence + ".", asked.style.width), 1};
  } catch (const std::exception& problem) {
    const Asked asked = understandQuietly(request, terminal);
    return {{}, complaintText(plainText(problem.what()) + ".", asked.style.width), 1};
  }
}

}  // namespace gui
