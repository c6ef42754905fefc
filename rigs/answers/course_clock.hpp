// SPDX-License-Identifier: GPL-3.0-or-later
// Many days that may come, by the one clock on the wall: counted from the last event that happened.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "physics/units.hpp"
#include "rigs/answers/bands.hpp"
#include "rigs/answers/day_course.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// Which stage of the plan's day began when, by what was written down.
struct Happened {
  std::size_t stage = 0;
  physics::Time at;  // from the midnight before the plan's day
};

// Times are from the midnight before the plan's day. Refers to the days it is given.
class CourseClock {
 public:
  // `kinds` are the stages of the plan's day; without `last` days begin at `startOfDay`.
  CourseClock(const std::vector<DayCourse>& days, std::vector<physics::StageKind> kinds,
              physics::Time startOfDay, const std::optional<Happened>& last);

  const std::vector<DayCourse>& days() const { return days_; }
  const std::vector<physics::StageKind>& kinds() const { return kinds_; }
  const std::optional<Happened>& last() const { return last_; }

  // Of all days by their weights. Behind the last stage: the end of the day. Of a boil: the roll,
  // where half the days or more roll at all. Empty where so many never get there.
  Band<physics::Time> begin(std::size_t stage) const;
  // The same of one day; kNoSuchDay where it never gets there.
  double begin(const DayCourse& day, std::size_t stage) const;
  // When that day is over or stops, whatever it came to.
  double end(const DayCourse& day) const;
  // A moment of the clock in that day, since it began; nothing where it never had the last event.
  std::optional<physics::Time> since(const DayCourse& day, physics::Time clock) const;
  double share(physics::Outcome outcome) const;

  // From now on no day comes to `stage` before `now`: it has not begun, and what follows waits.
  void wait(std::size_t stage, physics::Time now);
  bool waits() const { return waiting_.has_value(); }

  template <class Of, class Make>
  auto band(const Of& of, const Make& make) const {
    std::vector<double> numbers;
    for (const DayCourse& day : days_) numbers.push_back(of(day));
    return bandFrom(numbers, make, [this](const std::vector<double>& all, double share) {
      return quantile(all, share);
    });
  }

 private:
  std::optional<double> quantile(const std::vector<double>& numbers, double share) const;
  std::optional<double> offset(const DayCourse& day) const;
  double unhindered(const DayCourse& day, std::size_t stage) const;
  double waited(const DayCourse& day) const;

  const std::vector<DayCourse>& days_;
  std::vector<physics::StageKind> kinds_;
  physics::Time startOfDay_;
  std::optional<Happened> last_;
  std::optional<Happened> waiting_;
  std::vector<double> weights_;
  bool mostRoll_ = false;
};

// The stages of the day that gets furthest.
std::vector<physics::StageKind> kindsOf(const std::vector<DayCourse>& days);
// The last of these that tells of one of `kinds`; without grain "plugged in" begins the first.
std::optional<Happened> lastHappened(const std::vector<readings::Reading>& read,
                                     const std::vector<physics::StageKind>& kinds);

}  // namespace rigs
