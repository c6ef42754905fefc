// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/typed_words.hpp"

#include <algorithm>

namespace gui {

std::optional<std::string> TypedWords::valueOf(std::string_view option) const {
  for (const auto& [name, value] : options)
    if (name == option) return value;
  return std::nullopt;
}

std::vector<std::string> TypedWords::valuesOf(std::string_view option) const {
  std::vector<std::string> values;
  for (const auto& [name, value] : options)
    if (name == option) values.push_back(value);
  return values;
}

TypedWords tellApart(std::span<const char* const> typed, std::span<const OptionLook> known) {
  TypedWords all;
  bool wordsOnly = false;
  for (std::size_t i = 0; i < typed.size(); ++i) {
    const std::string_view word = typed[i];
    if (wordsOnly || word.size() < 2 || word.front() != '-') {
      all.words.emplace_back(word);
      continue;
    }
    wordsOnly = word == "--";
    if (wordsOnly) continue;
    const std::size_t equals = word.find('=');
    const std::string name(word.substr(0, equals));
    const auto look = std::find_if(known.begin(), known.end(),
                                   [&](const OptionLook& one) { return one.name == name; });
    if (look == known.end()) {
      all.unknown.emplace_back(word);
      continue;
    }
    if (look->hasValue && !look->mayRepeat && all.has(name)) all.repeated.push_back(name);
    const bool together = equals != std::string_view::npos;
    if (together && !look->hasValue) all.needingNone.push_back(name);
    if (!look->hasValue) {
      all.options.emplace_back(name, "");
    } else if (together) {
      all.options.emplace_back(name, word.substr(equals + 1));
    } else if (i + 1 < typed.size()) {
      all.options.emplace_back(name, typed[++i]);
    } else {
      all.lackingValue.push_back(name);
    }
  }
  return all;
}

}  // namespace gui
