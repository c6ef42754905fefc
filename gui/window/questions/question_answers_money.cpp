// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it?
#include <algorithm>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/sweeps.hpp"

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

QString xTitleOf(const Telling& tell) {
  return tell.view.overThickness
             ? translate("Answer", "Insulation on the side, %1").arg(tell.write.thicknessUnit())
             : translate("Answer", "Element, rated at its supply's voltage, W");
}

Picture emptyPicture(const Telling& tell) {
  Picture picture;
  picture.xUnit = tell.view.overThickness ? tell.write.thicknessUnit() : QStringLiteral("W");
  picture.xTitle = xTitleOf(tell);
  return picture;
}

QString currencyOf(const Telling& tell) {
  return QString::fromStdString(tell.plan.tariff.currency);
}

// Where the rig as planned stands along the picture.
double ownPlace(const Telling& tell, int i) {
  const rigs::RigPlan& rig = tell.planned(i);
  return tell.view.overThickness
             ? tell.write.thickness(jacketThickness(rig))
             : tell.write.axis(rigs::ratingAt(rig.rig.element, rig.rig.supply.nominal));
}

Picture savedPicture(const Telling& tell, bool money) {
  Picture picture = emptyPicture(tell);
  if (!money) {
    picture.title = translate("Answer", "Time a jacket saves");
    picture.yTitle = translate("Answer", "Minutes saved from mash to boil");
    picture.yUnit = QStringLiteral("min");
  } else if (priced(tell)) {
    picture.title = translate("Answer", "Money a jacket saves");
    picture.yUnit = currencyOf(tell);
    picture.yTitle = translate("Answer", "%1 saved a batch").arg(picture.yUnit);
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
    if (!effect->savedFromWall) continue;
    const double x = ownPlace(tell, i);
    const Saving own{x, effect->savedToBoil, *effect->savedFromWall,
                     rigs::moneySaved(effect->bare, effect->jacketed, tell.plan)};
    const auto y = value(own);
    if (!y) continue;
    picture.marks.push_back({i, {x, *y}, {}});
    addPoint(picture.lines.back(), {x, *y});
  }
  return picture;
}

// Both days at one place along the picture.
struct Compared {
  double x = 0.0;
  rigs::JacketDay bare, jacketed;
};
std::vector<Compared> comparisons(const Telling& tell, int i) {
  std::vector<Compared> all;
  const RigSweeps* sweeps = tell.sweeps(i);
  if (!sweeps) return all;
  if (tell.view.overThickness) {
    for (const rigs::JacketPoint& p : sweeps->thickness)
      all.push_back({tell.write.thickness(p.thickness), p.bare, p.jacketed});
  } else {
    for (const rigs::JacketPowerPoint& p : sweeps->jacketPower)
      all.push_back({tell.write.axis(p.element), p.bare, p.jacketed});
  }
  return all;
}

Picture comparedPicture(const Telling& tell, bool money) {
  Picture picture = emptyPicture(tell);
  if (!money) {
    picture.title = translate("Answer", "Time from mash to boil, with a jacket and without");
    picture.yTitle = translate("Answer", "Minutes from mash to boil; thin: without jacket");
    picture.yUnit = QStringLiteral("min");
  } else if (priced(tell)) {
    picture.title = translate("Answer", "Cost of a batch, with a jacket and without");
    picture.yUnit = currencyOf(tell);
    picture.yTitle = translate("Answer", "%1 a batch; thin: without jacket").arg(picture.yUnit);
  } else {
    picture.title = translate("Answer", "Energy of a batch, with a jacket and without");
    picture.yUnit = tell.write.unit<physics::Energy>();
    picture.yTitle = translate("Answer", "%1 a batch; thin: without jacket").arg(picture.yUnit);
  }
  const int decimals = money ? 2 : 0;
  // A day that stops early has nothing to compare.
  const auto value = [&](const rigs::JacketDay& day) -> std::optional<double> {
    if (!day.done) return std::nullopt;
    if (!money) return day.toBoil ? std::optional(physics::inMinutes(*day.toBoil)) : std::nullopt;
    return priced(tell) ? day.cost : std::optional(tell.write.axis(day.fromWall));
  };
  for (int i = 0; i < tell.count(); ++i) {
    PictureLine jacketed{.rig = i, .name = tell.name(i), .points = {}};
    PictureLine bare{.rig = i,
                     .name = translate("Answer", "the same without its jacket"),
                     .points = {},
                     .faint = true};
    for (const Compared& at : comparisons(tell, i)) {
      if (const auto y = value(at.jacketed)) jacketed.points.push_back({at.x, *y});
      if (const auto y = value(at.bare)) bare.points.push_back({at.x, *y});
    }
    if (const auto& effect = tell.rig(i).jacket) {
      const double x = ownPlace(tell, i);
      const auto with = value(rigs::jacketDay(effect->jacketed, tell.plan));
      const auto without = value(rigs::jacketDay(effect->bare, tell.plan));
      const auto text = [&](double y) { return tell.write.plain(y, decimals); };
      if (without) {
        picture.marks.push_back({i, {x, *without}, {}});
        addPoint(bare, {x, *without});
      }
      if (with) {
        const QString told =
            without ? QStringLiteral("%1 → %2").arg(text(*without), text(*with)) : text(*with);
        picture.marks.push_back(
            {i, {x, *with}, QStringLiteral("%1 %2 %3").arg(letterOfRig(i), told, picture.yUnit)});
        addPoint(jacketed, {x, *with});
      }
    }
    picture.lines.push_back(jacketed);
    picture.lines.push_back(bare);
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
    return jacketText(tell.planned(i).jacket, tell.write.units());
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
    table.heading(translate("Answer", "Cost of a batch, %1").arg(currencyOf(tell)));
    const auto cost = [&](const physics::BrewDay& day) -> std::optional<QString> {
      const rigs::JacketDay one = rigs::jacketDay(day, tell.plan);
      return one.done && one.cost ? std::optional(tell.write.plain(*one.cost, 2)) : std::nullopt;
    };
    of(without, [&](const JacketEffect& e) { return cost(e.bare); });
    of(with, [&](const JacketEffect& e) { return cost(e.jacketed); });
    of(translate("Answer", "saved"), [&](const JacketEffect& e) -> std::optional<QString> {
      const auto less = rigs::moneySaved(e.bare, e.jacketed, tell.plan);
      return less ? std::optional(tell.write.plain(*less, 3)) : std::nullopt;
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
  answer.pictures = tell.view.savings
                        ? QVector{savedPicture(tell, false), savedPicture(tell, true)}
                        : QVector{comparedPicture(tell, false), comparedPicture(tell, true)};
  answer.table = jacketTable(tell);
  return answer;
}

}  // namespace gui
