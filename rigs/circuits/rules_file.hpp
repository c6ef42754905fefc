// SPDX-License-Identifier: GPL-3.0-or-later
// A region's electrical rules in a file of one's own.
#pragma once

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include "rigs/circuits/rules.hpp"
#include "rigs/documents/problems.hpp"

namespace rigs {

inline constexpr std::size_t kLargestRules = std::size_t{1024} * 1024;  // bytes

// Null where an error was added. Every problem of the rules is told, at `where`, with its own place
// in what is called `name`; warnings are told too.
std::shared_ptr<const CircuitRules> rulesIn(std::string_view text, const std::string& name,
                                            const std::string& where, Problems& problems);
// The same of a file that a document names: `path` leads from `folder`, and not out of it.
std::shared_ptr<const CircuitRules> readRulesFile(const std::filesystem::path& folder,
                                                  const std::filesystem::path& path,
                                                  const std::string& where, Problems& problems);

}  // namespace rigs
