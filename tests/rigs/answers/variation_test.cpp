// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/variation.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "rigs/answers/key_numbers.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace rigs {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

// Of the bundled demo: rigs a to d.
class Variations : public testing::Test {
 protected:
  std::optional<Variation> read(std::string_view typed) {
    problems_.clear();
    return readVariation(typed, {document_, ".", slots_}, problems_);
  }
  std::vector<std::string> texts(std::string_view typed) {
    const auto one = read(typed);
    std::vector<std::string> all;
    for (std::uint64_t i = 0; one && i < one->count(); ++i) all.push_back(one->at(i).text);
    EXPECT_TRUE(problems_.empty()) << typed << ": " << complaint();
    return all;
  }
  // What is wrong with it; "" where nothing is.
  std::string refused(std::string_view typed) {
    EXPECT_FALSE(read(typed)) << typed;
    return complaint();
  }
  std::string complaint() const {
    std::string all;
    for (const Problem& one : problems_) all += one.where + ": " + inEnglish(one.message) + '\n';
    return all;
  }

  std::string document_{demoPlanText()};
  std::vector<std::size_t> slots_{0, 1, 2, 3};
  Problems problems_;
};

// (b) is the same as (a) here, and (c) as (b) with its own power.
TEST_F(Variations, OfARigMoveThoseThatFollowIt) {
  document_ = withValue(document_, "/rigs/1", R"({"name": "B", "same_as": "a"})");
  document_ = withValue(document_, "/rigs/2",
                        R"({"name": "C", "same_as": "b", "element": {"power": "2 kW"}})");
  const auto powers = [&](std::string_view typed) {
    const auto one = read(typed);
    std::vector<double> all;
    if (!one) return all;
    const auto plan = readPlan(withAll(document_, one->placed(one->at(0))), ".", problems_);
    for (const RigPlan& rig : plan->rigs) all.push_back(physics::inWatts(rig.rig.element.rating));
    return all;
  };
  EXPECT_THAT(powers("rigs/a/element/power=1 kW"), ElementsAre(1000, 1000, 2000, 3000));
  EXPECT_THAT(powers("rigs/b/element/power=1 kW"), ElementsAre(3000, 1000, 2000, 3000));
  EXPECT_THAT(powers("rigs/*/element/power=1 kW"), ElementsAre(1000, 1000, 1000, 1000));
  // A deeper key of what it has from the catalogue over the other.
  const auto lid = read("rigs/b/lid/open/boil=40 %");
  ASSERT_TRUE(lid) << complaint();
  const auto plan = readPlan(withAll(document_, lid->placed(lid->at(0))), ".", problems_);
  EXPECT_EQ(plan->rigs[2].rig.vessel.open.boil, 0.4);
  EXPECT_TRUE(problems_.empty()) << complaint();
}

TEST_F(Variations, TakeTheValuesOfAListAsTheyAreTyped) {
  EXPECT_THAT(texts("batch/boil=45 min, 1 h, 90 min"), ElementsAre("45 min", "1 h", "90 min"));
  EXPECT_THAT(texts("batch/boil = 45 min;1 h ; 90 min"), ElementsAre("45 min", "1 h", "90 min"));
  EXPECT_THAT(texts("/batch/boil=45 min"), ElementsAre("45 min"));
}

TEST_F(Variations, TakeACommaBetweenDigitsForADecimalSign) {
  const auto one = read("rigs/b/element/power=1,5 kW, 2,5 kW");
  ASSERT_TRUE(one);
  ASSERT_EQ(one->count(), 2u);
  EXPECT_EQ(one->at(0), (VariedValue{"1,5 kW", 1500.0}));
  EXPECT_EQ(one->at(1), (VariedValue{"2,5 kW", 2500.0}));
}

TEST_F(Variations, TakeBothEndsOfARangeAndSoManyValuesEvenlyApart) {
  EXPECT_THAT(texts("rigs/b/element/power=1.8 kW..5.5 kW in 3"),
              ElementsAre("1.8 kW", "3.65 kW", "5.5 kW"));
  EXPECT_THAT(texts("batch/boil=90 min..1 h in 4"),
              ElementsAre("90 min", "80 min", "70 min", "1 h"));
}

TEST_F(Variations, StepFromOneEndToTheOther) {
  EXPECT_THAT(texts("rigs/b/element/power=1 kW..2 kW by 300 W"),
              ElementsAre("1 kW", "1.3 kW", "1.6 kW", "1.9 kW"));
  // 0.1 is no binary number; the last step still meets the end.
  EXPECT_THAT(texts("rigs/b/element/power=1.8 kW..2.1 kW by 0.1 kW"),
              ElementsAre("1.8 kW", "1.9 kW", "2 kW", "2.1 kW"));
  EXPECT_THAT(texts("batch/boil=1 h..30 min by 15 min"), ElementsAre("1 h", "0.75 h", "30 min"));
}

