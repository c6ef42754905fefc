// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/read_course.hpp"

#include <algorithm>
#include <utility>

#include "rigs/answers/course_clock.hpp"
#include "rigs/answers/reading_fit.hpp"

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
    const double grown = lawsGrownIn(read, at);
    const auto worts = clock.band(
        [&](const DayCourse& day) {
          const auto own = clock.since(day, at);
          if (!own || *own < seconds(0.0) || day.wort.empty()) return kNoSuchDay;
          const Temperature wort = day.wortAt(*own);
          return inKelvin(wort + day.lawsOff * grown * kelvins(lawsMayBeOff(wort, plan)));
        },
        [](double n) { return kelvin(n); });
    if (worts.low && worts.middle && worts.high) course.push_back({since, worts});
  }
  return course;
}

}  // namespace

readings::Setting settingOf(const Plan& plan, std::size_t rig, std::string name) {
  return {.name = std::move(name),
          .startOfDay = plan.startOfDay,
          .boiling = simulate(plan.rigs[rig].rig, plan.batch, plan.place,
                              {.relativeTolerance = 1e-6, .leastForAnyPower = false})
                         .boilingPoint};
}

double lawsGrownIn(const std::vector<readings::Reading>& read, Time at) {
  if (read.empty()) return 0.0;  // then unknowns are as wide as they get
  return std::clamp(inSeconds(at - read.back().at) / kLawsGrowIn, 0.0, 1.0);
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
  ReadCourse course{.before = courseBy(before, plan, over, {}), .after = {}};
  if (!learned.courses.empty())
    course.after =
        courseBy(CourseClock(learned.courses, kinds, plan.startOfDay, last), plan, over, read);
  return course;
}

}  // namespace rigs
