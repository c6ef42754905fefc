// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/read_setting.hpp"

#include <utility>

#include "physics/brewday.hpp"
#include "rigs/answers/begins.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {

Plan begunToBeRead(const Plan& plan, std::size_t rig, Problems& problems) {
  Plan begun = asBegun(plan, rig);
  if (!plan.ready) return begun;
  if (const auto start = begun.start()) {
    begun.startOfDay = clockOfDay(*start);
    return begun;
  }
  problems.push_back(
      {Severity::Error, "/ready",
       advised(Told(TOLD("Readings",
                         "%1 never comes to what is to be ready, so nobody knows when the "
                         "day of these readings began"),
                    Quoted{plan.rigs[rig].name}),
               withExample(Told(TOLD("Readings", "state when it began in its place")),
                           Verbatim{R"("day_starts": "08:00")"}))});
  return begun;
}

readings::Setting settingOf(const Plan& plan, std::size_t rig, std::string name) {
  return {.name = std::move(name),
          .startOfDay = plan.startOfDay,
          .boiling = physics::simulate(plan.rigs[rig].rig, plan.batch, plan.place,
                                       {.relativeTolerance = 1e-6, .leastForAnyPower = false})
                         .boilingPoint};
}

}  // namespace rigs
