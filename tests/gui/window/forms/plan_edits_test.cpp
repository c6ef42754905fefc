// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/plan_edits.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "gui/window/forms/plan_fields.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace {

using gui::FieldOwner;
using gui::PlanField;

std::string demo() { return std::string(rigs::demoPlanText()); }

PlanField fieldAt(const std::string& place) {
  const gui::ListLengths lengths{.rests = 3,
                                 .compared = 2,
                                 .comparedLid = 2,
                                 .ofRigs = {.side = 2, .base = 1, .lid = 2, .hose = 1}};
  for (const auto& sections : {gui::batchSections(lengths), gui::placeSections(lengths),
                               gui::rigSections(lengths.ofRigs)}) {
    for (const gui::FieldSection& section : sections)
      for (const PlanField& field : section.fields)
        if (field.place == place) return field;
  }
  ADD_FAILURE() << "no field at " << place;
  return {};
}

std::string edited(const std::string& document, std::optional<std::size_t> rig,
                   const std::string& place, std::string_view text) {
  std::vector<std::string> origins;
  if (rig) origins = rigs::originsOf(document, *rig, ".");
  return gui::withField(document, {{.rig = rig, .origins = &origins}, fieldAt(place), text});
}

rigs::Problems problemsOf(const std::string& document) {
  rigs::Problems problems;
  static_cast<void>(rigs::readPlan(document, ".", problems));
  return problems;
}

TEST(PlanEdit, ChangesOneValueAndNothingElse) {
  const std::string after = edited(demo(), 1, "/element/power", "1800 W");
  EXPECT_EQ(rigs::textAt(after, "/rigs/1/element/power"), "1800 W");
  EXPECT_EQ(rigs::withText(after, "/rigs/1/element/power", "1650 W"), rigs::laidOut(demo()));
}

TEST(PlanEdit, OfARigThatFollowsStatesWhatDiffersAndLetsItFollow) {
  const std::string plan =
      rigs::withValue(demo(), "/rigs/1", R"({"name": "Follower", "same_as": "a", "cable": null})");
  std::string after = edited(plan, 1, "/lid/open/boil", "40 %");
  EXPECT_EQ(rigs::valueAt(after, "/rigs/1"),
            R"({"name":"Follower","same_as":"a","cable":null,"lid":{"open":{"boil":"40 %"}}})");
  after = edited(after, 1, "/jacket/side/0/material", "cork");
  after = edited(after, 0, "/element/power", "2500 W");
  EXPECT_FALSE(rigs::hasErrors(problemsOf(after)));
  rigs::Problems problems;
  const auto read = rigs::readPlan(after, ".", problems);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->rigs[1].rig.element.rating, physics::watts(2500.0));
  // As the other has it again, it is not stated.
  after = edited(edited(after, 1, "/lid/open/boil", "100 %"), 1, "/jacket/side/0/material", "");
  EXPECT_FALSE(rigs::exists(after, "/rigs/1/lid"));
  EXPECT_TRUE(rigs::exists(after, "/rigs/1/same_as"));
  EXPECT_EQ(rigs::textAt(edited(after, 1, "/lid/material", "none"), "/rigs/1/lid"), "none");
}

TEST(PlanVariant, OfARigThatFollowsFollowsTheSameOne) {
  const std::string plan =
      rigs::withValue(demo(), "/rigs/1", R"({"name": "Follower", "same_as": "a", "lid": null})");
  const auto origins = rigs::originsOf(plan, 1, ".");
  const std::string after = gui::withVariant(plan, rigs::textsOf(plan),
                                             {1, origins, "In a jacket", gui::Variant::WithJacket});
  EXPECT_EQ(rigs::textAt(after, "/rigs/2/same_as"), "a");
  EXPECT_TRUE(rigs::exists(after, "/rigs/2/jacket/side"));
  EXPECT_FALSE(rigs::exists(after, "/rigs/2/jacket/lid")) << "it has no lid to put one on";
  EXPECT_FALSE(rigs::hasErrors(problemsOf(after)));
}

TEST(PlanEdit, OfAnInheritedPartStatesAllOfIt) {
  // The demo's second rig has its lid from the catalogue's kettle.
  ASSERT_FALSE(rigs::exists(demo(), "/rigs/1/lid"));
  const std::string after = edited(demo(), 1, "/lid/open/boil", "40 %");
  EXPECT_EQ(rigs::textAt(after, "/rigs/1/lid/open/boil"), "40 %");
  EXPECT_EQ(rigs::textAt(after, "/rigs/1/lid/material"), "stainless steel");
  EXPECT_FALSE(rigs::hasErrors(problemsOf(after)));
}

TEST(PlanEdit, OfAPartThatMergesStatesOnlyTheKey) {
  const std::string after = edited(demo(), 0, "/element/power", "3.5 kW");
  EXPECT_EQ(rigs::valueAt(after, "/rigs/0/element"), R"({"power":"3.5 kW"})");
}

TEST(PlanEdit, EmptyingTheLastValueOfAPartTakesThePartOut) {
  const std::string stated = edited(demo(), 0, "/element/power", "3.5 kW");
  const std::string emptied = edited(stated, 0, "/element/power", "");
  EXPECT_EQ(emptied, rigs::laidOut(demo()));
}

