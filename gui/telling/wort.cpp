// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/wort.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

using physics::Time;
using rigs::amount;
using rigs::BoiledWort;
using rigs::CarriesOff;
using rigs::roughly;
using rigs::Told;

constexpr Time kToldApart = physics::minutes(2.0);

const BoiledWort* boiledOf(const Case& of, std::size_t i) {
  const rigs::WortAnswer* wort = wortOf(of, i);
  return wort && wort->boiled ? &*wort->boiled : nullptr;
}

// --- The headline.

Told boilWorth(const Case& of, std::size_t i, const rigs::Template<3>& text) {
  return Told(text, roughly(boiledOf(of, i)->boil.worth.iso), rigs::asChosen(of.plan.batch.boil),
              of.named(i));
}

std::vector<Told> boilsWorth(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const BoiledWort* wort = boiledOf(of, i);
    return wort ? std::optional(physics::inSeconds(wort->boil.worth.iso)) : std::nullopt;
  });
  if (e.counted == 0)
    return {Told(TOLD("Answer", "There is no finished wort of which anything could be told."))};
  if (e.counted == 1)
    return {
        boilWorth(of, e.least,
                  TOLD("Answer", "%1 at 100 °C is what a boil of %2 is worth for hops, with %3."))};
  const Time apart = boiledOf(of, e.most)->boil.worth.iso - boiledOf(of, e.least)->boil.worth.iso;
  if (apart < kToldApart)
    return {
        Told(TOLD("Answer", "%1 at 100 °C is what a boil of %2 is worth for hops, whichever rig."),
             roughly(boiledOf(of, e.least)->boil.worth.iso), rigs::asChosen(of.plan.batch.boil))};
  return {
      boilWorth(of, e.least,
                TOLD("Answer",
                     "%1 at 100 °C is what a boil of %2 is worth for hops with %3: the least.")),
      boilWorth(of, e.most,
                TOLD("Answer",
                     "%1 at 100 °C is what a boil of %2 is worth for hops with %3: the most."))};
}

rigs::Amount boilOffOf(const Case& of, std::size_t i) {
  return amount(rigs::boilOffRate(*of.rig(i).day.boil));
}

// Who keeps most of the DMS.
Told keepsSulfide(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const BoiledWort* wort = boiledOf(of, i);
    return wort ? std::optional(wort->boiled.dms) : std::nullopt;
  });
  if (e.counted == 0) return {};
  const BoiledWort& wort = *boiledOf(of, e.most);
  if (rigs::carriesOff(wort.evaporatedPerHour) != CarriesOff::Little) return {};
  return Told(TOLD("Answer", "%1 boils off with %2: too little to carry DMS away."),
              boilOffOf(of, e.most), of.named(e.most));
}

// --- Rig by rig.

bool hasRolled(const Case& of, std::size_t i) {
  return of.rig(i).day.outcome == physics::Outcome::Done;
}

Told boilText(const Case& of, std::size_t i, const BoiledWort& wort) {
  const rigs::Template<6> text =
      hasRolled(of, i)
          ? rigs::Template<6>(TOLD("Answer",
                                   "The boil of %1 at %2 is worth %3 at 100 °C for hops and %4 for "
                                   "DMS to form; heating up to it adds %5 and %6."))
          : rigs::Template<6>(
                TOLD("Answer",
                     "What stands for the boil, %1 at up to %2, is worth %3 at 100 °C "
                     "for hops and %4 for DMS to form; heating up to it adds %5 and "
                     "%6."));
  return Told(text, rigs::asChosen(of.plan.batch.boil), amount(wort.boiling),
              roughly(wort.boil.worth.iso), roughly(wort.boil.worth.sulfide),
              roughly(wort.heatingUp.worth.iso), roughly(wort.heatingUp.worth.sulfide));
}

