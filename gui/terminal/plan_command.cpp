// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/plan_command.hpp"

#include <algorithm>
#include <string_view>
#include <utility>
#include <variant>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/case.hpp"
#include "gui/telling/explained.hpp"
#include "gui/telling/overload.hpp"
#include "gui/telling/summary.hpp"
#include "gui/telling/verdict.hpp"
#include "gui/terminal/help_search.hpp"
#include "gui/terminal/page.hpp"
#include "gui/terminal/plan_input.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/relevance.hpp"
#include "gui/terminal/sheet_command.hpp"
#include "gui/terminal/target.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/plan_check.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json.hpp"

namespace gui {
namespace {

using rigs::Told;
using telling::Question;

// A night alone that nothing on the page depends on.
void refuseUnusedNight(const Request& request, const rigs::Plan& plan, rigs::Problems& problems) {
  constexpr std::string_view kAlone = "--alone";
  const bool given = std::any_of(request.overrides.begin(), request.overrides.end(),
                                 [&](const Override& one) { return one.option == kAlone; });
  if (!given || dependsOn(kAlone, request.command, request.question)) return;
  // For programs all nights are in the answer.
  if (request.command == Command::Answer && request.form == Form::Json) return;
  if (std::holds_alternative<physics::UnpluggedMash>(plan.batch.mash)) return;
  problems.push_back(
      {rigs::Severity::Error, std::string(kAlone),
       Told(TOLD("Terminal",
                 "\"%1\" does not depend on it, as this plan leaves its mash plugged in; \"%2\" "
                 "does"),
            rigs::Verbatim{std::string(verbOf(request.command).name)}, rigs::Verbatim{"night"})});
}

PlanInput readPlan(const Request& request, rigs::Problems ofOptions) {
  PlanInput read = readPlanInput(request, std::move(ofOptions));
  if (read.plan) refuseUnusedNight(request, *read.plan, read.ofOptions);
  if (request.command == Command::Sheet)
    askForRig(read, TOLD("Terminal", "a sheet is of one rig; say of which: %1"));
  if (read.plan && !rigs::hasErrors(read.ofOptions)) rigs::checkPlan(*read.plan, read.ofDocument);
  return read;
}

// An overload is no mistake of the document, and no figure is asked for here; yet nobody must go
// from here to the kettle without a word of it.
std::vector<Told> overloadsOf(const rigs::Plan& plan, const rigs::Reader& reader) {
  const rigs::Solution solution{
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
  std::vector<Told> texts;
  for (telling::Overload& one : telling::overloads({solution, solution.plan, reader, {}}))
    texts.push_back(std::move(one.text));
  return texts;
}

Finished checked(const PlanInput& read, const Audience& audience, std::string complaint) {
  const std::vector<Told> overloads = overloadsOf(*read.plan, audience.reader);
  std::string said;
  for (const Told& one : overloads)
    for (const std::string& line :
         wrapped(plainText(rigs::tell(one, audience.reader)), audience.style.width))
      said += (audience.style.bold ? "\033[1m" + line + "\033[0m" : line) + '\n';
  const rigs::Count rigs{static_cast<long long>(read.plan->rigs.size())};
  const bool fine = read.ofDocument.empty() && overloads.empty();
  const Told verdict =
      rigs.value == 1
          ? Told(fine ? rigs::Template<1>(TOLD("Terminal", "%1: no problems; one rig."))
                      : rigs::Template<1>(TOLD("Terminal", "%1: nothing in the way; one rig.")),
                 read.name)
          : Told(fine ? rigs::Template<2>(TOLD("Terminal", "%1: no problems; %2 rigs."))
                      : rigs::Template<2>(TOLD("Terminal", "%1: nothing in the way; %2 rigs.")),
                 read.name, rigs);
  return {said + plainText(rigs::tell(verdict, audience.reader)) + '\n', std::move(complaint), 0};
}

Finished drawn(const Request& request, const PlanInput& read, const Audience& audience,
               telling::Draw draw) {
  const auto complain = [&](const Told& sentence, int exitCode) {
    return Finished{{}, complaintText(sentence, audience.reader, audience.style.width), exitCode};
  };
  if (!draw)
    return complain(Told(TOLD("Terminal", "the part of this program that draws is not installed.")),
                    1);
  if (const Told why = whyNotWritten(request); !why.empty()) return complain(why, 2);
  telling::QuestionView view;
  view.rig = static_cast<int>(read.rig.value_or(0));
  view.only = read.rig;
  view.overThickness = request.overThickness;
  view.supposed = request.supposed;
  view.wish = request.wish;
  view.asBars = request.question == Question::WhereHeat && request.rig.empty();
  draw({.question = request.question,
        .view = view,
        .to = request.to,
        .planName = request.file,
        .document = read.document,
        .changed = changedBy(request.overrides)},
       *read.plan, audience.reader);
  const Told wrote(TOLD("Terminal", "Wrote %1."), rigs::Verbatim{rigs::shownPath(request.to)});
  return {plainText(rigs::tell(wrote, audience.reader)) + '\n', {}, 0};
}

rigs::Depth depthOf(Command command) {
  switch (command) {
    case Command::Answer:
    case Command::Size:
    case Command::Safety:
      return rigs::Depth::Everything;
    case Command::Insulate:
    case Command::Cost:
      return rigs::Depth::DayAndJacket;
    case Command::Night:
      return rigs::Depth::Night;
    case Command::Circuit:
      return rigs::Depth::Circuit;
    case Command::Room:
      return rigs::Depth::Room;
    case Command::Chill:
      return rigs::Depth::Chill;
    case Command::Wort:
      return rigs::Depth::Wort;
    default:
      return rigs::Depth::Day;
  }
}

// Those of pictures whose points tables show: how soon the strongest element boils.
rigs::Searches searchesOf(Command command) { return {.power = command == Command::Size}; }

// None for all of them side by side.
std::vector<Question> questionsOf(Command command) {
  switch (command) {
    case Command::Overview:
      return {Question::Overview};
    case Command::Day:
      return {Question::HowLong, Question::WhereHeat};
    case Command::Size:
      return {Question::WhichElement};
    case Command::Insulate:
      return {Question::WorthJacket, Question::HowFarCools};
    case Command::Night:
      return {Question::HowFarCools};
    case Command::Boil:
      return {Question::BoilsEnough};
    case Command::Cost:
      return {Question::WhatCost};
    case Command::Circuit:
      return {Question::Circuit};
    case Command::Room:
      return {Question::Room};
    case Command::Chill:
      return {Question::HowChills};
    case Command::Wort:
      return {Question::WortChanges};
    case Command::Helps:
      return {Question::HelpsMost};
    case Command::Sure:
      return {Question::HowSure};
    default:
      return {};
  }
}

bool supposes(const rigs::Solution& solution) {
  return std::any_of(
      solution.answers.rigs.begin(), solution.answers.rigs.end(),
      [](const rigs::RigAnswer& rig) { return rig.night && rig.night->supposed.has_value(); });
}

// A verdict about current hangs on an electrician's, a night on what it does to wort, and a solved
// beginning on somebody who is there.
std::vector<Told> vitalCautions(const rigs::Solution& solution) {
  std::vector<Told> all{Told(TOLD(
      "Terminal", "Mains current kills. For planning only: have a licensed electrician check."))};
  const bool night = rigs::hasOwnNight(solution.plan);
  if (!night && !solution.plan.ready) return all;
  for (rigs::Caution& one : rigs::cautionsFor(rigs::About::Answer, solution.plan, solution.answers))
    if ((night && one.topic == "left warm") || (solution.plan.ready && one.topic == "unattended"))
      all.push_back(std::move(one.text));
  return all;
}

rigs::List wishes() {
  rigs::List all{{}, rigs::Joint::Or};
  for (const rigs::Wish wish : rigs::kWishes)
    all.items.emplace_back(rigs::Verbatim{std::string(rigs::wishWord(wish))});
  return all;
}

// All that the command asks of one plan: how it is seen, and its page so far.
struct Asked {
  const Request& request;
  const rigs::Solution& solution;
  const rigs::Reader& reader;
  telling::QuestionView view;
};

// Who asks for a jacket's worth asks for what is supposed.
bool supposesOf(const Request& request) {
  return request.supposed || request.command == Command::Insulate;
}

void addAnswers(Page& page, const Asked& asked) {
  std::vector<telling::Explanation> explanations;
  for (const Question question : questionsOf(asked.request.command)) {
    const telling::Answer answer =
        telling::answerTo(question, asked.solution, asked.reader, asked.view);
    if (asked.request.explained)
      for (telling::Explanation& one : telling::explanationsOf(question, answer))
        explanations.push_back(std::move(one));
    page.add(answer);
  }
  if (asked.request.explained) telling::explain(explanations, page.answer);
}

// Which options show more of it.
void addFurther(Page& page, const Asked& asked) {
  const Command command = asked.request.command;
  if (command == Command::Night && !supposesOf(asked.request) && supposes(asked.solution)) {
    page.answer.heading(Told(TOLD("Terminal", "What if?")));
    page.answer.say(Told(TOLD("Terminal",
                              "\"--suppose-jacket\" adds what a jacket would change, and of a rig "
                              "that has one, what it would be without.")));
  }
  if (command == Command::Helps && !asked.view.only && asked.solution.plan.rigs.size() > 1) {
    page.answer.heading(Told(TOLD("Terminal", "And then?")));
    page.answer.say(Told(TOLD("Terminal",
                              "\"--rig\" with a rig's letter shows all of its changes, and "
                              "\"--wish\" ranks them by another wish: %1."),
                         wishes()));
  }
}

void addSafety(Page& page, const Asked& asked) {
  telling::Answer all;
  all.lettered = page.answer.lettered;
  telling::addOverloads(all, {asked.solution, asked.solution.plan, asked.reader, asked.view});
  telling::addCautions(all, rigs::About::Everything, asked.solution);
  page.add(all);
}

void addSummary(Page& page, const Asked& asked) {
  const telling::Case of{asked.solution, asked.solution.plan, asked.reader, asked.view};
  for (std::size_t i = 0; i < of.count(); ++i) page.verdicts.push_back(telling::verdictText(of, i));
  page.vital = vitalCautions(asked.solution);
  telling::Answer all = telling::summary(of);
  page.add(asked.view.only ? telling::aboutRig(std::move(all), *asked.view.only) : all);
}

Page pageOf(const Request& request, const rigs::Solution& solution, const rigs::Reader& reader,
            std::optional<std::size_t> rig) {
  Page page = pageAbout(solution.plan, reader, rig);
  if (request.file.empty())
    page.opening.insert(
        page.opening.begin(),
        Told(TOLD("Terminal",
                  "The bundled example. \"heatledger new my-plan.json\" writes you a copy.")));
  const Asked asked{.request = request,
                    .solution = solution,
                    .reader = reader,
                    // All rigs, as a picture of which no rig was asked for.
                    .view = {.rig = static_cast<int>(rig.value_or(0)),
                             .asBars = true,
                             .supposed = supposesOf(request),
                             .allFigures = request.form == Form::Csv,
                             .everyRule = request.everyRule,
                             .wish = request.wish,
                             .everyRig = !rig,
                             .only = rig}};
  addAnswers(page, asked);
  addFurther(page, asked);
  if (request.command == Command::Safety)
    addSafety(page, asked);
  else if (questionsOf(request.command).empty())
    addSummary(page, asked);
  return page;
}

Finished answered(const Request& request, const PlanInput& read, const Audience& audience) {
  rigs::Solution solution;
  solution.plan = *read.plan;
  solution.answers = rigs::answer(solution.plan, depthOf(request.command));
  if (request.command == Command::Helps)
    addWhatHelps(solution, read.rig, request.together > 0 ? request.together : rigs::kUsualTogether,
                 audience.reader);
  if (request.command == Command::Sure) rigs::addHowSure(solution, read.rig);
  // Who has to be ready asks how sure that is.
  const bool tellsClocks = request.command == Command::Day || request.command == Command::Overview;
  for (std::size_t i = 0; solution.plan.ready && tellsClocks && i < solution.plan.rigs.size(); ++i)
    if (!read.rig || *read.rig == i) rigs::addBands(solution, i);
  if (request.form == Form::Json) return {rigs::resultJson(solution.plan, solution.answers), {}, 0};
  const rigs::Searches shown = searchesOf(request.command);
  if (shown != rigs::Searches{}) solution.sweeps = rigs::solve(solution.plan, shown).sweeps;
  const Page page = pageOf(request, solution, audience.reader, read.rig);
  if (request.form == Form::Csv) return {pageCsv(page, audience.reader), {}, 0};
  if (request.brief) return {verdictsAlone(page, audience.reader, audience.style), {}, 0};
  return {pageText(page, audience.reader, audience.style), {}, 0};
}

}  // namespace

Finished askAboutPlan(const Request& request, const Audience& audience, rigs::Problems ofOptions,
                      telling::Draw draw) {
  const PlanInput read = readPlan(request, std::move(ofOptions));
  // Who asked for JSON gets problems as JSON, whatever the question was.
  if (request.form == Form::Json && (!read.fine() || request.command == Command::Check))
    return {rigs::problemsJson(read.allProblems(), rigs::inEnglish(read.name)),
            {},
            read.fine() ? 0 : 2};
  const rigs::Reader& reader = audience.reader;
  const std::size_t width = audience.style.width;
  std::string complaint = problemText(read.ofOptions, theCommand(), reader, width) +
                          problemText(read.ofDocument, read.name, reader, width);
  if (!read.fine()) return {{}, std::move(complaint), 2};
  if (request.command == Command::Check) return checked(read, audience, std::move(complaint));
  Finished finished = isDrawn(request.command)            ? drawn(request, read, audience, draw)
                      : request.command == Command::Sheet ? sheetOfPlan(request, read, audience)
                                                          : answered(request, read, audience);
  finished.complaint = complaint + finished.complaint;
  return finished;
}

}  // namespace gui
