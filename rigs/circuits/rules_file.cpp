// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/rules_file.hpp"

#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {

std::shared_ptr<const CircuitRules> readRulesFile(const std::filesystem::path& path,
                                                  const std::string& where, Problems& problems) {
  Problems found;
  std::optional<CircuitRules> rules;
  try {
    rules = readRules(readText(path, kLargestRules), found);
  } catch (const FileError& error) {
    problems.push_back({Severity::Error, where, error.told()});
    return nullptr;
  }
  const std::string name = path.filename().string();
  for (const Problem& p : found) problems.push_back({p.severity, where, withinFile(name, p)});
  return rules ? std::make_shared<const CircuitRules>(std::move(*rules)) : nullptr;
}

}  // namespace rigs
