// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rig_plan.hpp"

#include "rigs/documents/problem_words.hpp"

namespace rigs {

using namespace physics;

bool AsWritten::has(std::string_view place) const {
  const auto found = texts.lower_bound(place);
  if (found == texts.end() || !found->first.starts_with(place)) return false;
  return found->first.size() == place.size() || found->first[place.size()] == '/';
}

std::string_view AsWritten::at(std::string_view place) const {
  const auto found = texts.find(place);
  return found == texts.end() ? std::string_view() : std::string_view(found->second);
}

const CircuitDetails& detailsOf(const RigPlan& rig, std::size_t circuit) {
  static const CircuitDetails kNone;
  return circuit < rig.circuits.size() ? rig.circuits[circuit].details : kNone;
}

std::optional<Problem> overVoltage(const Element& element, const Supply& supply) {
  const double times = static_cast<double>(supply.nominal / element.ratedAt);
  const Amount rated = amount(element.ratedAt);
  const Amount fed = amount(supply.nominal);
  const Number power{times * times};
  if (times > kMostOverRated * (1.0 + 1e-9))
    return Problem{
        Severity::Error, "",
        Told(TOLD("Problem",
                  "an element of %1 on %2 would give %3 times its rated power and surface load. "
                  "Supplies rise to 110 % of their nominal voltage and elements are made for that; "
                  "this is above it all the time. Use one rated for %4"),
             rated, fed, power, fed)};
  if (times > 1.0 + kSameVoltage)
    return Problem{
        Severity::Warning, "",
        advised(Told(TOLD("Problem", "an element of %1 on %2 gives %3 times its rated power"),
                     rated, fed, power),
                Told(TOLD("Problem",
                          "that is within what supplies vary by, and more current than its name "
                          "plate says")))};
  return std::nullopt;
}

}  // namespace rigs
