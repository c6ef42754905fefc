// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/chilling.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

constexpr double kStepOfLogarithm = 0.08;
constexpr double kLeastSteps = 4.0;
constexpr double kStandSteps = 40.0;
// Slower than this nobody waits for it: a degree in ten days.
const TemperatureRate kAtRest = kelvins(1.0) / hours(240.0);

// Seconds, kilograms of water left, joules.
struct Account {
  double time = 0.0, water = 0.0, taken = 0.0, lost = 0.0, carried = 0.0;

  Account plus(const Account& rate, double step) const {
    return {time + step * rate.time, water + step * rate.water, taken + step * rate.taken,
            lost + step * rate.lost, carried + step * rate.carried};
  }
};
Account average(const std::array<Account, 4>& k) {
  const auto of = [&](double Account::*m) {
    return (k[0].*m + 2.0 * (k[1].*m) + 2.0 * (k[2].*m) + k[3].*m) / 6.0;
  };
  return {of(&Account::time), of(&Account::water), of(&Account::taken), of(&Account::lost),
          of(&Account::carried)};
}

class Cooling {
 public:
  Cooling(const HotWort& wort, const ChillingKettle& kettle, const ChillSink& sink)
      : wort_(wort),
        kettle_(kettle),
        sink_(sink),
        losses_(kettle.vessel, Hose{}, kettle.room, fillOf(wort), kettle.open,
                kettle.evaporationFactor, kettle.lossFactor) {
    account_.water = inKilograms(wort.water);
    course_.curve.push_back({seconds(0.0), wort.at});
  }

  // False where it comes to rest before.
  bool fallTo(Temperature goal, Temperature coldest) {
    const double first = std::log(inKelvins(wort_.at - coldest));
    const double last = std::log(inKelvins(goal - coldest));
    const double steps = std::max(kLeastSteps, std::ceil((first - last) / kStepOfLogarithm));
    const double step = (last - first) / steps;
    for (double i = 0.0; i < steps; i += 1.0) {
      const auto at = [&](double way) {
        return coldest + kelvins(std::exp(first + (i + way) * step));
      };
      // Per kelvin of distance and unit of the logarithm, dT = (T - coldest) dx.
      const auto rates = [&](Temperature t, const Account& a) -> std::optional<Account> {
        const auto one = perSecond(t, kilograms(a.water));
        if (one.warming > -kAtRest) return std::nullopt;
        return one.account(inSeconds(Time((t - coldest) / one.warming)));
      };
      const auto next = stepped(rates, at, step);
      if (!next) {
        course_.comesToRestAt = wort_.at;
        return false;
      }
      account_ = *next;
      wort_.at = i + 1.0 < steps ? at(1.0) : goal;
      note();
    }
    return true;
  }

  void stand(Time time) {
    const double step = inSeconds(time) / kStandSteps;
    for (double i = 0.0; i < kStandSteps; i += 1.0) {
      const Temperature from = wort_.at;
      std::array<Account, 4> k{};
      std::array<double, 4> warming{};
      for (std::size_t j = 0; j < 4; ++j) {
        const double way = j == 0 ? 0.0 : (j == 3 ? 1.0 : 0.5) * step;
        const Account trial = j == 0 ? account_ : account_.plus(k[j - 1], way);
        const Temperature t = j == 0 ? from : from + kelvins(warming[j - 1] * way);
        const auto one = perSecond(t, kilograms(trial.water));
        k[j] = one.account(1.0);
        warming[j] = inKelvins(one.warming * seconds(1.0));
      }
      account_ = account_.plus(average(k), step);
      wort_.at =
          from +
          kelvins(step * (warming[0] + 2.0 * warming[1] + 2.0 * warming[2] + warming[3]) / 6.0);
      note();
    }
  }

