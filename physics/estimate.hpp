// SPDX-License-Identifier: GPL-3.0-or-later
// An answer that says how far it may be trusted.
#pragma once

namespace physics {

enum class Validity { InRange, Extrapolated };

template <class T>
struct Estimate {
  T value;
  Validity validity;
};

}  // namespace physics
