// SPDX-License-Identifier: GPL-3.0-or-later
// Changing a plan document one value at a time. What nobody changed keeps its text, its place and
// its unknown keys; only the layout is ours: what fits on a line stands on one.
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace rigs {

// The document is not JSON, or the place does not exist: the caller broke the contract, since
// documents are edited only after they have been read.
class EditError : public std::logic_error {
 public:
  using std::logic_error::logic_error;
};

// JSON pointer to text; numbers and booleans as written. Empty objects and arrays are left out.
using Texts = std::map<std::string, std::string, std::less<>>;

// Every text, number and boolean of a document.
Texts textsOf(std::string_view document);
Texts textsIn(const nlohmann::ordered_json& tree);

// The text at a JSON pointer ("/rigs/0/element/power"); numbers and booleans as written; nothing
// if the place is empty or holds an object or an array.
std::optional<std::string> textAt(std::string_view document, std::string_view pointer);
bool exists(std::string_view document, std::string_view pointer);
// Of the list that stands there; nothing where none does.
std::optional<std::size_t> entriesAt(std::string_view document, std::string_view pointer);

// Puts a text there, making the objects on the way. Numbers at the place become text.
std::string withText(std::string_view document, std::string_view pointer, std::string_view text);
// Puts any JSON value there ("-" at the end of an array's pointer appends).
std::string withValue(std::string_view document, std::string_view pointer, std::string_view json);
// Several at once, in this order; the document is read and laid out once.
struct Placed {
  std::string pointer;
  std::string value;
  bool isText = true;  // else any JSON value
};
std::string withAll(std::string_view document, const std::vector<Placed>& values);
std::string without(std::string_view document, std::string_view pointer);
// As it stands there, as JSON text.
std::string valueAt(std::string_view document, std::string_view pointer);

// Rigs by their index in "rigs".
std::size_t rigCount(std::string_view document);
std::string withRigAdded(std::string_view document, std::string_view rigJson);
// What is no rig at all is duplicated as it is.
std::string withRigDuplicated(std::string_view document, std::size_t index,
                              std::string_view newName);
std::string withRigMoved(std::string_view document, std::size_t from, std::size_t to);
std::string withRigRemoved(std::string_view document, std::size_t index);

// The same document laid out anew.
std::string laidOut(std::string_view document);

}  // namespace rigs
