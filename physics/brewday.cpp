// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/brewday.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "physics/contents.hpp"
#include "physics/phase.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

const Temperature kColdWort = celsius(20.0);  // where volumes and gravities are stated
// How close to a level-off temperature a stalled heating is followed.
constexpr TemperatureDifference kLevelled = kelvins(0.25);
constexpr double kDriest = kThickestWort;
constexpr Time kLongestStage = hours(48.0);
constexpr Time kFirstStep = minutes(5.0);         // what a heating usually allows
constexpr Temperature kColdest = celsius(-20.0);  // a mash forgotten in a freezing shed
constexpr Temperature kHottest = celsius(109.0);
constexpr double kPointsPerStage = 90.0;

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

// One day of one rig, told in the order it happens.
class Day {
 public:
  Day(const Rig& rig, const Batch& batch, const Place& place, const SimulationOptions& options)
      : rig_(rig),
        batch_(batch),
        options_(options),
        room_{.air = moistAir(place.room, place.relativeHumidity, place.pressure),
              .draught = place.draught},
        pressure_(place.pressure),
        full_(electricalLoad(rig)),
        area_(crossSection(rig.vessel)),
        contents_(batch, place, joules(0.0) / kelvins(1.0)),
        place_(place),
        losses_(rig.vessel, rig.hose, room_, rig.vessel.height, 0.5, rig.evaporationFactor) {
    losses_.tabulate(kHottest);
  }

  BrewDay run(Mass water);

 private:
  enum class Control { Full, Boiling, Hold, Off };

  bool strike();
  void mashIn();
  bool mash();
  void liftGrain();
  bool heatToBoil();
  bool boil();

  // One phase with one control, appended to the stage. Returns how it ended.
  PhaseEnd phase(Stage& stage, Control control, double open, bool pumped, Time longest,
                 std::optional<Temperature> until);
  // Heats to `goal`, or tells where it levels off and follows it there.
  bool heat(Stage& stage, double open, bool pumped, Temperature goal, Outcome otherwise);

  // Where `supply` equals loss, if that lies at or below `wanted`.
  std::optional<LevelsOff> levelOff(HeatLossModel& losses, Power supply, Temperature wanted) const;

  Stage begin(StageKind kind) const;
  void end(Stage& stage);
  // The vessel's losses as the stage that begins with what is in it now.
  HeatLossModel& lossModel(double open, bool pumped);
  Length level(Volume volume) const { return volume / area_; }
  // Of what is in the vessel at t; what would overflow does not widen the walls.
  Length fill(Temperature t) const {
    return std::min(level(contents_.volume(t)), rig_.vessel.height);
  }
  Temperature wortBoils() const { return boilingPoint(contents_.strength(), pressure_); }

  const Rig& rig_;
  const Batch& batch_;
  const SimulationOptions& options_;
  Surroundings room_;
  Pressure pressure_;
  ElectricalLoad full_;
  Area area_;
  Contents contents_;
  const Place& place_;
  HeatLossModel losses_;  // of the stage that lossModel() was asked for last
  Temperature wort_;
  Time clock_;
  BrewDay day_;
};

HeatLossModel& Day::lossModel(double open, bool pumped) {
  losses_.enterStage(fill(wort_), open, pumped ? rig_.hose.length : metres(0.0));
  return losses_;
}

Stage Day::begin(StageKind kind) const {
  Stage stage{};
  stage.kind = kind;
  stage.begin = stage.end = clock_;
  stage.first = stage.last = stage.mixed = wort_;
  stage.hotFirst = stage.hotLast = contents_.volume(wort_);
  return stage;
}

void Day::end(Stage& stage) {
  stage.end = clock_;
  stage.last = wort_;
  stage.hotLast = contents_.volume(wort_);
  day_.fullest = std::max({day_.fullest, stage.hotFirst, stage.hotLast});
  day_.total += stage.ledger;
  day_.stages.push_back(std::move(stage));
}

