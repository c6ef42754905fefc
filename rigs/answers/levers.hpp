// SPDX-License-Identifier: GPL-3.0-or-later
// What a person can change about one rig of a plan: each a named change that can be tried on the
// plan, alone or with others. What would be bought or done is an own choice of usual steps; what it
// comes to is simulated.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

enum class Lever {
  LidInBoil,
  LidWhileHeating,
  SideJacket,
  LidJacket,
  BaseJacket,
  Finish,
  Stand,
  Water,
  BatchSize,
  BoilPower,
  Element,
  Circuit,
  SecondElement,
  Start
};
// For programs: "lid-in-boil".
std::string_view leverWord(Lever lever);
// Changes what hangs on a circuit, or the circuit.
bool touchesCircuit(Lever lever);
// Levers of which only one can be pulled: all those that touch the circuit, else each by itself.
std::size_t groupOf(Lever lever);
inline constexpr std::size_t kLeverGroups = 12;

// What a change takes to be had.
enum class Outlay { Nothing, Priced, NotKnown };

// One way of pulling one lever.
struct Change {
  Lever lever = Lever::Start;
  std::string id;  // for programs, unique within a rig: "lid-in-boil-35"
  Told words;      // "the lid over the boil, 35 % of the mouth open"
  std::function<void(Plan& plan, std::size_t rig)> make = {};
  // Why the rating of its circuit or its element forbids it, whatever else is changed; empty where
  // it does not. The rules' verdict on a whole day comes on top.
  Told forbidden = {};
  Outlay outlay = Outlay::NotKnown;
  std::optional<double> price = {};  // in the tariff's currency; with Outlay::Priced alone
};

// All changes of a rig, lever by lever in the order of the list above; `today` is its day as
// planned. Jackets are of the material that the plan compares, of closed-cell rubber foam where it
// states none.
std::vector<Change> changesOf(const Plan& plan, std::size_t rig, const physics::BrewDay& today);

// The plan with these made, in this order.
Plan changed(const Plan& plan, std::size_t rig, const std::vector<const Change*>& changes);

// Ratings that elements are commonly sold with, in watts at the voltage of their supply. Own list,
// from memory of what shops have.
const std::vector<double>& elementSteps();

// For the parts of this module.
namespace levers {

// A rig as it is planned, bare and jacketed: what is changed of the kettle is changed of all three.
template <class Of>
void onEach(RigPlan& rig, const Of& of) {
  for (physics::Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) of(*one);
}
// Appends those that touch the circuit.
void addElectrical(const Plan& plan, std::size_t rig, std::vector<Change>& all);

}  // namespace levers

}  // namespace rigs
