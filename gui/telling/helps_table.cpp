// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most? The table: every change by itself, the best first, then those together.
#include <algorithm>
#include <string>
#include <utility>

#include "gui/telling/helps.hpp"
#include "gui/telling/words.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using rigs::Effect;
using rigs::HelpsAnswer;
using rigs::Together;
using rigs::Told;
using rigs::Verbatim;
using rigs::Wish;

// A page shows so many of what helps; a spreadsheet has all.
constexpr std::size_t kMostRows = 12;

class HelpsTable {
 public:
  HelpsTable(const Case& of, std::size_t rig)
      : of_(of), helps_(*of.rig(rig).helps), wish_(wishToldOf(of, helps_)) {
    table_.name = "helps";
    table_.ofRigs = false;
    table_.rig = rig;
    addHeads();
  }

  void addToday() {
    table_.heading(Told(TOLD("Helps", "As it is")));
    row(Told(TOLD("Helps", "nothing changed")), {}, helps_.today, {});
  }

  void addChanges() {
    table_.heading(Told(TOLD("Helps", "One change, %1"), wishWords(wish_)));
    const double brews = brewsPerYear(of_.plan);
    std::vector<std::size_t> refused;
    std::size_t told = 0;
    for (const std::size_t i : rigs::ranked(helps_, wish_, brews)) {
      if (isRefused(i)) {
        refused.push_back(i);
        continue;
      }
      // What does not help is for spreadsheets.
      const bool more = rigs::isMore(wish_, helps_.alone[i], helps_.today, brews);
      const bool worth = helps_.advised[i] && more && told < kMostRows;
      if (!worth && !of_.view.allFigures) continue;
      told += helps_.advised[i] ? 1 : 0;
      row(helps_.changes[i].words, {i}, helps_.alone[i],
          helps_.advised[i] ? Told() : rigs::fitWords(helps_.alone[i].circuit));
    }
    addRefused(refused);
  }

  // Under a heading of their own, so that no part of a table shows them as if they were advice.
  void addRefused(const std::vector<std::size_t>& refused) {
    if (refused.empty()) return;
    table_.heading(Told(TOLD("Helps", "Not allowed")));
    for (const std::size_t i : refused)
      row(helps_.changes[i].words, {i}, helps_.alone[i], whyRefused(i));
  }

  void addTogether(const rigs::Template<0>& heading, const std::vector<Together>& all) {
    if (all.empty()) return;
    table_.heading(Told(heading));
    for (const Together& one : all)
      row(changesText(helps_, one.changes), one.changes, one.effect, {});
  }

  void addWays() {
    const rigs::WishAnswer& wish = helps_.of(wish_);
    std::vector<Together> few, goals;
    if (wish.few && wish.few->changes.size() > 1) few.push_back(*wish.few);
    if (wish.allGoals) goals.push_back(*wish.allGoals);
    addTogether(TOLD("Helps", "The few that bring most of it together"), few);
    addTogether(TOLD("Helps", "The fewest that meet all goals"), goals);
    addTogether(TOLD("Helps", "Ways between wishes, none better in everything than another"),
                wish.tradeOffs);
  }

  Table take() { return std::move(table_); }

 private:
  void addHeads() {
    const auto head = [&](Told told) { table_.columns.push_back(std::move(told)); };
    if (showsHeat()) head(Told(TOLD("Helps", "heat, %")));
    head(Told(TOLD("Helps", "day, min")));
    head(Told(TOLD("Helps", "boils off, %/h")));
    if (hasNight())
      head(Told(TOLD("Helps", "morning, %1"), Verbatim{of_.unit<physics::Temperature>()}));
    head(Told(TOLD("Helps", "kWh a batch")));
    if (hasPrice()) {
      head(Told(TOLD("Helps", "%1 saved a year"), Verbatim{of_.plan.tariff.currency}));
      if (statesOutlay()) {
        head(Told(TOLD("Helps", "price, %1"), Verbatim{of_.plan.tariff.currency}));
        head(Told(TOLD("Helps", "paid back, years")));
      }
    }
    head(Told(TOLD("Helps", "circuit")));
  }

  // Else there is no room for it on a page.
  bool showsHeat() const { return wish_ == Wish::Rolls || of_.view.allFigures; }
  bool hasNight() const { return rigs::hasOwnNight(of_.plan); }
  bool hasPrice() const { return of_.plan.tariff.isStated(); }
  bool statesOutlay() const { return of_.plan.tariff.jacketPrice || of_.plan.tariff.elementPrice; }

  // By a rating or a rule, whatever its day would be.
  bool isRefused(std::size_t i) const {
    return !helps_.changes[i].forbidden.empty() || refusedByRules(i);
  }
  bool refusedByRules(std::size_t i) const {
    return rigs::touchesCircuit(helps_.changes[i].lever) && helps_.alone[i].getsThrough() &&
           !helps_.advised[i];
  }

  // "not allowed (1)", with its reason in the legend.
  Told whyRefused(std::size_t i) {
    const rigs::Change& change = helps_.changes[i];
    Told why = change.forbidden.empty()
                   ? Told(TOLD("Helps", "the rules do not grant it to this circuit"))
                   : change.forbidden;
    auto& legend = table_.legend;
    auto at = std::find(legend.begin(), legend.end(), why);
    if (at == legend.end()) at = legend.insert(legend.end(), std::move(why));
    return Told(TOLD("Helps", "not allowed %1"),
                Verbatim{numbered(static_cast<std::size_t>(at - legend.begin()))});
  }

  void row(Told label, const std::vector<std::size_t>& changes, const Effect& then,
           const Told& circuit) {
    const double brews = brewsPerYear(of_.plan);
    const auto number = [](std::optional<double> value, int decimals) {
      return numberCell(value, decimals);
    };
    Row row{.label = std::move(label), .cells = {}};
    const auto percent = [](std::optional<double> share) {
      return share ? std::optional(100.0 * *share) : share;
    };
    if (showsHeat()) row.cells.push_back(number(percent(then.powerShare), 0));
    row.cells.push_back(then.getsThrough() ? number(physics::inMinutes(*then.day), 0)
                                           : Cell(then.overflows ? Told(TOLD("Helps", "overflows"))
                                                                 : outcomeWord(then.outcome)));
    row.cells.push_back(number(percent(then.boilOffPerHour), 1));
    if (hasNight())
      row.cells.push_back(
          number(then.morning ? std::optional(of_.axis(*then.morning)) : std::nullopt, 1));
    row.cells.push_back(number(
        then.getsThrough() ? std::optional(physics::inKilowattHours(then.fromWall)) : std::nullopt,
        2));
    if (hasPrice()) {
      const auto saved = rigs::savedInAYear(then, helps_.today, brews);
      row.cells.push_back(number(changes.empty() ? std::nullopt : saved, 2));
      if (statesOutlay()) {
        const auto back = rigs::paybackOf(helps_, changes, then, brews);
        row.cells.push_back(number(rigs::priceOf(helps_, changes), 2));
        row.cells.push_back(number(back ? back->years : std::nullopt, 1));
      }
    }
    row.cells.push_back(Cell(circuit.empty() ? rigs::fitWords(then.circuit) : circuit));
    table_.rows.push_back(std::move(row));
  }

  const Case& of_;
  const HelpsAnswer& helps_;
  Wish wish_;
  Table table_;
};

}  // namespace

Table helpsTable(const Case& of, std::size_t rig) {
  HelpsTable table(of, rig);
  table.addToday();
  table.addChanges();
  table.addWays();
  return table.take();
}

}  // namespace gui::telling
