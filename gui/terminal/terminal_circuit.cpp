// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it?
#include <fmt/format.h>

#include <algorithm>

#include "gui/terminal/rig_table.hpp"
#include "gui/terminal/terminal.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui {
namespace {

using rigs::format;
using rigs::RigAnswer;
using rigs::RigPlan;

// What a short page leaves out: kept rules, and the protection's text where nothing turns on it.
bool isQuiet(const rigs::CircuitVerdict& verdict, const rigs::Finding& finding) {
  if (finding.kind == rigs::RuleKind::GroundFault) return !verdict.leakageMayTrip;
  return finding.fit == rigs::Fit::Fits;
}

std::string keptText(const rigs::CircuitVerdict& verdict) {
  std::string names;
  int count = 0;
  for (const rigs::Finding& finding : verdict.findings) {
    if (finding.fit != rigs::Fit::Fits) continue;
    ++count;
    names += (names.empty() ? "" : "; ") + rigs::inEnglish(finding.name);
  }
  if (count == 0) return {};
  return fmt::format("And {} {}: {}.", count, count == 1 ? "rule that fits" : "rules that fit",
                     names);
}

std::string spreadText(const rigs::SpreadInRange& spread, UnitSystem units) {
  return fmt::format(
      "{} to {} ({}): {} to {}, {} to {}, the element's tolerance included. [{}]",
      format(spread.range->lowest, units), format(spread.range->highest, units), spread.range->name,
      format(spread.spread.least.current, units), format(spread.spread.most.current, units),
      wattsText(spread.spread.least.delivered), wattsText(spread.spread.most.delivered),
      rigs::inEnglish(rigs::citeText(spread.range->cite)));
}

// The range that goes furthest down and up.
const rigs::SpreadInRange* widestOf(const rigs::CircuitVerdict& verdict) {
  const rigs::SpreadInRange* widest = nullptr;
  const auto width = [](const rigs::SpreadInRange& s) {
    return s.range->highest - s.range->lowest;
  };
  for (const rigs::SpreadInRange& spread : verdict.spreads)
    if (!widest || width(spread) > width(*widest)) widest = &spread;
  return widest;
}

// Verdicts of several codes, without saying twice what two of them say in the same words.
class CircuitTelling {
 public:
  CircuitTelling(Page& page, UnitSystem units, bool everyRule)
      : page_(page), units_(units), everyRule_(everyRule) {}

  void say(const rigs::CircuitVerdict& verdict) {
    page_.say("   ", said(everyRule_ ? rigs::verdictText(verdict) : rigs::verdictInBrief(verdict)));
    for (const rigs::Finding& finding : verdict.findings) {
      if (!everyRule_ && isQuiet(verdict, finding)) continue;
      once(said(everyRule_ ? rigs::findingText(finding) : rigs::findingInBrief(verdict, finding)));
    }
    if (everyRule_) {
      for (const rigs::SpreadInRange& spread : verdict.spreads) once(spreadText(spread, units_));
    } else {
      once(keptText(verdict));
      if (const auto* widest = widestOf(verdict); widest && !spreadTold_)
        once(spreadText(*widest, units_));
      spreadTold_ = true;
    }
    if (everyRule_ || verdict.overall == rigs::Fit::DoesNotFit)
      once(said(rigs::informationText(verdict)));
  }

 private:
  std::string said(const rigs::Told& told) const { return rigs::inEnglish(told, units_); }
  void once(const std::string& text) {
    if (text.empty() || std::find(told_.begin(), told_.end(), text) != told_.end()) return;
    told_.push_back(text);
    page_.say("   ", "· " + text);
  }

