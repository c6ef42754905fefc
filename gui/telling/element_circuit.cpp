// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? What the circuit says to the one there is, and to the one it would take.
#include <utility>

#include "gui/telling/element.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/nameplate.hpp"
#include "rigs/circuits/rating.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using physics::PowerAnswer;
using rigs::amount;
using rigs::Template;
using rigs::Told;

Told tooMuchText(const rigs::Finding& load, std::size_t circuit, bool ofTwo) {
  const Template<3> text =
      !ofTwo ? Template<3>(TOLD(
                   "Answer", "By its name plate it draws %1: too much for its circuit of %2; %3."))
      : circuit == 0
          ? Template<3>(TOLD("Answer",
                             "By its name plate it draws %1: too much for its first circuit of "
                             "%2; %3."))
          : Template<3>(TOLD("Answer",
                             "By its name plate it draws %1: too much for its second circuit of "
                             "%2; %3."));
  return Told(text, rigs::closely(*load.load), rigs::closely(*load.limit), rigs::deviceText(load));
}

// Neither yes nor no.
Told onTheEdgeText(const rigs::Finding& load, std::size_t circuit, bool ofTwo) {
  const Template<3> text =
      !ofTwo         ? Template<3>(TOLD("Answer",
                                        "By its name plate it draws %1: on the edge of its circuit of %2; "
                                                "%3. Have the current measured, or leave room with less power."))
      : circuit == 0 ? Template<3>(TOLD("Answer",
                                        "By its name plate it draws %1: on the edge of its first "
                                        "circuit of %2; %3. Have the current measured, or leave "
                                        "room with less power."))
                     : Template<3>(TOLD("Answer",
                                        "By its name plate it draws %1: on the edge of its "
                                        "second circuit of %2; %3. Have the current measured, or "
                                        "leave room with less power."));
  return Told(text, rigs::closely(*load.load), rigs::closely(*load.limit), rigs::deviceText(load));
}

Told tooLongText(const Case& of, std::size_t i, std::size_t circuit, const rigs::Finding& load) {
  const auto drawn = amount(*load.load);
  const auto rated = amount(*load.limit);
  const auto granted = amount(rigs::longUseCurrent(of.plan, of.planned(i), circuit));
  if (load.fit != rigs::Fit::Fits)
    return Told(TOLD("Answer", "Rules grant it no more than %1 in long use."), granted);
  return Told(rigs::feedsOf(of.planned(i).rig).size() < 2
                  ? Template<3>(TOLD("Answer",
                                     "By its name plate it draws %1: within its %2 circuit, but "
                                     "more than the %3 that rules grant to long use."))
              : circuit == 0
                  ? Template<3>(TOLD("Answer",
                                     "By its name plate it draws %1: within its first %2 "
                                     "circuit, but more than the %3 that rules grant to long use."))
                  : Template<3>(TOLD("Answer",
                                     "By its name plate it draws %1: within its second %2 "
                                     "circuit, but more than the %3 that rules grant to long "
                                     "use.")),
              drawn, rated, granted);
}

// By its name plate: at the nominal voltage, the cable left out.
Told overloadText(const Case& of, std::size_t i, std::size_t circuit) {
  const rigs::RigPlan& plan = of.planned(i);
  const bool ofTwo = rigs::feedsOf(plan.rig).size() > 1;
  const rigs::Finding load = rigs::nameplate(of.plan, plan, circuit);
  if (load.fit == rigs::Fit::DoesNotFit) return tooMuchText(load, circuit, ofTwo);
  std::vector<Told> all;
  if (load.fit == rigs::Fit::OnTheEdge) all.push_back(onTheEdgeText(load, circuit, ofTwo));
  const physics::Current granted = rigs::longUseCurrent(of.plan, plan, circuit);
  if (!rigs::within(*load.load, granted) && granted < *load.limit)
    all.push_back(tooLongText(of, i, circuit, load));
  return rigs::sentences(std::move(all));
}

}  // namespace

Told circuitText(const Case& of, std::size_t i) {
  std::vector<Told> all;
  for (std::size_t k = 0; k < rigs::feedsOf(of.planned(i).rig).size(); ++k)
    all.push_back(overloadText(of, i, k));
  return rigs::sentences(std::move(all));
}

Told besideCircuit(const Case& of, std::size_t i, Told text) {
  Told circuit = circuitText(of, i);
  if (circuit.empty()) return text;
  return rigs::worstNameplate(of.plan, of.planned(i)) == rigs::Fit::DoesNotFit
             ? rigs::sentences({std::move(circuit), std::move(text)})
             : rigs::sentences({std::move(text), std::move(circuit)});
}

Told carriesText(const Case& of, std::size_t i, const PowerAnswer& wanted) {
  const rigs::RigPlan& plan = of.planned(i);
  const bool two = plan.rig.second.has_value();
  switch (rigs::carries(of.plan, plan, wanted)) {
    case rigs::Carries::Yes:
      if (rigs::longUseCurrent(of.plan, plan) < plan.rig.supply.rating) {
        return two ? Told(TOLD("Answer", "Its circuits carry that, in long use too."))
                   : Told(TOLD("Answer", "Its circuit carries that, in long use too."));
      }
      return two ? Told(TOLD("Answer", "Its circuits carry that."))
                 : Told(TOLD("Answer", "Its circuit carries that."));
    case rigs::Carries::ForShortUseOnly: {
      if (two) return Told(TOLD("Answer", "Its circuits carry that for short use only."));
      const auto element = rigs::elementFor(plan.rig, wanted);
      if (!element) return Told(TOLD("Answer", "Its circuit carries that for short use only."));
      return Told(TOLD("Answer",
                       "Its circuit carries that for short use only: it draws %1, and rules grant "
                       "%2 to long use."),
                  amount(physics::branchCurrent(*element, plan.rig.supply)),
                  amount(rigs::longUseCurrent(of.plan, plan)));
    }
    case rigs::Carries::No:
      return two ? Told(TOLD("Answer", "Its circuits do not carry that."))
                 : Told(TOLD("Answer", "Its circuit does not carry that."));
  }
  return {};
}

}  // namespace gui::telling
