// SPDX-License-Identifier: GPL-3.0-or-later
// A tariff in the reader's language: its price, its hours or its tiers.
#pragma once

#include <QLocale>
#include <QString>

#include "rigs/plans/tariff.hpp"

namespace gui {

// "0.28 EUR per kWh, as of 2026-01"; every window of the day of the brew, or every tier.
QString tariffText(const rigs::Tariff& tariff, const QLocale& locale = QLocale());

}  // namespace gui
