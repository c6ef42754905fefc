// SPDX-License-Identifier: GPL-3.0-or-later
// Rigs that follow another, read and written.
#include "rigs/plans/rig_variants.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>
#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/json_patch.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "tests/rigs/plans/full_plans.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace rigs {
namespace {

using test_support::Json;
using testing::HasSubstr;
using testing::Not;

const char* const kFolder = "/nonexistent";

Json parsedRig(const char* text) { return Json::parse(text); }

Json kettle() {
  return parsedRig(R"json({
    "name": "Kettle", "from": "40 L steel kettle", "note": "mine",
    "vessel": {"finish": "brushed"},
    "jacket": {"side": [{"material": "wool felt", "thickness": "13 mm"}], "outside": "foil"}})json");
}

std::string planOf(const std::vector<Json>& rigs) {
  Json plan = Json::parse(R"json({
    "format": {"name": "heat-ledger-plan", "version": 1},
    "batch": {"water": "30 L", "boil": "60 min"},
    "place": {"altitude": "120 m", "room": "20 C", "water": "12 C"}})json");
  plan["rigs"] = rigs;
  return plan.dump();
}

Json follower(const char* letter, const char* patch = "{}", const char* name = "Follower") {
  Json rig{{"name", name}, {"same_as", letter}};
  rig.update(Json::parse(patch));
  return rig;
}

test_support::Reading readOf(const std::vector<Json>& rigs) {
  return test_support::readChecked(planOf(rigs), kFolder);
}

// What is told of rigs, line by line.
std::string toldOf(const std::vector<Json>& rigs) {
  return test_support::told(readOf(rigs).problems);
}

RigPlan rigOf(const std::vector<Json>& rigs, std::size_t index) {
  const auto reading = readOf(rigs);
  EXPECT_TRUE(reading.plan) << test_support::told(reading.problems);
  return reading.plan ? reading.plan->rigs.at(index) : RigPlan{};
}

// But for who it is.
RigPlan asItIs(RigPlan rig) {
  rig.sameAs.reset();
  rig.statedSlot.reset();
  rig.name.clear();
  for (physics::Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) one->name.clear();
  return rig;
}

int linesOf(const std::string& text) {
  return static_cast<int>(std::count(text.begin(), text.end(), '\n'));
}

}  // namespace

TEST(AFollower, IsAsTheOtherButForItsName) {
  const auto reading = readOf({kettle(), follower("a")});
  ASSERT_TRUE(reading.plan) << test_support::told(reading.problems);
  EXPECT_TRUE(reading.problems.empty()) << test_support::told(reading.problems);
  const auto& rigs = reading.plan->rigs;
  EXPECT_EQ(rigs[1].name, "Follower");
  EXPECT_EQ(rigs[1].rig.name, "Follower");
  EXPECT_EQ(rigs[1].sameAs, 0u);
  EXPECT_EQ(rigs[0].sameAs, std::nullopt);
  EXPECT_EQ(asItIs(rigs[1]), asItIs(rigs[0]));
}

TEST(AFollower, MergesObjectsKeyByKeyHoweverDeep) {
  // The lid is the catalogue's; one share of it is the follower's.
  const RigPlan rig = rigOf({kettle(), follower("a", R"({"lid": {"open": {"boil": "40 %"}}})")}, 1);
  EXPECT_EQ(rig.rig.vessel.open.boil, 0.4);
  Json full = kettle();
  full["lid"] = Json::parse(R"({"material": "stainless steel", "finish": "bright", "open":
      {"strike": "0 %", "mash": "0 %", "heating": "0 %", "boil": "40 %"}})");
  EXPECT_EQ(asItIs(rig), asItIs(rigOf({full}, 0)));
}

TEST(AFollower, StatesAListAsAWhole) {
  const RigPlan rig =
      rigOf({kettle(),
             follower("a", R"({"jacket": {"side": [{"material": "cork", "thickness": "5 mm"}]}})")},
            1);
  Json full = kettle();
  full["jacket"]["side"][0] = {{"material", "cork"}, {"thickness", "5 mm"}};
  EXPECT_EQ(asItIs(rig), asItIs(rigOf({full}, 0)));
}

