// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/brewday.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <tuple>
#include <utility>

#include "physics/air.hpp"
#include "physics/contents.hpp"
#include "physics/day_phase.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

const Temperature kColdWort = celsius(20.0);  // where volumes and gravities are stated
// How close to a level-off temperature a stalled heating is followed.
constexpr TemperatureDifference kLevelled = kelvins(0.25);
constexpr Time kLongestStage = hours(48.0);

Volume wortVolume(Mass water, Mass extract, Temperature t) {
  const double strength = static_cast<double>(extract / (water + extract));
  return (water + extract) / wortDensity(strength, t);
}

// By the brewers' scale as far as it goes, by density beyond it; 1 where all wort clings to grain.
double gravity(const Contents& contents) {
  const double strength = contents.strength();
  if (strength <= 0.34) return gravityFromPlato(100.0 * strength);
  return wortDensity(strength, kColdWort) / waterDensity(kColdWort);
}

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

// One day of one rig, told in the order it happens.
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
        now_{.contents = Contents(batch, place, joules(0.0) / kelvins(1.0)),
             .wort = place.water,
             .clock = seconds(0.0)},
        losses_(rig.vessel, rig.hose,
                {.air = moistAir(place.room, place.relativeHumidity, place.pressure),
                 .draught = place.draught},
                rig.vessel.height, 0.5, rig.evaporationFactor) {
    losses_.tabulate(kHottestWort);
  }

  BrewDay run(Mass water);

 private:
  // The stages. False where the day cannot go on, and its outcome says why.
  bool strike();
  void mashIn();
  bool mash();
  void leaveAlone(const UnpluggedMash& mash);
  bool ramp(Temperature goal);
  bool rest(const MashRest& rest);
  void liftGrain();
  bool heatToBoil();
  bool boil();

  void pour(Mass water);
  void tellResult();
  // Of the mash, as it is to settle once the grain is in.
  Temperature firstMashTemperature() const;
  Power leastToBoil();
  void tellBoil(const Stage& stage, Power net, Volume coldBefore);

  // One phase with one control, as a part of the stage.
  PhaseEnd phase(Stage& stage, const PhaseOrder& order);
  // Heats to the goal, or tells where it levels off and follows it there.
  bool heat(Stage& stage, const Heating& heating);
  // Where `supply` equals loss, if that lies at or below `wanted`.
  std::optional<LevelsOff> levelOff(HeatLossModel& losses, Power supply, Temperature wanted) const;

  Stage begin(StageKind kind) const;
  void end(Stage& stage);
  // The vessel's losses as the stage that begins with what is in it now.
  HeatLossModel& lossModel(LidAndPump set);
  Power lossAt(Temperature t, LidAndPump set);
  Length fill(Temperature t) const { return conditions_.fill(now_.contents.volume(t)); }
  Temperature wortBoils() const {
    return boilingPoint(now_.contents.strength(), conditions_.pressure);
  }
  const Vessel& vessel() const { return conditions_.rig.vessel; }

  const Batch& batch_;
  const Place& place_;
  const DayConditions conditions_;
  Moment now_;
  HeatLossModel losses_;  // of the stage that lossModel() was asked for last
  BrewDay day_;
};

HeatLossModel& Day::lossModel(LidAndPump set) {
  losses_.enterStage(fill(now_.wort), set.open,
                     set.pumped ? conditions_.rig.hose.length : metres(0.0));
  return losses_;
}

Power Day::lossAt(Temperature t, LidAndPump set) {
  return lossModel(set).flows(t, fill(t)).lost.total();
}

Stage Day::begin(StageKind kind) const {
  Stage stage{};
  stage.kind = kind;
  stage.begin = stage.end = now_.clock;
  stage.first = stage.last = stage.mixed = now_.wort;
  stage.hotFirst = stage.hotLast = now_.contents.volume(now_.wort);
  return stage;
}

void Day::end(Stage& stage) {
  stage.end = now_.clock;
  stage.last = now_.wort;
  stage.hotLast = now_.contents.volume(now_.wort);
  day_.fullest = std::max({day_.fullest, stage.hotFirst, stage.hotLast});
  day_.total += stage.ledger;
  day_.stages.push_back(std::move(stage));
}

