// SPDX-License-Identifier: GPL-3.0-or-later
// The readers of a plan document's parts; rigs/plan_reader puts them together. Each one reports
// all problems of its part and returns nullopt if any of them is an error.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/layers.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

inline constexpr std::size_t kLongestName = 80;
inline constexpr std::size_t kLongestNote = 4000;

struct PlaceRead {
  physics::Place place;
  std::optional<physics::Length> altitude;
  std::string region;
  std::shared_ptr<const CircuitRules> ownRules;
  RoomPlan room;
};
// `folder` is where a rules file is looked up.
std::optional<PlaceRead> readPlace(const JsonCursor& at, const std::filesystem::path& folder,
                                   Problems& problems);
std::optional<Tariff> readTariff(const JsonCursor& at);
// A clock time; `absent` stands for a missing key, which is an error without it.
std::optional<physics::Time> readClock(const JsonCursor& at, std::string_view key,
                                       std::optional<std::string_view> absent = "08:00");
std::optional<Goals> readGoals(const JsonCursor& at);

// `place` sets the grain's temperature if none is stated, and the boiling point.
std::optional<physics::Batch> readBatch(const JsonCursor& at, const physics::Place& place);

// The layers of one face, outermost last; empty where the jacket leaves the face bare.
struct JacketFace {
  std::vector<physics::Layer> layers;
  double emissivity = 0.9;
  std::vector<LayerText> words = {};
};
struct Jacket {
  JacketFace side, base, lid;
  std::string skin;

  JacketText words() const;
};
std::optional<Jacket> readJacket(const JsonCursor& at);

std::optional<physics::Hose> readHose(const JsonCursor& at);
std::optional<physics::Element> readElement(const Layers& at);

struct SupplyRead {
  physics::Supply supply;
  std::string circuit;
  double continuousShare = 1.0;
  CircuitDetails details;
};
// `rig` holds both keys, or the first alone.
std::optional<SupplyRead> readSupply(const Layers& rig, std::string_view supply = "supply",
                                     std::string_view cable = "cable");
struct ElementsRead {
  std::vector<physics::Element> elements;
  physics::Wiring wiring = physics::Wiring::Parallel;
  bool onTwoCircuits = false;  // then there are two elements
};
// `rig` holds "element", or "elements" and "wired".
std::optional<ElementsRead> readElements(const Layers& rig);

struct VesselRead {
  physics::Vessel bare;
  bool hasLid = false;
  std::string finish;
};
// `rig` holds "vessel", "lid" and "stands_on".
std::optional<VesselRead> readVessel(const Layers& rig);

// `compared` is the jacket for rigs that have none, or nullptr.
std::optional<RigPlan> readRig(const JsonCursor& at, const std::filesystem::path& folder,
                               const Jacket* compared, Problems& problems);

// The catalogue's material of that name if it serves that use, or nullptr and an error.
const Material* readMaterial(const JsonCursor& at, std::string_view key, Use use);
// True, where a person wrote "none" in place of an object.
bool isNone(const JsonCursor& at, std::string_view key);
// "one of "bright", "dull""
std::string choice(const std::vector<std::string_view>& words);

}  // namespace rigs
