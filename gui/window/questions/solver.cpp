// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/solver.hpp"

#include <QMetaObject>
#include <algorithm>
#include <chrono>
#include <future>
#include <tuple>
#include <utility>
#include <vector>

#include "rigs/answers/plan_check.hpp"

namespace gui {
namespace {

using namespace physics;

// Points on a curve that is smooth; a picture draws straight lines between them.
constexpr int kPowers = 33;
constexpr int kThicknesses = 17;
constexpr int kJacketPowers = 17;

// The hand rests: time for what nobody looks at yet.
constexpr std::chrono::milliseconds kPause{120};

rigs::Plan onlyRig(const rigs::Plan& plan, std::size_t index) {
  rigs::Plan one = plan;
  one.rigs = {plan.rigs[index]};
  return one;
}

Power mostOnCircuit(const Rig& rig) {
  return largestElementOn(rig.supply, rig.element.topHeight).rating;
}

// From what warms a mash to beyond what a large single-phase circuit carries; the same for all
// rigs, so that their curves share one axis.
struct Powers {
  Power weakest, strongest;
};
Powers powersOf(const rigs::Plan& plan) {
  Powers powers{watts(500.0), watts(6000.0)};
  for (const rigs::RigPlan& rig : plan.rigs) {
    powers.weakest = std::min(powers.weakest, 0.5 * rig.rig.element.rating);
    powers.strongest =
        std::max({powers.strongest, 1.5 * rig.rig.element.rating, 1.2 * mostOnCircuit(rig.rig)});
  }
  return powers;
}

Length thickestOf(const rigs::Plan& plan) {
  Length thickest = millimetres(50.0);
  for (const rigs::RigPlan& rig : plan.rigs) {
    Length sum = metres(0.0);
    for (const Layer& layer : rig.jacketed.vessel.side.insulation) sum += layer.thickness;
    thickest = std::max(thickest, 1.25 * sum);
  }
  return thickest;
}

// Everything that the sweeps of one rig depend on.
struct SweepInputs {
  Rig rig, bare, jacketed;
  bool jacketIsCompared = false;
  Batch batch;
  Place place;
  rigs::Tariff tariff;
  Time startOfDay;  // where it decides the price
  Power weakest, strongest;
  Length thickest;
  Time alone;

  bool operator==(const SweepInputs&) const = default;
};
SweepInputs sweepInputs(const rigs::Plan& plan, std::size_t index) {
  const rigs::RigPlan& rig = plan.rigs[index];
  const Powers powers = powersOf(plan);
  SweepInputs inputs{.rig = rig.rig,
                     .bare = rig.bare,
                     .jacketed = rig.jacketed,
                     .jacketIsCompared = rig.jacketIsCompared,
                     .batch = plan.batch,
                     .place = plan.place,
                     .tariff = plan.tariff,
                     .startOfDay = plan.tariff.dependsOnTheHour() ? plan.startOfDay : hours(0.0),
                     .weakest = powers.weakest,
                     .strongest = powers.strongest,
                     .thickest = thickestOf(plan),
                     .alone = std::max(plan.goals.unplugged, hours(4.0))};
  for (Rig* one : {&inputs.rig, &inputs.bare, &inputs.jacketed}) one->name.clear();
  return inputs;
}

// What a day and its jacket depend on: a goal that is only searched for is none of it.
rigs::Plan dayInputs(const rigs::Plan& plan, std::size_t index) {
  rigs::Plan one = onlyRig(plan, index);
  const Time unplugged = plan.goals.unplugged;
  one.goals = rigs::Goals{.boilWithin = minutes(0.0), .unplugged = unplugged};
  return one;
}

// What the powers that goals need depend on: not what the rig's own element is rated.
struct PowersInputs {
  Rig rig;
  Batch batch;
  Place place;
  double boilOffPerHour = 0.0;
  Time within;

