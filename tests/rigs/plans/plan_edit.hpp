// SPDX-License-Identifier: GPL-3.0-or-later
// The demo plan with some of its values replaced, and what reading that gives.
#pragma once

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>

#include "rigs/answers/plan_check.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace test_support {

using Json = nlohmann::ordered_json;
using Edits = std::initializer_list<std::pair<const char*, Json>>;

// JSON pointers and new values; the value `removed()` takes the key away.
inline Json removed() { return Json(Json::value_t::discarded); }

inline std::string demoWith(Edits edits) {
  Json document = Json::parse(rigs::newPlanText());
  for (const auto& [pointer, value] : edits) {
    const Json::json_pointer at(pointer);
    if (value.is_discarded()) {
      document[at.parent_pointer()].erase(at.back());
    } else {
      document[at] = value;
    }
  }
  return document.dump();
}

struct Reading {
  std::optional<rigs::Plan> plan;
  rigs::Problems problems;
};

// Also checked, if there is something to check.
inline Reading readChecked(const std::string& document,
                           const std::filesystem::path& folder = "/nonexistent") {
  Reading reading;
  reading.plan = rigs::readPlan(document, folder, reading.problems);
  if (reading.plan) rigs::checkPlan(*reading.plan, reading.problems);
  return reading;
}

// "error /batch/wort: ..." line by line, for messages of failed tests.
inline std::string told(const rigs::Problems& problems) {
  std::string all;
  for (const rigs::Problem& p : problems)
    all += std::string(p.severity == rigs::Severity::Error ? "error " : "warning ") + p.where +
           ": " + rigs::inEnglish(p.message) + '\n';
  return all;
}

}  // namespace test_support
