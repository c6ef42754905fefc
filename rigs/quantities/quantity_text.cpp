// SPDX-License-Identifier: GPL-3.0-or-later
// The parser; the printer is in quantity_text_format.cpp.
#include "rigs/quantities/quantity_text.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

#include "physics/element.hpp"
#include "rigs/quantities/digits.hpp"
#include "rigs/quantities/kind_facts.hpp"
#include "rigs/quantities/unit_expression.hpp"

namespace rigs {
namespace {

using detail::factsOf;
using Kind = QuantityFault::Kind;

// No quantity needs more; longer text is a pasted accident.
constexpr std::size_t kLongestQuantity = 200;

struct ReadNumber {
  double value = 0.0;
  std::size_t end = 0;
  bool whole = false;  // digits only
  std::optional<QuantityFault> fault{};
};

ReadNumber broken(Kind kind) { return {.fault = QuantityFault{.kind = kind}}; }

// One pass over `text` from `at` on; never looks beyond the end.
class NumberReader {
 public:
  NumberReader(std::string_view text, std::size_t at) : text_(text), at_(at) {}

  ReadNumber read() {
    if (peek() == '-' || peek() == '+') take();
    if (!isDigit(peek()) && !(separatorHere() && isDigit(peek(1)))) return broken(Kind::NoNumber);
    const std::size_t wholeDigits = digits();
    const bool leadingZero = wholeDigits > 0 && digits_[digits_.size() - wholeDigits] == '0';
    bool plain = true;
    if (separatorHere() && isDigit(peek(1))) {
      plain = false;
      const bool comma = peek() == ',';
      digits_ += '.';
      ++at_;
      const std::size_t decimals = digits();
      if (separatorHere() && isDigit(peek(1))) return broken(Kind::TwoDecimalSigns);
      if (comma && decimals == 3 && 1 <= wholeDigits && wholeDigits <= 3 && !leadingZero)
        return twoReadings();
    }
    if (peek() == 'e' || peek() == 'E') {
      const std::size_t sign = peek(1) == '-' || peek(1) == '+' ? 1 : 0;
      if (isDigit(peek(1 + sign))) {
        plain = false;
        take();
        if (sign != 0) take();
        digits();
      }
    }
    ReadNumber result{.end = at_, .whole = plain};
    if (!value(digits_, result.value)) return broken(Kind::TooLargeOrSmall);
    return plain ? withFraction(result) : result;
  }

 private:
  char peek(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  bool separatorHere() const { return peek() == '.' || peek() == ','; }
  void take() { digits_ += text_[at_++]; }
  std::size_t digits() {
    const std::size_t start = at_;
    while (isDigit(peek())) take();
    return at_ - start;
  }

  static bool value(std::string_view digits, double& result) {
    if (digits.starts_with('+')) digits.remove_prefix(1);
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), result);
    return error == std::errc{} && end == digits.data() + digits.size() && std::isfinite(result);
  }

  ReadNumber twoReadings() const {
    const std::size_t point = digits_.find('.');
    const std::string joined = digits_.substr(0, point) + digits_.substr(point + 1);
    return {.fault = QuantityFault{.kind = Kind::TwoReadings, .instead = {joined, digits_}}};
  }

  // "1/2" and "1 1/2"; `whole` is what stands before.
  ReadNumber withFraction(ReadNumber whole) {
    const bool negative = digits_.starts_with('-');
    std::string above = digits_;
    bool mixed = false;
    if (peek() == ' ' && isDigit(peek(1))) {
      std::size_t ahead = 1;
      while (isDigit(peek(ahead))) ++ahead;
      if (peek(ahead) != '/' || !isDigit(peek(ahead + 1))) return broken(Kind::GroupedDigits);
      mixed = true;
      above = std::string(text_.substr(at_ + 1, ahead - 1));
      at_ += ahead;
    }
    if (peek() != '/' || !isDigit(peek(1))) return whole;
    ++at_;
    const std::size_t start = at_;
    digits();
    double numerator = 0.0;
    double denominator = 0.0;
    if (!value(above, numerator) || !value(text_.substr(start, at_ - start), denominator) ||
        denominator == 0.0)
      return broken(Kind::NoSuchFraction);
    const double part = numerator / denominator;
    whole.value = !mixed ? part : negative ? whole.value - part : whole.value + part;
    whole.end = at_;
    whole.whole = false;
    return whole;
  }

