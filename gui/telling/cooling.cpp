// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/cooling.hpp"

#include <algorithm>
#include <limits>
#include <string>
#include <utility>

#include "gui/telling/jacket.hpp"
#include "gui/telling/words.hpp"
#include "physics/growth.hpp"

namespace gui::telling {
namespace {

using physics::StageKind;
using physics::Temperature;
using rigs::amount;
using rigs::asChosen;
using rigs::Night;
using rigs::roughly;
using rigs::Told;

constexpr double kWorthTelling = 0.05;  // doublings: 0.0 as printed below that
// A round figure above the last temperature at which any food germ grows.
constexpr Temperature kTooHotForGerms = physics::celsius(60.0);

const Night* nightOf(const Case& of, std::size_t i) {
  const auto& night = of.rig(i).night;
  return night ? &night->asItIs : nullptr;
}
const Night* supposedOf(const Case& of, std::size_t i) {
  const auto& night = of.rig(i).night;
  return of.view.supposed && night && night->supposed ? &*night->supposed : nullptr;
}
// What a supposed rig is: with the jacket to compare, or without the one it has.
const Night* supposedOf(const Case& of, std::size_t i, bool jacketed) {
  return of.planned(i).hasJacket == jacketed ? nullptr : supposedOf(of, i);
}

Told holdingText(const Night& night) {
  const auto limit = amount(rigs::kWarmUpTo);
  if (!night.passesAfter || night.below <= physics::minutes(0.5))
    return Told(TOLD("Answer", "It stays above %1."), limit);
  if (*night.passesAfter <= physics::seconds(0.0))
    return Told(TOLD("Answer", "It is below %1 for %2."), limit, roughly(night.below));
  return Told(TOLD("Answer", "It passes %1 after %2 and is below it for %3."), limit,
              roughly(*night.passesAfter), roughly(night.below));
}

// Of a mash that is too hot for it all along, rows of noughts tell nothing.
bool growsInAny(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i) {
    const Night* night = nightOf(of, i);
    const Night* supposed = supposedOf(of, i);
    if ((night && night->doublings >= kWorthTelling) ||
        (supposed && supposed->doublings >= kWorthTelling))
      return true;
  }
  return false;
}

// At worst: what a food inspector would say of it.
Told growthText(const Case& of, std::size_t i, const Night& night) {
  if (night.doublings < kWorthTelling)
    return Told(TOLD("Answer", "It stays too hot for food germs to grow."));
  const Told most =
      Told(TOLD("Answer", "Food germs would double %1 times; %2 times is the most for food."),
           rigs::Number{night.doublings, {.decimals = 1}}, rigs::Number{physics::kMostDoublings});
  if (!night.tooManyAfter) return most;
  const auto after = roughly(*night.tooManyAfter);
  const auto hold = amount(kTooHotForGerms);
  const physics::Stage* own =
      of.rig(i).night->own ? of.rig(i).day.find(StageKind::UnpluggedRest) : nullptr;
  const Told reached =
      own ? Told(TOLD("Answer",
                      "That is reached after %1, at %2: boil it by then, or hold it at "
                      "%3 or more."),
                 after, of.clockAt(i, own->begin + *night.tooManyAfter), hold)
          : Told(TOLD("Answer",
                      "That is reached after %1: boil it by then, or hold it at %2 or "
                      "more."),
                 after, hold);
  return rigs::sentences({most, reached});
}

Told heatUpText(const Case& of, std::size_t i) {
  const auto& answer = of.rig(i);
  if (!answer.night->own) return {};
  const auto time = rigs::timeToBoil(answer.day);
  if (!time) return unfinishedText(of, i);
  return Told(TOLD("Answer", "From there it heats to the boil in %1."), roughly(*time));
}

Told coolsText(const Night& night) {
  return Told(TOLD("Answer", "%1 after %2 unplugged, from %3."), amount(night.morning),
              asChosen(night.alone), amount(night.first));
}

Told supposedNightText(const Case& of, std::size_t i, const Night& night) {
  const auto morning = amount(night.morning);
  const auto first = amount(night.first);
  const Told alone = of.planned(i).hasJacket
                         ? Told(TOLD("Answer", "If it were bare: %1 after %2 unplugged, from %3."),
                                morning, asChosen(night.alone), first)
                         : Told(TOLD("Answer", "If it had %4: %1 after %2 unplugged, from %3."),
                                morning, asChosen(night.alone), first, jacketInShort(of, i));
  return rigs::sentences({of.isAlone()
                              ? alone
                              : Told(TOLD("Answer", "%1: %2 after %3 unplugged, from %4."),
                                     supposedNamed(of, i), morning, asChosen(night.alone), first),
                          holdingText(night)});
}

std::vector<Told> coolingInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const Night* night = nightOf(of, i);
    return night ? std::optional(physics::inCelsius(night->morning)) : std::nullopt;
  });
  if (e.counted == 0)
    return {of.isAlone()
                ? Told(TOLD("Answer", "This plan has no mash that could be left alone."))
                : Told(TOLD("Answer", "No rig of this plan has a mash that could be left alone."))};
  const auto after = [&](std::size_t i, const rigs::Template<3>& text) {
    const Night& night = *nightOf(of, i);
    return Told(text, amount(night.morning), of.named(i), asChosen(night.alone));
  };
  if (e.least == e.most)
    return {after(e.least, TOLD("Answer", "%1 after %3 unplugged is where %2 comes to."))};
  return {
      after(e.least, TOLD("Answer", "%1 after %3 unplugged is where %2 comes to, the coldest.")),
      after(e.most, TOLD("Answer", "%1 after %3 with %2, the warmest."))};
}

