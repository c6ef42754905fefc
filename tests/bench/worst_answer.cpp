// SPDX-License-Identifier: GPL-3.0-or-later
// The longest that any accepted plan keeps the processor busy, with everything that is asked of it:
// worst_answer [PLANS [FIRST_SEED]]. Bundled plans with some of their nodes changed, and every
// other time the longest so far with more of them; prints each plan that took longer than all
// before.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/plan_check.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/support/mutated_json.hpp"

namespace {

double processorSeconds() {
  timespec now{};
  ::clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

double secondsOf(const rigs::Plan& plan) {
  const double began = processorSeconds();
  rigs::answer(plan, rigs::Depth::Everything);
  return processorSeconds() - began;
}

}  // namespace

int main(int argc, char** argv) {
  using Json = nlohmann::ordered_json;
  const int wanted = argc > 1 ? std::atoi(argv[1]) : 1000;
  unsigned seed = argc > 2 ? static_cast<unsigned>(std::atoi(argv[2])) : 1;
  std::vector<Json> plans{Json::parse(rigs::newPlanText())};
  for (const std::string& name : rigs::planStartNames())
    plans.push_back(Json::parse(*rigs::planStartText(name)));

  Json longest;
  double worst = 0.0, sum = 0.0;
  for (int solved = 0; solved < wanted; ++seed) {
    test_support::Mutator mutator(seed);
    Json document = seed % 2 == 0 && longest.is_object() ? longest : plans[seed / 2 % plans.size()];
    for (std::size_t left = 1 + mutator.below(8); left > 0; --left) mutator.mutate(document);
    const std::string text = document.dump(-1, ' ', false, Json::error_handler_t::replace);
    rigs::Problems problems;
    const auto plan = rigs::readPlan(text, "/nonexistent", problems);
    if (!plan) continue;
    rigs::checkPlan(*plan, problems);
    if (rigs::hasErrors(problems)) continue;
    ++solved;
    double took = secondsOf(*plan);
    sum += took;
    if (took > worst) took = std::min(took, secondsOf(*plan));
    if (took <= worst) continue;
    worst = took;
    longest = document;
    std::printf("%.3f s, seed %u, %zu rigs: %s\n", took, seed, plan->rigs.size(), text.c_str());
    std::fflush(stdout);
  }
  std::printf("%d plans, %.3f s each on average, %.3f s at most\n", wanted, sum / wanted, worst);
}
