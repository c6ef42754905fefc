// SPDX-License-Identifier: GPL-3.0-or-later
// Materials, circuits and generic rigs that a plan may name, each with its source. Part of the
// program; the data stands in rigs/data/catalogue/*.json.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/units.hpp"

namespace rigs {

// How a metal face looks, and so how it radiates.
struct Finish {
  std::string word;  // "bright"
  double emissivity = 0.0;
  std::string source;
};

enum class Use { Vessel, Lid, Jacket, Stand, Hose };

struct Material {
  std::string name;
  std::vector<Use> uses;
  physics::ThermalConductivity conductivity;
  physics::MassDensity density;
  physics::SpecificHeat specificHeat;
  std::vector<Finish> finishes;  // never empty; materials without a choice have one, named ""
  std::string source;
  std::string status;  // of conductivity, density, heat: "published", "from memory", "estimate"
  std::string note;    // what to know before using it, may be empty

  bool isFor(Use use) const;
  const Finish* finish(std::string_view word) const;  // or nullptr
};

// A usual circuit at its nominal voltage.
struct Circuit {
  std::string name;
  std::string region;
  physics::Voltage voltage;
  physics::Current current;
  double continuousShare = 1.0;  // of the current, for long use, where a rule says so
  std::string fuse;              // "BS 1362", where a fuse protects it and no breaker
  std::string source;
  std::string note;
};

// A rig without a brand, as a rig document that a plan's "from" can name.
struct GenericRig {
  std::string name;
  std::string about;
  std::string source;
  std::string_view document;
};

struct Catalogue {
  std::vector<Material> materials;
  std::vector<Finish> outsides;  // what a jacket's outside may be instead of its own material
  std::vector<Circuit> circuits;
  std::vector<GenericRig> rigs;

  const Material* material(std::string_view name) const;  // or nullptr
  const Finish* outside(std::string_view word) const;
  const Circuit* circuit(std::string_view name) const;
  const GenericRig* rig(std::string_view name) const;
  std::vector<std::string_view> namesFor(Use use) const;
};

// Read once, on first use.
const Catalogue& catalogue();

}  // namespace rigs