TEST(AFollower, TakesOutWhatItStatesAsNull) {
  Json bare = kettle();
  bare.erase("jacket");
  EXPECT_EQ(asItIs(rigOf({kettle(), follower("a", R"({"jacket": null})")}, 1)),
            asItIs(rigOf({bare}, 0)));
  // Of the catalogue, too.
  EXPECT_FALSE(rigOf({bare, follower("a", R"({"lid": null})")}, 1).hasLid);
  Json painted = kettle();
  painted["jacket"].erase("outside");
  EXPECT_EQ(asItIs(rigOf({kettle(), follower("a", R"({"jacket": {"outside": null}})")}, 1)),
            asItIs(rigOf({painted}, 0)));
}

TEST(AFollower, HasTwoElementsInPlaceOfOne) {
  const char* pair = R"({"element": null, "wired": "two circuits", "elements": [
    {"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
    {"power": "1 kW", "rated_voltage": "230 V", "top_height": "60 mm"}]})";
  const RigPlan two = rigOf({kettle(), follower("a", pair)}, 1);
  ASSERT_TRUE(two.rig.second);
  EXPECT_EQ(two.rig.second->element.rating, physics::watts(1000.0));
  // And back, by who follows that one.
  const char* one = R"({"elements": null, "wired": null, "element":
    {"power": "3000 W", "rated_voltage": "230 V", "top_height": "65 mm"}})";
  EXPECT_EQ(asItIs(rigOf({kettle(), follower("a", pair), follower("b", one, "Third")}, 2)),
            asItIs(rigOf({kettle()}, 0)));
}

TEST(AFollower, MayStandBeforeTheOtherAndBeFollowed) {
  Json base = kettle();
  base["letter"] = "k";
  const std::vector<Json> rigs{follower("b", R"({"lid": null})", "Second"),
                               follower("k", R"({"boil_power": "80 %"})", "First"), base};
  const RigPlan second = rigOf(rigs, 0);
  EXPECT_EQ(second.sameAs, 1u);
  EXPECT_FALSE(second.hasLid);
  EXPECT_EQ(second.rig.boilPower, 0.8);
  EXPECT_EQ(rigOf(rigs, 1).sameAs, 10u);
}

TEST(AFollower, MayFollowOneOfTwoElementsOverItsOrigin) {
  // What stands in place of the origin's element is not beside it.
  Json two = kettle();
  two["wired"] = "parallel";
  two["elements"] =
      Json::parse(R"([{"power": "1 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
                                    {"power": "1 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])");
  two["vessel"] = {{"emissivity", 0.3}};
  EXPECT_EQ(asItIs(rigOf({two, follower("a")}, 1)), asItIs(rigOf({two}, 0)));
}

TEST(AFollower, AloneIsInFull) {
  const auto reading = readOf({kettle(), follower("a", R"({"lid": null})")});
  ASSERT_TRUE(reading.plan);
  const Plan alone = onlyRig(*reading.plan, 1);
  EXPECT_EQ(alone.rigs.front().sameAs, std::nullopt);
  EXPECT_EQ(asItIs(alone.rigs.front()), asItIs(reading.plan->rigs[1]));
}

TEST(AFollower, IsWrittenWithAllItHas) {
  const RigPlan rig = rigOf({kettle(), follower("a", R"({"jacket": null})")}, 1);
  EXPECT_EQ(rig.written.at("/element/power"), "3000 W");
  EXPECT_EQ(rig.written.at("/name"), "Follower");
  EXPECT_TRUE(rig.written.has("/lid/open"));
  EXPECT_FALSE(rig.written.has("/jacket") || rig.written.has("/li") || rig.written.has("/same_as"));
  EXPECT_EQ(rig.written.at("/lid/open"), "");
}

// --- What is wrong with it.

TEST(SameAs, NamesARigOfThePlan) {
  const std::string told = toldOf({kettle(), follower("q"), follower("b", "{}", "Third")});
  EXPECT_THAT(told,
              HasSubstr("error /rigs/1/same_as: no rig of this plan has the letter \"q\"; write "
                        "one of \"a\", \"c\", e.g. \"a\"\n"));
  EXPECT_EQ(linesOf(told), 1) << told;  // whoever follows it has nothing to mend
  EXPECT_THAT(toldOf({follower("q")}),
              HasSubstr("/rigs/0/same_as: no rig of this plan has the letter "
                        "\"q\"; there is no other rig"));
  EXPECT_THAT(toldOf({kettle(), follower("ab")}), HasSubstr("error /rigs/1/same_as: "));
  Json number = follower("a");
  number["same_as"] = 1;
  EXPECT_THAT(toldOf({kettle(), number}), HasSubstr("error /rigs/1/same_as: "));
}

TEST(SameAs, GoesInNoCircle) {
  const std::string told = toldOf({follower("b", "{}", "A"), follower("c", "{}", "B"),
                                   follower("b", "{}", "C"), follower("d", "{}", "D"), kettle()});
  // (a) only leads into the circle.
  EXPECT_THAT(told, Not(HasSubstr("/rigs/0")));
  for (const char* place : {"/rigs/1/same_as", "/rigs/2/same_as", "/rigs/3/same_as"})
    EXPECT_THAT(told,
                HasSubstr(std::string("error ") + place +
                          ": this rig is the same as itself, directly or over other rigs; let "
                          "one of them state all of its parts, e.g. with \"from\""));
  EXPECT_EQ(linesOf(told), 3) << told;
}

TEST(SameAs, StandsBesideNoFrom) {
  EXPECT_THAT(toldOf({kettle(), follower("a", R"({"from": "60 L steel kettle"})")}),
              HasSubstr("error /rigs/1/from: both \"from\" and \"same_as\" are stated; keep one of "
                        "them\n"));
}

TEST(AFollowersProblems, AreToldWhereTheyAreWritten) {
  Json wrong = kettle();
  wrong["vessel"]["height"] = "400";
  wrong["boil_powr"] = "80 %";
  const std::string told =
      toldOf({wrong, follower("a", R"({"lid": {"open": {"boil": "boiling"}}, "elment": null,
                                       "evaporation_factor": 9})"),
              follower("b", "{}", "Third")});
  EXPECT_THAT(told, HasSubstr("error /rigs/0/vessel/height: "));
  EXPECT_THAT(told, HasSubstr("warning /rigs/0/boil_powr: "));
  EXPECT_THAT(told, HasSubstr("error /rigs/1/lid/open/boil: "));
  EXPECT_THAT(told, HasSubstr("error /rigs/1/evaporation_factor: "));
  EXPECT_EQ(linesOf(told), 4) << told;  // each once, however many have it from there
}

