// SPDX-License-Identifier: GPL-3.0-or-later
// How long does it take? How far does it cool?
#include <algorithm>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "rigs/answers/figures.hpp"

namespace gui {
namespace {

using physics::BrewDay;
using physics::StageKind;

constexpr double kHeadroom = 0.2;

std::optional<physics::Time> duration(const BrewDay& day) {
  if (day.outcome != physics::Outcome::Done || day.stages.empty()) return std::nullopt;
  return day.duration();
}

bool ofTheMash(StageKind kind) {
  return kind == StageKind::MashingIn || kind == StageKind::Ramp || kind == StageKind::Rest ||
         kind == StageKind::UnpluggedRest;
}

// What the end of a stage is called; empty for a stage that could not be finished.
QString eventAtEnd(const BrewDay& day, std::size_t s) {
  const physics::Stage& stage = day.stages[s];
  if (!rigs::finished(day, stage)) return {};
  const bool mashEnds = ofTheMash(stage.kind) && stage.kind != StageKind::MashingIn &&
                        (s + 1 == day.stages.size() || !ofTheMash(day.stages[s + 1].kind));
  if (mashEnds) return translate("Answer", "mash done");
  switch (stage.kind) {
    case StageKind::Strike:
      return translate("Answer", "strike reached");
    case StageKind::MashingIn:
      return translate("Answer", "mashed in");
    case StageKind::Ramp:
      return translate("Answer", "rest reached");
    case StageKind::Rest:
    case StageKind::UnpluggedRest:
      return translate("Answer", "rest done");
    case StageKind::HeatingToBoil:
      return translate("Answer", "boil begins");
    case StageKind::Boil:
      return translate("Answer", "boil ends");
  }
  return {};
}

QtPicture temperatures(const Telling& tell) {
  QtPicture picture;
  picture.title = translate("Answer", "Temperature of the wort over the day");
  picture.xTitle = translate("Answer", "Time since the start, h:min");
  picture.yUnit = tell.write.unit<physics::Temperature>();
  picture.yTitle = translate("Answer", "Temperature, %1").arg(picture.yUnit);
  picture.xIsClock = true;
  for (int i = 0; i < tell.count(); ++i) {
    const BrewDay& day = tell.rig(i).day;
    QtPictureLine line{.rig = i, .name = tell.name(i), .points = {}};
    const QStringList names = stageLabels(day);
    for (std::size_t s = 0; s < day.stages.size(); ++s)
      line.phases.push_back(
          {physics::inMinutes(day.stages[s].end), names.value(static_cast<qsizetype>(s))});
    for (std::size_t s = 0; s < day.stages.size(); ++s) {
      const physics::Stage& stage = day.stages[s];
      for (const physics::CurvePoint& point : stage.curve) {
        line.points.push_back({physics::inMinutes(point.time), tell.write.axis(point.wort)});
      }
      const bool boils = stage.kind == StageKind::Boil && rigs::finished(day, stage);
      const QPointF begin(physics::inMinutes(stage.begin), tell.write.axis(stage.first));
      const QPointF end(physics::inMinutes(stage.end), tell.write.axis(stage.last));
      if (boils) {
        picture.marks.push_back(
            {i, begin,
             translate("Answer", "%1 boil %2").arg(letterOfRig(i), hoursAndMinutesText(begin.x())),
             translate("Answer", "boil begins")});
      }
      const bool fails = !rigs::finished(day, stage);
      const bool heatsToBoil =
          stage.kind == StageKind::HeatingToBoil && !fails && day.find(StageKind::Boil) != nullptr;
      if (heatsToBoil && &stage + 1 == &day.stages.back() &&
          day.outcome == physics::Outcome::Done) {
        continue;  // the boil's own mark
      }
      picture.marks.push_back(
          {i, end,
           fails ? translate("Answer", "%1 %2").arg(letterOfRig(i), outcomeLabel(day.outcome))
                 : QString(),
           eventAtEnd(day, s)});
    }
    picture.lines.push_back(line);
  }
  // Room for the labels above the boil, where every line runs.
  double least = 0.0;
  double most = 0.0;
  for (const QtPictureLine& line : picture.lines) {
    for (const QPointF& p : line.points) {
      least = std::min(least, p.y());
      most = std::max(most, p.y());
    }
  }
  if (most > least) {
    picture.yFrom = least;
    picture.yTo = most + kHeadroom * (most - least);
  }
  return picture;
}

// The rig whose day has most stages names them all.
const BrewDay& longestDay(const Telling& tell) {
  int longest = 0;
  for (int i = 1; i < tell.count(); ++i) {
    if (tell.rig(i).day.stages.size() > tell.rig(longest).day.stages.size()) longest = i;
  }
  return tell.rig(longest).day;
}

QtPicture stages(const Telling& tell) {
  QtPicture picture;
  picture.kind = QtPicture::Kind::StackedBars;
  picture.title = translate("Answer", "The day, stage by stage");
  picture.xTitle = translate("Answer", "Time since the start, h:min");
  picture.xIsClock = true;
  const QStringList names = stageLabels(longestDay(tell));
  picture.partNames = {names.begin(), names.end()};
  for (int i = 0; i < tell.count(); ++i) {
    QtPictureStack stack{.rig = i, .name = tell.name(i), .parts = {}};
    for (const physics::Stage& stage : tell.rig(i).day.stages) {
      stack.parts.push_back(physics::inMinutes(rigs::lasted(stage)));
    }
    stack.parts.resize(picture.partNames.size());
    picture.stacks.push_back(stack);
  }
  return picture;
}

PictureTable dayTable(const Telling& tell) {
  TableOf table(tell);
  const auto hoursAndMinutes = [](physics::Time t) {
    return hoursAndMinutesText(physics::inMinutes(t));
  };
  table.heading(translate("Answer", "Takes, h:min"));
  const QStringList names = stageLabels(longestDay(tell));
  for (qsizetype s = 0; s < names.size(); ++s) {
    const auto at = static_cast<std::size_t>(s);
    table.row(names[s], [&](int i) -> std::optional<QString> {
      const BrewDay& day = tell.rig(i).day;
      if (at >= day.stages.size() || !rigs::finished(day, day.stages[at])) return std::nullopt;
      return hoursAndMinutes(rigs::lasted(day.stages[at]));
    });
  }
  table.row(translate("Answer", "whole day"), [&](int i) -> std::optional<QString> {
    const auto time = duration(tell.rig(i).day);
    return time ? std::optional(hoursAndMinutes(*time)) : std::nullopt;
  });
  table.heading(translate("Answer", "By the clock"));
  const auto clockOf = [&](StageKind kind, physics::Time physics::Stage::*moment) {
    return [&tell, kind, moment](int i) -> std::optional<QString> {
      const BrewDay& day = tell.rig(i).day;
      const physics::Stage* stage = day.find(kind);
      if (!stage || !rigs::finished(day, *stage)) return std::nullopt;
      return tell.write.clock(tell.plan.startOfDay + stage->*moment);
    };
  };
  table.row(translate("Answer", "strike water ready"),
            clockOf(StageKind::Strike, &physics::Stage::end));
  table.row(translate("Answer", "boil begins"), clockOf(StageKind::Boil, &physics::Stage::begin));
  table.row(translate("Answer", "boil ends"), clockOf(StageKind::Boil, &physics::Stage::end));
  return table.take();
}

QString afterAlone(const Telling& tell, const QString& text, int i) {
  const physics::JacketEffect& effect = *tell.rig(i).jacket;
  return text.arg(tell.write.text(effect.jacketedAfter), tell.named(i),
                  tell.write.text(effect.bareAfter), tell.write.time(effect.alone));
}

}  // namespace

QtAnswer howLong(const Telling& tell) {
  QtAnswer answer;
  const Extremes e = extremesOf(tell, [&](int i) -> std::optional<double> {
    const auto time = duration(tell.rig(i).day);
    return time ? std::optional(physics::inMinutes(*time)) : std::nullopt;
  });
  QStringList told;
  const auto whole = [&](const QString& text, int i) {
    return text.arg(tell.write.time(tell.rig(i).day.duration()), tell.named(i));
  };
  if (e.counted == 1) {
    told +=
        whole(translate("Answer", "%1 with %2, from cold water to the end of the day."), e.least);
  } else if (e.counted > 1) {
    told += whole(
        translate("Answer", "%1 with %2, the quickest, from cold water to the end of the day."),
        e.least);
    told += whole(translate("Answer", "%1 with %2, the slowest."), e.most);
  }
  told += unfinishedTexts(tell);
  answer.sentence = told.join(QLatin1Char(' '));
  answer.pictures = {temperatures(tell), stages(tell)};
  answer.table = dayTable(tell);
  return answer;
}

QtAnswer howFarCools(const Telling& tell) {
  QtAnswer answer;
  const Extremes e = extremesOf(tell, [&](int i) -> std::optional<double> {
    const auto& effect = tell.rig(i).jacket;
    if (!effect) return std::nullopt;
    return physics::inCelsius(effect->jacketedAfter) - physics::inCelsius(effect->bareAfter);
  });
  QStringList told;
  if (e.counted == 0) {
    told += translate("Answer", "No rig of this plan has a jacket to compare.");
  } else {
    told += afterAlone(tell,
                       translate("Answer",
                                 "%1 is what a full mash in %2 has with its jacket after %4 "
                                 "unplugged, and %3 without."),
                       e.most);
    if (e.counted > 1 && e.least != e.most) {
      told += afterAlone(
          tell, translate("Answer", "%1 after %4 in %2 with its jacket, and %3 without."), e.least);
    }
  }
  answer.sentence = told.join(QLatin1Char(' '));

  QtPicture picture;
  picture.title = translate("Answer", "A full mash left unplugged");
  picture.xTitle = translate("Answer", "Time left alone, h:min");
  picture.yUnit = tell.write.unit<physics::Temperature>();
  picture.yTitle = translate("Answer", "Temperature, %1").arg(picture.yUnit);
  picture.xIsClock = true;
  for (int i = 0; i < tell.count(); ++i) {
    const RigSweeps* sweeps = tell.sweeps(i);
    if (!sweeps || sweeps->cooling.empty()) continue;
    QtPictureLine jacketed{.rig = i, .name = tell.name(i), .points = {}};
    QtPictureLine bare{.rig = i,
                       .name = translate("Answer", "the same without its jacket"),
                       .points = {},
                       .faint = true};
    for (const rigs::CoolingPoint& point : sweeps->cooling) {
      const double x = physics::inMinutes(point.alone);
      jacketed.points.push_back({x, tell.write.axis(point.jacketed)});
      bare.points.push_back({x, tell.write.axis(point.bare)});
    }
    picture.lines.push_back(jacketed);
    picture.lines.push_back(bare);
  }
  const double alone = physics::inMinutes(tell.plan.goals.unplugged);
  picture.limits.push_back(
      {alone,
       translate("Answer", "%1 as planned").arg(tell.write.time(tell.plan.goals.unplugged))});
  for (int i = 0; i < tell.count(); ++i) {
    const auto& effect = tell.rig(i).jacket;
    if (!effect) continue;
    picture.marks.push_back({i, {alone, tell.write.axis(effect->jacketedAfter)}, {}});
    picture.marks.push_back({i, {alone, tell.write.axis(effect->bareAfter)}, {}});
  }
  answer.pictures = {picture};

  TableOf table(tell);
  table.heading(translate("Answer", "Unplugged for %1, %2")
                    .arg(tell.write.time(tell.plan.goals.unplugged), picture.yUnit));
  const auto after = [&](physics::Temperature physics::JacketEffect::*which) {
    return [&tell, which](int i) -> std::optional<QString> {
      const auto& effect = tell.rig(i).jacket;
      return effect ? std::optional(tell.write.number((*effect).*which, 1)) : std::nullopt;
    };
  };
  table.row(translate("Answer", "without jacket"), after(&physics::JacketEffect::bareAfter));
  table.row(translate("Answer", "with jacket"), after(&physics::JacketEffect::jacketedAfter));
  for (const int hours : {1, 2, 4}) {
    const auto at = [&tell, hours](physics::Temperature rigs::CoolingPoint::*which) {
      return [&tell, hours, which](int i) -> std::optional<QString> {
        const RigSweeps* sweeps = tell.sweeps(i);
        if (!sweeps) return std::nullopt;
        Points line;
        for (const rigs::CoolingPoint& point : sweeps->cooling) {
          line.push_back({physics::inHours(point.alone), tell.write.axis(point.*which)});
        }
        const auto value = valueAt(line, hours);
        return value ? std::optional(tell.write.plain(*value, 1)) : std::nullopt;
      };
    };
    table.heading(
        translate("Answer", "Unplugged for %1 h, %2").arg(QString::number(hours), picture.yUnit));
    table.row(translate("Answer", "without jacket"), at(&rigs::CoolingPoint::bare));
    table.row(translate("Answer", "with jacket"), at(&rigs::CoolingPoint::jacketed));
  }
  answer.table = table.take();
  return answer;
}

}  // namespace gui
