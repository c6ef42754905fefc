// SPDX-License-Identifier: GPL-3.0-or-later
// How a day that goes on is told: what was read last, what comes, what to heed. See followed.hpp.
//
// Times are from the midnight before the plan's day.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "physics/units.hpp"
#include "rigs/answers/bands.hpp"
#include "rigs/answers/learned.hpp"

namespace rigs {

// Nearer to boiling than this, foam may rise. Own choice: protein foams some kelvin below.
inline constexpr physics::TemperatureDifference kNearBoiling = physics::kelvins(4.0);
// An alarm is told so long before it is due.
inline constexpr physics::Time kSoon = physics::minutes(10.0);
// A clock that reads further ahead than this is told.
inline constexpr physics::Time kClocksMayDiffer = physics::minutes(2.0);

// What was read last against what was expected. Numbers are SI, of the reading's kind; of an event
// its time.
struct LastRead {
  std::size_t which = 0;  // of the readings
  std::optional<double> low = {}, middle = {}, high = {};
  double surprise = 0.0;      // standard deviations, as learned has it; 0 of an event
  bool contradicted = false;  // by the other readings: it counts nearly nothing
  bool isOfTheDay = true;     // the plan's day says something for that moment
};

struct Coming {
  std::size_t stage = 0;                     // of the plan's day; behind its last the end of it
  std::optional<physics::StageKind> begins;  // empty: the end, when the element goes off
  Band<physics::Time> at;                    // with what was read
  Band<physics::Time> planned;               // before anything was read, by the plan's clock
  Band<physics::Temperature> wort;           // then, of a mash that was left alone; else empty
  bool isDue = false;                        // its time is over, and nobody wrote that it began
};

enum class AlarmOf {
  NearBoil,
  MashBelowHolding,  // food service's hot holding, kWarmUpTo
  ElementUncovered,
  DayStops,             // before it comes to its strike or rest
  Late,                 // by more than the plan's own band allowed
  ReadingContradicted,  // it does not fit
  TwoStories,           // the readings do not go together
  OtherUnit,            // all of them, it seems
  TwelveHoursOff,
  EventMissing,  // what was read lies where no part of the day is
  FromTheFuture
};
struct Alarm {
  AlarmOf what;
  bool isNow = false;  // else it is to come
  Band<physics::Time> at = {};
  physics::Time by = physics::seconds(0.0);  // late, or ahead of the clock
  double share = 1.0;                        // of such days
};

struct Followed {
  physics::Time now = physics::seconds(0.0);
  bool isSure = true;  // else bands are of the likeliest day alone
  std::optional<NothingLearned> nothing = {};
  std::optional<LastRead> last = {};
  std::vector<Coming> coming = {};       // in the order of the clock
  Band<physics::Temperature> wort = {};  // now, where it was not left longer than planned
  double rolls = 1.0;                    // share of the days
  Band<physics::Time> end = {};          // of the day: passed or to come
  bool isOver = false;                   // nothing more comes
  std::vector<Alarm> alarms = {};
};

}  // namespace rigs
