// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/followed.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/learned.hpp"
#include "gui/telling/learned_tables.hpp"
#include "gui/telling/sheet.hpp"
#include "gui/telling/sure.hpp"
#include "rigs/answers/read_day.hpp"
#include "rigs/results/alarms.hpp"

namespace gui::telling {
namespace {

using physics::StageKind;
using physics::Temperature;
using physics::Time;
using rigs::amount;
using rigs::Band;
using rigs::Coming;
using rigs::Followed;
using rigs::LastRead;
using rigs::Told;
using rigs::readings::Event;

// What is read every few minutes needs no estimate of now.
constexpr Time kReadNow = physics::minutes(10.0);
constexpr double kRollsForSure = 0.95;

rigs::Argument inTenths(Temperature t) {
  return amount(t, {.significantDigits = 3, .decimals = 1});
}

// As clocks show them.
bool isOneMinute(Time a, Time b) {
  return std::lround(physics::inMinutes(a)) == std::lround(physics::inMinutes(b));
}

// --- The lines of the sheet, which says what is done: with these clocks.

class Lines {
 public:
  Lines(const Case& of, std::size_t rig) : count_(of.rig(rig).day.stages.size()) {
    // What the plan's own night came to is not what this one does.
    rigs::Solution alike = of.solution;
    if (auto& night = alike.answers.rigs[rig].night) night->asItIs.below = physics::seconds(0.0);
    lines_ = sheetLines({alike, of.plan, of.reader, of.view}, rig);
  }

  const SheetLine* of(const Coming& coming) const {
    const std::size_t stage = coming.begins ? coming.stage : count_;
    const auto found = std::find_if(lines_.begin(), lines_.end(),
                                    [&](const SheetLine& line) { return line.stage == stage; });
    return found == lines_.end() ? nullptr : &*found;
  }
  // What is done after the day's end, so much later.
  struct After {
    const SheetLine* line;
    Time later;
  };
  std::vector<After> afterTheEnd() const {
    std::vector<After> all;
    const SheetLine* end = nullptr;
    for (const SheetLine& line : lines_) {
      if (end && line.at && end->at) all.push_back({&line, *line.at - *end->at});
      if (line.stage == count_) end = &line;
    }
    return all;
  }

