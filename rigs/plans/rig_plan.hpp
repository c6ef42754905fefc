// SPDX-License-Identifier: GPL-3.0-or-later
// One rig of a plan.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/circuits/verdict.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/chill_plan.hpp"
#include "rigs/plans/jacket_text.hpp"

namespace rigs {

// One circuit of a rig and what hangs on it.
struct CircuitPlan {
  CircuitDetails details;
  std::vector<physics::Element> elements;  // as written; Rig has them combined
  physics::Wiring wiring = physics::Wiring::Parallel;
  double continuousShare = 1.0;  // of the current, for long use, as stated

  bool operator==(const CircuitPlan&) const = default;
};

// What a rig's document says, with all it has from others: "/element/power" to "3 kW". What is
// not there is as the table of keys has it.
struct AsWritten {
  Texts texts;

  bool has(std::string_view place) const;  // there or anywhere below
  // "" where none stands there.
  std::string_view at(std::string_view place) const;
  // However it is written, the rig is the same.
  bool operator==(const AsWritten&) const { return true; }
};

// So many standard deviations above the middle, nine in ten of a normal lie below: 8 in 10 are
// within as many either way.
inline constexpr double kNineInTen = 1.2815515655446004;

// How sure a rig's own factors are; see Rig::lossFactor and Rig::evaporationFactor.
struct Measured {
  std::optional<double> losses, surface;  // standard deviation of the factor's logarithm
  std::string jacket;                     // worn when it was read, in words; "" for none
  std::string on, readings;

  bool operator==(const Measured&) const = default;
};

// One column of every answer.
struct RigPlan {
  std::string name;
  std::optional<std::size_t> statedSlot = {};  // of its letter, 0 for "a"; see slotsOf()
  std::optional<std::size_t> sameAs = {};      // of the letter of the rig that it follows
  physics::Rig rig;                            // as planned
  physics::Rig bare;                           // the same without any jacket
  physics::Rig jacketed;          // with its own jacket, or with the one to compare if it has none
  bool hasJacket = false;         // as planned
  bool jacketIsCompared = false;  // `jacketed` differs from `bare`
  bool hasLid = false;
  std::string finish;          // of the metal, in words: "brushed"; "emissivity 0.3" as stated
  bool finishIsUsual = false;  // nobody stated it: a kettle of the catalogue has it
  JacketText jacket;           // of `jacketed`: "side 10 mm cork; lid 20 mm cork"
  std::string skin;            // of that jacket's outside, in words: "foil"
  std::string circuit;         // name in the catalogue; empty if voltage and current were given
  std::optional<Measured> measured = {};
  double continuousShare = 1.0;            // of the first circuit's current, as stated
  std::vector<CircuitPlan> circuits = {};  // one, or two; in plans made by readPlan()
  AsWritten written = {};                  // the same
  Chiller chiller = {};

  // Its own jacket in words, "" without one: "side 10 mm cork".
  std::string worn() const { return hasJacket ? jacket.in(UnitSystem::SI) : std::string(); }
  bool operator==(const RigPlan&) const = default;
};

// What is stated of the first circuit (0) or the second; nothing where the plan says nothing of it.
const CircuitDetails& detailsOf(const RigPlan& rig, std::size_t circuit);

// What an element would suffer on a supply above its rating, as a problem without a place: a
// warning up to kMostOverRated, an error beyond it.
std::optional<Problem> overVoltage(const physics::Element& element, const physics::Supply& supply);

}  // namespace rigs
