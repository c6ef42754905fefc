// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/jacket_text.hpp"

#include <array>
#include <string_view>

namespace rigs {
namespace {

// Of the text of a length or an R-value that was understood: "1/2 in", "R 1.8", "RSI 0.3".
UnitSystem systemOf(std::string_view written) {
  if (written.starts_with("R") && !written.starts_with("RSI")) return UnitSystem::UsCustomary;
  constexpr std::array<std::string_view, 5> kCustomary{"in", "ft", "foot", "feet", "yd"};
  for (const std::string_view unit : kCustomary)
    if (written.find(unit) != std::string_view::npos) return UnitSystem::UsCustomary;
  return UnitSystem::SI;
}

template <Writable Q>
std::string shown(const Q& q, const std::string& written, UnitSystem units) {
  return !written.empty() && (systemOf(written) == UnitSystem::SI) == units.isMetric(kKindOf<Q>)
             ? written
             : format(q, units);
}

}  // namespace

std::string amountIn(const LayerText& layer, UnitSystem units) {
  if (!layer.insulance) return shown(*layer.thickness, layer.written, units);
  const std::string value = shown(*layer.insulance, layer.written, units);
  return value.starts_with("R") ? value : "R " + value;
}

std::string JacketText::in(UnitSystem units) const {
  std::string all;
  for (const FaceText& face : faces) {
    all += (all.empty() ? "" : "; ") + face.where + ' ';
    for (std::size_t i = 0; i < face.layers.size(); ++i) {
      const LayerText& layer = face.layers[i];
      all += (i > 0 ? " + " : "") + amountIn(layer, units);
      if (!layer.material.empty()) all += ' ' + layer.material;
    }
  }
  return all;
}

}  // namespace rigs
