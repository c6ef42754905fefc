// SPDX-License-Identifier: GPL-3.0-or-later
// Plans that nobody writes on purpose: each is told in words that help, or read as it is meant.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/plans/keys.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace {

using rigs::Problems;
using test_support::demoWith;
using test_support::Json;
using test_support::removed;
using testing::HasSubstr;
using testing::Not;

std::string saidOf(const std::string& document) {
  Problems problems;
  rigs::readPlan(document, ".", problems);
  std::string all;
  for (const rigs::Problem& problem : problems)
    all += problem.where + ": " + rigs::inEnglish(problem.message) + '\n';
  return all;
}

TEST(StrangePlan, OfAnEmptyRegionIsToldSo) {
  const std::string said = saidOf(demoWith({{"/place/region", ""}}));
  EXPECT_THAT(said, HasSubstr("/place/region: \"\" names no region"));
  EXPECT_THAT(said, HasSubstr("or leave it out"));
  EXPECT_EQ(saidOf(demoWith({{"/place/region", "Canada"}})), "");
}

TEST(StrangePlan, MayBeginWithOneByteOrderMarkOnly) {
  const std::string mark = "\xef\xbb\xbf";
  EXPECT_EQ(saidOf(mark + rigs::newPlanText()), "");
  for (int marks = 2; marks < 5; ++marks) {
    std::string document = rigs::newPlanText();
    for (int i = 0; i < marks; ++i) document = mark + document;
    EXPECT_THAT(saidOf(document), HasSubstr("more than one byte-order mark"));
  }
}

TEST(StrangePlan, OfHalfACharacterIsToldWhereItStands) {
  const auto titled = [](const std::string& escaped) { return R"({"title": ")" + escaped + "\"}"; };
  for (const char* half : {R"(\ud800)", R"(\udfff)", R"(a\udbffz)", R"(\ud800\u0041)",
                           R"(\ud800\ud800)", R"(\udc00\ud800)", R"(\ud83d)"})
    EXPECT_THAT(saidOf(titled(half)), HasSubstr("is half of a character")) << half;
  EXPECT_THAT(saidOf(titled(R"(ab\ud800)")), HasSubstr("column 14"));
  for (const char* none : {R"(\q)", R"(\u12)", R"(\uzzzz)", R"(\x41)", R"(C:\Users)"})
    EXPECT_THAT(saidOf(titled(none)), HasSubstr("stands for no character")) << none;
  for (const char* whole : {R"(\ud83d\ude00)", R"(\u00e4)", R"(\\ud800)", R"(\"\\\/\b)"})
    EXPECT_THAT(saidOf(titled(whole)), Not(HasSubstr("character at"))) << whole;
  EXPECT_THAT(saidOf(titled(R"(\\ud800)")), Not(HasSubstr("half")));
}

// Whatever is wrong with a clock time, the example is one.
TEST(StrangePlan, IsToldClockTimesByExample) {
  const Json windows = Json::array({{{"from", "00:00"}, {"to", "12:00"}, {"price", "1 EUR/kWh"}},
                                    {{"from", "12:00"}, {"to", "24:00"}, {"price", "1 EUR/kWh"}}});
  std::size_t clocks = 0;
  for (const char* place :
       {"/day_starts", "/tariff/brew_from", "/tariff/brew_until", "/tariff/times/weekday/0/from",
        "/tariff/times/weekday/1/to", "/tariff/times/weekend/0/from"}) {
    for (const Json& wrong : {Json(5), Json(nullptr), Json(""), Json("soon"), Json("9:00\a"),
                              Json(std::string(5000, 'x')), Json(Json::array()), Json("\n\n")}) {
      Json document = Json::parse(rigs::newPlanText());
      document["tariff"].erase("price");
      document["tariff"]["times"] = {{"weekday", windows}, {"weekend", windows}};
      document[Json::json_pointer(place)] = wrong;
      const std::string said = saidOf(document.dump());
      SCOPED_TRACE(place + (": " + wrong.dump().substr(0, 30)) + '\n' + said);
      EXPECT_THAT(said, testing::ContainsRegex("e\\.g\\. \"[0-2][0-9]:[0-5][0-9]\""));
      EXPECT_THAT(said, Not(HasSubstr("Old kettle")));
      ++clocks;
    }
  }
  EXPECT_EQ(clocks, 48U);
}

TEST(StrangePlan, IsToldRangesInUnitsThatPeopleSay) {
  const std::pair<const char*, const char*> cases[] = {
      {"99 h", "1 min to 12 h"}, {"1 s", "1 min to 12 h"}, {"9 d", "1 min to 12 h"}};
  for (const auto& [written, range] : cases)
    EXPECT_THAT(saidOf(demoWith({{"/goals/boil_within", written}})), HasSubstr(range)) << written;
  // In the unit of what was written where that reads well.
  EXPECT_THAT(saidOf(demoWith({{"/place/room", "500 °F"}})), HasSubstr("°F to "));
}

// No end of any range in the plan is told with digits that nobody says, whatever unit was used.
TEST(StrangePlan, IsToldNoRangeWithManyZeros) {
  for (const char* place : {"/goals/boil_within", "/goals/unplugged", "/batch/boil",
                            "/batch/mashing_in", "/place/altitude", "/rigs/0/cable/length"}) {
    for (const char* written :
         {"1e9 h", "1e9 d", "1e12 s", "1e9 mm", "1e9 km", "1e9 in", "1e9 mi"}) {
      const std::string said = saidOf(demoWith({{place, written}}));
      EXPECT_THAT(said, Not(HasSubstr("0.00"))) << place << ' ' << said;
      EXPECT_THAT(said, Not(testing::ContainsRegex("accepted is [^;]*[0-9]{6,}"))) << said;
    }
  }
}

