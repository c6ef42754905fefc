// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/search.hpp"

#include <algorithm>
#include <atomic>
#include <cassert>
#include <cstdint>
#include <mutex>
#include <tuple>
#include <utility>

#include "rigs/answers/begins.hpp"
#include "rigs/answers/plan_check.hpp"
#include "rigs/answers/pool.hpp"

namespace rigs {

using namespace physics;

// Named, since members of Search and Memory have these types.
namespace searching {

// Everything that the sweeps of one rig depend on.
struct SweepInputs {
  Rig rig, bare, jacketed;
  bool jacketIsCompared = false;
  Batch batch;
  Place place;
  Tariff tariff;
  Time startOfDay;             // where it decides the price
  std::optional<Ready> ready;  // likewise
  Power weakest, strongest;
  Length thickest;

  bool operator==(const SweepInputs&) const = default;
};

// What the powers that goals need depend on: not what the rig's own element is rated.
struct PowersInputs {
  Rig rig;
  Batch batch;
  Place place;
  double boilOffPerHour = 0.0;
  Time within;

  bool operator==(const PowersInputs&) const = default;
};

// What no picture shows.
struct Rest {
  BatchAnswer largest, largestOnCircuit;
  std::optional<WhatWouldBoil> whatWouldBoil;
  std::optional<EdgeOfTheBoil> edge;
};

// The last few findings by what they depend on.
template <class Inputs, class Finding>
class Remembered {
 public:
  const Finding* find(const Inputs& inputs) const {
    return findIf([&](const Inputs& from) { return from == inputs; });
  }
  template <class Suits>
  const Finding* findIf(const Suits& suits) const {
    for (const auto& [from, finding] : all_) {
      if (suits(from)) return &finding;
    }
    return nullptr;
  }
  void keep(Inputs inputs, Finding finding) {
    std::erase_if(all_, [&](const auto& one) { return one.first == inputs; });
    all_.insert(all_.begin(), {std::move(inputs), std::move(finding)});
    if (all_.size() > kMost) all_.pop_back();
  }

 private:
  static constexpr std::size_t kMost = 24;  // a full window before and after an edit
  std::vector<std::pair<Inputs, Finding>> all_;
};

}  // namespace searching

namespace {

using namespace searching;

// Points on a curve that is smooth; a picture draws straight lines between them.
constexpr int kPowerPoints = 33;
constexpr int kThicknessPoints = 17;
constexpr int kJacketPowerPoints = 17;

Power mostOnCircuit(const Rig& rig) {
  return largestElementOn(rig.supply, rig.element.topHeight).rating;
}

SweepInputs sweepInputs(const Plan& plan, std::size_t index) {
  const RigPlan& rig = plan.rigs[index];
  const SweepRange range = sweepRange(plan);
  SweepInputs inputs{.rig = rig.rig,
                     .bare = rig.bare,
                     .jacketed = rig.jacketed,
                     .jacketIsCompared = rig.jacketIsCompared,
                     .batch = plan.batch,
                     .place = plan.place,
                     .tariff = plan.tariff,
                     .startOfDay = plan.tariff.dependsOnTheHour() ? plan.startOfDay : hours(0.0),
                     .ready = plan.tariff.dependsOnTheHour() ? plan.ready : std::nullopt,
                     .weakest = range.weakest,
                     .strongest = range.strongest,
                     .thickest = range.thickest};
  for (Rig* one : {&inputs.rig, &inputs.bare, &inputs.jacketed}) one->name.clear();
  return inputs;
}

// What a day and its jacket depend on: a goal that is only searched for is none of it.
Plan dayInputs(const Plan& plan, std::size_t index) {
  Plan one = onlyRig(plan, index);
  const Time unplugged = plan.goals.unplugged;
  one.goals = Goals{.boilWithin = minutes(0.0), .unplugged = unplugged};
  return one;
}

PowersInputs powersInputs(const Plan& plan, std::size_t index) {
  PowersInputs inputs{.rig = plan.rigs[index].rig,
                      .batch = plan.batch,
                      .place = plan.place,
                      .boilOffPerHour = plan.goals.boilOffPerHour,
                      .within = plan.goals.boilWithin};
  inputs.rig.name.clear();
  inputs.rig.element.rating = watts(0.0);
  inputs.rig.element.ratedAt = inputs.rig.supply.nominal;
  return inputs;
}

void addSweeps(const Plan& asked, std::size_t index, const Searches& wanted, RigSweeps& curves,
               Searches& done) {
  const Plan plan = asBegun(asked, index);
  const RigPlan& rig = plan.rigs[index];
  const SweepRange range = sweepRange(plan);
  const bool jacket = rig.jacketIsCompared;
  if (wanted.power && !done.power) {
    curves.power = againstPower(rig, plan, range.weakest, range.strongest, kPowerPoints,
                                mostOnCircuit(rig.rig));
    done.power = true;
  }
  if (wanted.thickness && !done.thickness) {
    if (jacket) curves.thickness = againstThickness(rig, plan, range.thickest, kThicknessPoints);
    done.thickness = true;
  }
  if (wanted.jacketPower && !done.jacketPower) {
    if (jacket)
      curves.jacketPower =
          jacketAgainstPower(rig, plan, range.weakest, range.strongest, kJacketPowerPoints);
    done.jacketPower = true;
  }
}

}  // namespace

namespace {

// Progress of several rigs as that of one search.
class Summed {
 public:
  Summed(const Watched& all, const std::function<bool()>& stop) : all_(all), stop_(stop) {}

