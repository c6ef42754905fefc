// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/priors.hpp"

#include "physics/vessel.hpp"

namespace rigs {
namespace {

using namespace physics;

// Below it an open surface evaporated a quarter less than Shah's law in the measured mugs and pans
// of tests/physics/small_vessels_test.cpp.
constexpr Area kSmallMouth = squareMetres(0.07);

bool isBare(const Vessel& vessel) {
  return vessel.side.insulation.empty() && vessel.lid.insulation.empty();
}

}  // namespace

std::array<Prior, kUnknowns> priorsOf(const Rig& rig) {
  const bool small = crossSection(rig.vessel) < kSmallMouth;
  return {Prior{Unknown::ClosedLosses, isBare(rig.vessel) ? 1.05 : 1.0, 0.15,
                Told(TOLD("Prior",
                          "films are good to 13 %, insulation and lid to 20 %, the base to 25 %; "
                          "taps, probes and rims are left out"))},
          Prior{Unknown::OpenSurface, small ? 0.8 : 1.0, 0.2,
                small ? Told(TOLD("Prior",
                                  "the law of the open surface is off by 18 % in the mean over 11 "
                                  "series; in mugs and pans it gives a quarter too much"))
                      : Told(TOLD("Prior",
                                  "the law of the open surface is off by 18 % in the mean over 11 "
                                  "series"))},
          Prior{Unknown::Amount, 1.0, 0.03,
                Told(TOLD("Prior", "marks in a kettle are good to a quarter or half a litre"))},
          Prior{Unknown::Power, 0.975, 0.066,
                Told(TOLD("Prior",
                          "an element may have 10 % less to 5 % more than its plate says, and the "
                          "voltage at the socket 5 % either way"))},
          Prior{Unknown::Room, 0.0, 1.0, Told(TOLD("Prior", "a room is read to about a degree"))}};
}

}  // namespace rigs
