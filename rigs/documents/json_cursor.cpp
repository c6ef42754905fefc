// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_cursor.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "rigs/documents/json_examples.hpp"

namespace rigs {
namespace {

using Json = nlohmann::ordered_json;

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
std::string found(const Json& node) {
  if (node.is_null()) return "null says nothing";
  if (node.is_boolean()) return node.get<bool>() ? "true is no answer" : "false is no answer";
  if (node.is_array()) return "a list stands here";
  if (node.is_object()) return "an object stands here";
  if (node.is_string()) return quotedText(node.get_ref<const std::string&>()) + " is text";
  return node.dump() + " is a number";
}

std::string between(const Range<double>& range) {
  const FormatOptions digits{.significantDigits = 6, .decimals = {}};
  const std::string low = formatNumber(range.min, digits);
  const std::string high = formatNumber(range.max, digits);
  if (std::isfinite(range.min) && std::isfinite(range.max)) return low + " to " + high;
  return std::isfinite(range.min) ? low + " or more" : high + " or less";
}

// One that nobody stumbles over: 1 where it is allowed.
std::string numberExample(const Range<double>& range) {
  const double example = range.min <= 1.0 && 1.0 <= range.max ? 1.0
                         : std::isfinite(range.min)           ? range.min
                                                              : range.max;
  return formatNumber(example, {.significantDigits = 6, .decimals = {}});
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

std::string neededText(std::string_view key) {
  return "text in quotation marks is needed, e.g. \"" + std::string(textExample(key)) + '"';
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

JsonCursor::JsonCursor(const Json& node, Problems& problems, std::string where)
    : node_(&node), problems_(&problems), where_(std::move(where)) {}

std::string JsonCursor::pointerTo(std::string_view key) const {
  return where_ + '/' + escaped(key);
}

void JsonCursor::error(std::string message) const {
  problems_->push_back({Severity::Error, where_, std::move(message)});
}
void JsonCursor::error(std::string_view key, std::string message) const {
  problems_->push_back({Severity::Error, pointerTo(key), std::move(message)});
}
void JsonCursor::warn(std::string_view key, std::string message) const {
  problems_->push_back({Severity::Warning, pointerTo(key), std::move(message)});
}

void JsonCursor::wrongType(std::string_view needed) const {
  error(found(*node_) + "; " + std::string(needed));
}

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

std::string JsonCursor::neededObject(std::string_view key) {
  const std::string_view example = objectExample(key);
  std::string text = " is needed";
  if (!example.empty()) text += ", e.g. " + std::string(example);
  if (mayBeNone(key)) text += ", or \"none\"";
  return "an object" + text;
}
std::string JsonCursor::neededList(std::string_view key) {
  const std::string_view example = listExample(key);
  return "a list is needed" + (example.empty() ? "" : ", e.g. " + std::string(example));
}

std::optional<JsonCursor> JsonCursor::given(std::string_view key) const {
  if (!node_->is_object()) return std::nullopt;
  const auto at = node_->find(key);
  if (at == node_->end()) return std::nullopt;
  return JsonCursor(*at, *problems_, pointerTo(key));
}

std::optional<JsonCursor> JsonCursor::required(std::string_view key, std::string_view what) const {
  auto child = given(key);
  if (!child) error(key, quotedText(key) + " is missing; " + std::string(what));
  return child;
}

std::optional<JsonCursor> JsonCursor::requiredQuantity(std::string_view key, QuantityKind kind,
                                                       double min, double max) const {
  auto child = given(key);
  if (!child)
    error(key, quotedText(key) + " is missing; " + std::string(kindName(kind)) +
                   " is needed, e.g. \"" + quantityExample(key, kind, min, max) + '"');
  return child;
}

bool JsonCursor::has(std::string_view key) const { return given(key).has_value(); }
bool JsonCursor::isText(std::string_view key) const {
  const auto child = given(key);
  return child && child->node_->is_string();
}

std::vector<std::string> JsonCursor::keys() const {
  std::vector<std::string> result;
  if (node_->is_object())
    for (const auto& entry : node_->items()) result.push_back(entry.key());
  return result;
}

std::optional<JsonCursor> JsonCursor::object(std::string_view key) const {
  const auto child = required(key, neededObject(key));
  return child ? child->asObject() : std::nullopt;
}
std::optional<JsonCursor> JsonCursor::objectIfGiven(std::string_view key) const {
  const auto child = given(key);
  return child ? child->asObject() : std::nullopt;
}
std::optional<JsonCursor> JsonCursor::asObject() const {
  if (node_->is_object()) return *this;
  wrongType(neededObject(this->key()));
  return std::nullopt;
}

std::optional<std::vector<JsonCursor>> JsonCursor::elements(CountRange count) const {
  if (!node_->is_array()) {
    wrongType(neededList(key()));
    return std::nullopt;
  }
  if (node_->size() < count.min || node_->size() > count.max) {
    const std::string_view example = listExample(key());
    error("this list has " + std::to_string(node_->size()) +
          (node_->size() == 1 ? " entry; " : " entries; ") + std::to_string(count.min) + " to " +
          std::to_string(count.max) + " are accepted" +
          (example.empty() ? "" : ", e.g. " + std::string(example)));
    return std::nullopt;
  }
  std::vector<JsonCursor> result;
  for (std::size_t i = 0; i < node_->size(); ++i)
    result.emplace_back((*node_)[i], *problems_, where_ + '/' + std::to_string(i));
  return result;
}

std::optional<std::vector<JsonCursor>> JsonCursor::array(std::string_view key,
                                                         CountRange count) const {
  const auto child = required(key, neededList(key));
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
  const std::string example = quantityExample(key(), kind, min, max);
  if (!node_->is_string() && !node_->is_number()) {
    wrongType(std::string(kindName(kind)) + " as text is needed, e.g. \"" + example + '"');
    return std::nullopt;
  }
  const std::string text = node_->is_string() ? node_->get<std::string>() : node_->dump();
  const detail::Reading reading = detail::read(kind, text);
  if (!reading.si) {
    error(quantityProblem(reading.problem, text, example, kind, min, max));
    return std::nullopt;
  }
  const auto accepted = within(*reading.si, min, max);
  if (!accepted) {
    error(quotedText(text) + " is out of range; accepted is " +
          acceptedRange(text, kind, min, max) + ", e.g. \"" + example + '"');
  }
  return accepted;
}

std::optional<std::string> JsonCursor::text(std::string_view key, std::size_t longest) const {
  const auto child = required(key, neededText(key));
  return child ? child->asText(longest) : std::nullopt;
}
std::optional<std::string> JsonCursor::optionalText(std::string_view key, std::string_view absent,
                                                    std::size_t longest) const {
  const auto child = given(key);
  return child ? child->asText(longest) : std::optional<std::string>(absent);
}
std::optional<std::string> JsonCursor::asText(std::size_t longest) const {
  if (!node_->is_string()) {
    wrongType(neededText(key()));
    return std::nullopt;
  }
  const auto& text = node_->get_ref<const std::string&>();
  // What could be kept of it, for an example.
  std::string plain = text;
  std::replace_if(plain.begin(), plain.end(), isControl, ' ');
  plain = firstCharacters(plain, std::min<std::size_t>(longest, 24));
  if (const std::size_t count = characters(text); count > longest) {
    error(quotedText(text) + " is too long with " + std::to_string(count) + " characters; " +
          std::to_string(longest) + " are accepted, e.g. " + quotedText(plain));
    return std::nullopt;
  }
  if (std::any_of(text.begin(), text.end(), isControl)) {
    error(quotedText(text) +
          " holds a control character; plain text in one line is accepted, e.g. " +
          quotedText(plain));
    return std::nullopt;
  }
  return text;
}

std::optional<double> JsonCursor::number(std::string_view key, Range<double> range) const {
  const auto child =
      required(key, "a number from " + between(range) + " is needed, e.g. " + numberExample(range));
  return child ? child->asNumber(range) : std::nullopt;
}
std::optional<double> JsonCursor::optionalNumber(std::string_view key, double absent,
                                                 Range<double> range) const {
  const auto child = given(key);
  return child ? child->asNumber(range) : std::optional<double>(absent);
}
std::optional<double> JsonCursor::asNumber(Range<double> range) const {
  if (!node_->is_number()) {
    wrongType("a number without quotation marks is needed, e.g. " + numberExample(range));
    return std::nullopt;
  }
  const double value = node_->get<double>();
  if (range.min <= value && value <= range.max) return value;
  error(node_->dump() + " is out of range; accepted is " + between(range) + ", e.g. " +
        numberExample(range));
  return std::nullopt;
}

std::optional<int> JsonCursor::integer(std::string_view key, Range<int> range) const {
  const auto child = required(key, "a whole number from " + between(inNumbers(range)) +
                                       " is needed, e.g. " + numberExample(inNumbers(range)));
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
  error(node_->dump() + " is not a whole number; " + between(inNumbers(range)) +
        " is accepted, e.g. " + formatNumber(std::floor(*value)));
  return std::nullopt;
}

std::optional<bool> JsonCursor::optionalBoolean(std::string_view key, bool absent) const {
  const auto child = given(key);
  return child ? child->asBoolean() : std::optional<bool>(absent);
}
std::optional<bool> JsonCursor::asBoolean() const {
  if (node_->is_boolean()) return node_->get<bool>();
  wrongType("true or false without quotation marks is needed");
  return std::nullopt;
}

std::string JsonCursor::listed(const std::vector<std::string_view>& words) {
  std::string result = words.size() > 1 ? "one of " : "";
  for (std::size_t i = 0; i < words.size(); ++i)
    result += (i > 0 ? ", \"" : "\"") + std::string(words[i]) + '"';
  return result;
}

std::optional<std::size_t> JsonCursor::wordIndex(const std::vector<std::string_view>& words) const {
  if (!node_->is_string()) {
    wrongType(listed(words) + " is needed");
    return std::nullopt;
  }
  const auto& written = node_->get_ref<const std::string&>();
  const auto at = std::find(words.begin(), words.end(), written);
  if (at != words.end()) return static_cast<std::size_t>(at - words.begin());
  const std::string_view near = nearestWord(written, words);
  error(quotedText(written) + " is not known here; write " + listed(words) +
        (near.empty() ? "" : "; perhaps \"" + std::string(near) + "\" was meant"));
  return std::nullopt;
}

std::optional<std::string> JsonCursor::oneOf(std::string_view key, Words words) const {
  const auto child = required(key, listed(words) + " is needed");
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
    const std::string_view near = nearestWord(key, unused);
    warn(key, quotedText(key) + " is not known here and has no effect" +
                  (near.empty() ? "" : "; perhaps \"" + std::string(near) + "\" was meant"));
  }
}

}  // namespace rigs
