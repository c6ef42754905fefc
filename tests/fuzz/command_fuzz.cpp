// SPDX-License-Identifier: GPL-3.0-or-later
// Any lines as the words of a command line, as far as it is understood: no file is read or written.
// What-if options are tried on a plan, and so are the keys that a sweep varies.
#include <string>
#include <vector>

#include "gui/terminal/commands.hpp"
#include "rigs/answers/variation.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/fuzz/fuzzed.hpp"

namespace {

rigs::Plan somePlan() {
  static const rigs::Plan plan = [] {
    rigs::Problems none;
    return *rigs::readPlan(*rigs::planStartText("one-kettle"), "/nonexistent", none);
  }();
  return plan;
}

void tryOverrides(gui::Overrides overrides) {
  // A rules file would be looked for wherever the words say.
  std::erase_if(overrides, [](const gui::Override& one) { return one.option == "--rules"; });
  rigs::Plan plan = somePlan();
  rigs::Problems problems;
  gui::applyOverrides(overrides, plan, problems);
  for (const rigs::Problem& problem : problems)
    fuzz::require(!problem.where.empty() && !rigs::inEnglish(problem.message).empty());
}

void tryVariations(const std::vector<std::string>& typed) {
  static const std::string document = *rigs::planStartText("one-kettle");
  static const std::vector<std::size_t> slots{0};
  for (const std::string& one : typed) {
    rigs::Problems problems;
    const auto read = rigs::readVariation(one, {document, "/nonexistent", slots}, problems);
    fuzz::require(read.has_value() != rigs::hasErrors(problems));
    for (const rigs::Problem& problem : problems)
      fuzz::require(!problem.where.empty() && !rigs::inEnglish(problem.message).empty());
    if (!read) continue;
    const std::uint64_t count = read->count();
    fuzz::require(count > 0 && !read->pointers().empty());
    for (const std::uint64_t i : {std::uint64_t{0}, count / 2, count - 1})
      fuzz::require(!rigs::withAll(document, read->placed(read->at(i))).empty());
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::vector<std::string> lines(1);
  for (const char c : fuzz::textOf(data, size)) {
    if (c == '\n') {
      lines.emplace_back();
    } else if (c != '\0') {
      lines.back() += c;
    }
  }
  std::vector<const char*> words;
  for (const std::string& line : lines) words.push_back(line.c_str());
  const gui::CommandLine line = gui::readCommandLine(words, "en");
  fuzz::require(!line.language.empty());
  if (const auto* wrong = std::get_if<gui::NotUnderstood>(&line.asked)) {
    fuzz::require(!wrong->sentences.empty());
    for (const rigs::Told& one : wrong->sentences) fuzz::require(!rigs::inEnglish(one).empty());
  }
  if (const auto* request = std::get_if<gui::Request>(&line.asked)) {
    tryOverrides(request->overrides);
    tryVariations(request->vary);
  }
  return 0;
}