TEST(AFollowersProblems, OfItsOwnMakingWithTheOthersPartsNameIt) {
  const std::string told = toldOf({kettle(), follower("a", R"({"jacket": {"lid": [
      {"material": "wool felt", "thickness": "9 mm"}]}, "lid": null})"),
                                   follower("a", R"({"vessel": {"emissivity": 0.3}})", "Third")});
  // The lid of the jacket is its own.
  EXPECT_THAT(told, HasSubstr("error /rigs/1/jacket/lid: this jacket covers a lid, but"));
  EXPECT_THAT(told, HasSubstr("error /rigs/2/vessel/emissivity: both a finish and"));
  Json low = kettle();
  low["vessel"]["height"] = "60 mm";
  low["element"] = {{"top_height", "50 mm"}};
  EXPECT_THAT(
      toldOf({low, follower("a", R"({"vessel": {"height": "50 mm"}})")}),
      HasSubstr("error /rigs/0/element: for the rig \"Follower\", which has this from here: "
                "the element's top at 50 mm is not below"));
}

TEST(AFollowersProblems, InWhatTheOtherIsFromAreToldThere) {
  Json mine = kettle();
  mine["from"] = "not-there.json";
  const std::string told = toldOf({mine, follower("a", R"({"boil_power": "900 %"})")});
  EXPECT_THAT(told, HasSubstr("error /rigs/0/from: "));
  EXPECT_EQ(linesOf(told), 1) << told;
  // Only the follower takes exception to what the catalogue has.
  EXPECT_THAT(
      toldOf({kettle(), follower("a", R"({"vessel": {"height": "50 mm"}})")}),
      HasSubstr("error /rigs/0/from: for the rig \"Follower\", which has this from here: in "
                "\"40 L steel kettle\" at /element: the element's top at 65 mm"));
}

TEST(AFollowersProblems, AreThatNameAndLetterAreItsOwn) {
  Json base = kettle();
  base["letter"] = "a";
  Json nameless = follower("a");
  nameless.erase("name");
  EXPECT_THAT(toldOf({base, nameless}), HasSubstr("error /rigs/1/name: \"name\" is missing"));
  EXPECT_THAT(toldOf({base, follower("a", "{}", "Kettle")}),
              HasSubstr("error /rigs/1/name: two rigs are called \"Kettle\""));
  EXPECT_THAT(toldOf({base, follower("a", R"({"letter": "a"})")}),
              HasSubstr("error /rigs/1/letter: two rigs have the letter \"a\""));
}

