// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it?
#include <fmt/format.h>

#include "gui/rig_table.hpp"
#include "gui/terminal.hpp"
#include "rigs/cautions.hpp"
#include "rigs/circuit_words.hpp"

namespace gui {
namespace {

using rigs::format;
using rigs::RigAnswer;
using rigs::RigPlan;

void sayCircuit(Page& page, const std::string& lead, const rigs::CircuitLoad& circuit,
                UnitSystem units) {
  page.say(lead, fmt::format("{} flow at {}, {} on average over the day.",
                             format(circuit.load.current, units),
                             format(circuit.supply.nominal, units), format(circuit.mean, units)));
  if (circuit.verdicts.empty()) {
    page.say("   ",
             "Cannot say: the plan names no region and no catalogue circuit, so no rules apply. "
             "Write \"region\" into the plan's \"place\".");
  }
  for (const rigs::CircuitVerdict& verdict : circuit.verdicts) {
    page.say("   ", rigs::verdictText(verdict));
    for (const rigs::Finding& finding : verdict.findings) {
      page.say("   ", "· " + rigs::findingText(finding));
    }
    for (const rigs::SpreadInRange& spread : verdict.spreads) {
      page.say(
          "   ",
          fmt::format("· {} to {} ({}): {} to {}, {} to {}, the element's tolerance "
                      "included. [{}]",
                      format(spread.range->lowest, units), format(spread.range->highest, units),
                      spread.range->name, format(spread.spread.least.current, units),
                      format(spread.spread.most.current, units),
                      wattsText(spread.spread.least.delivered),
                      wattsText(spread.spread.most.delivered), rigs::citeText(spread.range->cite)));
    }
    const std::string information = rigs::informationText(verdict);
    if (!information.empty()) page.say("   ", "· " + information);
  }
}

std::string timeOrNot(const std::optional<physics::Time>& time) {
  return time ? "mash to boil in " + roughTime(*time) : "does not boil";
}

std::string outcomeText(const rigs::ReadingDay& day) {
  return day.outcome == physics::Outcome::Done ? timeOrNot(day.toBoil) : outcomeWord(day.outcome);
}

void sayInverse(Page& page, const std::string& lead, const rigs::CircuitAnswer& circuit,
                UnitSystem units) {
  std::string at = lead;
  for (const rigs::ReadingDay& day : circuit.readings) {
    const std::string whole = day.outcome == physics::Outcome::Done
                                  ? "; the day takes " + roughTime(day.day)
                                  : std::string();
    page.say(at, fmt::format("{}, {}: {} at most, an element of {} at {}; {} reach the vessel, "
                             "{}{}.{}",
                             day.region, day.reading.name, format(day.reading.limit, units),
                             wattsText(day.largest.rating), format(day.largest.ratedAt, units),
                             wattsText(day.delivered), outcomeText(day), whole,
                             day.fits ? " What the rig has stays within." : ""));
    at = "   ";
  }
  if (!circuit.split) return;
  const rigs::Split& split = *circuit.split;
  std::string fits;
  for (std::size_t i = 0; i < split.fits.size(); ++i) {
    fits += fmt::format(
        "{}{} {}", i == 0 ? "" : ", ", circuit.circuits.front().verdicts[i].rules->region,
        split.fits[i] == rigs::Fit::OnlyIf ? std::string("fits under a condition")
                                           : std::string(rigs::fitWords(split.fits[i])));
  }
  page.say("   ", fmt::format("Split over two such circuits, {} each: {} on each, {}. Two of the "
                              "largest elements under the strictest reading give {}: {}, a day of "
                              "{}.",
                              wattsText(split.each), format(split.current, units), fits,
                              wattsText(split.largestTogether), timeOrNot(split.toBoil),
                              roughTime(split.day)));
}

}  // namespace

Page circuitPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.cautions = rigs::cautionTexts(rigs::About::Circuit, plan, answers, units);

  page.heading("Can the circuit carry it?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::CircuitAnswer& circuit = answers.rigs[i].circuit;
    for (std::size_t k = 0; k < circuit.circuits.size(); ++k) {
      sayCircuit(page, k == 0 ? letter(i) : "   ", circuit.circuits[k], units);
    }
    if (circuit.addedByCable && *circuit.addedByCable > physics::seconds(1.0)) {
      page.say("   ", fmt::format("The cable adds {} to heating to the boil.",
                                  roughTime(*circuit.addedByCable)));
    }
  }
  page.heading("What would each reading allow, and how long is the day then?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    sayInverse(page, letter(i), answers.rigs[i].circuit, units);
  }

  RigTable t("circuit", plan, answers, units);
  const auto first = [](const auto& of) {
    return [of](const RigPlan&, const RigAnswer& rig) { return of(rig.circuit.circuits.front()); };
  };
  const auto second = [](const auto& of) {
    return [of](const RigPlan&, const RigAnswer& rig) {
      using Q = std::decay_t<decltype(of(rig.circuit.circuits.front()))>;
      return rig.circuit.circuits.size() > 1 ? std::optional<Q>(of(rig.circuit.circuits[1]))
                                             : std::nullopt;
    };
  };
  t.heading("Load");
  t.quantity("supply", first([](const auto& c) { return c.supply.nominal; }), 0);
  t.quantity("circuit", first([](const auto& c) { return c.supply.rating; }));
  t.quantity("resistance, hot", first([](const auto& c) { return c.hot; }));
  t.quantity("resistance, cold", first([](const auto& c) { return c.cold; }));
  t.quantity("peak current", first([](const auto& c) { return c.load.current; }));
  t.quantity("mean current", first([](const auto& c) { return c.mean; }));
  t.quantity("reaches the vessel", first([](const auto& c) { return c.load.delivered; }));
  t.quantity("lost in the cable", first([](const auto& c) { return c.load.inCable; }));
  t.quantity("voltage drop", first([](const auto& c) {
               return static_cast<double>(c.load.inCable / c.load.fromWall);
             }));
  t.quantity("second circuit", second([](const auto& c) { return c.supply.rating; }));
  t.quantity("its peak current", second([](const auto& c) { return c.load.current; }));
  t.heading("Duty");
  t.time("full current without a break", [](const RigPlan&, const RigAnswer& rig) {
    return std::optional(rig.circuit.duty.longestFull());
  });
  t.time("element enabled", [](const RigPlan&, const RigAnswer& rig) {
    return std::optional(rig.circuit.duty.longestEnabled());
  });
  t.quantity("share of the day with current",
             [](const RigPlan&, const RigAnswer& rig) { return rig.circuit.duty.mean(); });
  t.heading("Verdict");
  t.words("all rules together", [](const RigPlan&, const RigAnswer& rig) {
    return std::string(rigs::fitWords(rig.circuit.overall()));
  });
  page.show(t.take());
  return page;
}

}  // namespace gui
