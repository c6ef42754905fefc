// SPDX-License-Identifier: GPL-3.0-or-later
// Does it boil hard enough? What element do I need?
#include <algorithm>
#include <cmath>

#include "gui/window/answer_text.hpp"
#include "gui/window/chart_layout.hpp"
#include "rigs/figures.hpp"

namespace gui {
namespace {

using physics::StageKind;

// The rig's element as if it were rated at its supply's voltage, as the curves are.
physics::Power operatingPoint(const rigs::RigPlan& rig) {
  return rigs::ratingAt(rig.rig.element, rig.rig.supply.nominal);
}

double percentPerHour(double share) { return 100.0 * share; }

// The rig's own point belongs to its curve, which otherwise has only round powers.
void insert(PictureLine& line, QPointF own) {
  if (line.points.isEmpty()) return;
  const auto after = std::lower_bound(line.points.begin(), line.points.end(), own.x(),
                                      [](const QPointF& p, double x) { return p.x() < x; });
  line.points.insert(after, own);
}

QString boilSentence(const Telling& tell, int i, const QString& text) {
  const physics::BoilFigures& boil = *tell.rig(i).day.boil;
  return text.arg(tell.write.text(rigs::boilOffRate(boil)), tell.named(i),
                  tell.write.text(boil.coldBoilOff));
}

// Complete sentences for each word: other languages inflect them.
QString boilText(const Telling& tell, int i) {
  switch (rigs::vigourOf(*tell.rig(i).day.boil)) {
    case rigs::Vigour::Simmer:
      return boilSentence(tell, i, translate("Answer", "%1 boils off with %2, a simmer: %3."));
    case rigs::Vigour::Gentle:
      return boilSentence(tell, i, translate("Answer", "%1 boils off with %2, a gentle boil: %3."));
    case rigs::Vigour::Steady:
      return boilSentence(tell, i, translate("Answer", "%1 boils off with %2, a steady boil: %3."));
    case rigs::Vigour::Strong:
      return boilSentence(tell, i, translate("Answer", "%1 boils off with %2, a strong boil: %3."));
    case rigs::Vigour::Fierce:
      return boilSentence(tell, i, translate("Answer", "%1 boils off with %2, a fierce boil: %3."));
  }
  return {};
}

Picture boilOffPicture(const Telling& tell) {
  Picture picture;
  picture.title = translate("Answer", "Boil-off against element power");
  picture.xUnit = QStringLiteral("W");
  picture.xTitle = translate("Answer", "Element, rated at its supply's voltage, W");
  picture.yUnit = QStringLiteral("%/h");
  picture.yTitle = translate("Answer", "Boil-off, percent of the volume before the boil per hour");
  // Every word for vigour where it holds; shaded what others say is usual.
  using rigs::Vigour;
  picture.bands = {
      {.from = 0.0,
       .to = 100.0 * rigs::kGentleFrom,
       .label = vigourLabel(Vigour::Simmer),
       .source = {},
       .shaded = false},
      {.from = 100.0 * rigs::kGentleFrom,
       .to = 100.0 * rigs::kSteadyFrom,
       .label = translate("Answer", "%1; 5–8 %/h: best practice in breweries")
                    .replace(QLatin1String("%1"), vigourLabel(Vigour::Gentle)),
       .source = translate("Answer",
                           "Joint Research Centre, Best environmental management practice: food "
                           "and beverage")},
      {.from = 100.0 * rigs::kSteadyFrom,
       .to = 100.0 * rigs::kStrongFrom,
       .label = vigourLabel(Vigour::Steady),
       .source = {},
       .shaded = false},
      {.from = 100.0 * rigs::kStrongFrom,
       .to = 100.0 * rigs::kFierceFrom,
       .label = translate("Answer", "%1; 10–15 %/h: usual in small open kettles")
                    .replace(QLatin1String("%1"), vigourLabel(Vigour::Strong)),
       .source = translate("Answer", "common practice, no source")}};
  double highest = 20.0;
  for (int i = 0; i < tell.count(); ++i) {
    PictureLine line{.rig = i, .name = tell.name(i), .points = {}};
    if (const RigSweeps* sweeps = tell.sweeps(i)) {
      for (const rigs::PowerPoint& point : sweeps->power) {
        if (!point.boilOffPerHour) continue;
        line.points.push_back(
            {tell.write.axis(point.element), percentPerHour(*point.boilOffPerHour)});
      }
    }
    const double x = tell.write.axis(operatingPoint(tell.planned(i)));
    const auto& boil = tell.rig(i).day.boil;
    const bool boils = boil && tell.rig(i).day.outcome == physics::Outcome::Done;
    const double y = boils ? percentPerHour(boil->shareOfPreBoilPerHour) : 0.0;
    if (boils) insert(line, {x, y});
    picture.lines.push_back(line);
    picture.marks.push_back({i,
                             {x, y},
                             boils ? QStringLiteral("%1 %2").arg(
                                         letterOfRig(i), tell.write.text(rigs::boilOffRate(*boil)))
                                   : QStringLiteral("%1 %2").arg(
                                         letterOfRig(i), outcomeLabel(tell.rig(i).day.outcome))});
    highest = std::max(highest, 1.25 * y);
  }
  picture.yFrom = 0.0;
  picture.yTo = highest;
  picture.bands.push_back({.from = 100.0 * rigs::kFierceFrom,
                           .to = highest,
                           .label = vigourLabel(Vigour::Fierce),
                           .source = {},
                           .shaded = false});
  // Up to where every curve has left the picture.
  double strongest = 0.0;
  for (const PictureLine& line : picture.lines) {
    for (const QPointF& p : line.points) {
      if (p.y() <= highest) strongest = std::max(strongest, p.x());
    }
  }
  for (const PictureMark& mark : picture.marks) strongest = std::max(strongest, mark.at.x());
  if (strongest > 0.0) picture.xTo = 1.05 * strongest;
  return picture;
}

PictureTable boilTable(const Telling& tell) {
  TableOf table(tell);
  const auto ofBoil = [&](auto of) {
    return [&tell, of](int i) -> std::optional<QString> {
      const auto& boil = tell.rig(i).day.boil;
      return boil ? std::optional<QString>(of(*boil)) : std::nullopt;
    };
  };
  using physics::BoilFigures;
  table.row(translate("Answer", "vigour"), [&](int i) -> std::optional<QString> {
    const physics::BrewDay& day = tell.rig(i).day;
    if (day.outcome != physics::Outcome::Done) return outcomeLabel(day.outcome);
    return day.boil ? std::optional(vigourLabel(rigs::vigourOf(*day.boil))) : std::nullopt;
  });
  table.row(translate("Answer", "boil-off, %/h"), ofBoil([&](const BoilFigures& b) {
              return tell.write.number(rigs::boilOffRate(b), 1);
            }));
  table.row(
      translate("Answer", "boil-off as cold water, %1").arg(tell.write.unit<physics::VolumeFlow>()),
      ofBoil([&](const BoilFigures& b) { return tell.write.number(b.coldBoilOff, 2); }));
  table.row(translate("Answer", "net heat into the boil, W"),
            ofBoil([&](const BoilFigures& b) { return tell.write.number(b.net, 0); }));
  const QString volume = tell.write.unit<physics::Volume>();
  table.row(translate("Answer", "before the boil, %1").arg(volume),
            [&](int i) -> std::optional<QString> {
              return tell.write.number(tell.rig(i).day.preBoilCold, 1);
            });
  table.row(translate("Answer", "in the end, %1").arg(volume),
            [&](int i) -> std::optional<QString> {
              return tell.write.number(tell.rig(i).day.resultCold, 1);
            });
  table.row(translate("Answer", "levels off at, %1").arg(tell.write.unit<physics::Temperature>()),
            [&](int i) -> std::optional<QString> {
              const auto& level = tell.rig(i).day.levelsOff;
              return level ? std::optional(tell.write.number(level->at, 1)) : std::nullopt;
            });
  return table.take();
}

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

// One line for all rigs whose circuits carry the same.
void addCircuits(const Telling& tell, Picture& picture) {
  for (int i = 0; i < tell.count(); ++i) {
    const physics::Rig& rig = tell.planned(i).rig;
    const double most =
        tell.write.axis(physics::largestElementOn(rig.supply, rig.element.topHeight).rating);
    const auto same = std::find_if(
        picture.limits.begin(), picture.limits.end(),
        [&](const PictureLimit& limit) { return std::abs(limit.x - most) < 0.01 * most; });
    if (same != picture.limits.end()) {
      same->label.insert(same->label.lastIndexOf(QLatin1Char(')')) + 1,
                         QLatin1Char(' ') + letterOfRig(i));
      continue;
    }
    picture.limits.push_back(
        {most, QStringLiteral("%1 %2").arg(letterOfRig(i), tell.write.text(rig.supply.rating))});
  }
}

Picture elementPicture(const Telling& tell) {
  Picture picture;
  picture.title = translate("Answer", "Time from mash to boil against element power");
  picture.xUnit = QStringLiteral("W");
  picture.xTitle = translate("Answer", "Element, rated at its supply's voltage, W");
  picture.yUnit = QStringLiteral("min");
  picture.yTitle = translate("Answer", "Minutes from mash to boil; dotted: what a circuit carries");
  double slowest = 60.0;
  for (int i = 0; i < tell.count(); ++i) {
    PictureLine line{.rig = i, .name = tell.name(i), .points = {}};
    if (const RigSweeps* sweeps = tell.sweeps(i)) {
      for (const rigs::PowerPoint& point : sweeps->power) {
        if (!point.toBoil || !point.boilOffPerHour) continue;
        line.points.push_back({tell.write.axis(point.element), physics::inMinutes(*point.toBoil)});
      }
    }
    const auto minutes = toBoilMinutes(tell, i);
    const bool boils = minutes && tell.rig(i).day.outcome == physics::Outcome::Done;
    const double own = tell.write.axis(operatingPoint(tell.planned(i)));
    if (boils) insert(line, {own, *minutes});
    picture.lines.push_back(line);
    if (!boils) continue;
    picture.marks.push_back(
        {i,
         {own, *minutes},
         QStringLiteral("%1 %2 min").arg(letterOfRig(i), tell.write.plain(*minutes, 0))});
    slowest = std::max(slowest, *minutes);
  }
  addCircuits(tell, picture);
  picture.draggable = physics::inMinutes(tell.plan.goals.boilWithin);
  picture.draggableLabel =
      translate("Answer", "wanted: %1").arg(tell.write.time(tell.plan.goals.boilWithin));
  picture.yFrom = 0.0;
  // Not from the wanted time alone: the axis would run away from the hand that drags it.
  picture.yTo = std::max(1.5 * slowest, 1.02 * *picture.draggable);
  return picture;
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
  table.row(translate("Answer", "most its circuit carries"), [&](int i) -> std::optional<QString> {
    const physics::Rig& rig = tell.planned(i).rig;
    return tell.write.number(physics::largestElementOn(rig.supply, rig.element.topHeight).rating,
                             0);
  });
  return table.take();
}

}  // namespace

Answer boilsEnough(const Telling& tell) {
  Answer answer;
  const Extremes e = extremesOf(tell, [&](int i) -> std::optional<double> {
    const physics::BrewDay& day = tell.rig(i).day;
    if (!day.boil || day.outcome != physics::Outcome::Done) return std::nullopt;
    return day.boil->shareOfPreBoilPerHour;
  });
  QStringList told;
  if (e.counted > 0) told += boilText(tell, e.most);
  if (e.counted > 1 && e.least != e.most) told += boilText(tell, e.least);
  told += unfinishedTexts(tell);
  if (told.isEmpty()) told += translate("Answer", "No boil is planned.");
  answer.sentence = told.join(QLatin1Char(' '));
  answer.pictures = {boilOffPicture(tell)};
  answer.table = boilTable(tell);
  return answer;
}

Answer whichElement(const Telling& tell) {
  Answer answer;
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
