// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/course_clock.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "rigs/answers/read_day.hpp"
#include "rigs/fitting/posterior.hpp"

namespace rigs {

using namespace physics;

CourseClock::CourseClock(const std::vector<DayCourse>& days, std::vector<StageKind> kinds,
                         Time startOfDay, const std::optional<Happened>& last)
    : days_(days), kinds_(std::move(kinds)), startOfDay_(startOfDay), last_(last) {
  for (const DayCourse& day : days_) weights_.push_back(day.weight);
  mostRoll_ = share(Outcome::Done) >= 0.5;
}

std::optional<double> CourseClock::offset(const DayCourse& day) const {
  if (!last_) return inSeconds(startOfDay_);
  if (last_->stage >= day.stages.size()) return std::nullopt;
  return inSeconds(last_->at - day.stages[last_->stage].begin);
}

double CourseClock::unhindered(const DayCourse& day, std::size_t stage) const {
  const auto off = offset(day);
  if (!off) return kNoSuchDay;
  if (stage >= kinds_.size())
    return getsToTheEnd(day.outcome) ? *off + inSeconds(day.over) : kNoSuchDay;
  if (stage >= day.stages.size()) return kNoSuchDay;
  if (kinds_[stage] == StageKind::Boil && mostRoll_ && day.outcome != Outcome::Done)
    return kNoSuchDay;
  return *off + inSeconds(day.stages[stage].begin);
}

double CourseClock::waited(const DayCourse& day) const {
  if (!waiting_) return 0.0;
  const double awaited = unhindered(day, waiting_->stage);
  return std::isfinite(awaited) ? std::max(0.0, inSeconds(waiting_->at) - awaited) : 0.0;
}

double CourseClock::begin(const DayCourse& day, std::size_t stage) const {
  const double free = unhindered(day, stage);
  return waiting_ && stage >= waiting_->stage ? free + waited(day) : free;
}

double CourseClock::end(const DayCourse& day) const {
  const auto off = offset(day);
  return off ? *off + inSeconds(day.over) + waited(day) : kNoSuchDay;
}

Band<Time> CourseClock::begin(std::size_t stage) const {
  return band([&](const DayCourse& day) { return begin(day, stage); },
              [](double s) { return seconds(s); });
}

std::optional<Time> CourseClock::since(const DayCourse& day, Time clock) const {
  const auto off = offset(day);
  if (!off) return std::nullopt;
  return seconds(inSeconds(clock) - *off);
}

double CourseClock::share(Outcome outcome) const {
  double share = 0.0;
  for (std::size_t i = 0; i < days_.size(); ++i)
    if (days_[i].outcome == outcome) share += weights_[i];
  return share;
}

void CourseClock::wait(std::size_t stage, Time now) { waiting_ = Happened{stage, now}; }

std::optional<double> CourseClock::quantile(const std::vector<double>& numbers,
                                            double share) const {
  return fitting::weightedQuantile(numbers, weights_, share);
}

std::vector<StageKind> kindsOf(const std::vector<DayCourse>& days) {
  std::vector<StageKind> kinds;
  const auto furthest = std::max_element(
      days.begin(), days.end(),
      [](const DayCourse& a, const DayCourse& b) { return a.stages.size() < b.stages.size(); });
  if (furthest == days.end()) return kinds;
  for (const CourseStage& stage : furthest->stages) kinds.push_back(stage.kind);
  return kinds;
}

std::optional<Happened> lastHappened(const std::vector<readings::Reading>& read,
                                     const std::vector<StageKind>& kinds) {
  std::optional<Happened> last;
  for (const readings::Reading& one : read) {
    const auto* event = std::get_if<readings::Event>(&one.value);
    const auto kind = event ? stageOf(*event) : std::nullopt;
    if (!kind) continue;
    const auto found = std::find(kinds.begin(), kinds.end(), *kind);
    if (found != kinds.end())
      last = Happened{static_cast<std::size_t>(found - kinds.begin()), one.at};
    else if (*kind == StageKind::Strike && !kinds.empty())
      last = Happened{0, one.at};
  }
  return last;
}

}  // namespace rigs
