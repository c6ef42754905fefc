// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/layer_fields.hpp"

#include "rigs/plans/catalogue.hpp"

namespace gui {
namespace {

std::vector<std::string> outsides(std::string_view) {
  std::vector<std::string> words;
  for (const rigs::Finish& outside : rigs::catalogue().outsides) words.push_back(outside.word);
  return words;
}

}  // namespace

std::vector<std::string> layerMaterials(std::string_view) {
  std::vector<std::string> names;
  for (const std::string_view name : rigs::catalogue().namesFor(rigs::Use::Jacket))
    names.emplace_back(name);
  return names;
}

void addLayers(FieldSection& section, const std::string& list, const QString& label,
               std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) {
    const std::string layer = list + '/' + std::to_string(i);
    const QString name = label.arg(i + 1);
    section.fields.push_back(
        {.place = layer + "/material",
         .kind = FieldKind::Choice,
         .label = name,
         .meaning = PlanFields::tr("Material of this layer, counted from the metal "
                                   "outwards."),
         .choices = layerMaterials,
         .companions = {{layer + "/thickness", "10 mm"}},
         .removes = layer});
    section.fields.push_back(
        {.place = layer + "/thickness",
         .kind = FieldKind::LayerAmount,
         .label = PlanFields::tr("Thickness or R"),
         .meaning = PlanFields::tr(
             "Thickness of the layer, 0.1 to 300 mm; or its thermal resistance as stated "
             "by the maker, such as R 1.8 (US) or 0.3 m2*K/W, 0.001 to 20 m²·K/W."),
         .conversion = converted<physics::Length>});
  }
}

PlanField outsideField(const std::string& jacket) {
  return {
      .place = jacket + "/outside",
      .kind = FieldKind::Choice,
      .label = PlanFields::tr("Outside"),
      .meaning = PlanFields::tr("How the outside radiates; as the outermost layer if not stated."),
      .usual = PlanFields::tr("as the layer"),
      .choices = outsides};
}

}  // namespace gui
