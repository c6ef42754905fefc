// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/read_course.hpp"

#include <algorithm>

#include "rigs/answers/course_clock.hpp"
#include "rigs/answers/next_reading.hpp"

namespace rigs {
namespace {

using namespace physics;

// Between the hour of a reading and this much later the laws' own error grows in. Own choice.
constexpr double kLawsGrowIn = 3.0 * 3600.0;
constexpr std::size_t kTimes = 97;

std::vector<BandCoursePoint> courseBy(const CourseClock& clock, const Plan& plan, Time over,
                                      const std::vector<readings::Reading>& read) {
  std::vector<BandCoursePoint> course;
  for (std::size_t i = 0; i < kTimes; ++i) {
    const Time since = static_cast<double>(i) / static_cast<double>(kTimes - 1) * over;
    const Time at = plan.startOfDay + since;
    const auto worts = clock.band(
        [&](const DayCourse& day) {
          const auto own = clock.since(day, at);
          if (!own || *own < seconds(0.0) || day.wort.empty()) return kNoSuchDay;
          return inKelvin(withLawsGrown(day, day.wortAt(*own), plan, read, at));
        },
        [](double n) { return kelvin(n); });
    if (worts.low && worts.middle && worts.high) course.push_back({since, worts});
  }
  return course;
}

}  // namespace

double lawsGrownIn(const std::vector<readings::Reading>& read, Time at) {
  if (read.empty()) return 0.0;  // then unknowns are as wide as they get
  return std::clamp(inSeconds(at - read.back().at) / kLawsGrowIn, 0.0, 1.0);
}

Temperature withLawsGrown(const DayCourse& day, Temperature wort, const Plan& plan,
                          const std::vector<readings::Reading>& read, Time at) {
  return wort + day.lawsOff * lawsGrownIn(read, at) * kelvins(lawsMayBeOff(wort, plan));
}

ReadCourse readCourse(const Plan& plan, const std::vector<DayCourse>& planned,
                      const std::vector<readings::Reading>& read, const Learned& learned) {
  const std::vector<StageKind> kinds = kindsOf(planned);
  const auto last = lastHappened(read, kinds);
  const CourseClock before(planned, kinds, plan.startOfDay, last);
  const auto end = before.begin(kinds.size());
  const Time over = end.middle        ? *end.middle - plan.startOfDay
                    : planned.empty() ? seconds(0.0)
                                      : planned.front().over;
  ReadCourse course{.before = courseBy(before, plan, over, {}),
                    .after = {},
                    .stage = {},
                    .isSure = learned.courses.size() > 1};
  if (last)
    if (const auto until = before.begin(last->stage + 1).middle; until && *until > last->at)
      course.stage = {last->at - plan.startOfDay, *until - plan.startOfDay};
  if (!learned.courses.empty())
    course.after =
        courseBy(CourseClock(learned.courses, kinds, plan.startOfDay, last), plan, over, read);
  return course;
}

}  // namespace rigs