  std::string_view text_;
  std::size_t at_;
  std::string digits_;
};

struct Parsed {
  std::optional<double> si{};
  std::optional<QuantityFault> fault{};
  std::optional<Unit> unit{};            // set where the text was one number and one unit
  std::string unitText{};                // as printed after a number
  UnitSystem fallback = UnitSystem::SI;  // where it was something else
};

Parsed failed(QuantityFault fault) { return {.fault = std::move(fault)}; }
Parsed failed(Kind kind) { return failed(QuantityFault{.kind = kind}); }

Parsed understood(double si, QuantityKind kind) {
  if (!std::isfinite(si)) return failed(Kind::TooLargeOrSmall);
  if (kind == QuantityKind::Temperature && si < 0.0) return failed(Kind::BelowAbsoluteZero);
  return {.si = si == 0.0 ? 0.0 : si};
}

QuantityFault otherQuantity(const Unit& unit, std::string_view unitText) {
  QuantityFault fault{.kind = Kind::OtherQuantity, .part = std::string(unitText)};
  const auto other = std::find_if(
      detail::kKindFacts.begin(), detail::kKindFacts.end(),
      [&](const auto& f) { return detail::unitOf(f.coherent).dimension == unit.dimension; });
  if (other != detail::kKindFacts.end()) fault.measured = other->kind;
  return fault;
}

// "R 1.8", "R-13" (a dash, not a minus), "RSI 0.3". Nullopt where it is not of this form.
std::optional<Parsed> labelledInsulance(std::string_view plain) {
  if (!plain.starts_with('R') && !plain.starts_with('r')) return std::nullopt;
  plain.remove_prefix(1);
  const bool metric = plain.starts_with("SI") || plain.starts_with("si");
  if (metric) plain.remove_prefix(2);
  while (plain.starts_with(' ') || plain.starts_with('-') || plain.starts_with('='))
    plain.remove_prefix(1);
  if (plain.empty() || !isDigit(plain.front())) return std::nullopt;
  const ReadNumber number = NumberReader(plain, 0).read();
  if (number.fault) return failed(*number.fault);
  const std::string_view label = metric ? "m²·K/W" : "ft²·h·°F/Btu";
  if (number.end != plain.size())
    return failed({.kind = Kind::MoreAfterNumber, .part = metric ? "RSI" : "R"});
  Parsed result =
      understood(detail::toSi(number.value, detail::unitOf(label)), QuantityKind::ThermalInsulance);
  result.fallback = metric ? UnitSystem::SI : UnitSystem::UsCustomary;
  return result;
}

// 4/0 counts as -3.
std::optional<Parsed> wireGauge(std::string_view plain) {
  const auto isGaugeWord = [](std::string_view w) { return w == "AWG" || w == "awg"; };
  if (plain.size() < 4) return std::nullopt;
  if (isGaugeWord(plain.substr(0, 3))) {
    plain.remove_prefix(3);
  } else if (isGaugeWord(plain.substr(plain.size() - 3))) {
    plain.remove_suffix(3);
  } else {
    return std::nullopt;
  }
  while (plain.starts_with(' ')) plain.remove_prefix(1);
  while (plain.ends_with(' ')) plain.remove_suffix(1);
  const bool zeros = plain.ends_with("/0");
  if (zeros) plain.remove_suffix(2);
  int gauge = 0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), gauge);
  const bool inTable = zeros ? 1 <= gauge && gauge <= 4 : 0 <= gauge && gauge <= 40;
  if (error != std::errc{} || end != plain.data() + plain.size() || !inTable)
    return failed(Kind::NoWireGauge);
  const double n = zeros ? 1.0 - gauge : gauge;
  return understood(physics::inSquareMetres(physics::wireGaugeArea(n)), QuantityKind::Area);
}

