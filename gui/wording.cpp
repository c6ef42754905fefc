// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>

namespace gui {
namespace {

using physics::StageKind;
using rigs::format;

std::string percent(double share) { return format(share, UnitSystem::SI); }

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0)
      text += i + 1 < parts.size()                      ? "; "
              : parts.size() > 2                        ? "; and "
              : parts[0].find(',') != std::string::npos ? ", and "
                                                        : " and ";
    text += parts[i];
  }
  return text;
}

std::string volts(const physics::Voltage& v) { return format(v, UnitSystem::SI); }

std::string amperes(const physics::Current& i) { return format(i, UnitSystem::SI); }

std::string stageName(StageKind kind) {
  switch (kind) {
    case StageKind::Strike:
      return "Strike";
    case StageKind::MashingIn:
      return "Mash in";
    case StageKind::Ramp:
      return "Ramp";
    case StageKind::Rest:
      return "Rest";
    case StageKind::UnpluggedRest:
      return "Unplugged";
    case StageKind::HeatingToBoil:
      return "To boil";
    case StageKind::Boil:
      return "Boil";
  }
  return {};
}

std::string levelsOffText(const physics::BrewDay& day, UnitSystem units) {
  const bool weak =
      day.outcome == physics::Outcome::Steams || day.outcome == physics::Outcome::StaysFarBelow;
  if (weak && day.startsBoiling()) {
    return fmt::format(
        "It comes to {} with the lid as it is for heating, but cannot hold that in the boil: it "
        "would lose {} there and gets {}, and falls back to {}.",
        format(day.levelsOff->wanted, units), wattsText(day.levelsOff->atWanted),
        wattsText(day.electrical.delivered), format(day.levelsOff->at, units));
  }
  return fmt::format("{} is where it levels off, short of {}: at {} it would lose {} and gets {}.",
                     format(day.levelsOff->at, units), format(day.levelsOff->wanted, units),
                     format(day.levelsOff->wanted, units), wattsText(day.levelsOff->atWanted),
                     wattsText(day.electrical.delivered));
}

}  // namespace

std::string sentence(std::string text) {
  if (!text.empty() && 'a' <= text.front() && text.front() <= 'z') {
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  }
  return text;
}

std::string wattsText(physics::Power power) {
  const double watts = physics::inWatts(power);
  if (!(std::abs(watts) < 9999.5)) return format(power, UnitSystem::SI);
  return rigs::formatNumber(watts, {.significantDigits = 4, .decimals = 0}) + " W";
}

std::string hoursAndMinutes(physics::Time time) {
  const long minutes = std::lround(physics::inMinutes(time));
  return fmt::format("{}{}:{:02}", minutes < 0 ? "-" : "", std::abs(minutes) / 60,
                     std::abs(minutes) % 60);
}

std::string roughTime(physics::Time time) {
  const double minutes = physics::inMinutes(time);
  if (!std::isfinite(minutes)) return "unknown";
  if (std::abs(minutes) < 10.0) {
    return format(physics::seconds(std::round(physics::inSeconds(time))), UnitSystem::SI);
  }
  return format(physics::minutes(std::round(minutes)), UnitSystem::SI);
}

std::string clockTime(physics::Time sinceMidnight) {
  const long minutes = std::lround(physics::inMinutes(sinceMidnight));
  const long days = minutes / (24 * 60);
  const long left = minutes % (24 * 60);
  const std::string clock = fmt::format("{:02}:{:02}", left / 60, left % 60);
  return days > 0 ? fmt::format("+{} d {}", days, clock) : clock;
}

std::string money(double amount, const rigs::Tariff& tariff) {
  const bool small = amount != 0.0 && std::abs(amount) < 0.0995;
  const rigs::FormatOptions digits =
      small ? rigs::FormatOptions{.significantDigits = 2, .decimals = {}}
            : rigs::FormatOptions{.significantDigits = 3, .decimals = 2};
  const std::string number = rigs::formatNumber(std::abs(amount), digits);
  const std::string sign =
      amount < 0.0 && number.find_first_not_of("0.") != std::string::npos ? "-" : "";
  // A symbol stands in front, a code such as EUR behind.
  const bool code = !tariff.currency.empty() &&
                    (std::isalpha(static_cast<unsigned char>(tariff.currency.back())) != 0);
  return code ? sign + number + ' ' + tariff.currency : sign + tariff.currency + number;
}

