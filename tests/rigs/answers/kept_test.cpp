// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/kept.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "rigs/answers/bands.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace rigs;

struct Night {
  std::string document{planStartText("night-unplugged").value()};
  Learned learned;

  Night() {
    learned.unknowns = {{.what = Unknown::ClosedLosses,
                         .before = {0.8, 1.05, 1.3},
                         .after = {1.10, 1.18, 1.27},
                         .spreadLeft = 0.3},
                        {.what = Unknown::OpenSurface,
                         .before = {0.8, 1.0, 1.3},
                         .after = {0.8, 1.0, 1.29},
                         .spreadLeft = 0.98}};
  }
  Plan plan() const {
    Problems problems;
    auto read = readPlan(document, ".", problems);
    EXPECT_TRUE(read && problems.empty());
    return std::move(*read);
  }
  std::optional<Kept> keep(std::string_view text, Problems& problems) const {
    return withLearned(document, plan(), 0, learned, {"night.csv", 5, "2026-03-02", text},
                       problems);
  }
};

// Published with the function: draft-eastlake-fnv, appendix C.
TEST(Mark, IsFowlerNollAndVos) {
  EXPECT_EQ(markOf(""), "811c9dc5");
  EXPECT_EQ(markOf("foobar"), "bf9cf968");
}

TEST(Kept, IsWhatWasLearnedOfTheKettleAndNothingElse) {
  Night night;
  Problems problems;
  const auto kept = night.keep("20:49 66.6\n", problems);
  ASSERT_TRUE(kept && problems.empty());
  EXPECT_TRUE(kept->losses);
  EXPECT_FALSE(kept->surface);
  EXPECT_EQ(textAt(kept->document, "/rigs/0/loss_factor"), "1.18");
  EXPECT_FALSE(textAt(kept->document, "/rigs/0/evaporation_factor"));
  night.document = kept->document;
  const Plan plan = night.plan();
  EXPECT_DOUBLE_EQ(plan.rigs[0].rig.lossFactor, 1.18);
  ASSERT_TRUE(plan.rigs[0].measured);
  EXPECT_EQ(plan.rigs[0].measured->on, "2026-03-02");
  // From 1.10 to 1.27 are 8 in 10: 7.4 % either way, written to two digits.
  EXPECT_NEAR(*plan.rigs[0].measured->losses, std::log(1.27 / 1.10) / 2.0 / kNineInTen, 5e-4);
}

TEST(Kept, MovesTheMorningAndNarrowsIt) {
  Night night;
  const Bands before = bandsOf(night.plan(), 0).value();
  Problems problems;
  night.document = night.keep("a", problems).value().document;
  const Bands after = bandsOf(night.plan(), 0).value();
  EXPECT_LT(*after.morning.middle, *before.morning.middle);
  EXPECT_LT(*after.morning.high - *after.morning.low, *before.morning.high - *before.morning.low);
}

TEST(Kept, CountsReadingsOnceAndAddsBrewsUp) {
  Night night;
  Problems problems;
  night.document = night.keep("first", problems).value().document;
  EXPECT_FALSE(night.keep("first", problems));
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].where, "--keep");
  const auto second = night.keep("second", problems);
  ASSERT_TRUE(second);
  EXPECT_EQ(textAt(second->document, "/rigs/0/loss_factor"), "1.39");  // 1.18²
  const std::string both = textAt(second->document, "/rigs/0/measured/readings").value();
  EXPECT_NE(both.find(markOf("first")), std::string::npos);
  EXPECT_NE(both.find(markOf("second")), std::string::npos);
}

TEST(Kept, RefusesWhatDoesNotGoTogether) {
  Night night;
  night.learned.stories = 2;
  night.learned.otherUnit = night.learned.twelveHoursOff = true;
  Problems problems;
  EXPECT_FALSE(night.keep("a", problems));
  EXPECT_EQ(problems.size(), 3u);
  night = Night();
  night.learned.nothing = NothingLearned::NoDay;
  EXPECT_FALSE(night.keep("a", problems));
}

// Another jacket was not measured: what was learned holds, and less surely.
TEST(Kept, CountsForLessUnderAnotherJacket) {
  Night night;
  Problems problems;
  night.document = night.keep("a", problems).value().document;
  const auto spread = [&] { return priorsOf(night.plan().rigs[0])[0].spread; };
  const double same = spread();
  night.document = withText(night.document, "/rigs/0/measured/jacket", "side 99 mm cork");
  EXPECT_GT(spread(), same + 0.05);
  EXPECT_DOUBLE_EQ(priorsOf(night.plan().rigs[0])[0].median, 1.0);
}

}  // namespace
