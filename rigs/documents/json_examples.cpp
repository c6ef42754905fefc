// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_examples.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace rigs {
namespace {

struct QuantityOfKey {
  std::string_view key;
  QuantityKind kind;
  std::string_view text;
};
// One key may stand for different things in different places; the range decides between them.
constexpr std::array kQuantities{QuantityOfKey{"voltage", QuantityKind::Voltage, "230 V"},
                                 QuantityOfKey{"current", QuantityKind::Current, "16 A"},
                                 QuantityOfKey{"size", QuantityKind::Area, "2.5 mm2"},
                                 QuantityOfKey{"insulation", QuantityKind::Temperature, "75 °C"},
                                 QuantityOfKey{"ambient", QuantityKind::Temperature, "30 °C"}};

struct TextOfKey {
  std::string_view key, text;
};
constexpr std::array kLists{
    TextOfKey{
        "voltages",
        R"([{"nominal": "230 V", "lowest": "207 V", "highest": "253 V", "name": "at the meter", )"
        R"("clause": "1.1", "source": "the printed code", "status": "seen"}])"},
    TextOfKey{"sizes", R"(["10 A", "16 A", "20 A"])"}, TextOfKey{"outlets", R"(["16 A"])"},
    TextOfKey{"rows", R"([{"size": "2.5 mm2", "ampacity": "20 A"}])"}};

constexpr std::array kTexts{
    TextOfKey{"region", "Island"},       TextOfKey{"code", "Island wiring rules"},
    TextOfKey{"edition", "2020"},        TextOfKey{"about", "in force since 2021"},
    TextOfKey{"clause", "2.4"},          TextOfKey{"source", "the printed code"},
    TextOfKey{"part", "branch circuit"}, TextOfKey{"outlet", "14-30"}};

std::string_view among(const auto& examples, std::string_view key) {
  const auto at = std::find_if(examples.begin(), examples.end(),
                               [&](const TextOfKey& one) { return one.key == key; });
  return at == examples.end() ? std::string_view() : at->text;
}

bool fits(QuantityKind kind, std::string_view text, double min, double max) {
  const auto si = detail::read(kind, text).si;
  return si && min <= *si && *si <= max;
}

// A middle of a range that looks like a person's: of one significant digit where that fits.
std::string middle(QuantityKind kind, double min, double max) {
  const double at = std::isfinite(min) && std::isfinite(max) ? 0.5 * (min + max)
                    : std::isfinite(min)                     ? min
                                                             : max;
  for (const int digits : {1, 2, 3}) {
    const std::string text =
        detail::print(kind, at, UnitSystem::SI, {.significantDigits = digits, .decimals = {}});
    if (fits(kind, text, min, max)) return text;
  }
  return detail::printExactly(kind, at);
}

}  // namespace

std::string quantityExample(std::string_view key, QuantityKind kind, double min, double max) {
  for (const QuantityOfKey& one : kQuantities)
    if (one.key == key && one.kind == kind && fits(kind, one.text, min, max))
      return std::string(one.text);
  const std::string_view usual = kindExample(kind);
  return fits(kind, usual, min, max) ? std::string(usual) : middle(kind, min, max);
}

std::string quantityExample(const std::optional<Example>& own, std::string_view key,
                            QuantityKind kind, double min, double max) {
  if (own && fits(kind, own->text, min, max)) return std::string(own->text);
  return quantityExample(key, kind, min, max);
}

std::string_view textExample(std::string_view key) {
  const std::string_view own = among(kTexts, key);
  return own.empty() ? "Old kettle" : own;
}

std::string_view listExample(std::string_view key) { return among(kLists, key); }

}  // namespace rigs
