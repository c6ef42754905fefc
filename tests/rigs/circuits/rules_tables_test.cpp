// SPDX-License-Identifier: GPL-3.0-or-later
// The bundled rules' tables, figure by figure, against what was read or is remembered of the codes.
// Each case says which: the rules must not claim to have read what is from memory.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <map>

#include "rigs/answers/safety.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/plans/tariff_reader.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "tests/rigs/circuits/circuit_cases.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::kCord;
using test_support::kWire;

constexpr auto kRead = Status::Seen;
constexpr auto kComputed = Status::Computed;
constexpr auto kMemory = Status::Memory;

// The row of this size; insulation 0 and method "" where the table has none.
struct Found {
  const ConductorTable* table = nullptr;
  const ConductorRow* row = nullptr;
};
Found rowOf(const char* region, CableUse use, double insulation, int loaded, const char* method,
            const std::string& size) {
  for (const ConductorTable& table : rulesOf(region)->conductors) {
    const bool same = table.use == use && table.loaded == loaded && table.method == method &&
                      (table.insulation ? std::abs(inCelsius(*table.insulation) - insulation) < 1e-6
                                        : insulation == 0.0);
    if (!same) continue;
    for (const ConductorRow& row : table.rows)
      if (row.size == size) return {&table, &row};
  }
  return {};
}

struct Column {
  const char* region;
  CableUse use;
  double insulation;
  int loaded;
  const char* method;
  Status status;
  std::vector<std::pair<const char*, double>> ampacities;
};

void expectColumns(const std::vector<Column>& columns) {
  for (const Column& c : columns) {
    for (const auto& [size, ampere] : c.ampacities) {
      SCOPED_TRACE(std::string(c.region) + ", " + c.method + ' ' + std::to_string(c.insulation) +
                   ", " + size);
      const Found found = rowOf(c.region, c.use, c.insulation, c.loaded, c.method, size);
      ASSERT_TRUE(found.row);
      EXPECT_WITHIN(found.row->ampacity, amperes(ampere), amperes(1e-9));
      EXPECT_EQ(found.table->cite.status, c.status);
    }
  }
}

// NFPA 70 table 310.16, read: 14 and 12 AWG have 15 and 20 A at 60 C since 2011; 240.4(D) read.
TEST(RulesTables, HaveTheBuildingWireOfTheNec) {
  expectColumns({{"United States",
                  kWire,
                  60,
                  3,
                  "",
                  kRead,
                  {{"14 AWG", 15}, {"12 AWG", 20}, {"10 AWG", 30}, {"8 AWG", 40}, {"6 AWG", 55}}},
                 {"United States",
                  kWire,
                  75,
                  3,
                  "",
                  kRead,
                  {{"14 AWG", 20}, {"12 AWG", 25}, {"10 AWG", 35}, {"8 AWG", 50}, {"6 AWG", 65}}},
                 {"United States",
                  kWire,
                  90,
                  3,
                  "",
                  kRead,
                  {{"14 AWG", 25}, {"12 AWG", 30}, {"10 AWG", 40}, {"8 AWG", 55}, {"6 AWG", 75}}}});
  for (const double insulation : {60.0, 75.0, 90.0}) {
    for (const auto& [size, breaker] :
         {std::pair{"14 AWG", 15.0}, std::pair{"12 AWG", 20.0}, std::pair{"10 AWG", 30.0}}) {
      const Found found = rowOf("United States", kWire, insulation, 3, "", size);
      ASSERT_TRUE(found.row && found.row->breaker);
      EXPECT_WITHIN(*found.row->breaker, amperes(breaker), amperes(1e-9));
    }
    EXPECT_FALSE(rowOf("United States", kWire, insulation, 3, "", "8 AWG").row->breaker);
  }
}

// Table 400.5(A)(1): column B (two loaded conductors) read but for 6 AWG, column A (three) from
// memory but for 10 and 8 AWG.
TEST(RulesTables, HaveTheCordsOfTheNec) {
  expectColumns({{"United States",
                  kCord,
                  0,
                  2,
                  "",
                  kRead,
                  {{"18 AWG", 10},
                   {"16 AWG", 13},
                   {"14 AWG", 18},
                   {"12 AWG", 25},
                   {"10 AWG", 30},
                   {"8 AWG", 40}}},
                 {"United States", kCord, 0, 2, "", kMemory, {{"6 AWG", 55}}},
                 {"United States",
                  kCord,
                  0,
                  3,
                  "",
                  kMemory,
                  {{"18 AWG", 7}, {"16 AWG", 10}, {"14 AWG", 15}, {"12 AWG", 20}, {"6 AWG", 45}}},
                 {"United States", kCord, 0, 3, "", kRead, {{"10 AWG", 25}, {"8 AWG", 35}}}});
}

