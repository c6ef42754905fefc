// SPDX-License-Identifier: GPL-3.0-or-later
// What may stand at a key of a plan, and whether something has to.
#pragma once

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

}  // namespace rigs
