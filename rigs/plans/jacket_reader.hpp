// SPDX-License-Identifier: GPL-3.0-or-later
// What a kettle is wrapped in, and the hose outside it. Each reports all problems of its part and
// returns nullopt if any of them is an error.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/jacket_text.hpp"

namespace rigs {

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

}  // namespace rigs
