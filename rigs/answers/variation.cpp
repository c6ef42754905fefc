// SPDX-License-Identifier: GPL-3.0-or-later
// Its values; how it is read is in variation_reader.cpp.
#include "rigs/answers/variation.hpp"

#include <cassert>

#include "rigs/answers/key_numbers.hpp"

namespace rigs {

std::uint64_t Variation::count() const {
  std::uint64_t all = 0;
  for (const Part& part : parts_) all += part.count;
  return all;
}

VariedValue Variation::at(std::uint64_t i) const {
  assert(i < count());
  auto part = parts_.begin();
  for (; i >= part->count; ++part) i -= part->count;
  return inRange(*part, i);
}

VariedValue Variation::inRange(const Part& part, std::uint64_t i) const {
  std::string text;
  if (i == 0) {
    text = part.first;
  } else if (i == part.count - 1 && !part.last.empty()) {
    text = part.last;
  } else {
    const double along = static_cast<double>(i);
    const double number =
        part.step ? part.low + along * *part.step
                  : part.low + (part.high - part.low) * along / static_cast<double>(part.count - 1);
    text = writtenNumber(*key_, number, part.first);
  }
  // What the plan will have, to the last bit.
  const bool counts = hasNumbers(*key_) && key_->kind != ValueKind::Clock;
  return {text, counts ? readNumber(*key_, text).number : std::nullopt};
}

std::vector<Placed> Variation::placed(const VariedValue& value) const {
  const bool bare = key_->kind == ValueKind::Number || key_->kind == ValueKind::Integer;
  std::vector<Placed> all;
  for (const std::string& pointer : pointers_)
    all.push_back(
        {pointer,
         bare ? formatNumber(*value.number, {.significantDigits = 15, .decimals = {}}) : value.text,
         !bare});
  return all;
}

}  // namespace rigs
