// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/catalogue.hpp"

#include <algorithm>
#include <cassert>

#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/json_parse.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr Range<double> kEmissivities{0.01, 1.0};

std::string textOf(const JsonCursor& at, std::string_view key) {
  return at.text(key, kLongestText).value_or("");
}

std::vector<Use> usesOf(const JsonCursor& at) {
  std::vector<Use> uses;
  for (const JsonCursor& word : at.arrayIfGiven("use", {1, 5})) {
    const std::string name = word.asText(kLongestText).value_or("");
    uses.push_back(name == "vessel"   ? Use::Vessel
                   : name == "lid"    ? Use::Lid
                   : name == "jacket" ? Use::Jacket
                   : name == "stand"  ? Use::Stand
                                      : Use::Hose);
  }
  return uses;
}

Finish finishFrom(const JsonCursor& at, std::string_view wordKey) {
  return {.word = textOf(at, wordKey),
          .emissivity = at.quantity<double>("emissivity", kEmissivities).value_or(0.9),
          .source = textOf(at, "source")};
}

Material materialFrom(const JsonCursor& at) {
  Material m{
      .name = textOf(at, "name"),
      .uses = usesOf(at),
      .conductivity = at.quantity<ThermalConductivity>(
                            "conductivity", {wattsPerMetreKelvin(0.01), wattsPerMetreKelvin(500.0)})
                          .value_or(wattsPerMetreKelvin(1.0)),
      .density = at.quantity<MassDensity>(
                       "density", {kilogramsPerCubicMetre(1.0), kilogramsPerCubicMetre(2e4)})
                     .value_or(kilogramsPerCubicMetre(1.0)),
      .specificHeat = at.quantity<SpecificHeat>("specific_heat", {joulesPerKilogramKelvin(100.0),
                                                                  joulesPerKilogramKelvin(5000.0)})
                          .value_or(joulesPerKilogramKelvin(1000.0)),
      .finishes = {},
      .source = textOf(at, "source"),
      .status = textOf(at, "status"),
      .note = at.optionalText("note", "", kLongestText).value_or("")};
  for (const JsonCursor& finish : at.objectsIfGiven("finishes", {1, 10}))
    m.finishes.push_back(finishFrom(finish, "finish"));
  if (m.finishes.empty())
    m.finishes.push_back(
        {.word = "",
         .emissivity = at.quantity<double>("emissivity", kEmissivities).value_or(0.9),
         .source = textOf(at, "emissivity_source")});
  return m;
}

Circuit circuitFrom(const JsonCursor& at) {
  return {
      .name = textOf(at, "name"),
      .region = textOf(at, "region"),
      .voltage =
          at.quantity<Voltage>("voltage", {volts(12.0), volts(690.0)}).value_or(volts(230.0)),
      .current =
          at.quantity<Current>("current", {amperes(1.0), amperes(400.0)}).value_or(amperes(10.0)),
      .continuousShare = at.optionalQuantity<double>("continuous", 1.0, {0.5, 1.0}).value_or(1.0),
      .fuse = at.optionalText("fuse", "", kLongestText).value_or(""),
      .source = textOf(at, "source"),
      .note = at.optionalText("note", "", kLongestText).value_or("")};
}

// The catalogue is ours and tested: a problem in it is a mistake of ours.
Catalogue readCatalogue() {
  Catalogue all;
  Problems problems;
  for (const EmbeddedDocument& embedded : embeddedDocuments()) {
    if (!embedded.name.starts_with("catalogue/")) continue;
    const auto document = parseJson(embedded.text, problems);
    if (!document) continue;
    const JsonCursor at(*document, problems);
    if (embedded.name.starts_with("catalogue/rigs/")) {
      all.rigs.push_back({.name = textOf(at, "name"),
                          .about = textOf(at, "about"),
                          .source = textOf(at, "source"),
                          .document = embedded.text});
      continue;
    }
    for (const JsonCursor& m : at.objectsIfGiven("materials", {}))
      all.materials.push_back(materialFrom(m));
    for (const JsonCursor& o : at.objectsIfGiven("outsides", {}))
      all.outsides.push_back(finishFrom(o, "name"));
    for (const JsonCursor& s : at.objectsIfGiven("supplies", {}))
      all.circuits.push_back(circuitFrom(s));
  }
  assert(problems.empty());
  return all;
}

template <class Entry>
const Entry* named(const std::vector<Entry>& entries, std::string_view name) {
  const auto at = std::find_if(entries.begin(), entries.end(),
                               [name](const Entry& entry) { return entry.name == name; });
  return at == entries.end() ? nullptr : &*at;
}

const Finish* worded(const std::vector<Finish>& finishes, std::string_view word) {
  const auto at = std::find_if(finishes.begin(), finishes.end(),
                               [word](const Finish& finish) { return finish.word == word; });
  return at == finishes.end() ? nullptr : &*at;
}

}  // namespace

bool Material::isFor(Use use) const {
  return std::find(uses.begin(), uses.end(), use) != uses.end();
}
const Finish* Material::finish(std::string_view word) const { return worded(finishes, word); }

const Material* Catalogue::material(std::string_view name) const { return named(materials, name); }
const Finish* Catalogue::outside(std::string_view word) const { return worded(outsides, word); }
const Circuit* Catalogue::circuit(std::string_view name) const { return named(circuits, name); }
const GenericRig* Catalogue::rig(std::string_view name) const { return named(rigs, name); }

std::vector<std::string_view> Catalogue::namesFor(Use use) const {
  std::vector<std::string_view> names;
  for (const Material& m : materials)
    if (m.isFor(use)) names.push_back(m.name);
  return names;
}

const Catalogue& catalogue() {
  static const Catalogue all = readCatalogue();
  return all;
}

}  // namespace rigs
