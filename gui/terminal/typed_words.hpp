// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed, told apart by its look: words, options, their values. What they mean is not
// known here.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gui {

struct OptionLook {
  std::string_view name;  // "--units"
  bool hasValue = true;
  bool mayRepeat = false;
};

struct TypedWords {
  std::vector<std::string> words;  // a lone "-" is one, and so is all that follows "--"
  std::vector<std::pair<std::string, std::string>> options;      // as typed; a flag's value is ""
  std::vector<std::string> unknown;                              // that look like options
  std::vector<std::string> lackingValue, needingNone, repeated;  // names of options

  bool has(std::string_view option) const { return valueOf(option).has_value(); }
  std::optional<std::string> valueOf(std::string_view option) const;
  std::vector<std::string> valuesOf(std::string_view option) const;  // in the order typed
};

// A value stands behind its option, or after "=". What stands behind is taken whatever it looks
// like: "--room -5 °C" is winter.
TypedWords tellApart(std::span<const char* const> typed, std::span<const OptionLook> known);

}  // namespace gui
