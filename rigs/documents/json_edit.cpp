// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_edit.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "rigs/documents/json_parse.hpp"

namespace rigs {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::size_t kLineWidth = 100;

Json parsed(std::string_view document) {
  Problems problems;
  auto json = parseJson(document, problems);
  if (!json) throw EditError("the document is not JSON");
  return std::move(*json);
}

Json::json_pointer pointerTo(std::string_view pointer) {
  try {
    return Json::json_pointer(std::string(pointer));
  } catch (const Json::exception&) {
    throw EditError("not a JSON pointer: " + std::string(pointer));
  }
}

// The library throws where an empty name is asked of a list, as by "/rigs/".
bool holds(const Json& json, const Json::json_pointer& at) {
  try {
    return json.contains(at);
  } catch (const Json::exception&) {
    return false;
  }
}

const Json* find(const Json& json, std::string_view pointer) {
  const auto at = pointerTo(pointer);
  return holds(json, at) ? &json.at(at) : nullptr;
}

void write(const Json& node, std::size_t indent, std::size_t column, std::string& out) {
  const std::string flat = [&] {
    if (!node.is_structured()) return node.dump();
    std::string line(1, node.is_array() ? '[' : '{');
    bool first = true;
    for (const auto& item : node.items()) {
      if (!first) line += ", ";
      first = false;
      if (node.is_object()) line += Json(item.key()).dump() + ": ";
      write(item.value(), 0, kLineWidth, line);  // already over the width: one line only
    }
    return line + (node.is_array() ? ']' : '}');
  }();
  const bool oneLine = column >= kLineWidth || !node.is_structured() || node.empty() ||
                       column + flat.size() < kLineWidth;
  if (oneLine) {
    out += flat;
    return;
  }
  out += node.is_array() ? '[' : '{';
  bool first = true;
  for (const auto& item : node.items()) {
    if (!first) out += ',';
    first = false;
    out += '\n';
    out.append(indent + 2, ' ');
    std::size_t used = indent + 2;
    if (node.is_object()) {
      const std::string key = Json(item.key()).dump() + ": ";
      out += key;
      used += key.size();
    }
    write(item.value(), indent + 2, std::min(used, kLineWidth - 1), out);
  }
  out += '\n';
  out.append(indent, ' ');
  out += node.is_array() ? ']' : '}';
}

// A document's own members stand one to a line, whatever their length.
std::string printed(const Json& json) {
  std::string out;
  write(json, 0, json.is_structured() && !json.empty() ? kLineWidth - 1 : 0, out);
  return out + "\n";
}

Json& rigsOf(Json& json) {
  if (!json.is_object() || !json.contains("rigs") || !json["rigs"].is_array()) {
    throw EditError("the document has no rigs");
  }
  return json["rigs"];
}

// "/" and "~" within a key, as RFC 6901 writes them.
std::string escaped(const std::string& key) {
  std::string out;
  for (const char c : key) out += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
  return out;
}

void collect(const Json& node, const std::string& pointer, Texts& texts) {
  if (node.is_structured()) {
    for (const auto& item : node.items())
      collect(item.value(), pointer + '/' + escaped(item.key()), texts);
  } else if (!node.is_null()) {
    texts[pointer] = node.is_string() ? node.get<std::string>() : node.dump();
  }
}

void requireRig(const Json& rigs, std::size_t index) {
  if (index >= rigs.size()) throw EditError("there is no such rig");
}

}  // namespace

Texts textsOf(std::string_view document) { return textsIn(parsed(document)); }

Texts textsIn(const Json& tree) {
  Texts texts;
  collect(tree, {}, texts);
  return texts;
}

std::optional<std::string> textAt(std::string_view document, std::string_view pointer) {
  const Json json = parsed(document);
  const Json* node = find(json, pointer);
  if (!node || node->is_structured()) return std::nullopt;
  return node->is_string() ? node->get<std::string>() : node->dump();
}

bool exists(std::string_view document, std::string_view pointer) {
  const Json json = parsed(document);
  return find(json, pointer) != nullptr;
}

std::optional<std::size_t> entriesAt(std::string_view document, std::string_view pointer) {
  const Json json = parsed(document);
  const Json* node = find(json, pointer);
  return node && node->is_array() ? std::optional(node->size()) : std::nullopt;
}

std::string valueAt(std::string_view document, std::string_view pointer) {
  const Json json = parsed(document);
  const Json* node = find(json, pointer);
  if (!node) throw EditError("nothing stands at " + std::string(pointer));
  return node->dump();
}

std::string withText(std::string_view document, std::string_view pointer, std::string_view text) {
  return withValue(document, pointer, Json(std::string(text)).dump());
}

std::string withValue(std::string_view document, std::string_view pointer, std::string_view json) {
  return withAll(document, {{std::string(pointer), std::string(json), false}});
}

std::string withAll(std::string_view document, const std::vector<Placed>& values) {
  Json whole = parsed(document);
  for (const Placed& one : values) {
    try {
      whole[pointerTo(one.pointer)] = one.isText ? Json(one.value) : parsed(one.value);
    } catch (const Json::exception&) {
      throw EditError("no value can stand at " + one.pointer);
    }
  }
  return printed(whole);
}

std::string without(std::string_view document, std::string_view pointer) {
  Json whole = parsed(document);
  const auto at = pointerTo(pointer);
  if (at.empty()) throw EditError("the whole document cannot be taken out");
  if (!holds(whole, at)) return printed(whole);
  Json& parent = whole[at.parent_pointer()];
  if (parent.is_array()) {
    parent.erase(std::stoul(at.back()));
  } else {
    parent.erase(at.back());
  }
  return printed(whole);
}

std::size_t rigCount(std::string_view document) {
  Json whole = parsed(document);
  return rigsOf(whole).size();
}

std::string withRigAdded(std::string_view document, std::string_view rigJson) {
  Json whole = parsed(document);
  rigsOf(whole).push_back(parsed(rigJson));
  return printed(whole);
}

std::string withRigDuplicated(std::string_view document, std::size_t index,
                              std::string_view newName) {
  Json whole = parsed(document);
  Json& rigs = rigsOf(whole);
  requireRig(rigs, index);
  Json copy = rigs[index];
  if (copy.is_object()) copy["name"] = std::string(newName);
  rigs.insert(rigs.begin() + static_cast<Json::difference_type>(index) + 1, std::move(copy));
  return printed(whole);
}

std::string withRigMoved(std::string_view document, std::size_t from, std::size_t to) {
  Json whole = parsed(document);
  Json& rigs = rigsOf(whole);
  requireRig(rigs, from);
  requireRig(rigs, to);
  Json moved = rigs[from];
  rigs.erase(from);
  rigs.insert(rigs.begin() + static_cast<Json::difference_type>(to), std::move(moved));
  return printed(whole);
}

std::string withRigRemoved(std::string_view document, std::size_t index) {
  Json whole = parsed(document);
  Json& rigs = rigsOf(whole);
  requireRig(rigs, index);
  rigs.erase(index);
  return printed(whole);
}

std::string laidOut(std::string_view document) { return printed(parsed(document)); }

}  // namespace rigs
