// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/cost_parts.hpp"

#include <algorithm>
#include <utility>

#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::StageKind;
using rigs::Told;

bool hasBegun(const physics::BrewDay& day, StageKind kind) {
  return std::any_of(day.stages.begin(), day.stages.end(), [&](const physics::Stage& stage) {
    return stage.kind == kind && rigs::lasted(stage) > physics::seconds(0.0);
  });
}

std::string stageResult(const Case& of, StageKind kind, const std::string& figure) {
  std::optional<std::size_t> place;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto& stages = of.rig(i).day.stages;
    for (std::size_t k = 0; k < stages.size(); ++k) {
      if (stages[k].kind != kind || place == k) continue;
      if (place) return {};
      place = k;
    }
  }
  return place ? "/day/stages/" + std::to_string(*place) + figure : std::string();
}

CostPart partOf(const Case& of, StageKind kind, Told name) {
  const auto begun = [&of, kind](std::size_t i) { return hasBegun(of.rig(i).day, kind); };
  return {.name = std::move(name),
          .energy =
              [&of, kind, begun](std::size_t i) {
                return begun(i) ? rigs::fromWall(of.rig(i).day, kind) : std::nullopt;
              },
          .cost =
              [&of, kind, begun](std::size_t i) {
                return begun(i) ? rigs::costOf(of.rig(i), kind) : std::nullopt;
              },
          .energyResult = stageResult(of, kind, "/ledger/from_wall_kWh"),
          .costResult = stageResult(of, kind, "/cost")};
}

// Not by electricity is no figure.
CostPart partOfTheRinse(const Case& of) {
  return {.name = Told(TOLD("Answer", "heating the rinsing water")),
          .energy =
              [&of](std::size_t i) {
                const auto& rinsed = of.rig(i).day.rinsed;
                return rinsed ? rinsed->fromWall : std::nullopt;
              },
          .cost =
              [&of](std::size_t i) {
                return rigs::rinseCost(of.rig(i).day, of.plan.tariff, of.rig(i).begins);
              },
          .energyResult = "/day/rinse/from_wall_kWh",
          .costResult = "/day/rinse/cost"};
}

}  // namespace

std::vector<CostPart> costParts(const Case& of) {
  std::vector<CostPart> all{
      partOf(of, StageKind::Strike, Told(TOLD("Answer", "heating the strike water"))),
      partOf(of, StageKind::Ramp, Told(TOLD("Answer", "between rests"))),
      partOf(of, StageKind::Rest, Told(TOLD("Answer", "holding rests"))),
      partOfTheRinse(of),
      partOf(of, StageKind::Draining, Told(TOLD("Answer", "while the grain drains"))),
      partOf(of, StageKind::HeatingToBoil, Told(TOLD("Answer", "heating to the boil"))),
      partOf(of, StageKind::Boil, Told(TOLD("Answer", "boiling")))};
  const auto drawsNothing = [&](const CostPart& part) {
    for (std::size_t i = 0; i < of.count(); ++i)
      if (part.energy(i).value_or(physics::joules(0.0)) > physics::joules(0.0)) return false;
    return true;
  };
  all.erase(std::remove_if(all.begin(), all.end(), drawsNothing), all.end());
  return all;
}

}  // namespace gui::telling
