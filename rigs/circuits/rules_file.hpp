// SPDX-License-Identifier: GPL-3.0-or-later
// A region's electrical rules in a file of one's own.
#pragma once

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>

#include "rigs/circuits/rules.hpp"
#include "rigs/documents/problems.hpp"

namespace rigs {

inline constexpr std::size_t kLargestRules = std::size_t{1024} * 1024;  // bytes

// Null where an error was added. Every problem of the file is told, at `where`, with its own place;
// warnings are told too.
std::shared_ptr<const CircuitRules> readRulesFile(const std::filesystem::path& path,
                                                  const std::string& where, Problems& problems);

}  // namespace rigs