  Page& page_;
  UnitSystem units_;
  bool everyRule_;
  bool spreadTold_ = false;
  std::vector<std::string> told_;
};

// To the digits that tell 13.04 A from 13 A.
std::string closely(physics::Current current, UnitSystem units) {
  return format(current, units, {.significantDigits = 4, .decimals = {}});
}

// The worst of all the rules that judge one circuit, in words.
std::string worstText(const rigs::CircuitLoad& circuit) {
  if (circuit.verdicts.empty()) return rigs::inEnglish(rigs::fitWords(rigs::Fit::CannotSay));
  rigs::Fit worst = rigs::Fit::Fits;
  for (const rigs::CircuitVerdict& verdict : circuit.verdicts)
    worst = std::max(worst, verdict.overall);
  return rigs::inEnglish(rigs::fitWords(worst)) + (worst == rigs::Fit::OnlyIf ? " …" : "");
}

void sayCircuit(Page& page, const std::string& lead, const std::string& which,
                const rigs::CircuitLoad& circuit, UnitSystem units, bool everyRule) {
  const bool cable = circuit.supply.cableLoop > physics::ohms(0.0);
  page.say(lead, fmt::format("{}{} at {}{}, {} on average over the day.", which,
                             closely(circuit.branch, units), format(circuit.supply.nominal, units),
                             cable ? fmt::format(" as codes count, {} through the cable",
                                                 closely(circuit.load.current, units))
                                   : std::string(),
                             format(circuit.mean, units)));
  if (circuit.verdicts.empty()) {
    page.say("   ",
             "Cannot say: the plan names no region and no catalogue circuit, so no rules apply. "
             "Write \"region\" into the plan's \"place\".");
  }
  CircuitTelling telling(page, units, everyRule);
  for (const rigs::CircuitVerdict& verdict : circuit.verdicts) telling.say(verdict);
}

std::string timeOrNot(const std::optional<physics::Time>& time) {
  return time ? "mash to boil in " + roughTime(*time) : "does not boil";
}

std::string dayText(physics::Outcome outcome, const std::optional<physics::Time>& toBoil,
                    physics::Time day) {
  if (outcome != physics::Outcome::Done) return outcomeWord(outcome);
  return timeOrNot(toBoil) + "; the day takes " + roughTime(day);
}

// Two codes that say the same of the same current are named together.
class Merged {
 public:
  void add(const std::string& region, const std::string& text) {
    for (auto& [regions, said] : lines_) {
      if (said != text) continue;
      regions += " and " + region;
      return;
    }
    lines_.emplace_back(region, text);
  }
  void say(Page& page, std::string lead) const {
    for (const auto& [regions, text] : lines_) {
      page.say(lead, regions + ", " + text);
      lead = "   ";
    }
  }

