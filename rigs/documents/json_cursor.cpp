// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_cursor.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "rigs/documents/json_examples.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/documents/quantity_problems.hpp"

namespace rigs {

using Json = nlohmann::ordered_json;

namespace {

std::string escaped(std::string_view key) {
  std::string result;
  for (const char c : key) {
    if (c == '~') {
      result += "~0";
    } else if (c == '/') {
      result += "~1";
    } else {
      result += c;
    }
  }
  return result;
}

// What stands there, as the start of a sentence.
Told found(const Json& node) {
  if (node.is_null()) return Told(TOLD("Problem", "null says nothing"));
  if (node.is_boolean())
    return node.get<bool>() ? Told(TOLD("Problem", "true is no answer"))
                            : Told(TOLD("Problem", "false is no answer"));
  if (node.is_array()) return Told(TOLD("Problem", "a list stands here"));
  if (node.is_object()) return Told(TOLD("Problem", "an object stands here"));
  if (node.is_string())
    return Told(TOLD("Problem", "%1 is text"), Quoted{node.get_ref<const std::string&>()});
  return Told(TOLD("Problem", "%1 is a number"), Verbatim{node.dump()});
}

constexpr FormatOptions kDigits{.significantDigits = 6, .decimals = {}};

Told between(const Range<double>& range) {
  return rangeTold(range.min, range.max, Number{range.min, kDigits}, Number{range.max, kDigits});
}

// One that nobody stumbles over: 1 where it is allowed. As a document writes it.
Verbatim numberExample(const Range<double>& range) {
  const double example = range.min <= 1.0 && 1.0 <= range.max ? 1.0
                         : std::isfinite(range.min)           ? range.min
                                                              : range.max;
  return {formatNumber(example, kDigits)};
}

// The first characters of a text, and how many it has. Broken UTF-8 does not get this far.
std::string firstCharacters(std::string_view text, std::size_t count) {
  std::size_t at = 0;
  for (std::size_t seen = 0; at < text.size(); ++at) {
    const bool begins = (static_cast<unsigned char>(text[at]) & 0xc0) != 0x80;
    if (begins && seen++ == count) break;
  }
  return std::string(text.substr(0, at));
}
std::size_t characters(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
  }));
}

Told neededText(const std::string& example) {
  return withExample(Told(TOLD("Problem", "text in quotation marks is needed")), inQuotes(example));
}

// Of what a person wrote.
Told withQuoted(Told told, const std::string& text) {
  return withExample(std::move(told), Verbatim{quotedText(text)});
}

// Where there is one.
Told withJson(Told told, std::string_view example) {
  return example.empty() ? told : withExample(std::move(told), Verbatim{std::string(example)});
}

Told neededObject(const std::optional<Example>& example) {
  Told told = withJson(Told(TOLD("Problem", "an object is needed")), example ? example->text : "");
  return example && example->orNone ? Told(TOLD("Problem", "%1, or \"none\""), std::move(told))
                                    : told;
}

Told neededList(std::string_view example) {
  return withJson(Told(TOLD("Problem", "a list is needed")), example);
}

Range<double> inNumbers(const Range<int>& range) {
  return {static_cast<double>(range.min), static_cast<double>(range.max)};
}

bool isControl(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte < 0x20 || byte == 0x7f;
}

// The conversion of a unit may miss an end of the range by its last digit: 212 °F is 100 °C.
std::optional<double> within(double si, double min, double max) {
  constexpr double kRounding = 1e-12;
  if (si < min - kRounding * std::abs(min) || si > max + kRounding * std::abs(max))
    return std::nullopt;
  return std::clamp(si, min, max);
}

// Number of single-letter slips (one missing, one more, another one, two swapped).
std::size_t slips(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1);
  std::vector<std::size_t> last(b.size() + 1);
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t other = a[i - 1] == b[j - 1] ? 0 : 1;
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + other});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before.swap(last);
    last.swap(row);
  }
  return last[b.size()];
}

std::string simplified(std::string_view word) {
  std::string result;
  for (const char c : word) {
    const bool capital = 'A' <= c && c <= 'Z';
    result += capital ? static_cast<char>(c - 'A' + 'a') : c == '-' || c == ' ' ? '_' : c;
  }
  return result;
}

}  // namespace

std::string_view nearestWord(std::string_view written, const std::vector<std::string_view>& known) {
  constexpr std::size_t kLongestWord = 64;
  if (written.size() > kLongestWord) return {};
  const std::string plain = simplified(written);
  std::string_view nearest;
  std::size_t fewest = std::max<std::size_t>(1, written.size() / 3) + 1;
  for (const std::string_view word : known) {
    const std::size_t count = slips(plain, simplified(word));
    if (count < fewest) {
      fewest = count;
      nearest = word;
    }
  }
  return nearest;
}

