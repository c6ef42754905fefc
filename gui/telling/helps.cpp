// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/helps.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/words.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::Count;
using rigs::Effect;
using rigs::Fit;
using rigs::HelpsAnswer;
using rigs::Joint;
using rigs::List;
using rigs::Rolling;
using rigs::Together;
using rigs::Told;
using rigs::Wish;

rigs::Amount wholePercent(double share) {
  return amount(share, {.significantDigits = 3, .decimals = 0});
}

Count counted(std::uint64_t number) { return {static_cast<long long>(number)}; }

// Why there is nothing to be told of this wish; nothing where there is.
Told nothingToWish(const Case& of, std::size_t i, const HelpsAnswer& helps, Wish wish) {
  const Effect& today = helps.today;
  if (wish == Wish::Warmer && !rigs::hasOwnNight(of.plan))
    return Told(
        TOLD("Helps", "This plan leaves no mash unplugged, so that no morning can be warmer."));
  if (wish == Wish::Circuit && today.circuit != Fit::DoesNotFit && today.circuit != Fit::OnTheEdge)
    return Told(TOLD("Helps", "The circuit of %1 is not in the way: %2."), of.named(i),
                rigs::fitWords(today.circuit));
  if (wish == Wish::Rolls && today.getsThrough() && today.rolling == Rolling::Yes)
    return Told(TOLD("Helps", "%1 rolls as it is, with %2 of the heat that it takes."), of.named(i),
                wholePercent(today.powerShare.value_or(1.0)));
  return {};
}

Told bestText(const Case& of, std::size_t i, const HelpsAnswer& helps, Wish wish) {
  const auto& best = helps.of(wish).best;
  if (best.empty())
    return Told(TOLD("Helps", "Nothing that was tried helps %1 %2."), of.named(i), wishWords(wish));
  if (!best.front())
    return Told(TOLD("Helps", "No single change helps %1 %2."), of.named(i), wishWords(wish));
  const Together& one = *best.front();
  return Told(TOLD("Helps", "%1 with %2: no other single change helps %3 more %4."),
              gainText(of, wish, one.effect, helps.today), changesText(helps, one.changes),
              of.named(i), wishWords(wish));
}

// Nothing where one change does it.
Told fewText(const Case& of, const HelpsAnswer& helps, Wish wish) {
  const auto& few = helps.of(wish).few;
  if (!few || few->changes.size() < 2) return {};
  return Told(TOLD("Helps", "The few that bring most of it together: %1 (%2)."),
              changesText(helps, few->changes), gainText(of, wish, few->effect, helps.today));
}

// What a person can do without an electrician, where the best would need one.
Told withoutCurrentText(const Case& of, const HelpsAnswer& helps, Wish wish) {
  const auto touches = [&](std::size_t i) { return rigs::touchesCircuit(helps.changes[i].lever); };
  const auto& best = helps.of(wish).best;
  if (best.empty() || !best.front() || !touches(best.front()->changes.front())) return {};
  const double brews = brewsPerYear(of.plan);
  for (const std::size_t i : rigs::ranked(helps, wish, brews)) {
    if (touches(i) || !helps.advised[i] || !rigs::isMore(wish, helps.alone[i], helps.today, brews))
      continue;
    return Told(TOLD("Helps", "Without touching element or circuit: %1 (%2)."),
                helps.changes[i].words, gainText(of, wish, helps.alone[i], helps.today));
  }
  return {};
}

Told goalsText(const HelpsAnswer& helps, Wish wish) {
  if (helps.goalsMetToday) return Told(TOLD("Helps", "All goals of the plan are met as it is."));
  const auto& all = helps.of(wish).allGoals;
  if (all)
    return Told(TOLD("Helps", "The fewest changes that meet all goals of the plan: %1."),
                changesText(helps, all->changes));
  if (helps.isPart()) return {};
  return Told(TOLD("Helps", "Up to %1 changes at once do not meet all goals of the plan."),
              counted(helps.together));
}

