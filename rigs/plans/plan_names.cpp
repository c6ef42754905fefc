// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan_names.hpp"

#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

Told isNoMaterialFor(Use use, const std::string& name) {
  const Quoted written{name};
  switch (use) {
    case Use::Vessel:
      return Told(TOLD("Problem", "%1 is no known material for a vessel"), written);
    case Use::Lid:
      return Told(TOLD("Problem", "%1 is no known material for a lid"), written);
    case Use::Jacket:
      return Told(TOLD("Problem", "%1 is no known material for a jacket"), written);
    case Use::Stand:
      return Told(TOLD("Problem", "%1 is no known material for a stand"), written);
    case Use::Hose:
      return Told(TOLD("Problem", "%1 is no known material for a hose"), written);
  }
  return {};
}

}  // namespace

bool isNone(const JsonCursor& at, std::string_view key) {
  return at.isText(key) && at.text(key, kLongestNote) == "none";
}

const Material* readMaterial(const JsonCursor& at, std::string_view key, Use use) {
  const auto name = at.text(key, kLongestName);
  if (!name) return nullptr;
  const Material* material = catalogue().material(*name);
  if (material && material->isFor(use)) return material;
  const auto known = catalogue().namesFor(use);
  at.error(key, perhapsMeant(advised(isNoMaterialFor(use, *name), writeOneOf(known)),
                             material ? "" : nearestWord(*name, known)));
  return nullptr;
}

}  // namespace rigs
