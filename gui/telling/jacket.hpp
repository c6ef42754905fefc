// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? The same rig bare and jacketed, on the same day. Declared in words.hpp:
// worthJacket().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "side 13 mm cork; lid R 0.32 m²·K/W": the jacket that is compared, in the author's own units
// where these are of the reader's system.
rigs::Told jacketWords(const Case& of, std::size_t rig);
rigs::Told jacketWords(const rigs::JacketText& jacket, const rigs::Reader& reader);

// Both for rigs that have a comparison. Minutes, watts and energy that the jacket saves:
rigs::Told jacketSavingText(const Case& of, std::size_t rig);
// Whether that is worth it, and why.
rigs::Told jacketVerdictText(const Case& of, std::size_t rig);

// What it saves, or both days: two pictures, time and money (energy without a price).
std::vector<Picture> jacketPictures(const Case& of);

}  // namespace gui::telling
