// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/reading_fit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "rigs/readings/thinning.hpp"

namespace rigs {
namespace {

using namespace physics;
using fitting::Numbers;
using fitting::Observation;

constexpr double kNothing = std::numeric_limits<double>::quiet_NaN();
// More readings are taken together in groups.
constexpr std::size_t kMostCompared = 40;
constexpr double kUnstirredNoise = 1.0;  // K, before rounding: at one place of a kettle that heats
constexpr double kHeats = 0.1 / 60.0;    // K/s, from which it is uneven
// What a wrong one is off by: misread, mistyped, another kettle's.
constexpr double kSlipOfTemperature = 5.0;  // K
constexpr double kSlipsOfOthers = 20.0;     // times their own noise
// Plug-in meters of class 1, and marks of a kettle, at one standard deviation.
constexpr double kMeterNoise = 0.015;
constexpr double kMeterFlickers = 1e3;    // J
constexpr double kMarkNoise = 0.35e-3;    // m3
constexpr double kGravityNoise = 0.0010;  // a hydrometer read cold

// Of the median day's way to the end of the mash: a day with a weaker or stronger element has
// whatever was read before that in its own mash, too.
constexpr double kSurelyBefore = 0.7;

constexpr SimulationOptions kWithCurves{
    .curves = true, .relativeTolerance = 1e-6, .leastForAnyPower = false};

double logarithmOf(const Prior& prior) {
  return isOffset(prior.what) ? prior.median : std::log(prior.median);
}

template <class Q, class To>
double orNothing(const std::optional<Q>& given, const To& to) {
  return given ? to(*given) : kNothing;
}

// 60 where every time is a whole minute: people read clocks so.
double secondsReadTo(const std::vector<readings::Reading>& read) {
  const bool minutes = std::all_of(read.begin(), read.end(), [](const readings::Reading& one) {
    return std::abs(std::remainder(inSeconds(one.at), 60.0)) < 1e-6;
  });
  return minutes ? 60.0 : 1.0;
}

}  // namespace

ReadingFit::ReadingFit(const Plan& plan, std::size_t rig,
                       const std::vector<readings::Reading>& read,
                       const readings::Thermometer& thermometer, std::function<bool()> stop)
    : plan_(plan), days_(plan, rig), stop_(std::move(stop)) {
  for (const Prior& prior : days_.priors())
    evidence_.before.push_back({logarithmOf(prior), std::max(prior.spread, 1e-6)});
  evidence_.before.push_back({0.0, thermometer.checked ? kCheckedOff : kThermometerOff});
  median_ = dayAt(medians());
  secondsApart_ = secondsReadTo(read);
  compare(read, thermometer);
  mashIsEnough_ = areAllInTheMash();
}

Numbers ReadingFit::medians() const {
  Numbers at;
  for (const fitting::Belief& belief : evidence_.before) at.push_back(belief.mean);
  return at;
}

bool ReadingFit::isLikely(const Numbers& at) const {
  for (std::size_t k = 0; k < at.size(); ++k) {
    const fitting::Belief& belief = evidence_.before[k];
    if (!(std::abs(at[k] - belief.mean) <= kFarthest * belief.spread)) return false;
  }
  return true;
}

UnknownValues ReadingFit::valuesOf(const Numbers& at) const {
  UnknownValues values{};
  for (std::size_t k = 0; k < kUnknowns; ++k)
    values[k] = isOffset(static_cast<Unknown>(k)) ? at[k] : std::exp(at[k]);
  return values;
}

BrewDay ReadingFit::dayAt(const Numbers& at) const {
  return simulate(days_.with(valuesOf(at)), kWithCurves);
}

BrewDay ReadingFit::readDayAt(const Numbers& at) const {
  SimulationOptions options = kWithCurves;
  options.untilMashEnds = mashIsEnough_;
  return simulate(days_.with(valuesOf(at)), options);
}

bool ReadingFit::areAllInTheMash() const {
  const Stage* heating = median_.find(StageKind::HeatingToBoil);
  if (!heating || !median_.find(StageKind::Strike)) return false;
  const ReadDay day(median_);
  return std::all_of(compared_.begin(), compared_.end(), [&](const Compared& one) {
    const auto at = day.timeOf(one.when);
    return at &&
           (one.when.since == StageKind::UnpluggedRest ? *at < heating->begin
                                                       : *at < kSurelyBefore * heating->begin);
  });
}

void ReadingFit::compare(const std::vector<readings::Reading>& read,
                         const readings::Thermometer& thermometer) {
  const std::vector<ReadAt> moments = momentsOf(read, plan_.startOfDay);
  compareTemperatures(read, moments, thermometer);
  const auto other = [&](std::size_t i, double value, double step, double noise) {
    add({i, moments[i], read[i].value, 1},
        {.value = value, .step = step, .noise = noise, .wide = kSlipsOfOthers * noise});
  };
  // Of a meter only what came since its first reading counts; one alone began with the day.
  const auto energies = std::count_if(read.begin(), read.end(), [](const readings::Reading& one) {
    return std::holds_alternative<Energy>(one.value);
  });
  std::optional<double> zero;
  if (energies == 1) zero = 0.0;
  for (std::size_t i = 0; i < read.size(); ++i) {
    if (const auto* energy = std::get_if<Energy>(&read[i].value)) {
      if (zero) {
        const double since = inJoules(*energy) - *zero;
        other(i, since, read[i].step, kMeterNoise * since + kMeterFlickers);
      } else {
        zero = inJoules(*energy);
        meterZero_ = moments[i];
      }
    }
    if (const auto* volume = std::get_if<readings::ReadVolume>(&read[i].value))
      other(i, inCubicMetres(volume->volume), read[i].step, kMarkNoise);
    if (const auto* gravity = std::get_if<readings::ReadGravity>(&read[i].value))
      other(i, gravity->gravity, read[i].step, kGravityNoise);
  }
}

void ReadingFit::compareTemperatures(const std::vector<readings::Reading>& read,
                                     const std::vector<ReadAt>& moments,
                                     const readings::Thermometer& thermometer) {
  // Each run since the same event is a log of its own.
  for (std::size_t begin = 0; begin < read.size();) {
    std::vector<std::size_t> which;
    std::size_t end = begin;
    for (; end < read.size() && moments[end].since == moments[begin].since; ++end)
      if (std::holds_alternative<Temperature>(read[end].value)) which.push_back(end);
    begin = std::max(end, begin + 1);
    std::vector<readings::LoggedPoint> log;
    for (const std::size_t i : which)
      log.push_back({inSeconds(moments[i].after), inKelvin(std::get<Temperature>(read[i].value))});
    std::size_t row = 0;
    for (const readings::Thinned& one : readings::thinned(log, kMostCompared)) {
      const std::size_t i = which[row + one.rows / 2];
      row += one.rows;
      const ReadAt when{moments[i].since, seconds(one.at)};
      const double step = thermometer.step ? inKelvins(*thermometer.step) : read[i].step;
      add({i, when, kelvin(one.value), one.rows},
          temperatureSeen(one.value, one.rows > 1 ? 0.0 : step, one.spread, when,
                          thermometer.stirred));
    }
  }
}

Observation ReadingFit::temperatureSeen(double kelvin, double step, double spread,
                                        const ReadAt& when, bool stirred) const {
  const ReadDay day(median_);
  const auto wortAfter = [&](double more) {
    const auto at = day.timeOf({when.since, when.after + seconds(more)});
    return orNothing(at ? day.wort(*at) : std::nullopt, [](Temperature t) { return inKelvin(t); });
  };
  const double rate = (wortAfter(30.0) - wortAfter(-30.0)) / 60.0;
  const double perClock =
      std::isfinite(rate) ? std::abs(rate) * secondsApart_ / std::sqrt(12.0) : 0.0;
  const bool uneven = !stirred && rate > kHeats;
  const double noise = std::hypot(uneven ? kUnstirredNoise : kStirredNoise, perClock);
  // A group's mean repeats a thermometer's noise less, but not what stirring leaves uneven.
  const double least = uneven ? kUnstirredNoise : 0.1;
  return {.value = kelvin,
          .step = step,
          .noise = spread > 0.0 ? std::max(std::hypot(spread, perClock), least) : noise,
          .wide = kSlipOfTemperature};
}

void ReadingFit::add(Compared one, const Observation& seen) {
  compared_.push_back(std::move(one));
  const bool there = std::isfinite(saidBy(median_, medians()).back());
  if (there)
    evidence_.seen.push_back(seen);
  else
    compared_.pop_back();
}

Numbers ReadingFit::saidBy(const BrewDay& simulated, const Numbers& at) const {
  const ReadDay day(simulated);
  const auto meter = [&](const ReadAt& when) {
    const auto time = day.timeOf(when);
    return orNothing(time ? day.meter(*time) : std::nullopt, [](Energy e) { return inJoules(e); });
  };
  Numbers said;
  for (const Compared& one : compared_) {
    const auto time = day.timeOf(one.when);
    if (!time) {
      said.push_back(kNothing);
    } else if (std::holds_alternative<Temperature>(one.value)) {
      said.push_back(orNothing(day.wort(*time), [](Temperature t) { return inKelvin(t); }) +
                     at[kThermometer]);
    } else if (std::holds_alternative<Energy>(one.value)) {
      said.push_back(meter(one.when) - (meterZero_ ? meter(*meterZero_) : 0.0));
    } else if (const auto* volume = std::get_if<readings::ReadVolume>(&one.value)) {
      said.push_back(orNothing(volume->hot ? day.hot(*time) : day.cold(*time),
                               [](Volume v) { return inCubicMetres(v); }));
    } else {
      said.push_back(day.gravity(*time).value_or(kNothing));
    }
  }
  return said;
}

fitting::Model ReadingFit::model() const {
  return modelOf(&ReadingFit::readDayAt,
                 [this](const BrewDay& day, const Numbers& at) { return saidBy(day, at); });
}

fitting::Model ReadingFit::modelOf(
    std::function<Numbers(const BrewDay&, const Numbers&)> what) const {
  return modelOf(&ReadingFit::dayAt, std::move(what));
}

fitting::Model ReadingFit::modelOf(
    DayAt simulated, std::function<Numbers(const BrewDay&, const Numbers&)> what) const {
  return [this, simulated, what = std::move(what)](const std::vector<Numbers>& places) {
    return forAll(places.size(), [&](std::size_t i) {
      if (!stopped_ && stop_ && stop_()) stopped_ = true;
      if (!stopped_ && isLikely(places[i])) return what((this->*simulated)(places[i]), places[i]);
      Numbers nothing = what(median_, places[i]);
      // Once stopped, nobody looks at it.
      if (!stopped_) std::fill(nothing.begin(), nothing.end(), kNothing);
      return nothing;
    });
  };
}

}  // namespace rigs
