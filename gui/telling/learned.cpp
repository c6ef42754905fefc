// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/learned.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/answer_to.hpp"
#include "rigs/fitting/posterior.hpp"
#include "rigs/results/alarms.hpp"
#include "rigs/results/cautions.hpp"

namespace gui::telling {
namespace {

using physics::Temperature;
using physics::Time;
using rigs::amount;
using rigs::Argument;
using rigs::Awaited;
using rigs::Band;
using rigs::Clock;
using rigs::JudgedReading;
using rigs::Learned;
using rigs::LearnedUnknown;
using rigs::List;
using rigs::NothingLearned;
using rigs::Told;
using rigs::Unknown;

constexpr double kHalfBelieved = 0.5;

template <class Q>
bool isWhole(const Band<Q>& band) {
  return band.low && band.middle && band.high;
}

// --- Where the day ends.

Argument tenths(const Temperature& t) { return amount(t, {.significantDigits = 3, .decimals = 1}); }

Told morningText(const Band<Temperature>& band, bool withReadings) {
  if (!isWhole(band)) return {};
  return withReadings
             ? Told(TOLD("Learned",
                         "With your readings: in the morning about %1; 8 of 10 such nights end "
                         "between %2 and %3, 1 below and 1 above."),
                    tenths(*band.middle), tenths(*band.low), tenths(*band.high))
             : Told(TOLD("Learned",
                         "Before any reading: in the morning about %1; 8 of 10 such nights end "
                         "between %2 and %3, 1 below and 1 above."),
                    tenths(*band.middle), tenths(*band.low), tenths(*band.high));
}

Told boilText(const Case& of, std::size_t i, const Band<Time>& band, bool withReadings) {
  if (!isWhole(band)) return {};
  const auto at = [&](const std::optional<Time>& time) { return of.clockAt(i, *time); };
  return withReadings
             ? Told(TOLD("Learned",
                         "With your readings: on such a day it rolls at about %1; 8 of 10 such "
                         "days between %2 and %3."),
                    at(band.middle), at(band.low), at(band.high))
             : Told(TOLD("Learned",
                         "Before any reading: it rolls at about %1; 8 of 10 such days between %2 "
                         "and %3."),
                    at(band.middle), at(band.low), at(band.high));
}

std::vector<Told> headline(const Case& of, std::size_t i, const Learned& learned) {
  std::vector<Told> all;
  const bool night = isWhole(learned.before.morning);
  const auto add = [&](Told text) {
    if (!text.empty()) all.push_back(std::move(text));
  };
  if (night) {
    add(morningText(learned.before.morning, false));
    add(morningText(learned.after.morning, true));
  } else {
    add(boilText(of, i, learned.before.boilBegins, false));
    add(boilText(of, i, learned.after.boilBegins, true));
  }
  return all;
}

// --- What they tell of the kettle.

Argument percentOfShare(double share) {
  return amount(std::abs(share), {.significantDigits = 2, .decimals = 0});
}
// "21 % to 29 %" of a factor's ends, from what was planned.
Told factorText(const LearnedUnknown& one, const rigs::Template<3>& more,
                const rigs::Template<3>& less, const rigs::Template<2>& asPlanned) {
  const double low = one.after.low - 1.0;
  const double high = one.after.high - 1.0;
  if (low > 0.0)
    return Told(more, percentOfShare(one.after.middle - 1.0), percentOfShare(low),
                percentOfShare(high));
  if (high < 0.0)
    return Told(less, percentOfShare(one.after.middle - 1.0), percentOfShare(high),
                percentOfShare(low));
  return Told(asPlanned, percentOfShare(low), percentOfShare(high));
}

Told offsetText(const LearnedUnknown& one, const rigs::Template<3>& more,
                const rigs::Template<3>& less) {
  const auto kelvins = [](double k) {
    return amount(physics::kelvins(std::abs(k)), {.significantDigits = 2, .decimals = 1});
  };
  return one.after.middle >= 0.0
             ? Told(more, kelvins(one.after.middle), kelvins(one.after.middle - one.after.low),
                    kelvins(one.after.high - one.after.middle))
             : Told(less, kelvins(one.after.middle), kelvins(one.after.middle - one.after.low),
                    kelvins(one.after.high - one.after.middle));
}

Told learnedText(const LearnedUnknown& one) {
  if (!one.what)
    return offsetText(one,
                      TOLD("Learned",
                           "The thermometer reads about %1 too high (8 in 10: %2 less to %3 "
                           "more than that)."),
                      TOLD("Learned",
                           "The thermometer reads about %1 too low (8 in 10: %2 more to %3 less "
                           "than that)."));
  switch (*one.what) {
    case Unknown::ClosedLosses:
      return factorText(
          one, TOLD("Learned", "It loses about %1 more than planned (8 in 10: %2 to %3 more)."),
          TOLD("Learned", "It loses about %1 less than planned (8 in 10: %2 to %3 less)."),
          TOLD("Learned", "It loses about as planned (8 in 10: %1 less to %2 more)."));
    case Unknown::OpenSurface:
      return factorText(
          one,
          TOLD("Learned",
               "Its open surface evaporates about %1 more than planned (8 in 10: %2 to %3 more)."),
          TOLD("Learned",
               "Its open surface evaporates about %1 less than planned (8 in 10: %2 to %3 less)."),
          TOLD("Learned",
               "Its open surface evaporates about as planned (8 in 10: %1 less to %2 more)."));
    case Unknown::Amount:
      return factorText(
          one,
          TOLD("Learned", "There is about %1 more in it than planned (8 in 10: %2 to %3 more)."),
          TOLD("Learned", "There is about %1 less in it than planned (8 in 10: %2 to %3 less)."),
          TOLD("Learned",
               "There is about as much in it as planned (8 in 10: %1 less to %2 more)."));
    case Unknown::Power:
      return factorText(
          one,
          TOLD("Learned",
               "The wort gets about %1 more power than planned (8 in 10: %2 to %3 "
               "more)."),
          TOLD("Learned",
               "The wort gets about %1 less power than planned (8 in 10: %2 to %3 "
               "less)."),
          TOLD("Learned",
               "The wort gets about the power that was planned (8 in 10: %1 less to %2 "
               "more)."));
    case Unknown::Room:
    case Unknown::Water:
    case Unknown::RimGap:
    case Unknown::Absorption:
      break;
  }
  return {};
}

void tellUnknowns(const Learned& learned, std::size_t rig, Answer& answer) {
  answer.heading(Told(TOLD("Learned", "What your readings say of this kettle")));
  List open{{}, rigs::Joint::And};
  bool any = false;
  for (const LearnedUnknown& one : learned.unknowns) {
    const Told text = learnedText(one);
    if (text.empty()) continue;
    if (one.learned()) {
      answer.say(rig, text);
      any = true;
    } else {
      open.items.emplace_back(unknownWords(one.what));
    }
  }
  if (!any) answer.say(rig, Told(TOLD("Learned", "They tell nothing new of it.")));
  if (!open.items.empty())
    answer.say(rig, Told(TOLD("Learned", "Not told by these readings: %1."), std::move(open)));
  if (learned.onlyLossesPerLitre)
    answer.say(rig, Told(TOLD("Learned",
                              "Losses and volume cannot be told apart by cooling alone: what is "
                              "known is the loss per litre. The exact litres would settle it.")));
  if (learned.onlyPowerPerLitre)
    answer.say(
        rig, Told(TOLD("Learned",
                       "Power and volume cannot be told apart by temperatures alone: what is "
                       "known is the power per litre. A meter reading, or the exact litres, would "
                       "settle it.")));
  if (learned.hasOffPlan)
    answer.say(rig, Told(TOLD("Learned",
                              "That is far from what was planned. Before believing it, check the "
                              "volume, the lid, the room's temperature, the thermometer, and the "
                              "clock past midnight.")));
}

// --- What does not go together.

Told slipText(const rigs::readings::Reading& one, const JudgedReading& judged) {
  const auto* wort = std::get_if<Temperature>(&one.value);
  if (!wort)
    return Told(TOLD("Learned",
                     "The reading at %1 does not fit the others. It counts nearly nothing; please "
                     "check it."),
                Clock{one.at});
  const double off = physics::inKelvin(*wort) - judged.fitted;
  return Told(TOLD("Learned",
                   "%1 at %2 does not fit the others, by %3. It counts nearly nothing; please "
                   "check it."),
              tenths(*wort), Clock{one.at},
              amount(physics::kelvins(std::abs(off)), {.significantDigits = 2, .decimals = 1}));
}

Told surpriseText(const rigs::readings::Reading& one, const JudgedReading& judged) {
  const auto* wort = std::get_if<Temperature>(&one.value);
  if (!wort || judged.good < kHalfBelieved || std::abs(judged.surprise) < rigs::kABitOutside)
    return {};
  const auto expected = tenths(physics::kelvin(judged.expected));
  return std::abs(judged.surprise) < rigs::kAsksAgain
             ? Told(TOLD("Learned", "%1 at %2 is a bit outside what was expected, about %3."),
                    tenths(*wort), Clock{one.at}, expected)
             : Told(TOLD("Learned", "%1 at %2 is far outside what was expected, about %3."),
                    tenths(*wort), Clock{one.at}, expected);
}

void tellConflicts(const ReadAndLearned& from, std::size_t rig, Answer& answer) {
  const Learned& learned = from.learned;
  std::vector<Told> all;
  if (learned.stories > 1)
    all.push_back(
        Told(TOLD("Learned",
                  "Your readings allow two stories, and which of them are wrong cannot be "
                  "told: the range is wide for that. Please check those below that do not "
                  "fit.")));
  if (learned.otherUnit) all.push_back(rigs::otherUnitText());
  if (learned.twelveHoursOff) all.push_back(rigs::twelveHoursOffText());
  for (const JudgedReading& one : learned.judged) {
    const auto& read = from.read[one.which];
    if (one.good < kHalfBelieved) all.push_back(slipText(read, one));
    if (Told text = surpriseText(read, one); !text.empty()) all.push_back(std::move(text));
  }
  if (all.empty()) return;
  answer.heading(Told(TOLD("Learned", "Do they go together?")));
  for (Told& one : all) answer.say(rig, std::move(one));
}

// --- Which reading next.

Argument halfWidth(const Learned& learned, double width) {
  if (learned.next.awaited == Awaited::Morning)
    return amount(physics::kelvins(width), {.significantDigits = 2, .decimals = 1});
  return rigs::roughly(physics::seconds(width));
}

void tellNext(const Learned& learned, std::size_t rig, Answer& answer) {
  if (!learned.next.best || !learned.next.earliest || !learned.next.awaited) return;
  const auto now = halfWidth(learned, learned.next.halfWidthNow);
  if (learned.next.best->halfWidth > 0.9 * learned.next.halfWidthNow) {
    answer.heading(Told(TOLD("Learned", "Which reading next?")));
    answer.say(rig, Told(TOLD("Learned",
                              "None that a thermometer could still give would narrow it much from "
                              "± %1."),
                         now));
    return;
  }
  answer.heading(Told(TOLD("Learned", "Which reading next?")));
  const auto then = halfWidth(learned, learned.next.earliest->halfWidth);
  answer.say(rig, learned.next.awaited == Awaited::Morning
                      ? Told(TOLD("Learned",
                                  "One more look at %1 would narrow the morning from ± %2 to ± %3 "
                                  "(8 in 10 nights)."),
                             Clock{learned.next.earliest->at}, now, then)
                      : Told(TOLD("Learned",
                                  "One more look at %1 would narrow the time of the boil from ± %2 "
                                  "to ± %3 (8 in 10 days)."),
                             Clock{learned.next.earliest->at}, now, then));
  if (learned.next.best->at > learned.next.earliest->at)
    answer.goOn(
        rig, Told(TOLD("Learned", "The best, at %1, would leave ± %2."),
                  Clock{learned.next.best->at}, halfWidth(learned, learned.next.best->halfWidth)));
}

}  // namespace

Told nothingText(NothingLearned why) {
  switch (why) {
    case NothingLearned::NothingUsable:
      return Told(TOLD("Learned",
                       "None of these readings falls into the plan's day, so they say nothing of "
                       "it: does the day begin when the plan says, and is every moment an event?"));
    case NothingLearned::NoDay:
      return Told(
          TOLD("Learned",
               "The plan's day stops before it comes to these readings, so they say nothing "
               "of it."));
    case NothingLearned::TooBent:
      break;
  }
  return Told(TOLD("Learned",
                   "The readings are so unlike the plan that no range can be told: please check "
                   "volume, power, lid, units and the clock."));
}

Answer whatWasLearned(const Case& of, std::size_t rig, const ReadAndLearned& from) {
  const Learned& learned = from.learned;
  Answer answer;
  answer.title = Told(TOLD("Learned", "Does it match what I measured?"));
  answer.setSlots(of.slots());
  answer.lettered = !of.isAlone();
  if (learned.nothing) {
    answer.sentences = {nothingText(*learned.nothing)};
  } else {
    answer.sentences = headline(of, rig, learned);
  }
  if (!learned.unknowns.empty()) {
    tellUnknowns(learned, rig, answer);
    tellConflicts(from, rig, answer);
    tellNext(learned, rig, answer);
    answer.show(unknownsTable(rig, learned));
    answer.show(readingsTable(rig, from));
  }
  if (!learned.unknowns.empty())
    answer.notes.push_back(Told(TOLD(
        "Learned", "In the first table: low, one in ten is below; high, one in ten is above.")));
  answer.notes.push_back(Told(TOLD("Learned", "The lines were read so: %1."),
                              rigs::readings::layoutTold(from.layout)));
  answer.notes.push_back(Told(
      TOLD("Learned",
           "A fit multiplies the plan's own losses, evaporation, amount and power, and shifts the "
           "thermometer; the laws stay as they are. It cannot tell side, lid and base apart, nor a "
           "jacket's conductivity, and it never takes a room from a cooling curve.")));
  if (learned.effective > 0.0 && learned.effective < rigs::fitting::kEnoughForQuantiles)
    answer.notes.push_back(Told(
        TOLD("Learned",
             "The readings leave too little of what was drawn for ranges of the day; those of the "
             "kettle are by straight lines.")));
  addCautions(answer, rigs::About::Insulation, ofThisRigAlone(of.solution, rig));
  return answer;
}

}  // namespace gui::telling
