// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a plan: what is accepted has an answer to every question, within bounds, whose JSON
// is JSON and whose spreadsheet has as many fields in each line as its head has.
#include <algorithm>
#include <functional>
#include <nlohmann/json.hpp>
#include <sstream>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "rigs/answers/plan_check.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/fuzz/fuzzed.hpp"

namespace {

std::size_t fieldsOf(const std::string& line) {
  bool quoted = false;
  std::size_t fields = 1;
  for (const char c : line) {
    if (c == '"') quoted = !quoted;
    if (c == ',' && !quoted) ++fields;
  }
  fuzz::require(!quoted);
  return fields;
}

void requireTable(const std::string& csv) {
  std::istringstream lines(csv);
  std::size_t fields = 3;  // of cautions alone
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with("table,")) fields = fieldsOf(line);
    fuzz::require(fieldsOf(line) == fields);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view document = fuzz::textOf(data, size);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, "/nonexistent", problems);
  if (!plan || plan->rigs.size() > 3) return 0;
  rigs::checkPlan(*plan, problems);
  if (rigs::hasErrors(problems)) return 0;

  const auto questions = gui::telling::allQuestions();
  const std::size_t which = std::hash<std::string_view>()(document);
  const gui::telling::Question question = questions[which % questions.size()];
  const rigs::Reader reader{which % 2 == 0 ? rigs::UnitSystem::SI : rigs::UnitSystem::UsCustomary};
  const rigs::Solution solution = rigs::solve(*plan, gui::telling::neededBy(question));
  const auto json = nlohmann::json::parse(rigs::resultJson(*plan, solution.answers));
  fuzz::require(json.at("rigs").size() == plan->rigs.size());
  const auto answer = gui::telling::answerTo(question, solution, reader);
  std::vector<std::string> names;
  for (const rigs::RigPlan& rig : plan->rigs) names.push_back(rig.name);
  requireTable(gui::telling::csvOf(answer, names, reader));
  for (const rigs::Told& one : answer.sentences) fuzz::require(!rigs::tell(one, reader).empty());
  return 0;
}
