// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/heat.hpp"

#include <functional>
#include <utility>

#include "gui/telling/rig_rows.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::Energy;
using physics::Ledger;
using physics::Path;
using physics::Stage;
using rigs::Told;

// Stages as columns, and the whole day after them where a row adds up.
class StageTable {
 public:
  StageTable(std::string name, std::size_t rig, const physics::BrewDay& day) : day_(day) {
    table_.name = std::move(name);
    table_.ofRigs = false;
    table_.rig = rig;
    table_.columns = stageNames(day);
    table_.columns.push_back(Told(TOLD("Answer", "Day")));
  }

  void heading(Told label) { table_.heading(std::move(label)); }
  template <class Of>
  void row(Told label, const Of& of, Cell ofDay = std::nullopt) {
    Row row{.label = std::move(label), .cells = {}};
    for (const Stage& stage : day_.stages) row.cells.push_back(cellOf(of(stage)));
    row.cells.push_back(std::move(ofDay));
    table_.rows.push_back(std::move(row));
  }
  // Left out where neither stage nor day has any: no hose, no cable.
  void energy(Told label, const std::function<Energy(const Ledger&)>& of) {
    bool any = false;
    const auto cell = [&](const Ledger& ledger) -> Cell {
      const Energy energy = withoutRounding(of(ledger));
      any = any || energy != physics::joules(0.0);
      return rigs::amount(energy, {.significantDigits = 3, .decimals = 3});
    };
    row(
        std::move(label), [&](const Stage& s) { return cell(s.ledger); }, cell(day_.total));
    if (!any) table_.rows.pop_back();
  }
  void cost(Told label, const rigs::Tariff& tariff, const rigs::RigAnswer& rig) {
    if (!tariff.isStated()) return;
    Row row{.label = std::move(label), .cells = {}};
    const auto money = [&](double sum) { return rigs::Money{sum, tariff.currency}; };
    for (const double cost : rig.stageCosts) row.cells.emplace_back(money(cost));
    row.cells.resize(day_.stages.size());  // without a clock nobody knows the hour's prices
    row.cells.push_back(rig.cost ? Cell(money(*rig.cost)) : std::nullopt);
    table_.rows.push_back(std::move(row));
  }
  const physics::BrewDay& day() const { return day_; }
  Table take() { return std::move(table_); }

 private:
  const physics::BrewDay& day_;
  Table table_;
};

void addLedger(StageTable& t) {
  t.heading(Told(TOLD("Answer", "Came in")));
  t.energy(Told(TOLD("Answer", "from the wall")), [](const Ledger& l) { return l.fromWall(); });
  t.energy(Told(TOLD("Answer", "of that, in the cable")), [](const Ledger& l) { return l.cable; });
  t.energy(Told(TOLD("Answer", "of that, heating the rinsing water")),
           [](const Ledger& l) { return l.apart; });
  if (t.day().total.pump > physics::joules(0.0))
    t.energy(Told(TOLD("Answer", "of that, the pump's")), [](const Ledger& l) { return l.pump; });
  t.energy(Told(TOLD("Answer", "from wetting the grain")),
           [](const Ledger& l) { return l.slaking; });
  t.energy(Told(TOLD("Answer", "with the rinsing water")),
           [](const Ledger& l) { return l.rinsed; });
  if (!t.day().additions.empty())
    t.energy(Told(TOLD("Answer", "with what was added")),
             [](const Ledger& l) { return l.brought; });
  t.heading(Told(TOLD("Answer", "Stored")));
  t.energy(Told(TOLD("Answer", "in the wort")), [](const Ledger& l) { return l.wort; });
  t.energy(Told(TOLD("Answer", "in the grain")), [](const Ledger& l) { return l.grain; });
  t.energy(Told(TOLD("Answer", "in the vessel")), [](const Ledger& l) { return l.vessel; });
  t.heading(Told(TOLD("Answer", "Left the vessel")));
  t.energy(Told(TOLD("Answer", "lifted out with the grain")),
           [](const Ledger& l) { return l.lifted; });
  t.energy(Told(TOLD("Answer", "steam, evaporation")),
           [](const Ledger& l) { return l.lost[Path::Evaporation]; });
  t.energy(Told(TOLD("Answer", "steam, its own heat")), [](const Ledger& l) { return l.steam; });
  for (const Path path : {Path::SurfaceConvection, Path::SurfaceRadiation, Path::Side,
                          Path::DryWall, Path::Base, Path::Lid, Path::Hose}) {
    t.energy(pathName(path), [path](const Ledger& l) { return l.lost[path]; });
  }
  t.heading(Told(TOLD("Answer", "Unaccounted for")));
}

}  // namespace

Table stageTable(const Case& of, std::size_t i) {
  const physics::BrewDay& day = of.rig(i).day;
  StageTable t(of.plainlyNamed(i), i, day);
  const auto clock = [&](physics::Time at) { return of.clockAt(i, at); };
  t.row(Told(TOLD("Answer", "begins")), [&](const Stage& s) { return clock(s.begin); });
  t.row(Told(TOLD("Answer", "ends")), [&](const Stage& s) { return clock(s.end); });
  t.row(
      Told(TOLD("Answer", "takes")),
      [](const Stage& s) { return hoursAndMinutes(rigs::lasted(s)); },
      hoursAndMinutes(day.duration()));
  t.row(Told(TOLD("Answer", "wort, first")),
        [](const Stage& s) { return s.kind == physics::StageKind::MashingIn ? s.mixed : s.first; });
  t.row(Told(TOLD("Answer", "wort, last")), [](const Stage& s) { return s.last; });
  t.row(Told(TOLD("Answer", "volume, hot")), [](const Stage& s) { return s.hotLast; });
  t.row(Told(TOLD("Answer", "evaporated")), [](const Stage& s) { return s.evaporated; });
  t.cost(Told(TOLD("Answer", "costs")), of.plan.tariff, of.rig(i));
  addLedger(t);
  t.row(
      Told(TOLD("Answer", "share")), [](const Stage& s) { return rigs::Gap{s.ledger.imbalance()}; },
      rigs::Gap{day.total.imbalance()});
  return t.take();
}

Told ledgerText(const physics::BrewDay& day) {
  const Ledger& total = day.total;
  const double worst = rigs::worstImbalance(day);
  const auto text = worst <= rigs::kLedgerCloses
                        ? rigs::Template<4>(TOLD(
                              "Answer",
                              "%1 came in, %2 is accounted for: a gap of %3 of what came in; %4 in "
                              "the worst stage. The ledger closes."))
                        : rigs::Template<4>(TOLD(
                              "Answer",
                              "%1 came in, %2 is accounted for: a gap of %3 of what came in; %4 in "
                              "the worst stage. That is more than 1e-06: do not trust this day."));
  const auto exact = [](Energy energy) {
    return rigs::amount(energy, {.significantDigits = 4, .decimals = {}});
  };
  return Told(text, exact(total.supplied()), exact(total.accounted()), rigs::Gap{total.imbalance()},
              rigs::Gap{worst});
}

}  // namespace gui::telling
