// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/layers.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace {

using namespace rigs;

// A rig's own lines over those of the kettle it is from.
class OwnOverInherited : public testing::Test {
 protected:
  nlohmann::ordered_json own_ = nlohmann::ordered_json::parse(
      R"({"name": "mine", "element": {"power": "3 kW"}, "colour": "blue"})");
  nlohmann::ordered_json base_ = nlohmann::ordered_json::parse(
      R"({"name": "theirs", "element": {"top_height": "6 cm"}, "lid": {"finish": "dull"}})");
  Problems problems_;
  Layers layers_{
      {JsonCursor(own_, problems_, "/rigs/0"), JsonCursor(base_, problems_, "/rigs/0/from")}};
};

TEST_F(OwnOverInherited, TakeAKeyFromTheNearestThatHasIt) {
  EXPECT_EQ(layers_.with("name").text("name", 20), "mine");
  EXPECT_EQ(layers_.with("lid").where(), "/rigs/0/from");
  EXPECT_EQ(layers_.withAny({"jacket", "lid"}).where(), "/rigs/0/from");
  EXPECT_EQ(layers_.with("supply").where(), "/rigs/0");
  EXPECT_TRUE(layers_.has("lid"));
  EXPECT_FALSE(layers_.has("supply"));
}

TEST_F(OwnOverInherited, GiveAnObjectsKeysFromEveryLayer) {
  const auto element = layers_.within("element");
  ASSERT_TRUE(element);
  EXPECT_EQ(element->with("power").where(), "/rigs/0/element");
  EXPECT_EQ(element->with("top_height").where(), "/rigs/0/from/element");
  EXPECT_TRUE(problems_.empty());
}

TEST_F(OwnOverInherited, MissAnObjectInTheRigItself) {
  EXPECT_FALSE(layers_.within("vessel"));
  ASSERT_EQ(problems_.size(), 1u);
  EXPECT_EQ(problems_[0].severity, Severity::Error);
  EXPECT_EQ(problems_[0].where, "/rigs/0/vessel");
}

TEST_F(OwnOverInherited, TellUnknownKeysOfEveryLayer) {
  layers_.warnAboutKeysExcept({"name", "element"});
  ASSERT_EQ(problems_.size(), 2u);
  EXPECT_EQ(problems_[0].where, "/rigs/0/colour");
  EXPECT_EQ(problems_[1].where, "/rigs/0/from/lid");
  for (const Problem& problem : problems_) EXPECT_EQ(problem.severity, Severity::Warning);
}

}  // namespace