// Canada's tables are laid out differently: stand-ins, all from memory.
TEST(RulesTables, CallCanadasStandInsFromMemory) {
  for (const ConductorTable& table : rulesOf("Canada")->conductors) {
    if (table.use == CableUse::ExtensionSet) continue;  // UL 817, read
    EXPECT_EQ(table.cite.status, kMemory) << table.cite.clause;
  }
  for (const ConductorTable& table : rulesOf("Australia and New Zealand")->conductors)
    EXPECT_EQ(table.cite.status, kMemory) << table.cite.clause;
}

// IEC 60364-5-52 B.52.2, two loaded PVC conductors at 30 C: A2, B2 and C read, A1 and B1 from
// memory; flat twin and earth read (10 mm2 is printed as 64 or 65).
TEST(RulesTables, HaveTheBuildingWireOfIec) {
  const auto five = [](double a, double b, double c, double d, double e) {
    return std::vector<std::pair<const char*, double>>{
        {"1.5 mm2", a}, {"2.5 mm2", b}, {"4 mm2", c}, {"6 mm2", d}, {"10 mm2", e}};
  };
  for (const char* region : {"Europe", "United Kingdom"}) {
    expectColumns({{region, kWire, 70, 2, "A1", kMemory, five(14.5, 19.5, 26, 34, 46)},
                   {region, kWire, 70, 2, "A2", kRead, five(14, 18.5, 25, 32, 43)},
                   {region, kWire, 70, 2, "B1", kMemory, five(17.5, 24, 32, 41, 57)},
                   {region, kWire, 70, 2, "B2", kRead, five(16.5, 23, 30, 38, 52)}});
  }
  expectColumns({{"Europe", kWire, 70, 2, "C", kRead, five(19.5, 27, 36, 46, 63)},
                 {"United Kingdom", kWire, 70, 2, "C", kRead, five(20, 27, 37, 47, 64)}});
}

// The lower of two sets of flexible cords while no edition is named (1.5 and 2.5 mm2 read, the
// others from memory, so the whole is); rubber 4F1A and 4F2A read.
TEST(RulesTables, HaveTheCordsOfIec) {
  for (const char* region : {"Europe", "United Kingdom"}) {
    expectColumns(
        {{region,
          kCord,
          0,
          2,
          "",
          kMemory,
          {{"0.75 mm2", 6}, {"1 mm2", 10}, {"1.5 mm2", 15}, {"2.5 mm2", 20}}},
         {region, kCord, 60, 2, "", kRead, {{"4 mm2", 30}, {"6 mm2", 39}, {"10 mm2", 51}}},
         {region, kCord, 90, 2, "", kRead, {{"4 mm2", 42}, {"6 mm2", 55}, {"10 mm2", 76}}}});
    const auto& drum = rulesOf(region)->drum;
    ASSERT_TRUE(drum);
    EXPECT_EQ(drum->layers, (std::vector<double>{0.85, 0.65, 0.45, 0.35}));  // read
    EXPECT_EQ(drum->cite.status, kRead);
  }
}

// mV per ampere and metre, both conductors: flexes of BS 7671 4F3B read (6 and 10 mm2 of 4F1B),
// the fixed column from memory but for 10 mm2.
TEST(RulesTables, HaveTheVoltageDropsOfBs7671) {
  for (const auto& [size, milliohm] :
       {std::pair{"1.5 mm2", 29.0}, std::pair{"2.5 mm2", 18.0}, std::pair{"4 mm2", 11.0},
        std::pair{"6 mm2", 7.3}, std::pair{"10 mm2", 4.4}}) {
    const Found found = rowOf("United Kingdom", kWire, 70, 2, "C", size);
    ASSERT_TRUE(found.row && found.row->loopAtWork) << size;
    EXPECT_WITHIN(*found.row->loopAtWork, ohmsPerMetre(1e-3 * milliohm), ohmsPerMetre(1e-9));
  }
  for (const auto& [size, milliohm] : {std::pair{"1 mm2", 46.0}, std::pair{"1.5 mm2", 32.0},
                                       std::pair{"2.5 mm2", 19.0}, std::pair{"4 mm2", 12.0}}) {
    const Found found = rowOf("United Kingdom", kCord, 0, 2, "", size);
    ASSERT_TRUE(found.row && found.row->loopAtWork) << size;
    EXPECT_WITHIN(*found.row->loopAtWork, ohmsPerMetre(1e-3 * milliohm), ohmsPerMetre(1e-9));
  }
  for (const auto& [size, milliohm] : {std::pair{"6 mm2", 7.8}, std::pair{"10 mm2", 4.6}}) {
    const Found found = rowOf("United Kingdom", kCord, 60, 2, "", size);
    ASSERT_TRUE(found.row && found.row->loopAtWork) << size;
    EXPECT_WITHIN(*found.row->loopAtWork, ohmsPerMetre(1e-3 * milliohm), ohmsPerMetre(1e-9));
  }
}

