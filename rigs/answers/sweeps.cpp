// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/sweeps.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/jacket.hpp"
#include "physics/sizing.hpp"
#include "physics/water.hpp"
#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/pool.hpp"

namespace rigs {
namespace {

using physics::BrewDay;

// Quick looks: a picture's pixel is worth far more than this.
constexpr physics::SimulationOptions kForPictures{.curves = false, .relativeTolerance = 1e-7};

physics::AsPlanned asPlanned(const RigPlan& rig) {
  return rig.hasJacket ? physics::AsPlanned::Jacketed : physics::AsPlanned::Bare;
}

physics::Rig withRating(const physics::Rig& rig, physics::Power rating) {
  physics::Rig other = rig;
  other.element.rating = rating;
  other.element.ratedAt = rig.supply.nominal;
  return other;
}

// The ends exactly, and closer together where the curves bend: from 0 by squares, else by ratios.
template <class Q>
Q between(const Q& low, const Q& high, int i, int count) {
  if (i == 0) return low;
  if (i == count - 1) return high;
  const double share = static_cast<double>(i) / (count - 1);
  const double ratio = high / low;
  if (!std::isfinite(ratio)) return share * share * high;
  return std::pow(ratio, share) * low;
}

std::optional<physics::Time> difference(const std::optional<physics::Time>& a,
                                        const std::optional<physics::Time>& b) {
  if (!a || !b) return std::nullopt;
  return *a - *b;
}

physics::Length sideThickness(const physics::Rig& rig) {
  physics::Length sum = physics::metres(0.0);
  for (const physics::Layer& layer : rig.vessel.side.insulation) sum += layer.thickness;
  return sum;
}

void scaleLayers(physics::Covering& covering, double factor) {
  for (physics::Layer& layer : covering.insulation) {
    layer.thickness *= factor;
    layer.flatInsulance *= factor;
  }
}

}  // namespace

JacketDay jacketDay(const BrewDay& day, const Tariff& tariff, std::optional<physics::Time> begins) {
  return {.done = day.outcome == physics::Outcome::Done,
          .toBoil = timeToBoil(day),
          .fromWall = day.total.fromWall(),
          .cost = dayCost(day, tariff, begins)};
}

std::vector<PowerPoint> againstPower(const RigPlan& rig, const Plan& plan, physics::Power weakest,
                                     physics::Power strongest, int count,
                                     std::optional<physics::Power> also) {
  assert(count >= 2);
  physics::SimulationOptions options = kForPictures;
  options.waterGuess = physics::simulate(rig.rig, plan.batch, plan.place, options).water *
                       physics::waterDensity(physics::celsius(20.0));
  std::vector<physics::Power> ratings;
  for (int i = 0; i < count; ++i) ratings.push_back(between(weakest, strongest, i, count));
  if (also) ratings.insert(std::lower_bound(ratings.begin(), ratings.end(), *also), *also);
  return forAll(ratings.size(), [&](std::size_t i) {
    const physics::Power rating = ratings[i];
    const BrewDay day =
        physics::simulate(withRating(rig.rig, rating), plan.batch, plan.place, options);
    PowerPoint point{.element = rating,
                     .delivered = day.electrical.delivered,
                     .current = day.electrical.current,
                     .toBoil = timeToBoil(day),
                     .toStrike = timeOf(day, physics::StageKind::Strike),
                     .boilOffPerHour = std::nullopt,
                     .boilOff = std::nullopt};
    if (day.boil) {
      point.boilOffPerHour = day.boil->shareOfPreBoilPerHour;
      point.boilOff = day.boil->coldBoilOff;
    }
    return point;
  });
}

std::vector<JacketPoint> againstThickness(const RigPlan& rig, const Plan& plan,
                                          physics::Length thickest, int count) {
  assert(count >= 2);
  const physics::Length stated = sideThickness(rig.jacketed);
  const BrewDay own = physics::simulate(rig.rig, plan.batch, plan.place, kForPictures);
  const BrewDay bare =
      rig.hasJacket ? physics::supposedDay(own, rig.bare, plan.batch, plan.place, kForPictures)
                    : own;
  return forAll(static_cast<std::size_t>(count), [&](std::size_t at) {
    const int i = static_cast<int>(at);
    const physics::Length thickness = between(physics::metres(0.0), thickest, i, count);
    physics::Rig wrapped = rig.jacketed;
    if (i == 0 || stated <= physics::metres(0.0)) {
      wrapped = rig.bare;
    } else {
      const double factor = thickness / stated;
      scaleLayers(wrapped.vessel.side, factor);
      scaleLayers(wrapped.vessel.base, factor);
      scaleLayers(wrapped.vessel.lid, factor);
    }
    const BrewDay day = physics::supposedDay(own, wrapped, plan.batch, plan.place, kForPictures);
    const physics::Energy saved = bare.total.fromWall() - day.total.fromWall();
    return JacketPoint{.thickness = thickness,
                       .savedToBoil = difference(timeToBoil(bare), timeToBoil(day)),
                       .savedToStrike = difference(timeOf(bare, physics::StageKind::Strike),
                                                   timeOf(day, physics::StageKind::Strike)),
                       .savedFromWall = saved,
                       .savedMoney = moneySaved(bare, day, plan.tariff, plan.start()),
                       .bare = jacketDay(bare, plan.tariff, plan.start()),
                       .jacketed = jacketDay(day, plan.tariff, plan.start())};
  });
}

std::vector<JacketPowerPoint> jacketAgainstPower(const RigPlan& rig, const Plan& plan,
                                                 physics::Power weakest, physics::Power strongest,
                                                 int count) {
  assert(count >= 2);
  return forAll(static_cast<std::size_t>(count), [&](std::size_t i) {
    const physics::Power rating = between(weakest, strongest, static_cast<int>(i), count);
    const auto [bare, jacketed] =
        physics::jacketDays(withRating(rig.bare, rating), withRating(rig.jacketed, rating),
                            plan.batch, plan.place, asPlanned(rig), kForPictures);
    const physics::Energy saved = bare.total.fromWall() - jacketed.total.fromWall();
    return JacketPowerPoint{.element = rating,
                            .savedToBoil = difference(timeToBoil(bare), timeToBoil(jacketed)),
                            .savedFromWall = saved,
                            .savedMoney = moneySaved(bare, jacketed, plan.tariff, plan.start()),
                            .bare = jacketDay(bare, plan.tariff, plan.start()),
                            .jacketed = jacketDay(jacketed, plan.tariff, plan.start())};
  });
}

}  // namespace rigs
