// SPDX-License-Identifier: GPL-3.0-or-later
// The second half of the day: from heating the wort to the end of the boil.
#include <algorithm>
#include <numeric>
#include <utility>

#include "physics/day_course.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

// A wort that cools from boiling and comes back to it has got there when it is this much hotter.
constexpr TemperatureDifference kBackAtTheBoil = kelvins(1e-9);
// Additions as near to each other as this go in together.
constexpr Time kSameMoment = seconds(1e-9);
// To which share the least power to boil is found, and by how many heatings at most.
constexpr double kLeastTolerance = 1e-7;
constexpr int kMostHeatings = 8;
// How much of the water may be amiss by the end of a heating told by another's nodes. It moves the
// least power by a third of that share at most, and is itself a tenth of what is counted here.
constexpr double kUnsure = 1e-6;

}  // namespace

// As full as the wort stands once it boils, however far a heating has brought it.
Power Day::leastAsFull() {
  const Temperature reached = std::exchange(now_.wort, day_.boilingPoint);
  Power least = lossAt(day_.boilingPoint, heatingLid());
  if (boils())
    least = std::max(least, lossAt(day_.boilingPoint, boilLid()) / conditions_.rig.boilPower);
  now_.wort = reached;
  return least;
}

PhaseEnd Day::heatTowardsBoiling(const DayConditions& conditions, Power power, Stage& stage,
                                 HeatingNodes* nodes) {
  HeatLossModel& losses = lossModel(heatingLid());
  const Temperature water = std::min(saturationTemperature(conditions.pressure), day_.boilingPoint);
  const Temperature target =
      boilBegins(lossesOf(losses), power, kColdestWort, water, day_.boilingPoint);
  if (now_.wort >= target) return PhaseEnd::Event;
  const PhaseEnd ended = runPhase(conditions,
                                  {.control = Control::Full,
                                   .losses = losses,
                                   .longest = kLongestStage,
                                   .until = target,
                                   .share = power / conditions.full.delivered,
                                   .nodes = nodes},
                                  now_, stage);
  if (ended == PhaseEnd::Event) now_.wort = target;
  return ended;
}

// A fixed point: what is lost at boiling depends on how full the vessel is by then, and that, a
// little, on how long the heating took. Each step follows the chord through the last two.
class Day::LeastSearch {
 public:
  explicit LeastSearch(Power guess) : power_(guess), before_(guess) {}
  Power power() const { return power_; }
  // `least` is what the heating with power() comes to. True once it is that.
  bool settled(Power least) {
    const Power shortBy = least - power_;
    const double chord =
        tried_ ? static_cast<double>((shortBefore_ - shortBy) / (power_ - before_)) : 1.0;
    tried_ = true;
    before_ = power_;
    shortBefore_ = shortBy;
    power_ += shortBy / std::clamp(chord, 0.5, 2.0);
    return abs(power_ - before_) <= kLeastTolerance * power_;
  }

 private:
  Power power_, before_;
  Power shortBefore_ = watts(0.0);
  bool tried_ = false;
};

// By the nodes of the heating that was; `guess` comes nearer where they do not tell it closely.
std::optional<Power> Day::leastByNodes(const HeatingDone& done, Power& guess) {
  LeastSearch search(guess);
  const Mass water = done.ready.contents.water;
  const Mass gone = done.nodes.evaporated();
  for (int i = 0; i < kMostHeatings; ++i) {
    const auto otherwise = done.nodes.evaporatedWith(search.power());
    if (!otherwise) return std::nullopt;
    now_.contents.water = water - *otherwise;
    if (!search.settled(leastAsFull())) continue;
    guess = search.power();
    const double unsure =
        static_cast<double>(std::max(gone, *otherwise) / water * (abs(*otherwise - gone) / water));
    return unsure <= kUnsure ? std::optional(guess) : std::nullopt;
  }
  return std::nullopt;
}

