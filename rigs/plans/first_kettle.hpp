// SPDX-License-Identifier: GPL-3.0-or-later
// A plan of one kettle from the few things that everybody knows of theirs. What is left out is
// assumed, and the assumption follows from what is stated: the batch from the kettle's size, the
// voltage from the circuit, the money from the country.
#pragma once

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/circuits/rules.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

struct Plan;

// What is typed, in the order in which it is asked.
enum class KettleFigure { Volume, Diameter, Height, Power, Voltage, Altitude, Room, Batch };
inline constexpr std::array kKettleFigures{
    KettleFigure::Volume,  KettleFigure::Diameter, KettleFigure::Height, KettleFigure::Power,
    KettleFigure::Voltage, KettleFigure::Altitude, KettleFigure::Room,   KettleFigure::Batch};

struct FirstKettle {
  std::map<KettleFigure, std::string> typed = {};  // with its unit; left out or "": assumed
  bool bySize = false;                             // by diameter and height, else by volume
  std::string region = {};                         // of the bundled rules; "": kUsualRegion
  std::string circuit = {};                        // of the catalogue; "": the region's first
  bool lid = true;                                 // on while it heats, off in the boil
  bool jacket = false;
};

struct StartedKettle {
  std::map<KettleFigure, std::string> assumed;  // what holds where nothing is typed
  std::string region, circuit;                  // that were taken
  std::string document;                         // a plan of one rig; what is wrong left as typed
  Problems problems;                            // of what is typed, at their places in the document
  std::shared_ptr<const Plan> plan;             // null where one of them is an error
};

inline constexpr std::string_view kUsualRegion = "Europe";

// Assumed figures are in `units`, typed ones stay as they are typed. `name` is the rig's and the
// plan's. A circuit of another region than the stated one is as none.
//
// Proportions: a kettle stated by volume is as high as it is wide; 55 % of its volume is brewed,
// from 0.2 kg of grain a litre; the element takes 80 % of what the circuit carries, 6 kW at the
// most. All of that is common practice, no source.
StartedKettle startWith(const FirstKettle& kettle, std::string_view name, UnitSystem units);

// What such a plan and its rig are called, where nobody calls them otherwise.
Told firstKettleName();

// Whose figure stands at that place of the document, and so where a problem is told; nothing for
// places that nobody is asked about.
std::optional<KettleFigure> kettleFigureAt(std::string_view place, bool bySize);

// Regions with circuits to offer, in the order of the bundled rules.
std::vector<std::string> regionsToOffer();
// The catalogue's circuits there, the usual one first.
std::vector<const Circuit*> circuitsToOffer(std::string_view region);
// "230 V, 16 A wall socket": as people call it there.
Told circuitCalled(const Circuit& circuit, std::string_view region);

}  // namespace rigs
