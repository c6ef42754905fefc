// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/problem_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "gui/terminal/text_layout.hpp"

namespace gui {

std::string complaintText(std::string_view sentence, std::size_t width) {
  std::string text;
  const std::string whole = "heatledger: " + std::string(sentence);
  for (const std::string& line : wrapped(whole, std::max(width, kNarrowest) - 2)) {
    text += (text.empty() ? "" : "  ") + line + '\n';
  }
  return text;
}

std::string problemText(const rigs::Problems& problems, const std::string& name,
                        const rigs::Reader& reader, const TextStyle& style) {
  if (problems.empty()) return {};
  const auto errors = std::count_if(
      problems.begin(), problems.end(),
      [](const rigs::Problem& problem) { return problem.severity == rigs::Severity::Error; });
  const auto warnings = static_cast<std::ptrdiff_t>(problems.size()) - errors;
  std::string head;
  if (errors > 0) head = errors == 1 ? "1 problem" : fmt::format("{} problems", errors);
  if (warnings > 0) {
    head += head.empty() ? "" : " and ";
    head += warnings == 1 ? "1 remark" : fmt::format("{} remarks", warnings);
  }
  std::string text = fmt::format("{}: {}\n", name, head);
  for (const rigs::Problem& problem : problems) {
    const std::string where = problem.where.empty() ? "whole document" : plainText(problem.where);
    text += fmt::format("  {}{}\n", where,
                        problem.severity == rigs::Severity::Warning ? " (remark)" : "");
    std::string message = plainText(rigs::tell(problem.message, reader));
    if (!message.empty() && message.back() != '.') message += '.';
    for (const std::string& line : wrapped(message, std::max(style.width, kNarrowest) - 4)) {
      text += "    " + line + '\n';
    }
  }
  return text;
}

}  // namespace gui
