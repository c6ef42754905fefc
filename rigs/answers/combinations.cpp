// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/combinations.hpp"

#include <cassert>
#include <limits>
#include <map>

#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

// One of two ways to the same key, or a key and an entry within it.
void refuseTwice(const std::vector<Variation>& variations, Problems& problems) {
  std::map<std::string, std::string> setBy;
  for (const Variation& one : variations) {
    for (const std::string& pointer : one.pointers()) {
      const auto [by, fresh] = setBy.emplace(pointer, one.place());
      if (fresh) continue;
      problems.push_back(
          {Severity::Error, "--vary " + one.place(),
           advised(Told(TOLD("Sweep", "%1 is varied already"), inQuotes(by->second)),
                   Told(TOLD("Sweep", "write all of its values behind one \"--vary\"")))});
      break;
    }
  }
}

}  // namespace

Combinations::Combinations(std::vector<Variation> variations, Problems& problems)
    : variations_(std::move(variations)) {
  refuseTwice(variations_, problems);
}

std::optional<std::uint64_t> Combinations::count() const {
  std::uint64_t all = 1;
  for (const Variation& one : variations_) {
    if (all > std::numeric_limits<std::uint64_t>::max() / one.count()) return std::nullopt;
    all *= one.count();
  }
  return all;
}

double Combinations::about() const {
  double all = 1.0;
  for (const Variation& one : variations_) all *= static_cast<double>(one.count());
  return all;
}

std::vector<VariedValue> Combinations::at(std::uint64_t i) const {
  assert(count() && i < *count());
  std::vector<VariedValue> values(variations_.size());
  for (std::size_t k = variations_.size(); k-- > 0;) {
    values[k] = variations_[k].at(i % variations_[k].count());
    i /= variations_[k].count();
  }
  return values;
}

std::string Combinations::document(std::string_view plan,
                                   const std::vector<VariedValue>& values) const {
  std::vector<Placed> all;
  for (std::size_t k = 0; k < variations_.size(); ++k)
    for (Placed& one : variations_[k].placed(values[k])) all.push_back(std::move(one));
  return withAll(plan, all);
}

}  // namespace rigs
