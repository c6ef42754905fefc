// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/cost_otherwise.hpp"

#include <cmath>
#include <optional>

#include "gui/telling/words.hpp"
#include "rigs/answers/heated_otherwise.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

// Published shares differ by more than a tenth of a kilowatt hour.
template <class Q>
Cell spanCell(const Case& of, const Q& least, const Q& most) {
  const auto tenths = [&](const Q& q) { return std::round(10.0 * of.axis(q)) / 10.0; };
  const rigs::FormatOptions options{.significantDigits = 2, .decimals = 1};
  const rigs::Number low{tenths(least), options};
  const rigs::Number high{tenths(most), options};
  if (low.value == high.value) return Cell(low);
  return Cell(Told(TOLD("Sure", "%1–%2"), low, high));
}

rigs::Amount percent(double share) {
  return rigs::amount(share, {.significantDigits = 2, .decimals = 0});
}

Told wayText(const rigs::ReachesVessel& share) {
  const rigs::Amount least = percent(share.least);
  const rigs::Amount most = percent(share.most);
  switch (share.by) {
    case rigs::OtherHeat::Induction:
      return Told(TOLD("Answer", "by induction, %1 to %2 of it in the vessel"), least, most);
    case rigs::OtherHeat::HotPlate:
      return Told(TOLD("Answer", "on a hot plate, %1 to %2"), least, most);
    case rigs::OtherHeat::GasFlame:
      break;
  }
  return Told(TOLD("Answer", "on a gas flame, %1 to %2"), least, most);
}

}  // namespace

void addHeatedOtherwise(RigTable& table, const Case& of) {
  table.heading(Told(TOLD("Answer", "What if: the same heat otherwise")));
  for (const rigs::ReachesVessel& share : rigs::kReachesVessel) {
    table.row(wayText(share),
              [&](std::size_t i) -> Cell {
                const auto used = rigs::usedInstead(of.rig(i).day, share);
                return used ? spanCell(of, used->least, used->most) : std::nullopt;
              },
              {.unit = of.unit<physics::Energy>()});
  }
  table.row(Told(TOLD("Answer", "that flame's propane")),
            [&](std::size_t i) -> Cell {
              const auto used = rigs::usedInstead(of.rig(i).day, rigs::kReachesVessel.back());
              if (!used) return std::nullopt;
              return spanCell(of, rigs::propaneFor(used->least), rigs::propaneFor(used->most));
            },
            {.unit = of.unit<physics::Mass>()});
}

std::vector<Told> heatedOtherwiseNotes() {
  return {
      Told(TOLD("Answer",
                "What if it were heated otherwise: the same heat into the same vessel in the same "
                "time, by published shares of what reaches a vessel (ENERGY STAR, US Department "
                "of Energy; a gas ring as measured). Gas has another price and another account of "
                "carbon dioxide: neither is compared.")),
      Told(TOLD("Answer",
                "A flame heats the room more than the wort, takes its air and can fill it with "
                "carbon monoxide: outdoors, or where the maker of the burner allows it."))};
}

}  // namespace gui::telling
