// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/day_course.hpp"

#include <algorithm>
#include <utility>

#include "physics/air.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {

HeatLossModel& Day::lossModel(LidAndPump set) {
  losses_.enterStage(fill(now_.wort), set.open,
                     set.pumped ? conditions_.rig.hose.length : metres(0.0));
  return losses_;
}

Power Day::lossAt(Temperature t, LidAndPump set) { return lossesOf(lossModel(set))(t); }

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
  if (order.control != Control::Off) noteLevel();
  return ended;
}

void Day::noteLevel() {
  const Volume stands = now_.contents.volume(now_.wort);
  day_.lowest = day_.lowest > litres(0.0) ? std::min(day_.lowest, stands) : stands;
}

std::optional<LevelsOff> Day::levelOffIn(LidAndPump set, Power supply, Temperature wanted) {
  const LossAt loss = lossesOf(lossModel(set));
  const auto at = levelOff(loss, supply, kColdestWort, wanted);
  if (!at) return std::nullopt;
  return LevelsOff{.at = *at, .wanted = wanted, .atWanted = loss(wanted)};
}

bool Day::heat(Stage& stage, const Heating& heating) {
  const Temperature goal = heating.goal;
  if (now_.wort >= goal) return true;
  PhaseEnd ended = PhaseEnd::Event;
  Temperature target = goal;
  day_.levelsOff = levelOffIn(heating.set, conditions_.full.delivered, goal);
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
    day_.levelsOff =
        LevelsOff{.at = now_.wort, .wanted = goal, .atWanted = lossAt(goal, heating.set)};
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
    // Mixing meets the first rest but for rounding; within its dead band a controller does not
    // heat.
    if (heldAt(next) - now_.wort > kelvins(1e-9) && !ramp(next.temperature)) return false;
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
  // Below the bed it is as hot as wanted; the bed has it one exchange of its wort later.
  const Time lag = bedLag(conditions_.rig.hose, now_.contents.wortVolume(now_.wort));
  const bool there = reached && (lag <= seconds(0.0) || hold(stage, lag, mashLid()));
  end(stage);
  return there;
}

// As hot as it is, or as far as the element keeps it.
bool Day::hold(Stage& stage, Time longest, LidAndPump set) {
  const bool holds = conditions_.full.delivered >= lossAt(now_.wort, set);
  const PhaseEnd ended = phase(stage, {.control = holds ? Control::Hold : Control::Full,
                                       .losses = lossModel(set),
                                       .longest = longest});
  if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
  return ended != PhaseEnd::Guard;
}

bool Day::rest(const MashRest& rest) {
  const LidAndPump set{.open = vessel().open.mash, .pumped = true};
  Stage stage = begin(StageKind::Rest);
  stage.goal = rest.temperature;
  // A controller cannot cool: what is too hot coasts down first, within the rest's time.
  const Temperature held = heldAt(rest);
  if (now_.wort > held) {
    phase(stage, {.control = Control::Off,
                  .losses = lossModel(set),
                  .longest = rest.duration,
                  .until = held});
  }
  const Time left = rest.duration - (now_.clock - stage.begin);
  if (left > seconds(0.0)) hold(stage, left, set);
  end(stage);
  return day_.outcome == Outcome::Done;
}

// Metal counts as warm up to the highest the vessel is filled: the mash, the water, or the rinsed
// wort, as if the grain kept none of it.
void Day::pour(Mass water) {
  Contents fullest = now_.contents;
  fullest.water = water;
  fullest.grain = batch_.grain.mass;
  Volume most = fullest.volume(celsius(66.0));
  if (batch_.rinse) {
    fullest.grain = kilograms(0.0);
    fullest.water += batch_.rinse->atTwentyDegrees * waterDensity(kColdWort);
    most = std::max(most, fullest.volume(celsius(66.0)));
  }
  const Length level = most / conditions_.crossSection;
  now_.contents = Contents(batch_, place_, wettedHeatCapacity(vessel(), level));
  now_.contents.water = water;
  now_.wort = now_.contents.filled();
  day_.water = water / waterDensity(kColdWort);
}

// By the brewers' scale as far as it goes, by density beyond it; 1 where all wort clings to grain.
double Day::gravity() const { return gravityOf(now_.contents.strength()); }

void Day::tellResult() {
  for (Volume* cold : {&day_.liftedCold, &day_.preBoilCold}) {
    if (*cold <= litres(0.0)) *cold = now_.contents.wortVolume(kColdWort);
  }
  day_.resultCold = now_.contents.wortVolume(kColdWort);
  day_.resultHot = now_.contents.wortVolume(now_.wort);
  day_.resultGravity = gravity();
  day_.resultExtract = std::max(0.0, now_.contents.strength());
}

BrewDay Day::run(Mass water) {
  day_.electrical = conditions_.full;
  pour(water);
  bool going = true;
  if (batch_.mashes()) {
    going = strike();
    if (going) mashIn();
    if (going) going = mash();
  }
  if (conditions_.options.untilMashEnds) return std::move(day_);
  if (going) going = heatToBoil();
  if (going && boils()) going = boil();
  if (going) tellOutcome();
  tellResult();
  return std::move(day_);
}

}  // namespace physics