  bool operator==(const PowersInputs&) const = default;
};
PowersInputs powersInputs(const rigs::Plan& plan, std::size_t index) {
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

// What no picture shows.
struct Rest {
  BatchAnswer largest, largestOnCircuit;
  std::optional<WhatWouldBoil> whatWouldBoil;
};

// Of one rig.
struct Found {
  RigSweeps curves;
  Searches sweeps;  // those of the curves that are done
  std::optional<rigs::SizingAnswer> powers;
  std::optional<rigs::CircuitAnswer> circuit;
  std::optional<Rest> rest;

  Searches done() const {
    Searches all = sweeps;
    all.sizing = powers.has_value();
    all.circuit = circuit.has_value();
    all.rest = rest.has_value();
    return all;
  }
};

void addSweeps(const rigs::Plan& plan, std::size_t index, const Searches& wanted, Found& found) {
  const rigs::RigPlan& rig = plan.rigs[index];
  const Powers powers = powersOf(plan);
  const bool jacket = rig.jacketIsCompared;
  RigSweeps& curves = found.curves;
  Searches& done = found.sweeps;
  if (wanted.power && !done.power) {
    curves.power = rigs::againstPower(rig, plan, powers.weakest, powers.strongest, kPowers,
                                      mostOnCircuit(rig.rig));
    done.power = true;
  }
  if (wanted.thickness && !done.thickness) {
    if (jacket)
      curves.thickness = rigs::againstThickness(rig, plan, thickestOf(plan), kThicknesses);
    done.thickness = true;
  }
  if (wanted.jacketPower && !done.jacketPower) {
    if (jacket)
      curves.jacketPower =
          rigs::jacketAgainstPower(rig, plan, powers.weakest, powers.strongest, kJacketPowers);
    done.jacketPower = true;
  }
  if (wanted.cooling && !done.cooling) {
    if (jacket)
      curves.cooling = rigs::leftAlone(rig, plan, std::max(plan.goals.unplugged, hours(4.0)));
    done.cooling = true;
  }
}

// Adds those of `wanted` that are missing. `known`: powers for another time that is wanted.
Found with(const rigs::Plan& plan, std::size_t index, const physics::BrewDay& day,
           const Searches& wanted, const rigs::SizingAnswer* known, Found found) {
  const rigs::RigPlan& rig = plan.rigs[index];
  if (wanted.sizing && !found.powers) found.powers = rigs::powersNeeded(rig, plan, known);
  if (wanted.circuit && !found.circuit) found.circuit = rigs::circuitAnswer(plan, rig, day, true);
  if (wanted.rest && !found.rest) {
    rigs::SizingAnswer sizing;
    rigs::addLargestBatches(sizing, rig, plan);
    found.rest = Rest{.largest = sizing.largest,
                      .largestOnCircuit = sizing.largestOnCircuit,
                      .whatWouldBoil = rigs::adviceFor(rig, plan, day)};
  }
  addSweeps(plan, index, wanted, found);
  return found;
}

// What was found, where an answer shows it.
void tell(const Found& found, const rigs::RigPlan& rig, rigs::RigAnswer& answer) {
  if (found.powers) {
    answer.sizing = *found.powers;
    answer.sizing->asIs = electricalLoad(rig.rig);  // remembered from another element
  }
  if (found.circuit) answer.circuit = *found.circuit;
  if (!found.rest) return;
  if (answer.sizing) {
    answer.sizing->largest = found.rest->largest;
    answer.sizing->largestOnCircuit = found.rest->largestOnCircuit;
  }
  answer.whatWouldBoil = found.rest->whatWouldBoil;
}

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

// `make(i)` for every rig, a few at a time. Empty if `stop` said so on the way.
template <class Make, class Stop>
auto forEachRig(std::size_t count, Make make, Stop stop) {
  std::vector<decltype(make(std::size_t{0}))> all;
  const std::size_t atOnce = std::max(1U, std::thread::hardware_concurrency());
  for (std::size_t first = 0; first < count; first += atOnce) {
    if (stop()) return decltype(all){};
    std::vector<std::future<decltype(make(std::size_t{0}))>> running;
    for (std::size_t i = first; i < std::min(count, first + atOnce); ++i)
      running.push_back(std::async(std::launch::async, make, i));
    for (auto& one : running) all.push_back(one.get());
  }
  return all;
}

}  // namespace

class Solver::Memory {
 public:
  Remembered<rigs::Plan, rigs::RigAnswer> days;          // by dayInputs()
  Remembered<rigs::Plan, rigs::CircuitAnswer> circuits;  // likewise
  Remembered<rigs::Plan, Rest> rests;                    // by onlyRig()
  Remembered<PowersInputs, rigs::SizingAnswer> powers;
  Remembered<SweepInputs, std::pair<RigSweeps, Searches>> sweeps;
  std::optional<std::pair<rigs::Plan, rigs::Problems>> checked;

