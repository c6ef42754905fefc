// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/element_skin.hpp"

#include <string>

#include "rigs/answers/element_skin.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::ElementSkin;
using rigs::Template;
using rigs::Told;

bool hasMash(const Case& of) { return of.plan.batch.grain.mass > physics::kilograms(0.0); }

std::optional<ElementSkin> skinOf(const Case& of, std::size_t i) {
  return rigs::elementSkin(of.plan, of.planned(i), of.rig(i));
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
  if (!hasMash(of))
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
  const auto most =
      fluxText(of, skin.heatsTheMash ? physics::kMashFluxInPractice : physics::kBoilFluxInPractice);
  if (skin.heatsTheMash)
    return Told(skin.kept
                    ? Template<1>(TOLD("Answer",
                                       "No published limit was found; common practice stays below "
                                       "%1 where grain reaches an element, and it does."))
                    : Template<1>(TOLD("Answer",
                                       "No published limit was found; common practice stays below "
                                       "%1 where grain reaches an element, and this is more.")),
                most);
  return Told(skin.kept ? Template<1>(TOLD("Answer",
                                           "No published limit was found; common practice stays "
                                           "below %1 in boiling wort, and it does."))
                        : Template<1>(TOLD("Answer",
                                           "No published limit was found; common practice stays "
                                           "below %1 in boiling wort, and this is more.")),
              most);
}

}  // namespace

bool tellsOfSkins(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (skinOf(of, i)) return true;
  return false;
}

void saySkins(Answer& answer, const Case& of) {
  if (!tellsOfSkins(of)) return;
  answer.heading(Told(TOLD("Answer", "How hot does the element's skin get?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto skin = skinOf(of, i);
    if (!skin) continue;
    answer.say(i, rigs::sentences({waterText(of, *skin), mashText(*skin), limitText(of, *skin)}));
  }
}

void addSkins(RigTable& table, const Case& of) {
  if (!tellsOfSkins(of)) return;
  const auto skin = [&](auto figure) {
    return [&of, figure](std::size_t i) -> Cell {
      const auto found = skinOf(of, i);
      return found ? figure(*found) : std::nullopt;
    };
  };
  table.heading(Told(TOLD("Answer", "The element's skin")));
  table.row(Told(TOLD("Answer", "heat through it")),
            skin([&](const ElementSkin& s) { return numberCell(fluxNumber(of, s.flux), 1); }),
            {.unit = fluxUnit(of)});
  table.row(Told(TOLD("Answer", "water sizzles on it from")),
            skin([](const ElementSkin& s) { return cellOf(s.sizzlesFrom); }),
            {.decimals = 0, .result = "/element_skin/sizzles_from_C"});
  if (!hasMash(of)) return;
  table.row(Told(TOLD("Answer", "in still water as warm as the mash")),
            skin([](const ElementSkin& s) { return cellOf(s.inStillWater); }),
            {.decimals = 0, .result = "/element_skin/in_still_water_C"});
  table.row(Told(TOLD("Answer", "in a mash that does not move")), skin([](const ElementSkin& s) {
              return s.heatsTheMash ? cellOf(s.inStillMash) : std::nullopt;
            }),
            {.decimals = 0, .result = "/element_skin/in_still_mash_C"});
}

}  // namespace gui::telling
