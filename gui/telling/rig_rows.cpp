// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/rig_rows.hpp"

#include <array>
#include <utility>

#include "gui/telling/rinse.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::Ledger;
using physics::Path;
using physics::StageKind;
using rigs::Told;

std::optional<rigs::Money> moneyOf(const std::optional<double>& sum, const rigs::Tariff& tariff) {
  return sum ? std::optional(rigs::Money{*sum, tariff.currency}) : std::nullopt;
}

// A day that stops before a stage begins, or before its end, never had that wort.
bool begins(const physics::BrewDay& day, StageKind kind) { return day.find(kind) != nullptr; }

template <class Figure>
Cell cellIf(bool there, const Figure& figure) {
  return there ? cellOf(figure) : std::nullopt;
}
Cell gravityIf(bool there, double gravity) {
  return numberCell(there ? std::optional(gravity) : std::nullopt, 3);
}

// A figure by volume is the JSON's where the reader counts in its litres.
std::string ofLitres(const Case& of, std::string result) {
  return of.reader.units.isMetric(rigs::QuantityKind::Volume) ? std::move(result) : std::string();
}

struct LossRow {
  Path path;
  const char* result;
};
constexpr std::array kLosses{LossRow{Path::Side, "lost/side"},
                             LossRow{Path::DryWall, "lost/dry_wall"},
                             LossRow{Path::Base, "lost/base"},
                             LossRow{Path::Lid, "lost/lid"},
                             LossRow{Path::SurfaceConvection, "lost/surface_convection"},
                             LossRow{Path::SurfaceRadiation, "lost/surface_radiation"},
                             LossRow{Path::Hose, "lost/hose"}};

}  // namespace

std::function<Cell(std::size_t)> beginsCell(const Case& of) {
  return [&of](std::size_t i) -> Cell {
    if (!of.rig(i).begins) return std::nullopt;
    return of.clockAt(i, physics::seconds(0.0));
  };
}

physics::Energy withoutRounding(physics::Energy energy) {
  return abs(energy) < physics::joules(1e-6) ? physics::joules(0.0) : energy;
}

std::optional<physics::Time> wholeDay(const physics::BrewDay& day) {
  if (!day.finished() || day.stages.empty()) return std::nullopt;
  return day.duration();
}

void addSecondCircuit(RigTable& table, const Case& of) {
  using physics::Feed;
  const auto ofSecond = [&of](const auto& figure) {
    return [&of, figure](std::size_t i) {
      const std::optional<Feed>& second = of.planned(i).rig.second;
      return second ? cellOf(figure(*second)) : std::nullopt;
    };
  };
  bool any = false;
  for (std::size_t i = 0; i < of.count(); ++i) any = any || of.planned(i).rig.second;
  if (!any) return;
  table.row(Told(TOLD("Answer", "second element, rated")),
            ofSecond([](const Feed& feed) { return feed.element.rating; }),
            {.result = "/second_element/rating_W"});
  table.row(Told(TOLD("Answer", "its circuit")),
            ofSecond([](const Feed& feed) { return feed.supply.rating; }),
            {.result = "/second_supply/rating_A"});
  table.row(Told(TOLD("Answer", "its current")), ofSecond([](const Feed& feed) {
              return physics::electricalLoad(feed.element, feed.supply).current;
            }));
}

void addElementRows(RigTable& table, const Case& of, Rows rows) {
  table.heading(Told(TOLD("Answer", "Element")));
  table.row(Told(TOLD("Answer", "element rated")),
            [&](std::size_t i) { return of.planned(i).rig.element.rating; },
            {.result = "/element/rating_W"});
  table.row(Told(TOLD("Answer", "rated at")),
            [&](std::size_t i) { return of.planned(i).rig.element.ratedAt; },
            {.decimals = 0, .result = "/element/rated_at_V"});
  table.row(Told(TOLD("Answer", "supply")),
            [&](std::size_t i) { return of.planned(i).rig.supply.nominal; },
            {.decimals = 0, .result = "/supply/nominal_V"});
  if (rows == Rows::All) {
    table.row(Told(TOLD("Answer", "current")),
              [&](std::size_t i) { return of.rig(i).day.electrical.current; },
              {.result = "/day/electrical/current_A"});
    table.row(Told(TOLD("Answer", "circuit")),
              [&](std::size_t i) { return of.planned(i).rig.supply.rating; },
              {.result = "/supply/rating_A"});
  }
  addSecondCircuit(table, of);
  table.row(Told(TOLD("Answer", "reaches the vessel")),
            [&](std::size_t i) { return of.rig(i).day.electrical.delivered; },
            {.result = "/day/electrical/delivered_W"});
  // The search pours the water that its own power needs, so that it is one number everywhere.
  const bool searched = of.count() > 0 && of.rig(0).sizing;
  table.row(Told(TOLD("Answer", "least to boil")),
            [&](std::size_t i) {
              const rigs::RigAnswer& rig = of.rig(i);
              return rig.sizing ? rig.sizing->toBoilAtAll.power : rig.day.leastToBoil;
            },
            {.result = searched ? "/sizing/to_boil_at_all/power_W" : "/day/least_to_boil_W"});
}

