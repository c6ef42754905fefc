// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need?
#include <algorithm>
#include <cmath>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "rigs/answers/figures.hpp"

namespace gui {
namespace {

using physics::StageKind;

std::optional<double> toBoilMinutes(const Telling& tell, int i) {
  const auto time = rigs::timeOf(tell.rig(i).day, StageKind::HeatingToBoil);
  return time ? std::optional(physics::inMinutes(*time)) : std::nullopt;
}

QString enoughText(const Telling& tell, int i) {
  const rigs::RigAnswer& rig = tell.rig(i);
  const rigs::Goals& goals = tell.plan.goals;
  const QString within = tell.write.time(goals.boilWithin);
  const QString rate = tell.write.text(rigs::perHour(goals.boilOffPerHour));
  const physics::PowerAnswer needed = rigs::neededPower(*rig.sizing);
  if (!needed.power) {
    return translate(
               "Answer",
               "No element takes %1 to strike and to the boil within %2 each and boils off %3.")
        .arg(tell.named(i), within, rate);
  }
  const auto element = rigs::elementFor(tell.planned(i).rig, needed);
  if (!element) {
    return translate("Answer",
                     "%1 of heat is what %2 needs to strike and boil within %3 each and boil off "
                     "%4: more than its cable can carry.")
        .arg(tell.write.watts(*needed.power), tell.named(i), within, rate);
  }
  QString text;
  if (*needed.power <= rig.day.electrical.delivered) {
    text = translate("Answer",
                     "%1 at %5 is enough for %2 to strike and boil within %3 each and boil off %4; "
                     "its own is stronger.");
  } else {
    switch (rigs::carries(tell.plan, tell.planned(i), needed)) {
      case rigs::Carries::Yes:
        text = translate("Answer",
                         "%1 at %5 is what %2 needs to strike and boil within %3 each and boil off "
                         "%4; its own is too weak, its circuit carries that.");
        break;
      case rigs::Carries::ForShortUseOnly:
        text = translate("Answer",
                         "%1 at %5 is what %2 needs to strike and boil within %3 each and boil off "
                         "%4; its own is too weak, and its circuit carries that for short use "
                         "only, not for three hours.");
        break;
      case rigs::Carries::No:
        text = translate("Answer",
                         "%1 at %5 is what %2 needs to strike and boil within %3 each and boil off "
                         "%4; its own is too weak, and its circuit does not carry that.");
        break;
    }
  }
  return text.arg(tell.write.watts(element->rating), tell.named(i), within, rate,
                  tell.write.text(element->ratedAt));
}

// Along the picture: what is written on an element for the rig's rated voltage, so that one element
// is at one place whatever supply it is on; or what it is rated at the supply's own voltage.
double along(const Telling& tell, int i, physics::Power atSupply) {
  const physics::Rig& rig = tell.planned(i).rig;
  if (!tell.view.asWritten) return tell.write.axis(atSupply);
  const physics::Element element{atSupply, rig.supply.nominal, rig.element.topHeight};
  return tell.write.axis(rigs::ratingAt(element, rig.element.ratedAt));
}

physics::Power ownAtSupply(const Telling& tell, int i) {
  const physics::Rig& rig = tell.planned(i).rig;
  return rigs::ratingAt(rig.element, rig.supply.nominal);
}

physics::Power mostOnCircuit(const Telling& tell, int i) {
  const physics::Rig& rig = tell.planned(i).rig;
  return physics::largestElementOn(rig.supply, rig.element.topHeight).rating;
}

// "120 V, 15 A"
QString circuitText(const Telling& tell, int i) {
  const physics::Supply& supply = tell.planned(i).rig.supply;
  return QStringLiteral("%1, %2").arg(tell.write.text(supply.nominal),
                                      tell.write.text(supply.rating));
}

// With its supply; where the picture is about what is written on elements, with their voltage too.
QString lineName(const Telling& tell, int i) {
  const physics::Rig& rig = tell.planned(i).rig;
  const QString supply = tell.write.text(rig.supply.nominal);
  if (!tell.view.asWritten) return translate("Answer", "%1, on %2").arg(tell.name(i), supply);
  return translate("Answer", "%1, %2 on %3")
      .arg(tell.name(i), tell.write.text(rig.element.ratedAt), supply);
}

// One mark for all rigs whose circuits carry the same.
void addCircuits(const Telling& tell, QtPicture& picture) {
  QStringList circuits;
  for (int i = 0; i < tell.count(); ++i) {
    const double most = along(tell, i, mostOnCircuit(tell, i));
    const QString circuit = circuitText(tell, i);
    qsizetype same = 0;
    while (same < circuits.size() &&
           (circuits[same] != circuit || std::abs(picture.limits[same].x - most) >= 0.01 * most)) {
      ++same;
    }
    if (same < circuits.size()) {
      QString& label = picture.limits[same].label;
      label.insert(label.lastIndexOf(QLatin1Char(')')) + 1, QLatin1Char(' ') + letterOfRig(i));
      continue;
    }
    circuits.push_back(circuit);
    picture.limits.push_back({most, QStringLiteral("%1 %2").arg(letterOfRig(i), circuit)});
  }
}

QtPictureLine timesAgainstPower(const Telling& tell, int i) {
  QtPictureLine line{.rig = i, .name = lineName(tell, i), .points = {}};
  const RigSweeps* sweeps = tell.sweeps(i);
  if (!sweeps) return line;
  for (const rigs::PowerPoint& point : sweeps->power) {
    if (!point.toBoil || !point.boilOffPerHour) continue;
    line.points.push_back({along(tell, i, point.element), physics::inMinutes(*point.toBoil)});
  }
  return line;
}

// Thin from where its circuit no longer carries the element.
QtPictureLine cutBeyond(QtPictureLine& line, double most) {
  QtPictureLine beyond{.rig = line.rig,
                       .name = translate("Answer", "more than its circuit carries"),
                       .points = {},
                       .faint = true};
  const auto at = valueAt(line.points, most);
  if (!at) {
    if (!line.points.isEmpty() && line.points.front().x() > most) beyond.points.swap(line.points);
    return beyond;
  }
  const QPointF end(most, *at);
  Points within;
  for (const QPointF& p : line.points) (p.x() < most ? within : beyond.points).push_back(p);
  within.push_back(end);
  if (beyond.points.isEmpty() || beyond.points.front() != end) beyond.points.push_front(end);
  line.points = within;
  return beyond;
}

QtPicture elementPicture(const Telling& tell) {
  constexpr double kUsualMost = 6000.0;  // W; up to here, whatever the plan's circuits carry
  QtPicture picture;
  picture.title = translate("Answer", "Time from mash to boil against element power");
  picture.xUnit = QStringLiteral("W");
  picture.xTitle = tell.view.asWritten
                       ? translate("Answer", "Power written on the element, W")
                       : translate("Answer", "Element, rated at its supply's voltage, W");
  picture.yUnit = QStringLiteral("min");
  picture.yTitle = translate("Answer", "Minutes from mash to boil; dotted: what a circuit carries");
  double slowest = 60.0;
  double strongest = kUsualMost;
  QVector<QtPictureLine> beyond;
  for (int i = 0; i < tell.count(); ++i) {
    QtPictureLine line = timesAgainstPower(tell, i);
    const auto minutes = toBoilMinutes(tell, i);
    const bool boils = minutes && tell.rig(i).day.outcome == physics::Outcome::Done;
    const double own = along(tell, i, ownAtSupply(tell, i));
    const double most = along(tell, i, mostOnCircuit(tell, i));
    if (boils) addPoint(line, {own, *minutes});
    beyond.push_back(cutBeyond(line, most));
    picture.lines.push_back(line);
    strongest = std::max({strongest, 1.05 * own, 1.05 * most});
    if (boils) {
      picture.marks.push_back(
          {i,
           {own, *minutes},
           QStringLiteral("%1 %2 min").arg(letterOfRig(i), tell.write.plain(*minutes, 0))});
      slowest = std::max(slowest, *minutes);
    }
  }
  for (const QtPictureLine& line : beyond) {
    if (line.points.size() > 1) picture.lines.push_back(line);
  }
  addCircuits(tell, picture);
  picture.draggable = physics::inMinutes(tell.plan.goals.boilWithin);
  picture.draggableLabel =
      translate("Answer", "wanted: %1").arg(tell.write.time(tell.plan.goals.boilWithin));
  picture.yFrom = 0.0;
  // Not from the wanted time alone: the axis would run away from the hand that drags it.
  picture.yTo = std::max(1.5 * slowest, 1.02 * *picture.draggable);
  picture.xTo = strongest;
  // A rig that does not boil stands at the top: no time is long enough.
  for (int i = 0; i < tell.count(); ++i) {
    if (toBoilMinutes(tell, i) && tell.rig(i).day.outcome == physics::Outcome::Done) continue;
    picture.marks.push_back(
        {i,
         {along(tell, i, ownAtSupply(tell, i)), *picture.yTo},
         QStringLiteral("%1 %2").arg(letterOfRig(i), outcomeLabel(tell.rig(i).day.outcome))});
  }
  return picture;
}

// The point of the curve with the largest element that the circuit carries.
const rigs::PowerPoint* atMost(const Telling& tell, int i) {
  const RigSweeps* sweeps = tell.sweeps(i);
  if (!sweeps) return nullptr;
  const physics::Power most = mostOnCircuit(tell, i);
  const auto found =
      std::find_if(sweeps->power.begin(), sweeps->power.end(),
                   [&](const rigs::PowerPoint& point) { return point.element == most; });
  return found == sweeps->power.end() || !found->boilOffPerHour ? nullptr : &*found;
}

void addMostOnCircuit(TableOf& table, const Telling& tell) {
  const auto number = [&](const QString& label, auto of) {
    table.row(label, [&](int i) -> std::optional<QString> { return tell.write.number(of(i), 0); });
  };
  table.heading(translate("Answer", "Most its circuit carries"));
  number(translate("Answer", "element rated at the supply, W"),
         [&](int i) { return mostOnCircuit(tell, i); });
  number(translate("Answer", "the same, rated as its own is, W"), [&](int i) {
    const physics::Rig& rig = tell.planned(i).rig;
    return rigs::ratingAt(physics::largestElementOn(rig.supply, rig.element.topHeight),
                          rig.element.ratedAt);
  });
  table.row(translate("Answer", "from mash to boil with that, min"),
            [&](int i) -> std::optional<QString> {
              const rigs::PowerPoint* point = atMost(tell, i);
              if (!point || !point->toBoil) return std::nullopt;
              return tell.write.plain(physics::inMinutes(*point->toBoil), 0);
            });
  number(translate("Answer", "for three hours or longer, rated at the supply, W"), [&](int i) {
    physics::Supply supply = tell.planned(i).rig.supply;
    supply.rating = rigs::longUseCurrent(tell.plan, tell.planned(i));
    return physics::largestElementOn(supply, tell.planned(i).rig.element.topHeight).rating;
  });
}

PictureTable elementTable(const Telling& tell) {
  TableOf table(tell);
  const auto planned = [&](const QString& label, auto of, int decimals) {
    table.row(label,
              [&](int i) -> std::optional<QString> { return tell.write.number(of(i), decimals); });
  };
  table.heading(translate("Answer", "Now"));
  planned(
      translate("Answer", "element rated, W"),
      [&](int i) { return tell.planned(i).rig.element.rating; }, 0);
  planned(
      translate("Answer", "rated at, V"),
      [&](int i) { return tell.planned(i).rig.element.ratedAt; }, 0);
  planned(
      translate("Answer", "supply, V"), [&](int i) { return tell.planned(i).rig.supply.nominal; },
      0);
  planned(
      translate("Answer", "circuit, A"), [&](int i) { return tell.planned(i).rig.supply.rating; },
      0);
  planned(
      translate("Answer", "current, A"), [&](int i) { return tell.rig(i).day.electrical.current; },
      1);
  planned(
      translate("Answer", "reaches the vessel, W"),
      [&](int i) { return tell.rig(i).day.electrical.delivered; }, 0);
  table.row(translate("Answer", "from mash to boil, min"), [&](int i) -> std::optional<QString> {
    const auto minutes = toBoilMinutes(tell, i);
    return minutes ? std::optional(tell.write.plain(*minutes, 0)) : std::nullopt;
  });
  table.row(translate("Answer", "and then"),
            [&](int i) -> std::optional<QString> { return outcomeLabel(tell.rig(i).day.outcome); });
  table.heading(translate("Answer", "Element needed, rated at the supply, W"));
  const auto needed = [&](const QString& label, physics::PowerAnswer rigs::SizingAnswer::*wish) {
    table.row(label, [&, wish](int i) -> std::optional<QString> {
      if (!tell.rig(i).sizing) return std::nullopt;
      const auto element = rigs::elementFor(tell.planned(i).rig, (*tell.rig(i).sizing).*wish);
      return element ? std::optional(tell.write.number(element->rating, 0)) : std::nullopt;
    });
  };
  const QString within = tell.write.time(tell.plan.goals.boilWithin);
  needed(translate("Answer", "to boil at all"), &rigs::SizingAnswer::toBoilAtAll);
  needed(translate("Answer", "from mash to boil within %1").arg(within),
         &rigs::SizingAnswer::toBoilWithin);
  needed(translate("Answer", "to strike within %1").arg(within),
         &rigs::SizingAnswer::toStrikeWithin);
  needed(translate("Answer", "to boil off %1")
             .arg(tell.write.text(rigs::perHour(tell.plan.goals.boilOffPerHour))),
         &rigs::SizingAnswer::forBoilOff);
  addMostOnCircuit(table, tell);
  return table.take();
}

}  // namespace

QtAnswer whichElement(const Telling& tell) {
  QtAnswer answer;
  QStringList told;
  for (int i = 0; i < tell.count(); ++i) {
    if (tell.rig(i).sizing) told += enoughText(tell, i);
  }
  if (told.isEmpty()) told += translate("Answer", "Being worked out …");
  answer.sentence = told.join(QLatin1Char('\n'));
  answer.pictures = {elementPicture(tell)};
  answer.table = elementTable(tell);
  return answer;
}

}  // namespace gui