PhaseEnd Day::phase(Stage& stage, const PhaseOrder& order) {
  const PhaseEnd ended = runPhase(conditions_, order, now_, stage);
  if (order.control != Control::Off) {
    const Volume stands = now_.contents.volume(now_.wort);
    day_.lowest = day_.lowest > litres(0.0) ? std::min(day_.lowest, stands) : stands;
  }
  return ended;
}

std::optional<LevelsOff> Day::levelOff(HeatLossModel& losses, Power supply,
                                       Temperature wanted) const {
  const auto surplus = [&](double kelvinsAbsolute) {
    const Temperature t = kelvin(kelvinsAbsolute);
    return inWatts(supply - losses.flows(t, fill(t)).lost.total());
  };
  const double atWanted = surplus(inKelvin(wanted));
  if (atWanted > 0.0) return std::nullopt;
  // Losses grow with temperature: one crossing between the coldest possible and the goal.
  double low = inKelvin(kColdestWort);
  double high = inKelvin(wanted);
  const double atLow = surplus(low);
  if (atLow > 0.0) {
    std::uintmax_t steps = 60;
    std::tie(low, high) = boost::math::tools::toms748_solve(
        surplus, low, high, atLow, atWanted, boost::math::tools::eps_tolerance<double>(40), steps);
  }
  return LevelsOff{.at = kelvin(low), .wanted = wanted, .atWanted = supply - watts(atWanted)};
}

bool Day::heat(Stage& stage, const Heating& heating) {
  const Temperature goal = heating.goal;
  if (now_.wort >= goal) return true;
  HeatLossModel& losses = lossModel(heating.set);
  PhaseEnd ended = PhaseEnd::Event;
  Temperature target = goal;
  day_.levelsOff = levelOff(losses, conditions_.full.delivered, goal);
  if (day_.levelsOff) target = day_.levelsOff->at - kLevelled;
  if (now_.wort < target) {
    ended = phase(stage, {.control = Control::Full,
                          .losses = lossModel(heating.set),
                          .longest = kLongestStage,
                          .until = target});
  }
  if (ended == PhaseEnd::Guard) {
    day_.outcome = Outcome::UncoversElement;
    return false;
  }
  if (ended == PhaseEnd::Elapsed && !day_.levelsOff) {
    day_.levelsOff = LevelsOff{
        .at = now_.wort, .wanted = goal, .atWanted = losses.flows(goal, fill(goal)).lost.total()};
  }
  if (day_.levelsOff) {
    day_.outcome = heating.otherwise;
    return false;
  }
  now_.wort = goal;
  return true;
}

Temperature Day::firstMashTemperature() const {
  if (const auto* left = std::get_if<UnpluggedMash>(&batch_.mash)) return left->start;
  const std::vector<MashRest>& rests = std::get<HeldMash>(batch_.mash).rests;
  return rests.empty() ? wortBoils() : rests.front().temperature;
}

bool Day::strike() {
  Stage stage = begin(StageKind::Strike);
  day_.strike = now_.contents.strikeFor(firstMashTemperature(), batch_.grain);
  stage.goal = day_.strike;
  bool reached = false;
  if (day_.strike >= wortBoils()) {
    day_.outcome = Outcome::StrikeTooHot;
  } else {
    reached = heat(stage, {.set = {.open = vessel().open.strike},
                           .goal = day_.strike,
                           .otherwise = Outcome::DoesNotReachStrike});
  }
  end(stage);
  return reached;
}

void Day::mashIn() {
  Stage stage = begin(StageKind::MashingIn);
  const StoredHeat before = now_.contents.storedHeat(now_.wort);
  now_.wort = now_.contents.settled(now_.wort, batch_.grain);
  now_.contents.grain = batch_.grain.mass;
  stage.mixed = now_.wort;
  stage.hotFirst = now_.contents.volume(now_.wort);
  stage.ledger.slaking = batch_.grain.mass * batch_.grain.slakingHeat;
  bookStored(stage.ledger, before, now_.contents.storedHeat(now_.wort));
  phase(stage,
        {.control = Control::Off, .losses = lossModel({.open = 1.0}), .longest = batch_.mashingIn});
  end(stage);
}

bool Day::mash() {
  if (const auto* left = std::get_if<UnpluggedMash>(&batch_.mash)) {
    leaveAlone(*left);
    return true;
  }
  for (const MashRest& next : std::get<HeldMash>(batch_.mash).rests) {
    // Mixing meets the first rest but for rounding.
    if (next.temperature - now_.wort > kelvins(1e-9) && !ramp(next.temperature)) return false;
    if (!rest(next)) return false;
  }
  return true;
}

