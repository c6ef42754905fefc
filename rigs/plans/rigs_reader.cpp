// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rigs_reader.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/rig_family.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/plans/rig_reader.hpp"

namespace rigs {
namespace {

class RigsReader {
 public:
  RigsReader(std::vector<JsonCursor> entries, const std::filesystem::path& folder,
             const Jacket* compared, Problems& problems)
      : family_(std::move(entries), folder),
        folder_(folder),
        compared_(compared),
        problems_(problems),
        isRead_(family_.size(), false),
        plans_(family_.size()) {}

  std::vector<RigPlan> read() {
    std::vector<RigPlan> rigs;
    for (std::size_t i = 0; i < family_.size(); ++i) {
      readOnce(i);
      if (!plans_[i]) continue;
      refuseTakenName(family_.at(i), *plans_[i], rigs);
      refuseTakenLetter(family_.at(i), *plans_[i], rigs);
      rigs.push_back(*plans_[i]);
    }
    return rigs;
  }

 private:
  // What it follows first: a problem is told of the rig that has it first.
  void readOnce(std::size_t entry) {
    if (isRead_[entry]) return;
    isRead_[entry] = true;
    if (!family_.follows(entry)) {
      plans_[entry] = readRig(family_.at(entry), folder_, compared_, problems_);
      return;
    }
    const auto base = family_.baseOf(entry);
    if (!base) return;
    readOnce(*base);
    if (const auto& whole = family_.whole(entry)) plans_[entry] = follower(entry, *whole);
    if (plans_[entry]) plans_[entry]->sameAs = family_.slotOf(*base);
  }

  std::optional<RigPlan> follower(std::size_t entry, const WholeRig& whole) {
    Problems found;
    auto plan = readWholeRig(whole.json(), compared_, found);
    for (const Problem& one : found) tell(one, entry, whole);
    if (plan) rememberWriting(*plan, whole);
    return plan;
  }

  void tell(const Problem& found, std::size_t entry, const WholeRig& whole) {
    const Home home = whole.homeOf(found.where);
    Problem told{found.severity, home.where,
                 home.file.empty()
                     ? found.message
                     : withinFile(home.file, {found.severity, home.inFile, found.message})};
    const auto isTold = [&](const Problems& all) {
      return std::find(all.begin(), all.end(), told) != all.end();
    };
    if (isTold(problems_) || isTold(toldOfFollowers_)) return;
    toldOfFollowers_.push_back(told);
    const std::string& own = family_.at(entry).where();
    if (told.where != own && !told.where.starts_with(own + '/'))
      told.message = Told(TOLD("Problem", "for the rig %1, which has this from here: %2"),
                          Quoted{nameOf(entry)}, std::move(told.message));
    problems_.push_back(std::move(told));
  }

  std::string nameOf(std::size_t entry) const {
    const auto name = family_.at(entry).textThere("name");
    return name && !name->empty() ? *name : letterOfSlot(family_.slotOf(entry));
  }

  static void refuseTakenName(const JsonCursor& at, const RigPlan& rig,
                              const std::vector<RigPlan>& before) {
    if (std::none_of(before.begin(), before.end(),
                     [&](const RigPlan& other) { return other.name == rig.name; }))
      return;
    at.error("name", advised(Told(TOLD("Problem", "two rigs are called %1"), Quoted{rig.name}),
                             Told(TOLD("Problem", "give each a name of its own"))));
  }

  static void refuseTakenLetter(const JsonCursor& at, const RigPlan& rig,
                                const std::vector<RigPlan>& before) {
    if (!rig.statedSlot || std::none_of(before.begin(), before.end(), [&](const RigPlan& other) {
          return other.statedSlot == rig.statedSlot;
        }))
      return;
    std::vector<std::size_t> taken;
    for (const RigPlan& other : before)
      if (other.statedSlot) taken.push_back(*other.statedSlot);
    at.error("letter",
             advised(Told(TOLD("Problem", "two rigs have the letter %1"),
                          inQuotes(letterOfSlot(*rig.statedSlot))),
                     Told(TOLD("Problem", "give each a letter of its own from a to z, e.g. %1"),
                          inQuotes(letterOfSlot(nextSlot(taken))))));
  }

  RigFamily family_;
  const std::filesystem::path& folder_;
  const Jacket* compared_;
  Problems& problems_;
  Problems toldOfFollowers_;  // as they were found, without whose they are
  std::vector<bool> isRead_;
  std::vector<std::optional<RigPlan>> plans_;
};

}  // namespace

std::vector<RigPlan> readRigs(std::vector<JsonCursor> entries, const std::filesystem::path& folder,
                              const Jacket* compared, Problems& problems) {
  return RigsReader(std::move(entries), folder, compared, problems).read();
}

}  // namespace rigs
