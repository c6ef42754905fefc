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

// Nobody can say whether it rolls.
bool isOnTheEdge(const Case& of, std::size_t i) { return of.rig(i).edge.has_value(); }

enum class Boils { Yes, IfItRolls, No };
Boils boils(const Case& of, std::size_t i) {
  if (isOnTheEdge(of, i)) return Boils::IfItRolls;
  return boiledOf(of, i)->rolled ? Boils::Yes : Boils::No;
}

Told boilNamed(const Case& of, Boils boils) {
  const rigs::Amount planned = rigs::asChosen(of.plan.batch.boil);
  switch (boils) {
    case Boils::Yes:
      return Told(TOLD("Answer", "a boil of %1"), planned);
    case Boils::IfItRolls:
      return Told(TOLD("Answer", "a boil of %1, if it rolls,"), planned);
    case Boils::No:
      return Told(TOLD("Answer", "%1 in place of a boil"), planned);
  }
  return {};
}

Told boilWorth(const Case& of, std::size_t i, const rigs::Template<3>& text) {
  return Told(text, roughly(boiledOf(of, i)->boil.worth.iso), boilNamed(of, boils(of, i)),
              of.named(i));
}

// Of all rigs; where not all of them boil it is called neither.
Told boilWorthWhicheverRig(const Case& of, std::size_t least) {
  Told what = boilNamed(of, boils(of, least));
  for (std::size_t i = 0; i < of.count(); ++i)
    if (boiledOf(of, i) && boils(of, i) != boils(of, least))
      what = Told(TOLD("Answer", "%1 of boil or what stands for it"),
                  rigs::asChosen(of.plan.batch.boil));
  return Told(TOLD("Answer", "%1 at 100 °C is what %2 is worth for hops, whichever rig."),
              roughly(boiledOf(of, least)->boil.worth.iso), std::move(what));
}

std::vector<Told> boilsWorth(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const BoiledWort* wort = boiledOf(of, i);
    return wort ? std::optional(physics::inSeconds(wort->boil.worth.iso)) : std::nullopt;
  });
  if (e.counted == 0) {
    if (of.plan.batch.boil <= physics::seconds(0.0))
      if (std::vector<Told> ferments = mashInShort(of); !ferments.empty()) return ferments;
    return {Told(TOLD("Answer", "There is no finished wort of which anything could be told."))};
  }
  const std::size_t one = of.view.only && boiledOf(of, *of.view.only) ? *of.view.only : e.least;
  if (e.counted == 1 || of.view.only)
    return {
        boilWorth(of, one, TOLD("Answer", "%1 at 100 °C is what %2 is worth for hops, with %3."))};
  const Time apart = boiledOf(of, e.most)->boil.worth.iso - boiledOf(of, e.least)->boil.worth.iso;
  if (apart < kToldApart) return {boilWorthWhicheverRig(of, e.least)};
  return {
      boilWorth(of, e.least,
                TOLD("Answer", "%1 at 100 °C is what %2 is worth for hops with %3: the least.")),
      boilWorth(of, e.most,
                TOLD("Answer", "%1 at 100 °C is what %2 is worth for hops with %3: the most."))};
}

rigs::Amount boilOffOf(const Case& of, std::size_t i) {
  return amount(rigs::boilOffRate(*of.rig(i).day.boil));
}

// Who keeps most of the DMS.
Told keepsSulfide(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const BoiledWort* wort = boiledOf(of, i);
    return wort && wort->isOfMalt ? std::optional(wort->boiled.dms) : std::nullopt;
  });
  if (e.counted == 0) return {};
  const BoiledWort& wort = *boiledOf(of, e.most);
  if (rigs::carriesOff(wort.evaporatedPerHour) != CarriesOff::Little) return {};
  return Told(TOLD("Answer", "%1 boils off with %2: too little to carry DMS away."),
              boilOffOf(of, e.most), of.named(e.most));
}

// --- Rig by rig.

