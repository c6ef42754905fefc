// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/mash_conversion.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

#include "physics/constants.hpp"

namespace physics {
namespace {

constexpr Temperature kSixtyFive = celsius(65.0);

// With a factor a minute, and J/mol.
ReactionRate arrhenius(double factor, double energy, Temperature t) {
  return perMinute(factor * std::exp(-energy / (kMolarGasConstant * inKelvin(t))));
}
// As a share of what it is at 65 C.
double relativeTo65(double energy, Temperature t) {
  return std::exp(energy / kMolarGasConstant * (1.0 / inKelvin(kSixtyFive) - 1.0 / inKelvin(t)));
}

// What is a second in the source.
constexpr double kPerMinute = 60.0;
constexpr double kSecondBetaEnergy = 443900.0;
constexpr double kReactionEnergy = 50000.0;

ReactionRate firstAlpha(Temperature t) { return alphaLoss(EnzymeSet::First, t); }
ReactionRate secondAlpha(Temperature t) { return alphaLoss(EnzymeSet::Second, t); }
ReactionRate firstBeta(Temperature t) { return betaLoss(EnzymeSet::First, t); }

// A while at one temperature.
struct Step {
  Time ends, lasts;
  Temperature at;
};

// Short where starch dissolves and beta-amylase is lost within minutes, longer later on.
std::vector<Step> stepsOf(const HotCurve& curve) {
  constexpr double kGrowth = 0.03;
  const Time shortest = seconds(3.0);
  const TemperatureDifference warmth = kelvins(0.5);
  std::vector<Step> steps;
  Time now = seconds(0.0);
  for (const HotPiece& piece : curve) {
    const TemperatureDifference rise = piece.to - piece.from;
    const auto at = [&](Time along) {
      return piece.from + static_cast<double>(along / piece.lasts) * rise;
    };
    for (Time along = seconds(0.0); along < piece.lasts;) {
      Time step = std::max(shortest, kGrowth * now);
      if (abs(rise) > warmth) step = std::min(step, piece.lasts * (warmth / abs(rise)));
      const bool last = step >= piece.lasts - along;
      if (last) step = piece.lasts - along;
      now += step;
      steps.push_back({.ends = now, .lasts = step, .at = at(along + 0.5 * step)});
      if (last) break;
      along += step;
    }
  }
  return steps;
}

// What of the starch dissolves in a step.
struct Starch {
  Access access = Access::ByTemperature;
  TemperatureDifference later = kelvins(0.0);
  double slower = 1.0;