// Where it does not roll there is no boil to compare; colder than measured it is told.
Told seaLevelText(const Case& of, std::size_t i, const BoiledWort& wort) {
  if (wort.boiling < physics::kIsoMeasuredFrom)
    return Told(TOLD("Answer", "That is colder than the hops' rate was measured, from %1 up."),
                amount(physics::kIsoMeasuredFrom));
  if (!hasRolled(of, i) || abs(wort.forSeaLevel - of.plan.batch.boil) < kToldApart) return {};
  return Told(TOLD("Answer", "For hops about %1 at that are worth what %2 at sea level are."),
              roughly(wort.forSeaLevel), rigs::asChosen(of.plan.batch.boil));
}

Told standText(const BoiledWort& wort) {
  if (wort.stand.lasts <= physics::seconds(0.0)) return {};
  return Told(TOLD("Answer", "The hot stand adds %1 for hops and %2 for DMS."),
              roughly(wort.stand.worth.iso), roughly(wort.stand.worth.sulfide));
}

// "about 1 to 2 min"; "up to 1 min".
Told spanText(Time least, Time most) {
  const double low = std::round(physics::inMinutes(least));
  const double high = std::round(physics::inMinutes(most));
  if (high < 1.0) return roughly(most);
  if (low < 1.0) return Told(TOLD("Answer", "up to %1"), roughly(most));
  if (low == high) return Told(TOLD("Answer", "about %1"), roughly(most));
  if (high >= 60.0) return Told(TOLD("Answer", "about %1 to %2"), roughly(least), roughly(most));
  return Told(TOLD("Answer", "about %1 to %2"), rigs::Number{low, {.decimals = 0}}, roughly(most));
}

Told afterText(const BoiledWort& wort) {
  const physics::HotMinutes& chilled = wort.chilling.worth;
  if (wort.isLeftByItself)
    return Told(TOLD("Answer",
                     "Left to cool by itself, as planned, it gets about %1 more for late hops and "
                     "%2 more for DMS."),
                roughly(chilled.iso), roughly(chilled.sulfide));
  const physics::HotMinutes& most =
      wort.chillingAtMost ? wort.chillingAtMost->worth : wort.chilling.worth;
  return Told(TOLD("Answer",
                   "Chilling adds %1 for late hops and %2 for DMS; left to cool by itself "
                   "instead it would be about %3 and %4."),
              spanText(chilled.iso, most.iso), spanText(chilled.sulfide, most.sulfide),
              roughly(wort.byItself.worth.iso), roughly(wort.byItself.worth.sulfide));
}

Told carriesText(const Case& of, std::size_t i, const BoiledWort& wort) {
  if (!hasRolled(of, i))
    return Told(
        TOLD("Answer",
             "It steams without rolling: %1 evaporates. That carries less DMS off than a boil, and "
             "nothing stirs what is below the surface: more may stay than is told here."),
        boilOffOf(of, i));
  switch (rigs::carriesOff(wort.evaporatedPerHour)) {
    case CarriesOff::Little:
      return Told(TOLD("Answer",
                       "%1 boils off: below about 5 %/h DMS that forms mostly stays in the wort."),
                  boilOffOf(of, i));
    case CarriesOff::Uncertain:
      return Told(TOLD("Answer",
                       "%1 boils off: from about 5 to 8 %/h it hangs on more than these figures "
                       "whether DMS is noticed."),
                  boilOffOf(of, i));
    case CarriesOff::Much:
      return Told(TOLD("Answer",
                       "%1 boils off, which carries DMS away about as fast as it forms; what forms "
                       "after the boil stays."),
                  boilOffOf(of, i));
  }
  return {};
}

// Nobody knows tenths of these.
rigs::Amount wholePercent(double share) {
  return amount(share, {.significantDigits = 2, .decimals = 0});
}

