// SPDX-License-Identifier: GPL-3.0-or-later
// A rig keeps its letter for life, whoever comes, goes or moves beside it.
#include "rigs/plans/rig_letters.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace rigs {
namespace {

using test_support::Json;
using Slots = std::vector<std::size_t>;

// The bundled example of four rigs, with these letters; "" where none is stated.
Json withLetters(const std::vector<std::string>& letters) {
  Json plan = Json::parse(demoPlanText());
  for (std::size_t i = 0; i < letters.size(); ++i)
    if (!letters[i].empty()) plan["rigs"][i]["letter"] = letters[i];
  return plan;
}

Slots slotsRead(const Json& document, const std::filesystem::path& folder = ".") {
  Problems problems;
  const auto plan = readPlan(document.dump(), folder, problems);
  EXPECT_TRUE(plan) << test_support::told(problems);
  return plan ? slotsOf(plan->rigs) : Slots{};
}

std::string refusalAt(const std::string& place, const Json& document) {
  Problems problems;
  EXPECT_FALSE(readPlan(document.dump(), ".", problems));
  std::erase_if(problems, [&](const Problem& one) { return one.where != place; });
  return test_support::told(problems);
}

Slots slotsOfText(const std::string& document) {
  return slotsIn(textsOf(document), rigCount(document));
}

std::size_t lettersStated(const std::string& document) {
  const Texts texts = textsOf(document);
  return static_cast<std::size_t>(std::count_if(
      texts.begin(), texts.end(), [](const auto& one) { return one.first.ends_with("/letter"); }));
}

}  // namespace

TEST(RigLetters, GoByPlaceWhereNoneIsStated) {
  EXPECT_EQ(slotsRead(withLetters({})), (Slots{0, 1, 2, 3}));
}

TEST(RigLetters, AreAsStatedAndTheOthersTakeTheFirstThatIsFree) {
  EXPECT_EQ(slotsRead(withLetters({"", "d"})), (Slots{0, 3, 1, 2}));
  EXPECT_EQ(slotsRead(withLetters({"", "a"})), (Slots{1, 0, 2, 3}));
  EXPECT_EQ(slotsRead(withLetters({"", "", "", "a"})), (Slots{1, 2, 3, 0}));
  EXPECT_EQ(slotsRead(withLetters({"z", "y", "x", "w"})), (Slots{25, 24, 23, 22}));
}

TEST(RigLetters, StatedTwiceAreRefusedAtTheSecondWithOneThatIsFree) {
  const std::string says = refusalAt("/rigs/2/letter", withLetters({"a", "b", "b", ""}));
  EXPECT_NE(says.find("two rigs have the letter \"b\""), std::string::npos) << says;
  EXPECT_NE(says.find("a letter of its own from a to z, e.g. \"c\""), std::string::npos) << says;
}

TEST(RigLetters, AreSmallAndOfTheAlphabet) {
  for (const char* wrong : {"B", "1", "(", " "}) {
    const std::string says = refusalAt("/rigs/1/letter", withLetters({"", wrong}));
    EXPECT_NE(says.find("write one from a to z, e.g. \"c\""), std::string::npos) << says;
  }
}

TEST(RigLetters, AreNotTakenOverFromAnotherRig) {
  const auto folder = std::filesystem::path(testing::TempDir()) / "heatledger-letters";
  std::filesystem::create_directories(folder);
  Json rig = Json::parse(demoPlanText())["rigs"][0];
  rig["letter"] = "k";
  std::ofstream(folder / "mine.json") << rig.dump();
  Json plan = withLetters({});
  plan["rigs"][1] = {{"name", "Second"}, {"from", "mine.json"}};
  plan["rigs"][2] = {{"name", "Third"}, {"from", "mine.json"}, {"letter", "m"}};
  EXPECT_EQ(slotsRead(plan, folder), (Slots{0, 1, 12, 2}));
}

TEST(RigLetters, StandInTheResult) {
  Problems problems;
  const auto plan = readPlan(withLetters({"", "d"}).dump(), ".", problems);
  ASSERT_TRUE(plan);
  const auto result = nlohmann::json::parse(resultJson(*plan, answer(*plan, Depth::Day)));
  std::string letters;
  for (const auto& rig : result["rigs"]) letters += rig["letter"].get<std::string>();
  EXPECT_EQ(letters, "adbc");
}

TEST(RigLetters, AreWrittenIntoThoseRigsOnlyThatWouldChange) {
  const std::string demo(demoPlanText());
  EXPECT_EQ(withSlots(demo, {0, 1, 2, 3}), demo);

  const std::string removed = withSlots(withRigRemoved(demo, 1), {0, 2, 3});
  EXPECT_EQ(slotsOfText(removed), (Slots{0, 2, 3}));
  EXPECT_EQ(lettersStated(removed), 2U);
  EXPECT_FALSE(exists(removed, "/rigs/0/letter"));

  const std::string moved = withSlots(withRigMoved(demo, 2, 0), {2, 0, 1, 3});
  EXPECT_EQ(slotsOfText(moved), (Slots{2, 0, 1, 3}));
  EXPECT_EQ(lettersStated(moved), 1U);
}

}  // namespace rigs
