// SPDX-License-Identifier: GPL-3.0-or-later
// A plan's unknowns and a brewer's readings as one problem of numbers: see rigs/fitting.
#pragma once

#include <atomic>
#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "rigs/answers/bands.hpp"
#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/read_day.hpp"
#include "rigs/fitting/posterior.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// Those of the plan, factors by their logarithms, and the thermometer's offset in kelvin.
inline constexpr std::size_t kFitted = kUnknowns + 1;
inline constexpr std::size_t kThermometer = kUnknowns;

// What is compared with a day: a reading, or several of a log together.
struct Compared {
  std::size_t which = 0;  // of the readings
  ReadAt when;
  readings::Value value;  // which kind, in what follows SI
  std::size_t rows = 1;
};

inline constexpr double kFarthest = 6.0;

// Of a thermometer, before anything is read. Estimates: ten thermocouples in one pot differed by
// half a kelvin; ice or boiling water tells it to a fifth of one.
inline constexpr double kThermometerOff = 0.5, kCheckedOff = 0.2;  // K

// Of a thermometer in stirred wort, before rounding.
inline constexpr double kStirredNoise = 0.2;  // K

class ReadingFit {
 public:
  // Readings for which the plan's own day says nothing are left out; see uses().
  ReadingFit(const Plan& plan, std::size_t rig, const std::vector<readings::Reading>& read,
             const readings::Thermometer& thermometer, std::function<bool()> stop);

  const std::vector<Compared>& compared() const { return compared_; }
  const fitting::Evidence& evidence() const { return evidence_; }
  const DaysOfARig& days() const { return days_; }
  bool stopped() const { return stopped_; }
  // Whether a place is nowhere more than kFarthest spreads from what is believed: nobody follows
  // days of kettles beyond that.
  bool isLikely(const fitting::Numbers& at) const;
  // Of the problem without any reading: the unknowns at their medians.
  fitting::Numbers medians() const;

  UnknownValues valuesOf(const fitting::Numbers& at) const;
  physics::BrewDay dayAt(const fitting::Numbers& at) const;
  // The same as far as readings ask for it.
  physics::BrewDay readDayAt(const fitting::Numbers& at) const;
  // What would be read of each compared(); NaN where that day has no such moment.
  fitting::Numbers saidBy(const physics::BrewDay& day, const fitting::Numbers& at) const;
  fitting::Model model() const;
  // Anything else of each day, at once.
  fitting::Model modelOf(
      std::function<fitting::Numbers(const physics::BrewDay&, const fitting::Numbers&)> what) const;

 private:
  using DayAt = physics::BrewDay (ReadingFit::*)(const fitting::Numbers&) const;
  fitting::Model modelOf(
      DayAt simulated,
      std::function<fitting::Numbers(const physics::BrewDay&, const fitting::Numbers&)> what) const;
  void compare(const std::vector<readings::Reading>& read,
               const readings::Thermometer& thermometer);
  void compareTemperatures(const std::vector<readings::Reading>& read,
                           const std::vector<ReadAt>& moments,
                           const readings::Thermometer& thermometer);
  bool areAllInTheMash() const;
  void add(Compared one, const fitting::Observation& seen);
  fitting::Observation temperatureSeen(double kelvin, double step, double spread,
                                       const ReadAt& when, bool stirred) const;

  const Plan& plan_;
  DaysOfARig days_;
  std::function<bool()> stop_;
  mutable std::atomic<bool> stopped_ = false;
  physics::BrewDay median_;
  bool mashIsEnough_ = false;
  double secondsApart_ = 1.0;  // to which times were read
  std::vector<Compared> compared_;
  fitting::Evidence evidence_;
  std::optional<ReadAt> meterZero_;  // from when a meter is counted, if not from the beginning
};

}  // namespace rigs
