// SPDX-License-Identifier: GPL-3.0-or-later
// In which units a person reads: one of two systems, and for some quantities a unit of choice.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "rigs/quantities/quantity_kinds.hpp"

namespace rigs {

// What is chosen together: gallons of wort are gallons an hour, too.
enum class UnitGroup { Temperature, Volume, Mass, Length, Power, Energy, Pressure };
inline constexpr std::size_t kUnitGroups = 7;

class UnitSystem {
 public:
  static const UnitSystem SI, UsCustomary;

  constexpr UnitSystem() = default;
  constexpr bool operator==(const UnitSystem&) const = default;

  // Whether the kind is read in the metric system's usual units.
  bool isMetric(QuantityKind kind) const;
  // The system without its choices, by which paper is cut and what has no unit of choice is read.
  constexpr UnitSystem base() const { return UnitSystem(isUs_); }
  bool hasChoices() const { return *this != base(); }

  // By its place in unitsOf(group). The one that the system has anyway is no choice.
  UnitSystem with(UnitGroup group, std::size_t choice) const;
  std::size_t choiceOf(UnitGroup group) const;

 private:
  explicit constexpr UnitSystem(bool isUs) : isUs_(isUs) {}

  bool isUs_ = false;
  std::array<std::uint8_t, kUnitGroups> chosen_{};  // 0 where nothing is, else its place and one
};
inline constexpr UnitSystem UnitSystem::SI{false};
inline constexpr UnitSystem UnitSystem::UsCustomary{true};

// What may be chosen, the metric system's own first, then that of the US.
std::span<const std::string_view> unitsOf(UnitGroup group);
// Nothing where there is no choice for the kind: it follows the system.
std::optional<UnitGroup> groupOf(QuantityKind kind);

// "SI", "US", "SI,°F,gal" and back; capital letters or not, "F" for "°F". Nothing for what is none.
std::string unitsText(UnitSystem units);
std::optional<UnitSystem> unitsFromText(std::string_view text);

}  // namespace rigs
