// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/boil.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "gui/telling/additions.hpp"
#include "gui/telling/curve.hpp"
#include "gui/telling/element.hpp"
#include "gui/telling/rig_rows.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::Joint;
using rigs::List;
using rigs::Told;
using rigs::Vigour;

double percentPerHour(double share) { return 100.0 * share; }

// Of a day that gets to its end, rolling or not.
const physics::BoilFigures* boilOf(const Case& of, std::size_t i) {
  const physics::BrewDay& day = of.rig(i).day;
  return day.boil && day.finished() ? &*day.boil : nullptr;
}

// What is in the way of a wish for wort.
Told unmetReason(physics::Outcome because) {
  switch (because) {
    case physics::Outcome::UncoversElement:
      return Told(TOLD("Answer", "with the water for it the element would stand dry"));
    case physics::Outcome::StrikeTooHot:
      return Told(TOLD("Answer", "with so little water the strike would have to boil"));
    case physics::Outcome::DoesNotReachStrike:
    case physics::Outcome::DoesNotReachRest:
      return Told(TOLD("Answer", "with the water for it the mash would not get warm enough"));
    case physics::Outcome::Done:
    case physics::Outcome::Steams:
    case physics::Outcome::StaysFarBelow:
      return Told(TOLD("Answer", "no amount of water leaves it"));
  }
  return {};
}

bool rolls(const Case& of, std::size_t i) {
  return of.rig(i).day.outcome == physics::Outcome::Done;
}

// Complete sentences for each word: other languages inflect them.
Told boilRateText(const Case& of, std::size_t i) {
  const physics::BoilFigures& boil = *boilOf(of, i);
  const auto tell = [&](const rigs::Template<3>& text) {
    return Told(text, amount(rigs::boilOffRate(boil)), of.named(i), amount(boil.coldBoilOff));
  };
  switch (rigs::vigourOf(boil)) {
    case Vigour::Simmer:
      return tell(TOLD("Answer", "%1 boils off with %2, a simmer: %3."));
    case Vigour::Gentle:
      return tell(TOLD("Answer", "%1 boils off with %2, a gentle boil: %3."));
    case Vigour::Steady:
      return tell(TOLD("Answer", "%1 boils off with %2, a steady boil: %3."));
    case Vigour::Strong:
      return tell(TOLD("Answer", "%1 boils off with %2, a strong boil: %3."));
    case Vigour::Fierce:
      return tell(TOLD("Answer", "%1 boils off with %2, a fierce boil: %3."));
  }
  return {};
}

// The hardest boil, the softest, and what does not boil.
std::vector<Told> boilInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const physics::BoilFigures* boil = boilOf(of, i);
    return boil && rolls(of, i) ? std::optional(boil->shareOfPreBoilPerHour) : std::nullopt;
  });
  std::vector<Told> told;
  if (e.counted > 0) told.push_back(boilRateText(of, e.most));
  if (e.counted > 1 && e.least != e.most) told.push_back(boilRateText(of, e.least));
  for (Told& one : unfinishedOfAll(of)) told.push_back(std::move(one));
  if (told.empty()) told.push_back(Told(TOLD("Answer", "No boil is planned.")));
  return told;
}

// How much, and how hard where it rolls.
Told evaporatesText(const Case& of, std::size_t i) {
  const physics::BoilFigures& boil = *of.rig(i).day.boil;
  const auto volume = amount(boil.coldBoilOff);
  const auto rate = amount(rigs::boilOffRate(boil));
  if (!of.rig(i).day.finished() || rolls(of, i))
    return Told(TOLD("Answer", "%1 boils off, %2: %3."), volume, rate,
                boilWord(rigs::vigourOf(boil)));
  return Told(TOLD("Answer", "%1 evaporate, %2, without rolling."), volume, rate);
}

// Where a wish for wort was not met.
Told unmetText(const Case& of, std::size_t i) {
  const auto& unmet = of.rig(i).day.unmet;
  if (!unmet) return {};
  const bool tooLittle = unmet->missing > physics::litres(0.0);
  const auto by = amount(physics::Volume(abs(unmet->missing)));
  const Told why = unmetReason(unmet->because);
  return tooLittle ? Told(TOLD("Answer", "%1 of the wanted wort are missing: %2."), by, why)
                   : Told(TOLD("Answer", "%1 more than the wanted wort are left: %2."), by, why);
}

