// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it?
#include <algorithm>

#include "gui/window/answer_text.hpp"
#include "gui/window/chart_layout.hpp"
#include "rigs/figures.hpp"

namespace gui {
namespace {

using physics::JacketEffect;
using physics::StageKind;

physics::Length jacketThickness(const rigs::RigPlan& rig) {
  physics::Length sum = physics::metres(0.0);
  for (const physics::Layer& layer : rig.jacketed.vessel.side.insulation) sum += layer.thickness;
  return sum;
}

bool priced(const Telling& tell) { return !tell.plan.tariff.currency.empty(); }

QString savingText(const Telling& tell, int i) {
  const JacketEffect& effect = *tell.rig(i).jacket;
  if (effect.verdict == physics::JacketVerdict::MakesItBoil) {
    return translate("Answer", "%1 only boils with its jacket.").arg(tell.named(i));
  }
  // A day that stops where it levels off saves nothing that could be compared.
  if (!effect.savedFromWall || !effect.savedToBoil) {
    if (!effect.jacketed.levelsOff) {
      return translate("Answer", "Nothing can be compared for %1.").arg(tell.named(i));
    }
    return translate("Answer", "%1 is as far as %2 gets with a jacket: it still does not boil.")
        .arg(tell.write.text(effect.jacketed.levelsOff->at), tell.named(i));
  }
  const QString energy = tell.write.text(*effect.savedFromWall);
  const auto cost = rigs::moneySaved(effect.bare, effect.jacketed, tell.plan);
  const QString saved = cost ? tell.write.money(*cost, tell.plan.tariff) : energy;
  QString text;
  switch (effect.verdict) {
    case physics::JacketVerdict::MakesItBoil:
    case physics::JacketVerdict::GetsFurther:
    case physics::JacketVerdict::Worthwhile:
      text = translate("Answer",
                       "%1 from mash to boil and %2 a batch is what a jacket saves with %3: "
                       "worth it.");
      break;
    case physics::JacketVerdict::TimeNotWorthIt:
      text = translate("Answer",
                       "%1 from mash to boil and %2 a batch is what a jacket saves with %3: "
                       "not worth it for the time, but for the heat it holds.");
      break;
    case physics::JacketVerdict::NotWorthIt:
      text = translate("Answer",
                       "%1 from mash to boil and %2 a batch is what a jacket saves with %3: "
                       "not worth it.");
      break;
  }
  return text.arg(tell.write.time(*effect.savedToBoil), saved, tell.named(i));
}

// Whether the bare rig boils to the end with such an element: without that a saving would compare
// a day that stops with one that goes on.
bool bareBoils(const Telling& tell, int i, physics::Power rating) {
  const physics::Rig& bare = tell.planned(i).bare;
  const auto& effect = tell.rig(i).jacket;
  if (!effect || !effect->bare.leastToBoil) return false;
  const physics::Element element{rating, bare.supply.nominal, bare.element.topHeight};
  return physics::electricalLoad(element, bare.supply).delivered * bare.boilPower >=
         *effect->bare.leastToBoil;
}

// A point of either sweep, as both pictures need it.
struct Saving {
  double x = 0.0;
  std::optional<physics::Time> time;
  physics::Energy energy;
  std::optional<double> money;
};
std::vector<Saving> savings(const Telling& tell, int i) {
  std::vector<Saving> all;
  const RigSweeps* sweeps = tell.sweeps(i);
  if (!sweeps) return all;
  const auto& effect = tell.rig(i).jacket;
  if (tell.view.overThickness) {
    if (!effect || effect->bare.outcome != physics::Outcome::Done) return all;
    for (const rigs::JacketPoint& p : sweeps->thickness) {
      all.push_back(
          {tell.write.thickness(p.thickness), p.savedToBoil, p.savedFromWall, p.savedMoney});
    }
  } else {
    for (const rigs::JacketPowerPoint& p : sweeps->jacketPower) {
      if (!bareBoils(tell, i, p.element)) continue;
      all.push_back({tell.write.axis(p.element), p.savedToBoil, p.savedFromWall, p.savedMoney});
    }
  }
  return all;
}

Picture savedPicture(const Telling& tell, bool money) {
  Picture picture;
  const bool thickness = tell.view.overThickness;
  picture.xUnit = thickness ? tell.write.thicknessUnit() : QStringLiteral("W");
  picture.xTitle = thickness ? translate("Answer", "Insulation on the side, %1").arg(picture.xUnit)
                             : translate("Answer", "Element, rated at its supply's voltage, W");
  const QString currency = QString::fromStdString(tell.plan.tariff.currency);
  if (!money) {
    picture.title = translate("Answer", "Time a jacket saves");
    picture.yTitle = translate("Answer", "Minutes saved from mash to boil");
    picture.yUnit = QStringLiteral("min");
  } else if (priced(tell)) {
    picture.title = translate("Answer", "Money a jacket saves");
    picture.yTitle = translate("Answer", "%1 saved a batch").arg(currency);
    picture.yUnit = currency;
  } else {
    picture.title = translate("Answer", "Energy a jacket saves");
    picture.yUnit = tell.write.unit<physics::Energy>();
    picture.yTitle = translate("Answer", "%1 saved a batch").arg(picture.yUnit);
  }
  const auto value = [&](const Saving& s) -> std::optional<double> {
    if (!money) return s.time ? std::optional(physics::inMinutes(*s.time)) : std::nullopt;
    return priced(tell) ? s.money : std::optional(tell.write.axis(s.energy));
  };
  for (int i = 0; i < tell.count(); ++i) {
    PictureLine line{.rig = i, .name = tell.name(i), .points = {}};
    for (const Saving& saving : savings(tell, i)) {
      if (const auto y = value(saving)) line.points.push_back({saving.x, *y});
    }
    picture.lines.push_back(line);
    const auto& effect = tell.rig(i).jacket;
    if (!effect || effect->bare.outcome != physics::Outcome::Done) continue;
    const rigs::RigPlan& rig = tell.planned(i);
    const double x = thickness
                         ? tell.write.thickness(jacketThickness(rig))
                         : tell.write.axis(rigs::ratingAt(rig.rig.element, rig.rig.supply.nominal));
    if (!effect->savedFromWall) continue;
    const Saving own{x, effect->savedToBoil, *effect->savedFromWall,
                     rigs::moneySaved(effect->bare, effect->jacketed, tell.plan)};
    const auto y = value(own);
    if (!y) continue;
    picture.marks.push_back({i, {x, *y}, {}});
    // The rig's own point belongs to its curve.
    Points& points = picture.lines.back().points;
    if (points.isEmpty()) continue;
    points.insert(std::lower_bound(points.begin(), points.end(), x,
                                   [](const QPointF& p, double to) { return p.x() < to; }),
                  {x, *y});
  }
  return picture;
}

PictureTable jacketTable(const Telling& tell) {
  TableOf table(tell);
  const auto of = [&](const QString& label, auto cell) {
    table.row(label, [&tell, cell](int i) -> std::optional<QString> {
      const auto& effect = tell.rig(i).jacket;
      if (!effect) return std::nullopt;
      return cell(*effect);
    });
  };
  const auto time = [](const std::optional<physics::Time>& t) -> std::optional<QString> {
    if (!t) return std::nullopt;
    return hoursAndMinutesText(physics::inMinutes(*t));
  };
  const auto saved = [&](const std::optional<physics::Time>& t) -> std::optional<QString> {
    if (!t) return std::nullopt;
    return tell.write.plain(physics::inMinutes(*t), 1);
  };
  const QString without = translate("Answer", "without jacket");
  const QString with = translate("Answer", "with jacket");
  const auto both = [&](const QString& label, StageKind kind,
                        std::optional<physics::Time> JacketEffect::*difference) {
    table.heading(label);
    of(without, [=](const JacketEffect& e) { return time(rigs::timeOf(e.bare, kind)); });
    of(with, [=](const JacketEffect& e) { return time(rigs::timeOf(e.jacketed, kind)); });
    of(translate("Answer", "saved, min"),
       [=](const JacketEffect& e) { return saved(e.*difference); });
  };
  table.row(translate("Answer", "jacket compared"), [&](int i) -> std::optional<QString> {
    if (!tell.rig(i).jacket) return std::nullopt;
    return QString::fromStdString(tell.planned(i).jacket.in(tell.write.units()));
  });
  both(translate("Answer", "To strike, h:min"), StageKind::Strike, &JacketEffect::savedToStrike);
  both(translate("Answer", "From mash to boil, h:min"), StageKind::HeatingToBoil,
       &JacketEffect::savedToBoil);
  table.heading(
      translate("Answer", "From the wall, whole day, %1").arg(tell.write.unit<physics::Energy>()));
  of(without, [&](const JacketEffect& e) -> std::optional<QString> {
    return tell.write.number(e.bare.total.fromWall(), 2);
  });
  of(with, [&](const JacketEffect& e) -> std::optional<QString> {
    return tell.write.number(e.jacketed.total.fromWall(), 2);
  });
  of(translate("Answer", "saved"), [&](const JacketEffect& e) -> std::optional<QString> {
    if (!e.savedFromWall) return std::nullopt;
    return tell.write.number(*e.savedFromWall, 3);
  });
  if (priced(tell)) {
    of(translate("Answer", "saved, %1").arg(QString::fromStdString(tell.plan.tariff.currency)),
       [&](const JacketEffect& e) -> std::optional<QString> {
         const auto cost = rigs::moneySaved(e.bare, e.jacketed, tell.plan);
         return cost ? std::optional(tell.write.plain(*cost, 3)) : std::nullopt;
       });
  }
  table.heading(translate("Answer", "Lost at the boil, W"));
  of(without, [&](const JacketEffect& e) -> std::optional<QString> {
    return tell.write.number(e.atBoil.bare, 0);
  });
  of(with, [&](const JacketEffect& e) -> std::optional<QString> {
    return tell.write.number(e.atBoil.jacketed, 0);
  });
  return table.take();
}

}  // namespace

Answer worthJacket(const Telling& tell) {
  Answer answer;
  const Extremes e = extremesOf(tell, [&](int i) -> std::optional<double> {
    const auto& effect = tell.rig(i).jacket;
    if (!effect) return std::nullopt;
    const bool compares = effect->savedFromWall && effect->savedToBoil;
    return compares ? physics::inSeconds(*effect->savedToBoil) : -1e9;
  });
  QStringList told;
  if (e.counted == 0) {
    told += translate("Answer", "No rig of this plan has a jacket to compare.");
  } else {
    told += savingText(tell, e.most);
    if (e.least != e.most) told += savingText(tell, e.least);
  }
  answer.sentence = told.join(QLatin1Char(' '));
  answer.pictures = {savedPicture(tell, false), savedPicture(tell, true)};
  answer.table = jacketTable(tell);
  return answer;
}

}  // namespace gui
