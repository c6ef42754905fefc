// SPDX-License-Identifier: GPL-3.0-or-later
// How an element works over the day: what its circuit sees.
#pragma once

#include <vector>

#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace physics {

// A part of the day with a steady pattern. A controller switches the element fully on and off, so
// the share is of time, and the current, when it flows, is the whole one.
struct DutySpan {
  Time begin, end;
  double share = 0.0;    // of the time in which the current flows, 0-1
  bool enabled = false;  // the element may switch on at any moment
};

struct Duty {
  std::vector<DutySpan> spans;  // in order, without gaps; empty for a day without stages

  Time current() const;  // in all, in which current flows
  double mean() const;   // share of the whole day
  // The longest time of unbroken full current, neighbouring stages together.
  Time longestFull() const;
  // The longest time from the element being switched on to its being unplugged. A pause for
  // mashing in does not end it; a mash left alone does.
  Time longestEnabled() const;
  // The most current-carrying time, and the most enabled time, within any stretch of this length.
  Time mostCurrentWithin(Time stretch) const;
  Time mostEnabledWithin(Time stretch) const;
};
// From this share on a span counts as unbroken full current.
inline constexpr double kUnbroken = 0.99;

// Of a simulated day. A boil at part power switches the element on and off as a hold does.
Duty dutyOf(const BrewDay& day);

}  // namespace physics
