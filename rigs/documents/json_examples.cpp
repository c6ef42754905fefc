// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_examples.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace rigs {
namespace {

struct Example {
  std::string_view key;
  QuantityKind kind;
  std::string_view text;
};

using enum QuantityKind;
// One key may stand for different things in different places; the range decides between them.
constexpr std::array kQuantities{Example{"altitude", Length, "120 m"},
                                 Example{"pressure", Pressure, "101.3 kPa"},
                                 Example{"room", Temperature, "20 °C"},
                                 Example{"water", Temperature, "12 °C"},
                                 Example{"water", Volume, "28 L"},
                                 Example{"wort", Volume, "23 L"},
                                 Example{"outdoors", Temperature, "10 °C"},
                                 Example{"temperature", Temperature, "66 °C"},
                                 Example{"temperature", Temperature, "20 °C"},
                                 Example{"humidity", Fraction, "50 %"},
                                 Example{"outdoor_humidity", Fraction, "80 %"},
                                 Example{"hold_humidity", Fraction, "70 %"},
                                 Example{"hood_captures", Fraction, "80 %"},
                                 Example{"volume", Volume, "30 m3"},
                                 Example{"draught", Velocity, "0.1 m/s"},
                                 Example{"mass", Mass, "5 kg"},
                                 Example{"moisture", Fraction, "4.5 %"},
                                 Example{"extract", Fraction, "72 %"},
                                 Example{"absorption", VolumePerMass, "0.8 L/kg"},
                                 Example{"displacement", VolumePerMass, "0.67 L/kg"},
                                 Example{"time", Time, "60 min"},
                                 Example{"boil", Time, "60 min"},
                                 Example{"mashing_in", Time, "5 min"},
                                 Example{"boil_within", Time, "45 min"},
                                 Example{"unplugged", Time, "8 h"},
                                 Example{"boil_off", FractionRate, "8 %/h"},
                                 Example{"headspace", Fraction, "10 %"},
                                 Example{"inner_diameter", Length, "355 mm"},
                                 Example{"height", Length, "400 mm"},
                                 Example{"wall", Length, "1 mm"},
                                 Example{"thickness", Length, "10 mm"},
                                 Example{"top_height", Length, "60 mm"},
                                 Example{"hose_length", Length, "1.5 m"},
                                 Example{"outer_diameter", Length, "16 mm"},
                                 Example{"length", Length, "5 m"},
                                 Example{"conductor", Area, "2.5 mm2"},
                                 Example{"loop_resistance", Resistance, "0.1 ohm"},
                                 Example{"power", Power, "3000 W"},
                                 Example{"power", Power, "30 W"},
                                 Example{"rated_voltage", Voltage, "230 V"},
                                 Example{"voltage", Voltage, "230 V"},
                                 Example{"current", Current, "16 A"},
                                 Example{"continuous", Fraction, "80 %"},
                                 Example{"boil_power", Fraction, "70 %"},
                                 Example{"R", ThermalInsulance, "R 1.8"},
                                 Example{"gap", Fraction, "1 %"},
                                 Example{"open", Fraction, "35 %"},
                                 Example{"heating", Fraction, "0 %"},
                                 Example{"emissivity", Fraction, "0.3"},
                                 Example{"outside", Fraction, "0.9"}};

struct JsonExample {
  std::string_view key, text;
  bool mayBeNone = false;
};
constexpr std::string_view kLayers = R"([{"material": "cork", "thickness": "10 mm"}])";
constexpr std::string_view kJacket = R"({"side": [{"material": "cork", "thickness": "10 mm"}]})";
constexpr std::string_view kCable = R"({"length": "5 m", "conductor": "2.5 mm2"})";
constexpr std::string_view kSupply = R"({"voltage": "230 V", "current": "16 A"})";
constexpr std::array kObjects{
    JsonExample{"format", R"({"name": "heat-ledger-plan", "version": 1})"},
    JsonExample{"batch", R"({"wort": "23 L", "boil": "60 min"})"},
    JsonExample{"grain", R"({"mass": "5 kg"})"},
    JsonExample{"mash", R"({"rests": [{"temperature": "66 C", "time": "60 min"}]})"},
    JsonExample{"unplugged", R"({"temperature": "66 C", "time": "90 min"})"},
    JsonExample{"place", R"({"altitude": "120 m", "room": "20 C", "water": "12 C"})"},
    JsonExample{"tariff", R"({"price": "0.30 EUR/kWh"})"},
    JsonExample{"goals", R"({"boil_within": "45 min", "boil_off": "8 %/h"})"},
    JsonExample{"jacket_to_compare", kJacket, true},
    JsonExample{"jacket", kJacket, true},
    JsonExample{"lid", R"({"material": "stainless steel", "open": {"boil": "35 %"}})", true},
    JsonExample{"open", R"({"strike": "0 %", "boil": "35 %"})"},
    JsonExample{"vessel", R"({"inner_diameter": "355 mm", "height": "400 mm"})"},
    JsonExample{"stands_on", R"({"kind": "legs"})"},
    JsonExample{"element",
                R"({"power": "3000 W", "rated_voltage": "230 V", "top_height": "60 mm"})"},
    JsonExample{"supply", kSupply},
    JsonExample{"second_supply", kSupply},
    JsonExample{"cable", kCable, true},
    JsonExample{"second_cable", kCable, true},
    JsonExample{"recirculation",
                R"({"hose_length": "1.5 m", "outer_diameter": "16 mm", "wall": "3 mm"})", true},
    JsonExample{"pump", R"({"power": "30 W"})"}};
constexpr std::array kLists{
    JsonExample{
        "rigs",
        R"([{"name": "A", "from": "40 L steel kettle"}, {"name": "B", "from": "60 L steel kettle"}])"},
    JsonExample{"rests", R"([{"temperature": "66 C", "time": "60 min"}])"},
    JsonExample{"elements",
                R"([{"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])"},
    JsonExample{
        "voltages",
        R"([{"nominal": "230 V", "lowest": "207 V", "highest": "253 V", "name": "at the meter", )"
        R"("clause": "1.1", "source": "the printed code", "status": "seen"}])"},
    JsonExample{"sizes", R"(["10 A", "16 A", "20 A"])"},
    JsonExample{"outlets", R"(["16 A"])"},
    JsonExample{"rows", R"([{"size": "2.5 mm2", "ampacity": "20 A"}])"},
    JsonExample{"side", kLayers},
    JsonExample{"base", kLayers},
    JsonExample{"lid", kLayers},
    JsonExample{"insulation", kLayers},
    JsonExample{"layers", kLayers}};

