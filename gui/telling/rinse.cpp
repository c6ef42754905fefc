// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/rinse.hpp"

#include <optional>

#include "rigs/answers/day_figures.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using physics::Draining;
using physics::Rinse;
using physics::Rinsed;
using physics::StageKind;
using rigs::amount;
using rigs::Told;

rigs::Number gravity(double number) { return {number, {.decimals = 3}}; }

template <class Q>
rigs::Amount about(const Q& q) {
  return amount(q, {.significantDigits = 2, .decimals = {}});
}

// The mean of all that is believed is told as such, and what it lies between.
Told mixedText(const Rinse& planned, const Rinsed& rinsed) {
  return Told(TOLD("Answer",
                   "Rinsed with %1, the wort is about %2 cold, %3 hot, at about %4 and gravity "
                   "%5: %6 if the water ran past all the wort in the grain, %7 if it mixed with "
                   "all of it."),
              rinseInWords(planned), amount(rinsed.cold), amount(rinsed.hot), amount(rinsed.mixed),
              gravity(rinsed.gravity), gravity(rinsed.gravityIfNone), gravity(rinsed.gravityIfAll));
}

Told extractText(const Rinsed& rinsed) {
  return Told(TOLD("Answer",
                   "It washes about %1 of extract out of the grain, between none and %2; about %3 "
                   "stay in it."),
              about(rinsed.gained), about(rinsed.gainedIfAll), about(rinsed.left));
}

Told heatingText(const Rinse& planned, const Rinsed& rinsed) {
  if (!rinsed.fromWall)
    return Told(TOLD("Answer",
                     "Its water is not heated by electricity: what that takes is in no figure of "
                     "energy or money here."));
  const rigs::Amount efficiency = amount(planned.electric->efficiency);
  if (!rinsed.heating)
    return Told(TOLD("Answer",
                     "Heating its water takes %1 from the wall beside the kettle's element, at an "
                     "efficiency of %2; for how long is not known, as its heater's power is not "
                     "stated."),
                amount(*rinsed.fromWall), efficiency);
  return Told(TOLD("Answer",
                   "Heating its water takes %1 from the wall beside the kettle's element, at an "
                   "efficiency of %2, for about %3 before the grain is lifted."),
              amount(*rinsed.fromWall), efficiency, rigs::roughly(*rinsed.heating));
}

Told drainText(const Draining& planned, const physics::Stage& stage) {
  const rigs::Template<3> text =
      planned.elementOn
          ? rigs::Template<3>(TOLD("Answer",
                                   "The grain drains for %1 over the open kettle with the element "
                                   "on: the wort goes from %2 to %3."))
          : rigs::Template<3>(TOLD("Answer",
                                   "The grain drains for %1 over the open kettle with the element "
                                   "off: the wort goes from %2 to %3."));
  return Told(text, rigs::asChosen(planned.duration), amount(stage.first), amount(stage.last));
}

Told absorptionText() {
  return Told(TOLD("Answer",
                   "However long it drains, it keeps what the plan's absorption says: no source "
                   "tells how much less that would be."));
}

const Rinsed* rinsedOf(const Case& of, std::size_t rig) {
  const auto& rinsed = of.rig(rig).day.rinsed;
  return rinsed ? &*rinsed : nullptr;
}

}  // namespace

Told rinseInWords(const Rinse& rinse) {
  return Told(TOLD("Answer", "%1 of water at %2"), amount(rinse.atTwentyDegrees),
              amount(rinse.temperature));
}

Told rinsedGravities(const Rinsed& rinsed) {
  return Told(TOLD("Sheet", "%1 (%2–%3)"), gravity(rinsed.gravity), gravity(rinsed.gravityIfNone),
              gravity(rinsed.gravityIfAll));
}

bool isAnyRinsed(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (rinsedOf(of, i)) return true;
  return false;
}

std::vector<Told> liftTexts(const Case& of, std::size_t rig) {
  std::vector<Told> all;
  const physics::Batch& batch = of.plan.batch;
  if (const Rinsed* rinsed = rinsedOf(of, rig))
    all.push_back(rigs::sentences(
        {mixedText(*batch.rinse, *rinsed),
         rigs::sentences({extractText(*rinsed), heatingText(*batch.rinse, *rinsed)})}));
  const physics::Stage* drained = of.rig(rig).day.find(StageKind::Draining);
  if (batch.drain && drained && rigs::finished(of.rig(rig).day, *drained))
    all.push_back(rigs::sentences({drainText(*batch.drain, *drained), absorptionText()}));
  return all;
}

void addRinseRows(RigTable& table, const Case& of) {
  if (!isAnyRinsed(of)) return;
  const auto row = [&](Told label, const char* key, const auto& figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const Rinsed* one = rinsedOf(of, i);
                return one ? figure(*one) : std::nullopt;
              },
              {.result = std::string("/day/rinse/") + key});
  };
  row(Told(TOLD("Answer", "when it is rinsed")), "cold_volume_L",
      [](const Rinsed& one) { return cellOf(one.cold); });
  row(Told(TOLD("Answer", "wort then, mixed")), "mixed_C",
      [](const Rinsed& one) { return cellOf(one.mixed); });
  row(Told(TOLD("Answer", "gravity then")), "gravity",
      [](const Rinsed& one) { return numberCell(one.gravity, 3); });
  row(Told(TOLD("Answer", "gravity if the water ran past")), "gravity_if_none_mixes",
      [](const Rinsed& one) { return numberCell(one.gravityIfNone, 3); });
  row(Told(TOLD("Answer", "gravity if it mixed with all")), "gravity_if_all_mixes",
      [](const Rinsed& one) { return numberCell(one.gravityIfAll, 3); });
}

Told rinseOnCircuit(const Case& of, std::size_t rig) {
  const auto& rinse = of.plan.batch.rinse;
  if (!rinse || !rinse->electric) return {};
  if (!rinse->electric->onSameCircuit)
    return Told(TOLD("Circuit",
                     "The rinsing water is heated on another circuit, which is not judged here: "
                     "that one must carry its heater and all else that hangs on it."));
  if (!rinse->electric->power)
    return Told(TOLD("Circuit",
                     "The rinsing water is heated on this circuit while the element is in use, "
                     "and its heater's power is not stated: its load is in no figure here and "
                     "must be added."));
  const rigs::CircuitLoad& circuit = of.rig(rig).circuit.circuits.front();
  const physics::Current more = *rinse->electric->power / circuit.supply.nominal;
  return Told(TOLD("Circuit",
                   "The rinsing water's heater, %1, counts beside the element on this circuit, as "
                   "other loads do: %2 more, and %3 of %4 while all of it is on."),
              amount(*rinse->electric->power), rigs::closely(more),
              rigs::closely(*circuit.nameplate.load), rigs::closely(circuit.supply.rating));
}

}  // namespace gui::telling
