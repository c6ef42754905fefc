// SPDX-License-Identifier: GPL-3.0-or-later
// What a person should know about a document they wrote.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "rigs/words/told.hpp"

namespace rigs {

enum class Severity { Warning, Error };

struct Problem {
  Severity severity;
  std::string where;  // JSON pointer: "/elements/1/power"; "" is the whole document
  Told message;       // one sentence without its full stop, no code words

  bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

inline bool hasErrors(const Problems& problems) {
  return std::any_of(problems.begin(), problems.end(),
                     [](const Problem& p) { return p.severity == Severity::Error; });
}

}  // namespace rigs
