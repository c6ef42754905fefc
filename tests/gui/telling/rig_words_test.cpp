// SPDX-License-Identifier: GPL-3.0-or-later
// A rig in one sentence.
#include "gui/telling/rig_words.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "gui/telling/translations.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/rigs/plans/full_plans.hpp"
#include "tests/support/readers.hpp"

namespace gui::telling {
namespace {

using test_support::FullPlan;
using test_support::kSi;
using test_support::kUs;
using testing::ElementsAre;
using Pointer = FullPlan::json_pointer;

std::optional<rigs::Plan> readOf(const std::string& document) {
  rigs::Problems problems;
  return rigs::readPlan(document, "/nonexistent", problems);
}

rigs::Plan planOf(const std::string& document) {
  const auto plan = readOf(document);
  EXPECT_TRUE(plan);
  return plan.value_or(rigs::Plan{});
}

std::vector<std::string> sentencesOf(const std::string& document,
                                     const rigs::Reader& reader = kSi) {
  const rigs::Plan plan = planOf(document);
  std::vector<std::string> all;
  for (std::size_t i = 0; i < plan.rigs.size(); ++i)
    all.push_back(rigs::tell(rigInWords(plan, i, reader).text, reader));
  return all;
}

std::vector<std::string> ofStart(const char* name) {
  return sentencesOf(*rigs::planStartText(name));
}

// A rig of these parts, and one that is the same as it but for the patch.
std::vector<std::string> withFollower(const char* patch) {
  FullPlan plan = FullPlan::parse(*rigs::planStartText("one-kettle"));
  FullPlan follower = FullPlan::parse(R"({"name": "Follower", "same_as": "a"})");
  follower.update(FullPlan::parse(patch));
  plan["rigs"].push_back(follower);
  return sentencesOf(plan.dump());
}

const SentencePart* partOf(const RigSentence& sentence, RigAspect aspect) {
  for (const SentencePart& part : sentence.parts)
    if (part.aspect == aspect) return &part;
  return nullptr;
}

}  // namespace

TEST(RigWords, TellTheRigsOfTheDemo) {
  EXPECT_THAT(
      sentencesOf(std::string(rigs::demoPlanText())),
      ElementsAre(
          "a kettle of 40.1 L in brushed stainless steel with 3 kW at 230 V on a circuit of "
          "120 V and 15 A, no jacket, lid off in the boil",
          "like (a), but 1.65 kW at 120 V, and other details",
          "like (a), but 1.65 kW at 120 V, a jacket of 13 mm closed-cell rubber foam on "
          "side and lid, lid open by 35 % in the boil, and other details",
          "like (a), but on a circuit of 208 V and 30 A, and other details"));
}

TEST(RigWords, TellTheRigsOfTheStarts) {
  EXPECT_THAT(ofStart("one-kettle"),
              ElementsAre("a kettle of 45.4 L in brushed stainless steel with 2.2 kW at 230 V on a "
                          "circuit of 16 A, no jacket, lid off in the boil"));
  EXPECT_THAT(
      ofStart("night-unplugged"),
      ElementsAre("a kettle of 40.1 L in brushed stainless steel with 3 kW at 230 V on a "
                  "circuit of 16 A, no jacket, lid off in the boil",
                  "like (a), but a jacket of 25 mm closed-cell rubber foam on side and lid"));
  EXPECT_THAT(ofStart("two-voltages"),
              ElementsAre("a kettle of 60.3 L in bright stainless steel with 4.5 kW at 240 V on a "
                          "circuit of 30 A, no jacket, lid off in the boil",
                          "like (a), but on a circuit of 208 V and 30 A",
                          "like (a), but 4.5 kW at 208 V, on a circuit of 208 V and 30 A"));
  EXPECT_THAT(ofStart("two-circuits"),
              ElementsAre("a kettle of 40.1 L in bright stainless steel with 2 kW at 230 V on a "
                          "circuit of 16 A, no jacket, lid off in the boil",
                          "like (a), but also a second element of 2 kW at 230 V on a circuit of "
                          "230 V and 16 A, and other details"));
  EXPECT_THAT(ofStart("large-batch"),
              ElementsAre("a kettle of 71.6 L in bright stainless steel with 5.5 kW at 240 V on a "
                          "circuit of 30 A, no jacket, lid off in the boil, on legs",
                          "like (a), but 4.5 kW at 240 V, a jacket of 40 mm mineral wool"));
}

TEST(RigWords, AreInTheReadersUnitsAndLanguage) {
  EXPECT_EQ(sentencesOf(*rigs::planStartText("one-kettle"), kUs)[0],
            "a kettle of 12 US gal in brushed stainless steel with 2.2 kW at 230 V on a circuit of "
            "16 A, no jacket, lid off in the boil");
  const rigs::Reader german{.language = &languageOf("de")};
  EXPECT_THAT(
      sentencesOf(*rigs::planStartText("night-unplugged"), german),
      ElementsAre("ein Kessel von 40,1 L, Edelstahl (gebürstet), mit 3 kW bei 230 V an einem "
                  "Stromkreis von 16 A, ohne Mantel, beim Kochen ohne Deckel",
                  "wie (a), aber Mantel: 25 mm geschlossenzelliger Gummischaum an Seite und "
                  "Deckel"));
}

TEST(RigWords, OfARigThatFollowsAreWhatDiffers) {
  const auto like = [](const char* patch) { return withFollower(patch).at(1); };
  EXPECT_EQ(like("{}"), "like (a)");
  EXPECT_EQ(like(R"({"jacket": {"side": [{"material": "wool felt", "thickness": "13 mm"}],
                                "lid": [{"material": "wool felt", "thickness": "13 mm"}]}})"),
            "like (a), but a jacket of 13 mm wool felt on side and lid");
  EXPECT_EQ(like(R"({"lid": null})"), "like (a), but no lid");
  EXPECT_EQ(like(R"({"vessel": {"wall": "1.5 mm"}})"), "like (a) but for details");
  EXPECT_EQ(like(R"({"boil_power": "70 %", "pump": {"power": "30 W"}})"),
            "like (a), but 70 % of the power in the boil, a pump of 30 W");
  // However many.
  EXPECT_EQ(
      like(R"({"lid": null, "boil_power": "70 %", "pump": {"power": "30 W"},
                     "vessel": {"material": "copper"}, "stands_on": {"kind": "legs"}})"),
      "like (a), but brushed copper, no lid, 70 % of the power in the boil, a pump of 30 W, on "
      "legs");
}

