// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/time.hpp"

#include <algorithm>
#include <limits>
#include <utility>

#include "gui/telling/additions.hpp"
#include "gui/telling/begins.hpp"
#include "gui/telling/rig_rows.hpp"
#include "gui/telling/rinse.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::BrewDay;
using physics::StageKind;
using rigs::Told;

constexpr double kHeadroom = 0.2;  // of the temperatures, for the labels above the boil

bool ofTheMash(StageKind kind) {
  return kind == StageKind::MashingIn || kind == StageKind::Ramp || kind == StageKind::Rest ||
         kind == StageKind::UnpluggedRest;
}

// What the end of a stage is called; nothing for a stage that could not be finished.
Told eventAtEnd(const BrewDay& day, std::size_t s) {
  const physics::Stage& stage = day.stages[s];
  if (!rigs::finished(day, stage)) return {};
  const bool mashEnds = ofTheMash(stage.kind) && stage.kind != StageKind::MashingIn &&
                        (s + 1 == day.stages.size() || !ofTheMash(day.stages[s + 1].kind));
  if (mashEnds) return Told(TOLD("Answer", "mash done"));
  switch (stage.kind) {
    case StageKind::Strike:
      return Told(TOLD("Answer", "strike reached"));
    case StageKind::MashingIn:
      return Told(TOLD("Answer", "mashed in"));
    case StageKind::Ramp:
      return Told(TOLD("Answer", "rest reached"));
    case StageKind::Rest:
    case StageKind::UnpluggedRest:
      return Told(TOLD("Answer", "rest done"));
    case StageKind::Draining:
      return Told(TOLD("Answer", "drained"));
    case StageKind::HeatingToBoil:
      return Told(TOLD("Answer", "boil begins"));
    case StageKind::Boil:
      return Told(TOLD("Answer", "boil ends"));
  }
  return {};
}

PictureLine temperatureLine(const Case& of, std::size_t i) {
  const BrewDay& day = of.rig(i).day;
  PictureLine line{.rig = static_cast<int>(i), .name = of.name(i), .points = {}};
  const std::vector<Told> names = stageNames(day);
  for (std::size_t s = 0; s < day.stages.size(); ++s) {
    line.phases.push_back({physics::inMinutes(day.stages[s].end), of.text(names[s])});
    for (const physics::CurvePoint& point : day.stages[s].curve)
      line.points.push_back({physics::inMinutes(point.time), of.axis(point.wort)});
  }
  return line;
}

PictureMark boilMark(const Case& of, std::size_t i, const physics::Stage& boil) {
  return {
      static_cast<int>(i),
      {physics::inMinutes(boil.begin), of.axis(boil.first)},
      of.lettered(i, of.text(Told(TOLD("Answer", "boil %1"), rigs::HoursAndMinutes{boil.begin}))),
      of.text(Told(TOLD("Answer", "boil begins")))};
}

// The end of heating, where the boil has a mark of its own.
bool boilFollows(const BrewDay& day, std::size_t s) {
  return s + 1 < day.stages.size() && day.stages[s + 1].kind == StageKind::Boil &&
         rigs::finished(day, day.stages[s + 1]);
}

std::vector<PictureMark> eventMarks(const Case& of, std::size_t i) {
  const BrewDay& day = of.rig(i).day;
  std::vector<PictureMark> marks;
  for (std::size_t s = 0; s < day.stages.size(); ++s) {
    const physics::Stage& stage = day.stages[s];
    const bool fails = !rigs::finished(day, stage);
    if (stage.kind == StageKind::Boil && !fails) marks.push_back(boilMark(of, i, stage));
    if (boilFollows(day, s)) continue;
    std::string label;
    if (fails) label = of.lettered(i, of.text(outcomeWord(day.outcome)));
    marks.push_back({static_cast<int>(i),
                     {physics::inMinutes(stage.end), of.axis(stage.last)},
                     std::move(label),
                     of.text(eventAtEnd(day, s))});
  }
  return marks;
}

// The rig whose day has most stages names them all.
const BrewDay& longestDay(const Case& of) {
  std::size_t longest = 0;
  for (std::size_t i = 1; i < of.count(); ++i)
    if (of.rig(i).day.stages.size() > of.rig(longest).day.stages.size()) longest = i;
  return of.rig(longest).day;
}

