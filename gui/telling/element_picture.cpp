// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? A curve for each rig on its supply, and where its circuit ends.
#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "gui/telling/curve.hpp"
#include "gui/telling/element.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::Told;

// Both are wanted within the same time.
enum class Way { ToStrike, ToBoil };

// From mash to boil of those that boil to the end; to strike of all that get there.
std::optional<double> minutesOf(const Case& of, std::size_t i, Way way) {
  const physics::BrewDay& day = of.rig(i).day;
  if (way == Way::ToBoil && day.outcome != physics::Outcome::Done) return std::nullopt;
  const auto time =
      way == Way::ToBoil ? rigs::timeToBoil(day) : rigs::timeOf(day, physics::StageKind::Strike);
  return time ? std::optional(physics::inMinutes(*time)) : std::nullopt;
}

std::optional<physics::Time> timeAt(const rigs::PowerPoint& point, Way way) {
  if (way == Way::ToStrike) return point.toStrike;
  return point.boilOffPerHour ? point.toBoil : std::nullopt;
}

// Along the picture: what is written on an element for the rig's rated voltage, so that one element
// is at one place whatever supply it is on; or what it is rated at the supply's own voltage.
double along(const Case& of, std::size_t i, physics::Power atSupply) {
  const physics::Rig& rig = of.planned(i).rig;
  if (!of.view.asWritten) return of.axis(atSupply);
  const physics::Element element{atSupply, rig.supply.nominal, rig.element.topHeight};
  return of.axis(rigs::ratingAt(element, rig.element.ratedAt));
}

double ownPlace(const Case& of, std::size_t i) {
  const physics::Rig& rig = of.planned(i).rig;
  return along(of, i, rigs::ratingAt(rig.element, rig.supply.nominal));
}

// "120 V, 15 A"
std::string circuitName(const Case& of, std::size_t i) {
  const physics::Supply& supply = of.planned(i).rig.supply;
  return of.text(amount(supply.nominal)) + ", " + of.text(amount(supply.rating));
}

// With its supply; where the picture is about what is written on elements, with their voltage too.
std::string lineName(const Case& of, std::size_t i) {
  const physics::Rig& rig = of.planned(i).rig;
  const rigs::Verbatim name{of.name(i)};
  const auto supply = amount(rig.supply.nominal);
  if (!of.view.asWritten) return of.text(Told(TOLD("Answer", "%1, on %2"), name, supply));
  return of.text(Told(TOLD("Answer", "%1, %2 on %3"), name, amount(rig.element.ratedAt), supply));
}

// One mark for all rigs whose circuits carry the same.
void addCircuits(const Case& of, Picture& picture) {
  struct Circuit {
    double most;
    std::string letters, name;
  };
  std::vector<Circuit> circuits;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const double most = along(of, i, mostOnCircuit(of, i));
    const std::string name = circuitName(of, i);
    const auto same = std::find_if(circuits.begin(), circuits.end(), [&](const Circuit& one) {
      return one.name == name && std::abs(one.most - most) < 0.01 * most;
    });
    if (same == circuits.end()) {
      circuits.push_back({most, of.lettered(i), name});
    } else {
      same->letters += ' ' + of.lettered(i);
    }
  }
  for (const Circuit& one : circuits)
    picture.limits.push_back(
        {one.most, one.letters.empty() ? one.name : one.letters + ' ' + one.name});
}

PictureLine timesAgainstPower(const Case& of, std::size_t i, Way way) {
  PictureLine line{.rig = static_cast<int>(i), .name = lineName(of, i), .points = {}};
  const rigs::RigSweeps* sweeps = of.sweeps(i);
  if (!sweeps) return line;
  for (const rigs::PowerPoint& point : sweeps->power) {
    if (const auto time = timeAt(point, way))
      line.points.push_back({along(of, i, point.element), physics::inMinutes(*time)});
  }
  return line;
}

