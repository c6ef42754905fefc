// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/cautions.hpp"

#include <algorithm>
#include <cmath>
#include <variant>

#include "rigs/answers/cooling.hpp"
#include "rigs/answers/safety.hpp"
#include "rigs/results/circuit_words.hpp"

namespace rigs {

std::vector<Caution> cautions(const Plan& plan, bool leftAlone, UnitSystem units) {
  std::vector<Caution> all{
      {"mains",
       "Mains current kills. These figures are for planning only; rules differ from place to "
       "place. Have a licensed electrician check circuit, plug, cable and enclosure."},
      {"ground fault",
       "Use ground-fault protection (GFCI, RCD) and a sound earth; test it before each use. If it "
       "trips, stop and find out why."},
      {"element",
       "Keep the element covered with liquid whenever it is on; dry, it burns out in seconds."},
      {"steam",
       "Never close, clamp or block a vessel that is being heated, and never shut the lid on a "
       "boil."},
      {"boil-over", "Stay with the kettle: foam rises fast when the boil begins."},
      {"scald", "Hot wort and steam burn skin in a second. Keep children and pets away."}};
  if (leftAlone || std::holds_alternative<physics::UnpluggedMash>(plan.batch.mash)) {
    // Hot-holding limit of food service, 135 F (FDA Food Code 3-501.16).
    const std::string limit =
        format(physics::celsius(57.0), units, {.significantDigits = 2, .decimals = {}});
    all.push_back({"left warm", "Wort left below about " + limit +
                                    " for hours can sour and grow bacteria. Boil it promptly "
                                    "afterwards, or do not leave it that long."});
  }
  return all;
}

namespace {

// Why nothing is ever to be shut: said with the force on the plan's own largest lid.
Caution steamForce(const Plan& plan, UnitSystem units) {
  physics::Length widest = physics::metres(0.0);
  for (const RigPlan& rig : plan.rigs) widest = std::max(widest, rig.rig.vessel.innerDiameter);
  const physics::Temperature hot = physics::celsius(105.0);
  constexpr double kNewtonsInKilogram = 9.80665;
  // To the next ten: it is there to be felt.
  const double weight = 10.0 * std::round(newtonsOnLid(widest, hot) / kNewtonsInKilogram / 10.0);
  const FormatOptions two{.significantDigits = 2, .decimals = {}};
  return {"steam force", "Vents, drains and lids stay open while it heats: at " +
                             format(hot, units) + " trapped steam would already push on a lid of " +
                             format(widest, units, two) + " like a weight of " +
                             format(physics::kilograms(weight), units, two) + '.'};
}

// An estimate's worth of digits: whole hours from three hours on, whole minutes below.
std::string rough(physics::Time time) {
  const bool long_ = time >= physics::hours(3.0);
  return format(long_ ? physics::hours(std::round(physics::inHours(time)))
                      : physics::minutes(std::round(physics::inMinutes(time))),
                UnitSystem::SI);
}

// The slowest kettle to cool by itself, against what food service asks.
std::optional<Caution> cooling(const Plan& plan, const Answers& answers, UnitSystem units) {
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
  const FormatOptions two{.significantDigits = 2, .decimals = {}};
  const auto t = [&](double celsius) { return format(physics::celsius(celsius), units, two); };
  std::string text =
      "The plan says nothing of cooling, and no hours after the boil are counted. Left in the "
      "kettle to cool by itself, lid as in the mash, the slowest (" +
      name + ") would ";
  if (slowest.toTwentyOne && slowest.toHotHolding) {
    text += "take about " + rough(*slowest.toHotHolding) + " to come down to " + t(57.0) + " and " +
            rough(*slowest.toTwentyOne) + " more to " + t(21.0);
  } else {
    text += "never come down to " + t(21.0) + " in this room";
  }
  text += " (one time constant of " + rough(slowest.timeConstant) +
          ", an estimate). Food service allows 2 h for that";
  if (const auto needed = timeConstantForFood(plan.place.room))
    text += ", a time constant of " + rough(*needed) + " here";
  text += ", and 6 h to " + t(5.0) +
          (slowest.toFive ? std::string() : ", which air of this room never gives") +
          " (FDA Food Code 3-501.14). What doubles every 20 min (USDA) is " +
          formatNumber(growth(physics::hours(2.0), physics::minutes(20.0))) +
          " times as much after 2 h. Cool quickly and pitch promptly.";
  return Caution{"cooling", text};
}

}  // namespace

std::vector<Caution> cautionsFor(About about, const Plan& plan, const Answers& answers,
                                 UnitSystem units) {
  const bool jackets = std::any_of(answers.rigs.begin(), answers.rigs.end(),
                                   [](const RigAnswer& rig) { return rig.jacket.has_value(); });
  const bool leftAlone = about == About::Insulation || about == About::Answer ||
                         (about == About::Everything && jackets);
  std::vector<Caution> all = cautions(plan, leftAlone, units);
  if (about == About::Boil || about == About::Insulation || about == About::Cost) return all;
  const auto cool = cooling(plan, answers, units);
  const bool verdicts = about != About::Day && about != About::Room;
  if (verdicts) {
    // The last one will say more than this one does.
    all.front().text = "Mains current kills. These figures are for planning only.";
    if (about != About::Answer) {
      const auto circuits = circuitCautions(plan, answers, units);
      all.insert(all.end(), circuits.begin(), circuits.end());
    }
  }
  if (about != About::Day && about != About::Answer) all.push_back(steamForce(plan, units));
  if (cool && about != About::Answer) all.push_back(*cool);
  const bool rooms = std::any_of(answers.rigs.begin(), answers.rigs.end(),
                                 [](const RigAnswer& rig) { return rig.room.has_value(); });
  if (rooms) all.insert(all.begin() + 1, roomCaution(answers, units));
  if (verdicts) all.push_back({"deferral", std::string(electricianText())});
  return all;
}

std::vector<std::string> cautionTexts(About about, const Plan& plan, const Answers& answers,
                                      UnitSystem units) {
  std::vector<std::string> texts;
  for (const Caution& caution : cautionsFor(about, plan, answers, units))
    texts.push_back(caution.text);
  return texts;
}

}  // namespace rigs
