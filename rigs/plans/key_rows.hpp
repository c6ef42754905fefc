// SPDX-License-Identifier: GPL-3.0-or-later
// How the table of keys is written down: object by object, each with all of its places.
#pragma once

#include <initializer_list>
#include <string_view>
#include <utility>
#include <vector>

#include "rigs/plans/key_kinds.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "rigs/words/told.hpp"

namespace rigs::key_rows {

struct Accepted {
  ValueKind kind = ValueKind::Anything;
  QuantityKind quantity = QuantityKind::Fraction;
  std::string_view least = {}, most = {};
  std::vector<std::string_view> words = {};
  bool orNone = false;
};

inline Accepted quantity(QuantityKind kind, std::string_view least, std::string_view most) {
  return {.kind = ValueKind::Quantity, .quantity = kind, .least = least, .most = most};
}
inline Accepted share(std::string_view least, std::string_view most) {
  return {.kind = ValueKind::Share, .least = least, .most = most};
}
inline Accepted number(std::string_view least, std::string_view most) {
  return {.kind = ValueKind::Number, .least = least, .most = most};
}
inline Accepted integer(std::string_view least = {}, std::string_view most = {}) {
  return {.kind = ValueKind::Integer, .least = least, .most = most};
}
inline Accepted text(std::string_view longest = "80") {
  return {.kind = ValueKind::Text, .most = longest};
}
inline Accepted word(std::initializer_list<std::string_view> words) {
  return {.kind = ValueKind::Word, .words = words};
}
inline Accepted list(std::string_view least, std::string_view most) {
  return {.kind = ValueKind::List, .least = least, .most = most};
}
inline Accepted only(ValueKind kind) { return {.kind = kind}; }
inline Accepted object() { return only(ValueKind::Object); }
inline Accepted objectOrNone() { return {.kind = ValueKind::Object, .orNone = true}; }

struct Row {
  std::string_view name = {};
  Accepted value = {};
  Need need = Need::Optional;
  std::string_view standard = {}, example = {};
  Marked label = {"", ""}, meaning = {"", ""}, otherwise = {"", ""};
};

// What is said of a key at one place of several, in place of its row's words; "" keeps the row's.
struct OwnWords {
  std::string_view place = {};
  Marked label = {"", ""}, meaning = {"", ""}, otherwise = {"", ""};
};

struct Part {
  std::vector<std::string_view> places = {};  // of the object, "" for the whole document
  std::vector<Row> rows = {};
  std::vector<OwnWords> own = {};
  bool mayHaveNote = true;
};

// Each in a file of its own: key_rows_batch.cpp and so on.
std::vector<Part> batchParts();  // and the plan itself
std::vector<Part> placeParts();  // and the goals
std::vector<Part> tariffParts();
std::vector<Part> rigParts();   // and jackets
std::vector<Part> gearParts();  // that a rig may have besides
std::vector<Part> circuitParts();

}  // namespace rigs::key_rows
