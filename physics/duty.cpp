// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/duty.hpp"

#include <algorithm>

namespace physics {
namespace {

// The integral of a piecewise constant share over a sliding stretch is largest where one of the
// stretch's ends meets an end of a span.
template <class ShareOf>
Time mostWithin(const std::vector<DutySpan>& spans, Time stretch, const ShareOf& shareOf) {
  const auto within = [&](Time from) {
    Time sum = seconds(0.0);
    for (const DutySpan& span : spans) {
      const Time overlap = std::min(span.end, from + stretch) - std::max(span.begin, from);
      if (overlap > seconds(0.0)) sum += shareOf(span) * overlap;
    }
    return sum;
  };
  Time most = seconds(0.0);
  for (const DutySpan& span : spans) {
    for (const Time& from :
         {span.begin, span.end, Time(span.begin - stretch), Time(span.end - stretch)}) {
      most = std::max(most, within(from));
    }
  }
  return most;
}

template <class Counts>
Time longestRun(const std::vector<DutySpan>& spans, const Counts& counts) {
  Time longest = seconds(0.0);
  Time running = seconds(0.0);
  for (const DutySpan& span : spans) {
    running = counts(span) ? running + (span.end - span.begin) : seconds(0.0);
    longest = std::max(longest, running);
  }
  return longest;
}

}  // namespace

Time Duty::current() const {
  Time sum = seconds(0.0);
  for (const DutySpan& span : spans) sum += span.share * (span.end - span.begin);
  return sum;
}

double Duty::mean() const {
  if (spans.empty()) return 0.0;
  const Time whole = spans.back().end - spans.front().begin;
  return whole > seconds(0.0) ? static_cast<double>(current() / whole) : 0.0;
}

Time Duty::longestFull() const {
  return longestRun(spans, [](const DutySpan& span) { return span.share >= kUnbroken; });
}

Time Duty::longestEnabled() const {
  return longestRun(spans, [](const DutySpan& span) { return span.enabled; });
}

Time Duty::mostCurrentWithin(Time stretch) const {
  return mostWithin(spans, stretch, [](const DutySpan& span) { return span.share; });
}

Time Duty::mostEnabledWithin(Time stretch) const {
  return mostWithin(spans, stretch, [](const DutySpan& span) { return span.enabled ? 1.0 : 0.0; });
}

Duty dutyOf(const BrewDay& day) {
  Duty duty;
  // What the element does not heat at all it is unplugged for.
  const auto unplugged = [](const Stage& stage) {
    return stage.kind == StageKind::UnpluggedRest ||
           (stage.kind == StageKind::Draining && stage.ledger.element <= joules(0.0));
  };
  for (const Stage& stage : day.stages) {
    const Time lasted = stage.end - stage.begin;
    if (lasted <= seconds(0.0)) continue;
    const double share = stage.ledger.element / (lasted * day.electrical.delivered);
    duty.spans.push_back({.begin = stage.begin,
                          .end = stage.end,
                          .share = std::clamp(share, 0.0, 1.0),
                          .enabled = !unplugged(stage)});
  }
  return duty;
}

}  // namespace physics
