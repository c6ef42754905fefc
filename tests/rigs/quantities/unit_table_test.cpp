// SPDX-License-Identifier: GPL-3.0-or-later
// Our units against an independent table of units, UDUNITS-2.
#include "rigs/quantities/unit_table.hpp"

#include <gtest/gtest.h>
#include <udunits2.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <string>

#include "rigs/quantities/unit_expression.hpp"

namespace {

using namespace rigs;

class Oracle {
 public:
  Oracle() {
    ut_set_error_message_handler(ut_ignore);
    system_.reset(ut_read_xml(nullptr));
  }

  // Numerator of the unit in SI, and the SI number of zero on its scale. NaN if not convertible.
  std::pair<double, double> meaning(const std::string& unit, const Dimension& dimension) const {
    const auto power = [](const char* base, int n) { return base + std::to_string(n); };
    const std::string coherent = power("m^", dimension.length) + power(" kg^", dimension.mass) +
                                 power(" s^", dimension.time) +
                                 power(" K^", dimension.temperature) +
                                 power(" A^", dimension.current);
    const Unit theirs = parsed(unit);
    const Unit si = parsed(coherent);
    if (!theirs || !si) return {NAN, NAN};
    const std::unique_ptr<cv_converter, Free> to(ut_get_converter(theirs.get(), si.get()));
    if (!to) return {NAN, NAN};
    const double zero = cv_convert_double(to.get(), 0.0);
    return {cv_convert_double(to.get(), 1.0) - zero, zero};
  }

 private:
  struct Free {
    void operator()(ut_system* p) const { ut_free_system(p); }
    void operator()(ut_unit* p) const { ut_free(p); }
    void operator()(cv_converter* p) const { cv_free(p); }
  };
  using Unit = std::unique_ptr<ut_unit, Free>;
  Unit parsed(const std::string& text) const {
    return Unit(ut_parse(system_.get(), text.c_str(), UT_ASCII));
  }
  std::unique_ptr<ut_system, Free> system_;
};

// Where their spelling differs. Their gallon and its parts are rounded to 3.785412e-3 m3 and
// their horsepower to 745.7 W, so these are built from inches and pounds-force here.
std::string inTheirWords(const std::string& ours) {
  static const std::map<std::string, std::string> words{
      {"C", "degC"},
      {"F", "degF"},
      {"lbs", "lb"},
      {"oz", "lb/16"},
      {"ounce", "lb/16"},
      {"ounces", "lb/16"},
      {"mins", "min"},
      {"hrs", "h"},
      {"Wh", "W.h"},
      {"kWh", "kW.h"},
      {"MWh", "MW.h"},
      {"hp", "550 foot.pound_force/second"},
      {"horsepower", "550 foot.pound_force/second"},
      {"mph", "mile/hour"},
  };
  if (const auto at = words.find(ours); at != words.end()) return at->second;

  const auto has = [&ours](const char* part) { return ours.find(part) != std::string::npos; };
  const bool imperial = ours.starts_with("imp") || ours.starts_with("UK");
  const std::string gallon = imperial ? "Canadian_liquid_gallon" : "231 inch^3";
  if (has("fl") && (has("oz") || has("ounce"))) return gallon + (imperial ? "/160" : "/128");
  if (has("gal")) return gallon;
  if (has("quart") || has("qt")) return gallon + "/4";
  if (has("pint") || has("pt")) return gallon + "/8";
  if (has("cup")) return gallon + "/16";
  const bool square = ours.starts_with("sq");
  if (square || ours.starts_with("cu ") || ours == "cuft" || ours.starts_with("cubic")) {
    const std::string side = has("in")                          ? "inch"
                             : has("met") || ours.back() == 'm' ? "metre"
                                                                : "foot";
    return side + (square ? "^2" : "^3");
  }
  return ours;
}

TEST(UnitTable, AgreesWithAnIndependentTable) {
  const Oracle oracle;
  ASSERT_GT(unitSpellings().size(), 200u);
  for (const UnitSpelling& ours : unitSpellings()) {
    SCOPED_TRACE(ours.spelling);
    const auto [factor, zero] = oracle.meaning(inTheirWords(ours.spelling), ours.unit.dimension);
    // Their table holds up to 14 digits; sums of rounding stay below 1e-12.
    EXPECT_NEAR(ours.unit.numerator / ours.unit.denominator / factor, 1.0, 1e-12);
    const double ourZero = ours.unit.pointShift * ours.unit.numerator / ours.unit.denominator;
    EXPECT_NEAR(ourZero, zero, 1e-12 * std::abs(zero));
  }
}

// The rounded values, so that nobody takes the composed ones above for ours read back.
TEST(UnitTable, IsNearTheRoundedGallonAndHorsepower) {
  const Oracle oracle;
  const auto ratio = [&](const char* ours, const char* theirs) {
    const auto& all = unitSpellings();
    const auto at = std::find_if(all.begin(), all.end(),
                                 [&](const UnitSpelling& s) { return s.spelling == ours; });
    return at->unit.numerator / at->unit.denominator /
           oracle.meaning(theirs, at->unit.dimension).first;
  };
  EXPECT_NEAR(ratio("gal", "US_liquid_gallon"), 1.0, 1e-7);
  EXPECT_NEAR(ratio("qt", "US_liquid_quart"), 1.0, 1e-7);
  EXPECT_NEAR(ratio("pt", "US_liquid_pint"), 1.0, 1e-7);
  EXPECT_NEAR(ratio("fl oz", "US_fluid_ounce"), 1.0, 1e-7);
  EXPECT_NEAR(ratio("hp", "horsepower"), 1.0, 1e-7);
}

TEST(UnitTable, JoinsUnitsAsTheIndependentTableDoes) {
  const Oracle oracle;
  struct Row {
    const char* ours;
    const char* theirs;
  };
  for (const Row& row :
       {Row{"W/(m2 K)", "W.m-2.K-1"}, Row{"W/m2/K", "W.m-2.K-1"},
        Row{"ft2*h*degF/Btu", "ft2.h.degR/Btu"}, Row{"h·ft²·°F/Btu", "ft2.h.degR/Btu"},
        Row{"Btu/(h ft F)", "Btu.h-1.ft-1.degR-1"}, Row{"kJ/(kg K)", "kJ/kg/K"},
        Row{"mΩ/ft", "milliohm/ft"}, Row{"%/h", "0.01 h-1"}, Row{"lb/(ft² h)", "lb.ft-2.h-1"},
        Row{"°F/min", "degR/min"}, Row{"W m^-1 K^-1", "W.m-1.K-1"},
        Row{"qt/lb", "231 inch^3/4/lb"}}) {
    SCOPED_TRACE(row.ours);
    const UnitExpression ours = readUnitExpression(plainCharacters(row.ours), false);
    EXPECT_FALSE(ours.fault);
    EXPECT_FALSE(ours.single);
    const double factor = oracle.meaning(row.theirs, ours.unit.dimension).first;
    EXPECT_NEAR(ours.unit.numerator / ours.unit.denominator / factor, 1.0, 1e-12);
  }
}

TEST(UnitTable, HasNoSpellingTwice) {
  const auto& all = unitSpellings();
  const auto twice = std::adjacent_find(all.begin(), all.end(), [](const auto& a, const auto& b) {
    return a.spelling == b.spelling;
  });
  EXPECT_TRUE(twice == all.end()) << twice->spelling;
}

}  // namespace
