// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/additions.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "physics/water.hpp"

namespace gui::telling {
namespace {

using physics::Added;
using rigs::amount;
using rigs::Told;

// Less is not seen.
constexpr physics::TemperatureDifference kSeen = physics::kelvins(0.05);

// Of the time that is left: what comes later may as well not come.
constexpr double kSurelyBefore = 0.75;

bool dips(const Added& added) { return added.before - added.mixed >= kSeen; }

// Heat of solution, stirring and the brewer's hand scatter by more than a minute's tenths.
rigs::Amount wholeMinutes(physics::Time time) {
  return amount(physics::minutes(std::max(1.0, std::round(physics::inMinutes(time)))));
}

Told afterwards(const Added& added) {
  return Told(TOLD("Answer", "Right after it: %1 cold, %2 hot, gravity %3."), amount(added.cold),
              amount(added.hot), rigs::Number{added.gravity, {.decimals = 3}});
}

}  // namespace

Told additionInWords(const physics::Addition& addition) {
  const rigs::Verbatim what{addition.what};
  if (!addition.isPoured) return Told(TOLD("Answer", "%1 of %2"), amount(addition.mass), what);
  const physics::Volume water = addition.mass / physics::waterDensity(physics::celsius(20.0));
  return Told(TOLD("Answer", "%1 of %2"), amount(water), what);
}

Told plannedAdditionInWords(const physics::Addition& addition) {
  if (addition.isAtTheEnd())
    return Told(TOLD("Answer", "%1, when the boil ends"), additionInWords(addition));
  return Told(TOLD("Answer", "%1, %2 before the end"), additionInWords(addition),
              rigs::asChosen(addition.beforeEnd));
}

Told dipText(const Added& added) {
  if (!dips(added)) return Told(TOLD("Answer", "hardly dips"));
  return Told(TOLD("Answer", "dips by about %1, to %2"),
              amount(added.before - added.mixed, {.significantDigits = 2, .decimals = {}}),
              amount(added.mixed));
}

Told backText(const Case& of, std::size_t rig, const Added& added) {
  const physics::Addition& addition = of.plan.batch.additions[added.which];
  if (!dips(added) || addition.isAtTheEnd()) return {};
  if (of.rig(rig).day.outcome != physics::Outcome::Done && !added.backIn) return {};
  if (!added.backIn) return Told(TOLD("Answer", "is not likely to roll again before the end"));
  if (*added.backIn > kSurelyBefore * addition.beforeEnd)
    return Told(TOLD("Answer", "may just roll again before the end"));
  if (*added.backIn < physics::minutes(1.0))
    return Told(TOLD("Answer", "rolls again within about a minute"));
  return Told(TOLD("Answer", "rolls again after about %1"), wholeMinutes(*added.backIn));
}

std::vector<Told> additionTexts(const Case& of, std::size_t rig) {
  std::vector<Told> all;
  for (const Added& added : of.rig(rig).day.additions) {
    const physics::Addition& addition = of.plan.batch.additions[added.which];
    const Told back = backText(of, rig, added);
    const Told effect =
        back.empty() ? dipText(added) : Told(TOLD("Answer", "%1, and %2"), dipText(added), back);
    const Told told(TOLD("Answer", "With %1, the wort %2."), plannedAdditionInWords(addition),
                    effect);
    all.push_back(rigs::sentences({told, afterwards(added)}));
  }
  return all;
}

void addAdditionRows(RigTable& table, const Case& of) {
  std::size_t most = 0;
  for (std::size_t i = 0; i < of.count(); ++i)
    most = std::max(most, of.rig(i).day.additions.size());
  for (std::size_t k = 0; k < most; ++k) {
    // All rigs take them in the same order, and one may stop before the last.
    const auto added = [&](std::size_t i) -> const Added* {
      const auto& all = of.rig(i).day.additions;
      return k < all.size() ? &all[k] : nullptr;
    };
    const auto row = [&](Told label, const std::string& key, const auto& figure) {
      table.row(std::move(label),
                [&](std::size_t i) -> Cell {
                  const Added* one = added(i);
                  return one ? figure(*one) : std::nullopt;
                },
                {.result = "/day/additions/" + std::to_string(k) + "/" + key});
    };
    for (std::size_t i = 0; i < of.count(); ++i)
      if (const Added* one = added(i)) {
        table.heading(plannedAdditionInWords(of.plan.batch.additions[one->which]));
        break;
      }
    row(Told(TOLD("Answer", "wort right after it")), "mixed_C",
        [](const Added& one) { return cellOf(one.mixed); });
    row(Told(TOLD("Answer", "rolls again after")), "rolls_again_after_s",
        [](const Added& one) { return cellOf(one.backIn); });
    row(Told(TOLD("Answer", "wort then, cold")), "cold_volume_L",
        [](const Added& one) { return cellOf(one.cold); });
    row(Told(TOLD("Answer", "gravity then")), "gravity",
        [](const Added& one) { return numberCell(one.gravity, 3); });
  }
}

}  // namespace gui::telling
