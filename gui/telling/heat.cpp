// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/heat.hpp"

#include <algorithm>
#include <functional>

#include "gui/telling/rig_rows.hpp"
#include "gui/telling/slower.hpp"
#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

using physics::Energy;
using physics::Ledger;
using physics::Path;
using physics::Power;
using physics::Stage;
using rigs::Told;

struct Part {
  Told name;
  std::function<Power(const physics::CurvePoint&)> power;  // empty: not a loss over time
  std::function<Energy(const Ledger&)> energy;
};

Part lossBy(Path path) {
  return {pathName(path), [path](const physics::CurvePoint& p) { return p.lost[path]; },
          [path](const Ledger& l) { return l.lost[path]; }};
}

// From the heat that stays to the heat that leaves, the largest loss first.
std::vector<Part> allParts() {
  using Point = physics::CurvePoint;
  return {{Told(TOLD("Answer", "kept in wort and vessel")),
           {},
           [](const Ledger& l) { return l.stored(); }},
          {Told(TOLD("Answer", "lifted out with the grain")),
           {},
           [](const Ledger& l) { return l.lifted; }},
          {Told(TOLD("Answer", "steam")), [](const Point& p) { return p.lost[Path::Evaporation]; },
           [](const Ledger& l) { return l.lost[Path::Evaporation] + l.steam; }},
          {Told(TOLD("Answer", "open surface")),
           [](const Point& p) {
             return p.lost[Path::SurfaceConvection] + p.lost[Path::SurfaceRadiation];
           },
           [](const Ledger& l) {
             return l.lost[Path::SurfaceConvection] + l.lost[Path::SurfaceRadiation];
           }},
          lossBy(Path::Side),
          lossBy(Path::DryWall),
          lossBy(Path::Base),
          lossBy(Path::Lid),
          lossBy(Path::Hose),
          {Told(TOLD("Answer", "cable")), {}, [](const Ledger& l) { return l.cable; }}};
}

// Those that take some power at some time of the day.
std::vector<Part> pathsInUse(const physics::BrewDay& day) {
  std::vector<Part> used;
  for (const Part& part : allParts()) {
    if (!part.power) continue;
    bool any = false;
    for (const Stage& stage : day.stages)
      for (const physics::CurvePoint& point : stage.curve)
        any = any || part.power(point) > physics::watts(0.05);
    if (any) used.push_back(part);
  }
  return used;
}

Picture powerOverTime(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  Picture picture;
  picture.kind = Picture::Kind::Areas;
  picture.title = of.text(Told(TOLD("Answer", "Heat leaving %1, by path"), of.named(rig)));
  picture.xTitle = of.text(Told(TOLD("Answer", "Time since the start")));
  picture.yUnit = of.unit<Power>();
  picture.yDecimals = of.decimals<Power>();
  picture.yTitle = of.text(
      Told(TOLD("Answer", "Power, %1; what is left below the element's line warms the wort"),
           rigs::Verbatim{picture.yUnit}));
  picture.xIsClock = true;
  const std::vector<Part> parts = pathsInUse(day);
  for (const Part& part : parts) picture.partNames.push_back(of.text(part.name));
  picture.areas.resize(parts.size());
  PictureLine element{
      .rig = -1, .name = of.text(Told(TOLD("Answer", "from the element"))), .points = {}};
  for (const Stage& stage : day.stages) {
    for (const physics::CurvePoint& point : stage.curve) {
      const double x = physics::inMinutes(point.time);
      element.points.push_back({x, of.axis(point.element)});
      // Before it is as warm as the room a kettle gains heat: the picture shows losses only.
      for (std::size_t k = 0; k < parts.size(); ++k)
        picture.areas[k].push_back({x, std::max(0.0, of.axis(parts[k].power(point)))});
    }
  }
  picture.lines.push_back(std::move(element));
  picture.yFrom = 0.0;
  return picture;
}

