// SPDX-License-Identifier: GPL-3.0-or-later
// Between mash and boil: the grain is lifted, rinsed, and hangs to drain.
#include <algorithm>

#include "physics/day_course.hpp"
#include "physics/rinse.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

// Hanging grain is not to be boiled below: what drains with the element on is heated to so much
// below boiling and held there. Own choice.
constexpr TemperatureDifference kBelowTheBoil = kelvins(1.0);

double gravityWith(const Contents& wort, const WortMasses& added) {
  const Mass extract = wort.extract + added.extract;
  return gravityOf(static_cast<double>(extract / (wort.water + added.water + extract)));
}

}  // namespace

Contents Day::liftGrain() {
  Contents& contents = now_.contents;
  const Mass extract = batch_.grain.mass * batch_.extractYield;
  const Mass water = contents.water;
  const Volume whole = coldVolume({contents.water, extract});
  const Volume kept = std::min(batch_.grain.mass * batch_.absorption, whole);
  const double drained = 1.0 - static_cast<double>(kept / whole);
  contents.grain = kilograms(0.0);
  contents.water = drained * contents.water;
  contents.extract = drained * extract;
  Contents lifted(batch_, place_, joules(0.0) / kelvins(1.0));
  lifted.grain = batch_.grain.mass;
  lifted.water = water - contents.water;
  lifted.extract = extract - contents.extract;
  return lifted;
}

// The reached part of the grain, its wort and the water come to one temperature, at which what runs
// off joins the wort.
void Day::rinse(const Contents& lifted, Stage& stage) {
  const Rinse& planned = *batch_.rinse;
  Contents& wort = now_.contents;
  const Mass water = planned.atTwentyDegrees * waterDensity(kColdWort);
  const WortMasses held{lifted.water, lifted.extract};
  const WortMasses runsOff = rinsedGrain(held, water, planned.reached).runsOff;

  Contents met = lifted;
  for (Mass* part : {&met.water, &met.extract, &met.grain}) *part = planned.reached * *part;
  const Energy broughtOut = met.storedHeat(now_.wort).total();
  const Energy brought = water * wort.carried(planned.temperature);
  met.water += water;
  const Temperature runsAt = met.holding(broughtOut + brought, now_.wort);
  Contents running(batch_, place_, joules(0.0) / kelvins(1.0));
  running.water = runsOff.water;
  running.extract = runsOff.extract;
  const Energy ran = running.storedHeat(runsAt).total();

  Rinsed told{};
  told.at = now_.clock;
  told.before = now_.wort;
  told.runsOff = runsAt;
  told.gravityIfNone = gravityWith(wort, rinsedGrain(held, water, 0.0).runsOff);
  const WortMasses most = rinsedGrain(held, water, 1.0).runsOff;
  told.gravityIfAll = gravityWith(wort, most);
  told.gainedIfAll = most.extract;

  Ledger account{};
  account.rinsed = brought;
  account.lifted = met.storedHeat(runsAt).total() - ran - broughtOut;
  const StoredHeat before = wort.storedHeat(now_.wort);
  wort.water += runsOff.water;
  wort.extract += runsOff.extract;
  now_.wort = wort.holding(before.total() + ran, now_.wort);
  bookStored(account, before, wort.storedHeat(now_.wort));
  stage.ledger += account;
  stage.first = stage.last = stage.mixed = now_.wort;
  stage.hotFirst = stage.hotLast = wort.volume(now_.wort);

  told.mixed = now_.wort;
  told.cold = wort.wortVolume(kColdWort);
  told.hot = wort.wortVolume(now_.wort);
  told.gravity = gravity();
  told.extract = std::max(0.0, wort.strength());
  told.gained = runsOff.extract;
  told.left = lifted.extract - runsOff.extract;
  told.heat = heatOfRinse(planned, place_.water);
  told.fromWall = fromWallForRinse(planned, place_.water);
  told.heating = timeToHeatRinse(planned, place_.water);
  if (told.fromWall) day_.total.apart += *told.fromWall;
  day_.rinsed = told;
}

// In the open vessel, the grain above it. What drips meanwhile counts as in from the start.
bool Day::drain(Stage& stage) {
  if (day_.outcome != Outcome::Done) return false;
  const LidAndPump open{.open = 1.0};
  const Time longest = batch_.drain->duration;
  if (!batch_.drain->elementOn) {
    phase(stage, {.control = Control::Off, .losses = lossModel(open), .longest = longest});
    return true;
  }
  Temperature until = wortBoils() - kBelowTheBoil;
  if (const auto level = levelOffIn(open, conditions_.full.delivered, until))
    until = level->at - kLevelled;
  if (now_.wort < until) {
    const PhaseEnd ended = phase(
        stage,
        {.control = Control::Full, .losses = lossModel(open), .longest = longest, .until = until});
    if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
    if (ended != PhaseEnd::Event) return ended != PhaseEnd::Guard;
  }
  const Time left = longest - (now_.clock - stage.begin);
  return left <= seconds(0.0) || hold(stage, left, open);
}

// Whether the element stands dry before the rinsing water is in, where it is left on.
void Day::leaveElementOn() {
  if (!batch_.drain || !batch_.drain->elementOn) return;
  noteLevel();
  const Length least = std::max(conditions_.rig.element.topHeight, 0.01 * vessel().height);
  if (fill(now_.wort) <= least) day_.outcome = Outcome::UncoversElement;
}

Stage Day::lift() {
  const bool lifts = now_.contents.grain > kilograms(0.0);
  const StoredHeat before = now_.contents.storedHeat(now_.wort);
  std::optional<Contents> lifted;
  if (lifts) lifted = liftGrain();
  Stage stage = begin(lifts && batch_.drain ? StageKind::Draining : StageKind::HeatingToBoil);
  if (lifts) {
    bookStored(stage.ledger, before, now_.contents.storedHeat(now_.wort));
    stage.ledger.lifted = -stage.ledger.stored();
  }
  day_.liftedCold = now_.contents.wortVolume(kColdWort);
  day_.liftedHot = now_.contents.wortVolume(now_.wort);
  day_.liftedGravity = gravity();
  day_.liftedExtract = std::max(0.0, now_.contents.strength());
  if (lifts) leaveElementOn();
  if (lifts && batch_.rinse) rinse(*lifted, stage);
  return stage;
}

}  // namespace physics
