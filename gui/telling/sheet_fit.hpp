// SPDX-License-Identifier: GPL-3.0-or-later
// How large a sheet's letters may be for all of it to stand on one page, as browsers print it.
#pragma once

#include "gui/telling/sheet.hpp"
#include "rigs/words/language.hpp"

namespace gui::telling {

enum class SheetPaperSize { A4, Letter };
SheetPaperSize paperFor(const rigs::Reader& reader);  // letter size for US units

// In points, for the style of sheet_style.hpp: an estimate from the letters there are, on the small
// side, since nobody knows the reader's fonts. Between the two; a day of very many lines goes on
// over a second page.
inline constexpr double kLargestPrint = 9.0, kSmallestPrint = 6.0;
double printSize(const Sheet& sheet, const rigs::Reader& reader);

}  // namespace gui::telling
