// SPDX-License-Identifier: GPL-3.0-or-later
// When the brewing happens and what energy costs then. Each reports all problems of its part and
// returns nullopt if any of them is an error.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/tariff.hpp"

namespace rigs {

std::optional<Tariff> readTariff(const JsonCursor& at);

// A clock time; `absent` stands for a missing key, which is an error without it.
std::optional<physics::Time> readClock(const JsonCursor& at, std::string_view key,
                                       std::optional<std::string_view> absent = "08:00");

// A dated example that a plan's tariff may be from. Neither seasons nor holidays are modelled: each
// document is one season's prices, and a holiday is a plan's "day": "weekend".
struct BundledTariff {
  std::string region, about;
  Tariff tariff;
};
// Read once, on first use; in the order of their file names.
const std::vector<BundledTariff>& bundledTariffs();

}  // namespace rigs
