// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/problem_text.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

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

// The same sentence about several places, in the order of the first ones.
struct SaidOnce {
  rigs::Problem problem;
  std::vector<std::string> places;
};

std::vector<SaidOnce> saidOnce(const rigs::Problems& problems) {
  std::vector<SaidOnce> all;
  for (const rigs::Problem& problem : problems) {
    const auto same = std::find_if(all.begin(), all.end(), [&](const SaidOnce& one) {
      return one.problem.severity == problem.severity && one.problem.message == problem.message;
    });
    if (same == all.end())
      all.push_back({problem, {problem.where}});
    else if (std::find(same->places.begin(), same->places.end(), problem.where) ==
             same->places.end())
      same->places.push_back(problem.where);
  }
  return all;
}

Told countText(const std::vector<SaidOnce>& problems) {
  const auto errors = std::count_if(problems.begin(), problems.end(), [](const SaidOnce& one) {
    return one.problem.severity == rigs::Severity::Error;
  });
  const auto remarks = static_cast<std::ptrdiff_t>(problems.size()) - errors;
  rigs::List parts{{}, rigs::Joint::And};
  if (errors > 0) parts.items.emplace_back(errorsText(errors));
  if (remarks > 0) parts.items.emplace_back(remarksText(remarks));
  return Told::just(std::move(parts));
}

std::string whereText(const SaidOnce& said, const rigs::Reader& reader) {
  std::string all;
  for (const std::string& place : said.places) {
    if (!all.empty()) all += ", ";
    all += place.empty() ? rigs::tell(Told(TOLD("Terminal", "whole document")), reader)
                         : plainText(place);
  }
  if (said.problem.severity != rigs::Severity::Warning) return all;
  return all + ' ' + rigs::tell(Told(TOLD("Terminal", "(remark)")), reader);
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
  const std::vector<SaidOnce> all = saidOnce(problems);
  std::string text =
      plainText(rigs::tell(name, reader)) + ": " + rigs::tell(countText(all), reader) + '\n';
  for (const SaidOnce& said : all) {
    for (const std::string& line : wrapped(whereText(said, reader), usable(width, 2)))
      text += "  " + line + '\n';
    const std::string message = withFullStop(plainText(rigs::tell(said.problem.message, reader)));
    for (const std::string& line : wrapped(message, usable(width, 4))) text += "    " + line + '\n';
  }
  return text;
}

}  // namespace gui
