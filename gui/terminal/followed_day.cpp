// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/followed_day.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/followed.hpp"
#include "gui/terminal/page.hpp"
#include "gui/terminal/reading_input.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json_followed.hpp"

namespace gui {
namespace {

bool saysSomething(std::string_view text) {
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    const std::string_view line = rigs::readings::withoutBlanks(text.substr(begin, end - begin));
    if (!line.empty() && line.front() != '#') return true;
    begin = end + 1;
  }
  return false;
}

bool isMeasured(const rigs::readings::Reading& one) {
  return !std::holds_alternative<rigs::readings::Event>(one.value);
}

}  // namespace

FollowedDay::FollowedDay(const rigs::Plan& plan, std::size_t rig, const Request& request,
                         const Audience& audience, std::function<bool()> stop)
    : solution_{.plan = plan,
                .answers = rigs::answer(plan, rigs::Depth::Day),
                .sweeps = {},
                .done = {}},
      rig_(rig),
      request_(request),
      audience_(audience),
      stop_(std::move(stop)),
      setting_(rigs::settingOf(plan, rig, nameOfReadings(request))) {}

rigs::readings::ReadLines FollowedDay::linesOf(std::string_view text, bool leaveOut,
                                               rigs::Problems& problems) const {
  // A day of which nothing was read yet is followed, too.
  if (!saysSomething(text)) return {};
  rigs::readings::Corrections corrections = correctionsFrom(request_.readings);
  corrections.leaveOutBadRows = corrections.leaveOutBadRows || leaveOut;
  rigs::Problems found;
  auto lines = rigs::readings::readLines(text, setting_, corrections, found);
  // That nothing is left is no error, either.
  for (rigs::Problem& one : found)
    if (!(lines.readings.empty() && corrections.leaveOutBadRows && one.where == setting_.name &&
          one.severity == rigs::Severity::Error))
      problems.push_back(std::move(one));
  return lines;
}

rigs::Problems FollowedDay::read(std::string_view text, bool leaveOut) {
  rigs::Problems problems;
  lines_ = linesOf(text, leaveOut, problems);
  return problems;
}

bool FollowedDay::learn() {
  if (!planned_) planned_ = rigs::plannedCourses(solution_.plan, rig_, stop_);
  if (!planned_) return false;
  learned_.reset();
  if (std::none_of(lines_.readings.begin(), lines_.readings.end(), isMeasured)) return true;
  learned_ = rigs::learnedFrom(
      rigs::withTheNightThatWas(solution_.plan, lines_.readings), rig_, lines_.readings,
      {.checked = request_.readings.checked, .stirred = !request_.readings.unstirred}, stop_,
      {.before = false, .next = false, .courses = true});
  return learned_.has_value();
}

physics::Time FollowedDay::momentOf(const rigs::readings::WallClock& clock) const {
  return rigs::readings::momentOf(clock, lines_, solution_.plan.startOfDay);
}

rigs::Followed FollowedDay::at(const rigs::readings::WallClock& clock) const {
  return rigs::followed(solution_.plan, planned_.value(), lines_.readings,
                        learned_ ? &*learned_ : nullptr, momentOf(clock));
}

std::string FollowedDay::shown(const rigs::Followed& followed) const {
  const telling::QuestionView view{.rig = static_cast<int>(rig_), .only = rig_};
  const telling::Case of{solution_, solution_.plan, audience_.reader, view};
  if (request_.form == Form::Json) {
    const rigs::Solution alone = telling::ofThisRigAlone(solution_, rig_);
    return rigs::followedJson(solution_.plan, rig_, lines_.readings, followed,
                              telling::actionsOf(of, rig_, followed),
                              rigs::cautionsFor(rigs::About::Boil, alone.plan, alone.answers));
  }
  const telling::Answer answer = telling::howItGoesOn(of, rig_, {lines_.readings, followed});
  Page page;
  page.title = answer.title;
  page.add(answer);
  return pageText(page, audience_.reader, audience_.style);
}

FollowedDay::Typed FollowedDay::typed(const std::string& line, std::string_view text,
                                      const rigs::readings::WallClock& clock) const {
  rigs::Problems before, after;
  const auto lines = linesOf(text, true, before);
  Typed typed{rigs::readings::lineOf(line, clock, lines, solution_.plan.startOfDay), {}};
  std::string whole(text);
  if (!whole.empty() && whole.back() != '\n') whole += '\n';
  const auto number = 1 + std::count(whole.begin(), whole.end(), '\n');
  whole += typed.line + '\n';
  const auto with = linesOf(whole, true, after);
  if (typed.line.starts_with('#') || with.readings.size() > lines.readings.size()) return typed;
  const std::string where = setting_.name + ':' + std::to_string(number);
  for (rigs::Problem& one : after)
    if (one.where == where)
      typed.wrong.push_back({rigs::Severity::Error, line, std::move(one.message)});
  if (typed.wrong.empty())
    typed.wrong.push_back(
        {rigs::Severity::Error, line,
         rigs::Told(TOLD("Terminal",
                         "%1 says nothing that this file has a place for; a temperature, a meter, "
                         "litres, a gravity or an event is accepted, e.g. \"66.3\""),
                    rigs::Quoted{line})});
  return typed;
}

}  // namespace gui