Parsed bareNumber(double number, std::string_view digits, QuantityKind kind) {
  if (kind == QuantityKind::Fraction) {
    if (0.0 <= number && number <= 1.0) {
      Parsed result = understood(number, kind);
      result.unit = Unit{};
      return result;
    }
    return failed({.kind = Kind::NoShare, .part = std::string(digits)});
  }
  return failed({.kind = Kind::NoUnit, .part = std::string(digits)});
}

bool allowsLadder(QuantityKind kind) {
  return kind == QuantityKind::Time || kind == QuantityKind::Mass || kind == QuantityKind::Length;
}

struct Term {
  ReadNumber number;
  UnitExpression unit;
  std::string_view unitText;
};

// "1 h 30 min": each unit smaller than the one before, only the last number broken.
Parsed sumOfTerms(const std::vector<Term>& terms, QuantityKind kind, bool negative) {
  double sum = 0.0;
  for (std::size_t i = 0; i < terms.size(); ++i) {
    const Unit& unit = terms[i].unit.unit;
    const double si = detail::toSi(std::abs(terms[i].number.value), unit);
    if (i + 1 < terms.size() && !terms[i].number.whole) return failed(Kind::BrokenNumberInside);
    if (unit.ladder == Ladder::None || unit.ladder != terms.front().unit.unit.ladder)
      return failed(Kind::NoLadder);
    if (i > 0 && si >= detail::toSi(1.0, terms[i - 1].unit.unit)) return failed(Kind::NotSmaller);
    sum += si;
  }
  Parsed result = understood(negative ? -sum : sum, kind);
  if (terms.front().unit.unit.ladder != Ladder::Time) result.fallback = UnitSystem::UsCustomary;
  return result;
}

Parsed oneTerm(const Term& term, QuantityKind kind) {
  const bool point = kind == QuantityKind::Temperature;
  const Unit& unit = term.unit.unit;
  if (unit.dimension != detail::unitOf(factsOf(kind).coherent).dimension ||
      (point && !term.unit.single))
    return failed(otherQuantity(unit, term.unitText));
  Parsed result = understood(
      point ? detail::pointToSi(term.number.value, unit) : detail::toSi(term.number.value, unit),
      kind);
  result.unit = unit;
  result.unitText = printedCharacters(term.unitText);
  if (result.fault) result.fault->part = result.unitText;
  return result;
}

Parsed parse(QuantityKind kind, std::string_view text) {
  if (text.size() > kLongestQuantity) return failed(Kind::TooLong);
  const std::string plain = plainCharacters(text);
  if (plain.empty()) {
    const bool blank = text.find_first_not_of(" \t") == std::string_view::npos;
    return failed(blank ? Kind::Empty : Kind::ForeignCharacter);
  }
  if (kind == QuantityKind::ThermalInsulance)
    if (auto labelled = labelledInsulance(plain)) return *labelled;
  if (kind == QuantityKind::Area)
    if (auto gauge = wireGauge(plain)) return *gauge;

  std::vector<Term> terms;
  std::size_t at = 0;
  const std::string_view all = plain;
  while (at < all.size()) {
    Term term{.number = NumberReader(all, at).read(), .unit = {}, .unitText = {}};
    if (term.number.fault) {
      if (!terms.empty()) return failed(Kind::MoreAfterUnit);
      return failed(*term.number.fault);
    }
    const std::string_view digits = all.substr(at, term.number.end - at);
    if (!terms.empty() && !isDigit(digits.front())) return failed(Kind::MoreAfterUnit);
    at = term.number.end;
    while (at < all.size() && all[at] == ' ') ++at;
    if (at == all.size() && terms.empty()) return bareNumber(term.number.value, digits, kind);
    if (at == all.size()) return failed(Kind::NumberWithoutUnit);
    if (all[at] == ':') return failed(Kind::Colon);
    term.unit = readUnitExpression(all.substr(at), allowsLadder(kind));
    if (term.unit.fault) return failed(*term.unit.fault);
    if (term.unit.length == 0) return failed(Kind::NotAUnit);
    term.unitText = all.substr(at, term.unit.length);
    while (term.unitText.ends_with(' ')) term.unitText.remove_suffix(1);
    at += term.unit.length;
    terms.push_back(std::move(term));
    if (at < all.size() && !allowsLadder(kind)) return failed(Kind::MoreAfterUnit);
  }
  if (terms.size() == 1) return oneTerm(terms.front(), kind);
  if (terms.front().unit.unit.dimension != detail::unitOf(factsOf(kind).coherent).dimension)
    return failed(otherQuantity(terms.front().unit.unit, terms.front().unitText));
  return sumOfTerms(terms, kind, all.starts_with('-'));
}

}  // namespace

