// SPDX-License-Identifier: GPL-3.0-or-later
// The documents that a rig is from, directly or over others: of the catalogue, or files beside the
// plan.
#pragma once

#include <cstddef>
#include <deque>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/json_parse.hpp"

namespace rigs {

inline constexpr std::size_t kMostBases = 8;  // of which each is from the next

// `vessel` and `element` merge key by key; any other part replaces the one it is from as a whole.
bool mergesByKey(std::string_view part);

// Cursors that it gives point into it.
class RigBases {
 public:
  // The rig, then what it is from, then what that is from. What is wrong with a reference of the
  // rig's own is told there.
  std::vector<JsonCursor> follow(const JsonCursor& rig, const std::filesystem::path& folder);

  // The names by which they are referred to, nearest first: of the second cursor and those after.
  std::vector<std::string> names() const;

  // Their own problems, at the place that refers to them.
  void tell(const JsonCursor& rig, Problems& problems) const;
  bool failed() const;

 private:
  // Its problems are told at the place that refers to it.
  struct Base {
    std::string name;
    JsonDocument document;
    Problems problems;
  };

  std::optional<JsonCursor> open(const JsonCursor& at, std::filesystem::path& folder);
  std::optional<JsonCursor> openFile(const JsonCursor& at, const std::string& name,
                                     std::filesystem::path& folder);
  std::optional<JsonCursor> add(const JsonCursor& at, std::string name, std::string_view text);

  std::deque<Base> bases_;      // cursors keep pointing into them while more are added
  std::filesystem::path root_;  // the plan's folder
  std::vector<std::filesystem::path> files_;
};

}  // namespace rigs
