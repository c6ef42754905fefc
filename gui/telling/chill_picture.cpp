// SPDX-License-Identifier: GPL-3.0-or-later
// Wort over the time it is chilled.
#include <algorithm>
#include <utility>

#include "gui/telling/chill.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::ChillAnswer;
using rigs::ChillWay;
using rigs::Told;

// The way the rig is planned, and what stands beside it.
struct DrawnWay {
  const ChillWay* way;
  Told word;  // beside the rig's name; empty for the planned one
};
std::vector<DrawnWay> chillWays(const ChillAnswer& chill) {
  if (!chill.stirred) return {{&chill.air, {}}};
  const Told stirred(TOLD("Answer", "stirred"));
  const Told still(TOLD("Answer", "still"));
  const Told worst(TOLD("Answer", "still, at worst"));
  if (chill.chiller.stirred)
    return {{&*chill.stirred, {}}, {&*chill.still, still}, {&*chill.stillAtWorst, worst}};
  return {{&*chill.still, {}}, {&*chill.stillAtWorst, worst}, {&*chill.stirred, stirred}};
}

PictureLine chillLine(const Case& of, std::size_t i, const DrawnWay& drawn) {
  const bool own = drawn.word.empty();
  PictureLine line{.rig = static_cast<int>(i),
                   .name = own ? of.name(i) : of.text(drawn.word),
                   .points = {},
                   .faint = !own};
  for (const physics::ChillPoint& point : drawn.way->curve)
    line.points.push_back({physics::inMinutes(point.time), of.axis(point.wort)});
  return line;
}

// In one pass the wort is as cold as it leaves, all the time.
PictureLine passLine(const Case& of, std::size_t i, const rigs::ExchangerPass& pass) {
  const double leaves = of.axis(pass.likely.hotOut);
  return {.rig = static_cast<int>(i),
          .name = of.text(Told(TOLD("Answer", "%1, %2"), rigs::Verbatim{of.name(i)},
                               Told(TOLD("Answer", "as it leaves")))),
          .points = {{0.0, leaves}, {physics::inMinutes(pass.time), leaves}}};
}

// Beside hours by air the minutes of a coil would be a stroke: they are what is shown first.
double minutesByWater(const Picture& picture, const Case& of) {
  double longest = 0.0;
  for (const PictureLine& line : picture.lines) {
    const ChillAnswer* chill = chillOf(of, static_cast<std::size_t>(line.rig));
    if (chill->chiller.kind != rigs::Chiller::Kind::Air && !line.points.empty())
      longest = std::max(longest, line.points.back().x);
  }
  return longest;
}

}  // namespace

Picture chillPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Answer", "Wort while it is chilled")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time")));
  picture.yUnit = of.unit<physics::Temperature>();
  picture.yDecimals = of.decimals<physics::Temperature>();
  picture.yTitle = of.text(Told(TOLD("Answer", "Temperature, %1"), rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  for (const bool own : {true, false})
    for (std::size_t i = 0; i < of.count(); ++i) {
      const ChillAnswer* chill = chillOf(of, i);
      if (!chill) continue;
      if (chill->pass) {
        if (own) picture.lines.push_back(passLine(of, i, *chill->pass));
        continue;
      }
      for (const DrawnWay& one : chillWays(*chill))
        if (one.word.empty() == own) picture.lines.push_back(chillLine(of, i, one));
    }
  for (std::size_t i = 0; i < of.count(); ++i) {
    const ChillAnswer* chill = chillOf(of, i);
    if (!chill || chill->pass) continue;
    const ChillWay& way = *chillWays(*chill).front().way;
    if (way.toGoal && chillSpan(*chill))
      picture.marks.push_back({static_cast<int>(i),
                               {physics::inMinutes(*way.toGoal), of.axis(chill->goal)},
                               of.lettered(i, of.text(chillSpanText(*chillSpan(*chill))))});
  }
  const double minutes = minutesByWater(picture, of);
  if (minutes > 0.0) {
    picture.xFrom = 0.0;
    picture.xTo = minutes;
  }
  return picture;
}

}  // namespace gui::telling
