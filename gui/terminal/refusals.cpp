// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/refusals.hpp"

#include <utility>

#include "gui/terminal/text_layout.hpp"

namespace gui {

using rigs::Quoted;
using rigs::Told;
using rigs::Verbatim;

Verbatim word(std::string_view text) { return {plainText(text)}; }

Told tryHelp(const Verb* verb) {
  if (!verb) return Told(TOLD("Terminal", "\"heatledger --help\" shows the commands."));
  return Told(TOLD("Terminal", "\"heatledger %1 --help\" shows its options."), word(verb->name));
}

Told onlyAccepted(std::string_view option, const std::string& given, std::vector<Told> accepted) {
  rigs::List list{.items = {}, .joint = rigs::Joint::Or};
  for (Told& one : accepted) list.items.emplace_back(std::move(one));
  if (given.empty())
    return Told(TOLD("Terminal", "%1: nothing was given; %2 is accepted."), word(option),
                std::move(list));
  return Told(TOLD("Terminal", "%1: %2 was given; %3 is accepted."), word(option), Quoted{given},
              std::move(list));
}

std::vector<Told> asTold(const std::vector<std::string>& words) {
  std::vector<Told> all;
  for (const std::string& one : words) all.push_back(Told::just(word(one)));
  return all;
}

}  // namespace gui
