// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/quantities/unit_expression.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>
#include <utility>

#include "rigs/quantities/digits.hpp"

namespace rigs {
namespace {

using Kind = QuantityFault::Kind;

bool isLetter(char c) { return ('a' <= c && c <= 'z') || ('A' <= c && c <= 'Z'); }
char lower(char c) { return 'A' <= c && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string lower(std::string_view text) {
  std::string result(text);
  std::transform(result.begin(), result.end(), result.begin(), [](char c) { return lower(c); });
  return result;
}

bool sameMeaning(const Unit& a, const Unit& b) {
  return a.dimension == b.dimension && a.pointShift == b.pointShift &&
         a.numerator * b.denominator == b.numerator * a.denominator;
}

// Spellings that mean different things to different people, and common slips.
struct Hint {
  std::string_view symbol;  // small letters
  Kind kind;
  std::array<std::string_view, 2> instead = {};
};
constexpr std::array kHints{
    Hint{"ton", Kind::SeveralTons, {"kg", "t"}},
    Hint{"tons", Kind::SeveralTons, {"kg", "t"}},
    Hint{"bbl", Kind::ManySizes, {"gal", "L"}},
    Hint{"barrel", Kind::ManySizes, {"gal", "L"}},
    Hint{"barrels", Kind::ManySizes, {"gal", "L"}},
    Hint{"cal", Kind::ManySizes, {"J", "Wh"}},
    Hint{"kcal", Kind::ManySizes, {"kJ", "Wh"}},
    Hint{"k", Kind::KelvinOrThousand},
    Hint{"deg", Kind::WhoseDegrees, {"°C", "°F"}},
    Hint{"degrees", Kind::WhoseDegrees, {"°C", "°F"}},
    Hint{"gr", Kind::GramOrGrain, {"g"}},
    Hint{"ps", Kind::MetricHorsepower, {"W", "kW"}},
    Hint{"va", Kind::ApparentPower, {"W"}},
    Hint{"kva", Kind::ApparentPower, {"kW"}},
    Hint{"psig", Kind::GaugePressure},
};

struct Found {
  const Unit* unit = nullptr;
  QuantityFault fault{};  // where there is none
};

Found withoutUnit(Kind kind, std::string_view symbol, std::vector<std::string> instead = {}) {
  return {nullptr,
          {.kind = kind, .part = printedCharacters(symbol), .instead = std::move(instead)}};
}

std::optional<std::string> joinedSymbols(std::string_view symbol);

const UnitSpelling* exactSpelling(std::string_view symbol) {
  const auto& all = unitSpellings();
  const auto at = std::lower_bound(all.begin(), all.end(), symbol,
                                   [](const UnitSpelling& s, std::string_view key) {
                                     return std::string_view(s.spelling) < key;
                                   });
  return at != all.end() && at->spelling == symbol ? &*at : nullptr;
}

// Wrong capitals are forgiven where one meaning is left. "M" for "m" never is: mega for milli
// is a factor of 1e9.
Found findSymbol(std::string_view symbol) {
  if (const UnitSpelling* exact = exactSpelling(symbol)) return {&exact->unit, {}};

  const std::string small = lower(symbol);
  for (const Hint& hint : kHints)
    if (hint.symbol == small) {
      std::vector<std::string> instead;
      for (const std::string_view one : hint.instead)
        if (!one.empty()) instead.emplace_back(one);
      return withoutUnit(hint.kind, symbol, std::move(instead));
    }

  const Unit* meaning = nullptr;
  bool doubtful = false;
  std::vector<std::string> spellings;
  for (const UnitSpelling& candidate : unitSpellings()) {
    if (candidate.spelling.size() != symbol.size() || lower(candidate.spelling) != small) continue;
    if (candidate.prefixed && candidate.spelling.front() != symbol.front() &&
        lower(candidate.spelling.front()) == 'm')
      doubtful = true;
    if (meaning && !sameMeaning(*meaning, candidate.unit)) doubtful = true;
    meaning = &candidate.unit;
    spellings.push_back(printedCharacters(candidate.spelling));
  }
  if (meaning && !doubtful) return {meaning, {}};
  if (meaning) return withoutUnit(Kind::Capitals, symbol, std::move(spellings));
  if (const auto joined = joinedSymbols(symbol))
    return withoutUnit(Kind::JoinedUnits, symbol, {*joined});
  return withoutUnit(Kind::UnknownUnit, symbol);
}

// "mK" in "W/mK": two units without a space.
std::optional<std::string> joinedSymbols(std::string_view symbol) {
  for (std::size_t cut = 1; cut < symbol.size(); ++cut)
    if (exactSpelling(symbol.substr(0, cut)) && exactSpelling(symbol.substr(cut)))
      return printedCharacters(symbol.substr(0, cut)) + ' ' + printedCharacters(symbol.substr(cut));
  return std::nullopt;
}

void multiply(Unit& product, const Unit& factor, int power) {
  for (int i = 0; i < std::abs(power); ++i) {
    product.numerator *= power > 0 ? factor.numerator : factor.denominator;
    product.denominator *= power > 0 ? factor.denominator : factor.numerator;
  }
  product.dimension.length += power * factor.dimension.length;
  product.dimension.mass += power * factor.dimension.mass;
  product.dimension.time += power * factor.dimension.time;
  product.dimension.temperature += power * factor.dimension.temperature;
  product.dimension.current += power * factor.dimension.current;
}

constexpr int kMaxFactors = 8;  // the longest in use has four; keeps powers of ten finite

class ExpressionReader {
 public:
  ExpressionReader(std::string_view text, bool ladderAllowed)
      : text_(text), ladderAllowed_(ladderAllowed) {}

  UnitExpression read() {
    while (!fault_ && step()) {
    }
    if (!fault_ && inBrackets_) fail(Kind::NotClosed);
    if (!fault_ && waiting_ != 0) fail(Kind::NothingAfterSign, waiting_);
    UnitExpression result{.unit = product_, .length = at_, .fault = fault_};
    result.single = factors_ == 1 && plainFirst_;
    if (result.single) result.unit = first_;
    return result;
  }

 private:
  char peek(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  void fail(QuantityFault fault) { fault_ = std::move(fault); }
  void fail(Kind kind) { fail(QuantityFault{.kind = kind}); }
  void fail(Kind kind, char sign) { fail({.kind = kind, .part = std::string(1, sign)}); }

  // One factor, sign or bracket; false at the end of the unit.
  bool step() {
    while (peek() == ' ') ++at_;
    const char c = peek();
    if (c == '/' || c == '*') return sign(c, 1);
    if (c == '-' && factors_ > 0 && isLetter(peek(1))) return sign('*', 1);  // ft2-h-F/Btu
    if (text_.substr(at_, 4) == "per ") return sign('/', 3);
    if (c == '(') return open();
    if (c == ')') return close();
    if (isLetter(c) || c == '%') return factor();
    if (isDigit(c) && waiting_ != 0) fail(Kind::NumberAfterSign, waiting_);
    return false;
  }

  bool sign(char c, std::size_t length) {
    if (waiting_ != 0 || (factors_ == 0 && !inBrackets_) || (inBrackets_ && factorsInside_ == 0))
      return fail(Kind::MisplacedSign, c), false;
    if (inBrackets_ && c == '/') return fail(Kind::SlashInBrackets), false;
    waiting_ = c;
    at_ += length;
    return true;
  }

  bool open() {
    if (inBrackets_) return fail(Kind::BracketsInBrackets), false;
    if (!mayMultiply()) return false;
    inBrackets_ = true;
    bracketPower_ = waiting_ == '/' ? -1 : 1;
    factorsInside_ = 0;
    divided_ = divided_ || waiting_ == '/';
    waiting_ = 0;
    ++at_;
    return true;
  }

  bool close() {
    if (!inBrackets_) return fail(Kind::NotOpened), false;
    if (factorsInside_ == 0 || waiting_ != 0) return fail(Kind::EmptyBrackets), false;
    inBrackets_ = false;
    plainFirst_ = false;
    ++at_;
    return true;
  }

  // "W/m2 K" is W K/m2 by the book and W/(m2 K) by habit.
  bool mayMultiply() {
    if (inBrackets_ || waiting_ == '/' || !divided_) return true;
    QuantityFault fault{.kind = Kind::TwoWays};
    const std::size_t slash = text_.find('/');
    const bool simple = text_.find('(') == std::string_view::npos &&
                        text_.find('/', slash + 1) == std::string_view::npos;
    if (slash != std::string_view::npos && simple) {
      std::string_view below = text_.substr(slash + 1);
      while (!below.empty() && below.back() == ' ') below.remove_suffix(1);
      fault.instead = {printedCharacters(text_.substr(0, slash)) + "/(" + printedCharacters(below) +
                       ')'};
    }
    fail(std::move(fault));
    return false;
  }

  // "US fl oz", "sq ft": the words of one unit.
  std::string_view symbolHere() const {
    const auto wordEnd = [this](std::size_t from) {
      while (from < text_.size() && isLetter(text_[from])) ++from;
      return from;
    };
    if (peek() == '%') return text_.substr(at_, 1);
    const std::size_t end = wordEnd(at_);
    std::string_view symbol = text_.substr(at_, end - at_);
    static constexpr std::array<std::string_view, 9> kOpeners{
        "us", "uk", "imp", "imperial", "fl", "fluid", "sq", "square", "cu"};
    const std::string first = lower(symbol);
    if (first != "cubic" && std::find(kOpeners.begin(), kOpeners.end(), first) == kOpeners.end())
      return symbol;
    std::size_t last = end;
    for (int words = 2; words <= 3 && last < text_.size() && text_[last] == ' '; ++words) {
      last = wordEnd(last + 1);
      const std::string_view longer = text_.substr(at_, last - at_);
      if (findSymbol(longer).unit) symbol = longer;
    }
    return symbol;
  }

  bool factor() {
    if (!mayMultiply()) return false;
    if (++factors_ > kMaxFactors) return fail(Kind::TooManyUnits), false;
    const std::string_view symbol = symbolHere();
    const Found found = findSymbol(symbol);
    if (!found.unit) return fail(found.fault), false;
    at_ += symbol.size();

    const std::size_t before = at_;
    const int exponent = power();
    if (exponent == 0) return fail(Kind::NoPower), false;
    if (factors_ == 1) {
      first_ = *found.unit;
      plainFirst_ = at_ == before && waiting_ == 0 && !inBrackets_;
    }
    const int side = inBrackets_ ? bracketPower_ : waiting_ == '/' ? -1 : 1;
    multiply(product_, *found.unit, side * exponent);
    divided_ = divided_ || (!inBrackets_ && waiting_ == '/');
    factorsInside_ += inBrackets_ ? 1 : 0;
    waiting_ = 0;
    return true;
  }

  // The power after a symbol, 1 when none is written, 0 when it is broken.
  int power() {
    std::size_t from = at_;
    const bool marked = from < text_.size() && text_[from] == '^';
    if (marked) ++from;
    const bool negative = from < text_.size() && text_[from] == '-';
    if (negative) ++from;
    const char digit = from < text_.size() ? text_[from] : '\0';
    const char next = from + 1 < text_.size() ? text_[from + 1] : '\0';
    const bool alone = !isDigit(next) && next != '.' && next != ',';
    if ('1' <= digit && digit <= '4' && alone) {
      if (!marked && ladderAllowed_ && isLetter(next)) return 1;  // 5ft2in
      at_ = from + 1;
      return negative ? '0' - digit : digit - '0';
    }
    return marked ? 0 : 1;
  }

  std::string_view text_;
  bool ladderAllowed_;
  std::size_t at_ = 0;
  Unit product_;
  Unit first_;
  bool plainFirst_ = false;
  int factors_ = 0;
  int factorsInside_ = 0;
  int bracketPower_ = 1;
  bool inBrackets_ = false;
  bool divided_ = false;
  char waiting_ = 0;  // the sign whose right side comes next
  std::optional<QuantityFault> fault_;
};

struct Glyph {
  std::string_view written;
  std::string_view plain;
};
// Longer texts first where one begins another.
constexpr std::array kGlyphs{
    Glyph{"\u00b0 C", "degC"}, Glyph{"\u00b0 F", "degF"}, Glyph{"\u00b0", "deg"},
    Glyph{"\u00ba C", "degC"}, Glyph{"\u00ba F", "degF"}, Glyph{"\u00ba", "deg"},
    Glyph{"\u02da", "deg"},    Glyph{"\u2103", "degC"},   Glyph{"\u2109", "degF"},
    Glyph{"\u212a", "K"},      Glyph{"\u00b5", "u"},      Glyph{"\u03bc", "u"},
    Glyph{"\u03a9", "ohm"},    Glyph{"\u2126", "ohm"},    Glyph{"\u00b7", "*"},
    Glyph{"\u22c5", "*"},      Glyph{"\u2219", "*"},      Glyph{"\u00d7", "*"},
    Glyph{"\u2212", "-"},      Glyph{"\u2013", "-"},      Glyph{"\u2011", "-"},
    Glyph{"\u2044", "/"},      Glyph{"\u00a0", " "},      Glyph{"\u2009", " "},
    Glyph{"\u202f", " "},      Glyph{"\u2007", " "},      Glyph{"\u200a", " "},
    Glyph{"\u00bd", " 1/2 "},  Glyph{"\u00bc", " 1/4 "},  Glyph{"\u00be", " 3/4 "},
    Glyph{"\u2033", " in "},   Glyph{"\u2032", " ft "},   Glyph{"\"", " in "},
    Glyph{"'", " ft "},        Glyph{"\t", " "},
};
// Raised signs: they open a power, so that "5\u00b2" is not 52.
constexpr std::array kRaised{
    Glyph{"\u00b9", "1"}, Glyph{"\u00b2", "2"}, Glyph{"\u00b3", "3"},
    Glyph{"\u2074", "4"}, Glyph{"\u207b", "-"},
};

}  // namespace

UnitExpression readUnitExpression(std::string_view text, bool ladderAllowed) {
  return ExpressionReader(text, ladderAllowed).read();
}

std::string plainCharacters(std::string_view text) {
  std::string plain;
  const auto append = [&plain](std::string_view more) {
    for (const char c : more)
      if (c != ' ' || (!plain.empty() && plain.back() != ' ')) plain += c;
  };
  bool raised = false;
  while (!text.empty()) {
    const auto begins = [text](const Glyph& g) { return text.starts_with(g.written); };
    const char c = text.front();
    if (' ' <= c && c <= '~' && c != '"' && c != '\'') {
      append({&c, 1});
      raised = false;
      text.remove_prefix(1);
    } else if (const auto g = std::find_if(kGlyphs.begin(), kGlyphs.end(), begins);
               g != kGlyphs.end()) {
      append(g->plain);
      raised = false;
      text.remove_prefix(g->written.size());
    } else if (const auto r = std::find_if(kRaised.begin(), kRaised.end(), begins);
               r != kRaised.end()) {
      if (!raised) plain += '^';
      plain += r->plain;
      raised = true;
      text.remove_prefix(r->written.size());
    } else {
      return {};
    }
  }
  while (!plain.empty() && plain.back() == ' ') plain.pop_back();
  return plain;
}

std::string printedCharacters(std::string_view plain) {
  static constexpr std::array kPrinted{Glyph{"\u00b0C", "degC"}, Glyph{"\u00b0F", "degF"},
                                       Glyph{"\u00b0", "deg"},   Glyph{"\u00b2", "^2"},
                                       Glyph{"\u00b3", "^3"},    Glyph{"\u00b7", "*"},
                                       Glyph{"\u03a9", "ohm"}};
  std::string printed;
  while (!plain.empty()) {
    const auto ends = [plain](const Glyph& g) { return plain.starts_with(g.plain); };
    if (const auto g = std::find_if(kPrinted.begin(), kPrinted.end(), ends); g != kPrinted.end()) {
      printed += g->written;
      plain.remove_prefix(g->plain.size());
    } else {
      printed += plain.front();
      plain.remove_prefix(1);
    }
  }
  return printed;
}

}  // namespace rigs
