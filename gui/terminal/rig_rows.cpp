// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/rig_rows.hpp"

#include <fmt/format.h>

namespace gui {
namespace {

using physics::Path;
using physics::StageKind;
using rigs::RigAnswer;
using rigs::RigPlan;

}  // namespace

std::string gapText(double share) {
  if (share < 1e-9) return "<1e-9";  // below it, digits tell of rounding, not of heat
  return fmt::format("{:.0e}", share);
}

void addSecondCircuit(RigTable& table) {
  const auto ofSecond = [](const auto& of) {
    return [of](const RigPlan& plan, const RigAnswer&) {
      using Q = std::decay_t<decltype(of(*plan.rig.second))>;
      return plan.rig.second ? std::optional<Q>(of(*plan.rig.second)) : std::nullopt;
    };
  };
  using physics::Feed;
  table.quantity("second element, rated",
                 ofSecond([](const Feed& feed) { return feed.element.rating; }));
  table.quantity("its circuit", ofSecond([](const Feed& feed) { return feed.supply.rating; }));
  table.quantity("its current", ofSecond([](const Feed& feed) {
                   return physics::electricalLoad(feed.element, feed.supply).current;
                 }));
}

void addElementRows(RigTable& table, UnitSystem) {
  table.heading("Element");
  table.quantity("rated",
                 [](const RigPlan& plan, const RigAnswer&) { return plan.rig.element.rating; });
  table.quantity(
      "rated at", [](const RigPlan& plan, const RigAnswer&) { return plan.rig.element.ratedAt; },
      0);
  table.quantity(
      "supply", [](const RigPlan& plan, const RigAnswer&) { return plan.rig.supply.nominal; }, 0);
  table.quantity("current",
                 [](const RigPlan&, const RigAnswer& rig) { return rig.day.electrical.current; });
  table.quantity("circuit",
                 [](const RigPlan& plan, const RigAnswer&) { return plan.rig.supply.rating; });
  addSecondCircuit(table);
  table.quantity("reaches the vessel",
                 [](const RigPlan&, const RigAnswer& rig) { return rig.day.electrical.delivered; });
  // The search pours the water that its own power needs, so that it is one number everywhere.
  table.quantity("least to boil", [](const RigPlan&, const RigAnswer& rig) {
    return rig.sizing ? rig.sizing->toBoilAtAll.power : rig.day.leastToBoil;
  });
}

void addTimeRows(RigTable& table, const rigs::Plan& plan) {
  table.heading("Time");
  table.time("to strike", [](const RigPlan&, const RigAnswer& rig) {
    return rigs::timeOf(rig.day, StageKind::Strike);
  });
  table.time("heating to the boil", [](const RigPlan&, const RigAnswer& rig) {
    return rigs::timeOf(rig.day, StageKind::HeatingToBoil);
  });
  table.quantity("a jacket saves to strike", [](const RigPlan&, const RigAnswer& rig) {
    return rig.jacket ? rig.jacket->savedToStrike : std::nullopt;
  });
  table.quantity("a jacket saves to the boil", [](const RigPlan&, const RigAnswer& rig) {
    return rig.jacket ? rig.jacket->savedToBoil : std::nullopt;
  });
  table.time("whole day", [](const RigPlan&, const RigAnswer& rig) {
    return std::optional(rig.day.duration());
  });
  table.words(fmt::format("over at, begun {}", clockTime(plan.startOfDay)),
              [&](const RigPlan&, const RigAnswer& rig) {
                return clockTime(plan.startOfDay + rig.day.duration());
              });
}

void addWortRows(RigTable& table, UnitSystem units) {
  table.heading("Wort, volumes at " + rigs::format(physics::celsius(20.0), units));
  table.quantity("water poured",
                 [](const RigPlan&, const RigAnswer& rig) { return rig.day.water; });
  table.quantity("before the boil",
                 [](const RigPlan&, const RigAnswer& rig) { return rig.day.preBoilCold; });
  table.quantity("in the end",
                 [](const RigPlan&, const RigAnswer& rig) { return rig.day.resultCold; });
  table.number("gravity before", "", 3, [](const RigPlan&, const RigAnswer& rig) {
    return std::optional(rig.day.preBoilGravity);
  });
  table.number("gravity in the end", "", 3, [](const RigPlan&, const RigAnswer& rig) {
    return std::optional(rig.day.resultGravity);
  });
}

void addBoilRows(RigTable& table, UnitSystem units) {
  const auto ofBoil = [](const auto& of) {
    return [of](const RigPlan&, const RigAnswer& rig) {
      using Q = std::decay_t<decltype(of(*rig.day.boil))>;
      return rig.day.boil ? std::optional<Q>(of(*rig.day.boil)) : std::nullopt;
    };
  };
  table.heading("Boil");
  table.words("vigour", [](const RigPlan&, const RigAnswer& rig) {
    if (!rig.day.boil) return outcomeWord(rig.day.outcome);
    return std::string(rigs::vigourWord(rigs::vigourOf(*rig.day.boil)));
  });
  table.quantity("wort", ofBoil([](const auto& b) { return b.temperature; }));
  table.quantity("levels off at", [](const RigPlan&, const RigAnswer& rig) {
    return rig.day.levelsOff ? std::optional(rig.day.levelsOff->at) : std::nullopt;
  });
  table.quantity("boil-off", ofBoil([](const auto& b) { return rigs::boilOffRate(b); }));
  table.quantity("by volume, cold", ofBoil([](const auto& b) { return b.coldBoilOff; }),
                 units == UnitSystem::SI ? 2 : 3);
  table.quantity("by weight", ofBoil([](const auto& b) { return b.evaporation; }));
  table.quantity("net heat", ofBoil([](const auto& b) { return b.net; }));
  const physics::Volume one = rigs::fromNumberIn<physics::Volume>(1.0, units);
  table.number("net heat by volume", fmt::format("W/{}", rigs::unitLabel<physics::Volume>(units)),
               0, [&](const RigPlan&, const RigAnswer& rig) {
                 const auto net = rigs::netPer(rig.day, one);
                 return net ? std::optional(physics::inWatts(*net)) : std::nullopt;
               });
}

void addCostRows(RigTable& table, const rigs::Plan& plan, UnitSystem units) {
  table.heading("From the wall");
  table.quantity("whole day",
                 [](const RigPlan&, const RigAnswer& rig) { return rig.day.total.fromWall(); });
  const std::string& currency = plan.tariff.currency;
  const auto label = rigs::unitLabel<physics::Volume>(units);
  table.number("cost", currency, 2, [](const RigPlan&, const RigAnswer& rig) { return rig.cost; });
  const physics::Volume one = rigs::fromNumberIn<physics::Volume>(1.0, units);
  table.number("cost of the wort", fmt::format("{}/{}", currency, label), 3,
               [&](const RigPlan&, const RigAnswer& rig) { return rigs::costPer(rig, one); });
}

void addLedgerRows(RigTable& table) {
  const auto total = [](const auto& of) {
    return [of](const RigPlan&, const RigAnswer& rig) { return of(rig.day.total); };
  };
  table.heading("Where the heat is in the end");
  table.quantity("in the wort", total([](const auto& l) { return l.wort; }));
  table.quantity("in the vessel", total([](const auto& l) { return l.vessel; }));
  table.quantity("lifted out with the grain", total([](const auto& l) { return l.lifted; }));
  table.quantity("steam, evaporation",
                 total([](const auto& l) { return l.lost[Path::Evaporation]; }));
  table.quantity("steam, its own heat", total([](const auto& l) { return l.steam; }));
  for (const Path path : {Path::Side, Path::DryWall, Path::Base, Path::Lid, Path::SurfaceConvection,
                          Path::SurfaceRadiation, Path::Hose}) {
    table.quantity("lost: " + pathName(path),
                   total([path](const auto& l) { return l.lost[path]; }));
  }
  table.quantity("in the cable", total([](const auto& l) { return l.cable; }));
  table.words("unaccounted for, share",
              total([](const auto& l) { return gapText(l.imbalance()); }));
}

}  // namespace gui