constexpr std::array kTexts{JsonExample{"region", "Island"},
                            JsonExample{"code", "Island wiring rules"},
                            JsonExample{"edition", "2020"},
                            JsonExample{"about", "in force since 2021"},
                            JsonExample{"clause", "2.4"},
                            JsonExample{"source", "the printed code"},
                            JsonExample{"part", "branch circuit"},
                            JsonExample{"outlet", "14-30"},
                            JsonExample{"rules", "my-region.json"},
                            JsonExample{"title", "Altbier"},
                            JsonExample{"co2_source", "the utility's report of 2025"},
                            JsonExample{"price", "0.28 EUR/kWh"}};

std::string_view among(const auto& examples, std::string_view key) {
  const auto at = std::find_if(examples.begin(), examples.end(),
                               [&](const JsonExample& one) { return one.key == key; });
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
  for (const Example& one : kQuantities)
    if (one.key == key && one.kind == kind && fits(kind, one.text, min, max))
      return std::string(one.text);
  const std::string_view usual = kindExample(kind);
  return fits(kind, usual, min, max) ? std::string(usual) : middle(kind, min, max);
}

std::string_view textExample(std::string_view key) {
  const std::string_view own = among(kTexts, key);
  return own.empty() ? "Old kettle" : own;
}

std::string_view objectExample(std::string_view key) { return among(kObjects, key); }
std::string_view listExample(std::string_view key) { return among(kLists, key); }

bool mayBeNone(std::string_view key) {
  return std::any_of(kObjects.begin(), kObjects.end(),
                     [&](const JsonExample& one) { return one.key == key && one.mayBeNone; });
}

}  // namespace rigs
