// SPDX-License-Identifier: GPL-3.0-or-later
// What the fuzz targets have in common. Linking fuzzed_json.cpp makes libFuzzer change documents by
// their structure most of the time.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "rigs/documents/problems.hpp"

#ifdef NDEBUG
#error "Assertions are half of what fuzzing finds."
#endif

namespace fuzz {

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

inline void require(bool holds) {
  if (!holds) std::abort();
}

// Each has its place and a sentence that moves no cursor; nothing was read exactly where one of
// them is an error.
inline void requireTold(bool wasRead, const rigs::Problems& problems) {
  require(wasRead != rigs::hasErrors(problems));
  for (const rigs::Problem& problem : problems) {
    const std::string said = rigs::inEnglish(problem.message);
    require(!said.empty() && said.find('\x1b') == std::string::npos);
  }
}

}  // namespace fuzz
