// SPDX-License-Identifier: GPL-3.0-or-later
// How sure is this? The tables: bands rig by rig, and what makes those of one rig wide.
#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "gui/telling/band_picture.hpp"
#include "gui/telling/sure.hpp"
#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

using physics::Time;
using rigs::Band;
using rigs::BandOf;
using rigs::Bands;
using rigs::placeOf;
using rigs::Told;

// Rows of a band, of those rigs whose days come to it.
class SureTable {
 public:
  explicit SureTable(const Case& of) : of_(of), table_("sure", of) {}

  void addRolls() {
    table_.heading(Told(TOLD("Sure", "Rolls")));
    table_.row(Told(TOLD("Sure", "share of such days, %")), [&](std::size_t i) -> Cell {
      const Bands* bands = of_.rig(i).bands.get();
      return bands ? numberCell(100.0 * bands->rolls, 0) : std::nullopt;
    });
  }

  void addClock(const rigs::Template<0>& heading, const std::string& place,
                Band<Time> Bands::*which) {
    addThree(
        heading, Told(TOLD("Sure", "1 day in 10 before")), Told(TOLD("Sure", "middle")),
        Told(TOLD("Sure", "1 day in 10 after")), place, "_s", which,
        [&](std::size_t i, const Time& time) { return Cell(of_.clockAt(i, time)); }, kNotAtAll);
  }
  template <class Q, class Make>
  void add(const rigs::Template<0>& heading, const std::string& place, const std::string& unit,
           Band<Q> Bands::*which, const Make& make) {
    addThree(
        heading, Told(TOLD("Sure", "1 day in 10 below")), Told(TOLD("Sure", "middle")),
        Told(TOLD("Sure", "1 day in 10 above")), place, unit, which,
        [&make](std::size_t, const Q& q) { return make(q); }, kNothing);
  }
  template <class Q>
  void add(const rigs::Template<0>& heading, const std::string& place, const std::string& unit,
           Band<Q> Bands::*which) {
    add(heading, place, unit, which, [](const Q& q) { return cellOf(q); });
  }

  Table take() { return table_.take(); }

 private:
  enum IfNever { kNothing, kNotAtAll };

  template <class Q, class Make>
  void addThree(const rigs::Template<0>& heading, Told low, Told middle, Told high,
                const std::string& place, const std::string& unit, Band<Q> Bands::*which,
                const Make& make, IfNever ifNever) {
    table_.heading(Told(heading));
    const RowOptions options{.decimals = decimals(which, make)};
    const auto row = [&](Told label, const char* key, std::optional<Q> Band<Q>::*end) {
      RowOptions own = options;
      own.result = "/bands/" + place + key + unit;
      table_.row(
          std::move(label),
          [&](std::size_t i) -> Cell {
            const Bands* bands = of_.rig(i).bands.get();
            if (!bands) return std::nullopt;
            const Band<Q>& band = bands->*which;
            if (band.*end) return make(i, *(band.*end));
            if (ifNever == kNothing) return std::nullopt;
            return Cell(Told(TOLD("Sure", "not at all")));
          },
          own);
    };
    row(std::move(low), "/low", &Band<Q>::low);
    row(std::move(middle), "/middle", &Band<Q>::middle);
    row(std::move(high), "/high", &Band<Q>::high);
  }

  // Of the narrowest, so that half of its width has one digit.
  template <class Q, class Make>
  std::optional<int> decimals(Band<Q> Bands::*which, const Make& make) const {
    std::optional<double> narrowest;
    for (std::size_t i = 0; i < of_.count(); ++i) {
      const Bands* bands = of_.rig(i).bands.get();
      if (!bands || !(bands->*which).low || !(bands->*which).high) continue;
      const auto low = cellNumber(make(i, *(bands->*which).low), of_.reader);
      const auto high = cellNumber(make(i, *(bands->*which).high), of_.reader);
      if (!low || !high || *high <= *low) continue;
      narrowest = std::min(narrowest.value_or(*high - *low), *high - *low);
    }
    if (!narrowest) return std::nullopt;
    return std::clamp(-static_cast<int>(std::floor(std::log10(*narrowest / 2.0))), 0, 3);
  }

  const Case& of_;
  RigTable table_;
};

struct Head {
  BandOf figure;
  Told text;
};

std::vector<Head> headsOf(const Bands& bands) {
  std::vector<Head> heads{{BandOf::WaterReady, Told(TOLD("Sure", "water"))},
                          {BandOf::BoilBegins, Told(TOLD("Sure", "boil"))},
                          {BandOf::Over, Told(TOLD("Sure", "over"))},
                          {BandOf::BoilOff, Told(TOLD("Sure", "boil-off"))},
                          {BandOf::Result, Told(TOLD("Sure", "wort"))},
                          {BandOf::FromWall, Told(TOLD("Sure", "energy"))}};
  if (bands.morning.middle) heads.push_back({BandOf::Morning, Told(TOLD("Sure", "morning"))});
  return heads;
}

}  // namespace

Table sureTable(const Case& of) {
  SureTable table(of);
  table.addRolls();
  table.addClock(TOLD("Sure", "Strike water ready"), "water_ready", &Bands::waterReady);
  table.addClock(TOLD("Sure", "Boil begins"), "boil_begins", &Bands::boilBegins);
  table.addClock(TOLD("Sure", "Day is over"), "over", &Bands::over);
  table.add(TOLD("Sure", "Boils off"), "boil_off", "_share_of_pre_boil_per_h", &Bands::boilOff,
            [](double share) { return cellOf(rigs::perHour(share)); });
  table.add(TOLD("Sure", "Wort in the end, cold"), "result", "_L", &Bands::result);
  table.add(TOLD("Sure", "The mash in the morning"), "morning", "_C", &Bands::morning);
  table.add(TOLD("Sure", "Least heat that rolls"), "least_to_roll", "_W", &Bands::leastToRoll);
  table.add(TOLD("Sure", "From the wall"), "from_wall", "_kWh", &Bands::fromWall);
  table.add(TOLD("Sure", "A batch costs"), "cost", "", &Bands::cost, [&](double cost) {
    return Cell(rigs::Money{cost, of.plan.tariff.currency});
  });
  return table.take();
}

Table causesTable(const Case& of, std::size_t rig) {
  const rigs::SureAnswer& sure = *of.rig(rig).sure;
  Table table;
  table.name = "sure";
  table.ofRigs = false;
  table.rig = rig;
  const std::vector<Head> heads = headsOf(sure.bands);
  for (const Head& head : heads) table.columns.push_back(head.text);
  table.heading(Told(TOLD("Sure", "How much of the width hangs on it, %")));
  for (std::size_t k = 0; k < rigs::kUnknowns; ++k) {
    Row row{.label = unknownName(static_cast<rigs::Unknown>(k)), .cells = {}};
    for (const Head& head : heads)
      row.cells.push_back(numberCell(100.0 * sure.causes[placeOf(head.figure)][k], 0));
    table.rows.push_back(std::move(row));
  }
  return table;
}

Picture surePicture(const Case& of, std::size_t rig) {
  Picture picture = temperaturePicture(
      of, of.text(Told(TOLD("Sure", "Temperature of %1: 8 of 10 such days lie in the wash"),
                       of.named(rig))));
  addBand(picture, of, rig, of.rig(rig).sure->course);
  return picture;
}

}  // namespace gui::telling
