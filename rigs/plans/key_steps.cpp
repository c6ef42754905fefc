// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/key_steps.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <functional>

#include "rigs/quantities/digits.hpp"

namespace rigs {
namespace {

constexpr double kSameValue = 1e-9;  // of a step: what decimal fractions lose
constexpr std::size_t kMostSteps = 400;

// "before" and "behind" the one number of a text: "$" and "/kWh" of "$0.17/kWh".
struct Written {
  std::string before, behind;
  double number = 0.0;
  bool comma = false;
};

bool isPartOfNumber(char c) { return isDigit(c) || c == '.' || c == ','; }
bool isOfUnit(char c) { return ('a' <= c && c <= 'z') || ('A' <= c && c <= 'Z'); }

std::optional<double> decimalNumber(std::string text) {
  std::replace(text.begin(), text.end(), ',', '.');
  double number = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number;
}

// Nothing for more than one number ("1 1/2 in"): who writes so counts in other steps.
std::optional<Written> takenApart(std::string_view text) {
  const auto first = std::find_if(text.begin(), text.end(), isDigit);
  if (first == text.end()) return std::nullopt;
  std::size_t begin = static_cast<std::size_t>(first - text.begin());
  while (begin > 0 && isPartOfNumber(text[begin - 1])) --begin;
  std::size_t end = begin;
  while (end < text.size() && isPartOfNumber(text[end])) ++end;
  const std::string digits(text.substr(begin, end - begin));
  if (begin > 0 && text[begin - 1] == '-') --begin;
  const auto number = decimalNumber(std::string(text.substr(begin, end - begin)));
  if (!number) return std::nullopt;
  // A digit behind a letter is an exponent: "m2".
  for (std::size_t i = end; i < text.size(); ++i)
    if (isDigit(text[i]) && !isOfUnit(text[i - 1]) && text[i - 1] != '^') return std::nullopt;
  return Written{std::string(text.substr(0, begin)), std::string(text.substr(end)), *number,
                 digits.find(',') != std::string::npos};
}

std::string writtenAs(const Written& like, double number) {
  std::string digits = formatNumber(number, {.significantDigits = 9, .decimals = {}});
  const std::size_t point = digits.find('.');
  // Three digits behind a comma could be thousands, and are refused.
  if (like.comma && point != std::string::npos && digits.size() - point != 4) digits[point] = ',';
  return like.before + digits + like.behind;
}

// A twentieth to a fiftieth. Where a step grows, at 1, 2 and 5, the size is a multiple of both: the
// way back is the way there.
double stepBySize(double size) {
  if (size <= 0.0) return 0.0;
  const double decade = std::pow(10.0, std::floor(std::log10(size) + kSameValue));
  const double leading = size / decade + kSameValue;
  return leading >= 5.0 ? decade / 5.0 : leading >= 2.0 ? decade / 10.0 : decade / 20.0;
}

// How values of one key are stepped in the unit of one text.
class Steps {
 public:
  Steps(const Key& key, std::string_view text) : key_(key), text_(text) {
    unit_ = text.substr(std::min(text.size(), text.find_first_not_of("0123456789.,- ")));
    least_ = bound(key.least);
    most_ = bound(key.most);
    const auto example = numberOf(key.example);
    smallest_ = example ? stepBySize(std::abs(*example)) : 0.0;
    if (key.kind == ValueKind::Integer || key.quantity == QuantityKind::Current) smallest_ = 1.0;
  }

  double next(double number, bool up) const {
    const bool grows = up == (number > 0.0 || (number == 0.0 && up));
    const double size = std::abs(number) * (grows ? 1.0 : 1.0 - kSameStep);
    const double step = stepAt(size);
    const double at = number / step;
    const double to = up ? std::floor(at + kSameStep) + 1.0 : std::ceil(at - kSameStep) - 1.0;
    return within(to * step, number);
  }

  bool isWithin(double number) const {
    return (!least_ || *least_ <= number) && (!most_ || number <= *most_);
  }

 private:
  static constexpr double kSameStep = 1e-6;

