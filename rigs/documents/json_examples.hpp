// SPDX-License-Identifier: GPL-3.0-or-later
// What a problem shows as an example, key by key: a person who mistook a room's temperature wants
// to see a room's temperature.
#pragma once

#include <string>
#include <string_view>

#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// A quantity of this kind as it is usual under that key and lies between the ends of its range (SI
// numbers, either may be infinite): "120 m" for an altitude.
std::string quantityExample(std::string_view key, QuantityKind kind, double min, double max);

// An object or a list as JSON text, where that key usually holds one; otherwise "".
std::string_view objectExample(std::string_view key);
std::string_view listExample(std::string_view key);
// A text as it is usual under that key, without its quotation marks.
std::string_view textExample(std::string_view key);
// Whether "none" may stand there in place of an object.
bool mayBeNone(std::string_view key);

}  // namespace rigs
