// SPDX-License-Identifier: GPL-3.0-or-later
// A plan document as a form sees it: its texts, and what a rig has from others.
#include "rigs/plans/plan_texts.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;
using testing::IsEmpty;
using testing::Pair;
using testing::SizeIs;
using testing::UnorderedElementsAre;

TEST(TextsOf, GivesEveryTextNumberAndBooleanItsPlace) {
  EXPECT_THAT(
      textsOf(R"({"a": {"b": "5,5 kW", "c": [1, 2.5]}, "d": true, "e": null, "f": {}, "g": []})"),
      UnorderedElementsAre(Pair("/a/b", "5,5 kW"), Pair("/a/c/0", "1"), Pair("/a/c/1", "2.5"),
                           Pair("/d", "true")));
}

// RFC 6901: ~ is written ~0 and / is written ~1.
TEST(TextsOf, EscapesKeysAsPointersDo) {
  EXPECT_THAT(textsOf(R"({"km/h": "1", "~": "2"})"),
              UnorderedElementsAre(Pair("/km~1h", "1"), Pair("/~0", "2")));
}

TEST(TextsOf, RefusesWhatIsNoJson) { EXPECT_THROW(textsOf("{"), EditError); }

// A folder of rig documents, each with the text of one part.
class Origins : public testing::Test {
 protected:
  Origins() {
    std::string pattern = (fs::temp_directory_path() / "heatledger-XXXXXX").string();
    folder_ = ::mkdtemp(pattern.data());
    fs::create_directory(folder_ / "deep");
  }
  ~Origins() override {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  void write(const fs::path& name, const std::string& text) const {
    std::ofstream(folder_ / name) << text;
  }
  std::vector<std::string> of(const std::string& from) const {
    return originsOf(R"({"rigs": [{"name": "plain"}, {"from": ")" + from + R"("}]})", 1, folder_);
  }

  fs::path folder_;
};

TEST_F(Origins, AreFollowedToTheCatalogueNearestFirst) {
  write("mine.json", R"({"from": "deep/base.json", "name": "mine"})");
  // From its own folder, not from the plan's.
  write("deep/base.json", R"({"from": "../last.json", "name": "base"})");
  write("deep/next.json", R"({"from": "40 L steel kettle", "name": "next"})");
  EXPECT_THAT(of("mine.json"), SizeIs(2));
  write("deep/base.json", R"({"from": "next.json", "name": "base"})");
  const auto all = of("mine.json");
  ASSERT_THAT(all, SizeIs(4));
  EXPECT_EQ(textAt(all[0], "/name"), "mine");
  EXPECT_EQ(textAt(all[1], "/name"), "base");
  EXPECT_EQ(textAt(all[2], "/name"), "next");
  EXPECT_TRUE(exists(all[3], "/vessel/inner_diameter"));
}

TEST_F(Origins, StopWhereNothingCanBeRead) {
  EXPECT_THAT(originsOf(newPlanText(), 9, folder_), IsEmpty());
  EXPECT_THAT(originsOf(R"({"rigs": [{"name": "plain"}]})", 0, folder_), IsEmpty());
  EXPECT_THAT(of("no such kettle"), IsEmpty());
  EXPECT_THAT(of("not-there.json"), IsEmpty());
  write("broken.json", "{");
  EXPECT_THAT(of("broken.json"), IsEmpty());
}

TEST_F(Origins, DoNotLeadOutOfTheFolder) {
  write("outside.json", R"({"name": "outside"})");
  EXPECT_THAT(originsOf(R"({"rigs": [{"from": "../outside.json"}]})", 0, folder_ / "deep"),
              IsEmpty());
  EXPECT_THAT(of((folder_ / "outside.json").string()), IsEmpty());
  EXPECT_THAT(of("deep/../outside.json"), SizeIs(1));
}

TEST_F(Origins, EndEvenIfADocumentIsFromItself) {
  write("loop.json", R"({"from": "loop.json"})");
  EXPECT_THAT(of("loop.json"), SizeIs(8));
}

TEST(InheritedTexts, MergeVesselAndElementAndReplaceOtherParts) {
  EXPECT_THAT(
      inheritedTexts({R"({"vessel": {"finish": "bright"}, "lid": {"finish": "dull"}})",
                      R"({"vessel": {"finish": "brushed", "diameter": "36 cm"},
                                  "lid": {"finish": "bright", "material": "steel"},
                                  "element": {"power": "3 kW"}})"}),
      UnorderedElementsAre(Pair("/vessel/finish", "bright"), Pair("/vessel/diameter", "36 cm"),
                           Pair("/lid/finish", "dull"), Pair("/element/power", "3 kW")));
  EXPECT_THAT(inheritedTexts({}), IsEmpty());
}

TEST(WithPartStated, CopiesThePartOfTheNearestThatHasIt) {
  const std::string plan = R"({"rigs": [{"name": "one"}, {"name": "two"}]})";
  const std::vector<std::string> origins{R"({"name": "near"})",
                                         R"({"lid": {"finish": "dull", "material": "tin"}})",
                                         R"({"lid": {"finish": "bright"}})"};
  const std::string stated = withPartStated(plan, 1, "lid", origins);
  EXPECT_EQ(textAt(stated, "/rigs/1/lid/finish"), "dull");
  EXPECT_EQ(textAt(stated, "/rigs/1/lid/material"), "tin");
  EXPECT_FALSE(exists(stated, "/rigs/0/lid"));
  // What is stated, what merges and what nobody has stays as it is.
  EXPECT_EQ(withPartStated(stated, 1, "lid", {origins[2]}), stated);
  EXPECT_EQ(withPartStated(plan, 1, "vessel", {R"({"vessel": {"finish": "dull"}})"}), plan);
  EXPECT_EQ(withPartStated(plan, 1, "cable", origins), plan);
}

}  // namespace
}  // namespace rigs
