// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_parse.hpp"

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <vector>

#include "rigs/documents/problem_words.hpp"

namespace rigs {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::size_t kLargestDocument = std::size_t{4} * 1024 * 1024;
constexpr std::size_t kDeepest = 64;
// The tree looks keys up one by one, so that very many keys would take very long.
constexpr std::size_t kMostKeys = 1000;

unsigned char byteAt(std::string_view bytes, std::size_t i) {
  return static_cast<unsigned char>(bytes[i]);
}

// Length of the UTF-8 sequence at `at` (RFC 3629, table in section 4), 0 if it is none.
std::size_t sequenceLength(std::string_view bytes, std::size_t at) {
  const unsigned char lead = byteAt(bytes, at);
  if (lead < 0x80) return 1;
  const std::size_t length = lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : 4;
  if (length == 0 || lead > 0xf4 || at + length > bytes.size()) return 0;
  const unsigned char second = byteAt(bytes, at + 1);
  const unsigned char low = lead == 0xe0 ? 0xa0 : lead == 0xf0 ? 0x90 : 0x80;
  const unsigned char high = lead == 0xed ? 0x9f : lead == 0xf4 ? 0x8f : 0xbf;
  if (second < low || second > high) return 0;
  for (std::size_t i = 2; i < length; ++i)
    if ((byteAt(bytes, at + i) & 0xc0) != 0x80) return 0;
  return length;
}

std::size_t firstNotUtf8(std::string_view bytes) {
  std::size_t at = 0;
  while (at < bytes.size()) {
    const std::size_t length = sequenceLength(bytes, at);
    if (length == 0) return at;
    at += length;
  }
  return std::string_view::npos;
}

bool looksLikeUtf16(std::string_view bytes) {
  if (bytes.starts_with("\xff\xfe") || bytes.starts_with("\xfe\xff")) return true;
  return bytes.substr(0, 4).find('\0') != std::string_view::npos;
}

// "line 3, column 7: ...", counted from 1 in characters.
Told atPlace(std::string_view bytes, std::size_t offset, Told message) {
  const std::string_view before = bytes.substr(0, offset);
  const auto lines = std::count(before.begin(), before.end(), '\n');
  const std::size_t newline = before.rfind('\n');
  const std::string_view row =
      newline == std::string_view::npos ? before : before.substr(newline + 1);
  const auto columns = std::count_if(row.begin(), row.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
  });
  return Told(TOLD("Problem", "line %1, column %2: %3"), Count{lines + 1}, Count{columns + 1},
              std::move(message));
}

// The first bracket that opens too deep a level; brackets within texts do not count.
std::size_t firstTooDeep(std::string_view bytes) {
  std::size_t depth = 0;
  bool inText = false;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    const char c = bytes[i];
    if (inText) {
      if (c == '\\') ++i;
      if (c == '"') inText = false;
    } else if (c == '"') {
      inText = true;
    } else if (c == '{' || c == '[') {
      if (++depth > kDeepest) return i;
    } else if ((c == '}' || c == ']') && depth > 0) {
      --depth;
    }
  }
  return std::string_view::npos;
}

struct BrokenEscape {
  std::size_t at;
  bool isHalf;  // of a character that takes two
};

// The four hexadecimal digits of "\uXXXX" at `at`; nullopt for anything else.
std::optional<unsigned> unicodeEscape(std::string_view bytes, std::size_t at) {
  if (bytes.substr(at, 2) != "\\u" || at + 6 > bytes.size()) return std::nullopt;
  unsigned code = 0;
  const char* end = bytes.data() + at + 6;
  const auto read = std::from_chars(end - 4, end, code, 16);
  return read.ptr == end && read.ec == std::errc() ? std::optional(code) : std::nullopt;
}

// The first backslash within texts that begins none of JSON's escapes (RFC 8259, section 7), or
// only half of a character.
std::optional<BrokenEscape> firstBrokenEscape(std::string_view bytes) {
  bool inText = false;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (bytes[i] == '"') inText = !inText;
    if (!inText || bytes[i] != '\\') continue;
    const std::size_t at = i++;
    if (i < bytes.size() && std::string_view("\"\\/bfnrt").find(bytes[i]) != std::string_view::npos)
      continue;
    const auto code = unicodeEscape(bytes, at);
    if (!code) return BrokenEscape{at, false};
    i = at + 5;
    const bool first = 0xd800 <= *code && *code < 0xdc00;
    if (first) {
      const auto second = unicodeEscape(bytes, at + 6);
      if (!second || *second < 0xdc00 || *second > 0xdfff) return BrokenEscape{at, true};
      i = at + 11;
    } else if (0xdc00 <= *code && *code <= 0xdfff) {
      return BrokenEscape{at, true};
    }
  }
  return std::nullopt;
}

