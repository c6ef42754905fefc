// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/kettle_size.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "rigs/documents/quantity_problems.hpp"

namespace rigs {
namespace {

using physics::Length;
using physics::Volume;

constexpr double kSmallest = 1.0, kLargest = 2000.0;  // L

}  // namespace

KettleSize kettleOf(Volume volume, double heightByWidth) {
  const double cubicMetres = 1e-3 * physics::inLitres(volume);
  assert(cubicMetres > 0.0 && heightByWidth > 0.0);
  const double wide = std::cbrt(4.0 * cubicMetres / (std::numbers::pi * heightByWidth));
  const double width = 1e-3 * std::max(1.0, std::round(1e3 * wide));
  const double height = cubicMetres / (std::numbers::pi / 4.0 * width * width);
  return {physics::metres(width), physics::metres(1e-4 * std::max(1.0, std::round(1e4 * height)))};
}

std::optional<Volume> readKettleVolume(std::string_view typed, std::string_view place,
                                       Problems& problems) {
  const AcceptedQuantity accepted{kKindOf<Volume>, kSmallest * 1e-3, kLargest * 1e-3, "40 L"};
  const auto read = parseQuantity<Volume>(typed);
  if (read && physics::inLitres(*read) >= kSmallest && physics::inLitres(*read) <= kLargest)
    return *read;
  problems.push_back(
      {Severity::Error, std::string(place),
       read ? outOfRange(typed, accepted) : quantityProblem(*read.fault, typed, accepted)});
  return std::nullopt;
}

std::string inMillimetresText(Length length) {
  return formatNumber(0.1 * std::round(10.0 * physics::inMillimetres(length)),
                      {.significantDigits = 5, .decimals = {}}) +
         " mm";
}

}  // namespace rigs