// Told to tenths of a kelvin.
constexpr physics::TemperatureDifference kLevel = physics::kelvins(0.5);

Told boilOfRig(const Case& of, std::size_t i, const BoiledWort& wort) {
  const rigs::Amount planned = rigs::asChosen(of.plan.batch.boil);
  const rigs::Amount at = amount(wort.boiling);
  if (isOnTheEdge(of, i))
    return Told(TOLD("Answer", "The boil of %1 at %2, if it rolls,"), planned, at);
  if (wort.rolled) return Told(TOLD("Answer", "The boil of %1 at %2"), planned, at);
  if (abs(wort.boiling - wort.begins) < kLevel)
    return Told(TOLD("Answer", "What stands for the boil, %1 at %2,"), planned, at);
  const rigs::Template<3> text =
      wort.boiling < wort.begins
          ? rigs::Template<3>(TOLD("Answer", "What stands for the boil, %1 falling from %2 to %3,"))
          : rigs::Template<3>(TOLD("Answer", "What stands for the boil, %1 rising from %2 to %3,"));
  return Told(text, planned, rigs::numberAlone(wort.begins), at);
}

Told boilText(const Case& of, std::size_t i, const BoiledWort& wort) {
  Told boil = boilOfRig(of, i, wort);
  if (!wort.isOfMalt)
    return Told(TOLD("Answer", "%1 is worth %2 at 100 °C for hops; heating up to it adds %3."),
                std::move(boil), roughly(wort.boil.worth.iso), roughly(wort.heatingUp.worth.iso));
  return Told(TOLD("Answer",
                   "%1 is worth %2 at 100 °C for hops and %3 for DMS to form; heating up to it "
                   "adds %4 and %5."),
              std::move(boil), roughly(wort.boil.worth.iso), roughly(wort.boil.worth.sulfide),
              roughly(wort.heatingUp.worth.iso), roughly(wort.heatingUp.worth.sulfide));
}

// Where it does not roll there is no boil to compare; colder than measured it is told.
Told seaLevelText(const Case& of, const BoiledWort& wort) {
  if (std::max(wort.begins, wort.boiling) < physics::kIsoMeasuredFrom)
    return Told(TOLD("Answer", "That is colder than the hops' rate was measured, from %1 up."),
                amount(physics::kIsoMeasuredFrom));
  if (std::min(wort.begins, wort.boiling) < physics::kIsoMeasuredFrom)
    return Told(
        TOLD("Answer", "Part of that is colder than the hops' rate was measured, from %1 up."),
        amount(physics::kIsoMeasuredFrom));
  if (!wort.forSeaLevel || abs(*wort.forSeaLevel - of.plan.batch.boil) < kToldApart) return {};
  return Told(TOLD("Answer", "For hops about %1 at that are worth what %2 at sea level are."),
              roughly(*wort.forSeaLevel), rigs::asChosen(of.plan.batch.boil));
}