  Found find(const rigs::Plan& plan, std::size_t i) const {
    Found found;
    if (const auto* before = sweeps.find(sweepInputs(plan, i)))
      std::tie(found.curves, found.sweeps) = *before;
    if (const auto* before = powers.find(powersInputs(plan, i))) found.powers = *before;
    if (const auto* before = circuits.find(dayInputs(plan, i))) found.circuit = *before;
    if (const auto* before = rests.find(onlyRig(plan, i))) found.rest = *before;
    return found;
  }
  void keep(const rigs::Plan& plan, std::size_t i, const Found& found) {
    sweeps.keep(sweepInputs(plan, i), {found.curves, found.sweeps});
    if (found.powers) powers.keep(powersInputs(plan, i), *found.powers);
    if (found.circuit) circuits.keep(dayInputs(plan, i), *found.circuit);
    if (found.rest) rests.keep(onlyRig(plan, i), *found.rest);
  }
  // The powers for another time that is wanted.
  const rigs::SizingAnswer* powersFor(const rigs::Plan& plan, std::size_t i) const {
    PowersInputs inputs = powersInputs(plan, i);
    return powers.findIf([&](const PowersInputs& from) {
      inputs.within = from.within;
      return from == inputs;
    });
  }
};

Solver::Solver(QObject* parent) : QObject(parent) {
  qRegisterMetaType<SolutionPtr>("gui::SolutionPtr");
  qRegisterMetaType<rigs::Problems>("rigs::Problems");
  worker_ = std::thread([this] { work(); });
}

Solver::~Solver() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
  }
  wake_.notify_all();
  worker_.join();
}

void Solver::solve(std::shared_ptr<const rigs::Plan> plan, int edition) {
  {
    const std::lock_guard lock(mutex_);
    waiting_ = Job{std::move(plan), edition};
  }
  wake_.notify_all();
  Q_EMIT busyChanged(true);
}

void Solver::lookAt(const Searches& needed) {
  const std::lock_guard lock(mutex_);
  lookedAt_ = needed;
}

bool Solver::isIdle() const {
  const std::lock_guard lock(mutex_);
  return !busy_ && !waiting_;
}

bool Solver::isOutdated() {
  const std::lock_guard lock(mutex_);
  return ending_ || waiting_.has_value();
}

void Solver::work() {
  Memory memory;
  for (;;) {
    Job job;
    {
      std::unique_lock lock(mutex_);
      busy_ = false;
      if (!waiting_ && !ending_)
        QMetaObject::invokeMethod(this, [this] { Q_EMIT busyChanged(!isIdle()); });
      wake_.wait(lock, [this] { return ending_ || waiting_.has_value(); });
      if (ending_) return;
      job = std::move(*waiting_);
      waiting_.reset();
      busy_ = true;
    }
    compute(job, memory);
  }
}