  Watched ofOne() {
    return {.stop = [this] { return (stop_ && stop_()) || (all_.stop && all_.stop()); },
            .progress =
                [this, done = std::uint64_t{0}, begun = false](std::uint64_t now,
                                                               std::uint64_t of) mutable {
                  const std::lock_guard lock(mutex_);
                  if (!begun) of_ += of;
                  begun = true;
                  done_ += now - done;
                  done = now;
                  if (all_.progress) all_.progress(done_, of_);
                }};
  }

 private:
  const Watched& all_;
  const std::function<bool()>& stop_;
  std::mutex mutex_;
  std::uint64_t done_ = 0, of_ = 0;
};

}  // namespace

// Of one rig.
struct Search::Found {
  RigSweeps curves;
  Searches sweeps;  // those of the curves that are done
  std::optional<SizingAnswer> powers;
  std::optional<CircuitAnswer> circuit;
  std::optional<Rest> rest;
  std::shared_ptr<const HelpsAnswer> helps;
  std::shared_ptr<const Bands> bands;
  std::shared_ptr<const SureAnswer> sure;

  Searches done() const {
    Searches all = sweeps;
    all.sizing = powers.has_value();
    all.circuit = circuit.has_value();
    all.rest = rest.has_value();
    all.helps = helps != nullptr;
    all.bands = bands != nullptr;
    all.sure = sure != nullptr;
    return all;
  }

  // `known`: powers for another time that is wanted.
  void add(const Plan& plan, std::size_t index, const BrewDay& day, const Searches& wanted,
           const SizingAnswer* known, Summed& helping) {
    const RigPlan& rig = plan.rigs[index];
    if (wanted.sizing && !powers) powers = powersNeeded(rig, plan, known);
    if (wanted.circuit && !circuit) circuit = circuitAnswer(plan, rig, day, true);
    if (wanted.rest && !rest) {
      SizingAnswer sizing;
      addLargestBatches(sizing, rig, plan);
      rest = Rest{.largest = sizing.largest,
                  .largestOnCircuit = sizing.largestOnCircuit,
                  .whatWouldBoil = adviceFor(rig, plan, day),
                  .edge = edgeFor(rig, plan, day)};
    }
    addSweeps(plan, index, wanted, curves, sweeps);
    if (wanted.helps && !helps)
      helps = std::make_shared<const HelpsAnswer>(
          rigs::helps(plan, index, kUsualTogether, helping.ofOne()));
  }

