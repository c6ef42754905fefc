// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan_starts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/keys.hpp"

namespace rigs {
namespace {

constexpr std::string_view kFolder = "starts/";
constexpr std::string_view kEnding = ".json";

// "one-kettle" of "starts/one-kettle.json"; "" of other documents.
std::string_view startName(std::string_view document) {
  if (!document.starts_with(kFolder) || !document.ends_with(kEnding)) return {};
  document.remove_prefix(kFolder.size());
  document.remove_suffix(kEnding.size());
  return document;
}

// Units that a keyboard has, from small to large; `from` is the size in SI at which each begins.
struct UsUnit {
  QuantityKind kind;
  double from;
  std::string_view sample;
};
constexpr double kYard = 0.9144;       // m
constexpr double kPound = 0.45359237;  // kg
constexpr std::array kUsUnits{UsUnit{QuantityKind::Volume, 0.0, "1 gal"},
                              UsUnit{QuantityKind::Mass, 0.0, "1 oz"},
                              UsUnit{QuantityKind::Mass, kPound, "1 lb"},
                              UsUnit{QuantityKind::Temperature, 0.0, "1 F"},
                              UsUnit{QuantityKind::TemperatureDifference, 0.0, "1 F"},
                              UsUnit{QuantityKind::Length, 0.0, "1 in"},
                              UsUnit{QuantityKind::Length, kYard, "1 ft"},
                              UsUnit{QuantityKind::Velocity, 0.0, "1 ft/min"},
                              UsUnit{QuantityKind::Pressure, 0.0, "1 inHg"},
                              UsUnit{QuantityKind::VolumePerMass, 0.0, "1 qt/lb"},
                              UsUnit{QuantityKind::VolumeFlow, 0.0, "1 gal/min"}};

// Air is not measured in gallons.
std::string_view unitOfAir(QuantityKind kind) {
  if (kind == QuantityKind::Volume) return "1 ft3";
  return kind == QuantityKind::VolumeFlow ? "1 ft3/min" : std::string_view();
}

std::string_view usSample(const Key& key, double si) {
  if (key.place.starts_with("/place/air/")) {
    if (const auto ofAir = unitOfAir(key.quantity); !ofAir.empty()) return ofAir;
  }
  std::string_view sample;
  for (const UsUnit& unit : kUsUnits)
    if (unit.kind == key.quantity && std::abs(si) >= unit.from) sample = unit.sample;
  return sample;
}

// Nothing for what is no quantity, or is written alike everywhere.
std::optional<std::string> usText(const Key* key, const std::string& text) {
  if (!key || key->kind != ValueKind::Quantity) return std::nullopt;
  const detail::Reading read = detail::read(key->quantity, text);
  if (!read.si) return std::nullopt;
  const std::string_view sample = usSample(*key, *read.si);
  if (sample.empty()) return std::nullopt;
  FormatOptions digits;
  if (key->quantity == QuantityKind::Temperature) {
    // Beyond 99.9 F a tenth is a fourth digit.
    digits.significantDigits =
        std::abs(detail::numberLike(key->quantity, *read.si, sample)) < 100.0 ? 3 : 4;
  }
  return detail::printLike(key->quantity, *read.si, sample, digits);
}

}  // namespace

std::vector<std::string> planStartNames() {
  std::vector<std::string> names;
  for (const EmbeddedDocument& document : embeddedDocuments())
    if (const auto name = startName(document.name); !name.empty()) names.emplace_back(name);
  std::sort(names.begin(), names.end());
  return names;
}

std::optional<std::string> planStartText(std::string_view name) {
  for (const EmbeddedDocument& document : embeddedDocuments())
    if (!name.empty() && startName(document.name) == name) return std::string(document.text);
  return std::nullopt;
}

std::string inUsUnits(std::string_view document) {
  std::string written(document);
  for (const auto& [place, text] : textsOf(document))
    if (const auto us = usText(keyAt(place), text)) written = withText(written, place, *us);
  return written;
}

}  // namespace rigs
