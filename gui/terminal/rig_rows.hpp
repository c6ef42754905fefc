// SPDX-License-Identifier: GPL-3.0-or-later
// Groups of rows that several questions show: the same figure has the same name everywhere.
#pragma once

#include "gui/terminal/rig_table.hpp"

namespace gui {

// Of rigs that have two; no rows where none has.
void addSecondCircuit(RigTable& table);
void addElementRows(RigTable& table, UnitSystem units);
void addTimeRows(RigTable& table, const rigs::Plan& plan);
void addWortRows(RigTable& table, UnitSystem units);
void addBoilRows(RigTable& table, UnitSystem units);
// From the wall, and its price.
void addCostRows(RigTable& table, const rigs::Plan& plan, UnitSystem units);
// Where the heat of the whole day went, and that every joule is accounted for.
void addLedgerRows(RigTable& table);

// A share of the day's heat may be small; a ledger's gap always is: "3e-09".
std::string gapText(double share);

}  // namespace gui
