// SPDX-License-Identifier: GPL-3.0-or-later
// Which rig of a plan follows which: "same_as" names the other by its letter.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <vector>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/json_whole_rig.hpp"

namespace rigs {

// The rigs of one document. Whatever the cursors point into must outlive it.
class RigFamily {
 public:
  // Tells what is wrong with references, each at its own "same_as": no such letter, a circle, a
  // rig that is from another as well.
  RigFamily(std::vector<JsonCursor> entries, std::filesystem::path folder);

  std::size_t size() const { return entries_.size(); }
  const JsonCursor& at(std::size_t entry) const { return entries_[entry]; }
  std::size_t slotOf(std::size_t entry) const;  // of its letter
  // By its index among all that stands in the document's list, rigs or not.
  std::optional<std::size_t> entryAt(std::size_t index) const;
  std::size_t indexOf(std::size_t entry) const;

  bool follows(std::size_t entry) const { return entries_[entry].has("same_as"); }
  // The entry that it follows; nothing where it follows none, or where that was told as a problem.
  std::optional<std::size_t> baseOf(std::size_t entry) const { return bases_[entry]; }

  // The rig with all it has from others; nothing where part of it cannot be read, which is told by
  // whoever reads the rig that refers to it.
  const std::optional<WholeRig>& whole(std::size_t entry) const;

 private:
  std::optional<std::size_t> named(std::size_t entry) const;
  bool goesRound(std::size_t entry) const;  // back to the entry itself
  std::optional<WholeRig> made(std::size_t entry) const;

  std::vector<JsonCursor> entries_;
  std::vector<std::size_t> slots_;
  std::filesystem::path folder_;
  std::vector<std::optional<std::size_t>> bases_;
  // Made once where asked for.
  mutable std::vector<std::optional<std::optional<WholeRig>>> wholes_;
};

}  // namespace rigs
