// SPDX-License-Identifier: GPL-3.0-or-later
// The day as a list of what to do, stage by stage.
#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/additions.hpp"
#include "gui/telling/begins.hpp"
#include "gui/telling/chill.hpp"
#include "gui/telling/sheet.hpp"
#include "gui/telling/sheet_lift.hpp"
#include "gui/telling/sheet_looks.hpp"
#include "gui/telling/sure.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::Outcome;
using physics::Stage;
using physics::StageKind;
using physics::Temperature;
using physics::Time;
using rigs::amount;
using rigs::asChosen;
using rigs::Joint;
using rigs::List;
using rigs::Told;

Told comma(std::vector<Told> parts) {
  List list{{}, Joint::Comma};
  for (Told& one : parts)
    if (!one.empty()) list.items.emplace_back(std::move(one));
  return list.items.empty() ? Told() : Told::just(std::move(list));
}

// --- What is read and written in.

Told temperatureBox() { return Told(TOLD("Sheet", "temperature")); }
Told volumeBox() { return Told(TOLD("Sheet", "volume")); }
Told gravityBox() { return Told(TOLD("Sheet", "gravity")); }
Told meterBox() { return Told(TOLD("Sheet", "meter")); }

// --- What is expected.

Told readsAs(const Temperature& t) { return Told::just(amount(t)); }

// Of wort with a hydrometer's figure; of water, which has none, its volumes alone.
struct WortFigures {
  physics::Volume cold, hot;
  double gravity;
};
std::vector<Told> expectedOf(const WortFigures& wort, bool isWort) {
  std::vector<Told> all{
      Told(TOLD("Sheet", "%1 cold, %2 hot"), amount(wort.cold), amount(wort.hot))};
  if (isWort) all.push_back(Told::just(rigs::Number{wort.gravity, {.decimals = 3}}));
  return all;
}

// --- One rig's day on its way to lines.

class DayLines {
 public:
  DayLines(const Case& of, std::size_t rig)
      : of_(of), i_(rig), day_(of.rig(rig).day), rig_(of.planned(rig)) {}

  std::vector<SheetLine> take() {
    begin();
    for (const Stage& stage : day_.stages) {
      // A strike that would have to boil is not begun.
      if (day_.outcome == Outcome::StrikeTooHot) break;
      const std::size_t first = lines_.size();
      linesOf(stage);
      heatTheRinse(stage);
      if (first < lines_.size())
        lines_[first].stage = static_cast<std::size_t>(&stage - day_.stages.data());
    }
    if (!day_.finished()) stop();
    return std::move(lines_);
  }

 private:
  void linesOf(const Stage& stage) {
    switch (stage.kind) {
      case StageKind::Strike:
        return strike(stage);
      case StageKind::MashingIn:
        return mashIn(stage);
      case StageKind::Ramp:
        return ramp(stage);
      case StageKind::Rest:
        return rest(stage);
      case StageKind::UnpluggedRest:
        return leaveAlone(stage);
      case StageKind::Draining:
        return lift();
      case StageKind::HeatingToBoil:
        return heatToBoil(stage);
      case StageKind::Boil:
        return boil(stage);
    }
  }

  SheetLine& add(Time sinceTheBeginning, Told action, Told more = {}) {
    lines_.push_back({.at = clockAt(sinceTheBeginning).sinceMidnight,
                      .counted = clockAt(sinceTheBeginning).counted,
                      .action = std::move(action),
                      .more = std::move(more)});
    return lines_.back();
  }

  rigs::Clock clockAt(Time since) const { return of_.clockAt(i_, since); }
  SheetLine lineAt(Time since) const {
    SheetLine line;
    line.at = clockAt(since).sinceMidnight;
    line.counted = clockAt(since).counted;
    return line;
  }

  // Whoever has something to be ready for must not miss when to begin.
  void begin() {
    if (!of_.plan.ready || !of_.rig(i_).begins) return;
    const Told ready = readyText(of_, rigs::Clock{of_.plan.ready->at});
    const auto at = beginsBy(of_, i_);
    const auto by = at ? std::optional(rigs::clockOfDay(at->sinceMidnight)) : std::nullopt;
    add(physics::seconds(0.0), Told(TOLD("Sheet", "Begin, and stay with it")),
        by ? Told(TOLD("Sheet", "then %1; for 9 of 10 such days begin by %2"), ready,
                  rigs::Clock{*by})
           : Told(TOLD("Sheet", "then %1"), ready));
  }