void Day::leaveAlone(const UnpluggedMash& mash) {
  Stage stage = begin(StageKind::UnpluggedRest);
  phase(stage, {.control = Control::Off,
                .losses = lossModel({.open = vessel().open.mash}),
                .longest = mash.duration});
  end(stage);
}

bool Day::ramp(Temperature goal) {
  Stage stage = begin(StageKind::Ramp);
  stage.goal = goal;
  const bool reached = heat(stage, {.set = {.open = vessel().open.mash, .pumped = true},
                                    .goal = goal,
                                    .otherwise = Outcome::DoesNotReachRest});
  end(stage);
  return reached;
}

bool Day::rest(const MashRest& rest) {
  const LidAndPump set{.open = vessel().open.mash, .pumped = true};
  Stage stage = begin(StageKind::Rest);
  stage.goal = rest.temperature;
  // A controller cannot cool: what is too hot coasts down first, within the rest's time.
  if (now_.wort > rest.temperature) {
    phase(stage, {.control = Control::Off,
                  .losses = lossModel(set),
                  .longest = rest.duration,
                  .until = rest.temperature});
  }
  const Time left = rest.duration - (now_.clock - stage.begin);
  if (left > seconds(0.0)) {
    const bool holds = conditions_.full.delivered >= lossAt(now_.wort, set);
    const PhaseEnd ended = phase(stage, {.control = holds ? Control::Hold : Control::Full,
                                         .losses = lossModel(set),
                                         .longest = left});
    if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
  }
  end(stage);
  return day_.outcome == Outcome::Done;
}

void Day::liftGrain() {
  Contents& contents = now_.contents;
  const Mass extract = batch_.grain.mass * batch_.extractYield;
  const Volume whole = wortVolume(contents.water, extract, kColdWort);
  const Volume kept = std::min(batch_.grain.mass * batch_.absorption, whole);
  const double drained = 1.0 - static_cast<double>(kept / whole);
  contents.grain = kilograms(0.0);
  contents.water = drained * contents.water;
  contents.extract = drained * extract;
}

Power Day::leastToBoil() {
  const Power boiling = lossAt(day_.boilingPoint, {.open = vessel().open.boil});
  const Power heating = lossAt(day_.boilingPoint, {.open = vessel().open.heating});
  return std::max(heating, boiling / conditions_.rig.boilPower);
}

bool Day::heatToBoil() {
  const StoredHeat before = now_.contents.storedHeat(now_.wort);
  const bool lifts = now_.contents.grain > kilograms(0.0);
  if (lifts) liftGrain();
  Stage stage = begin(StageKind::HeatingToBoil);
  if (lifts) {
    bookStored(stage.ledger, before, now_.contents.storedHeat(now_.wort));
    stage.ledger.lifted = -stage.ledger.stored();
  }
  day_.preBoilCold = now_.contents.wortVolume(kColdWort);
  day_.preBoilHot = now_.contents.wortVolume(now_.wort);
  day_.preBoilGravity = gravity(now_.contents);
  day_.boilingPoint = wortBoils();
  day_.leastToBoil = leastToBoil();
  stage.goal = day_.boilingPoint;
  const bool reached = heat(stage, {.set = {.open = vessel().open.heating},
                                    .goal = day_.boilingPoint,
                                    .otherwise = Outcome::DoesNotBoil});
  end(stage);
  return reached;
}

bool Day::boil() {
  const LidAndPump set{.open = vessel().open.boil};
  Stage stage = begin(StageKind::Boil);
  stage.goal = day_.boilingPoint;
  const Power most = conditions_.rig.boilPower * conditions_.full.delivered;
  HeatLossModel& losses = lossModel(set);
  const HeatFlows start = losses.flows(now_.wort, fill(now_.wort));
  if (most <= start.lost.total()) {
    // The lid comes off, or the power is turned down, and the boil dies.
    day_.levelsOff = levelOff(losses, most, now_.wort);
    day_.outcome = Outcome::DoesNotBoil;
    end(stage);
    return false;
  }
  const Volume cold = now_.contents.wortVolume(kColdWort);
  const PhaseEnd ended =
      phase(stage, {.control = Control::Boiling, .losses = lossModel(set), .longest = batch_.boil});
  tellBoil(stage, most - (start.lost.total() - start.lost[Path::Evaporation]), cold);
  if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
  end(stage);
  return ended != PhaseEnd::Guard;
}

