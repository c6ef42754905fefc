// SPDX-License-Identifier: GPL-3.0-or-later
// What the wort's day is worth in minutes at 100 C, in figures and drawn.
#include <string>
#include <utility>

#include "gui/telling/words.hpp"
#include "gui/telling/wort.hpp"

namespace gui::telling {
namespace {

using physics::HotMinutes;
using physics::Time;
using rigs::BoiledWort;
using rigs::Told;

// Nothing where there is no such part of the day.
std::optional<Time> worthOf(const rigs::HotStage& stage, Time HotMinutes::*which) {
  if (stage.lasts <= physics::seconds(0.0)) return std::nullopt;
  return stage.worth.*which;
}

template <class Figure>
void wortRow(RigTable& table, const Case& of, Told label, const std::string& key,
             const Figure& figure) {
  table.row(std::move(label),
            [&](std::size_t i) -> Cell {
              const rigs::WortAnswer* wort = wortOf(of, i);
              return wort && wort->boiled ? cellOf(figure(*wort->boiled)) : std::nullopt;
            },
            {.decimals = 0, .result = "/wort/" + key});
}

void addLeftTooCold(RigTable& table, const Case& of) {
  wortRow(table, of,
          Told(TOLD("Answer", "of that left by itself, below %1"),
               rigs::amount(physics::kBitternessFrom)),
          "left_by_itself/iso_at_100_C_below_80_C_s",
          [](const BoiledWort& w) -> std::optional<Time> {
            return w.isLeftByItself ? std::nullopt : std::optional(w.byItself.worth.isoTooCold);
          });
}

void addWorth(RigTable& table, const Case& of, const std::string& what, Time HotMinutes::*which) {
  for (const WortPart& part : wortParts())
    wortRow(table, of, part.name, std::string(part.result) + "/" + what,
            [&](const BoiledWort& w) { return worthOf(w.*part.stage, which); });
  wortRow(table, of, Told(TOLD("Answer", "all of it")), "whole_" + what,
          [&](const BoiledWort& w) { return w.whole().*which; });
  wortRow(table, of, Told(TOLD("Answer", "still wort at worst, instead")),
          "chilling_at_most/" + what, [&](const BoiledWort& w) -> std::optional<Time> {
            if (!w.chillingAtMost) return std::nullopt;
            return w.chillingAtMost->worth.*which;
          });
  wortRow(table, of, Told(TOLD("Answer", "left to cool by itself, instead")),
          "left_by_itself/" + what, [&](const BoiledWort& w) -> std::optional<Time> {
            return w.isLeftByItself ? std::nullopt : std::optional(w.byItself.worth.*which);
          });
}

void addShares(RigTable& table, const Case& of) {
  const auto share = [&](Told label, const std::string& key, const auto& figure) {
    wortRow(table, of, std::move(label), key,
            [&](const BoiledWort& w) { return rigs::Argument(percent(figure(w))); });
  };
  share(Told(TOLD("Answer", "precursor left after the boil")), "boiled_shares/smm",
        [](const BoiledWort& w) { return w.boiled.precursor; });
  share(Told(TOLD("Answer", "DMS after the boil")), "boiled_shares/dms",
        [](const BoiledWort& w) { return w.boiled.dms; });
  share(Told(TOLD("Answer", "DMS once it is chilled")), "chilled_shares/dms",
        [](const BoiledWort& w) { return w.chilled.dms; });
  share(Told(TOLD("Answer", "DMS if left to cool by itself")), "left_by_itself_shares/dms",
        [](const BoiledWort& w) { return w.leftByItself.dms; });
}

Picture wortBars(const Case& of, Told title, Time HotMinutes::*which) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(title);
  picture.xUnit = of.unit<Time>();
  picture.xTitle =
      of.text(Told(TOLD("Answer", "As much as at 100 °C, %1"), rigs::Verbatim{picture.xUnit}));
  picture.totalDecimals = 0;
  for (const WortPart& part : wortParts()) picture.partNames.push_back(of.text(part.name));
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::WortAnswer* wort = wortOf(of, i);
    PictureStack stack{.rig = static_cast<int>(i), .name = of.name(i), .parts = {}};
    for (const WortPart& part : wortParts()) {
      const Time worth =
          wort && wort->boiled ? ((*wort->boiled).*part.stage).worth.*which : physics::seconds(0.0);
      stack.parts.push_back(of.axis(worth));
      stack.notes.push_back(
          of.text(Told(TOLD("Answer", "%1: worth %2 at 100 °C"), part.name, rigs::roughly(worth))));
    }
    picture.stacks.push_back(std::move(stack));
  }
  return picture;
}

}  // namespace

std::array<WortPart, 4> wortParts() {
  return {{{Told(TOLD("Answer", "heating up")), &BoiledWort::heatingUp, "heating_up"},
           {Told(TOLD("Answer", "the boil")), &BoiledWort::boil, "boil"},
           {Told(TOLD("Answer", "hot stand")), &BoiledWort::stand, "stand"},
           {Told(TOLD("Answer", "chilling")), &BoiledWort::chilling, "chilling"}}};
}

Picture wortHopsPicture(const Case& of) {
  return wortBars(of, Told(TOLD("Answer", "What the day is worth for hops")), &HotMinutes::iso);
}
Picture wortSulfidePicture(const Case& of) {
  return wortBars(of, Told(TOLD("Answer", "What the day is worth for DMS to form")),
                  &HotMinutes::sulfide);
}

Table wortTable(const Case& of) {
  RigTable table("wort", of);
  addMashRows(table, of);
  table.heading(Told(TOLD("Answer", "For hops, as minutes at 100 °C")));
  addWorth(table, of, "iso_at_100_C_s", &HotMinutes::iso);
  addLeftTooCold(table, of);
  wortRow(table, of, Told(TOLD("Answer", "a boil worth as much as at sea level")),
          "boil_for_sea_level_s", [](const BoiledWort& w) { return w.forSeaLevel; });
  if (!of.plan.batch.mashes()) return table.take();
  table.heading(Told(TOLD("Answer", "For DMS to form, as minutes at 100 °C")));
  addWorth(table, of, "smm_at_100_C_s", &HotMinutes::sulfide);
  table.heading(Told(TOLD("Answer", "Of the precursor before it is heated up")));
  addShares(table, of);
  return table.take();
}

}  // namespace gui::telling