  void strike(const Stage& stage) {
    SheetLine& line = add(stage.begin, heatWater(), comma({lid("strike"), full()}));
    line.expected = {Told(TOLD("Sheet", "to %1"), amount(day_.strike))};
    line.toWrite = {volumeBox(), meterBox()};
  }

  void mashIn(const Stage& stage) {
    SheetLine& line =
        add(stage.begin,
            Told(TOLD("Sheet", "Element off. Grain in, %1"), amount(of_.plan.batch.grain.mass)),
            rig_.hasLid ? Told(TOLD("Sheet", "stir it in, lid off"))
                        : Told(TOLD("Sheet", "stir it in")));
    line.band = clocks(bandOf(&rigs::Bands::waterReady));
    line.expected = {Told(TOLD("Sheet", "settles at %1"), amount(stage.mixed))};
    line.toWrite = {temperatureBox()};
  }

  void ramp(const Stage& stage) {
    SheetLine& line =
        add(stage.begin, Told(TOLD("Sheet", "Heat to %1"), amount(stage.goal.value_or(stage.last))),
            comma({full(), lid("mash"), pumped()}));
    if (rigs::finished(day_, stage))
      line.expected = {Told(TOLD("Sheet", "takes %1"), rigs::roughly(rigs::lasted(stage)))};
  }

  void rest(const Stage& stage) {
    SheetLine& line = add(stage.begin,
                          Told(TOLD("Sheet", "Hold %1 for %2"),
                               amount(stage.goal.value_or(stage.first)), asChosen(restOf(stage))),
                          comma({lid("mash"), pumped()}));
    if (rigs::finished(day_, stage)) line.expected = {courseOf(stage)};
    line.toWrite = {temperatureBox()};
  }

  void leaveAlone(const Stage& stage) {
    SheetLine& line =
        add(stage.begin,
            rig_.hasLid && isShut("mash") ? Told(TOLD("Sheet", "Lid on, unplug"))
                                          : Told(TOLD("Sheet", "Unplug")),
            comma({isShut("mash") ? Told() : lid("mash"),
                   Told(TOLD("Sheet", "leave it alone for %1"), asChosen(rigs::lasted(stage)))}));
    line.expected = {readsAs(stage.first)};
    line.toWrite = {temperatureBox()};
    const auto& night = of_.rig(i_).night;
    if (!night || !night->own) return;
    const auto awake = [&](Time alone) { return isAwake(clockAt(stage.begin + alone)); };
    for (const Look& look : looksAt(night->asItIs, awake)) {
      SheetLine& read =
          add(stage.begin + look.point.alone, {},
              look.isLastBeforeBed ? Told(TOLD("Sheet",
                                               "Read the mash if you are awake: the later, the "
                                               "more it tells of the end"))
                                   : Told(TOLD("Sheet", "Read the mash")));
      read.expected = {readsAs(look.point.wort)};
      read.toWrite = {temperatureBox()};
    }
  }

  void add(const LiftLine& one) {
    SheetLine& line = add(one.at, one.action, one.more);
    line.expected = one.expected;
    line.toWrite = one.toWrite;
  }
  void heatTheRinse(const Stage& stage) {
    const auto one = rinseHeatingLine(of_, i_, stage);
    if (!one) return;
    const auto isLater = [](Time at, const SheetLine& line) { return line.at && at < *line.at; };
    const Time at = clockAt(one->at).sinceMidnight;
    const auto place = std::upper_bound(lines_.begin(), lines_.end(), at, isLater) - lines_.begin();
    add(*one);
    std::rotate(lines_.begin() + place, lines_.end() - 1, lines_.end());
  }
  // Of the stage that begins with it.
  void lift() {
    const std::size_t first = lines_.size();
    for (const LiftLine& one : liftLines(of_, i_)) add(one);
    const rigs::Night* night = ownNight();
    if (!night) return;
    SheetLine& line = lines_[first];
    const std::vector<Told> expected = line.expected;
    tellTheNight(*night, line);
    line.expected.insert(line.expected.end(), expected.begin(), expected.end());
    line.toWrite.insert(line.toWrite.begin(), temperatureBox());
  }
  void heatRinsed(const Stage& stage) {
    if (!day_.find(StageKind::Draining)) lift();
    add(stage.begin, Told(TOLD("Sheet", "Take the grain away, full power")),
        comma({lid("heating"), stay()}));
    offWithoutABoil(stage);
  }

