// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/phase.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

#include "tests/support/within.hpp"

namespace {

using namespace physics;

constexpr Temperature kRoom = celsius(20.0);
constexpr Time kTimeConstant = minutes(20.0);

// Newton's cooling, whose times are known: from 90 C the excess halves every tau ln 2. A small
// element keeps on, and vapour leaves, without a share in the cooling.
struct Cooling final : PhaseLaws {
  Temperature eventAt = kelvin(0.0);
  Temperature guardAt = kelvin(0.0);
  double broken = 0.0;
  std::vector<Time> watched;
  std::vector<Temperature> seen;

  Rates ratesAt(Temperature t, Mass) override {
    Rates rates{};
    rates.warming = -(t - kRoom + kelvins(broken)) / kTimeConstant;
    rates.element = watts(500.0);
    rates.steam = watts(50.0);
    rates.flows.vapour = kilogramsPerHour(1.5);
    rates.flows.lost[Path::Side] = watts(200.0);
    return rates;
  }
  double event(const PhaseState& s) const override { return inKelvins(eventAt - temperatureOf(s)); }
  double guard(const PhaseState& s) const override { return inKelvins(guardAt - temperatureOf(s)); }
  double bend(const PhaseState&) const override { return 0.0; }
  void watch(Time sinceBegin, const PhaseState& s) override {
    watched.push_back(sinceBegin);
    seen.push_back(temperatureOf(s));
  }
};

PhaseState hot() {
  PhaseState start{};
  start[kTemperature] = inKelvin(celsius(90.0));
  start[kWater] = 30.0;
  return start;
}

PhaseSpan span(Time longest, Time watchEvery = seconds(0.0)) {
  return {
      .longest = longest, .firstStep = minutes(5.0), .watchEvery = watchEvery, .tolerance = 1e-9};
}

Time untilExcessIs(double share) { return -std::log(share) * kTimeConstant; }

TEST(IntegratingAPhase, FindsWhenACoolingBodyPassesATemperature) {
  Cooling laws;
  laws.eventAt = celsius(55.0);
  const PhaseResult result = integratePhase(hot(), span(hours(5.0)), laws);
  EXPECT_EQ(result.ended, PhaseEnd::Event);
  EXPECT_WITHIN(result.lasted, untilExcessIs(0.5), seconds(1e-4));
  EXPECT_WITHIN(temperatureOf(result.state), celsius(55.0), kelvins(1e-9));
}

TEST(IntegratingAPhase, StopsAtWhicheverOfGuardAndEventComesFirst) {
  Cooling laws;
  laws.guardAt = celsius(60.0);
  laws.eventAt = celsius(59.999);
  const PhaseResult guarded = integratePhase(hot(), span(hours(5.0)), laws);
  EXPECT_EQ(guarded.ended, PhaseEnd::Guard);
  EXPECT_WITHIN(guarded.lasted, untilExcessIs(40.0 / 70.0), seconds(1e-4));

  laws.eventAt = celsius(60.001);
  EXPECT_EQ(integratePhase(hot(), span(hours(5.0)), laws).ended, PhaseEnd::Event);
  laws.eventAt = laws.guardAt;
  EXPECT_EQ(integratePhase(hot(), span(hours(5.0)), laws).ended, PhaseEnd::Event);
}

TEST(IntegratingAPhase, RunsItsTimeOutAndKeepsAccounts) {
  Cooling laws;
  const PhaseResult result = integratePhase(hot(), span(hours(2.0)), laws);
  EXPECT_EQ(result.ended, PhaseEnd::Elapsed);
  EXPECT_EQ(result.lasted, hours(2.0));
  EXPECT_WITHIN(temperatureOf(result.state), kRoom + std::exp(-6.0) * kelvins(70.0), kelvins(1e-5));
  EXPECT_WITHIN(waterOf(result.state), kilograms(27.0), kilograms(1e-9));
  EXPECT_WITHIN(megajoules(result.state[kElement]), kilowattHours(1.0), joules(1e-3));
  EXPECT_WITHIN(megajoules(result.state[kSteam]), kilowattHours(0.1), joules(1e-3));
  EXPECT_WITHIN(megajoules(result.state[kFirstPath]), kilowattHours(0.4), joules(1e-3));
  EXPECT_EQ(result.state[kFirstPath + 1], 0.0);
}

TEST(IntegratingAPhase, WatchesAtEqualTimesAndAtTheEnd) {
  Cooling laws;
  const PhaseResult result = integratePhase(hot(), span(minutes(50.0), minutes(20.0)), laws);
  ASSERT_EQ(laws.watched,
            (std::vector<Time>{seconds(0.0), minutes(20.0), minutes(40.0), minutes(50.0)}));
  for (std::size_t i = 0; i < laws.seen.size(); ++i) {
    const double share = std::exp(-(laws.watched[i] / kTimeConstant));
    EXPECT_WITHIN(laws.seen[i], kRoom + share * kelvins(70.0), kelvins(1e-5));
  }
  EXPECT_EQ(laws.seen.back(), temperatureOf(result.state));
}

TEST(IntegratingAPhase, EndsAtOnceWhereThereIsNothingToDo) {
  Cooling laws;
  EXPECT_EQ(integratePhase(hot(), span(seconds(0.0)), laws).ended, PhaseEnd::Elapsed);
  laws.eventAt = celsius(90.0);
  EXPECT_EQ(integratePhase(hot(), span(hours(1.0)), laws).ended, PhaseEnd::Event);
  laws.guardAt = celsius(95.0);
  const PhaseResult result = integratePhase(hot(), span(hours(1.0), minutes(1.0)), laws);
  EXPECT_EQ(result.ended, PhaseEnd::Guard);
  EXPECT_EQ(result.lasted, seconds(0.0));
  EXPECT_EQ(result.state, hot());
  EXPECT_TRUE(laws.watched.empty());
}

TEST(IntegratingAPhase, SaysIfALawGivesNoNumber) {
  Cooling laws;
  laws.broken = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THROW(integratePhase(hot(), span(hours(1.0)), laws), std::runtime_error);
}

}  // namespace