  // In the unit of the text; nothing for what is no number.
  std::optional<double> numberOf(std::string_view written) const {
    if (written.empty()) return std::nullopt;
    if (key_.kind == ValueKind::Number || key_.kind == ValueKind::Integer)
      return decimalNumber(std::string(written));
    if (key_.kind == ValueKind::Price) return std::nullopt;
    const detail::Reading read = detail::read(key_.quantity, written);
    if (!read.si) return std::nullopt;
    return detail::numberLike(key_.quantity, *read.si, text_);
  }

  // To the digits that are written.
  std::optional<double> bound(std::string_view written) const {
    const auto number = numberOf(written);
    if (!number) return std::nullopt;
    return decimalNumber(formatNumber(*number, {.significantDigits = 12, .decimals = {}}));
  }

  double stepAt(double size) const {
    switch (key_.kind == ValueKind::Quantity || key_.kind == ValueKind::Share ||
                    key_.kind == ValueKind::WordOrShare
                ? key_.quantity
                : QuantityKind::Power) {
      case QuantityKind::Temperature:
        return 1.0;
      case QuantityKind::Time:
        if (unit_ == "min") return size < 10.0 ? 1.0 : 5.0;
        break;
      case QuantityKind::Fraction:
        return unit_.empty() ? (size < 0.1 ? 0.01 : 0.05) : size < 10.0 ? 1.0 : 5.0;
      default:
        break;
    }
    const double step = std::max(stepBySize(size), smallest_);
    return step > 0.0 ? step : 1.0;
  }

  // Where the range ends between two steps, its end is one.
  double within(double to, double from) const {
    if (most_ && to > *most_) return std::max(from, inside(*most_, -1.0));
    if (least_ && to < *least_) return std::min(from, inside(*least_, 1.0));
    return to;
  }

  // What of a bound is written: "80 mm" are 3.149606 in, and 3.1496 in would be too little.
  static double inside(double bound, double inwards) {
    constexpr double kDigits = 1e4;
    const double scaled = bound * kDigits;
    if (std::abs(scaled - std::round(scaled)) < kSameStep) return std::round(scaled) / kDigits;
    return (inwards > 0.0 ? std::ceil(scaled) : std::floor(scaled)) / kDigits;
  }

