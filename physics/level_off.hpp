// SPDX-License-Identifier: GPL-3.0-or-later
// Where a heating comes to rest: the balance of supply and loss.
#pragma once

#include <functional>
#include <optional>

#include "physics/units.hpp"

namespace physics {

// What is lost at a temperature, increasing with it. Asked between `coldest` and some kelvins above
// boiling.
using LossAt = std::function<Power(Temperature)>;

// How far below the temperature where it levels off a heating is followed, since the rest takes
// for ever. Own choice.
inline constexpr TemperatureDifference kLevelled = kelvins(0.25);

// Where `supply` equals loss, if that lies at or below `wanted`; `coldest` where even that loses
// more. To about 1e-9 K.
std::optional<Temperature> levelOff(const LossAt& loss, Power supply, Temperature coldest,
                                    Temperature wanted);

// Where the clock of the boil starts: at boiling, or kLevelled below where the wort levels off.
// Between the two the target slides, so that it is continuous in the supply: from the boiling
// point of water on, where Shah's law is bounded and losses all but stop growing, the level-off
// goes on along the losses' slope just below, until it lies kLevelled above the boil. Own
// construction. `water` is where water boils here, not above `boils`, where the wort does.
Temperature boilBegins(const LossAt& loss, Power supply, Temperature coldest, Temperature water,
                       Temperature boils);

}  // namespace physics
