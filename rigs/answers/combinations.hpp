// SPDX-License-Identifier: GPL-3.0-or-later
// Every combination of what is varied: how many there are, which is which, and all of them tried
// one after another in constant memory.
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

#include "rigs/answers/pool.hpp"
#include "rigs/answers/variation.hpp"
#include "rigs/documents/problems.hpp"

namespace rigs {

class Combinations {
 public:
  // At least one variation. Whatever two of them set is told, at "--vary" and its place.
  Combinations(std::vector<Variation> variations, Problems& problems);

  const std::vector<Variation>& variations() const { return variations_; }
  // Empty where a whole number of 64 bits is too small for it; then about(), rounded, still is one.
  std::optional<std::uint64_t> count() const;
  double about() const;
  // A value for each variation; the last of them changes from one combination to the next, the
  // first least often. Precondition: `i` < *count().
  std::vector<VariedValue> at(std::uint64_t i) const;
  // The plan's document with them.
  std::string document(std::string_view plan, const std::vector<VariedValue>& values) const;

 private:
  std::vector<Variation> variations_;
};

// More of them are begun only by who says how many.
inline constexpr std::uint64_t kMostUnasked = 10'000'000;

// How many are made before the first of them is taken: enough for each core that none waits long
// for another, few enough to be held.
inline std::uint64_t madeAhead() {
  constexpr std::uint64_t kOfEachCore = 32;
  return kOfEachCore * std::max(1U, std::thread::hardware_concurrency());
}

// `take(make(i))` for every i below `count`, in this order, while all cores are making; ends before
// the first that `take` refuses by giving false. `make` must bear being called at once from several
// threads. How many were taken.
template <class Make, class Take>
std::uint64_t inOrder(std::uint64_t count, const Make& make, const Take& take) {
  const std::uint64_t ahead = madeAhead();
  for (std::uint64_t begin = 0; begin < count; begin += ahead) {
    const auto size = static_cast<std::size_t>(std::min(ahead, count - begin));
    const auto made = forAll(size, [&](std::size_t i) { return make(begin + i); });
    for (std::size_t i = 0; i < size; ++i)
      if (!take(made[i])) return begin + i;
  }
  return count;
}

}  // namespace rigs
