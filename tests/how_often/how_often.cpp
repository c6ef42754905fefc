// SPDX-License-Identifier: GPL-3.0-or-later
// How often bands hold, before and after readings, of so many brews drawn from what is believed:
//   how_often [BREWS]
#include <cstdio>
#include <cstdlib>

#include "tests/support/drawn_brews.hpp"
#include "tests/support/solved_demo.hpp"

using test_support::Brews;
using test_support::Held;

namespace {

void print(const Held& held) {
  if (held.told() == 0) return;
  std::printf("| %s | %zu | %.1f %% | %zu, %zu, %zu, %zu | %.1f | %zu |\n", held.figure.c_str(),
              held.told(), 100.0 * held.within(), held.places[0], held.places[1], held.places[2],
              held.places[3], held.chiSquared(), held.untold);
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
  const std::size_t brews = count > 1 ? std::strtoul(words[1], nullptr, 10) : 2000;
  const auto night = [](unsigned seed) {
    return Brews(test_support::startedPlan("night-unplugged"), 0, seed);
  };
  const auto demo = [](unsigned seed) { return Brews(test_support::demoPlan(), 2, seed); };
  std::puts(
      "| figure | brews | within | below, lower, upper, above | χ² | no band "
      "|\n|---|---|---|---|---|---|");
  for (const Held& held : test_support::heldBefore(demo(11), 2, brews)) print(held);
  print(test_support::heldBefore(night(12), 0, brews).back());
  print(test_support::heldInTheMorning(night(13), brews));
  for (const Held& held : test_support::heldWhileHeating(demo(14), brews)) print(held);
}
