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

struct Scenario {
  std::string_view name;
  Template<0> title, about;
};
constexpr std::string_view kTheExample;

// In the order in which they are offered.
const std::array kScenarios{
    Scenario{kTheExample, TOLD("Start", "After the move"),
             TOLD("Start",
                  "A 230 V kettle in a flat with 120 V and 208 V: the old element, a new one, a "
                  "jacket, or the laundry's circuit?")},
    Scenario{"one-kettle", TOLD("Start", "One kettle"),
             TOLD("Start",
                  "A bare kettle of 45 L with 2.2 kW: how long it takes, and what it boils off.")},
    Scenario{"night-unplugged", TOLD("Start", "A night unplugged"),
             TOLD("Start",
                  "A dark lager mashed in the evening and left until seven: how warm is it then, "
                  "with a jacket and without?")},
    Scenario{"120-or-240-volts", TOLD("Start", "120 V or 240 V"),
             TOLD("Start",
                  "The same kettle on a wall outlet and on a circuit of 240 V: how much sooner "
                  "does it boil, and at what price?")},
    Scenario{
        "two-voltages", TOLD("Start", "240 V at home, 208 V in the hall"),
        TOLD("Start", "What an element written for 240 V is worth on 208 V, and one made for it.")},
    Scenario{
        "two-circuits", TOLD("Start", "Two elements on two circuits"),
        TOLD("Start", "Twice 2 kW on two circuits of 16 A, against one element on one of them.")},
    Scenario{"large-batch", TOLD("Start", "A large batch"),
             TOLD("Start",
                  "48 L of stout for a feast: what time, current and vapour does the size ask "
                  "for?")},
    Scenario{"mountain-batch", TOLD("Start", "A large batch at altitude"),
             TOLD("Start",
                  "45 L of wheat beer at 2240 m, on 220 V: is an element made for that voltage "
                  "worth it?")},
    Scenario{"hardly-boils", TOLD("Start", "A kettle that hardly boils"),
             TOLD("Start",
                  "1.3 kW under an open pot, where nobody can say whether it rolls; half a lid "
                  "settles it.")}};

}  // namespace

std::vector<std::string> planStartsToOffer() {
  std::vector<std::string> names;
  for (const Scenario& one : kScenarios) names.emplace_back(one.name);
  return names;
}

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

std::optional<PlanStartTold> planStartTold(std::string_view name) {
  for (const Scenario& one : kScenarios)
    if (one.name == name) return PlanStartTold{Told(one.title), Told(one.about)};
  return std::nullopt;
}

std::string inUsUnits(std::string_view document) {
  std::string written(document);
  for (const auto& [place, text] : textsOf(document))
    if (const auto us = usText(keyAt(place), text)) written = withText(written, place, *us);
  return written;
}

}  // namespace rigs
