// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/followed_alarms.hpp"

#include <algorithm>
#include <cmath>

#include "rigs/answers/night.hpp"

namespace rigs {
namespace {

using namespace physics;

// Of such days, from which what can go wrong is told.
constexpr double kOftenEnough = 0.1;
// Foam rises as it begins to boil and for a while after. Own choice.
constexpr Time kFoams = minutes(10.0);
// A reading this old says nothing of now.
constexpr Time kOfNow = minutes(15.0);

const Coming* comingOf(const Followed& found, StageKind kind) {
  for (const Coming& one : found.coming)
    if (one.begins == kind) return &one;
  return nullptr;
}

// The last temperature, if it was read a moment ago.
std::optional<Temperature> readNow(const FollowedSoFar& from) {
  for (auto one = from.read.rbegin(); one != from.read.rend(); ++one) {
    if (from.found.now - one->at > kOfNow) break;
    if (const auto* wort = std::get_if<Temperature>(&one->value)) return *wort;
  }
  return std::nullopt;
}

bool justBegan(const FollowedSoFar& from, StageKind kind) {
  const auto& last = from.clock.last();
  return last && from.clock.kinds().at(last->stage) == kind && from.found.now - last->at < kFoams;
}

std::optional<Alarm> nearBoil(const FollowedSoFar& from) {
  if (justBegan(from, StageKind::Boil)) return Alarm{.what = AlarmOf::NearBoil, .isNow = true};
  const Coming* boil = comingOf(from.found, StageKind::Boil);
  if (!boil || from.clock.days().empty()) return std::nullopt;
  // While the mash is still ahead of its heating, no boil is near.
  if (from.found.coming.front().begins != StageKind::Boil) return std::nullopt;
  const Temperature near = from.clock.days().front().boiling - kNearBoiling;
  const auto read = readNow(from);
  const bool isHot = read ? *read >= near : from.found.wort.high && *from.found.wort.high >= near;
  const bool isSoon = boil->at.low && *boil->at.low - from.found.now < kSoon;
  if (!isHot && !isSoon) return std::nullopt;
  return Alarm{.what = AlarmOf::NearBoil, .isNow = isHot, .at = boil->at};
}

// Of the night that is now, or was and is not written as over.
std::optional<Alarm> belowHolding(const FollowedSoFar& from) {
  const auto& kinds = from.clock.kinds();
  const auto found = std::find(kinds.begin(), kinds.end(), StageKind::UnpluggedRest);
  if (found == kinds.end()) return std::nullopt;
  const auto night = static_cast<std::size_t>(found - kinds.begin());
  const auto begins = from.clock.begin(night);
  const bool begun = from.clock.last() ? from.clock.last()->stage == night
                                       : begins.middle && *begins.middle <= from.found.now;
  const bool over = from.found.coming.empty() || from.found.coming.front().stage > night + 1;
  if (!begun || over) return std::nullopt;
  double share = 0.0;
  const Band<Time> at = from.clock.band(
      [&](const DayCourse& day) {
        if (night >= day.stages.size()) return kNoSuchDay;
        const Time from0 = day.stages[night].begin;
        const Time until = night + 1 < day.stages.size() ? day.stages[night + 1].begin : day.over;
        const double off = from.clock.begin(day, night) - inSeconds(from0);
        for (const CoursePoint& point : day.wort) {
          if (point.at < from0 || point.at > until) continue;
          const Time clock = seconds(inSeconds(point.at) + off);
          if (from.lawsGrown(day, point.wort, clock) >= kWarmUpTo) continue;
          share += day.weight;
          return inSeconds(clock);
        }
        return kNoSuchDay;
      },
      [](double s) { return seconds(s); });
  const auto read = readNow(from);
  const bool isNow = (read && *read < kWarmUpTo) || (at.middle && *at.middle <= from.found.now);
  if (share < kOftenEnough && !isNow) return std::nullopt;
  return Alarm{.what = AlarmOf::MashBelowHolding, .isNow = isNow, .at = at, .share = share};
}

std::optional<Alarm> uncoversSoon(const FollowedSoFar& from) {
  const double share = from.clock.share(Outcome::UncoversElement);
  if (share < kOftenEnough || from.found.isOver) return std::nullopt;
  // The first of them: nobody waits for the usual one.
  double first = kNoSuchDay;
  for (const DayCourse& day : from.clock.days())
    if (day.outcome == Outcome::UncoversElement) first = std::min(first, from.clock.end(day));
  Band<Time> at;
  if (std::isfinite(first)) at.low = seconds(first);
  const bool isNow = at.low && *at.low - from.found.now < kSoon;
  return Alarm{.what = AlarmOf::ElementUncovered, .isNow = isNow, .at = at, .share = share};
}

std::optional<Alarm> stops(const FollowedSoFar& from) {
  const double share = from.clock.share(Outcome::DoesNotReachStrike) +
                       from.clock.share(Outcome::DoesNotReachRest) +
                       from.clock.share(Outcome::StrikeTooHot);
  if (share < kOftenEnough) return std::nullopt;
  return Alarm{.what = AlarmOf::DayStops, .isNow = false, .share = share};
}

std::optional<Alarm> lateBy(const FollowedSoFar& from) {
  for (const Coming& one : from.found.coming) {
    if (!one.at.middle || !one.planned.middle || !one.planned.high) continue;
    if (*one.at.middle <= *one.planned.high + minutes(1.0)) return std::nullopt;
    return Alarm{
        .what = AlarmOf::Late, .isNow = true, .at = {}, .by = *one.at.middle - *one.planned.middle};
  }
  return std::nullopt;
}

void addOfReadings(const FollowedSoFar& from, std::vector<Alarm>& all) {
  const auto add = [&](AlarmOf what) { all.push_back({.what = what, .isNow = true}); };
  if (const auto& last = from.found.last; last && !last->isOfTheDay) add(AlarmOf::EventMissing);
  if (const Learned* learned = from.learned) {
    const auto& last = from.found.last;
    const bool asks = last && (last->contradicted || std::abs(last->surprise) >= kAsksAgain);
    if (asks) add(AlarmOf::ReadingContradicted);
    if (learned->stories > 1) add(AlarmOf::TwoStories);
    if (learned->otherUnit) add(AlarmOf::OtherUnit);
    if (learned->twelveHoursOff) add(AlarmOf::TwelveHoursOff);
  }
  if (from.read.empty()) return;
  const Time ahead = from.read.back().at - from.found.now;
  if (ahead > kClocksMayDiffer)
    all.push_back({.what = AlarmOf::FromTheFuture, .isNow = true, .at = {}, .by = ahead});
}

}  // namespace

std::vector<Alarm> alarmsOf(const FollowedSoFar& from) {
  std::vector<Alarm> all;
  for (const auto& one :
       {nearBoil(from), uncoversSoon(from), belowHolding(from), stops(from), lateBy(from)})
    if (one) all.push_back(*one);
  addOfReadings(from, all);
  return all;
}

}  // namespace rigs
