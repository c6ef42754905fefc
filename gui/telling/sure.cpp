// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sure.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

#include "gui/telling/words.hpp"
#include "rigs/answers/priors.hpp"

namespace gui::telling {
namespace {

using rigs::BandOf;
using rigs::Bands;
using rigs::Count;
using rigs::placeOf;
using rigs::Told;
using rigs::Unknown;

// So that a half of the width has one digit.
int decimalsOf(double width) {
  if (!(width > 0.0)) return 1;
  return std::clamp(-static_cast<int>(std::floor(std::log10(width / 2.0))), 0, 3);
}

rigs::Amount roundly(const auto& quantity, int decimals) {
  return rigs::amount(quantity, {.significantDigits = 3, .decimals = decimals});
}

Told between(rigs::Argument low, rigs::Argument high) {
  return Told(TOLD("Sure", "%1–%2"), std::move(low), std::move(high));
}

// "29.9 to 36.1 °C".
template <class Q>
Told span(const Case& of, const Q& low, const Q& high) {
  const int decimals = decimalsOf(of.axis(high) - of.axis(low));
  return Told(TOLD("Sure", "%1 to %2"),
              rigs::numberAlone(low, {.significantDigits = 3, .decimals = decimals}),
              roundly(high, decimals));
}

Told wholePercent(double share) {
  return Told::just(rigs::amount(share, {.significantDigits = 2, .decimals = 0}));
}

const Bands* bandsOf(const Case& of, std::size_t i) { return of.rig(i).bands.get(); }

Told boilText(const Case& of, std::size_t i, const Bands& bands) {
  const auto& boil = bands.boilBegins;
  if (boil.low && boil.high)
    return Told(TOLD("Sure",
                     "The boil begins between %1 and %2, on 1 day in 10 before and on 1 in 10 "
                     "after."),
                of.clockAt(i, *boil.low), of.clockAt(i, *boil.high));
  if (boil.low && boil.middle)
    return Told(TOLD("Sure",
                     "The boil begins before %1 on 1 day in 10 and before %2 on half of them, and "
                     "on more than 1 in 10 not at all."),
                of.clockAt(i, *boil.low), of.clockAt(i, *boil.middle));
  if (boil.low)
    return Told(TOLD("Sure",
                     "The boil begins before %1 on 1 day in 10, and on more than half of them not "
                     "at all."),
                of.clockAt(i, *boil.low));
  return {};
}

Told overText(const Case& of, std::size_t i, const Bands& bands) {
  if (bands.boilBegins.high || !bands.over.low || !bands.over.high) return {};
  return Told(TOLD("Sure", "The day is over between %1 and %2, boiling or not."),
              of.clockAt(i, *bands.over.low), of.clockAt(i, *bands.over.high));
}

Told morningText(const Case& of, const Bands& bands) {
  const auto& morning = bands.morning;
  if (!morning.low || !morning.high) return {};
  return Told(TOLD("Sure", "In the morning the mash has %1."),
              span(of, *morning.low, *morning.high));
}

Told spentText(const Case& of, const Bands& bands) {
  if (!bands.fromWall.low || !bands.fromWall.high) return {};
  Told energy = span(of, *bands.fromWall.low, *bands.fromWall.high);
  if (!bands.cost.low || !bands.cost.high)
    return Told(TOLD("Sure", "It takes %1 from the wall."), std::move(energy));
  const std::string& currency = of.plan.tariff.currency;
  return Told(TOLD("Sure", "It takes %1 from the wall, for %2 to %3."), std::move(energy),
              rigs::Money{*bands.cost.low, currency}, rigs::Money{*bands.cost.high, currency});
}

// Of the one that the headline tells of, what is left.
Told rigText(const Case& of, std::size_t i, bool inHeadline) {
  const Bands& bands = *bandsOf(of, i);
  Told rest =
      rigs::sentences({overText(of, i, bands), morningText(of, bands), spentText(of, bands)});
  if (inHeadline) return rest;
  return rigs::sentences({Told(TOLD("Sure", "It %1."), rollsOnText(bands.rolls)),
                          boilText(of, i, bands), std::move(rest)});
}

// --- What makes it wide.

struct CauseText {
  BandOf figure;
  rigs::Template<1> text;
};

// Of these a page tells; tables have all.
std::vector<CauseText> causesTold(const Bands& bands) {
  std::vector<CauseText> told;
  if (bands.boilBegins.low)
    told.push_back({BandOf::BoilBegins, TOLD("Sure", "When the boil begins hangs on %1.")});
  else
    told.push_back({BandOf::LeastToRoll, TOLD("Sure", "What it would take to roll hangs on %1.")});
  if (bands.morning.middle)
    told.push_back({BandOf::Morning, TOLD("Sure", "How warm the morning is hangs on %1.")});
  else
    told.push_back({BandOf::BoilOff, TOLD("Sure", "How much boils off hangs on %1.")});
  told.push_back({BandOf::FromWall, TOLD("Sure", "What it takes from the wall hangs on %1.")});
  return told;
}

Told causesText(const rigs::SureAnswer& sure) {
  std::vector<Told> all;
  for (const CauseText& one : causesTold(sure.bands)) {
    const auto& shares = sure.causes[placeOf(one.figure)];
    rigs::List named{{}, rigs::Joint::And};
    for (const Unknown what : rigs::foremost(shares))
      named.items.emplace_back(Told(TOLD("Sure", "%1 (%2)"), unknownName(what),
                                    wholePercent(std::min(1.0, shares[placeOf(what)]))));
    if (!named.items.empty()) all.push_back(Told(one.text, std::move(named)));
  }
  return rigs::sentences(std::move(all));
}

// What it takes to know it better.
Told adviceText(Unknown what) {
  switch (what) {
    case Unknown::ClosedLosses:
      return Told(TOLD("Sure",
                       "What the kettle loses: leave it full and hot with its lid on and its "
                       "element off, and read it at once and some hours later."));
    case Unknown::OpenSurface:
      return Told(TOLD("Sure",
                       "What the open surface gives off: time the open kettle from 80 °C to the "
                       "boil, once its power is known."));
    case Unknown::Amount:
      return Told(
          TOLD("Sure", "What is poured: weigh the water, or count jugs that were weighed."));
    case Unknown::Power:
      return Told(TOLD("Sure",
                       "What the element delivers: have the voltage measured at the plug while it "
                       "is on, or read an energy meter over a quarter of an hour."));
    case Unknown::Room:
      return Told(TOLD("Sure", "The room: hang a thermometer beside the kettle."));
    case Unknown::Water:
      return Told(TOLD("Sure",
                       "The water: measure it in the kettle before the element is on, with a "
                       "thermometer that reads 0 °C in melting ice."));
    case Unknown::RimGap:
      return Told(TOLD("Sure", "The lid: look how it lies on its rim, and state its gap."));
    case Unknown::Absorption:
      return Told(TOLD("Sure", "What the grain keeps: weigh it before and after it has drained."));
  }
  return {};
}

Told narrowerText(const rigs::SureAnswer& sure, Unknown what) {
  const CauseText first = causesTold(sure.bands).front();
  const double narrower = rigs::narrowing(sure.causes[placeOf(first.figure)][placeOf(what)]);
  // A band without an upper end has no width.
  const bool endless = first.figure == BandOf::BoilBegins && !sure.bands.boilBegins.high;
  if (narrower < 0.05 || endless) return {};
  return first.figure == BandOf::BoilBegins ? Told(TOLD("Sure",
                                                        "Known exactly, it would make the band of "
                                                        "the boil's beginning %1 narrower."),
                                                   wholePercent(narrower))
                                            : Told(TOLD("Sure",
                                                        "Known exactly, it would make the band of "
                                                        "the least that rolls %1 narrower."),
                                                   wholePercent(narrower));
}

void addAdvice(Answer& answer, const rigs::SureAnswer& sure) {
  std::vector<Unknown> all;
  for (const CauseText& one : causesTold(sure.bands))
    for (const Unknown what : rigs::foremost(sure.causes[placeOf(one.figure)]))
      if (std::find(all.begin(), all.end(), what) == all.end()) all.push_back(what);
  if (all.empty()) return;
  answer.heading(Told(TOLD("Sure", "To know it better")));
  for (const Unknown what : all)
    answer.say(rigs::sentences({adviceText(what), narrowerText(sure, what)}));
}

void addNotes(Answer& answer, const Case& of, std::size_t about) {
  const Bands* bands = bandsOf(of, about);
  if (!bands) return;
  answer.notes.push_back(
      Told(TOLD("Sure",
                "Of each rig the same day was simulated %1 times, each time with other values of "
                "what nobody knows exactly beforehand. 1 day in 10 lies below the lower figure and "
                "1 in 10 above the upper; a day that does not roll stays among them."),
           Count{static_cast<long long>(bands->days)}));
  answer.notes.push_back(
      Told(TOLD("Sure",
                "The middle is not the plan's own day: elements deliver rather less than their "
                "plates say, and a bare kettle loses rather more than computed.")));
  answer.notes.push_back(
      Told(TOLD("Sure",
                "A share in brackets is what would be left of the variance if all else were known. "
                "What no share tells is a plan that is wrong: another lid, another volume.")));
  if (of.view.everyRig && !of.isAlone()) return;
  for (const rigs::Prior& prior : rigs::priorsOf(of.planned(about)))
    answer.notes.push_back(Told(TOLD("Sure", "%1: %2."), unknownName(prior.what), prior.because));
}

// The number first. Some days are never none, and not all of them never all.
Told rollsNamed(const Case& of, std::size_t i, double share) {
  long long days = std::lround(20.0 * share);
  if (share > 0.0 && share < 1.0) days = std::clamp(days, 1LL, 19LL);
  return Told(TOLD("Sure", "%1 of 20 such days roll with %2."), Count{days}, of.named(i));
}

// Whose band is drawn and told of first.
std::size_t rigInShort(const Case& of) {
  const auto wanted = static_cast<std::size_t>(std::max(0, of.view.rig));
  return of.view.only.value_or(wanted < of.count() ? wanted : 0);
}

std::vector<std::size_t> rigsTold(const Case& of) {
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < of.count(); ++i)
    if (!of.view.only || *of.view.only == i) all.push_back(i);
  return all;
}

}  // namespace

