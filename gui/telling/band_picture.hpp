// SPDX-License-Identifier: GPL-3.0-or-later
// The wort's temperature over a day with its band, for the pictures that show one.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "gui/telling/case.hpp"
#include "gui/telling/picture.hpp"
#include "rigs/answers/band_course.hpp"

namespace gui::telling {

// An empty one, with its axes.
Picture temperaturePicture(const Case& of, std::string title);

using Temperatures = rigs::Band<physics::Temperature>;
// One line of a course, where it has points there.
PictureLine courseLine(const Case& of, const std::vector<rigs::BandCoursePoint>& course,
                       std::optional<physics::Temperature> Temperatures::*which);

// The middle under the rig's name, and one day in ten below and above it about a wash; what has no
// points is left out.
void addBand(Picture& picture, const Case& of, std::size_t rig,
             const std::vector<rigs::BandCoursePoint>& course);

}  // namespace gui::telling
