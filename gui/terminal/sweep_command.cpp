// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/sweep_command.hpp"

#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <string_view>
#include <system_error>
#include <utility>

#include "gui/telling/csv.hpp"
#include "gui/terminal/interruption.hpp"
#include "gui/terminal/plan_input.hpp"
#include "gui/terminal/problem_text.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/result_json.hpp"
#include "rigs/results/result_json_sweep.hpp"

namespace gui {
namespace {

using rigs::Quoted;
using rigs::Severity;
using rigs::Told;
using rigs::Verbatim;

// --- What is asked for.

void addProblem(rigs::Problems& problems, std::string where, Told message) {
  problems.push_back({Severity::Error, std::move(where), std::move(message)});
}

std::vector<std::string> figuresFrom(const std::string& typed, rigs::Problems& problems) {
  std::vector<std::string> all;
  for (std::size_t at = 0; at < typed.size();) {
    const std::size_t end = std::min(typed.find_first_of(", ", at), typed.size());
    std::string name = typed.substr(at, end - at);
    at = end + 1;
    if (name.starts_with('/')) name.erase(0, 1);
    if (name.empty() || std::find(all.begin(), all.end(), name) != all.end()) continue;
    if (!rigs::isFigurePlace(name)) {
      Told found(TOLD("Sweep", "%1 is no figure of a result"), Quoted{name});
      const std::string_view near = rigs::nearestFigurePlace(name);
      addProblem(problems, "--figures",
                 near.empty() ? rigs::advised(std::move(found),
                                              Told(TOLD("Sweep",
                                                        "\"heatledger schema result\" has all of "
                                                        "them, below \"rig\"")))
                              : rigs::perhapsMeant(std::move(found), near));
    }
    all.push_back(std::move(name));
  }
  if (all.empty())
    addProblem(problems, "--figures",
               Told(TOLD("Sweep", "no figure is named; e.g. \"cost, day/duration_s\"")));
  return all;
}

std::uint64_t mostFrom(const std::string& typed, rigs::Problems& problems) {
  std::uint64_t most = 0;
  const char* end = typed.data() + typed.size();
  const auto read = std::from_chars(typed.data(), end, most);
  if (read.ec == std::errc() && read.ptr == end && most > 0) return most;
  addProblem(
      problems, "--at-most",
      Told(TOLD("Sweep", "%1 was given; a whole number of combinations is needed"), Quoted{typed}));
  return 0;
}

// Told before anything is begun.
void refuseTooMany(const rigs::Combinations& combinations, std::uint64_t most,
                   rigs::Problems& problems) {
  const auto count = combinations.count();
  if (count && *count <= most) return;
  if (!count)
    return addProblem(
        problems, "--vary",
        Told(TOLD("Sweep",
                  "these are about %1 combinations, too many for any computer; take "
                  "fewer values"),
             rigs::Number{combinations.about(), {.significantDigits = 2, .decimals = {}}}));
  addProblem(problems, "--vary",
             Told(TOLD("Sweep",
                       "these are %1 combinations, and not more than %2 are begun; take fewer "
                       "values, or say \"--at-most %1\""),
                  Verbatim{std::to_string(*count)}, Verbatim{std::to_string(most)}));
}

// Nothing where something is wrong with it.
std::optional<rigs::Sweep> sweepFrom(const Request& request, PlanInput& read) {
  rigs::Problems& problems = read.ofOptions;
  std::vector<std::string> figures =
      request.figures ? figuresFrom(*request.figures, problems) : rigs::decidingFigures();
  const std::uint64_t most =
      request.atMost ? mostFrom(*request.atMost, problems) : rigs::kMostUnasked;
  if (!read.plan) return std::nullopt;
  const auto slots = rigs::slotsOf(read.plan->rigs);
  const rigs::Varied varied{read.document, read.folder, slots};
  std::vector<rigs::Variation> variations;
  for (const std::string& typed : request.vary)
    if (auto one = rigs::readVariation(typed, varied, problems))
      variations.push_back(std::move(*one));
  if (variations.size() < request.vary.size()) return std::nullopt;
  rigs::Combinations combinations(std::move(variations), problems);
  if (most > 0) refuseTooMany(combinations, most, problems);
  return rigs::Sweep{.document = read.document,
                     .folder = read.folder,
                     .combinations = std::move(combinations),
                     .rig = read.rig,
                     .figures = std::move(figures)};
}

// --- Rows of spreadsheets.

std::string csvLine(const std::vector<std::string>& fields) {
  std::string line;
  for (std::size_t i = 0; i < fields.size(); ++i)
    line += (i > 0 ? "," : "") + telling::csvField(fields[i]);
  return line + '\n';
}

std::vector<std::string> csvHeads(const rigs::Sweep& sweep) {
  std::vector<std::string> heads{"combination"};
  for (const rigs::Variation& one : sweep.combinations.variations())
    heads.push_back(rigs::variedName(one));
  heads.insert(heads.end(), {"rig", "outcome"});
  heads.insert(heads.end(), sweep.figures.begin(), sweep.figures.end());
  heads.emplace_back("problem");
  return heads;
}

// A number stays one: a spreadsheet takes "-5" for what it is.
std::string csvField(const std::optional<rigs::Figure>& figure) {
  if (!figure) return {};
  return figure->isWord ? telling::csvField(figure->text) : figure->text;
}

std::string csvRows(const rigs::Sweep& sweep, const rigs::SweptCombination& combination) {
  const auto& variations = sweep.combinations.variations();
  std::string begin = std::to_string(combination.number);
  for (std::size_t k = 0; k < variations.size(); ++k)
    begin += ',' + csvField(rigs::variedFigure(variations[k], combination.values[k]));
  std::string rows;
  for (const rigs::SweepRow& row : combination.rows) {
    rows += begin + ',' + telling::csvField(row.rig) + ',' + telling::csvField(row.outcome);
    for (std::size_t f = 0; f < sweep.figures.size(); ++f)
      rows += ',' + (f < row.figures.size() ? csvField(row.figures[f]) : std::string());
    rows += ',' + telling::csvField(rigs::problemsInLine(row)) + '\n';
  }
  return rows;
}

// A word where rows have their number, and what it says.
std::string csvEnd(const rigs::Sweep& sweep, const rigs::SweepEnd& end,
                   const std::vector<rigs::Caution>& cautions, const rigs::Reader& reader) {
  std::vector<std::string> fields(csvHeads(sweep).size());
  const auto line = [&](std::string_view word, const Told& text) {
    fields[0] = word;
    fields[1] = rigs::tell(text, reader);
    return csvLine(fields);
  };
  std::string lines =
      line(end.word(), Told(TOLD("Sweep", "%1 of %2 combinations"),
                            Verbatim{std::to_string(end.done)}, Verbatim{std::to_string(end.of)}));
  for (const rigs::Caution& one : cautions) lines += line("caution", one.text);
  return lines;
}

// --- The sweep.

struct Outcome {
  rigs::SweepEnd end;
  rigs::Problem firstProblem = {};  // of the first combination that is no plan
  int error = 0;                    // errno of standard output
};

Outcome carriedOut(const rigs::Sweep& sweep, bool json, const Audience& audience) {
  Outcome outcome{.end = {.of = *sweep.combinations.count()}};
  const auto write = [&outcome](const std::string& text) {
    if (rigs::writeAll(STDOUT_FILENO, text)) return true;
    outcome.error = errno;
    return false;
  };
  if (!write(json ? rigs::sweepHeadLine(sweep) : csvLine(csvHeads(sweep)))) return outcome;
  // Only the text of what was found is kept.
  struct Made {
    std::string rows;
    std::optional<rigs::Problem> problem;  // of what is no plan
  };
  rigs::inOrder(
      outcome.end.of,
      [&](std::uint64_t i) -> std::optional<Made> {
        if (Interruption::signal() != 0) return std::nullopt;
        const rigs::SweptCombination found =
            rigs::swept(sweep, i, [] { return Interruption::signal() != 0; });
        if (found.isPart) return std::nullopt;
        return Made{
            json ? rigs::sweepLines(sweep, found) : csvRows(sweep, found),
            found.isPlan() ? std::nullopt : std::optional(found.rows.front().problems.front())};
      },
      [&](const std::optional<Made>& made) {
        if (!made || !write(made->rows)) return false;
        ++outcome.end.done;
        if (made->problem && outcome.end.noPlan++ == 0) outcome.firstProblem = *made->problem;
        return true;
      });
  if (outcome.error != 0) return outcome;
  // Without figures of one day among thousands; those of currents are in the rows.
  rigs::Plan anyOfThem;
  if (rigs::exists(sweep.document, "/ready")) anyOfThem.ready = rigs::Ready{};
  if (rigs::exists(sweep.document, "/batch/additions")) anyOfThem.batch.additions = {{}};
  if (rigs::exists(sweep.document, "/batch/rinse")) anyOfThem.batch.rinse.emplace();
  if (rigs::exists(sweep.document, "/batch/drain")) anyOfThem.batch.drain.emplace();
  const auto cautions = rigs::cautionsFor(rigs::About::Answer, anyOfThem, {});
  write(json ? rigs::sweepEndLine(outcome.end, cautions)
             : csvEnd(sweep, outcome.end, cautions, audience.reader));
  return outcome;
}

Finished finishedWith(const Outcome& outcome, std::string complaint, const Audience& audience) {
  const auto complain = [&](const Told& sentence) {
    complaint += complaintText(sentence, audience.reader, audience.style.width);
  };
  const rigs::SweepEnd& end = outcome.end;
  // Who has read enough, as "head" has, has nothing to complain about.
  if (outcome.error == EPIPE) return {{}, std::move(complaint), 0};
  if (outcome.error != 0) {
    complain(Told(TOLD("Terminal", "the answer could not be written: %1."),
                  Verbatim{std::generic_category().message(outcome.error)}));
    return {{}, std::move(complaint), 1};
  }
  const Verbatim done{std::to_string(end.done)};
  if (end.noPlan > 0)
    complain(Told(
        TOLD("Sweep", "%1 of %2 combinations are no plan, and their rows say why. The first: %3."),
        Verbatim{std::to_string(end.noPlan)}, done,
        outcome.firstProblem.where.empty()
            ? outcome.firstProblem.message
            : Told(TOLD("Terminal", "%1: %2"), Verbatim{outcome.firstProblem.where},
                   outcome.firstProblem.message)));
  if (end.done < end.of) {
    complain(Told(TOLD("Sweep", "stopped: %1 of %2 combinations are there, the first ones."), done,
                  Verbatim{std::to_string(end.of)}));
    return {{}, std::move(complaint), 128 + Interruption::signal()};
  }
  return {{}, std::move(complaint), end.noPlan == end.of ? 2 : 0};
}

}  // namespace

Finished sweepPlan(const Request& request, const Audience& audience, rigs::Problems ofOptions) {
  PlanInput read = readPlanInput(request, std::move(ofOptions));
  const auto sweep = sweepFrom(request, read);
  const bool json = request.form == Form::Json;
  if (!sweep || !read.fine()) {
    if (json) return {rigs::problemsJson(read.allProblems(), rigs::inEnglish(read.name)), {}, 2};
    const auto text = [&](const rigs::Problems& problems, const Told& name) {
      return problemText(problems, name, audience.reader, audience.style.width);
    };
    return {{}, text(read.ofOptions, theCommand()) + text(read.ofDocument, read.name), 2};
  }
  const Interruption interruption(Interruption::Second::Ends);
  const Outcome outcome = carriedOut(*sweep, json, audience);
  return finishedWith(
      outcome, problemText(read.ofDocument, read.name, audience.reader, audience.style.width),
      audience);
}

}  // namespace gui
