// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/cautions.hpp"

#include <variant>

namespace rigs {

std::vector<Caution> cautions(const Plan& plan, bool leftAlone, UnitSystem units) {
  std::vector<Caution> all{
      {"mains",
       "Mains current kills. These figures are for planning only; rules differ from place to "
       "place. Have a licensed electrician check circuit, plug, cable and enclosure."},
      {"ground fault",
       "Use ground-fault protection (GFCI, RCD) and a sound earth; test it before each use. If it "
       "trips, stop and find out why."},
      {"element",
       "Keep the element covered with liquid whenever it is on; dry, it burns out in seconds."},
      {"steam",
       "Never close, clamp or block a vessel that is being heated, and never shut the lid on a "
       "boil."},
      {"boil-over", "Stay with the kettle: foam rises fast when the boil begins."},
      {"scald", "Hot wort and steam burn skin in a second. Keep children and pets away."}};
  if (leftAlone || std::holds_alternative<physics::UnpluggedMash>(plan.batch.mash)) {
    // Hot-holding limit of food service, 135 F (FDA Food Code 3-501.16).
    const std::string limit =
        format(physics::celsius(57.0), units, {.significantDigits = 2, .decimals = {}});
    all.push_back({"left warm", "Wort left below about " + limit +
                                    " for hours can sour and grow bacteria. Boil it promptly "
                                    "afterwards, or do not leave it that long."});
  }
  return all;
}

}  // namespace rigs
