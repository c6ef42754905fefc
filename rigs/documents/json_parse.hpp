// SPDX-License-Identifier: GPL-3.0-or-later
// From bytes to a JSON tree, with everything that can be wrong on the way said in plain words.
#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <string_view>

#include "rigs/documents/problems.hpp"

namespace rigs {

// Parsed JSON that whoever holds it need not look into. Null means that `problems` has an error.
// Refused beside broken JSON: anything but UTF-8 (a byte order mark is fine), comments, repeated
// keys, more than 4 MB, 64 levels or 1000 keys in one object.
using JsonDocument = std::shared_ptr<nlohmann::ordered_json>;
JsonDocument parseJson(std::string_view bytes, Problems& problems);

}  // namespace rigs
