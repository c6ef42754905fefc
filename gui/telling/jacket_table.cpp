// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? Its figures: what the rig is as planned, and what it is only supposed to
// be, each in rows of its own.
#include <string>
#include <utility>

#include "gui/telling/jacket.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/sweeps.hpp"

namespace gui::telling {
namespace {

using physics::JacketEffect;
using physics::StageKind;
using rigs::Told;

// A figure of the comparison, for rigs that have one.
template <class Figure>
auto ofJacket(const Case& of, const Figure& figure) {
  return [&of, figure](std::size_t i) -> Cell {
    return of.rig(i).jacket ? cellOf(figure(*of.rig(i).jacket)) : std::nullopt;
  };
}

// Where the result has both sides.
struct Sides {
  std::string bare = {}, jacketed = {};
};

// The rig as planned, then what is only supposed. `figure` takes a rig that has a comparison, and
// whether its jacketed side is asked for.
template <class Figure>
void addSidesOf(RigTable& t, const Case& of, const Figure& figure, const Sides& result = {},
                const std::string& unit = {}) {
  const auto side = [&of, &figure](std::size_t i, bool jacketed) -> Cell {
    return of.rig(i).jacket ? cellOf(figure(i, jacketed)) : std::nullopt;
  };
  t.row(Told(TOLD("Answer", "as it is")),
        [&](std::size_t i) { return side(i, of.planned(i).hasJacket); }, {.unit = unit});
  t.row(ifJacketed(of),
        [&](std::size_t i) { return of.planned(i).hasJacket ? std::nullopt : side(i, true); },
        {.unit = unit, .result = result.jacketed});
  t.row(ifBare(),
        [&](std::size_t i) { return of.planned(i).hasJacket ? side(i, false) : std::nullopt; },
        {.unit = unit, .result = result.bare});
}
// The same; `figure` takes the comparison itself.
template <class Figure>
void addSides(RigTable& t, const Case& of, const Figure& figure, const Sides& result = {}) {
  addSidesOf(
      t, of,
      [&of, &figure](std::size_t i, bool jacketed) { return figure(*of.rig(i).jacket, jacketed); },
      result);
}

const physics::BrewDay& dayOf(const JacketEffect& effect, bool jacketed) {
  return jacketed ? effect.jacketed : effect.bare;
}

Told saved() { return Told(TOLD("Answer", "a jacket saves")); }

void addTimes(RigTable& t, const Case& of, StageKind kind,
              std::optional<physics::Time> JacketEffect::*difference, const std::string& result) {
  addSides(t, of, [=](const JacketEffect& e, bool jacketed) {
    const physics::BrewDay& day = dayOf(e, jacketed);
    return hoursAndMinutes(kind == StageKind::HeatingToBoil ? rigs::timeToBoil(day)
                                                            : rigs::timeOf(day, kind));
  });
  t.row(saved(), ofJacket(of, [=](const JacketEffect& e) { return e.*difference; }),
        {.result = result});
}

void addLosses(RigTable& t, const Case& of, physics::LossPair JacketEffect::*pair,
               const std::string& result) {
  t.row(Told(TOLD("Answer", "wort")),
        ofJacket(of, [=](const JacketEffect& e) { return (e.*pair).at; }),
        {.result = result + "/at_C"});
  addSides(t, of,
           [=](const JacketEffect& e, bool jacketed) {
             return jacketed ? (e.*pair).jacketed : (e.*pair).bare;
           },
           {.bare = result + "/bare_W", .jacketed = result + "/jacketed_W"});
  t.row(saved(), ofJacket(of, [=](const JacketEffect& e) { return (e.*pair).saved(); }),
        {.result = result + "/saved_W"});
  t.row(Told(TOLD("Answer", "saved of the side's own loss")),
        ofJacket(of,
                 [=](const JacketEffect& e) -> std::optional<double> {
                   const physics::LossPair& losses = e.*pair;
                   if (!(losses.bareSide > physics::watts(0.0))) return std::nullopt;
                   return losses.sideShareSaved();
                 }),
        {.decimals = 0, .result = result + "/share_of_side_saved"});
}

void addBoilOff(RigTable& t, const Case& of) {
  t.heading(Told(TOLD("Answer", "Boil-off")));
  addSides(t, of,
           [](const JacketEffect& e, bool jacketed) {
             const auto& boil = dayOf(e, jacketed).boil;
             return boil ? std::optional(rigs::boilOffRate(*boil)) : std::nullopt;
           },
           {.bare = "/jacket/bare/boil/share_of_pre_boil_per_h",
            .jacketed = "/jacket/jacketed/boil/share_of_pre_boil_per_h"});
}

void addEnergy(RigTable& t, const Case& of) {
  t.heading(Told(TOLD("Answer", "From the wall, whole day")));
  addSides(t, of,
           [](const JacketEffect& e, bool jacketed) { return dayOf(e, jacketed).total.fromWall(); },
           {.bare = "/jacket/bare/total/from_wall_kWh",
            .jacketed = "/jacket/jacketed/total/from_wall_kWh"});
  t.row(saved(), ofJacket(of, [](const JacketEffect& e) { return e.savedFromWall; }),
        {.decimals = 3, .result = "/jacket/saved_from_wall_kWh"});
}

void addCosts(RigTable& t, const Case& of) {
  const std::string& currency = of.plan.tariff.currency;
  if (currency.empty()) return;
  t.heading(Told(TOLD("Answer", "Cost of a batch")));
  addSidesOf(
      t, of,
      [&of](std::size_t i, bool jacketed) {
        const rigs::JacketDay day =
            rigs::jacketDay(dayOf(*of.rig(i).jacket, jacketed), of.plan.tariff, of.rig(i).begins);
        return numberCell(day.done ? day.cost : std::nullopt, 2);
      },
      {}, currency);
  t.row(saved(),
        [&](std::size_t i) -> Cell {
          const auto& e = of.rig(i).jacket;
          if (!e) return std::nullopt;
          return numberCell(
              rigs::moneySaved(e->bare, e->jacketed, of.plan.tariff, of.rig(i).begins), 3);
        },
        {.unit = currency, .result = "/jacket/saved_cost"});
}

}  // namespace

Table jacketTable(const Case& of) {
  RigTable t("insulate", of);
  t.heading(Told(TOLD("Answer", "To strike")));
  addTimes(t, of, StageKind::Strike, &JacketEffect::savedToStrike, "/jacket/saved_to_strike_s");
  t.heading(Told(TOLD("Answer", "From mash to boil")));
  addTimes(t, of, StageKind::HeatingToBoil, &JacketEffect::savedToBoil, "/jacket/saved_to_boil_s");
  addEnergy(t, of);
  addCosts(t, of);
  t.heading(Told(TOLD("Answer", "Losses at the mash temperature")));
  addLosses(t, of, &JacketEffect::atMash, "/jacket/at_mash");
  t.heading(Told(TOLD("Answer", "Losses at the boil")));
  addLosses(t, of, &JacketEffect::atBoil, "/jacket/at_boil");
  addBoilOff(t, of);
  return t.take();
}

}  // namespace gui::telling
