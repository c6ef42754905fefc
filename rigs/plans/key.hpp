// SPDX-License-Identifier: GPL-3.0-or-later
// What is declared of one key of a plan.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/quantities/quantity_text.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

enum class ValueKind {
  Quantity,     // text with a unit
  Share,        // a quantity of the kind Fraction; may be a bare number from 0 to 1
  WordOrShare,  // one of some words, or a share
  Number,       // without a unit
  Integer,
  Text,
  Word,   // one of some words
  Clock,  // "09:00"
  Date,   // "2026-01" or "2026-01-31"
  Price,  // "0.28 EUR/kWh"
  Object,
  List,
  Anything,  // the program does not look
};

enum class Need {
  Optional,
  Required,  // in the object it belongs to
  OneOf,     // unless another key stands in its place
  Paired,    // beside another key that says nothing without it
};

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

  // "power"
  std::string_view name() const { return std::string_view(place).substr(place.rfind('/') + 1); }
};

}  // namespace rigs
