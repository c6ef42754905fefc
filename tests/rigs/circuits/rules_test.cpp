// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/rules.hpp"

#include <gtest/gtest.h>

#include <cctype>

#include <algorithm>

#include "rigs/quantities/quantity_text.hpp"
#include "tests/rigs/circuits/circuit_cases.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::kWire;

const CircuitRules& us() { return *rulesOf("United States"); }

CableAsked asked(CableUse use, const char* size) {
  return {.use = use, .area = *parseQuantity<Area>(size), .length = metres(5.0)};
}
Current allowed(const CircuitRules& rules, const CableAsked& cable) {
  Told nearest;
  const auto found = ampacity(rules, cable, nearest);
  EXPECT_TRUE(found) << "no such size; nearest " << inEnglish(nearest);
  return found ? found->allowed : amperes(0.0);
}

TEST(BundledRules, CoverSixRegionsAndCiteEverything) {
  ASSERT_GE(bundledRules().size(), 6u);
  for (const char* region : {"United States", "Canada", "Europe", "United Kingdom",
                             "Australia and New Zealand", "Japan"}) {
    const CircuitRules* rules = rulesOf(region);
    ASSERT_TRUE(rules) << region;
    EXPECT_FALSE(rules->edition.empty());
    EXPECT_FALSE(rules->voltages.empty());
    EXPECT_FALSE(rules->breakers.sizes.empty());
    for (const Outlet& outlet : rules->outlets) EXPECT_FALSE(outlet.cite.source.empty());
    for (const ConductorTable& table : rules->conductors) EXPECT_FALSE(table.cite.clause.empty());
  }
}

// Of an earth contact is claimed what a source tells, or a standard as it is remembered and marked
// so; the housing guides that name Japan's outlets tell nothing.
TEST(BundledRules, ClaimAnEarthContactWithASourceOnly) {
  for (const CircuitRules& rules : bundledRules()) {
    for (const Outlet& outlet : rules.outlets) {
      SCOPED_TRACE(rules.region + ": " + outlet.name);
      const bool told = outlet.cite.source.find("housing guides") == std::string::npos;
      EXPECT_TRUE(outlet.earth == Earth::NotKnown || (told && !outlet.cite.source.empty()));
    }
  }
  for (const Outlet& outlet : rulesOf("Japan")->outlets) EXPECT_EQ(outlet.earth, Earth::NotKnown);
  EXPECT_EQ(rulesOf("United States")->outlet("10-30")->earth, Earth::Missing);
  EXPECT_EQ(rulesOf("United Kingdom")->outlet("BS 1363 13 A")->earth, Earth::There);
}

// For places whose own rules are not here; each says what it is worth.
TEST(BundledRules, HaveAGenericRegionAndThoseOf127Volts) {
  for (const char* region : {"Generic IEC", "Brazil", "Mexico"}) {
    const CircuitRules* rules = rulesOf(region);
    ASSERT_TRUE(rules) << region;
    EXPECT_NE(rules->about.find("checked"), std::string::npos) << rules->about;
  }
  for (const char* region : {"Brazil", "Mexico"}) {
    const CircuitRules& rules = *rulesOf(region);
    EXPECT_FALSE(rules.rangesOf(volts(127.0)).empty());
    EXPECT_FALSE(rules.rangesOf(volts(220.0)).empty());
    for (const VoltageRange& range : rules.voltages) EXPECT_EQ(range.cite.status, Status::Memory);
    for (const Outlet& outlet : rules.outlets) EXPECT_EQ(outlet.cite.status, Status::Memory);
    EXPECT_EQ(rules.breakers.cite.status, Status::Memory);
    EXPECT_TRUE(rules.conductors.empty());
    EXPECT_EQ(rulesForCircuitsOf(region).size(), 1u);
  }
  // No country's circuit is judged by it unless somebody names it.
  EXPECT_TRUE(rulesOf("Generic IEC")->circuitsOf.empty());
  EXPECT_FALSE(rulesOf("Generic IEC")->rangesOf(volts(230.0)).empty());
}

