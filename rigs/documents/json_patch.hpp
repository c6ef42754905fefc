// SPDX-License-Identifier: GPL-3.0-or-later
// What one document has otherwise than another, as JSON Merge Patch: RFC 7396 (P. Hoffman and J.
// Snell, October 2014). Objects merge key by key, however deep; null takes a key out; anything
// else, a list too, replaces what was there as a whole.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

namespace rigs {

// The base with the patch applied. Throws EditError where either is not JSON.
std::string patched(std::string_view base, std::string_view patch);

// The smallest patch that makes `wanted` of the base, however either is laid out and in whichever
// order its keys stand: patched(base, patchBetween(base, wanted)) says what `wanted` says. A null
// in an object cannot be asked for by a patch: keys of `wanted` that hold null are as if left out.
std::string patchBetween(std::string_view base, std::string_view wanted);

// Whether they hold the same values under the same keys, in any order of the keys.
bool saysTheSame(std::string_view one, std::string_view other);

// The same on trees.
bool equalTrees(const nlohmann::ordered_json& one, const nlohmann::ordered_json& other);
// Both are objects.
nlohmann::ordered_json treePatch(const nlohmann::ordered_json& base,
                                 const nlohmann::ordered_json& wanted);

}  // namespace rigs