PhaseEnd Day::phase(Stage& stage, Control control, double open, bool pumped, Time longest,
                    std::optional<Temperature> until) {
  HeatLossModel& losses = lossModel(open, pumped);
  const Volume extractVolume = contents_.wortVolume(wort_) - contents_.water / waterDensity(wort_);
  const Volume besidesWater = extractVolume + contents_.volume(wort_) - contents_.wortVolume(wort_);
  Contents now = contents_;
  const auto fillAt = [&](Temperature t, Mass water) {
    return std::min(level(water / waterDensity(t) + besidesWater), rig_.vessel.height);
  };
  const SpecificEnergy latentBoiling = latentHeat(wort_);
  const Power most =
      control == Control::Boiling ? rig_.boilPower * full_.delivered : full_.delivered;

  // A trial step may reach beyond the event that ends the phase, where water is no liquid or there
  // is none left; what it finds there is thrown away, but must be a number.
  const auto ratesAt = [&](Temperature trial, Mass trialWater) {
    const Temperature t = std::clamp(trial, kColdest, kHottest);
    const Mass water = std::max(trialWater, kilograms(1e-3));
    Rates rates{};
    rates.flows = losses.flows(t, fillAt(t, water));
    const Power lost = rates.flows.lost.total();
    now.water = water;
    switch (control) {
      case Control::Full:
        rates.element = most;
        rates.warming = (most - lost) / now.heatCapacity(t);
        break;
      case Control::Off:
        rates.warming = -lost / now.heatCapacity(t);
        break;
      case Control::Hold:
        // A controller cannot cool, should the room be the warmer.
        rates.element = std::max(lost, watts(0.0));
        rates.warming = (rates.element - lost) / now.heatCapacity(t);
        break;
      case Control::Boiling: {
        // What nothing else takes leaves as steam, at a steady temperature.
        rates.element = most;
        Power& latent = rates.flows.lost[Path::Evaporation];
        latent = most - (lost - latent);
        rates.flows.vapour = latent / latentBoiling;
        break;
      }
    }
    rates.steam = rates.flows.vapour * now.carried(t);
    return rates;
  };
  const auto event = [&](const PhaseState& s) {
    if (!until) return -1.0;
    const double above = inKelvins(temperatureOf(s) - *until);
    return control == Control::Off ? -above : above;
  };
  const bool powered = control != Control::Off;
  const auto guard = [&](const PhaseState& s) {
    if (!powered) return -1.0;
    // Wort must stand above the element, and above nothing at all for an outside heater.
    const Length least = std::max(rig_.element.topHeight, 0.01 * rig_.vessel.height);
    const Temperature t = std::clamp(temperatureOf(s), kColdest, kHottest);
    const Mass water = std::max(waterOf(s), kilograms(1e-3));
    const double uncovered = inMetres(least - fillAt(t, water));
    if (contents_.extract <= kilograms(0.0)) return uncovered;
    const double strength = static_cast<double>(contents_.extract / (contents_.extract + water));
    return std::max(uncovered, strength - kDriest);
  };
  // A heating's length is not known beforehand: its lossless length sets the spacing.
  const auto lossless = [&](Temperature goal) {
    return contents_.heatCapacity(wort_) * (goal - wort_) / most;
  };
  const Time expected = until && powered ? lossless(*until) : longest;
  const Time watchEvery = options_.curves ? expected / kPointsPerStage : seconds(0.0);
  // On the way to the boil the laws of loss bend where vapour alone fills the headspace.
  const Temperature boils = saturationTemperature(pressure_);
  const bool heats = control == Control::Full;
  const auto bend = [&](const PhaseState& s) {
    return heats ? inKelvins(temperatureOf(s) - boils) : 0.0;
  };
  // Held or boiling, nothing but the fill changes, and one step may span it all.
  const bool steady = control == Control::Hold || control == Control::Boiling;
  Time firstStep = steady ? longest : std::min(kFirstStep, 0.5 * expected);
  if (heats && wort_ < boils) firstStep = std::min(firstStep, lossless(boils));
  const Time began = clock_;
  const auto watch = [&](Time time, const PhaseState& s) {
    const Rates rates = ratesAt(temperatureOf(s), waterOf(s));
    stage.curve.push_back({.time = began + time,
                           .wort = temperatureOf(s),
                           .element = rates.element,
                           .lost = rates.flows.lost,
                           .vapour = rates.flows.vapour});
  };
  PhaseState start{};
  start[kTemperature] = inKelvin(wort_);
  start[kWater] = inKilograms(contents_.water);

  const StoredHeat before = contents_.storedHeat(wort_);
  const PhaseResult result = integratePhase(start, longest, firstStep, options_.relativeTolerance,
                                            ratesAt, event, guard, bend, watchEvery, watch);
  stage.evaporated += contents_.water - waterOf(result.state);
  contents_.water = waterOf(result.state);
  wort_ = temperatureOf(result.state);
  clock_ += result.lasted;
  const StoredHeat after = contents_.storedHeat(wort_);

  Ledger account{};
  account.element = megajoules(result.state[kElement]);
  account.cable = account.element * (full_.inCable / full_.delivered);
  account.wort = after.wort - before.wort;
  account.grain = after.grain - before.grain;
  account.vessel = after.vessel - before.vessel;
  account.steam = megajoules(result.state[kSteam]);
  for (std::size_t i = 0; i < kPathCount; ++i) {
    account.lost.values[i] = megajoules(result.state[kFirstPath + i]);
  }
  stage.ledger += account;
  if (powered) {
    const Volume stands = contents_.volume(wort_);
    day_.lowest = day_.lowest > litres(0.0) ? std::min(day_.lowest, stands) : stands;
  }
  return result.ended;
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
  double low = inKelvin(kColdest);
  double high = inKelvin(wanted);
  const double atLow = surplus(low);
  if (atLow > 0.0) {
    std::uintmax_t steps = 60;
    std::tie(low, high) = boost::math::tools::toms748_solve(
        surplus, low, high, atLow, atWanted, boost::math::tools::eps_tolerance<double>(40), steps);
  }
  return LevelsOff{.at = kelvin(low), .wanted = wanted, .atWanted = supply - watts(atWanted)};
}

