// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/money.hpp"

#include "rigs/answers/figures.hpp"

namespace rigs {
namespace {

// What does not roll makes another wort: nothing to compare it with.
bool done(const physics::BrewDay& day) { return day.outcome == physics::Outcome::Done; }

bool sameElement(const RigPlan& one, const RigPlan& other) {
  return one.rig.element.rating == other.rig.element.rating &&
         one.rig.element.ratedAt == other.rig.element.ratedAt;
}

}  // namespace

std::optional<double> costOfAYear(const RigAnswer& rig, const Tariff& tariff) {
  if (!rig.cost) return std::nullopt;
  return brewsPerYear(tariff) * *rig.cost;
}

std::optional<Payback> jacketPayback(const RigAnswer& rig, const Plan& plan) {
  const Tariff& tariff = plan.tariff;
  if (!tariff.jacketPrice || !rig.jacket) return std::nullopt;
  if (!done(rig.jacket->bare) || !done(rig.jacket->jacketed)) return std::nullopt;
  const auto saved = moneySaved(rig.jacket->bare, rig.jacket->jacketed, tariff, rig.begins);
  if (!saved) return std::nullopt;
  return payback(*tariff.jacketPrice, *saved, brewsPerYear(tariff));
}

std::optional<ElementPayback> elementPayback(const Plan& plan, const Answers& answers,
                                             std::size_t rig) {
  const Tariff& tariff = plan.tariff;
  if (!tariff.elementPrice) return std::nullopt;
  std::size_t against = 0;
  while (against < answers.rigs.size() && !done(answers.rigs[against].day)) ++against;
  if (against >= answers.rigs.size() || against == rig) return std::nullopt;
  const RigAnswer& mine = answers.rigs[rig];
  const RigAnswer& other = answers.rigs[against];
  if (!done(mine.day) || !mine.cost || !other.cost) return std::nullopt;
  if (sameElement(plan.rigs[rig], plan.rigs[against])) return std::nullopt;
  return ElementPayback{
      .against = against,
      .payback = payback(*tariff.elementPrice, *other.cost - *mine.cost, brewsPerYear(tariff))};
}

}  // namespace rigs
