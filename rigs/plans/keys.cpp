// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/keys.hpp"

#include <string>
#include <unordered_map>

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

// "/rigs/*/name" of "/rigs/0/name".
std::string withoutNumbers(std::string_view place) {
  std::string pattern;
  while (place.starts_with('/')) {
    place.remove_prefix(1);
    const std::string_view step = place.substr(0, place.find('/'));
    place.remove_prefix(step.size());
    const bool index =
        !step.empty() && step.find_first_not_of("0123456789") == std::string_view::npos;
    pattern += '/';
    pattern += index ? "*" : step;
  }
  return pattern;
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
    add(keys, key_rows::gearParts());
    add(keys, key_rows::circuitParts());
    return keys;
  }();
  return all;
}

const Key* keyAt(std::string_view place) {
  static const auto byPlace = [] {
    std::unordered_map<std::string_view, const Key*> all;
    for (const Key& key : planKeys()) all.emplace(key.place, &key);
    return all;
  }();
  const auto at = byPlace.find(withoutNumbers(place));
  return at == byPlace.end() ? nullptr : at->second;
}

const std::vector<std::string_view>& keysOf(std::string_view object) {
  static const auto byObject = [] {
    std::unordered_map<std::string_view, std::vector<std::string_view>> all;
    for (const Key& key : planKeys()) {
      const std::string_view place = key.place;
      all[place.substr(0, place.rfind('/'))].push_back(key.name());
    }
    return all;
  }();
  static const std::vector<std::string_view> none;
  const auto at = byObject.find(withoutNumbers(object));
  return at == byObject.end() ? none : at->second;
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