// A boil that gets weaker than wanted is no gain that goes without saying.
Told weakerText(const Case& of, const HelpsAnswer& helps, Wish wish) {
  const auto& few = helps.of(wish).few;
  if (!few || !few->effect.boilOffPerHour || !helps.today.boilOffPerHour) return {};
  const double then = *few->effect.boilOffPerHour;
  if (then >= of.plan.goals.boilOffPerHour || then > 0.97 * *helps.today.boilOffPerHour) return {};
  return Told(TOLD("Helps", "With these it boils off %1, less than the %2 that the plan wants."),
              amount(rigs::perHour(then)), amount(rigs::perHour(of.plan.goals.boilOffPerHour)));
}

Told partText(const HelpsAnswer& helps) {
  if (!helps.isPart()) return {};
  return Told(TOLD("Helps", "This is a part: %1 of %2 ways were tried before it was stopped."),
              counted(helps.done), counted(helps.ways));
}

// The circuit as it is, where nothing that is said changes it.
Told circuitText(const HelpsAnswer& helps) {
  if (helps.today.circuit != Fit::DoesNotFit) return {};
  return Told(TOLD("Helps",
                   "By the rules its circuit does not fit as it is; what leaves element and "
                   "circuit alone leaves that so."));
}

std::vector<std::size_t> rigsAsked(const Case& of) {
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < of.count(); ++i)
    if (of.view.only ? *of.view.only == i
                     : of.view.everyRig || static_cast<std::size_t>(of.view.rig) == i)
      all.push_back(i);
  return all;
}

void addNotes(Answer& answer, const Case& of, const HelpsAnswer& helps) {
  answer.notes.push_back(
      Told(TOLD("Helps",
                "Each change is tried as a whole simulated day. Of at most %1 changes at once "
                "there are %2 ways, at most one change a lever, and %3 of any number; what does "
                "nothing by itself is left out."),
           counted(helps.together), counted(helps.ways), counted(helps.allWays)));
  answer.notes.push_back(
      Told(TOLD("Helps",
                "The heat is what the vessel gets of the least that rolls; from %1 on it rolls "
                "whatever the law's scatter, more counts for nothing here, and of what brings as "
                "much the smaller change comes first. What brings nothing of this wish is left out "
                "of the table here; spreadsheets have every change."),
           wholePercent(rigs::kRollsForSure)));
  answer.notes.push_back(
      Told(TOLD("Helps",
                "The goals: to roll for sure, to strike and from mash to boil within %1 each, to "
                "boil off %2, on a circuit that no rule refuses."),
           rigs::asChosen(of.plan.goals.boilWithin),
           amount(rigs::perHour(of.plan.goals.boilOffPerHour))));
  answer.notes.push_back(Told(
      TOLD("Helps",
           "Warm water is counted with the heat that it brings, at the price of current; money "
           "of a year is for as much wort as today, so that a small batch is brewed more "
           "often.")));
  answer.notes.push_back(
      Told(TOLD("Helps",
                "Elements are in steps as they are commonly sold, from memory; another circuit's "
                "cable is taken as long as today's and thicker as its current is larger. Where no "
                "price is stated, none is supposed.")));
}

void tellOne(Answer& answer, const Case& of, std::size_t i) {
  if (!of.rig(i).helps) {
    answer.sentences.push_back(Told(TOLD("Answer", "Being worked out …")));
    return;
  }
  const HelpsAnswer& helps = *of.rig(i).helps;
  const Wish asked = of.view.wish.value_or(mostPressing(helps));
  const Wish wish = wishToldOf(of, helps);
  const Told nothing = nothingToWish(of, i, helps, wish);
  answer.sentences.push_back(nothing.empty() ? bestText(of, i, helps, wish) : nothing);
  if (wish != asked)
    answer.say(i, Told(TOLD("Helps",
                            "As it is the day does not come to a rolling end, so that nothing is "
                            "sooner or cheaper than it: first it has to roll.")));
  answer.say(i, rigs::sentences({circuitText(helps), partText(helps)}));
  if (nothing.empty()) {
    answer.say(i, fewText(of, helps, wish));
    answer.say(i, withoutCurrentText(of, helps, wish));
    answer.say(i, weakerText(of, helps, wish));
  }
  answer.say(i, goalsText(helps, wish));
  std::erase_if(answer.blocks, [](const Block& block) {
    const auto* sentence = std::get_if<Sentence>(&block);
    return sentence && sentence->text.empty();
  });
}

}  // namespace