std::vector<std::string> stageNames(const physics::BrewDay& day) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < day.stages.size(); ++i) {
    const StageKind kind = day.stages[i].kind;
    const auto same = [&](const physics::Stage& s) { return s.kind == kind; };
    const auto begin = day.stages.begin();
    const auto all = std::count_if(begin, day.stages.end(), same);
    const auto before = std::count_if(begin, begin + static_cast<std::ptrdiff_t>(i), same);
    names.push_back(all > 1 ? fmt::format("{} {}", stageName(kind), before + 1) : stageName(kind));
  }
  return names;
}

std::string pathName(physics::Path path) {
  switch (path) {
    case physics::Path::Side:
      return "side";
    case physics::Path::DryWall:
      return "dry wall above it";
    case physics::Path::Base:
      return "base";
    case physics::Path::Lid:
      return "lid";
    case physics::Path::SurfaceConvection:
      return "surface, to the air";
    case physics::Path::SurfaceRadiation:
      return "surface, radiated";
    case physics::Path::Evaporation:
      return "evaporation";
    case physics::Path::Hose:
      return "hose";
  }
  return {};
}

std::string limitWord(physics::Limit limit) {
  switch (limit) {
    case physics::Limit::None:
      return "nothing";
    case physics::Limit::Circuit:
      return "circuit";
    case physics::Limit::Vessel:
      return "vessel";
    case physics::Limit::BoilVigour:
      return "boil-off";
    case physics::Limit::Boiling:
      return "no boil";
    case physics::Limit::SmallestBatch:
      return "too small";
    case physics::Limit::TimeAllowed:
      return "time";
  }
  return {};
}

std::string boilWord(rigs::Vigour vigour) {
  if (vigour == rigs::Vigour::Simmer) return "a simmer";
  return fmt::format("a {} boil", rigs::vigourWord(vigour));
}

std::string outcomeWord(physics::Outcome outcome) {
  switch (outcome) {
    case physics::Outcome::Done:
      return "boils";
    case physics::Outcome::DoesNotReachStrike:
      return "no strike";
    case physics::Outcome::DoesNotReachRest:
      return "no rest";
    case physics::Outcome::Steams:
    case physics::Outcome::StaysFarBelow:
      return "no boil";
    case physics::Outcome::UncoversElement:
      return "runs dry";
    case physics::Outcome::StrikeTooHot:
      return "too hot";
  }
  return {};
}

std::string unfinishedText(const rigs::RigPlan&, const physics::BrewDay& day, UnitSystem units) {
  switch (day.outcome) {
    case physics::Outcome::Done:
      return {};
    case physics::Outcome::Steams:
    case physics::Outcome::StaysFarBelow:
      return "Does not boil. " + levelsOffText(day, units);
    case physics::Outcome::DoesNotReachStrike:
      return "Does not reach the strike temperature. " + levelsOffText(day, units);
    case physics::Outcome::DoesNotReachRest:
      return "Does not reach the next rest. " + levelsOffText(day, units);
    case physics::Outcome::UncoversElement:
      return fmt::format("Uncovers its element: {} is left when the day stops here.",
                         format(day.lowest, units));
    case physics::Outcome::StrikeTooHot:
      return fmt::format(
          "{} would be needed to strike: the water would have to boil. Use more "
          "water, less grain, or warmer grain.",
          format(day.strike, units));
  }
  return {};
}

std::string elementText(const rigs::RigPlan& plan, const physics::ElectricalLoad& load,
                        UnitSystem) {
  const physics::Element& element = plan.rig.element;
  if (plan.rig.second) {
    const physics::Feed& second = *plan.rig.second;
    return fmt::format(
        "{} reach the vessel from two elements: {} at {} on {}, and {} at {} on a second circuit "
        "of {}.",
        wattsText(load.delivered), wattsText(element.rating), volts(element.ratedAt),
        volts(plan.rig.supply.nominal), wattsText(second.element.rating),
        volts(second.element.ratedAt), volts(second.supply.nominal));
  }
  if (rigs::otherVoltage(plan.rig)) {
    return fmt::format("{} reach the vessel, {} of the element's {} at {}: its supply has {}.",
                       wattsText(load.delivered), percent(rigs::shareOfRating(element, load)),
                       wattsText(element.rating), volts(element.ratedAt),
                       volts(plan.rig.supply.nominal));
  }
  return fmt::format("{} reach the vessel from an element of {} on {}.", wattsText(load.delivered),
                     wattsText(element.rating), volts(plan.rig.supply.nominal));
}