Table dayTable(const Case& of) {
  RigTable table("how-long", of);
  table.heading(Told(TOLD("Answer", "Takes")));
  const std::vector<Told> names = stageNames(longestDay(of));
  for (std::size_t s = 0; s < names.size(); ++s) {
    table.row(names[s], [&](std::size_t i) -> Cell {
      const BrewDay& day = of.rig(i).day;
      if (s >= day.stages.size() || !rigs::finished(day, day.stages[s])) return std::nullopt;
      return hoursAndMinutes(rigs::lasted(day.stages[s]));
    });
  }
  table.row(Told(TOLD("Answer", "whole day")),
            [&](std::size_t i) { return hoursAndMinutes(wholeDay(of.rig(i).day)); },
            {.result = "/day/duration_s"});
  table.heading(Told(TOLD("Answer", "By the clock")));
  addBeginsRows(table, of);
  const auto clockOf = [&](StageKind kind, physics::Time physics::Stage::*moment) {
    return [&of, kind, moment](std::size_t i) -> Cell {
      const BrewDay& day = of.rig(i).day;
      const physics::Stage* stage = day.find(kind);
      if (!stage || !rigs::finished(day, *stage)) return std::nullopt;
      return of.clockAt(i, stage->*moment);
    };
  };
  table.row(Told(TOLD("Answer", "strike water ready")),
            clockOf(StageKind::Strike, &physics::Stage::end));
  table.row(Told(TOLD("Answer", "boil begins")), clockOf(StageKind::Boil, &physics::Stage::begin));
  table.row(Told(TOLD("Answer", "boil ends")), clockOf(StageKind::Boil, &physics::Stage::end));
  return table.take();
}

Told whole(const Case& of, std::size_t i, const rigs::Template<2>& text) {
  return Told(text, rigs::roughly(of.rig(i).day.duration()), of.named(i));
}

std::vector<Told> timeInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    // The quickest is of those that roll.
    const BrewDay& day = of.rig(i).day;
    const auto time = day.outcome == physics::Outcome::Done ? wholeDay(day) : std::nullopt;
    return time ? std::optional(physics::inMinutes(*time)) : std::nullopt;
  });
  std::vector<Told> told;
  if (e.counted > 0 && e.least == e.most) {
    told.push_back(
        whole(of, e.least, TOLD("Answer", "%1 with %2, from cold water to the end of the day.")));
  } else if (e.counted > 1) {
    told.push_back(
        whole(of, e.least,
              TOLD("Answer", "%1 with %2, the quickest, from cold water to the end of the day.")));
    told.push_back(whole(of, e.most, TOLD("Answer", "%1 with %2, the slowest.")));
  }
  for (Told& text : unfinishedOfAll(of)) told.push_back(std::move(text));
  return told;
}

}  // namespace

Told dayText(const Case& of, std::size_t i) {
  const BrewDay& day = of.rig(i).day;
  const rigs::Clock from = of.clockAt(i, physics::seconds(0.0));
  const rigs::Clock to = of.clockAt(i, day.duration());
  if (day.outcome != physics::Outcome::Done)
    return Told(TOLD("Answer", "%1 from %2 to %3: %4."), rigs::roughly(day.duration()), from, to,
                outcomeWord(day.outcome));
  return Told(TOLD("Answer", "%1 from %2 to %3."), rigs::roughly(day.duration()), from, to);
}

Picture temperaturePicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Answer", "Temperature of the wort over the day")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time since the start")));
  picture.yUnit = of.unit<physics::Temperature>();
  picture.yDecimals = of.decimals<physics::Temperature>();
  picture.yTitle = of.text(Told(TOLD("Answer", "Temperature, %1"), rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  double least = std::numeric_limits<double>::infinity();
  double most = -least;
  for (std::size_t i = 0; i < of.count(); ++i) {
    picture.lines.push_back(temperatureLine(of, i));
    for (const PicturePoint& p : picture.lines.back().points) {
      least = std::min(least, p.y);
      most = std::max(most, p.y);
    }
    for (PictureMark& mark : eventMarks(of, i)) picture.marks.push_back(std::move(mark));
  }
  if (most > least) {
    picture.yTo = most + kHeadroom * (most - least);
  }
  return picture;
}

Picture stagePicture(const Case& of) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(Told(TOLD("Answer", "The day, stage by stage")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time since the start")));
  picture.xIsClock = true;
  for (const Told& name : stageNames(longestDay(of))) picture.partNames.push_back(of.text(name));
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureStack stack{.rig = static_cast<int>(i), .name = of.name(i), .parts = {}};
    for (const physics::Stage& stage : of.rig(i).day.stages)
      stack.parts.push_back(physics::inMinutes(rigs::lasted(stage)));
    stack.parts.resize(picture.partNames.size());
    picture.stacks.push_back(std::move(stack));
  }
  return picture;
}

Answer howLong(const Case& of) {
  Answer answer;
  answer.sentences = beginsInShort(of);
  for (Told& text : timeInShort(of)) answer.sentences.push_back(std::move(text));
  for (std::size_t i = 0; i < of.count(); ++i) {
    answer.say(i, dayText(of, i));
    if (Told begins = beginsText(of, i); !begins.empty()) answer.goOn(i, std::move(begins));
    for (Told& lifted : liftTexts(of, i)) answer.goOn(i, std::move(lifted));
    for (Told& added : additionTexts(of, i)) answer.goOn(i, std::move(added));
  }
  answer.notes = beginsNotes(of);
  answer.show(dayTable(of));
  answer.pictures = {temperaturePicture(of), stagePicture(of)};
  return answer;
}

}  // namespace gui::telling
