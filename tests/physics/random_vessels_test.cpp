// SPDX-License-Identifier: GPL-3.0-or-later
// What the heat losses of any vessel must hold to, asked directly or through remembered tables.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "physics/convection.hpp"
#include "physics/heat_loss.hpp"
#include "physics/water.hpp"
#include "tests/support/random_rigs.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::Case;
using test_support::coin;
using test_support::someCase;
using test_support::someOpening;

// What tabulate() promises of any vessel in any room. Ra grows with the wort's excess, by a power
// between 0 and 1.3 as a skin's share of it changes; six neighbours in a table span 1.5 of its
// parts to either side, at its ends up to 5.
RC_GTEST_PROP(AnyVessel, LosesTheSameByTableAsSolved, ()) {
  const Case c = someCase();
  const Vessel& v = c.rig.vessel;
  const Temperature room = c.place.room;
  const Surroundings around{.air = moistAir(room, c.place.relativeHumidity, c.place.pressure),
                            .draught = c.place.draught};
  const Length fill = between(0.05, 0.95) * v.height;
  HeatLossModel solved(v, c.rig.hose, around, fill, someOpening());
  HeatLossModel tabled = solved;
  tabled.tabulate(celsius(109.0));
  const auto root = [](double x) { return std::sqrt(std::sqrt(x)); };
  const auto part = [&](double excess) {
    if (excess < 0.0) return root(inCelsius(room)) / 28.0;
    if (excess < 4.0) return root(4.0) / 28.0;
    return (root(109.0 - inCelsius(room)) - root(4.0)) / 28.0;
  };
  for (int i = 0; i < 20; ++i) {
    // Every other one near the room or near the water film's ends.
    double at = between(1.0, 105.0);
    if (i % 4 == 1) at = inCelsius(room) + between(-6.0, 10.0);
    if (i % 4 == 3) at = coin() ? between(8.0, 22.0) : between(95.0, 105.0);
    at = std::clamp(at, 1.0, 105.0);
    const Temperature liquid = celsius(at);
    const double excess = std::abs(at - inCelsius(room));
    const HeatFlows a = solved.flows(liquid, fill);
    const HeatFlows b = tabled.flows(liquid, fill);
    const auto skins = solved.skins();
    const auto air = [&](Temperature skin) {
      return dryAir(midpoint(skin, room), c.place.pressure);
    };
    const double reach = 5.0 * part(at - inCelsius(room)) / root(excess);
    const double up = std::pow(1.0 + reach, 5.2);
    const double down = std::pow(std::max(1.0 - reach, 0.0), 5.2);
    const auto besideSeam = [&](double rayleigh, double seam) {
      return rayleigh * down <= seam && seam <= rayleigh * up;
    };
    const bool side = besideSeam(
        verticalWallFilm(skins.side, room, std::max(fill, 0.02 * v.height), air(skins.side))
            .rayleigh,
        1e9);
    // The dry wall's skin lies anywhere between room and wort.
    const bool dry = verticalWallFilm(liquid, room, v.height, air(liquid)).rayleigh * up >= 1e9;
    const bool lid = besideSeam(
        plateFacingUpFilm(skins.lid, room, 0.25 * v.innerDiameter, air(skins.lid)).rayleigh,
        std::pow(3.6, 12.0));
    const auto agree = [&](Path path, bool seam, double balance) {
      const double flow = std::abs(inWatts(a.lost[path]));
      const bool vapour = path == Path::Lid || path == Path::DryWall;
      const double stated = seam ? 1e-3 : at <= 95.0 ? 1e-8 : vapour ? 1e-6 : 5e-8;
      RC_LOG() << static_cast<int>(path) << " at " << at << " C: " << inWatts(a.lost[path])
               << " W solved, " << inWatts(b.lost[path]) << " W tabled, apart "
               << inWatts(b.lost[path] - a.lost[path]) << " W\n";
      // Both have solved their balances only so near, a part of the way from wort to room.
      return std::abs(inWatts(b.lost[path] - a.lost[path])) <=
             flow * (stated + balance / std::max(excess, balance)) + 1e-10;
    };
    RC_ASSERT(agree(Path::Side, side, 1e-9));
    RC_ASSERT(agree(Path::Base, false, 1e-9));
    RC_ASSERT(agree(Path::Hose, false, 1e-9));
    // A headspace's temperature is common to both: either's seam moves it for the other. It is
    // sought to 1e-7 K, which is much of what is left of a small difference.
    const bool differs = liquid - room > kelvins(4.0);
    for (const Path path : {Path::Lid, Path::DryWall}) {
      RC_ASSERT(agree(path, lid || dry, 4e-7) ||
                (!differs && abs(b.lost[path] - a.lost[path]) < watts(1e-5)));
    }
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
  const bool tabled = coin();
  if (tabled) used.tabulate(celsius(109.0));
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
  if (tabled) fresh.tabulate(celsius(109.0));
  const Power again = used.flows(celsius(hot), fill).lost.total();
  const Power once = fresh.flows(celsius(hot), fill).lost.total();
  // Two solutions from different guesses agree as HeatLoss.DoesNotDependOnWhatWasAskedBefore says;
  // so do two tables, which have the same nodes.
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
