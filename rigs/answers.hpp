// SPDX-License-Identifier: GPL-3.0-or-later
// Everything a plan's questions ask, computed once: the one result that terminal, window, report
// and JSON show. Nobody further out computes anything.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/jacket.hpp"
#include "physics/sizing.hpp"
#include "rigs/plan.hpp"

namespace rigs {

struct SizingAnswer {
  physics::ElectricalLoad asIs;  // the rig's element on the rig's supply
  physics::Power mostOnCircuit;  // heat from the largest element within the rated current
  physics::PowerAnswer toBoilAtAll;
  physics::PowerAnswer toBoilWithin;
  physics::PowerAnswer toStrikeWithin;
  physics::PowerAnswer forBoilOff;
  physics::BatchAnswer largest;           // with the element as it is
  physics::BatchAnswer largestOnCircuit;  // with the largest element the circuit carries
};

struct RigAnswer {
  std::string name;
  physics::BrewDay day;
  std::optional<physics::JacketEffect> jacket;          // if there is one to compare
  std::optional<SizingAnswer> sizing;                   // if asked for
  std::optional<physics::WhatWouldBoil> whatWouldBoil;  // if it does not boil
  std::optional<double> cost;                           // of the day, in the plan's currency
};

struct Answers {
  std::vector<RigAnswer> rigs;  // in the plan's order
};

enum class Depth { Day, DayAndJacket, Everything };

// Curves fill the stages' time series. Preconditions: a plan from readPlan without errors.
Answers answer(const Plan& plan, Depth depth, bool curves = false);

// Money for energy at the plan's flat tariff; empty without a price.
std::optional<double> costOf(physics::Energy fromWall, const Tariff& tariff);

}  // namespace rigs
