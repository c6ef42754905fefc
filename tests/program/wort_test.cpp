// SPDX-License-Identifier: GPL-3.0-or-later
// What time and heat do to the wort, as a person asks for it: page, spreadsheet, JSON, German.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;

namespace {

TEST(Wort, IsAPageASpreadsheetAndJson) {
  const Ran page = runProgram({"wort", "--width", "200"});
  EXPECT_EQ(page.exitCode, 0) << page.complaint;
  EXPECT_THAT(page.output, HasSubstr("What do time and heat do to the wort?"));
  EXPECT_THAT(page.output, HasSubstr("They are no bitterness"));
  EXPECT_THAT(page.output, HasSubstr("Never close a hot vessel"));
  EXPECT_THAT(runProgram({"wort", "--csv"}).output, HasSubstr("heating up,min,"));
  const auto result = nlohmann::json::parse(runProgram({"wort", "--json"}).output);
  EXPECT_GT(result["rigs"][1]["wort"]["boil"]["iso_at_100_C_s"].get<double>(), 60.0);
  EXPECT_THAT(page.output, HasSubstr("The mash's starch is done after "));
  EXPECT_GT(result["rigs"][1]["wort"]["mash"]["attenuation_limit_low"].get<double>(), 0.5);
  EXPECT_THAT(runProgram({"wort", "--language", "de", "--width", "200"}).output,
              HasSubstr("Was machen Zeit und Hitze mit der Würze?"));
}

}  // namespace
