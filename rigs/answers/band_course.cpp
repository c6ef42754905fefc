// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/band_course.hpp"

#include <algorithm>
#include <iterator>

#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/even_points.hpp"

namespace rigs {
namespace {

using namespace physics;

// Between them by straight lines: every eight minutes of a day of twelve hours.
constexpr std::size_t kTimes = 97;

std::vector<CurvePoint> curveOf(const BrewDay& day) {
  std::vector<CurvePoint> whole;
  for (const Stage& stage : day.stages)
    whole.insert(whole.end(), stage.curve.begin(), stage.curve.end());
  return whole;
}

Temperature wortThen(const std::vector<CurvePoint>& curve, Time time) {
  const auto after = std::upper_bound(
      curve.begin(), curve.end(), time,
      [](const Time& asked, const CurvePoint& point) { return asked < point.time; });
  if (after == curve.begin()) return curve.front().wort;
  if (after == curve.end()) return curve.back().wort;
  const CurvePoint& before = *std::prev(after);
  const double along = static_cast<double>((time - before.time) / (after->time - before.time));
  return before.wort + along * (after->wort - before.wort);
}

}  // namespace

std::optional<std::vector<BandCoursePoint>> bandCourse(const Plan& plan, std::size_t rig,
                                                       const std::function<bool()>& stop,
                                                       std::size_t days) {
  const DaysOfARig drawn(plan, rig);
  SimulationOptions options = kForBands;
  const Time over = simulate(drawn.with(asPlannedValues()), options).duration();
  options.curves = true;
  std::vector<Time> times;
  for (std::size_t i = 0; i < kTimes; ++i)
    times.push_back(static_cast<double>(i) / static_cast<double>(kTimes - 1) * over);
  const auto worts = forAllUnless(stop, evenPoints(days, kUnknowns), [&](const auto& point) {
    const std::vector<CurvePoint> curve = curveOf(simulate(drawn.at(point), options));
    std::vector<double> kelvins;
    for (const Time& time : times)
      kelvins.push_back(curve.empty() ? kNoSuchDay : inKelvin(wortThen(curve, time)));
    return kelvins;
  });
  if (!worts) return std::nullopt;
  std::vector<BandCoursePoint> course;
  for (std::size_t i = 0; i < times.size(); ++i) {
    std::vector<double> all;
    for (const std::vector<double>& one : *worts) all.push_back(one[i]);
    std::sort(all.begin(), all.end());
    course.push_back({times[i], bandFrom(
                                    all, [](double n) { return kelvin(n); }, quantileOf)});
  }
  return course;
}

}  // namespace rigs