JsonCursor::JsonCursor(const Json& node, Problems& problems, std::string where,
                       const Examples* examples)
    : node_(&node), problems_(&problems), where_(std::move(where)), examples_(examples) {}

JsonCursor JsonCursor::at(const Json& node, std::string where) const {
  return JsonCursor(node, *problems_, std::move(where), examples_);
}

std::optional<Example> JsonCursor::exampleAt(const std::string& place) const {
  return examples_ ? examples_->at(place) : std::nullopt;
}
std::string JsonCursor::textAt(const std::string& place, std::string_view key) const {
  const auto own = exampleAt(place);
  return std::string(own ? own->text : textExample(key));
}
std::string JsonCursor::listAt(const std::string& place, std::string_view key) const {
  const auto own = exampleAt(place);
  return std::string(own ? own->text : listExample(key));
}
Verbatim JsonCursor::numberAt(const std::string& place, const Range<double>& range) const {
  const auto own = exampleAt(place);
  return own ? Verbatim{std::string(own->text)} : numberExample(range);
}

std::string JsonCursor::pointerTo(std::string_view key) const {
  return where_ + '/' + escaped(key);
}

void JsonCursor::error(Told message) const {
  problems_->push_back({Severity::Error, where_, std::move(message)});
}
void JsonCursor::error(std::string_view key, Told message) const {
  problems_->push_back({Severity::Error, pointerTo(key), std::move(message)});
}
void JsonCursor::warn(std::string_view key, Told message) const {
  problems_->push_back({Severity::Warning, pointerTo(key), std::move(message)});
}

void JsonCursor::wrongType(Told needed) const { error(advised(found(*node_), std::move(needed))); }

std::string_view JsonCursor::key() const {
  std::string_view at = where_;
  const auto isIndex = [](std::string_view part) {
    return !part.empty() && part.find_first_not_of("0123456789") == std::string_view::npos;
  };
  // An entry of a list is called like its list.
  while (isIndex(at.substr(at.rfind('/') + 1)) && at.rfind('/') != std::string_view::npos)
    at = at.substr(0, at.rfind('/'));
  return at.substr(at.rfind('/') + 1);
}

std::optional<JsonCursor> JsonCursor::given(std::string_view key) const {
  if (!node_->is_object()) return std::nullopt;
  const auto at = node_->find(key);
  if (at == node_->end()) return std::nullopt;
  return this->at(*at, pointerTo(key));
}

std::optional<JsonCursor> JsonCursor::required(std::string_view key, Told needed) const {
  auto child = given(key);
  if (!child) error(key, missing(key, std::move(needed)));
  return child;
}

std::optional<JsonCursor> JsonCursor::requiredQuantity(std::string_view key, QuantityKind kind,
                                                       double min, double max) const {
  auto child = given(key);
  if (!child)
    error(key, missing(key, withExample(Told(TOLD("Problem", "%1 is needed"), kindName(kind)),
                                        inQuotes(quantityExample(exampleAt(pointerTo(key)), key,
                                                                 kind, min, max)))));
  return child;
}

JsonDocument JsonCursor::tree() const { return std::make_shared<Json>(*node_); }

bool JsonCursor::has(std::string_view key) const { return given(key).has_value(); }
bool JsonCursor::isText(std::string_view key) const {
  const auto child = given(key);
  return child && child->node_->is_string();
}

std::optional<std::string> JsonCursor::textThere(std::string_view key) const {
  return isText(key) ? std::optional(given(key)->node_->get<std::string>()) : std::nullopt;
}

std::vector<std::string> JsonCursor::keys() const {
  std::vector<std::string> result;
  if (node_->is_object())
    for (const auto& entry : node_->items()) result.push_back(entry.key());
  return result;
}

std::optional<JsonCursor> JsonCursor::object(std::string_view key) const {
  const auto child = required(key, neededObject(exampleAt(pointerTo(key))));
  return child ? child->asObject() : std::nullopt;
}
std::optional<JsonCursor> JsonCursor::objectIfGiven(std::string_view key) const {
  const auto child = given(key);
  return child ? child->asObject() : std::nullopt;
}
std::optional<JsonCursor> JsonCursor::asObject() const {
  if (node_->is_object()) return *this;
  wrongType(neededObject(exampleAt(where_)));
  return std::nullopt;
}