TEST(RigWords, TellWhatAFollowerHasNot) {
  FullPlan plan = FullPlan::parse(*rigs::planStartText("one-kettle"));
  plan["rigs"][0]["boil_power"] = "70 %";
  plan["rigs"][0]["stands_on"] = {{"kind", "legs"}};
  plan["rigs"][0]["pump"] = {{"power", "30 W"}};
  plan["rigs"][0]["recirculation"] =
      FullPlan::parse(R"({"hose_length": "1.5 m", "outer_diameter": "16 mm", "wall": "3 mm"})");
  plan["rigs"].push_back(FullPlan::parse(R"({"name": "Plain", "same_as": "a", "boil_power": null,
      "stands_on": null, "pump": "none", "recirculation": null})"));
  const auto told = sentencesOf(plan.dump());
  EXPECT_EQ(
      told[0],
      "a kettle of 45.4 L in brushed stainless steel with 2.2 kW at 230 V on a circuit of 16 A, "
      "no jacket, lid off in the boil, 70 % of the power in the boil, a hose of 1.5 m, a pump "
      "of 30 W, on legs");
  EXPECT_THAT(told[1],
              testing::StartsWith("like (a), but all of the power in the boil, no hose, no "
                                  "pump, on the usual table"));
}

TEST(RigWords, NeverTellTwoRigsByEachOther) {
  FullPlan plan = FullPlan::parse(*rigs::planStartText("one-kettle"));
  FullPlan kettle = plan["rigs"][0];
  kettle["letter"] = "k";
  plan["rigs"] = {FullPlan::parse(R"({"name": "First", "same_as": "k"})"), kettle};
  const auto told = sentencesOf(plan.dump());
  EXPECT_EQ(told[0], "like (k)");
  EXPECT_THAT(told[1], testing::StartsWith("a kettle of 45.4 L"));
}

