// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/wanted_wort.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

namespace physics {
namespace {

constexpr int kMostSteps = 25;            // while looking for a bracket
constexpr std::uintmax_t kMostDays = 60;  // within it
constexpr double kLeastPoured = 1e-3;     // kg
constexpr double kNarrowest = 1e-8;       // kg, of a bracket
constexpr double kNarrowJump = 1e-5;      // kg, of one between days of other stages
constexpr Volume kAsWanted = litres(0.01);

// The days tried for one wish.
class Search {
 public:
  Search(Volume wanted, const Batch& batch, Volume near, const DayWith& dayWith)
      : wanted_(wanted),
        kept_(batch.grain.mass * batch.absorption -
              (batch.rinse ? batch.rinse->atTwentyDegrees : litres(0.0))),
        near_(inLitres(near)),
        dayWith_(dayWith) {}

  // Steps from the guess until the wish is met or lies between two days.
  void bracket(double water);
  // Between those two.
  void close();
  BrewDay best();

 private:
  struct Tried {
    double water;
    double over;  // litres too many
    BrewDay day;
    bool betterThan(const Tried& other) const {
      if (day.finished() != other.day.finished()) return day.finished();
      return std::abs(over) < std::abs(other.over);
    }
  };

  // Litres too many; 0 once it is near enough.
  double excess(double water);
  // Whether one of the two days stops in an earlier stage: what is left leaps between them.
  bool leaps() const { return low_->day.stages.size() != high_->day.stages.size(); }

  Volume wanted_;
  // By the grain, less what rinses it, of a day that ends in its mash and has not lifted it.
  Volume kept_;
  double near_;
  const DayWith& dayWith_;
  bool met_ = false;
  std::optional<Tried> best_, low_, high_;  // of the bracket: too little and too much wort
};

double Search::excess(double water) {
  Tried tried{.water = water, .over = 0.0, .day = dayWith_(kilograms(water))};
  const bool lifted =
      tried.day.find(StageKind::HeatingToBoil) || tried.day.find(StageKind::Draining);
  const Volume left = tried.day.resultCold - (lifted ? litres(0.0) : kept_);
  tried.over = inLitres(left - wanted_);
  met_ = met_ || std::abs(tried.over) <= near_;
  const double over = met_ ? 0.0 : tried.over;
  if (!best_ || std::abs(tried.over) <= near_ || tried.betterThan(*best_)) best_ = tried;
  (tried.over < 0.0 ? low_ : high_) = std::move(tried);
  return over;
}

// Wort rises by nearly a litre per litre poured, by less where more water boils off more. A chord
// that says otherwise has a day on it that stops early; there the steps grow instead.
void Search::bracket(double water) {
  double over = excess(water);
  double slope = 1.0;
  double stride = 1.0;
  for (int i = 0; i < kMostSteps && !met_ && !(low_ && high_); ++i) {
    const double next =
        std::max(water - stride * over / slope, std::max(0.2 * water, kLeastPoured));
    if (next == water) return;
    const double nextOver = excess(next);
    const double chord = (nextOver - over) / (next - water);
    slope = std::clamp(chord, 0.5, 2.0);
    stride = chord == slope ? 1.0 : 1.5 * stride;
    water = next;
    over = nextOver;
  }
}

void Search::close() {
  if (met_ || !low_ || !high_) return;
  // A leap is found by halves: chords across it close in from one side only. If no water meets the
  // wish, what is in the way is the same however near the two days are.
  while (leaps() && !met_) {
    if (std::abs(high_->water - low_->water) < kNarrowJump) return;
    excess(0.5 * (low_->water + high_->water));
  }
  if (met_) return;
  const bool rises = low_->water < high_->water;
  const Tried& first = rises ? *low_ : *high_;
  const Tried& last = rises ? *high_ : *low_;
  const double from = first.water, fromOver = first.over;
  const double to = last.water, toOver = last.over;
  std::uintmax_t days = kMostDays;
  boost::math::tools::toms748_solve(
      [&](double water) { return excess(water); }, from, to, fromOver, toOver,
      [](double a, double b) { return std::abs(b - a) < kNarrowest; }, days);
}

// Where no day meets the wish, one just beside the best says why.
BrewDay Search::best() {
  BrewDay day = std::move(best_->day);
  const Volume missing = wanted_ - day.resultCold;
  if (day.finished() && abs(missing) <= kAsWanted) return day;
  Outcome because = day.outcome;
  for (const auto* side : {&low_, &high_}) {
    if (day.finished() && *side && !(*side)->day.finished()) because = (*side)->day.outcome;
  }
  day.unmet = UnmetWish{.missing = missing, .because = because};
  return day;
}

}  // namespace

BrewDay dayThatLeaves(Volume wanted, const Batch& batch, Mass guess, Volume near,
                      const DayWith& dayWith) {
  Search search(wanted, batch, near, dayWith);
  search.bracket(std::max(inKilograms(guess), kLeastPoured));
  search.close();
  return search.best();
}

}  // namespace physics
