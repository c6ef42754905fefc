// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? The same rig bare and jacketed, brewing the same batch.
#pragma once

#include <optional>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace physics {

// Steady losses at one wort temperature and the fill the bare rig has then.
struct LossPair {
  Temperature at;
  Power bare, jacketed;          // all paths
  Power bareSide, jacketedSide;  // wetted side and dry wall only
  Power saved() const { return bare - jacketed; }
  // Of the side's own loss; may be negative for a thin dark jacket on bright metal.
  double sideShareSaved() const { return 1.0 - static_cast<double>(jacketedSide / bareSide); }
};

// Of the time to strike or from mash to boil, what must be saved to be called worth it: common
// sense, own judgement.
inline constexpr double kWorthwhileShareOfTime = 0.05;

enum class JacketVerdict {
  MakesItBoil,  // the bare rig stops before its day is done, the jacketed one does not
  GetsFurther,  // both stop before the day is done, the jacketed rig in a later stage
  Worthwhile,
  TimeNotWorthIt,  // little time, but it holds the mash or saves noticeable energy
  NotWorthIt
};
// Why a saving is small, when it is.
struct JacketReasons {
  bool strongElementHidesLosses = false;  // side losses are a small share of the element's heat
  bool skinRadiatesMore = false;          // under a fifth of the side's loss is saved
  bool surfaceDominates = false;          // most heat leaves by the open surface
};

struct JacketEffect {
  BrewDay bare, jacketed;
  LossPair atMash, atBoil;
  // Empty where one of the two days does not get there.
  std::optional<Time> savedToStrike, savedToBoil;
  // Whole day, at the meter; negative if more. Empty unless both days are done: a day that ends
  // where it levels off takes what it takes to get there, which is less the earlier it stops.
  std::optional<Energy> savedFromWall;
  // Left alone from the mash temperature: what is left after `alone`.
  Time alone;
  Temperature bareAfter, jacketedAfter;
  std::vector<CurvePoint> bareNight, jacketedNight;  // as coolingCurve() has them
  JacketVerdict verdict;
  JacketReasons reasons;
};

// Which of the two is the rig as it is planned; the other one is supposed.
enum class AsPlanned { Bare, Jacketed };

// Both rigs brew the batch: where wort is wanted, each pours the water it needs for it, so that the
// planned rig's day is the one it has everywhere else. Where one of the days stops early there is
// no such water; then the supposed rig gets what the planned one pours.
struct JacketDays {
  BrewDay bare, jacketed;
};
JacketDays jacketDays(const Rig& bare, const Rig& jacketed, const Batch& batch, const Place& place,
                      AsPlanned planned, const SimulationOptions& options = {});
// With a planned day that is known.
BrewDay supposedDay(const BrewDay& planned, const Rig& supposed, const Batch& batch,
                    const Place& place, const SimulationOptions& options = {});

JacketEffect compareJacket(const Rig& bare, const Rig& jacketed, const Batch& batch,
                           const Place& place, Time alone, AsPlanned planned = AsPlanned::Bare);
// The same with a planned day that is known.
JacketEffect compareJacket(const Rig& bare, const Rig& jacketed, const Batch& batch,
                           const Place& place, Time alone, AsPlanned planned, const BrewDay& known);

// Temperature of a full, unplugged mash after a time, from its first rest's temperature. Of a batch
// that is itself left unplugged it is that mash, as far as the rig gets to it.
Temperature leftAlone(const Rig& rig, const Batch& batch, const Place& place, Time alone);
// The same as points evenly spaced in time, from the moment it is left alone. Empty if even a
// very strong element could not heat the strike water.
std::vector<CurvePoint> coolingCurve(const Rig& rig, const Batch& batch, const Place& place,
                                     Time alone);
// The batch with the water that a day poured: what is asked of its mash beyond the day.
Batch asPoured(const Batch& batch, const BrewDay& day);

}  // namespace physics
