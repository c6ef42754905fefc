// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/supply_reader.hpp"

#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_names.hpp"
#include "rigs/plans/ranges.hpp"

namespace rigs {
namespace {

using namespace physics;

// The nearest name of a circuit, for a person who mistyped it.
void reportUnknownCircuit(const JsonCursor& at, const std::string& name) {
  std::vector<std::string_view> known;
  for (const Circuit& circuit : catalogue().circuits) known.push_back(circuit.name);
  at.error(
      "from",
      perhapsMeant(
          advised(Told(TOLD("Problem", "%1 is no circuit of the catalogue"), Quoted{name}),
                  Told(TOLD("Problem", "write %1, or \"voltage\" and \"current\""), choice(known))),
          nearestWord(name, known)));
}

// What is known of the outlet and of what else hangs on the circuit.
bool readDetails(const JsonCursor& at, SupplyRead& read) {
  const auto outlet = at.optionalText("outlet", "", kLongestName);
  const auto feeds = at.optionalOneOf<Feeds>(
      "feeds", Feeds::NotStated,
      {{"one outlet", Feeds::OneOutlet}, {"several outlets", Feeds::SeveralOutlets}});
  const auto other = at.quantityIfGiven<Power>("other_load", {watts(0.0), watts(20e3)});
  if (!outlet || !feeds || (at.has("other_load") && !other)) return false;
  read.details.outlet = *outlet;
  read.details.feeds = *feeds;
  read.details.otherLoad = other;
  return true;
}

std::optional<SupplyRead> readCircuit(const JsonCursor& at) {
  constexpr Range<Voltage> kVoltages = ranges::kVoltage;
  constexpr Range<Current> kCurrents = ranges::kCircuit;
  constexpr Range<double> kShares{0.5, 1.0};
  at.warnAboutKeysExcept(keysOf("/rigs/*/supply"));
  SupplyRead read;
  if (!at.has("from")) {
    const auto voltage = at.quantity("voltage", kVoltages);
    const auto current = at.quantity("current", kCurrents);
    const auto share = at.optionalQuantity("continuous", 1.0, kShares);
    if (!voltage || !current || !share) return std::nullopt;
    read.supply = {.nominal = *voltage, .rating = *current, .cableLoop = ohms(0.0)};
    read.continuousShare = *share;
    return readDetails(at, read) ? std::optional(read) : std::nullopt;
  }
  const auto name = at.text("from", kLongestName);
  const Circuit* circuit = name ? catalogue().circuit(*name) : nullptr;
  if (name && !circuit) reportUnknownCircuit(at, *name);
  if (!circuit) return std::nullopt;
  const auto voltage = at.optionalQuantity("voltage", circuit->voltage, kVoltages);
  const auto current = at.optionalQuantity("current", circuit->current, kCurrents);
  // What the catalogue says of its region's rules is for them to say, or for the plan's own.
  const auto share = at.optionalQuantity("continuous", 1.0, kShares);
  if (!voltage || !current || !share) return std::nullopt;
  read.supply = {.nominal = *voltage, .rating = *current, .cableLoop = ohms(0.0)};
  read.continuousShare = *share;
  if (*voltage == circuit->voltage && *current == circuit->current) read.circuit = circuit->name;
  read.details.circuitRegion = circuit->region;
  read.details.fuse = circuit->fuse;
  return readDetails(at, read) ? std::optional(read) : std::nullopt;
}

struct CableRead {
  Resistance loop;
  std::optional<CableAsked> asked;  // where its use is stated
  std::optional<CableRun> run;      // where it is not a mere resistance
};

// What a table of conductors asks, beyond length and size.
std::optional<CableAsked> readUse(const JsonCursor& at, Length length, Area area) {
  const auto use = at.oneOf<CableUse>("use", {{"building wire", CableUse::BuildingWire},
                                              {"cord", CableUse::Cord},
                                              {"extension set", CableUse::ExtensionSet}});
  constexpr Range<Temperature> kInsulations{celsius(40.0), celsius(200.0)};
  constexpr Range<Temperature> kAmbients{celsius(-20.0), celsius(90.0)};
  const auto insulation = at.quantityIfGiven<Temperature>("insulation", kInsulations);
  const auto ambient = at.quantityIfGiven<Temperature>("ambient", kAmbients);
  const auto loaded = at.optionalInteger("loaded_conductors", 2, {2, 40});
  const auto layers = at.optionalInteger("layers_on_drum", 0, {0, 10});
  const auto method = at.optionalText("method", "", 10);
  const bool wrong = (at.has("insulation") && !insulation) || (at.has("ambient") && !ambient);
  if (wrong || !use || !loaded || !layers || !method) return std::nullopt;
  return CableAsked{.use = *use,
                    .area = area,
                    .length = length,
                    .insulation = insulation,
                    .ambient = ambient,
                    .loaded = *loaded,
                    .layersOnDrum = *layers,
                    .method = *method};
}

std::optional<CableRead> readCable(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/cable"));
  if (at.has("loop_resistance")) {
    for (const std::string_view key : {"length", "conductor", "temperature"}) {
      if (!at.has(key)) continue;
      at.error(key, advised(Told(TOLD("Problem",
                                      "the cable's resistance is stated already as "
                                      "\"loop_resistance\"")),
                            Told(TOLD("Problem", "keep one"))));
      return std::nullopt;
    }
    const auto stated = at.quantity<Resistance>("loop_resistance", {ohms(0.0), ohms(10.0)});
    if (!stated) return std::nullopt;
    return CableRead{.loop = *stated, .asked = {}, .run = {}};
  }
  // Nothing shorter reaches from a wall to a kettle; no cable at all is "none".
  const auto length = at.quantity<Length>("length", {metres(0.1), metres(200.0)});
  // From 22 AWG to the thickest a house has.
  const auto area = at.quantity<Area>("conductor", {squareMetres(0.3e-6), squareMetres(150e-6)});
  const auto temperature = at.optionalQuantity<Temperature>("temperature", celsius(40.0),
                                                            {celsius(-20.0), celsius(105.0)});
  if (!length || !area || !temperature) return std::nullopt;
  CableRead read{.loop = copperLoop(*length, *area, *temperature),
                 .asked = {},
                 .run = CableRun{.area = *area, .length = *length}};
  if (at.has("use")) {
    read.asked = readUse(at, *length, *area);
    if (!read.asked) return std::nullopt;
  }
  return read;
}

// The size of its heated part, where stated: both or none, in one place. False where it is wrong.
bool readRod(const Layers& at, bool isOutside, std::optional<HeatedRod>& rod) {
  const JsonCursor& sized = at.withAny({"diameter", "heated_length"});
  if (!sized.has("diameter") && !sized.has("heated_length")) return true;
  const auto diameter = sized.quantity<Length>("diameter", ranges::kRodDiameter);
  const auto length = sized.quantity<Length>("heated_length", ranges::kHeatedLength);
  if (!diameter || !length) return false;
  if (isOutside) {
    sized.error(
        "heated_length",
        advised(Told(TOLD("Problem", "a heater outside the vessel has no skin in the wort")),
                Told(TOLD("Problem", "take out its size, or state how high its top is"))));
    return false;
  }
  rod = HeatedRod{.diameter = *diameter, .length = *length};
  return true;
}

std::optional<Element> readElement(const Layers& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/element"));
  const auto power = at.with("power").quantity<Power>("power", {watts(50.0), watts(60e3)});
  const auto voltage =
      at.with("rated_voltage").quantity<Voltage>("rated_voltage", ranges::kVoltage);
  const auto top = at.with("top_height").quantity<Length>("top_height", {metres(0.0), metres(1.5)});
  std::optional<HeatedRod> rod;
  const bool sized = readRod(at, top && *top <= metres(0.0), rod);
  if (!power || !voltage || !top || !sized) return std::nullopt;
  return Element{.rating = *power, .ratedAt = *voltage, .topHeight = *top, .rod = rod};
}

}  // namespace

std::optional<ElementsRead> readElements(const Layers& rig) {
  const JsonCursor& at = rig.withAny({"elements", "element"});
  if (!at.has("elements")) {
    const auto one = rig.within("element");
    const auto element = one ? readElement(*one) : std::nullopt;
    if (!element) return std::nullopt;
    return ElementsRead{.elements = {*element}};
  }
  if (at.has("element")) {
    at.error("elements",
             advised(Told(TOLD("Problem", "both \"element\" and \"elements\" are stated")),
                     Told(TOLD("Problem", "keep one of them"))));
    return std::nullopt;
  }
  enum class Wired { Parallel, Series, TwoCircuits };
  const auto wired = at.oneOf<Wired>("wired", {{"parallel", Wired::Parallel},
                                               {"series", Wired::Series},
                                               {"two circuits", Wired::TwoCircuits}});
  const auto entries = at.objects("elements", {2, 6});
  // What is no object was told of and left out.
  if (!wired || !entries || entries->size() < 2) return std::nullopt;
  ElementsRead read;
  read.wiring = *wired == Wired::Series ? Wiring::Series : Wiring::Parallel;
  read.onTwoCircuits = *wired == Wired::TwoCircuits;
  for (const JsonCursor& entry : *entries) {
    const auto element = readElement(Layers({entry}));
    if (!element) return std::nullopt;
    read.elements.push_back(*element);
  }
  if (read.onTwoCircuits && read.elements.size() != 2) {
    at.error("elements", Told(TOLD("Problem", "two circuits feed two elements, not %1"),
                              Count{static_cast<long long>(read.elements.size())}));
    return std::nullopt;
  }
  return read;
}

std::optional<SupplyRead> readSupply(const Layers& rig, std::string_view supply,
                                     std::string_view cable) {
  const auto object = rig.with(supply).object(supply);
  auto read = object ? readCircuit(*object) : std::nullopt;
  const JsonCursor& withCable = rig.with(cable);
  if (!withCable.has(cable) || isNone(withCable, cable)) return read;
  const auto stated = withCable.object(cable);
  const auto wire = stated ? readCable(*stated) : std::nullopt;
  if (!read || !wire) return std::nullopt;
  read->supply.cableLoop = wire->loop;
  read->details.cable = wire->asked;
  read->details.run = wire->run;
  return read;
}

}  // namespace rigs