Told sharesText(const BoiledWort& wort) {
  if (wort.isLeftByItself)
    return Told(TOLD("Answer",
                     "Of DMS's precursor about %1 is left after the boil. Once it is cold about %2 "
                     "of what it could have become is DMS in the wort."),
                wholePercent(wort.boiled.precursor), wholePercent(wort.chilled.dms));
  return Told(
      TOLD("Answer",
           "Of DMS's precursor about %1 is left after the boil. Once it is chilled about %2 "
           "of what it could have become is DMS in the wort; left to cool by itself, about "
           "%3."),
      wholePercent(wort.boiled.precursor), wholePercent(wort.chilled.dms),
      wholePercent(wort.leftByItself.dms));
}

void sayWort(Answer& answer, const Case& of, std::size_t i) {
  const BoiledWort* wort = boiledOf(of, i);
  Told mash = mashOfRigText(of, i);
  if (!wort) {
    Told text = rigs::sentences({std::move(mash), unfinishedText(of, i)});
    if (!text.empty()) answer.say(i, std::move(text));
    return;
  }
  const bool goesOn = !mash.empty();
  if (goesOn) answer.say(i, std::move(mash));
  const auto say = [&](Told text) {
    goesOn ? answer.goOn(i, std::move(text)) : answer.say(i, std::move(text));
  };
  say(rigs::sentences(
      {boilText(of, i, *wort), seaLevelText(of, i, *wort), standText(*wort), afterText(*wort)}));
  answer.goOn(i, rigs::sentences({carriesText(of, i, *wort), sharesText(*wort)}));
}

void addWortGeneral(Answer& answer, const Case& of) {
  if (Told certainty = mashCertaintyText(of); !certainty.empty()) answer.say(std::move(certainty));
  answer.say(
      Told(TOLD("Answer",
                "Minutes at 100 °C add up, and compare one rig or day with another. They are "
                "no bitterness: what stays on hops, in trub and yeast and goes with foam, a "
                "quarter to a half, is not in them.")));
  answer.say(Told(TOLD("Answer",
                       "Below 80 °C bitter acids still form slowly, but bitterness no longer "
                       "follows them: no units of it should be reckoned from there.")));
}

std::vector<Told> wortNotes() {
  return {
      Told(TOLD("Answer",
                "Hops: alpha acids to iso-alpha acids by Malowicki & Shellhammer 2005, measured "
                "at 90 to 130 °C and pH 5.2; colder that is extended. Precursor of DMS: "
                "S-methyl methionine, half of it in 35 min at 100 °C (Wilson & Booer 1979) and "
                "in twice that 6 °C cooler (Fix 1999).")),
      Told(TOLD("Answer",
                "DMS leaves with the vapour by 63.5 times the share of the wort that evaporates, "
                "from 0.18 a minute at 17 %/h (Wilson & Booer 1979; derived); laboratory kettles "
                "kept more (Desobgo et al. 2015). After the boil it is taken to stay, as under "
                "a lid (Anness & Bamforth 1982). How much precursor malt "
                "brings is not known here.")),
      Told(TOLD("Answer",
                "Along the temperatures of the day and of its chilling; wort that waits for a "
                "counterflow chiller counts as long as it waits."))};
}

}  // namespace

const rigs::WortAnswer* wortOf(const Case& of, std::size_t i) { return of.rig(i).wort.get(); }

Answer howWortChanges(const Case& of) {
  Answer answer;
  answer.sentences = boilsWorth(of);
  if (Told keeps = keepsSulfide(of); !keeps.empty()) answer.sentences.push_back(std::move(keeps));
  sayMashOfAll(answer, of);
  for (std::size_t i = 0; i < of.count(); ++i) sayWort(answer, of, i);
  addWortGeneral(answer, of);
  answer.notes = mashNotes();
  for (Told& note : wortNotes()) answer.notes.push_back(std::move(note));
  answer.pictures = {wortHopsPicture(of), wortSulfidePicture(of)};
  answer.show(wortTable(of));
  return answer;
}

}  // namespace gui::telling
