// SPDX-License-Identifier: GPL-3.0-or-later
// Hot wort in its kettle cooling down after the boil: by a coil, or by the room alone.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "physics/heat_loss.hpp"
#include "physics/units.hpp"
#include "physics/vessel.hpp"

namespace physics {

// What stands in the kettle. Its wort is of one temperature all through.
struct HotWort {
  Mass water, extract;
  Temperature at;

  double strength() const;  // extract over wort, mass fraction
  Volume volume() const;
  Mass mass() const { return water + extract; }
};
// As measured cold: litres at 20 C with their share of extract, 0-0.7 by mass.
HotWort hotWort(Volume atTwenty, double extract, Temperature at);

// The kettle it cools in, and the room that takes what the kettle loses meanwhile. `open` is the
// share of the mouth without a lid.
struct ChillingKettle {
  Vessel vessel;
  Surroundings room;
  double open = 1.0;
  double evaporationFactor = 1.0;
  double lossFactor = 1.0;

  // The shell cools with the wort, all of it.
  HeatCapacity shell() const { return vessel.mass * vessel.specificHeat; }
};

struct ChillPoint {
  Time time;
  Temperature wort;
};
// Heat given up by wort and kettle, and where it went.
struct ChillHeat {
  Energy givenUp{};
  Energy taken{};    // by the cooling water
  Energy lost{};     // by the kettle to the room; negative where the room warmed it
  Energy carried{};  // as liquid's warmth with what evaporated
  Energy residual() const { return givenUp - taken - lost - carried; }
};
struct ChillCourse {
  std::vector<ChillPoint> curve;             // time ascending, from 0
  std::vector<std::optional<Time>> passed;   // of each goal, empty where it never gets there
  std::optional<Temperature> comesToRestAt;  // where a goal was not reached: about
  HotWort last;
  ChillHeat heat;

  Time lasted() const { return curve.back().time; }
};

// What takes heat beside the kettle's own losses, at a temperature of the wort.
using ChillSink = std::function<Power(Temperature)>;

// Down to each goal in turn, hottest first; a goal at or above the start is passed at 0. `coldest`
// is what the sink itself cannot go below, the goals at least 0.1 K above it; asserted.
//
// Integrated over the falling temperature: dt = -C dT/(sink + losses), Runge-Kutta of fourth order
// over the logarithm of T - coldest, within 1e-6 of the time. The kettle's losses are those of the
// day, walls quasi-steady; what evaporates leaves. Wort without a stirrer is not of one
// temperature: the top cools last, and this tells of the mean.
ChillCourse chill(const HotWort& wort, const ChillingKettle& kettle, const ChillSink& sink,
                  Temperature coldest, const std::vector<Temperature>& goals);
// Nothing but the kettle's losses for a time.
ChillCourse standHot(const HotWort& wort, const ChillingKettle& kettle, Time time);

// How near to what cools it wort can be brought: closer than this the last degrees take longer than
// all before. Common practice, no source.
inline constexpr TemperatureDifference kNearestToCoolant = kelvins(2.0);

}  // namespace physics
