// SPDX-License-Identifier: GPL-3.0-or-later
// The forms against the table of the plan's keys.
#include "gui/window/forms/field_words.hpp"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

#include "gui/window/forms/plan_fields.hpp"
#include "gui/window/forms/rig_fields.hpp"
#include "rigs/plans/keys.hpp"

namespace gui {
namespace {

using Placed = std::pair<std::string, PlanField>;  // with where its places begin

std::vector<Placed> allFields() {
  const ListLengths lengths{.rests = 2,
                            .compared = 2,
                            .comparedLid = 2,
                            .ofRigs = {.side = 2, .base = 2, .lid = 2, .hose = 2}};
  std::vector<Placed> all;
  const auto add = [&all](const std::vector<FieldSection>& sections, const std::string& root) {
    for (const FieldSection& section : sections)
      for (const PlanField& field : section.fields)  // a kettle's volume is no key
        if (field.kind != FieldKind::KettleVolume) all.emplace_back(root, field);
  };
  add(batchSections(lengths), "");
  add(placeSections(lengths), "");
  add(rigSections(lengths.ofRigs), "/rigs/*");
  return all;
}

PlanField fieldAt(const std::string& place) {
  for (const auto& [root, field] : allFields())
    if (field.place == place) return field;
  ADD_FAILURE() << place;
  return {};
}

bool isQuantity(const rigs::Key& key) {
  return key.kind == rigs::ValueKind::Quantity || key.kind == rigs::ValueKind::Share;
}

}  // namespace

TEST(FieldWords, AreTheTablesOfKeys) {
  EXPECT_EQ(fieldAt("/batch/mashing_in").label, "Mashing in");
  EXPECT_EQ(fieldAt("/batch/mashing_in").usual, "5 min");
  EXPECT_EQ(fieldAt("/batch/grain/temperature").usual, "as the room");
  EXPECT_EQ(fieldAt("/supply/continuous").usual, "100 %");
  EXPECT_EQ(fieldAt("/batch/mash/rests/1/temperature").label, "Rest 2");
  EXPECT_EQ(fieldAt("/jacket/lid/0/material").label, "Lid layer 1");
  EXPECT_EQ(fieldAt("/recirculation/insulation/1/material").label, "Wrap 2");
  EXPECT_EQ(fieldAt("/elements/1/power").label, "Second element");
  EXPECT_EQ(fieldAt("/second_supply/voltage").usual, "as the first circuit");
}

TEST(EveryField, IsOfAKeyThatHasWordsForForms) {
  ASSERT_GT(allFields().size(), 100u);
  for (const auto& [root, field] : allFields()) {
    ASSERT_TRUE(rigs::keyAt(root + field.place)) << field.place;
    EXPECT_FALSE(field.label.isEmpty()) << field.place;
    EXPECT_FALSE(field.meaning.isEmpty()) << field.place;
    EXPECT_FALSE(field.label.contains('%')) << field.place;
  }
}

TEST(EveryField, ChangesOtherPlacesOnlyWithKeysAndValuesOfTheTable) {
  for (const auto& [root, field] : allFields()) {
    for (const std::string& other : field.replaces)
      EXPECT_TRUE(rigs::keyAt(root + other)) << field.place << " replaces " << other;
    for (const Companion& other : field.companions) {
      const rigs::Key* key = rigs::keyAt(root + other.place);
      ASSERT_TRUE(key) << field.place << " comes with " << other.place;
      if (!isQuantity(*key)) continue;
      const auto si = [key](const std::string& text) {
        return rigs::detail::read(key->quantity, text).si;
      };
      ASSERT_TRUE(si(other.text)) << other.place << " = " << other.text;
      EXPECT_TRUE(si(std::string(key->least)) <= si(other.text) &&
                  si(other.text) <= si(std::string(key->most)))
          << other.place << " = " << other.text;
    }
  }
}

TEST(EveryField, OffersTheWordsOfTheTable) {
  for (const auto& [root, field] : allFields()) {
    const rigs::Key* key = rigs::keyAt(root + field.place);
    ASSERT_TRUE(key) << field.place;
    if (key->words.empty()) continue;
    ASSERT_TRUE(field.choices) << field.place;
    EXPECT_EQ(field.choices(""), (std::vector<std::string>{key->words.begin(), key->words.end()}))
        << field.place;
  }
}

}  // namespace gui