// The picture's numbers where they change most: at the start and at the end of every stage.
Table powerTable(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  const std::vector<Part> parts = pathsInUse(day);
  Table table{.name = "power by path", .columns = {}, .rows = {}, .ofRigs = false};
  table.columns.push_back(Told(TOLD("Answer", "from the element")));
  for (const Part& part : parts) table.columns.push_back(part.name);
  table.heading(Told(TOLD("Answer", "Heat leaving %1, by path"), of.named(rig)));
  const std::vector<Told> names = stageNames(day);
  for (std::size_t s = 0; s < day.stages.size(); ++s) {
    const auto& curve = day.stages[s].curve;
    if (curve.empty()) continue;
    const auto add = [&](const rigs::Template<2>& label, const physics::CurvePoint& point) {
      Row row{.label = Told(label, names[s], rigs::HoursAndMinutes{point.time}), .cells = {}};
      row.cells.push_back(cellOf(point.element));
      for (const Part& part : parts)
        row.cells.push_back(cellOf(std::max(physics::watts(0.0), part.power(point))));
      table.rows.push_back(std::move(row));
    };
    add(TOLD("Answer", "%1 begins, %2"), curve.front());
    add(TOLD("Answer", "%1 ends, %2"), curve.back());
  }
  return table;
}

// The largest first, over all rigs.
std::vector<Part> partsInUse(const Case& of) {
  std::vector<Part> used;
  for (const Part& part : allParts()) {
    for (std::size_t i = 0; i < of.count(); ++i) {
      if (part.energy(of.rig(i).day.total) <= physics::kilowattHours(0.0005)) continue;
      used.push_back(part);
      break;
    }
  }
  const auto ofAll = [&](const Part& part) {
    Energy sum = physics::joules(0.0);
    for (std::size_t i = 0; i < of.count(); ++i) sum += part.energy(of.rig(i).day.total);
    return sum;
  };
  std::stable_sort(used.begin(), used.end(),
                   [&](const Part& a, const Part& b) { return ofAll(a) > ofAll(b); });
  return used;
}

// A piece of a bar where a person points: what of the heat that came in, and of the bill.
// Also what the cable took of it.
Energy cameIn(const Ledger& total) { return total.supplied() + total.cable; }

std::string pieceNote(const Case& of, std::size_t rig, const Part& part) {
  const Ledger& total = of.rig(rig).day.total;
  const Energy energy = part.energy(total);
  const Energy in = cameIn(total);
  if (in <= physics::joules(0.0)) return of.text(part.name);
  const auto share = static_cast<double>(energy / in);
  const rigs::Amount figure =
      rigs::amount(energy, {.significantDigits = 3, .decimals = of.decimals<Energy>()});
  if (!of.rig(rig).cost)
    return of.text(
        Told(TOLD("Answer", "%1: %2, %3 of what came in"), part.name, figure, percent(share)));
  return of.text(Told(TOLD("Answer", "%1: %2, %3 of what came in, %4"), part.name, figure,
                      percent(share),
                      rigs::Money{share * *of.rig(rig).cost, of.plan.tariff.currency}));
}

Picture energyBars(const Case& of) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(Told(TOLD("Answer", "Where the day's heat went")));
  picture.xUnit = of.unit<Energy>();
  picture.xTitle = of.text(Told(TOLD("Answer", "Energy, %1"), rigs::Verbatim{picture.xUnit}));
  const std::vector<Part> parts = partsInUse(of);
  for (const Part& part : parts) picture.partNames.push_back(of.text(part.name));
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureStack stack{.rig = static_cast<int>(i), .name = of.name(i), .parts = {}};
    for (const Part& part : parts) {
      stack.parts.push_back(std::max(0.0, of.axis(part.energy(of.rig(i).day.total))));
      stack.notes.push_back(pieceNote(of, i, part));
    }
    picture.stacks.push_back(std::move(stack));
  }
  return picture;
}

