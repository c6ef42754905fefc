// SPDX-License-Identifier: GPL-3.0-or-later
// A day of which something was read, as a picture.
#pragma once

#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"
#include "gui/telling/picture.hpp"
#include "rigs/answers/read_course.hpp"
#include "rigs/readings/reading.hpp"

namespace gui::telling {

// The temperature with the readings as a wash, what was expected before them between two thin
// lines, and each temperature that was read as a point.
Picture learnedPicture(const Case& of, std::size_t rig, const rigs::ReadCourse& course,
                       const std::vector<rigs::readings::Reading>& read);

}  // namespace gui::telling
