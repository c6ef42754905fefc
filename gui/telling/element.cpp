// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/element.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/element_skin.hpp"
#include "gui/telling/jacket.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/nameplate.hpp"
#include "rigs/circuits/rating.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using physics::PowerAnswer;
using rigs::amount;
using rigs::asChosen;
using rigs::inWholeWatts;
using rigs::Joint;
using rigs::List;
using rigs::SizingAnswer;
using rigs::Template;
using rigs::Told;

// A goal of the plan in the words of a sentence, the power it takes, and whether the very day that
// is told meets it.
struct Wish {
  Told words;
  PowerAnswer takes;
  bool met;
  bool ofTheRoll = false;  // nothing that a kettle which does not roll could meet
};
bool isWithin(const std::optional<physics::Time>& time, physics::Time most) {
  return time && *time <= most;
}
std::vector<Wish> wishesOf(const Case& of, std::size_t i) {
  const rigs::Goals& goals = of.plan.goals;
  const SizingAnswer& sizing = *of.rig(i).sizing;
  const auto within = asChosen(goals.boilWithin);
  const physics::BrewDay& day = of.rig(i).day;
  const bool inTime = isWithin(rigs::timeToBoil(day), goals.boilWithin);
  std::vector<Wish> wishes;
  // Of a kettle that rolls that goes without saying.
  if (day.outcome != physics::Outcome::Done)
    wishes.push_back({Told(TOLD("Goal", "to roll in the boil")), sizing.toBoilAtAll, false});
  if (of.plan.batch.mashes()) {
    wishes.push_back({Told(TOLD("Goal", "to strike within %1"), within), sizing.toStrikeWithin,
                      isWithin(rigs::timeOf(day, physics::StageKind::Strike), goals.boilWithin)});
    wishes.push_back({Told(TOLD("Goal", "to come from mash to boil within %1"), within),
                      sizing.toBoilWithin, inTime, true});
  } else {
    wishes.push_back({Told(TOLD("Goal", "to be at the boil within %1"), within),
                      sizing.toBoilWithin, inTime, true});
  }
  // What evaporates without rolling is no boil-off that is meant.
  const bool harder = day.outcome == physics::Outcome::Done && day.boil &&
                      day.boil->shareOfPreBoilPerHour >= (1.0 - 1e-9) * goals.boilOffPerHour;
  wishes.push_back(
      {Told(TOLD("Goal", "to boil off %1"), amount(rigs::perHour(goals.boilOffPerHour))),
       sizing.forBoilOff, harder, true});
  return wishes;
}

List wordsOf(const Case& of, std::size_t i) {
  List all{{}, Joint::And};
  for (Wish& wish : wishesOf(of, i)) all.items.emplace_back(std::move(wish.words));
  return all;
}

// All of them, each with what it takes or what is in its way, by how the rig's element fares.
struct Fare {
  List met{{}, Joint::And}, missed{{}, Joint::And}, impossible{{}, Joint::And};
};
Fare fareOf(const Case& of, std::size_t i) {
  Fare fare;
  for (Wish& wish : wishesOf(of, i)) {
    if (wish.met) {
      fare.met.items.emplace_back(std::move(wish.words));
    } else if (!wish.takes.power) {
      fare.impossible.items.emplace_back(Told(TOLD("Goal", "%1 (the limit: %2)"),
                                              std::move(wish.words),
                                              limitWord(wish.takes.stoppedBy)));
    } else {
      fare.missed.items.emplace_back(Told(TOLD("Goal", "%1 (that takes %2)"), std::move(wish.words),
                                          inWholeWatts(*wish.takes.power)));
    }
  }
  return fare;
}

// Of the wishes that some element meets.
Told meetsText(const Fare& fare, bool overloaded) {
  if (!fare.missed.items.empty()) {
    if (fare.met.items.empty()) return Told(TOLD("Answer", "Too little %1."), fare.missed);
    return Told(TOLD("Answer", "Too little %1; enough %2."), fare.missed, fare.met);
  }
  if (fare.met.items.empty()) return {};
  return Told(overloaded ? Template<1>(TOLD("Answer",
                                            "On a circuit that carries it, it would be enough %1."))
                         : Template<1>(TOLD("Answer", "Enough %1.")),
              fare.met);
}