Told wholeText(const Case& of, std::size_t rig) {
  const Ledger& total = of.rig(rig).day.total;
  const Energy in = cameIn(total);
  const auto share = [&](Energy part) {
    const double ofIn = in > physics::joules(0.0) ? static_cast<double>(part / in) : 0.0;
    return rigs::amount(ofIn, {.significantDigits = 2, .decimals = 0});
  };
  const Energy steam = total.lost[Path::Evaporation] + total.steam;
  const Energy kept = total.stored() + total.lifted;
  return Told(TOLD("Answer",
                   "%1 came into %2: %3 of it left as steam, %4 warmed wort, grain and vessel, and "
                   "%5 was lost through walls, lid, surface and cable."),
              rigs::amount(in), of.named(rig), share(steam), share(kept), share(in - steam - kept));
}

// The rigs that lose the largest and the smallest share on other ways than steam.
std::vector<Told> ofAllText(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const Ledger& total = of.rig(i).day.total;
    const Energy in = cameIn(total);
    if (in <= physics::joules(0.0)) return std::nullopt;
    const Energy steam = total.lost[Path::Evaporation] + total.steam;
    return static_cast<double>((in - steam - total.stored() - total.lifted) / in);
  });
  if (e.counted == 0) return {};
  std::vector<Told> told{wholeText(of, e.most)};
  if (e.least != e.most) told.push_back(wholeText(of, e.least));
  return told;
}

bool anyPumpHeats(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (of.rig(i).day.total.pump > physics::joules(0.0)) return true;
  return false;
}

Table heatTable(const Case& of) {
  RigTable table("heat", of);
  table.heading(Told(TOLD("Answer", "Came in")));
  addEnergyRow(
      table, of, Told(TOLD("Answer", "from the wall")),
      [](const Ledger& l) { return l.fromWall(); }, "from_wall");
  addEnergyRow(
      table, of, Told(TOLD("Answer", "of that, heating the rinsing water")),
      [](const Ledger& l) { return l.apart; }, "rinse_heater");
  if (anyPumpHeats(of)) {
    addEnergyRow(
        table, of, Told(TOLD("Answer", "of that, the pump's")),
        [](const Ledger& l) { return l.pump; }, "pump");
  }
  addEnergyRow(
      table, of, Told(TOLD("Answer", "from wetting the grain")),
      [](const Ledger& l) { return l.slaking; }, "grain_wetting");
  addEnergyRow(
      table, of, Told(TOLD("Answer", "with the rinsing water")),
      [](const Ledger& l) { return l.rinsed; }, "with_rinse");
  if (!of.plan.batch.additions.empty()) {
    addEnergyRow(
        table, of, Told(TOLD("Answer", "with what was added")),
        [](const Ledger& l) { return l.brought; }, "with_additions");
  }
  addLedgerRows(table, of);
  return table.take();
}

}  // namespace

Answer whereHeat(const Case& of) {
  const auto rig =
      static_cast<std::size_t>(std::clamp(of.view.rig, 0, static_cast<int>(of.count()) - 1));
  Answer answer;
  answer.sentences = of.view.asBars ? ofAllText(of) : std::vector<Told>{wholeText(of, rig)};
  answer.pictures = {of.view.asBars ? energyBars(of) : powerOverTime(of, rig)};
  // Below the picture's title, and in words for whoever sees no picture.
  for (const Told& why : of.view.asBars ? slowerText(of) : std::vector<Told>{}) {
    answer.pictures[0].yTitle = of.text(why);
    answer.say(why);
  }
  answer.show(heatTable(of));
  if (!of.view.asBars) answer.show(powerTable(of, rig));
  for (std::size_t i = 0; i < of.count(); ++i) {
    answer.heading(of.isAlone() ? Told(TOLD("Answer", "The day, stage by stage"))
                                : Told::just(of.named(i)));
    answer.show(stageTable(of, i));
    answer.say(ledgerText(of.rig(i).day));
  }
  return answer;
}

}  // namespace gui::telling