 private:
  std::vector<std::pair<std::string, std::string>> lines_;
};

void sayReadings(Page& page, const std::string& lead, const rigs::CircuitAnswer& circuit,
                 UnitSystem units) {
  Merged merged;
  for (const rigs::ReadingDay& day : circuit.readings) {
    merged.add(
        day.region,
        fmt::format("{}: {} at most, an element of {} at {}; {} reach the vessel, {}.{}",
                    rigs::inEnglish(day.reading.name, units), format(day.reading.limit, units),
                    wattsText(day.largest.rating), format(day.largest.ratedAt, units),
                    wattsText(day.delivered), dayText(day.outcome, day.toBoil, day.day),
                    day.fits ? " What the rig has stays within." : ""));
  }
  if (circuit.circuits.size() < 2) return merged.say(page, lead);
  page.say(lead, "On the first circuit, the second as planned:");
  merged.say(page, "   ");
}

std::string elementsText(const rigs::ShortestDay& day, UnitSystem units) {
  const auto one = [&](std::size_t i) {
    return fmt::format("{} at {}", wattsText(day.elements[i].rating),
                       format(day.elements[i].ratedAt, units));
  };
  if (day.elements.size() == 1) return "one element of " + one(0);
  const char* on = day.imagined ? "two such circuits" : "its two circuits";
  if (one(0) == one(1)) return fmt::format("two elements of {} on {}", one(0), on);
  return fmt::format("two elements, {} and {}, on {}", one(0), one(1), on);
}

void sayShortest(Page& page, const std::string& lead, const rigs::CircuitAnswer& circuit,
                 UnitSystem units) {
  Merged merged;
  for (const rigs::ShortestDay& day : circuit.shortest) {
    std::string limits;
    for (const physics::Current& limit : day.limits)
      limits += (limits.empty() ? "" : " and ") + format(limit, units);
    merged.add(day.region,
               fmt::format("{} ({}): {}; {}.", rigs::inEnglish(day.reading, units), limits,
                           elementsText(day, units), dayText(day.outcome, day.toBoil, day.day)));
  }
  merged.say(page, lead);
  if (!circuit.split) return;
  const rigs::Split& split = *circuit.split;
  std::string parts;
  for (const rigs::SplitPart& part : split.parts)
    parts +=
        fmt::format("{}{} at {} ({})", parts.empty() ? "" : " and ", wattsText(part.element.rating),
                    format(part.element.ratedAt, units), format(part.current, units));
  page.say("   ", fmt::format("The rig's own power over {}: {}.",
                              split.imagined ? "two such circuits" : "its two circuits", parts));
  std::vector<std::string> told;
  for (const rigs::SplitPart& part : split.parts) {
    for (const rigs::CircuitVerdict& verdict : part.verdicts) {
      std::string text = rigs::inEnglish(rigs::verdictText(verdict), units);
      if (std::find(told.begin(), told.end(), text) != told.end()) continue;
      page.say("   ", "· " + text);
      told.push_back(std::move(text));
    }
  }
}

}  // namespace

Page circuitPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units,
                 bool everyRule) {
  Page page = startPage(plan, units);
  page.cautions = rigs::cautionTexts(rigs::About::Circuit, plan, answers, units);

  page.heading("Can the circuit carry it?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::CircuitAnswer& circuit = answers.rigs[i].circuit;
    const auto& all = circuit.circuits;
    if (all.size() < 2) {
      sayCircuit(page, letter(i), {}, all.front(), units, everyRule);
    } else {
      page.say(letter(i), fmt::format("Two circuits: first: {}; second: {}.", worstText(all[0]),
                                      worstText(all[1])));
      sayCircuit(page, "   ", "First circuit: ", all[0], units, everyRule);
      sayCircuit(page, "   ", "Second circuit: ", all[1], units, everyRule);
    }
    if (circuit.addedByCable && *circuit.addedByCable > physics::seconds(1.0)) {
      page.say("   ", fmt::format("The cable adds {} to heating to the boil.",
                                  roughTime(*circuit.addedByCable)));
    }
  }
  page.heading("What would each reading allow, and how long is the day then?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    sayReadings(page, letter(i), answers.rigs[i].circuit, units);
  }
  page.heading("What is the shortest day within the current?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    sayShortest(page, letter(i), answers.rigs[i].circuit, units);
  }
  if (!everyRule)
    page.say(
        "Rules that are kept are named only; --every-rule shows them with their arithmetic, "
        "clauses and all voltage ranges.");

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
  t.quantity("current, as codes count", first([](const auto& c) { return c.branch; }));
  t.quantity("current, cable included", first([](const auto& c) { return c.load.current; }));
  t.quantity("mean current", first([](const auto& c) { return c.mean; }));
  t.quantity("reaches the vessel", first([](const auto& c) { return c.load.delivered; }));
  t.quantity("lost in the cable", first([](const auto& c) { return c.load.inCable; }));
  t.quantity("voltage drop", first([](const auto& c) {
               return static_cast<double>(c.load.inCable / c.load.fromWall);
             }));
  t.quantity("second circuit", second([](const auto& c) { return c.supply.rating; }));
  t.quantity("its current, as codes count", second([](const auto& c) { return c.branch; }));
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
    return rigs::inEnglish(rigs::fitWords(rig.circuit.overall()));
  });
  page.show(t.take());
  return page;
}

}  // namespace gui