// What all wishes together take, and the element to buy for that.
Told allTakesText(const Case& of, std::size_t i, const PowerAnswer& needed) {
  const physics::Rig& rig = of.planned(i).rig;
  const auto heat = inWholeWatts(*needed.power);
  const auto element = rigs::elementFor(rig, needed);
  if (!element)
    return Told(TOLD("Answer", "Together that takes %1, more than this cable can carry."), heat);
  const auto rated = inWholeWatts(element->rating);
  if (!rigs::otherVoltage(rig)) {
    return Told(TOLD("Answer", "Together that takes %1, from an element rated %2 at %3."), heat,
                rated, amount(element->ratedAt));
  }
  return Told(TOLD("Answer", "Together that takes %1, from an element rated %2 at %3 (%4 at %5)."),
              heat, rated, amount(element->ratedAt),
              inWholeWatts(rigs::ratingAt(*element, rig.element.ratedAt)),
              amount(rig.element.ratedAt));
}

// The least that boils, and the element to buy for that.
Told leastToBoilText(const Case& of, std::size_t i, const PowerAnswer& wanted) {
  const physics::Rig& rig = of.planned(i).rig;
  const auto heat = inWholeWatts(*wanted.power);
  const auto element = rigs::elementFor(rig, wanted);
  if (!element)
    return Told(TOLD("Answer", "%1 into the vessel is the least that makes it roll."), heat);
  const auto rated = inWholeWatts(element->rating);
  if (!rigs::otherVoltage(rig)) {
    return Told(
        TOLD("Answer",
             "%1 into the vessel is the least that makes it roll: an element rated %2 at %3."),
        heat, rated, amount(element->ratedAt));
  }
  return Told(
      TOLD("Answer",
           "%1 into the vessel is the least that makes it roll: an element rated %2 at %3 (%4 "
           "at %5)."),
      heat, rated, amount(element->ratedAt),
      inWholeWatts(rigs::ratingAt(*element, rig.element.ratedAt)), amount(rig.element.ratedAt));
}

// What flows, and what the cable keeps of it.
Told currentText(const Case& of, std::size_t i) {
  const auto feeds = rigs::feedsOf(of.planned(i).rig);
  const auto current = [&](std::size_t k) {
    return amount(physics::electricalLoad(feeds[k].element, feeds[k].supply).current);
  };
  const auto through = [&](std::size_t k) { return amount(physics::resistance(feeds[k].element)); };
  const physics::Power lost = of.rig(i).day.electrical.inCable;
  const bool cable = lost > physics::watts(0.0);
  if (feeds.size() > 1) {
    if (!cable)
      return Told(TOLD("Answer", "%1 flow through %2, and %3 through %4."), current(0), through(0),
                  current(1), through(1));
    return Told(TOLD("Answer", "%1 flow through %2, and %3 through %4; %5 stay in the cable."),
                current(0), through(0), current(1), through(1), inWholeWatts(lost));
  }
  if (!cable) return Told(TOLD("Answer", "%1 flow through %2."), current(0), through(0));
  return Told(TOLD("Answer", "%1 flow through %2; %3 stay in the cable."), current(0), through(0),
              inWholeWatts(lost));
}

// --- The answer in short.

