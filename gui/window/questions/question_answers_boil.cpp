// SPDX-License-Identifier: GPL-3.0-or-later
// Does it boil hard enough?
#include <algorithm>
#include <cmath>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "rigs/answers/figures.hpp"

namespace gui {
namespace {

using physics::StageKind;

// The rig's element as if it were rated at its supply's voltage, as the curves are.
physics::Power operatingPoint(const rigs::RigPlan& rig) {
  return rigs::ratingAt(rig.rig.element, rig.rig.supply.nominal);
}

double percentPerHour(double share) { return 100.0 * share; }

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

QtPicture boilOffPicture(const Telling& tell) {
  QtPicture picture;
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
    QtPictureLine line{.rig = i, .name = tell.name(i), .points = {}};
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
    if (boils) addPoint(line, {x, y});
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
  for (const QtPictureLine& line : picture.lines) {
    for (const QPointF& p : line.points) {
      if (p.y() <= highest) strongest = std::max(strongest, p.x());
    }
  }
  for (const QtPictureMark& mark : picture.marks) strongest = std::max(strongest, mark.at.x());
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

}  // namespace

QtAnswer boilsEnough(const Telling& tell) {
  QtAnswer answer;
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

}  // namespace gui