  void heatToBoil(const Stage& stage) {
    if (!of_.plan.batch.mashes()) {
      SheetLine& line = add(stage.begin, heatWater(), comma({lid("heating"), full(), stay()}));
      line.expected = {Told(TOLD("Sheet", "to %1"), amount(day_.boilingPoint))};
      line.toWrite = {volumeBox(), meterBox()};
      return offWithoutABoil(stage);
    }
    if (isRinsedOrDrained(of_, i_)) return heatRinsed(stage);
    const rigs::Night* night = ownNight();
    SheetLine& line = add(stage.begin,
                          night ? Told(TOLD("Sheet", "Lift the grain, plug in, full power"))
                                : Told(TOLD("Sheet", "Lift the grain, full power")),
                          comma({lid("heating"), stay()}));
    if (night) tellTheNight(*night, line);
    for (Told& one : expectedOf({day_.liftedCold, day_.liftedHot, day_.liftedGravity}, true))
      line.expected.push_back(std::move(one));
    if (night) line.toWrite = {temperatureBox()};
    line.toWrite.insert(line.toWrite.end(), {volumeBox(), gravityBox()});
    offWithoutABoil(stage);
  }

  void tellTheNight(const rigs::Night& night, SheetLine& line) {
    if (night.below > physics::minutes(1.0))
      line.more = rigs::sentences({Told(TOLD("Sheet", "%1."), line.more),
                                   Told(TOLD("Sheet", "It was below %1 for %2: boil it at once."),
                                        amount(rigs::kWarmUpTo), rigs::roughly(night.below))});
    const Told band = of_.rig(i_).bands ? morningOf(*of_.rig(i_).bands) : Told();
    line.expected = {band.empty() ? readsAs(night.morning)
                                  : Told(TOLD("Sheet", "%1 (%2)"), amount(night.morning), band)};
  }

  void boil(const Stage& stage) {
    const bool wort = of_.plan.batch.mashes();
    SheetLine& line =
        add(stage.begin, boilAction(), comma({boilLid(), boilPower(), boilOff(), foam()}));
    if (day_.outcome == Outcome::Done) line.band = clocks(bandOf(&rigs::Bands::boilBegins));
    line.expected = {!day_.additions.empty() && day_.boil ? readsAs(day_.boil->temperature)
                                                          : courseOf(stage)};
    for (Told& one : expectedOf({day_.preBoilCold, day_.preBoilHot, day_.preBoilGravity}, wort))
      line.expected.push_back(std::move(one));
    line.toWrite = {volumeBox()};
    if (wort) line.toWrite.push_back(gravityBox());
    for (const physics::Added& added : day_.additions)
      if (!isTopUp(added)) goesIn(added);
    if (day_.finished()) off(stage.end);
  }

  const physics::Addition& planned(const physics::Added& added) const {
    return of_.plan.batch.additions[added.which];
  }
  // Goes in when the element is off anyway.
  bool isTopUp(const physics::Added& added) const { return planned(added).isAtTheEnd(); }
  Told goingIn(const physics::Added& added) const {
    if (isTopUp(added)) return Told(TOLD("Sheet", "slowly, and stir: it foams and splashes"));
    if (planned(added).isPoured)
      return Told(TOLD("Sheet", "element off first, slowly, on again: it foams and splashes"));
    return Told(TOLD("Sheet",
                     "element off first, slowly, stir till it is dissolved, on again: it foams and "
                     "splashes"));
  }

  void goesIn(const physics::Added& added) {
    SheetLine& line =
        add(added.at, Told(TOLD("Sheet", "In goes %1"), additionInWords(planned(added))),
            goingIn(added));
    const Told back = backText(of_, i_, added);
    line.expected = {dipText(added)};
    if (!back.empty()) line.expected.push_back(back);
    const bool wort = added.gravity > 1.0005;
    for (Told& one : expectedOf({added.cold, added.hot, added.gravity}, wort))
      line.expected.push_back(std::move(one));
    line.toWrite = {temperatureBox(), volumeBox()};
  }

  Told boilAction() const {
    if (of_.rig(i_).edge) return Told(TOLD("Sheet", "Perhaps it rolls: its clock begins"));
    switch (day_.outcome) {
      case Outcome::Steams:
        return Told(TOLD("Sheet", "It steams and does not roll: its clock begins"));
      case Outcome::StaysFarBelow:
        return day_.startsBoiling()
                   ? Told(TOLD("Sheet", "It boils and cannot hold it: its clock begins"))
                   : Told(TOLD("Sheet", "It does not boil: its clock begins"));
      default:
        return Told(TOLD("Sheet", "It rolls"));
    }
  }

