// SPDX-License-Identifier: GPL-3.0-or-later
// A tariff as it is told: its price, its hours or its tiers, and where they are from. A price
// stands as it was stated, where an amount of money would be rounded.
#pragma once

#include <vector>

#include "rigs/plans/tariff.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// The prices of the brew's own kind of day, within a sentence: "0.28 EUR per kWh, as of 2026-01".
rigs::Told tariffText(const rigs::Tariff& tariff);
// Of weekday and weekend, as a sentence.
rigs::Told wholeTariffText(const rigs::Tariff& tariff);
// Whose prices they are and what stands behind them; nothing where the plan does not say.
rigs::Told tariffSource(const rigs::Tariff& tariff);

}  // namespace gui::telling
