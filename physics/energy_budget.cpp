// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/energy_budget.hpp"

#include <algorithm>
#include <cmath>

namespace physics {

double Ledger::imbalance() const {
  Energy gone = steam;
  for (const Energy& path : lost.values) gone += abs(path);  // a warmer room gives
  const Energy moved = std::max({supplied(), gone, joules(1.0)});
  return std::abs(residual() / moved);
}

Ledger& Ledger::operator+=(const Ledger& other) {
  element += other.element;
  cable += other.cable;
  pump += other.pump;
  slaking += other.slaking;
  apart += other.apart;
  rinsed += other.rinsed;
  brought += other.brought;
  wort += other.wort;
  grain += other.grain;
  vessel += other.vessel;
  lifted += other.lifted;
  for (std::size_t i = 0; i < kPathCount; ++i) lost.values[i] += other.lost.values[i];
  steam += other.steam;
  return *this;
}

}  // namespace physics
