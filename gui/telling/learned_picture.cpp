// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/learned_picture.hpp"

#include <string>
#include <utility>
#include <variant>

namespace gui::telling {
namespace {

using physics::Temperature;
using rigs::Band;
using rigs::Told;

// A log's rows beyond this are drawn every so many: a point of each would hide the line.
constexpr std::size_t kMostPoints = 60;

PictureLine lineOf(const Case& of, const std::vector<rigs::BandCoursePoint>& course,
                   std::optional<Temperature> Band<Temperature>::*which) {
  PictureLine line;
  for (const rigs::BandCoursePoint& point : course)
    if (point.wort.*which)
      line.points.push_back({physics::inMinutes(point.time), of.axis(*(point.wort.*which))});
  return line;
}

void addBefore(Picture& picture, const Case& of, const rigs::ReadCourse& course) {
  const auto add = [&](Told name, auto which) {
    PictureLine line = lineOf(of, course.before, which);
    line.rig = -1;
    line.name = of.text(name);
    if (!line.points.empty()) picture.lines.push_back(std::move(line));
  };
  add(Told(TOLD("Learned", "Before reading: 1 day in 10 is cooler")), &Band<Temperature>::low);
  add(Told(TOLD("Learned", "Before reading: 1 day in 10 is warmer")), &Band<Temperature>::high);
}

void addAfter(Picture& picture, const Case& of, std::size_t rig, const rigs::ReadCourse& course) {
  if (course.after.empty()) return;
  const std::size_t first = picture.lines.size();
  const auto add = [&](std::string name, auto which, bool faint) {
    PictureLine line = lineOf(of, course.after, which);
    line.rig = static_cast<int>(rig);
    line.name = std::move(name);
    line.faint = faint;
    picture.lines.push_back(std::move(line));
  };
  add(of.name(rig), &Band<Temperature>::middle, false);
  add(of.text(Told(TOLD("Sure", "1 day in 10 is cooler"))), &Band<Temperature>::low, true);
  add(of.text(Told(TOLD("Sure", "1 day in 10 is warmer"))), &Band<Temperature>::high, true);
  picture.washes = {{.low = first + 1, .high = first + 2}};
}

void addReadings(Picture& picture, const Case& of, std::size_t rig,
                 const std::vector<rigs::readings::Reading>& read) {
  const std::size_t step = 1 + read.size() / kMostPoints;
  for (std::size_t i = 0; i < read.size(); i += step) {
    const auto* wort = std::get_if<Temperature>(&read[i].value);
    if (!wort) continue;
    picture.marks.push_back(
        {.rig = static_cast<int>(rig),
         .at = {physics::inMinutes(read[i].at - of.plan.startOfDay), of.axis(*wort)},
         .label = {},
         .event = of.text(Told(TOLD("Learned", "Read")))});
  }
}

}  // namespace

Picture learnedPicture(const Case& of, std::size_t rig, const rigs::ReadCourse& course,
                       const std::vector<rigs::readings::Reading>& read) {
  Picture picture;
  picture.title =
      of.text(Told(TOLD("Learned",
                        "With the readings 8 of 10 such days lie in the wash; before them, "
                        "between the thin lines")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time since the start")));
  picture.yUnit = of.unit<Temperature>();
  picture.yTitle = of.text(Told(TOLD("Answer", "Temperature, %1"), rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  picture.lettered = !of.isAlone();
  for (const std::size_t slot : of.slots()) picture.slots.push_back(static_cast<int>(slot));
  addBefore(picture, of, course);
  addAfter(picture, of, rig, course);
  addReadings(picture, of, rig, read);
  return picture;
}

}  // namespace gui::telling
