// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/kept.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <utility>
#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/measured_reader.hpp"

namespace rigs {
namespace {

using Values = std::vector<Placed>;

std::string twoDigits(double number) {
  return formatNumber(number, {.significantDigits = 2, .decimals = {}});
}

// The factor that the rig has, and how sure it is with these readings, too.
bool keep(const Learned& learned, Unknown what, double factorNow, const char* factorKey,
          const char* withinKey, Values& values) {
  for (const LearnedUnknown& one : learned.unknowns) {
    if (one.what != what || !one.learned()) continue;
    const double spread = std::log(one.after.high / one.after.low) / (2.0 * kNineInTen);
    values.push_back(
        {factorKey,
         formatNumber(factorNow * one.after.middle, {.significantDigits = 3, .decimals = {}}),
         false});
    const double within = std::clamp(withinOfSpread(spread), 0.01, 1.0);
    values.push_back({withinKey, twoDigits(100.0 * within) + " %"});
    return true;
  }
  return false;
}

void refuse(const Plan& plan, std::size_t rig, const Learned& learned, std::string_view text,
            Problems& problems) {
  const auto say = [&](Told message) {
    problems.push_back({Severity::Error, "--keep", std::move(message)});
  };
  if (isKeptIn(plan.rigs[rig], text))
    say(Told(TOLD("Kept", "these readings are in the plan already, and count once")));
  if (learned.nothing)
    say(Told(TOLD("Kept", "the readings tell nothing of this kettle that could be kept")));
  if (learned.stories > 1)
    say(Told(
        TOLD("Kept", "the readings do not go together; leave out those that are wrong first")));
  if (learned.otherUnit)
    say(Told(TOLD("Kept",
                  "the readings would fit far better in the other unit; say which with "
                  "--read-in")));
  if (learned.twelveHoursOff)
    say(Told(TOLD("Kept",
                  "the readings would fit far better twelve hours earlier or later; mend their "
                  "clock first")));
}

}  // namespace

std::string markOf(std::string_view text) {
  std::uint32_t mark = 2166136261u;
  for (const char c : text) mark = (mark ^ static_cast<unsigned char>(c)) * 16777619u;
  std::array<char, 9> hex{};
  std::snprintf(hex.data(), hex.size(), "%08x", static_cast<unsigned>(mark));
  return hex.data();
}

bool isKeptIn(const RigPlan& rig, std::string_view text) {
  return rig.measured && rig.measured->readings.find(markOf(text)) != std::string::npos;
}

void tellWhereCountedTwice(const Plan& plan, std::size_t rig, std::string_view text,
                           const std::string& name, Problems& problems) {
  if (isKeptIn(plan.rigs[rig], text))
    problems.push_back(
        {Severity::Warning, name,
         Told(TOLD("Kept",
                   "these readings are in the factors of %1 already; held against them here they "
                   "count twice"),
              Quoted{plan.rigs[rig].name})});
}

std::optional<Kept> withLearned(const std::string& document, const Plan& plan, std::size_t rig,
                                const Learned& learned, const ReadingsKept& readings,
                                Problems& problems) {
  const std::string mark = markOf(readings.text);
  const std::size_t before = problems.size();
  refuse(plan, rig, learned, readings.text, problems);
  if (problems.size() > before) return std::nullopt;
  const RigPlan& planned = plan.rigs[rig];
  Kept kept{.document = document};
  Values values;
  kept.losses = keep(learned, Unknown::ClosedLosses, planned.rig.lossFactor, "/loss_factor",
                     "/measured/losses_within", values);
  kept.surface = keep(learned, Unknown::OpenSurface, planned.rig.evaporationFactor,
                      "/evaporation_factor", "/measured/surface_within", values);
  if (!kept.losses && !kept.surface) return kept;
  std::string which = planned.measured ? planned.measured->readings : std::string();
  if (!which.empty()) which += "; ";
  which += readings.name + ", " + std::to_string(readings.lines) + " lines (" + mark + ")";
  values.push_back({"/measured/jacket", planned.worn()});
  values.push_back({"/measured/on", readings.day});
  values.push_back({"/measured/readings", std::move(which)});
  for (Placed& one : values) one.pointer = "/rigs/" + std::to_string(rig) + one.pointer;
  kept.document = withAll(document, values);
  return kept;
}

}  // namespace rigs
