// SPDX-License-Identifier: GPL-3.0-or-later
// Groups of rows that several answers share: the same figure has the same name, unit and digits
// everywhere. Each group begins with its heading.
#pragma once

#include <functional>
#include <string>

#include "gui/telling/case.hpp"

namespace gui::telling {

// All rows of a group, or the few that decide between rigs.
enum class Rows { All, Deciding };

// Ratings, currents and what reaches the vessel.
void addElementRows(RigTable& table, const Case& of, Rows rows = Rows::All);
// Without a heading; of rigs that have two circuits, no rows where none has.
void addSecondCircuit(RigTable& table, const Case& of);
// To strike, to the boil, and the whole day.
void addTimeRows(RigTable& table, const Case& of, Rows rows = Rows::All);
void addWortRows(RigTable& table, const Case& of, Rows rows = Rows::All);
void addBoilRows(RigTable& table, const Case& of, Rows rows = Rows::All);
// How hard it boils in a word, or what becomes of a day that does not get there.
Cell vigourCell(const Case& of, std::size_t rig);
// From the wall, and its price.
void addCostRows(RigTable& table, const Case& of, Rows rows = Rows::All);
// Where the heat of the whole day went, and that every joule is accounted for.
void addLedgerRows(RigTable& table, const Case& of);

// An energy of the whole day's ledger; left out where no rig has any: no hose, no cable.
// `result` is the key within the ledger's JSON, "lost/side".
void addEnergyRow(RigTable& table, const Case& of, rigs::Told label,
                  const std::function<physics::Energy(const physics::Ledger&)>& energy,
                  const std::string& result);
// Megajoules that cancel leave some nanojoules of rounding, which are nothing.
physics::Energy withoutRounding(physics::Energy energy);
// When the rig begins, by the clock; nothing where it never comes to what is to be ready.
std::function<Cell(std::size_t)> beginsCell(const Case& of);
// Of a day that came to its end; one that stops has no whole to speak of.
std::optional<physics::Time> wholeDay(const physics::BrewDay& day);

}  // namespace gui::telling
