// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/read_day.hpp"

#include <algorithm>

namespace rigs {
namespace {

using namespace physics;

double shareOf(const Stage& stage, Time at) {
  const double lasts = inSeconds(stage.end - stage.begin);
  return lasts > 0.0 ? std::clamp(inSeconds(at - stage.begin) / lasts, 0.0, 1.0) : 1.0;
}

// Between the curve's points by the straight line: 90 of them leave a chord of a night's cooling
// within 2 mK.
template <class Of>
double along(const std::vector<CurvePoint>& curve, Time at, const Of& of) {
  const auto after = std::lower_bound(curve.begin(), curve.end(), at,
                                      [](const CurvePoint& one, Time t) { return one.time < t; });
  if (after == curve.begin()) return of(curve.front());
  if (after == curve.end()) return of(curve.back());
  const CurvePoint& before = *(after - 1);
  const double lasts = inSeconds(after->time - before.time);
  const double share = lasts > 0.0 ? inSeconds(at - before.time) / lasts : 1.0;
  return of(before) + share * (of(*after) - of(before));
}

// Before what goes in, and after the wort rolls again; on either side of a rinse.
constexpr Time kAroundAnAddition = minutes(10.0);

}  // namespace

std::optional<StageKind> stageOf(readings::Event event) {
  switch (event) {
    case readings::Event::PluggedIn:
      return StageKind::Strike;
    case readings::Event::GrainIn:
      return StageKind::MashingIn;
    case readings::Event::Unplugged:
      return StageKind::UnpluggedRest;
    case readings::Event::Heating:
      return StageKind::HeatingToBoil;
    case readings::Event::Boil:
      return StageKind::Boil;
    case readings::Event::LidOn:
    case readings::Event::LidOff:
      break;
  }
  return std::nullopt;
}

std::vector<ReadAt> momentsOf(const std::vector<readings::Reading>& all, Time startOfDay) {
  std::vector<ReadAt> moments;
  std::optional<StageKind> since;
  Time origin = startOfDay;
  for (const readings::Reading& one : all) {
    if (const auto* event = std::get_if<readings::Event>(&one.value)) {
      if (const auto stage = stageOf(*event)) {
        since = stage;
        origin = one.at;
      }
    }
    moments.push_back({since, one.at - origin});
  }
  return moments;
}

ReadDay::ReadDay(const BrewDay& day) : day_(day) {
  const Energy element = day.total.element;
  fromWallPerElement_ = 1.0;
  if (element > joules(0.0)) fromWallPerElement_ = (element + day.total.cable) / element;
}

std::optional<Time> ReadDay::timeOf(const ReadAt& when) const {
  if (!when.since) return when.after;
  const Stage* stage = day_.find(*when.since);
  // A day without grain has no strike, and begins with its heating.
  if (!stage && *when.since == StageKind::Strike) return when.after;
  if (!stage) return std::nullopt;
  // Left alone longer than planned: what came then is not in this day.
  if (stage->kind == StageKind::UnpluggedRest &&
      stage->begin + when.after > stage->end + minutes(1.0))
    return std::nullopt;
  return stage->begin + when.after;
}

const Stage* ReadDay::stageAt(Time at) const {
  if (day_.stages.empty() || at > day_.duration()) return nullptr;
  for (const Stage& stage : day_.stages)
    if (at < stage.end && !stage.curve.empty()) return &stage;
  return day_.stages.back().curve.empty() ? nullptr : &day_.stages.back();
}

std::optional<Temperature> ReadDay::wort(Time at) const {
  const Stage* stage = stageAt(at);
  if (!stage || isAroundAnAddition(at)) return std::nullopt;
  return kelvin(along(stage->curve, at, [](const CurvePoint& one) { return inKelvin(one.wort); }));
}

std::optional<Energy> ReadDay::meter(Time at) const {
  const Stage* now = stageAt(at);
  if (!now) return std::nullopt;
  Energy sum = joules(0.0);
  for (const Stage& stage : day_.stages) {
    if (&stage == now) break;
    sum += stage.ledger.element;
  }
  Energy within = joules(0.0);
  for (std::size_t i = 1; i < now->curve.size(); ++i) {
    const CurvePoint& from = now->curve[i - 1];
    if (from.time >= at) break;
    const CurvePoint& to = now->curve[i];
    const Time until = std::min(at, to.time);
    within += 0.5 * (from.element + to.element) * (until - from.time);
  }
  return fromWallPerElement_ * (sum + within);
}

bool ReadDay::isAroundAnAddition(Time at) const {
  if (day_.rinsed && abs(at - day_.rinsed->at) < kAroundAnAddition) return true;
  return std::any_of(day_.additions.begin(), day_.additions.end(), [&](const Added& added) {
    const Time over = added.backIn ? added.at + *added.backIn : day_.duration();
    return added.at - kAroundAnAddition < at && at < over + kAroundAnAddition;
  });
}

// By straight lines between what is known.
std::optional<ReadDay::InTheBoil> ReadDay::inTheBoil(const Stage& stage, Time at) const {
  if (stage.kind != StageKind::Boil || day_.additions.empty()) return std::nullopt;
  InTheBoil from{stage.begin, day_.preBoilHot, day_.preBoilCold, day_.preBoilGravity};
  InTheBoil to{stage.end, day_.resultHot, day_.resultCold, day_.resultGravity};
  for (const Added& added : day_.additions) {
    if (at < added.at) {
      to = {added.at, added.hotBefore, added.coldBefore, added.gravityBefore};
      break;
    }
    from = {added.at, added.hot, added.cold, added.gravity};
  }
  const double lasts = inSeconds(to.at - from.at);
  const double share = lasts > 0.0 ? std::clamp(inSeconds(at - from.at) / lasts, 0.0, 1.0) : 0.0;
  return InTheBoil{at, from.hot + share * (to.hot - from.hot),
                   from.cold + share * (to.cold - from.cold),
                   from.gravity + share * (to.gravity - from.gravity)};
}

std::optional<Volume> ReadDay::hot(Time at) const {
  const Stage* stage = stageAt(at);
  if (!stage) return std::nullopt;
  if (const auto boil = inTheBoil(*stage, at)) return boil->hot;
  return stage->hotFirst + shareOf(*stage, at) * (stage->hotLast - stage->hotFirst);
}

std::optional<Volume> ReadDay::cold(Time at) const {
  const Stage* stage = stageAt(at);
  if (!stage) return std::nullopt;
  if (const auto boil = inTheBoil(*stage, at)) return boil->cold;
  const auto all = hot(at);
  if (!all || day_.preBoilHot <= litres(0.0)) return std::nullopt;
  return *all * (day_.preBoilCold / day_.preBoilHot);
}

std::optional<double> ReadDay::gravity(Time at) const {
  const Stage* stage = stageAt(at);
  if (!stage) return std::nullopt;
  if (const auto boil = inTheBoil(*stage, at)) return boil->gravity;
  if (stage->kind == StageKind::Draining) return day_.gravityToBoil();
  const bool boils = stage->kind == StageKind::Boil;
  if (!boils && stage->kind != StageKind::HeatingToBoil) return std::nullopt;
  const double first = boils ? day_.preBoilGravity : day_.gravityToBoil();
  const double last = boils ? day_.resultGravity : day_.preBoilGravity;
  return first + shareOf(*stage, at) * (last - first);
}

}  // namespace rigs
