// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/problem_words.hpp"

#include <utility>

namespace rigs {

Verbatim inQuotes(std::string_view text) { return {'"' + std::string(text) + '"'}; }

std::string shownPath(std::string_view path) {
  constexpr std::size_t kLongest = 400;  // bytes: a name of 255, and the folders that tell it apart
  constexpr std::size_t kBeginning = 100, kEnd = 150;
  if (path.size() <= kLongest) return std::string(path);
  const auto continues = [&](std::size_t at) {
    return (static_cast<unsigned char>(path[at]) & 0xc0) == 0x80;
  };
  std::size_t first = kBeginning, last = path.size() - kEnd;
  while (first > 0 && continues(first)) --first;
  while (last + 1 < path.size() && continues(last)) ++last;
  return std::string(path.substr(0, first)) + "…" + std::string(path.substr(last));
}

Verbatim quotedPath(std::string_view path) { return inQuotes(shownPath(path)); }

Told advised(Told found, Told advice) {
  return Told(TOLD("Problem", "%1; %2"), std::move(found), std::move(advice));
}

Told withExample(Told told, Verbatim example) {
  return Told(TOLD("Problem", "%1, e.g. %2"), std::move(told), std::move(example));
}

Told perhapsMeant(Told told, std::string_view near) {
  if (near.empty()) return told;
  return advised(std::move(told), Told(TOLD("Problem", "perhaps %1 was meant"), inQuotes(near)));
}

Told choice(const std::vector<std::string_view>& words) {
  List all{.items = {}, .joint = Joint::Comma};
  for (const std::string_view word : words) all.items.emplace_back(inQuotes(word));
  if (words.size() > 1) return Told(TOLD("Problem", "one of %1"), std::move(all));
  return Told::just(std::move(all));
}

Told writeOneOf(const std::vector<std::string_view>& words) {
  return Told(TOLD("Problem", "write %1"), choice(words));
}

Told missing(std::string_view key, Told needed) {
  return advised(Told(TOLD("Problem", "%1 is missing"), Quoted{std::string(key)}),
                 std::move(needed));
}

Told withinFile(const std::string& name, const Problem& problem) {
  if (problem.where.empty())
    return Told(TOLD("Problem", "in %1: %2"), Quoted{name}, problem.message);
  return Told(TOLD("Problem", "in %1 at %2: %3"), Quoted{name}, Verbatim{problem.where},
              problem.message);
}

}  // namespace rigs
