// SPDX-License-Identifier: GPL-3.0-or-later
// Which reading would help most, and which soonest, of a day that has been read so far.
#pragma once

#include <optional>
#include <vector>

#include "physics/units.hpp"
#include "rigs/answers/reading_fit.hpp"
#include "rigs/fitting/posterior.hpp"

namespace rigs {

// A reading that might follow, and what it would do for the figure that is waited for.
struct NextReading {
  physics::Time at;        // from the midnight before the day
  double halfWidth = 0.0;  // of eight in ten, then
};
enum class Awaited { Morning, BoilBegins };
// What is waited for, and which look at the thermometer would narrow it.
struct WhatNext {
  std::optional<Awaited> awaited = {};
  double halfWidthNow = 0.0;                  // of eight in ten; K or s
  std::optional<NextReading> best, earliest;  // the second gives four fifths of the first's gain
};

// What a prediction of hours ahead may be off by whatever was read, in kelvin: .3 K and 1 % of how
// far the wort is above the room. So no logger promises what the laws of loss cannot keep.
double lawsMayBeOff(physics::Temperature wort, const Plan& plan);

// Of a thermometer, on full or half hours while people are awake, after the last reading and an
// hour before what is waited for: the morning of a night alone, else the boil. Empty where all of
// that is over.
WhatNext whatNext(const ReadingFit& fit, const Plan& plan, const fitting::Story& story,
                  const std::vector<readings::Reading>& read);

}  // namespace rigs