bool Day::heat(Stage& stage, double open, bool pumped, Temperature goal, Outcome otherwise) {
  if (wort_ >= goal) return true;
  HeatLossModel& losses = lossModel(open, pumped);
  PhaseEnd ended = PhaseEnd::Event;
  Temperature target = goal;
  day_.levelsOff = levelOff(losses, full_.delivered, goal);
  if (day_.levelsOff) target = day_.levelsOff->at - kLevelled;
  if (wort_ < target) {
    ended = phase(stage, Control::Full, open, pumped, kLongestStage, target);
  }
  if (ended == PhaseEnd::Guard) {
    day_.outcome = Outcome::UncoversElement;
    return false;
  }
  if (day_.levelsOff || ended == PhaseEnd::Elapsed) {
    if (!day_.levelsOff) {
      day_.levelsOff = LevelsOff{
          .at = wort_, .wanted = goal, .atWanted = losses.flows(goal, fill(goal)).lost.total()};
    }
    day_.outcome = otherwise;
    return false;
  }
  wort_ = goal;
  return true;
}

bool Day::strike() {
  Stage stage = begin(StageKind::Strike);
  Temperature first = wortBoils();
  if (const auto* held = std::get_if<HeldMash>(&batch_.mash)) {
    if (!held->rests.empty()) first = held->rests.front().temperature;
  } else {
    first = std::get<UnpluggedMash>(batch_.mash).start;
  }
  day_.strike = contents_.strikeFor(first, batch_.grain);
  stage.goal = day_.strike;
  if (day_.strike >= wortBoils()) {
    day_.outcome = Outcome::StrikeTooHot;
    end(stage);
    return false;
  }
  const bool reached =
      heat(stage, rig_.vessel.open.strike, false, day_.strike, Outcome::DoesNotReachStrike);
  end(stage);
  return reached;
}