Told brokenEscape(std::string_view bytes, const BrokenEscape& broken) {
  const Quoted what{std::string(bytes.substr(broken.at, broken.isHalf ? 6 : 2))};
  return broken.isHalf
             ? advised(Told(TOLD("Problem", "%1 is half of a character"), what),
                       Told(TOLD("Problem", "write the character itself, or both of its halves")))
             : advised(Told(TOLD("Problem", "%1 stands for no character"), what),
                       Told(TOLD("Problem", "a backslash itself is written twice")));
}

// A first pass without a tree: finds syntax errors with their place, and repeated keys, of which
// the tree would keep one without a word.
class Inspector : public nlohmann::json_sax<Json> {
 public:
  Inspector(std::string_view bytes, Problems& problems) : bytes_(bytes), problems_(problems) {}

  bool null() override { return value(); }
  bool boolean(bool) override { return value(); }
  bool number_integer(std::int64_t) override { return value(); }
  bool number_unsigned(std::uint64_t) override { return value(); }
  bool number_float(double, const std::string&) override { return value(); }
  bool string(std::string&) override { return value(); }
  bool binary(Json::binary_t&) override { return value(); }
  bool start_object(std::size_t) override {
    levels_.push_back({.isObject = true});
    return true;
  }
  bool start_array(std::size_t) override {
    levels_.push_back({.isObject = false});
    return true;
  }
  bool end_object() override { return end(); }
  bool end_array() override { return end(); }

  bool key(std::string& name) override {
    Level& level = levels_.back();
    level.key = name;
    if (!level.keys.insert(name).second)
      add(pointer(), advised(Told(TOLD("Problem", "%1 stands here more than once"), Quoted{name}),
                             Told(TOLD("Problem", "keep one of them"))));
    if (level.keys.size() <= kMostKeys) return true;
    level.key.clear();
    add(pointerOfParent(),
        Told(TOLD("Problem", "this object has more than %1 keys"), Count{kMostKeys}));
    return false;
  }

  bool parse_error(std::size_t position, const std::string& token,
                   const nlohmann::detail::exception& exception) override {
    if (const auto broken = firstBrokenEscape(bytes_.substr(0, std::min(position, bytes_.size())));
        broken && token.starts_with('"') && position > 0)
      return place(broken->at, brokenEscape(bytes_, *broken)), false;
    constexpr int kNumberTooLarge = 406;  // the library's number for out_of_range of a number
    const std::size_t offset = position == 0 ? 0 : position - 1;  // of the last byte read
    if (offset >= bytes_.size()) {
      place(bytes_.size(),
            advised(Told(TOLD("Problem", "the document ends too early")),
                    Told(TOLD("Problem", "a bracket or a quotation mark is not closed"))));
    } else if (exception.id == kNumberTooLarge) {
      place(offset, Told(TOLD("Problem", "this number is too large")));
    } else {
      explain(token, offset);
    }
    return false;
  }

 private:
  struct Level {
    bool isObject;
    std::size_t index = 0;
    std::string key{};
    std::set<std::string, std::less<>> keys{};
  };

  void add(std::string where, Told message) {
    problems_.push_back({Severity::Error, std::move(where), std::move(message)});
  }
  bool value() {
    if (!levels_.empty()) ++levels_.back().index;
    return true;
  }
  bool end() {
    levels_.pop_back();
    return value();
  }
  std::string pointer(std::size_t dropped = 0) const {
    std::string result;
    for (std::size_t i = 0; i + dropped < levels_.size(); ++i) {
      result += '/';
      if (!levels_[i].isObject) {
        result += std::to_string(levels_[i].index);
        continue;
      }
      for (const char c : levels_[i].key)
        result += c == '~' ? std::string("~0") : c == '/' ? std::string("~1") : std::string(1, c);
    }
    return result;
  }
  std::string pointerOfParent() const { return pointer(1); }

  void place(std::size_t offset, Told message) {
    add("", atPlace(bytes_, offset, std::move(message)));
  }