Power Day::leastAfterHeating(const HeatingDone& done, Power guess) {
  const Moment started = now_;
  if (const auto least = leastByNodes(done, guess)) {
    now_ = started;
    return *least;
  }
  const DayConditions unwatched{.rig = conditions_.rig,
                                .options = unwatched_,
                                .pressure = conditions_.pressure,
                                .full = conditions_.full,
                                .crossSection = conditions_.crossSection};
  LeastSearch search(guess);
  for (int i = 0; i < kMostHeatings; ++i) {
    now_ = done.ready;
    Stage tried = begin(StageKind::HeatingToBoil);
    if (heatTowardsBoiling(unwatched, search.power(), tried) == PhaseEnd::Guard) break;
    if (search.settled(leastAsFull())) break;
  }
  now_ = started;
  return search.power();
}

bool Day::heatToBoil() {
  Stage stage = lift();
  day_.boilingPoint = wortBoils();
  if (stage.kind == StageKind::Draining) {
    const bool drained = drain(stage);
    end(stage);
    if (!drained) return false;
    stage = begin(StageKind::HeatingToBoil);
    day_.boilingPoint = wortBoils();
  }
  stage.goal = day_.boilingPoint;
  const Moment ready = now_;
  HeatingNodes nodes(conditions_.full.delivered);
  const PhaseEnd ended = heatTowardsBoiling(conditions_, conditions_.full.delivered, stage, &nodes);
  // One that was cut short tells nothing of those that get there.
  if (ended != PhaseEnd::Event) nodes.take({});
  noteLevel();
  end(stage);
  // Asked for even where the element stands dry by now: a stronger one might be faster.
  const Power least = leastAsFull();
  const bool again = conditions_.options.leastForAnyPower;
  day_.leastToBoil = again ? leastAfterHeating({ready, nodes}, least) : least;
  if (ended == PhaseEnd::Guard) {
    day_.outcome = Outcome::UncoversElement;
    return false;
  }
  rolls_ = ended == PhaseEnd::Event && conditions_.full.delivered >= least;
  startTheClock();
  return true;
}

void Day::startTheClock() {
  day_.preBoilCold = now_.contents.wortVolume(kColdWort);
  day_.preBoilHot = now_.contents.wortVolume(now_.wort);
  day_.preBoilGravity = gravity();
  if (rolls_) return;
  const Power full = conditions_.full.delivered;
  if (boils()) {
    day_.levelsOff = levelOffIn(boilLid(), conditions_.rig.boilPower * full, day_.boilingPoint);
  }
  if (!day_.levelsOff) day_.levelsOff = levelOffIn(heatingLid(), full, day_.boilingPoint);
  // Where it would get there, but not in the longest time anybody waits.
  if (!day_.levelsOff)
    day_.levelsOff =
        LevelsOff{.at = now_.wort, .wanted = day_.boilingPoint, .atWanted = watts(0.0)};
  day_.levelsOff->atWanted = *day_.leastToBoil;
}

std::vector<std::size_t> Day::additionsInOrder() const {
  std::vector<std::size_t> order(batch_.additions.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return batch_.additions[a].beforeEnd > batch_.additions[b].beforeEnd;
  });
  return order;
}

// Mixed at once. The boiling point stays what it was before the boil.
void Day::take(std::size_t which, Stage& stage) {
  const Addition& addition = batch_.additions[which];
  Contents& contents = now_.contents;
  const StoredHeat before = contents.storedHeat(now_.wort);
  Added added{};
  added.which = which;
  added.at = now_.clock;
  added.before = now_.wort;
  added.coldBefore = contents.wortVolume(kColdWort);
  added.hotBefore = contents.wortVolume(now_.wort);
  added.gravityBefore = gravity();
  Ledger account{};
  account.brought = contents.heatOf(addition, addition.temperature);
  now_.wort = contents.take(addition, now_.wort);
  bookStored(account, before, contents.storedHeat(now_.wort));
  stage.ledger += account;
  added.mixed = now_.wort;
  added.took = contents.heatOf(addition, now_.wort) - account.brought;
  added.cold = contents.wortVolume(kColdWort);
  added.hot = contents.wortVolume(now_.wort);
  added.gravity = gravity();
  day_.fullest = std::max(day_.fullest, contents.volume(now_.wort));
  day_.additions.push_back(added);
}

