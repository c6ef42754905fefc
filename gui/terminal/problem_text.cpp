// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/problem_text.hpp"

#include <algorithm>
#include <string_view>

#include "gui/terminal/screen.hpp"
#include "gui/terminal/text_layout.hpp"

namespace gui {
namespace {

using rigs::Count;
using rigs::Told;

std::size_t usable(std::size_t width, std::size_t inset) {
  return std::max(width, kNarrowest) - inset;
}

Told errorsText(std::ptrdiff_t errors) {
  if (errors == 1) return Told(TOLD("Terminal", "1 problem"));
  return Told(TOLD("Terminal", "%1 problems"), Count{errors});
}

Told remarksText(std::ptrdiff_t remarks) {
  if (remarks == 1) return Told(TOLD("Terminal", "1 remark"));
  return Told(TOLD("Terminal", "%1 remarks"), Count{remarks});
}

Told countText(const rigs::Problems& problems) {
  const auto errors = std::count_if(
      problems.begin(), problems.end(),
      [](const rigs::Problem& problem) { return problem.severity == rigs::Severity::Error; });
  const auto remarks = static_cast<std::ptrdiff_t>(problems.size()) - errors;
  rigs::List parts{{}, rigs::Joint::And};
  if (errors > 0) parts.items.emplace_back(errorsText(errors));
  if (remarks > 0) parts.items.emplace_back(remarksText(remarks));
  return Told::just(std::move(parts));
}

std::string whereText(const rigs::Problem& problem, const rigs::Reader& reader) {
  const std::string where = problem.where.empty()
                                ? rigs::tell(Told(TOLD("Terminal", "whole document")), reader)
                                : plainText(problem.where);
  if (problem.severity != rigs::Severity::Warning) return where;
  return where + ' ' + rigs::tell(Told(TOLD("Terminal", "(remark)")), reader);
}

std::string withFullStop(std::string message) {
  if (!message.empty() && message.back() != '.') message += '.';
  return message;
}

}  // namespace

std::string complaintText(const Told& sentence, const rigs::Reader& reader, std::size_t width) {
  std::string text;
  const std::string whole = "heatledger: " + plainText(rigs::tell(sentence, reader));
  for (const std::string& line : wrapped(whole, usable(width, 2)))
    text += (text.empty() ? "" : "  ") + line + '\n';
  return text;
}

std::string problemText(const rigs::Problems& problems, const Told& name,
                        const rigs::Reader& reader, std::size_t width) {
  if (problems.empty()) return {};
  std::string text =
      plainText(rigs::tell(name, reader)) + ": " + rigs::tell(countText(problems), reader) + '\n';
  for (const rigs::Problem& problem : problems) {
    text += "  " + whereText(problem, reader) + '\n';
    const std::string message = withFullStop(plainText(rigs::tell(problem.message, reader)));
    for (const std::string& line : wrapped(message, usable(width, 4))) text += "    " + line + '\n';
  }
  return text;
}

}  // namespace gui