// --- Changed, removed and made.

TEST(ChangeRig, WritesAFollowerAsWhatDiffers) {
  const std::string plan =
      planOf({kettle(), follower("a", R"({"lid": null, "boil_power": "80 %"})")});
  std::string rig = *wholeRigAt(plan, 1, kFolder);
  EXPECT_FALSE(exists(rig, "/same_as") || exists(rig, "/from") || exists(rig, "/lid"));
  EXPECT_EQ(textAt(rig, "/element/power"), "3000 W");
  // Unchanged, it is written as it was.
  EXPECT_EQ(changeRig(plan, 1, rig, kFolder), laidOut(plan));
  rig = withText(rig, "/jacket/outside", "cloth");
  rig = withText(rig, "/boil_power", "70 %");
  const std::string changed = changeRig(plan, 1, rig, kFolder);
  EXPECT_EQ(valueAt(changed, "/rigs/1"),
            R"({"name":"Follower","same_as":"a","lid":null,"boil_power":"70 %",)"
            R"("jacket":{"outside":"cloth"}})");
  // What is as the other has it again is no longer stated.
  rig = without(rig, "/boil_power");
  EXPECT_FALSE(exists(changeRig(changed, 1, rig, kFolder), "/rigs/1/boil_power"));
}

TEST(ChangeRig, LetsFollowersFollow) {
  const std::string plan =
      planOf({kettle(), follower("a", R"({"boil_power": "80 %"})"),
              follower("b", R"({"jacket": {"side": [{"material": "cork", "thickness": "5 mm"}]}})",
                       "Third")});
  std::string rig = withText(valueAt(plan, "/rigs/0"), "/element/power", "2500 W");
  rig = withText(rig, "/boil_power", "60 %");
  const std::string changed = changeRig(plan, 0, rig, kFolder);
  const auto reading = test_support::readChecked(changed, kFolder);
  ASSERT_TRUE(reading.plan) << test_support::told(reading.problems);
  for (const RigPlan& one : reading.plan->rigs)
    EXPECT_EQ(one.rig.element.rating, physics::watts(2500.0)) << one.name;
  EXPECT_EQ(reading.plan->rigs[0].rig.boilPower, 0.6);
  EXPECT_EQ(reading.plan->rigs[1].rig.boilPower, 0.8);
  EXPECT_EQ(reading.plan->rigs[2].rig.boilPower, 0.8);
  EXPECT_EQ(valueAt(changed, "/rigs/2"), valueAt(plan, "/rigs/2"));
}

TEST(ChangeRig, TakesFollowersAlongToAnotherLetter) {
  const std::string plan = planOf({kettle(), follower("a"), follower("b", "{}", "Third")});
  const std::string changed =
      changeRig(plan, 0, withText(valueAt(plan, "/rigs/0"), "/letter", "k"), kFolder);
  // (b) and (c) state none: they would be (a) and (b) now.
  EXPECT_EQ(textAt(changed, "/rigs/1/same_as"), "k");
  EXPECT_EQ(textAt(changed, "/rigs/2/same_as"), "a");
  EXPECT_TRUE(test_support::readChecked(changed, kFolder).plan);
}

TEST(RemoveRig, MakesFollowersWhatTheyWere) {
  const std::string plan = planOf({kettle(), follower("a", R"({"lid": null})"),
                                   follower("b", R"({"boil_power": "80 %"})", "C"),
                                   follower("b", R"({"lid": {"material": "glass"}})", "D")});
  const auto before = test_support::readChecked(plan, kFolder).plan;
  ASSERT_TRUE(before);
  // In the middle: they follow whom it followed.
  const std::string two = removeRig(plan, 1, kFolder);
  EXPECT_EQ(valueAt(two, "/rigs/1"),
            R"({"name":"C","same_as":"a","boil_power":"80 %","lid":null,"letter":"c"})");
  const auto after = test_support::readChecked(two, kFolder).plan;
  ASSERT_TRUE(after);
  EXPECT_EQ(asItIs(after->rigs[1]), asItIs(before->rigs[2]));
  EXPECT_EQ(asItIs(after->rigs[2]), asItIs(before->rigs[3]));
  EXPECT_EQ(slotsOf(after->rigs), (std::vector<std::size_t>{0, 2, 3}));
  // At the bottom: they stand on their own.
  const auto alone = test_support::readChecked(removeRig(plan, 0, kFolder), kFolder).plan;
  ASSERT_TRUE(alone);
  EXPECT_EQ(alone->rigs[0].sameAs, std::nullopt);
  EXPECT_EQ(alone->rigs[1].sameAs, 1u);
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_EQ(asItIs(alone->rigs[i]), asItIs(before->rigs[i + 1])) << i;
  EXPECT_EQ(slotsOf(alone->rigs), (std::vector<std::size_t>{1, 2, 3}));
}

