// SPDX-License-Identifier: GPL-3.0-or-later
// Ten rigs, each heating and left to cool, for another solver on the same right-hand side: the
// phases as this project follows them, or how fast everything changes where the solver asks.
//
//   phases            a line a phase: number, kind, start (K, kg), end (K or s), then what it came
//   to phases rates N    for every line "K kg" on stdin: K/s, kg/s and W of each path
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string_view>
#include <vector>

#include "physics/passage.hpp"
#include "physics/water.hpp"
#include "tests/support/kettles.hpp"

namespace {

using namespace physics;

struct Tried {
  Rig rig;
  Place place;
  Mass water;
  bool heats;
  double open;
};

// Reproducible on every machine, unlike the library's distributions.
class Chance {
 public:
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(bits_() >> 11) * 0x1p-53;
  }

 private:
  std::mt19937_64 bits_{19'690'721};
};

std::vector<Tried> tried() {
  Chance chance;
  std::vector<Tried> all;
  for (int i = 0; i < 10; ++i) {
    Vessel vessel = test_support::steelKettle();
    vessel.innerDiameter = metres(chance.between(0.25, 0.5));
    vessel.height = metres(chance.between(0.3, 0.6));
    vessel.side.emissivity = chance.between(0.1, 0.9);
    vessel.side.insulation = {test_support::layer(chance.between(0.0, 25.0), 0.04)};
    vessel.lid.insulation = {test_support::layer(chance.between(0.0, 20.0), 0.04)};
    const double litre = chance.between(0.4, 0.8) * inLitres(capacity(vessel));
    Rig rig = test_support::rigOf(vessel, litre * chance.between(60.0, 200.0));
    if (i % 3 == 0) rig.hose.length = metres(1.5);
    Place place = test_support::roomAt(chance.between(-2.0, 32.0));
    place.relativeHumidity = chance.between(0.1, 0.9);
    place.pressure = pascals(chance.between(75e3, 103e3));
    const double open = i % 4 == 0 ? 0.0 : i % 4 == 1 ? 1.0 : chance.between(0.01, 0.6);
    for (const bool heats : {true, false})
      all.push_back({rig, place, kilograms(litre), heats, open});
  }
  return all;
}

// What a phase needs as long as it is followed.
class Phase {
 public:
  explicit Phase(const Tried& of)
      : of_(of),
        day_{.rig = of_.rig,
             .options = options_,
             .pressure = of_.place.pressure,
             .full = electricalLoad(of_.rig),
             .crossSection = crossSection(of_.rig.vessel)},
        batch_(test_support::mashOf(inKilograms(of_.water), 0.0)),
        began_{.contents =
                   Contents(batch_, of_.place, wettedHeatCapacity(of_.rig.vessel, metres(0.1))),
               .wort = of_.heats ? celsius(15.0) : celsius(66.0),
               .clock = seconds(0.0)},
        losses_(of_.rig.vessel, of_.rig.hose,
                {.air = moistAir(of_.place.room, of_.place.relativeHumidity, of_.place.pressure),
                 .draught = of_.place.draught},
                day_.fill(of_.water / waterDensity(began_.wort)), of_.open),
        order_{.control = of_.heats ? Control::Full : Control::Off,
               .losses = losses_,
               .longest = of_.heats ? hours(24.0) : hours(9.0)} {
    if (of_.heats) order_.until = celsius(85.0);
    began_.contents.water = of_.water;
    laws_.emplace(day_, order_, began_, stage_);
  }

  void tell(std::size_t number) {
    PhaseState start{};
    start[kTemperature] = inKelvin(began_.wort);
    start[kWater] = inKilograms(of_.water);
    const auto passed = passOverTemperature(start, *laws_);
    std::printf("%zu %s %.17g %.17g %.17g ", number, of_.heats ? "heats" : "cools",
                start[kTemperature], start[kWater],
                of_.heats ? inKelvin(*order_.until) : inSeconds(order_.longest));
    if (!passed) {
      std::printf("comes to rest\n");
      return;
    }
    std::printf("%.17g", inSeconds(passed->lasted));
    for (const double value : passed->state) std::printf(" %.17g", value);
    std::printf("\n");
  }

  void tellRates(double temperature, double water) {
    const Rates rates = laws_->ratesAt(kelvin(temperature), kilograms(water));
    std::printf(
        "%.17g %.17g %.17g %.17g", static_cast<double>(rates.warming / kelvins(1.0) * seconds(1.0)),
        -inKilogramsPerSecond(rates.flows.vapour), inWatts(rates.element), inWatts(rates.steam));
    for (const Power& lost : rates.flows.lost.values) std::printf(" %.17g", inWatts(lost));
    std::printf("\n");
    std::fflush(stdout);
  }

 private:
  const Tried& of_;
  SimulationOptions options_{.relativeTolerance = 1e-9};
  DayConditions day_;
  Batch batch_;
  Moment began_;
  HeatLossModel losses_;
  PhaseOrder order_;
  Stage stage_{};
  std::optional<DayPhase> laws_;
};

}  // namespace

int main(int argc, char** argv) {
  const std::vector<Tried> all = tried();
  if (argc == 1) {
    for (std::size_t i = 0; i < all.size(); ++i) Phase(all[i]).tell(i);
    return 0;
  }
  if (argc != 3 || std::string_view(argv[1]) != "rates") return 2;
  const std::size_t number = std::strtoul(argv[2], nullptr, 10);
  if (number >= all.size()) return 2;
  Phase phase(all[number]);
  double temperature = 0.0;
  double water = 0.0;
  while (std::scanf("%lf %lf", &temperature, &water) == 2) phase.tellRates(temperature, water);
}
