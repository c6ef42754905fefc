// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? Its figures.
#include <algorithm>
#include <string>

#include "gui/telling/element.hpp"
#include "gui/telling/element_skin.hpp"
#include "gui/telling/rig_rows.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::PowerAnswer;
using rigs::amount;
using rigs::asChosen;
using rigs::SizingAnswer;
using rigs::Template;
using rigs::Told;

Told wishLabel(const Case& of, PowerAnswer SizingAnswer::*wish) {
  const rigs::Goals& goals = of.plan.goals;
  if (wish == &SizingAnswer::toBoilAtAll) return Told(TOLD("Answer", "to boil at all"));
  if (wish == &SizingAnswer::forBoilOff)
    return Told(TOLD("Answer", "to boil off %1"), amount(rigs::perHour(goals.boilOffPerHour)));
  const auto within = asChosen(goals.boilWithin);
  if (wish == &SizingAnswer::toStrikeWithin)
    return Told(TOLD("Answer", "to strike within %1"), within);
  return Told(of.plan.batch.mashes() ? Template<1>(TOLD("Answer", "from mash to boil within %1"))
                                     : Template<1>(TOLD("Answer", "to be at the boil within %1")),
              within);
}

// A figure of the sizing, for rigs that have one.
template <class Figure>
auto ofSizing(const Case& of, const Figure& figure) {
  return [&of, figure](std::size_t i) -> Cell {
    return of.rig(i).sizing ? cellOf(figure(*of.rig(i).sizing)) : std::nullopt;
  };
}

Cell carriesCell(const Case& of, std::size_t i, const PowerAnswer& wanted) {
  if (!wanted.power) {
    if (wanted.stoppedBy == physics::Limit::None) return std::nullopt;  // nothing was asked
    return Told(TOLD("Answer", "no power does"));
  }
  switch (rigs::carries(of.plan, of.planned(i), wanted)) {
    case rigs::Carries::Yes:
      return Told(TOLD("Answer", "yes"));
    case rigs::Carries::ForShortUseOnly:
      return Told(TOLD("Answer", "short use"));
    case rigs::Carries::No:
      return Told(TOLD("Answer", "no"));
  }
  return std::nullopt;
}

void addNow(RigTable& t, const Case& of) {
  t.heading(Told(TOLD("Answer", "Now")));
  const auto planned = [&](auto figure) {
    return [&of, figure](std::size_t i) { return figure(of.planned(i).rig); };
  };
  const auto load = [&](auto figure) {
    return [&of, figure](std::size_t i) { return figure(of.rig(i).day.electrical); };
  };
  using physics::ElectricalLoad;
  using physics::Rig;
  t.row(Told(TOLD("Answer", "element rated")),
        planned([](const Rig& rig) { return rig.element.rating; }),
        {.result = "/element/rating_W"});
  t.row(Told(TOLD("Answer", "rated at")),
        planned([](const Rig& rig) { return rig.element.ratedAt; }),
        {.decimals = 0, .result = "/element/rated_at_V"});
  t.row(Told(TOLD("Answer", "resistance")),
        planned([](const Rig& rig) { return physics::resistance(rig.element); }),
        {.result = "/element/resistance_ohm"});
  t.row(Told(TOLD("Answer", "supply")), planned([](const Rig& rig) { return rig.supply.nominal; }),
        {.decimals = 0, .result = "/supply/nominal_V"});
  t.row(Told(TOLD("Answer", "circuit")), planned([](const Rig& rig) { return rig.supply.rating; }),
        {.result = "/supply/rating_A"});
  t.row(Told(TOLD("Answer", "current")), load([](const ElectricalLoad& at) { return at.current; }),
        {.result = "/day/electrical/current_A"});
  addSecondCircuit(t, of);
  t.row(Told(TOLD("Answer", "at the element's terminals")),
        load([](const ElectricalLoad& at) { return at.atTerminals; }),
        {.result = "/day/electrical/at_terminals_V"});
  t.row(Told(TOLD("Answer", "reaches the vessel")),
        load([](const ElectricalLoad& at) { return at.delivered; }),
        {.result = "/day/electrical/delivered_W"});
  t.row(Told(TOLD("Answer", "lost in the cable")),
        load([](const ElectricalLoad& at) { return at.inCable; }),
        {.result = "/day/electrical/in_cable_W"});
  t.row(Told(TOLD("Answer", "heating before the boil")), [&](std::size_t i) {
    return hoursAndMinutes(rigs::timeOf(of.rig(i).day, physics::StageKind::HeatingToBoil));
  });
  t.row(Told(TOLD("Answer", "and then")),
        [&](std::size_t i) { return outcomeWord(of.rig(i).day.outcome); },
        {.result = "/day/outcome"});
}

