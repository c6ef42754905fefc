// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the room?
#include <fmt/format.h>

#include <algorithm>

#include "gui/terminal/rig_table.hpp"
#include "gui/terminal/terminal.hpp"
#include "rigs/results/cautions.hpp"

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

std::string humidityText(const rigs::Plan& plan, const rigs::RoomAnswer& room, UnitSystem units) {
  if (room.day.saturatedAt) {
    return fmt::format(
        "The air is full of vapour from {} into the day on, and {} of water run down what is "
        "coldest.",
        roughTime(*room.day.saturatedAt), format(room.day.condensed, units));
  }
  const double before = plan.place.relativeHumidity;
  constexpr double kNoRise = 0.005;  // less would print as the same percent
  if (room.day.peakHumidity < before + kNoRise) {
    return fmt::format("The air never gets moister than the {} it begins with.",
                       percent(before, units));
  }
  return fmt::format("The air's humidity rises from {} to {}, {} into the day.",
                     percent(before, units), percent(room.day.peakHumidity, units),
                     roughTime(room.day.peakAt));
}

// Where the most vapour would take the air if it went on, and what room it would need.
std::string levelText(const rigs::Plan& plan, const rigs::RoomAnswer& room, UnitSystem units) {
  std::string text =
      fmt::format("All its vapour would fill {} of bone-dry air.",
                  rigs::formatLike(room.fills, units == UnitSystem::SI ? "1 m3" : "1 ft3"));
  if (!room.levelHumidity || room.day.saturatedAt) return text;
  text += fmt::format(" If the most went on, {} of exchange would level off ",
                      airflowText(plan.room.airflow, units));
  return text + (*room.levelHumidity > 1.0
                     ? std::string("beyond what air can hold: it would run down walls and windows.")
                     : fmt::format("at {}.", percent(*room.levelHumidity, units)));
}

// What each published airflow would do for these rigs.
void sayPublished(Page& page, const rigs::Answers& answers, UnitSystem units) {
  const auto& first = answers.rigs.front().room->published;
  for (std::size_t k = 0; k < first.size(); ++k) {
    std::string enough, short_;
    for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
      std::string& list = answers.rigs[i].room->published[k].suffices ? enough : short_;
      list += (list.empty() ? "" : ", ") + letter(i);
    }
    const rigs::PublishedAirflow& one = first[k].published;
    std::string verdict = enough.empty() ? "too little for all" : "enough for " + enough;
    if (short_.empty()) verdict = "enough for all";
    if (!enough.empty() && !short_.empty()) verdict += ", too little for " + short_;
    page.say("·  ", fmt::format("{}: {}, {} [{}; {}]", airflowText(one.airflow, units), one.name,
                                verdict, one.source, one.status));
  }
}

}  // namespace

Page roomPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.cautions = rigs::cautionTexts(rigs::About::Room, plan, answers, units);
  page.notes.push_back(roomText(plan.room, units));
  page.heading("What happens to the room?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RoomAnswer& room = *answers.rigs[i].room;
    std::string text = fmt::format(
        "{} of vapour and {} of heat go into the room; at most {} of vapour and {} of heat.",
        format(room.day.intoRoom, units), format(room.day.sensible, units),
        format(room.day.peakVapour, units), wattsText(room.day.peakSensible));
    page.say(letter(i), text + ' ' + humidityText(plan, room, units));
    page.say("   ", levelText(plan, room, units));
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

  page.heading("What others move, and is it enough?");
  page.say(fmt::format(
      "Published airflows of kitchens beside the airflow that holds {} while most vapour rises{}. "
      "They are made for cooking, not for a boil of hours.",
      percent(plan.room.holdHumidity, units),
      plan.room.captured > 0.0
          ? ", for what the plan's hood leaves"
          : ", all of it mixed with the room's air; a hood over the kettle takes vapour before it "
            "mixes and can do with less: state \"hood_captures\""));
  if (!answers.rigs.empty()) sayPublished(page, answers, units);
  page.say(fmt::format(
      "Above {} houses in North America need make-up air (IRC; read). A hood that gives its air "
      "back into the room removes no vapour.",
      airflowText(rigs::kMakeUpAirAbove, units)));
  page.say(
      "Indoor humidity is best between 30 and 50 % and below 60 % (United States EPA). The balance "
      "is over humidity ratios, kg of water per kg of dry air; the older one over vapour densities "
      "asks 5 to 10 % more air. The room is taken as well mixed and as keeping its temperature.");
  return page;
}

}  // namespace gui
