// SPDX-License-Identifier: GPL-3.0-or-later
// Every key that a plan may have: where it stands, what is accepted there, what holds without it,
// an example, and what a person is told about it. The one declaration: readers, problems, forms,
// the schema and docs/plan-document.md are made from this table or held against it by tests.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_examples.hpp"
#include "rigs/plans/key_kinds.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

struct Key {
  std::string place;  // JSON pointer; "*" for the index of a list: "/rigs/*/element/power"
  ValueKind kind = ValueKind::Anything;
  QuantityKind quantity = QuantityKind::Fraction;  // of quantities and shares
  // Both ends are accepted, as a person writes them ("0.5 L"); "" where there is no range. Of a
  // list the number of entries, of a text the number of characters.
  std::string_view least = {}, most = {};
  std::vector<std::string_view> words = {};
  bool orNone = false;  // "none" may stand there in place of an object
  Need need = Need::Optional;
  // What holds if the key is left out, as it would be written; of a required key, if the whole
  // object is. "" where nothing that could be written holds.
  std::string_view standard = {};
  // Accepted there. Text without its quotation marks; numbers, objects and lists as JSON.
  std::string_view example = {};
  // English; translated where they are shown. A %1 in a label is the entry's number in its list.
  Marked label = {"", ""};  // where a form shows it
  Marked meaning = {"", ""};
  Marked otherwise = {"", ""};  // what a form says to hold, where `standard` cannot: "as the room"

  std::string_view name() const;  // "power"
};

// In the order of the document. Read once, on first use.
const std::vector<Key>& planKeys();

// The key at a place of a document, whose indices may be numbers ("/rigs/0/element/power") or "*".
// Null where no key is known.
const Key* keyAt(std::string_view place);

// The names of the keys of an object: of "/rigs/*/element" they are "power", "rated_voltage"...
const std::vector<std::string_view>& keysOf(std::string_view object);

// "0.5 to 2000 L", "1 g to 500 kg", "0 to 60"; "" where there is no range.
std::string acceptedText(const Key& key);

// The table's examples, for problems of a plan, and of a rig in a document of its own.
const Examples& planExamples();
const Examples& rigExamples();

}  // namespace rigs
