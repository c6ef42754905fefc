// SPDX-License-Identifier: GPL-3.0-or-later
// What belongs to electrical verdicts and to the room.
#include <algorithm>

#include "rigs/answers/figures.hpp"
#include "rigs/answers/safety.hpp"
#include "rigs/results/cautions.hpp"

namespace rigs {

using namespace physics;

namespace {

// Every rig's part of one caution.
class CautionParts {
 public:
  void add(Told part) { list_.items.emplace_back(std::move(part)); }
  bool empty() const { return list_.items.empty(); }
  List take() { return std::move(list_); }

 private:
  List list_{.items = {}, .joint = Joint::Semicolon};
};

Told scaldCaution(const Answers& answers) {
  const auto mash = hottestMash(answers);
  Temperature boil = celsius(0.0);
  for (const RigAnswer& rig : answers.rigs) boil = std::max(boil, rig.day.boilingPoint);
  const Told mashing = mash ? scaldText(*mash) : Told();
  const Amount tabled = amount(kHottestTabledScald);
  const Amount away = amount(metres(1.0));
  if (mashing.empty()) {
    return Told(TOLD("Phrases",
                     "%1. (After Moritz & Henriques 1947, tabled up to %2.) Children and older "
                     "people burn faster, and wort clings. Keep children and pets at least %3 "
                     "away."),
                scaldText(boil), tabled, away);
  }
  return Told(TOLD("Phrases",
                   "%1, the hottest of this mash. %2. (After Moritz & Henriques 1947, tabled up to "
                   "%3.) Children and older people burn faster, and wort clings. Keep children and "
                   "pets at least %4 away."),
              mashing, scaldText(boil), tabled, away);
}

// A rule of long use, and what it would ask of each rig's circuits.
struct LongLoad {
  std::string rig;
  Current load, rating;
};
struct LongRule {
  const LongUse* rule;
  std::string region;
  std::vector<LongLoad> loads;
};

std::vector<LongRule> longRules(const Answers& answers) {
  std::vector<LongRule> all;
  for (const RigAnswer& rig : answers.rigs) {
    for (const CircuitLoad& circuit : rig.circuit.circuits) {
      for (const CircuitVerdict& verdict : circuit.verdicts) {
        for (const LongUse& rule : verdict.rules->longUse) {
          if (countsAsLong(rule, rig.circuit.duty) == Counts::No) continue;
          auto known = std::find_if(all.begin(), all.end(),
                                    [&](const LongRule& one) { return one.rule == &rule; });
          if (known == all.end()) known = all.insert(all.end(), {&rule, verdict.rules->region, {}});
          known->loads.push_back({rig.name, verdict.load, circuit.supply.rating});
        }
      }
    }
  }
  return all;
}

// What the rules of each region say of long use, with the rigs whose circuits would then be too
// small, or else with the one that draws most.
void longUseCautions(const Answers& answers, std::vector<Caution>& all) {
  const auto amperes = [](Current current) {
    return amount(current, {.significantDigits = 3, .decimals = {}});
  };
  for (LongRule& one : longRules(answers)) {
    std::stable_sort(one.loads.begin(), one.loads.end(), [](const LongLoad& a, const LongLoad& b) {
      return a.load / a.rating > b.load / b.rating;
    });
    CautionParts told;
    for (const LongLoad& of : one.loads) {
      if (!told.empty() && of.load <= one.rule->share * of.rating) break;
      told.add(Told(TOLD("Phrases", "%1: %2 in place of %3"), Verbatim{of.rig},
                    amperes(of.load / one.rule->share), amperes(of.load)));
    }
    all.push_back(
        {"long use", Told(TOLD("Phrases",
                               "%1: %2 That may be so here: %3. An inspector's or electrician's "
                               "judgement decides; the stricter result is shown."),
                          fromRules(one.region), fromRules(one.rule->text), told.take())});
  }
}

// Elements on a supply below their own voltage.
void lowVoltageCaution(const Plan& plan, const Answers& answers, std::vector<Caution>& all) {
  CautionParts told;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Rig& rig = plan.rigs[i].rig;
    const double share =
        static_cast<double>(ratingAt(rig.element, rig.supply.nominal) / rig.element.rating);
    if (share > 0.95) continue;
    told.add(Told(TOLD("Phrases", "%1: %2 of its element's rating, %3 on %4"),
                  Verbatim{plan.rigs[i].name},
                  amount(share, {.significantDigits = 2, .decimals = {}}),
                  amount(rig.element.ratedAt), amount(rig.supply.nominal)));
  }
  if (told.empty()) return;
  all.push_back({"low voltage",
                 Told(TOLD("Phrases",
                           "Below its rated voltage an element gives less: %1. All times here "
                           "count with that. Do not fit a larger one to make up for it without "
                           "having the circuit checked again."),
                      told.take())});
}

// Where a standard lets the element leak enough to trip its protection.
Told leakCaution(const Answers& answers) {
  for (const RigAnswer& rig : answers.rigs)
    for (const CircuitLoad& circuit : rig.circuit.circuits)
      for (const CircuitVerdict& verdict : circuit.verdicts)
        if (verdict.leakageMayTrip) {
          const Protection& device = *verdict.rules->groundFault;
          return Told(TOLD("Phrases",
                           "An element of this size may leak up to %1 by its standard, and a %2 "
                           "may trip from %3: expect trips while it is damp. Have it dried or "
                           "replaced; never take the protection away or bypass it."),
                      amountLike(*verdict.leakage, "1 mA"), fromRules(device.name),
                      amountLike(device.holds, "1 mA"));
        }
  return Told(TOLD("Phrases",
                   "An element that was stored damp may leak and trip the protection: have it "
                   "dried or replaced, never bypass the protection."));
}

void dryFiringCaution(const Plan& plan, const Answers& answers, std::vector<Caution>& all) {
  CautionParts cover;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Rig& rig = plan.rigs[i].rig;
    if (rig.element.topHeight <= metres(0.0) || answers.rigs[i].day.lowest <= litres(0.0)) continue;
    const Volume needed = crossSection(rig.vessel) * rig.element.topHeight;
    cover.add(
        Told(TOLD("Phrases", "%1 needs %2 to cover its element and has %3 at the least with it on"),
             Verbatim{plan.rigs[i].name}, amount(needed), amount(answers.rigs[i].day.lowest)));
  }
  if (cover.empty()) return;
  all.push_back({"dry firing", Told(TOLD("Phrases",
                                         "Dry firing: %1. In air an element's sheath goes to %2 "
                                         "in seconds; switch off before draining or "
                                         "transferring."),
                                    cover.take(), amount(celsius(1000.0)))});
}

