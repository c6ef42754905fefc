// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_edit.hpp"

#include <gtest/gtest.h>

#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace rigs {
namespace {

constexpr std::string_view kPlan = R"({
  "format": {"name": "heat-ledger-plan", "version": 1},
  "mine": {"kept": [1, 2.50, null]},
  "rigs": [
    {"name": "first", "element": {"power": "5,5 kW"}},
    {"name": "second"}
  ]
})";

TEST(JsonEdit, ReadsTheTextAsItsAuthorWroteIt) {
  EXPECT_EQ(textAt(kPlan, "/rigs/0/element/power"), "5,5 kW");
  EXPECT_EQ(textAt(kPlan, "/format/version"), "1");
  EXPECT_EQ(textAt(kPlan, "/rigs/0/element"), std::nullopt);
  EXPECT_EQ(textAt(kPlan, "/rigs/7/name"), std::nullopt);
  EXPECT_TRUE(exists(kPlan, "/mine/kept/2"));
  EXPECT_FALSE(exists(kPlan, "/mine/lost"));
}

TEST(JsonEdit, ChangesOneValueAndKeepsOrderAndUnknownKeys) {
  const std::string changed = withText(kPlan, "/rigs/1/element/power", "3 kW");

  EXPECT_EQ(changed, R"({
  "format": {"name": "heat-ledger-plan", "version": 1},
  "mine": {"kept": [1, 2.5, null]},
  "rigs": [
    {"name": "first", "element": {"power": "5,5 kW"}},
    {"name": "second", "element": {"power": "3 kW"}}
  ]
}
)");
  EXPECT_EQ(textAt(changed, "/rigs/0/element/power"), "5,5 kW");
}

TEST(JsonEdit, TakesAValueOut) {
  EXPECT_FALSE(exists(without(kPlan, "/rigs/0/element"), "/rigs/0/element"));
  EXPECT_EQ(laidOut(kPlan), without(kPlan, "/rigs/0/nothing"));
}

TEST(JsonEdit, AddsCopiesMovesAndRemovesRigs) {
  EXPECT_EQ(rigCount(kPlan), 2u);
  const std::string three = withRigDuplicated(kPlan, 0, "first, with a jacket");
  EXPECT_EQ(rigCount(three), 3u);
  EXPECT_EQ(textAt(three, "/rigs/1/name"), "first, with a jacket");
  EXPECT_EQ(textAt(three, "/rigs/1/element/power"), "5,5 kW");

  const std::string moved = withRigMoved(three, 2, 0);
  EXPECT_EQ(textAt(moved, "/rigs/0/name"), "second");
  EXPECT_EQ(withRigMoved(moved, 0, 2), three);

  EXPECT_EQ(withRigRemoved(three, 1), laidOut(kPlan));
  EXPECT_EQ(textAt(withRigAdded(kPlan, R"({"name": "new"})"), "/rigs/2/name"), "new");
}

TEST(JsonEdit, SaysWhenTheCallerBrokeTheContract) {
  EXPECT_THROW(withRigRemoved(kPlan, 2), EditError);
  EXPECT_THROW(laidOut("{"), EditError);
  EXPECT_THROW(without(kPlan, ""), EditError);
  EXPECT_THROW(withText(kPlan, "/rigs/0/name/deeper", "x"), EditError);
  EXPECT_THROW(rigCount("{}"), EditError);
  EXPECT_THROW(valueAt(kPlan, "/nowhere"), EditError);
}

TEST(JsonEdit, FindsNothingWhereListsAreAskedForAName) {
  for (const char* place : {"/rigs/", "/rigs//name", "/rigs/x", "/rigs/-", "/rigs/01"}) {
    EXPECT_FALSE(exists(kPlan, place)) << place;
    EXPECT_EQ(textAt(kPlan, place), std::nullopt) << place;
    EXPECT_EQ(without(kPlan, place), laidOut(kPlan)) << place;
  }
}

TEST(JsonEdit, DuplicatesWhatIsNoRig) {
  EXPECT_EQ(rigCount(withRigDuplicated(R"({"rigs": [5, "old"]})", 1, "new")), 3U);
}

TEST(JsonEdit, LaysTheDemoOutSoThatItReadsTheSame) {
  const std::string anew = laidOut(demoPlanText());
  Problems problems;
  EXPECT_TRUE(readPlan(anew, ".", problems).has_value());
  EXPECT_EQ(laidOut(anew), anew);
}

}  // namespace
}  // namespace rigs
