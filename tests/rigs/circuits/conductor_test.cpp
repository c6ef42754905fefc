// SPDX-License-Identifier: GPL-3.0-or-later
// Check values of conductors under their breakers. Tables of NFPA 70 were read as quoted by trade
// publications unless a case says "memory"; all cases were computed here but for those marked pub.
#include "rigs/circuits/conductor.hpp"

#include <gtest/gtest.h>

#include "rigs/results/circuit_words.hpp"
#include "tests/rigs/circuits/circuit_cases.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using namespace test_support;

CircuitVerdict judged(const CircuitDetails& details, double watt, double volt, double breaker,
                      const Duty& duty) {
  return judge(us(), details, load(watt, volt, volt, breaker, duty));
}

struct Wire {
  const char* id;
  double watt, breaker;
  const char* size;
  const char* insulation;
  double timesContinuous;  // what 125 % come to
  Fit carries, longUse, breakerFits;
};

// N9: 14.58 A, 18.23 A. N10: 37.5 A, 46.88 A: 6 AWG at 60 C passes (55 A), 8 AWG does not (40 A),
// at 75 C it passes (50 A) if every termination is made for that.
TEST(Conductor, CarriesAContinuousLoadWithAQuarterToSpare) {
  for (const Wire& c :
       {Wire{"N9", 3500, 20, "12 AWG", "60 C", 18.23, Fit::Fits, Fit::Fits, Fit::Fits},
        Wire{"N10", 9000, 50, "6 AWG", "60 C", 46.88, Fit::Fits, Fit::Fits, Fit::Fits},
        Wire{"N10, 8 AWG", 9000, 50, "8 AWG", "60 C", 46.88, Fit::Fits, Fit::DoesNotFit,
             Fit::DoesNotFit},
        Wire{"N10, terminations", 9000, 50, "8 AWG", "75 C", 46.88, Fit::Fits, Fit::OnlyIf,
             Fit::OnlyIf}}) {
    SCOPED_TRACE(c.id);
    const auto verdict = judged(wired(kWire, c.size, c.insulation, 30.0, 3), c.watt, 240, c.breaker,
                                fullFor(hours(3.0)));
    EXPECT_WITHIN(1.25 * verdict.load, amperes(c.timesContinuous), amperes(0.006));
    EXPECT_EQ(fitOf(verdict, RuleKind::Conductor), c.carries);
    EXPECT_EQ(fitOf(verdict, RuleKind::ConductorLongUse), c.longUse);
    EXPECT_EQ(fitOf(verdict, RuleKind::BreakerForConductor), c.breakerFits);
    EXPECT_WITHIN(*find(verdict, RuleKind::ConductorLongUse)->load, amperes(c.timesContinuous),
                  amperes(0.006));
  }
}

// N16: 27 A on 10 AWG: a cord with three loaded conductors has 25 A, the wall's wire 30 A. The
// cord's column was read.
TEST(Conductor, TellsACordFromAWire) {
  EXPECT_EQ(fitOf(judged(wired(kCord, "10 AWG", "", 30.0, 3), 27 * 240, 240, 30, fullFor(hours(1))),
                  RuleKind::Conductor),
            Fit::DoesNotFit);
  EXPECT_EQ(
      fitOf(judged(wired(kWire, "10 AWG", "60 C", 30.0, 3), 27 * 240, 240, 30, fullFor(hours(1))),
            RuleKind::Conductor),
      Fit::Fits);
}

// N15: 240.4(D) caps the breaker of 12 AWG at 20 A, whatever its 75 C column says.
TEST(Conductor, KeepsTheCapOfSmallConductors) {
  EXPECT_EQ(fitOf(judged(wired(kWire, "12 AWG", "75 C"), 5000, 240, 25, fullFor(hours(1.0))),
                  RuleKind::BreakerForConductor),
            Fit::DoesNotFit);
}

// 10 AWG of the 60 C column at 50 C carries 30 x 0.58 = 17.4 A; the next size is 20 A, and 30 A do
// not protect it though 240.4(D) would let them. 240.4(B) is from memory.
TEST(Conductor, CorrectsTheBreakerForTheAmbientToo) {
  const auto at50 = [](double breaker) {
    return judged(wired(kWire, "10 AWG", "60 C", 50.0), 4000, 240, breaker, fullFor(hours(1.0)));
  };
  const auto thirty = at50(30);
  EXPECT_EQ(fitOf(thirty, RuleKind::Conductor), Fit::Fits);
  EXPECT_EQ(fitOf(thirty, RuleKind::BreakerForConductor), Fit::DoesNotFit);
  EXPECT_WITHIN(*find(thirty, RuleKind::BreakerForConductor)->limit, amperes(20.0), amperes(1e-9));
  EXPECT_EQ(fitOf(at50(20), RuleKind::BreakerForConductor), Fit::Fits);
}

// 55 A of 6 AWG is no standard size: 60 A may protect it, on a circuit of one outlet (240.4(B),
// memory).
TEST(Conductor, AllowsTheNextStandardBreaker) {
  CircuitDetails details = wired(kWire, "6 AWG", "60 C");
  const auto fit = [&](Feeds feeds) {
    details.feeds = feeds;
    return fitOf(judged(details, 11000, 240, 60, fullFor(hours(1.0))),
                 RuleKind::BreakerForConductor);
  };
  EXPECT_EQ(fit(Feeds::OneOutlet), Fit::Fits);
  EXPECT_EQ(fit(Feeds::NotStated), Fit::OnlyIf);
  EXPECT_EQ(fit(Feeds::SeveralOutlets), Fit::DoesNotFit);
}

