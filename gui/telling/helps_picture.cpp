// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most? The picture: one bar a lever, the longest first, with its price.
#include <algorithm>
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
  std::string unit;
  double times;  // what a gain is multiplied with to be in that unit
  Told title;
};

Axis axisOf(const Case& of, Wish wish) {
  const rigs::Tariff& tariff = of.plan.tariff;
  switch (wish) {
    case Wish::Rolls:
      return {"%", 100.0,
              Told(TOLD("Helps", "More of the heat that rolling takes, %; to roll for sure"))};
    case Wish::Sooner:
      return {"min", 1.0, Told(TOLD("Helps", "Minutes sooner"))};
    case Wish::Warmer: {
      const double one = of.axis(physics::kelvins(1.0));
      const std::string unit = of.unit<physics::TemperatureDifference>();
      return {unit, one, Told(TOLD("Helps", "Warmer in the morning, %1"), Verbatim{unit})};
    }
    case Wish::Cheaper: {
      const std::string unit = tariff.isStated() ? tariff.currency : std::string("kWh");
      return {unit, 1.0,
              tariff.isStated() ? Told(TOLD("Helps", "Less a year, %1"), Verbatim{unit})
                                : Told(TOLD("Helps", "Less for as much wort, %1"), Verbatim{unit})};
    }
    case Wish::Circuit:
      return {"%", 100.0, Told(TOLD("Helps", "Less of the circuit's rating, %"))};
  }
  return {};
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
  picture.lettered = false;
  picture.partNames = {of.text(axis.title)};
  std::set<rigs::Lever> shown;
  for (const std::size_t k : rigs::ranked(helps, wish, brews)) {
    if (!helps.advised[k] || !rigs::isMore(wish, helps.alone[k], helps.today, brews)) break;
    if (picture.stacks.size() == kMostBars || !shown.insert(helps.changes[k].lever).second)
      continue;
    const double gain = rigs::gainOf(wish, helps.alone[k], helps.today, brews).value_or(0.0);
    picture.stacks.push_back({.rig = static_cast<int>(i),
                              .name = of.text(Told(TOLD("Helps", "%1 · %2"), helps.changes[k].words,
                                                   outlayText(of, helps, {k}))),
                              .parts = {std::max(0.0, axis.times * gain)}});
  }
  return picture;
}

}  // namespace gui::telling
