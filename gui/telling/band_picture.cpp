// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/band_picture.hpp"

#include <utility>

namespace gui::telling {

using physics::Temperature;
using rigs::Told;

Picture temperaturePicture(const Case& of, std::string title) {
  Picture picture;
  picture.title = std::move(title);
  picture.xTitle = of.text(Told(TOLD("Answer", "Time since the start")));
  picture.yUnit = of.unit<Temperature>();
  picture.yTitle = of.text(Told(TOLD("Answer", "Temperature, %1"), rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  return picture;
}

PictureLine courseLine(const Case& of, const std::vector<rigs::BandCoursePoint>& course,
                       std::optional<Temperature> Temperatures::*which) {
  PictureLine line;
  for (const rigs::BandCoursePoint& point : course)
    if (point.wort.*which)
      line.points.push_back({physics::inMinutes(point.time), of.axis(*(point.wort.*which))});
  return line;
}

void addBand(Picture& picture, const Case& of, std::size_t rig,
             const std::vector<rigs::BandCoursePoint>& course) {
  const auto add = [&](std::string name, std::optional<Temperature> Temperatures::*which,
                       bool faint) -> std::optional<std::size_t> {
    PictureLine line = courseLine(of, course, which);
    if (line.points.empty()) return std::nullopt;
    line.rig = static_cast<int>(rig);
    line.name = std::move(name);
    line.faint = faint;
    picture.lines.push_back(std::move(line));
    return picture.lines.size() - 1;
  };
  add(of.name(rig), &Temperatures::middle, false);
  const auto low =
      add(of.text(Told(TOLD("Sure", "1 day in 10 is cooler"))), &Temperatures::low, true);
  const auto high =
      add(of.text(Told(TOLD("Sure", "1 day in 10 is warmer"))), &Temperatures::high, true);
  if (low && high) picture.washes.push_back({.low = *low, .high = *high});
}

}  // namespace gui::telling