Caution headspaceCaution(const Plan& plan, const Answers& answers) {
  CautionParts space;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Volume left = capacity(plan.rigs[i].rig.vessel) - answers.rigs[i].day.fullest;
    space.add(Told(TOLD("Phrases", "%1 keeps %2"), Verbatim{plan.rigs[i].name}, amount(left)));
  }
  return {"headspace", Told(TOLD("Phrases",
                                 "Head-space at the fullest moment: %1. Reduce power before the "
                                 "boil and at additions."),
                            space.take())};
}

bool hasCord(const Plan& plan) {
  for (const RigPlan& rig : plan.rigs)
    for (const CircuitPlan& circuit : rig.circuits)
      if (circuit.details.cable && circuit.details.cable->use != CableUse::BuildingWire)
        return true;
  return false;
}

void liftingCaution(const Plan& plan, const Answers& answers, std::vector<Caution>& all) {
  Mass heaviest = kilograms(0.0);
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    heaviest = std::max(heaviest,
                        heaviestKettle(answers.rigs[i].day, plan.batch, plan.rigs[i].rig.vessel));
  }
  if (heaviest <= kLiftingLimit) return;
  all.push_back({"lifting", Told(TOLD("Phrases",
                                      "A full kettle weighs up to %1, more than the %2 that one "
                                      "person lifts under ideal conditions (NIOSH). Do not carry "
                                      "hot liquid: let it run, pump or siphon."),
                                 amount(heaviest), amount(kLiftingLimit))});
}

void warmWortCaution(const Answers& answers, std::vector<Caution>& all) {
  Time warm = seconds(0.0);
  for (const RigAnswer& rig : answers.rigs) warm = std::max(warm, warmTime(rig));
  if (warm <= minutes(1.0)) return;
  all.push_back({"warm wort", Told(TOLD("Phrases",
                                        "Wort is between %1 and %2 for %3 of this day. Food "
                                        "service passes from %4 to %5 within 2 h and to %6 within "
                                        "6 h (FDA Food Code 3-501.14); always boil after a "
                                        "luke-warm hold, and do not count on the boil to undo many "
                                        "warm hours."),
                                   amount(kWarmFrom), amount(kWarmUpTo), amount(warm),
                                   amount(kWarmUpTo), amount(celsius(21.0)), amount(kWarmFrom))});
}

}  // namespace

Told scaldText(Temperature water) {
  const auto scald = scaldAt(water);
  if (!scald) return {};
  const Template<3> text =
      water > kHottestTabledScald
          ? Template<3>(TOLD("Phrases",
                             "At %1 bare skin burns to the second degree in %2 and to the third in "
                             "%3 at the most"))
          : Template<3>(
                TOLD("Phrases",
                     "At %1 bare skin burns to the second degree in %2 and to the third in %3"));
  return Told(text, amount(water), amount(scald->secondDegree), amount(scald->thirdDegree));
}

std::vector<Caution> circuitCautions(const Plan& plan, const Answers& answers) {
  std::vector<Caution> all;
  all.push_back({"earth", Told(TOLD("Phrases",
                                    "Metal kettle, stand and pump must be earthed through the "
                                    "supply. Never cut an earth pin or use an adaptor without "
                                    "one."))});
  all.push_back({"leakage", leakCaution(answers)});
  longUseCautions(answers, all);
  lowVoltageCaution(plan, answers, all);
  dryFiringCaution(plan, answers, all);
  all.push_back(headspaceCaution(plan, answers));
  if (hasCord(plan))
    all.push_back({"cord", Told(TOLD("Phrases",
                                     "A flexible cord or extension has its own, lower limit; for a "
                                     "time only, fully uncoiled and uncovered, with an earth wire. "
                                     "If a plug or cord is more than warm, switch off."))});
  all.push_back({"scald times", scaldCaution(answers)});
  liftingCaution(plan, answers, all);
  all.push_back({"attendance", Told(TOLD("Phrases",
                                         "Stay with a heating kettle; do not leave it on a timer "
                                         "or a remote start without someone present who can switch "
                                         "it off."))});
  warmWortCaution(answers, all);
  all.push_back({"storage", Told(TOLD("Phrases",
                                      "Do not seal unfermented wort for storage at room "
                                      "temperature: botulism spores survive boiling. Pitch "
                                      "promptly."))});
  return all;
}

Caution roomCaution(const Answers& answers) {
  Mass most = kilograms(0.0);
  for (const RigAnswer& rig : answers.rigs)
    if (rig.room) most = std::max(most, rig.room->day.released);
  return {"room", Told(TOLD("Phrases",
                            "This day releases up to %1 of water vapour. Extract it outdoors and "
                            "let replacement air in. Check that fuel-burning appliances do not "
                            "draw back."),
                       amount(most))};
}

}  // namespace rigs