// A step of degrees is a distance: in Fahrenheit, too.
TEST_F(Variations, StepTemperaturesByDifferences) {
  EXPECT_THAT(texts("place/room=10 C..20 C by 5 C"), ElementsAre("10 C", "15 C", "20 C"));
  const auto one = read("place/room=50 F..68 F by 9 F");
  ASSERT_TRUE(one);
  ASSERT_EQ(one->count(), 3u);
  EXPECT_NEAR(*one->at(1).number, 288.15, 1e-9);
}

TEST_F(Variations, StepTimesOfDay) {
  EXPECT_THAT(texts("day_starts=08:00..20:00 by 4 h"),
              ElementsAre("08:00", "12:00", "16:00", "20:00"));
  EXPECT_EQ(read("day_starts=08:00, 09:30")->at(1).number, std::nullopt);
}

TEST_F(Variations, MixRangesAndValues) {
  EXPECT_THAT(texts("place/room=10 C..20 C by 5 C; 35 C, 36 C"),
              ElementsAre("10 C", "15 C", "20 C", "35 C", "36 C"));
}

// "in" is a unit and a word.
TEST_F(Variations, TellInchesFromTheWord) {
  EXPECT_THAT(texts("rigs/b/vessel/inner_diameter=14 in..16 in in 3"),
              ElementsAre("14 in", "15 in", "16 in"));
  EXPECT_THAT(texts("rigs/b/vessel/inner_diameter=14 in..16 in by 1 in"),
              ElementsAre("14 in", "15 in", "16 in"));
}

// The number that a row tells is the one the plan has: what somebody else types gives the same day.
TEST_F(Variations, HaveTheNumberOfTheirText) {
  const auto one = read("rigs/b/element/power=1 kW..3 kW in 20");
  ASSERT_TRUE(one);
  double before = 0.0;
  for (std::uint64_t i = 0; i < one->count(); ++i) {
    const VariedValue value = one->at(i);
    EXPECT_EQ(readNumber(one->key(), value.text).number, value.number);
    EXPECT_NEAR(*value.number, 1000.0 + 2000.0 * static_cast<double>(i) / 19.0, 1e-9);
    EXPECT_GT(*value.number, before);
    before = *value.number;
  }
}

TEST_F(Variations, CountRangesWithoutWalkingThem) {
  const auto one = read("rigs/b/element/power=1 kW..3 kW in 1000000000000");
  ASSERT_TRUE(one);
  EXPECT_EQ(one->count(), 1000000000000u);
  EXPECT_EQ(one->at(999999999999).text, "3 kW");
}

TEST_F(Variations, TakeWordsNumbersAndNames) {
  EXPECT_THAT(texts("rigs/b/vessel/finish=bright; brushed"), ElementsAre("bright", "brushed"));
  EXPECT_THAT(texts("rigs/b/from=40 L steel kettle, 60 L steel kettle"),
              ElementsAre("40 L steel kettle", "60 L steel kettle"));
  const auto share = read("place/humidity=0,4; 60 %");
  ASSERT_TRUE(share);
  EXPECT_NEAR(*share->at(0).number, 0.4, 1e-15);
}

TEST_F(Variations, PutTheSameValueIntoEveryEntryThatAStarStandsFor) {
  const auto one = read("rigs/*/element/power=2 kW");
  ASSERT_TRUE(one);
  EXPECT_THAT(one->pointers(), ElementsAre("/rigs/0/element/power", "/rigs/1/element/power",
                                           "/rigs/2/element/power", "/rigs/3/element/power"));
  EXPECT_EQ(read("batch/mash/rests/1/time=20 min")->pointers().front(), "/batch/mash/rests/1/time");
}

// Rigs (c) and (d) of the demo have jackets of their own, (a) and (b) have none.
TEST_F(Variations, TakeOfEachListItsOwnEntries) {
  const auto all = read("rigs/*/jacket/side/*/thickness=20 mm");
  ASSERT_TRUE(all) << complaint();
  for (const std::string& pointer : all->pointers())
    EXPECT_TRUE(exists(document_, pointer)) << pointer;
  EXPECT_GE(all->pointers().size(), 1u);
  EXPECT_LT(all->pointers().size(), 4u);
  EXPECT_THAT(refused("rigs/*/jacket/side/0/thickness=20 mm"), HasSubstr("has no entry \"0\""));
  EXPECT_THAT(refused("rigs/a/jacket/side/0/thickness=20 mm"), HasSubstr("states no entries"));
}

TEST_F(Variations, CallARigByItsLetterWhateverWasTyped) {
  slots_ = {4, 0, 1, 2};  // the first rig is (e)
  EXPECT_EQ(read("rigs/e/element/power=2 kW")->pointers().front(), "/rigs/0/element/power");
  EXPECT_EQ(read("rigs/0/element/power=2 kW")->place(), "rigs/e/element/power");
  EXPECT_THAT(refused("rigs/d/element/power=2 kW"), HasSubstr("no rig \"d\""));
}

