// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/text_layout.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace gui {
namespace {

using telling::Character;
using telling::firstCharacter;

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

std::size_t columnsOf(const Character& character) {
  if (!character.valid) return 1;
  if (within(kMarks, character.point)) return 0;
  return within(kWide, character.point) ? 2 : 1;
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
    const Character character = firstCharacter(text);
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
      const Character character = firstCharacter(rest);
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

}  // namespace gui
