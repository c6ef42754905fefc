// SPDX-License-Identifier: GPL-3.0-or-later
// What becomes of malt's starch along the temperature of a mash: how much of it dissolves and when,
// and how far wort of it can ferment. Two sets of constants, which disagree as far as is known.
#pragma once

#include <array>
#include <optional>

#include "physics/estimate.hpp"
#include "physics/hot_wort_changes.hpp"
#include "physics/units.hpp"

namespace physics {

// How fast swollen starch dissolves: 5.7e31 exp(-220600/RT) below 60 C, 3.1e14 exp(-108300/RT) from
// there, a second, J/mol (Brandam et al., Biochem. Eng. J. 13 (2003) 43; from memory). Printed it
// jumps by 2.2; here it fades from 59 to 60 C (own).
ReactionRate starchDissolution(Temperature t);
// Share of the starch that can at all: from none at 42.25 C to all at 63.35 C on a straight line
// (second hand: a public parameter file of the structure of Koljonen et al., J. Food Eng. 26 (1995)
// 329; that they are theirs is inferred).
double starchAccessible(Temperature t);
// One malt's starch does so hotter than another's: 25 malts began from 58.5 to 64.3 C (Patindol et
// al. 2012, abstract), which is about this to either side.
inline constexpr TemperatureDifference kMaltsApart = kelvins(3.0);
// So much longer than reckoned it may take (own, of ten-minute yields by Rittenauer et al., Foods
// 10 (2021) 1733, which the rates miss by 4 to 10 points).
inline constexpr double kSlowerDissolving = 1.3;

// Enzymes are lost by the first order. First: Brandam et al. (from memory); second: the parameter
// file above. Both of dilute extract; they agree within 1.8 for alpha-amylase from 45 to 75 C and
// within 2.2 for beta-amylase.
enum class EnzymeSet { First, Second };
ReactionRate alphaLoss(EnzymeSet set, Temperature t);
ReactionRate betaLoss(EnzymeSet set, Temperature t);
// In a mash its sugars protect beta-amylase: at 65 C and 2.5 L/kg 17 % were left after 30 min and
// 8 % after 60 (Muller 1991, second hand), which is 93 % lost by 0.074 a minute and 7 % that stay
// (own fit of two numbers to two). Elsewhere by the second set's energy. What is stable at 65 C is
// taken to be lost hotter by so much as the first set's rate is above its own at 65 C (own).
ReactionRate betaLossInMash(Temperature t);
ReactionRate stableBetaLoss(Temperature t);
inline constexpr double kStableBeta = 0.07;

// Of dissolved starch so much is fermentable at once, so much is branched, and the rest is dextrin
// that either amylase makes fermentable, at these rates at 65 C and as much as there is of it,
// with 50 kJ/mol.
struct MashLaw {
  ReactionRate (*alphaLost)(Temperature);
  ReactionRate (*betaLost)(Temperature);
  double stableBeta;  // 0-1 of the beta-amylase
  double atOnce, branched;
  ReactionRate byBeta, byAlpha;
};
// Fitted (own) to apparent attenuation of 82 % at 65 C and 50 % at 75 C (Chandrasekhar, second
// hand, taken as of an hour) and to ten-minute yields; worst residuals 2 and 4 points. With the
// first set as in dilute extract, and with the second set's alpha-amylase and the beta-amylase of a
// mash. That one was fitted before it had a stable part and not again: 79 % and 49 %.
const MashLaw& diluteMash();
const MashLaw& thickMash();

// How fast alpha-amylase may go on trimming branched dextrin at 65 C: not at all, probably no
// faster than, and at most. An estimate: no measured overnight mash was found.
inline constexpr std::array<ReactionRate, 3> kTrimming{perMinute(0.0), perMinute(0.001),
                                                       perMinute(0.002)};

// Shares of the starch, and of each enzyme.
struct Mashed {
  double dissolved = 0.0;
  double convertible = 0.0;          // still dextrin
  std::array<double, 3> branched{};  // still, by each of kTrimming
  double alpha = 1.0, beta = 1.0;    // left
  double stable = 0.0;               // of beta
  double fermentable(std::size_t trimming = 0) const {
    return dissolved - convertible - branched[trimming];
  }
};
// Step by step, each as if it had one temperature: within 5e-4 of RK4 in steps of a second.
// Everywhere: all the starch is accessible at any temperature, as the laws were fitted.
enum class Access { ByTemperature, Everywhere };
Mashed mashed(const MashLaw& law, const HotCurve& curve, Access access = Access::ByTemperature);

// Apparent attenuation, as far as wort of it ferments at all. Of malt's extract 82 % are taken to
// be from starch and 9 % fermentable before (both assumed), real to apparent attenuation by
// Balling's 0.8192.
double attenuationLimit(const Mashed& mash, std::size_t trimming = 0);

// Attenuation is told no closer than by this to either side: about 3 points by malt, 3 by model.
inline constexpr double kAttenuationScatter = 0.04;
// Where it was measured; outside the laws are extended, and colder than the last nothing is told.
inline constexpr Temperature kAttenuationFrom = celsius(60.0);
inline constexpr Temperature kAttenuationTo = celsius(75.0);
inline constexpr Temperature kNoAttenuationBelow = celsius(55.0);
// Up to where starch of some malts is not reached.
inline constexpr Temperature kColdMash = celsius(62.0);
// Attenuation was fitted to mashes of an hour, so that their trimming is in it; within two hours it
// would be no more than kAttenuationScatter.
inline constexpr Time kTrimmingFrom = hours(2.0);
// And for longer than a night nobody should tell what it comes to.
inline constexpr Time kTrimmingTo = hours(14.0);
inline constexpr Temperature kTrimsFrom = celsius(45.0);
inline constexpr Temperature kTrimsTo = celsius(60.0);

// What counts as all of the starch (own).
inline constexpr double kNearlyAllStarch = 0.97;

struct AttenuationLimit {
  double least, most;
  Validity validity;
};
struct MashConversion {
  Time lasts;
  Temperature begins, hottest;
  double reachedAtLeast, reached;  // of the starch: malt that is late by kMaltsApart, and common
  // Of common malt, and of malt that is late by kMaltsApart, both slow by kSlowerDissolving: when
  // kNearlyAllStarch is reached and all but 0.1 % of what can be so cold. Nothing where that is not
  // by the end; what a later ramp adds to it does not count.
  std::optional<Time> doneBy, doneLateBy;
  std::optional<AttenuationLimit> limit;
  Time betweenTrims;  // from kTrimsFrom to kTrimsTo
  // More attenuation than `limit`, probably no more than and at most: by kTrimming and the first
  // set, with which that was estimated. A night from 67 C to 30 C: 4 points, 7.
  struct Trimming {
    double probably, atMost;
  };
  std::optional<Trimming> trimming;
};
// Precondition: a curve that lasts.
MashConversion conversionOf(const HotCurve& curve);

// How much warmer the middle of a bed that nobody stirs is than its side, so long after it was of
// 67 C throughout, in a room of 15 C: a bed 34 cm wide and high, 0.55 W/(m K) and 1.06e-7 m2/s (Lai
// 1989, second hand), that conducts (own), with 1 to 10 W/(m2 K) all round. Coarse loose grain
// mixes itself more.
struct BedSpread {
  Time after;
  TemperatureDifference least, most;
};
inline constexpr std::array<BedSpread, 3> kUnstirredBed{{
    {hours(1.0), kelvins(2.0), kelvins(16.0)},
    {hours(3.0), kelvins(4.0), kelvins(24.0)},
    {hours(10.0), kelvins(6.0), kelvins(28.0)},
}};
// The last of these by then; nothing within the first hour.
std::optional<BedSpread> unstirredBedAfter(Time time);

}  // namespace physics