TEST_F(Variations, RefuseWhatIsNoPlace) {
  const std::pair<const char*, const char*> cases[] = {
      {"", "a key of the plan and its values are needed"},
      {"batch/boil", "a key of the plan and its values are needed"},
      {"=5 min", "a key of the plan and its values are needed"},
      {"batch/bol=5 min", "\"batch\" has no key \"bol\"; perhaps \"boil\" was meant"},
      {"bach/boil=5 min", "a plan has no key \"bach\"; perhaps \"batch\" was meant"},
      {"rigs/b/element/xylophone=1", "it may have one of \"power\""},
      {"rigs/4/element/power=1 kW", "no rig \"4\"; a letter of its rigs, a number from 0 to 3"},
      {"batch/mash/rests/2/time=1 h", "has no entry \"2\"; a number from 0 to 1"},
      {"rigs/b/elements/0/power=1 kW", "states no entries of \"rigs/b/elements\""},
      {"batch/boil/min=5", "is no place of a plan"},
      {"batch=5", "has keys of its own; vary one of them, e.g. \"batch/wort\""},
      {"rigs=5", "has keys of its own; vary one of them, e.g. \"rigs/0/name\""},
      {"rigs/b=5", "has keys of its own"},
      {"note=a, b", "nothing depends on it"}};
  for (const auto& [typed, why] : cases) EXPECT_THAT(refused(typed), HasSubstr(why)) << typed;
}

TEST_F(Variations, RefuseWhatIsNoValueThere) {
  const std::pair<const char*, const char*> cases[] = {
      {"batch/boil=", "no values are given"},
      {"batch/boil=5 min, , 6 min", "a value is missing"},
      {"batch/boil=5 min; ", "a value is missing"},
      {"batch/boil=5", "\"5\" has no unit; write it with one of min, h, s, e.g. \"5 min\""},
      {"batch/boil=5..6 in 3", "\"5\" has no unit"},
      {"batch/boil=5 min..6 in 3", "\"6\" has no unit"},
      {"batch/boil=5 kg", "is a mass"},
      {"batch/boil=45 min,60 min", "by a comma with a space behind it"},
      {"batch/boil=13 h", "\"13 h\" is out of range"},
      {"batch/boil=1 h..13 h in 3", "\"13 h\" is out of range"},
      {"batch/boil=1 h..2 h", "write e.g. \"1 h..2 h in 5\""},
      {"batch/boil=1 h.. in 3", "lacks an end"},
      {"batch/boil=..2 h in 3", "lacks an end"},
      {"batch/boil=1 h..2 h in 1", "from 2 on"},
      {"batch/boil=1 h..2 h in many", "from 2 on"},
      {"batch/boil=1 h..2 h by 0 min", "leads nowhere"},
      {"batch/boil=1 h..2 h by -5 min", "leads nowhere"},
      {"batch/boil=1 h..2 h by 5", "\"5\" has no unit"},
      {"place/room=5 C..9 C by 1e-300 C", "too many values"},
      {"day_starts=08:00..25:00 by 1 h", "\"25:00\" is no time of day"},
      {"day_starts=8 o'clock", "is no time of day"},
      {"rigs/b/vessel/finish=brigt", "perhaps \"bright\" was meant"},
      {"rigs/b/from=41 L steel kettle", "is no rig of the catalogue"},
      {"tariff/price=cheap", "cheap"}};
  for (const auto& [typed, why] : cases) EXPECT_THAT(refused(typed), HasSubstr(why)) << typed;
}

TEST_F(Variations, TellAllThatIsWrongAtOnceAndWhere) {
  refused("batch/boil=5, 6 kg, 99 h");
  ASSERT_EQ(problems_.size(), 3u);
  for (const Problem& one : problems_) EXPECT_EQ(one.where, "--vary batch/boil");
}

// Text where an object would be needed: nothing can stand below it.
TEST_F(Variations, RefuseAPlaceThatSomethingElseIsInTheWayOf) {
  document_ = withText(document_, "/rigs/1/lid", "none");
  EXPECT_THAT(refused("rigs/b/lid/open/boil=20 %"), HasSubstr("something else stands on the way"));
}

TEST_F(Variations, WriteNumbersWithoutQuotationMarks) {
  const auto other = read("tariff/brews_per_year=10, 20");
  ASSERT_TRUE(other) << complaint();
  const Placed placed = other->placed(other->at(1)).front();
  EXPECT_EQ(placed.value, "20");
  EXPECT_FALSE(placed.isText);
}

// Whatever key there is, its own example is a value of it, or it is refused as made of others.
TEST_F(Variations, TakeTheExampleOfEveryKeyThatHasNoKeysOfItsOwn) {
  int taken = 0;
  for (const Key& key : planKeys()) {
    if (key.kind == ValueKind::Object || key.kind == ValueKind::List ||
        key.kind == ValueKind::Anything || !hasNumbers(key))
      continue;
    EXPECT_TRUE(readNumber(key, key.example).number ||
                std::find(key.words.begin(), key.words.end(), key.example) != key.words.end())
        << key.place << ' ' << key.example;
    ++taken;
  }
  EXPECT_GE(taken, 80);
}

}  // namespace
}  // namespace rigs
