// SPDX-License-Identifier: GPL-3.0-or-later
// Figures that follow from a day, a boil or an element by one step of arithmetic: those that need
// no answer. The rest are in figures.hpp.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/jacket.hpp"
#include "physics/sizing.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// How hard it boils, by the mean share of the pre-boil volume (cold) boiled off per hour. Our own
// scale around published figures: best practice for breweries in the EU asks 5-8 %/h of casting
// volume (Joint Research Centre, Best environmental management practice, food and beverage);
// small open kettles commonly lose 10-15 %/h.
// By latent heat 5, 8, 10 and 15 %/h take 3.1, 5.0, 6.3 and 9.4 kW/hL.
enum class Vigour { Simmer, Gentle, Steady, Strong, Fierce };
inline constexpr double kGentleFrom = 0.05;  // share per hour
inline constexpr double kSteadyFrom = 0.08;
inline constexpr double kStrongFrom = 0.10;
inline constexpr double kFierceFrom = 0.15;
Vigour vigourOf(const physics::BoilFigures& boil);
// "simmer", "gentle", "steady", "strong", "fierce".
std::string_view vigourWord(Vigour vigour);

FractionPerTime boilOffRate(const physics::BoilFigures& boil);
FractionPerTime perHour(double share);
// Net heat into the boil that each such volume of pre-boil wort gets. Empty without a boil.
std::optional<physics::Power> netPer(const physics::BrewDay& day, physics::Volume volume);

physics::Time lasted(const physics::Stage& stage);
// How long the first stage of this kind took; empty if there was none or it did not finish.
std::optional<physics::Time> timeOf(const physics::BrewDay& day, physics::StageKind kind);
// When that stage ended, since the day began; empty likewise.
std::optional<physics::Time> endOf(const physics::BrewDay& day, physics::StageKind kind);
// How long heating to the boil took; empty where it levelled off short of it, though the clock of
// the boil began.
std::optional<physics::Time> timeToBoil(const physics::BrewDay& day);
// Whether the day's last stage is the one that could not be finished.
bool finished(const physics::BrewDay& day, const physics::Stage& stage);

// Of all stages of this kind together; empty if there was none.
std::optional<physics::Energy> fromWall(const physics::BrewDay& day, physics::StageKind kind);
// A ledger closes if less than this share of it is unaccounted for.
inline constexpr double kLedgerCloses = 1e-6;

// Heat in the vessel over the element's rating.
double shareOfRating(const physics::Element& element, const physics::ElectricalLoad& load);
// At the nominal voltage, as codes count: a long cable makes no circuit larger.
bool overloads(const physics::Element& element, const physics::Supply& supply);
bool overloadsAny(const physics::Rig& rig);
// What hangs on each of its circuits: one, or two.
std::vector<physics::Feed> feedsOf(const physics::Rig& rig);
// What runs beside the element on such a circuit at the nominal voltage, as far as it is known: the
// rig's own pump and what is not the rig's; and all that it then carries.
physics::Current alongside(const RigPlan& rig, std::size_t circuit);
physics::Current carried(const RigPlan& rig, std::size_t circuit);
// An element rated at the supply's own voltage that gives the wanted heat, cable included; empty
// where no power does, or where the cable cannot bring it.
std::optional<physics::Element> elementFor(const physics::Rig& rig,
                                           const physics::PowerAnswer& wanted);
// The same element's rating stated at another voltage.
physics::Power ratingAt(const physics::Element& element, physics::Voltage voltage);
// The element is used on another voltage than it is rated at, by more than 1 %.
bool otherVoltage(const physics::Rig& rig);

// What one day costs less than the other, both begun at that clock time; empty without a price,
// where one of them stops early, and without a beginning where the hour decides.
std::optional<double> moneySaved(const physics::BrewDay& without, const physics::BrewDay& with,
                                 const Tariff& tariff, std::optional<physics::Time> begins);

// What the jacket saves of the side's own loss when boiling is `atBoil.sideShareSaved()`; this is
// the share of the bare rig's heating time saved by it.
std::optional<double> shareOfHeatingSaved(const physics::JacketEffect& effect);
std::optional<double> shareOfStrikeSaved(const physics::JacketEffect& effect);  // likewise
// What a jacket saves is the difference of two losses: the side's convection, the lid and the
// boil's evaporation are each known to about a fifth (docs/physics.md).
inline constexpr double kJacketScatter = 0.2;
// Whether that could turn around what is said of the time: the larger share of a heat-up that is
// saved, to strike or to the boil, lies so near to physics::kWorthwhileShareOfTime. Never where one
// of the days does not come to its boil.
bool isOnTheEdge(const physics::JacketEffect& effect);
// Largest relative gap of any stage's ledger and the day's.
double worstImbalance(const physics::BrewDay& day);

}  // namespace rigs
