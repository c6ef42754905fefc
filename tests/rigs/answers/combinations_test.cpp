// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/combinations.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <set>

#include "rigs/plans/plan_writer.hpp"

namespace rigs {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

Combinations of(std::initializer_list<const char*> typed, Problems& problems) {
  static const std::vector<std::size_t> slots{0, 1, 2, 3};
  std::vector<Variation> all;
  for (const char* one : typed)
    all.push_back(*readVariation(one, {demoPlanText(), ".", slots}, problems));
  return {std::move(all), problems};
}

std::vector<std::string> texts(const std::vector<VariedValue>& values) {
  std::vector<std::string> all;
  for (const VariedValue& one : values) all.push_back(one.text);
  return all;
}

TEST(EveryCombination, ChangesTheLastKeyFirst) {
  Problems problems;
  const Combinations all =
      of({"batch/boil=45 min, 60 min", "place/room=5 C, 10 C, 15 C"}, problems);
  ASSERT_TRUE(problems.empty());
  ASSERT_EQ(all.count(), 6u);
  EXPECT_THAT(texts(all.at(0)), ElementsAre("45 min", "5 C"));
  EXPECT_THAT(texts(all.at(1)), ElementsAre("45 min", "10 C"));
  EXPECT_THAT(texts(all.at(3)), ElementsAre("60 min", "5 C"));
  EXPECT_THAT(texts(all.at(5)), ElementsAre("60 min", "15 C"));
  std::set<std::vector<std::string>> seen;
  for (std::uint64_t i = 0; i < 6; ++i) seen.insert(texts(all.at(i)));
  EXPECT_EQ(seen.size(), 6u);
}

TEST(EveryCombination, IsCountedWithoutBeingMade) {
  Problems problems;
  const Combinations many = of(
      {"batch/boil=1 min..2 h in 1000000", "rigs/b/element/power=1 kW..2 kW in 1000000"}, problems);
  EXPECT_EQ(many.count(), 1000000000000u);
  EXPECT_THAT(texts(many.at(999999999999)), ElementsAre("2 h", "2 kW"));
  const Combinations beyond =
      of({"batch/boil=1 min..2 h in 10000000000", "rigs/b/element/power=1 kW..2 kW in 10000000000"},
         problems);
  EXPECT_FALSE(beyond.count());
  EXPECT_NEAR(beyond.about(), 1e20, 1e7);
}

TEST(EveryCombination, IsWrittenIntoThePlanAndNothingElse) {
  Problems problems;
  const Combinations all = of(
      {"rigs/*/element/power=2 kW", "place/room=5 C, 10 C", "tariff/brews_per_year=20"}, problems);
  const std::string document = all.document(demoPlanText(), all.at(1));
  Texts texts = textsOf(document);
  EXPECT_EQ(texts["/rigs/0/element/power"], "2 kW");
  EXPECT_EQ(texts["/rigs/3/element/power"], "2 kW");
  EXPECT_EQ(texts["/place/room"], "10 C");
  EXPECT_EQ(texts["/tariff/brews_per_year"], "20");
  for (const auto& [pointer, text] : textsOf(demoPlanText()))
    if (!pointer.ends_with("/element/power") && pointer != "/place/room") {
      EXPECT_EQ(texts[pointer], text) << pointer;
    }
}

TEST(EveryCombination, SetsAKeyOnce) {
  const std::pair<const char*, const char*> cases[] = {
      {"batch/boil=1 h", "/batch/boil=2 h"},
      {"rigs/*/element/power=1 kW", "rigs/b/element/power=2 kW"},
      {"rigs/1/element/power=1 kW", "rigs/b/element/power=2 kW"}};
  for (const auto& [one, other] : cases) {
    Problems problems;
    static_cast<void>(of({one, other}, problems));
    ASSERT_EQ(problems.size(), 1u) << other;
    EXPECT_THAT(inEnglish(problems.front().message), HasSubstr("is varied already"));
  }
}

TEST(InOrder, TakesEverythingInItsOrder) {
  std::vector<std::uint64_t> taken;
  const auto done = inOrder(
      1000, [](std::uint64_t i) { return 3 * i; },
      [&](std::uint64_t made) {
        taken.push_back(made);
        return true;
      });
  EXPECT_EQ(done, 1000u);
  ASSERT_EQ(taken.size(), 1000u);
  for (std::uint64_t i = 0; i < 1000; ++i) EXPECT_EQ(taken[i], 3 * i);
}

// What is held at once does not grow with how many there are.
TEST(InOrder, IsNeverFarAheadOfWhatIsTaken) {
  std::atomic<std::uint64_t> made = 0;
  std::uint64_t taken = 0;
  inOrder(
      10 * madeAhead(),
      [&](std::uint64_t i) {
        ++made;
        return i;
      },
      [&](std::uint64_t) {
        EXPECT_LE(made - taken, madeAhead());
        ++taken;
        return true;
      });
  EXPECT_EQ(taken, 10 * madeAhead());
}

TEST(InOrder, EndsBeforeTheFirstThatIsRefused) {
  std::atomic<std::uint64_t> made = 0;
  const auto done = inOrder(
      1000000,
      [&](std::uint64_t i) {
        ++made;
        return i;
      },
      [](std::uint64_t i) { return i < 100; });
  EXPECT_EQ(done, 100u);
  EXPECT_LE(made, 100 + 2 * madeAhead());
  EXPECT_EQ(inOrder(
                0, [](std::uint64_t i) { return i; }, [](std::uint64_t) { return true; }),
            0u);
}

}  // namespace
}  // namespace rigs
