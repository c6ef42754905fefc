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
      // Else a saving would compare a day that stops with one that goes on.
      if (p.bare.done)
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

// Where a rig stands along the picture: with the jacket it has or is supposed to have, or bare.
double placeOf(const Case& of, std::size_t i, bool jacketed) {
  const rigs::RigPlan& rig = of.planned(i);
  if (of.view.overThickness) return jacketed ? of.thickness(jacketThickness(rig)) : 0.0;
  return of.axis(rigs::ratingAt(rig.rig.element, rig.rig.supply.nominal));
}

// A curve over thickness is of jackets that no rig has; over power it is of the one that is
// compared, or of none.
std::string supposedName(const Case& of, std::size_t i) {
  if (!of.view.overThickness) return of.text(supposedText(of, i));
  return of.text(of.planned(i).hasJacket ? Told(TOLD("Answer", "if its jacket were so thick"))
                                         : Told(TOLD("Answer", "if it had a jacket so thick")));
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
    // What its own jacket saves is the rig's; all else is only supposed.
    const bool own = !of.view.overThickness && of.planned(i).hasJacket;
    PictureLine line{.rig = static_cast<int>(i),
                     .name = own ? of.name(i) : supposedName(of, i),
                     .points = {},
                     .faint = !own};
    for (const Saving& saving : savings(of, i))
      if (const auto y = valueOf(of, figure, saving)) line.points.push_back({saving.x, *y});
    const auto& effect = of.rig(i).jacket;
    if (effect && effect->bare.outcome == physics::Outcome::Done && effect->savedFromWall) {
      const double x = placeOf(of, i, true);
      const Saving at{
          x, effect->savedToBoil, *effect->savedFromWall,
          rigs::moneySaved(effect->bare, effect->jacketed, of.plan.tariff, of.rig(i).begins)};
      if (const auto y = valueOf(of, figure, at)) {
        picture.marks.push_back({static_cast<int>(i), {x, *y}, {}, of.text(jacketNamed(of, i))});
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

// The rig's own day on its curve, and the supposed one on the other.
void markBoth(const Case& of, std::size_t i, Figure figure, PictureLine& asItIs,
              PictureLine& supposed, Picture& picture) {
  const auto& effect = of.rig(i).jacket;
  if (!effect) return;
  const bool has = of.planned(i).hasJacket;
  const auto value = [&](bool jacketed) {
    return valueOf(of, figure,
                   rigs::jacketDay(jacketed ? effect->jacketed : effect->bare, of.plan.tariff,
                                   of.rig(i).begins));
  };
  if (const auto y = value(has)) {
    const PicturePoint at{placeOf(of, i, has), *y};
    const std::string text = of.text(
        rigs::Number{*y, {.significantDigits = 3, .decimals = figure == Figure::Time ? 0 : 2}});
    picture.marks.push_back({static_cast<int>(i), at, of.lettered(i, text + ' ' + picture.yUnit)});
    addPoint(asItIs, at);
  }
  if (const auto y = value(!has)) {
    const PicturePoint at{placeOf(of, i, !has), *y};
    picture.marks.push_back({static_cast<int>(i), at, {}, of.text(supposedNamed(of, i))});
    addPoint(supposed, at);
  }
}

// The rig as it is: the same whatever the thickness of a jacket it does not have, or has otherwise.
std::optional<double> asItIsAt(const Case& of, std::size_t i, Figure figure, const Compared& at) {
  const bool has = of.planned(i).hasJacket;
  if (!has || !of.view.overThickness) return valueOf(of, figure, has ? at.jacketed : at.bare);
  const auto& effect = of.rig(i).jacket;
  if (!effect) return std::nullopt;
  return valueOf(of, figure, rigs::jacketDay(effect->jacketed, of.plan.tariff, of.rig(i).begins));
}
std::optional<double> supposedAt(const Case& of, std::size_t i, Figure figure, const Compared& at) {
  const bool bare = !of.view.overThickness && of.planned(i).hasJacket;
  return valueOf(of, figure, bare ? at.bare : at.jacketed);
}

Picture comparedPicture(const Case& of, Figure figure) {
  Picture picture = axes(of, figure);
  picture.title =
      of.text(figure == Figure::Time
                  ? Told(TOLD("Answer", "Time from mash to boil, with a jacket and without"))
              : of.plan.tariff.isStated()
                  ? Told(TOLD("Answer", "Cost of a batch, with a jacket and without"))
                  : Told(TOLD("Answer", "Energy of a batch, with a jacket and without")));
  picture.yTitle =
      of.text(figure == Figure::Time
                  ? Told(TOLD("Answer", "Minutes from mash to boil; thin: supposed"))
                  : Told(TOLD("Answer", "%1 a batch; thin: supposed"), Verbatim{picture.yUnit}));
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureLine asItIs{.rig = static_cast<int>(i), .name = of.name(i), .points = {}};
    PictureLine supposed{
        .rig = static_cast<int>(i), .name = supposedName(of, i), .points = {}, .faint = true};
    for (const Compared& at : comparisons(of, i)) {
      if (const auto y = asItIsAt(of, i, figure, at)) asItIs.points.push_back({at.x, *y});
      if (const auto y = supposedAt(of, i, figure, at)) supposed.points.push_back({at.x, *y});
    }
    markBoth(of, i, figure, asItIs, supposed, picture);
    picture.lines.push_back(std::move(asItIs));
    if (of.rig(i).jacket) picture.lines.push_back(std::move(supposed));
  }
  return picture;
}

}  // namespace

std::vector<Picture> jacketPictures(const Case& of) {
  if (of.view.savings) return {savedPicture(of, Figure::Time), savedPicture(of, Figure::Money)};
  return {comparedPicture(of, Figure::Time), comparedPicture(of, Figure::Money)};
}

}  // namespace gui::telling