// NFPA 70 chapter 9 table 8, stranded, read in ohms per 1000 ft: 4.99, 3.14, 1.98, 1.24, 0.778 and
// 0.491, here per km to two decimals.
TEST(RulesTables, HaveTheResistancesOfTheNec) {
  const auto expectResistance = [](const Found& found, double perThousandFeet) {
    ASSERT_TRUE(found.row && found.row->resistance);
    EXPECT_WITHIN(*found.row->resistance, ohmsPerMetre(perThousandFeet / 304.8),
                  ohmsPerMetre(6e-6));
  };
  expectResistance(rowOf("United States", kCord, 0, 2, "", "16 AWG"), 4.99);
  for (const auto& [size, ohm] :
       {std::pair{"14 AWG", 3.14}, std::pair{"12 AWG", 1.98}, std::pair{"10 AWG", 1.24},
        std::pair{"8 AWG", 0.778}, std::pair{"6 AWG", 0.491}}) {
    SCOPED_TRACE(size);
    expectResistance(rowOf("United States", kWire, 60, 3, "", size), ohm);
  }
}

struct SupplyRange {
  const char* region;
  double nominal, lowest, highest;
  Status status;
};
// EN 50160 (read), IEC 60038's tolerance (memory), the United Kingdom's regulations of 1994 (read),
// Australia's (memory), Japan's Enforcement Regulation, Art. 38 (read); ANSI C84.1 as in
// circuit_verdict_test, its 208 V figures from memory and its 240 V ones twice the 120 V ones.
TEST(RulesTables, HaveTheSuppliesRanges) {
  for (const SupplyRange& c :
       {SupplyRange{"Europe", 230, 207, 253, kRead}, SupplyRange{"Europe", 230, 195.5, 253, kRead},
        SupplyRange{"Europe", 400, 360, 440, kMemory},
        SupplyRange{"United Kingdom", 230, 216.2, 253, kRead},
        SupplyRange{"Australia and New Zealand", 230, 216.2, 253, kMemory},
        SupplyRange{"Japan", 100, 95, 107, kRead}, SupplyRange{"Japan", 200, 182, 222, kRead},
        SupplyRange{"United States", 120, 114, 126, kRead},
        SupplyRange{"United States", 240, 228, 252, kComputed},
        SupplyRange{"United States", 240, 220, 254, kComputed},
        SupplyRange{"United States", 208, 197, 218, kMemory},
        SupplyRange{"United States", 208, 191, 220, kMemory},
        SupplyRange{"United States", 208, 187, 218, kMemory},
        SupplyRange{"Canada", 120, 114, 126, kMemory}}) {
    SCOPED_TRACE(std::string(c.region) + ' ' + std::to_string(c.nominal));
    bool found = false;
    for (const VoltageRange* range : rulesOf(c.region)->rangesOf(volts(c.nominal))) {
      const bool same = std::abs(inVolts(range->lowest) - c.lowest) < 1e-9 &&
                        std::abs(inVolts(range->highest) - c.highest) < 1e-9;
      found = found || (same && range->cite.status == c.status);
    }
    EXPECT_TRUE(found);
  }
}

std::vector<double> sizesOf(const char* region) {
  std::vector<double> sizes;
  for (const Current& size : rulesOf(region)->breakers.sizes) sizes.push_back(inAmperes(size));
  return sizes;
}

// 240.6(A) from memory; IEC 60898-1 read. Table 210.21(B)(2): 30 A from memory. 210.21(B)(3) read.
TEST(RulesTables, HaveTheBreakersAndOutletsOfTheCodes) {
  EXPECT_EQ(sizesOf("United States"),
            (std::vector<double>{15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100}));
  EXPECT_EQ(rulesOf("United States")->breakers.cite.status, kMemory);
  EXPECT_EQ(sizesOf("Europe"), (std::vector<double>{6, 10, 13, 16, 20, 25, 32, 40, 50, 63}));
  EXPECT_EQ(rulesOf("Europe")->breakers.cite.status, kRead);
  const std::vector<std::array<double, 3>> most{
      {15, 15, 12}, {20, 15, 12}, {20, 20, 16}, {30, 30, 24}};
  const auto& loads = rulesOf("United States")->outletLoads;
  ASSERT_EQ(loads.size(), most.size());
  for (std::size_t i = 0; i < most.size(); ++i) {
    EXPECT_WITHIN(loads[i].circuit, amperes(most[i][0]), amperes(1e-9));
    EXPECT_WITHIN(loads[i].outlet, amperes(most[i][1]), amperes(1e-9));
    EXPECT_WITHIN(loads[i].most, amperes(most[i][2]), amperes(1e-9));
    EXPECT_EQ(loads[i].cite.status, i == 3 ? kMemory : kRead);
  }
  std::map<double, std::vector<double>> outlets;
  for (const OutletsOnCircuit& row : rulesOf("United States")->outletsOnCircuit)
    for (const Current& outlet : row.outlets)
      outlets[inAmperes(row.circuit)].push_back(inAmperes(outlet));
  EXPECT_EQ(outlets, (std::map<double, std::vector<double>>{
                         {15, {15}}, {20, {15, 20}}, {30, {30}}, {40, {40, 50}}, {50, {50}}}));
}

