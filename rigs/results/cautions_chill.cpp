// SPDX-License-Identifier: GPL-3.0-or-later
// What to take care of while wort is chilled.
#include <algorithm>
#include <cmath>

#include "rigs/answers/chilling.hpp"
#include "rigs/results/cautions.hpp"

namespace rigs {
namespace {

constexpr FormatOptions kDigitsOfChilling{.significantDigits = 2, .decimals = {}};

Amount chillDegrees(double celsius) { return amount(physics::celsius(celsius), kDigitsOfChilling); }

// Of all rigs' chillers: the hottest that their water leaves, or the wort itself where none is
// known.
std::optional<physics::Temperature> hottestOutlet(const Answers& answers) {
  std::optional<physics::Temperature> hottest;
  const auto note = [&](const std::optional<physics::Temperature>& one) {
    if (one && (!hottest || *one > *hottest)) hottest = *one;
  };
  for (const RigAnswer& rig : answers.rigs) {
    if (!rig.chill) continue;
    if (rig.chill->stirred) note(rig.chill->stirred->firstOutlet);
    if (rig.chill->pass) note(rig.chill->pass->best.coldOut);
  }
  return hottest;
}

Caution scaldingWater(const Answers& answers) {
  const auto hottest = hottestOutlet(answers);
  if (!hottest || *hottest < physics::celsius(45.0))
    return {"chilling water", Told(TOLD("Answer",
                                        "A chiller, its hoses and the wort stay hot enough to "
                                        "scald until the end."))};
  const physics::Temperature about = physics::celsius(std::round(physics::inCelsius(*hottest)));
  return {"chilling water",
          Told(TOLD("Answer",
                    "The cooling water leaves at up to about %1 at first: it scalds. Fasten both "
                    "hoses before the tap is opened, lead the hot one where nobody reaches, and "
                    "open it slowly: water in a hot tube may spit steam. %2."),
               amount(about, kDigitsOfChilling), scaldText(about))};
}

}  // namespace

std::vector<Caution> chillCautions(const Answers& answers) {
  return {
      scaldingWater(answers),
      {"vacuum",
       Told(TOLD("Answer",
                 "Never close a hot vessel, not even to let it cool: steam that condenses leaves a "
                 "vacuum, which buckles walls and sucks in what is at the lid. Leave the lid loose "
                 "and vents open until it is cold."))},
      {"chilling unplugged",
       Told(TOLD("Answer",
                 "Switch the element off and unplug it before a coil goes in and water runs beside "
                 "it; a leak at a hose wets whatever is below."))},
      {"wort warm",
       Told(
           TOLD("Answer",
                "What grows in food grows in wort between %1 and %2 until yeast has taken over. As "
                "an inspector of food service would say: from %1 to %3 within 2 h and to %2 "
                "within 6 h in all (FDA Food Code 3-501.14); a yardstick, no rule for beer. Pitch "
                "promptly."),
           chillDegrees(57.0), chillDegrees(5.0), chillDegrees(21.0))},
      {"storage",
       Told(TOLD("Answer",
                 "Do not seal unfermented wort to keep it warm or at room temperature: spores of "
                 "botulism survive the boil."))}};
}

}  // namespace rigs
