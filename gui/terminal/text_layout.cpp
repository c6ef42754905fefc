// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/text_layout.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace gui {
namespace {

struct Decoded {
  std::uint32_t point = 0;
  std::size_t length = 1;
  bool valid = false;
};

// The first character of non-empty UTF-8, refusing overlong forms and surrogates.
Decoded firstCharacter(std::string_view text) {
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

struct Block {
  std::uint32_t first, last;
};
constexpr std::array kMarks{Block{0x0300, 0x036f}, Block{0x0483, 0x0489}, Block{0x0591, 0x05bd},
                            Block{0x0610, 0x061a}, Block{0x064b, 0x065f}, Block{0x1ab0, 0x1aff},
                            Block{0x1dc0, 0x1dff}, Block{0x200b, 0x200f}, Block{0x202a, 0x202e},
                            Block{0x2060, 0x2064}, Block{0x20d0, 0x20ff}, Block{0xfe00, 0xfe0f},
                            Block{0xfe20, 0xfe2f}, Block{0xfeff, 0xfeff}};
constexpr std::array kWide{
    Block{0x1100, 0x115f},   Block{0x2e80, 0x303e},   Block{0x3041, 0x33ff},
    Block{0x3400, 0x4dbf},   Block{0x4e00, 0x9fff},   Block{0xa000, 0xa4cf},
    Block{0xac00, 0xd7a3},   Block{0xf900, 0xfaff},   Block{0xfe30, 0xfe6f},
    Block{0xff00, 0xff60},   Block{0xffe0, 0xffe6},   Block{0x1f300, 0x1f64f},
    Block{0x1f680, 0x1f6ff}, Block{0x1f900, 0x1faff}, Block{0x20000, 0x3fffd}};

template <std::size_t N>
bool within(const std::array<Block, N>& blocks, std::uint32_t point) {
  return std::any_of(blocks.begin(), blocks.end(),
                     [&](const Block& b) { return b.first <= point && point <= b.last; });
}

std::size_t columnsOf(const Decoded& character) {
  if (!character.valid) return 1;
  if (within(kMarks, character.point)) return 0;
  return within(kWide, character.point) ? 2 : 1;
}

bool isControl(std::uint32_t point) {
  // C0, DEL, C1, and the marks that turn the reading direction round.
  return point < 0x20 || (0x7f <= point && point <= 0x9f) || (0x202a <= point && point <= 0x202e) ||
         (0x2066 <= point && point <= 0x2069);
}

// Words, with a number kept together with the unit after it.
std::vector<std::string> wordsOf(std::string_view text) {
  std::vector<std::string> words;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    if (word.empty()) continue;
    const bool follows = !words.empty() && '0' <= words.back().back() && words.back().back() <= '9';
    if (follows) {
      words.back().append(" ").append(word);
    } else {
      words.emplace_back(word);
    }
  }
  return words;
}

}  // namespace

std::size_t displayWidth(std::string_view text) {
  std::size_t width = 0;
  while (!text.empty()) {
    const Decoded character = firstCharacter(text);
    width += columnsOf(character);
    text.remove_prefix(character.length);
  }
  return width;
}

std::string padded(std::string_view text, std::size_t width) {
  const std::size_t own = displayWidth(text);
  return std::string(text) + std::string(width > own ? width - own : 0, ' ');
}

std::string paddedInFront(std::string_view text, std::size_t width) {
  const std::size_t own = displayWidth(text);
  return std::string(width > own ? width - own : 0, ' ') + std::string(text);
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
  width = std::max<std::size_t>(width, 1);
  std::vector<std::string> lines;
  std::string line;
  for (const std::string& word : wordsOf(text)) {
    const std::size_t needed = displayWidth(word) + (line.empty() ? 0 : displayWidth(line) + 1);
    if (needed <= width) {
      line += (line.empty() ? "" : " ") + word;
      continue;
    }
    if (!line.empty()) lines.push_back(std::move(line));
    line.clear();
    std::string_view rest = word;
    while (!rest.empty()) {
      const Decoded character = firstCharacter(rest);
      if (!line.empty() && displayWidth(line) + columnsOf(character) > width) {
        lines.push_back(std::move(line));
        line.clear();
      }
      line += rest.substr(0, character.length);
      rest.remove_prefix(character.length);
    }
  }
  if (!line.empty() || lines.empty()) lines.push_back(std::move(line));
  return lines;
}

std::string plainText(std::string_view text) {
  std::string plain;
  while (!text.empty()) {
    const Decoded character = firstCharacter(text);
    if (character.valid && !isControl(character.point)) {
      plain += text.substr(0, character.length);
    } else {
      plain += '?';
    }
    text.remove_prefix(character.length);
  }
  return plain;
}

}  // namespace gui
