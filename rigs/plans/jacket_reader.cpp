// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/jacket_reader.hpp"

#include <algorithm>

#include "physics/walls.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_names.hpp"

namespace rigs {
namespace {

using namespace physics;

// Foam, fabric, paint, rubber, wood: standard emissivity tables, from memory.
constexpr double kUsualSkin = 0.9;
constexpr Range<Length> kThicknesses{millimetres(0.1), millimetres(300.0)};

struct LayerRead {
  Layer layer;
  double emissivity = kUsualSkin;
  LayerText words;
};

std::optional<LayerRead> readLayer(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/jacket/side/*"));
  const bool stated = at.has("R");
  LayerRead read;
  const Material* material = nullptr;
  if (!stated || at.has("material")) {
    material = readMaterial(at, "material", Use::Jacket);
    if (material) {
      read.emissivity = material->finishes.front().emissivity;
      read.words.material = material->name;
    }
  }
  const auto thickness = stated
                             ? at.optionalQuantity<Length>("thickness", metres(0.0), kThicknesses)
                             : at.quantity<Length>("thickness", kThicknesses);
  if (stated) {
    const auto insulance = at.quantity<ThermalInsulance>(
        "R", {squareMetreKelvinsPerWatt(0.001), squareMetreKelvinsPerWatt(20.0)});
    if (!insulance || !thickness || (at.has("material") && !material)) return std::nullopt;
    read.layer = {.thickness = *thickness, .flatInsulance = *insulance};
    read.words.insulance = *insulance;
    read.words.written = at.text("R", kLongestName).value_or("");
    return read;
  }
  if (!material || !thickness) return std::nullopt;
  read.layer = layerOf(*thickness, material->conductivity);
  read.words.thickness = *thickness;
  read.words.written = at.text("thickness", kLongestName).value_or("");
  return read;
}

// `skin` takes the outermost layer's material.
std::optional<JacketFace> readFace(const JsonCursor& at, std::string_view key, std::string& skin) {
  if (!at.has(key)) return JacketFace{};
  const auto layers = at.objects(key, {0, 10});
  if (!layers) return std::nullopt;
  if (layers->empty()) {
    at.error(key, advised(Told(TOLD("Problem", "this list of layers is empty")),
                          Told(TOLD("Problem", "leave %1 out, or write e.g. %2"),
                               Quoted{std::string(key)},
                               Verbatim{R"([{"material": "cork", "thickness": "10 mm"}])"})));
    return std::nullopt;
  }
  JacketFace face;
  bool good = true;
  for (const JsonCursor& layer : *layers) {
    const auto read = readLayer(layer);
    good = good && read;
    if (!read) continue;
    face.layers.push_back(read->layer);
    face.emissivity = read->emissivity;
    face.words.push_back(read->words);
    if (!read->words.material.empty()) skin = read->words.material;
  }
  return good ? std::optional(face) : std::nullopt;
}

struct Outside {
  std::optional<double> emissivity;  // empty: as the layers are
  std::string words;
};

std::optional<Outside> readOutside(const JsonCursor& at) {
  if (!at.has("outside")) return Outside{};
  const auto word = at.isText("outside") ? at.text("outside", kLongestName) : std::nullopt;
  const bool number = !word || (!word->empty() && '0' <= word->front() && word->front() <= '9');
  if (number) {
    const auto emissivity = at.quantity<double>("outside", {0.01, 1.0});
    if (!emissivity) return std::nullopt;
    return Outside{.emissivity = emissivity, .words = "emissivity " + formatNumber(*emissivity)};
  }
  if (const Finish* finish = catalogue().outside(*word))
    return Outside{.emissivity = finish->emissivity, .words = finish->word};
  std::vector<std::string_view> known;
  for (const Finish& finish : catalogue().outsides) known.push_back(finish.word);
  at.error(
      "outside",
      perhapsMeant(
          withExample(
              advised(Told(TOLD("Problem", "%1 is no known outside of a jacket"), Quoted{*word}),
                      Told(TOLD("Problem", "write %1, or an emissivity"), choice(known))),
              Verbatim{"0.9"}),
          nearestWord(*word, known)));
  return std::nullopt;
}

}  // namespace

JacketText Jacket::words() const {
  JacketText all;
  const auto add = [&all](std::string_view where, const JacketFace& face) {
    if (!face.layers.empty()) all.faces.push_back({std::string(where), face.words});
  };
  add("side", side);
  add("lid", lid);
  add("base", base);
  return all;
}

std::optional<Jacket> readJacket(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/jacket"));
  if (!at.has("side") && !at.has("base") && !at.has("lid")) {
    at.error(withExample(
        advised(Told(TOLD("Problem", "this jacket is around nothing")),
                Told(TOLD("Problem", "write layers for \"side\", \"base\" or \"lid\""))),
        Verbatim{R"("side": [{"material": "cork", "thickness": "10 mm"}])"}));
    return std::nullopt;
  }
  Jacket jacket;
  // The side's outside names the jacket's.
  auto base = readFace(at, "base", jacket.skin);
  auto lid = readFace(at, "lid", jacket.skin);
  auto side = readFace(at, "side", jacket.skin);
  const auto outside = readOutside(at);
  if (!side || !base || !lid || !outside) return std::nullopt;
  jacket.side = std::move(*side);
  jacket.base = std::move(*base);
  jacket.lid = std::move(*lid);
  if (outside->emissivity) {
    for (JacketFace* face : {&jacket.side, &jacket.base, &jacket.lid})
      face->emissivity = *outside->emissivity;
    jacket.skin = outside->words;
  }
  return jacket;
}

std::optional<Hose> readHose(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/recirculation"));
  const auto length = at.quantity<Length>("hose_length", {metres(0.0), metres(20.0)});
  const auto diameter =
      at.quantity<Length>("outer_diameter", {millimetres(4.0), millimetres(100.0)});
  const auto wall = at.quantity<Length>("wall", {millimetres(0.3), millimetres(20.0)});
  const Material* material = at.has("material") ? readMaterial(at, "material", Use::Hose)
                                                : catalogue().material("silicone");
  std::string ignored;
  const auto insulation = readFace(at, "insulation", ignored);
  const auto above =
      at.has("returns")
          ? at.oneOf<bool>("returns", {{"above the wort", true}, {"below the wort", false}})
          : std::optional(true);
  const auto flow =
      at.quantityIfGiven<VolumeFlow>("flow", {litresPerHour(12.0), litresPerHour(6000.0)});
  const auto heat = at.optionalQuantity<Power>("pump_heat", watts(0.0), {watts(0.0), watts(500.0)});
  if (!length || !diameter || !wall || !material || !insulation || !above || !heat ||
      (at.has("flow") && !flow))
    return std::nullopt;
  const Length inner = 0.5 * *diameter - *wall;
  if (inner < millimetres(0.5)) {
    at.error("wall", Told(TOLD("Problem",
                               "two walls of %1 leave no room for wort in a hose of %2 outer "
                               "diameter"),
                          amount(*wall), amount(*diameter)));
    return std::nullopt;
  }
  std::vector<Layer> layers{layerOf(*wall, material->conductivity)};
  layers.insert(layers.end(), insulation->layers.begin(), insulation->layers.end());
  const Length outer = outerRadius(inner, layers);
  return Hose{.length = *length,
              .outerDiameter = 2.0 * outer,
              .wall = cylindricalInsulance(inner, layers) * static_cast<double>(outer / inner),
              .emissivity = insulation->layers.empty() ? material->finishes.front().emissivity
                                                       : insulation->emissivity,
              .returnsAbove = *above,
              .pumpHeat = *heat,
              .flow = flow.value_or(litresPerHour(0.0))};
}

}  // namespace rigs