TEST(RigWords, TellOfWhatWasMeasuredByItsFactorsAlone) {
  FullPlan text = FullPlan::parse(*rigs::planStartText("night-unplugged"));
  const auto second = [](const FullPlan& plan) {
    return rigs::inEnglish(gui::telling::rigInWords(planOf(plan.dump()), 1, kSi).text);
  };
  const std::string before = second(text);
  text["rigs"][1]["measured"] = {{"losses_within", "8 %"}, {"on", "2026-03-02"}};
  EXPECT_EQ(second(text), before);
  text["rigs"][1]["loss_factor"] = 1.17;
  EXPECT_EQ(second(text), before + ", 1.17 times the computed losses");
}

TEST(RigWords, SayWhatNobodyStated) {
  const rigs::Plan plan = planOf(*rigs::planStartText("one-kettle"));
  const RigSentence sentence = rigInFull(plan, 0, kSi);
  EXPECT_TRUE(partOf(sentence, RigAspect::Jacket)->assumed);
  for (const RigAspect stated : {RigAspect::Volume, RigAspect::Metal, RigAspect::Element,
                                 RigAspect::Circuit, RigAspect::Lid})
    EXPECT_FALSE(partOf(sentence, stated)->assumed);
  FullPlan lid = FullPlan::parse(*rigs::planStartText("one-kettle"));
  lid["rigs"][0]["lid"].erase("open");
  const rigs::Plan usual = planOf(lid.dump());
  EXPECT_TRUE(partOf(rigInFull(usual, 0, kSi), RigAspect::Lid)->assumed);
  // Of the catalogue, somebody chose it.
  const rigs::Plan demo = planOf(std::string(rigs::demoPlanText()));
  EXPECT_FALSE(partOf(rigInFull(demo, 0, kSi), RigAspect::Volume)->assumed);
}

namespace {

// Whatever may stand at the key; most of it will not fit.
std::vector<FullPlan> candidates(const rigs::Key& key) {
  std::vector<FullPlan> all;
  if (key.kind == rigs::ValueKind::Object) all.push_back(FullPlan::parse(key.example));
  for (const std::string_view text : {key.example, key.least, key.most}) {
    if (text.empty()) continue;
    const bool isNumber = key.kind == rigs::ValueKind::Number;
    all.push_back(isNumber ? FullPlan::parse(text) : FullPlan(std::string(text)));
  }
  for (const std::string_view word : key.words) all.emplace_back(std::string(word));
  if (key.name() == "material")
    for (const rigs::Material& one : rigs::catalogue().materials) all.emplace_back(one.name);
  if (key.name() == "finish" || key.name() == "outside")
    for (const char* word : {"bright", "brushed", "dull", "foil", "cloth"}) all.emplace_back(word);
  if (key.place.ends_with("supply/from"))
    for (const rigs::Circuit& one : rigs::catalogue().circuits) all.emplace_back(one.name);
  for (const char* usual :
       {"2500 W", "240 V", "370 mm", "430 mm", "20 mm", "1.2 m", "60 %", "25 A"})
    all.emplace_back(usual);
  return all;
}

bool isSameFeed(const physics::Rig& one, const physics::Rig& other) {
  const auto alike = [](const physics::Supply& a, const physics::Supply& b) {
    return a.nominal == b.nominal && a.rating == b.rating;
  };
  return alike(one.supply, other.supply) &&
         (!one.second || alike(one.second->supply, other.second->supply));
}

std::string firstPlace(const std::string& key, std::size_t rig) {
  std::string place = "/rigs/" + std::to_string(rig) + key.substr(std::string("/rigs/*").size());
  if (const std::size_t star = place.find('*'); star != std::string::npos) place[star] = '0';
  return place;
}

// The rig with another value at the key, of which it is another rig; nothing where none is
// accepted.
std::optional<rigs::Plan> changedAt(const FullPlan& document, const rigs::Plan& plan,
                                    std::size_t rig, const rigs::Key& key) {
  for (const FullPlan& value : candidates(key)) {
    FullPlan other = document;
    try {
      other[Pointer(firstPlace(key.place, rig))] = value;
    } catch (const FullPlan::exception&) {
      continue;  // something else stands on the way
    }
    // Nothing may hang on a second circuit that is not there.
    if (key.name() == "wired")
      for (const char* second : {"second_supply", "second_cable"}) other["rigs"][rig].erase(second);
    auto read = readOf(other.dump());
    if (!read || read->rigs[rig] == plan.rigs[rig]) continue;
    // By another name it is the same circuit.
    if (key.name() == "from" && isSameFeed(read->rigs[rig].rig, plan.rigs[rig].rig)) continue;
    return read;
  }
  return std::nullopt;
}

}  // namespace

