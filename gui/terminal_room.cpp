// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the room?
#include <fmt/format.h>

#include <algorithm>

#include "gui/rig_table.hpp"
#include "gui/terminal.hpp"
#include "rigs/circuit_words.hpp"
#include "rigs/safety.hpp"

namespace gui {
namespace {

using rigs::format;
using rigs::RigAnswer;
using rigs::RigPlan;

// As fans are sold.
std::string airflowText(physics::VolumeFlow flow, UnitSystem units) {
  return rigs::formatLike(flow, units == UnitSystem::SI ? "1 m3/h" : "1 ft3/min");
}

std::string percent(double share, UnitSystem units) {
  return format(share, units, {.significantDigits = 2, .decimals = {}});
}

std::string roomText(const rigs::RoomPlan& room, UnitSystem units) {
  const std::string air =
      fmt::format("{} of air, {} of it exchanged with outdoors at {} and {}",
                  rigs::formatLike(room.volume, units == UnitSystem::SI ? "1 m3" : "1 ft3"),
                  airflowText(room.airflow, units), format(room.outdoors, units),
                  percent(room.outdoorHumidity, units));
  const std::string hood = room.captured > 0.0 ? fmt::format("; a hood takes {} of the vapour",
                                                             percent(room.captured, units))
                                               : std::string();
  return (room.isStated ? "The room: " : "The plan's \"place\" has no \"air\"; assumed: ") + air +
         hood + '.';
}

}  // namespace

Page roomPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.cautions = rigs::roomCautions(plan, answers, units);
  page.notes.push_back(roomText(plan.room, units));
  page.heading("What happens to the room?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RoomAnswer& room = *answers.rigs[i].room;
    std::string text = fmt::format(
        "{} of vapour and {} of heat go into the room; at most {} of vapour and {} of heat.",
        format(room.day.intoRoom, units), format(room.day.sensible, units),
        format(room.day.peakVapour, units), wattsText(room.day.peakSensible));
    text += room.day.saturatedAt
                ? fmt::format(
                      " The air is full of vapour from {} into the day on, and {} of water "
                      "run down what is coldest.",
                      roughTime(*room.day.saturatedAt), format(room.day.condensed, units))
                : fmt::format(" The air's humidity rises from {} to {}, {} into the day.",
                              percent(plan.place.relativeHumidity, units),
                              percent(room.day.peakHumidity, units), roughTime(room.day.peakAt));
    page.say(letter(i), text);
    if (room.windowFace) {
      page.say("   ",
               fmt::format("The window's inner face is at {}: {}.", format(*room.windowFace, units),
                           room.day.windowWetAt
                               ? "wet from " + roughTime(*room.day.windowWetAt) + " into the day on"
                               : std::string("it stays dry")));
    }
    if (!room.airflow) {
      page.say("   ", fmt::format("No airflow holds {}: outdoors is no drier than that.",
                                  percent(plan.room.holdHumidity, units)));
    } else {
      text = fmt::format("{} hold {} while most vapour rises", airflowText(*room.airflow, units),
                         percent(plan.room.holdHumidity, units));
      if (plan.room.captured > 0.0 && room.airflowBehindHood)
        text += fmt::format(", {} behind the hood", airflowText(*room.airflowBehindHood, units));
      if (room.closedFull)
        text += fmt::format("; without any exchange the room is full after {} of that",
                            roughTime(*room.closedFull));
      page.say("   ", text + '.');
    }
  }
  RigTable t("room", plan, answers, units);
  t.heading("From the kettle");
  t.quantity("vapour", [](const RigPlan&, const RigAnswer& r) { return r.room->day.released; });
  t.quantity("into the room",
             [](const RigPlan&, const RigAnswer& r) { return r.room->day.intoRoom; });
  t.quantity("most vapour",
             [](const RigPlan&, const RigAnswer& r) { return r.room->day.peakVapour; });
  t.quantity("heat", [](const RigPlan&, const RigAnswer& r) { return r.room->day.sensible; });
  t.quantity("most heat",
             [](const RigPlan&, const RigAnswer& r) { return r.room->day.peakSensible; });
  t.heading("The room's air");
  t.quantity("highest humidity",
             [](const RigPlan&, const RigAnswer& r) { return r.room->day.peakHumidity; });
  t.time("reached after",
         [](const RigPlan&, const RigAnswer& r) { return std::optional(r.room->day.peakAt); });
  t.quantity("condensed", [](const RigPlan&, const RigAnswer& r) { return r.room->day.condensed; });
  const bool metric = units == UnitSystem::SI;
  t.number("airflow to hold it", metric ? "m3/h" : "ft3/min", 0,
           [metric](const RigPlan&, const RigAnswer& r) -> std::optional<double> {
             if (!r.room->airflow) return std::nullopt;
             const double litresAnHour = physics::inLitresPerHour(*r.room->airflow);
             constexpr double kLitresInCubicFoot = 28.316846592;
             return metric ? litresAnHour / 1e3 : litresAnHour / (60.0 * kLitresInCubicFoot);
           });
  t.quantity("heat lost with the air",
             [](const RigPlan&, const RigAnswer& r) { return r.room->airHeat; });
  page.show(t.take());

  const auto flow = [units](double cubicMetresAnHour) {
    return airflowText(physics::litresPerHour(1e3 * cubicMetresAnHour), units);
  };
  page.heading("What others move");
  page.say(fmt::format(
      "A vented kitchen hood moves {} (ASHRAE 62.2, on demand), {} over a hob in the United "
      "Kingdom (Approved Document F); above {} houses in North America need make-up air (IRC). A "
      "hood that gives its air back into the room removes no vapour.",
      flow(180.0), flow(108.0), flow(679.6)));
  page.say(
      "Indoor humidity is best between 30 and 50 % and below 60 % (United States EPA). The balance "
      "is over humidity ratios, kg of water per kg of dry air; the older one over vapour densities "
      "asks 5 to 10 % more air. The room is taken as well mixed and as keeping its temperature.");
  return page;
}

}  // namespace gui