// Which element would be enough, against the one there is.
Told neededText(const Case& of, std::size_t i) {
  const rigs::RigAnswer& rig = of.rig(i);
  const PowerAnswer needed = rigs::neededPower(*rig.sizing);
  if (!needed.power) {
    return Told(TOLD("Answer", "No element up to %1 is enough for %2 %3."),
                amount(physics::kStrongestElement), of.named(i), wordsOf(of, i));
  }
  const auto element = rigs::elementFor(of.planned(i).rig, needed);
  if (!element) {
    return Told(TOLD("Answer", "%1 of heat is what %2 needs %3: more than its cable can carry."),
                inWholeWatts(*needed.power), of.named(i), wordsOf(of, i));
  }
  const auto tell = [&](const Template<4>& text) {
    return Told(text, inWholeWatts(element->rating), amount(element->ratedAt), of.named(i),
                wordsOf(of, i));
  };
  if (!fareOf(of, i).missed.items.empty()) {
    return rigs::sentences(
        {rig.edge
             ? tell(TOLD("Answer",
                         "%1 at %2 is what %3 needs %4; what it has is on the edge of rolling."))
             : tell(TOLD("Answer", "%1 at %2 is what %3 needs %4; what it has is too weak.")),
         carriesText(of, i, needed)});
  }
  const physics::Rig& own = of.planned(i).rig;
  const rigs::Fit plates = rigs::worstNameplate(of.plan, of.planned(i));
  if (plates == rigs::Fit::OnTheEdge) {
    return own.second ? tell(TOLD("Answer",
                                  "%1 at %2 is enough for %3 %4; what it has is stronger, and on "
                                  "the edge of one of its circuits at least."))
                      : tell(TOLD("Answer",
                                  "%1 at %2 is enough for %3 %4; what it has is stronger, and on "
                                  "the edge of its circuit."));
  }
  if (plates == rigs::Fit::DoesNotFit) {
    return own.second ? tell(TOLD("Answer",
                                  "%1 at %2 is enough for %3 %4; what it has is stronger, but too "
                                  "much for one of its circuits at least."))
                      : tell(TOLD("Answer",
                                  "%1 at %2 is enough for %3 %4; what it has is stronger, but too "
                                  "much for its circuit."));
  }
  return tell(TOLD("Answer", "%1 at %2 is enough for %3 %4; what it has is stronger."));
}

// The rig that lacks most, and the one that has most to spare.
std::vector<Told> elementInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    if (!of.rig(i).sizing) return std::nullopt;
    const PowerAnswer needed = rigs::neededPower(*of.rig(i).sizing);
    if (!needed.power) return -1.0;
    return static_cast<double>(of.rig(i).day.electrical.delivered / *needed.power);
  });
  if (e.counted == 0) return {Told(TOLD("Answer", "Being worked out …"))};
  std::vector<Told> told{neededText(of, e.least)};
  if (e.least != e.most) told.push_back(neededText(of, e.most));
  return told;
}

}  // namespace

physics::Power mostOnCircuit(const Case& of, std::size_t i) {
  const physics::Rig& rig = of.planned(i).rig;
  return physics::largestElementOn(rig.supply, rig.element.topHeight).rating;
}

Told elementText(const Case& of, std::size_t i) {
  const physics::ElectricalLoad& load = of.rig(i).day.electrical;
  const physics::Rig& rig = of.planned(i).rig;
  const physics::Element& element = rig.element;
  const auto heat = inWholeWatts(load.delivered);
  if (rig.second) {
    const physics::Feed& second = *rig.second;
    return Told(TOLD("Answer",
                     "%1 reach the vessel from two elements: %2 at %3 on %4, and %5 at %6 on a "
                     "second circuit of %7."),
                heat, inWholeWatts(element.rating), amount(element.ratedAt),
                amount(rig.supply.nominal), inWholeWatts(second.element.rating),
                amount(second.element.ratedAt), amount(second.supply.nominal));
  }
  if (rigs::otherVoltage(rig)) {
    return Told(
        TOLD("Answer", "%1 reach the vessel, %2 of the element's %3 at %4: its supply has %5."),
        heat, amount(rigs::shareOfRating(element, load)), inWholeWatts(element.rating),
        amount(element.ratedAt), amount(rig.supply.nominal));
  }
  return Told(TOLD("Answer", "%1 reach the vessel from an element of %2 on %3."), heat,
              inWholeWatts(element.rating), amount(rig.supply.nominal));
}

