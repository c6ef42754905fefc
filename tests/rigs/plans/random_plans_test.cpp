// SPDX-License-Identifier: GPL-3.0-or-later
// One and the same plan, written by someone with metric tools and by someone with US customary
// ones, is one and the same day.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <string>

#include "rigs/plans/plan.hpp"

namespace rigs {
namespace {

using Document = nlohmann::ordered_json;

double between(double low, double high) {
  return low + (high - low) * static_cast<double>(*rc::gen::inRange(0, 1'000'001)) * 1e-6;
}
bool coin() { return between(0.0, 1.0) < 0.5; }

std::string written(double number, const char* unit) {
  char text[64];
  std::snprintf(text, sizeof text, "%.15g %s", number, unit);
  return text;
}

// Writes quantities into two documents at once. Factors: NIST SP 811 (2008), appendix B; all but
// the International Table Btu's are exact by definition, and so is that (1055.05585262 J).
class TwoDocuments {
 public:
  Document metric, customary;

  void litres(const char* at, double n) { both(at, n, "L", n / 3.785411784, "gal"); }
  void kilograms(const char* at, double n) { both(at, n, "kg", n / 0.45359237, "lb"); }
  void millimetres(const char* at, double n) { both(at, n, "mm", n / 25.4, "in"); }
  void metres(const char* at, double n) { both(at, n, "m", n / 0.3048, "ft"); }
  void celsius(const char* at, double n) { both(at, n, "°C", 1.8 * n + 32.0, "°F"); }
  void litresPerKilogram(const char* at, double n) {
    both(at, n, "L/kg", n / 0.946352946 * 0.45359237, "qt/lb");
  }
  void metresPerSecond(const char* at, double n) {
    both(at, n, "m/s", n * 60.0 / 0.3048, "ft/min");
  }
  void insulance(const char* at, double n) {
    const double one = 0.3048 * 0.3048 * 3600.0 / 1.8 / 1055.05585262;  // m2 K/W
    both(at, n, "m2*K/W", n / one, "ft2*h*degF/Btu");
  }
  void same(const char* at, const Document& value) {
    metric[Document::json_pointer(at)] = value;
    customary[Document::json_pointer(at)] = value;
  }

 private:
  void both(const char* at, double si, const char* siUnit, double us, const char* usUnit) {
    metric[Document::json_pointer(at)] = written(si, siUnit);
    customary[Document::json_pointer(at)] = written(us, usUnit);
  }
};

TwoDocuments somePlan() {
  TwoDocuments d;
  d.same("/format", {{"name", "heat-ledger-plan"}, {"version", 1}});
  d.metres("/place/altitude", between(-100.0, 3000.0));
  d.celsius("/place/room", between(0.0, 40.0));
  d.celsius("/place/water", between(4.0, 25.0));
  if (coin()) d.metresPerSecond("/place/draught", between(0.0, 0.4));
  const double diameter = between(250.0, 450.0);
  const double height = between(250.0, 500.0);
  const double holds = std::pow(diameter * 1e-2, 2) * 0.785398 * height * 1e-2;  // L
  const double size = between(0.35, 0.6) * holds;
  d.litres(coin() ? "/batch/wort" : "/batch/water", size);
  if (coin()) {
    d.kilograms("/batch/grain/mass", size / between(4.0, 7.0));
    d.celsius("/batch/grain/temperature", between(5.0, 30.0));
    d.litresPerKilogram("/batch/grain/absorption", between(0.5, 1.1));
    d.celsius("/batch/mash/rests/0/temperature", between(60.0, 70.0));
    d.same("/batch/mash/rests/0/time", "45 min");
  }
  d.same("/batch/boil", "30 min");
  for (const std::string rig : {"/rigs/0", "/rigs/1"}) {
    const auto at = [&](const char* key) { return rig + key; };
    d.same(at("/name").c_str(), rig);
    d.same(at("/vessel/material").c_str(), "stainless steel");
    d.same(at("/vessel/finish").c_str(), "brushed");
    d.millimetres(at("/vessel/inner_diameter").c_str(), diameter);
    d.millimetres(at("/vessel/height").c_str(), height);
    d.millimetres(at("/vessel/wall").c_str(), between(0.6, 1.5));
    d.kilograms(at("/vessel/mass").c_str(), between(2.0, 9.0));
    d.same(at("/stands_on/kind").c_str(), "legs");
    d.same(at("/element/power").c_str(), written(between(1500.0, 6000.0), "W"));
    d.same(at("/element/rated_voltage").c_str(), "240 V");
    d.millimetres(at("/element/top_height").c_str(), between(10.0, 40.0));
    d.same(at("/supply").c_str(), {{"voltage", "240 V"}, {"current", "30 A"}});
    d.metres(at("/cable/length").c_str(), between(1.0, 20.0));
    d.same(at("/cable/conductor").c_str(), "10 AWG");
    if (coin()) {
      d.same(at("/jacket/side/0/material").c_str(), "cork");
      d.millimetres(at("/jacket/side/0/thickness").c_str(), between(3.0, 40.0));
    } else {
      d.insulance(at("/jacket/side/0/R").c_str(), between(0.05, 1.0));
    }
  }
  return d;
}

std::optional<Plan> read(const Document& document) {
  Problems problems;
  auto plan = readPlan(document.dump(), "/nonexistent", problems);
  for (const Problem& problem : problems)
    RC_LOG() << problem.where << ": " << inEnglish(problem.message);
  return plan;
}

// The documents agree to 15 digits and the integrator to 1e-9 of each step; a ledger must close to
// 1e-6 of what moved, and two days that differ by less than that are the same.
constexpr double kSame = 1e-6;
bool same(double a, double b) { return std::abs(a - b) <= kSame * std::max(std::abs(a), 1.0); }

}  // namespace

RC_GTEST_PROP(AnyPlan, IsTheSameDayInMetricAndInCustomaryUnits, ()) {
  using namespace physics;
  const TwoDocuments documents = somePlan();
  const auto si = read(documents.metric);
  const auto us = read(documents.customary);
  RC_ASSERT(si && us);
  for (std::size_t i = 0; i < si->rigs.size(); ++i) {
    const BrewDay a = simulate(si->rigs[i].rig, si->batch, si->place);
    const BrewDay b = simulate(us->rigs[i].rig, us->batch, us->place);
    RC_ASSERT(a.outcome == b.outcome);
    RC_ASSERT(a.stages.size() == b.stages.size());
    RC_ASSERT(same(inJoules(a.total.fromWall()), inJoules(b.total.fromWall())));
    RC_ASSERT(same(inJoules(a.total.lost.total()), inJoules(b.total.lost.total())));
    RC_ASSERT(same(inSeconds(a.duration()), inSeconds(b.duration())));
    RC_ASSERT(same(inKelvin(a.strike), inKelvin(b.strike)));
    RC_ASSERT(same(inLitres(a.resultCold), inLitres(b.resultCold)));
    RC_ASSERT(same(a.resultGravity, b.resultGravity));
    RC_ASSERT(a.boil.has_value() == b.boil.has_value());
    if (a.boil) RC_ASSERT(same(inWatts(a.boil->net), inWatts(b.boil->net)));
  }
}

}  // namespace rigs
