// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/followed.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "rigs/answers/course_clock.hpp"
#include "rigs/answers/followed_alarms.hpp"
#include "rigs/answers/next_reading.hpp"
#include "rigs/answers/priors.hpp"
#include "rigs/answers/read_course.hpp"
#include "rigs/answers/read_day.hpp"
#include "rigs/answers/reading_fit.hpp"

namespace rigs {
namespace {

using namespace physics;

bool isWrittenDown(StageKind kind) {
  constexpr std::array kEvents{readings::Event::PluggedIn, readings::Event::GrainIn,
                               readings::Event::Unplugged, readings::Event::Heating,
                               readings::Event::Boil};
  return std::any_of(kEvents.begin(), kEvents.end(),
                     [&](readings::Event event) { return stageOf(event) == kind; });
}

std::optional<Time> latestOf(const Band<Time>& band) {
  return band.high ? band.high : band.middle ? band.middle : band.low;
}

double siNumberOf(const readings::Value& value) {
  if (const auto* wort = std::get_if<Temperature>(&value)) return inKelvin(*wort);
  if (const auto* energy = std::get_if<Energy>(&value)) return inJoules(*energy);
  if (const auto* volume = std::get_if<readings::ReadVolume>(&value))
    return inCubicMetres(volume->volume);
  if (const auto* gravity = std::get_if<readings::ReadGravity>(&value)) return gravity->gravity;
  return 0.0;
}

class Following {
 public:
  Following(const Plan& plan, const std::vector<DayCourse>& planned,
            const std::vector<readings::Reading>& read, const Learned* learned, Time now)
      : plan_(plan),
        planned_(planned),
        read_(read),
        learned_(learned),
        kinds_(kindsOf(planned)),
        days_(learned && !learned->courses.empty() ? learned->courses : planned),
        byPlan_(planned_, kinds_, plan.startOfDay, {}),
        clock_(days_, kinds_, plan.startOfDay, lastHappened(read, kinds_)) {
    found_.now = now;
    if (learned) found_.nothing = learned->nothing;
    found_.isSure = days_.size() > 1;
    found_.rolls = clock_.share(Outcome::Done);
  }

  Followed take() {
    waitForWhatIsNotWritten();
    for (std::size_t stage = first(); stage <= kinds_.size(); ++stage) addComing(stage);
    found_.end = clock_.begin(kinds_.size());
    found_.isOver = found_.coming.empty() && !kinds_.empty();
    found_.wort = wortNow();
    found_.last = lastRead();
    found_.alarms = alarmsOf({plan_, read_, learned_, clock_, found_, lawsGrown()});
    return std::move(found_);
  }

 private:
  std::size_t first() const { return clock_.last() ? clock_.last()->stage + 1 : 0; }

  // Who writes events down would have written this one: it has not happened. Unless something was
  // read since then, which shows that the day went on.
  void waitForWhatIsNotWritten() {
    if (!clock_.last()) return;
    for (std::size_t stage = first(); stage < kinds_.size(); ++stage) {
      if (!isWrittenDown(kinds_[stage])) continue;
      const auto last = latestOf(clock_.begin(stage));
      if (!last || read_.back().at > *last) return;
      isDue_ = *last < found_.now;
      awaited_ = stage;
      clock_.wait(stage, found_.now);
      return;
    }
  }

  void addComing(std::size_t stage) {
    Coming one{.stage = stage,
               .begins = {},
               .at = clock_.begin(stage),
               .planned = byPlan_.begin(stage),
               .wort = {}};
    if (stage < kinds_.size()) one.begins = kinds_[stage];
    const auto last = latestOf(one.at);
    if (!last) return;  // so few days get there
    const bool waits = clock_.waits() && stage >= awaited_;
    if (*last < found_.now && !waits) return;
    one.isDue = isDue_ && stage == awaited_;
    const bool afterNight = stage > 0 && kinds_[stage - 1] == StageKind::UnpluggedRest;
    if (afterNight && !one.isDue) one.wort = wortAtBeginOf(stage);
    found_.coming.push_back(std::move(one));
  }

  LawsGrown lawsGrown() const {
    return [this](const DayCourse& day, Temperature wort, Time at) {
      return withLawsGrown(day, wort, plan_, read_, at);
    };
  }

  Band<Temperature> wortAtBeginOf(std::size_t stage) const {
    return clock_.band(
        [&](const DayCourse& day) {
          if (stage >= day.stages.size()) return kNoSuchDay;
          const double at = clock_.begin(day, stage);
          if (!std::isfinite(at)) return kNoSuchDay;
          return inKelvin(lawsGrown()(day, day.stages[stage].first, seconds(at)));
        },
        [](double n) { return kelvin(n); });
  }