  Time now() const { return seconds(account_.time); }
  Temperature at() const { return wort_.at; }
  ChillCourse take(const HotWort& began) {
    wort_.water = kilograms(account_.water);
    course_.last = wort_;
    course_.heat = {.givenUp = heatIn(began) - heatIn(wort_),
                    .taken = joules(account_.taken),
                    .lost = joules(account_.lost),
                    .carried = joules(account_.carried)};
    return std::move(course_);
  }
  std::vector<std::optional<Time>>& passed() { return course_.passed; }

 private:
  struct Instant {
    TemperatureRate warming;
    Power taken, lost;
    MassFlow vapour;
    SpecificEnergy warmth;

    Account account(double over) const {
      return {.time = over,
              .water = -inKilogramsPerSecond(vapour) * over,
              .taken = inWatts(taken) * over,
              .lost = inWatts(lost) * over,
              .carried = inWatts(vapour * warmth) * over};
    }
  };

  Length fillOf(const HotWort& wort) const {
    return std::min(Length(wort.volume() / crossSection(kettle_.vessel)), kettle_.vessel.height);
  }

  Instant perSecond(Temperature t, Mass water) {
    const HotWort wort{water, wort_.extract, t};
    const HeatFlows flows = losses_.flows(t, fillOf(wort));
    const HeatCapacity stored =
        water * waterSpecificHeat(t) + wort_.extract * extractSpecificHeat(t) + kettle_.shell();
    const Power lost = flows.lost.total();
    const Power taken = sink_(t);
    return Instant{.warming = -(lost + taken) / stored,
                   .taken = taken,
                   .lost = lost,
                   .vapour = flows.vapour,
                   .warmth = waterEnthalpy(t)};
  }

  template <class Rates, class At>
  std::optional<Account> stepped(const Rates& rates, const At& at, double step) const {
    std::array<Account, 4> k{};
    for (std::size_t j = 0; j < 4; ++j) {
      const double way = j == 0 ? 0.0 : j == 3 ? 1.0 : 0.5;
      const auto rate = rates(at(way), j == 0 ? account_ : account_.plus(k[j - 1], way * step));
      if (!rate) return std::nullopt;
      k[j] = *rate;
    }
    return account_.plus(average(k), step);
  }

  void note() { course_.curve.push_back({now(), wort_.at}); }

  Energy heatIn(const HotWort& wort) const {
    const TemperatureDifference above = wort.at - celsius(0.0);
    return wort.water * waterEnthalpy(wort.at) + wort.extract * extractEnthalpy(wort.at) +
           kettle_.shell() * above;
  }

  HotWort wort_;
  const ChillingKettle& kettle_;
  const ChillSink& sink_;
  HeatLossModel losses_;
  Account account_;
  ChillCourse course_;
};

}  // namespace

double HotWort::strength() const { return extract / (water + extract); }

Volume HotWort::volume() const { return mass() / wortDensity(strength(), at); }

HotWort hotWort(Volume atTwenty, double extract, Temperature at) {
  const Mass mass = atTwenty * wortDensity(extract, celsius(20.0));
  return {.water = (1.0 - extract) * mass, .extract = extract * mass, .at = at};
}

ChillCourse chill(const HotWort& wort, const ChillingKettle& kettle, const ChillSink& sink,
                  Temperature coldest, const std::vector<Temperature>& goals) {
  Cooling cooling(wort, kettle, sink);
  bool goesOn = true;
  for (const Temperature& goal : goals) {
    assert(goal >= coldest + kelvins(0.1 - 1e-9));
    if (goesOn && goal < cooling.at()) goesOn = cooling.fallTo(goal, coldest);
    cooling.passed().push_back(goesOn ? std::optional(cooling.now()) : std::nullopt);
  }
  return cooling.take(wort);
}

ChillCourse standHot(const HotWort& wort, const ChillingKettle& kettle, Time time) {
  const ChillSink none = [](Temperature) { return watts(0.0); };
  Cooling cooling(wort, kettle, none);
  if (time > seconds(0.0)) cooling.stand(time);
  return cooling.take(wort);
}

}  // namespace physics
