// SPDX-License-Identifier: GPL-3.0-or-later
// What a problem shows as an example: a person who mistook a room's temperature wants to see a
// room's temperature.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

struct Example {
  std::string_view text;  // a text without its quotation marks; all else as JSON
  bool orNone = false;    // "none" may stand there, too
};

// Those of one kind of document, place by place.
class Examples {
 public:
  virtual ~Examples() = default;
  // Of a JSON pointer ("/rigs/0/element/power"); nullopt where nothing is known to stand.
  virtual std::optional<Example> at(std::string_view place) const = 0;
};

// For documents that have none of their own: as it is usual under that key, whatever the place.
//
// A quantity that lies between the ends of its range (SI numbers, either may be infinite).
std::string quantityExample(std::string_view key, QuantityKind kind, double min, double max);
// `own` where it is such a quantity; else the same.
std::string quantityExample(const std::optional<Example>& own, std::string_view key,
                            QuantityKind kind, double min, double max);
// A list as JSON text, where that key usually holds one; otherwise "".
std::string_view listExample(std::string_view key);
std::string_view textExample(std::string_view key);

}  // namespace rigs
