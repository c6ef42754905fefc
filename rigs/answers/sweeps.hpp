// SPDX-License-Identifier: GPL-3.0-or-later
// One question asked many times over: a figure against element power, thickness or time. Each
// point is a whole simulated day; nothing is fitted.
#pragma once

#include <optional>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/units.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// What a rig does with another element on its own supply.
struct PowerPoint {
  physics::Power element;    // rated at the supply's voltage
  physics::Power delivered;  // into the vessel
  physics::Current current;
  std::optional<physics::Time> toBoil;  // heating after the mash
  std::optional<physics::Time> toStrike;
  std::optional<double> boilOffPerHour;        // share of pre-boil volume
  std::optional<physics::VolumeFlow> boilOff;  // as cold water
};
// `count` >= 2 points from `weakest` to `strongest` rating; each pours the water that the wanted
// wort needs with it, as every other answer does. `also` is one more, wherever it belongs among
// them.
std::vector<PowerPoint> againstPower(const RigPlan& rig, const Plan& plan, physics::Power weakest,
                                     physics::Power strongest, int count,
                                     std::optional<physics::Power> also = std::nullopt);

// One side of a comparison.
struct JacketDay {
  bool done = false;                    // boils to the end
  std::optional<physics::Time> toBoil;  // heating after the mash
  physics::Energy fromWall;
  std::optional<double> cost;  // begun when the rig begins
};

JacketDay jacketDay(const physics::BrewDay& day, const Tariff& tariff,
                    std::optional<physics::Time> begins);

// The rig's jacket (its own or the one to compare) thinner and thicker; 0 is bare metal.
struct JacketPoint {
  physics::Length thickness;                 // of all side layers together
  std::optional<physics::Time> savedToBoil;  // against bare
  std::optional<physics::Time> savedToStrike;
  physics::Energy savedFromWall;
  std::optional<double> savedMoney;
  JacketDay bare, jacketed;
};
std::vector<JacketPoint> againstThickness(const RigPlan& rig, const Plan& plan,
                                          physics::Length thickest, int count);
// What the jacket as stated saves with stronger and weaker elements.
struct JacketPowerPoint {
  physics::Power element;
  std::optional<physics::Time> savedToBoil;
  physics::Energy savedFromWall;
  std::optional<double> savedMoney;
  JacketDay bare, jacketed;
};
std::vector<JacketPowerPoint> jacketAgainstPower(const RigPlan& rig, const Plan& plan,
                                                 physics::Power weakest, physics::Power strongest,
                                                 int count);

}  // namespace rigs
