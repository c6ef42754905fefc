// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/rules_file.hpp"

#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {

std::shared_ptr<const CircuitRules> rulesIn(std::string_view text, const std::string& name,
                                            const std::string& where, Problems& problems) {
  Problems found;
  auto rules = readRules(text, found);
  for (const Problem& p : found) problems.push_back({p.severity, where, withinFile(name, p)});
  return rules ? std::make_shared<const CircuitRules>(std::move(*rules)) : nullptr;
}

std::shared_ptr<const CircuitRules> readRulesFile(const std::filesystem::path& folder,
                                                  const std::filesystem::path& path,
                                                  const std::string& where, Problems& problems) {
  try {
    return rulesIn(readWithin(folder, folder / path, kLargestRules), path.filename().string(),
                   where, problems);
  } catch (const FileError& error) {
    problems.push_back({Severity::Error, where, error.told()});
    return nullptr;
  }
}

}  // namespace rigs
