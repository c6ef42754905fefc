// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/reading_input.hpp"

#include "physics/brewday.hpp"
#include "rigs/readings/cells.hpp"

namespace gui {

rigs::readings::Corrections correctionsFrom(const ReadingOptions& typed) {
  rigs::readings::Corrections corrections{
      .time = typed.time, .temperature = typed.temperature, .leaveOutBadRows = typed.leaveOut};
  using rigs::readings::Count;
  if (typed.unit) corrections.temperatureUnit = rigs::readings::unitFrom(*typed.unit);
  if (typed.since)
    corrections.count = *typed.since == "s"     ? Count::Seconds
                        : *typed.since == "min" ? Count::Minutes
                                                : Count::Hours;
  if (typed.separator)
    corrections.separator = *typed.separator == "comma"       ? ','
                            : *typed.separator == "semicolon" ? ';'
                            : *typed.separator == "tab"       ? '\t'
                                                              : ' ';
  return corrections;
}

physics::Temperature boilingIn(const rigs::Plan& plan, std::size_t rig) {
  return physics::simulate(plan.rigs[rig].rig, plan.batch, plan.place,
                           {.relativeTolerance = 1e-6, .leastForAnyPower = false})
      .boilingPoint;
}

}  // namespace gui
