// SPDX-License-Identifier: GPL-3.0-or-later
// What to take care of on this day with this rig, short enough to be read at the kettle.
#include <optional>
#include <string_view>
#include <utility>

#include "gui/telling/sheet.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/answers/night.hpp"
#include "rigs/answers/safety.hpp"
#include "rigs/results/cautions.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::Told;

Told coverText(const rigs::RigPlan& planned, const rigs::RigAnswer& rig) {
  const physics::Length top = planned.rig.element.topHeight;
  return Told(TOLD("Sheet",
                   "Switch off before draining or transferring: %1 cover the element, and %2 are "
                   "left at the least."),
              amount(physics::crossSection(planned.rig.vessel) * top), amount(rig.day.lowest));
}

Told headspaceText(const rigs::RigPlan& planned, const rigs::RigAnswer& rig) {
  return Told(
      TOLD("Sheet", "%1 stay empty at the fullest: reduce power before the boil and at additions."),
      amount(physics::capacity(planned.rig.vessel) - rig.day.fullest));
}

Told liftingText(const rigs::Plan& plan, const rigs::RigPlan& planned, const rigs::RigAnswer& rig) {
  return Told(TOLD("Sheet",
                   "The kettle weighs up to %1: do not carry hot liquid; let it run, pump or "
                   "siphon."),
              amount(rigs::heaviestKettle(rig.day, plan.batch, planned.rig.vessel)));
}

// In place of a caution that explains itself at length elsewhere: what to do, with every condition.
// Nothing where it stands on the sheet already; the caution itself where no shorter form is true.
Told onSheet(const rigs::Caution& caution, const rigs::Plan& plan, const rigs::RigAnswer& rig) {
  const rigs::RigPlan& planned = plan.rigs.front();
  const std::string_view topic = caution.topic;
  // The last one says it for mains; the verdict on the circuit has what long use asks, and its
  // conditions; "scald" has what to do, without the seconds.
  if (topic == "mains" || topic == "long use" || topic == "scald times") return {};
  if (topic == "dry firing") return coverText(planned, rig);
  if (topic == "headspace") return headspaceText(planned, rig);
  if (topic == "lifting") return liftingText(plan, planned, rig);
  if (topic == "warm wort")
    return Told(TOLD("Sheet",
                     "Always boil after a luke-warm hold, and do not count on the boil to undo "
                     "many warm hours."));
  if (topic == "steam force")
    return Told(TOLD("Sheet", "Vents, drains and lids stay open while it heats."));
  // The list has chilling where a chiller is stated, and its own cautions what to take care of.
  if (topic == "cooling" && rig.chill && rig.chill->chiller.isStated) return {};
  if (topic == "cooling")
    return Told(TOLD("Sheet",
                     "No hours after the boil are counted here: cool quickly and pitch promptly."));
  return caution.text;
}

// Wort is left warm by this very plan, not by any that somebody might make.
bool applies(const rigs::Caution& caution, const rigs::RigAnswer& rig) {
  if (caution.topic != "left warm") return true;
  return rig.night && rig.night->own && rig.night->asItIs.below > physics::minutes(1.0);
}

}  // namespace

std::vector<Told> sheetCautions(const Case& of, std::size_t i) {
  const rigs::Plan plan = rigs::onlyRig(of.plan, i);
  rigs::Answers answers{{of.rig(i)}, of.solution.answers.ownRules};
  // What its jacket would be without, and the room, are other questions.
  answers.rigs.front().jacket.reset();
  answers.rigs.front().room.reset();
  std::vector<Told> all;
  for (const rigs::Caution& one : rigs::cautionsFor(rigs::About::Everything, plan, answers)) {
    if (!applies(one, answers.rigs.front())) continue;
    Told text = onSheet(one, plan, answers.rigs.front());
    if (!text.empty()) all.push_back(std::move(text));
  }
  return all;
}

}  // namespace gui::telling
