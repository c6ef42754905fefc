// SPDX-License-Identifier: GPL-3.0-or-later
// Element, circuit and the cable between them.
#include "physics/element.hpp"
#include "rigs/plan_parts.hpp"

namespace rigs {
namespace {

using namespace physics;

// The nearest name of a circuit, for a person who mistyped it.
void reportUnknownCircuit(const JsonCursor& at, const std::string& name) {
  std::vector<std::string_view> known;
  for (const Circuit& circuit : catalogue().circuits) known.push_back(circuit.name);
  const std::string_view near = nearestWord(name, known);
  at.error("from", quotedText(name) + " is no circuit of the catalogue; write " + choice(known) +
                       ", or \"voltage\" and \"current\"" +
                       (near.empty() ? "" : "; perhaps \"" + std::string(near) + "\" was meant"));
}

std::optional<SupplyRead> readCircuit(const JsonCursor& at) {
  constexpr Range<Voltage> kVoltages{volts(12.0), volts(690.0)};
  constexpr Range<Current> kCurrents{amperes(1.0), amperes(400.0)};
  constexpr Range<double> kShares{0.5, 1.0};
  at.warnAboutKeysExcept({"from", "voltage", "current", "continuous", "note"});
  SupplyRead read;
  if (!at.has("from")) {
    const auto voltage = at.quantity("voltage", kVoltages);
    const auto current = at.quantity("current", kCurrents);
    const auto share = at.optionalQuantity("continuous", 1.0, kShares);
    if (!voltage || !current || !share) return std::nullopt;
    read.supply = {.nominal = *voltage, .rating = *current, .cableLoop = ohms(0.0)};
    read.continuousShare = *share;
    return read;
  }
  const auto name = at.text("from", kLongestName);
  const Circuit* circuit = name ? catalogue().circuit(*name) : nullptr;
  if (name && !circuit) reportUnknownCircuit(at, *name);
  if (!circuit) return std::nullopt;
  const auto voltage = at.optionalQuantity("voltage", circuit->voltage, kVoltages);
  const auto current = at.optionalQuantity("current", circuit->current, kCurrents);
  const auto share = at.optionalQuantity("continuous", circuit->continuousShare, kShares);
  if (!voltage || !current || !share) return std::nullopt;
  read.supply = {.nominal = *voltage, .rating = *current, .cableLoop = ohms(0.0)};
  read.continuousShare = *share;
  if (*voltage == circuit->voltage && *current == circuit->current) read.circuit = circuit->name;
  return read;
}

std::optional<Resistance> readCable(const JsonCursor& at) {
  at.warnAboutKeysExcept({"length", "conductor", "temperature", "loop_resistance", "note"});
  if (at.has("loop_resistance")) {
    for (const std::string_view key : {"length", "conductor", "temperature"}) {
      if (!at.has(key)) continue;
      at.error(key, "the cable's resistance is stated already as \"loop_resistance\"; keep one");
      return std::nullopt;
    }
    return at.quantity<Resistance>("loop_resistance", {ohms(0.0), ohms(10.0)});
  }
  const auto length = at.quantity<Length>("length", {metres(0.0), metres(200.0)});
  // From 22 AWG to the thickest a house has.
  const auto area = at.quantity<Area>("conductor", {squareMetres(0.3e-6), squareMetres(150e-6)});
  const auto temperature = at.optionalQuantity<Temperature>("temperature", celsius(40.0),
                                                            {celsius(-20.0), celsius(105.0)});
  if (!length || !area || !temperature) return std::nullopt;
  return copperLoop(*length, *area, *temperature);
}

}  // namespace

std::optional<Element> readElement(const Layers& at) {
  at.warnAboutKeysExcept({"power", "rated_voltage", "top_height", "note"});
  const auto power = at.with("power").quantity<Power>("power", {watts(50.0), watts(60e3)});
  const auto voltage =
      at.with("rated_voltage").quantity<Voltage>("rated_voltage", {volts(12.0), volts(690.0)});
  const auto top = at.with("top_height").quantity<Length>("top_height", {metres(0.0), metres(1.5)});
  if (!power || !voltage || !top) return std::nullopt;
  return Element{.rating = *power, .ratedAt = *voltage, .topHeight = *top};
}

std::optional<SupplyRead> readSupply(const Layers& rig) {
  const auto object = rig.with("supply").object("supply");
  auto read = object ? readCircuit(*object) : std::nullopt;
  const JsonCursor& withCable = rig.with("cable");
  if (!withCable.has("cable") || isNone(withCable, "cable")) return read;
  const auto cable = withCable.object("cable");
  const auto loop = cable ? readCable(*cable) : std::nullopt;
  if (!read || !loop) return std::nullopt;
  read->supply.cableLoop = *loop;
  return read;
}

}  // namespace rigs
