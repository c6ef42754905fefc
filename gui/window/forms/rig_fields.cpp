// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/rig_fields.hpp"

#include <string>

#include "gui/window/forms/circuit_fields.hpp"
#include "gui/window/forms/field_words.hpp"
#include "gui/window/forms/kettle_volume.hpp"
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

std::vector<std::string> hoseEnds(std::string_view) { return {"above the wort", "below the wort"}; }

FieldSection vesselSection() {
  return {PlanFields::tr("Kettle"),
          {{.place = "/vessel/inner_diameter", .conversion = converted<Length>},
           {.place = "/vessel/height", .conversion = converted<Length>},
           {.place = "/vessel/wall", .conversion = converted<Length>},
           {.place = "/vessel/material",
            .kind = FieldKind::Choice,
            .choices = materialsFor<rigs::Use::Vessel>},
           {.place = "/vessel/finish",
            .kind = FieldKind::Choice,
            .choices = finishesOf,
            .replaces = {"/vessel/emissivity"}},
           {.place = "/vessel/emissivity", .replaces = {"/vessel/finish"}},
           {.place = "/vessel/mass", .conversion = converted<Mass>}}};
}

FieldSection elementSection() {
  return {PlanFields::tr("Element"),
          {{.place = "/element/power"},
           {.place = "/element/rated_voltage"},
           {.place = "/element/top_height", .conversion = converted<Length>},
           {.place = "/element/diameter",
            .conversion = converted<Length>,
            .companions = {{"/element/heated_length", "1.8 m"}}},
           {.place = "/element/heated_length",
            .conversion = converted<Length>,
            .companions = {{"/element/diameter", "11 mm"}}},
           {.place = "/boil_power"},
           {.place = "/dead_band", .conversion = converted<TemperatureDifference>}}};
}

FieldSection lidSection() {
  FieldSection section{
      PlanFields::tr("Lid"),
      {{.place = "/lid/material", .kind = FieldKind::Choice, .choices = lidMaterials},
       {.place = "/lid/finish",
        .kind = FieldKind::Choice,
        .choices = finishesOf,
        .replaces = {"/lid/emissivity"}},
       {.place = "/lid/emissivity", .replaces = {"/lid/finish"}},
       {.place = "/lid/thickness", .conversion = converted<Length>}}};
  section.fields.push_back({.place = "/lid/open/strike"});
  section.fields.push_back({.place = "/lid/open/mash"});
  section.fields.push_back({.place = "/lid/open/heating"});
  section.fields.push_back({.place = "/lid/open/boil"});
  return section;
}

FieldSection standSection() {
  return {PlanFields::tr("Stands on"),
          {{.place = "/stands_on/kind",
            .kind = FieldKind::Choice,
            .choices = stands,
            .companions = {{"/stands_on/material", "plywood"}, {"/stands_on/thickness", "25 mm"}}},
           {.place = "/stands_on/material",
            .kind = FieldKind::Choice,
            .choices = materialsFor<rigs::Use::Stand>,
            .companions = {{"/stands_on/kind", "table"}, {"/stands_on/thickness", "25 mm"}}},
           {.place = "/stands_on/thickness",
            .conversion = converted<Length>,
            .companions = {{"/stands_on/kind", "table"}, {"/stands_on/material", "plywood"}}}}};
}

std::vector<std::string> chillerKinds(std::string_view) { return {"coil", "counterflow", "air"}; }
std::vector<std::string> tubeMetals(std::string_view) { return {"copper", "stainless steel"}; }
std::vector<std::string> wortMotions(std::string_view) { return {"still", "stirred"}; }

FieldSection chillerSection() {
  return {PlanFields::tr("Chiller"),
          {{.place = "/chiller/kind", .kind = FieldKind::Choice, .choices = chillerKinds},
           {.place = "/chiller/material", .kind = FieldKind::Choice, .choices = tubeMetals},
           {.place = "/chiller/tube", .conversion = converted<Length>},
           {.place = "/chiller/length", .conversion = converted<Length>},
           {.place = "/chiller/wort", .kind = FieldKind::Choice, .choices = wortMotions},
           {.place = "/chiller/water_flow", .conversion = convertedPumped},
           {.place = "/chiller/wort_flow", .conversion = convertedPumped}}};
}

FieldSection hoseSection(std::size_t layers) {
  FieldSection section{
      PlanFields::tr("Recirculation hose"),
      {{.place = "/recirculation/hose_length",
        .conversion = converted<Length>,
        .companions = {{"/recirculation/outer_diameter", "19 mm"}, {"/recirculation/wall", "3 mm"}},
        .removes = "/recirculation"},
       {.place = "/recirculation/outer_diameter", .conversion = converted<Length>},
       {.place = "/recirculation/wall", .conversion = converted<Length>},
       {.place = "/recirculation/material",
        .kind = FieldKind::Choice,
        .choices = materialsFor<rigs::Use::Hose>},
       {.place = "/recirculation/returns", .kind = FieldKind::Choice, .choices = hoseEnds},
       {.place = "/recirculation/flow", .conversion = convertedPumped},
       {.place = "/recirculation/pump_heat"}}};
  addLayers(section, "/recirculation/insulation", layers);
  return section;
}

}  // namespace

std::vector<FieldSection> rigSections(const RigLists& lengths) {
  FieldSection jacket{PlanFields::tr("Jacket"), {}};
  addLayers(jacket, "/jacket/side", lengths.side);
  addLayers(jacket, "/jacket/lid", lengths.lid);
  addLayers(jacket, "/jacket/base", lengths.base);
  jacket.fields.push_back(outsideField("/jacket"));
  FieldSection measured{PlanFields::tr("From your own measurement"),
                        {{.place = "/loss_factor", .kind = FieldKind::Number},
                         {.place = "/measured/losses_within"},
                         {.place = "/evaporation_factor", .kind = FieldKind::Number},
                         {.place = "/measured/surface_within"}}};
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
  sections.push_back(chillerSection());
  sections.push_back(std::move(measured));
  sections = inWords(std::move(sections), "/rigs/*");
  for (FieldSection& section : sections) {
    if (section.fields.front().place != "/vessel/inner_diameter") continue;
    section.fields.insert(section.fields.begin() + 2, kettleVolumeField());
  }
  return sections;
}

}  // namespace gui
