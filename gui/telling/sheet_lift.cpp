// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sheet_lift.hpp"

#include <utility>

#include "gui/telling/rinse.hpp"

namespace gui::telling {
namespace {

using physics::StageKind;
using rigs::amount;
using rigs::Told;

Told volumes(physics::Volume cold, physics::Volume hot) {
  return Told(TOLD("Sheet", "%1 cold, %2 hot"), amount(cold), amount(hot));
}
std::vector<Told> volumeAndGravity() {
  return {Told(TOLD("Sheet", "volume")), Told(TOLD("Sheet", "gravity"))};
}

bool staysOn(const Case& of) { return of.plan.batch.drain && of.plan.batch.drain->elementOn; }

LiftLine lifted(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  const physics::Stage* next = day.find(StageKind::Draining);
  if (!next) next = day.find(StageKind::HeatingToBoil);
  return {.at = next->begin,
          .action = staysOn(of) ? Told(TOLD("Sheet", "Lift the grain, element on"))
                                : Told(TOLD("Sheet", "Element off. Lift the grain")),
          .more = staysOn(of)
                      ? Told(TOLD("Sheet",
                                  "gloves, nobody under it; look that the element stays covered"))
                      : Told(TOLD("Sheet", "gloves, nobody under it: it drips scalding wort")),
          .expected = {volumes(day.liftedCold, day.liftedHot),
                       Told::just(rigs::Number{day.liftedGravity, {.decimals = 3}})},
          .toWrite = volumeAndGravity()};
}

LiftLine rinsed(const Case& of, const physics::Rinsed& day) {
  LiftLine line{
      .at = day.at,
      .action = Told(TOLD("Sheet", "Rinse with %1"), rinseInWords(*of.plan.batch.rinse)),
      .more = Told(TOLD("Sheet", "slowly and all over, from a small jug")),
      .expected = {Told::just(amount(day.mixed)), volumes(day.cold, day.hot), rinsedGravities(day)},
      .toWrite = {Told(TOLD("Sheet", "temperature"))}};
  for (Told& one : volumeAndGravity()) line.toWrite.push_back(std::move(one));
  return line;
}

LiftLine drained(const Case& of, const physics::Stage& stage) {
  LiftLine line{.at = stage.begin,
                .action = Told(TOLD("Sheet", "Let it drain for %1"),
                               rigs::asChosen(of.plan.batch.drain->duration)),
                .more = staysOn(of) ? Told(TOLD("Sheet", "full power, stay with it"))
                                    : Told(TOLD("Sheet", "hung safely, element off"))};
  line.expected = {Told(TOLD("Sheet", "%1 to %2"), amount(stage.first), amount(stage.last))};
  return line;
}

}  // namespace

bool isRinsedOrDrained(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  return day.rinsed || day.find(StageKind::Draining);
}

std::vector<LiftLine> liftLines(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  std::vector<LiftLine> all{lifted(of, rig)};
  if (day.rinsed) all.push_back(rinsed(of, *day.rinsed));
  if (const physics::Stage* stage = day.find(StageKind::Draining); stage)
    all.push_back(drained(of, *stage));
  return all;
}

std::optional<LiftLine> rinseHeatingLine(const Case& of, std::size_t rig,
                                         const physics::Stage& stage) {
  const auto& day = of.rig(rig).day.rinsed;
  if (!day || day->heat <= physics::joules(0.0)) return std::nullopt;
  const physics::Time at = day->at - day->heating.value_or(rigs::kRinseHeatedWithin);
  if (at < stage.begin || stage.end <= at) return std::nullopt;
  const physics::Rinse& planned = *of.plan.batch.rinse;
  LiftLine line{
      .at = at,
      .action = Told(TOLD("Sheet", "Heat the rinsing water, %1"), rinseInWords(planned)),
      .more = planned.electric && planned.electric->onSameCircuit
                  ? Told(TOLD("Sheet", "only as the circuit's verdict allows; ready at the lift"))
                  : Told(TOLD("Sheet", "ready at the lift"))};
  return line;
}

}  // namespace gui::telling
