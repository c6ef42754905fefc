// SPDX-License-Identifier: GPL-3.0-or-later
// A document part that builds on others: own keys first, then those of the part it is from.
#pragma once

#include <initializer_list>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "rigs/documents/json_cursor.hpp"

namespace rigs {

class Layers {
 public:
  // From the part itself to the one at the bottom. Never empty.
  explicit Layers(std::vector<JsonCursor> layers) : layers_(std::move(layers)) {}

  const JsonCursor& own() const { return layers_.front(); }
  // The part that decides about a key; the part itself where nobody has it, so that a missing key
  // is missed there.
  const JsonCursor& with(std::string_view key) const { return withAny({key}); }
  const JsonCursor& withAny(std::initializer_list<std::string_view> keys) const;
  bool has(std::string_view key) const { return with(key).has(key); }

  // The objects under a key, as layers again. Nullopt, with an error, if there is none.
  std::optional<Layers> within(std::string_view key) const;

  void warnAboutKeysExcept(const std::vector<std::string_view>& known) const;

 private:
  std::vector<JsonCursor> layers_;
};

}  // namespace rigs
