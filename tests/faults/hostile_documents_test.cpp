// SPDX-License-Identifier: GPL-3.0-or-later
// Bundled documents with some of their nodes changed, by a fixed seed: each is accepted, and then
// answered with finite figures at once, or told with place and sentence.
#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <ctime>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "rigs/answers/plan_check.hpp"
#include "rigs/circuits/rules_file.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/support/mutated_json.hpp"

namespace {

using Json = nlohmann::ordered_json;
using rigs::Problems;

std::vector<Json> bundledPlans() {
  std::vector<Json> all{Json::parse(rigs::newPlanText())};
  for (const std::string& name : rigs::planStartNames())
    all.push_back(Json::parse(*rigs::planStartText(name)));
  // With what the demo leaves out of its batch.
  all.front()["batch"]["rinse"] = {
      {"volume", "3 L"}, {"temperature", "75 C"}, {"heated", "same circuit"}, {"power", "1 kW"}};
  all.front()["batch"]["drain"] = {{"time", "15 min"}, {"element", "on"}};
  return all;
}

std::string damaged(const Json& whole, test_support::Mutator& mutator) {
  Json document = whole;
  for (std::size_t left = 1 + mutator.below(3); left > 0; --left) mutator.mutate(document);
  return document.dump(-1, ' ', false, Json::error_handler_t::replace);
}

// Every problem has a place, which stands in the document or is where something is missing, and a
// sentence of its own.
void areTold(const Problems& problems, bool wasRead, const std::string& document) {
  EXPECT_NE(wasRead, rigs::hasErrors(problems)) << document;
  for (const rigs::Problem& problem : problems) {
    EXPECT_TRUE(problem.where.empty() || problem.where.starts_with('/')) << problem.where;
    const std::string said = rigs::inEnglish(problem.message);
    EXPECT_GT(said.size(), 10U) << document;
    EXPECT_LT(said.size(), 1500U) << said;
    EXPECT_EQ(said.find_first_of("\x1b\r\b"), std::string::npos) << said;
  }
}

double processorSeconds() {
  timespec now{};
  ::clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

TEST(HostilePlans, AreAnsweredOrTold) {
  const std::vector<Json> plans = bundledPlans();
  int accepted = 0, answered = 0;
  for (unsigned seed = 1; seed <= 5000; ++seed) {
    test_support::Mutator mutator(seed);
    const std::string document = damaged(plans[seed % plans.size()], mutator);
    Problems problems;
    const auto plan = rigs::readPlan(document, "/nonexistent", problems);
    areTold(problems, plan.has_value(), document);
    accepted += plan ? 1 : 0;
    if (!plan || accepted % 5 != 0) continue;
    rigs::checkPlan(*plan, problems);
    if (rigs::hasErrors(problems)) continue;
    ++answered;
    const double began = processorSeconds();
    // Throws where a figure is not finite.
    const std::string json = rigs::resultJson(*plan, rigs::answer(*plan, rigs::Depth::Day));
    EXPECT_LT(processorSeconds() - began, 1.0) << document;
    EXPECT_TRUE(Json::accept(json)) << document;
  }
  EXPECT_GT(accepted, 500);
  EXPECT_LT(accepted, 4500);
  EXPECT_GT(answered, 50);
}

TEST(HostileRules, AreReadOrTold) {
  int accepted = 0;
  std::vector<Json> bundled;
  for (const rigs::EmbeddedDocument& one : rigs::embeddedDocuments())
    if (one.name.starts_with("rules/")) bundled.push_back(Json::parse(one.text));
  for (unsigned seed = 1; seed <= 1500; ++seed) {
    test_support::Mutator mutator(seed);
    const std::string document = damaged(bundled[seed % bundled.size()], mutator);
    Problems problems;
    const auto rules = rigs::rulesIn(document, "mine.json", "/place/rules", problems);
    areTold(problems, rules != nullptr, document);
    accepted += rules ? 1 : 0;
  }
  EXPECT_GT(accepted, 100);
}

TEST(HostileTariffs, AreReadOrTold) {
  int accepted = 0;
  const Json plan = Json::parse(*rigs::planStartText("one-kettle"));
  std::vector<Json> bundled;
  for (const rigs::EmbeddedDocument& one : rigs::embeddedDocuments())
    if (one.name.starts_with("tariffs/")) bundled.push_back(Json::parse(one.text));
  for (unsigned seed = 1; seed <= 3000; ++seed) {
    test_support::Mutator mutator(seed);
    Json document = plan;
    document["tariff"] = Json::parse(damaged(bundled[seed % bundled.size()], mutator));
    Problems problems;
    const auto read = rigs::readPlan(document.dump(), "/nonexistent", problems);
    areTold(problems, read.has_value(), document["tariff"].dump());
    accepted += read ? 1 : 0;
  }
  EXPECT_GT(accepted, 100);
}

}  // namespace
