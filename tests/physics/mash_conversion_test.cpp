// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/mash_conversion.hpp"

#include <gtest/gtest.h>

#include <boost/math/special_functions/bessel.hpp>
#include <cmath>
#include <numbers>

#include "tests/support/within.hpp"

namespace physics {
namespace {

HotCurve heldAt(double degrees, double minute) {
  return {{.lasts = minutes(minute), .from = celsius(degrees), .to = celsius(degrees)}};
}
// Left to cool in a room of 20 C.
HotCurve driftFrom(double degrees, double constantInHours, int minute) {
  HotCurve curve;
  const auto at = [&](int i) {
    return celsius(20.0 + (degrees - 20.0) * std::exp(-i / 60.0 / constantInHours));
  };
  for (int i = 0; i < minute; i += 2)
    curve.push_back({.lasts = minutes(2.0), .from = at(i), .to = at(i + 2)});
  return curve;
}
HotCurve together(HotCurve first, const HotCurve& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}
double halfOf(ReactionRate rate) { return std::log(2.0) / inPerMinute(rate); }
double limitAt(const MashLaw& law, const HotCurve& curve) {
  return attenuationLimit(mashed(law, curve));
}

// Half-lives in minutes by the constants of both sets, worked out elsewhere with another digit of
// R.
TEST(MashConversion, HasTheRatesOfItsSources) {
  const struct {
    double degrees, secondAlpha, firstAlpha, secondBeta, firstBeta;
  } rows[] = {
      {45, 19040, 10840, 55470, 41120}, {50, 4740, 2919, 4135, 3721}, {55, 1231, 819, 334, 362},
      {60, 333, 238, 29.0, 37.8},       {65, 93.6, 72.1, 2.71, 4.22}, {67, 57.0, 45.1, 1.07, 1.79},
      {70, 27.3, 22.5, .272, .503},     {75, 8.26, 7.29, .029, .064},
  };
  for (const auto& row : rows) {
    SCOPED_TRACE(row.degrees);
    const Temperature t = celsius(row.degrees);
    const auto near = [](double half, double printed) {
      EXPECT_NEAR(half, printed, .01 * printed + .0005);
    };
    near(halfOf(alphaLoss(EnzymeSet::First, t)), row.firstAlpha);
    near(halfOf(alphaLoss(EnzymeSet::Second, t)), row.secondAlpha);
    near(halfOf(betaLoss(EnzymeSet::First, t)), row.firstBeta);
    near(halfOf(betaLoss(EnzymeSet::Second, t)), row.secondBeta);
  }
  for (const auto& [degrees, half] : {std::pair{50.0, 92.5},
                                      {55.0, 26.5},
                                      {60.0, 3.57},
                                      {65.0, 2.00},
                                      {67.0, 1.60},
                                      {70.0, 1.14},
                                      {75.0, .66}})
    EXPECT_NEAR(halfOf(starchDissolution(celsius(degrees))), half, .007 * half) << degrees;
  for (const auto& [degrees, share] :
       {std::pair{45.0, .13}, {55.0, .604}, {60.0, .841}, {65.0, 1.0}, {75.0, 1.0}})
    EXPECT_NEAR(starchAccessible(celsius(degrees)), share, .001) << degrees;
}

// Where two forms meet nothing jumps.
TEST(MashConversion, FadesFromOneRateOfStarchToTheOther) {
  double before = inPerMinute(starchDissolution(celsius(58.9)));
  for (double degrees = 58.92; degrees < 60.2; degrees += .02) {
    const double now = inPerMinute(starchDissolution(celsius(degrees)));
    EXPECT_GT(now, before);
    EXPECT_LT(now, 1.03 * before) << degrees;
    before = now;
  }
}

// Muller 1991 (second hand), 65 C and 2.5 L/kg: 17 % of beta-amylase after 30 min, 8 % after 60;
// more than half of alpha-amylase after 60.
TEST(MashConversion, KeepsTheEnzymesThatAMashWasSeenToKeep) {
  const auto beta = [](double minute) {
    const Mashed mash = mashed(thickMash(), heldAt(65.0, minute));
    return mash.beta + mash.stable;
  };
  EXPECT_NEAR(beta(30.0), .17, .005);
  EXPECT_NEAR(beta(60.0), .08, .005);
  EXPECT_NEAR(mashed(thickMash(), heldAt(65.0, 60.0)).alpha, .641, .001);
  EXPECT_GT(mashed(diluteMash(), heldAt(65.0, 60.0)).alpha, .5);
  // 67 C to 30 C in ten hours, by the same constants elsewhere.
  const HotCurve night = driftFrom(67.0, 6.46, 600);
  EXPECT_NEAR(mashed(thickMash(), night).alpha, .646, .002);
  EXPECT_NEAR(mashed(diluteMash(), night).alpha, .554, .002);
}

// An hour at one temperature with all starch accessible, by RK4 elsewhere: the laws as they were
// fitted, the second of them with its beta-amylase before it had a stable part.
TEST(MashConversion, MakesWhatItsLawsMakeElsewhere) {
  MashLaw before = thickMash();
  before.alphaLost = diluteMash().alphaLost;
  before.betaLost = [](Temperature t) {
    return perMinute(.059) * static_cast<double>(betaLoss(EnzymeSet::First, t) /
                                                 betaLoss(EnzymeSet::First, celsius(65.0)));
  };
  before.stableBeta = 0.0;
  const struct {
    double degrees, dissolved, dilute, thick;
  } rows[] = {{58, .962, .672, .648},
              {60, 1.0, .700, .675},
              {65, 1.0, .699, .675},
              {70, 1.0, .610, .630},
              {75, 1.0, .375, .372}};
  for (const auto& row : rows) {
    SCOPED_TRACE(row.degrees);
    const Mashed dilute = mashed(diluteMash(), heldAt(row.degrees, 60.0), Access::Everywhere);
    EXPECT_NEAR(dilute.dissolved, row.dissolved, .001);
    EXPECT_NEAR(dilute.fermentable(), row.dilute, .002);
    EXPECT_NEAR(mashed(before, heldAt(row.degrees, 60.0), Access::Everywhere).fermentable(),
                row.thick, .002);
  }
  EXPECT_NEAR(limitAt(diluteMash(), heldAt(67.0, 60.0)), .798, .002);
}

// Chandrasekhar (second hand): 82 % at 65 C, 50 % at 75 C, 90 % lager malt, 3 L/kg; each law's
// worst residual as its header has it.
TEST(MashConversion, HoldsWhatWasMeasured) {
  for (const auto& [degrees, apparent] : {std::pair{65.0, .82}, {75.0, .50}}) {
    EXPECT_NEAR(limitAt(diluteMash(), heldAt(degrees, 60.0)), apparent, .02) << degrees;
    EXPECT_NEAR(limitAt(thickMash(), heldAt(degrees, 60.0)), apparent, .04) << degrees;
    const AttenuationLimit limit = conversionOf(heldAt(degrees, 60.0)).limit.value();
    EXPECT_LT(limit.least, apparent);
    EXPECT_GT(limit.most, apparent);
    EXPECT_EQ(limit.validity, Validity::InRange);
  }
  // Harris & MacWilliam 1961: more than 95 % extracted at 65.5 C in an hour.
  EXPECT_GT(conversionOf(heldAt(65.5, 60.0)).reachedAtLeast, .95);
  // Their wort of 62.7 C was more fermentable than that of 65.5 C; here it is no less.
  EXPECT_NEAR(conversionOf(heldAt(62.7, 60.0)).limit->most,
              conversionOf(heldAt(65.5, 60.0)).limit->most, .003);
  // Rittenauer et al. 2021: 97.5 % of the yield in ten minutes at 61.4 to 64.5 C; the rates are low
  // by 4 to 10 points, by the malt that begins first.
  for (const double degrees : {61.4, 63.0, 64.5}) {
    const double first = conversionOf(heldAt(degrees + inKelvins(kMaltsApart), 10.0)).reached;
    EXPECT_GT(first, .975 - .10) << degrees;
  }
  // Converted in 20 to 30 min at 63 to 68 C (practice, and the rows above).
  for (const double degrees : {64.0, 65.0, 66.0, 67.0}) {
    const Time done = conversionOf(heldAt(degrees, 60.0)).doneBy.value();
    EXPECT_GT(done, minutes(20.0)) << degrees;
    EXPECT_LT(done, minutes(30.0)) << degrees;
  }
  // A tun that stood from 70 C to 63 C overnight converted, and its beer was good.
  const MashConversion tun = conversionOf(driftFrom(70.0, 70.0, 600));
  EXPECT_TRUE(tun.doneBy);
  EXPECT_GT(tun.limit->most, .74);
}

// 67 C to 30 C in ten hours: as an hour at 67 C within a point, and 0 to 4 points more if alpha-
// amylase goes on trimming at 0.001 a minute, at most 7 at 0.002.
TEST(MashConversion, TellsWhatANightMayAdd) {
  const MashConversion night = conversionOf(driftFrom(67.0, 6.46, 600));
  const MashConversion hour = conversionOf(heldAt(67.0, 60.0));
  EXPECT_NEAR(night.limit->least, hour.limit->least, .01);
  EXPECT_NEAR(night.limit->most, hour.limit->most, .01);
  ASSERT_TRUE(night.trimming);
  EXPECT_NEAR(night.trimming->probably, .04, .005);
  EXPECT_NEAR(night.trimming->atMost, .07, .005);
  EXPECT_NEAR(night.reached, 1.0, .001);
  // From 60 C to 45 C by the same cooling.
  EXPECT_WITHIN(night.betweenTrims, hours(6.46 * std::log(40.0 / 25.0)), minutes(6.0));
  EXPECT_FALSE(hour.trimming);
  EXPECT_FALSE(conversionOf(driftFrom(67.0, 6.46, 900)).trimming);
}

TEST(MashConversion, IsNeverMoreFermentableHotterThanSixtyFive) {
  for (const double minute : {30.0, 60.0, 120.0}) {
    AttenuationLimit before = conversionOf(heldAt(65.0, minute)).limit.value();
    for (double degrees = 66.0; degrees <= 80.0; degrees += 1.0) {
      SCOPED_TRACE(degrees);
      const AttenuationLimit now = conversionOf(heldAt(degrees, minute)).limit.value();
      EXPECT_LE(now.most, before.most);
      EXPECT_LE(now.least, before.least);
      EXPECT_GE(now.most - now.least, 2.0 * kAttenuationScatter - 1e-12);
      for (const MashLaw* law : {&diluteMash(), &thickMash()}) {
        const double one = limitAt(*law, heldAt(degrees, minute));
        EXPECT_LE(now.least, one);
        EXPECT_GE(now.most, one);
      }
      before = now;
    }
  }
}

TEST(MashConversion, SaysWhatIsOutsideItsRange) {
  EXPECT_EQ(conversionOf(heldAt(57.0, 60.0)).limit->validity, Validity::Extrapolated);
  EXPECT_EQ(conversionOf(heldAt(78.0, 60.0)).limit->validity, Validity::Extrapolated);
  EXPECT_FALSE(conversionOf(heldAt(50.0, 60.0)).limit);
  // Once starch is done nothing hotter counts, nor what was colder on the way.
  const HotCurve steps =
      together(together(heldAt(50.0, 15.0), heldAt(66.0, 60.0)), heldAt(78.0, 10.0));
  const MashConversion stepped = conversionOf(steps);
  EXPECT_EQ(stepped.limit->validity, Validity::InRange);
  EXPECT_EQ(stepped.hottest, celsius(78.0));
  EXPECT_GT(stepped.doneBy.value(), minutes(30.0));
  EXPECT_LT(stepped.doneBy.value(), minutes(45.0));
}

// Malt that swells late is done later, or not at all.
TEST(MashConversion, KnowsWhenLateMaltIsDone) {
  const MashConversion warm = conversionOf(heldAt(66.5, 60.0));
  EXPECT_GT(warm.doneLateBy.value(), warm.doneBy.value() + minutes(2.0));
  // The last percent or two, which a ramp sets free, are no matter.
  const MashConversion ramped = conversionOf(together(heldAt(66.0, 60.0), heldAt(78.0, 10.0)));
  EXPECT_LT(ramped.doneLateBy.value(), minutes(40.0));
  const MashConversion cold = conversionOf(heldAt(63.0, 60.0));
  EXPECT_TRUE(cold.doneBy);
  EXPECT_LT(cold.reachedAtLeast, .9);
  EXPECT_FALSE(cold.doneLateBy);
}

// Part of the starch waits for more heat, more of it with malt that begins later.
TEST(MashConversion, DoesNotReachAllStarchInTheCold) {
  const MashConversion cold = conversionOf(heldAt(62.0, 60.0));
  EXPECT_NEAR(cold.reached, .936, .002);
  EXPECT_NEAR(cold.reachedAtLeast, .79, .015);
  EXPECT_FALSE(cold.doneBy);
  EXPECT_FALSE(conversionOf(heldAt(66.0, 10.0)).doneBy);
  // Heated up it comes along.
  const MashConversion later = conversionOf(together(heldAt(62.0, 60.0), heldAt(72.0, 20.0)));
  EXPECT_NEAR(later.reachedAtLeast, 1.0, .001);
  EXPECT_GT(later.doneBy.value(), minutes(60.0));
}

// A second opinion: all of it by RK4, a second at a time.
TEST(MashConversion, AgreesWithSmallSteps) {
  constexpr double kGas = 8.314462618;
  constexpr double kMinutes = 100.0;
  const auto at = [](double minute) { return celsius(20.0 + 50.0 * std::exp(-minute / 400.0)); };
  HotCurve curve;
  for (double m = 0.0; m < kMinutes; m += 1.0)
    curve.push_back({.lasts = minutes(1.0), .from = at(m), .to = at(m + 1.0)});
  using State =
      std::array<double, 7>;  // starch, dextrin, branched, fermentable, alpha, beta, stable
  for (const MashLaw* law : {&diluteMash(), &thickMash()}) {
    const auto slope = [&](double minute, const State& y) -> State {
      const Temperature t = at(minute);
      const double faster = std::exp(50000.0 / kGas * (1.0 / 338.15 - 1.0 / inKelvin(t)));
      const double fresh =
          inPerMinute(starchDissolution(t)) * std::max(0.0, starchAccessible(t) - (1.0 - y[0]));
      const double turned =
          (inPerMinute(law->byBeta) * (y[5] + y[6]) + inPerMinute(law->byAlpha) * y[4]) * faster *
          y[1];
      const double trimmed = inPerMinute(kTrimming[2]) * faster * y[4] * y[2];
      return {-fresh,
              (1.0 - law->atOnce - law->branched) * fresh - turned,
              law->branched * fresh - trimmed,
              law->atOnce * fresh + turned + trimmed,
              -inPerMinute(law->alphaLost(t)) * y[4],
              -inPerMinute(law->betaLost(t)) * y[5],
              -inPerMinute(stableBetaLoss(t)) * y[6]};
    };
    const auto moved = [](State y, double h, const State& by) {
      for (std::size_t i = 0; i < y.size(); ++i) y[i] += h * by[i];
      return y;
    };
    State y{1.0, 0.0, 0.0, 0.0, 1.0, 1.0 - law->stableBeta, law->stableBeta};
    constexpr double h = 1.0 / 60.0;
    for (int i = 0; i < static_cast<int>(60.0 * kMinutes); ++i) {
      const double m = i * h;
      const State a = slope(m, y);
      const State b = slope(m + 0.5 * h, moved(y, 0.5 * h, a));
      const State c = slope(m + 0.5 * h, moved(y, 0.5 * h, b));
      const State d = slope(m + h, moved(y, h, c));
      for (std::size_t k = 0; k < y.size(); ++k)
        y[k] += h / 6.0 * (a[k] + 2.0 * b[k] + 2.0 * c[k] + d[k]);
    }
    const Mashed mash = mashed(*law, curve);
    EXPECT_NEAR(mash.dissolved, 1.0 - y[0], 5e-4);
    EXPECT_NEAR(mash.convertible, y[1], 5e-4);
    EXPECT_NEAR(mash.fermentable(2), y[3], 5e-4);
    EXPECT_NEAR(mash.alpha, y[4], 5e-4);
    EXPECT_NEAR(mash.beta + mash.stable, y[5] + y[6], 5e-4);
  }
}

// Conduction out of a cylinder: the product of a slab's and of an endless cylinder's series.
TEST(MashConversion, KnowsHowUnevenABedBecomes) {
  constexpr double kRadius = .17;
  const auto root = [](const auto& f, double low, double high) {
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      (f(middle) < 0.0 ? low : high) = middle;
    }
    return low;
  };
  const auto spread = [&](double film, double hour) {
    const double biot = film * kRadius / .55;
    const double fourier = 1.06e-7 * 3600.0 * hour / (kRadius * kRadius);
    double middle = 0.0;
    double side = 0.0;
    double slab = 0.0;
    using boost::math::cyl_bessel_j;
    for (int n = 0; n < 8; ++n) {
      const double z = root([&](double x) { return x * std::tan(x) - biot; }, n * std::numbers::pi,
                            (n + .5) * std::numbers::pi - 1e-9);
      slab += 4.0 * std::sin(z) / (2.0 * z + std::sin(2.0 * z)) * std::exp(-z * z * fourier);
      // Between a zero of J1 and the next of J0, where the quotient grows without end.
      const double from = n == 0 ? 0.0 : boost::math::cyl_bessel_j_zero(1.0, n);
      const double to = boost::math::cyl_bessel_j_zero(0.0, n + 1);
      const double r =
          root([&](double x) { return x * cyl_bessel_j(1, x) / cyl_bessel_j(0, x) - biot; },
               from + 1e-9, to - 1e-9);
      const double j0 = cyl_bessel_j(0, r);
      const double j1 = cyl_bessel_j(1, r);
      const double part = 2.0 * j1 / (r * (j0 * j0 + j1 * j1)) * std::exp(-r * r * fourier);
      middle += part;
      side += part * j0;
    }
    return 52.0 * slab * (middle - side);
  };
  for (const BedSpread& row : kUnstirredBed) {
    EXPECT_NEAR(inKelvins(row.least), spread(1.0, inHours(row.after)), .6);
    EXPECT_NEAR(inKelvins(row.most), spread(10.0, inHours(row.after)), .6);
  }
  EXPECT_FALSE(unstirredBedAfter(minutes(59.0)));
  EXPECT_EQ(unstirredBedAfter(hours(12.0))->after, hours(10.0));
}

}  // namespace
}  // namespace physics
