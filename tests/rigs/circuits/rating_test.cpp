// SPDX-License-Identifier: GPL-3.0-or-later
// A load against a rating, and what fuse or breaker does with it: each by its own standard.
#include "rigs/circuits/rating.hpp"

#include <gtest/gtest.h>

#include "rigs/circuits/readings.hpp"
#include "rigs/results/circuit_words.hpp"
#include "tests/rigs/circuits/circuit_cases.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using namespace test_support;

// 5 % above: 13.65 of 13 A. 3 kW at 230 V are 13.04 A, and 13.61 A on 240 V; 3.2 kW are 13.91 A.
TEST(AgainstRating, IsOnTheEdgeAsFarAsAnElementMayExceedItsPlate) {
  EXPECT_EQ(againstRating(amperes(12.99), amperes(13.0)), Fit::Fits);
  EXPECT_EQ(againstRating(amperes(13.0), amperes(13.0)), Fit::Fits);
  EXPECT_EQ(againstRating(amperes(13.04), amperes(13.0)), Fit::OnTheEdge);
  EXPECT_EQ(againstRating(amperes(13.61), amperes(13.0)), Fit::OnTheEdge);
  EXPECT_EQ(againstRating(amperes(13.66), amperes(13.0)), Fit::DoesNotFit);
  EXPECT_EQ(againstRating(amperes(13.91), amperes(13.0)), Fit::DoesNotFit);
}

// No rules here let an element exceed its plate by less.
TEST(AgainstRating, IsAsWideAsEveryRegionsTolerance) {
  for (const CircuitRules& rules : bundledRules()) {
    ASSERT_TRUE(rules.tolerance) << rules.region;
    EXPECT_DOUBLE_EQ(rules.tolerance->rating.above, kOnTheEdge);
  }
}

// BS 1362, as quoted: 1.6 times its rating for at least 30 min, 20.8 A of 13 A; 1.9 times, 24.7 A,
// blow it within 30 min. IEC 60898-1, as quoted: 1.13 and 1.45 times within an hour, 18.1 and 23.2
// A of 16 A (A10).
TEST(DeviceOf, KnowsAFuseFromABreaker) {
  const auto fuse = deviceOf(*uk().fuse("BS 1362"), amperes(13.0));
  ASSERT_TRUE(fuse);
  EXPECT_TRUE(fuse->isFuse);
  EXPECT_WITHIN(fuse->carries, amperes(20.8), amperes(1e-9));
  EXPECT_WITHIN(fuse->carriesFor, minutes(30.0), seconds(1e-9));
  EXPECT_WITHIN(fuse->acts, amperes(24.7), amperes(1e-9));
  EXPECT_WITHIN(fuse->actsWithin, minutes(30.0), seconds(1e-9));
  EXPECT_FALSE(deviceOf(*uk().fuse("BS 1362"), amperes(16.0)));  // there is no such link
  const auto breaker = deviceOf(uk().breakers, amperes(16.0));
  ASSERT_TRUE(breaker);
  EXPECT_FALSE(breaker->isFuse);
  EXPECT_WITHIN(breaker->carries, amperes(18.08), amperes(1e-9));
  EXPECT_WITHIN(breaker->acts, amperes(23.2), amperes(1e-9));
  EXPECT_WITHIN(breaker->actsWithin, hours(1.0), seconds(1e-9));
  EXPECT_FALSE(deviceOf(uk().breakers, amperes(80.0)));  // two hours there
  EXPECT_FALSE(deviceOf(us().breakers, amperes(15.0)));  // nothing is known of them here
}

CircuitDetails plug() {
  CircuitDetails details;
  details.circuitRegion = "United Kingdom and Ireland";
  details.fuse = "BS 1362";
  return details;
}

TEST(GuardOf, FindsThePlugsFuse) {
  EXPECT_EQ(guardOf(uk(), plug(), amperes(13.0)).fuse, uk().fuse("BS 1362"));
  EXPECT_EQ(guardOf(uk(), on("BS 1363 13 A", Feeds::NotStated), amperes(13.0)).fuse,
            uk().fuse("BS 1362"));
  // Behind that outlet lies a ring of 32 A with a breaker; and no link is of 16 A.
  EXPECT_FALSE(guardOf(uk(), on("BS 1363 13 A", Feeds::NotStated), amperes(32.0)).fused);
  EXPECT_FALSE(guardOf(uk(), plug(), amperes(16.0)).fused);
  EXPECT_FALSE(guardOf(uk(), {}, amperes(13.0)).fused);
  // A fuse that these rules have nothing of is no breaker for that.
  const Guard abroad = guardOf(*rulesOf("Europe"), plug(), amperes(13.0));
  EXPECT_TRUE(abroad.fused);
  EXPECT_FALSE(abroad.device);
}