// --- The table.

// The readings of the rig that has most; they are at the same times for all.
const std::vector<rigs::NightPoint>& readingsOf(const Case& of) {
  static const std::vector<rigs::NightPoint> kNone;
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const Night* night = nightOf(of, i)) return night->readings;
  return kNone;
}

// Rows of one night each rig has, or supposes; `place` is where the result has it.
template <class Which>
void addNight(RigTable& table, const Case& of, const std::string& place, const Which& which) {
  const auto row = [&](Told label, const std::string& key, const auto& figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const Night* night = which(i);
                return night ? cellOf(figure(*night)) : std::nullopt;
              },
              {.result = place + key});
  };
  row(Told(TOLD("Answer", "left alone at")), "/first_C", [](const Night& n) { return n.first; });
  const auto& readings = readingsOf(of);
  for (std::size_t k = 0; k + 1 < readings.size(); ++k)
    row(Told(TOLD("Answer", "after %1"), asChosen(readings[k].alone)),
        "/readings/" + std::to_string(k) + "/wort_C",
        [k](const Night& n) { return n.readings.at(k).wort; });
  if (!readings.empty())
    row(Told(TOLD("Answer", "in the end, after %1"), asChosen(readings.back().alone)), "/morning_C",
        [](const Night& n) { return n.morning; });
}

template <class Which>
void addHolding(RigTable& table, const std::string& place, const Which& which) {
  const auto row = [&](Told label, const std::string& key, const auto& figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const Night* night = which(i);
                return night ? figure(*night) : std::nullopt;
              },
              {.result = place + key});
  };
  const auto limit = amount(rigs::kWarmUpTo);
  row(Told(TOLD("Answer", "passes %1 after"), limit), "/below_57_after_s",
      [](const Night& n) { return hoursAndMinutes(n.passesAfter); });
  row(Told(TOLD("Answer", "below %1 for"), limit), "/below_57_s",
      [](const Night& n) { return hoursAndMinutes(n.below); });
}

template <class Which>
void addGrowth(RigTable& table, const std::string& place, const Which& which) {
  const auto number = [&](Told label, const std::string& key, double Night::*figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const Night* night = which(i);
                return night ? numberCell(night->*figure, 1) : std::nullopt;
              },
              {.result = place + key});
  };
  number(Told(TOLD("Answer", "food germs would double, times")), "/germs_double_at_worst",
         &Night::doublings);
  table.row(Told(TOLD("Answer", "the tenth doubling after")),
            [&](std::size_t i) -> Cell {
              const Night* night = which(i);
              return night ? hoursAndMinutes(night->tooManyAfter) : std::nullopt;
            },
            {.result = place + "/ten_doublings_after_s"});
  number(Told(TOLD("Answer", "souring germs would grow, powers of ten")),
         "/souring_tenfolds_at_worst", &Night::souring);
}

void addHeatUp(RigTable& table, const Case& of) {
  table.heading(Told(TOLD("Answer", "Then")));
  table.row(Told(TOLD("Answer", "heating to the boil")), [&](std::size_t i) -> Cell {
    const auto& night = of.rig(i).night;
    if (!night || !night->own) return std::nullopt;
    return hoursAndMinutes(rigs::timeToBoil(of.rig(i).day));
  });
}

}  // namespace

Told nightText(const Case& of, std::size_t i) {
  const Night* night = nightOf(of, i);
  if (!night) return {};
  return rigs::sentences({coolsText(*night), holdingText(*night), heatUpText(of, i)});
}

