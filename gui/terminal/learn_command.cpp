// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/learn_command.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/learned.hpp"
#include "gui/terminal/interruption.hpp"
#include "gui/terminal/page.hpp"
#include "gui/terminal/plan_input.hpp"
#include "gui/terminal/problem_text.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/readings/readings_reader.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json.hpp"
#include "rigs/results/result_json_learned.hpp"

namespace gui {
namespace {

using rigs::Told;

rigs::readings::Corrections correctionsFrom(const ReadingOptions& typed) {
  rigs::readings::Corrections corrections{
      .time = typed.time, .temperature = typed.temperature, .leaveOutBadRows = typed.leaveOut};
  using rigs::readings::Count;
  if (typed.unit) corrections.temperatureUnit = rigs::readings::unitFrom(*typed.unit);
  if (typed.since)
    corrections.count = *typed.since == "s"     ? Count::Seconds
                        : *typed.since == "min" ? Count::Minutes
                                                : Count::Hours;
  if (typed.separator)
    corrections.separator = *typed.separator == "comma"       ? ','
                            : *typed.separator == "semicolon" ? ';'
                            : *typed.separator == "tab"       ? '\t'
                                                              : ' ';
  return corrections;
}

// Where wort boils in that place, by the plan's own day.
physics::Temperature boilingIn(const rigs::Plan& plan, std::size_t rig) {
  return physics::simulate(plan.rigs[rig].rig, plan.batch, plan.place,
                           {.relativeTolerance = 1e-6, .leastForAnyPower = false})
      .boilingPoint;
}

}  // namespace

Finished learnFromReadings(const Request& request, const Audience& audience,
                           rigs::Problems ofOptions) {
  PlanInput input = readPlanInput(request, std::move(ofOptions));
  askForRig(input, TOLD("Terminal", "these readings are of one rig; say of which: %1"));
  const std::string& file = request.readings.file;
  const std::string text =
      rigs::readText(file == "-" ? "/dev/stdin" : file, rigs::readings::kLargestLog);
  const std::string name = file == "-" ? "-" : rigs::shownPath(file);
  const std::size_t rig = input.rig.value_or(0);
  rigs::Problems ofReadings;
  rigs::readings::ReadLines read;
  if (input.plan)
    read = rigs::readings::readLines(text,
                                     {.name = name,
                                      .startOfDay = input.plan->startOfDay,
                                      .boiling = boilingIn(*input.plan, rig)},
                                     correctionsFrom(request.readings), ofReadings);
  const bool fine = input.fine() && !rigs::hasErrors(ofReadings);
  if (request.form == Form::Json && !fine) {
    rigs::Problems all = input.allProblems();
    all.insert(all.end(), ofReadings.begin(), ofReadings.end());
    return {rigs::problemsJson(all, rigs::inEnglish(input.name)), {}, 2};
  }
  const auto problems = [&](const rigs::Problems& some, const Told& of) {
    return problemText(some, of, audience.reader, audience.style.width);
  };
  std::string complaint = problems(input.ofOptions, theCommand()) +
                          problems(input.ofDocument, input.name) +
                          problems(ofReadings, Told::just(rigs::Verbatim{name}));
  if (!fine) return {{}, std::move(complaint), 2};

  const Interruption interruption(Interruption::Second::Ends);
  const auto learned = rigs::learnedFrom(
      *input.plan, rig, read.readings,
      {.checked = request.readings.checked, .stirred = !request.readings.unstirred},
      [] { return Interruption::signal() != 0; });
  if (!learned) return {{}, std::move(complaint), 128 + Interruption::signal()};
  const rigs::Solution solution{.plan = *input.plan,
                                .answers = rigs::answer(*input.plan, rigs::Depth::Day),
                                .sweeps = {},
                                .done = {}};
  if (request.form == Form::Json)
    return {rigs::learnedJson(
                solution.plan, rig, read.readings, *learned,
                rigs::cautionsFor(rigs::About::Insulation, solution.plan, solution.answers)),
            std::move(complaint), 0};
  const telling::QuestionView view{.rig = static_cast<int>(rig), .only = rig};
  Page page = pageAbout(solution.plan, audience.reader, rig);
  page.add(telling::whatWasLearned({solution, solution.plan, audience.reader, view}, rig,
                                   {read.readings, read.layout, *learned}));
  return {request.form == Form::Csv ? pageCsv(page, audience.reader)
                                    : pageText(page, audience.reader, audience.style),
          std::move(complaint), 0};
}

}  // namespace gui
