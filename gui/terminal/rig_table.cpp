// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/rig_table.hpp"

namespace gui {

int tableDecimals(rigs::QuantityKind kind, UnitSystem units) {
  const bool us = units == UnitSystem::UsCustomary;
  switch (kind) {
    case rigs::QuantityKind::Power:
    case rigs::QuantityKind::HeatFlux:
      return 0;
    case rigs::QuantityKind::Energy:
    case rigs::QuantityKind::Mass:
    case rigs::QuantityKind::MassFlow:
    case rigs::QuantityKind::Resistance:
      return 2;
    case rigs::QuantityKind::Volume:
    case rigs::QuantityKind::VolumeFlow:
      return us ? 2 : 1;
    default:
      return 1;
  }
}

}  // namespace gui
