// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/learned_picture.hpp"

#include <algorithm>
#include <limits>
#include <utility>
#include <variant>

#include "gui/telling/band_picture.hpp"

namespace gui::telling {
namespace {

using physics::Temperature;
using rigs::Told;

// A log's rows beyond this are drawn every so many: a point of each would hide the line.
constexpr std::size_t kMostPoints = 60;

Told titleFor(const rigs::ReadCourse& course) {
  if (course.after.empty())
    return Told(TOLD("Learned", "Before reading 8 of 10 such days lie between the dotted lines"));
  if (!course.isSure)
    return Told(TOLD("Learned",
                     "The likeliest day with the readings; before them 8 of 10 such days lie "
                     "between the dotted lines"));
  return Told(TOLD("Learned",
                   "With the readings 8 of 10 such days lie in the wash; before them, between the "
                   "dotted lines"));
}

// No rig's own: an outline of what was thought before.
void addOutline(Picture& picture, const Case& of, const rigs::ReadCourse& course) {
  const auto add = [&](const Told& name, std::optional<Temperature> Temperatures::*which) {
    PictureLine line = courseLine(of, course.before, which);
    line.rig = -1;
    line.faint = true;
    line.name = of.text(name);
    if (!line.points.empty()) picture.lines.push_back(std::move(line));
  };
  add(Told(TOLD("Learned", "Before reading: 1 day in 10 is cooler")), &Temperatures::low);
  add(Told(TOLD("Learned", "Before reading: 1 day in 10 is warmer")), &Temperatures::high);
}

void addDay(Picture& picture, const Case& of, std::size_t rig, const rigs::ReadCourse& course) {
  if (course.isSure) return addBand(picture, of, rig, course.after);
  PictureLine line = courseLine(of, course.after, &Temperatures::middle);
  line.rig = static_cast<int>(rig);
  line.name = of.name(rig);
  if (!line.points.empty()) picture.lines.push_back(std::move(line));
}

// Along the axis, whose degrees may be another's.
double halfOfLastDigit(const Case& of, const rigs::readings::Reading& one) {
  const auto* wort = std::get_if<Temperature>(&one.value);
  if (!wort) return 0.0;
  return 0.5 * (of.axis(*wort + physics::kelvins(one.step)) - of.axis(*wort));
}

void addReadings(Picture& picture, const Case& of, std::size_t rig,
                 const std::vector<rigs::readings::Reading>& read) {
  const std::size_t step = 1 + read.size() / kMostPoints;
  for (std::size_t i = 0; i < read.size(); i += step)
    if (const auto* wort = std::get_if<Temperature>(&read[i].value))
      picture.marks.push_back(
          {.rig = static_cast<int>(rig),
           .at = {physics::inMinutes(read[i].at - of.plan.startOfDay), of.axis(*wort)},
           .label = {},
           .event = of.text(Told(TOLD("Learned", "Read"))),
           .rounding = halfOfLastDigit(of, read[i])});
}

// At first the stage that was read of: a mash's drift beside its heating to the boil is a flat
// line.
void showWhatWasReadOf(Picture& picture, const rigs::ReadCourse& course) {
  if (!course.stage) return;
  constexpr double kAround = 0.05;
  const double from = physics::inMinutes(course.stage->from);
  // The last point in it: the line from there on leads into what comes next.
  double until = from;
  for (const rigs::BandCoursePoint& point : course.before)
    if (point.time <= course.stage->until) until = physics::inMinutes(point.time);
  double lowest = std::numeric_limits<double>::infinity();
  double highest = -lowest;
  const auto reach = [&](const PicturePoint& p) {
    if (p.x < from || p.x > until) return;
    lowest = std::min(lowest, p.y);
    highest = std::max(highest, p.y);
  };
  for (const PictureLine& line : picture.lines)
    for (const PicturePoint& p : line.points) reach(p);
  for (const PictureMark& mark : picture.marks) {
    reach({mark.at.x, mark.at.y - mark.rounding.value_or(0.0)});
    reach({mark.at.x, mark.at.y + mark.rounding.value_or(0.0)});
  }
  if (!(highest > lowest)) return;
  picture.xFrom = from;
  picture.xTo = until;
  picture.yFrom = lowest - kAround * (highest - lowest);
  picture.yTo = highest + kAround * (highest - lowest);
}

}  // namespace

Picture learnedPicture(const Case& of, std::size_t rig, const rigs::ReadCourse& course,
                       const std::vector<rigs::readings::Reading>& read) {
  Picture picture = temperaturePicture(of, of.text(titleFor(course)));
  picture.lettered = !of.isAlone();
  for (const std::size_t slot : of.slots()) picture.slots.push_back(static_cast<int>(slot));
  addOutline(picture, of, course);
  addDay(picture, of, rig, course);
  addReadings(picture, of, rig, read);
  showWhatWasReadOf(picture, course);
  return picture;
}

}  // namespace gui::telling