Told rollsOnText(double share) {
  constexpr double kDays = 20.0;
  const auto days = std::lround(kDays * share);
  if (share >= 1.0) return Told(TOLD("Sure", "rolls on every such day"));
  if (share <= 0.0) return Told(TOLD("Sure", "rolls on no such day"));
  if (days == 20) return Told(TOLD("Sure", "rolls on more than 19 of 20 such days"));
  if (days == 0) return Told(TOLD("Sure", "rolls on fewer than 1 of 20 such days"));
  return Told(TOLD("Sure", "rolls on %1 of 20 such days"), Count{days});
}

Told unknownName(Unknown what) {
  switch (what) {
    case Unknown::ClosedLosses:
      return Told(TOLD("Sure", "what walls, lid and base lose"));
    case Unknown::OpenSurface:
      return Told(TOLD("Sure", "what the open surface gives off"));
    case Unknown::Amount:
      return Told(TOLD("Sure", "what is poured"));
    case Unknown::Power:
      return Told(TOLD("Sure", "what the element delivers"));
    case Unknown::Room:
      return Told(TOLD("Sure", "the room"));
    case Unknown::Water:
      return Told(TOLD("Sure", "the water as drawn"));
    case Unknown::RimGap:
      return Told(TOLD("Sure", "how the lid fits"));
    case Unknown::Absorption:
      return Told(TOLD("Sure", "what the grain keeps"));
  }
  return {};
}

