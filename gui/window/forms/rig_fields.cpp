// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/rig_fields.hpp"

#include <string>

#include "gui/window/forms/circuit_fields.hpp"
#include "gui/window/forms/layer_fields.hpp"
#include "rigs/plans/catalogue.hpp"

namespace gui {
namespace {

using namespace physics;

template <rigs::Use use>
std::vector<std::string> materialsFor(std::string_view) {
  std::vector<std::string> names;
  for (const std::string_view name : rigs::catalogue().namesFor(use)) names.emplace_back(name);
  return names;
}

std::vector<std::string> lidMaterials(std::string_view) {
  auto names = materialsFor<rigs::Use::Lid>({});
  names.insert(names.begin(), "none");
  return names;
}

std::vector<std::string> finishesOf(std::string_view material) {
  std::vector<std::string> words;
  if (const rigs::Material* metal = rigs::catalogue().material(material)) {
    for (const rigs::Finish& finish : metal->finishes)
      if (!finish.word.empty()) words.push_back(finish.word);
  }
  return words;
}

std::vector<std::string> stands(std::string_view) { return {"table", "thick floor", "legs"}; }

FieldSection vesselSection() {
  return {PlanFields::tr("Kettle"),
          {{.place = "/vessel/inner_diameter",
            .label = PlanFields::tr("Inner diameter"),
            .meaning = PlanFields::tr("80 to 2000 mm."),
            .conversion = converted<Length>},
           {.place = "/vessel/height",
            .label = PlanFields::tr("Inner height"),
            .meaning = PlanFields::tr("From the base to the rim, inside; 50 to 2500 mm."),
            .conversion = converted<Length>},
           {.place = "/vessel/wall",
            .label = PlanFields::tr("Wall"),
            .meaning = PlanFields::tr("Thickness of the metal, 0.2 to 20 mm."),
            .conversion = converted<Length>},
           {.place = "/vessel/material",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Material"),
            .meaning = PlanFields::tr("What the kettle is made of."),
            .choices = materialsFor<rigs::Use::Vessel>},
           {.place = "/vessel/finish",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Finish"),
            .meaning =
                PlanFields::tr("How the metal looks, and so how it radiates. Stands instead of an "
                               "emissivity."),
            .choices = finishesOf,
            .replaces = {"/vessel/emissivity"}},
           {.place = "/vessel/emissivity",
            .label = PlanFields::tr("or emissivity"),
            .meaning =
                PlanFields::tr("Share of a black body's radiation, 0.01 to 1. Stands instead of a "
                               "finish."),
            .replaces = {"/vessel/finish"}},
           {.place = "/vessel/mass",
            .label = PlanFields::tr("Mass"),
            .meaning = PlanFields::tr(
                "Of the shell without lid, 0.1 to 1000 kg; from size and material if not "
                "stated. State it again when you change the size."),
            .usual = PlanFields::tr("from the size"),
            .conversion = converted<Mass>}}};
}

FieldSection elementSection() {
  return {PlanFields::tr("Element"),
          {{.place = "/element/power",
            .label = PlanFields::tr("Power"),
            .meaning = PlanFields::tr("As on the name plate, 50 W to 60 kW.")},
           {.place = "/element/rated_voltage",
            .label = PlanFields::tr("Rated voltage"),
            .meaning = PlanFields::tr(
                "As on the name plate, 12 to 690 V. On another voltage the power follows "
                "its square.")},
           {.place = "/element/top_height",
            .label = PlanFields::tr("Height of its top"),
            .meaning = PlanFields::tr(
                "Highest heated point above the inside of the base, 0 to 1.5 m; 0 mm for "
                "a heater outside. It must stay covered."),
            .conversion = converted<Length>},
           {.place = "/boil_power",
            .label = PlanFields::tr("Power in the boil"),
            .meaning = PlanFields::tr("Share of the element's power used in the boil, 5 to 100 %."),
            .usual = QStringLiteral("100 %")}}};
}

FieldSection lidSection() {
  FieldSection section{
      PlanFields::tr("Lid"),
      {{.place = "/lid/material",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Material"),
        .meaning = PlanFields::tr("What the lid is made of, or none: open all day."),
        .usual = PlanFields::tr("no lid"),
        .choices = lidMaterials},
       {.place = "/lid/finish",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Finish"),
        .meaning = PlanFields::tr("How it looks, and so how it radiates. Stands instead of an "
                                  "emissivity."),
        .choices = finishesOf,
        .replaces = {"/lid/emissivity"}},
       {.place = "/lid/emissivity",
        .label = PlanFields::tr("or emissivity"),
        .meaning = PlanFields::tr("0.01 to 1. Stands instead of a finish."),
        .replaces = {"/lid/finish"}},
       {.place = "/lid/thickness",
        .label = PlanFields::tr("Thickness"),
        .meaning = PlanFields::tr("0.2 to 100 mm; as thin as the wall if not stated. It "
                                  "matters for wood and plastic."),
        .usual = PlanFields::tr("as the wall"),
        .conversion = converted<Length>}}};
  const QString open = PlanFields::tr(
      "Share of the mouth that is open in this stage, 0 to 100 %. Never shut "
      "the lid on a boil.");
  section.fields.push_back({.place = "/lid/open/strike",
                            .label = PlanFields::tr("Open at strike"),
                            .meaning = open,
                            .usual = QStringLiteral("0 %")});
  section.fields.push_back({.place = "/lid/open/mash",
                            .label = PlanFields::tr("Open at mash"),
                            .meaning = open,
                            .usual = QStringLiteral("0 %")});
  section.fields.push_back({.place = "/lid/open/heating",
                            .label = PlanFields::tr("Open at heating"),
                            .meaning = open,
                            .usual = QStringLiteral("0 %")});
  section.fields.push_back({.place = "/lid/open/boil",
                            .label = PlanFields::tr("Open at the boil"),
                            .meaning = open,
                            .usual = QStringLiteral("100 %")});
  return section;
}

FieldSection standSection() {
  return {PlanFields::tr("Stands on"),
          {{.place = "/stands_on/kind",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Kind"),
            .meaning = PlanFields::tr("What is under the kettle."),
            .usual = QStringLiteral("table"),
            .choices = stands,
            .companions = {{"/stands_on/material", "plywood"}, {"/stands_on/thickness", "25 mm"}}},
           {.place = "/stands_on/material",
            .kind = FieldKind::Choice,
            .label = PlanFields::tr("Material"),
            .meaning = PlanFields::tr("Of the table or the floor."),
            .usual = QStringLiteral("plywood"),
            .choices = materialsFor<rigs::Use::Stand>,
            .companions = {{"/stands_on/kind", "table"}, {"/stands_on/thickness", "25 mm"}}},
           {.place = "/stands_on/thickness",
            .label = PlanFields::tr("Thickness"),
            .meaning = PlanFields::tr("Of a table, 1 to 200 mm."),
            .usual = QStringLiteral("25 mm"),
            .conversion = converted<Length>,
            .companions = {{"/stands_on/kind", "table"}, {"/stands_on/material", "plywood"}}}}};
}

FieldSection hoseSection(std::size_t layers) {
  FieldSection section{
      PlanFields::tr("Recirculation hose"),
      {{.place = "/recirculation/hose_length",
        .label = PlanFields::tr("Length"),
        .meaning = PlanFields::tr(
            "Of the hose used while the mash is held, 0 to 20 m. Left empty: no hose."),
        .usual = PlanFields::tr("no hose"),
        .conversion = converted<Length>,
        .companions = {{"/recirculation/outer_diameter", "19 mm"}, {"/recirculation/wall", "3 mm"}},
        .removes = "/recirculation"},
       {.place = "/recirculation/outer_diameter",
        .label = PlanFields::tr("Outer diameter"),
        .meaning = PlanFields::tr("4 to 100 mm."),
        .conversion = converted<Length>},
       {.place = "/recirculation/wall",
        .label = PlanFields::tr("Wall"),
        .meaning = PlanFields::tr("0.3 to 20 mm."),
        .conversion = converted<Length>},
       {.place = "/recirculation/material",
        .kind = FieldKind::Choice,
        .label = PlanFields::tr("Material"),
        .meaning = PlanFields::tr("What the hose is made of."),
        .usual = QStringLiteral("silicone"),
        .choices = materialsFor<rigs::Use::Hose>}}};
  addLayers(section, "/recirculation/insulation", PlanFields::tr("Wrap %1"), layers);
  return section;
}

}  // namespace

std::vector<FieldSection> rigSections(const RigLists& lengths) {
  FieldSection jacket{PlanFields::tr("Jacket"), {}};
  addLayers(jacket, "/jacket/side", PlanFields::tr("Side layer %1"), lengths.side);
  addLayers(jacket, "/jacket/lid", PlanFields::tr("Lid layer %1"), lengths.lid);
  addLayers(jacket, "/jacket/base", PlanFields::tr("Base layer %1"), lengths.base);
  jacket.fields.push_back(outsideField("/jacket"));
  FieldSection measured{
      PlanFields::tr("From your own measurement"),
      {{.place = "/evaporation_factor",
        .kind = FieldKind::Number,
        .label = PlanFields::tr("Evaporation factor"),
        .meaning = PlanFields::tr(
            "Plain number on the law of the open surface, from a measured boil-off; 0.1 "
            "to 5."),
        .usual = QStringLiteral("1")}}};
  std::vector<FieldSection> sections;
  sections.push_back(elementSection());
  sections.push_back(supplySection());
  sections.push_back(cableUseSection());
  sections.push_back(secondElementSection());
  sections.push_back(vesselSection());
  sections.push_back(lidSection());
  sections.push_back(std::move(jacket));
  sections.push_back(standSection());
  sections.push_back(hoseSection(lengths.hose));
  sections.push_back(std::move(measured));
  return sections;
}

}  // namespace gui