TEST(BundledRules, AreFoundWhicheverLettersAreCapital) {
  for (const CircuitRules& rules : bundledRules()) {
    std::string small = rules.region, large = rules.region;
    for (char& c : small) c = static_cast<char>(std::tolower(c));
    for (char& c : large) c = static_cast<char>(std::toupper(c));
    EXPECT_EQ(rulesOf(small), &rules);
    EXPECT_EQ(rulesOf(large), &rules);
  }
  EXPECT_FALSE(rulesOf("united"));
  EXPECT_FALSE(rulesOf("united kingdoms"));
}

// true, false or "not known"; left out, it is not known.
TEST(ReadRules, TakesNoEarthContactForGranted) {
  const auto earthOf = [](const std::string& stated, Problems& problems) {
    const auto rules = readRules(
        R"({"format": {"name": "heat-ledger-rules", "version": 1}, "region": "Island",
            "code": "c", "edition": "1", "about": "ours",
            "voltages": [{"nominal": "120 V", "lowest": "110 V", "highest": "127 V", "name": "n",
                          "clause": "1", "source": "ours", "status": "memory"}],
            "outlets": [{"name": "o", "voltage": "125 V", "current": "15 A",)" +
            stated + R"("clause": "2", "source": "ours", "status": "memory"}]})",
        problems);
    return rules ? std::optional(rules->outlets[0].earth) : std::nullopt;
  };
  Problems problems;
  EXPECT_EQ(earthOf("", problems), Earth::NotKnown);
  EXPECT_EQ(earthOf(R"("earth": "not known", )", problems), Earth::NotKnown);
  EXPECT_EQ(earthOf(R"("earth": true, )", problems), Earth::There);
  EXPECT_EQ(earthOf(R"("earth": false, )", problems), Earth::Missing);
  EXPECT_TRUE(problems.empty());
  EXPECT_FALSE(earthOf(R"("earth": "perhaps", )", problems));
  EXPECT_TRUE(hasErrors(problems));
}

TEST(BundledRules, AnswerToTheCataloguesRegions) {
  EXPECT_EQ(rulesForCircuitsOf("North America").size(), 2u);
  EXPECT_EQ(rulesForCircuitsOf("United Kingdom and Ireland").size(), 1u);
  EXPECT_EQ(rulesForCircuitsOf("Atlantis").size(), 0u);
}

struct Case {
  const char* id;
  const char* region;
  CableUse use;
  const char* size;
  double insulation, ambient;  // 0: not stated
  int layers;
  double length;
  double ampere;
};

// Figures of the tables were read as quoted by trade publications. A1 is printed there with its
// answer; A11 was read; the others were computed here.
TEST(Ampacity, MatchesTheCheckValues) {
  constexpr auto kSet = CableUse::ExtensionSet;
  for (const Case& c :
       {Case{"A1 pub.", "United States", kWire, "12 AWG", 75, 40, 0, 5, 22.0},
        Case{"A4", "United Kingdom", CableUse::Cord, "4 mm2", 60, 0, 4, 5, 10.5},
        Case{"A6", "United States", kWire, "10 AWG", 90, 45, 0, 5, 34.8},
        Case{"A7", "United States", kWire, "10 AWG", 60, 40, 0, 5, 24.6},
        Case{"A9", "United Kingdom", CableUse::Cord, "4 mm2", 90, 0, 2, 5, 27.3},
        Case{"A11", "United States", kSet, "16 AWG", 0, 0, 0, 18.3, 10.0},
        Case{"A11, to 50 ft", "United States", kSet, "16 AWG", 0, 0, 0, 15.0, 13.0},
        Case{"A12, since 2011", "United States", kWire, "14 AWG", 60, 0, 0, 5, 15.0},
        Case{"twin and earth", "United Kingdom", kWire, "2.5 mm2", 0, 0, 0, 5, 27.0}}) {
    SCOPED_TRACE(c.id);
    CableAsked cable = asked(c.use, c.size);
    cable.length = metres(c.length);
    cable.layersOnDrum = c.layers;
    if (c.insulation > 0.0) cable.insulation = celsius(c.insulation);
    if (c.ambient > 0.0) cable.ambient = celsius(c.ambient);
    EXPECT_WITHIN(allowed(*rulesOf(c.region), cable), amperes(c.ampere), amperes(0.005));
  }
}

TEST(Ampacity, TakesTheCordsColumnForItsConductors) {
  CableAsked cord = asked(CableUse::Cord, "10 AWG");
  cord.loaded = 3;
  EXPECT_WITHIN(allowed(us(), cord), amperes(25.0), amperes(1e-9));
  cord.loaded = 2;
  EXPECT_WITHIN(allowed(us(), cord), amperes(30.0), amperes(1e-9));
}

// A2, pub.: a heater cord of 10 AWG with six loaded conductors: 35 A x 0.8. The factors 0.80, 0.70
// and 0.50 were read.
TEST(Ampacity, TakesOffForManyConductors) {
  CableAsked heater = asked(CableUse::Cord, "10 AWG");
  heater.method = "heater cord";
  heater.loaded = 6;
  EXPECT_WITHIN(allowed(us(), heater), amperes(28.0), amperes(1e-9));
  heater.loaded = 7;
  EXPECT_WITHIN(allowed(us(), heater), amperes(24.5), amperes(1e-9));
  CableAsked wire = asked(CableUse::BuildingWire, "10 AWG");
  wire.loaded = 6;
  EXPECT_WITHIN(allowed(us(), wire), amperes(24.0), amperes(1e-9));
  // IEC has no factors here: named, not granted.
  CableAsked other = asked(CableUse::BuildingWire, "2.5 mm2");
  other.loaded = 6;
  Told nearest;
  EXPECT_FALSE(ampacity(*rulesOf("Europe"), other, nearest)->lacks.empty());
}

// UL 817, read: 15 A need 14 AWG to 50 ft and 12 AWG beyond.
TEST(Ampacity, NamesAThickerSizeOrAShorterRun) {
  CableAsked set = asked(CableUse::ExtensionSet, "14 AWG");
  set.length = metres(0.3048 * 60.0);
  Told nearest;
  EXPECT_FALSE(ampacity(us(), set, nearest));
  EXPECT_EQ(inEnglish(nearest), "12 AWG, or 14 AWG up to 50 ft");
}

TEST(Ampacity, NamesTheNearestSizeInTheTable) {
  Told nearest;
  EXPECT_FALSE(ampacity(us(), asked(CableUse::BuildingWire, "2.5 mm2"), nearest));
  EXPECT_EQ(inEnglish(nearest), "14 AWG");
  EXPECT_FALSE(ampacity(us(), asked(CableUse::Cord, "22 AWG"), nearest));
  EXPECT_EQ(inEnglish(nearest), "18 AWG");
  EXPECT_FALSE(ampacity(*rulesOf("Japan"), asked(CableUse::Cord, "2 mm2"), nearest));
  EXPECT_EQ(inEnglish(nearest), "");
}

TEST(Ampacity, GrantsNothingToADrumThatNoTableKnows) {
  CableAsked cord = asked(CableUse::Cord, "10 AWG");
  cord.layersOnDrum = 2;
  EXPECT_EQ(allowed(us(), cord), amperes(0.0));
}

// A5, A10, computed here from IEC 60898-1, read as quoted.
TEST(Breakers, HoldAndTripAsTheStandardSays) {
  const Breakers& b = rulesOf("Europe")->breakers;
  EXPECT_NEAR(b.holds.value() * 32.0, 36.2, 0.05);
  EXPECT_NEAR(b.trips.value() * 32.0, 46.4, 0.05);
  EXPECT_NEAR(b.holds.value() * 16.0, 18.1, 0.05);
  EXPECT_NEAR(b.trips.value() * 16.0, 23.2, 0.05);
  const auto typeB = std::find_if(b.instant.begin(), b.instant.end(),
                                  [](const Instant& i) { return i.type == "B"; });
  ASSERT_NE(typeB, b.instant.end());
  EXPECT_NEAR(typeB->from * 32.0, 96.0, 1e-9);
  EXPECT_NEAR(typeB->to * 32.0, 160.0, 1e-9);
}

// V26: the tables' loops at work agree with the cold resistances at 70 C, to their rounding.
TEST(BundledRules, AgreeBetweenColdResistanceAndVoltageDrop) {
  const ConductorTable& twin = rulesOf("United Kingdom")->conductors.front();
  const ConductorRow* row = nullptr;
  for (const ConductorRow& r : twin.rows)
    if (r.size == "2.5 mm2") row = &r;
  ASSERT_TRUE(row && row->loopAtWork);
  EXPECT_WITHIN(*row->loopAtWork, ohmsPerMetre(17.78e-3), ohmsPerMetre(0.5e-3));
}

// Printed factors are the root law at the top of each band, rounded.
TEST(BundledRules, FollowTheRootLawInTheirAmbientFactors) {
  for (const ConductorTable& table : us().conductors) {
    for (const AmbientRow& row : table.ambientFactors) {
      ASSERT_TRUE(table.insulation);
      EXPECT_NEAR(row.factor, ambientFactor(*table.insulation, celsius(30.0), row.upTo), 0.0065)
          << inCelsius(*table.insulation) << " at " << inCelsius(row.upTo);
    }
  }
}

TEST(ReadRules, NamesWhatIsWrong) {
  Problems problems;
  EXPECT_FALSE(readRules(R"({"format": {"name": "heat-ledger-rules", "version": 1},
    "region": "Atlantis", "code": "A", "edition": "1", "about": "b",
    "voltages": [{"nominal": "100 W", "lowest": "95 V", "highest": "107 V", "name": "n",
                  "clause": "c", "source": "s", "status": "hearsay"}]})",
                         problems));
  ASSERT_EQ(problems.size(), 2u);
  EXPECT_EQ(problems[0].where, "/voltages/0/nominal");
  EXPECT_EQ(problems[1].where, "/voltages/0/status");
}