std::string circuitText(const rigs::Plan& whole, const rigs::RigPlan& plan) {
  std::string told;
  const auto feeds = rigs::feedsOf(plan.rig);
  for (std::size_t k = 0; k < feeds.size(); ++k) {
    // As codes count it: at the nominal voltage, the cable left out.
    const physics::Current drawn = physics::branchCurrent(feeds[k].element, feeds[k].supply);
    const char* its = feeds.size() < 2 ? "its" : k == 0 ? "its first" : "its second";
    const std::string rated = amperes(feeds[k].supply.rating);
    std::string one;
    if (rigs::overloads(feeds[k].element, feeds[k].supply)) {
      one = fmt::format(
          "Codes count {}, the cable aside: too much for {} circuit of {}; it will trip, or worse.",
          amperes(drawn), its, rated);
    } else if (rigs::overloadsForLong(whole, plan, k)) {
      one = fmt::format(
          "Codes count {}, the cable aside: within {} {} circuit, but more than the {} that rules "
          "grant to long use.",
          amperes(drawn), its, rated, amperes(rigs::longUseCurrent(whole, plan, k)));
    }
    if (!one.empty()) told += (told.empty() ? "" : " ") + one;
  }
  return told;
}

std::string besideCircuit(const rigs::Plan& whole, const rigs::RigPlan& plan,
                          const std::string& text) {
  const std::string circuit = circuitText(whole, plan);
  if (circuit.empty()) return text;
  return rigs::overloadsAny(plan.rig) ? circuit + ' ' + text : text + ' ' + circuit;
}

std::string elementToBuyText(const rigs::RigPlan& plan, const physics::PowerAnswer& wanted,
                             UnitSystem) {
  const auto element = rigs::elementFor(plan.rig, wanted);
  if (!element) return {};
  std::string text =
      fmt::format("an element rated {} at {}", wattsText(element->rating), volts(element->ratedAt));
  if (rigs::otherVoltage(plan.rig)) {
    text +=
        fmt::format(" ({} at {})", wattsText(rigs::ratingAt(*element, plan.rig.element.ratedAt)),
                    volts(plan.rig.element.ratedAt));
  }
  return text;
}

std::string carriesText(const rigs::Plan& whole, const rigs::RigPlan& plan,
                        const physics::PowerAnswer& wanted) {
  const bool two = plan.rig.second.has_value();
  const std::string its = two ? "Its circuits" : "Its circuit";
  switch (rigs::carries(whole, plan, wanted)) {
    case rigs::Carries::Yes: {
      const bool limited = rigs::longUseCurrent(whole, plan) < plan.rig.supply.rating;
      return fmt::format("{} {} that{}.", its, two ? "carry" : "carries",
                         limited ? ", in long use too" : "");
    }
    case rigs::Carries::ForShortUseOnly: {
      std::string text =
          fmt::format("{} {} that for short use only", its, two ? "carry" : "carries");
      const auto element = rigs::elementFor(plan.rig, wanted);
      if (!two && element) {
        text += fmt::format(": it draws {}, and rules grant {} to long use",
                            amperes(physics::branchCurrent(*element, plan.rig.supply)),
                            amperes(rigs::longUseCurrent(whole, plan)));
      }
      return text + '.';
    }
    case rigs::Carries::No:
      return fmt::format("{} {} not carry that.", its, two ? "do" : "does");
  }
  return {};
}

