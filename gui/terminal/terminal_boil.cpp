// SPDX-License-Identifier: GPL-3.0-or-later
// Does it boil hard enough?
#include <fmt/format.h>

#include "gui/terminal/rig_rows.hpp"
#include "gui/terminal/terminal.hpp"

namespace gui {
namespace {

std::string percentPerHour(double share, UnitSystem units) {
  return rigs::format(rigs::perHour(share), units);
}

}  // namespace

Page boilPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.heading("Does it boil hard enough?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RigAnswer& rig = answers.rigs[i];
    std::string text = boilText(plan.rigs[i], rig.day, units);
    if (rig.day.outcome == physics::Outcome::Done && rig.day.boil) {
      text += fmt::format(
          " {} before the boil make {} in the end, from a gravity of {:.3f} to "
          "{:.3f}.",
          rigs::format(rig.day.preBoilCold, units), rigs::format(rig.day.resultCold, units),
          rig.day.preBoilGravity, rig.day.resultGravity);
    }
    page.say(letter(i), text);
    for (const std::string& one : whatWouldBoilTexts(plan, plan.rigs[i], rig, units)) {
      page.say("   ", one);
    }
  }
  RigTable table("boil", plan, answers, units);
  addBoilRows(table, units);
  addWortRows(table, units);
  page.show(table.take());

  page.heading("The words");
  page.say(fmt::format(
      "Of the volume before the boil: a simmer is less than {}, a gentle boil less than {}, a "
      "steady boil less than {}, a strong boil less than {}, a fierce boil more.",
      percentPerHour(rigs::kGentleFrom, units), percentPerHour(rigs::kSteadyFrom, units),
      percentPerHour(rigs::kStrongFrom, units), percentPerHour(rigs::kFierceFrom, units)));
  page.say(
      "Published ranges: 5 to 8 %/h is best practice for breweries in the EU (Joint Research "
      "Centre, Best environmental management practice: food and beverage); 10 to 15 %/h is common "
      "in small open kettles. What boils off follows from the heat left "
      "over; whether it boils at all also from the law of the open surface, which scatters by "
      "about "
      "20 %.");
  return page;
}

}  // namespace gui
