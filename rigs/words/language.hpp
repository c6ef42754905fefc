// SPDX-License-Identifier: GPL-3.0-or-later
// Whom something is told: the reader's language and units.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// A language is its translations of our English templates, looked up by the whole template. Where
// they come from is nobody's business here: rigs/ ships English alone.
class Language {
 public:
  virtual ~Language() = default;

  virtual std::string_view code() const = 0;  // "de"
  virtual std::string_view decimalSign() const = 0;
  // nullopt where there is none: the English then stands.
  virtual std::optional<std::string_view> translation(std::string_view context,
                                                      std::string_view english) const = 0;
};

// What stands in the sources.
const Language& english();

struct Reader {
  UnitSystem units = UnitSystem::SI;
  const Language* language = &english();
};

// A number of ours, with its decimal point, as this language writes it. Ours have no grouped
// digits, so that a point between digits is the decimal sign.
std::string withDecimalSign(std::string number, const Language& language);

}  // namespace rigs
