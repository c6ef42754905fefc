// SPDX-License-Identifier: GPL-3.0-or-later
// The only reader of raw JSON. Reading never throws and never stops at the first problem: every
// one goes to Problems with its place.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "rigs/documents/json_examples.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// Both ends are allowed values.
template <class Q>
struct Range {
  Q min;
  Q max;
};
struct CountRange {
  std::size_t min = 0;
  std::size_t max = 100;
};

// Characters of a note or a source in bundled data.
inline constexpr std::size_t kLongestText = 600;

// A place in a document. Cheap to copy; the document and the list of problems must outlive it.
//
// A reader that returns std::optional leaves an error behind whenever it returns nullopt, except
// the ...IfGiven ones, where nullopt also means that the key is absent. null is not absence.
class JsonCursor {
 public:
  // `examples` are shown by problems; null where the document has none of its own.
  JsonCursor(const nlohmann::ordered_json& node, Problems& problems, std::string where = {},
             const Examples* examples = nullptr);

  // JSON pointer: "/elements/1".
  const std::string& where() const { return where_; }
  // A copy of what stands here, for whoever puts it together with others.
  JsonDocument tree() const;

  // Objects within objects.
  bool has(std::string_view key) const;
  bool isText(std::string_view key) const;
  // Where text stands, that text, whatever is accepted there. Says nothing of problems.
  std::optional<std::string> textThere(std::string_view key) const;
  std::optional<JsonCursor> object(std::string_view key) const;
  std::optional<JsonCursor> objectIfGiven(std::string_view key) const;
  // Elements of any type. An array of the wrong length gives nullopt.
  std::optional<std::vector<JsonCursor>> array(std::string_view key, CountRange count) const;
  std::vector<JsonCursor> arrayIfGiven(std::string_view key, CountRange count) const;
  // Leaves out what is not an object, with an error.
  std::optional<std::vector<JsonCursor>> objects(std::string_view key, CountRange count) const;
  std::vector<JsonCursor> objectsIfGiven(std::string_view key, CountRange count) const;
  // All keys in the order of the file, for maps from names to things.
  std::vector<std::string> keys() const;

  // Quantities are text with a unit; fractions (double) may also be JSON numbers from 0 to 1.
  template <Writable Q>
  std::optional<Q> quantity(std::string_view key, const Range<Q>& range) const {
    const auto child =
        requiredQuantity(key, kKindOf<Q>, detail::siNumber(range.min), detail::siNumber(range.max));
    return child ? child->asQuantity(range) : std::nullopt;
  }
  // Absent gives the default.
  template <Writable Q>
  std::optional<Q> optionalQuantity(std::string_view key, const Q& absent,
                                    const Range<Q>& range) const {
    const auto child = given(key);
    return child ? child->asQuantity(range) : std::optional<Q>(absent);
  }
  template <Writable Q>
  std::optional<Q> quantityIfGiven(std::string_view key, const Range<Q>& range) const {
    const auto child = given(key);
    return child ? child->asQuantity(range) : std::nullopt;
  }

  // Lengths are counted in characters. Control characters are refused.
  std::optional<std::string> text(std::string_view key, std::size_t longest) const;
  std::optional<std::string> optionalText(std::string_view key, std::string_view absent,
                                          std::size_t longest) const;

  // Bare numbers, for what has no unit.
  std::optional<double> number(std::string_view key, Range<double> range) const;
  std::optional<double> optionalNumber(std::string_view key, double absent,
                                       Range<double> range) const;
  std::optional<int> integer(std::string_view key, Range<int> range) const;
  std::optional<int> optionalInteger(std::string_view key, int absent, Range<int> range) const;
  std::optional<bool> optionalBoolean(std::string_view key, bool absent) const;

  // One of some words: oneOf("shape", {"flat", "round"}), or with what each of them stands for:
  // oneOf<Shape>("shape", {{"flat", Shape::Flat}, {"round", Shape::Round}}).
  using Words = std::initializer_list<std::string_view>;
  template <class Meaning>
  using WordsFor = std::initializer_list<std::pair<std::string_view, Meaning>>;

  std::optional<std::string> oneOf(std::string_view key, Words words) const;
  template <class Meaning>
  std::optional<Meaning> oneOf(std::string_view key, WordsFor<Meaning> words) const {
    const auto child = required(key, neededWord(names(words)));
    return child ? child->asOneOf(words) : std::nullopt;
  }
  template <class Meaning>
  std::optional<Meaning> optionalOneOf(std::string_view key, Meaning absent,
                                       WordsFor<Meaning> words) const {
    const auto child = given(key);
    return child ? child->asOneOf(words) : std::optional<Meaning>(absent);
  }

  // The node itself, for elements of arrays.
  template <Writable Q>
  std::optional<Q> asQuantity(const Range<Q>& range) const {
    const auto si =
        quantityNumber(kKindOf<Q>, detail::siNumber(range.min), detail::siNumber(range.max));
    return si ? std::optional<Q>(detail::fromSiNumber<Q>(*si)) : std::nullopt;
  }
  std::optional<JsonCursor> asObject() const;
  std::optional<std::string> asText(std::size_t longest) const;
  std::optional<double> asNumber(Range<double> range) const;
  std::optional<int> asInteger(Range<int> range) const;
  std::optional<bool> asBoolean() const;

  // A warning for every other key, with the nearest known one.
  void warnAboutKeysExcept(std::initializer_list<std::string_view> known) const;
  void warnAboutKeysExcept(const std::vector<std::string_view>& known) const;

  // Problems that the caller found, at this place or at one of its keys.
  void error(Told message) const;
  void error(std::string_view key, Told message) const;
  void warn(std::string_view key, Told message) const;

 private:
  JsonCursor at(const nlohmann::ordered_json& node, std::string where) const;
  std::optional<Example> exampleAt(const std::string& place) const;
  std::string plainExample(std::string text, std::size_t longest) const;
  std::string textAt(const std::string& place, std::string_view key) const;
  std::string listAt(const std::string& place, std::string_view key) const;
  Verbatim numberAt(const std::string& place, const Range<double>& range) const;
  std::optional<JsonCursor> given(std::string_view key) const;
  std::optional<JsonCursor> required(std::string_view key, Told needed) const;
  std::optional<JsonCursor> requiredQuantity(std::string_view key, QuantityKind kind, double min,
                                             double max) const;
  std::optional<double> quantityNumber(QuantityKind kind, double min, double max) const;
  std::optional<std::size_t> wordIndex(const std::vector<std::string_view>& words) const;
  std::optional<std::vector<JsonCursor>> elements(CountRange count) const;
  void wrongType(Told needed) const;  // "... is needed"
  std::string pointerTo(std::string_view key) const;
  std::string_view key() const;  // what this place is called; "" for the whole document

  static Told neededWord(const std::vector<std::string_view>& words);
  template <class Meaning>
  static std::vector<std::string_view> names(WordsFor<Meaning> words) {
    std::vector<std::string_view> result;
    for (const auto& word : words) result.push_back(word.first);
    return result;
  }
  template <class Meaning>
  std::optional<Meaning> asOneOf(WordsFor<Meaning> words) const {
    const auto index = wordIndex(names(words));
    return index ? std::optional<Meaning>((words.begin() + *index)->second) : std::nullopt;
  }

  const nlohmann::ordered_json* node_;
  Problems* problems_;
  std::string where_;
  const Examples* examples_;
};

// The word a person may have meant, "" when none is near.
std::string_view nearestWord(std::string_view written, const std::vector<std::string_view>& known);

}  // namespace rigs