// What boils away of what.
Told wortText(const Case& of, std::size_t i) {
  if (!boilOf(of, i)) return {};
  const physics::BrewDay& day = of.rig(i).day;
  const auto gravity = [](double relative) {
    return rigs::Number{relative, {.significantDigits = 3, .decimals = 3}};
  };
  return Told(TOLD("Answer", "%1 before the boil make %2 in the end, from a gravity of %3 to %4."),
              amount(day.preBoilCold), amount(day.resultCold), gravity(day.preBoilGravity),
              gravity(day.resultGravity));
}

// Why it does not roll, or stops, was told in short, of every rig; here, what it comes to and what
// would change it.
void tellRig(Answer& answer, const Case& of, std::size_t i) {
  bool begun = false;
  if (boilOf(of, i)) {
    answer.say(i, rigs::sentences(
                      {evaporatesText(of, i), edgeText(of, i), wortText(of, i), unmetText(of, i)}));
    begun = true;
  }
  if (rolls(of, i)) {
    if (!begun) answer.say(i, boilText(of, i));
    return;
  }
  for (Told& one : whatWouldBoilTexts(of, i)) {
    if (begun) {
      answer.goOn(i, std::move(one));
    } else {
      answer.say(i, std::move(one));
    }
    begun = true;
  }
}

// --- The picture.

// Every word for vigour where it holds; shaded what others say is usual.
std::vector<PictureBand> bandsOf(const Case& of, double highest) {
  const auto word = [&](Vigour vigour) { return of.text(telling::vigourWord(vigour)); };
  return {
      {.to = percentPerHour(rigs::kGentleFrom),
       .label = word(Vigour::Simmer),
       .source = {},
       .shaded = false},
      {.from = percentPerHour(rigs::kGentleFrom),
       .to = percentPerHour(rigs::kSteadyFrom),
       .label = of.text(Told(TOLD("Answer", "%1; 5–8 %/h: best practice in breweries"),
                             telling::vigourWord(Vigour::Gentle))),
       .source = of.text(Told(TOLD("Answer",
                                   "Joint Research Centre, Best environmental management practice: "
                                   "food and beverage")))},
      {.from = percentPerHour(rigs::kSteadyFrom),
       .to = percentPerHour(rigs::kStrongFrom),
       .label = word(Vigour::Steady),
       .source = {},
       .shaded = false},
      {.from = percentPerHour(rigs::kStrongFrom),
       .to = percentPerHour(rigs::kFierceFrom),
       .label = of.text(Told(TOLD("Answer", "%1; 10–15 %/h: usual in small open kettles"),
                             telling::vigourWord(Vigour::Strong))),
       .source = of.text(Told(TOLD("Answer", "common practice, no source")))},
      {.from = percentPerHour(rigs::kFierceFrom),
       .to = highest,
       .label = word(Vigour::Fierce),
       .source = {},
       .shaded = false}};
}

PictureLine boilOffLine(const Case& of, std::size_t i) {
  PictureLine line{.rig = static_cast<int>(i), .name = of.name(i), .points = {}};
  if (const rigs::RigSweeps* sweeps = of.sweeps(i)) {
    for (const rigs::PowerPoint& point : sweeps->power) {
      if (point.boilOffPerHour)
        line.points.push_back({of.axis(point.element), percentPerHour(*point.boilOffPerHour)});
    }
  }
  return line;
}

// The rig's element as if it were rated at its supply's voltage, as the curves are.
PictureMark ownMark(const Case& of, std::size_t i) {
  const physics::Rig& rig = of.planned(i).rig;
  const double x = of.axis(rigs::ratingAt(rig.element, rig.supply.nominal));
  const physics::BoilFigures* boil = boilOf(of, i);
  if (!boil)
    return {
        static_cast<int>(i), {x, 0.0}, of.lettered(i, of.text(outcomeWord(of.rig(i).day.outcome)))};
  if (!rolls(of, i))
    return {static_cast<int>(i),
            {x, percentPerHour(boil->shareOfPreBoilPerHour)},
            of.lettered(i, of.text(Told::just(List{{amount(rigs::boilOffRate(*boil)),
                                                    outcomeWord(of.rig(i).day.outcome)},
                                                   Joint::Comma})))};
  return {static_cast<int>(i),
          {x, percentPerHour(boil->shareOfPreBoilPerHour)},
          of.lettered(i, of.text(amount(rigs::boilOffRate(*boil))))};
}

