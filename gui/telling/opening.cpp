// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/opening.hpp"

#include <utility>
#include <variant>

#include "gui/telling/rinse.hpp"
#include "physics/boil_signs.hpp"
#include "physics/brewday.hpp"
#include "physics/wort.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::asChosen;
using rigs::Told;

Told titleOf(const rigs::Plan& plan) {
  if (plan.title.empty()) return Told(TOLD("Answer", "A brew day"));
  return Told::just(rigs::Verbatim{plan.title});
}

Told sizeText(const physics::Batch& batch) {
  if (const auto* wort = std::get_if<physics::WantedWort>(&batch.size)) {
    if (!batch.mashes())
      return Told(TOLD("Answer", "%1 of finished wort"), amount(wort->atTwentyDegrees));
    return Told(TOLD("Answer", "%1 of finished wort with %2 of grain"),
                amount(wort->atTwentyDegrees), amount(batch.grain.mass));
  }
  const physics::Volume poured = std::get<physics::PouredWater>(batch.size).atTwentyDegrees;
  if (!batch.mashes()) return Told(TOLD("Answer", "%1 of water poured"), amount(poured));
  return Told(TOLD("Answer", "%1 of water poured with %2 of grain"), amount(poured),
              amount(batch.grain.mass));
}

Told mashText(const physics::Batch& batch) {
  if (const auto* left = std::get_if<physics::UnpluggedMash>(&batch.mash)) {
    return Told(TOLD("Answer", "mashed from %1 for %2 unplugged"), amount(left->start),
                asChosen(left->duration));
  }
  rigs::List rests{{}, rigs::Joint::Comma};
  for (const physics::MashRest& rest : std::get<physics::HeldMash>(batch.mash).rests) {
    rests.items.emplace_back(
        Told(TOLD("Answer", "%1 for %2"), amount(rest.temperature), asChosen(rest.duration)));
  }
  if (rests.items.empty()) return {};
  return Told(TOLD("Answer", "mashed at %1"), std::move(rests));
}

Told batchText(const physics::Batch& batch) {
  rigs::List parts{{sizeText(batch)}, rigs::Joint::Comma};
  if (batch.mashes()) parts.items.emplace_back(mashText(batch));
  if (batch.rinse)
    parts.items.emplace_back(Told(TOLD("Answer", "rinsed with %1"), rinseInWords(*batch.rinse)));
  if (batch.drain)
    parts.items.emplace_back(Told(TOLD("Answer", "drained %1"), asChosen(batch.drain->duration)));
  if (batch.boil > physics::seconds(0.0))
    parts.items.emplace_back(Told(TOLD("Answer", "boiled %1"), asChosen(batch.boil)));
  return Told(TOLD("Answer", "%1."), std::move(parts));
}

Told placeText(const rigs::Plan& plan) {
  const rigs::Amount room = amount(plan.place.room);
  const rigs::Amount water = amount(plan.place.water);
  const physics::Temperature boiling = physics::boilingPoint(0.0, plan.place.pressure);
  const rigs::Amount boils = amount(boiling);
  const Told signs(
      TOLD("Answer", "A time to the boil is to the roll; first bubbles show %1 to %2 below."),
      amount(physics::kFirstBubblesBelowAtLeast), amount(physics::kFirstBubblesBelowAtMost));
  if (!plan.altitude)
    return rigs::sentences(
        {Told(TOLD("Answer", "Room %1, water %2; water boils at %3 here."), room, water, boils),
         signs});
  return rigs::sentences(
      {Told(TOLD("Answer", "Room %1, water %2, altitude %3; water boils at %4 here."), room, water,
            amount(*plan.altitude), boils),
       signs});
}

}  // namespace

std::vector<Told> openingOf(const rigs::Plan& plan) {
  return {titleOf(plan), batchText(plan.batch), placeText(plan)};
}

}  // namespace gui::telling
