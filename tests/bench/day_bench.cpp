// SPDX-License-Identifier: GPL-3.0-or-later
// Speed beside accuracy: how long a day takes, and how far it is from a run at 1e-13.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace {

using namespace physics;

const rigs::Plan& demo() {
  static const rigs::Plan plan = [] {
    rigs::Problems problems;
    return *rigs::readPlan(rigs::demoPlanText(), ".", problems);
  }();
  return plan;
}

Batch poured(const Rig& rig) {
  Batch batch = demo().batch;
  batch.size = PouredWater{simulate(rig, batch, demo().place).water};
  return batch;
}

// The farthest two days are apart at the end of any stage.
void compareWithTight(benchmark::State& state, const Rig& rig, const Batch& batch) {
  const BrewDay day = simulate(rig, batch, demo().place);
  SimulationOptions tight;
  tight.relativeTolerance = 1e-13;
  const BrewDay reference = simulate(rig, batch, demo().place, tight);
  double kelvins = 0.0;
  double seconds = 0.0;
  double share = 0.0;
  for (std::size_t i = 0; i < day.stages.size(); ++i) {
    const Stage& a = day.stages[i];
    const Stage& b = reference.stages[i];
    kelvins = std::max(kelvins, std::abs(inKelvins(a.last - b.last)));
    seconds = std::max(seconds, std::abs(inSeconds(a.end - b.end)));
  }
  share = std::abs((day.total.element - reference.total.element) / reference.total.element);
  state.counters["off_K"] = kelvins;
  state.counters["off_s"] = seconds;
  state.counters["off_energy"] = share;
}

// A held mash and a boil; the demo's rigs (b) bare with lid off for the boil and (c) jacketed.
void WholeDay(benchmark::State& state) {
  const Rig& rig = demo().rigs.at(static_cast<std::size_t>(state.range(0))).rig;
  const Batch batch = poured(rig);
  for (auto _ : state) benchmark::DoNotOptimize(simulate(rig, batch, demo().place));
  compareWithTight(state, rig, batch);
}
BENCHMARK(WholeDay)->Arg(1)->Arg(2)->Arg(3)->Unit(benchmark::kMicrosecond);

void WholeDayWithoutLid(benchmark::State& state) {
  Rig rig = demo().rigs.at(3).rig;
  rig.vessel.open = LidUse{};
  const Batch batch = poured(rig);
  for (auto _ : state) benchmark::DoNotOptimize(simulate(rig, batch, demo().place));
  compareWithTight(state, rig, batch);
}
BENCHMARK(WholeDayWithoutLid)->Unit(benchmark::kMicrosecond);

void NightUnplugged(benchmark::State& state) {
  const Rig& rig = demo().rigs.at(2).rig;
  Batch batch = poured(rig);
  batch.mash = UnpluggedMash{celsius(66.0), hours(10.0)};
  for (auto _ : state) benchmark::DoNotOptimize(simulate(rig, batch, demo().place));
  compareWithTight(state, rig, batch);
}
BENCHMARK(NightUnplugged)->Unit(benchmark::kMicrosecond);

void DayWithCurves(benchmark::State& state) {
  const Rig& rig = demo().rigs.at(2).rig;
  const Batch batch = poured(rig);
  SimulationOptions options;
  options.curves = true;
  for (auto _ : state) benchmark::DoNotOptimize(simulate(rig, batch, demo().place, options));
}
BENCHMARK(DayWithCurves)->Unit(benchmark::kMicrosecond);

// 2,000 variants: 50 element powers by 40 jacket thicknesses.
void Sweep(benchmark::State& state) {
  const Rig& base = demo().rigs.at(1).rig;
  const Batch batch = poured(base);
  for (auto _ : state) {
    for (int i = 0; i < 50; ++i) {
      for (int j = 0; j < 40; ++j) {
        Rig rig = base;
        rig.element.rating = watts(1700.0 + 60.0 * i);
        rig.vessel.side = {{layerOf(millimetres(j), wattsPerMetreKelvin(0.04))}, 0.9};
        benchmark::DoNotOptimize(simulate(rig, batch, demo().place));
      }
    }
  }
  state.SetItemsProcessed(state.iterations() * 2000);
}
BENCHMARK(Sweep)->Unit(benchmark::kMillisecond);

void DocumentLoad(benchmark::State& state) {
  const std::string text(rigs::demoPlanText());
  for (auto _ : state) {
    rigs::Problems problems;
    benchmark::DoNotOptimize(rigs::readPlan(text, ".", problems));
  }
}
BENCHMARK(DocumentLoad)->Unit(benchmark::kMicrosecond);

void QuantityText(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(rigs::parseQuantity<Power>("5,5 kW"));
}
BENCHMARK(QuantityText)->Unit(benchmark::kNanosecond);

void EveryAnswer(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(rigs::answer(demo(), rigs::Depth::Everything));
  }
}
BENCHMARK(EveryAnswer)->Unit(benchmark::kMillisecond);

}  // namespace
