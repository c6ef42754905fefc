// SPDX-License-Identifier: GPL-3.0-or-later
// Names and notes in plan documents, and the materials they name.
#pragma once

#include <cstddef>
#include <string_view>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/catalogue.hpp"

namespace rigs {

inline constexpr std::size_t kLongestName = 80;
inline constexpr std::size_t kLongestNote = 4000;

// True, where a person wrote "none" in place of an object.
bool isNone(const JsonCursor& at, std::string_view key);

// The catalogue's material of that name if it serves that use, or nullptr and an error.
const Material* readMaterial(const JsonCursor& at, std::string_view key, Use use);

}  // namespace rigs