Picture boilOffPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Answer", "Boil-off against element power")));
  picture.xUnit = "W";
  picture.xTitle = of.text(Told(TOLD("Answer", "Element, rated at its supply's voltage, W")));
  picture.yUnit = "%/h";
  picture.yTitle =
      of.text(Told(TOLD("Answer", "Boil-off, percent of the volume before the boil per hour")));
  double highest = 20.0;
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureLine line = boilOffLine(of, i);
    const PictureMark mark = ownMark(of, i);
    if (boilOf(of, i)) addPoint(line, mark.at);
    highest = std::max(highest, 1.25 * mark.at.y);
    picture.lines.push_back(std::move(line));
    picture.marks.push_back(mark);
  }
  picture.yFrom = 0.0;
  picture.yTo = highest;
  picture.bands = bandsOf(of, highest);
  // Up to where every curve has left the picture.
  double strongest = 0.0;
  for (const PictureLine& line : picture.lines)
    for (const PicturePoint& p : line.points)
      if (p.y <= highest) strongest = std::max(strongest, p.x);
  for (const PictureMark& mark : picture.marks) strongest = std::max(strongest, mark.at.x);
  if (strongest > 0.0) picture.xTo = 1.05 * strongest;
  return picture;
}

// The published ranges are what others say, whatever our own scale is.
std::vector<Told> boilNotes() {
  const auto from = [](double share) { return amount(rigs::perHour(share)); };
  return {
      Told(TOLD("Answer",
                "Of the volume before the boil: a simmer is less than %1, a gentle boil less than "
                "%2, a steady boil less than %3, a strong boil less than %4, a fierce boil more."),
           from(rigs::kGentleFrom), from(rigs::kSteadyFrom), from(rigs::kStrongFrom),
           from(rigs::kFierceFrom)),
      Told(TOLD("Answer",
                "Published ranges: %1 to %2 is best practice for breweries in the EU (Joint "
                "Research Centre, Best environmental management practice: food and beverage); %3 "
                "to %4 is common in small open kettles."),
           from(0.05), from(0.08), from(0.10), from(0.15)),
      Told(TOLD("Answer",
                "What boils off follows from the heat left over; whether it boils at all also from "
                "the law of the open surface, which scatters by about %1."),
           amount(0.2))};
}

}  // namespace

Told boilText(const Case& of, std::size_t i) {
  const physics::BrewDay& day = of.rig(i).day;
  if (!day.boil) {
    return day.outcome == physics::Outcome::Done ? Told(TOLD("Answer", "No boil is planned."))
                                                 : unfinishedText(of, i);
  }
  return rigs::sentences(
      {evaporatesText(of, i), unfinishedText(of, i), edgeText(of, i), unmetText(of, i)});
}

Told boilInBrief(const Case& of, std::size_t i) {
  const physics::BrewDay& day = of.rig(i).day;
  if (!day.boil) return boilText(of, i);
  Told fallsBack;
  if (!rolls(of, i) && day.levelsOff)
    fallsBack = day.startsBoiling()
                    ? Told(TOLD("Answer", "It comes to the boil, but falls back towards %1."),
                           amount(day.levelsOff->at))
                    : Told(TOLD("Answer", "It levels off at %1."), amount(day.levelsOff->at));
  // Nobody can say whether it does.
  const Told evaporates =
      rolls(of, i) && of.rig(i).edge
          ? Told(TOLD("Answer", "If it rolls, %1 boils off, %2: %3."),
                 amount(day.boil->coldBoilOff), amount(rigs::boilOffRate(*day.boil)),
                 boilWord(rigs::vigourOf(*day.boil)))
          : evaporatesText(of, i);
  return rigs::sentences({evaporates, fallsBack, unmetText(of, i)});
}

Answer boilsEnough(const Case& of) {
  Answer answer;
  answer.sentences = boilInShort(of);
  for (std::size_t i = 0; i < of.count(); ++i) {
    tellRig(answer, of, i);
    for (Told& added : additionTexts(of, i)) answer.goOn(i, std::move(added));
  }
  RigTable table("boil", of);
  addBoilRows(table, of);
  addWortRows(table, of);
  addAdditionRows(table, of);
  answer.show(table.take());
  answer.pictures = {boilOffPicture(of)};
  answer.notes = boilNotes();
  return answer;
}

}  // namespace gui::telling
