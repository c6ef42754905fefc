// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/learned_tables.hpp"

#include <utility>

namespace gui::telling {
namespace {

using physics::Energy;
using physics::Temperature;
using rigs::amount;
using rigs::Told;
using rigs::Unknown;

}  // namespace

Cell cellLike(const rigs::readings::Value& value, double si) {
  if (std::holds_alternative<Temperature>(value))
    return rigs::Argument(amount(physics::kelvin(si), {.significantDigits = 3, .decimals = 1}));
  if (std::holds_alternative<Energy>(value))
    return rigs::Argument(amount(physics::joules(si), {.significantDigits = 3, .decimals = 2}));
  if (std::holds_alternative<rigs::readings::ReadVolume>(value))
    return rigs::Argument(
        amount(physics::litres(1e3 * si), {.significantDigits = 3, .decimals = 1}));
  return numberCell(si, 3);
}

Cell readCell(const rigs::readings::Value& value) {
  if (const auto* wort = std::get_if<Temperature>(&value))
    return cellLike(value, physics::inKelvin(*wort));
  if (const auto* energy = std::get_if<Energy>(&value))
    return cellLike(value, physics::inJoules(*energy));
  if (const auto* volume = std::get_if<rigs::readings::ReadVolume>(&value))
    return cellLike(value, physics::inCubicMetres(volume->volume));
  if (const auto* gravity = std::get_if<rigs::readings::ReadGravity>(&value))
    return cellLike(value, gravity->gravity);
  return std::nullopt;
}

Told unknownWords(const std::optional<Unknown>& what) {
  if (!what) return Told(TOLD("Learned", "the thermometer"));
  switch (*what) {
    case Unknown::ClosedLosses:
      return Told(TOLD("Learned", "the closed kettle's losses"));
    case Unknown::OpenSurface:
      return Told(TOLD("Learned", "the open surface"));
    case Unknown::Amount:
      return Told(TOLD("Learned", "the amount in it"));
    case Unknown::Power:
      return Told(TOLD("Learned", "the power"));
    case Unknown::Room:
      return Told(TOLD("Learned", "the room"));
    case Unknown::Water:
      return Told(TOLD("Learned", "the water as drawn"));
    case Unknown::RimGap:
      return Told(TOLD("Learned", "the lid's gap"));
    case Unknown::Absorption:
      break;
  }
  return Told(TOLD("Learned", "what stays in the grain"));
}

Table unknownsTable(std::size_t rig, const rigs::Learned& learned) {
  Table table;
  table.name = "unknowns";
  table.ofRigs = false;
  table.rig = rig;
  table.columns = {Told(TOLD("Learned", "before: low")), Told(TOLD("Learned", "middle")),
                   Told(TOLD("Learned", "high")),        Told(TOLD("Learned", "now: low")),
                   Told(TOLD("Learned", "middle")),      Told(TOLD("Learned", "high"))};
  const auto rows = [&](bool offsets) {
    for (const rigs::LearnedUnknown& one : learned.unknowns) {
      if (offsets != (!one.what || rigs::isOffset(*one.what))) continue;
      Row row{unknownWords(one.what), {}};
      for (const rigs::Estimate& estimate : {one.before, one.after})
        for (const double x : {estimate.low, estimate.middle, estimate.high})
          row.cells.push_back(
              offsets ? Cell(rigs::Argument(
                            amount(physics::kelvins(x), {.significantDigits = 2, .decimals = 2})))
                      : numberCell(x, 3));
      table.rows.push_back(std::move(row));
    }
  };
  table.heading(Told(TOLD("Learned", "Times the plan's own")));
  rows(false);
  table.heading(Told(TOLD("Learned", "Added to the plan's own")));
  rows(true);
  return table;
}

Table readingsTable(std::size_t rig, const ReadAndLearned& from) {
  Table table;
  table.name = "readings";
  table.ofRigs = false;
  table.rig = rig;
  table.columns = {Told(TOLD("Learned", "read")), Told(TOLD("Learned", "expected before it")),
                   Told(TOLD("Learned", "as learned")),
                   Told(TOLD("Learned", "off, in its own spread"))};
  for (const rigs::JudgedReading& one : from.learned.judged) {
    const auto& read = from.read[one.which];
    Row row{Told::just(rigs::Clock{read.at}), {}};
    row.cells = {readCell(read.value), cellLike(read.value, one.expected),
                 cellLike(read.value, one.fitted), numberCell(one.surprise, 1)};
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace gui::telling