Told standText(const BoiledWort& wort) {
  if (wort.stand.lasts <= physics::seconds(0.0)) return {};
  const Told hops = roughly(wort.stand.worth.iso);
  if (!wort.isOfMalt) return Told(TOLD("Answer", "The hot stand adds %1 for hops."), hops);
  return Told(TOLD("Answer", "The hot stand adds %1 for hops and %2 for DMS."), hops,
              roughly(wort.stand.worth.sulfide));
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

Told aboutText(Time time) { return spanText(time, time); }

Told leftByItselfText(const BoiledWort& wort) {
  const physics::HotMinutes& left = wort.chilling.worth;
  if (!wort.isOfMalt)
    return Told(
        TOLD("Answer", "Left to cool by itself, as planned, it gets %1 more for late hops."),
        aboutText(left.iso));
  return Told(TOLD("Answer",
                   "Left to cool by itself, as planned, it gets %1 more for late hops and %2 more "
                   "for DMS."),
              aboutText(left.iso), aboutText(left.sulfide));
}

Told afterText(const BoiledWort& wort) {
  if (wort.isLeftByItself) return leftByItselfText(wort);
  const physics::HotMinutes& chilled = wort.chilling.worth;
  const physics::HotMinutes& most =
      wort.chillingAtMost ? wort.chillingAtMost->worth : wort.chilling.worth;
  const physics::HotMinutes& left = wort.byItself.worth;
  if (!wort.isOfMalt)
    return Told(TOLD("Answer",
                     "Chilling adds %1 for late hops; left to cool by itself instead it would be "
                     "%2."),
                spanText(chilled.iso, most.iso), aboutText(left.iso));
  return Told(TOLD("Answer",
                   "Chilling adds %1 for late hops and %2 for DMS; left to cool by itself instead "
                   "it would be %3 and %4."),
              spanText(chilled.iso, most.iso), spanText(chilled.sulfide, most.sulfide),
              aboutText(left.iso), aboutText(left.sulfide));
}

Told carriesText(const Case& of, std::size_t i, const BoiledWort& wort) {
  if (isOnTheEdge(of, i))
    return Told(TOLD("Answer",
                     "%1 evaporates, whether it rolls or not, which nobody can say. If it only "
                     "steams, that carries less DMS off than a boil, and more may stay than is "
                     "told here."),
                boilOffOf(of, i));
  if (!wort.rolled)
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
      {boilText(of, i, *wort), seaLevelText(of, *wort), standText(*wort), afterText(*wort)}));
  if (wort->isOfMalt)
    answer.goOn(i, rigs::sentences({carriesText(of, i, *wort), sharesText(*wort)}));
}

bool anyBoiled(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (boiledOf(of, i)) return true;
  return false;
}

void addWortGeneral(Answer& answer, const Case& of) {
  if (Told certainty = mashCertaintyText(of); !certainty.empty()) answer.say(std::move(certainty));
  if (!anyBoiled(of)) return;
  answer.say(
      Told(TOLD("Answer",
                "Minutes at 100 °C add up, and compare one rig or day with another. They are "
                "no bitterness: what stays on hops, in trub and yeast and goes with foam, a "
                "quarter to a half, is not in them.")));
  answer.say(Told(TOLD("Answer",
                       "Below %1 bitter acids still form slowly, but bitterness no longer "
                       "follows them: no units of it should be reckoned from there."),
                  amount(physics::kBitternessFrom)));
}

std::vector<Told> wortNotes(const Case& of) {
  std::vector<Told> notes{
      Told(TOLD("Answer",
                "Hops: alpha acids to iso-alpha acids by Malowicki & Shellhammer 2005, measured "
                "at 90 to 130 °C and pH 5.2; colder that is extended.")),
      Told(TOLD("Answer",
                "Along the temperatures of the day and of its chilling; wort that waits for a "
                "counterflow chiller counts as long as it waits."))};
  if (of.plan.batch.mashes())
    notes.push_back(Told(
        TOLD("Answer",
             "Precursor of DMS: S-methyl methionine, half of it in 35 min at 100 °C (Wilson & "
             "Booer 1979) and in twice that 6 °C cooler (Fix 1999). DMS leaves with the vapour by "
             "63.5 times the share of the wort that evaporates, from 0.18 a minute at 17 %/h "
             "(Wilson & Booer 1979; derived); laboratory kettles kept more (Desobgo et al. 2015). "
             "After the boil it is taken to stay, as under a lid (Anness & Bamforth 1982). How "
             "much precursor malt brings is not known here.")));
  return notes;
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
  if (of.plan.batch.mashes()) answer.notes = mashNotes();
  if (anyBoiled(of)) {
    for (Told& note : wortNotes(of)) answer.notes.push_back(std::move(note));
    answer.pictures.push_back(wortHopsPicture(of));
    if (of.plan.batch.mashes()) answer.pictures.push_back(wortSulfidePicture(of));
  }
  answer.show(wortTable(of));
  return answer;
}

}  // namespace gui::telling
