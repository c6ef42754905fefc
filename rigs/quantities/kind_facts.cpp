// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/quantities/kind_facts.hpp"

#include <cassert>

#include "rigs/quantities/unit_expression.hpp"

namespace rigs::detail {

Unit unitOf(std::string_view label) {
  const UnitExpression read = readUnitExpression(plainCharacters(label), false);
  assert(!read.fault && read.length > 0);
  return read.unit;
}

}  // namespace rigs::detail
