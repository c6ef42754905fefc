// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan accepts, where more than one reader asks: documents, terminal options, fields.
#pragma once

#include "physics/units.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs::ranges {

inline constexpr Range<physics::Temperature> kRoom{physics::celsius(-10.0), physics::celsius(50.0)};
inline constexpr Range<physics::Temperature> kWater{physics::celsius(0.5), physics::celsius(95.0)};
inline constexpr Range<double> kHumidity{0.01, 1.0};
inline constexpr Range<physics::Length> kAltitude{physics::metres(-430.0), physics::metres(5200.0)};
inline constexpr Range<physics::Voltage> kVoltage{physics::volts(12.0), physics::volts(690.0)};
inline constexpr Range<physics::Current> kCircuit{physics::amperes(1.0), physics::amperes(400.0)};
inline constexpr Range<physics::Length> kRodDiameter{physics::metres(0.003), physics::metres(0.04)};
inline constexpr Range<physics::Length> kHeatedLength{physics::metres(0.05), physics::metres(20.0)};
inline constexpr Range<physics::Time> kWithin{physics::minutes(1.0), physics::hours(12.0)};
inline const Range<FractionPerTime> kBoilOff{0.001 / physics::hours(1.0),
                                             0.5 / physics::hours(1.0)};
inline constexpr Range<double> kHeadspace{0.0, 0.8};
inline constexpr Range<physics::Time> kUnplugged{physics::minutes(1.0), physics::hours(48.0)};

}  // namespace rigs::ranges
