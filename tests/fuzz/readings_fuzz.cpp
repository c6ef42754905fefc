// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes, as lines of readings: no crash, all that is wrong is told, and what is read is in
// order, finite and what a kettle can hold.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "rigs/readings/readings_reader.hpp"

namespace {

using namespace rigs::readings;

void check(std::string_view text, bool leaveOut) {
  rigs::Problems problems;
  const Setting setting{
      .name = "log", .startOfDay = physics::hours(9.0), .boiling = physics::celsius(100.0)};
  const ReadLines read = readLines(text, setting, {.leaveOutBadRows = leaveOut}, problems);
  for (const rigs::Problem& one : problems)
    if (rigs::inEnglish(one.message).empty() || one.where.empty()) std::abort();
  if (rigs::inEnglish(layoutTold(read.layout)).empty() && !read.layout.columns.empty())
    std::abort();
  if (read.readings.empty() && !rigs::hasErrors(problems)) std::abort();
  if (!leaveOut && read.leftOut > 0 && !rigs::hasErrors(problems)) std::abort();
  if (read.leftOut > read.rows) std::abort();
  double last = 0.0;
  for (const Reading& one : read.readings) {
    const double at = physics::inSeconds(one.at);
    if (!std::isfinite(at) || at < last || !std::isfinite(one.step)) std::abort();
    last = at;
    const auto* wort = std::get_if<physics::Temperature>(&one.value);
    if (wort && !(physics::inCelsius(*wort) > -6.0 && physics::inCelsius(*wort) < 105.0))
      std::abort();
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  check(text, false);
  check(text, true);
  return 0;
}
