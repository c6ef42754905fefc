// SPDX-License-Identifier: GPL-3.0-or-later
// Names of the catalogue and the plan's fixed words, as a reader sees them. A plan keeps the
// English ones, so that it means the same in every language.
#pragma once

#include <QString>

#include "rigs/plans/jacket_text.hpp"

namespace gui {

bool isCatalogueWord(const QString& english);
// The same in the reader's language; a name of the reader's own stays as it is.
QString catalogueWord(const QString& english);
// "side 13 mm cork; lid R 0.32 m²·K/W", in the reader's words and with the locale's decimal sign.
QString jacketText(const rigs::JacketText& jacket, rigs::UnitSystem units);

}  // namespace gui
