// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/cautions.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <variant>

#include "rigs/answers/chilling.hpp"
#include "rigs/answers/cooling.hpp"
#include "rigs/answers/safety.hpp"
#include "rigs/results/circuit_words.hpp"

namespace rigs {
namespace {

constexpr FormatOptions kTwoDigits{.significantDigits = 2, .decimals = {}};

// The rig whose mash is longest below hot holding's limit in the plan's own night; nothing where
// all stay above it.
const RigAnswer* longestWarm(const Answers& answers) {
  const RigAnswer* longest = nullptr;
  for (const RigAnswer& rig : answers.rigs) {
    if (!rig.night || !rig.night->own || rig.night->asItIs.below <= physics::minutes(1.0)) continue;
    // Of kettles that cool alike the first, not the one with the largest last digit.
    if (!longest || rig.night->asItIs.below > longest->night->asItIs.below + physics::seconds(1.0))
      longest = &rig;
  }
  return longest;
}

// Hot-holding limit of food service, 135 F (FDA Food Code 3-501.16).
Caution leftWarm(const Plan& plan, const Answers* answers) {
  const Amount limit = amount(kWarmUpTo, kTwoDigits);
  const RigAnswer* rig = hasOwnNight(plan) && answers ? longestWarm(*answers) : nullptr;
  if (!rig)
    return {"left warm", Told(TOLD("Answer",
                                   "Wort left below about %1 for hours can sour and grow bacteria. "
                                   "Boil it promptly afterwards, or do not leave it that long."),
                              limit)};
  return {"left warm", Told(TOLD("Answer",
                                 "Wort left below about %1 for hours can sour and grow bacteria: "
                                 "in this plan it is that for %2 of its %3 unplugged (%4). Boil it "
                                 "promptly afterwards, or do not leave it that long."),
                            limit, roughly(rig->night->asItIs.below),
                            asChosen(rig->night->asItIs.alone), Verbatim{rig->name})};
}

// Hours in which people sleep; own judgement.
constexpr physics::Time kNightFrom = physics::hours(22.0);
constexpr physics::Time kNightUntil = physics::hours(6.5);

// A beginning that was solved, or one at night, tempts to let a kettle begin by itself.
bool mayBeginAlone(const Plan& plan) {
  if (plan.ready) return true;
  if (plan.rigs.empty()) return false;  // nobody's day
  const physics::Time clock = clockOfDay(plan.startOfDay);
  return clock >= kNightFrom || clock < kNightUntil;
}

Caution unattended() {
  return {"unattended",
          Told(TOLD("Answer",
                    "Never leave an element to switch on by itself: be there, awake, from its "
                    "first minute and as long as it heats. A kettle that stands empty or has "
                    "leaked burns its element out, and fire can follow. Local codes may forbid "
                    "heating that nobody watches."))};
}

Caution goingIn() {
  return {"additions",
          Told(TOLD("Answer",
                    "Sugar, or anything cold, makes boiling wort foam up, boil over and splash. "
                    "Element off first, gloves on, stand back; add it slowly, stir until it has "
                    "dissolved, and only then switch on again: sugar that sinks onto a hot element "
                    "scorches (common practice, no source)."))};
}

Caution liftedGrain() {
  return {"lifted grain",
          Told(TOLD("Answer",
                    "Lifted grain is heavy, and hot wort and water run from it: hang it from "
                    "something made for its weight, never stand or reach under it, wear long "
                    "gloves, and pour rinsing water slowly and from a small jug: over a hot bag or "
                    "basket it splashes and scalds."))};
}
Caution elementBelow() {
  return {"element below",
          Told(TOLD("Answer",
                    "An element that stays on while the grain drains has less wort above it than "
                    "before: look that it is covered before the grain is out, or switch it off."))};
}

// Hot enough for long enough to count as heated through, were it only for a while.
constexpr physics::Temperature kStillHot = physics::celsius(80.0);

// What goes in late and cold is in the beer as it came.
std::optional<Caution> unboiled(const Answers& answers) {
  const physics::Added* coldest = nullptr;
  for (const RigAnswer& rig : answers.rigs)
    for (const physics::Added& added : rig.day.additions)
      if (!added.backIn && added.mixed < kStillHot && (!coldest || added.mixed < coldest->mixed))
        coldest = &added;
  if (!coldest) return std::nullopt;
  return Caution{"unboiled",
                 Told(TOLD("Answer",
                           "What goes in last leaves the wort at %1, and it does not boil again: "
                           "whatever lives in that is not killed. Boil such water first and let it "
                           "cool covered, with its lid loose."),
                      amount(coldest->mixed))};
}

}  // namespace

std::vector<Caution> cautions(const Plan& plan, bool leftAlone, const Answers* answers) {
  std::vector<Caution> all{
      {"mains", Told(TOLD("Answer",
                          "Mains current kills. These figures are for planning only; rules differ "
                          "from place to place. Have a licensed electrician check circuit, plug, "
                          "cable and enclosure."))},
      {"ground fault", Told(TOLD("Answer",
                                 "Use ground-fault protection (GFCI, RCD) and a sound earth; test "
                                 "it before each use. If it trips, stop and find out why."))},
      {"element", Told(TOLD("Answer",
                            "Keep the element covered whenever it is on; dry, it burns out in "
                            "seconds."))},
      {"steam", Told(TOLD("Answer",
                          "Never close, clamp or block a heated vessel, or shut the lid on a "
                          "boil."))},
      {"boil-over",
       Told(TOLD("Answer", "Stay with the kettle: foam rises fast when the boil begins."))},
      {"scald",
       Told(TOLD("Answer",
                 "Hot wort and steam burn skin in a second. Keep children and pets away."))}};
  if (plan.batch.rinse || plan.batch.drain) all.push_back(liftedGrain());
  if (plan.batch.drain && plan.batch.drain->elementOn) all.push_back(elementBelow());
  if (!plan.batch.additions.empty()) all.push_back(goingIn());
  if (auto cold = answers ? unboiled(*answers) : std::nullopt) all.push_back(std::move(*cold));
  if (mayBeginAlone(plan)) all.push_back(unattended());
  if (leftAlone || hasOwnNight(plan)) all.push_back(leftWarm(plan, answers));
  return all;
}

namespace {

// Why nothing is ever to be shut: said with the force on the plan's own largest lid.
Caution steamForce(const Plan& plan) {
  physics::Length widest = physics::metres(0.0);
  for (const RigPlan& rig : plan.rigs) widest = std::max(widest, rig.rig.vessel.innerDiameter);
  const physics::Temperature hot = physics::celsius(105.0);
  constexpr double kNewtonsInKilogram = 9.80665;
  // To the next ten: it is there to be felt.
  const double weight = 10.0 * std::round(newtonsOnLid(widest, hot) / kNewtonsInKilogram / 10.0);
  return {"steam force",
          Told(TOLD("Phrases",
                    "Vents, drains and lids stay open while it heats: at %1 trapped steam would "
                    "already push on a lid of %2 like a weight of %3."),
               amount(hot), amount(widest, kTwoDigits),
               amount(physics::kilograms(weight), kTwoDigits))};
}

// An estimate's worth of digits: whole hours from three hours on, whole minutes below.
Amount rough(physics::Time time) {
  const bool long_ = time >= physics::hours(3.0);
  return amount(long_ ? physics::hours(std::round(physics::inHours(time)))
                      : physics::minutes(std::round(physics::inMinutes(time))));
}

Amount degrees(double celsius) { return amount(physics::celsius(celsius), kTwoDigits); }

Told coolingText(const std::string& name, const NoChill& cool, const Plan& plan) {
  const Told who = plan.rigs.size() == 1
                       ? Told(TOLD("Phrases", "it"))
                       : Told(TOLD("Phrases", "the slowest (%1)"), Verbatim{name});
  const Number grown{growth(physics::hours(2.0), physics::minutes(20.0))};
  const auto needed = timeConstantForFood(plan.place.room);
  if (cool.toHotHolding == physics::seconds(0.0))
    return Told(TOLD("Phrases",
                     "What goes in as the boil ends leaves wort below %1 at once, where bacteria "
                     "grow in it until yeast has taken over. Food service allows 2 h from there to "
                     "%2, and 6 h to %3 (FDA Food Code 3-501.14). Cool quickly and pitch "
                     "promptly."),
                degrees(57.0), degrees(21.0), degrees(5.0));
  // Air too warm for 21 °C is too warm for 5 °C.
  if (!cool.toTwentyOne || !cool.toHotHolding || !needed) {
    return Told(TOLD("Phrases",
                     "The plan says nothing of cooling, and no hours after the boil are "
                     "counted. Left in the kettle to cool by itself, lid as in the mash, %1 "
                     "would never come down to %2 in this room (one time constant "
                     "of %3, an estimate). Food service allows 2 h for that, and 6 h to %4, "
                     "which air of this room never gives (FDA Food Code 3-501.14). What "
                     "doubles every 20 min (USDA) is %5 times as much after 2 h. Cool quickly "
                     "and pitch promptly."),
                who, degrees(21.0), rough(cool.timeConstant), degrees(5.0), grown);
  }
  const Template<9> text =
      cool.toFive
          ? Template<9>(TOLD("Phrases",
                             "The plan says nothing of cooling, and no hours after the boil are "
                             "counted. Left in the kettle to cool by itself, lid as in the mash, "
                             "%1 would take about %2 to come down to %3 and %4 more "
                             "to %5 (one time constant of %6, an estimate). Food service allows "
                             "2 h for that, a time constant of %7 here, and 6 h to %8 (FDA Food "
                             "Code 3-501.14). What doubles every 20 min (USDA) is %9 times as "
                             "much after 2 h. Cool quickly and pitch promptly."))
          : Template<9>(TOLD("Phrases",
                             "The plan says nothing of cooling, and no hours after the boil are "
                             "counted. Left in the kettle to cool by itself, lid as in the mash, "
                             "%1 would take about %2 to come down to %3 and %4 more "
                             "to %5 (one time constant of %6, an estimate). Food service allows "
                             "2 h for that, a time constant of %7 here, and 6 h to %8, which air "
                             "of this room never gives (FDA Food Code 3-501.14). What doubles "
                             "every 20 min (USDA) is %9 times as much after 2 h. Cool quickly and "
                             "pitch promptly."));
  return Told(text, who, rough(*cool.toHotHolding), degrees(57.0), rough(*cool.toTwentyOne),
              degrees(21.0), rough(cool.timeConstant), rough(*needed), degrees(5.0), grown);
}

// The slowest kettle to cool by itself, against what food service asks.
std::optional<Caution> cooling(const Plan& plan, const Answers& answers) {
  struct Kettle {
    std::string name;
    NoChill cool;
  };
  std::vector<Kettle> kettles;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const auto cool = noChill(plan.rigs[i].rig, answers.rigs[i].day, plan.place);
    if (cool) kettles.push_back({plan.rigs[i].name, *cool});
  }
  if (kettles.empty()) return std::nullopt;
  const auto& [name, slowest] = *std::max_element(
      kettles.begin(), kettles.end(),
      [](const Kettle& a, const Kettle& b) { return a.cool.timeConstant < b.cool.timeConstant; });
  return Caution{"cooling", coolingText(name, slowest, plan)};
}

// Of a plan that does say how it is chilled.
Caution chilledElsewhere() {
  return {"cooling",
          Told(TOLD("Phrases",
                    "No hours after the boil are counted here: how long it takes to chill is a "
                    "question of its own. Food service allows 2 h from %1 to %2 and 6 h to %3 (FDA "
                    "Food Code 3-501.14). Cool quickly and pitch promptly."),
               degrees(57.0), degrees(21.0), degrees(5.0))};
}

}  // namespace