void Day::mashIn() {
  Stage stage = begin(StageKind::MashingIn);
  const StoredHeat before = contents_.storedHeat(wort_);
  wort_ = contents_.settled(wort_, batch_.grain);
  contents_.grain = batch_.grain.mass;
  stage.mixed = wort_;
  stage.hotFirst = contents_.volume(wort_);
  const StoredHeat after = contents_.storedHeat(wort_);
  stage.ledger.slaking = batch_.grain.mass * batch_.grain.slakingHeat;
  stage.ledger.wort = after.wort - before.wort;
  stage.ledger.grain = after.grain - before.grain;
  stage.ledger.vessel = after.vessel - before.vessel;
  phase(stage, Control::Off, 1.0, false, batch_.mashingIn, std::nullopt);
  end(stage);
}

bool Day::mash() {
  const double open = rig_.vessel.open.mash;
  if (const auto* left = std::get_if<UnpluggedMash>(&batch_.mash)) {
    Stage stage = begin(StageKind::UnpluggedRest);
    phase(stage, Control::Off, open, false, left->duration, std::nullopt);
    end(stage);
    return true;
  }
  for (const MashRest& rest : std::get<HeldMash>(batch_.mash).rests) {
    // Mixing meets the first rest but for rounding.
    if (rest.temperature - wort_ > kelvins(1e-9)) {
      Stage ramp = begin(StageKind::Ramp);
      ramp.goal = rest.temperature;
      const bool reached = heat(ramp, open, true, rest.temperature, Outcome::DoesNotReachRest);
      end(ramp);
      if (!reached) return false;
    }
    Stage stage = begin(StageKind::Rest);
    stage.goal = rest.temperature;
    // A controller cannot cool: what is too hot coasts down first, within the rest's time.
    const Time began = clock_;
    if (wort_ > rest.temperature) {
      phase(stage, Control::Off, open, true, rest.duration, rest.temperature);
    }
    const Time left = rest.duration - (clock_ - began);
    if (left > seconds(0.0)) {
      const bool holds =
          full_.delivered >=
          lossModel(open, true)
              .flows(wort_, std::min(level(contents_.volume(wort_)), rig_.vessel.height))
              .lost.total();
      const PhaseEnd ended =
          phase(stage, holds ? Control::Hold : Control::Full, open, true, left, std::nullopt);
      if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
    }
    end(stage);
    if (day_.outcome != Outcome::Done) return false;
  }
  return true;
}

void Day::liftGrain() {
  const Mass extract = batch_.grain.mass * batch_.extractYield;
  const Volume whole = wortVolume(contents_.water, extract, kColdWort);
  const Volume kept = std::min(batch_.grain.mass * batch_.absorption, whole);
  const double drained = 1.0 - static_cast<double>(kept / whole);
  contents_.grain = kilograms(0.0);
  contents_.water = drained * contents_.water;
  contents_.extract = drained * extract;
}

bool Day::heatToBoil() {
  const StoredHeat before = contents_.storedHeat(wort_);
  const bool lifts = contents_.grain > kilograms(0.0);
  if (lifts) liftGrain();
  Stage stage = begin(StageKind::HeatingToBoil);
  const StoredHeat after = contents_.storedHeat(wort_);
  if (lifts) {
    stage.ledger.wort = after.wort - before.wort;
    stage.ledger.grain = after.grain - before.grain;
    stage.ledger.vessel = after.vessel - before.vessel;
    stage.ledger.lifted = -stage.ledger.stored();
  }
  day_.preBoilCold = contents_.wortVolume(kColdWort);
  day_.preBoilHot = contents_.wortVolume(wort_);
  day_.preBoilGravity = gravity(contents_);
  day_.boilingPoint = wortBoils();
  const auto lossAtBoiling = [&](double open) {
    return lossModel(open, false).flows(day_.boilingPoint, fill(day_.boilingPoint)).lost.total();
  };
  day_.leastToBoil = std::max(lossAtBoiling(rig_.vessel.open.heating),
                              lossAtBoiling(rig_.vessel.open.boil) / rig_.boilPower);
  stage.goal = day_.boilingPoint;
  const bool reached =
      heat(stage, rig_.vessel.open.heating, false, day_.boilingPoint, Outcome::DoesNotBoil);
  end(stage);
  return reached;
}

