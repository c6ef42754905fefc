// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/plan_input.hpp"

#include <algorithm>
#include <charconv>
#include <string_view>
#include <utility>
#include <vector>

#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui {
namespace {

using rigs::Told;

Told nameOf(const std::string& file) {
  if (file.empty()) return Told(TOLD("Terminal", "the bundled example"));
  if (file == "-") return Told(TOLD("Terminal", "standard input"));
  return Told::just(rigs::Verbatim{rigs::shownPath(file)});
}

Told noSuchRig(std::string_view typed, std::vector<std::size_t> slots) {
  const rigs::Quoted given{std::string(typed)};
  const rigs::Count last{static_cast<long long>(slots.size())};
  std::sort(slots.begin(), slots.end());
  if (slots.back() + 1 == slots.size())
    return Told(TOLD("Terminal",
                     "%1 was given; a whole number from 1 to %2, or a letter from a to %3, is "
                     "accepted, for example \"2\""),
                given, last, rigs::Verbatim{rigs::letterOfSlot(slots.back())});
  std::string letters;
  for (const std::size_t slot : slots)
    letters += (letters.empty() ? "" : ", ") + rigs::letterOfSlot(slot);
  return Told(TOLD("Terminal",
                   "%1 was given; a whole number from 1 to %2, or a letter of this plan's rigs "
                   "(%3), is accepted, for example \"%4\""),
              given, last, rigs::Verbatim{letters},
              rigs::Verbatim{rigs::letterOfSlot(slots.back())});
}

// The rig that was typed, by number from 1 or by its letter: "2", "b", "(b)". Problems where the
// plan has no such rig.
std::optional<std::size_t> rigFrom(std::string_view typed, const std::vector<rigs::RigPlan>& rigs,
                                   rigs::Problems& problems) {
  if (typed.empty()) return std::nullopt;
  std::string_view inside = typed;
  if (inside.starts_with('(') && inside.ends_with(')'))
    inside = inside.substr(1, inside.size() - 2);
  const std::vector<std::size_t> slots = rigs::slotsOf(rigs);
  std::size_t number = 0;
  const char* end = inside.data() + inside.size();
  const auto read = std::from_chars(inside.data(), end, number);
  if (read.ec == std::errc() && read.ptr == end && 1 <= number && number <= rigs.size())
    return number - 1;
  if (inside.size() == 1) {
    const char small =
        'A' <= inside[0] && inside[0] <= 'Z' ? static_cast<char>(inside[0] | 0x20) : inside[0];
    const auto slot = rigs::slotOfLetter(std::string_view(&small, 1));
    const auto found = slot ? std::find(slots.begin(), slots.end(), *slot) : slots.end();
    if (found != slots.end()) return static_cast<std::size_t>(found - slots.begin());
  }
  problems.push_back({rigs::Severity::Error, "--rig", noSuchRig(typed, slots)});
  return std::nullopt;
}

}  // namespace

rigs::Problems PlanInput::allProblems() const {
  rigs::Problems all = ofOptions;
  all.insert(all.end(), ofDocument.begin(), ofDocument.end());
  return all;
}

PlanInput readPlanInput(const Request& request, rigs::Problems ofOptions) {
  PlanInput read;
  const bool demo = request.file.empty();
  read.name = nameOf(request.file);
  read.ofOptions = std::move(ofOptions);
  const bool fromInput = request.file == "-";
  const std::filesystem::path path = fromInput ? "/dev/stdin" : request.file;
  read.document = demo ? std::string(rigs::demoPlanText()) : rigs::readText(path);
  read.folder = demo || fromInput ? std::filesystem::path(".") : path.parent_path();
  read.plan = rigs::readPlan(read.document, read.folder, read.ofDocument);
  // Without a plan the options are read all the same, so that nobody meets their problems only
  // after mending the document.
  rigs::Plan none;
  applyOverrides(request.overrides, read.plan ? *read.plan : none, read.ofOptions);
  if (read.plan) read.rig = rigFrom(request.rig, read.plan->rigs, read.ofOptions);
  return read;
}

void askForRig(PlanInput& read, const rigs::Template<1>& text) {
  if (!read.plan || read.rig || read.plan->rigs.size() == 1) return;
  const auto named = std::any_of(read.ofOptions.begin(), read.ofOptions.end(),
                                 [](const rigs::Problem& one) { return one.where == "--rig"; });
  if (named) return;
  rigs::List letters{{}, rigs::Joint::Or};
  for (const std::size_t slot : rigs::slotsOf(read.plan->rigs))
    letters.items.emplace_back(rigs::Verbatim{rigs::letterOfSlot(slot)});
  read.ofOptions.push_back({rigs::Severity::Error, "--rig", Told(text, std::move(letters))});
}

Told theCommand() { return Told(TOLD("Terminal", "the command")); }

}  // namespace gui