void Solver::compute(const Job& job, Memory& memory) {
  const rigs::Plan& plan = *job.plan;
  const std::size_t count = plan.rigs.size();
  if (!memory.checked || !(memory.checked->first == plan)) {
    rigs::Problems problems;
    rigs::checkPlan(plan, problems);
    memory.checked = {plan, std::move(problems)};
  }
  const rigs::Problems& problems = memory.checked->second;
  QMetaObject::invokeMethod(
      this, [this, problems, edition = job.edition] { Q_EMIT checked(problems, edition); });
  if (rigs::hasErrors(problems)) return;

  Solution now{.plan = plan, .answers = {}, .sweeps = {}, .done = {}, .edition = job.edition};
  std::vector<Found> found;
  for (std::size_t i = 0; i < count; ++i) found.push_back(memory.find(plan, i));
  const auto show = [&] {
    now.sweeps.clear();
    now.done = kEverySearch;
    for (std::size_t i = 0; i < count; ++i) {
      tell(found[i], plan.rigs[i], now.answers.rigs[i]);
      now.sweeps.push_back(found[i].curves);
      now.done = both(now.done, found[i].done());
    }
    QMetaObject::invokeMethod(this, [this, solution = std::make_shared<const Solution>(now)] {
      if (solution->edition < shown_) return;
      shown_ = solution->edition;
      Q_EMIT solved(solution);
    });
  };

  // An outdated plan's days and what is looked at are still finished and shown: during a drag
  // something newer always waits, and the picture would stand still.
  const auto never = [] { return false; };
  now.answers.rigs = forEachRig(
      count,
      [&](std::size_t i) {
        const rigs::RigAnswer* before = memory.days.find(dayInputs(plan, i));
        if (before) return *before;
        return rigs::answer(onlyRig(plan, i), rigs::Depth::DayAndJacket, true).rigs.front();
      },
      never);
  for (std::size_t i = 0; i < count; ++i) memory.days.keep(dayInputs(plan, i), now.answers.rigs[i]);
  show();

  // False if `stop` said so on the way.
  const auto search = [&](const Searches& wanted, const auto& stop) {
    const auto all = forEachRig(
        count,
        [&](std::size_t i) {
          return with(plan, i, now.answers.rigs[i].day, wanted, memory.powersFor(plan, i),
                      found[i]);
        },
        stop);
    for (std::size_t i = 0; i < all.size(); ++i) memory.keep(plan, i, found[i] = all[i]);
    return all.size() == count;
  };
  Searches lookedAt;
  {
    const std::lock_guard lock(mutex_);
    lookedAt = lookedAt_;
  }
  if (!now.done.covers(lookedAt)) {
    search(lookedAt, never);
    show();
  }
  const auto stop = [this] { return isOutdated(); };
  if (now.done == kEverySearch) return;
  // A search is not left half-way: under a dragging hand the next plan would wait for it.
  {
    std::unique_lock lock(mutex_);
    if (wake_.wait_for(lock, kPause, [this] { return ending_ || waiting_.has_value(); })) return;
  }
  for (const Searches& one :
       {Searches{.sizing = true}, Searches{.power = true}, Searches{.thickness = true},
        Searches{.jacketPower = true}, Searches{.cooling = true}, Searches{.circuit = true},
        Searches{.rest = true}}) {
    if (!now.done.covers(one) && !search(one, stop)) return;
  }
  show();
}

SolutionPtr solveAtOnce(const rigs::Plan& plan) {
  const auto never = [] { return false; };
  Solution whole{.plan = plan, .answers = {}, .sweeps = {}, .done = kEverySearch, .edition = 0};
  whole.answers.rigs = forEachRig(
      plan.rigs.size(),
      [&plan](std::size_t i) {
        return rigs::answer(onlyRig(plan, i), rigs::Depth::Everything, true).rigs.front();
      },
      never);
  whole.sweeps = forEachRig(
      plan.rigs.size(),
      [&plan](std::size_t i) {
        Found found;
        addSweeps(plan, i, kEverySearch, found);
        return found.curves;
      },
      never);
  return std::make_shared<const Solution>(std::move(whole));
}

}  // namespace gui
