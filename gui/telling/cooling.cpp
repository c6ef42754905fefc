// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/cooling.hpp"

#include "gui/telling/curve.hpp"
#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

using physics::JacketEffect;
using physics::Temperature;
using rigs::CoolingPoint;
using rigs::Told;

Told afterAlone(const Case& of, std::size_t i, const rigs::Template<4>& text) {
  const JacketEffect& effect = *of.rig(i).jacket;
  return Told(text, rigs::amount(effect.jacketedAfter), of.named(i), rigs::amount(effect.bareAfter),
              rigs::roughly(effect.alone));
}

std::vector<Told> coolingInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const auto& effect = of.rig(i).jacket;
    if (!effect) return std::nullopt;
    return physics::inCelsius(effect->jacketedAfter) - physics::inCelsius(effect->bareAfter);
  });
  if (e.counted == 0) return {Told(TOLD("Answer", "No rig of this plan has a jacket to compare."))};
  std::vector<Told> told{afterAlone(of, e.most,
                                    TOLD("Answer",
                                         "%1 is what a full mash in %2 has with its jacket after "
                                         "%4 unplugged, and %3 without."))};
  if (e.counted > 1 && e.least != e.most) {
    told.push_back(afterAlone(
        of, e.least, TOLD("Answer", "%1 after %4 in %2 with its jacket, and %3 without.")));
  }
  return told;
}

// On the rig's cooling curve; nothing before it is known and beyond its end.
std::optional<Temperature> after(const Case& of, std::size_t i, physics::Time alone,
                                 Temperature CoolingPoint::*which) {
  const rigs::RigSweeps* sweeps = of.sweeps(i);
  if (!sweeps) return std::nullopt;
  std::vector<PicturePoint> line;
  for (const CoolingPoint& point : sweeps->cooling)
    line.push_back({physics::inHours(point.alone), physics::inCelsius(point.*which)});
  const auto degrees = valueAt(line, physics::inHours(alone));
  return degrees ? std::optional(physics::celsius(*degrees)) : std::nullopt;
}

Told unpluggedFor(physics::Time alone) {
  return Told(TOLD("Answer", "Unplugged for %1"), rigs::roughly(alone));
}

Table coolingTable(const Case& of) {
  RigTable table("how-far-cools", of);
  const auto planned = [&](Temperature JacketEffect::*which) {
    return [&of, which](std::size_t i) {
      const auto& effect = of.rig(i).jacket;
      return effect ? std::optional((*effect).*which) : std::nullopt;
    };
  };
  const Told without(TOLD("Answer", "without jacket"));
  const Told with(TOLD("Answer", "with jacket"));
  table.heading(unpluggedFor(of.plan.goals.unplugged));
  table.row(without, planned(&JacketEffect::bareAfter), {.result = "/jacket/bare_after_alone_C"});
  table.row(with, planned(&JacketEffect::jacketedAfter),
            {.result = "/jacket/jacketed_after_alone_C"});
  for (const double hours : {1.0, 2.0, 4.0}) {
    const physics::Time alone = physics::hours(hours);
    table.heading(unpluggedFor(alone));
    table.row(without, [&](std::size_t i) { return after(of, i, alone, &CoolingPoint::bare); });
    table.row(with, [&](std::size_t i) { return after(of, i, alone, &CoolingPoint::jacketed); });
  }
  return table.take();
}

}  // namespace

Picture coolingPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Answer", "A full mash left unplugged")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time left alone, h:min")));
  picture.yUnit = of.unit<Temperature>();
  picture.yTitle = of.text(Told(TOLD("Answer", "Temperature, %1"), rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  const physics::Time planned = of.plan.goals.unplugged;
  const double alone = physics::inMinutes(planned);
  picture.limits.push_back(
      {alone, of.text(Told(TOLD("Answer", "%1 as planned"), rigs::roughly(planned)))});
  for (std::size_t i = 0; i < of.count(); ++i) {
    const int rig = static_cast<int>(i);
    if (const auto& effect = of.rig(i).jacket) {
      picture.marks.push_back({rig, {alone, of.axis(effect->jacketedAfter)}, {}});
      picture.marks.push_back({rig, {alone, of.axis(effect->bareAfter)}, {}});
    }
    const rigs::RigSweeps* sweeps = of.sweeps(i);
    if (!sweeps || sweeps->cooling.empty()) continue;
    PictureLine jacketed{.rig = rig, .name = of.name(i), .points = {}};
    PictureLine bare{.rig = rig,
                     .name = of.text(Told(TOLD("Answer", "the same without its jacket"))),
                     .points = {},
                     .faint = true};
    for (const CoolingPoint& point : sweeps->cooling) {
      const double x = physics::inMinutes(point.alone);
      jacketed.points.push_back({x, of.axis(point.jacketed)});
      bare.points.push_back({x, of.axis(point.bare)});
    }
    picture.lines.push_back(std::move(jacketed));
    picture.lines.push_back(std::move(bare));
  }
  return picture;
}

Answer howFarCools(const Case& of) {
  Answer answer;
  answer.sentences = coolingInShort(of);
  answer.pictures = {coolingPicture(of)};
  answer.show(coolingTable(of));
  return answer;
}

}  // namespace gui::telling
