// SPDX-License-Identifier: GPL-3.0-or-later
// Constants of nature that more than one law needs.
#pragma once

namespace physics {

inline constexpr double kMolarGasConstant = 8.314462618;  // J/(mol K), CODATA 2018
inline constexpr double kDryAirGasConstant = 287.042;     // J/(kg K)

}  // namespace physics
