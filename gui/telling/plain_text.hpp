// SPDX-License-Identifier: GPL-3.0-or-later
// A person's text character by character, and made safe to be shown.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace gui::telling {

struct Character {
  std::uint32_t point = 0;
  std::size_t length = 1;  // bytes
  bool valid = false;
};
// The first of non-empty UTF-8, refusing overlong forms and surrogates.
Character firstCharacter(std::string_view text);

// Control characters, which could move a cursor or change colours, marks that turn the reading
// direction round, and broken UTF-8 become "?".
std::string plainText(std::string_view text);

}  // namespace gui::telling
