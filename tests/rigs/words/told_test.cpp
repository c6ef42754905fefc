// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/words/told.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

namespace rigs {
namespace {

using namespace physics;

// Words turned about and a comma in numbers: enough to see that nothing was glued beforehand.
class Backwards final : public Language {
 public:
  std::string_view code() const override { return "xx"; }
  std::string_view decimalSign() const override { return ","; }
  std::optional<std::string_view> translation(std::string_view context,
                                              std::string_view english) const override {
    static const std::map<std::string_view, std::string_view> kAll{
        {"%1 in %2", "%2: %1"}, {"and", "und"}, {"cork", "Kork"}, {"is missing", "fehlt"}};
    const auto at = kAll.find(english);
    if (context == "None" || at == kAll.end()) return std::nullopt;
    return at->second;
  }
};
const Backwards kBackwards;

TEST(Told, KeepsItsArgumentsUntilItIsRead) {
  const Told told(TOLD("Test", "%1 in %2"), amount(litres(27.5)), amount(celsius(20.0)));

  EXPECT_EQ(inEnglish(told), "27.5 L in 20 °C");
  EXPECT_EQ(inEnglish(told, UnitSystem::UsCustomary), "7.26 US gal in 68 °F");
  EXPECT_EQ(tell(told, {.language = &kBackwards}), "20 °C: 27,5 L");
}

TEST(Told, LeavesAloneWhatAPersonWrote) {
  const Told told(TOLD("Test", "%1 in %2"), Quoted{"5.5 %2"}, Verbatim{"a.b 1.5"});

  EXPECT_EQ(inEnglish(told), "\"5.5 %2\" in a.b 1.5");
  EXPECT_EQ(tell(told, {.language = &kBackwards}), "a.b 1.5: \"5.5 %2\"");
}

TEST(Told, FallsBackToEnglishAsAWhole) {
  EXPECT_EQ(tell(Told(TOLD("None", "%1 in %2"), Count{1}, Count{2}), {.language = &kBackwards}),
            "1 in 2");
}

TEST(Told, TellsBundledTextsInTheReadersLanguage) {
  EXPECT_EQ(tell(Argument(Bundled{"Catalogue", "cork"}), {.language = &kBackwards}), "Kork");
  EXPECT_EQ(tell(Argument(Bundled{"Catalogue", "felt"}), {.language = &kBackwards}), "felt");
}

TEST(Told, JoinsItemsAsASentenceDoes) {
  const auto list = [](Joint joint, std::vector<Argument> items) {
    return tell(Argument(List{std::move(items), joint}), {});
  };
  EXPECT_EQ(list(Joint::And, {Count{1}, Count{2}, Count{3}}), "1, 2 and 3");
  EXPECT_EQ(list(Joint::And, {Count{1}}), "1");
  EXPECT_EQ(list(Joint::Semicolon, {Count{1}, Told(), Count{3}}), "1; 3");
  EXPECT_EQ(tell(Argument(List{{Count{1}, Count{2}}, Joint::And}), {.language = &kBackwards}),
            "1 und 2");
}

TEST(Told, IsNothingWhenItsSentencesAre) {
  EXPECT_TRUE(sentences({Told(), Told()}).empty());
  EXPECT_EQ(inEnglish(sentences({Told(TOLD("Test", "One.")), Told(), Told(TOLD("Test", "Two."))})),
            "One. Two.");
}

TEST(Told, IsEqualByTemplateAndArgumentsNotByText) {
  const auto of = [](Argument a) { return Told(TOLD("Test", "%1 is missing"), std::move(a)); };
  EXPECT_EQ(of(amount(litres(1.0))), of(amount(litres(1.0))));
  EXPECT_FALSE(of(amount(litres(1.0))) == of(Verbatim{"1 L"}));
}

TEST(Money, PutsASymbolInFrontAndACodeBehind) {
  EXPECT_EQ(tell(Argument(Money{1.944, "EUR"}), {}), "1.94 EUR");
  EXPECT_EQ(tell(Argument(Money{-1.944, "$"}), {}), "-$1.94");
  EXPECT_EQ(tell(Argument(Money{0.0123, "$"}), {}), "$0.012");
  EXPECT_EQ(tell(Argument(Money{-0.0, "$"}), {}), "$0.00");
  EXPECT_EQ(tell(Argument(Money{1.5, "EUR"}), {.language = &kBackwards}), "1,50 EUR");
}

TEST(Clock, SaysOnWhichDay) {
  EXPECT_EQ(tell(Argument(Clock{hours(9.0) + minutes(41.0)}), {}), "09:41");
  EXPECT_EQ(tell(Argument(Clock{hours(24.0) + minutes(10.0)}), {}), "+1 d 00:10");
  EXPECT_EQ(tell(Argument(Clock{minutes(-230.0)}), {}), "-1 d 20:10");
  EXPECT_EQ(tell(Argument(Clock{hours(-24.0)}), {}), "-1 d 00:00");
  EXPECT_EQ(tell(Argument(Clock{minutes(-24.0 * 60.0 - 1.0)}), {}), "-2 d 23:59");
  EXPECT_EQ(tell(Argument(Clock{seconds(-20.0)}), {}), "00:00");
  EXPECT_EQ(tell(Argument(Clock{.sinceMidnight = minutes(125.0), .counted = true}), {}),
            "hour 2:05");
  EXPECT_EQ(tell(Argument(HoursAndMinutes{minutes(125.0)}), {}), "2:05");
  EXPECT_EQ(tell(Argument(HoursAndMinutes{minutes(-5.0)}), {}), "-0:05");
  // Typed by a hand that slipped: nothing overflows.
  for (const double moment : {2.4e22, -2.4e22, 1e300, -1e300}) {
    EXPECT_THAT(tell(Argument(Clock{seconds(moment)}), {}), testing::HasSubstr("69444444"));
    EXPECT_FALSE(tell(Argument(HoursAndMinutes{seconds(moment)}), {}).empty());
  }
}

TEST(Gap, TellsNoDigitsOfRounding) {
  EXPECT_EQ(tell(Argument(Gap{9e-10}), {}), "<1e-9");
  EXPECT_EQ(tell(Argument(Gap{3.2e-9}), {.language = &kBackwards}), "3e-09");
}

TEST(Durations, AreToldToWhatMatters) {
  EXPECT_EQ(tell(Argument(roughly(minutes(65.2))), {}), "1 h 05 min");
  EXPECT_EQ(tell(Argument(roughly(minutes(4.11))), {}), "4 min");
  EXPECT_EQ(tell(Argument(roughly(seconds(29.0))), {}), "less than 1 min");
  EXPECT_EQ(tell(Argument(roughly(seconds(31.0))), {}), "1 min");
  EXPECT_EQ(tell(Argument(asChosen(minutes(4.11))), {}), "4 min 7 s");
  EXPECT_EQ(tell(Argument(inWholeWatts(watts(1536.7))), {}), "1537 W");
  EXPECT_EQ(tell(Argument(inWholeWatts(watts(12340.0))), {}), "12.3 kW");
}

}  // namespace
}  // namespace rigs
