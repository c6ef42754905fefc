// SPDX-License-Identifier: GPL-3.0-or-later
// Loads and circuits to be judged.
#pragma once

#include <gtest/gtest.h>

#include "rigs/circuits/verdict.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace test_support {

using namespace physics;
using namespace rigs;

inline constexpr auto kWire = CableUse::BuildingWire;
inline constexpr auto kCord = CableUse::Cord;

inline const CircuitRules& us() { return *rulesOf("United States"); }
inline const CircuitRules& uk() { return *rulesOf("United Kingdom"); }

inline Duty fullFor(Time t) {
  return {{{.begin = seconds(0.0), .end = t, .share = 1.0, .enabled = true}}};
}
// Full current for an hour, then a hold.
inline Duty heldFor(Time t) {
  return {{{.begin = seconds(0.0), .end = hours(0.8), .share = 1.0, .enabled = true},
           {.begin = hours(0.8), .end = t, .share = 0.08, .enabled = true}}};
}

inline JudgedLoad load(double watt, double ratedVolt, double volt, double ampere, const Duty& duty,
                       double loopOhm = 0.0) {
  return {.element = {.rating = watts(watt), .ratedAt = volts(ratedVolt), .topHeight = metres(0.0)},
          .supply = {.nominal = volts(volt), .rating = amperes(ampere), .cableLoop = ohms(loopOhm)},
          .duty = duty};
}

inline CircuitDetails on(const char* outlet, Feeds feeds) {
  CircuitDetails details;
  details.outlet = outlet;
  details.feeds = feeds;
  return details;
}

inline const Finding* find(const CircuitVerdict& verdict, RuleKind kind) {
  for (const Finding& finding : verdict.findings)
    if (finding.kind == kind) return &finding;
  return nullptr;
}

inline Fit fitOf(const CircuitVerdict& verdict, RuleKind kind) {
  const Finding* found = find(verdict, kind);
  EXPECT_TRUE(found) << "no such finding";
  return found ? found->fit : Fit::CannotSay;
}

inline CircuitDetails wired(CableUse use, const char* size, const char* insulation = "",
                            double ambient = 30.0, int loaded = 2) {
  CircuitDetails details;
  details.feeds = Feeds::OneOutlet;
  details.cable = CableAsked{.use = use, .area = *parseQuantity<Area>(size), .loaded = loaded};
  details.cable->ambient = celsius(ambient);
  if (*insulation != '\0') details.cable->insulation = *parseQuantity<Temperature>(insulation);
  return details;
}

}  // namespace test_support
