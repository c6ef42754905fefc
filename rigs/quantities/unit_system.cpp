// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/quantities/unit_system.hpp"

#include <algorithm>
#include <cassert>

namespace rigs {
namespace {

constexpr std::array<std::string_view, 2> kTemperatures{"°C", "°F"};
constexpr std::array<std::string_view, 3> kVolumes{"L", "gal", "imp gal"};
constexpr std::array<std::string_view, 2> kMasses{"kg", "lb"};
constexpr std::array<std::string_view, 2> kLengths{"mm", "in"};
constexpr std::array<std::string_view, 2> kPowers{"W", "Btu/h"};
constexpr std::array<std::string_view, 3> kEnergies{"kWh", "MJ", "Btu"};
constexpr std::array<std::string_view, 4> kPressures{"kPa", "inHg", "hPa", "psi"};

constexpr std::array kAllGroups{UnitGroup::Temperature, UnitGroup::Volume, UnitGroup::Mass,
                                UnitGroup::Length,      UnitGroup::Power,  UnitGroup::Energy,
                                UnitGroup::Pressure};
static_assert(kAllGroups.size() == kUnitGroups);

std::size_t placeIn(UnitGroup group) { return static_cast<std::size_t>(group); }

// Electricity is bought in watts everywhere.
bool isSameInUs(UnitGroup group) { return group == UnitGroup::Power || group == UnitGroup::Energy; }

// Without blanks, degree signs and capitals: "IMPGAL" is "imp gal", "f" is "°F".
std::string folded(std::string_view text) {
  std::string made;
  for (const char c : text) {
    if ('A' <= c && c <= 'Z')
      made += static_cast<char>(c + 32);
    else if (c != ' ' && c != '\xC2' && c != '\xB0')
      made += c;
  }
  return made;
}

}  // namespace

std::span<const std::string_view> unitsOf(UnitGroup group) {
  switch (group) {
    case UnitGroup::Temperature:
      return kTemperatures;
    case UnitGroup::Volume:
      return kVolumes;
    case UnitGroup::Mass:
      return kMasses;
    case UnitGroup::Length:
      return kLengths;
    case UnitGroup::Power:
      return kPowers;
    case UnitGroup::Energy:
      return kEnergies;
    case UnitGroup::Pressure:
      return kPressures;
  }
  return {};
}

std::optional<UnitGroup> groupOf(QuantityKind kind) {
  switch (kind) {
    case QuantityKind::Temperature:
    case QuantityKind::TemperatureDifference:
    case QuantityKind::TemperatureRate:
      return UnitGroup::Temperature;
    case QuantityKind::Volume:
    case QuantityKind::VolumeFlow:
    case QuantityKind::VolumePerMass:
      return UnitGroup::Volume;
    case QuantityKind::Mass:
    case QuantityKind::MassFlow:
      return UnitGroup::Mass;
    case QuantityKind::Length:
    case QuantityKind::Area:
    case QuantityKind::Velocity:
      return UnitGroup::Length;
    case QuantityKind::Power:
      return UnitGroup::Power;
    case QuantityKind::Energy:
      return UnitGroup::Energy;
    case QuantityKind::Pressure:
      return UnitGroup::Pressure;
    default:
      return std::nullopt;
  }
}

bool UnitSystem::isMetric(QuantityKind kind) const {
  const auto group = groupOf(kind);
  return group ? choiceOf(*group) == 0 : !isUs_;
}

std::size_t UnitSystem::choiceOf(UnitGroup group) const {
  const std::uint8_t chosen = chosen_[placeIn(group)];
  if (chosen > 0) return chosen - 1U;
  return isUs_ && !isSameInUs(group) ? 1 : 0;
}

UnitSystem UnitSystem::with(UnitGroup group, std::size_t choice) const {
  assert(choice < unitsOf(group).size());
  UnitSystem other = *this;
  other.chosen_[placeIn(group)] = 0;
  if (other.choiceOf(group) != choice)
    other.chosen_[placeIn(group)] = static_cast<std::uint8_t>(choice + 1);
  return other;
}

std::string unitsText(UnitSystem units) {
  std::string text(units.base() == UnitSystem::SI ? "SI" : "US");
  for (const UnitGroup group : kAllGroups) {
    const std::size_t choice = units.choiceOf(group);
    if (choice == units.base().choiceOf(group)) continue;
    text += ',';
    text += unitsOf(group)[choice];
  }
  return text;
}

std::optional<UnitSystem> unitsFromText(std::string_view text) {
  if (text.ends_with(',')) return std::nullopt;
  UnitSystem units;
  const auto adopt = [&units](const std::string& word) {
    for (const UnitGroup group : kAllGroups) {
      const auto all = unitsOf(group);
      const auto found = std::find_if(all.begin(), all.end(),
                                      [&](std::string_view unit) { return folded(unit) == word; });
      if (found == all.end()) continue;
      units = units.with(group, static_cast<std::size_t>(found - all.begin()));
      return true;
    }
    return false;
  };
  for (bool isFirst = true; isFirst || !text.empty(); isFirst = false) {
    const std::size_t end = std::min(text.find(','), text.size());
    const std::string word = folded(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
    if (isFirst && (word == "si" || word == "us"))
      units = word == "si" ? UnitSystem::SI : UnitSystem::UsCustomary;
    else if (!adopt(word))
      return std::nullopt;
  }
  return units;
}

}  // namespace rigs
