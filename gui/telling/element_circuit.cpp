// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? What the circuit says to the one there is, and to the one it would take.
#include <optional>
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

// A text about a rig's only circuit, its first and its second: whole sentences, which other
// languages inflect.
struct ByCircuit {
  Template<3> only, first, second;

  const Template<3>& of(const physics::Rig& rig, std::size_t circuit) const {
    return !rig.second ? only : circuit == 0 ? first : second;
  }
};

const ByCircuit& tooMuch() {
  static const ByCircuit kTexts{
      TOLD("Answer", "By its name plate it draws %1: too much for its circuit of %2; %3."),
      TOLD("Answer", "By its name plate it draws %1: too much for its first circuit of %2; %3."),
      TOLD("Answer", "By its name plate it draws %1: too much for its second circuit of %2; %3.")};
  return kTexts;
}

// Neither yes nor no.
const ByCircuit& onTheEdge() {
  static const ByCircuit kTexts{
      TOLD("Answer",
           "By its name plate it draws %1: on the edge of its circuit of %2; %3. Have the current "
           "measured, or leave room with less power."),
      TOLD("Answer",
           "By its name plate it draws %1: on the edge of its first circuit of %2; %3. Have the "
           "current measured, or leave room with less power."),
      TOLD("Answer",
           "By its name plate it draws %1: on the edge of its second circuit of %2; %3. Have the "
           "current measured, or leave room with less power.")};
  return kTexts;
}

const ByCircuit& tooLong() {
  static const ByCircuit kTexts{
      TOLD("Answer",
           "By its name plate it draws %1: within its %2 circuit, but more than the %3 that rules "
           "grant to long use."),
      TOLD("Answer",
           "By its name plate it draws %1: within its first %2 circuit, but more than the %3 that "
           "rules grant to long use."),
      TOLD("Answer",
           "By its name plate it draws %1: within its second %2 circuit, but more than the %3 that "
           "rules grant to long use.")};
  return kTexts;
}

// What of a circuit's load is not the rig's own, as far as it is known.
Told besideText(const rigs::RigPlan& rig, std::size_t circuit) {
  const rigs::CircuitDetails& details = rigs::detailsOf(rig, circuit);
  const physics::Current beside = details.beside(rigs::feedsOf(rig.rig).at(circuit).supply.nominal);
  if (beside <= physics::amperes(0.0)) return {};
  const rigs::Amount current = rigs::closely(beside);
  return details.otherLoad
             ? Told(TOLD("Answer", "%1 of that are for what else runs on the circuit."), current)
             : Told(TOLD("Answer", "%1 of that are the rinsing water's heater."), current);
}

// By its name plate: at the nominal voltage, the cable left out.
Told overloadText(const Case& of, std::size_t i, std::size_t circuit) {
  const rigs::RigPlan& plan = of.planned(i);
  const rigs::Finding load = rigs::nameplate(of.plan, plan, circuit);
  const auto against = [&](const ByCircuit& texts) {
    return Told(texts.of(plan.rig, circuit), rigs::closely(*load.load), rigs::closely(*load.limit),
                rigs::deviceText(load));
  };
  if (load.fit == rigs::Fit::DoesNotFit) return against(tooMuch());
  const physics::Current granted = rigs::longUseCurrent(of.plan, plan, circuit);
  Told longUse;
  if (!rigs::within(*load.load, granted) && granted < *load.limit)
    longUse =
        load.fit == rigs::Fit::Fits
            ? Told(tooLong().of(plan.rig, circuit), amount(*load.load), amount(*load.limit),
                   amount(granted))
            : Told(TOLD("Answer", "Rules grant it no more than %1 in long use."), amount(granted));
  if (load.fit != rigs::Fit::OnTheEdge) return longUse;
  return rigs::sentences({against(onTheEdge()), std::move(longUse)});
}

}  // namespace

Told circuitText(const Case& of, std::size_t i) {
  std::vector<Told> all;
  for (std::size_t k = 0; k < rigs::feedsOf(of.planned(i).rig).size(); ++k) {
    Told text = overloadText(of, i, k);
    if (text.empty()) continue;
    all.push_back(std::move(text));
    all.push_back(besideText(of.planned(i), k));
  }
  return rigs::sentences(std::move(all));
}

Told besideCircuit(const Case& of, std::size_t i, Told text) {
  Told circuit = circuitText(of, i);
  if (circuit.empty()) return text;
  return rigs::worstNameplate(of.plan, of.planned(i)) == rigs::Fit::DoesNotFit
             ? rigs::sentences({std::move(circuit), std::move(text)})
             : rigs::sentences({std::move(text), std::move(circuit)});
}

namespace {

Told carriedText(const Case& of, std::size_t i, const PowerAnswer& wanted) {
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

}  // namespace

Told carriesText(const Case& of, std::size_t i, const PowerAnswer& wanted) {
  const rigs::RigPlan& plan = of.planned(i);
  Told text = carriedText(of, i, wanted);
  // Where its power is known it is counted.
  const rigs::CircuitDetails& details = rigs::detailsOf(plan, 0);
  const bool heats = details.heatsRinse && !details.rinseHeater;
  if (!heats || rigs::carries(of.plan, plan, wanted) == rigs::Carries::No) return text;
  return rigs::sentences(
      {std::move(text), Told(TOLD("Answer",
                                  "The rinsing water's heater on the same circuit comes on top of "
                                  "that."))});
}

}  // namespace gui::telling
