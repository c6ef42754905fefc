// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/learned.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

#include "rigs/answers/even_points.hpp"
#include "rigs/answers/reading_fit.hpp"

namespace rigs {
namespace {

using namespace physics;
using fitting::Numbers;
using fitting::Story;

// Of which about half count where nothing is bent.
constexpr std::size_t kDraws = 256;
// Together as two that only their ratio is known of.
constexpr double kTiedTogether = 0.8;
// By so much of ln likelihood another unit or another half of the day would have to be better.
constexpr double kFarBetter = 10.0;
constexpr double kFarOff = 2.0;
constexpr double kNoFit = std::numeric_limits<double>::infinity();  // what is tried fits nothing

Estimate estimateOf(std::optional<Unknown> what, double middle, double spread) {
  const auto made = [&](double x) { return what && !isOffset(*what) ? std::exp(x) : x; };
  return {made(middle - kNineInTen * spread), made(middle), made(middle + kNineInTen * spread)};
}

// --- The unknowns, from the draws where there are enough of them.

struct Drawn {
  fitting::Draws draws;
  fitting::Weights weights;
  std::vector<DayNumbers> numbers;
  std::vector<Outcome> outcomes;
  std::vector<DayCourse> courses;  // where they were asked for

  bool enough() const { return weights.effective >= fitting::kEnoughForQuantiles; }
};

std::optional<Unknown> unknownAt(std::size_t k) {
  return k < kUnknowns ? std::optional(static_cast<Unknown>(k)) : std::nullopt;
}

LearnedUnknown unknownFrom(const ReadingFit& fit, const Story& story, const Drawn& drawn,
                           std::size_t k) {
  const fitting::Belief& belief = fit.evidence().before[k];
  const auto what = unknownAt(k);
  LearnedUnknown one{
      .what = what, .before = estimateOf(what, belief.mean, belief.spread), .after = {}};
  double middle = story.at[k];
  double spread = std::sqrt(story.covariance(k, k));
  one.after = estimateOf(what, middle, spread);
  if (drawn.enough()) {
    std::vector<double> numbers;
    for (const Numbers& at : drawn.draws.at) numbers.push_back(at[k]);
    const auto at = [&](double share) {
      return fitting::weightedQuantile(numbers, drawn.weights.of, share).value_or(middle);
    };
    const double low = at(0.1), high = at(0.9);
    middle = at(0.5);
    spread = (high - low) / (2.0 * kNineInTen);
    const auto made = [&](double x) { return what && !isOffset(*what) ? std::exp(x) : x; };
    one.after = {made(low), made(middle), made(high)};
  }
  one.spreadLeft = spread / belief.spread;
  one.fromPlan = (middle - belief.mean) / belief.spread;
  return one;
}

bool tied(const Story& story, Unknown a, Unknown b) {
  const fitting::Matrix& c = story.covariance;
  const std::size_t i = placeOf(a), j = placeOf(b);
  return c(i, j) / std::sqrt(c(i, i) * c(j, j)) > kTiedTogether;
}

// --- Each reading against what was expected before it.

void judge(const ReadingFit& fit, const Story& story, Learned& learned) {
  const std::size_t count = fit.compared().size();
  Numbers at = fit.medians();
  const auto slopes = fitting::slopesOf(fit.model(), at, fitting::stepsFor(fit.evidence()));
  const Numbers expected = fit.model()({at}).front();
  const Numbers fitted = fit.model()({story.at}).front();
  fitting::Matrix covariance(kFitted, kFitted);
  Numbers off(kFitted, 0.0);  // of the unknowns, as learned so far
  for (std::size_t k = 0; k < kFitted; ++k)
    covariance(k, k) = std::pow(fit.evidence().before[k].spread, 2);
  std::vector<std::size_t> order(count);
  for (std::size_t i = 0; i < count; ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return fit.compared()[a].which < fit.compared()[b].which;
  });
  for (const std::size_t i : order) {
    JudgedReading one{.which = fit.compared()[i].which,
                      .good = story.good[i],
                      .fitted = fitted[i],
                      .rows = fit.compared()[i].rows};
    Numbers slope(kFitted, 0.0);
    for (std::size_t k = 0; slopes && k < kFitted; ++k) slope[k] = (*slopes)(i, k);
    const double noise = fitting::spreadOf(fit.evidence().seen[i]);
    const double seen = fit.evidence().seen[i].value;
    const double before = fitting::varianceOf(covariance, slope);
    one.expected = expected[i] + fitting::dot(slope, off);
    one.spreadBefore = std::sqrt(before);
    one.noise = noise;
    one.surprise = fitting::surprise(seen, one.expected, one.spreadBefore, noise);
    learned.judged.push_back(one);
    // As a normal is updated by one more reading; a slip teaches nothing.
    if (story.good[i] < 0.5) continue;
    const Numbers gain = fitting::times(covariance, slope);
    const double both = before + noise * noise;
    for (std::size_t k = 0; k < kFitted; ++k) {
      off[k] += gain[k] * (seen - one.expected) / both;
      for (std::size_t j = 0; j < kFitted; ++j) covariance(k, j) -= gain[k] * gain[j] / both;
    }
  }
}

// --- Would they fit far better in the other unit, or half a day later?

double costOfBest(const Plan& plan, std::size_t rig, const std::vector<readings::Reading>& read,
                  const readings::Thermometer& thermometer, std::size_t compared,
                  const std::function<bool()>& stop) {
  const ReadingFit fit(plan, rig, read, thermometer, stop);
  if (fit.compared().size() < compared) return kNoFit;
  const auto stories = fitting::storiesOf(fit.evidence(), fit.model());
  if (stories.empty()) return kNoFit;
  return stories.front().cost;
}

std::vector<readings::Reading> inOtherUnit(std::vector<readings::Reading> read,
                                           bool wasFahrenheit) {
  for (readings::Reading& one : read) {
    auto* wort = std::get_if<Temperature>(&one.value);
    if (!wort) continue;
    const double typed = inCelsius(*wort);
    *wort = celsius(wasFahrenheit ? (typed - 32.0) / 1.8 : typed * 1.8 + 32.0);
    one.step *= wasFahrenheit ? 1.0 / 1.8 : 1.8;
  }
  return read;
}

std::vector<readings::Reading> later(std::vector<readings::Reading> read, Time by) {
  for (readings::Reading& one : read) one.at += by;
  return read;
}

void seekSlipsOfAll(const ReadingFit& fit, const Plan& plan, std::size_t rig,
                    const std::vector<readings::Reading>& read,
                    const readings::Thermometer& thermometer, double cost,
                    const std::function<bool()>& stop, Learned& learned) {
  const auto better = [&](const std::vector<readings::Reading>& other) {
    return costOfBest(plan, rig, other, thermometer, fit.compared().size(), stop) <
           cost - kFarBetter;
  };
  for (const bool wasFahrenheit : {true, false})
    learned.otherUnit = learned.otherUnit || better(inOtherUnit(read, wasFahrenheit));
  for (const double by : {-12.0, 12.0})
    learned.twelveHoursOff = learned.twelveHoursOff || better(later(read, hours(by)));
}

// --- Where the day ends.

Bands bandsWith(const Drawn& drawn) {
  Bands bands = bandsFrom(drawn.numbers, [&](const std::vector<double>& numbers, double share) {
    return fitting::weightedQuantile(numbers, drawn.weights.of, share);
  });
  for (std::size_t i = 0; i < drawn.outcomes.size(); ++i) {
    if (drawn.outcomes[i] == Outcome::Done) bands.rolls += drawn.weights.of[i];
    if (getsToTheEnd(drawn.outcomes[i])) bands.ends += drawn.weights.of[i];
  }
  return bands;
}

struct DrawnPoints {
  std::vector<Numbers> at;
  std::vector<double> lawsOff;  // what the laws themselves may be off by, in standard deviations
};

DrawnPoints drawnPoints() {
  DrawnPoints points{evenPoints(kDraws, kFitted + 2), {}};
  for (auto& point : points.at) {
    points.lawsOff.push_back(normalQuantile(point.back()));
    point.pop_back();
  }
  return points;
}

DayCourse courseOf(const BrewDay& day, const Numbers& at) {
  DayCourse course = rigs::courseOf(day);
  course.thermometer = kelvins(at[kThermometer]);
  return course;
}

Drawn daysOf(const ReadingFit& fit, const Plan& plan, fitting::Draws draws,
             const std::vector<double>& lawsOff, bool withCourses) {
  Drawn drawn{std::move(draws), {}, {}, {}, {}};
  struct Day {
    Numbers said;
    DayNumbers numbers;
    Outcome outcome;
    DayCourse course = {};
  };
  auto days = forAll(drawn.draws.at.size(), [&](std::size_t i) {
    if (!fit.isLikely(drawn.draws.at[i])) {
      Day none{Numbers(fit.compared().size(), std::nan("")), {}, Outcome::DoesNotReachStrike, {}};
      none.numbers.fill(kNoSuchDay);
      return none;
    }
    const BrewDay day = fit.dayAt(drawn.draws.at[i]);
    Day one{fit.saidBy(day, drawn.draws.at[i]), dayNumbers(day, plan), day.outcome, {}};
    double& morning = one.numbers[placeOf(BandOf::Morning)];
    if (std::isfinite(morning)) morning += lawsOff[i] * lawsMayBeOff(kelvin(morning), plan);
    if (withCourses) one.course = courseOf(day, drawn.draws.at[i]);
    one.course.lawsOff = lawsOff[i];
    return one;
  });
  std::vector<Numbers> said;
  for (Day& one : days) {
    said.push_back(one.said);
    drawn.numbers.push_back(one.numbers);
    drawn.outcomes.push_back(one.outcome);
    if (withCourses) drawn.courses.push_back(std::move(one.course));
  }
  drawn.weights = fitting::weightsOf(fit.evidence(), drawn.draws, said);
  return drawn;
}

// Where a normal's draws miss the ridge that readings leave, once more along it.
Drawn drawnFrom(const ReadingFit& fit, const Plan& plan, const std::vector<Story>& stories,
                bool withCourses) {
  const DrawnPoints points = drawnPoints();
  Drawn straight =
      daysOf(fit, plan, fitting::drawsFrom(stories, points.at), points.lawsOff, withCourses);
  if (straight.enough() || stories.size() > 1) return straight;
  const Story& story = stories.front();
  Drawn along = daysOf(fit, plan,
                       fitting::drawsAlong(fit.evidence(), fit.model(), story,
                                           fitting::tightest(fit.evidence(), story), points.at),
                       points.lawsOff, withCourses);
  return along.weights.effective > straight.weights.effective ? along : straight;
}

// By their weights; the likeliest day alone where these say too little.
std::vector<DayCourse> coursesFrom(const ReadingFit& fit, const Story& story, Drawn drawn) {
  if (!drawn.enough()) return {courseOf(fit.dayAt(story.at), story.at)};
  std::vector<DayCourse> all;
  for (std::size_t i = 0; i < drawn.courses.size(); ++i) {
    if (!(drawn.weights.of[i] > 0.0)) continue;
    all.push_back(std::move(drawn.courses[i]));
    all.back().weight = drawn.weights.of[i];
  }
  return all;
}

}  // namespace

