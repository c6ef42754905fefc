// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/ready_reader.hpp"

#include <algorithm>

#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/tariff_reader.hpp"

namespace rigs {
namespace {

// A day has one beginning: stated, or solved.
bool isAlone(const JsonCursor& at) {
  if (!at.has("day_starts")) return true;
  at.error("ready",
           advised(Told(TOLD("Problem",
                             "\"day_starts\" says when to begin, and \"ready\" has that solved")),
                   Told(TOLD("Problem", "write one of \"day_starts\" and \"ready\""))));
  return false;
}

}  // namespace

std::optional<Ready> readReady(const JsonCursor& at) {
  if (!at.has("ready")) return std::nullopt;
  const bool alone = isAlone(at);
  const auto object = at.object("ready");
  if (!object) return std::nullopt;
  object->warnAboutKeysExcept(keysOf("/ready"));
  const auto what = object->oneOf<Milestone>("what", kMilestoneWords);
  const auto clock = readClock(*object, "at", {});
  if (!alone || !what || !clock) return std::nullopt;
  return Ready{.what = *what, .at = *clock};
}

Told neverComes(Milestone what, const physics::Batch& batch, const std::vector<RigPlan>& rigs) {
  const bool mashes = batch.mashes();
  if (!mashes && (what == Milestone::StrikeWater || what == Milestone::EndOfMash))
    return advised(Told(TOLD("Problem", "this plan mashes nothing: it has no %1"),
                        inQuotes(milestoneWord(what))),
                   Told(TOLD("Problem", "add \"grain\" and \"mash\" to its \"batch\", or write %1"),
                        inQuotes("boil")));
  if (what != Milestone::Pitching) return {};
  const auto without = std::find_if(rigs.begin(), rigs.end(),
                                    [](const RigPlan& rig) { return !rig.chiller.isStated; });
  if (without == rigs.end()) return {};
  return advised(
      Told(TOLD("Problem", "nothing says how the wort of %1 is chilled"), Quoted{without->name}),
      withExample(Told(TOLD("Problem", "state the \"chiller\" of each rig")),
                  Verbatim{R"("chiller": {"kind": "coil"})"}));
}

}  // namespace rigs