std::vector<Caution> cautionsFor(About about, const Plan& plan, const Answers& answers) {
  const bool jackets = std::any_of(answers.rigs.begin(), answers.rigs.end(),
                                   [](const RigAnswer& rig) { return rig.jacket.has_value(); });
  const bool leftAlone = about == About::Insulation || about == About::Answer ||
                         (about == About::Everything && jackets);
  std::vector<Caution> all = cautions(plan, leftAlone, &answers);
  if (about == About::Boil || about == About::Insulation || about == About::Cost) return all;
  if (about == About::Chilling) {
    const auto chilling = chillCautions(answers);
    all.insert(all.end(), chilling.begin(), chilling.end());
    return all;
  }
  const auto cool =
      statesChilling(plan) ? std::optional(chilledElsewhere()) : cooling(plan, answers);
  const bool verdicts = about != About::Day && about != About::Room;
  if (verdicts) {
    // The last one will say more than this one does.
    all.front().text =
        Told(TOLD("Answer", "Mains current kills. These figures are for planning only."));
    if (about != About::Answer) {
      const auto circuits = circuitCautions(plan, answers);
      all.insert(all.end(), circuits.begin(), circuits.end());
    }
  }
  if (about != About::Day && about != About::Answer) all.push_back(steamForce(plan));
  if (cool && about != About::Answer) all.push_back(*cool);
  const bool chills =
      about == About::Everything &&
      std::any_of(answers.rigs.begin(), answers.rigs.end(), [](const RigAnswer& rig) {
        return rig.chill && (rig.chill->asked || rig.chill->isStated);
      });
  if (chills) {
    for (Caution& one : chillCautions(answers))
      if (std::none_of(all.begin(), all.end(),
                       [&](const Caution& told) { return told.topic == one.topic; }))
        all.push_back(std::move(one));
  }
  const bool rooms = std::any_of(answers.rigs.begin(), answers.rigs.end(),
                                 [](const RigAnswer& rig) { return rig.room.has_value(); });
  if (rooms) all.insert(all.begin() + 1, roomCaution(answers));
  if (verdicts) all.push_back({"deferral", electricianText()});
  return all;
}

bool isOfThePage(About about, std::string_view topic) {
  const auto isOneOf = [&](std::initializer_list<std::string_view> topics) {
    return std::find(topics.begin(), topics.end(), topic) != topics.end();
  };
  switch (about) {
    case About::Sizing:
      return isOneOf({"low voltage", "dry firing", "headspace"});
    case About::Circuit:
      return isOneOf({"long use", "low voltage", "earth", "leakage", "cord", "attendance"});
    case About::Room:
      return !isOneOf({"cooling", "steam force"});
    default:
      return true;
  }
}

}  // namespace rigs