// A6: 10 AWG of the 90 C column at 45 C carries 34.8 A, but its terminations hold it to the 30 A of
// 60 C, or to 34.8 A (less than the 35 A of 75 C) where they are marked.
TEST(Conductor, HoldsAHotColumnToItsTerminations) {
  const auto with = [](double ampere) {
    return judged(wired(kWire, "10 AWG", "90 C", 45.0), 240 * ampere, 240, 30, fullFor(hours(1.0)));
  };
  EXPECT_EQ(fitOf(with(30.0), RuleKind::Conductor), Fit::Fits);
  EXPECT_WITHIN(*find(with(30.0), RuleKind::Conductor)->limit, amperes(30.0), amperes(1e-9));
  const auto marked = with(34.0);
  EXPECT_EQ(fitOf(marked, RuleKind::Conductor), Fit::OnlyIf);
  EXPECT_WITHIN(*find(marked, RuleKind::Conductor)->limit, amperes(34.8), amperes(0.005));
  EXPECT_EQ(fitOf(with(34.9), RuleKind::Conductor), Fit::DoesNotFit);
  // At 30 C the 75 C column is the lesser: 35 of 40 A.
  const auto cool =
      judged(wired(kWire, "10 AWG", "90 C", 30.0), 240 * 34.9, 240, 30, fullFor(hours(1.0)));
  EXPECT_WITHIN(*find(cool, RuleKind::Conductor)->limit, amperes(35.0), amperes(1e-9));
  // A condition is one: "fits only if every termination ...".
  EXPECT_NE(inEnglish(findingText(*find(marked, RuleKind::Conductor)))
                .find("fits only if every termination is marked"),
            std::string::npos);
}

// Whether a cord needs 125 % of a continuous load is argued among electricians (read): both
// readings. 10 AWG, two loaded conductors: 30 A; 25 A x 1.25 = 31.25 A.
TEST(Conductor, LeavesTheMarginOfACordToTheReader) {
  const auto cord = [](double ampere, const Duty& duty) {
    return judged(wired(kCord, "10 AWG"), 240 * ampere, 240, 40, duty);
  };
  const auto argued = cord(25.0, fullFor(hours(3.0)));
  EXPECT_EQ(fitOf(argued, RuleKind::Conductor), Fit::Fits);
  EXPECT_EQ(fitOf(argued, RuleKind::ConductorLongUse), Fit::OnlyIf);
  EXPECT_WITHIN(*find(argued, RuleKind::ConductorLongUse)->load, amperes(31.25), amperes(1e-9));
  const std::string text = inEnglish(findingText(*find(argued, RuleKind::ConductorLongUse)));
  EXPECT_NE(text.find("31.25 A against 30 A, without it 25 A"), std::string::npos) << text;
  EXPECT_EQ(fitOf(cord(24.0, fullFor(hours(3.0))), RuleKind::ConductorLongUse), Fit::Fits);
  EXPECT_FALSE(find(cord(25.0, fullFor(hours(2.0))), RuleKind::ConductorLongUse));
}

// No table of cords or extension sets has factors for a warm place; with the insulation stated the
// root law does for a cord.
TEST(Conductor, CannotSayInAWarmerPlaceThanItsTable) {
  const auto in = [](CableUse use, const char* size, const char* insulation, double ambient) {
    return judged(wired(use, size, insulation, ambient), 1200, 120, 15, fullFor(hours(1.0)));
  };
  EXPECT_EQ(fitOf(in(kCord, "14 AWG", "", 30.0), RuleKind::Conductor), Fit::Fits);
  const auto warm = in(kCord, "14 AWG", "", 45.0);
  EXPECT_EQ(fitOf(warm, RuleKind::Conductor), Fit::CannotSay);
  EXPECT_EQ(warm.overall, Fit::CannotSay);
  EXPECT_NE(inEnglish(find(warm, RuleKind::Conductor)->condition).find("up to 30"),
            std::string::npos);
  EXPECT_EQ(fitOf(in(CableUse::ExtensionSet, "14 AWG", "", 45.0), RuleKind::Conductor),
            Fit::CannotSay);
  // What is too much in the cool stays too much.
  EXPECT_EQ(fitOf(in(kCord, "18 AWG", "", 20.0), RuleKind::Conductor), Fit::Fits);
  EXPECT_EQ(fitOf(judged(wired(kCord, "18 AWG", "", 45.0), 1300, 120, 15, fullFor(hours(1.0))),
                  RuleKind::Conductor),
            Fit::DoesNotFit);
  // 18 A x sqrt(15/30) = 12.7 A.
  const auto stated = in(kCord, "14 AWG", "60 C", 45.0);
  EXPECT_EQ(fitOf(stated, RuleKind::Conductor), Fit::Fits);
  EXPECT_WITHIN(*find(stated, RuleKind::Conductor)->limit, amperes(12.73), amperes(0.005));
}

// A11: 12 A through 60 ft of a listed 16 AWG set fail: 10 A beyond 50 ft, 13 A to there (read).
TEST(Conductor, RefusesALongExtensionSet) {
  CircuitDetails details = wired(CableUse::ExtensionSet, "16 AWG");
  const auto fit = [&](double feet) {
    details.cable->length = metres(0.3048 * feet);
    return fitOf(judged(details, 1440, 120, 15, fullFor(hours(1.0))), RuleKind::Conductor);
  };
  EXPECT_EQ(fit(60), Fit::DoesNotFit);
  EXPECT_EQ(fit(50), Fit::Fits);
}

}  // namespace
