// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/priors.hpp"

#include <cmath>

#include "physics/vessel.hpp"

namespace rigs {
namespace {

using namespace physics;

// Below it an open surface evaporated a quarter less than Shah's law in the measured mugs and pans
// of tests/physics/small_vessels_test.cpp.
constexpr Area kSmallMouth = squareMetres(0.07);

// Shares of a kettle's loss at 66 C by how good each law is: 10 % if they are off independently, 16
// to 17 % if together (docs/physics.md). What is left out, and a film that is the lowest of six
// laws, make a bare kettle lose rather more than computed than less.
// Own choice: what another jacket may change beside what it is computed to.
constexpr double kOtherJacket = 0.15;

std::string_view dayOf(const Measured& measured) {
  return measured.on.empty() ? std::string_view("–") : std::string_view(measured.on);
}

// The factor itself is in the rig; of it nothing is left to one side.
Prior measuredLosses(const RigPlan& rig, double spread) {
  const Verbatim day{std::string(dayOf(*rig.measured))};
  if (rig.worn() == rig.measured->jacket)
    return {Unknown::ClosedLosses, 1.0, spread,
            Told(TOLD("Prior", "your own readings (%1) told its losses"), day)};
  return {
      Unknown::ClosedLosses, 1.0, std::hypot(spread, kOtherJacket),
      Told(TOLD("Prior", "your own readings (%1) told its losses, but it wore another jacket then"),
           day)};
}

Prior closedLosses(const RigPlan& rig) {
  if (rig.measured && rig.measured->losses) return measuredLosses(rig, *rig.measured->losses);
  const Vessel& vessel = rig.rig.vessel;
  const bool isBare = vessel.side.insulation.empty();
  // A stated factor has it already.
  const bool losesRatherMore =
      isBare && vessel.lid.insulation.empty() && !rig.written.has("/loss_factor");
  const double median = losesRatherMore ? 1.05 : 1.0;
  // Own choice: from bright to dull the side loses up to 1.9 times as much.
  if (isBare && rig.finishIsUsual)
    return {Unknown::ClosedLosses, median, 0.22,
            Told(TOLD("Prior",
                      "nobody stated how the kettle looks, and dull metal loses up to 1.9 times as "
                      "much as bright; films, lid and base are good to 13 to 25 % besides"))};
  return {Unknown::ClosedLosses, median, 0.15,
          Told(TOLD("Prior",
                    "films are good to 13 %, insulation and lid to 20 %, the base to 25 %; taps, "
                    "probes and rims are left out"))};
}

Prior openSurface(const RigPlan& rig) {
  if (rig.measured && rig.measured->surface)
    return {Unknown::OpenSurface, 1.0, *rig.measured->surface,
            Told(TOLD("Prior", "your own readings (%1) told its evaporation"),
                 Verbatim{std::string(dayOf(*rig.measured))})};
  if (crossSection(rig.rig.vessel) < kSmallMouth && !rig.written.has("/evaporation_factor"))
    return {Unknown::OpenSurface, 0.8, 0.2,
            Told(TOLD("Prior",
                      "the law of the open surface is off by 18 % in the mean over 11 series; in "
                      "mugs and pans it gives a quarter too much"))};
  return {
      Unknown::OpenSurface, 1.0, 0.2,
      Told(TOLD("Prior", "the law of the open surface is off by 18 % in the mean over 11 series"))};
}

// Without a stated gap: as far as one measured pot leaves it open, at two standard deviations. A
// stated one is own choice.
Prior rimGap(const RigPlan& rig) {
  static_assert(kLoosestRimGap / kRimGap > 2.4 && kLoosestRimGap / kRimGap < 2.6);
  if (rig.written.has("/lid/gap"))
    return {Unknown::RimGap, 1.0, 0.2,
            Told(TOLD("Prior", "a lid does not lie on its rim twice in the same way"))};
  return {Unknown::RimGap, 1.0, 0.45,
          Told(TOLD("Prior",
                    "nobody stated how the lid fits; from 1 to 5 % of the mouth may be open round "
                    "a shut one"))};
}

}  // namespace

double Prior::at(double deviations) const {
  if (isOffset(what)) return median + spread * deviations;
  return median * std::exp(spread * deviations);
}

Priors priorsOf(const RigPlan& rig) {
  return {closedLosses(rig), openSurface(rig),
          // Of about 28 L.
          Prior{Unknown::Amount, 1.0, 0.03,
                Told(TOLD("Prior", "marks in a kettle are good to a quarter or half a litre"))},
          // IEC 60335-1, 10.1, from memory, as uniform: 4.3 %. The voltage at the socket within 5 %
          // in 19 of 20 houses, own choice within the 10 % that EN 50160 allows: 5 % of the power.
          Prior{Unknown::Power, 0.975, 0.066,
                Told(TOLD("Prior",
                          "an element may have 10 % less to 5 % more than its plate says, and the "
                          "voltage at the socket 5 % either way"))},
          Prior{Unknown::Room, 0.0, 1.0, Told(TOLD("Prior", "a room is read to about a degree"))},
          // Own choice.
          Prior{Unknown::Water, 0.0, 1.0,
                Told(TOLD("Prior", "tap water is read to about a degree, if at all"))},
          rimGap(rig),
          // Estimate: from 0.65 to 1 L/kg where 0.8 is planned, at two standard deviations.
          Prior{Unknown::Absorption, 1.0, 0.1,
                Told(TOLD("Prior",
                          "grain keeps a fifth more or less wort, by its crush and by how long it "
                          "drips"))}};
}

}  // namespace rigs
