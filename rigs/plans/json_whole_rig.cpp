// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/json_whole_rig.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <nlohmann/json.hpp>
#include <utility>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/json_patch.hpp"
#include "rigs/plans/rig_bases.hpp"

namespace rigs {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::array<std::string_view, 8> kOwn{"name",  "letter", "from", "same_as",
                                               "about", "source", "note", "format"};

std::string below(const std::string& place, std::string_view key) {
  std::string out = place + '/';
  for (const char c : key) out += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
  return out;
}

Home below(const Home& home, std::string_view key) {
  return home.file.empty() ? Home{below(home.where, key)}
                           : Home{home.where, home.file, below(home.inFile, key)};
}

// What stands in place of each other is as the rig nearest to the reader has it.
void makeWayForElements(Json& whole, const Json& by) {
  if (!by.contains("element") && !by.contains("elements")) return;
  for (const char* key : {"elements", "wired"}) whole.erase(key);
  if (!by.contains("element")) whole.erase("element");
}
void makeWayForLook(Json& vessel, const Json& by) {
  if (!by.contains("finish") && !by.contains("emissivity")) return;
  for (const char* key : {"finish", "emissivity"}) vessel.erase(key);
}

Json objectIn(std::string_view document) {
  Problems problems;
  const JsonDocument json = parseJson(document, problems);
  if (!json || !json->is_object()) throw EditError("the rig is no object");
  return *json;
}

Json withoutOwn(Json rig) {
  for (const std::string_view key : kOwn) rig.erase(std::string(key));
  return rig;
}

}  // namespace

bool isOwnOfEachRig(std::string_view key) {
  return std::find(kOwn.begin(), kOwn.end(), key) != kOwn.end();
}

WholeRig::WholeRig(const std::vector<JsonCursor>& layers, const std::vector<std::string>& names)
    : json_(std::make_shared<Json>(Json::object())) {
  assert(!layers.empty() && names.size() + 1 >= layers.size());
  const std::string& own = layers.front().where();
  for (std::size_t i = layers.size() - 1; i > 0; --i) lay(layers[i], {own + "/from", names[i - 1]});
  lay(layers.front(), {own});
  settle("/name", {own + "/name"});
  homes_[""] = {own};
}

void WholeRig::lay(const JsonCursor& layer, const Home& home) {
  const JsonDocument tree = layer.tree();
  const Json& stated = *tree;
  makeWayForElements(*json_, stated);
  for (const auto& [key, value] : stated.items()) {
    if (isOwnOfEachRig(key) && key != "name") continue;
    if (key == "wired" && !stated.contains("elements")) continue;  // says nothing of others'
    const std::string place = below("", key);
    if (mergesByKey(key) && value.is_object()) {
      merge(key, value, below(home, key));
    } else {
      (*json_)[key] = value;
      settle(place, below(home, key));
    }
  }
}

void WholeRig::merge(const std::string& part, const Json& keys, const Home& home) {
  Json& onto = (*json_)[part];
  if (!onto.is_object()) onto = Json::object();
  makeWayForLook(onto, keys);
  homes_[below("", part)] = home;
  for (const auto& [key, value] : keys.items()) {
    onto[key] = value;
    settle(below(below("", part), key), below(home, key));
  }
}

WholeRig WholeRig::followedBy(const JsonCursor& follower) const {
  WholeRig made;
  made.json_ = std::make_shared<Json>(*json_);
  made.homes_ = homes_;
  const JsonDocument tree = follower.tree();
  Json patch = *tree;
  for (const std::string_view key : kOwn) {
    made.json_->erase(std::string(key));
    made.settle(below("", key), {below(follower.where(), key)});
  }
  for (const char* reference : {"from", "same_as"}) patch.erase(reference);
  made.apply(*made.json_, patch, "", follower.where());
  return made;
}

// RFC 7396, section 2; and where each value comes to stand.
void WholeRig::apply(Json& onto, const Json& patch, const std::string& place,
                     const std::string& where) {
  for (const auto& [key, value] : patch.items()) {
    const std::string here = below(place, key);
    const Home home{below(where, key)};
    if (value.is_object()) {
      const bool merges = onto.contains(key) && onto[key].is_object();
      if (!merges) {
        onto[key] = Json::object();
        settle(here, home);
      }
      apply(onto[key], value, here, home.where);
      continue;
    }
    if (value.is_null())
      onto.erase(key);
    else
      onto[key] = value;
    settle(here, home);
  }
}

void WholeRig::settle(const std::string& place, Home home) {
  std::erase_if(homes_,
                [inside = place + '/'](const auto& one) { return one.first.starts_with(inside); });
  homes_[place] = std::move(home);
}

std::string WholeRig::text() const { return json_->dump(); }

Home WholeRig::homeOf(std::string_view place) const {
  std::string_view known = place;
  auto found = homes_.find(known);
  while (found == homes_.end() && !known.empty()) {
    known = known.substr(0, known.rfind('/'));
    found = homes_.find(known);
  }
  if (found == homes_.end()) return {std::string(place)};
  Home home = found->second;
  (home.file.empty() ? home.where : home.inFile) += place.substr(known.size());
  return home;
}

std::string writtenAsFollower(std::string_view base, std::string_view letter,
                              std::string_view wanted, std::string_view before) {
  const Json whole = objectIn(wanted);
  Json rig = Json::object();
  for (const auto& [key, value] : whole.items())
    if (isOwnOfEachRig(key) && key != "from") rig[key] = value;
  rig["same_as"] = std::string(letter);
  rig.update(treePatch(withoutOwn(objectIn(base)), withoutOwn(whole)));
  Json written = Json::object();
  const Json old = objectIn(before);
  for (const auto& [key, value] : old.items())
    if (rig.contains(key)) written[key] = rig[key];
  written.update(rig);
  return written.dump();
}

}  // namespace rigs
