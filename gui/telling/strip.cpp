// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/strip.hpp"

#include <utility>
#include <vector>

#include "rigs/answers/night.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

rigs::Argument calledShortly(const Case& of, std::size_t i) {
  return of.isAlone() ? of.named(i) : rigs::Argument(rigs::Verbatim{of.lettered(i)});
}

Told overloadShortly(const Case& of) {
  rigs::List rigs{{}, rigs::Joint::And};
  for (std::size_t i = 0; i < of.count(); ++i)
    if (of.isOverloaded(i)) rigs.items.push_back(calledShortly(of, i));
  if (rigs.items.empty()) return {};
  return rigs.items.size() == 1
             ? Told(TOLD("Strip", "%1 asks more of its circuit than that is rated for."),
                    std::move(rigs.items.front()))
             : Told(TOLD("Strip", "%1 ask more of their circuits than those are rated for."),
                    std::move(rigs));
}

// Of the mash that is the longest below hot holding's limit.
Told nightShortly(const Case& of) {
  std::optional<std::size_t> longest;
  const auto below = [&](std::size_t i) { return of.rig(i).night->asItIs.below; };
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto& night = of.rig(i).night;
    if (!night || !night->own || night->asItIs.below <= physics::seconds(0.0)) continue;
    if (!longest || below(i) > below(*longest)) longest = i;
  }
  if (!longest) return {};
  return Told(TOLD("Strip", "%1 is below %2 for %3 of its rest: boil it promptly."),
              calledShortly(of, *longest), rigs::amount(rigs::kWarmUpTo),
              rigs::roughly(below(*longest)));
}

}  // namespace

Told stripOf(const Case& of) {
  Told own = overloadShortly(of);
  if (own.empty()) own = nightShortly(of);
  std::vector<Told> all{Told(TOLD("Strip", "Mains current and boiling wort can kill."))};
  if (!own.empty()) all.push_back(std::move(own));
  all.push_back(Told(TOLD("Strip", "Have a licensed electrician check; local codes decide.")));
  return rigs::sentences(std::move(all));
}

}  // namespace gui::telling