  // As far as `stop` lets it.
  void addBands(const Plan& plan, std::size_t index, const Searches& wanted,
                const std::function<bool()>& stop) {
    if (wanted.sure && !sure) {
      if (auto found = rigs::sure(plan, index, stop)) {
        bands = std::make_shared<const Bands>(found->bands);
        sure = std::make_shared<const SureAnswer>(std::move(*found));
      }
    }
    if (!wanted.bands || bands) return;
    if (auto found = bandsOf(plan, index, stop))
      bands = std::make_shared<const Bands>(std::move(*found));
  }

  // Where an answer shows it.
  void tell(const RigPlan& rig, RigAnswer& answer) const {
    if (powers) {
      answer.sizing = *powers;
      answer.sizing->asIs = electricalLoad(rig.rig);  // remembered from another element
    }
    if (circuit) answer.circuit = *circuit;
    answer.helps = helps;
    answer.bands = bands;
    answer.sure = sure;
    if (!rest) return;
    if (answer.sizing) {
      answer.sizing->largest = rest->largest;
      answer.sizing->largestOnCircuit = rest->largestOnCircuit;
    }
    answer.whatWouldBoil = rest->whatWouldBoil;
    answer.edge = rest->edge;
  }
};

struct Memory::Kept {
  Remembered<Plan, RigAnswer> days;                            // by dayInputs()
  Remembered<Plan, CircuitAnswer> circuits;                    // likewise
  Remembered<Plan, Rest> rests;                                // by onlyRig()
  Remembered<Plan, std::shared_ptr<const HelpsAnswer>> helps;  // likewise
  Remembered<Plan, std::shared_ptr<const Bands>> bands;        // by dayInputs()
  Remembered<Plan, std::shared_ptr<const SureAnswer>> sures;   // likewise
  Remembered<PowersInputs, SizingAnswer> powers;
  Remembered<SweepInputs, std::pair<RigSweeps, Searches>> sweeps;
  std::optional<std::pair<Plan, Problems>> checked;

  Search::Found find(const Plan& plan, std::size_t i) const {
    Search::Found found;
    if (const auto* before = sweeps.find(sweepInputs(plan, i)))
      std::tie(found.curves, found.sweeps) = *before;
    if (const auto* before = powers.find(powersInputs(plan, i))) found.powers = *before;
    if (const auto* before = circuits.find(dayInputs(plan, i))) found.circuit = *before;
    if (const auto* before = rests.find(onlyRig(plan, i))) found.rest = *before;
    if (const auto* before = helps.find(onlyRig(plan, i))) found.helps = *before;
    if (const auto* before = bands.find(dayInputs(plan, i))) found.bands = *before;
    if (const auto* before = sures.find(dayInputs(plan, i))) found.sure = *before;
    return found;
  }
  void keep(const Plan& plan, std::size_t i, const Search::Found& found) {
    sweeps.keep(sweepInputs(plan, i), {found.curves, found.sweeps});
    if (found.powers) powers.keep(powersInputs(plan, i), *found.powers);
    if (found.circuit) circuits.keep(dayInputs(plan, i), *found.circuit);
    if (found.rest) rests.keep(onlyRig(plan, i), *found.rest);
    if (found.helps && !found.helps->isPart()) helps.keep(onlyRig(plan, i), found.helps);
    if (found.bands) bands.keep(dayInputs(plan, i), found.bands);
    if (found.sure) sures.keep(dayInputs(plan, i), found.sure);
  }
  // The powers for another time that is wanted.
  const SizingAnswer* powersFor(const Plan& plan, std::size_t i) const {
    PowersInputs inputs = powersInputs(plan, i);
    return powers.findIf([&](const PowersInputs& from) {
      inputs.within = from.within;
      return from == inputs;
    });
  }
};

SweepRange sweepRange(const Plan& plan) {
  SweepRange range{
      .weakest = watts(500.0), .strongest = watts(6000.0), .thickest = millimetres(50.0)};
  for (const RigPlan& rig : plan.rigs) {
    const Power rated = rig.rig.element.rating;
    range.weakest = std::min(range.weakest, 0.5 * rated);
    range.strongest = std::max({range.strongest, 1.5 * rated, 1.2 * mostOnCircuit(rig.rig)});
    Length sum = metres(0.0);
    for (const Layer& layer : rig.jacketed.vessel.side.insulation) sum += layer.thickness;
    range.thickest = std::max(range.thickest, 1.25 * sum);
  }
  return range;
}

Memory::Memory() : kept_(std::make_unique<Kept>()) {}
Memory::~Memory() = default;

Search::Search(const Plan& plan, Memory& memory) : plan_(plan), memory_(memory) {
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) found_.push_back(memory.kept_->find(plan, i));
}
Search::~Search() = default;