TEST(SameWith, AddsARigThatFollows) {
  const std::string plan = planOf({kettle(), follower("a", R"({"lid": null})")});
  const std::string three = sameWith(plan, 0, "New");
  EXPECT_EQ(valueAt(three, "/rigs/1"), R"({"name":"New","same_as":"a","letter":"c"})");
  const auto read = test_support::readChecked(three, kFolder).plan;
  ASSERT_TRUE(read);
  EXPECT_EQ(slotsOf(read->rigs), (std::vector<std::size_t>{0, 2, 1}));
  EXPECT_EQ(asItIs(read->rigs[1]), asItIs(read->rigs[0]));
}

TEST(ChangedDocuments, AreJsonWithThatRig) {
  EXPECT_THROW(changeRig("{", 0, "{}", kFolder), EditError);
  EXPECT_THROW(changeRig(planOf({kettle()}), 1, "{}", kFolder), EditError);
  EXPECT_THROW(removeRig(planOf({kettle()}), 1, kFolder), EditError);
  EXPECT_THROW(sameWith(planOf({kettle()}), 1, "x"), EditError);
  EXPECT_EQ(wholeRigAt(planOf({kettle()}), 1, kFolder), std::nullopt);
  EXPECT_EQ(wholeRigAt(planOf({follower("a")}), 0, kFolder), std::nullopt);
}

TEST(OtherUnits, AreThoseOfFollowersToo) {
  const std::string plan = planOf({kettle(), follower("a", R"({"vessel": {"height": "381 mm"}})")});
  EXPECT_EQ(textAt(inUsUnits(plan), "/rigs/1/vessel/height"), "15 in");
}

namespace {

// Something of each, and some of both left out.
Json mixed(const Json& one, const Json& other) {
  const int choice = *rc::gen::inRange(0, 4);
  if (choice == 0) return one;
  if (choice == 1 || !one.is_object() || !other.is_object()) return other;
  Json made = Json::object();
  for (const Json* from : {&one, &other})
    for (const auto& [key, value] : from->items()) {
      if (made.contains(key) || *rc::gen::inRange(0, 4) == 0) continue;
      made[key] = one.contains(key) && other.contains(key) ? mixed(one[key], other[key]) : value;
    }
  return made;
}

Json someRig(const char* name) {
  const std::vector<Json> rigs{test_support::withOneElement(), test_support::withTwoCircuits("Two"),
                               kettle()};
  const auto pick = [&] { return rigs[*rc::gen::inRange<std::size_t>(0, rigs.size())]; };
  Json rig = mixed(pick(), pick());
  for (const char* key : {"letter", "from"}) rig.erase(key);
  rig["name"] = name;
  return rig;
}

}  // namespace

RC_GTEST_PROP(AnyRig, WrittenAsWhatDiffersFromAnotherIsReadAsItself, ()) {
  const Json wanted = someRig("Wanted");
  const std::string plan = planOf({someRig("Base"), follower("a", "{}", "Wanted")});
  const std::string changed = changeRig(plan, 1, wanted.dump(), kFolder);
  RC_ASSERT(saysTheSame(*wholeRigAt(changed, 1, kFolder), wanted.dump()));
  RC_ASSERT(textAt(changed, "/rigs/1/same_as") == std::optional<std::string>("a"));
  // And written again it is no other document.
  RC_ASSERT(saysTheSame(changeRig(changed, 1, *wholeRigAt(changed, 1, kFolder), kFolder), changed));
  // Without the other it is what it was.
  const std::string alone = removeRig(changed, 0, kFolder);
  Json there = Json::parse(valueAt(alone, "/rigs/0"));
  there.erase("letter");
  RC_ASSERT(saysTheSame(there.dump(), wanted.dump()));
}

}  // namespace rigs