  Band<Temperature> wortNow() const {
    if (isDue_ || found_.isOver) return {};
    return wortAt(found_.now, clock_);
  }
  Band<Temperature> wortAt(Time at, const CourseClock& clock) const {
    return clock.band(
        [&](const DayCourse& day) {
          const auto since = clock.since(day, at);
          if (!since || *since < seconds(0.0) || *since > day.over || day.wort.empty())
            return kNoSuchDay;
          return inKelvin(lawsGrown()(day, day.wortAt(*since), at));
        },
        [](double n) { return kelvin(n); });
  }

  // --- What was read last.

  std::optional<LastRead> lastRead() const {
    for (std::size_t i = read_.size(); i-- > 0;) {
      const auto* event = std::get_if<readings::Event>(&read_[i].value);
      if (!event) return measured(i);
      if (stageOf(*event)) return happened(i, *event);
      // A lid's tells of itself; it is no reading to be judged.
      if (i == 0 || i + 1 == read_.size()) return LastRead{.which = i};
    }
    return std::nullopt;
  }

  LastRead happened(std::size_t i, readings::Event event) const {
    LastRead last{.which = i};
    const std::vector<readings::Reading> before(read_.begin(),
                                                read_.begin() + static_cast<std::ptrdiff_t>(i));
    const CourseClock clock(planned_, kinds_, plan_.startOfDay, lastHappened(before, kinds_));
    const auto found = std::find(kinds_.begin(), kinds_.end(), *stageOf(event));
    if (found == kinds_.end()) {
      last.isOfTheDay = event == readings::Event::PluggedIn;
      return last;
    }
    const Band<Time> band = clock.begin(static_cast<std::size_t>(found - kinds_.begin()));
    const auto number = [](const std::optional<Time>& t) {
      return t ? std::optional(inSeconds(*t)) : std::nullopt;
    };
    last.low = number(band.low);
    last.middle = number(band.middle);
    last.high = number(band.high);
    return last;
  }

  LastRead measured(std::size_t i) const {
    LastRead last{.which = i};
    if (!learned_ || learned_->nothing) {
      last.isOfTheDay = !learned_ || learned_->nothing != NothingLearned::NothingUsable;
      return last;
    }
    const auto judged = std::find_if(
        learned_->judged.rbegin(), learned_->judged.rend(), [&](const JudgedReading& one) {
          return one.which == i || (one.rows > 1 && i <= one.which + one.rows);
        });
    last.isOfTheDay = judged != learned_->judged.rend();
    if (!last.isOfTheDay) return last;
    if (judged->rows > 1) return ofALog(i, *judged);
    const double off = kNineInTen * std::hypot(judged->spreadBefore, judged->noise);
    last.low = judged->expected - off;
    last.middle = judged->expected;
    last.high = judged->expected + off;
    last.surprise = judged->surprise;
    last.contradicted = judged->good < 0.5;
    return last;
  }
  // One row of many, which are judged together: against what all of them say of that moment.
  LastRead ofALog(std::size_t i, const JudgedReading& group) const {
    LastRead last{.which = i};
    last.contradicted = group.good < 0.5;
    const Band<double> band = clock_.band(
        [&](const DayCourse& day) {
          const auto since = clock_.since(day, read_[i].at);
          if (!since || day.wort.empty()) return kNoSuchDay;
          return inKelvin(day.wortAt(*since) + day.thermometer);
        },
        [](double n) { return n; });
    if (!band.low || !band.middle || !band.high) return last;
    const double noise = std::hypot(kStirredNoise, read_[i].step / std::sqrt(12.0));
    const double spread = std::hypot((*band.high - *band.low) / (2.0 * kNineInTen), noise);
    last.low = *band.middle - kNineInTen * spread;
    last.middle = band.middle;
    last.high = *band.middle + kNineInTen * spread;
    last.surprise = (siNumberOf(read_[i].value) - *band.middle) / spread;
    return last;
  }

  const Plan& plan_;
  const std::vector<DayCourse>& planned_;
  const std::vector<readings::Reading>& read_;
  const Learned* learned_;
  std::vector<StageKind> kinds_;
  const std::vector<DayCourse>& days_;
  CourseClock byPlan_, clock_;
  Followed found_ = {};
  std::size_t awaited_ = 0;
  bool isDue_ = false;
};

}  // namespace

Plan withTheNightThatWas(Plan plan, const std::vector<readings::Reading>& read) {
  // As long as a stage may be simulated.
  constexpr Time kShortest = minutes(1.0), kLongest = hours(48.0);
  auto* night = std::get_if<UnpluggedMash>(&plan.batch.mash);
  std::optional<Time> from;
  for (const readings::Reading& one : read) {
    const auto* event = std::get_if<readings::Event>(&one.value);
    if (!event || !night) continue;
    if (*event == readings::Event::Unplugged) from = one.at;
    if (*event == readings::Event::Heating && from)
      night->duration = std::clamp(one.at - *from, kShortest, kLongest);
  }
  return plan;
}

Followed followed(const Plan& plan, const std::vector<DayCourse>& planned,
                  const std::vector<readings::Reading>& read, const Learned* learned, Time now) {
  return Following(plan, planned, read, learned, now).take();
}

}  // namespace rigs