Table nightTable(const Case& of) {
  RigTable table("night", of);
  const auto asItIs = [&](std::size_t i) { return nightOf(of, i); };
  table.heading(Told(TOLD("Answer", "The mash while it is left alone")));
  addNight(table, of, "/night", asItIs);
  table.heading(Told(TOLD("Answer", "Hot holding")));
  addHolding(table, "/night", asItIs);
  const bool grows = growsInAny(of);
  if (grows) {
    table.heading(Told(TOLD("Answer", "What grows at worst")));
    addGrowth(table, "/night", asItIs);
  }
  addHeatUp(table, of);
  if (!of.view.supposed) return table.take();
  for (const bool jacketed : {true, false}) {
    const auto which = [&](std::size_t i) { return supposedOf(of, i, jacketed); };
    const std::string place = jacketed ? "/night/if_jacketed" : "/night/if_bare";
    table.heading(jacketed ? Told(TOLD("Answer", "Supposed: %1"), ifJacketed(of))
                           : Told(TOLD("Answer", "Supposed: %1"), ifBare()));
    addNight(table, of, place, which);
    addHolding(table, place, which);
    if (grows) addGrowth(table, place, which);
  }
  return table.take();
}

namespace {

// Where a mash passes it or comes near; another's picture would only be the flatter for it.
void addWarmLimit(Picture& picture, const Case& of) {
  constexpr double kNear = 3.0;  // of the shown unit
  const double limit = of.axis(rigs::kWarmUpTo);
  double coldest = std::numeric_limits<double>::infinity();
  double end = 0.0;
  for (const PictureLine& line : picture.lines) {
    for (const PicturePoint& point : line.points) {
      coldest = std::min(coldest, point.y);
      end = std::max(end, point.x);
    }
  }
  if (end <= 0.0 || coldest > limit + kNear) return;
  picture.lines.push_back({.rig = -1,
                           .name = of.text(rigs::Argument(amount(rigs::kWarmUpTo))),
                           .points = {{0.0, limit}, {end, limit}},
                           .limit = true});
}

}  // namespace

Picture coolingPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Answer", "A full mash left unplugged")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time left alone")));
  picture.yUnit = of.unit<Temperature>();
  picture.yDecimals = of.decimals<Temperature>();
  picture.yTitle = of.text(Told(TOLD("Answer", "Temperature, %1"), rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  const auto add = [&](std::size_t i, const Night& night, bool supposed) {
    const int rig = static_cast<int>(i);
    PictureLine line{.rig = rig,
                     .name = supposed ? of.text(supposedText(of, i)) : of.name(i),
                     .points = {},
                     .faint = supposed};
    for (const rigs::NightPoint& point : night.curve)
      line.points.push_back({physics::inMinutes(point.alone), of.axis(point.wort)});
    picture.lines.push_back(std::move(line));
    if (supposed) return;
    picture.marks.push_back({rig,
                             {physics::inMinutes(night.alone), of.axis(night.morning)},
                             of.lettered(i, of.text(amount(night.morning)))});
    if (night.passesAfter && *night.passesAfter > physics::seconds(0.0))
      picture.marks.push_back(
          {rig,
           {physics::inMinutes(*night.passesAfter), of.axis(rigs::kWarmUpTo)},
           {},
           of.text(Told(TOLD("Answer", "below %1 from here on"), amount(rigs::kWarmUpTo)))});
  };
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const Night* night = nightOf(of, i)) add(i, *night, false);
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const Night* night = supposedOf(of, i)) add(i, *night, true);
  addWarmLimit(picture, of);
  return picture;
}

Answer howFarCools(const Case& of) {
  Answer answer;
  answer.sentences = coolingInShort(of);
  for (std::size_t i = 0; i < of.count(); ++i)
    if (Told text = nightText(of, i); !text.empty()) answer.say(i, std::move(text));
  if (growsInAny(of)) {
    answer.heading(Told(TOLD("Answer", "What grows meanwhile, at worst")));
    for (std::size_t i = 0; i < of.count(); ++i)
      if (const Night* night = nightOf(of, i)) answer.say(i, growthText(of, i, *night));
    answer.say(Told(TOLD("Answer",
                         "At worst: the fastest germ at each temperature, from the first moment "
                         "on. Souring shows at about six powers of ten, and by a pH below about "
                         "5.0 before the boil. The boil kills these germs and their spores, but "
                         "undoes no toxin that is already there.")));
  }
  bool any = false;
  for (std::size_t i = 0; i < of.count(); ++i) any = any || supposedOf(of, i);
  if (any) answer.heading(Told(TOLD("Answer", "What is only supposed")));
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const Night* night = supposedOf(of, i))
      answer.sayAbout({i}, supposedNightText(of, i, *night));
  answer.pictures = {coolingPicture(of)};
  answer.show(nightTable(of));
  return answer;
}

}  // namespace gui::telling