void Day::tellBoil(const Stage& stage, Power net, Volume coldBefore) {
  const Time lasted = now_.clock - stage.begin;
  if (lasted <= seconds(0.0)) return;
  const VolumeFlow off = (coldBefore - now_.contents.wortVolume(kColdWort)) / lasted;
  day_.boil =
      BoilFigures{.temperature = now_.wort,
                  .net = net,
                  .evaporation = stage.evaporated / lasted,
                  .coldBoilOff = off,
                  .shareOfPreBoilPerHour = static_cast<double>(off * hours(1.0) / day_.preBoilCold),
                  .netPerSurface = net / conditions_.crossSection};
}

// Metal counts as warm up to the highest the vessel is filled: the mash, or the water.
void Day::pour(Mass water) {
  Contents fullest = now_.contents;
  fullest.water = water;
  fullest.grain = batch_.grain.mass;
  const Length level = fullest.volume(celsius(66.0)) / conditions_.crossSection;
  now_.contents = Contents(batch_, place_, wettedHeatCapacity(vessel(), level));
  now_.contents.water = water;
  now_.wort = now_.contents.filled();
  day_.water = water / waterDensity(kColdWort);
}

void Day::tellResult() {
  if (day_.preBoilCold <= litres(0.0)) day_.preBoilCold = now_.contents.wortVolume(kColdWort);
  day_.resultCold = now_.contents.wortVolume(kColdWort);
  day_.resultHot = now_.contents.wortVolume(now_.wort);
  day_.resultGravity = gravity(now_.contents);
}

BrewDay Day::run(Mass water) {
  day_.electrical = conditions_.full;
  pour(water);
  bool going = true;
  if (batch_.grain.mass > kilograms(0.0)) {
    going = strike();
    if (going) mashIn();
    if (going) going = mash();
  }
  if (going) going = heatToBoil();
  if (going && batch_.boil > seconds(0.0)) boil();
  tellResult();
  return std::move(day_);
}

BrewDay simulateWith(Mass water, const Rig& rig, const Batch& batch, const Place& place,
                     const SimulationOptions& options) {
  return Day(rig, batch, place, options).run(water);
}

// Wort after the boil rises by nearly a litre per litre poured: secant steps from a guess that
// knows the grain's share, without curves until the last.
BrewDay simulateFor(Volume wanted, const Rig& rig, const Batch& batch, const Place& place,
                    const SimulationOptions& options) {
  SimulationOptions quiet = options;
  quiet.curves = false;
  BrewDay day;
  const auto excess = [&](double water) {
    day = simulateWith(kilograms(water), rig, batch, place, quiet);
    return inLitres(day.resultCold - wanted);
  };
  const MassDensity cold = waterDensity(kColdWort);
  double water = options.waterGuess > kilograms(0.0)
                     ? inKilograms(options.waterGuess)
                     : inKilograms((wanted + batch.grain.mass * batch.absorption) * cold);
  double over = excess(water);
  double next = std::max(water - over, 0.2 * water);
  // As near as the integrator's own noise allows. Usually three or four steps; many where little
  // wort is wanted from much boil-off, since all days too small for it end alike.
  const double near = 500.0 * options.relativeTolerance;  // L
  for (int i = 0; i < 100 && std::abs(over) > near && next != water; ++i) {
    const double nextOver = excess(next);
    const double slope = (nextOver - over) / (next - water);
    water = next;
    over = nextOver;
    // A day that stalls at one size and not at another would send the secant anywhere.
    next = water - over / std::clamp(slope, 0.5, 2.0);
  }
  return options.curves ? simulateWith(kilograms(water), rig, batch, place, options) : day;
}

}  // namespace

BrewDay simulate(const Rig& rig, const Batch& batch, const Place& place,
                 const SimulationOptions& options) {
  if (const auto* poured = std::get_if<PouredWater>(&batch.size)) {
    const Mass water = poured->atTwentyDegrees * waterDensity(kColdWort);
    return simulateWith(water, rig, batch, place, options);
  }
  return simulateFor(std::get<WantedWort>(batch.size).atTwentyDegrees, rig, batch, place, options);
}

Temperature boilingPoint(double extract, Pressure pressure) {
  return saturationTemperature(pressure) + boilingPointRise(extract, pressure);
}

}  // namespace physics
