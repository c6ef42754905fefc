// SPDX-License-Identifier: GPL-3.0-or-later
// How far does it cool? A full mash with its element off: the plan's own unplugged rest, or the one
// that its goal supposes where it holds its rests.
#pragma once

#include <optional>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/jacket.hpp"
#include "physics/units.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Where wort grows what it should not: from the cold end of FDA Food Code 3-501.14 to hot holding,
// 3-501.16.
inline constexpr physics::Temperature kWarmFrom = physics::celsius(5.0);
inline constexpr physics::Temperature kWarmUpTo = physics::celsius(57.0);
struct NightPoint {
  physics::Time alone;  // since the mash was left
  physics::Temperature wort;

  bool operator==(const NightPoint&) const = default;
};

struct Night {
  physics::Time alone;  // the whole of it
  physics::Temperature first, morning;
  // Below hot holding's limit, kWarmUpTo: from when on, empty where it never is; and how much of
  // the night.
  std::optional<physics::Time> passesAfter;
  physics::Time below;
  physics::Time warm;  // between kWarmFrom and kWarmUpTo
  // At worst, without lag: how often the fastest germ of food at each temperature would double, and
  // when it had physics::kMostDoublings times, empty where it never does; and by how many powers
  // of ten lactic bacteria would grow whose spores survive a mash.
  double doublings;
  std::optional<physics::Time> tooManyAfter;
  double souring;
  // To compare with a thermometer: after 10, 20 and 30 min, every full hour, and at the end.
  std::vector<NightPoint> readings;
  std::vector<NightPoint> curve;  // as simulated, for pictures; empty where nobody asked for curves
};

struct NightAnswer {
  bool own = false;  // the day's own rest; else one that is only supposed
  Night asItIs;
  // The same kettle with the jacket to compare, or without the one it has.
  std::optional<Night> supposed;
};
// What is supposed is told where `jacket` has its day. Empty without a mash, and where even a very
// strong element could not heat the strike water.
std::optional<NightAnswer> nightAnswer(const RigPlan& rig, const Plan& plan,
                                       const physics::BrewDay& day,
                                       const std::optional<physics::JacketEffect>& jacket,
                                       bool curves);

}  // namespace rigs
