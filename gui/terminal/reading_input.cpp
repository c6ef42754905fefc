// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/reading_input.hpp"

#include "physics/brewday.hpp"
#include "rigs/answers/begins.hpp"
#include "rigs/documents/problem_words.hpp"
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

void beginAsSolved(PlanInput& input, std::size_t rig) {
  if (!input.plan || !input.plan->ready) return;
  input.plan = rigs::asBegun(*input.plan, rig);
  if (const auto start = input.plan->start()) {
    input.plan->startOfDay = rigs::clockOfDay(*start);
    return;
  }
  input.ofDocument.push_back(
      {rigs::Severity::Error, "/ready",
       rigs::advised(
           rigs::Told(TOLD("Terminal",
                           "%1 never comes to what is to be ready, so nobody knows when the "
                           "day of these readings began"),
                      rigs::Quoted{input.plan->rigs[rig].name}),
           rigs::withExample(rigs::Told(TOLD("Terminal", "state when it began in its place")),
                             rigs::Verbatim{R"("day_starts": "08:00")"}))});
}

}  // namespace gui
