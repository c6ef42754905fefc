// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_patch.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/json_parse.hpp"

namespace rigs {

using Json = nlohmann::ordered_json;

namespace {

Json treeOf(std::string_view document) {
  Problems problems;
  const JsonDocument json = parseJson(document, problems);
  if (!json) throw EditError("the document is not JSON");
  return *json;
}

// As a patch can make it: without keys that hold null.
Json withoutNulls(const Json& node) {
  if (!node.is_object()) return node;
  Json kept = Json::object();
  for (const auto& [key, value] : node.items())
    if (!value.is_null()) kept[key] = withoutNulls(value);
  return kept;
}

}  // namespace

bool equalTrees(const Json& one, const Json& other) {
  if (one.type() != other.type()) return one == other;  // 1 and 1.0
  if (one.is_array())
    return one.size() == other.size() &&
           std::equal(one.begin(), one.end(), other.begin(),
                      [](const Json& a, const Json& b) { return equalTrees(a, b); });
  if (!one.is_object()) return one == other;
  if (one.size() != other.size()) return false;
  for (const auto& [key, value] : one.items()) {
    const auto there = other.find(key);
    if (there == other.end() || !equalTrees(value, *there)) return false;
  }
  return true;
}

Json treePatch(const Json& base, const Json& wanted) {
  Json patch = Json::object();
  for (const auto& [key, value] : wanted.items()) {
    if (value.is_null()) continue;
    const auto there = base.find(key);
    if (there != base.end() && value.is_object() && there->is_object()) {
      Json below = treePatch(*there, value);
      if (!below.empty()) patch[key] = std::move(below);
    } else if (there == base.end() || !equalTrees(value, *there)) {
      patch[key] = withoutNulls(value);
    }
  }
  for (const auto& [key, value] : base.items()) {
    const auto there = wanted.find(key);
    if (there == wanted.end() || (there->is_null() && !value.is_null())) patch[key] = nullptr;
  }
  return patch;
}

std::string patched(std::string_view base, std::string_view patch) {
  Json made = treeOf(base);
  made.merge_patch(treeOf(patch));
  return made.dump();
}

std::string patchBetween(std::string_view base, std::string_view wanted) {
  const Json from = treeOf(base);
  const Json to = treeOf(wanted);
  return (from.is_object() && to.is_object() ? treePatch(from, to) : withoutNulls(to)).dump();
}

bool saysTheSame(std::string_view one, std::string_view other) {
  return equalTrees(treeOf(one), treeOf(other));
}

}  // namespace rigs
