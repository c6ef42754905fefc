// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? The same rig bare and jacketed, on the same day.
#include <fmt/format.h>

#include <algorithm>

#include "gui/terminal/rig_table.hpp"
#include "gui/terminal/terminal.hpp"

namespace gui {
namespace {

using physics::JacketEffect;
using physics::StageKind;
using rigs::RigAnswer;
using rigs::RigPlan;

// A figure of the comparison, for rigs that have one.
template <class Of>
auto ofJacket(const Of& of) {
  return [of](const RigPlan&, const RigAnswer& rig) {
    using Given = std::decay_t<decltype(of(*rig.jacket))>;
    using Q = typename WithoutOptional<Given>::type;
    return rig.jacket ? std::optional<Q>(of(*rig.jacket)) : std::nullopt;
  };
}

auto boilOff(physics::BrewDay JacketEffect::*which) {
  return [which](const JacketEffect& e) {
    const auto& boil = (e.*which).boil;
    return boil ? std::optional(rigs::boilOffRate(*boil)) : std::nullopt;
  };
}

void addLosses(RigTable& t, const std::string& label, physics::LossPair JacketEffect::*pair) {
  t.heading(label);
  t.quantity("wort", ofJacket([pair](const JacketEffect& e) { return (e.*pair).at; }));
  t.quantity("lost bare", ofJacket([pair](const JacketEffect& e) { return (e.*pair).bare; }));
  t.quantity("lost with jacket",
             ofJacket([pair](const JacketEffect& e) { return (e.*pair).jacketed; }));
  t.quantity("saved", ofJacket([pair](const JacketEffect& e) { return (e.*pair).saved(); }));
  t.quantity("saved of the side's own loss",
             ofJacket([pair](const JacketEffect& e) { return (e.*pair).sideShareSaved(); }), 0);
}

}  // namespace

Page insulatePage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units, true);
  page.heading("Is insulation worth it?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const RigPlan& rig = plan.rigs[i];
    const auto& effect = answers.rigs[i].jacket;
    if (!effect) {
      page.say(letter(i), "No jacket to compare: the plan gives it none.");
      continue;
    }
    page.say(letter(i),
             jacketSavingText(rig, *effect, units) + ' ' + jacketVerdictText(rig, *effect, units));
  }
  const bool any = std::any_of(answers.rigs.begin(), answers.rigs.end(),
                               [](const RigAnswer& rig) { return rig.jacket.has_value(); });
  if (!any) {
    page.say(
        "To compare one, give the plan a jacket, for example "
        "\"jacket_to_compare\": {\"side\": [{\"material\": \"cork\", \"thickness\": \"10 mm\"}]}; "
        "\"heatledger list materials\" shows what it may be made of.");
    return page;
  }
  page.heading("What is compared");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const RigPlan& rig = plan.rigs[i];
    if (!answers.rigs[i].jacket) continue;
    page.say(letter(i), fmt::format("{}: {}.",
                                    rig.hasJacket ? "Bare, and with the jacket it has"
                                                  : "As it is, and with a jacket",
                                    rig.jacket.in(units)));
  }

  RigTable t("insulate", plan, answers, units);
  const auto timeOf = [](physics::BrewDay JacketEffect::*which, StageKind kind) {
    return ofJacket([which, kind](const JacketEffect& e) { return rigs::timeOf(e.*which, kind); });
  };
  t.heading("To strike");
  t.time("bare", timeOf(&JacketEffect::bare, StageKind::Strike));
  t.time("with jacket", timeOf(&JacketEffect::jacketed, StageKind::Strike));
  t.quantity("saved", ofJacket([](const JacketEffect& e) { return e.savedToStrike; }));
  t.heading("From mash to boil");
  t.time("bare", timeOf(&JacketEffect::bare, StageKind::HeatingToBoil));
  t.time("with jacket", timeOf(&JacketEffect::jacketed, StageKind::HeatingToBoil));
  t.quantity("saved", ofJacket([](const JacketEffect& e) { return e.savedToBoil; }));
  addLosses(t, "Losses at the mash temperature", &JacketEffect::atMash);
  addLosses(t, "Losses at the boil", &JacketEffect::atBoil);
  t.heading("Boil-off");
  t.quantity("bare", ofJacket(boilOff(&JacketEffect::bare)));
  t.quantity("with jacket", ofJacket(boilOff(&JacketEffect::jacketed)));
  t.heading("From the wall, whole day");
  t.quantity("bare", ofJacket([](const JacketEffect& e) { return e.bare.total.fromWall(); }));
  t.quantity("with jacket",
             ofJacket([](const JacketEffect& e) { return e.jacketed.total.fromWall(); }));
  t.quantity("saved", ofJacket([](const JacketEffect& e) { return e.savedFromWall; }), 3);
  t.number("saved", plan.tariff.currency, 3, ofJacket([&](const JacketEffect& e) {
             return rigs::moneySaved(e.bare, e.jacketed, plan);
           }));
  t.heading("Unplugged at the mash temperature, after " + roughTime(plan.goals.unplugged));
  t.quantity("bare", ofJacket([](const JacketEffect& e) { return e.bareAfter; }));
  t.quantity("with jacket", ofJacket([](const JacketEffect& e) { return e.jacketedAfter; }));
  page.show(t.take());
  return page;
}

}  // namespace gui
