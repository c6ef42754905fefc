// SPDX-License-Identifier: GPL-3.0-or-later
// What do time and heat do to the wort? To malt's starch in the mash, to hops and to what smells of
// DMS, along the temperature that the day already has; for comparing rigs and days, not for
// bitterness as such.
#pragma once

#include <memory>
#include <optional>

#include "physics/brewday.hpp"
#include "physics/hot_wort_changes.hpp"
#include "physics/mash_conversion.hpp"
#include "physics/units.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct ChillAnswer;

struct HotStage {
  physics::Time lasts{};
  physics::HotMinutes worth{};
};

// Whether a boil carries DMS off. Edges: about 5 and 8 % an hour, as the precursor's rate and what
// vapour takes along have it for a boil of an hour (own); no kettle is that exact.
enum class CarriesOff { Little, Uncertain, Much };
inline constexpr double kLittleUntil = 0.05;
inline constexpr double kMuchFrom = 0.08;
CarriesOff carriesOff(double evaporatedPerHour);

// From where the heating to the boil begins.
struct BoiledWort {
  physics::Temperature boiling;  // or how hot what stands for a boil is by its end
  physics::Temperature
      begins;             // as its clock starts: what does not roll may fall or rise from there
  bool rolled = false;    // from its start on
  bool isOfMalt = false;  // mashed here: else nobody knows whether it has DMS's precursor
  HotStage heatingUp, boil, stand, chilling;
  // Where a still coil may take longer than `chilling`.
  std::optional<HotStage> chillingAtMost;
  HotStage byItself;            // instead of `chilling`: left in its kettle, lid as in the mash
  bool isLeftByItself = false;  // which is what is planned
  physics::HotMinutes whole() const;  // as planned
  // For hops: what the planned minutes at boiling at sea level would be worth, and how long a boil
  // is worth that here; nothing of what does not roll, or rolls below kIsoMeasuredFrom.
  physics::Time atSeaLevel;
  std::optional<physics::Time> forSeaLevel;
  // Of the precursor that was in the wort as it began to be heated.
  physics::Sulfide boiled, chilled, leftByItself;
  double evaporatedPerHour = 0.0;  // of the wort before the boil
};

// Until the grain is lifted.
struct MashedWort {
  physics::MashConversion conversion;
  bool isLeftAlone = false;  // for hours, and nobody stirs
  // Of the finished wort by the plan's yield, and once it has fermented as far as it can. Nothing
  // where there is none, no limit, extract that did not come from the mash, or starch of some malt
  // that the mash does not get: the yield is not what was planned then.
  struct Gravity {
    double before, afterLeast, afterMost;
  };
  std::optional<Gravity> gravity;
};

struct WortAnswer {
  bool asked = false;                // for itself; else for a picture beside others
  std::optional<MashedWort> mashed;  // of a batch that mashes, to the end
  std::optional<BoiledWort> boiled;  // of finished wort
};

// Null where it would have neither. Needs the day's curves. After the boil DMS is taken to stay, as
// under a lid.
std::shared_ptr<const WortAnswer> wortAnswer(const Plan& plan, const physics::BrewDay& day,
                                             const ChillAnswer* chill, bool asked);

}  // namespace rigs