  const Key& key_;
  std::string text_;
  std::string unit_;
  std::optional<double> least_, most_;
  double smallest_ = 0.0;
};

// Wires are made in these sizes alone.
constexpr std::array kSquareMillimetres{0.5,  0.75, 1.0,  1.5,  2.5,  4.0,  6.0,
                                        10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0};
constexpr std::array kGauges{20.0, 18.0, 16.0, 14.0, 12.0, 10.0, 8.0, 6.0, 4.0, 2.0, 1.0};

// The next of a series that ascends by `above`.
template <class Series, class Above>
double nextOf(const Series& series, double number, bool up, Above above) {
  if (up) {
    const auto found =
        std::find_if(series.begin(), series.end(), [&](double one) { return above(one, number); });
    return found == series.end() ? number : *found;
  }
  const auto found =
      std::find_if(series.rbegin(), series.rend(), [&](double one) { return above(number, one); });
  return found == series.rend() ? number : *found;
}

bool isGauge(const Written& wire) {
  return (wire.before + wire.behind).find("AWG") != std::string::npos;
}

// Thicker is up, whichever way its numbers go.
std::optional<std::string> steppedWire(const Key& key, const Written& from, int steps) {
  if (!isGauge(from) && from.behind != " mm2" && from.behind != " mm²") return std::nullopt;
  const double least = *detail::read(key.quantity, key.least).si;
  const double most = *detail::read(key.quantity, key.most).si;
  Written at = from;
  for (int i = 0; i < std::abs(steps); ++i) {
    const double next = isGauge(from)
                            ? nextOf(kGauges, at.number, steps > 0, std::less<>())
                            : nextOf(kSquareMillimetres, at.number, steps > 0, std::greater<>());
    const auto area = detail::read(key.quantity, writtenAs(from, next)).si;
    if (!area || *area < least || *area > most) break;
    at.number = next;
  }
  return writtenAs(from, at.number);
}

// What people have, from a little to a lot.
struct Played {
  std::string_view place, least, most;
};
constexpr std::array kPlayed{
    Played{"/rigs/*/element/power", "500 W", "12 kW"},
    Played{"/rigs/*/boil_power", "20 %", "100 %"},
    Played{"/rigs/*/lid/open/boil", "0 %", "100 %"},
    Played{"/rigs/*/jacket/side/*/thickness", "2 mm", "60 mm"},
    Played{"/rigs/*/cable/length", "1 m", "60 m"},
    Played{"/batch/wort", "5 L", "200 L"},
    Played{"/batch/water", "5 L", "200 L"},
    Played{"/batch/boil", "10 min", "120 min"},
    Played{"/place/room", "0 °C", "40 °C"},
    Played{"/place/water", "1 °C", "60 °C"},
    Played{"/place/altitude", "0 m", "3000 m"},
};

// "1 h 30 min" is stepped as 90 min and written as hours and minutes again.
std::optional<std::string> steppedDuration(const Key& key, std::string_view text, int steps) {
  const auto time = parseQuantity<physics::Time>(text);
  if (!time) return std::nullopt;
  const std::string minutes =
      formatNumber(physics::inMinutes(*time), {.significantDigits = 9, .decimals = {}}) + " min";
  const auto made = stepped(key, minutes, steps);
  if (!made) return std::nullopt;
  return format(*parseQuantity<physics::Time>(*made), UnitSystem::SI);
}

}  // namespace

bool hasSteps(const Key& key) {
  switch (key.kind) {
    case ValueKind::Quantity:
    case ValueKind::Share:
    case ValueKind::WordOrShare:
    case ValueKind::Number:
    case ValueKind::Integer:
    case ValueKind::Price:
      return true;
    default:
      return false;
  }
}

std::optional<std::string> stepped(const Key& key, std::string_view text, int steps) {
  if (!hasSteps(key)) return std::nullopt;
  const auto from = takenApart(text);
  if (!from)
    return key.quantity == QuantityKind::Time ? steppedDuration(key, text, steps) : std::nullopt;
  const bool isAmount = key.kind == ValueKind::Quantity || key.kind == ValueKind::Share ||
                        key.kind == ValueKind::WordOrShare;
  if (isAmount && !isQuantity(key.quantity, text)) return std::nullopt;
  if (isAmount && key.quantity == QuantityKind::Area)
    if (auto wire = steppedWire(key, *from, steps)) return wire;
  const Steps by(key, text);
  if (!by.isWithin(from->number)) return std::nullopt;
  double to = from->number;
  for (int i = 0; i < std::abs(steps); ++i) {
    to = by.next(to, steps > 0);
  }
  return writtenAs(*from, to);
}

std::optional<Slide> slideOf(const Key& key, std::string_view text) {
  const auto span = std::find_if(kPlayed.begin(), kPlayed.end(),
                                 [&](const Played& one) { return one.place == key.place; });
  if (span == kPlayed.end()) return std::nullopt;
  const auto si = [&](std::string_view written) { return detail::read(key.quantity, written).si; };
  const auto now = si(text);
  // A word, such as that the lid is closed, is at the beginning.
  const std::string_view like = now ? text : span->least;
  std::string next = detail::printLike(key.quantity, *si(span->least), like,
                                       {.significantDigits = 2, .decimals = {}});
  if (now && *now < *si(next)) next = text;
  const double most = std::max(*si(span->most), now.value_or(0.0));
  Slide slide;
  for (std::optional<std::string> value = next; value && slide.values.size() < kMostSteps;) {
    const double number = *si(*value);
    if (now && !slide.values.empty() && *si(slide.values.back()) < *now && *now < number) {
      slide.at = slide.values.size();
      slide.values.emplace_back(text);
    }
    if (number > most * (1.0 + kSameValue)) break;
    if (now && number == *now) slide.at = slide.values.size();
    slide.values.push_back(*value);
    value = stepped(key, slide.values.back(), 1);
    if (value == slide.values.back()) break;
  }
  return slide;
}

}  // namespace rigs
