// SPDX-License-Identifier: GPL-3.0-or-later
// Whom the window tells: in the units chosen and the language spoken. The one place that knows.
#pragma once

#include <QString>
#include <string>

#include "rigs/words/told.hpp"

namespace gui {

// Of this moment: the language changes with speak().
rigs::Reader readerOf(rigs::UnitSystem units);

// As this reader reads it.
QString told(const rigs::Told& text, const rigs::Reader& reader);
QString told(const rigs::Argument& argument, const rigs::Reader& reader);
QString told(const rigs::Told& text, rigs::UnitSystem units);
// For what holds no quantity.
QString told(const rigs::Told& text);
// A name of the catalogue or a fixed word of the plan, which keeps the English one, so that it
// means the same in every language. A name of the reader's own stays as it is.
QString catalogueName(const QString& english);
// A region as the rules name it.
QString regionName(const std::string& english);

}  // namespace gui