namespace detail {

Reading read(QuantityKind kind, std::string_view text) {
  Parsed parsed = parse(kind, text);
  return {parsed.si, std::move(parsed.fault)};
}

double numberLike(QuantityKind kind, double si, std::string_view sample) {
  const Parsed parsed = parse(kind, sample);
  if (!parsed.unit) return toColumn(kind, si, parsed.fallback);
  return kind == QuantityKind::Temperature ? pointFromSi(si, *parsed.unit)
                                           : fromSi(si, *parsed.unit);
}

std::string printLike(QuantityKind kind, double si, std::string_view sample,
                      const FormatOptions& options) {
  const Parsed parsed = parse(kind, sample);
  if (!parsed.unit || !std::isfinite(si)) return print(kind, si, parsed.fallback, options);
  const double number = numberLike(kind, si, sample);
  const std::string text = formatNumber(number, options);
  return parsed.unitText.empty() ? text : text + ' ' + parsed.unitText;
}

}  // namespace detail

std::string_view kindExample(QuantityKind kind) { return factsOf(kind).example; }
std::string_view usualUnits(QuantityKind kind) { return factsOf(kind).units; }

std::vector<std::string> knownUnits(QuantityKind kind) {
  const Dimension wanted = detail::unitOf(factsOf(kind).coherent).dimension;
  std::vector<std::string> units;
  for (const UnitSpelling& s : unitSpellings())
    if (s.unit.dimension == wanted) units.push_back(printedCharacters(s.spelling));
  return units;
}

std::string quotedText(std::string_view text) {
  constexpr std::size_t kLongestQuote = 60;
  std::string shown = "\"";
  std::size_t at = 0;
  while (at < text.size() && shown.size() < kLongestQuote) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xc2 ? 0
                               : lead < 0xe0 ? 2
                               : lead < 0xf0 ? 3
                               : lead < 0xf5 ? 4
                                             : 0;
    bool whole = length > 0 && at + length <= text.size();
    for (std::size_t i = 1; whole && i < length; ++i) whole = (byte(at + i) & 0xc0) == 0x80;
    // C1 controls and direction marks can rewrite what a terminal shows.
    const auto third = [&](unsigned low, unsigned high) {
      return low <= byte(at + 2) && byte(at + 2) <= high;
    };
    const bool mark = whole && length == 3 && lead == 0xe2 &&
                      ((byte(at + 1) == 0x80 && (third(0x8b, 0x8f) || third(0xa8, 0xae))) ||
                       (byte(at + 1) == 0x81 && third(0xa6, 0xa9)));
    const bool control =
        lead < 0x20 || lead == 0x7f || mark || (whole && lead == 0xc2 && byte(at + 1) < 0xa0);
    if (!whole || control) {
      shown += '?';
    } else {
      shown += text.substr(at, length);
    }
    at += whole ? length : 1;
  }
  return shown + (at < text.size() ? "…\"" : "\"");
}

}  // namespace rigs
