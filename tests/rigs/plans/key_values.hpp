// SPDX-License-Identifier: GPL-3.0-or-later
// What a document holds for a key of the table, and the published schema that describes it.
#pragma once

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "rigs/plans/keys.hpp"

namespace test_support {

inline bool isAmount(const rigs::Key& key) {
  return key.kind == rigs::ValueKind::Quantity || key.kind == rigs::ValueKind::Share ||
         key.kind == rigs::ValueKind::WordOrShare;
}
inline bool isNumber(const rigs::Key& key) {
  return key.kind == rigs::ValueKind::Number || key.kind == rigs::ValueKind::Integer;
}
inline bool isJson(const rigs::Key& key) {
  return isNumber(key) || key.kind == rigs::ValueKind::Object ||
         key.kind == rigs::ValueKind::List || key.kind == rigs::ValueKind::Anything;
}

// As a document has it.
inline nlohmann::ordered_json written(const rigs::Key& key, std::string_view text) {
  const bool json = isJson(key) && !(key.orNone && text == "none");
  return json ? nlohmann::ordered_json::parse(text) : nlohmann::ordered_json(std::string(text));
}

inline const nlohmann::ordered_json& planSchema() {
  static const nlohmann::ordered_json read = [] {
    std::ifstream in(std::string(HEATLEDGER_SOURCE_DIR) + "/rigs/data/schemas/plan.schema.json");
    return nlohmann::ordered_json::parse(in);
  }();
  return read;
}

}  // namespace test_support
