// SPDX-License-Identifier: GPL-3.0-or-later
// Lines as edits of a plan, as forms make them: "text POINTER VALUE", "value POINTER JSON",
// "without POINTER", "copy N", "move N", "remove N", "same N NAME", "drop N", "whole N". The
// document stays one, says what was typed, and is laid out to the same; a rig that follows another
// is written as what it is.
#include <algorithm>
#include <charconv>
#include <nlohmann/json.hpp>
#include <sstream>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/json_patch.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/plans/rig_variants.hpp"
#include "tests/fuzz/fuzzed.hpp"

namespace {

using nlohmann::ordered_json;

constexpr const char* kNoFolder = "/nonexistent";  // rigs can be from the catalogue only

std::string edited(const std::string& document, const std::string& line) {
  std::istringstream words(line);
  std::string verb, at, rest;
  words >> verb >> at;
  std::getline(words >> std::ws, rest);
  if (std::count_if(at.begin(), at.end(), [](char c) { return '0' <= c && c <= '9'; }) > 4)
    return document;  // a list of a million entries is nobody's
  const std::size_t rigs = rigs::rigCount(document);
  std::size_t rig = 0;
  std::from_chars(at.data(), at.data() + at.size(), rig);
  rig = std::min(rig, rigs - (rigs > 0 ? 1 : 0));
  if (verb == "text") {
    const std::string after = rigs::withText(document, at, rest);
    fuzz::require(at.ends_with("/-") || rigs::textAt(after, at) == rest);
    return after;
  }
  if (verb == "value") return rigs::withValue(document, at, rest);
  if (verb == "without") {
    const std::string after = rigs::without(document, at);
    fuzz::require(at.empty() || after == rigs::laidOut(after));
    return after;
  }
  if (rigs == 0) return document;
  if (verb == "same" && rigs < 12) return rigs::sameWith(document, rig, rest);
  if (verb == "drop" && rigs > 1) return rigs::removeRig(document, rig, kNoFolder);
  if (verb == "whole") {
    const auto whole = rigs::wholeRigAt(document, rig, kNoFolder);
    if (!whole) return document;
    const std::string after = rigs::changeRig(document, rig, *whole, kNoFolder);
    const auto again = rigs::wholeRigAt(after, rig, kNoFolder);
    fuzz::require(again && rigs::saysTheSame(*again, *whole));
    return after;
  }
  if (verb == "copy" && rigs < 12) return rigs::withRigDuplicated(document, rig, rest);
  if (verb == "move") return rigs::withRigMoved(document, rig, (rig + 1) % rigs);
  if (verb == "remove" && rigs > 1) return rigs::withRigRemoved(document, rig);
  return document;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string all(fuzz::textOf(data, size));
  // What is typed comes from fields, which hold characters.
  if (!ordered_json::accept(
          ordered_json(all).dump(-1, ' ', true, ordered_json::error_handler_t::replace)) ||
      ordered_json(all)
              .dump(-1, ' ', true, ordered_json::error_handler_t::replace)
              .find("\\ufffd") != std::string::npos)
    return 0;
  std::string document = *rigs::planStartText("one-kettle");
  std::istringstream lines(all);
  for (std::string line; std::getline(lines, line);) {
    try {
      document = edited(document, line);
    } catch (const rigs::EditError&) {
      continue;  // a place that is not there, or no JSON: forms do not ask for it
    }
    fuzz::require(ordered_json::accept(document));
  }
  fuzz::require(ordered_json::parse(rigs::laidOut(document)) == ordered_json::parse(document));
  rigs::Problems problems;
  fuzz::requireTold(rigs::readPlan(document, "/nonexistent", problems).has_value(), problems);
  return 0;
}
