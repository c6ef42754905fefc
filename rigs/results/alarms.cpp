// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/alarms.hpp"

#include <cmath>

#include "rigs/answers/night.hpp"

namespace rigs {
namespace {

using physics::Time;

constexpr FormatOptions kDigitsOfAlarms{.significantDigits = 2, .decimals = {}};

Told nearBoilText(const Alarm& alarm, Time now) {
  if (alarm.isNow || !alarm.at.low)
    return Told(TOLD("Alarms",
                     "Near the boil: stay with the kettle, open its lid and be ready to turn the "
                     "power down. Foam rises fast, and it scalds."));
  return Told(TOLD("Alarms",
                   "It may boil from %1 on: be there before, open the lid and be ready to turn the "
                   "power down. Foam rises fast, and it scalds."),
              clockSeenAt(now, *alarm.at.low));
}

Told uncoveredText(const Alarm& alarm, Time now) {
  const Amount share = amount(alarm.share, kDigitsOfAlarms);
  if (!alarm.at.low)
    return Told(TOLD("Alarms",
                     "On %1 of such days the element is uncovered: switch it off before; dry, it "
                     "burns out in seconds."),
                share);
  return Told(TOLD("Alarms",
                   "On %1 of such days the element is uncovered, from %2 on: switch it off before; "
                   "dry, it burns out in seconds."),
              share, clockSeenAt(now, *alarm.at.low));
}

Told belowHoldingText(const Alarm& alarm, Time now) {
  const Amount limit = amount(kWarmUpTo, kDigitsOfAlarms);
  if (alarm.isNow)
    return Told(
        TOLD("Alarms",
             "The mash is below %1: wort left so for hours can sour and grow bacteria. Boil "
             "it promptly."),
        limit);
  if (alarm.at.low && alarm.at.high)
    return Told(
        TOLD("Alarms",
             "The mash falls below %1 between %2 and %3 (8 of 10 such nights): from then on "
             "it can sour and grow bacteria. Leave it no longer than planned, and boil it "
             "promptly."),
        limit, clockSeenAt(now, *alarm.at.low), clockSeenAt(now, *alarm.at.high));
  return Told(
      TOLD("Alarms",
           "On %1 of such nights the mash falls below %2: from then on it can sour and grow "
           "bacteria. Leave it no longer than planned, and boil it promptly."),
      amount(alarm.share, kDigitsOfAlarms), limit);
}

}  // namespace

std::string_view alarmCode(AlarmOf what) {
  switch (what) {
    case AlarmOf::NearBoil:
      return "near_boil";
    case AlarmOf::MashBelowHolding:
      return "mash_below_57_C";
    case AlarmOf::ElementUncovered:
      return "element_uncovered";
    case AlarmOf::DayStops:
      return "day_stops";
    case AlarmOf::Late:
      return "late";
    case AlarmOf::ReadingContradicted:
      return "reading_contradicted";
    case AlarmOf::TwoStories:
      return "two_stories";
    case AlarmOf::OtherUnit:
      return "other_unit";
    case AlarmOf::TwelveHoursOff:
      return "twelve_hours_off";
    case AlarmOf::EventMissing:
      return "event_missing";
    case AlarmOf::FromTheFuture:
      break;
  }
  return "from_the_future";
}

Told otherUnitText() {
  return Told(TOLD("Learned",
                   "All of them would fit far better in the other unit, °F for °C or the reverse: "
                   "is that what was read?"));
}

Told twelveHoursOffText() {
  return Told(TOLD("Learned",
                   "All of them would fit far better twelve hours earlier or later: is the clock "
                   "right, morning for evening?"));
}

Clock clockSeenAt(Time now, Time moment) {
  // Of minutes as clocks show them: a second before midnight is tomorrow.
  constexpr double kADay = 24.0 * 60.0;
  const double today = kADay * std::floor(std::round(physics::inMinutes(now)) / kADay);
  const double since = physics::inMinutes(moment) - today;
  return {physics::minutes(std::round(since) < 0.0 ? since + kADay : since)};
}

Told alarmText(const Alarm& alarm, Time now) {
  switch (alarm.what) {
    case AlarmOf::NearBoil:
      return nearBoilText(alarm, now);
    case AlarmOf::MashBelowHolding:
      return belowHoldingText(alarm, now);
    case AlarmOf::ElementUncovered:
      return uncoveredText(alarm, now);
    case AlarmOf::DayStops:
      return Told(TOLD("Alarms", "On %1 of such days the wort never gets as hot as planned."),
                  amount(alarm.share, kDigitsOfAlarms));
    case AlarmOf::Late:
      return Told(TOLD("Alarms",
                       "Late by about %1: later than 9 of 10 such days before anything was read."),
                  roughly(alarm.by));
    case AlarmOf::ReadingContradicted:
      return Told(TOLD("Alarms",
                       "The last reading does not fit what was expected: stir and read again, and "
                       "check thermometer, unit and clock."));
    case AlarmOf::TwoStories:
      return Told(TOLD("Alarms",
                       "The readings do not go together, and which of them are wrong cannot be "
                       "told: the ranges are wide for that."));
    case AlarmOf::OtherUnit:
      return otherUnitText();
    case AlarmOf::TwelveHoursOff:
      return twelveHoursOffText();
    case AlarmOf::EventMissing:
      return Told(TOLD("Alarms",
                       "What was read last lies where the day has no such moment, so it tells "
                       "nothing: is an event missing, such as \"heating\" or \"boil\", or did "
                       "something go into the boil about then?"));
    case AlarmOf::FromTheFuture:
      break;
  }
  return Told(TOLD("Alarms",
                   "What was read last is %1 ahead of this clock: is its time right, or that of "
                   "this clock?"),
              roughly(alarm.by));
}

}  // namespace rigs
