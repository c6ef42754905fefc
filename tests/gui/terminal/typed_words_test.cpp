// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/typed_words.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gui;
using testing::ElementsAre;

namespace {

constexpr OptionLook kKnown[] = {{"--units"}, {"--room"}, {"--json", false}, {"-h", false}};

TypedWords typed(const std::vector<const char*>& words) { return tellApart(words, kKnown); }

}  // namespace

TEST(TellApart, KeepsWordsAndOptionsInAnyOrder) {
  const TypedWords all = typed({"--units", "US", "day", "--json", "plan.json"});
  EXPECT_THAT(all.words, ElementsAre("day", "plan.json"));
  EXPECT_EQ(all.valueOf("--units"), "US");
  EXPECT_TRUE(all.has("--json"));
  EXPECT_FALSE(all.has("--room"));
}

TEST(TellApart, TakesAValueBehindOrTogether) {
  EXPECT_EQ(typed({"--units=US"}).valueOf("--units"), "US");
  EXPECT_EQ(typed({"--units="}).valueOf("--units"), "");
  EXPECT_EQ(typed({"--room", "-5 °C"}).valueOf("--room"), "-5 °C");
}

TEST(TellApart, KnowsStandardInputAndNamesThatBeginWithADash) {
  EXPECT_THAT(typed({"day", "-"}).words, ElementsAre("day", "-"));
  const TypedWords all = typed({"day", "--", "-h", "--json"});
  EXPECT_THAT(all.words, ElementsAre("day", "-h", "--json"));
  EXPECT_FALSE(all.has("--json"));
}

TEST(TellApart, NamesEverythingThatLooksWrong) {
  const TypedWords all =
      typed({"--colour", "--json=yes", "--room", "1 C", "--room", "2 C", "-x", "--units"});
  EXPECT_THAT(all.unknown, ElementsAre("--colour", "-x"));
  EXPECT_THAT(all.needingNone, ElementsAre("--json"));
  EXPECT_THAT(all.repeated, ElementsAre("--room"));
  EXPECT_THAT(all.lackingValue, ElementsAre("--units"));
  EXPECT_TRUE(all.words.empty());
}

TEST(TellApart, LetsAFlagBeTypedTwice) {
  EXPECT_TRUE(typed({"--json", "--json"}).repeated.empty());
}