std::optional<std::vector<JsonCursor>> JsonCursor::elements(CountRange count) const {
  if (!node_->is_array()) {
    wrongType(neededList(listAt(where_, key())));
    return std::nullopt;
  }
  if (node_->size() < count.min || node_->size() > count.max) {
    const auto size = Count{static_cast<long long>(node_->size())};
    Told has = size.value == 1 ? Told(TOLD("Problem", "this list has %1 entry"), size)
                               : Told(TOLD("Problem", "this list has %1 entries"), size);
    const Told accepted(TOLD("Problem", "%1 to %2"), Count{static_cast<long long>(count.min)},
                        Count{static_cast<long long>(count.max)});
    error(withJson(advised(std::move(has), Told(TOLD("Problem", "%1 are accepted"), accepted)),
                   listAt(where_, key())));
    return std::nullopt;
  }
  std::vector<JsonCursor> result;
  for (std::size_t i = 0; i < node_->size(); ++i)
    result.push_back(at((*node_)[i], where_ + '/' + std::to_string(i)));
  return result;
}

std::optional<std::vector<JsonCursor>> JsonCursor::array(std::string_view key,
                                                         CountRange count) const {
  const auto child = required(key, neededList(listAt(pointerTo(key), key)));
  return child ? child->elements(count) : std::nullopt;
}
std::vector<JsonCursor> JsonCursor::arrayIfGiven(std::string_view key, CountRange count) const {
  const auto child = given(key);
  if (!child) return {};
  return child->elements(count).value_or(std::vector<JsonCursor>{});
}

std::optional<std::vector<JsonCursor>> JsonCursor::objects(std::string_view key,
                                                           CountRange count) const {
  const auto all = array(key, count);
  if (!all) return std::nullopt;
  std::vector<JsonCursor> result;
  for (const JsonCursor& element : *all)
    if (const auto object = element.asObject()) result.push_back(*object);
  return result;
}
std::vector<JsonCursor> JsonCursor::objectsIfGiven(std::string_view key, CountRange count) const {
  if (!has(key)) return {};
  return objects(key, count).value_or(std::vector<JsonCursor>{});
}

std::optional<double> JsonCursor::quantityNumber(QuantityKind kind, double min, double max) const {
  const AcceptedQuantity accepted{kind, min, max,
                                  quantityExample(exampleAt(where_), key(), kind, min, max)};
  if (!node_->is_string() && !node_->is_number()) {
    wrongType(withExample(Told(TOLD("Problem", "%1 as text is needed"), kindName(kind)),
                          inQuotes(accepted.example)));
    return std::nullopt;
  }
  const std::string text = node_->is_string() ? node_->get<std::string>() : node_->dump();
  const detail::Reading reading = detail::read(kind, text);
  if (!reading.si) {
    error(quantityProblem(*reading.fault, text, accepted));
    return std::nullopt;
  }
  const auto number = within(*reading.si, min, max);
  if (!number) error(outOfRange(text, accepted));
  return number;
}

std::optional<std::string> JsonCursor::text(std::string_view key, std::size_t longest) const {
  const auto child = required(key, neededText(textAt(pointerTo(key), key)));
  return child ? child->asText(longest) : std::nullopt;
}
std::optional<std::string> JsonCursor::optionalText(std::string_view key, std::string_view absent,
                                                    std::size_t longest) const {
  const auto child = given(key);
  return child ? child->asText(longest) : std::optional<std::string>(absent);
}
std::optional<std::string> JsonCursor::asText(std::size_t longest) const {
  if (!node_->is_string()) {
    wrongType(neededText(textAt(where_, key())));
    return std::nullopt;
  }
  const auto& text = node_->get_ref<const std::string&>();
  const std::string plain = plainExample(text, longest);
  if (const std::size_t count = characters(text); count > longest) {
    error(withQuoted(
        advised(Told(TOLD("Problem", "%1 is too long with %2 characters"), Quoted{text},
                     Count{static_cast<long long>(count)}),
                Told(TOLD("Problem", "%1 are accepted"), Count{static_cast<long long>(longest)})),
        plain));
    return std::nullopt;
  }
  if (std::any_of(text.begin(), text.end(), isControl)) {
    error(withQuoted(advised(Told(TOLD("Problem", "%1 holds a control character"), Quoted{text}),
                             Told(TOLD("Problem", "plain text in one line is accepted"))),
                     plain));
    return std::nullopt;
  }
  return text;
}

// The table's, as not every text is a name; else what could be kept of the text itself.
std::string JsonCursor::plainExample(std::string text, std::size_t longest) const {
  if (const auto own = exampleAt(where_)) return std::string(own->text);
  std::replace_if(text.begin(), text.end(), isControl, ' ');
  text = firstCharacters(text, std::min<std::size_t>(longest, 24));
  text.erase(text.find_last_not_of(' ') + 1);
  text.erase(0, text.find_first_not_of(' '));
  return text.empty() ? std::string(textExample(key())) : text;
}

