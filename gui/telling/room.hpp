// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the room? Declared in words.hpp: roomChanges().
#pragma once

#include "gui/telling/case.hpp"

namespace gui::telling {

// The room's humidity over the day of every rig.
Picture humidityPicture(const Case& of);
// The outdoor air that would hold the planned humidity, beside what hoods move.
Picture airflowPicture(const Case& of);

}  // namespace gui::telling
