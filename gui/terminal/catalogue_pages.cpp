// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/catalogue_pages.hpp"

#include <utility>
#include <vector>

#include "gui/telling/tariff.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/tariff_reader.hpp"

namespace gui {
namespace {

using rigs::Bundled;
using rigs::Catalogue;
using rigs::Told;
using rigs::UnitSystem;
using rigs::Verbatim;
using telling::Cell;
using telling::Row;
using telling::Table;

Bundled bundled(const std::string& english) { return {"Catalogue", english}; }

// With the full stop that a note or a source in the data may lack.
Told full(rigs::Argument text, bool hasStop) {
  return hasStop ? Told::just(std::move(text)) : Told(TOLD("Terminal", "%1."), std::move(text));
}
bool endsInStop(const std::string& text) { return !text.empty() && text.back() == '.'; }
// A citation, which is the same in every language.
Told source(const std::string& text) { return full(Verbatim{text}, endsInStop(text)); }
Told note(const std::string& text) {
  return text.empty() ? Told() : full(bundled(text), endsInStop(text));
}

// The digits a value needs, not those of a column: conductivities span four powers of ten.
template <class Q>
Cell figure(const Q& q, UnitSystem units) {
  return rigs::Argument(rigs::Number{rigs::numberIn(q, units), {}});
}

template <class Q>
Verbatim unitOf(UnitSystem units) {
  return {std::string(rigs::unitLabel<Q>(units))};
}

Table tableOf(std::string name, std::vector<Told> columns) {
  Table table;
  table.name = std::move(name);
  table.columns = std::move(columns);
  table.ofRigs = false;
  return table;
}

Told sourcesOf(const rigs::Material& material) {
  std::vector<Told> texts{Told(TOLD("Terminal", "%1 (%2): %3"), bundled(material.name),
                               bundled(material.status), source(material.source)),
                          note(material.note)};
  for (const rigs::Finish& finish : material.finishes) {
    if (finish.source.empty() || finish.source == material.source) continue;
    if (finish.word.empty())
      texts.push_back(Told(TOLD("Terminal", "Emissivity: %1"), source(finish.source)));
    else
      texts.push_back(
          Told(TOLD("Terminal", "%1: %2"), bundled(finish.word), source(finish.source)));
  }
  return rigs::sentences(std::move(texts));
}

Page materials(const Catalogue& all, UnitSystem units) {
  Page page;
  page.title = Told(TOLD("Terminal", "Materials"));
  page.opening = {Told(TOLD("Terminal", "Conductivity in %1, density in %2, heat capacity in %3."),
                       unitOf<physics::ThermalConductivity>(units),
                       unitOf<physics::MassDensity>(units), unitOf<physics::SpecificHeat>(units))};
  Table table =
      tableOf("materials", {Told(TOLD("Terminal", "conducts")), Told(TOLD("Terminal", "density")),
                            Told(TOLD("Terminal", "heat"))});
  for (const rigs::Material& material : all.materials)
    table.rows.push_back({Told::just(bundled(material.name)),
                          {figure(material.conductivity, units), figure(material.density, units),
                           figure(material.specificHeat, units)}});
  page.answer.show(std::move(table));
  page.answer.heading(Told(TOLD("Terminal", "Outsides of jackets")));
  for (const rigs::Finish& finish : all.outsides)
    page.answer.say(Told(TOLD("Terminal", "%1: emissivity %2. %3"), bundled(finish.word),
                         rigs::Number{finish.emissivity}, source(finish.source)));
  page.answer.heading(Told(TOLD("Terminal", "Sources")));
  for (const rigs::Material& material : all.materials) page.answer.say(sourcesOf(material));
  return page;
}

Cell longUse(const rigs::Circuit& circuit, UnitSystem units) {
  if (!(circuit.continuousShare < 1.0)) return std::nullopt;
  return figure(physics::Current(circuit.continuousShare * circuit.current), units);
}

Page supplies(const Catalogue& all, UnitSystem units) {
  Page page;
  page.title = Told(TOLD("Terminal", "Supplies"));
  page.opening = {
      Told(TOLD("Terminal",
                "Nominal voltages; what an outlet really gives may differ by several percent.")),
      Told(TOLD("Terminal",
                "Long use: where a rule grants a circuit less for use of hours; what counts as "
                "long differs by region. No figure is not a permission."))};
  Table table = tableOf("supplies",
                        {Told(TOLD("Terminal", "voltage, %1"), unitOf<physics::Voltage>(units)),
                         Told(TOLD("Terminal", "current, %1"), unitOf<physics::Current>(units)),
                         Told(TOLD("Terminal", "long use, %1"), unitOf<physics::Current>(units))});
  for (const rigs::Circuit& circuit : all.circuits)
    table.rows.push_back({Told::just(bundled(circuit.name)),
                          {figure(circuit.voltage, units), figure(circuit.current, units),
                           longUse(circuit, units)}});
  page.answer.show(std::move(table));
  page.answer.heading(Told(TOLD("Terminal", "Sources")));
  for (const rigs::Circuit& circuit : all.circuits)
    page.answer.say(rigs::sentences(
        {Told(TOLD("Terminal", "%1: %2"), bundled(circuit.name), source(circuit.source)),
         note(circuit.note)}));
  return page;
}

Page genericRigs(const Catalogue& all) {
  Page page;
  page.title = Told(TOLD("Terminal", "Rigs"));
  page.opening = {Told(TOLD("Terminal",
                            "A plan's rig can begin with \"from\" and one of these names, and "
                            "change what is different."))};
  for (const rigs::GenericRig& rig : all.rigs) {
    page.answer.heading(Told::just(bundled(rig.name)));
    page.answer.say(note(rig.about));
    page.answer.say(source(rig.source));
  }
  return page;
}

Told tariffOrigin(const rigs::Tariff& tariff) {
  std::vector<Told> texts{Told(TOLD("Terminal", "As of %1. %2 (%3)."), Verbatim{tariff.dated},
                               Verbatim{tariff.source}, bundled(tariff.status))};
  if (tariff.co2PerKilowattHour)
    texts.push_back(Told(TOLD("Terminal", "%1 of carbon dioxide per kWh: %2."),
                         rigs::amount(*tariff.co2PerKilowattHour), Verbatim{tariff.co2Source}));
  return rigs::sentences(std::move(texts));
}

Page tariffs() {
  Page page;
  page.title = Told(TOLD("Terminal", "Tariffs"));
  page.opening = {
      Told(TOLD("Terminal",
                "Dated examples for a plan's \"tariff\": {\"from\": NAME}; your own bill decides. "
                "Fixed charges are left out: a brew day does not change them.")),
      Told(TOLD("Terminal",
                "Not modelled: seasons, of which each tariff is one, and holidays; a plan says "
                "\"day\": \"weekend\" where one is priced so."))};
  for (const rigs::BundledTariff& one : rigs::bundledTariffs()) {
    page.answer.heading(Told::just(bundled(one.tariff.name)));
    page.answer.say(telling::wholeTariffText(one.tariff));
    page.answer.say(note(one.about));
    page.answer.say(tariffOrigin(one.tariff));
  }
  return page;
}

}  // namespace

std::optional<Page> cataloguePage(std::string_view subject, UnitSystem units) {
  if (subject == "materials") return materials(rigs::catalogue(), units);
  if (subject == "supplies") return supplies(rigs::catalogue(), units);
  if (subject == "rigs") return genericRigs(rigs::catalogue());
  if (subject == "tariffs") return tariffs();
  return std::nullopt;
}

std::string catalogueJson(std::string_view subject) {
  const std::string folder(subject);
  std::string text;
  for (const rigs::EmbeddedDocument& document : rigs::embeddedDocuments()) {
    if (!document.name.starts_with("catalogue/" + folder) &&
        !document.name.starts_with(folder + '/'))
      continue;
    text += text.empty() ? "[\n" : ",\n";
    text += document.text;
  }
  return text.empty() ? "[]\n" : text + "]\n";
}

}  // namespace gui