Told enoughText(const Case& of, std::size_t i) {
  const bool overloaded = rigs::worstNameplate(of.plan, of.planned(i)) == rigs::Fit::DoesNotFit;
  const Fare fare = fareOf(of, i);
  std::vector<Told> all;
  if (!fare.impossible.items.empty()) {
    all.push_back(Told(TOLD("Answer", "No element up to %1 is enough %2."),
                       inWholeWatts(physics::kStrongestElement), fare.impossible));
  }
  all.push_back(meetsText(fare, overloaded));
  const PowerAnswer needed = rigs::neededPower(*of.rig(i).sizing);
  if (!needed.power) return rigs::sentences(std::move(all));
  if (fare.missed.items.empty() && !overloaded) {
    all.push_back(Told(TOLD("Answer", "Together that takes %1."), inWholeWatts(*needed.power)));
    return rigs::sentences(std::move(all));
  }
  all.push_back(allTakesText(of, i, needed));
  if (rigs::elementFor(of.planned(i).rig, needed)) all.push_back(carriesText(of, i, needed));
  return rigs::sentences(std::move(all));
}

namespace {

// The element to buy for all wishes together, and whether its circuit carries it.
Told takesInShort(const Case& of, std::size_t i, const PowerAnswer& needed) {
  const physics::Rig& rig = of.planned(i).rig;
  const auto element = rigs::elementFor(rig, needed);
  if (!element) return allTakesText(of, i, needed);
  const auto tell = [&](const Template<3>& text) {
    return Told(text, inWholeWatts(*needed.power), inWholeWatts(element->rating),
                amount(element->ratedAt));
  };
  switch (rigs::carries(of.plan, of.planned(i), needed)) {
    case rigs::Carries::Yes:
      return tell(
          TOLD("Answer", "That takes %1: an element of %2 at %3, which its circuit carries."));
    case rigs::Carries::ForShortUseOnly:
      return tell(TOLD("Answer",
                       "That takes %1: an element of %2 at %3, which its circuit carries for short "
                       "use only."));
    case rigs::Carries::No:
      break;
  }
  return tell(
      TOLD("Answer", "That takes %1: an element of %2 at %3, more than its circuit carries."));
}

}  // namespace

Told enoughInShort(const Case& of, std::size_t i) {
  const bool overloaded = rigs::worstNameplate(of.plan, of.planned(i)) == rigs::Fit::DoesNotFit;
  const bool rolls = of.rig(i).day.outcome == physics::Outcome::Done;
  List missed{{}, Joint::And};
  bool impossible = false;
  for (Wish& wish : wishesOf(of, i)) {
    if (wish.met) continue;
    impossible = impossible || !wish.takes.power;
    // What does not roll is neither early at the boil nor boils off.
    if (rolls || !wish.ofTheRoll) missed.items.emplace_back(std::move(wish.words));
  }
  if (impossible) return enoughText(of, i);  // what is in the way is to be told
  if (missed.items.empty() && of.rig(i).edge && !overloaded)
    return Told(TOLD("Answer", "If it rolls, enough for all that is wanted of it."));
  if (missed.items.empty())
    return overloaded ? Told(TOLD("Answer",
                                  "On a circuit that carries it, it would be enough for all that "
                                  "is wanted of it."))
                      : Told(TOLD("Answer", "Enough for all that is wanted of it."));
  return rigs::sentences({Told(TOLD("Answer", "Too little %1."), std::move(missed)),
                          takesInShort(of, i, rigs::neededPower(*of.rig(i).sizing))});
}

Told largestText(const Case& of, std::size_t i) {
  const physics::BatchAnswer& largest = of.rig(i).sizing->largest;
  const auto rate = amount(rigs::perHour(of.plan.goals.boilOffPerHour));
  using physics::Limit;
  if (!largest.wort) {
    switch (largest.stoppedBy) {
      case Limit::None:
        return {};
      case Limit::BoilVigour:
        return Told(TOLD("Answer", "No batch boils off %1."), rate);
      case Limit::Boiling:
        return Told(TOLD("Answer", "No batch of any size boils."));
      default:
        return Told(
            TOLD("Answer", "Not even the smallest batch that covers the element fits the vessel."));
    }
  }
  const auto size = amount(*largest.wort);
  switch (largest.stoppedBy) {
    case Limit::Vessel:
      return Told(TOLD("Answer",
                       "%1 is the largest batch: more would leave less than %2 of the vessel "
                       "free."),
                  size, amount(of.plan.goals.headspace));
    case Limit::BoilVigour:
      return Told(TOLD("Answer", "%1 is the largest batch: more would boil off less than %2."),
                  size, rate);
    case Limit::Boiling:
      return Told(TOLD("Answer", "%1 is the largest batch: more would not boil."), size);
    default:
      return Told(TOLD("Answer", "%1 is the largest batch; the limit: %2."), size,
                  limitWord(largest.stoppedBy));
  }
}

