// SPDX-License-Identifier: GPL-3.0-or-later
// What does a batch cost?
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "gui/rig_rows.hpp"
#include "gui/terminal.hpp"

namespace gui {
namespace {

// A brew a month, where the plan does not say.
double brewsPerYear(const rigs::Tariff& tariff) { return tariff.brewsPerYear.value_or(12.0); }

std::string paybackText(const std::string& what, double price, double saved,
                        const rigs::Tariff& tariff) {
  const rigs::Payback back = rigs::payback(price, saved, brewsPerYear(tariff));
  if (!back.years)
    return fmt::format("{} for {} saves nothing and is never paid back.", what,
                       money(price, tariff));
  return fmt::format("{} for {} saves {} a year and is paid back in {} years.", what,
                     money(price, tariff), money(back.perYear, tariff),
                     rigs::formatNumber(*back.years, {.significantDigits = 2, .decimals = {}}));
}

// The year, the start, the jacket and the carbon dioxide, where the plan asks for them.
std::vector<std::string> moreCostTexts(const rigs::Plan& plan, const rigs::RigAnswer& rig,
                                       UnitSystem units) {
  std::vector<std::string> texts;
  const rigs::Tariff& tariff = plan.tariff;
  if (!rig.cost) return texts;
  if (tariff.dependsOnTheHour()) {
    const auto choice =
        rigs::cheapestStart(rig.day, tariff, tariff.brewFrom.value_or(physics::hours(0.0)),
                            tariff.brewUntil.value_or(physics::hours(23.75)));
    texts.push_back(
        fmt::format("Begun at {} it costs {}; cheapest at {} with {}, dearest at {} "
                    "with {}.",
                    clockTime(plan.startOfDay), money(*rig.cost, tariff),
                    clockTime(choice->cheapest.at), money(choice->cheapest.cost, tariff),
                    clockTime(choice->dearest.at), money(choice->dearest.cost, tariff)));
  }
  if (tariff.jacketPrice && rig.jacket) {
    const auto bare = rigs::dayCost(rig.jacket->bare, tariff, plan.startOfDay);
    const auto jacketed = rigs::dayCost(rig.jacket->jacketed, tariff, plan.startOfDay);
    texts.push_back(paybackText("The jacket", *tariff.jacketPrice, *bare - *jacketed, tariff));
  }
  if (tariff.elementPrice) {
    texts.push_back(
        fmt::format("An element for {} costs {} for each of a year's {} brews.",
                    money(*tariff.elementPrice, tariff),
                    money(*tariff.elementPrice / std::max(brewsPerYear(tariff), 1.0), tariff),
                    rigs::formatNumber(brewsPerYear(tariff))));
  }
  if (const auto co2 = rigs::co2Of(rig.day.total.fromWall(), tariff)) {
    texts.push_back(fmt::format("Its energy makes {} of carbon dioxide{}.",
                                rigs::format(*co2, units),
                                tariff.co2Source.empty() ? "" : " (" + tariff.co2Source + ")"));
  }
  return texts;
}

}  // namespace

Page costPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  using physics::StageKind;
  Page page = startPage(plan, units);
  if (plan.tariff.currency.empty()) {
    page.notes.emplace_back("The plan gives no price: energy only.");
  } else {
    page.notes.push_back(fmt::format(
        "{}{}.", tariffText(plan.tariff),
        plan.tariff.dated.empty() ? std::string() : " (as of " + plan.tariff.dated + ")"));
  }
  page.heading("What does a batch cost?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RigAnswer& rig = answers.rigs[i];
    const std::string unfinished = unfinishedText(plan.rigs[i], rig.day, units);
    const std::string cost = costText(rig, plan.tariff, units);
    page.say(letter(i), unfinished.empty() ? cost : unfinished + ' ' + cost);
    for (const std::string& more : moreCostTexts(plan, rig, units)) page.say("   ", more);
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
                     return rigs::costOf(rig, kind.kind);
                   });
    }
    table.number("whole day", plan.tariff.currency, 2,
                 [](const rigs::RigPlan&, const rigs::RigAnswer& rig) { return rig.cost; });
    if (plan.tariff.brewsPerYear) {
      const double brews = *plan.tariff.brewsPerYear;
      table.number(fmt::format("a year of {} brews", rigs::formatNumber(brews)),
                   plan.tariff.currency, 2,
                   [brews](const rigs::RigPlan&, const rigs::RigAnswer& rig) {
                     return rig.cost ? std::optional(*rig.cost * brews) : std::nullopt;
                   });
    }
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
