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

void addLayers(FieldSection& section, const std::string& list, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) {
    const std::string layer = list + '/' + std::to_string(i);
    section.fields.push_back({.place = layer + "/material",
                              .kind = FieldKind::Choice,
                              .choices = layerMaterials,
                              .companions = {{layer + "/thickness", "10 mm"}},
                              .removes = layer});
    section.fields.push_back({.place = layer + "/thickness",
                              .kind = FieldKind::LayerAmount,
                              .conversion = converted<physics::Length>});
  }
}

PlanField outsideField(const std::string& jacket) {
  return {.place = jacket + "/outside", .kind = FieldKind::Choice, .choices = outsides};
}

}  // namespace gui
