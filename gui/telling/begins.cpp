// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/begins.hpp"

#include <optional>
#include <utility>

#include "gui/telling/rig_rows.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/surely_begins.hpp"

namespace gui::telling {
namespace {

using physics::Time;
using rigs::Clock;
using rigs::Milestone;
using rigs::Told;

Clock beginOf(const Case& of, std::size_t i) { return of.clockAt(i, physics::seconds(0.0)); }

Told surelyText(const Case& of, std::size_t i) {
  const Milestone what = of.plan.ready->what;
  if (const auto by = beginsBy(of, i))
    return Told(what == Milestone::Pitching
                    ? rigs::Template<2>(TOLD("Answer",
                                             "To be ready by %1 on 9 of 10 such days, begin by %2; "
                                             "if chilling takes no longer than told."))
                    : rigs::Template<2>(
                          TOLD("Answer", "To be ready by %1 on 9 of 10 such days, begin by %2.")),
                Clock{of.plan.ready->at}, *by);
  const auto& bands = of.rig(i).bands;
  const bool boils = what != Milestone::StrikeWater && what != Milestone::EndOfMash;
  if (bands && boils && !bands->boilBegins.high)
    return Told(TOLD("Answer",
                     "On more than 1 of 10 such days it does not roll at all, however early it "
                     "begins."));
  return {};
}

// From one clock time on to the next time that a clock shows another.
Time until(Time from, Time to) { return rigs::clockOfDay(to - from); }

bool isWithin(Time clock, Time from, Time to) { return until(from, clock) <= until(from, to); }

// Of the hours in which a person could begin, where they leave out when to begin.
Told windowText(const Case& of, std::size_t i) {
  const rigs::Tariff& tariff = of.plan.tariff;
  if (!tariff.brewFrom || !tariff.brewUntil) return {};
  const Time begins = rigs::clockOfDay(*of.rig(i).begins);
  if (isWithin(begins, *tariff.brewFrom, *tariff.brewUntil)) return {};
  const Time late = until(begins, *tariff.brewFrom);
  const Time early = until(*tariff.brewUntil, begins);
  const Time at = of.plan.ready->at;
  return Told(TOLD("Answer",
                   "But the plan says that it could begin from %1 to %2 only: begun at %1, %3, %4 "
                   "too late; begun at %2, %5, %6 early."),
              Clock{*tariff.brewFrom}, Clock{*tariff.brewUntil},
              readyText(of, Clock{rigs::clockOfDay(at + late)}), rigs::roughly(late),
              readyText(of, Clock{rigs::clockOfDay(at - early)}), rigs::roughly(early));
}

}  // namespace

Told readyText(const Case& of, const Clock& at) {
  switch (of.plan.ready->what) {
    case Milestone::StrikeWater:
      return Told(TOLD("Answer", "its strike water is ready at %1"), at);
    case Milestone::EndOfMash:
      return Told(TOLD("Answer", "its mash is over at %1"), at);
    case Milestone::Boil:
      return Told(TOLD("Answer", "it rolls at %1"), at);
    case Milestone::EndOfBoil:
      return Told(TOLD("Answer", "its boil is over at %1"), at);
    case Milestone::Pitching:
      return Told(TOLD("Answer", "its wort is chilled for pitching at %1"), at);
  }
  return {};
}

std::vector<Told> beginsInShort(const Case& of) {
  if (!of.plan.ready) return {};
  // The last to begin is the quickest.
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const auto& begins = of.rig(i).begins;
    return begins ? std::optional(physics::inSeconds(*begins)) : std::nullopt;
  });
  if (e.counted == 0) return {};
  const Told ready = readyText(of, Clock{of.plan.ready->at});
  if (e.counted == 1 || e.least == e.most)
    return {Told(TOLD("Answer", "%1 is when to begin with %2: then %3."), beginOf(of, e.least),
                 of.named(e.least), ready)};
  return {Told(TOLD("Answer", "%1 is when to begin with %2, the earliest: then %3."),
               beginOf(of, e.least), of.named(e.least), ready),
          Told(TOLD("Answer", "%1 with %2, the latest."), beginOf(of, e.most), of.named(e.most))};
}

Told neverReadyText(const Case& of, std::size_t i) {
  if (!of.plan.ready || of.rig(i).begins) return {};
  switch (of.plan.ready->what) {
    case Milestone::StrikeWater:
      return Told(TOLD("Answer",
                       "Its water never gets warm enough to mash in, whenever it begins: its times "
                       "count from then."));
    case Milestone::EndOfMash:
      return Told(TOLD("Answer",
                       "Its mash never comes to its end, whenever it begins: its times count from "
                       "then."));
    case Milestone::Boil:
    case Milestone::EndOfBoil:
      break;
    case Milestone::Pitching:
      if (of.rig(i).day.outcome == physics::Outcome::Done)
        return Told(TOLD("Answer",
                         "Its wort never comes to %1 that way, whenever it begins: its times count "
                         "from then."),
                    rigs::amount(of.plan.chilling.pitching));
      break;
  }
  return Told(TOLD("Answer", "It never rolls, whenever it begins: its times count from then."));
}

Told beginsText(const Case& of, std::size_t i) {
  if (!of.plan.ready) return {};
  if (!of.rig(i).begins) return neverReadyText(of, i);
  return rigs::sentences({Told(TOLD("Answer", "Begin at %1: then %2."), beginOf(of, i),
                               readyText(of, Clock{of.plan.ready->at})),
                          surelyText(of, i), windowText(of, i)});
}

std::optional<Clock> beginsBy(const Case& of, std::size_t i) {
  const rigs::RigAnswer& rig = of.rig(i);
  if (!rig.bands) return std::nullopt;
  const auto by = rigs::beginsForNineOfTen(of.plan, rig.day, rig.chill.get(), *rig.bands);
  return by ? std::optional(Clock{*by}) : std::nullopt;
}

void addBeginsRows(RigTable& table, const Case& of) {
  if (!of.plan.ready) return;
  table.row(Told(TOLD("Answer", "begin at")), beginsCell(of),
            {.result = "/begins_s", .opens = Question::HowLong});
  bool known = false;
  for (std::size_t i = 0; i < of.count(); ++i) known = known || of.rig(i).bands;
  if (known)
    table.row(Told(TOLD("Answer", "· for 9 of 10 days, by")),
              [&](std::size_t i) -> Cell {
                const auto by = beginsBy(of, i);
                return by ? Cell(*by) : std::nullopt;
              },
              {.result = "/begins_for_9_of_10_s", .opens = Question::HowSure});
}

std::vector<Told> beginsNotes(const Case& of) {
  if (!of.plan.ready) return {};
  std::vector<Told> all{
      Told(TOLD("Answer",
                "When to begin is the wanted time less what the plan's own day takes until then: "
                "the clock changes no time of a day, since room and water stay as they are stated. "
                "Many such days take longer: begin earlier, or be ready to wait."))};
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto& begins = of.rig(i).begins;
    if (!begins || *begins >= physics::seconds(0.0)) continue;
    all.push_back(Told(TOLD("Answer", "A clock time with %1 is of the day before."),
                       rigs::Verbatim{"\"-1 d\""}));
    break;
  }
  return all;
}

Told otherHoursNote() {
  return Told(TOLD("Answer",
                   "Other hours are told for their price alone: begun then, what is to be ready "
                   "would be ready at another hour, too."));
}

}  // namespace gui::telling
