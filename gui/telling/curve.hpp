// SPDX-License-Identifier: GPL-3.0-or-later
// What pictures ask of their lines.
#pragma once

#include <optional>
#include <vector>

#include "gui/telling/picture.hpp"

namespace gui::telling {

// A rig's own point belongs to its curve, which otherwise has only round numbers. A line without
// points stays without.
void addPoint(PictureLine& line, PicturePoint own);

// Between the points around `x`, which ascend, along the straight line between them; nullopt
// before the first and beyond the last.
std::optional<double> valueAt(const std::vector<PicturePoint>& line, double x);

}  // namespace gui::telling
