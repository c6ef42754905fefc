// SPDX-License-Identifier: GPL-3.0-or-later
// Ranges as sentences, schemas and documents write them, in the table's spelling.
#pragma once

#include <string>
#include <string_view>
#include <utility>

namespace test_support {

// "−20–60 °C" and "-20 to 60 °C" are "-20 to 60 C".
inline std::string plain(std::string text) {
  constexpr std::pair<std::string_view, std::string_view> kSpellings[] = {
      {"°", ""},
      {"³", "3"},
      {"²", "2"},
      {"·", "*"},
      {"−", "-"},
      {"–", " to "},
      {"\u00a0", ""},
      {"m2K/W", "m2*K/W"},
      {"m2K)", "m2 K)"},
      {"20 000", "20000"},
      {"100 000", "100000"},
      {"10 000 000", "10000000"}};
  for (const auto& [from, to] : kSpellings)
    for (std::size_t i = text.find(from); i != std::string::npos;
         i = text.find(from, i + to.size()))
      text.replace(i, from.size(), to);
  return text;
}

}  // namespace test_support
