// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/plain_text.hpp"

#include <array>

namespace gui::telling {
namespace {

bool isControl(std::uint32_t point) {
  // C0, DEL, C1, and the marks that turn the reading direction round.
  return point < 0x20 || (0x7f <= point && point <= 0x9f) || (0x202a <= point && point <= 0x202e) ||
         (0x2066 <= point && point <= 0x2069);
}

}  // namespace

Character firstCharacter(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(0);
  if (lead < 0x80) return {lead, 1, true};
  const std::size_t length = lead >= 0xf0 ? 4 : lead >= 0xe0 ? 3 : 2;
  if (lead < 0xc2 || lead > 0xf4 || text.size() < length) return {};
  std::uint32_t point = lead & (0x7fu >> length);
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xc0u) != 0x80u) return {};
    point = (point << 6) | (byte(i) & 0x3fu);
  }
  constexpr std::array<std::uint32_t, 5> kSmallest{0, 0, 0x80, 0x800, 0x10000};
  const bool surrogate = 0xd800 <= point && point <= 0xdfff;
  if (point < kSmallest[length] || surrogate || point > 0x10ffff) return {};
  return {point, length, true};
}

std::string plainText(std::string_view text) {
  std::string plain;
  while (!text.empty()) {
    const Character character = firstCharacter(text);
    if (character.valid && !isControl(character.point)) {
      plain += text.substr(0, character.length);
    } else {
      plain += '?';
    }
    text.remove_prefix(character.length);
  }
  return plain;
}

}  // namespace gui::telling
