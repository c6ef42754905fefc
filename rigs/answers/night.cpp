// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/night.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "physics/growth.hpp"

namespace rigs {
namespace {

using namespace physics;

// Between two points of a simulated curve the distance to the room falls by a constant share a
// minute, as Newton's cooling has it; on a straight line where one of them is as cold as the room.
class Piece {
 public:
  Piece(const NightPoint& from, const NightPoint& to, Temperature room)
      : from_(from),
        to_(to),
        first_(inKelvins(from.wort - room)),
        last_(inKelvins(to.wort - room)),
        room_(room) {}

  Temperature at(Time alone) const {
    const double share = static_cast<double>((alone - from_.alone) / (to_.alone - from_.alone));
    if (!isNewtons()) return from_.wort + share * (to_.wort - from_.wort);
    return room_ + kelvins(first_ * std::pow(last_ / first_, share));
  }
  // How much of it has passed when it is at `limit`, which lies between its ends.
  double shareUntil(Temperature limit) const {
    const double left = inKelvins(limit - room_);
    if (!isNewtons() || left <= 0.0)
      return static_cast<double>((limit - from_.wort) / (to_.wort - from_.wort));
    return std::log(left / first_) / std::log(last_ / first_);
  }
  Time below(Temperature limit) const {
    const Time whole = to_.alone - from_.alone;
    const bool before = from_.wort < limit;
    const bool after = to_.wort < limit;
    if (before == after) return before ? whole : seconds(0.0);
    const double until = shareUntil(limit);
    return (before ? until : 1.0 - until) * whole;
  }

 private:
  bool isNewtons() const { return first_ > 1e-3 && last_ > 1e-3 && first_ != last_; }

  NightPoint from_, to_;
  double first_, last_;  // K above the room
  Temperature room_;
};

std::vector<Piece> piecesOf(const std::vector<NightPoint>& curve, Temperature room) {
  std::vector<Piece> pieces;
  for (std::size_t i = 1; i < curve.size(); ++i)
    if (curve[i].alone > curve[i - 1].alone) pieces.emplace_back(curve[i - 1], curve[i], room);
  return pieces;
}

Temperature wortAt(const std::vector<NightPoint>& curve, Temperature room, Time alone) {
  const auto next = std::find_if(curve.begin() + 1, curve.end(),
                                 [&](const NightPoint& point) { return point.alone >= alone; });
  if (next == curve.end()) return curve.back().wort;
  return Piece(*(next - 1), *next, room).at(alone);
}

std::optional<Time> firstBelow(const std::vector<NightPoint>& curve, Temperature room,
                               Temperature limit) {
  if (curve.front().wort < limit) return seconds(0.0);
  for (std::size_t i = 1; i < curve.size(); ++i) {
    if (curve[i].wort >= limit) continue;
    const Time whole = curve[i].alone - curve[i - 1].alone;
    return curve[i - 1].alone + Piece(curve[i - 1], curve[i], room).shareUntil(limit) * whole;
  }
  return std::nullopt;
}

void addGrowth(Night& night, const std::vector<NightPoint>& curve, Temperature room) {
  std::vector<WarmPiece> pieces;
  for (std::size_t i = 1; i < curve.size(); ++i)
    pieces.push_back({curve[i].alone - curve[i - 1].alone, curve[i - 1].wort, curve[i].wort, room});
  for (const WarmPiece& piece : pieces) {
    night.doublings += doublingsOfPathogens(piece);
    night.souring += tenfolds(kSporeFormingLactic, piece);
  }
  night.tooManyAfter = whenDoubled(pieces, kMostDoublings);
}

std::vector<Time> readingTimes(Time alone) {
  std::vector<Time> times{minutes(10.0), minutes(20.0), minutes(30.0)};
  for (double hour = 1.0; hour <= 48.0; hour += 1.0) times.push_back(hours(hour));
  std::erase_if(times, [&](Time time) { return time >= alone - seconds(1.0); });
  times.push_back(alone);
  return times;
}

std::optional<Night> nightOf(const std::vector<CurvePoint>& points, const Plan& plan,
                             std::optional<Temperature> morning, bool curves) {
  const Time alone = timeAlone(plan);
  if (points.size() < 2) return std::nullopt;
  std::vector<NightPoint> curve;
  for (const CurvePoint& point : points)
    curve.push_back({point.time - points.front().time, point.wort});
  // Of a day of its own: where that was followed in steps, a curve shows in the last digits.
  if (morning) curve.back().wort = *morning;
  const Temperature room = plan.place.room;
  Night night{.alone = alone,
              .first = curve.front().wort,
              .morning = curve.back().wort,
              .passesAfter = firstBelow(curve, room, kWarmUpTo),
              .below = seconds(0.0),
              .warm = seconds(0.0),
              .doublings = 0.0,
              .tooManyAfter = {},
              .souring = 0.0,
              .readings = {},
              .curve = {}};
  for (const Piece& piece : piecesOf(curve, room)) {
    night.below += piece.below(kWarmUpTo);
    night.warm += piece.below(kWarmUpTo) - piece.below(kWarmFrom);
  }
  addGrowth(night, curve, room);
  for (const Time& time : readingTimes(alone))
    night.readings.push_back({time, time == alone ? night.morning : wortAt(curve, room, time)});
  if (curves) night.curve = std::move(curve);
  return night;
}

}  // namespace

std::optional<NightAnswer> nightAnswer(const RigPlan& rig, const Plan& plan, const BrewDay& day,
                                       const std::optional<JacketEffect>& jacket, bool curves) {
  if (plan.batch.grain.mass <= kilograms(0.0)) return std::nullopt;
  const Stage* own = hasOwnNight(plan) ? day.find(StageKind::UnpluggedRest) : nullptr;
  std::optional<Temperature> morning;
  if (own) morning = own->last;
  const auto alone = [&] {
    return coolingCurve(rig.rig, asPoured(plan.batch, day), plan.place, timeAlone(plan));
  };
  auto asItIs = !jacket         ? nightOf(alone(), plan, morning, curves)
                : rig.hasJacket ? nightOf(jacket->jacketedNight, plan, morning, curves)
                                : nightOf(jacket->bareNight, plan, morning, curves);
  if (!asItIs) return std::nullopt;
  NightAnswer answer{.own = own != nullptr, .asItIs = std::move(*asItIs), .supposed = std::nullopt};
  if (jacket) {
    answer.supposed = nightOf(rig.hasJacket ? jacket->bareNight : jacket->jacketedNight, plan,
                              std::nullopt, curves);
  }
  return answer;
}

}  // namespace rigs