TEST(PlanEdit, SaysNoneWhereTheOriginHasThePart) {
  const std::string after = edited(demo(), 1, "/lid/material", "none");
  EXPECT_EQ(rigs::textAt(after, "/rigs/1/lid"), "none");
  rigs::Problems problems;
  const auto plan = rigs::readPlan(after, ".", problems);
  ASSERT_TRUE(plan.has_value());
  EXPECT_FALSE(plan->rigs[1].hasLid);
  // And back: a material again, with a finish that it has.
  const std::string back = edited(after, 1, "/lid/material", "aluminium");
  EXPECT_EQ(rigs::textAt(back, "/rigs/1/lid/material"), "aluminium");
  EXPECT_FALSE(rigs::hasErrors(problemsOf(back)));
}

TEST(PlanEdit, LayersAreAddedByTheirMaterialAndTakenOutByEmptyingIt) {
  const std::string one = edited(demo(), 0, "/jacket/side/0/material", "cork");
  EXPECT_EQ(rigs::textAt(one, "/rigs/0/jacket/side/0/thickness"), "10 mm");
  const std::string two = edited(one, 0, "/jacket/side/1/material", "wool felt");
  EXPECT_FALSE(rigs::hasErrors(problemsOf(two)));
  const std::string thick = edited(two, 0, "/jacket/side/1/thickness", "R 1.8");
  EXPECT_EQ(rigs::textAt(thick, "/rigs/0/jacket/side/1/R"), "R 1.8");
  EXPECT_FALSE(rigs::exists(thick, "/rigs/0/jacket/side/1/thickness"));
  EXPECT_FALSE(rigs::hasErrors(problemsOf(thick)));
  const std::string less = edited(thick, 0, "/jacket/side/0/material", "");
  EXPECT_EQ(rigs::textAt(less, "/rigs/0/jacket/side/0/material"), "wool felt");
  EXPECT_EQ(edited(less, 0, "/jacket/side/0/material", ""), rigs::laidOut(demo()));
}

TEST(PlanEdit, ValuesThatStandInsteadOfOthersReplaceThem) {
  struct Instead {
    std::optional<std::size_t> rig;
    std::string place, text, gone;
  };
  const Instead cases[] = {
      {std::nullopt, "/batch/water", "30 L", "/batch/wort"},
      {std::nullopt, "/place/pressure", "91 kPa", "/place/altitude"},
      {std::nullopt, "/batch/mash/unplugged/temperature", "66 C", "/batch/mash/rests"},
      {1, "/cable/loop_resistance", "0.2 ohm", "/rigs/1/cable/length"},
      {1, "/vessel/emissivity", "0.3", "/rigs/1/vessel/finish"}};
  for (const Instead& c : cases) {
    SCOPED_TRACE(c.place);
    const std::string after = edited(demo(), c.rig, c.place, c.text);
    EXPECT_TRUE(rigs::exists(demo(), c.gone));
    EXPECT_FALSE(rigs::exists(after, c.gone));
    EXPECT_FALSE(rigs::hasErrors(problemsOf(after)));
  }
}

TEST(PlanEdit, WritesThePlainNumberAsANumber) {
  const std::string after = edited(demo(), 0, "/evaporation_factor", "1.2");
  EXPECT_EQ(rigs::valueAt(after, "/rigs/0/evaporation_factor"), "1.2");
  const std::string bad = edited(demo(), 0, "/evaporation_factor", "a lot");
  EXPECT_TRUE(rigs::hasErrors(problemsOf(bad)));
}

TEST(RigVariant, WithAJacketTakesTheOneToCompare) {
  const auto texts = rigs::textsOf(demo());
  const auto origins = rigs::originsOf(demo(), 1, ".");
  const std::string after =
      gui::withVariant(demo(), texts, {1, origins, "Wrapped", gui::Variant::WithJacket});
  rigs::Problems problems;
  const auto plan = rigs::readPlan(after, ".", problems);
  ASSERT_TRUE(plan.has_value());
  ASSERT_EQ(plan->rigs.size(), 5U);
  EXPECT_EQ(plan->rigs[2].name, "Wrapped");
  EXPECT_TRUE(plan->rigs[2].hasJacket);
  EXPECT_FALSE(plan->rigs[1].hasJacket);
}

TEST(RigVariant, NamesStayDifferent) {
  const auto texts = rigs::textsOf(demo());
  EXPECT_EQ(gui::freeRigName(texts, "Kettle"), "Kettle");
  EXPECT_EQ(gui::freeRigName(texts, "New element, kitchen"), "New element, kitchen 2");
  // A rig with a name of its own does not take its origin's.
  EXPECT_EQ(gui::freeRigName(texts, "40 L steel kettle"), "40 L steel kettle");
}

// Every key that the schema has for a person to fill in has a field; "note", "about", "source",
// "from" of a rig and the format are not physical.
TEST(PlanFields, CoverTheDocument) {
  for (const char* place :
       {"/batch/wort", "/batch/grain/mass", "/batch/grain/slaking_heat", "/place/pressure",
        "/goals/headspace", "/tariff/price", "/vessel/mass", "/stands_on/kind",
        "/element/top_height", "/supply/continuous", "/cable/temperature", "/lid/open/heating",
        "/jacket/base/0/material", "/jacket/outside", "/recirculation/insulation/0/thickness",
        "/boil_power", "/evaporation_factor", "/jacket_to_compare/side/0/material"}) {
    const PlanField field = fieldAt(place);
    EXPECT_FALSE(field.label.isEmpty()) << place;
    EXPECT_FALSE(field.meaning.isEmpty()) << place;
  }
}

}  // namespace
