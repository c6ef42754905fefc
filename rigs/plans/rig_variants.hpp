// SPDX-License-Identifier: GPL-3.0-or-later
// Rigs that follow another ("same_as"), in the text of a plan: changed, removed and made so that
// those who follow keep following. Documents must be JSON: throws EditError otherwise, and where
// there is no such rig.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace rigs {

bool followsAnother(std::string_view document, std::size_t index);

// The rig with all it has from others, as JSON without "from" and "same_as"; nothing where part of
// that cannot be read: readPlan() says why. `folder` is where relative references are looked up.
std::optional<std::string> wholeRigAt(std::string_view document, std::size_t index,
                                      const std::filesystem::path& folder);

// The document with the rig being as edited. One that follows another is given in full and written
// as what differs from that one; any other is written as given, and those that follow it are what
// it is now, but for what they state themselves. Whoever names it by its letter goes on to.
std::string changeRig(std::string_view document, std::size_t index, std::string_view edited,
                      const std::filesystem::path& folder);

// Without the rig. Who followed it is what it was: the same as the one that the rig followed but
// for what differs, or else in full. All keep their letters.
std::string removeRig(std::string_view document, std::size_t index,
                      const std::filesystem::path& folder);

// With one more rig behind that one, which follows it and is the same in all. It gets the first
// free letter; all others keep theirs.
std::string sameWith(std::string_view document, std::size_t index, std::string_view name);

}  // namespace rigs