bool Day::boil() {
  Stage stage = begin(StageKind::Boil);
  stage.goal = day_.boilingPoint;
  const Power most = rig_.boilPower * full_.delivered;
  HeatLossModel& losses = lossModel(rig_.vessel.open.boil, false);
  const HeatFlows start = losses.flows(wort_, fill(wort_));
  if (most <= start.lost.total()) {
    // The lid comes off, or the power is turned down, and the boil dies.
    day_.levelsOff = levelOff(losses, most, wort_);
    day_.outcome = Outcome::DoesNotBoil;
    end(stage);
    return false;
  }
  const Volume cold = contents_.wortVolume(kColdWort);
  const PhaseEnd ended =
      phase(stage, Control::Boiling, rig_.vessel.open.boil, false, batch_.boil, std::nullopt);
  const Power net = most - (start.lost.total() - start.lost[Path::Evaporation]);
  const Time lasted = clock_ - stage.begin;
  if (lasted > seconds(0.0)) {
    const VolumeFlow off = (cold - contents_.wortVolume(kColdWort)) / lasted;
    day_.boil = BoilFigures{
        .temperature = wort_,
        .net = net,
        .evaporation = stage.evaporated / lasted,
        .coldBoilOff = off,
        .shareOfPreBoilPerHour = static_cast<double>(off * hours(1.0) / day_.preBoilCold),
        .netPerSurface = net / area_};
  }
  if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
  end(stage);
  return ended != PhaseEnd::Guard;
}

BrewDay Day::run(Mass water) {
  day_.electrical = full_;
  contents_.water = water;
  day_.water = water / waterDensity(kColdWort);
  // Metal counts as warm up to the highest the vessel is filled: the mash, or the water.
  Contents fullest = contents_;
  fullest.grain = batch_.grain.mass;
  contents_ = Contents(batch_, place_,
                       wettedHeatCapacity(rig_.vessel, level(fullest.volume(celsius(66.0)))));
  contents_.water = water;
  wort_ = contents_.filled();

  const bool mashes = batch_.grain.mass > kilograms(0.0);
  bool going = true;
  if (mashes) {
    going = strike();
    if (going) mashIn();
    if (going) going = mash();
  }
  if (going) going = heatToBoil();
  if (going && batch_.boil > seconds(0.0)) boil();
  if (day_.preBoilCold <= litres(0.0)) day_.preBoilCold = contents_.wortVolume(kColdWort);
  day_.resultCold = contents_.wortVolume(kColdWort);
  day_.resultHot = contents_.wortVolume(wort_);
  day_.resultGravity = gravity(contents_);
  return std::move(day_);
}

BrewDay simulateWith(Mass water, const Rig& rig, const Batch& batch, const Place& place,
                     const SimulationOptions& options) {
  return Day(rig, batch, place, options).run(water);
}

}  // namespace

BrewDay simulate(const Rig& rig, const Batch& batch, const Place& place,
                 const SimulationOptions& options) {
  const MassDensity cold = waterDensity(kColdWort);
  if (const auto* poured = std::get_if<PouredWater>(&batch.size)) {
    return simulateWith(poured->atTwentyDegrees * cold, rig, batch, place, options);
  }
  // Wort after the boil rises by nearly a litre per litre poured: secant steps from a guess that
  // knows the grain's share, without curves until the last.
  const Volume wanted = std::get<WantedWort>(batch.size).atTwentyDegrees;
  SimulationOptions quiet = options;
  quiet.curves = false;
  BrewDay day;
  const auto excess = [&](double water) {
    day = simulateWith(kilograms(water), rig, batch, place, quiet);
    return inLitres(day.resultCold - wanted);
  };
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

}  // namespace physics