std::string ratingText(const CircuitDetails& details, double watt, double ampere) {
  const auto verdict = judge(uk(), details, load(watt, 230, 230, ampere, fullFor(minutes(50.0))));
  return inEnglish(findingText(*find(verdict, RuleKind::Rating)));
}

TEST(JudgedFuse, IsToldByItsOwnStandard) {
  const std::string edge = ratingText(plug(), 3000, 13);
  EXPECT_TRUE(edge.starts_with(
      "the fuse's rating: 13.04 A against 13 A, 0.334 % more; a fuse of that size carries 20.8 A "
      "for at least 30 min, so it does not protect plug and outlet from this: they get warm: on "
      "the "
      "edge: "))
      << edge;
  EXPECT_NE(edge.find("[BS 1362: conventional non-fusing"), std::string::npos) << edge;
  EXPECT_EQ(edge.find("IEC 60898"), std::string::npos) << edge;
  const std::string hot = ratingText(plug(), 5000, 13);  // 21.7 A
  EXPECT_NE(hot.find("must blow only from 24.7 A on, within 30 min: plug and outlet may get hot"),
            std::string::npos)
      << hot;
  EXPECT_NE(hot.find("does not fit"), std::string::npos);
  EXPECT_NE(ratingText(plug(), 6000, 13).find("blows from 24.7 A on, within 30 min at the latest"),
            std::string::npos);
}

TEST(JudgedBreaker, IsToldByItsOwnStandard) {
  const std::string edge = ratingText({}, 3750, 16);  // 16.3 A
  EXPECT_NE(edge.find("a breaker of that size carries 18.1 A for at least 1 h"), std::string::npos)
      << edge;
  EXPECT_NE(edge.find("[IEC 60898-1"), std::string::npos);
  EXPECT_NE(ratingText({}, 4600, 16).find("must trip only from 23.2 A on"), std::string::npos);
  EXPECT_NE(ratingText({}, 5500, 16).find("trips from 23.2 A on"), std::string::npos);
}

// Where a load is within, nothing is said of what acts.
TEST(DeviceText, IsSilentWithinTheRating) {
  EXPECT_EQ(ratingText(plug(), 2400, 13).find("fuse of that size"), std::string::npos);
  EXPECT_EQ(inEnglish(deviceText(judgeRating(
                {.load = amperes(20.0), .rating = amperes(15.0), .fused = false, .device = {}}))),
            "how soon its breaker or fuse acts is not known here");
}

TEST(JudgedFuse, GivesTheVerdictAndProposesNoLargerOne) {
  const auto edge = judge(uk(), plug(), load(3000, 230, 230, 13, fullFor(minutes(50.0))));
  EXPECT_EQ(edge.overall, Fit::OnTheEdge);
  EXPECT_EQ(inEnglish(verdictText(edge)),
            "United Kingdom, BS 7671 2018+A2: on the edge: the fuse's rating (13.04 A against "
            "13 A, 0.334 % more).");
  const auto over = judge(uk(), plug(), load(4600, 230, 230, 13, fullFor(minutes(50.0))));
  EXPECT_EQ(over.overall, Fit::DoesNotFit);
  const std::string next = inEnglish(informationText(over));
  EXPECT_NE(next.find("no fuse of its kind is larger than 13 A"), std::string::npos) << next;
  EXPECT_NE(next.find("the standard size of a breaker for 20 A is 20 A"), std::string::npos);
  const Reading whole = readingsOf(uk(), plug(), load(3000, 230, 230, 13, {}).supply).front();
  EXPECT_EQ(whole.cite.clause, uk().fuse("BS 1362")->cite.clause);
}

// What a verdict hangs on is told beside an edge.
TEST(JudgedEdge, KeepsWhatElseItHangsOn) {
  const auto verdict = judge(us(), {}, load(1830, 120, 120, 15, fullFor(hours(1.0))));
  EXPECT_EQ(verdict.overall, Fit::OnTheEdge);
  const std::string text = inEnglish(verdictText(verdict));
  EXPECT_NE(text.find("on the edge: the circuit's rating (15.25 A against 15 A"), std::string::npos)
      << text;
  EXPECT_NE(text.find("; fits only if the circuit feeds one outlet alone"), std::string::npos)
      << text;
}

}  // namespace