// Thin from where its circuit no longer carries the element.
PictureLine cutBeyond(const Case& of, PictureLine& line, double most) {
  PictureLine beyond{.rig = line.rig,
                     .name = of.text(Told(TOLD("Answer", "more than its circuit carries"))),
                     .points = {},
                     .faint = true};
  const auto at = valueAt(line.points, most);
  if (!at) {
    if (!line.points.empty() && line.points.front().x > most) beyond.points.swap(line.points);
    return beyond;
  }
  const PicturePoint end{most, *at};
  const auto cut = std::find_if(line.points.begin(), line.points.end(),
                                [&](const PicturePoint& p) { return p.x >= most; });
  beyond.points.assign(cut, line.points.end());
  line.points.erase(cut, line.points.end());
  line.points.push_back(end);
  if (beyond.points.empty() || beyond.points.front() != end)
    beyond.points.insert(beyond.points.begin(), end);
  return beyond;
}

Picture axes(const Case& of, Way way) {
  Picture picture;
  picture.title = of.text(way == Way::ToBoil
                              ? Told(TOLD("Answer", "Time from mash to boil against element power"))
                              : Told(TOLD("Answer", "Time to strike against element power")));
  picture.xUnit = "W";
  picture.xTitle = of.text(of.view.asWritten
                               ? Told(TOLD("Answer", "Power written on the element, W"))
                               : Told(TOLD("Answer", "Element, rated at its supply's voltage, W")));
  picture.yUnit = "min";
  picture.yTitle = of.text(
      way == Way::ToBoil
          ? Told(TOLD("Answer", "Minutes from mash to boil; dotted: what a circuit carries"))
          : Told(TOLD("Answer", "Minutes to strike; dotted: what a circuit carries")));
  picture.draggable = physics::inMinutes(of.plan.goals.boilWithin);
  picture.draggableLabel =
      of.text(Told(TOLD("Answer", "wanted: %1"), rigs::asChosen(of.plan.goals.boilWithin)));
  picture.yFrom = 0.0;
  return picture;
}

// Whether some rig's element is too weak to strike in the wanted time.
bool missesStrike(const Case& of) {
  if (!of.plan.batch.mashes()) return false;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto& sizing = of.rig(i).sizing;
    if (!sizing) continue;
    const physics::PowerAnswer& wanted = sizing->toStrikeWithin;
    if (wanted.power ? *wanted.power > of.rig(i).day.electrical.delivered
                     : wanted.stoppedBy != physics::Limit::None)
      return true;
  }
  return false;
}

Picture pictureOf(const Case& of, Way way) {
  constexpr double kUsualMost = 6000.0;  // W; up to here, whatever the plan's circuits carry
  Picture picture = axes(of, way);
  double slowest = 60.0;
  double strongest = kUsualMost;
  std::vector<PictureLine> beyond;
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureLine line = timesAgainstPower(of, i, way);
    const auto minutes = minutesOf(of, i, way);
    const double own = ownPlace(of, i);
    const double most = along(of, i, mostOnCircuit(of, i));
    if (minutes) addPoint(line, {own, *minutes});
    beyond.push_back(cutBeyond(of, line, most));
    picture.lines.push_back(std::move(line));
    strongest = std::max({strongest, 1.05 * own, 1.05 * most});
    if (!minutes) continue;
    const rigs::Number whole{*minutes, {.significantDigits = 3, .decimals = 0}};
    picture.marks.push_back(
        {static_cast<int>(i), {own, *minutes}, of.lettered(i, of.text(whole) + " min")});
    slowest = std::max(slowest, *minutes);
  }
  for (PictureLine& line : beyond)
    if (line.points.size() > 1) picture.lines.push_back(std::move(line));
  addCircuits(of, picture);
  // Not from the wanted time alone: the axis would run away from the hand that drags it.
  picture.yTo = std::max(1.5 * slowest, 1.02 * *picture.draggable);
  picture.xTo = strongest;
  // A rig that does not get there stands at the top: no time is long enough.
  for (std::size_t i = 0; i < of.count(); ++i) {
    if (minutesOf(of, i, way)) continue;
    picture.marks.push_back({static_cast<int>(i),
                             {ownPlace(of, i), *picture.yTo},
                             of.lettered(i, of.text(outcomeWord(of.rig(i).day.outcome)))});
  }
  return picture;
}

}  // namespace

std::vector<Picture> elementPictures(const Case& of) {
  std::vector<Picture> pictures{pictureOf(of, Way::ToBoil)};
  if (missesStrike(of)) pictures.push_back(pictureOf(of, Way::ToStrike));
  return pictures;
}

}  // namespace gui::telling
