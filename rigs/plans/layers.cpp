// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/layers.hpp"

namespace rigs {

const JsonCursor& Layers::withAny(std::initializer_list<std::string_view> keys) const {
  for (const JsonCursor& layer : layers_)
    for (const std::string_view key : keys)
      if (layer.has(key)) return layer;
  return own();
}

std::optional<Layers> Layers::within(std::string_view key) const {
  std::vector<JsonCursor> found;
  for (const JsonCursor& layer : layers_)
    if (const auto object = layer.objectIfGiven(key)) found.push_back(*object);
  if (!found.empty()) return Layers(std::move(found));
  if (!has(key)) static_cast<void>(own().object(key));  // says that it is missing
  return std::nullopt;
}

void Layers::warnAboutKeysExcept(const std::vector<std::string_view>& known) const {
  for (const JsonCursor& layer : layers_) layer.warnAboutKeysExcept(known);
}

}  // namespace rigs
