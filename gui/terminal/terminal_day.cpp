// SPDX-License-Identifier: GPL-3.0-or-later
// A day stage by stage: when, how warm, how full, and where every kilowatt-hour went.
#include <fmt/format.h>

#include "gui/terminal/rig_rows.hpp"
#include "gui/terminal/terminal.hpp"
#include "rigs/results/cautions.hpp"

namespace gui {
namespace {

using physics::Ledger;
using physics::Path;
using physics::Stage;

// Stages as columns, and the whole day after them where a row adds up.
class StageTable {
 public:
  StageTable(std::string name, const physics::BrewDay& day, UnitSystem units)
      : day_(day), units_(units) {
    table_.name = std::move(name);
    table_.columns = stageNames(day);
    table_.columns.emplace_back("Day");
  }

  void heading(std::string label) { table_.heading(std::move(label)); }
  void clock(std::string label, physics::Time startOfDay, physics::Time Stage::*at) {
    Row row{std::move(label), {}, {}, {}};
    for (const Stage& stage : day_.stages)
      row.cells.push_back({clockTime(startOfDay + stage.*at), {}});
    row.cells.push_back(noFigure());
    table_.rows.push_back(std::move(row));
  }
  void lasted(std::string label) {
    Row row{std::move(label), "min", {}, "h:min"};
    for (const Stage& stage : day_.stages) row.cells.push_back(timeCell(rigs::lasted(stage)));
    row.cells.push_back(timeCell(day_.duration()));
    table_.rows.push_back(std::move(row));
  }
  template <class Of>
  void quantity(std::string label, const Of& of) {
    using Q = typename WithoutOptional<std::decay_t<decltype(of(day_.stages[0]))>>::type;
    Row row{std::move(label), std::string(rigs::unitLabel<Q>(units_)), {}, {}};
    for (const Stage& stage : day_.stages) row.cells.push_back(quantityCell(of(stage), units_));
    row.cells.push_back(noFigure());
    table_.rows.push_back(std::move(row));
  }
  // Left out where neither stage nor day has any: no hose, no cable.
  template <class Of>
  void energy(std::string label, const Of& of) {
    Row row{std::move(label), std::string(rigs::unitLabel<physics::Energy>(units_)), {}, {}};
    bool any = false;
    for (const Stage& stage : day_.stages) add(row, of(stage.ledger), any);
    add(row, of(day_.total), any);
    if (any) table_.rows.push_back(std::move(row));
  }
  void gaps(std::string label) {
    Row row{std::move(label), {}, {}, {}};
    for (const Stage& stage : day_.stages) row.cells.push_back(gap(stage.ledger));
    row.cells.push_back(gap(day_.total));
    table_.rows.push_back(std::move(row));
  }
  void cost(std::string label, const rigs::Plan& plan) {
    if (!plan.tariff.isStated()) return;
    Row row{std::move(label), plan.tariff.currency, {}, {}};
    for (const double cost : rigs::stageCosts(day_, plan.tariff, plan.startOfDay)) {
      row.cells.push_back(numberCell(cost, 2));
    }
    row.cells.push_back(numberCell(rigs::dayCost(day_, plan.tariff, plan.startOfDay), 2));
    table_.rows.push_back(std::move(row));
  }
  Table take() { return std::move(table_); }

 private:
  void add(Row& row, physics::Energy energy, bool& any) {
    // Megajoules that cancel leave some nanojoules of rounding, which are nothing.
    if (abs(energy) < physics::joules(1e-6)) energy = physics::joules(0.0);
    any = any || energy != physics::joules(0.0);
    row.cells.push_back(quantityCell(energy, units_, 3));
  }
  static Cell gap(const Ledger& ledger) {
    return {gapText(ledger.imbalance()), ledger.imbalance()};
  }

  const physics::BrewDay& day_;
  UnitSystem units_;
  Table table_;
};

Table stageTable(const rigs::Plan& plan, std::string name, const physics::BrewDay& day,
                 UnitSystem units) {
  StageTable t(std::move(name), day, units);
  t.clock("begins", plan.startOfDay, &Stage::begin);
  t.clock("ends", plan.startOfDay, &Stage::end);
  t.lasted("takes");
  t.quantity("wort, first", [](const Stage& s) {
    return s.kind == physics::StageKind::MashingIn ? s.mixed : s.first;
  });
  t.quantity("wort, last", [](const Stage& s) { return s.last; });
  t.quantity("volume, hot", [](const Stage& s) { return s.hotLast; });
  t.quantity("evaporated", [](const Stage& s) { return s.evaporated; });

  t.cost("costs", plan);
  t.heading("Came in");
  t.energy("from the wall", [](const Ledger& l) { return l.fromWall(); });
  t.energy("of that, in the cable", [](const Ledger& l) { return l.cable; });
  t.energy("from wetting the grain", [](const Ledger& l) { return l.slaking; });
  t.heading("Stored");
  t.energy("in the wort", [](const Ledger& l) { return l.wort; });
  t.energy("in the grain", [](const Ledger& l) { return l.grain; });
  t.energy("in the vessel", [](const Ledger& l) { return l.vessel; });
  t.heading("Left the vessel");
  t.energy("lifted out with the grain", [](const Ledger& l) { return l.lifted; });
  t.energy("steam, evaporation", [](const Ledger& l) { return l.lost[Path::Evaporation]; });
  t.energy("steam, its own heat", [](const Ledger& l) { return l.steam; });
  for (const Path path : {Path::SurfaceConvection, Path::SurfaceRadiation, Path::Side,
                          Path::DryWall, Path::Base, Path::Lid, Path::Hose}) {
    t.energy(pathName(path), [path](const Ledger& l) { return l.lost[path]; });
  }
  t.heading("Unaccounted for");
  t.gaps("share");
  return t.take();
}

std::string closingLine(const physics::BrewDay& day, UnitSystem units) {
  const Ledger& total = day.total;
  const double worst = rigs::worstImbalance(day);
  return fmt::format(
      "{} came in, {} is accounted for: a gap of {} of what came in; {} in the worst stage{}.",
      rigs::format(total.supplied(), units, {.significantDigits = 4, .decimals = {}}),
      rigs::format(total.accounted(), units, {.significantDigits = 4, .decimals = {}}),
      gapText(total.imbalance()), gapText(worst),
      worst <= rigs::kLedgerCloses ? ". The ledger closes"
                                   : ". That is more than 1e-06: do not trust this day");
}

}  // namespace

Page dayPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.cautions = rigs::cautionTexts(rigs::About::Day, plan, answers, units);
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::RigAnswer& rig = answers.rigs[i];
    page.heading(letter(i) + ' ' + page.rigNames[i]);
    const physics::BrewDay& day = rig.day;
    page.say(day.outcome == physics::Outcome::Done
                 ? fmt::format("{} from {} to {}.", roughTime(day.duration()),
                               clockTime(plan.startOfDay),
                               clockTime(plan.startOfDay + day.duration()))
                 : unfinishedText(plan.rigs[i], day, units));
    page.show(stageTable(plan, letter(i) + ' ' + page.rigNames[i], day, units));
    page.say(closingLine(day, units));
  }
  return page;
}

}  // namespace gui
