// SPDX-License-Identifier: GPL-3.0-or-later
// A region's rules from a file of one's own.
#include "rigs/circuits/rules_file.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>
#include <nlohmann/json.hpp>

#include "tests/rigs/plans/plan_edit.hpp"

namespace {

namespace fs = std::filesystem;
using namespace rigs;
using test_support::Json;
using testing::HasSubstr;

class RulesFile : public testing::Test {
 protected:
  RulesFile() {
    std::string pattern = (fs::temp_directory_path() / "heatledger-XXXXXX").string();
    folder_ = ::mkdtemp(pattern.data());
    std::ifstream in(fs::path(HEATLEDGER_SOURCE_DIR) / "rigs/data/rules/japan.json");
    rules_ = Json::parse(in);
    rules_["region"] = "Atlantis";
  }
  ~RulesFile() override {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  std::shared_ptr<const CircuitRules> read() {
    std::ofstream(folder_ / "mine.json") << rules_.dump(2);
    return readRulesFile(folder_, "mine.json", "/place/rules", problems_);
  }

  fs::path folder_;
  Json rules_;
  Problems problems_;
};

TEST_F(RulesFile, IsReadLikeABundledOne) {
  const auto rules = read();
  ASSERT_TRUE(rules) << test_support::told(problems_);
  EXPECT_TRUE(problems_.empty()) << test_support::told(problems_);
  EXPECT_EQ(rules->region, "Atlantis");
  EXPECT_EQ(rules->rangesOf(physics::volts(100.0)).size(), 1u);
}

TEST_F(RulesFile, TellsEveryProblemWithItsOwnPlace) {
  rules_["voltages"][0]["nominal"] = "many";
  rules_["voltages"][1]["lowest"] = "deep";
  EXPECT_FALSE(read());
  ASSERT_EQ(problems_.size(), 2u) << test_support::told(problems_);
  for (const Problem& problem : problems_) {
    EXPECT_EQ(problem.severity, Severity::Error);
    EXPECT_EQ(problem.where, "/place/rules");
  }
  EXPECT_THAT(inEnglish(problems_[0].message),
              HasSubstr("in \"mine.json\" at /voltages/0/nominal: "));
  EXPECT_THAT(inEnglish(problems_[1].message),
              HasSubstr("in \"mine.json\" at /voltages/1/lowest: "));
}

TEST_F(RulesFile, IsReadWithARemark) {
  rules_["colour"] = "blue";
  EXPECT_TRUE(read());
  ASSERT_EQ(problems_.size(), 1u);
  EXPECT_EQ(problems_[0].severity, Severity::Warning);
  EXPECT_EQ(problems_[0].where, "/place/rules");
  EXPECT_THAT(inEnglish(problems_[0].message), HasSubstr("in \"mine.json\" at /colour: "));
}

// A plan whose own rules name a region need not, and may not, name another.
TEST_F(RulesFile, JudgesThePlansCircuits) {
  rules_["voltages"][0]["nominal"] = "120 V";
  rules_["voltages"][0]["lowest"] = "110 V";
  rules_["voltages"][0]["highest"] = "125 V";
  rules_["voltages"][1]["nominal"] = "208 V";
  ASSERT_TRUE(read()) << test_support::told(problems_);
  const auto judged = test_support::readChecked(
      test_support::demoWith({{"/place/rules", "mine.json"}, {"/place/region", "Atlantis"}}),
      folder_);
  ASSERT_TRUE(judged.plan) << test_support::told(judged.problems);
  ASSERT_TRUE(judged.plan->ownRules);
  EXPECT_EQ(judged.plan->ownRules->region, "Atlantis");
  const auto other = test_support::readChecked(
      test_support::demoWith({{"/place/rules", "mine.json"}, {"/place/region", "Japan"}}), folder_);
  ASSERT_EQ(other.problems.size(), 1u) << test_support::told(other.problems);
  EXPECT_EQ(other.problems[0].where, "/place/region");
  EXPECT_THAT(
      inEnglish(other.problems[0].message),
      HasSubstr("\"Japan\" is not the region of the rules file, \"Atlantis\"; keep one of them"));
}

TEST_F(RulesFile, IsNotThere) {
  EXPECT_FALSE(readRulesFile(folder_, "none.json", "/place/rules", problems_));
  ASSERT_EQ(problems_.size(), 1u);
  EXPECT_EQ(problems_[0].where, "/place/rules");
  EXPECT_THAT(inEnglish(problems_[0].message), HasSubstr("none.json\" is not there"));
}

}  // namespace
