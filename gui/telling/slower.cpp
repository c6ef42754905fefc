// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/slower.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace gui::telling {
namespace {

using physics::Energy;
using physics::Ledger;
using physics::Path;
using physics::Time;
using rigs::Told;

bool heats(const physics::Stage& stage) {
  using Kind = physics::StageKind;
  return stage.kind == Kind::Strike || stage.kind == Kind::Ramp ||
         stage.kind == Kind::HeatingToBoil;
}

Ledger heatingLedger(const physics::BrewDay& day) {
  Ledger sum;
  for (const physics::Stage& stage : day.stages)
    if (heats(stage)) sum += stage.ledger;
  return sum;
}

Energy askedBy(Delay why, const Ledger& ledger) {
  switch (why) {
    case Delay::Power:
      break;
    case Delay::Warmed:
      return ledger.stored() + ledger.lifted - ledger.slaking;
    case Delay::Surface:
      return ledger.lost[Path::Evaporation] + ledger.steam + ledger.lost[Path::SurfaceConvection] +
             ledger.lost[Path::SurfaceRadiation];
    case Delay::Walls:
      return ledger.lost[Path::Side] + ledger.lost[Path::DryWall];
    case Delay::Lid:
      return ledger.lost[Path::Lid];
    case Delay::Base:
      return ledger.lost[Path::Base];
    case Delay::Hose:
      return ledger.lost[Path::Hose];
  }
  return physics::joules(0.0);
}

Told phrase(Delay why, bool longer, const rigs::Amount& time) {
  switch (why) {
    case Delay::Power:
      return longer ? Told(TOLD("Answer", "%1 for less power"), time)
                    : Told(TOLD("Answer", "%1 by more power"), time);
    case Delay::Warmed:
      return longer ? Told(TOLD("Answer", "%1 to warm more"), time)
                    : Told(TOLD("Answer", "%1 as there is less to warm"), time);
    case Delay::Surface:
      return Told(TOLD("Answer", "%1 at the surface and as steam"), time);
    case Delay::Walls:
      return Told(TOLD("Answer", "%1 through the walls"), time);
    case Delay::Lid:
      return Told(TOLD("Answer", "%1 through the lid"), time);
    case Delay::Base:
      return Told(TOLD("Answer", "%1 through the base"), time);
    case Delay::Hose:
      return Told(TOLD("Answer", "%1 through the hose"), time);
  }
  return {};
}

// Those of a minute and more, the longest first.
rigs::List phrases(const std::vector<DelayPart>& parts, bool longer) {
  std::vector<std::pair<double, Delay>> kept;
  for (const DelayPart& part : parts) {
    const double minutes = physics::inMinutes(part.time) * (longer ? 1.0 : -1.0);
    if (std::round(minutes) >= 1.0) kept.emplace_back(minutes, part.why);
  }
  std::stable_sort(kept.begin(), kept.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  rigs::List list{.items = {}, .joint = rigs::Joint::Comma};
  for (const auto& [minutes, why] : kept)
    list.items.emplace_back(
        phrase(why, longer, rigs::asChosen(physics::minutes(std::round(minutes)))));
  return list;
}

}  // namespace

Time heatingTime(const physics::BrewDay& day) {
  Time time = physics::seconds(0.0);
  for (const physics::Stage& stage : day.stages)
    if (heats(stage)) time += stage.end - stage.begin;
  return time;
}

std::vector<DelayPart> delayOf(const physics::BrewDay& slow, const physics::BrewDay& quick) {
  const Ledger more = heatingLedger(slow);
  const Ledger less = heatingLedger(quick);
  const Energy cameSlow = more.element + more.pump;
  const Energy cameQuick = less.element + less.pump;
  if (cameSlow <= physics::joules(0.0) || cameQuick <= physics::joules(0.0)) return {};
  // How long a joule takes to come.
  const auto eachSlow = heatingTime(slow) / cameSlow;
  const auto eachQuick = heatingTime(quick) / cameQuick;
  std::vector<DelayPart> parts{
      {Delay::Power, 0.5 * (cameSlow + cameQuick) * (eachSlow - eachQuick)}};
  for (const Delay why :
       {Delay::Warmed, Delay::Surface, Delay::Walls, Delay::Lid, Delay::Base, Delay::Hose})
    parts.push_back(
        {why, (askedBy(why, more) - askedBy(why, less)) * (0.5 * (eachSlow + eachQuick))});
  return parts;
}

std::vector<Told> slowerText(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const physics::BrewDay& day = of.rig(i).day;
    if (!day.startsBoiling()) return std::nullopt;
    return physics::inMinutes(heatingTime(day));
  });
  if (e.counted < 2) return {};
  const physics::BrewDay& slow = of.rig(e.most).day;
  const physics::BrewDay& quick = of.rig(e.least).day;
  const Time longer = heatingTime(slow) - heatingTime(quick);
  if (longer < physics::minutes(1.0)) return {};
  const std::vector<DelayPart> parts = delayOf(slow, quick);
  const rigs::List costs = phrases(parts, true);
  const rigs::List saves = phrases(parts, false);
  if (costs.items.empty()) return {};
  if (saves.items.empty())
    return {Told(TOLD("Answer", "It takes %2 longer to heat %1 than %3: %4."), of.named(e.most),
                 rigs::roughly(longer), of.named(e.least), costs)};
  return {Told(TOLD("Answer", "It takes %2 longer to heat %1 than %3: %4. It saves %5."),
               of.named(e.most), rigs::roughly(longer), of.named(e.least), costs, saves)};
}

}  // namespace gui::telling