PhaseEnd Day::boilUntil(Time intoBoil, Stage& stage, Time& rolled) {
  const double share = conditions_.rig.boilPower;
  HeatLossModel& losses = lossModel(boilLid());
  const Power lost = losses.flows(now_.wort, fill(now_.wort)).lost.total();
  const auto left = [&] { return intoBoil - (now_.clock - stage.begin); };
  PhaseEnd ended = PhaseEnd::Event;
  if (now_.wort < day_.boilingPoint || share * conditions_.full.delivered < lost) {
    // As hot as the power makes it, the surface evaporating by its law.
    ended = phase(stage, {.control = Control::Full,
                          .losses = losses,
                          .longest = left(),
                          .until = day_.boilingPoint + kBackAtTheBoil,
                          .share = share,
                          .spacedFor = batch_.boil});
    if (ended == PhaseEnd::Event) now_.wort = day_.boilingPoint;
  }
  if (ended != PhaseEnd::Event) return ended;
  for (Added& added : day_.additions) {
    if (!added.backIn) added.backIn = now_.clock - added.at;
  }
  const Time rolls = now_.clock;
  ended = phase(stage, {.control = Control::Boiling,
                        .losses = losses,
                        .longest = left(),
                        .share = share,
                        .spacedFor = batch_.boil});
  rolled += now_.clock - rolls;
  return ended;
}

bool Day::boil() {
  Stage stage = begin(StageKind::Boil);
  stage.goal = day_.boilingPoint;
  const HeatFlows start = lossModel(boilLid()).flows(now_.wort, fill(now_.wort));
  const Power most = conditions_.rig.boilPower * conditions_.full.delivered;
  Time rolled = seconds(0.0);
  PhaseEnd ended = PhaseEnd::Elapsed;
  const auto goOnUntil = [&](Time intoBoil) {
    if (intoBoil - (now_.clock - stage.begin) > kSameMoment)
      ended = boilUntil(intoBoil, stage, rolled);
    return ended != PhaseEnd::Guard;
  };
  // What goes in cools the wort, not the boil.
  std::optional<Temperature> boiled;
  for (const std::size_t which : additionsInOrder()) {
    const Addition& addition = batch_.additions[which];
    if (!goOnUntil(batch_.boil - addition.beforeEnd)) break;
    if (rolls_) boiled = day_.boilingPoint;
    if (addition.isAtTheEnd() && !boiled) boiled = now_.wort;
    take(which, stage);
    if (now_.contents.strength() >= kThickestWort) ended = PhaseEnd::Guard;
  }
  if (ended != PhaseEnd::Guard) goOnUntil(batch_.boil);
  tellBoil(stage, {.temperature = boiled.value_or(now_.wort),
                   .net = most - (start.lost.total() - start.lost[Path::Evaporation]),
                   .rolled = rolled});
  if (ended == PhaseEnd::Guard) day_.outcome = Outcome::UncoversElement;
  end(stage);
  return ended != PhaseEnd::Guard;
}

void Day::tellBoil(const Stage& stage, const Boiled& boiled) {
  const Time lasted = now_.clock - stage.begin;
  if (lasted <= seconds(0.0)) return;
  Volume withAdditions = day_.preBoilCold;
  for (const Added& added : day_.additions) withAdditions += added.cold - added.coldBefore;
  const VolumeFlow off = (withAdditions - now_.contents.wortVolume(kColdWort)) / lasted;
  day_.boil =
      BoilFigures{.temperature = boiled.temperature,
                  .net = boiled.net,
                  .evaporation = stage.evaporated / lasted,
                  .coldBoilOff = off,
                  .shareOfPreBoilPerHour = static_cast<double>(off * hours(1.0) / day_.preBoilCold),
                  .netPerSurface = boiled.net / conditions_.crossSection,
                  .lasted = lasted,
                  .rolled = boiled.rolled};
}

void Day::tellOutcome() {
  if (rolls_) return;
  const bool far = day_.boilingPoint - now_.wort > kFarBelow;
  day_.outcome = far ? Outcome::StaysFarBelow : Outcome::Steams;
}

}  // namespace physics