// Outlets without a neutral, and the legacy ones without an earth (their poles partly from memory).
TEST(RulesTables, HaveTheContactsOfTheOutlets) {
  const CircuitRules& us = *rulesOf("United States");
  for (const char* name : {"6-15", "6-20", "6-30", "6-50", "L6-20", "L6-30"}) {
    EXPECT_FALSE(us.outlet(name)->neutral) << name;
    EXPECT_EQ(us.outlet(name)->earth, Earth::There) << name;
  }
  for (const char* name : {"10-30", "10-50"}) {
    EXPECT_TRUE(us.outlet(name)->neutral) << name;
    EXPECT_EQ(us.outlet(name)->earth, Earth::Missing) << name;
  }
  for (const char* name : {"5-15", "5-20", "14-30", "L14-30", "14-50"}) {
    EXPECT_TRUE(us.outlet(name)->neutral) << name;
    EXPECT_EQ(us.outlet(name)->earth, Earth::There) << name;
  }
  for (const auto& [region, name, ampere] :
       {std::tuple{"United Kingdom", "BS 1363 13 A", 13.0}, std::tuple{"Europe", "E/F", 16.0},
        std::tuple{"Europe", "T13", 10.0}, std::tuple{"Europe", "C13", 10.0},
        std::tuple{"Australia and New Zealand", "AS/NZS 3112 25 A", 25.0}}) {
    EXPECT_WITHIN(rulesOf(region)->outlet(name)->current, amperes(ampere), amperes(1e-9)) << name;
  }
}

// Voltage drop: recommended 3 and 5 % (NEC informational note, read), binding in Canada (CEC 8-102,
// read) and Australia (AS/NZS 3000 on a weak page), 5 % recommended by IEC Annex G and BS 7671.
TEST(RulesTables, BindVoltageDropWhereTheCodesDo) {
  const auto limits = [](const char* region) {
    std::vector<std::pair<double, bool>> all;
    for (const DropLimit& limit : rulesOf(region)->voltageDrop)
      all.push_back({limit.share, limit.binding});
    return all;
  };
  using Limits = std::vector<std::pair<double, bool>>;
  EXPECT_EQ(limits("United States"), (Limits{{0.03, false}, {0.05, false}}));
  EXPECT_EQ(limits("Canada"), (Limits{{0.03, true}, {0.05, true}}));
  EXPECT_EQ(limits("Europe"), (Limits{{0.05, false}}));
  EXPECT_EQ(limits("United Kingdom"), (Limits{{0.05, false}}));
  EXPECT_EQ(limits("Australia and New Zealand"), (Limits{{0.05, true}}));
}

// Moritz & Henriques 1947 as tabled on an industry page (read): the rows that S4 does not name.
TEST(ScaldAt, HasEveryRowOfItsTable) {
  for (const auto& [at, second, third] :
       {std::tuple{45.0, 7200.0, 10800.0}, std::tuple{47.0, 1200.0, 2700.0},
        std::tuple{48.0, 900.0, 1200.0}, std::tuple{51.0, 120.0, 252.0}}) {
    SCOPED_TRACE(at);
    ASSERT_TRUE(scaldAt(celsius(at)));
    EXPECT_WITHIN(scaldAt(celsius(at))->secondDegree, seconds(second), seconds(1e-9));
    EXPECT_WITHIN(scaldAt(celsius(at))->thirdDegree, seconds(third), seconds(1e-9));
  }
}

// Eurostat, release of 29 October 2025 (read): households, first half of 2025, in EUR per 100 kWh.
TEST(BundledTariffs, HaveEurostatsAverages) {
  std::map<std::string, double> prices;
  for (const BundledTariff& one : bundledTariffs())
    prices[one.tariff.name] = one.tariff.perKilowattHour;
  EXPECT_NEAR(prices["European Union average 2025"], 0.2872, 1e-12);
  EXPECT_NEAR(prices["Germany average 2025"], 0.3835, 1e-12);
}

}  // namespace
