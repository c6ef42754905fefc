// SPDX-License-Identifier: GPL-3.0-or-later
// How wort is chilled after the boil: a rig's chiller, and what is wanted of it.
#pragma once

#include <optional>
#include <string>

#include "physics/units.hpp"

namespace rigs {

// A rig's own. What is not stated is as here: a coil of a size that is commonly sold (common
// practice, no source).
struct Chiller {
  enum class Kind {
    Coil,         // in the kettle, cold water through it
    Counterflow,  // the wort runs through it once, in a tube within a hose
    Air           // none: left in its kettle to cool
  };
  Kind kind = Kind::Coil;
  bool isStated = false;
  std::string material = "copper";  // of the tube, in the catalogue's words
  physics::ThermalConductivity conductivity = physics::wattsPerMetreKelvin(380.0);
  physics::Length tube = physics::millimetres(9.5);  // outer diameter
  physics::Length length = physics::metres(7.5);
  bool stirred = false;  // the wort round a coil
  physics::VolumeFlow waterFlow = physics::litresPerHour(480.0);
  physics::VolumeFlow wortFlow = physics::litresPerHour(180.0);  // of a counterflow exchanger

  bool operator==(const Chiller&) const = default;
};

// The batch's and the place's part.
struct Chilling {
  physics::Temperature pitching = physics::celsius(20.0);
  physics::Time hotStand = physics::seconds(0.0);  // between boil and chilling
  std::optional<physics::Temperature> water = {};  // empty: as cold as the brewing water
  bool isStated = false;                           // any of it

  bool operator==(const Chilling&) const = default;
};

}  // namespace rigs
