// SPDX-License-Identifier: GPL-3.0-or-later
// Prints what stands in plans, as a dictionary of libFuzzer: keys, words and examples of the table
// of keys, and all units. Made at every build, so it is never out of date.
#include <cstdio>
#include <set>
#include <string>

#include "rigs/plans/keys.hpp"
#include "rigs/quantities/unit_table.hpp"

int main() {
  std::set<std::string> words;
  for (const rigs::Key& key : rigs::planKeys()) {
    words.insert('"' + std::string(key.name()) + "\": ");
    words.insert(std::string(key.example));
    for (const std::string_view word : key.words) words.insert('"' + std::string(word) + '"');
  }
  for (const rigs::UnitSpelling& unit : rigs::unitSpellings())
    if (!unit.prefixed) words.insert(' ' + unit.spelling);
  for (const std::string& word : words) {
    if (word.empty() || word.size() > 60) continue;
    std::string line = "\"";
    for (const char c : word) {
      char escaped[8];
      std::snprintf(escaped, sizeof escaped, "\\x%02x", static_cast<unsigned char>(c));
      line += ('a' <= c && c <= 'z') || c == ' ' ? std::string(1, c) : escaped;
    }
    std::puts((line + '"').c_str());
  }
}
