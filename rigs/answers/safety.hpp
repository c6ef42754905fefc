// SPDX-License-Identifier: GPL-3.0-or-later
// Figures behind the cautions: scalds, cooling of wort, weights, lids under pressure, and what of
// a day comes near them.
#pragma once

#include <optional>

#include "physics/units.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Water on adult skin, after Moritz & Henriques, Am. J. Pathol. 23 (1947) 695, as an industry page
// tables it. The one set used here; the United States' CPSC prints another (at 120 F 5 min in
// place of 10 min to the third degree): never mix them.
struct Scald {
  physics::Time secondDegree, thirdDegree;
};
// At the tabled temperature at or below; nullopt below 45 C, the shortest from 60 C on.
std::optional<Scald> scaldAt(physics::Temperature water);

// Above it the last row's times are the most.
inline constexpr physics::Temperature kHottestTabledScald = physics::celsius(60.0);
// Of all rigs' rests; nullopt where nothing is mashed.
std::optional<physics::Temperature> hottestMash(const Answers& answers);

// Newton's cooling with one time constant: how long from one temperature down to another, 0 where
// it is as cold already, nullopt where the surroundings are not cold enough.
std::optional<physics::Time> coolingTime(physics::Time timeConstant, physics::Temperature from,
                                         physics::Temperature to,
                                         physics::Temperature surroundings);
// The time constant that passes from 57 to 21 C within 2 h (FDA Food Code 3-501.14(A)).
std::optional<physics::Time> timeConstantForFood(physics::Temperature surroundings);
// Bacteria that double every `doubling` (USDA: about 20 min) multiply by this.
double growth(physics::Time time, physics::Time doubling);

// Force on a lid over saturated steam at t, against one atmosphere.
double newtonsOnLid(physics::Length diameter, physics::Temperature t);

// NIOSH load constant: 23 kg (51 lb) under ideal conditions.
inline constexpr physics::Mass kLiftingLimit = physics::kilograms(23.0);

// Wort by its volume and gravity at 20 C.
physics::Mass wortMass(physics::Volume atTwentyDegrees, double gravity);
// The kettle at its heaviest: mashed in, with all its water and grain, or full of wort before the
// boil.
physics::Mass heaviestKettle(const physics::BrewDay& day, const physics::Batch& batch,
                             const physics::Vessel& vessel);

// Time that wort spends between kWarmFrom and kWarmUpTo while it is in the kettle, temperatures
// between a stage's ends taken as straight; of the plan's own night, as it cools.
physics::Time warmTime(const RigAnswer& rig);

}  // namespace rigs