void addTimeRows(RigTable& table, const Case& of, Rows rows) {
  const auto took = [&of](StageKind kind) {
    return
        [&of, kind](std::size_t i) { return hoursAndMinutes(rigs::timeOf(of.rig(i).day, kind)); };
  };
  table.heading(Told(TOLD("Answer", "Time")));
  table.row(Told(TOLD("Answer", "to strike")), took(StageKind::Strike),
            {.result = "/day/to_strike_s"});
  table.row(Told(TOLD("Answer", "heating before the boil")), took(StageKind::HeatingToBoil),
            {.result = "/day/heating_to_boil_s"});
  table.row(Told(TOLD("Answer", "whole day")),
            [&](std::size_t i) { return hoursAndMinutes(wholeDay(of.rig(i).day)); },
            {.result = "/day/duration_s"});
  if (rows != Rows::All) return;
  const auto start = of.plan.start();
  if (!start) table.row(Told(TOLD("Answer", "begins at")), beginsCell(of));
  table.row(start ? Told(TOLD("Answer", "over at, begun %1"), rigs::Clock{*start})
                  : Told(TOLD("Answer", "over at")),
            [&](std::size_t i) {
              const auto whole = wholeDay(of.rig(i).day);
              return whole ? Cell(of.clockAt(i, *whole)) : std::nullopt;
            });
}

void addWortRows(RigTable& table, const Case& of, Rows rows) {
  table.heading(Told(TOLD("Answer", "Wort, volumes at %1"), rigs::amount(physics::celsius(20.0))));
  table.row(Told(TOLD("Answer", "water poured")),
            [&](std::size_t i) { return of.rig(i).day.water; }, {.result = "/day/water_L"});
  if (rows == Rows::All)
    table.row(Told(TOLD("Answer", "when the grain is lifted")),
              [&](std::size_t i) {
                const physics::BrewDay& day = of.rig(i).day;
                return cellIf(
                    begins(day, StageKind::HeatingToBoil) || begins(day, StageKind::Draining),
                    day.liftedCold);
              },
              {.result = "/day/lifted_cold_L"});
  if (rows == Rows::All) addRinseRows(table, of);
  table.row(Told(TOLD("Answer", "before the boil")),
            [&](std::size_t i) {
              const physics::BrewDay& day = of.rig(i).day;
              return cellIf(begins(day, StageKind::Boil), day.preBoilCold);
            },
            {.result = "/day/pre_boil_cold_L"});
  table.row(Told(TOLD("Answer", "in the end")),
            [&](std::size_t i) {
              const physics::BrewDay& day = of.rig(i).day;
              return cellIf(day.finished(), day.resultCold);
            },
            {.result = "/day/result_cold_L"});
  if (rows != Rows::All) return;
  table.row(Told(TOLD("Answer", "gravity before the boil")),
            [&](std::size_t i) {
              const physics::BrewDay& day = of.rig(i).day;
              return gravityIf(begins(day, StageKind::Boil), day.preBoilGravity);
            },
            {.result = "/day/pre_boil_gravity"});
  table.row(Told(TOLD("Answer", "gravity in the end")),
            [&](std::size_t i) {
              const physics::BrewDay& day = of.rig(i).day;
              return gravityIf(day.finished(), day.resultGravity);
            },
            {.result = "/day/result_gravity"});
}

Cell vigourCell(const Case& of, std::size_t i) {
  const physics::BrewDay& day = of.rig(i).day;
  if (!day.boil && day.finished()) return std::nullopt;
  const Told word = day.outcome == physics::Outcome::Done
                        ? telling::vigourWord(rigs::vigourOf(*day.boil))
                        : outcomeWord(day.outcome);
  return of.rig(i).edge ? Cell(Told(TOLD("Answer", "%1, on the edge"), word)) : Cell(word);
}