void addWishes(RigTable& t, const Case& of) {
  struct Place {
    PowerAnswer SizingAnswer::*wish;
    std::string inResult;
  };
  const std::vector<Place> all{{&SizingAnswer::toBoilAtAll, "/sizing/to_boil_at_all"},
                               {&SizingAnswer::toStrikeWithin, "/sizing/to_strike_within"},
                               {&SizingAnswer::toBoilWithin, "/sizing/to_boil_within"},
                               {&SizingAnswer::forBoilOff, "/sizing/for_boil_off"}};
  t.heading(Told(TOLD("Answer", "Heat needed into the vessel")));
  for (const Place& one : all) {
    t.row(wishLabel(of, one.wish),
          ofSizing(of, [&](const SizingAnswer& s) { return (s.*one.wish).power; }),
          {.result = one.inResult + "/power_W"});
  }
  t.heading(Told(TOLD("Answer", "Element needed, rated at the supply")));
  for (const Place& one : all) {
    t.row(wishLabel(of, one.wish), [&](std::size_t i) -> Cell {
      if (!of.rig(i).sizing) return std::nullopt;
      const auto element = rigs::elementFor(of.planned(i).rig, (*of.rig(i).sizing).*one.wish);
      return element ? cellOf(element->rating) : std::nullopt;
    });
  }
  t.heading(Told(TOLD("Answer", "The circuit carries that")));
  for (const Place& one : all) {
    t.row(wishLabel(of, one.wish),
          [&](std::size_t i) {
            return of.rig(i).sizing ? carriesCell(of, i, (*of.rig(i).sizing).*one.wish)
                                    : std::nullopt;
          },
          {.result = one.inResult + "/circuit_carries_it"});
  }
}

// The point of the curve with the largest element that the circuit carries.
const rigs::PowerPoint* atMost(const Case& of, std::size_t i) {
  const rigs::RigSweeps* sweeps = of.sweeps(i);
  if (!sweeps) return nullptr;
  const physics::Power most = mostOnCircuit(of, i);
  const auto found =
      std::find_if(sweeps->power.begin(), sweeps->power.end(),
                   [&](const rigs::PowerPoint& point) { return point.element == most; });
  return found == sweeps->power.end() || !found->boilOffPerHour ? nullptr : &*found;
}

void addMostOnCircuit(RigTable& t, const Case& of) {
  t.heading(Told(TOLD("Answer", "Most its circuit carries")));
  t.row(Told(TOLD("Answer", "heat into the vessel")),
        ofSizing(of, [](const SizingAnswer& s) { return s.mostOnCircuit; }),
        {.result = "/sizing/most_on_circuit_W"});
  t.row(Told(TOLD("Answer", "element rated at the supply")),
        [&](std::size_t i) { return mostOnCircuit(of, i); });
  t.row(Told(TOLD("Answer", "the same, rated as its own is")), [&](std::size_t i) {
    const physics::Rig& rig = of.planned(i).rig;
    return rigs::ratingAt(physics::largestElementOn(rig.supply, rig.element.topHeight),
                          rig.element.ratedAt);
  });
  t.row(Told(TOLD("Answer", "from mash to boil with that")), [&](std::size_t i) {
    const rigs::PowerPoint* point = atMost(of, i);
    return point ? hoursAndMinutes(point->toBoil) : std::nullopt;
  });
  t.row(Told(TOLD("Answer", "for three hours or longer, rated at the supply")), [&](std::size_t i) {
    physics::Supply supply = of.planned(i).rig.supply;
    supply.rating =
        rigs::longUseCurrent(of.plan, of.planned(i)) - rigs::alongside(of.planned(i), 0);
    if (supply.rating <= physics::amperes(0.0)) return physics::watts(0.0);
    return physics::largestElementOn(supply, of.planned(i).rig.element.topHeight).rating;
  });
}

void addLargestBatches(RigTable& t, const Case& of) {
  const auto stopped = [](const physics::BatchAnswer& batch) -> Cell {
    if (batch.stoppedBy == physics::Limit::None) return std::nullopt;
    return limitWord(batch.stoppedBy);
  };
  t.heading(Told(TOLD("Answer", "Largest batch, %1 and %2 of the vessel free"),
                 amount(rigs::perHour(of.plan.goals.boilOffPerHour)),
                 amount(of.plan.goals.headspace)));
  t.row(Told(TOLD("Answer", "with this element")),
        ofSizing(of, [](const SizingAnswer& s) { return s.largest.wort; }),
        {.result = "/sizing/largest_batch/wort_L"});
  t.row(Told(TOLD("Answer", "stopped by")),
        ofSizing(of, [&](const SizingAnswer& s) { return stopped(s.largest); }),
        {.result = "/sizing/largest_batch/stopped_by"});
  t.row(Told(TOLD("Answer", "with the circuit's strongest element")),
        ofSizing(of, [](const SizingAnswer& s) { return s.largestOnCircuit.wort; }),
        {.result = "/sizing/largest_batch_on_circuit/wort_L"});
  t.row(Told(TOLD("Answer", "that one stopped by")),
        ofSizing(of, [&](const SizingAnswer& s) { return stopped(s.largestOnCircuit); }),
        {.result = "/sizing/largest_batch_on_circuit/stopped_by"});
}

}  // namespace

Table elementTable(const Case& of) {
  RigTable t("size", of);
  addNow(t, of);
  addSkins(t, of);
  addWishes(t, of);
  addMostOnCircuit(t, of);
  addLargestBatches(t, of);
  return t.take();
}

}  // namespace gui::telling
