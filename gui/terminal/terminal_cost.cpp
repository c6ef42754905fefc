// SPDX-License-Identifier: GPL-3.0-or-later
// What does a batch cost?
#include <fmt/format.h>

#include <array>

#include "gui/terminal/rig_rows.hpp"
#include "gui/terminal/terminal.hpp"
#include "rigs/answers/money.hpp"

namespace gui {
namespace {

std::string paybackText(const std::string& what, double price, const rigs::Payback& back,
                        const rigs::Tariff& tariff) {
  if (!back.years)
    return fmt::format("{} for {} saves nothing and is never paid back.", what,
                       money(price, tariff));
  return fmt::format("{} for {} saves {} a year and is paid back in {} years.", what,
                     money(price, tariff), money(back.perYear, tariff),
                     rigs::formatNumber(*back.years, {.significantDigits = 2, .decimals = {}}));
}

std::string startText(const rigs::Plan& plan, const rigs::RigAnswer& rig,
                      const rigs::StartChoice& choice) {
  const rigs::Tariff& tariff = plan.tariff;
  const std::string window =
      tariff.brewFrom
          ? fmt::format("from {} to {}", clockTime(*tariff.brewFrom), clockTime(*tariff.brewUntil))
          : std::string("at any hour");
  return fmt::format("Begun at {} it costs {}; {} cheapest at {} with {}, dearest at {} with {}.",
                     clockTime(plan.startOfDay), money(*rig.cost, tariff), window,
                     clockTime(choice.cheapest.at), money(choice.cheapest.cost, tariff),
                     clockTime(choice.dearest.at), money(choice.dearest.cost, tariff));
}

// The start, the jacket, the element and the carbon dioxide, where the plan asks for them.
std::vector<std::string> moreCostTexts(const rigs::Plan& plan, const rigs::Answers& answers,
                                       std::size_t i, UnitSystem units) {
  std::vector<std::string> texts;
  const rigs::RigAnswer& rig = answers.rigs[i];
  const rigs::Tariff& tariff = plan.tariff;
  if (!rig.cost) return texts;
  if (const auto choice = rigs::cheapestStart(rig.day, tariff))
    texts.push_back(startText(plan, rig, *choice));
  if (const auto back = rigs::jacketPayback(rig, plan))
    texts.push_back(paybackText("The jacket", *tariff.jacketPrice, *back, tariff));
  if (const auto back = rigs::elementPayback(plan, answers, i)) {
    texts.push_back(
        paybackText(fmt::format("Its element in place of {}'s, with all else that differs,",
                                letter(back->against)),
                    *tariff.elementPrice, back->payback, tariff));
  }
  if (const auto co2 = rigs::co2Of(rig.day.total.fromWall(), tariff)) {
    texts.push_back(fmt::format("Its energy makes {} of carbon dioxide{}.",
                                rigs::format(*co2, units),
                                tariff.co2Source.empty() ? "" : " (" + tariff.co2Source + ")"));
  }
  return texts;
}

std::string sourceText(const rigs::Tariff& tariff) {
  std::string text = tariffText(tariff);
  if (!tariff.dated.empty()) text += " (as of " + tariff.dated + ')';
  text += '.';
  if (!tariff.name.empty()) text += ' ' + tariff.name + (tariff.source.empty() ? "." : ": ");
  if (!tariff.source.empty()) {
    text += (tariff.name.empty() ? " Source: " : "") + tariff.source;
    if (!tariff.status.empty()) text += " (" + tariff.status + ')';
    text += '.';
  }
  return text;
}

}  // namespace

Page costPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  using physics::StageKind;
  Page page = startPage(plan, units);
  if (plan.tariff.currency.empty()) {
    page.notes.emplace_back("The plan gives no price: energy only.");
  } else {
    page.notes.push_back(sourceText(plan.tariff));
  }
  page.heading("What does a batch cost?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RigAnswer& rig = answers.rigs[i];
    const std::string unfinished = unfinishedText(plan.rigs[i], rig.day, units);
    const std::string cost = costText(rig, plan.tariff, units);
    page.say(letter(i), unfinished.empty() ? cost : unfinished + ' ' + cost);
    for (const std::string& more : moreCostTexts(plan, answers, i, units)) page.say("   ", more);
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
                     // Exactly nothing is no figure, as in the rows of energy above.
                     const auto energy = rigs::fromWall(rig.day, kind.kind);
                     const bool drawn = energy && *energy > physics::joules(0.0);
                     return drawn ? rigs::costOf(rig, kind.kind) : std::nullopt;
                   });
    }
    table.number("whole day", plan.tariff.currency, 2,
                 [](const rigs::RigPlan&, const rigs::RigAnswer& rig) { return rig.cost; });
    if (plan.tariff.brewsPerYear) {
      table.number(fmt::format("a year of {} brews", rigs::formatNumber(*plan.tariff.brewsPerYear)),
                   plan.tariff.currency, 2, [&](const rigs::RigPlan&, const rigs::RigAnswer& rig) {
                     return rigs::costOfAYear(rig, plan.tariff);
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