// Lists that the schema asks for are asked for here, too.
TEST(ReadRules, MissesWhatTheSchemaRequires) {
  Problems problems;
  EXPECT_FALSE(readRules(R"({"region": "Atlantis", "code": "A", "edition": "1", "about": "b",
    "breakers": {"clause": "c", "source": "s", "status": "memory"},
    "conductors": [{"use": "cord", "ambient": "30 C", "loaded_conductors": 2, "clause": "c",
                    "source": "s", "status": "memory"}]})",
                         problems));
  std::vector<std::string> places;
  for (const Problem& problem : problems) places.push_back(problem.where);
  EXPECT_EQ(places, (std::vector<std::string>{"/format", "/voltages", "/breakers/sizes",
                                              "/conductors/0/rows"}));
  EXPECT_NE(inEnglish(problems[0].message).find("heat-ledger-rules"), std::string::npos);
  EXPECT_NE(inEnglish(problems[1].message).find("at the meter"), std::string::npos);
}

TEST(ReadRules, GivesExamplesOfRulesNotOfKettles) {
  Problems problems;
  EXPECT_FALSE(readRules(R"({"region": 7, "edition": 2023})", problems));
  for (const Problem& problem : problems)
    EXPECT_EQ(inEnglish(problem.message).find("Old kettle"), std::string::npos)
        << inEnglish(problem.message);
}

