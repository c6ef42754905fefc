// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/next_reading.hpp"

#include <algorithm>
#include <cmath>

#include "rigs/answers/day_figures.hpp"

namespace rigs {
namespace {

using namespace physics;
using fitting::Numbers;

constexpr double kGainEnough = 0.8;     // of the best one's
constexpr double kUsualReading = 0.25;  // K: stirred, and read to half a degree
constexpr double kAwakeFrom = 6.5 * 3600.0, kAwakeUntil = 24.0 * 3600.0;

struct Candidates {
  std::vector<double> at;  // s since the day began
  BandOf awaited;
};

// `late` is how far the real clock is behind the planned one. On the clock's full and half hours
// before a night's end; every ten minutes of a heating.
std::optional<Candidates> candidatesOf(const BrewDay& day, const Plan& plan, double from,
                                       double late) {
  const Stage* night = day.find(StageKind::UnpluggedRest);
  const Stage* heating = day.find(StageKind::HeatingToBoil);
  const bool sleeps = night && from < inSeconds(night->end);
  const Stage* stage = sleeps ? night : heating;
  if (!stage || !finished(day, *stage) || from >= inSeconds(stage->end)) return std::nullopt;
  if (!sleeps && day.outcome != Outcome::Done) return std::nullopt;
  Candidates found{{}, sleeps ? BandOf::Morning : BandOf::BoilBegins};
  const double start = inSeconds(plan.startOfDay) + late;
  const double apart = sleeps ? 1800.0 : 600.0;
  const double last = inSeconds(stage->end) - (sleeps ? 3600.0 : 600.0);
  const double first = std::max(from + 0.5 * apart, inSeconds(stage->begin));
  for (double clock = std::ceil((first + start) / apart) * apart; clock - start <= last;
       clock += apart) {
    const double ofDay = std::fmod(clock, 86400.0);
    const bool awake = (ofDay >= kAwakeFrom && ofDay < kAwakeUntil) || ofDay == 0.0;
    if (!sleeps || awake) found.at.push_back(clock - start);
  }
  return found;
}

// As good as the last one.
double noiseOfTheNext(const ReadingFit& fit) {
  for (std::size_t i = fit.compared().size(); i-- > 0;)
    if (std::holds_alternative<Temperature>(fit.compared()[i].value))
      return fitting::spreadOf(fit.evidence().seen[i]);
  return kUsualReading;
}

}  // namespace

double lawsMayBeOff(Temperature wort, const Plan& plan) {
  return 0.3 + 0.01 * std::abs(inKelvins(wort - plan.place.room));
}

WhatNext whatNext(const ReadingFit& fit, const Plan& plan, const fitting::Story& story,
                  const std::vector<readings::Reading>& read) {
  WhatNext next;
  const BrewDay day = fit.dayAt(story.at);
  const auto moments = momentsOf(read, plan.startOfDay);
  const auto lastRead = ReadDay(day).timeOf(moments.back());
  if (!lastRead) return next;
  // How far the real day's clock is from the planned one's.
  const double late = inSeconds(read.back().at - plan.startOfDay - *lastRead);
  const auto candidates = candidatesOf(day, plan, inSeconds(*lastRead), late);
  if (!candidates) return next;
  const fitting::Model model = fit.modelOf([&](const BrewDay& one, const Numbers& at) {
    Numbers said{dayNumbers(one, plan)[placeOf(candidates->awaited)]};
    const ReadDay readDay(one);
    for (const double time : candidates->at) {
      const auto wort = readDay.wort(seconds(time));
      said.push_back((wort ? inKelvin(*wort) : 0.0) + at[kThermometer]);
    }
    return said;
  });
  const auto slopes = fitting::slopesOf(model, story.at, fitting::stepsFor(fit.evidence()));
  if (!slopes) return next;
  const auto slopeOf = [&](std::size_t row) {
    Numbers slope;
    for (std::size_t k = 0; k < kFitted; ++k) slope.push_back((*slopes)(row, k));
    return slope;
  };
  const bool morning = candidates->awaited == BandOf::Morning;
  const double floor =
      morning ? lawsMayBeOff(kelvin(dayNumbers(day, plan)[placeOf(BandOf::Morning)]), plan) : 0.0;
  const auto half = [&](double variance) {
    return kNineInTen * std::sqrt(std::max(variance, 0.0) + floor * floor);
  };
  next.awaited = morning ? Awaited::Morning : Awaited::BoilBegins;
  const Numbers wanted = slopeOf(0);
  next.halfWidthNow = half(fitting::varianceOf(story.covariance, wanted));
  std::vector<NextReading> all;
  for (std::size_t i = 0; i < candidates->at.size(); ++i)
    all.push_back({plan.startOfDay + seconds(candidates->at[i] + late),
                   half(fitting::varianceAfter(story.covariance, wanted, slopeOf(i + 1),
                                               noiseOfTheNext(fit)))});
  if (all.empty()) return next;
  next.best = *std::min_element(all.begin(), all.end(), [](const auto& a, const auto& b) {
    return a.halfWidth < b.halfWidth;
  });
  const double enough =
      next.halfWidthNow - kGainEnough * (next.halfWidthNow - next.best->halfWidth);
  next.earliest = *std::find_if(all.begin(), all.end(),
                                [&](const NextReading& one) { return one.halfWidth <= enough; });
  return next;
}

}  // namespace rigs
