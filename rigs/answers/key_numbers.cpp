// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/key_numbers.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>

#include "rigs/documents/problem_words.hpp"
#include "rigs/documents/quantity_problems.hpp"

namespace rigs {
namespace {

constexpr double kMinuteInSeconds = 60.0;
constexpr double kDayInSeconds = 24.0 * 60.0 * kMinuteInSeconds;
constexpr FormatOptions kFifteenDigits{.significantDigits = 15, .decimals = {}};

bool isQuantityKind(const Key& key) {
  return key.kind == ValueKind::Quantity || key.kind == ValueKind::Share ||
         key.kind == ValueKind::WordOrShare;
}

// "5.5" or "5,5"; nothing for any other text.
std::optional<double> plainNumber(std::string text) {
  std::replace(text.begin(), text.end(), ',', '.');
  double number = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(number))
    return std::nullopt;
  return number;
}

std::optional<double> timeOfDay(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos || colon == 0 || colon > 2 || text.size() != colon + 3)
    return std::nullopt;
  int hours = 0, minutes = 0;
  const auto whole = [](std::string_view part, int& number) {
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), number);
    return error == std::errc{} && end == part.data() + part.size() && number >= 0;
  };
  if (!whole(text.substr(0, colon), hours) || !whole(text.substr(colon + 1), minutes) ||
      hours > 23 || minutes > 59)
    return std::nullopt;
  return kMinuteInSeconds * (60.0 * hours + minutes);
}

std::string clockText(double seconds) {
  const int minutes = static_cast<int>(std::lround(seconds / kMinuteInSeconds));
  const auto twoDigits = [](int number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
  };
  return twoDigits(minutes / 60) + ':' + twoDigits(minutes % 60);
}

double endOf(const Key& key, std::string_view text, double open) {
  if (text.empty()) return open;
  const auto number =
      isQuantityKind(key) ? detail::read(key.quantity, text).si : plainNumber(std::string(text));
  return number.value_or(open);
}
double leastOf(const Key& key) {
  return endOf(key, key.least, -std::numeric_limits<double>::infinity());
}
double mostOf(const Key& key) {
  return endOf(key, key.most, std::numeric_limits<double>::infinity());
}

ReadNumber notRead(Told problem) { return {std::nullopt, std::move(problem)}; }

Told outside(std::string_view text, const Key& key) {
  const double least = leastOf(key), most = mostOf(key);
  return withExample(
      advised(Told(TOLD("Problem", "%1 is out of range"), Quoted{std::string(text)}),
              Told(TOLD("Problem", "accepted is %1"),
                   rangeTold(least, most, Argument(Number{least}), Argument(Number{most})))),
      Verbatim{std::string(key.example)});
}

ReadNumber quantityFrom(const Key& key, std::string_view text) {
  const AcceptedQuantity accepted{key.quantity, leastOf(key), mostOf(key),
                                  std::string(key.example)};
  const detail::Reading reading = detail::read(key.quantity, text);
  if (!reading.si) return notRead(quantityProblem(*reading.fault, text, accepted));
  if (*reading.si < accepted.min || accepted.max < *reading.si)
    return notRead(outOfRange(text, accepted));
  return {reading.si, {}};
}

ReadNumber clockFromText(std::string_view text) {
  if (const auto time = timeOfDay(text)) return {time, {}};
  return notRead(
      withExample(advised(Told(TOLD("Problem", "%1 is no time of day"), Quoted{std::string(text)}),
                          Told(TOLD("Problem", "write hours and minutes from 00:00 to 23:59"))),
                  inQuotes("08:00")));
}

Told noNumber(std::string_view text, std::string_view example) {
  return withExample(Told(TOLD("Sweep", "%1 is no number"), Quoted{std::string(text)}),
                     Verbatim{std::string(example)});
}

}  // namespace

bool hasNumbers(const Key& key) {
  return isQuantityKind(key) || key.kind == ValueKind::Number || isWhole(key) ||
         key.kind == ValueKind::Clock;
}

bool isWhole(const Key& key) { return key.kind == ValueKind::Integer; }

ReadNumber readNumber(const Key& key, std::string_view text) {
  if (isQuantityKind(key)) return quantityFrom(key, text);
  if (key.kind == ValueKind::Clock) return clockFromText(text);
  const auto number = plainNumber(std::string(text));
  if (!number) return notRead(noNumber(text, key.example));
  if (*number < leastOf(key) || mostOf(key) < *number) return notRead(outside(text, key));
  if (isWhole(key) && *number != std::floor(*number))
    return notRead(Told(TOLD("Problem", "%1 is not a whole number"), Quoted{std::string(text)}));
  return {number, {}};
}

ReadNumber readStep(const Key& key, std::string_view text) {
  ReadNumber step;
  if (key.kind == ValueKind::Number || isWhole(key)) {
    step.number = plainNumber(std::string(text));
    if (!step.number) return notRead(noNumber(text, "1"));
  } else {
    const QuantityKind kind = key.kind == ValueKind::Clock ? QuantityKind::Time
                              : key.quantity == QuantityKind::Temperature
                                  ? QuantityKind::TemperatureDifference
                                  : key.quantity;
    const detail::Reading reading = detail::read(kind, text);
    if (!reading.si) return notRead(quantityProblem(*reading.fault, text, kind));
    step.number = reading.si;
  }
  const bool between = isWhole(key) && *step.number != std::floor(*step.number);
  const bool seconds = key.kind == ValueKind::Clock &&
                       (*step.number < kMinuteInSeconds || *step.number > kDayInSeconds);
  if (*step.number <= 0.0 || between || seconds)
    return notRead(Told(TOLD("Sweep", "a step of %1 leads nowhere"), Quoted{std::string(text)}));
  return step;
}

std::string writtenNumber(const Key& key, double number, std::string_view like) {
  if (key.kind == ValueKind::Clock) return clockText(number);
  if (!isQuantityKind(key)) return formatNumber(number, kFifteenDigits);
  const std::string text = detail::printLike(key.quantity, number, like, kFifteenDigits);
  // "1 h 30 min" has no one unit to print in, and loses the seconds.
  const auto again = detail::read(key.quantity, text).si;
  if (again && std::abs(*again - number) <= 1e-12 * std::abs(number)) return text;
  return detail::printExactly(key.quantity, number);
}

}  // namespace rigs
