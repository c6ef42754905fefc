// SPDX-License-Identifier: GPL-3.0-or-later
// A long log, read.
#include <benchmark/benchmark.h>

#include <cstdio>
#include <string>

#include "rigs/readings/readings_reader.hpp"

namespace {

std::string logOf(int rows) {
  std::string text = "time;room (°C);wort (°C)\n";
  for (int i = 0; i < rows; ++i) {
    const int second = static_cast<int>(40000LL * i / rows);
    char line[64];
    std::snprintf(line, sizeof line, "%02d:%02d:%02d;18,0;%d,%d\n", 9 + second / 3600,
                  second / 60 % 60, second % 60, 66 - second / 2000, i % 10);
    text += line;
  }
  return text;
}

void readALog(benchmark::State& state) {
  const std::string text = logOf(static_cast<int>(state.range(0)));
  const rigs::readings::Setting setting{
      .name = "log", .startOfDay = physics::hours(9.0), .boiling = physics::celsius(100.0)};
  for (auto _ : state) {
    rigs::Problems problems;
    auto read = rigs::readings::readLines(text, setting, {}, problems);
    if (!problems.empty()) state.SkipWithError("a row was not understood");
    benchmark::DoNotOptimize(read);
  }
  state.SetItemsProcessed(state.iterations() * state.range(0));
}
BENCHMARK(readALog)->Arg(1'000)->Arg(100'000)->Unit(benchmark::kMillisecond);

}  // namespace