  // `token` may hold more than the token, but begins with it where that is a text.
  void explain(const std::string& token, std::size_t offset) {
    const char c = bytes_[offset];
    const std::size_t before = bytes_.substr(0, offset).find_last_not_of(" \t\r\n");
    const bool afterComma = before != std::string_view::npos && bytes_[before] == ',';
    if (c == '/')
      return place(offset, advised(Told(TOLD("Problem", "comments are not accepted")),
                                   Told(TOLD("Problem", "remove this one"))));
    if (c == '\'')
      return place(offset, Told(TOLD("Problem", "texts stand in double quotation marks")));
    if ((c == '\n' || c == '\r') && token.starts_with('"'))
      return place(offset, Told(TOLD("Problem", "a text is not closed at the end of its line")));
    if ((c == '}' || c == ']') && afterComma)
      return place(offset,
                   Told(TOLD("Problem", "there is a comma too many before %1"), inQuotes({&c, 1})));
    const std::size_t opening =
        c == '"' && offset > 0 ? bytes_.rfind('"', offset - 1) : std::string_view::npos;
    const std::size_t start = opening == std::string_view::npos ? offset : opening;
    if (c == '"' || c == '{' || c == '[')
      return place(start, Told(TOLD("Problem", "a comma or a colon is missing before %1"),
                               quoted(start, offset + 1)));
    constexpr std::string_view kDelimiters = " \t\r\n,:[]{}\"";
    if (kDelimiters.find(c) != std::string_view::npos)
      return place(offset, doesNotBelong(quoted(offset, offset + 1)));
    const std::size_t delimiter = bytes_.find_last_of(kDelimiters, offset);
    const std::size_t first = delimiter == std::string_view::npos ? 0 : delimiter + 1;
    const std::size_t end = std::min(bytes_.find_first_of(kDelimiters, offset), bytes_.size());
    place(first,
          advised(doesNotBelong(quoted(first, end)),
                  Told(TOLD("Problem",
                            "texts need quotation marks, and words without them are true, false "
                            "and null only"))));
  }

  Quoted quoted(std::size_t from, std::size_t to) const {
    return {std::string(bytes_.substr(from, to - from))};
  }
  static Told doesNotBelong(Quoted what) {
    return Told(TOLD("Problem", "%1 does not belong here"), std::move(what));
  }

  std::string_view bytes_;
  Problems& problems_;
  std::vector<Level> levels_;
};

}  // namespace

JsonDocument parseJson(std::string_view bytes, Problems& problems) {
  const auto refuse = [&problems](Told message) {
    problems.push_back({Severity::Error, "", std::move(message)});
    return nullptr;
  };
  if (bytes.size() > kLargestDocument)
    return refuse(Told(TOLD("Problem", "the document is larger than 4 MB")));
  if (looksLikeUtf16(bytes))
    return refuse(
        advised(Told(TOLD("Problem", "the document is not in UTF-8, but probably in UTF-16")),
                Told(TOLD("Problem", "save it as UTF-8"))));
  constexpr std::string_view kByteOrderMark = "\xef\xbb\xbf";
  if (bytes.starts_with(kByteOrderMark)) bytes.remove_prefix(kByteOrderMark.size());
  if (bytes.starts_with(kByteOrderMark))
    return refuse(
        advised(Told(TOLD("Problem", "the document begins with more than one byte-order mark")),
                Told(TOLD("Problem", "save it as UTF-8 without any"))));
  if (bytes.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return refuse(Told(TOLD("Problem", "the document is empty")));
  if (const std::size_t at = firstNotUtf8(bytes); at != std::string_view::npos)
    return refuse(atPlace(bytes, at,
                          advised(Told(TOLD("Problem", "this is not UTF-8")),
                                  Told(TOLD("Problem", "save the document as UTF-8")))));
  if (const std::size_t at = firstTooDeep(bytes); at != std::string_view::npos)
    return refuse(atPlace(
        bytes, at, Told(TOLD("Problem", "more than %1 levels of brackets"), Count{kDeepest})));

  const std::size_t before = problems.size();
  Inspector inspector(bytes, problems);
  const bool understood = Json::sax_parse(bytes.begin(), bytes.end(), &inspector);
  if (!understood || problems.size() > before) return nullptr;
  return std::make_shared<Json>(Json::parse(bytes.begin(), bytes.end(), nullptr, false));
}

}  // namespace rigs