 private:
  std::size_t count_;
  std::vector<SheetLine> lines_;
};

// Where the plan's own day stops before it.
Told inAWord(const std::optional<StageKind>& begins) {
  if (!begins) return Told(TOLD("Followed", "The day is over"));
  switch (*begins) {
    case StageKind::Strike:
      return Told(TOLD("Followed", "Heat the water"));
    case StageKind::MashingIn:
      return Told(TOLD("Followed", "Grain in"));
    case StageKind::Ramp:
      return Told(TOLD("Followed", "Heat the mash"));
    case StageKind::Rest:
      return Told(TOLD("Followed", "Hold the mash"));
    case StageKind::UnpluggedRest:
      return Told(TOLD("Followed", "Unplug"));
    case StageKind::Draining:
      return Told(TOLD("Followed", "Lift the grain, let it drain"));
    case StageKind::HeatingToBoil:
      return Told(TOLD("Followed", "Heat to the boil"));
    case StageKind::Boil:
      break;
  }
  return Told(TOLD("Followed", "It rolls"));
}

Told actionOf(const Lines& lines, const Coming& coming) {
  const SheetLine* line = lines.of(coming);
  return line ? line->action : inAWord(coming.begins);
}

Told wholeLine(const SheetLine& line) {
  return line.more.empty() ? line.action : Told(TOLD("Followed", "%1; %2"), line.action, line.more);
}

// --- What was read last.

// As the reader of lines takes them.
Told eventWord(Event event) {
  switch (event) {
    case Event::PluggedIn:
      return Told(TOLD("Followed", "plugged in"));
    case Event::GrainIn:
      return Told(TOLD("Followed", "grain in"));
    case Event::Unplugged:
      return Told(TOLD("Followed", "unplugged"));
    case Event::Heating:
      return Told(TOLD("Followed", "heating"));
    case Event::Boil:
      return Told(TOLD("Followed", "boil"));
    case Event::LidOn:
      return Told(TOLD("Followed", "lid on"));
    case Event::LidOff:
      break;
  }
  return Told(TOLD("Followed", "lid off"));
}
Told eventWord(StageKind begins) {
  for (const Event event :
       {Event::PluggedIn, Event::GrainIn, Event::Unplugged, Event::Heating, Event::Boil})
    if (rigs::stageOf(event) == begins) return eventWord(event);
  return {};
}

Told eventText(const rigs::readings::Reading& read, Event event, const LastRead& last, Time now) {
  const Told word = eventWord(event);
  const rigs::Clock at = rigs::clockSeenAt(now, read.at);
  if (!last.low || !last.high) return Told(TOLD("Followed", "Written last, at %1: %2."), at, word);
  const rigs::Clock low = rigs::clockSeenAt(now, physics::seconds(*last.low));
  const rigs::Clock high = rigs::clockSeenAt(now, physics::seconds(*last.high));
  if (std::abs(*last.high - *last.low) < 30.0) {
    const double off = physics::inSeconds(read.at) - *last.low;
    if (std::abs(off) < 60.0)
      return Told(TOLD("Followed", "Written last, at %1: %2, as planned."), at, word);
    return Told(TOLD("Followed", "Written last, at %1: %2; planned was %3."), at, word, low);
  }
  // Clocks are read to the minute.
  const double off = physics::inSeconds(read.at);
  if (off < *last.low - 60.0)
    return Told(TOLD("Followed", "Written last, at %1: %2, sooner than expected, %3 to %4."), at,
                word, low, high);
  if (off > *last.high + 60.0)
    return Told(TOLD("Followed", "Written last, at %1: %2, later than expected, %3 to %4."), at,
                word, low, high);
  return Told(TOLD("Followed", "Written last, at %1: %2, as expected, %3 to %4."), at, word, low,
              high);
}

Told lastText(const ReadAndFollowed& from) {
  const auto& last = from.followed.last;
  if (!last)
    return Told(
        TOLD("Followed", "Nothing was read yet: what follows is the plan, by its own clock."));
  const auto& read = from.read[last->which];
  if (const auto* event = std::get_if<Event>(&read.value))
    return eventText(read, *event, *last, from.followed.now);
  const Cell value = readCell(read.value);
  if (!value) return {};
  const rigs::Clock at = rigs::clockSeenAt(from.followed.now, read.at);
  const Cell low = last->low ? cellLike(read.value, *last->low) : std::nullopt;
  const Cell high = last->high ? cellLike(read.value, *last->high) : std::nullopt;
  if (!low || !high) return Told(TOLD("Followed", "Read last, at %1: %2."), at, *value);
  const double surprise = std::abs(last->surprise);
  if (last->contradicted || surprise >= rigs::kAsksAgain)
    return Told(TOLD("Followed", "Read last, at %1: %2, far outside what was expected, %3 to %4."),
                at, *value, *low, *high);
  if (surprise >= rigs::kABitOutside)
    return Told(
        TOLD("Followed", "Read last, at %1: %2, a bit outside what was expected, %3 to %4."), at,
        *value, *low, *high);
  return Told(TOLD("Followed", "Read last, at %1: %2, as expected, %3 to %4."), at, *value, *low,
              *high);
}

Told wortNowText(const ReadAndFollowed& from) {
  const Band<Temperature>& wort = from.followed.wort;
  if (!wort.low || !wort.middle || !wort.high) return {};
  for (const auto& one : from.read) {
    const bool isTemperature = std::holds_alternative<Temperature>(one.value);
    if (isTemperature && from.followed.now - one.at < kReadNow) return {};
  }
  return Told(TOLD("Followed", "Now the wort has about %1 (8 in 10: %2 to %3)."),
              inTenths(*wort.middle), inTenths(*wort.low), inTenths(*wort.high));
}

// --- What comes.

// "Between 14:31 and 14:37"; the first of a page says what the two times are.
class TimedLines {
 public:
  explicit TimedLines(const Followed& followed) : now_(followed.now), isSure_(followed.isSure) {}

  Told of(const Band<Time>& at, const Told& what) {
    if (at.low && at.high && !isOneMinute(*at.low, *at.high)) {
      if (std::exchange(isExplained_, true))
        return Told(TOLD("Followed", "Between %1 and %2: %3."), clock(at.low), clock(at.high),
                    what);
      return Told(TOLD("Followed", "Between %1 and %2 (8 of 10 such days): %3."), clock(at.low),
                  clock(at.high), what);
    }
    if (at.high) {
      const bool isChosen = isSure_ && at.low && *at.high - *at.low < physics::seconds(1.0);
      if (isChosen) return Told(TOLD("Followed", "At %1: %2."), clock(at.high), what);
      return Told(TOLD("Followed", "At about %1: %2."), clock(at.middle), what);
    }
    if (at.low)
      return Told(TOLD("Followed", "From %1 on, and on more than 1 in 10 such days never: %2."),
                  clock(at.low), what);
    return {};
  }