TEST(ReadRules, HoldsARangeAgainstItsNominalVoltage) {
  Problems problems;
  EXPECT_FALSE(readRules(R"({"format": {"name": "heat-ledger-rules", "version": 1},
    "region": "Atlantis", "code": "A", "edition": "1", "about": "b",
    "voltages": [{"nominal": "100 V", "lowest": "107 V", "highest": "95 V", "name": "n",
                  "clause": "c", "source": "s", "status": "memory"}]})",
                         problems));
  ASSERT_EQ(problems.size(), 2u);
  EXPECT_EQ(problems[0].where, "/voltages/0/lowest");
  EXPECT_EQ(problems[1].where, "/voltages/0/highest");
}

TEST(ReadRules, TakesARegionThatNobodyBundled) {
  Problems problems;
  const auto rules = readRules(R"({"format": {"name": "heat-ledger-rules", "version": 1},
    "region": "Atlantis", "code": "A", "edition": "1", "about": "b",
    "voltages": [{"nominal": "100 V", "lowest": "95 V", "highest": "107 V", "name": "n",
                  "clause": "c", "source": "s", "status": "memory"}],
    "breakers": {"sizes": ["10 A", "20 A"], "clause": "c", "source": "s", "status": "memory"}})",
                               problems);
  EXPECT_TRUE(problems.empty());
  ASSERT_TRUE(rules);
  EXPECT_EQ(rules->region, "Atlantis");
}

}  // namespace
