// SPDX-License-Identifier: GPL-3.0-or-later
// What answers sound like: sentences with the number first, and the words of the tables.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

using rigs::UnitSystem;

// "2:05", for tables.
std::string hoursAndMinutes(physics::Time time);
// "1537 W", in whole watts below 10 kW: sentences compare them.
std::string wattsText(physics::Power power);
// "42 min", "1 h 05 min"; with seconds below ten minutes, where they are worth knowing.
std::string roughTime(physics::Time time);
// "09:41"; "+1 d 00:10" after midnight.
std::string clockTime(physics::Time sinceMidnight);
// "1.94 EUR", "$1.94"; two significant digits where that is less than a tenth.
// The prices of the brew's own kind of day, as the tariff states them.
std::string tariffText(const rigs::Tariff& tariff);
// Of weekday and weekend, as a sentence.
std::string wholeTariffText(const rigs::Tariff& tariff);
std::string money(double amount, const rigs::Tariff& tariff);

// "Strike", "Mash in", "Rest 1", ... one for each stage; numbered where there are several.
std::vector<std::string> stageNames(const physics::BrewDay& day);
std::string pathName(physics::Path path);
// What bound a search, in a word or two.
std::string limitWord(physics::Limit limit);
// The largest batch and what stopped it there.
std::string largestText(const physics::BatchAnswer& largest, const rigs::Goals& goals,
                        UnitSystem units);
// Which of the plan's goals the element is enough for, and which element would be for all of them.
// Never begins with "Enough" where the element overloads its circuit.
std::string enoughText(const rigs::Plan& whole, const rigs::RigPlan& plan,
                       const rigs::RigAnswer& rig, UnitSystem units);
// "a gentle boil"
std::string boilWord(rigs::Vigour vigour);
// "boils" / "does not boil" / ... in two or three words, for tables.
std::string outcomeWord(physics::Outcome outcome);

// A day that could not be finished, told with its numbers; "" for one that was.
std::string unfinishedText(const rigs::RigPlan& plan, const physics::BrewDay& day,
                           UnitSystem units);
// What reaches the vessel from this element on this supply.
std::string elementText(const rigs::RigPlan& plan, const physics::ElectricalLoad& load,
                        UnitSystem units);
// Whether the circuit bears it; "" if there is nothing to warn about.
std::string circuitText(const rigs::Plan& whole, const rigs::RigPlan& plan);
// Such a text with what is to be said about the circuit: in front of it, where one is overloaded.
std::string besideCircuit(const rigs::Plan& whole, const rigs::RigPlan& plan,
                          const std::string& text);
// The element to buy for a power found by a search: "An element rated 4.2 kW at 208 V".
std::string elementToBuyText(const rigs::RigPlan& plan, const physics::PowerAnswer& wanted,
                             UnitSystem units);
// Whether the rig's circuit carries a power found by a search, and for how long; with the capital
// of a sentence of its own.
std::string carriesText(const rigs::Plan& whole, const rigs::RigPlan& plan,
                        const physics::PowerAnswer& wanted);
// What boils off; or why nothing does.
std::string boilText(const rigs::RigPlan& plan, const physics::BrewDay& day, UnitSystem units);
// What a day takes from the wall and costs.
std::string costText(const rigs::RigAnswer& rig, const rigs::Tariff& tariff, UnitSystem units);
// Minutes and watts a jacket saves.
std::string jacketSavingText(const rigs::RigPlan& plan, const physics::JacketEffect& effect,
                             UnitSystem units);
// Whether that is worth it, and why.
std::string jacketVerdictText(const rigs::RigPlan& plan, const physics::JacketEffect& effect,
                              UnitSystem units);
// For a rig that does not boil: what would change it, one sentence each.
std::vector<std::string> whatWouldBoilTexts(const rigs::Plan& whole, const rigs::RigPlan& plan,
                                            const rigs::RigAnswer& rig, UnitSystem units);

// Text with its first letter in upper case (ASCII).
std::string sentence(std::string text);

}  // namespace gui
