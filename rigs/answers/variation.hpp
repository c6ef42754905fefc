// SPDX-License-Identifier: GPL-3.0-or-later
// One key of a plan that takes several values in turn, as a person types it:
//
//   rigs/b/element/power=1.8 kW..5.5 kW in 20
//   batch/boil=45 min, 60 min, 90 min
//   place/room=10 C..30 C by 5 C; 35 C
//
// Before the first "=" stands a place of the plan: the keys on the way to it, with "/" between. An
// entry of a list is told by its number from 0, as problems of a plan tell it; a rig by its letter
// too; "*" stands for all of them, which then have the same value.
//
// Values stand between semicolons, or between commas with a space behind them: "5,5 kW" is one
// value, whose comma is decimal. A range has both its ends: "in 20" are twenty values evenly apart,
// "by 5 C" so many as it takes, up to the other end where a step meets it. Every value has the unit
// that the plan would need there.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/keys.hpp"

namespace rigs {

// As it would be written into the plan, and as a number: coherent SI units of a quantity or share,
// itself of a number without a unit; none of words and times of day.
struct VariedValue {
  std::string text;
  std::optional<double> number;

  bool operator==(const VariedValue&) const = default;
};

class Variation {
 public:
  const std::string& place() const { return place_; }  // "rigs/b/element/power"
  const Key& key() const { return *key_; }
  const std::vector<std::string>& pointers() const { return pointers_; }  // in the document
  std::uint64_t count() const;                                            // 1 or more
  // Precondition: `i` < count(). The same bits every time.
  VariedValue at(std::uint64_t i) const;
  // What to write into the document for it.
  std::vector<Placed> placed(const VariedValue& value) const;

 private:
  friend class VariationReader;
  // A value alone, or a range of them.
  struct Part {
    std::string first, last;  // as typed
    double low = 0.0, high = 0.0;
    std::optional<double> step;  // of "by"
    std::uint64_t count = 1;
  };
  VariedValue inRange(const Part& part, std::uint64_t i) const;

  std::string place_;
  const Key* key_ = nullptr;
  std::vector<std::string> pointers_;
  std::vector<Part> parts_;
};

// The plan that is varied.
struct Varied {
  std::string_view document;              // of a plan without errors
  std::filesystem::path folder;           // where relative references of rigs are looked up
  const std::vector<std::size_t>& slots;  // of its rigs
};
// Nothing, with every problem, where what was typed cannot be right whatever else is varied: a
// place that no plan has, a value that is none there, a range without an end. Each problem's place
// is "--vary" and the place as typed.
std::optional<Variation> readVariation(std::string_view typed, const Varied& varied,
                                       Problems& problems);

}  // namespace rigs
