// SPDX-License-Identifier: GPL-3.0-or-later
// What makes a band wide: how much of it is each unknown's.
#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "rigs/answers/bands.hpp"
#include "rigs/answers/priors.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// The total effect of one input: the share of all variance that would be left if every other input
// were known, 0 to 1 but for the error of the sample. `base` are results at points, `changed` at
// the same points with that input alone drawn anew.
// Source: Jansen, Computer Physics Communications 117 (1999) 35; as Saltelli et al., Computer
// Physics Communications 181 (2010) 259, table 2 (f), from memory.
// Where one of them is kNever, ranks stand for all: how many of `base` lie below.
double totalEffect(const std::vector<double>& base, const std::vector<double>& changed);

// Total effects by BandOf and Unknown. Together they are more than 1 where unknowns matter only
// together; all 0 where a figure is the same in all days, or in none.
using BandCauses = std::array<std::array<double, kUnknowns>, kBandsOf>;
// Days for each unknown: shares are then good to a few hundredths.
inline constexpr std::size_t kDaysOfACause = 128;
// Empty where `stop` said so.
std::optional<BandCauses> bandCauses(const Plan& plan, std::size_t rig,
                                     const std::function<bool()>& stop = {},
                                     std::size_t days = kDaysOfACause);

// Those that matter most, first: up to three that are at least a twentieth each.
inline constexpr double kMatters = 0.05;
std::vector<Unknown> foremost(const std::array<double, kUnknowns>& causes);
// How much narrower a band would be if an unknown with such a share were known exactly, 0 to 1,
// where unknowns do not matter together only.
double narrowing(double share);

}  // namespace rigs
