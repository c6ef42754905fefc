// SPDX-License-Identifier: GPL-3.0-or-later
// The window's reader: whom it tells what rigs/ has to say.
#pragma once

#include <QString>
#include <string>

#include "rigs/plans/jacket_text.hpp"
#include "rigs/words/told.hpp"

namespace gui {

// In the language spoken now.
rigs::Reader readerOf(rigs::UnitSystem units);

QString told(const rigs::Told& told, rigs::UnitSystem units);
// A name of the catalogue or a fixed word of the plan, which keeps the English one, so that it
// means the same in every language. A name of the reader's own stays as it is.
QString catalogueName(const QString& english);
// How the metal looks: "brushed", "emissivity 0.3".
QString finishName(const std::string& finish);
// "side 13 mm cork; lid R 0.32 m²·K/W".
QString jacketText(const rigs::JacketText& jacket, rigs::UnitSystem units);
// A region as the rules name it.
QString regionName(const std::string& english);

}  // namespace gui
