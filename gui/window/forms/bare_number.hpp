// SPDX-License-Identifier: GPL-3.0-or-later
// "152" typed where "66 °C" stood: a number without a unit means the unit that is seen.
#pragma once

#include <QString>

namespace gui {

// With the unit of `shown`: "152" beside "66 °C" is "152 °C", "10" beside "R 7" is "R 10". As typed
// if it is no bare number, and if `shown` has no unit or two ("1 h 30 min"): which one is meant is
// then for the person to say.
QString withUnitOf(const QString& shown, const QString& typed);

}  // namespace gui
