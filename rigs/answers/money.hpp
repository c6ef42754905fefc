// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan's money adds up to: a year of brews, and how long a jacket or an element takes to be
// paid back. Every output takes these figures from here.
#pragma once

#include <cstddef>
#include <optional>

#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// In the plan's brews a year, or a dozen. Empty without a price.
std::optional<double> costOfAYear(const RigAnswer& rig, const Tariff& tariff);

// Of the jacket at the tariff's price for one: the same day without and with it. Empty without a
// price of energy or of the jacket, without a jacket, and where one of the days stops early.
std::optional<Payback> jacketPayback(const RigAnswer& rig, const Plan& plan);

// Of a rig's element at the tariff's price for one, in place of another rig's: the difference of
// their days, with all else that differs between them.
struct ElementPayback {
  std::size_t against;  // the first rig whose day comes to its end
  Payback payback;
};
// Empty where nothing can be compared: no prices, the rig itself, the same element, or a day that
// stops early.
std::optional<ElementPayback> elementPayback(const Plan& plan, const Answers& answers,
                                             std::size_t rig);

}  // namespace rigs