// --- Hours at which one is paid for taking energy.

std::string priced(const std::string& night) {
  return demoWith(
      {{"/tariff/price", removed()},
       {"/tariff/times",
        {{"weekday",
          Json::array({{{"from", "00:00"}, {"to", "06:00"}, {"price", night}},
                       {{"from", "06:00"}, {"to", "24:00"}, {"price", "0.30 EUR/kWh"}}})}}}});
}

TEST(NegativePrices, AreReadHoweverTheMinusIsWritten) {
  for (const char* written :
       {"-0.05 EUR/kWh", "−0.05 EUR/kWh", "EUR -0.05/kWh", "-EUR 0.05/kWh", "- 0,05 EUR/kWh"}) {
    Problems problems;
    const auto plan = rigs::readPlan(priced(written), ".", problems);
    ASSERT_TRUE(plan) << written << test_support::told(problems);
    EXPECT_DOUBLE_EQ(plan->tariff.weekday.at(0).perKilowattHour, -0.05) << written;
  }
  for (const char* wrong : {"--0.05 EUR/kWh", "-0.05/kWh", "0.05- EUR/kWh", "-", "- EUR/kWh"})
    EXPECT_THAT(saidOf(priced(wrong)), HasSubstr("is no price of energy")) << wrong;
}

TEST(NegativePrices, AreOfHoursOnly) {
  EXPECT_THAT(saidOf(demoWith({{"/tariff/price", "-0.05 USD/kWh"}})),
              HasSubstr("/tariff/price: \"-0.05 USD/kWh\" is negative; only prices by \"times\""));
  EXPECT_EQ(saidOf(demoWith({{"/tariff/price", "-0 USD/kWh"}})), "");
}

TEST(NegativePrices, MakeADayAtThatHourPay) {
  Problems problems;
  const auto plan = rigs::readPlan(priced("-0.10 EUR/kWh"), ".", problems);
  ASSERT_TRUE(plan);
  rigs::Plan night = *plan;
  night.startOfDay = physics::hours(0.0);
  const auto answers = rigs::answer(night, rigs::Depth::Day);
  const auto day = rigs::answer(*plan, rigs::Depth::Day);
  ASSERT_TRUE(answers.rigs[1].cost && day.rigs[1].cost);
  EXPECT_LT(*answers.rigs[1].cost, 0.0);
  EXPECT_GT(*day.rigs[1].cost, 0.0);
}

// --- Limits.

std::string nested(std::size_t levels) {
  return std::string(levels, '[') + std::string(levels, ']');
}

TEST(StrangePlan, OfManyLevelsIsRefusedFromTheSixtyFifthOn) {
  EXPECT_THAT(saidOf("{\"note\": " + nested(63) + "}"), Not(HasSubstr("levels of brackets")));
  EXPECT_THAT(saidOf("{\"note\": " + nested(64) + "}"),
              HasSubstr("column 73: more than 64 levels of brackets"));
  EXPECT_THAT(saidOf(std::string(3 << 20, '[')), HasSubstr("more than 64 levels of brackets"));
}

TEST(StrangePlan, OfManyKeysIsRefusedFromTheThousandAndFirstOn) {
  const auto withKeys = [](int count) {
    std::string keys;
    for (int i = 0; i < count; ++i) keys += (i > 0 ? ", \"" : "\"") + std::to_string(i) + "\": 1";
    return '{' + keys + '}';
  };
  EXPECT_THAT(saidOf(withKeys(1000)), Not(HasSubstr("more than 1000 keys")));
  EXPECT_THAT(saidOf(withKeys(1001)), HasSubstr("more than 1000 keys"));
}

TEST(StrangePlan, OfMoreThanFourMebibytesIsRefused) {
  constexpr std::size_t kMost = std::size_t{4} << 20;
  const auto padded = [](std::size_t size) {
    std::string document = rigs::newPlanText();
    return document + std::string(size - document.size(), ' ');
  };
  EXPECT_EQ(saidOf(padded(kMost)), "");
  EXPECT_THAT(saidOf(padded(kMost + 1)), HasSubstr("larger than 4 MB"));
}

// --- Bytes.

// Of a document that was damaged somewhere everything is told in short sentences, and at once.
TEST(StrangePlan, OfRandomDamageIsToldInShort) {
  std::mt19937 random(19990131);
  const std::string whole = rigs::newPlanText();
  const std::string pieces[] = {"\\ud800",
                                "\\",
                                "\"",
                                "\xef\xbb\xbf",
                                "\xed\xa0\x80",
                                std::string(1, '\0'),
                                "\x1b[2J",
                                "{",
                                "[",
                                "]]]]",
                                "1e999",
                                "-",
                                std::string(3000, '['),
                                std::string(3000, 'x')};
  for (int round = 0; round < 1500; ++round) {
    std::string damaged = whole;
    for (int hits = 1 + static_cast<int>(random() % 3); hits > 0; --hits) {
      const std::size_t at = random() % damaged.size();
      const std::string& piece = pieces[random() % std::size(pieces)];
      damaged.replace(at, random() % 5, piece);
    }
    Problems problems;
    rigs::readPlan(damaged, ".", problems);
    for (const rigs::Problem& problem : problems) {
      const std::string said = rigs::inEnglish(problem.message);
      EXPECT_FALSE(said.empty());
      EXPECT_LT(said.size(), 1000U) << round << said;
      EXPECT_EQ(said.find('\x1b'), std::string::npos) << round;
    }
  }
}

}  // namespace
