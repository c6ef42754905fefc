// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/measured_reader.hpp"

#include <cmath>

#include "rigs/plans/keys.hpp"

namespace rigs {
namespace {

constexpr std::size_t kLongestJacket = 1000, kLongestDay = 40, kLongestReadings = 2000;

// False where it is there and wrong.
bool readSpreadWithin(const JsonCursor& at, std::string_view key, std::optional<double>& spread) {
  if (!at.has(key)) return true;
  const auto share = at.quantity<double>(key, {0.01, 1.0});
  if (share) spread = spreadOfWithin(*share);
  return share.has_value();
}

std::optional<Measured> readHowSure(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/measured"));
  Measured measured;
  const bool losses = readSpreadWithin(at, "losses_within", measured.losses);
  const bool surface = readSpreadWithin(at, "surface_within", measured.surface);
  const auto jacket = at.optionalText("jacket", "", kLongestJacket);
  const auto on = at.optionalText("on", "", kLongestDay);
  const auto readings = at.optionalText("readings", "", kLongestReadings);
  if (!losses || !surface || !jacket || !on || !readings) return std::nullopt;
  measured.jacket = *jacket;
  measured.on = *on;
  measured.readings = *readings;
  return measured;
}

}  // namespace

double spreadOfWithin(double share) { return std::log1p(share) / kNineInTen; }
double withinOfSpread(double spread) { return std::expm1(kNineInTen * spread); }

std::optional<MeasuredRead> readMeasured(const Layers& rig) {
  const auto evaporation =
      rig.with("evaporation_factor").optionalNumber("evaporation_factor", 1.0, {0.1, 5.0});
  const auto losses = rig.with("loss_factor").optionalNumber("loss_factor", 1.0, {0.2, 5.0});
  MeasuredRead read;
  bool good = evaporation && losses;
  const JsonCursor& at = rig.with("measured");
  if (at.has("measured")) {
    const auto object = at.object("measured");
    read.measured = object ? readHowSure(*object) : std::nullopt;
    good = good && read.measured;
  }
  if (!good) return std::nullopt;
  read.evaporationFactor = *evaporation;
  read.lossFactor = *losses;
  return read;
}

}  // namespace rigs
