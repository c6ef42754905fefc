// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/element_skin.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "rigs/answers/element_skin.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::ElementSkin;
using rigs::Template;
using rigs::Told;

// Of each rig, none of those that state no size of their element; empty where none does.
using Skins = std::vector<std::optional<ElementSkin>>;
Skins skinsOf(const Case& of) {
  Skins skins;
  for (std::size_t i = 0; i < of.count(); ++i)
    skins.push_back(rigs::elementSkin(of.plan, of.planned(i), of.rig(i)));
  const bool any = std::any_of(skins.begin(), skins.end(), [](const auto& one) { return !!one; });
  return any ? skins : Skins{};
}

// What a maker prints: per square centimetre, or per square inch.
bool perInch(const Case& of) { return !of.reader.units.isMetric(rigs::QuantityKind::HeatFlux); }
std::string fluxUnit(const Case& of) { return perInch(of) ? "W/in²" : "W/cm²"; }
double fluxNumber(const Case& of, physics::HeatFlux flux) {
  constexpr double kSquareInch = 6.4516e-4, kSquareCentimetre = 1e-4;
  return physics::inWattsPerSquareMetre(flux) * (perInch(of) ? kSquareInch : kSquareCentimetre);
}

rigs::Argument about(physics::Temperature t) {
  return amount(t, {.significantDigits = 3, .decimals = 0});
}
rigs::Argument fluxText(const Case& of, physics::HeatFlux flux) {
  return Told(TOLD("Answer", "%1 %2"), rigs::Number{fluxNumber(of, flux), {.decimals = 1}},
              rigs::Verbatim{fluxUnit(of)});
}

Told waterText(const Case& of, const ElementSkin& skin) {
  const auto flux = fluxText(of, skin.flux);
  if (!of.plan.batch.mashes())
    return Told(
        TOLD("Answer", "%1 go through its element's skin. Water sizzles on it from about %2."),
        flux, about(skin.sizzlesFrom));
  return Told(TOLD("Answer",
                   "%1 go through its element's skin. In still water of %2 that skin is about %3 "
                   "hot, and it sizzles from about %4."),
              flux, about(skin.mash), about(skin.inStillWater), about(skin.sizzlesFrom));
}

Told mashText(const ElementSkin& skin) {
  if (!skin.heatsTheMash) return {};
  if (skin.boilsInStillMash)
    return Told(TOLD("Answer",
                     "Where grain rests on it, or the mash does not move, it boils there: about "
                     "%1. Keep the mash moving while it heats."),
                about(skin.inStillMash));
  return Told(TOLD("Answer", "Where grain rests on it, or the mash does not move, it is about %1."),
              about(skin.inStillMash));
}

Told limitText(const Case& of, const ElementSkin& skin) {
  const auto tell = [&](const Template<1>& kept, const Template<1>& exceeded) {
    return Told(skin.keepsToPractice() ? kept : exceeded, fluxText(of, skin.mostInPractice));
  };
  if (skin.heatsTheMash)
    return tell(TOLD("Answer",
                     "No published limit was found; common practice stays below %1 where grain "
                     "reaches an element, and it does."),
                TOLD("Answer",
                     "No published limit was found; common practice stays below %1 where grain "
                     "reaches an element, and this is more."));
  return tell(TOLD("Answer",
                   "No published limit was found; common practice stays below %1 in boiling wort, "
                   "and it does."),
              TOLD("Answer",
                   "No published limit was found; common practice stays below %1 in boiling wort, "
                   "and this is more."));
}

}  // namespace

void saySkins(Answer& answer, const Case& of) {
  const Skins skins = skinsOf(of);
  if (skins.empty()) return;
  answer.heading(Told(TOLD("Answer", "How hot does the element's skin get?")));
  for (std::size_t i = 0; i < skins.size(); ++i) {
    if (!skins[i]) continue;
    answer.say(i, rigs::sentences(
                      {waterText(of, *skins[i]), mashText(*skins[i]), limitText(of, *skins[i])}));
  }
}

void addSkins(RigTable& table, const Case& of) {
  const Skins skins = skinsOf(of);
  if (skins.empty()) return;
  const auto skin = [&](auto figure) {
    return [&skins, figure](std::size_t i) -> Cell {
      return skins[i] ? figure(*skins[i]) : std::nullopt;
    };
  };
  table.heading(Told(TOLD("Answer", "The element's skin")));
  table.row(Told(TOLD("Answer", "heat through it")),
            skin([&](const ElementSkin& s) { return numberCell(fluxNumber(of, s.flux), 1); }),
            {.unit = fluxUnit(of)});
  table.row(Told(TOLD("Answer", "water sizzles on it from")),
            skin([](const ElementSkin& s) { return cellOf(s.sizzlesFrom); }),
            {.decimals = 0, .result = "/element_skin/sizzles_from_C"});
  if (!of.plan.batch.mashes()) return;
  table.row(Told(TOLD("Answer", "in still water as warm as the mash")),
            skin([](const ElementSkin& s) { return cellOf(s.inStillWater); }),
            {.decimals = 0, .result = "/element_skin/in_still_water_C"});
  table.row(Told(TOLD("Answer", "in a mash that does not move")), skin([](const ElementSkin& s) {
              return s.heatsTheMash ? cellOf(s.inStillMash) : std::nullopt;
            }),
            {.decimals = 0, .result = "/element_skin/in_still_mash_C"});
}

}  // namespace gui::telling
