// SPDX-License-Identifier: GPL-3.0-or-later
// Wort chilled, in figures.
#include <string>
#include <utility>

#include "gui/telling/chill.hpp"
#include "rigs/answers/night.hpp"

namespace gui::telling {
namespace {

using rigs::ChillAnswer;
using rigs::ChillWay;
using rigs::Told;

Told downTo(physics::Temperature temperature) {
  return Told(TOLD("Answer", "down to %1"), rigs::amount(temperature));
}

void addChillBeginning(RigTable& table, const Case& of) {
  const auto row = [&](Told label, const std::string& key, const auto& figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const ChillAnswer* chill = chillOf(of, i);
                return chill ? cellOf(figure(*chill)) : std::nullopt;
              },
              {.result = "/chilling/" + key});
  };
  table.heading(Told(TOLD("Answer", "What is chilled")));
  row(Told(TOLD("Answer", "wort, cold")), "wort_L", [](const ChillAnswer& c) { return c.wort; });
  row(Told(TOLD("Answer", "begins at")), "begins_C", [](const ChillAnswer& c) { return c.begins; });
  row(Told(TOLD("Answer", "cooling water")), "cooling_water_C",
      [](const ChillAnswer& c) -> std::optional<physics::Temperature> {
        if (c.chiller.kind == rigs::Chiller::Kind::Air) return std::nullopt;
        return c.water;
      });
  row(Told(TOLD("Answer", "pitched at")), "pitching_C",
      [](const ChillAnswer& c) { return c.pitching; });
  row(Told(TOLD("Answer", "ice to get there")), "refused/ice_kg",
      [](const ChillAnswer& c) -> std::optional<physics::Mass> {
        if (!c.refused) return std::nullopt;
        return c.refused->ice;
      });
}

// Rows of one way each rig has; `key` is where the result has it.
template <class Which>
void addChillWay(RigTable& table, Told heading, const std::string& key, const Which& which,
                 bool byWater) {
  const std::string place = "/chilling/" + key;
  const auto time = [&](Told label, const char* name,
                        std::optional<physics::Time> ChillWay::*figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const ChillWay* way = which(i);
                return way ? hoursAndMinutes(way->*figure) : std::nullopt;
              },
              {.result = place + name});
  };
  table.heading(std::move(heading));
  if (byWater) {
    time(downTo(physics::celsius(60.0)), "/to_60_s", &ChillWay::toSixty);
    time(downTo(physics::celsius(40.0)), "/to_40_s", &ChillWay::toForty);
  } else {
    time(downTo(rigs::kWarmUpTo), "/to_57_s", &ChillWay::toHotHolding);
    time(downTo(physics::celsius(21.0)), "/to_21_s", &ChillWay::toTwentyOne);
  }
  time(
      byWater ? Told(TOLD("Answer", "down to the goal")) : Told(TOLD("Answer", "down to pitching")),
      "/to_goal_s", &ChillWay::toGoal);
  // Nobody knows tenths of these.
  const auto row = [&](Told label, const char* name, const auto& figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const ChillWay* way = which(i);
                return way ? cellOf(figure(*way)) : std::nullopt;
              },
              {.decimals = 0, .result = place + name});
  };
  if (!byWater) return;
  row(Told(TOLD("Answer", "water for that")), "/water_L",
      [](const ChillWay& way) -> std::optional<physics::Volume> {
        if (!way.toGoal) return std::nullopt;
        return way.water;
      });
  row(Told(TOLD("Answer", "which leaves at first at")), "/first_outlet_C",
      [](const ChillWay& way) { return way.firstOutlet; });
  row(Told(TOLD("Answer", "and on average at")), "/mean_outlet_C",
      [](const ChillWay& way) { return way.meanOutlet; });
}

void addChillPass(RigTable& table, const Case& of) {
  const auto row = [&](Told label, const std::string& key, const auto& figure) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const ChillAnswer* chill = chillOf(of, i);
                return chill && chill->pass ? figure(*chill->pass) : std::nullopt;
              },
              {.result = "/chilling/one_pass/" + key});
  };
  table.heading(Told(TOLD("Answer", "In one pass of a counterflow chiller")));
  row(Told(TOLD("Answer", "for all of the wort")), "time_s",
      [](const rigs::ExchangerPass& p) { return hoursAndMinutes(p.time); });
  row(Told(TOLD("Answer", "water for that")), "water_L",
      [](const rigs::ExchangerPass& p) { return cellOf(p.water); });
  row(Told(TOLD("Answer", "wort leaves at")), "wort_out_C",
      [](const rigs::ExchangerPass& p) { return cellOf(p.likely.hotOut); });
  row(Told(TOLD("Answer", "at best")), "wort_out_at_best_C",
      [](const rigs::ExchangerPass& p) { return cellOf(p.best.hotOut); });
  row(Told(TOLD("Answer", "at worst")), "wort_out_at_worst_C",
      [](const rigs::ExchangerPass& p) { return cellOf(p.worst.hotOut); });
  row(Told(TOLD("Answer", "water leaves at")), "water_out_C",
      [](const rigs::ExchangerPass& p) { return cellOf(p.likely.coldOut); });
}

const ChillWay* givenWay(const std::optional<ChillWay>& way) { return way ? &*way : nullptr; }

}  // namespace

Table chillTable(const Case& of) {
  RigTable table("chill", of);
  addChillBeginning(table, of);
  const auto coil = [&](std::optional<ChillWay> ChillAnswer::*which) {
    return [&of, which](std::size_t i) -> const ChillWay* {
      const ChillAnswer* chill = chillOf(of, i);
      return chill ? givenWay(chill->*which) : nullptr;
    };
  };
  addChillWay(table, Told(TOLD("Answer", "With a coil, stirred all the time")), "stirred",
              coil(&ChillAnswer::stirred), true);
  addChillWay(table, Told(TOLD("Answer", "With a coil, left still, at best")), "still",
              coil(&ChillAnswer::still), true);
  addChillWay(table, Told(TOLD("Answer", "With a coil, left still, at worst")), "still_at_worst",
              coil(&ChillAnswer::stillAtWorst), true);
  addChillPass(table, of);
  addChillWay(
      table, Told(TOLD("Answer", "Left to cool by itself")), "air",
      [&](std::size_t i) -> const ChillWay* {
        const ChillAnswer* chill = chillOf(of, i);
        return chill ? &chill->air : nullptr;
      },
      false);
  addChillWay(table, Told(TOLD("Answer", "The same without its jacket")), "air_bare",
              coil(&ChillAnswer::airBare), false);
  return table.take();
}

}  // namespace gui::telling
