// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most? The picture: one bar a lever, the longest first, with its price.
#include <algorithm>
#include <optional>
#include <set>
#include <string>

#include "gui/telling/helps.hpp"
#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

using rigs::HelpsAnswer;
using rigs::Told;
using rigs::Verbatim;
using rigs::Wish;

// More bars than this are hair-thin in a window of usual size.
constexpr std::size_t kMostBars = 8;

struct Axis {
  std::string unit;  // "" for minutes, which are told as a clock tells them
  double times;      // what a gain is multiplied with to be in that unit
  Told title;
  std::optional<int> decimals = {};
};

Axis axisOf(const Case& of, Wish wish) {
  const rigs::Tariff& tariff = of.plan.tariff;
  switch (wish) {
    case Wish::Rolls:
      return {"%", 100.0,
              Told(TOLD("Helps", "More of the heat that rolling takes, %, until it is sure")), 0};
    case Wish::Sooner:
      return {"", 1.0, Told(TOLD("Helps", "Ready sooner"))};
    case Wish::Warmer: {
      const double one = of.axis(physics::kelvins(1.0));
      const std::string unit = of.unit<physics::TemperatureDifference>();
      return {unit, one, Told(TOLD("Helps", "Warmer in the morning, %1"), Verbatim{unit}), 1};
    }
    case Wish::Cheaper: {
      const std::string unit = tariff.isStated() ? tariff.currency : std::string("kWh");
      return {unit, 1.0,
              tariff.isStated() ? Told(TOLD("Helps", "Less a year, %1"), Verbatim{unit})
                                : Told(TOLD("Helps", "Less for as much wort, %1"), Verbatim{unit})};
    }
    case Wish::Circuit:
      return {"%", 100.0, Told(TOLD("Helps", "Less of the circuit's rating, %")), 0};
  }
  return {};
}

// With what it takes to be had, where that is known.
Told barName(const Case& of, const HelpsAnswer& helps, std::size_t change) {
  const rigs::Change& one = helps.changes[change];
  if (one.outlay == rigs::Outlay::NotKnown) return one.words;
  return Told(TOLD("Helps", "%1 · %2"), one.words, outlayText(of, helps, {change}));
}

}  // namespace

Picture helpsPicture(const Case& of, std::size_t i) {
  const HelpsAnswer& helps = *of.rig(i).helps;
  const Wish wish = wishToldOf(of, helps);
  const double brews = brewsPerYear(of.plan);
  const Axis axis = axisOf(of, wish);
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(Told(TOLD("Helps", "What helps %1 %2"), of.named(i), wishWords(wish)));
  picture.xTitle = of.text(axis.title);
  picture.xUnit = axis.unit;
  picture.xIsClock = wish == Wish::Sooner;
  picture.totalDecimals = axis.decimals;
  picture.lettered = false;
  picture.partNames = {of.text(axis.title)};
  std::set<rigs::Lever> shown;
  for (const std::size_t k : rigs::ranked(helps, wish, brews)) {
    if (!helps.advised[k] || !rigs::isMore(wish, helps.alone[k], helps.today, brews)) break;
    if (picture.stacks.size() == kMostBars || !shown.insert(helps.changes[k].lever).second)
      continue;
    const double gain = rigs::gainOf(wish, helps.alone[k], helps.today, brews).value_or(0.0);
    picture.stacks.push_back({.rig = -1,
                              .name = of.text(barName(of, helps, k)),
                              .parts = {std::max(0.0, axis.times * gain)}});
  }
  return picture;
}

}  // namespace gui::telling