TEST(EveryPart, NamesKeysOfThePlanAndChangesWithEachOfThem) {
  FullPlan document = test_support::fullPlans().front();
  document["place"].erase("rules");
  const rigs::Plan plan = planOf(document.dump());
  std::set<std::string> changed;
  std::set<RigAspect> aspects;
  for (std::size_t rig = 0; rig < 4; ++rig) {
    const RigSentence before = rigInFull(plan, rig, kSi);
    for (const SentencePart& part : before.parts) {
      aspects.insert(part.aspect);
      EXPECT_FALSE(part.keys.empty()) << rigs::inEnglish(part.text);
      for (const std::string& place : part.keys) {
        const rigs::Key* key = rigs::keyAt(place);
        ASSERT_NE(key, nullptr) << place;
        const auto other = changedAt(document, plan, rig, *key);
        // What is not stated may not fit beside what stands in its place.
        const bool stated = document.contains(Pointer(firstPlace(place, rig)));
        EXPECT_TRUE(other || !stated) << place;
        if (!other) continue;
        EXPECT_FALSE(rigInFull(*other, rig, kSi).text == before.text) << place;
        changed.insert(place);
      }
    }
  }
  EXPECT_EQ(aspects.size(), static_cast<std::size_t>(RigAspect::Measured) + 1);
  EXPECT_GT(changed.size(), 30u);
}

// For a window, where each part is a way to its fields.
TEST(RigInPieces, IsTheSentenceWithoutAWordMoreOrLess) {
  const rigs::Reader german{.language = &languageOf("de")};
  FullPlan document = test_support::fullPlans().front();
  document["place"].erase("rules");
  const rigs::Plan plan = planOf(document.dump());
  ASSERT_GE(plan.rigs.size(), 4u);
  for (const rigs::Reader& reader : {kSi, kUs, german}) {
    for (std::size_t rig = 0; rig < plan.rigs.size(); ++rig) {
      const RigSentence whole = rigInWords(plan, rig, reader);
      std::string all;
      std::vector<std::string> parts;
      for (const SentencePiece& piece : rigInPieces(plan, rig, reader)) {
        all += piece.text;
        if (!piece.isPart()) continue;
        parts.push_back(rigs::tell(piece.part->text, reader));
        EXPECT_EQ(piece.text, parts.back());
      }
      EXPECT_EQ(all, rigs::tell(whole.text, reader));
      EXPECT_EQ(parts.size(), whole.parts.size()) << all;
    }
  }
}

}  // namespace gui::telling