void addBoilRows(RigTable& table, const Case& of, Rows rows) {
  using physics::BoilFigures;
  const auto ofBoil = [&of](const auto& figure) {
    return [&of, figure](std::size_t i) {
      const std::optional<BoilFigures>& boil = of.rig(i).day.boil;
      return boil ? cellOf(figure(*boil)) : std::nullopt;
    };
  };
  table.heading(Told(TOLD("Answer", "Boil")));
  if (rows == Rows::All)
    table.row(Told(TOLD("Answer", "vigour")), [&](std::size_t i) { return vigourCell(of, i); },
              {.result = "/day/boil/vigour"});
  table.row(Told(TOLD("Answer", "boil-off")),
            ofBoil([](const BoilFigures& b) { return rigs::boilOffRate(b); }),
            {.result = "/day/boil/share_of_pre_boil_per_h"});
  if (rows != Rows::All) return;
  table.row(Told(TOLD("Answer", "boil-off by volume, cold")),
            ofBoil([](const BoilFigures& b) { return b.coldBoilOff; }),
            {.decimals = of.reader.units.isMetric(rigs::QuantityKind::Volume) ? 2 : 3,
             .result = "/day/boil/boil_off_cold_L_per_h"});
  table.row(Told(TOLD("Answer", "wort")),
            ofBoil([](const BoilFigures& b) { return b.temperature; }),
            {.result = "/day/boil/temperature_C"});
  table.row(Told(TOLD("Answer", "levels off at")),
            [&](std::size_t i) {
              const auto& level = of.rig(i).day.levelsOff;
              return level ? std::optional(level->at) : std::nullopt;
            },
            {.result = "/day/levels_off/at_C"});
  table.row(Told(TOLD("Answer", "boil-off by weight")),
            ofBoil([](const BoilFigures& b) { return b.evaporation; }),
            {.result = "/day/boil/evaporation_kg_per_h"});
  table.row(Told(TOLD("Answer", "net heat into the boil")),
            ofBoil([](const BoilFigures& b) { return b.net; }), {.result = "/day/boil/net_W"});
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, of.reader.units);
  table.row(Told(TOLD("Answer", "net heat by volume")),
            [&](std::size_t i) {
              const auto net = rigs::netPer(of.rig(i).day, one);
              return numberCell(net ? std::optional(physics::inWatts(*net)) : std::nullopt, 0);
            },
            {.unit = "W/" + of.unit<physics::Volume>(),
             .result = ofLitres(of, "/day/boil/net_per_litre_W")});
}

void addCostRows(RigTable& table, const Case& of, Rows rows) {
  const rigs::Tariff& tariff = of.plan.tariff;
  table.heading(Told(TOLD("Answer", "From the wall")));
  table.row(Told(TOLD("Answer", "whole day")),
            [&](std::size_t i) { return of.rig(i).day.total.fromWall(); },
            {.result = "/day/total/from_wall_kWh"});
  table.row(Told(TOLD("Answer", "cost")),
            [&](std::size_t i) { return moneyOf(of.rig(i).cost, tariff); }, {.result = "/cost"});
  if (rows != Rows::All) return;
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, of.reader.units);
  table.row(Told(TOLD("Answer", "cost of the wort")),
            [&](std::size_t i) { return numberCell(rigs::costPer(of.rig(i), one), 3); },
            {.unit = tariff.currency + '/' + of.unit<physics::Volume>(),
             .result = ofLitres(of, "/cost_per_L")});
}

void addEnergyRow(RigTable& table, const Case& of, Told label,
                  const std::function<physics::Energy(const Ledger&)>& energy,
                  const std::string& result) {
  const auto ofDay = [&](std::size_t i) { return withoutRounding(energy(of.rig(i).day.total)); };
  bool any = false;
  for (std::size_t i = 0; i < of.count(); ++i) any = any || ofDay(i) != physics::joules(0.0);
  if (any) table.row(std::move(label), ofDay, {.result = "/day/total/" + result + "_kWh"});
}

void addLedgerRows(RigTable& table, const Case& of) {
  const auto energy = [&](Told label, const std::function<physics::Energy(const Ledger&)>& ofDay,
                          const std::string& result) {
    addEnergyRow(table, of, std::move(label), ofDay, result);
  };
  table.heading(Told(TOLD("Answer", "Where the heat is in the end")));
  energy(
      Told(TOLD("Answer", "in the wort")), [](const Ledger& l) { return l.wort; }, "in_wort");
  energy(
      Told(TOLD("Answer", "in the grain")), [](const Ledger& l) { return l.grain; }, "in_grain");
  energy(
      Told(TOLD("Answer", "in the vessel")), [](const Ledger& l) { return l.vessel; }, "in_vessel");
  energy(
      Told(TOLD("Answer", "lifted out with the grain")), [](const Ledger& l) { return l.lifted; },
      "lifted_with_grain");
  energy(
      Told(TOLD("Answer", "steam, evaporation")),
      [](const Ledger& l) { return l.lost[Path::Evaporation]; }, "lost/evaporation");
  energy(
      Told(TOLD("Answer", "steam, its own heat")), [](const Ledger& l) { return l.steam; },
      "steam_own_heat");
  for (const LossRow& loss : kLosses) {
    energy(
        Told(TOLD("Answer", "lost: %1"), pathName(loss.path)),
        [path = loss.path](const Ledger& l) { return l.lost[path]; }, loss.result);
  }
  energy(
      Told(TOLD("Answer", "in the cable")), [](const Ledger& l) { return l.cable; }, "cable");
  table.row(Told(TOLD("Answer", "unaccounted for, share")),
            [&](std::size_t i) { return rigs::Gap{of.rig(i).day.total.imbalance()}; },
            {.result = "/day/total/imbalance_share"});
}

}  // namespace gui::telling
