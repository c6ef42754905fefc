// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/keys.hpp"

#include <algorithm>

#include "rigs/plans/key_rows.hpp"

namespace rigs {
namespace {

using key_rows::OwnWords;
using key_rows::Part;
using key_rows::Row;

const Marked& either(const Marked& own, const Marked& usual) {
  return *own.english == '\0' ? usual : own;
}

Key keyFrom(std::string_view object, const Row& row, const std::vector<OwnWords>& own) {
  Key key{.place = std::string(object) + '/' + std::string(row.name),
          .kind = row.value.kind,
          .quantity = row.value.quantity,
          .least = row.value.least,
          .most = row.value.most,
          .words = row.value.words,
          .orNone = row.value.orNone,
          .need = row.need,
          .standard = row.standard,
          .example = row.example,
          .label = row.label,
          .meaning = row.meaning,
          .otherwise = row.otherwise};
  for (const OwnWords& words : own) {
    if (words.place != key.place) continue;
    key.label = either(words.label, key.label);
    key.meaning = either(words.meaning, key.meaning);
    key.otherwise = either(words.otherwise, key.otherwise);
  }
  return key;
}

void add(std::vector<Key>& keys, const std::vector<Part>& parts) {
  static const Row kNote{
      .name = "note",
      .example = R"("a remark")",
      .meaning = TOLD("PlanFields", "For readers; the program does not look at it.")};
  for (const Part& part : parts) {
    for (const std::string_view object : part.places) {
      for (const Row& row : part.rows) keys.push_back(keyFrom(object, row, part.own));
      if (part.mayHaveNote) keys.push_back(keyFrom(object, kNote, {}));
    }
  }
}

// Takes the first step off a pointer: "rigs" off "/rigs/0".
std::string_view step(std::string_view& pointer) {
  pointer.remove_prefix(1);
  const std::string_view first = pointer.substr(0, pointer.find('/'));
  pointer.remove_prefix(first.size());
  return first;
}

bool matches(std::string_view pattern, std::string_view place) {
  while (pattern.starts_with('/') && place.starts_with('/')) {
    const std::string_view wanted = step(pattern);
    const std::string_view found = step(place);
    const bool index =
        !found.empty() && found.find_first_not_of("0123456789") == std::string_view::npos;
    if (wanted != found && !(wanted == "*" && index)) return false;
  }
  return pattern.empty() && place.empty();
}

// Of a document that stands at `root` of a plan.
class KeyExamples : public Examples {
 public:
  explicit KeyExamples(std::string root) : root_(std::move(root)) {}
  std::optional<Example> at(std::string_view place) const override {
    const Key* key = keyAt(root_ + std::string(place));
    return key ? std::optional(Example{key->example, key->orNone}) : std::nullopt;
  }

 private:
  std::string root_;
};

}  // namespace

const Examples& planExamples() {
  static const KeyExamples all("");
  return all;
}
const Examples& rigExamples() {
  static const KeyExamples all("/rigs/*");
  return all;
}

std::string_view Key::name() const { return std::string_view(place).substr(place.rfind('/') + 1); }

const std::vector<Key>& planKeys() {
  static const std::vector<Key> all = [] {
    std::vector<Key> keys;
    add(keys, key_rows::batchParts());
    add(keys, key_rows::placeParts());
    add(keys, key_rows::tariffParts());
    add(keys, key_rows::rigParts());
    add(keys, key_rows::circuitParts());
    return keys;
  }();
  return all;
}

const Key* keyAt(std::string_view place) {
  const auto& keys = planKeys();
  const auto at = std::find_if(keys.begin(), keys.end(),
                               [place](const Key& key) { return matches(key.place, place); });
  return at == keys.end() ? nullptr : &*at;
}

std::vector<std::string_view> keysOf(std::string_view object) {
  std::vector<std::string_view> names;
  for (const Key& key : planKeys()) {
    const std::string_view place = key.place;
    if (matches(place.substr(0, place.rfind('/')), object)) names.push_back(key.name());
  }
  return names;
}

std::string acceptedText(const Key& key) {
  if (key.least.empty()) return {};
  const auto unit = [](std::string_view text) {
    const std::size_t space = text.find(' ');
    return space == std::string_view::npos ? std::string_view() : text.substr(space);
  };
  const std::string_view low = unit(key.least) == unit(key.most)
                                   ? key.least.substr(0, key.least.size() - unit(key.least).size())
                                   : key.least;
  return std::string(low) + " to " + std::string(key.most);
}

}  // namespace rigs
