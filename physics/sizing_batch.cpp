// SPDX-License-Identifier: GPL-3.0-or-later
// Sizing by the batch: how large it may get.
#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <utility>

#include "physics/searched_days.hpp"
#include "physics/sizing.hpp"

namespace physics {
namespace {

// For the largest batch of those in one proportion that keep within every limit.
class BatchSearch {
 public:
  BatchSearch(const Rig& rig, const Batch& batch, const Place& place, double sharePerHour,
              double headspace)
      : rig_(rig),
        place_(place),
        sharePerHour_(sharePerHour),
        room_((1.0 - headspace) * capacity(rig.vessel)),
        own_(simulate(rig, batch, place, kForSearching)),
        unit_(batch) {
    unit_.size = PouredWater{own_.water};
  }

  BatchAnswer largest() {
    if (!begin()) return {.wort = std::nullopt, .stoppedBy = *whyNone_};
    while (!high_) tried(1.5 * low_->factor);
    std::uintmax_t steps = 40;
    const double from = low_->factor, fromSpare = low_->spare;
    const double to = high_->factor, toSpare = high_->spare;
    boost::math::tools::toms748_solve([&](double factor) { return tried(factor).spare; }, from, to,
                                      fromSpare, toSpare,
                                      boost::math::tools::eps_tolerance<double>(20), steps);
    return {.wort = turnedDown(low_->day), .stoppedBy = high_->binding};
  }

 private:
  struct Tried {
    double factor;  // of the batch in question
    BrewDay day;
    double spare;  // positive while everything is within its limit
    Limit binding;
    bool within() const { return spare >= 0.0; }
    bool tooSmall() const { return day.outcome == Outcome::UncoversElement; }
  };

  // Water and grain grow together; searching on the water poured needs one day a guess.
  const Tried& tried(double factor) {
    return note(factor, simulate(rig_, scaled(unit_, factor), place_, kForSearching));
  }
  const Tried& note(double factor, BrewDay day) {
    Limit binding = Limit::None;
    const double spare = spareIn(day, binding);
    std::optional<Tried>& side = spare >= 0.0 ? low_ : high_;
    side = Tried{factor, std::move(day), spare, binding};
    return *side;
  }

  // Falls with size, but for batches too small to cover the element, which begin() steps over.
  double spareIn(const BrewDay& day, Limit& binding) const {
    const double vessel = static_cast<double>((room_ - day.fullest) / room_);
    if (!day.finished() || !day.boil) {
      binding = day.outcome == Outcome::UncoversElement ? Limit::SmallestBatch : Limit::Boiling;
      const double missing =
          day.levelsOff ? inKelvins(day.levelsOff->wanted - day.levelsOff->at) : 1000.0;
      return std::min(vessel, -1e-3 * (1.0 + std::abs(missing)));
    }
    const double vigour = (day.boil->shareOfPreBoilPerHour - sharePerHour_) / sharePerHour_;
    const double rolls = static_cast<double>(*spareOf(day) / day.electrical.delivered);
    const double least = std::min({vessel, vigour, rolls});
    binding = day.outcome != Outcome::Done || least == rolls ? Limit::Boiling
              : least == vessel                              ? Limit::Vessel
                                                             : Limit::BoilVigour;
    return day.outcome == Outcome::Done ? least : std::min(least, -1e-9);
  }

  // Whether there is any, from which to go up: its own size, or else the smallest that keeps the
  // element covered.
  bool begin() {
    if (note(1.0, own_).within()) return true;
    const bool ownIsTooLarge = !high_->tooSmall();
    const auto own = std::exchange(high_, std::nullopt);
    const Volume covers = crossSection(rig_.vessel) * rig_.element.topHeight;
    double factor = std::max(0.02, static_cast<double>(covers / own_.water));
    const Tried* least = &tried(factor);
    // A strong element boils small batches dry: they only get through nearer the vessel's size.
    while (least->tooSmall() && least->day.fullest < room_) {
      factor *= 1.15;
      least = &tried(factor);
    }
    if (!low_) {
      whyNone_ = least->binding == Limit::Vessel ? Limit::SmallestBatch : least->binding;
      return false;
    }
    high_.reset();
    if (ownIsTooLarge && low_->factor < 1.0) high_ = own;
    return true;
  }

  // An element that boils harder than wanted can be turned down: less wort is lost.
  Volume turnedDown(const BrewDay& day) const {
    const double spared = (day.boil->shareOfPreBoilPerHour - sharePerHour_) * inHours(unit_.boil);
    return std::max(day.resultCold, day.resultCold + spared * day.preBoilCold);
  }

  const Rig& rig_;
  const Place& place_;
  double sharePerHour_;
  Volume room_;
  BrewDay own_;
  Batch unit_;
  std::optional<Tried> low_, high_;  // the largest within its limits, the smallest beyond them
  std::optional<Limit> whyNone_;
};

}  // namespace

Batch scaled(const Batch& batch, double factor) {
  Batch other = batch;
  other.grain.mass = factor * batch.grain.mass;
  for (Addition& addition : other.additions) addition.mass *= factor;
  if (other.rinse) other.rinse->atTwentyDegrees *= factor;
  if (auto* water = std::get_if<PouredWater>(&other.size)) {
    water->atTwentyDegrees *= factor;
  } else {
    std::get<WantedWort>(other.size).atTwentyDegrees *= factor;
  }
  return other;
}

BatchAnswer largestBatch(const Rig& rig, const Batch& batch, const Place& place,
                         double sharePerHour, double headspace) {
  return BatchSearch(rig, batch, place, sharePerHour, headspace).largest();
}

}  // namespace physics