 private:
  rigs::Clock clock(const std::optional<Time>& at) const { return rigs::clockSeenAt(now_, *at); }

  Time now_;
  bool isSure_;
  bool isExplained_ = false;
};

Told mashThenText(const Band<Temperature>& wort) {
  if (!wort.low || !wort.middle || !wort.high) return {};
  return Told(TOLD("Followed", "The mash then has about %1 (8 in 10: %2 to %3)."),
              inTenths(*wort.middle), inTenths(*wort.low), inTenths(*wort.high));
}

Told comingText(const Lines& lines, const Coming& coming, TimedLines& timed) {
  const SheetLine* line = lines.of(coming);
  const Told what = line ? wholeLine(*line) : inAWord(coming.begins);
  if (coming.isDue && coming.begins)
    return Told(TOLD("Followed",
                     "By now, and not written yet: %1. Type \"%2\" when it happens; what follows "
                     "waits for it."),
                what, eventWord(*coming.begins));
  return rigs::sentences({timed.of(coming.at, what), mashThenText(coming.wort)});
}

Band<Time> laterBy(const Band<Time>& at, Time by) {
  const auto moved = [&](const std::optional<Time>& t) {
    return t ? std::optional(*t + by) : std::nullopt;
  };
  return {moved(at.low), moved(at.middle), moved(at.high)};
}

void tellComing(const Case& of, std::size_t rig, const Followed& followed, Answer& answer) {
  const Lines lines(of, rig);
  TimedLines timed(followed);
  std::vector<Told> all;
  for (const Coming& one : followed.coming)
    if (Told text = comingText(lines, one, timed); !text.empty()) all.push_back(std::move(text));
  for (const auto& [line, by] : lines.afterTheEnd()) {
    const Band<Time> at = laterBy(followed.end, by);
    if (!at.high || *at.high < followed.now) continue;
    all.push_back(timed.of(at, wholeLine(*line)));
  }
  answer.heading(Told(TOLD("Followed", "What comes")));
  if (all.empty())
    answer.say(Told(TOLD("Followed", "Nothing more: by the clock the day is over.")));
  for (Told& one : all) answer.say(std::move(one));
  const auto& additions = of.plan.batch.additions;
  if (!all.empty() && std::any_of(additions.begin(), additions.end(),
                                  [](const auto& one) { return !one.isAtTheEnd(); }))
    answer.say(
        Told(TOLD("Followed",
                  "What goes into the boil is not in this list: the sheet to brew by has it, "
                  "with what it does.")));
}

void tellRange(const ReadAndFollowed& from, Answer& answer) {
  const Followed& followed = from.followed;
  const bool boils = std::any_of(followed.coming.begin(), followed.coming.end(),
                                 [](const Coming& one) { return one.begins == StageKind::Boil; });
  if (boils && followed.isSure && followed.rolls < kRollsForSure)
    answer.say(Told(TOLD("Sure", "It %1."), rollsOnText(followed.rolls)));
  if (!followed.isSure && !followed.coming.empty())
    answer.say(Told(TOLD("Followed",
                         "What was read leaves too little for ranges: these are the times of the "
                         "likeliest day, and nobody can say how sure.")));
  const bool measured = std::any_of(from.read.begin(), from.read.end(), [](const auto& one) {
    return !std::holds_alternative<Event>(one.value);
  });
  if (followed.nothing && measured) answer.say(nothingText(*followed.nothing));
}

}  // namespace

std::vector<Told> actionsOf(const Case& of, std::size_t rig, const Followed& followed) {
  const Lines lines(of, rig);
  std::vector<Told> all;
  for (const Coming& one : followed.coming) all.push_back(actionOf(lines, one));
  return all;
}

Answer howItGoesOn(const Case& of, std::size_t rig, const ReadAndFollowed& from) {
  Answer answer;
  answer.title = Told(TOLD("Followed", "%1, %2"),
                      rigs::clockSeenAt(from.followed.now, from.followed.now), of.named(rig));
  answer.setSlots(of.slots());
  answer.lettered = !of.isAlone();
  for (Told& one : std::vector{lastText(from), wortNowText(from)})
    if (!one.empty()) answer.sentences.push_back(std::move(one));
  tellComing(of, rig, from.followed, answer);
  tellRange(from, answer);
  if (!from.followed.alarms.empty()) {
    answer.heading(Told(TOLD("Followed", "Heed now")));
    for (const rigs::Alarm& alarm : from.followed.alarms)
      answer.say(rigs::alarmText(alarm, from.followed.now));
  }
  addCautions(answer, rigs::About::Boil, ofThisRigAlone(of.solution, rig));
  return answer;
}

}  // namespace gui::telling