std::optional<double> JsonCursor::number(std::string_view key, Range<double> range) const {
  const auto child =
      required(key, withExample(Told(TOLD("Problem", "a number from %1 is needed"), between(range)),
                                numberAt(pointerTo(key), range)));
  return child ? child->asNumber(range) : std::nullopt;
}
std::optional<double> JsonCursor::optionalNumber(std::string_view key, double absent,
                                                 Range<double> range) const {
  const auto child = given(key);
  return child ? child->asNumber(range) : std::optional<double>(absent);
}
std::optional<double> JsonCursor::asNumber(Range<double> range) const {
  if (!node_->is_number()) {
    wrongType(withExample(Told(TOLD("Problem", "a number without quotation marks is needed")),
                          numberAt(where_, range)));
    return std::nullopt;
  }
  const double value = node_->get<double>();
  if (range.min <= value && value <= range.max) return value;
  error(withExample(advised(Told(TOLD("Problem", "%1 is out of range"), Verbatim{node_->dump()}),
                            Told(TOLD("Problem", "accepted is %1"), between(range))),
                    numberAt(where_, range)));
  return std::nullopt;
}

std::optional<int> JsonCursor::integer(std::string_view key, Range<int> range) const {
  const Range<double> numbers = inNumbers(range);
  const auto child = required(
      key, withExample(Told(TOLD("Problem", "a whole number from %1 is needed"), between(numbers)),
                       numberAt(pointerTo(key), numbers)));
  return child ? child->asInteger(range) : std::nullopt;
}
std::optional<int> JsonCursor::optionalInteger(std::string_view key, int absent,
                                               Range<int> range) const {
  const auto child = given(key);
  return child ? child->asInteger(range) : std::optional<int>(absent);
}
std::optional<int> JsonCursor::asInteger(Range<int> range) const {
  const auto value = asNumber(inNumbers(range));
  if (!value) return std::nullopt;
  if (*value == std::floor(*value)) return static_cast<int>(*value);
  error(withExample(
      advised(Told(TOLD("Problem", "%1 is not a whole number"), Verbatim{node_->dump()}),
              Told(TOLD("Problem", "%1 is accepted"), between(inNumbers(range)))),
      Verbatim{formatNumber(std::floor(*value))}));
  return std::nullopt;
}

std::optional<bool> JsonCursor::optionalBoolean(std::string_view key, bool absent) const {
  const auto child = given(key);
  return child ? child->asBoolean() : std::optional<bool>(absent);
}
std::optional<bool> JsonCursor::asBoolean() const {
  if (node_->is_boolean()) return node_->get<bool>();
  wrongType(Told(TOLD("Problem", "true or false without quotation marks is needed")));
  return std::nullopt;
}

Told JsonCursor::neededWord(const std::vector<std::string_view>& words) {
  return Told(TOLD("Problem", "%1 is needed"), choice(words));
}

std::optional<std::size_t> JsonCursor::wordIndex(const std::vector<std::string_view>& words) const {
  if (!node_->is_string()) {
    wrongType(neededWord(words));
    return std::nullopt;
  }
  const auto& written = node_->get_ref<const std::string&>();
  const auto at = std::find(words.begin(), words.end(), written);
  if (at != words.end()) return static_cast<std::size_t>(at - words.begin());
  error(perhapsMeant(
      advised(Told(TOLD("Problem", "%1 is not known here"), Quoted{written}), writeOneOf(words)),
      nearestWord(written, words)));
  return std::nullopt;
}

std::optional<std::string> JsonCursor::oneOf(std::string_view key, Words words) const {
  const auto child = required(key, neededWord(words));
  const auto index = child ? child->wordIndex(words) : std::nullopt;
  return index ? std::optional<std::string>(*(words.begin() + *index)) : std::nullopt;
}

void JsonCursor::warnAboutKeysExcept(std::initializer_list<std::string_view> known) const {
  warnAboutKeysExcept(std::vector<std::string_view>(known));
}
void JsonCursor::warnAboutKeysExcept(const std::vector<std::string_view>& known) const {
  std::vector<std::string_view> unused;
  for (const std::string_view key : known)
    if (!has(key)) unused.push_back(key);
  for (const std::string& key : keys()) {
    if (std::find(known.begin(), known.end(), key) != known.end()) continue;
    warn(key,
         perhapsMeant(Told(TOLD("Problem", "%1 is not known here and has no effect"), Quoted{key}),
                      nearestWord(key, unused)));
  }
}

}  // namespace rigs
