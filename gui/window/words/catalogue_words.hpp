// SPDX-License-Identifier: GPL-3.0-or-later
// Names of the catalogue and the plan's fixed words, as a reader sees them. A plan keeps the
// English ones, so that it means the same in every language.
#pragma once

#include <QString>

namespace gui {

bool isCatalogueWord(const QString& english);
// The same in the reader's language; a name of the reader's own stays as it is.
QString catalogueWord(const QString& english);

}  // namespace gui