Told wishWords(Wish wish) {
  switch (wish) {
    case Wish::Rolls:
      return Told(TOLD("Helps", "to roll in the boil"));
    case Wish::Sooner:
      return Told(TOLD("Helps", "to be ready sooner"));
    case Wish::Warmer:
      return Told(TOLD("Helps", "to be warmer in the morning"));
    case Wish::Cheaper:
      return Told(TOLD("Helps", "to cost less"));
    case Wish::Circuit:
      return Told(TOLD("Helps", "to fit its circuit"));
  }
  return {};
}

Wish mostPressing(const HelpsAnswer& helps) {
  const bool rolls = helps.today.getsThrough() && helps.today.rolling == Rolling::Yes;
  if (!rolls) return Wish::Rolls;
  if (helps.today.circuit == Fit::DoesNotFit) return Wish::Circuit;
  return helps.today.morning ? Wish::Warmer : Wish::Sooner;
}

Wish wishToldOf(const Case& of, const HelpsAnswer& helps) {
  const Wish asked = of.view.wish.value_or(mostPressing(helps));
  const bool ofTheDay = asked == Wish::Sooner || asked == Wish::Cheaper;
  return ofTheDay && !helps.today.getsThrough() ? Wish::Rolls : asked;
}

Told changesText(const HelpsAnswer& helps, const std::vector<std::size_t>& changes) {
  List all{{}, Joint::Plus};
  for (const std::size_t i : changes) all.items.emplace_back(helps.changes[i].words);
  return Told::just(std::move(all));
}

Told gainText(const Case& of, Wish wish, const Effect& then, const Effect& today) {
  const auto gain = rigs::gainOf(wish, then, today, brewsPerYear(of.plan));
  switch (wish) {
    case Wish::Rolls:
      return then.rolling == Rolling::Yes
                 ? Told(TOLD("Helps", "%1 of the heat that rolling takes"),
                        wholePercent(then.powerShare.value_or(1.0)))
                 : Told(TOLD("Helps", "%1 of the heat that rolling takes, still on the edge"),
                        wholePercent(then.powerShare.value_or(1.0)));
    case Wish::Sooner:
      if (!gain) return outcomeWord(then.outcome);
      return Told(TOLD("Helps", "%1 sooner"), rigs::roughly(physics::minutes(*gain)));
    case Wish::Warmer:
      if (!then.morning || !gain) return outcomeWord(then.outcome);
      return Told(TOLD("Helps", "%1 warmer, %2"), amount(physics::kelvins(*gain)),
                  amount(*then.morning));
    case Wish::Cheaper:
      if (!gain) return outcomeWord(then.outcome);
      if (!of.plan.tariff.isStated())
        return Told(TOLD("Helps", "%1 less for as much wort"),
                    amount(physics::kilowattHours(*gain)));
      return Told(TOLD("Helps", "%1 less a year"), rigs::Money{*gain, of.plan.tariff.currency});
    case Wish::Circuit:
      return Told(TOLD("Helps", "%1 of the circuit's rating (%2)"), wholePercent(then.circuitShare),
                  rigs::fitWords(then.circuit));
  }
  return {};
}

Told outlayText(const Case& of, const HelpsAnswer& helps, const std::vector<std::size_t>& changes) {
  if (const auto price = rigs::priceOf(helps, changes))
    return Told::just(rigs::Money{*price, of.plan.tariff.currency});
  const bool nothing = std::all_of(changes.begin(), changes.end(), [&](std::size_t i) {
    return helps.changes[i].outlay == rigs::Outlay::Nothing;
  });
  return nothing ? Told(TOLD("Helps", "nothing to buy")) : Told();
}

Answer helpsMost(const Case& of) {
  Answer answer;
  const std::vector<std::size_t> asked = rigsAsked(of);
  for (const std::size_t i : asked) tellOne(answer, of, i);
  for (const std::size_t i : asked) {
    if (!of.rig(i).helps) continue;
    if (asked.size() == 1 || of.view.allFigures) answer.show(helpsTable(of, i));
    if (answer.notes.empty()) addNotes(answer, of, *of.rig(i).helps);
  }
  if (asked.size() == 1 && of.rig(asked.front()).helps) {
    Picture picture = helpsPicture(of, asked.front());
    if (!picture.stacks.empty()) answer.pictures.push_back(std::move(picture));
  }
  return answer;
}

}  // namespace gui::telling
