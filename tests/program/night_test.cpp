// SPDX-License-Identifier: GPL-3.0-or-later
// A bare and a jacketed kettle left overnight: what is typed, and what comes back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

namespace {

constexpr const char* kOvernight = R"({
  "format": {"name": "heat-ledger-plan", "version": 1},
  "batch": {"wort": "23 L", "grain": {"mass": "5 kg"},
            "mash": {"unplugged": {"temperature": "67 C", "time": "10 h"}}, "boil": "60 min"},
  "place": {"room": "16 C", "water": "10 C", "altitude": "0 m"},
  "jacket_to_compare": {"side": [{"material": "closed-cell rubber foam", "thickness": "13 mm"}]},
  "goals": {"unplugged": "90 min"},
  "rigs": [
    {"name": "Bare", "from": "40 L steel kettle", "supply": {"from": "Europe 230 V 16 A"}},
    {"name": "Wrapped", "from": "40 L steel kettle", "supply": {"from": "Europe 230 V 16 A"},
     "jacket": {"side": [{"material": "closed-cell rubber foam", "thickness": "13 mm"}]}}]})";

class Night : public testing::Test {
 protected:
  Ran ask(std::vector<std::string> words) const {
    words.insert(words.begin() + 1, plan_);
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    return ran;
  }

 private:
  Folder folder_;
  std::string plan_ = folder_.write("night.json", kOvernight);
};

TEST_F(Night, IsTheOneThatThePlanHasOnEveryPage) {
  for (const char* command : {"answer", "night", "insulate"})
    EXPECT_THAT(ask({command}).output, HasSubstr(" after 10 h unplugged")) << command;
  for (const char* command : test_support::kPages) {
    const std::string output = ask({command, "--width", "400"}).output;
    EXPECT_THAT(output, Not(HasSubstr("1 h 30 min"))) << command;
    EXPECT_THAT(output, HasSubstr(" of its 10 h unplugged (Bare)")) << command;
  }
}

TEST_F(Night, TellsTheRigsAndNothingSupposedUnlessItIsAskedFor) {
  const std::string plain = ask({"night"}).output;
  for (const char* row : {"after 10 min", "after 20 min", "after 30 min", "after 1 h", "after 9 h",
                          "in the end, after 10 h", "passes 57", "heating to the boil"})
    EXPECT_THAT(plain, HasSubstr(row));
  for (const char* supposed : {"if it had", "if it were bare"})
    EXPECT_THAT(plain, Not(HasSubstr(supposed)));
  // Its own jacket stands where the page says what it is about, and there alone.
  const std::size_t own = plain.find("like (a), but a jacket of 13 mm");
  ASSERT_NE(own, std::string::npos);
  EXPECT_EQ(plain.find("13 mm"), plain.rfind("13 mm"));
  EXPECT_THAT(plain, HasSubstr("--suppose-jacket"));
  const std::string asked = ask({"night", "--suppose-jacket"}).output;
  EXPECT_THAT(asked, HasSubstr("(a) if it had 13 mm closed-cell rubber foam: "));
  EXPECT_THAT(asked, HasSubstr("(b) if it were bare: "));
}

TEST_F(Night, HasItsCurveInSpreadsheetsAndJson) {
  const std::string csv = ask({"night", "--csv"}).output;
  EXPECT_THAT(csv, HasSubstr("night,The mash while it is left alone,after 10 min,°C,"));
  EXPECT_THAT(csv, HasSubstr("\"in the end, after 10 h\",°C,"));
  EXPECT_THAT(csv, HasSubstr("night,Hot holding,passes 57 °C after,min,"));
  const json result = json::parse(ask({"night", "--json"}).output);
  EXPECT_EQ(result["goals"]["unplugged_s"], 36000.0);
  for (const json& rig : result["rigs"]) {
    const json& night = rig["night"];
    EXPECT_EQ(night["alone_s"], 36000.0);
    EXPECT_EQ(night["of_the_day"], true);
    EXPECT_GT(night["curve"].size(), 60U);
    EXPECT_EQ(night["readings"].size(), 13U);
    EXPECT_EQ(night["readings"].back()["wort_C"], night["morning_C"]);
    EXPECT_NEAR(night["below_57_after_s"].get<double>() + night["below_57_s"].get<double>(),
                36000.0, 1.0);
    for (const json& stage : rig["day"]["stages"])
      if (stage["stage"] == "unplugged rest") {
        EXPECT_EQ(stage["last_C"], night["morning_C"]);
      }
  }
  EXPECT_TRUE(result["rigs"][0]["night"].contains("if_jacketed"));
  EXPECT_TRUE(result["rigs"][1]["night"].contains("if_bare"));
}

TEST_F(Night, ComesFirstInTheAnswer) {
  const std::string answer = ask({"answer"}).output;
  EXPECT_LT(answer.find("How far does it cool?"), answer.find("Which element does the supply"));
  EXPECT_THAT(answer, HasSubstr("altitude 0 m;"));
}

}  // namespace
