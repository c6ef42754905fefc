// SPDX-License-Identifier: GPL-3.0-or-later
// What to heed at once on a day that goes on, in words and for programs. Each has its words here
// and nowhere else.
#pragma once

#include <string_view>

#include "rigs/answers/day_ahead.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// "near_boil".
std::string_view alarmCode(AlarmOf what);
// Clocks are as seen from the day of `now`: without "+1 d" on that day itself.
Told alarmText(const Alarm& alarm, physics::Time now);
// Of a moment from the midnight before the plan's day, as whoever looks at `now` says it. What was
// is within the last 24 hours.
Clock clockSeenAt(physics::Time now, physics::Time moment);

Told otherUnitText();
Told twelveHoursOffText();

}  // namespace rigs
