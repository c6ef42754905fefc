// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/element.hpp"

#include <algorithm>
#include <utility>

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
using rigs::inWholeWatts;
using rigs::Joint;
using rigs::List;
using rigs::roughly;
using rigs::SizingAnswer;
using rigs::Template;
using rigs::Told;

// A goal of the plan in the words of a sentence, the power it takes, and whether the very day that
// is told meets it.
struct Wish {
  Told words;
  PowerAnswer takes;
  bool met;
};
bool isWithin(const std::optional<physics::Time>& time, physics::Time most) {
  return time && *time <= most;
}
std::vector<Wish> wishesOf(const Case& of, std::size_t i) {
  const rigs::Goals& goals = of.plan.goals;
  const SizingAnswer& sizing = *of.rig(i).sizing;
  const auto within = roughly(goals.boilWithin);
  const physics::BrewDay& day = of.rig(i).day;
  const bool inTime = isWithin(rigs::timeToBoil(day), goals.boilWithin);
  std::vector<Wish> wishes;
  // Of a kettle that rolls that goes without saying.
  if (day.outcome != physics::Outcome::Done)
    wishes.push_back({Told(TOLD("Goal", "to roll in the boil")), sizing.toBoilAtAll, false});
  if (hasGrain(of)) {
    wishes.push_back({Told(TOLD("Goal", "to strike within %1"), within), sizing.toStrikeWithin,
                      isWithin(rigs::timeOf(day, physics::StageKind::Strike), goals.boilWithin)});
    wishes.push_back({Told(TOLD("Goal", "to come from mash to boil within %1"), within),
                      sizing.toBoilWithin, inTime});
  } else {
    wishes.push_back(
        {Told(TOLD("Goal", "to be at the boil within %1"), within), sizing.toBoilWithin, inTime});
  }
  // What evaporates without rolling is no boil-off that is meant.
  const bool harder = day.outcome == physics::Outcome::Done && day.boil &&
                      day.boil->shareOfPreBoilPerHour >= (1.0 - 1e-9) * goals.boilOffPerHour;
  wishes.push_back(
      {Told(TOLD("Goal", "to boil off %1"), amount(rigs::perHour(goals.boilOffPerHour))),
       sizing.forBoilOff, harder});
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
    return Told(TOLD("Answer", "All of it takes %1, more than this cable can carry."), heat);
  const auto rated = inWholeWatts(element->rating);
  if (!rigs::otherVoltage(rig)) {
    return Told(TOLD("Answer", "All of it takes %1, from an element rated %2 at %3."), heat, rated,
                amount(element->ratedAt));
  }
  return Told(TOLD("Answer", "All of it takes %1, from an element rated %2 at %3 (%4 at %5)."),
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

Told tooMuchText(const rigs::Finding& load, std::size_t circuit, bool ofTwo) {
  const Template<3> text =
      !ofTwo         ? Template<3>(TOLD("Answer",
                                        "Codes count %1, the cable aside: too much for its circuit of %2; "
                                                "%3."))
      : circuit == 0 ? Template<3>(TOLD("Answer",
                                        "Codes count %1, the cable aside: too much for its first "
                                        "circuit of %2; %3."))
                     : Template<3>(TOLD("Answer",
                                        "Codes count %1, the cable aside: too much for its second "
                                        "circuit of %2; %3."));
  return Told(text, rigs::closely(*load.load), rigs::closely(*load.limit), rigs::deviceText(load));
}

// Neither yes nor no.
Told onTheEdgeText(const rigs::Finding& load, std::size_t circuit, bool ofTwo) {
  const Template<3> text =
      !ofTwo         ? Template<3>(TOLD("Answer",
                                        "Codes count %1, the cable aside: on the edge of its circuit of "
                                                "%2; %3. Have the current measured, or leave room with less "
                                                "power."))
      : circuit == 0 ? Template<3>(TOLD("Answer",
                                        "Codes count %1, the cable aside: on the edge of its first "
                                        "circuit of %2; %3. Have the current measured, or leave "
                                        "room with less power."))
                     : Template<3>(TOLD("Answer",
                                        "Codes count %1, the cable aside: on the edge of its "
                                        "second circuit of %2; %3. Have the current measured, or "
                                        "leave room with less power."));
  return Told(text, rigs::closely(*load.load), rigs::closely(*load.limit), rigs::deviceText(load));
}

Told tooLongText(const Case& of, std::size_t i, std::size_t circuit, const rigs::Finding& load) {
  const auto drawn = amount(*load.load);
  const auto rated = amount(*load.limit);
  const auto granted = amount(rigs::longUseCurrent(of.plan, of.planned(i), circuit));
  if (load.fit != rigs::Fit::Fits)
    return Told(TOLD("Answer", "Rules grant it no more than %1 in long use."), granted);
  return Told(rigs::feedsOf(of.planned(i).rig).size() < 2
                  ? Template<3>(TOLD("Answer",
                                     "Codes count %1, the cable aside: within its %2 circuit, but "
                                     "more than the %3 that rules grant to long use."))
              : circuit == 0
                  ? Template<3>(TOLD("Answer",
                                     "Codes count %1, the cable aside: within its first %2 "
                                     "circuit, but more than the %3 that rules grant to long use."))
                  : Template<3>(TOLD("Answer",
                                     "Codes count %1, the cable aside: within its second %2 "
                                     "circuit, but more than the %3 that rules grant to long "
                                     "use.")),
              drawn, rated, granted);
}

// As codes count it: at the nominal voltage, the cable left out.
Told overloadText(const Case& of, std::size_t i, std::size_t circuit) {
  const rigs::RigPlan& plan = of.planned(i);
  const bool ofTwo = rigs::feedsOf(plan.rig).size() > 1;
  const rigs::Finding load = rigs::nameplate(of.plan, plan, circuit);
  if (load.fit == rigs::Fit::DoesNotFit) return tooMuchText(load, circuit, ofTwo);
  std::vector<Told> all;
  if (load.fit == rigs::Fit::OnTheEdge) all.push_back(onTheEdgeText(load, circuit, ofTwo));
  const physics::Current granted = rigs::longUseCurrent(of.plan, plan, circuit);
  if (!rigs::within(*load.load, granted) && granted < *load.limit)
    all.push_back(tooLongText(of, i, circuit, load));
  return rigs::sentences(std::move(all));
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

bool hasGrain(const Case& of) { return of.plan.batch.grain.mass > physics::kilograms(0.0); }

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

Told circuitText(const Case& of, std::size_t i) {
  std::vector<Told> all;
  for (std::size_t k = 0; k < rigs::feedsOf(of.planned(i).rig).size(); ++k)
    all.push_back(overloadText(of, i, k));
  return rigs::sentences(std::move(all));
}

Told besideCircuit(const Case& of, std::size_t i, Told text) {
  Told circuit = circuitText(of, i);
  if (circuit.empty()) return text;
  return rigs::worstNameplate(of.plan, of.planned(i)) == rigs::Fit::DoesNotFit
             ? rigs::sentences({std::move(circuit), std::move(text)})
             : rigs::sentences({std::move(text), std::move(circuit)});
}

Told carriesText(const Case& of, std::size_t i, const PowerAnswer& wanted) {
  const rigs::RigPlan& plan = of.planned(i);
  const bool two = plan.rig.second.has_value();
  switch (rigs::carries(of.plan, plan, wanted)) {
    case rigs::Carries::Yes:
      if (rigs::longUseCurrent(of.plan, plan) < plan.rig.supply.rating) {
        return two ? Told(TOLD("Answer", "Its circuits carry that, in long use too."))
                   : Told(TOLD("Answer", "Its circuit carries that, in long use too."));
      }
      return two ? Told(TOLD("Answer", "Its circuits carry that."))
                 : Told(TOLD("Answer", "Its circuit carries that."));
    case rigs::Carries::ForShortUseOnly: {
      if (two) return Told(TOLD("Answer", "Its circuits carry that for short use only."));
      const auto element = rigs::elementFor(plan.rig, wanted);
      if (!element) return Told(TOLD("Answer", "Its circuit carries that for short use only."));
      return Told(TOLD("Answer",
                       "Its circuit carries that for short use only: it draws %1, and rules grant "
                       "%2 to long use."),
                  amount(physics::branchCurrent(*element, plan.rig.supply)),
                  amount(rigs::longUseCurrent(of.plan, plan)));
    }
    case rigs::Carries::No:
      return two ? Told(TOLD("Answer", "Its circuits do not carry that."))
                 : Told(TOLD("Answer", "Its circuit does not carry that."));
  }
  return {};
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
    all.push_back(Told(TOLD("Answer", "All of it takes %1."), inWholeWatts(*needed.power)));
    return rigs::sentences(std::move(all));
  }
  all.push_back(allTakesText(of, i, needed));
  if (rigs::elementFor(of.planned(i).rig, needed)) all.push_back(carriesText(of, i, needed));
  return rigs::sentences(std::move(all));
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
  answer.show(elementTable(of));
  answer.pictures = elementPictures(of);
  return answer;
}

}  // namespace gui::telling
