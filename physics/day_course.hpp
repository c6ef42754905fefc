// SPDX-License-Identifier: GPL-3.0-or-later
// One day of one rig with so much water, told in the order it happens; brewday.hpp for others.
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

#include "physics/batch.hpp"
#include "physics/day.hpp"
#include "physics/day_phase.hpp"
#include "physics/level_off.hpp"
#include "physics/units.hpp"
#include "physics/wort.hpp"

namespace physics {

inline constexpr Temperature kColdWort = celsius(20.0);  // where volumes and gravities are stated
inline constexpr Time kLongestStage = hours(48.0);

// How the vessel stands during a stage.
struct LidAndPump {
  double open;          // share of the mouth
  bool pumped = false;  // wort goes round through the hose
};

struct Heating {
  LidAndPump set;
  Temperature goal;
  Outcome otherwise;  // if it does not get there
};

// Runs once.
class Day {
 public:
  Day(const Rig& rig, const Batch& batch, const Place& place, const SimulationOptions& options)
      : batch_(batch),
        place_(place),
        conditions_{.rig = rig,
                    .options = options,
                    .pressure = place.pressure,
                    .full = electricalLoad(rig),
                    .crossSection = crossSection(rig.vessel)},
        unwatched_{.curves = false,
                   .relativeTolerance = std::max(options.relativeTolerance, 1e-7),
                   .method = options.method},
        now_{.contents = Contents(batch, place, joules(0.0) / kelvins(1.0)),
             .wort = place.water,
             .clock = seconds(0.0)},
        losses_(rig.vessel, rig.hose,
                {.air = moistAir(place.room, place.relativeHumidity, place.pressure),
                 .draught = place.draught},
                rig.vessel.height, 0.5, rig.evaporationFactor, rig.lossFactor) {}

  BrewDay run(Mass water);

 private:
  // The stages. False where the day cannot go on, and its outcome says why.
  bool strike();
  void mashIn();
  bool mash();
  void leaveAlone(const UnpluggedMash& mash);
  bool ramp(Temperature goal);
  bool rest(const MashRest& rest);
  // The mean of where a controller with a dead band switches on and off.
  Temperature heldAt(const MashRest& rest) const {
    return rest.temperature - 0.5 * conditions_.rig.deadBand;
  }
  // As hot for so long; false if that uncovers the element.
  bool hold(Stage& stage, Time longest, LidAndPump set);
  LidAndPump mashLid() const { return {.open = vessel().open.mash, .pumped = true}; }
  // Grain and the wort it holds, lifted out.
  Contents liftGrain();
  // The stage that begins with it, grain lifted and rinsed.
  Stage lift();
  void leaveElementOn();
  void rinse(const Contents& lifted, Stage& stage);
  bool drain(Stage& stage);  // false if that uncovers the element
  bool heatToBoil();
  void startTheClock();
  bool boil();
  // On with the boil until so long after its begin; the time it rolled is added to `rolled`.
  PhaseEnd boilUntil(Time intoBoil, Stage& stage, Time& rolled);
  // What goes in during the boil, in its order.
  std::vector<std::size_t> additionsInOrder() const;
  void take(std::size_t which, Stage& stage);
  void tellOutcome();

  void pour(Mass water);
  void tellResult();
  double gravity() const;  // of the wort, 20/20
  // Of the mash, as it is to settle once the grain is in.
  Temperature firstMashTemperature() const;
  // With what is in the vessel now, at this power: until the boil's clock may start.
  PhaseEnd heatTowardsBoiling(const DayConditions& conditions, Power power, Stage& stage,
                              HeatingNodes* nodes = nullptr);
  // What is lost at boiling, lids as for heating and as for the boil, as full as the vessel is now.
  Power leastAsFull();
  // The power that is just that after heating with it what was `ready`; `guess` is near it.
  class LeastSearch;
  struct HeatingDone {
    const Moment& ready;  // before it
    const HeatingNodes& nodes;
  };
  Power leastAfterHeating(const HeatingDone& done, Power guess);
  std::optional<Power> leastByNodes(const HeatingDone& done, Power& guess);
  struct Boiled {
    Temperature temperature;
    Power net;
    Time rolled;
  };
  void tellBoil(const Stage& stage, const Boiled& boiled);

  // One phase with one control, as a part of the stage.
  PhaseEnd phase(Stage& stage, const PhaseOrder& order);
  void noteLevel();  // with the element on
  // Heats to the goal, or tells where it levels off and follows it there.
  bool heat(Stage& stage, const Heating& heating);
  // What a stage loses over temperature and no pump makes good, as full as the vessel is now.
  LossAt lossesOf(HeatLossModel& losses) const {
    return [&](Temperature t) { return losses.flows(t, fill(t)).lost.total() - losses.pumpHeat(); };
  }
  std::optional<LevelsOff> levelOffIn(LidAndPump set, Power supply, Temperature wanted);

  Stage begin(StageKind kind) const;
  void end(Stage& stage);
  // The vessel's losses as the stage that begins with what is in it now.
  HeatLossModel& lossModel(LidAndPump set);
  // What of them the pump does not make good.
  Power lossAt(Temperature t, LidAndPump set);
  Length fill(Temperature t) const { return conditions_.fill(now_.contents.volume(t)); }
  Temperature wortBoils() const {
    return boilingPoint(now_.contents.strength(), conditions_.pressure);
  }
  const Vessel& vessel() const { return conditions_.rig.vessel; }
  LidAndPump heatingLid() const { return {.open = vessel().open.heating}; }
  LidAndPump boilLid() const { return {.open = vessel().open.boil}; }
  bool boils() const { return batch_.boil > seconds(0.0); }

  const Batch& batch_;
  const Place& place_;
  const DayConditions conditions_;
  const SimulationOptions unwatched_;  // for what is tried and not told
  bool rolls_ = false;                 // once the clock of the boil has started
  Moment now_;
  HeatLossModel losses_;  // of the stage that lossModel() was asked for last
  BrewDay day_;
};

}  // namespace physics
