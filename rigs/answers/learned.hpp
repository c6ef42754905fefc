// SPDX-License-Identifier: GPL-3.0-or-later
// What a brewer's own readings say of a plan's rig: which of its unknowns they tell, how sure that
// is, what they leave open, and where the day ends then.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "rigs/answers/bands.hpp"
#include "rigs/answers/day_course.hpp"
#include "rigs/answers/next_reading.hpp"
#include "rigs/answers/priors.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// As a factor on the plan's own value, in kelvin for what is an offset.
struct Estimate {
  double low = 0.0, middle = 0.0, high = 0.0;  // one in ten below, half, one in ten above
};
// An unknown whose spread stays above this share of what it was has not been learned.
inline constexpr double kNotLearned = 0.8;

struct LearnedUnknown {
  std::optional<Unknown> what;  // empty: the thermometer, which reads so many kelvin too high
  Estimate before, after;
  double spreadLeft = 1.0;  // its spread by that before
  double fromPlan = 0.0;    // how far it went, in its spread before

  bool learned() const { return spreadLeft < kNotLearned; }
};

// One reading, against what was expected before it and against the rest of them in the end.
struct JudgedReading {
  std::size_t which = 0;                      // of the readings
  double expected = 0.0, spreadBefore = 0.0;  // SI; with what was read before it
  double noise = 0.0;                         // SI; of the reading itself
  double surprise = 0.0;                      // standard deviations of both together
  double good = 1.0;                          // the probability that it is no slip
  double fitted = 0.0;                        // what the kettle as learned would have shown
  std::size_t rows = 1;                       // of a log, that it stands for

  bool used = true;  // the plan's day says something for that moment
};
inline constexpr double kABitOutside = 1.5, kAsksAgain = 2.5;

enum class NothingLearned { NothingUsable, NoDay, TooBent };

struct Learned {
  std::optional<NothingLearned> nothing = {};  // why the rest is empty
  std::vector<LearnedUnknown> unknowns;
  std::vector<JudgedReading> judged;
  std::size_t stories = 1;  // more than one: the readings do not go together
  double effective = 0.0;   // draws of equal weight that bands are as good as
  // Told apart badly: only losses per litre, or power per litre, are known.
  bool onlyLossesPerLitre = false, onlyPowerPerLitre = false;
  // The whole of them would fit far better so.
  bool otherUnit = false, twelveHoursOff = false;
  bool hasOffPlan = false;  // an unknown more than two spreads from where it was
  Bands before, after;      // of the day; `after` is empty below kEnoughForQuantiles draws
  WhatNext next;
  // Where they were asked for: days that go with the readings. One alone, the likeliest, where
  // there are too few for quantiles; none where nothing was learned.
  std::vector<DayCourse> courses = {};
};

// Which parts are wanted beside what the readings say of the kettle. None changes another.
struct LearnedParts {
  bool before = true, next = true, courses = false;
};

// Of one rig. `checked` and `stirred` widen or narrow what a thermometer may be off. The same plan
// and readings give the same numbers. Empty where `stop`, asked between days by several threads,
// said so.
std::optional<Learned> learnedFrom(const Plan& plan, std::size_t rig,
                                   const std::vector<readings::Reading>& read,
                                   const readings::Thermometer& thermometer = {},
                                   const std::function<bool()>& stop = {},
                                   const LearnedParts& parts = {});

}  // namespace rigs
