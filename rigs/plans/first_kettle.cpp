// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/first_kettle.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/kettle_size.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"

namespace rigs {
namespace {

using physics::Length;
using physics::Volume;

constexpr std::string_view kDocument = "kettle/first-kettle.json";
constexpr std::string_view kIndustrialPlug = "industrial plug";  // a region of the catalogue

// Assumptions: common practice, no source.
const Volume kUsualVolume = physics::litres(40.0);
constexpr double kShareBrewed = 0.55;                        // of the kettle's volume
constexpr double kGrainPerLitre = 0.2;                       // kg, of an ordinary beer
constexpr double kShareOfCircuit = 0.8;                      // that an element is bought for
const physics::Power kLargestElement = physics::watts(6e3);  // that is common in a home
const Length kElementTop = physics::metres(0.060);           // of a screwed-in element
constexpr double kElementShare = 0.15;                       // of the height, in low kettles

struct FigurePlace {
  KettleFigure figure;
  std::string_view pointer;
};
constexpr std::array kPlaces{FigurePlace{KettleFigure::Diameter, "/rigs/0/vessel/inner_diameter"},
                             FigurePlace{KettleFigure::Height, "/rigs/0/vessel/height"},
                             FigurePlace{KettleFigure::Power, "/rigs/0/element/power"},
                             FigurePlace{KettleFigure::Voltage, "/rigs/0/element/rated_voltage"},
                             FigurePlace{KettleFigure::Altitude, "/place/altitude"},
                             FigurePlace{KettleFigure::Room, "/place/room"},
                             FigurePlace{KettleFigure::Batch, "/batch/wort"}};
constexpr std::string_view kVolumePlace = "/rigs/0/vessel/inner_diameter";

std::string textOf(const FirstKettle& kettle, KettleFigure figure) {
  const auto at = kettle.typed.find(figure);
  return at == kettle.typed.end() ? std::string() : at->second;
}

KettleSize sizeStated(const FirstKettle& kettle, Problems& problems) {
  KettleSize size = kettleOf(kUsualVolume);
  if (!kettle.bySize) {
    const std::string volume = textOf(kettle, KettleFigure::Volume);
    if (volume.empty()) return size;
    const auto read = readKettleVolume(volume, kVolumePlace, problems);
    return read ? kettleOf(*read) : size;
  }
  const auto diameter = parseQuantity<Length>(textOf(kettle, KettleFigure::Diameter));
  if (diameter && *diameter > physics::metres(0.0)) size.diameter = size.height = *diameter;
  const auto height = parseQuantity<Length>(textOf(kettle, KettleFigure::Height));
  if (height && *height > physics::metres(0.0)) size.height = *height;
  return size;
}

// To half a litre below 10 L, whole litres above.
Volume usualBatch(Volume kettle) {
  const double litres = kShareBrewed * physics::inLitres(kettle);
  return physics::litres(
      std::max(0.5, litres < 10.0 ? std::round(2.0 * litres) / 2.0 : std::round(litres)));
}

physics::Power usualPower(const Circuit& circuit) {
  const double watts =
      kShareOfCircuit * physics::inVolts(circuit.voltage) * physics::inAmperes(circuit.current);
  return std::min(physics::watts(std::floor(watts / 100.0) * 100.0), kLargestElement);
}

const Circuit& circuitTaken(const FirstKettle& kettle, std::string_view region) {
  const auto offered = circuitsToOffer(region);
  assert(!offered.empty());
  const auto at = std::find_if(offered.begin(), offered.end(),
                               [&](const Circuit* one) { return one->name == kettle.circuit; });
  return at == offered.end() ? *offered.front() : **at;
}

// A bundled example of what energy costs there; "" where a circuit is another country's, or none.
std::string_view usualTariff(std::string_view region, const Circuit& circuit) {
  if (region == "United States") return "United States average 2024";
  if (region == "Europe" && circuit.region != "Switzerland") return "European Union average 2025";
  return {};
}

// With everything assumed, in SI.
std::string assumedDocument(const KettleSize& size, const Circuit& circuit, std::string_view region,
                            std::string_view name) {
  std::string_view base;
  for (const EmbeddedDocument& document : embeddedDocuments())
    if (document.name == kDocument) base = document.text;
  const Volume batch = usualBatch(size.volume());
  const Length top = std::min(kElementTop, kElementShare * size.height);
  const auto text = [](std::string_view place, std::string value) {
    return Placed{std::string(place), std::move(value)};
  };
  std::vector<Placed> values{
      text("/title", std::string(name)),
      text("/rigs/0/name", std::string(name)),
      text("/rigs/0/vessel/inner_diameter", inMillimetresText(size.diameter)),
      text("/rigs/0/vessel/height", inMillimetresText(size.height)),
      text("/rigs/0/element/power", format(usualPower(circuit), UnitSystem::SI)),
      text("/rigs/0/element/rated_voltage", format(circuit.voltage, UnitSystem::SI)),
      text("/rigs/0/element/top_height",
           inMillimetresText(physics::millimetres(std::round(physics::inMillimetres(top))))),
      text("/rigs/0/supply/from", circuit.name),
      text("/batch/wort", format(batch, UnitSystem::SI)),
      text("/batch/grain/mass",
           format(physics::kilograms(kGrainPerLitre * physics::inLitres(batch)), UnitSystem::SI,
                  {.significantDigits = 2, .decimals = {}})),
      text("/place/region", std::string(region))};
  if (const std::string_view tariff = usualTariff(region, circuit); !tariff.empty())
    values.push_back(text("/tariff/from", std::string(tariff)));
  return withAll(base, values);
}

// Grain goes with the batch that is stated.
void placeGrain(std::vector<Placed>& values, const std::string& batch, UnitSystem units) {
  const auto wort = parseQuantity<Volume>(batch);
  if (!wort || *wort <= physics::litres(0.0)) return;
  values.push_back(
      {"/batch/grain/mass", format(physics::kilograms(kGrainPerLitre * physics::inLitres(*wort)),
                                   units, {.significantDigits = 2, .decimals = {}})});
}

std::vector<Placed> statedFigures(const FirstKettle& kettle, UnitSystem units) {
  std::vector<Placed> values;
  for (const FigurePlace& place : kPlaces) {
    const bool ofSize =
        place.figure == KettleFigure::Diameter || place.figure == KettleFigure::Height;
    const std::string text = textOf(kettle, place.figure);
    if (text.empty() || (ofSize && !kettle.bySize)) continue;
    values.push_back({std::string(place.pointer), text});
    if (place.figure == KettleFigure::Batch) placeGrain(values, text, units);
  }
  return values;
}

std::string withoutWhatIsNot(std::string document, const FirstKettle& kettle) {
  if (!kettle.lid) document = without(document, "/rigs/0/lid");
  if (kettle.jacket)
    document = withValue(document, "/rigs/0/jacket", valueAt(document, "/jacket_to_compare"));
  return document;
}

bool isHousehold(const Circuit& circuit, const CircuitRules& rules) {
  return std::any_of(rules.outlets.begin(), rules.outlets.end(), [&](const Outlet& outlet) {
    const double volts = physics::inVolts(outlet.voltage) / physics::inVolts(circuit.voltage);
    return outlet.household && outlet.current == circuit.current && volts > 0.95 && volts < 1.2;
  });
}

}  // namespace

StartedKettle startWith(const FirstKettle& kettle, std::string_view name, UnitSystem units) {
  StartedKettle started;
  const auto regions = regionsToOffer();
  started.region = std::find(regions.begin(), regions.end(), kettle.region) == regions.end()
                       ? std::string(kUsualRegion)
                       : kettle.region;
  const Circuit& circuit = circuitTaken(kettle, started.region);
  started.circuit = circuit.name;
  const KettleSize size = sizeStated(kettle, started.problems);
  std::string document = assumedDocument(size, circuit, started.region, name);
  if (units.base() == UnitSystem::UsCustomary) document = inUsUnits(document);
  for (const FigurePlace& place : kPlaces)
    started.assumed[place.figure] = textAt(document, place.pointer).value_or("");
  started.assumed[KettleFigure::Volume] =
      formatLike(kUsualVolume, units.isMetric(QuantityKind::Volume) ? "1 L" : "1 gal");
  document = withoutWhatIsNot(withAll(document, statedFigures(kettle, units)), kettle);
  auto plan = readPlan(document, ".", started.problems);
  if (plan && !hasErrors(started.problems))
    started.plan = std::make_shared<const Plan>(std::move(*plan));
  started.document = std::move(document);
  return started;
}

Told firstKettleName() { return Told(TOLD("Start", "My kettle")); }

std::optional<KettleFigure> kettleFigureAt(std::string_view place, bool bySize) {
  if (place == "/rigs/0/vessel")  // what does not fit into it
    return KettleFigure::Batch;
  for (const FigurePlace& one : kPlaces) {
    if (one.pointer != place) continue;
    const bool ofSize = one.figure == KettleFigure::Diameter || one.figure == KettleFigure::Height;
    return ofSize && !bySize ? KettleFigure::Volume : one.figure;
  }
  return std::nullopt;
}

std::vector<std::string> regionsToOffer() {
  std::vector<std::string> all;
  for (const CircuitRules& rules : bundledRules())
    if (!circuitsToOffer(rules.region).empty()) all.push_back(rules.region);
  return all;
}

std::vector<const Circuit*> circuitsToOffer(std::string_view region) {
  std::vector<const Circuit*> all;
  const CircuitRules* rules = rulesOf(region);
  if (!rules) return all;
  for (const std::string& of : rules->circuitsOf)
    for (const Circuit& circuit : catalogue().circuits)
      if (circuit.region == of) all.push_back(&circuit);
  return all;
}

Told circuitCalled(const Circuit& circuit, std::string_view region) {
  const CircuitRules* rules = rulesOf(region);
  const Amount volts = amount(circuit.voltage);
  const Amount amperes = amount(circuit.current);
  if (circuit.region == kIndustrialPlug)
    return Told(TOLD("Start", "%1, %2 industrial socket"), volts, amperes);
  if (!rules || rules->circuitsOf.empty() || circuit.region != rules->circuitsOf.front())
    return Told::just(Bundled{"Catalogue", circuit.name});
  if (isHousehold(circuit, *rules))
    return Told(TOLD("Start", "%1, %2 wall socket"), volts, amperes);
  return Told(TOLD("Start", "%1, %2 circuit"), volts, amperes);
}

}  // namespace rigs