std::string enoughText(const rigs::Plan& whole, const rigs::RigPlan& plan,
                       const rigs::RigAnswer& rig, UnitSystem units) {
  struct Wish {
    std::string words;
    physics::PowerAnswer answer;
  };
  const rigs::Goals& goals = whole.goals;
  const rigs::SizingAnswer& sizing = *rig.sizing;
  const std::string within = roughTime(goals.boilWithin);
  const bool mashes =
      sizing.toStrikeWithin.power || sizing.toStrikeWithin.stoppedBy != physics::Limit::None;
  std::vector<Wish> wishes;
  if (mashes) wishes.push_back({"to strike within " + within, sizing.toStrikeWithin});
  wishes.push_back({(mashes ? "from mash to boil within " : "to be at the boil within ") + within,
                    sizing.toBoilWithin});
  wishes.push_back(
      {"to boil off " + format(rigs::perHour(goals.boilOffPerHour), units), sizing.forBoilOff});

  const physics::Power has = rig.day.electrical.delivered;
  std::vector<std::string> met, missed, impossible;
  for (const Wish& wish : wishes) {
    if (!wish.answer.power) {
      impossible.push_back(
          fmt::format("{} (the limit: {})", wish.words, limitWord(wish.answer.stoppedBy)));
    } else if (*wish.answer.power <= has) {
      met.push_back(wish.words);
    } else {
      missed.push_back(
          fmt::format("{}, which takes {}", wish.words, wattsText(*wish.answer.power)));
    }
  }
  const bool overloaded = rigs::overloadsAny(plan.rig);
  std::string text;
  if (!impossible.empty()) {
    text = fmt::format("No element up to {} is enough {}. ", wattsText(physics::kStrongestElement),
                       joined(impossible));
  }
  if (!missed.empty()) {
    text += fmt::format("Too little {}{}. ", joined(missed),
                        met.empty() ? "" : "; enough " + joined(met));
  } else if (!met.empty()) {
    text += overloaded
                ? fmt::format("On a circuit that carries it, it would be enough {}. ", joined(met))
                : fmt::format("Enough {}. ", joined(met));
  }
  const physics::PowerAnswer needed = rigs::neededPower(sizing);
  if (!needed.power) {
    text.pop_back();
    return text;
  }
  const std::string all = wishes.size() > 1 ? "All of it takes " : "That takes ";
  if (missed.empty() && !overloaded) return text + all + wattsText(*needed.power) + '.';
  const std::string element = elementToBuyText(plan, needed, units);
  if (element.empty()) {
    return fmt::format("{}{}{}, more than this cable can carry.", text, all,
                       wattsText(*needed.power));
  }
  return fmt::format("{}{}{}, from {}. {}", text, all, wattsText(*needed.power), element,
                     carriesText(whole, plan, needed));
}

std::string largestText(const physics::BatchAnswer& largest, const rigs::Goals& goals,
                        UnitSystem units) {
  const std::string rate = format(rigs::perHour(goals.boilOffPerHour), units);
  if (!largest.wort) {
    switch (largest.stoppedBy) {
      case physics::Limit::BoilVigour:
        return fmt::format("No batch boils off {}.", rate);
      case physics::Limit::Boiling:
        return "No batch of any size boils.";
      default:
        return "Not even the smallest batch that covers the element fits the vessel.";
    }
  }
  const std::string size = format(*largest.wort, units) + " is the largest batch: ";
  switch (largest.stoppedBy) {
    case physics::Limit::Vessel:
      return size + fmt::format("more would leave less than {} of the vessel free.",
                                format(goals.headspace, units));
    case physics::Limit::BoilVigour:
      return size + fmt::format("more would boil off less than {}.", rate);
    case physics::Limit::Boiling:
      return size + "more would not boil.";
    default:
      return size + fmt::format("the limit is the {}.", limitWord(largest.stoppedBy));
  }
}

std::string boilText(const rigs::RigPlan& plan, const physics::BrewDay& day, UnitSystem units) {
  if (!day.boil) {
    if (day.outcome == physics::Outcome::Done) return "No boil is planned.";
    return unfinishedText(plan, day, units);
  }
  std::string text =
      fmt::format("{} boils off, {}: {}.", format(day.boil->coldBoilOff, units),
                  format(rigs::boilOffRate(*day.boil), units), boilWord(rigs::vigourOf(*day.boil)));
  const std::string unfinished = unfinishedText(plan, day, units);
  return unfinished.empty() ? text : text + ' ' + unfinished;
}

std::string costText(const rigs::RigAnswer& rig, const rigs::Tariff& tariff, UnitSystem units) {
  const std::string energy =
      format(rig.day.total.fromWall(), units, {.significantDigits = 3, .decimals = {}});
  if (rig.day.outcome != physics::Outcome::Done) {
    return rig.cost ? fmt::format("{} and {} are spent by then.", energy, money(*rig.cost, tariff))
                    : energy + " are spent by then.";
  }
  if (!rig.cost) return energy + " from the wall; no price was given.";
  const physics::Volume one = rigs::fromNumberIn<physics::Volume>(1.0, units);
  const auto each = rigs::costPer(rig, one);
  return fmt::format(
      "{} for {} from the wall{}.", money(*rig.cost, tariff), energy,
      each ? fmt::format(", {}/{}", money(*each, tariff), rigs::unitLabel<physics::Volume>(units))
           : std::string());
}

}  // namespace gui
