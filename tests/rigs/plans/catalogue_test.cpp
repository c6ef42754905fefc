// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/catalogue.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <string>

#include "rigs/answers/plan_check.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "tests/support/within.hpp"

namespace rigs {
namespace {

using namespace physics;

// EN 12524:2000, tabulated design values: aluminium alloys 2800 kg/m3, 160 W/(m K),
// 880 J/(kg K); elastomeric foam, flexible, 0.05 W/(m K), 60 to 80 kg/m3.
TEST(Catalogue, HoldsThePrintedDesignValues) {
  const Material* aluminium = catalogue().material("aluminium");
  ASSERT_TRUE(aluminium);
  EXPECT_WITHIN(aluminium->conductivity, wattsPerMetreKelvin(160.0), wattsPerMetreKelvin(0.5));
  EXPECT_WITHIN(aluminium->density, kilogramsPerCubicMetre(2800.0), kilogramsPerCubicMetre(0.5));
  EXPECT_WITHIN(aluminium->specificHeat, joulesPerKilogramKelvin(880.0),
                joulesPerKilogramKelvin(0.5));
  const Material* foam = catalogue().material("elastomeric foam, flexible");
  ASSERT_TRUE(foam);
  EXPECT_WITHIN(foam->conductivity, wattsPerMetreKelvin(0.05), wattsPerMetreKelvin(0.0005));
  EXPECT_WITHIN(foam->density, kilogramsPerCubicMetre(70.0), kilogramsPerCubicMetre(10.0));
}

// BS 1363: 13 A; NFPA 70: 80 % for continuous loads.
TEST(Catalogue, HoldsUsualCircuits) {
  const Circuit* uk = catalogue().circuit("UK 230 V 13 A plug");
  ASSERT_TRUE(uk);
  EXPECT_WITHIN(uk->voltage * uk->current, watts(2990.0), watts(0.1));
  EXPECT_EQ(uk->continuousShare, 1.0);
  const Circuit* us = catalogue().circuit("North America 120 V 15 A");
  ASSERT_TRUE(us);
  EXPECT_EQ(us->continuousShare, 0.8);
}

TEST(Catalogue, DocumentsAreWithoutProblems) {
  ASSERT_FALSE(embeddedDocuments().empty());
  for (const EmbeddedDocument& embedded : embeddedDocuments()) {
    SCOPED_TRACE(embedded.name);
    Problems problems;
    EXPECT_TRUE(parseJson(embedded.text, problems));
    EXPECT_TRUE(problems.empty());
  }
}

// A source that can be looked up: a standard, a handbook or code by name, a numbered example or
// article, a manual, a paper. "Emissivity tables" names none.
bool cites(const std::string& source) {
  static const std::regex kNamed(
      "(EN|EN ISO|IEC|ISO|ANSI|BS|SN|AS/NZS|JIS C|CEE|PMC) ?[0-9]|NFPA 70|ASHRAE|table A\\.|ex\\. "
      "[0-9]|"
      "manual|Thome|Cengel|Holman|Incropera");
  return std::regex_search(source, kNamed);
}
// What it was recalled from must be said: three words or more besides the admission.
bool recalls(const std::string& source) {
  static const std::regex kAdmission("from memory( of)?");
  static const std::regex kWord("[A-Za-z]{3,}");
  if (!std::regex_search(source, kAdmission)) return false;
  const std::string rest = std::regex_replace(source, kAdmission, "");
  return std::distance(std::sregex_iterator(rest.begin(), rest.end(), kWord), {}) >= 3;
}
// An estimate says between what.
bool estimates(const std::string& source) {
  return source.find("estimate") != std::string::npos &&
         std::any_of(source.begin(), source.end(), [](char c) { return '0' <= c && c <= '9'; });
}
bool isASource(const std::string& source) {
  return cites(source) || recalls(source) || estimates(source);
}

TEST(Catalogue, EveryEntryHasASource) {
  EXPECT_GE(catalogue().materials.size(), 25U);
  for (const Material& m : catalogue().materials) {
    SCOPED_TRACE(m.name + ": " + m.source);
    EXPECT_FALSE(m.name.empty());
    EXPECT_THAT(m.status, testing::AnyOf("published", "from memory", "estimate"));
    if (m.status == "published") {
      EXPECT_TRUE(cites(m.source));
    }
    if (m.status == "from memory") {
      EXPECT_TRUE(recalls(m.source));
    }
    if (m.status == "estimate") {
      EXPECT_TRUE(estimates(m.source));
    }
    EXPECT_FALSE(m.uses.empty());
    ASSERT_FALSE(m.finishes.empty());
    for (const Finish& finish : m.finishes) EXPECT_TRUE(isASource(finish.source)) << finish.source;
  }
  for (const Finish& outside : catalogue().outsides) {
    EXPECT_TRUE(isASource(outside.source)) << outside.source;
  }
  EXPECT_GE(catalogue().circuits.size(), 15U);
  for (const Circuit& circuit : catalogue().circuits) {
    SCOPED_TRACE(circuit.name);
    EXPECT_FALSE(circuit.region.empty());
    EXPECT_TRUE(isASource(circuit.source)) << circuit.source;
  }
  EXPECT_GE(catalogue().rigs.size(), 4U);
  for (const GenericRig& rig : catalogue().rigs) {
    SCOPED_TRACE(rig.name);
    EXPECT_FALSE(rig.about.empty());
    EXPECT_THAT(rig.source, testing::HasSubstr("common practice, no source"));
  }
}

// The rule above refuses what names nothing.
TEST(Catalogue, TakesNoEmptyWordForASource) {
  for (const char* words : {"", "from memory", "standard emissivity tables",
                            "emissivity tables, "
                            "aluminium foil",
                            "own estimate"}) {
    EXPECT_FALSE(isASource(words)) << words;
  }
}

// EN 12524:2000 design values, and ASHRAE Handbook - Fundamentals 2013 from expanded rubber on:
// conductivity, density, specific heat.
TEST(Catalogue, HasThePublishedValues) {
  struct Row {
    const char* name;
    double conductivity, density, specificHeat;
  };
  for (const Row& row :
       {Row{"aluminium", 160, 2800, 880}, Row{"copper", 380, 8900, 380},
        Row{"polypropylene", 0.22, 910, 1800}, Row{"PVC", 0.17, 1390, 900},
        Row{"neoprene, solid", 0.23, 1240, 2140}, Row{"natural rubber", 0.13, 910, 1100},
        Row{"silicone", 0.35, 1200, 1000}, Row{"silicone foam", 0.12, 750, 1000},
        Row{"elastomeric foam, flexible", 0.05, 70, 1500}, Row{"polyurethane foam", 0.05, 70, 1500},
        Row{"cork", 0.05, 200, 1500}, Row{"expanded rubber", 0.032, 70, 1670},
        Row{"extruded polystyrene", 0.026, 32.5, 1470}}) {
    SCOPED_TRACE(row.name);
    const Material* m = catalogue().material(row.name);
    ASSERT_TRUE(m);
    EXPECT_NEAR(inWattsPerMetreKelvin(m->conductivity), row.conductivity, 1e-9);
    EXPECT_NEAR(inKilogramsPerCubicMetre(m->density), row.density, 1e-9);
    EXPECT_NEAR(inJoulesPerKilogramKelvin(m->specificHeat), row.specificHeat, 1e-9);
  }
  const auto emissivity = [](const char* name, const char* finish) {
    return catalogue().material(name)->finish(finish)->emissivity;
  };
  EXPECT_EQ(emissivity("stainless steel", "bright"), 0.16);
  EXPECT_EQ(emissivity("aluminium", "bright"), 0.09);
  EXPECT_EQ(emissivity("aluminium", "anodised"), 0.55);
  EXPECT_EQ(emissivity("copper", "bright"), 0.07);
}

// Physical bounds: nothing insulates better than still air at rest without a vacuum or a heavy
// gas (0.024 W/(m K) at 0 C), no face radiates more than a black one, metals get less bright.
TEST(Catalogue, ValuesArePossible) {
  for (const Material& m : catalogue().materials) {
    SCOPED_TRACE(m.name);
    EXPECT_GE(inWattsPerMetreKelvin(m.conductivity), 0.024);
    for (const Finish& finish : m.finishes) {
      EXPECT_GT(finish.emissivity, 0.0);
      EXPECT_LE(finish.emissivity, 1.0);
    }
    const Finish* bright = m.finish("bright");
    const Finish* brushed = m.finish("brushed");
    const Finish* dull = m.finish("dull");
    if (!bright) continue;
    ASSERT_TRUE(brushed && dull);
    EXPECT_LT(bright->emissivity, brushed->emissivity);
    EXPECT_LT(brushed->emissivity, dull->emissivity);
  }
}

TEST(Catalogue, NamesAreUnique) {
  std::set<std::string> names;
  for (const Material& m : catalogue().materials)
    EXPECT_TRUE(names.insert(m.name).second) << m.name;
  for (const Circuit& c : catalogue().circuits) EXPECT_TRUE(names.insert(c.name).second) << c.name;
  for (const GenericRig& r : catalogue().rigs) EXPECT_TRUE(names.insert(r.name).second) << r.name;
}

TEST(Catalogue, EveryUseHasMaterials) {
  for (const Use use : {Use::Vessel, Use::Lid, Use::Jacket, Use::Stand, Use::Hose})
    EXPECT_GE(catalogue().namesFor(use).size(), 3U);
}

TEST(Catalogue, SaysWhenItDoesNotKnowAName) {
  EXPECT_EQ(catalogue().material("unobtainium"), nullptr);
  EXPECT_EQ(catalogue().circuit(""), nullptr);
  EXPECT_EQ(catalogue().rig("materials.json"), nullptr);
}

std::optional<Plan> planFor(const GenericRig& rig, double litresOfWort, Problems& problems) {
  const std::string from = "\"from\": \"" + rig.name + "\"";
  const std::string wort = formatNumber(litresOfWort);
  const std::string grain = formatNumber(0.22 * litresOfWort);
  return readPlan(R"({"format": {"name": "heat-ledger-plan", "version": 1},
            "batch": {"wort": ")" +
                      wort + R"( L", "boil": "60 min",
                      "grain": {"mass": ")" +
                      grain + R"( kg"},
                      "mash": {"rests": [{"temperature": "66 C", "time": "60 min"}]}},
            "place": {"altitude": "100 m", "room": "20 C", "water": "12 C"},
            "rigs": [{)" +
                      from + R"(}, {"name": "other", )" + from + "}]}",
                  "/nonexistent", problems);
}

// Each generic rig can be brewed with as it is, in a batch of half its volume.
TEST(Catalogue, EveryGenericRigCanBrew) {
  for (const GenericRig& rig : catalogue().rigs) {
    SCOPED_TRACE(rig.name);
    Problems problems;
    const auto any = planFor(rig, 10.0, problems);
    ASSERT_TRUE(any);
    const auto plan = planFor(rig, 0.5 * inLitres(capacity(any->rigs[0].rig.vessel)), problems);
    ASSERT_TRUE(plan);
    checkPlan(*plan, problems);
    for (const Problem& problem : problems) ADD_FAILURE() << inEnglish(problem.message);
    EXPECT_EQ(simulate(plan->rigs[0].rig, plan->batch, plan->place).outcome, Outcome::Done);
  }
}

}  // namespace
}  // namespace rigs
