// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a plan document, and the demo with any of its numbers replaced: no crash, and
// either a plan or an error that says where. A plan that was accepted can be brewed.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "rigs/answers/plan_check.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace {

bool isNumeral(char c) { return ('0' <= c && c <= '9') || c == '.'; }

// The demo, its numbers replaced by what four bytes each ask for: which number, and three
// characters of a new one.
std::string demoWith(const std::uint8_t* data, std::size_t size) {
  std::string text = rigs::newPlanText();
  constexpr std::string_view kCharacters = "0123456789.-012";
  for (std::size_t i = 0; i + 4 <= size && i < 32; i += 4) {
    std::size_t wanted = data[i];
    std::size_t at = 0;
    while (at < text.size()) {
      if (isNumeral(text[at]) && wanted-- == 0) break;
      while (at < text.size() && isNumeral(text[at])) ++at;
      while (at < text.size() && !isNumeral(text[at])) ++at;
    }
    if (at >= text.size()) continue;
    std::size_t end = at;
    while (end < text.size() && isNumeral(text[end])) ++end;
    std::string number;
    for (std::size_t j = 1; j < 4; ++j) {
      const std::size_t choice = data[i + j] % (kCharacters.size() + 1);
      if (choice < kCharacters.size()) number += kCharacters[choice];
    }
    text.replace(at, end - at, number);
  }
  return text;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const bool asItIs = size > 0 && data[0] % 2 == 1;
  const std::string document = asItIs ? std::string(reinterpret_cast<const char*>(data), size)
                                      : demoWith(data + (size > 0), size > 0 ? size - 1 : 0);
  rigs::Problems problems;
  // No folder: rigs of the plan can be from the catalogue only.
  const auto plan = rigs::readPlan(document, "/nonexistent", problems);
  if (plan.has_value() == rigs::hasErrors(problems)) std::abort();
  for (const rigs::Problem& problem : problems)
    if (rigs::inEnglish(problem.message).empty()) std::abort();
  if (plan) rigs::checkPlan(*plan, problems);
  return 0;
}
