// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include "gui/terminal/terminal.hpp"
#include "rigs/results/cautions.hpp"

namespace gui {
namespace {

using rigs::format;

std::string mashText(const physics::Batch& batch, UnitSystem units) {
  if (const auto* left = std::get_if<physics::UnpluggedMash>(&batch.mash)) {
    return fmt::format(", mashed from {} for {} unplugged", format(left->start, units),
                       roughTime(left->duration));
  }
  std::string text;
  for (const physics::MashRest& rest : std::get<physics::HeldMash>(batch.mash).rests) {
    text += fmt::format("{} {} for {}", text.empty() ? ", mashed at" : ",",
                        format(rest.temperature, units), roughTime(rest.duration));
  }
  return text;
}

std::string batchText(const rigs::Plan& plan, UnitSystem units) {
  const physics::Batch& batch = plan.batch;
  std::string text;
  if (const auto* wort = std::get_if<physics::WantedWort>(&batch.size)) {
    text = format(wort->atTwentyDegrees, units) + " of finished wort";
  } else {
    text = format(std::get<physics::PouredWater>(batch.size).atTwentyDegrees, units) +
           " of water poured";
  }
  if (batch.grain.mass > physics::kilograms(0.0)) {
    text += " with " + format(batch.grain.mass, units) + " of grain";
  }
  if (batch.grain.mass > physics::kilograms(0.0)) text += mashText(batch, units);
  if (batch.boil > physics::seconds(0.0)) text += ", boiled " + roughTime(batch.boil);
  return text;
}

std::string placeText(const rigs::Plan& plan, UnitSystem units) {
  std::string text = fmt::format("Room {}, water {}", format(plan.place.room, units),
                                 format(plan.place.water, units));
  if (plan.altitude) text += ", altitude " + format(*plan.altitude, units);
  text += fmt::format("; water boils at {} here",
                      format(physics::boilingPoint(0.0, plan.place.pressure), units));
  return text;
}

}  // namespace

Page startPage(const rigs::Plan& plan, UnitSystem units, bool leftAlone) {
  Page page;
  page.title = plan.title.empty() ? "A brew day" : plan.title;
  page.notes = {batchText(plan, units) + '.', placeText(plan, units) + '.'};
  for (const rigs::RigPlan& rig : plan.rigs) page.rigNames.push_back(rig.name);
  for (const rigs::Caution& caution : rigs::cautions(plan, leftAlone)) {
    page.cautions.push_back(rigs::inEnglish(caution.text, units));
  }
  return page;
}

}  // namespace gui
