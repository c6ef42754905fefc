// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? What a jacket saves, or both days, against its thickness or the element.
#include <string>
#include <utility>

#include "gui/telling/curve.hpp"
#include "gui/telling/jacket.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/sweeps.hpp"

namespace gui::telling {
namespace {

using physics::JacketEffect;
using rigs::Told;
using rigs::Verbatim;

physics::Length jacketThickness(const rigs::RigPlan& rig) {
  physics::Length sum = physics::metres(0.0);
  for (const physics::Layer& layer : rig.jacketed.vessel.side.insulation) sum += layer.thickness;
  return sum;
}

// Whether the bare rig boils to the end with such an element: without that a saving would compare
// a day that stops with one that goes on.
bool bareBoils(const Case& of, std::size_t i, physics::Power rating) {
  const physics::Rig& bare = of.planned(i).bare;
  const auto& effect = of.rig(i).jacket;
  if (!effect || !effect->bare.leastToBoil) return false;
  const physics::Element element{rating, bare.supply.nominal, bare.element.topHeight};
  return physics::electricalLoad(element, bare.supply).delivered * bare.boilPower >=
         *effect->bare.leastToBoil;
}

// What both figures are: minutes from mash to boil; or the money of a batch, without a price its
// energy.
enum class Figure { Time, Money };

// A point of either sweep.
struct Saving {
  double x = 0.0;
  std::optional<physics::Time> time;
  physics::Energy energy;
  std::optional<double> money;
};
std::vector<Saving> savings(const Case& of, std::size_t i) {
  std::vector<Saving> all;
  const rigs::RigSweeps* sweeps = of.sweeps(i);
  if (!sweeps) return all;
  if (!of.view.overThickness) {
    for (const rigs::JacketPowerPoint& p : sweeps->jacketPower) {
      if (bareBoils(of, i, p.element))
        all.push_back({of.axis(p.element), p.savedToBoil, p.savedFromWall, p.savedMoney});
    }
    return all;
  }
  const auto& effect = of.rig(i).jacket;
  if (!effect || effect->bare.outcome != physics::Outcome::Done) return all;
  for (const rigs::JacketPoint& p : sweeps->thickness)
    all.push_back({of.thickness(p.thickness), p.savedToBoil, p.savedFromWall, p.savedMoney});
  return all;
}

std::optional<double> valueOf(const Case& of, Figure figure, const Saving& saving) {
  if (figure == Figure::Time)
    return saving.time ? std::optional(physics::inMinutes(*saving.time)) : std::nullopt;
  return of.plan.tariff.isStated() ? saving.money : std::optional(of.axis(saving.energy));
}

// A day that stops early has nothing to compare.
std::optional<double> valueOf(const Case& of, Figure figure, const rigs::JacketDay& day) {
  if (!day.done) return std::nullopt;
  if (figure == Figure::Time)
    return day.toBoil ? std::optional(physics::inMinutes(*day.toBoil)) : std::nullopt;
  return of.plan.tariff.isStated() ? day.cost : std::optional(of.axis(day.fromWall));
}

// Where the rig as planned stands along the picture.
double placeAsPlanned(const Case& of, std::size_t i) {
  const rigs::RigPlan& rig = of.planned(i);
  return of.view.overThickness ? of.thickness(jacketThickness(rig))
                               : of.axis(rigs::ratingAt(rig.rig.element, rig.rig.supply.nominal));
}

// Its axes, without the words that depend on what is shown.
Picture axes(const Case& of, Figure figure) {
  Picture picture;
  picture.xUnit = of.view.overThickness ? of.thicknessUnit() : "W";
  picture.xTitle =
      of.text(of.view.overThickness
                  ? Told(TOLD("Answer", "Insulation on the side, %1"), Verbatim{of.thicknessUnit()})
                  : Told(TOLD("Answer", "Element, rated at its supply's voltage, W")));
  picture.yUnit = figure == Figure::Time      ? "min"
                  : of.plan.tariff.isStated() ? of.plan.tariff.currency
                                              : of.unit<physics::Energy>();
  return picture;
}

Picture savedPicture(const Case& of, Figure figure) {
  Picture picture = axes(of, figure);
  picture.title =
      of.text(figure == Figure::Time      ? Told(TOLD("Answer", "Time a jacket saves"))
              : of.plan.tariff.isStated() ? Told(TOLD("Answer", "Money a jacket saves"))
                                          : Told(TOLD("Answer", "Energy a jacket saves")));
  picture.yTitle = of.text(figure == Figure::Time
                               ? Told(TOLD("Answer", "Minutes saved from mash to boil"))
                               : Told(TOLD("Answer", "%1 saved a batch"), Verbatim{picture.yUnit}));
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureLine line{.rig = static_cast<int>(i), .name = of.name(i), .points = {}};
    for (const Saving& saving : savings(of, i))
      if (const auto y = valueOf(of, figure, saving)) line.points.push_back({saving.x, *y});
    const auto& effect = of.rig(i).jacket;
    if (effect && effect->bare.outcome == physics::Outcome::Done && effect->savedFromWall) {
      const double x = placeAsPlanned(of, i);
      const Saving own{x, effect->savedToBoil, *effect->savedFromWall,
                       rigs::moneySaved(effect->bare, effect->jacketed, of.plan)};
      if (const auto y = valueOf(of, figure, own)) {
        picture.marks.push_back({static_cast<int>(i), {x, *y}, {}});
        addPoint(line, {x, *y});
      }
    }
    picture.lines.push_back(std::move(line));
  }
  return picture;
}

// Both days at one place along the picture.
struct Compared {
  double x = 0.0;
  rigs::JacketDay bare, jacketed;
};
std::vector<Compared> comparisons(const Case& of, std::size_t i) {
  std::vector<Compared> all;
  const rigs::RigSweeps* sweeps = of.sweeps(i);
  if (!sweeps) return all;
  if (of.view.overThickness) {
    for (const rigs::JacketPoint& p : sweeps->thickness)
      all.push_back({of.thickness(p.thickness), p.bare, p.jacketed});
  } else {
    for (const rigs::JacketPowerPoint& p : sweeps->jacketPower)
      all.push_back({of.axis(p.element), p.bare, p.jacketed});
  }
  return all;
}

// The rig's own two days, on their curves.
void markOwn(const Case& of, std::size_t i, Figure figure, PictureLine& bare, PictureLine& jacketed,
             Picture& picture) {
  const auto& effect = of.rig(i).jacket;
  if (!effect) return;
  const double x = placeAsPlanned(of, i);
  const auto with = valueOf(of, figure, rigs::jacketDay(effect->jacketed, of.plan));
  const auto without = valueOf(of, figure, rigs::jacketDay(effect->bare, of.plan));
  const auto text = [&](double y) {
    return of.text(
        rigs::Number{y, {.significantDigits = 3, .decimals = figure == Figure::Time ? 0 : 2}});
  };
  if (without) {
    picture.marks.push_back({static_cast<int>(i), {x, *without}, {}});
    addPoint(bare, {x, *without});
  }
  if (!with) return;
  const std::string both = without ? text(*without) + " → " + text(*with) : text(*with);
  picture.marks.push_back(
      {static_cast<int>(i), {x, *with}, letter(i) + ' ' + both + ' ' + picture.yUnit});
  addPoint(jacketed, {x, *with});
}

Picture comparedPicture(const Case& of, Figure figure) {
  Picture picture = axes(of, figure);
  picture.title =
      of.text(figure == Figure::Time
                  ? Told(TOLD("Answer", "Time from mash to boil, with a jacket and without"))
              : of.plan.tariff.isStated()
                  ? Told(TOLD("Answer", "Cost of a batch, with a jacket and without"))
                  : Told(TOLD("Answer", "Energy of a batch, with a jacket and without")));
  picture.yTitle = of.text(
      figure == Figure::Time
          ? Told(TOLD("Answer", "Minutes from mash to boil; thin: without jacket"))
          : Told(TOLD("Answer", "%1 a batch; thin: without jacket"), Verbatim{picture.yUnit}));
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureLine jacketed{.rig = static_cast<int>(i), .name = of.name(i), .points = {}};
    PictureLine bare{.rig = static_cast<int>(i),
                     .name = of.text(Told(TOLD("Answer", "the same without its jacket"))),
                     .points = {},
                     .faint = true};
    for (const Compared& at : comparisons(of, i)) {
      if (const auto y = valueOf(of, figure, at.jacketed)) jacketed.points.push_back({at.x, *y});
      if (const auto y = valueOf(of, figure, at.bare)) bare.points.push_back({at.x, *y});
    }
    markOwn(of, i, figure, bare, jacketed, picture);
    picture.lines.push_back(std::move(jacketed));
    picture.lines.push_back(std::move(bare));
  }
  return picture;
}

}  // namespace

std::vector<Picture> jacketPictures(const Case& of) {
  if (of.view.savings) return {savedPicture(of, Figure::Time), savedPicture(of, Figure::Money)};
  return {comparedPicture(of, Figure::Time), comparedPicture(of, Figure::Money)};
}

}  // namespace gui::telling
