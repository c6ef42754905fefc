// SPDX-License-Identifier: GPL-3.0-or-later
// What the heat losses of any vessel must hold to.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "physics/convection.hpp"
#include "physics/heat_loss.hpp"
#include "physics/water.hpp"
#include "tests/support/printed_losses.hpp"
#include "tests/support/random_rigs.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::Case;
using test_support::coin;
using test_support::someCase;
using test_support::someOpening;

// Of any vessel in any room, cold and hot, on both sides of every bend.
RC_GTEST_PROP(AnyVessel, LosesWhatThePrintedLawsSay, ()) {
  const Case c = someCase();
  const Vessel& v = c.rig.vessel;
  const Surroundings around{
      .air = moistAir(c.place.room, c.place.relativeHumidity, c.place.pressure),
      .draught = c.place.draught};
  const Length fill = between(0.05, 0.95) * v.height;
  const double open = someOpening();
  HeatLossModel model(v, c.rig.hose, around, fill, open);
  const test_support::PrintedLosses printed(v, c.rig.hose, around, fill, open);
  const double boils = inCelsius(saturationTemperature(c.place.pressure));
  for (int i = 0; i < 6; ++i) {
    double at = between(-19.0, 105.0);
    if (i % 3 == 1) at = inCelsius(c.place.room) + between(-6.0, 10.0);
    if (i % 3 == 2) at = boils + between(-2.0, 1.0);
    const Temperature liquid = celsius(std::clamp(at, -19.0, 105.0));
    const HeatFlows a = printed.flows(liquid, fill);
    const HeatFlows b = model.flows(liquid, fill);
    Power most = watts(0.0);
    for (const Power& p : a.lost.values) most = std::max(most, abs(p));
    for (std::size_t p = 0; p < kPathCount; ++p) {
      RC_LOG() << p << " at " << inCelsius(liquid) << " C: " << inWatts(a.lost.values[p])
               << " W by the printed laws, apart by "
               << inWatts(b.lost.values[p] - a.lost.values[p]) << " W\n";
      RC_ASSERT(abs(b.lost.values[p] - a.lost.values[p]) <= 3e-8 * most + watts(5e-8));
    }
    RC_ASSERT(abs(b.vapour - a.vapour) <= 1e-9 * abs(a.vapour) + kilogramsPerSecond(1e-15));
  }
}

// The headspace's guess continues earlier answers: the same question again, or nearly, or the
// room's own temperature, must not make it divide by nothing.
RC_GTEST_PROP(AnyVessel, AnswersTheSameHoweverOftenItIsAsked, ()) {
  const Case c = someCase();
  const Surroundings room{.air = moistAir(c.place.room, c.place.relativeHumidity, c.place.pressure),
                          .draught = c.place.draught};
  const Length fill = 0.7 * c.rig.vessel.height;
  const double open = coin() ? 0.0 : between(0.0, 0.9);
  HeatLossModel used(c.rig.vessel, c.rig.hose, room, fill, open);
  const double boils = inCelsius(saturationTemperature(c.place.pressure));
  const double hot = between(30.0, 100.0);
  const double first = std::max(inCelsius(c.place.room), 1.0);
  for (int i = 0; i < 60; ++i) {
    double at = hot;
    if (i % 3 == 1) at = hot + (coin() ? 1.0 : -1.0) * std::pow(10.0, between(-14.0, 0.0));
    if (i % 7 == 5) at = coin() ? boils : first;
    RC_ASSERT(std::isfinite(inWatts(used.flows(celsius(at), fill).lost.total())));
  }
  HeatLossModel fresh(c.rig.vessel, c.rig.hose, room, fill, open);
  const Power again = used.flows(celsius(hot), fill).lost.total();
  const Power once = fresh.flows(celsius(hot), fill).lost.total();
  // Two solutions from different guesses agree as HeatLoss.DoesNotDependOnWhatWasAskedBefore says.
  RC_LOG() << inWatts(again) << " W asked again, " << inWatts(once) << " W asked once\n";
  RC_ASSERT(abs(again - once) <= watts(1e-5));
}

// Of a wall twice as high above the same wort the open dry part loses more, and none of it jumps:
// not with the fill, and not as a lid is pushed over the mouth.
RC_GTEST_PROP(AnyVessel, LosesMoreThroughMoreDryWallAndNeverJumps, ()) {
  const Case c = someCase();
  const Vessel& v = c.rig.vessel;
  const Surroundings room{.air = moistAir(c.place.room, c.place.relativeHumidity, c.place.pressure),
                          .draught = c.place.draught};
  const Temperature liquid = celsius(between(std::max(inCelsius(c.place.room), 1.0), 105.0));
  const Length fill = between(0.05, 0.95) * v.height;
  const auto dryWall = [&](Length at, double open) {
    return inWatts(
        HeatLossModel(v, Hose{}, room, fill, open).flows(liquid, at).lost[Path::DryWall]);
  };
  const double here = dryWall(fill, 1.0);
  const double lower = dryWall(0.9 * fill, 1.0);
  RC_LOG() << here << " W, with less wort " << lower << " W\n";
  RC_ASSERT(lower >= here);
  RC_ASSERT(here >= 0.0);
  const Length hair = 1e-9 * v.height;
  RC_ASSERT(std::abs(dryWall(fill - hair, 1.0) - here) <= 1e-6 * (1.0 + here));
  RC_ASSERT(dryWall(v.height - hair, 1.0) <= 1e-4);
  const double ajar = between(0.0, 1.0 - 1e-9);
  const double pushed = dryWall(fill, ajar + 1e-9);
  RC_ASSERT(std::abs(dryWall(fill, ajar) - pushed) <= 1e-5 * (1.0 + pushed));
  RC_ASSERT(std::abs(dryWall(fill, 1.0 - 1e-9) - here) <= 1e-5 * (1.0 + here));
  RC_ASSERT(std::abs(dryWall(fill, 1e-9) - dryWall(fill, 0.0)) <= 1e-5 * (1.0 + here));
}

}  // namespace
}  // namespace physics
