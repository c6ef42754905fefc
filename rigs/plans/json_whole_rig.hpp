// SPDX-License-Identifier: GPL-3.0-or-later
// A rig with all that it has from others, as one object without a reference, and where each value
// of it is written.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/json_parse.hpp"

namespace rigs {

// Where a value is written.
struct Home {
  std::string where;        // in the plan: "/rigs/0/element/power"
  std::string file = {};    // that the rig there is from and the value stands in; else ""
  std::string inFile = {};  // "/element/power"

  bool operator==(const Home&) const = default;
};

class WholeRig {
 public:
  // From the rig itself to the one at the bottom, and by which names those below it are referred
  // to. `vessel` and `element` merge key by key, any other part replaces the one below.
  WholeRig(const std::vector<JsonCursor>& layers, const std::vector<std::string>& names);

  // This rig with what another states of itself, as a merge patch (json_patch.hpp). Name, letter
  // and what is for readers are each rig's own.
  WholeRig followedBy(const JsonCursor& follower) const;

  const nlohmann::ordered_json& json() const { return *json_; }
  std::string text() const;

  // Of a place from the rig on ("/element/power"), also where nothing stands: there a rig that
  // took it out says so, or else whoever states the part around it.
  Home homeOf(std::string_view place) const;

 private:
  WholeRig() = default;
  void lay(const JsonCursor& layer, const Home& home);
  void merge(const std::string& part, const nlohmann::ordered_json& keys, const Home& home);
  void apply(nlohmann::ordered_json& onto, const nlohmann::ordered_json& patch,
             const std::string& place, const std::string& where);
  void settle(const std::string& place, Home home);  // and all below it

  JsonDocument json_;
  std::map<std::string, Home, std::less<>> homes_;  // of whole subtrees, but for those below
};

// Keys that no rig has from the one that it follows: "name", "letter", "note"...
bool isOwnOfEachRig(std::string_view key);

// A rig as it is written where it follows another: its own keys, by which letter the other goes,
// and the least that differs. Keys stand as in `before`, which it was written as.
std::string writtenAsFollower(std::string_view base, std::string_view letter,
                              std::string_view wanted, std::string_view before);

}  // namespace rigs
