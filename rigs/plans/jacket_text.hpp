// SPDX-License-Identifier: GPL-3.0-or-later
// A jacket in words, kept as quantities until somebody reads it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// One layer as its author wrote it: a thickness of a material, or an R-value. `written` is the
// author's own text of it, shown again to readers of the system it is written in.
struct LayerText {
  std::string material;  // may be empty beside an R-value
  std::optional<physics::Length> thickness = {};
  std::optional<physics::ThermalInsulance> insulance = {};
  std::string written = {};

  bool operator==(const LayerText&) const = default;
};

// "13 mm", "R 0.32 m²·K/W": how much of the material there is.
std::string amountIn(const LayerText& layer, UnitSystem units);

struct FaceText {
  std::string where;  // "side", "lid", "base"
  std::vector<LayerText> layers;

  bool operator==(const FaceText&) const = default;
};

struct JacketText {
  std::vector<FaceText> faces;  // those with layers

  bool empty() const { return faces.empty(); }
  // "side 13 mm cork; lid R 0.32 m²·K/W"
  std::string in(UnitSystem units) const;
  bool operator==(const JacketText&) const = default;
};

}  // namespace rigs