  static Told courseOf(const Stage& stage) {
    if (abs(stage.last - stage.first) < physics::kelvins(0.5)) return readsAs(stage.first);
    return Told(TOLD("Sheet", "%1 to %2"), amount(stage.first), amount(stage.last));
  }

  Told boilLid() const {
    if (!rig_.hasLid) return {};
    const double open = rig_.rig.vessel.open.boil;
    return open >= 1.0 ? Told(TOLD("Sheet", "lid off"))
                       : Told(TOLD("Sheet", "lid open by %1"), amount(open));
  }
  Told boilPower() const {
    if (rig_.rig.boilPower >= 1.0) return {};
    return Told(TOLD("Sheet", "turn down to %1 of the power"), amount(rig_.rig.boilPower));
  }
  Told boilOff() const {
    return day_.boil ? Told(TOLD("Sheet", "%1 boil off"), amount(day_.boil->coldBoilOff)) : Told();
  }
  Told foam() const { return Told(TOLD("Sheet", "stay: foam rises fast")); }

  // A plan may end where others begin to boil.
  void offWithoutABoil(const Stage& stage) {
    if (day_.finished() && &stage == &day_.stages.back()) off(stage.end);
  }

  void off(Time at) {
    const bool wort = of_.plan.batch.mashes();
    SheetLine& line = add(at, Told(TOLD("Sheet", "Element off")), Told(TOLD("Sheet", "unplug")));
    line.stage = day_.stages.size();
    line.band = clocks(bandOf(&rigs::Bands::over));
    const auto topUp = std::find_if(day_.additions.begin(), day_.additions.end(),
                                    [&](const physics::Added& one) { return isTopUp(one); });
    if (topUp == day_.additions.end())
      line.expected = expectedOf({day_.resultCold, day_.resultHot, day_.resultGravity}, wort);
    line.toWrite = {volumeBox()};
    if (wort) line.toWrite.push_back(gravityBox());
    line.toWrite.push_back(meterBox());
    std::for_each(topUp, day_.additions.end(), [&](const physics::Added& one) { goesIn(one); });
    chill(at);
  }

  // --- After the boil. Nobody is sent for a chiller that is merely supposed.

  static Told chillAction(const rigs::ChillAnswer& chill) {
    using Kind = rigs::Chiller::Kind;
    if (chill.chiller.kind == Kind::Counterflow)
      return Told(TOLD("Sheet", "Water on; run it through the chiller"));
    if (chill.chiller.kind == Kind::Air) return Told(TOLD("Sheet", "Let it cool"));
    return chill.chiller.stirred ? Told(TOLD("Sheet", "Coil in, water on; stir all the time"))
                                 : Told(TOLD("Sheet", "Coil in, water on"));
  }
  static Told chillCare(const rigs::ChillAnswer& chill) {
    if (chill.chiller.kind != rigs::Chiller::Kind::Air)
      return Told(TOLD("Sheet", "hoses fastened first: the water leaves scalding"));
    return chill.airBare ? Told(TOLD("Sheet", "jacket off, lid loose: never closed"))
                         : Told(TOLD("Sheet", "lid loose: never closed"));
  }

  void chill(Time boiled) {
    const rigs::ChillAnswer* chill = of_.rig(i_).chill.get();
    if (!chill || !chill->chiller.isStated) return;
    const Time begins = boiled + of_.plan.chilling.hotStand;
    if (isColdAlready(*chill)) {
      add(begins, Told(TOLD("Sheet", "Pitch"))).expected = {readsAs(chill->begins)};
      return;
    }
    add(begins, chillAction(*chill), chillCare(*chill)).expected = {
        Told(TOLD("Sheet", "from %1 to %2"), amount(chill->begins), amount(chill->goal))};
    const auto span = rigs::chillSpanAsBrewed(*chill);
    if (!span) return;
    SheetLine& line = add(begins + span->least, pitching(*chill));
    if (span->most > span->least) {
      const SheetLine latest = lineAt(begins + span->most);
      line.more =
          Told(TOLD("Sheet", "or as late as %1: still wort chills as it will"), latest.clock());
    }
    line.expected = {
        Told::just(amount(rigs::isTooWarmToPitch(*chill) ? chill->pass->likely.hotOut : chill->goal,
                          {.significantDigits = 3, .decimals = 0}))};
    line.toWrite = {temperatureBox()};
    if (of_.plan.batch.mashes()) line.toWrite.push_back(gravityBox());
  }
  static Told pitching(const rigs::ChillAnswer& chill) {
    if (rigs::isTooWarmToPitch(chill))
      return Told(TOLD("Sheet", "All of it is through, and too warm to pitch: once more, slower"));
    if (!chill.refused) return Told(TOLD("Sheet", "Pitch"));
    return Told(TOLD("Sheet", "Water does no more: ice round the kettle, to %1; then pitch"),
                amount(chill.pitching));
  }

