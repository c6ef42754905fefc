// SPDX-License-Identifier: GPL-3.0-or-later
// Every key that a plan may have: where it stands, what is accepted there, what holds without it,
// an example, and what a person is told about it. The one declaration: readers, problems, forms,
// the schema and docs/plan-document.md are made from this table or held against it by tests.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/plans/key.hpp"

namespace rigs {

// In the order of the document. Read once, on first use.
const std::vector<Key>& planKeys();

// The key at a place of a document, whose indices may be numbers ("/rigs/0/element/power") or "*".
// Null where no key is known.
const Key* keyAt(std::string_view place);

// The names of the keys of an object: of "/rigs/*/element" they are "power", "rated_voltage"...
std::vector<std::string_view> keysOf(std::string_view object);

// "0.5 to 2000 L", "1 g to 500 kg", "0 to 60"; "" where there is no range.
std::string acceptedText(const Key& key);

}  // namespace rigs
