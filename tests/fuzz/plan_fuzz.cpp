// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a plan document: a plan, or problems that say where. What was accepted is written in
// US units and read again.
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/fuzz/fuzzed.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view document = fuzz::textOf(data, size);
  rigs::Problems problems;
  // No folder: rigs of the plan can be from the catalogue only.
  const auto plan = rigs::readPlan(document, "/nonexistent", problems);
  fuzz::requireTold(plan.has_value(), problems);
  if (!plan) return 0;
  rigs::Problems again;
  const auto same = rigs::readPlan(document, "/nonexistent", again);
  fuzz::require(same && *same == *plan && again == problems);
  fuzz::require(!rigs::inUsUnits(document).empty());
  return 0;
}
