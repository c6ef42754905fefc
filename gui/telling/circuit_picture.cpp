// SPDX-License-Identifier: GPL-3.0-or-later
// What the circuits carry over the day, drawn.
#include <algorithm>
#include <utility>

#include "gui/telling/circuit.hpp"
#include "gui/telling/circuit_rules.hpp"

namespace gui::telling {
namespace {

using rigs::CircuitLoad;
using rigs::Told;

// Steps: a controller switches the element, and what is drawn is the mean over each part of the
// day.
std::vector<PicturePoint> currentOver(const physics::Duty& duty, const CircuitLoad& circuit) {
  std::vector<PicturePoint> points;
  const double whole = 100.0 * static_cast<double>(circuit.load.current / circuit.supply.rating);
  for (const physics::DutySpan& span : duty.spans) {
    points.push_back({physics::inMinutes(span.begin), span.share * whole});
    points.push_back({physics::inMinutes(span.end), span.share * whole});
  }
  return points;
}

// The strictest share that any rule leaves a load that lasts, and whose rule that is.
struct LongShare {
  double share = 1.0;
  rigs::List names{.items = {}, .joint = rigs::Joint::Semicolon};
};
LongShare longShareOf(const Case& of) {
  LongShare strictest;
  for (const rigs::CircuitRules* rules : rulesInUse(of)) {
    for (const rigs::LongUse& rule : rules->longUse) {
      if (rule.share > strictest.share) continue;
      if (rule.share < strictest.share) strictest.names.items.clear();
      strictest.share = rule.share;
      strictest.names.items.emplace_back(Told(
          TOLD("Circuit", "%1, %2"), rigs::fromRules(rules->region), rigs::fromRules(rule.name)));
    }
  }
  return strictest;
}

void addLines(Picture& picture, const Case& of) {
  double most = 110.0;
  double end = 0.0;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::CircuitAnswer& answer = of.rig(i).circuit;
    for (std::size_t k = 0; k < answer.circuits.size(); ++k) {
      picture.lines.push_back(
          {.rig = static_cast<int>(i),
           .name = k == 0 ? of.name(i) : of.text(Told(TOLD("Circuit", "its second circuit"))),
           .points = currentOver(answer.duty, answer.circuits[k]),
           .faint = k > 0});
      for (const PicturePoint& point : picture.lines.back().points) {
        most = std::max(most, 1.08 * point.y);
        end = std::max(end, point.x);
      }
    }
  }
  picture.yTo = most;
  PictureLine rated{.rig = -1,
                    .name = of.text(Told(TOLD("Circuit", "what the circuit is rated for"))),
                    .points = {},
                    .limit = true};
  if (end > 0.0) rated.points = {{0.0, 100.0}, {end, 100.0}};
  picture.lines.push_back(std::move(rated));
}

}  // namespace

Picture currentPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Circuit", "Current over the day")));
  picture.xTitle = of.text(Told(TOLD("Circuit", "Time since the start")));
  picture.yTitle =
      of.text(Told(TOLD("Circuit",
                        "% of the circuit's rating; the mean, where the element switches on and "
                        "off")));
  picture.yUnit = "%";
  picture.xIsClock = true;
  picture.yFrom = 0.0;
  addLines(picture, of);
  const LongShare longUse = longShareOf(of);
  if (longUse.share < 1.0) {
    picture.bands.push_back({.from = 100.0 * longUse.share,
                             .to = 100.0,
                             .label = of.text(Told(TOLD("Circuit", "not for long use, from %1 on"),
                                                   rigs::amount(longUse.share))),
                             .source = of.text(rigs::Argument(longUse.names))});
  }
  return picture;
}

Picture dutyPicture(const Case& of) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(Told(TOLD("Circuit", "Hours of current")));
  picture.xTitle = of.text(Told(TOLD("Circuit", "Time")));
  picture.xIsClock = true;
  picture.partNames = {of.text(Told(TOLD("Circuit", "full current without a break"))),
                       of.text(Told(TOLD("Circuit", "switching: current flows"))),
                       of.text(Told(TOLD("Circuit", "switching: no current"))),
                       of.text(Told(TOLD("Circuit", "element off")))};
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureStack stack{
        .rig = static_cast<int>(i), .name = of.name(i), .parts = {0.0, 0.0, 0.0, 0.0}};
    for (const physics::DutySpan& span : of.rig(i).circuit.duty.spans) {
      const double minutes = physics::inMinutes(span.end - span.begin);
      if (span.share >= physics::kUnbroken) {
        stack.parts[0] += minutes;
      } else {
        stack.parts[1] += span.share * minutes;
        stack.parts[span.enabled ? 2 : 3] += (1.0 - span.share) * minutes;
      }
    }
    picture.stacks.push_back(std::move(stack));
  }
  return picture;
}

}  // namespace gui::telling
