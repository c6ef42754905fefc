// SPDX-License-Identifier: GPL-3.0-or-later
// Whom the window tells: in the units chosen and the language spoken. The one place that knows.
#pragma once

#include <QString>

#include "rigs/words/told.hpp"

namespace gui {

// Of this moment: the language changes with speak().
rigs::Reader readerIn(rigs::UnitSystem units);

// As this reader reads it.
QString told(const rigs::Told& text, const rigs::Reader& reader);
QString told(const rigs::Argument& argument, const rigs::Reader& reader);
// For what holds no quantity.
QString told(const rigs::Told& text);

}  // namespace gui
