// SPDX-License-Identifier: GPL-3.0-or-later
// What does a batch cost?
#include <fmt/format.h>

#include <array>

#include "gui/rig_rows.hpp"
#include "gui/terminal.hpp"

namespace gui {

Page costPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  using physics::StageKind;
  Page page = startPage(plan, units);
  if (plan.tariff.currency.empty()) {
    page.notes.emplace_back("The plan gives no price: energy only.");
  } else {
    page.notes.push_back(fmt::format(
        "{}/kWh{}.", money(plan.tariff.perKilowattHour, plan.tariff),
        plan.tariff.dated.empty() ? std::string() : " (as of " + plan.tariff.dated + ")"));
  }
  page.heading("What does a batch cost?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RigAnswer& rig = answers.rigs[i];
    const std::string unfinished = unfinishedText(plan.rigs[i], rig.day, units);
    const std::string cost = costText(rig, plan.tariff, units);
    page.say(letter(i), unfinished.empty() ? cost : unfinished + ' ' + cost);
  }

  struct Kind {
    StageKind kind;
    const char* label;
  };
  constexpr std::array kKinds{
      Kind{StageKind::Strike, "to strike"}, Kind{StageKind::Ramp, "between rests"},
      Kind{StageKind::Rest, "rests"}, Kind{StageKind::HeatingToBoil, "heating to the boil"},
      Kind{StageKind::Boil, "boil"}};
  RigTable table("cost", plan, answers, units);
  table.heading("Energy from the wall");
  for (const Kind& kind : kKinds) {
    table.quantity(kind.label, [&](const rigs::RigPlan&, const rigs::RigAnswer& rig) {
      return rigs::fromWall(rig.day, kind.kind);
    });
  }
  table.quantity("whole day", [](const rigs::RigPlan&, const rigs::RigAnswer& rig) {
    return rig.day.total.fromWall();
  });
  if (!plan.tariff.currency.empty()) {
    table.heading("Cost");
    for (const Kind& kind : kKinds) {
      table.number(kind.label, plan.tariff.currency, 2,
                   [&](const rigs::RigPlan&, const rigs::RigAnswer& rig) {
                     const auto energy = rigs::fromWall(rig.day, kind.kind);
                     return energy ? rigs::costOf(*energy, plan.tariff) : std::nullopt;
                   });
    }
    table.number("whole day", plan.tariff.currency, 2,
                 [](const rigs::RigPlan&, const rigs::RigAnswer& rig) { return rig.cost; });
    const physics::Volume one = rigs::fromNumberIn<physics::Volume>(1.0, units);
    table.number(
        "for the wort in the end",
        fmt::format("{}/{}", plan.tariff.currency, rigs::unitLabel<physics::Volume>(units)), 3,
        [&](const rigs::RigPlan&, const rigs::RigAnswer& rig) { return rigs::costPer(rig, one); });
  }
  page.show(table.take());
  return page;
}

}  // namespace gui