const Problems& Search::problems() {
  auto& checked = memory_.kept_->checked;
  if (!checked || !(checked->first == plan_)) {
    Problems problems;
    checkPlan(plan_, problems);
    checked = {plan_, std::move(problems)};
  }
  return checked->second;
}

void Search::addDays() {
  Memory::Kept& kept = *memory_.kept_;
  days_ = forAll(plan_.rigs.size(), [&](std::size_t i) {
    if (const RigAnswer* before = kept.days.find(dayInputs(plan_, i))) return *before;
    return answer(onlyRig(plan_, i), Depth::DayAndJacket, true).rigs.front();
  });
  for (std::size_t i = 0; i < days_.size(); ++i) kept.days.keep(dayInputs(plan_, i), days_[i]);
}

bool Search::add(const Searches& wanted, const std::function<bool()>& stop,
                 const Watched& helping) {
  assert(days_.size() == plan_.rigs.size());
  Memory::Kept& kept = *memory_.kept_;
  std::atomic<bool> stopped = false;
  Summed summed(helping, stop);
  std::vector<Found> all = forAll(plan_.rigs.size(), [&](std::size_t i) {
    Found found = found_[i];
    if (stopped || (stop && stop())) {
      stopped = true;
    } else {
      found.add(plan_, i, days_[i].day, wanted, kept.powersFor(plan_, i), summed);
      found.addBands(plan_, i, wanted, stop);
      const bool takesLong = wanted.helps || wanted.bands || wanted.sure;
      if (takesLong && stop && stop()) stopped = true;  // perhaps in the middle of it
    }
    return found;
  });
  if (stopped) return false;
  found_ = std::move(all);
  for (std::size_t i = 0; i < found_.size(); ++i) kept.keep(plan_, i, found_[i]);
  return true;
}

Searches Search::done() const {
  Searches done = kEverySearch;
  done.helps = done.bands = done.sure = true;  // if every rig has it
  for (const Found& one : found_) done = both(done, one.done());
  return done;
}

Solution Search::solution() const {
  Solution now{.plan = plan_, .answers = {}, .sweeps = {}, .done = done(), .edition = 0};
  now.answers.rigs = days_;
  now.answers.ownRules = plan_.ownRules;
  for (std::size_t i = 0; i < days_.size(); ++i) {
    found_[i].tell(plan_.rigs[i], now.answers.rigs[i]);
    now.sweeps.push_back(found_[i].curves);
  }
  return now;
}

void addHowSure(Solution& solution, std::optional<std::size_t> rig, std::size_t days) {
  for (std::size_t i = 0; i < solution.answers.rigs.size(); ++i) {
    RigAnswer& one = solution.answers.rigs[i];
    if (one.sure || (rig && *rig != i)) continue;
    one.sure = std::make_shared<const SureAnswer>(sure(solution.plan, i, {}, days).value());
    one.bands = std::make_shared<const Bands>(one.sure->bands);
  }
}

void addBands(Solution& solution, std::size_t rig, std::size_t days) {
  RigAnswer& one = solution.answers.rigs[rig];
  if (!one.bands)
    one.bands = std::make_shared<const Bands>(bandsOf(solution.plan, rig, {}, days).value());
}

Solution solve(const Plan& plan, const Searches& wanted) {
  Memory memory;
  Search search(plan, memory);
  search.addDays();
  search.add(wanted);
  return search.solution();
}

}  // namespace rigs
