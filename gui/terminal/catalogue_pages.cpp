// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/catalogue_pages.hpp"

#include <fmt/format.h>

#include "gui/terminal/rig_table.hpp"
#include "gui/terminal/wording.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/tariff_reader.hpp"

namespace gui {
namespace {

using rigs::Catalogue;
using rigs::format;

// As a sentence.
std::string full(const std::string& text) {
  return sentence(text.empty() || text.back() == '.' ? text : text + '.');
}

template <class Q>
std::string number(const Q& q, UnitSystem units) {
  return rigs::formatValue(q, units);
}

template <class Q>
Cell cell(const Q& q, UnitSystem units) {
  return {number(q, units), rigs::numberIn(q, units)};
}

template <class Q>
std::string head(const char* name, UnitSystem units) {
  return fmt::format("{}, {}", name, rigs::unitLabel<Q>(units));
}

Page materials(const Catalogue& all, UnitSystem units) {
  Page page;
  page.title = "Materials";
  page.notes = {fmt::format("Conductivity in {}, density in {}, heat capacity in {}.",
                            rigs::unitLabel<physics::ThermalConductivity>(units),
                            rigs::unitLabel<physics::MassDensity>(units),
                            rigs::unitLabel<physics::SpecificHeat>(units))};
  Table table;
  table.name = "materials";
  table.columns = {"conducts", "density", "heat"};
  for (const rigs::Material& material : all.materials) {
    table.rows.push_back({material.name,
                          "",
                          {cell(material.conductivity, units), cell(material.density, units),
                           cell(material.specificHeat, units)},
                          {}});
  }
  page.show(std::move(table));
  page.heading("Outsides of jackets");
  for (const rigs::Finish& finish : all.outsides) {
    page.say(fmt::format("{}: emissivity {}. {}", finish.word,
                         rigs::formatNumber(finish.emissivity), full(finish.source)));
  }
  page.heading("Sources");
  for (const rigs::Material& material : all.materials) {
    std::string text =
        fmt::format("{} ({}): {}", material.name, material.status, full(material.source));
    if (!material.note.empty()) text += ' ' + full(material.note);
    for (const rigs::Finish& finish : material.finishes) {
      if (!finish.source.empty() && finish.source != material.source) {
        text += fmt::format(" {}: {}", finish.word.empty() ? "Emissivity" : sentence(finish.word),
                            full(finish.source));
      }
    }
    page.say(text);
  }
  return page;
}

Page supplies(const Catalogue& all, UnitSystem units) {
  Page page;
  page.title = "Supplies";
  page.notes = {
      "Nominal voltages; what an outlet really gives may differ by several percent.",
      "Long use: where a rule grants a circuit less for use of hours; what counts as long "
      "differs by region. No figure is not a permission."};
  Table table;
  table.name = "supplies";
  table.columns = {head<physics::Voltage>("voltage", units),
                   head<physics::Current>("current", units),
                   head<physics::Current>("long use", units)};
  for (const rigs::Circuit& circuit : all.circuits) {
    table.rows.push_back(
        {circuit.name,
         "",
         {cell(circuit.voltage, units), cell(circuit.current, units),
          circuit.continuousShare < 1.0
              ? cell(physics::Current(circuit.continuousShare * circuit.current), units)
              : noFigure()},
         {}});
  }
  page.show(std::move(table));
  page.heading("Sources");
  for (const rigs::Circuit& circuit : all.circuits) {
    std::string text = fmt::format("{}: {}", circuit.name, full(circuit.source));
    if (!circuit.note.empty()) text += ' ' + full(circuit.note);
    page.say(text);
  }
  return page;
}

Page genericRigs(const Catalogue& all) {
  Page page;
  page.title = "Rigs";
  page.notes = {
      "A plan's rig can begin with \"from\" and one of these names, and change what is "
      "different."};
  for (const rigs::GenericRig& rig : all.rigs) {
    page.heading(rig.name);
    page.say(full(rig.about));
    page.say(full(rig.source));
  }
  return page;
}

Page tariffs() {
  Page page;
  page.title = "Tariffs";
  page.notes = {
      "Dated examples for a plan's \"tariff\": {\"from\": NAME}; your own bill decides. Fixed "
      "charges "
      "are left out: a brew day does not change them.",
      "Not modelled: seasons, of which each tariff is one, and holidays; a plan says \"day\": "
      "\"weekend\" where one is priced so."};
  for (const rigs::BundledTariff& bundled : rigs::bundledTariffs()) {
    const rigs::Tariff& tariff = bundled.tariff;
    page.heading(tariff.name);
    page.say(wholeTariffText(tariff));
    page.say(full(bundled.about));
    std::string source =
        fmt::format("As of {}. {} ({}).", tariff.dated, tariff.source, tariff.status);
    if (tariff.co2PerKilowattHour) {
      source +=
          fmt::format(" {} of carbon dioxide per kWh: {}.",
                      rigs::format(*tariff.co2PerKilowattHour, UnitSystem::SI), tariff.co2Source);
    }
    page.say(source);
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
  std::string text;
  for (const rigs::EmbeddedDocument& document : rigs::embeddedDocuments()) {
    if (!document.name.starts_with(fmt::format("catalogue/{}", subject)) &&
        !document.name.starts_with(fmt::format("{}/", subject)))
      continue;
    text += text.empty() ? "[\n" : ",\n";
    text += document.text;
  }
  return text.empty() ? "[]\n" : text + "]\n";
}

}  // namespace gui