std::optional<Learned> learnedFrom(const Plan& plan, std::size_t rig,
                                   const std::vector<readings::Reading>& read,
                                   const readings::Thermometer& thermometer,
                                   const std::function<bool()>& stop, const LearnedParts& parts) {
  Learned learned;
  const ReadingFit fit(plan, rig, read, thermometer, stop);
  if (fit.compared().empty()) {
    learned.nothing = NothingLearned::NothingUsable;
    return learned;
  }
  const std::vector<Story> stories = fitting::storiesOf(fit.evidence(), fit.model());
  if (fit.stopped()) return std::nullopt;
  if (stories.empty()) {
    learned.nothing = NothingLearned::NoDay;
    return learned;
  }
  const Story& story = stories.front();
  learned.stories = stories.size();
  judge(fit, story, learned);
  // A whole set that is wrong astonishes from its first line on, or in most of it.
  const auto asks = [](const JudgedReading& one) { return std::abs(one.surprise) > kAsksAgain; };
  const auto asking = std::count_if(learned.judged.begin(), learned.judged.end(), asks);
  if (asks(learned.judged.front()) || 2 * asking >= std::ssize(learned.judged))
    seekSlipsOfAll(fit, plan, rig, read, thermometer, story.cost, stop, learned);
  Drawn drawn = drawnFrom(fit, plan, stories, parts.courses);
  const auto before = parts.before ? bandsOf(plan, rig, stop) : std::optional(Bands());
  if (fit.stopped() || !before) return std::nullopt;
  learned.effective = drawn.weights.effective;
  learned.before = *before;
  if (drawn.enough()) learned.after = bandsWith(drawn);
  if (learned.effective < fitting::kEnoughForABand) learned.nothing = NothingLearned::TooBent;
  for (std::size_t k = 0; k < kFitted; ++k) {
    learned.unknowns.push_back(unknownFrom(fit, story, drawn, k));
    learned.hasOffPlan = learned.hasOffPlan || std::abs(learned.unknowns.back().fromPlan) > kFarOff;
  }
  learned.onlyLossesPerLitre = tied(story, Unknown::ClosedLosses, Unknown::Amount);
  learned.onlyPowerPerLitre = tied(story, Unknown::Power, Unknown::Amount);
  if (parts.next) learned.next = whatNext(fit, plan, story, read);
  if (parts.courses) learned.courses = coursesFrom(fit, story, std::move(drawn));
  return learned;
}

}  // namespace rigs
