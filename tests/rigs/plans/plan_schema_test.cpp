// SPDX-License-Identifier: GPL-3.0-or-later
// The published schema against the table of keys.
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>

#include "rigs/plans/keys.hpp"
#include "tests/rigs/plans/key_values.hpp"
#include "tests/rigs/plans/plain_ranges.hpp"

namespace rigs {
namespace {

using test_support::isAmount;
using test_support::isJson;
using test_support::plain;
using test_support::planSchema;
using test_support::written;
using Json = nlohmann::ordered_json;

// What stands beside a reference holds together with what is referred to.
Json resolved(const Json& node) {
  if (node.contains("$ref")) {
    const std::string pointer = node["$ref"].get<std::string>().substr(1);
    Json all = resolved(planSchema().at(Json::json_pointer(pointer)));
    for (const auto& [key, value] : node.items())
      if (key != "$ref") all[key] = value;
    return all;
  }
  if (node.contains("anyOf") && node["anyOf"][0].contains("$ref")) {
    Json all = resolved(node["anyOf"][0]);
    for (const auto& [key, value] : node.items()) all[key] = value;
    return all;
  }
  return node;
}

// Every key that the schema describes, with its "*" for lists.
void walk(const Json& node, const std::string& place, std::map<std::string, Json>& found) {
  const Key* key = keyAt(place);
  if (key && key->kind == ValueKind::Anything) return;
  if (node.contains("items")) walk(resolved(node["items"]), place + "/*", found);
  if (!node.contains("properties")) return;
  for (const auto& [name, child] : node["properties"].items()) {
    const Json whole = resolved(child);
    found[place + '/' + name] = whole;
    walk(whole, place + '/' + name, found);
  }
}

const std::map<std::string, Json>& described() {
  static const std::map<std::string, Json> all = [] {
    std::map<std::string, Json> found;
    walk(planSchema(), "", found);
    return found;
  }();
  return all;
}

std::set<std::string> texts(const Json& list) {
  std::set<std::string> all;
  for (const Json& entry : list) all.insert(entry.get<std::string>());
  return all;
}

}  // namespace

TEST(PlanSchema, DescribesTheKeysOfTheTableAndNoOthers) {
  std::set<std::string> inTable;
  std::set<std::string> inSchema;
  for (const Key& key : planKeys()) inTable.insert(key.place);
  for (const auto& [place, node] : described()) {
    inSchema.insert(place);
    EXPECT_TRUE(node.contains("description")) << place;
  }
  EXPECT_EQ(inSchema, inTable);
}

// A rig that follows another states of the same keys what differs; it is from nothing else, and in
// no document of its own.
TEST(PlanSchema, LetsAVariantStateEveryKeyOfARig) {
  std::set<std::string> known;
  for (const auto& [name, child] : planSchema()["$defs"]["variant"]["properties"].items())
    known.insert(name);
  std::set<std::string> ofRigs;
  for (const std::string_view name : keysOf("/rigs/*"))
    if (name != "from" && name != "format") ofRigs.insert(std::string(name));
  EXPECT_EQ(known, ofRigs);
}

TEST(PlanSchema, HasTheTablesDefaults) {
  for (const Key& key : planKeys()) {
    const Json& node = described().at(key.place);
    const bool has = !key.standard.empty() && key.need != Need::Required;
    ASSERT_EQ(node.contains("default"), has) << key.place;
    if (!has) continue;
    EXPECT_EQ(node["default"], written(key, key.standard)) << key.place;
  }
}

TEST(PlanSchema, HasTheTablesExamplesAndOnlySuchAsAreAccepted) {
  for (const Key& key : planKeys()) {
    const Json& node = described().at(key.place);
    if (key.name() == "note" || key.place.starts_with("/format")) continue;
    ASSERT_TRUE(node.contains("examples")) << key.place;
    EXPECT_EQ(node["examples"][0], written(key, key.example)) << key.place;
    if (key.kind != ValueKind::Quantity && key.kind != ValueKind::Share) continue;
    for (const Json& example : node["examples"]) {
      const auto si = [&](std::string_view text) { return detail::read(key.quantity, text).si; };
      const auto read = si(example.is_string() ? example.get<std::string>() : example.dump());
      ASSERT_TRUE(read) << key.place << ": " << example;
      EXPECT_TRUE(si(key.least) <= read && read <= si(key.most)) << key.place << ": " << example;
    }
  }
}

TEST(PlanSchema, HasTheTablesRanges) {
  for (const Key& key : planKeys()) {
    const Json& node = described().at(key.place);
    if (isAmount(key)) {
      const std::string description = plain(node.at("description").get<std::string>());
      EXPECT_NE(description.find(plain(acceptedText(key))), std::string::npos)
          << key.place << ": " << acceptedText(key) << " in " << description;
    } else if (key.kind == ValueKind::Number ||
               (key.kind == ValueKind::Integer && !key.least.empty())) {
      EXPECT_EQ(node.at("minimum"), Json::parse(key.least)) << key.place;
      EXPECT_EQ(node.at("maximum"), Json::parse(key.most)) << key.place;
    } else if (key.kind == ValueKind::List) {
      EXPECT_EQ(node.at("minItems"), Json::parse(key.least)) << key.place;
      EXPECT_EQ(node.at("maxItems"), Json::parse(key.most)) << key.place;
    } else if (key.kind == ValueKind::Text) {
      EXPECT_EQ(node.at("maxLength"), Json::parse(key.most)) << key.place;
    }
  }
}

TEST(PlanSchema, HasTheTablesWords) {
  for (const Key& key : planKeys()) {
    if (key.words.empty()) continue;
    const Json& node = described().at(key.place);
    const Json words = node.contains("const")  ? Json::array({node["const"]})
                       : node.contains("enum") ? node["enum"]
                                               : node.at("anyOf").at(0).at("enum");
    EXPECT_EQ(texts(words), (std::set<std::string>{key.words.begin(), key.words.end()}))
        << key.place;
  }
}

TEST(PlanSchema, LetsNoneStandWhereTheTableDoes) {
  for (const Key& key : planKeys()) {
    const Json& node = described().at(key.place);
    const bool may = node.contains("anyOf") && node["anyOf"].back() == Json{{"const", "none"}};
    EXPECT_EQ(may, key.orNone) << key.place;
  }
}

TEST(PlanSchema, RequiresWhatTheTableDoes) {
  // A rig may have from another what it does not state.
  const std::set<std::string> inherited{"/rigs/*", "/rigs/*/vessel", "/rigs/*/element"};
  std::map<std::string, std::set<std::string>> required;
  for (const Key& key : planKeys()) {
    const std::string object = key.place.substr(0, key.place.rfind('/'));
    required[object];
    if (key.need == Need::Required) required[object].insert(std::string(key.name()));
  }
  for (const auto& [object, names] : required) {
    if (inherited.count(object) > 0) continue;
    Json node = planSchema();
    if (object.ends_with("/*"))
      node = resolved(described().at(object.substr(0, object.size() - 2)).at("items"));
    else if (!object.empty())
      node = described().at(object);
    EXPECT_EQ(texts(node.value("required", Json::array())), names) << object;
  }
}

}  // namespace rigs