  double waitsAt(Temperature t, double dissolved) const {
    const double most = access == Access::Everywhere ? 1.0 : starchAccessible(t - later);
    return std::max(0.0, most - dissolved);
  }
  double dissolvesIn(const Step& step, double dissolved) const {
    const double turns =
        static_cast<double>(starchDissolution(step.at - later) / slower * step.lasts);
    return waitsAt(step.at, dissolved) * -std::expm1(-turns);
  }
};

// Share that is left on average of what goes by `turns` in all.
double meanLeft(double turns) { return turns < 1e-9 ? 1.0 : -std::expm1(-turns) / turns; }

void take(Mashed& mash, const MashLaw& law, const Step& step, const Starch& starch) {
  const auto over = [&](ReactionRate rate) { return static_cast<double>(rate * step.lasts); };
  const double alphaLost = over(law.alphaLost(step.at));
  const double betaLost = over(law.betaLost(step.at));
  const double stableLost = over(stableBetaLoss(step.at));
  const double faster = relativeTo65(kReactionEnergy, step.at);
  const double alpha = mash.alpha * meanLeft(alphaLost) * faster;
  const double beta =
      (mash.beta * meanLeft(betaLost) + mash.stable * meanLeft(stableLost)) * faster;

  const double fresh = starch.dissolvesIn(step, mash.dissolved);
  const double turned = over(law.byBeta) * beta + over(law.byAlpha) * alpha;
  mash.dissolved += fresh;
  mash.convertible = mash.convertible * std::exp(-turned) +
                     (1.0 - law.atOnce - law.branched) * fresh * meanLeft(turned);
  for (std::size_t i = 0; i < kTrimming.size(); ++i) {
    const double trimmed = over(kTrimming[i]) * alpha;
    mash.branched[i] =
        mash.branched[i] * std::exp(-trimmed) + law.branched * fresh * meanLeft(trimmed);
  }
  mash.alpha *= std::exp(-alphaLost);
  mash.beta *= std::exp(-betaLost);
  mash.stable *= std::exp(-stableLost);
}

Mashed mashedIn(const std::vector<Step>& steps, const MashLaw& law, const Starch& starch) {
  Mashed mash{.beta = 1.0 - law.stableBeta, .stable = law.stableBeta};
  for (const Step& step : steps) take(mash, law, step, starch);
  return mash;
}

struct Dissolving {
  double share;
  std::optional<Time> doneBy;
  Temperature hottest;  // until then
};
Dissolving dissolvedIn(const std::vector<Step>& steps, const Starch& starch) {
  constexpr double kDone = 0.001;
  Dissolving all{.share = 0.0, .doneBy = {}, .hottest = steps.front().at};
  bool waits = true;
  for (const Step& step : steps) {
    all.share += starch.dissolvesIn(step, all.share);
    const bool waited = waits;
    waits = starch.waitsAt(step.at, all.share) > kDone;
    if (waits || waited) all.hottest = std::max(all.hottest, step.at);
    if (!waits && all.share >= kNearlyAllStarch && !all.doneBy) all.doneBy = step.ends;
  }
  return all;
}

std::optional<AttenuationLimit> limitOf(double one, double other, Temperature hottest) {
  if (hottest < kNoAttenuationBelow) return std::nullopt;
  const double middle = 0.5 * (one + other);
  const double scatter = std::max(kAttenuationScatter, 0.5 * std::abs(one - other));
  const bool measured = kAttenuationFrom <= hottest && hottest <= kAttenuationTo;
  return AttenuationLimit{.least = middle - scatter,
                          .most = middle + scatter,
                          .validity = measured ? Validity::InRange : Validity::Extrapolated};
}

}  // namespace

ReactionRate starchDissolution(Temperature t) {
  const auto cold = [&] { return arrhenius(kPerMinute * 5.7e31, 220600.0, t); };
  const auto hot = [&] { return arrhenius(kPerMinute * 3.1e14, 108300.0, t); };
  const double along = inCelsius(t) - 59.0;
  if (along <= 0.0) return cold();
  if (along >= 1.0) return hot();
  return cold() * std::pow(static_cast<double>(hot() / cold()), along);
}

double starchAccessible(Temperature t) {
  constexpr Temperature kNone = kelvin(315.4);
  constexpr Temperature kAll = kelvin(336.5);
  return std::clamp(static_cast<double>((t - kNone) / (kAll - kNone)), 0.0, 1.0);
}

ReactionRate alphaLoss(EnzymeSet set, Temperature t) {
  return set == EnzymeSet::First ? arrhenius(kPerMinute * 6.9e30, 224200.0, t)
                                 : arrhenius(3.86e34, 237700.0, t);
}

ReactionRate betaLoss(EnzymeSet set, Temperature t) {
  return set == EnzymeSet::First ? arrhenius(kPerMinute * 7.6e60, 410700.0, t)
                                 : arrhenius(9.46e67, kSecondBetaEnergy, t);
}

ReactionRate betaLossInMash(Temperature t) {
  return perMinute(0.074 * relativeTo65(kSecondBetaEnergy, t));
}

ReactionRate stableBetaLoss(Temperature t) {
  if (t <= kSixtyFive) return perMinute(0.0);
  return firstBeta(t) - firstBeta(kSixtyFive);
}

const MashLaw& diluteMash() {
  static const MashLaw law{.alphaLost = firstAlpha,
                           .betaLost = firstBeta,
                           .stableBeta = 0.0,
                           .atOnce = 0.04,
                           .branched = 0.30,
                           .byBeta = perMinute(3.3),
                           .byAlpha = perMinute(0.042)};
  return law;
}

const MashLaw& thickMash() {
  static const MashLaw law{.alphaLost = secondAlpha,
                           .betaLost = betaLossInMash,
                           .stableBeta = kStableBeta,
                           .atOnce = 0.07,
                           .branched = 0.325,
                           .byBeta = perMinute(1.3),
                           .byAlpha = perMinute(0.037)};
  return law;
}

Mashed mashed(const MashLaw& law, const HotCurve& curve, Access access) {
  return mashedIn(stepsOf(curve), law, {.access = access});
}

double attenuationLimit(const Mashed& mash, std::size_t trimming) {
  constexpr double kFromStarch = 0.82;
  constexpr double kBefore = 0.09;  // fermentable
  constexpr double kApparent = 0.8192;
  const double neverStarch = 1.0 - kFromStarch;
  return (kBefore + kFromStarch * mash.fermentable(trimming)) /
         (neverStarch + kFromStarch * mash.dissolved) / kApparent;
}

MashConversion conversionOf(const HotCurve& curve) {
  const std::vector<Step> steps = stepsOf(curve);
  assert(!steps.empty());
  const Dissolving slow = dissolvedIn(steps, {.slower = kSlowerDissolving});
  MashConversion all{
      .lasts = steps.back().ends,
      .begins = curve.front().from,
      .hottest = curve.front().from,
      .reachedAtLeast = dissolvedIn(steps, {.later = kMaltsApart}).share,
      .reached = dissolvedIn(steps, {}).share,
      .doneBy = slow.doneBy,
      .doneLateBy = dissolvedIn(steps, {.later = kMaltsApart, .slower = kSlowerDissolving}).doneBy,
      .limit = {},
      .betweenTrims = seconds(0.0),
      .trimming = {}};
  for (const HotPiece& piece : curve) all.hottest = std::max({all.hottest, piece.from, piece.to});
  for (const Step& step : steps)
    if (kTrimsFrom <= step.at && step.at <= kTrimsTo) all.betweenTrims += step.lasts;

  const Mashed dilute = mashedIn(steps, diluteMash(), {});
  const Mashed thick = mashedIn(steps, thickMash(), {});
  all.limit = limitOf(attenuationLimit(dilute), attenuationLimit(thick), slow.hottest);
  if (all.limit && kTrimmingFrom < all.lasts && all.lasts <= kTrimmingTo) {
    const auto more = [&](std::size_t i) {
      return attenuationLimit(dilute, i) - attenuationLimit(dilute);
    };
    all.trimming = {.probably = more(1), .atMost = more(2)};
  }
  return all;
}

std::optional<BedSpread> unstirredBedAfter(Time time) {
  std::optional<BedSpread> last;
  for (const BedSpread& row : kUnstirredBed)
    if (row.after <= time) last = row;
  return last;
}

}  // namespace physics