Cell clockBand(const Case& of, std::size_t i, rigs::Band<physics::Time> Bands::*which) {
  const Bands* bands = bandsOf(of, i);
  if (!bands || !(bands->*which).low || !(bands->*which).high) return std::nullopt;
  return Cell(between(of.clockAt(i, *(bands->*which).low), of.clockAt(i, *(bands->*which).high)));
}

namespace {

template <class Q>
Cell spanCell(const Case& of, const rigs::Band<Q>& band) {
  if (!band.low || !band.high) return std::nullopt;
  const int decimals = decimalsOf(of.axis(*band.high) - of.axis(*band.low));
  const rigs::FormatOptions options{.significantDigits = 3, .decimals = decimals};
  return Cell(between(rigs::Number{of.axis(*band.low), options},
                      rigs::Number{of.axis(*band.high), options}));
}

}  // namespace

Cell boilOffBand(const Case& of, std::size_t i) {
  const Bands* bands = bandsOf(of, i);
  if (!bands || !bands->boilOff.low || !bands->boilOff.high) return std::nullopt;
  return spanCell(of,
                  rigs::Band<rigs::FractionPerTime>{.low = rigs::perHour(*bands->boilOff.low),
                                                    .middle = {},
                                                    .high = rigs::perHour(*bands->boilOff.high)});
}

Cell morningBand(const Case& of, std::size_t i) {
  const Bands* bands = bandsOf(of, i);
  return bands ? spanCell(of, bands->morning) : std::nullopt;
}

Cell fromWallBand(const Case& of, std::size_t i) {
  const Bands* bands = bandsOf(of, i);
  return bands ? spanCell(of, bands->fromWall) : std::nullopt;
}

Answer howSure(const Case& of) {
  Answer answer;
  const std::size_t about = rigInShort(of);
  const Bands* bands = bandsOf(of, about);
  answer.sentences.push_back(
      bands ? rigs::sentences({rollsNamed(of, about, bands->rolls), boilText(of, about, *bands)})
            : Told(TOLD("Answer", "Being worked out …")));
  if (!bands) return answer;
  for (const std::size_t i : rigsTold(of))
    if (Told text = bandsOf(of, i) ? rigText(of, i, i == about) : Told(); !text.empty())
      answer.say(i, std::move(text));
  answer.heading(Told(TOLD("Sure", "What makes it wide")));
  for (const std::size_t i : rigsTold(of))
    if (const auto& sure = of.rig(i).sure) answer.say(i, causesText(*sure));
  if (const auto& sure = of.rig(about).sure) addAdvice(answer, *sure);
  answer.show(sureTable(of));
  for (const std::size_t i : rigsTold(of))
    if (of.rig(i).sure && (of.view.allFigures || (i == about && !of.view.everyRig) || of.isAlone()))
      answer.show(causesTable(of, i));
  if (of.rig(about).sure) answer.pictures = {surePicture(of, about)};
  addNotes(answer, of, about);
  return answer;
}

}  // namespace gui::telling