  // No clock: the times beyond are of no day.
  void stop() {
    SheetLine line;
    line.action = Told(TOLD("Sheet", "The day stops here"));
    line.more = unfinishedText(of_, i_);
    line.isToDo = false;
    lines_.push_back(std::move(line));
  }

  // --- Words about the kettle.

  Told heatWater() const {
    return Told(TOLD("Sheet", "Heat %1 of water from %2"), amount(day_.water),
                amount(of_.plan.place.water));
  }
  Told full() const { return Told(TOLD("Sheet", "full power")); }
  Told stay() const {
    const bool comesOff = rig_.hasLid && rig_.rig.vessel.open.boil > rig_.rig.vessel.open.heating;
    return comesOff && day_.find(StageKind::Boil)
               ? Told(TOLD("Sheet", "stay with it, and open the lid before it rolls"))
               : Told(TOLD("Sheet", "stay with it"));
  }
  Told pumped() const {
    return rig_.rig.hose.length > physics::metres(0.0) ? Told(TOLD("Sheet", "pump on")) : Told();
  }

  double openFor(std::string_view use) const {
    const physics::LidUse& open = rig_.rig.vessel.open;
    return use == "strike" ? open.strike : use == "mash" ? open.mash : open.heating;
  }
  // What a shut lid lets out all round is not how far somebody opened it.
  bool isShut(std::string_view use) const {
    if (!rig_.hasLid) return false;
    const auto stated =
        rigs::parseQuantity<double>(rig_.written.at("/lid/open/" + std::string(use)));
    return !stated || *stated <= 0.0;
  }
  Told lid(std::string_view use) const {
    if (!rig_.hasLid) return {};
    if (isShut(use)) return Told(TOLD("Sheet", "lid on"));
    if (openFor(use) >= 1.0) return Told(TOLD("Sheet", "lid off"));
    return Told(TOLD("Sheet", "lid open by %1"), amount(openFor(use)));
  }

  // --- Figures beside the day's own.

  const rigs::Night* ownNight() const {
    const auto& night = of_.rig(i_).night;
    return night && night->own ? &night->asItIs : nullptr;
  }
  // As chosen; what of it has passed by then, of one that was cut short.
  Time restOf(const Stage& stage) const {
    if (rigs::finished(day_, stage)) return rigs::lasted(stage);
    const auto& rests = std::get<physics::HeldMash>(of_.plan.batch.mash).rests;
    const auto same = [&](const physics::MashRest& rest) {
      return stage.goal && rest.temperature == *stage.goal;
    };
    const auto found = std::find_if(rests.begin(), rests.end(), same);
    return found == rests.end() ? rigs::lasted(stage) : found->duration;
  }

  const rigs::Band<Time>* bandOf(rigs::Band<Time> rigs::Bands::*which) const {
    const auto& bands = of_.rig(i_).bands;
    return bands ? &((*bands).*which) : nullptr;
  }
  Told clocks(const rigs::Band<Time>* band) const {
    if (!band || !band->low || !band->high) return {};
    const auto clock = [&](Time since) { return lineAt(since).clock(); };
    return Told(TOLD("Sure", "%1–%2"), clock(*band->low), clock(*band->high));
  }
  // Whole degrees: nobody knows them better.
  static Told morningOf(const rigs::Bands& bands) {
    if (!bands.morning.low || !bands.morning.high) return {};
    const rigs::FormatOptions whole{.significantDigits = 3, .decimals = 0};
    return Told(TOLD("Sure", "%1–%2"), rigs::numberAlone(*bands.morning.low, whole),
                rigs::numberAlone(*bands.morning.high, whole));
  }

  // A day without a clock has no night.
  static bool isAwake(const rigs::Clock& clock) {
    const double ofDay = physics::inHours(rigs::clockOfDay(clock.sinceMidnight));
    return clock.counted || ofDay >= 6.5 || ofDay == 0.0;
  }

  const Case& of_;
  std::size_t i_;
  const physics::BrewDay& day_;
  const rigs::RigPlan& rig_;
  std::vector<SheetLine> lines_;
};

}  // namespace

std::vector<SheetLine> sheetLines(const Case& of, std::size_t rig) {
  return DayLines(of, rig).take();
}

}  // namespace gui::telling
