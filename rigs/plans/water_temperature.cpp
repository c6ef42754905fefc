// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/water_temperature.hpp"

#include <utility>

#include "physics/wort.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {

bool isNoHotterThanBoiling(const JsonCursor& at, physics::Temperature stated,
                           const physics::Place& place, const Template<2>& notPossible,
                           Verbatim example) {
  const physics::Temperature boils = physics::boilingPoint(0.0, place.pressure);
  if (stated <= boils + kSameInWords) return true;
  at.error("temperature", withExample(advised(Told(notPossible, amount(stated), amount(boils)),
                                              Told(TOLD("Problem", "it may be as hot as that"))),
                                      std::move(example)));
  return false;
}

}  // namespace rigs