std::vector<Told> whatWouldBoilTexts(const Case& of, std::size_t i) {
  std::vector<Told> texts;
  if (!of.rig(i).whatWouldBoil) return texts;
  const physics::WhatWouldBoil& what = *of.rig(i).whatWouldBoil;
  if (what.power) {
    const PowerAnswer wanted{.power = what.power};
    texts.push_back(rigs::sentences({leastToBoilText(of, i, wanted), carriesText(of, i, wanted)}));
  } else {
    texts.push_back(Told(TOLD("Answer", "No element would make it roll.")));
  }
  if (what.openFraction) {
    texts.push_back(
        Told(TOLD("Answer",
                  "%1 of the mouth open at most would make it roll: a lid that far over "
                  "the kettle, but never shut."),
             amount(*what.openFraction, {.significantDigits = 2, .decimals = {}})));
  } else if (what.levelWithLid) {
    texts.push_back(
        Told(TOLD("Answer", "%1 is the most a lid gives it, even over the whole mouth."),
             amount(*what.levelWithLid)));
  }
  if (what.jacketBoils) {
    texts.push_back(Told(TOLD("Answer", "A jacket would make it roll: %1."), jacketWords(of, i)));
  } else if (what.levelWithJacket) {
    texts.push_back(Told(TOLD("Answer", "%1 with a jacket (%2): not enough."),
                         amount(*what.levelWithJacket), jacketWords(of, i)));
  }
  return texts;
}

Told whatWouldBoilInShort(const Case& of, std::size_t i) {
  if (!of.rig(i).whatWouldBoil) return {};
  const physics::WhatWouldBoil& what = *of.rig(i).whatWouldBoil;
  List ways{{}, Joint::Or};
  if (what.power) ways.items.emplace_back(inWholeWatts(*what.power));
  if (what.jacketBoils) ways.items.emplace_back(Told(TOLD("Answer", "a jacket")));
  if (what.openFraction)
    ways.items.emplace_back(
        Told(TOLD("Answer", "%1 of the mouth open at most, but never shut"),
             amount(*what.openFraction, {.significantDigits = 2, .decimals = {}})));
  if (ways.items.empty()) return Told(TOLD("Answer", "No element would make it roll."));
  return Told(TOLD("Answer", "It would roll with %1."), std::move(ways));
}

Answer whichElement(const Case& of) {
  Answer answer;
  answer.sentences = elementInShort(of);
  answer.heading(Told(TOLD("Answer", "What does the element really deliver?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    answer.say(i, besideCircuit(of, i, rigs::sentences({elementText(of, i), currentText(of, i)})));
  }
  if (std::any_of(of.solution.answers.rigs.begin(), of.solution.answers.rigs.end(),
                  [](const rigs::RigAnswer& rig) { return rig.sizing.has_value(); }))
    answer.heading(Told(TOLD("Answer", "What would it take?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    if (!of.rig(i).sizing) continue;
    answer.say(i, rigs::sentences({enoughText(of, i), edgeText(of, i), largestText(of, i)}));
    answer.goOn(i, unfinishedText(of, i));
    for (Told& one : whatWouldBoilTexts(of, i)) answer.goOn(i, std::move(one));
  }
  saySkins(answer, of);
  answer.show(elementTable(of));
  answer.pictures = elementPictures(of);
  return answer;
}

}  // namespace gui::telling
