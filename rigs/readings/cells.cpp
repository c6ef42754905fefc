// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/cells.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <string>

#include "rigs/quantities/digits.hpp"

namespace rigs::readings {
namespace {

constexpr double kMinute = 60.0;

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r'; }

// ASCII alone: no locale.
std::string lowered(std::string_view text) {
  std::string low;
  for (const char c : text) low += 'A' <= c && c <= 'Z' ? static_cast<char>(c + 32) : c;
  return low;
}

// Takes whole numbers and signs off the front of a text.
class Eater {
 public:
  explicit Eater(std::string_view text) : left_(text) {}

  std::optional<int> number(std::size_t most) {
    int value = 0;
    std::size_t digits = 0;
    while (digits < left_.size() && digits < most && isDigit(left_[digits]))
      value = 10 * value + (left_[digits++] - '0');
    if (digits == 0) return std::nullopt;
    left_.remove_prefix(digits);
    return value;
  }
  bool sign(char c) {
    if (left_.empty() || left_.front() != c) return false;
    left_.remove_prefix(1);
    return true;
  }
  char front() const { return left_.empty() ? '\0' : left_.front(); }
  std::string_view left() const { return left_; }
  void to(const Eater& other) { left_ = other.left_; }

 private:
  std::string_view left_;
};

// Days from 1970-01-01 of the civil calendar; Hinnant's algorithm. Nothing where there is no such
// day.
std::optional<std::int64_t> dayNumber(int year, int month, int day) {
  constexpr std::array kDays{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  if (year < 1970 || year > 2200 || month < 1 || month > 12) return std::nullopt;
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  const int most = month == 2 && !leap ? 28 : kDays.at(static_cast<std::size_t>(month - 1));
  if (day < 1 || day > most) return std::nullopt;
  const std::int64_t y = month <= 2 ? year - 1 : year;
  const std::int64_t era = y / 400;
  const std::int64_t yearOfEra = y - era * 400;
  const std::int64_t dayOfYear = (153 * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
  return era * 146097 + yearOfEra * 365 + yearOfEra / 4 - yearOfEra / 100 + dayOfYear - 719468;
}

std::optional<std::int64_t> dateFrom(Eater& eater) {
  Eater at = eater;
  const auto first = at.number(4);
  const char sign = at.front();
  if (!first || (sign != '-' && sign != '.' && sign != '/')) return std::nullopt;
  at.sign(sign);
  const auto second = at.number(2);
  if (!second || !at.sign(sign)) return std::nullopt;
  const auto third = at.number(4);
  if (!third) return std::nullopt;
  // The day comes first with points alone: of 1/3/2026 nobody knows.
  std::optional<std::int64_t> day;
  if (*first > 31 && sign != '.')
    day = dayNumber(*first, *second, *third);
  else if (sign == '.')
    day = dayNumber(*third < 100 ? 2000 + *third : *third, *second, *first);
  if (day) eater.to(at);
  return day;
}

std::optional<double> clockFrom(Eater& eater) {
  Eater at = eater;
  const auto hours = at.number(2);
  if (!hours || !at.sign(':')) return std::nullopt;
  const auto minutes = at.number(2);
  if (!minutes || *hours > 24 || *minutes > 59) return std::nullopt;
  double seconds = kHour * *hours + kMinute * *minutes;
  if (at.sign(':')) {
    const auto whole = at.number(2);
    if (!whole || *whole > 60) return std::nullopt;
    seconds += *whole;
    if (at.front() == '.' || at.front() == ',') {
      at.sign(at.front());
      double place = 0.1;
      for (auto digit = at.number(1); digit; digit = at.number(1), place *= 0.1)
        seconds += place * *digit;
    }
  }
  while (at.sign(' ')) {
  }
  const std::string rest = lowered(at.left().substr(0, 2));
  if (rest == "am" || rest == "pm") {
    if (*hours < 1 || *hours > 12) return std::nullopt;
    seconds += kHour * ((rest == "pm" ? 12 : 0) - (*hours == 12 ? 12 : 0));
    at = Eater(at.left().substr(2));
  }
  eater.to(at);
  return seconds;
}

// In seconds, of "Z" and "+01:00".
std::optional<double> offsetFrom(Eater& eater) {
  if (eater.sign('Z') || eater.sign('z')) return 0.0;
  const char sign = eater.front();
  if (sign != '+' && sign != '-') return std::nullopt;
  Eater at = eater;
  at.sign(sign);
  const auto hours = at.number(2);
  at.sign(':');
  const auto minutes = at.number(2);
  if (!hours || *hours > 14 || minutes.value_or(0) > 59) return std::nullopt;
  eater.to(at);
  const double off = kHour * *hours + kMinute * minutes.value_or(0);
  return sign == '-' ? -off : off;
}

struct UnitName {
  std::string_view name;
  UnitOf unit;
};
constexpr UnitOf kCelsius{Kind::Temperature, 1.0, 273.15};
constexpr UnitOf kFahrenheit{Kind::Temperature, 5.0 / 9.0, 459.67 * 5.0 / 9.0};
constexpr std::array kUnits{UnitName{"°c", kCelsius},
                            UnitName{"c", kCelsius},
                            UnitName{"degc", kCelsius},
                            UnitName{"deg c", kCelsius},
                            UnitName{"celsius", kCelsius},
                            UnitName{"grad", kCelsius},
                            UnitName{"°f", kFahrenheit},
                            UnitName{"f", kFahrenheit},
                            UnitName{"degf", kFahrenheit},
                            UnitName{"deg f", kFahrenheit},
                            UnitName{"fahrenheit", kFahrenheit},
                            UnitName{"k", {Kind::Temperature}},
                            UnitName{"kwh", {Kind::Energy, 3.6e6}},
                            UnitName{"wh", {Kind::Energy, 3.6e3}},
                            UnitName{"mj", {Kind::Energy, 1e6}},
                            UnitName{"l", {Kind::Volume, 1e-3}},
                            UnitName{"litres", {Kind::Volume, 1e-3}},
                            UnitName{"liter", {Kind::Volume, 1e-3}},
                            UnitName{"ml", {Kind::Volume, 1e-6}},
                            UnitName{"gal", {Kind::Volume, 3.785411784e-3}},
                            UnitName{"us gal", {Kind::Volume, 3.785411784e-3}},
                            UnitName{"qt", {Kind::Volume, 0.946352946e-3}},
                            UnitName{"sg", {Kind::Gravity}},
                            UnitName{"°p", {.kind = Kind::Gravity, .plato = true}},
                            UnitName{"plato", {.kind = Kind::Gravity, .plato = true}}};

struct EventName {
  std::string_view name;
  Event event;
};
constexpr std::array kEvents{
    EventName{"plugged in", Event::PluggedIn}, EventName{"on", Event::PluggedIn},
    EventName{"start", Event::PluggedIn},      EventName{"eingeschaltet", Event::PluggedIn},
    EventName{"grain in", Event::GrainIn},     EventName{"mashed in", Event::GrainIn},
    EventName{"malz rein", Event::GrainIn},    EventName{"eingemaischt", Event::GrainIn},
    EventName{"unplugged", Event::Unplugged},  EventName{"left alone", Event::Unplugged},
    EventName{"off", Event::Unplugged},        EventName{"ausgesteckt", Event::Unplugged},
    EventName{"heating", Event::Heating},      EventName{"grain out", Event::Heating},
    EventName{"heizen", Event::Heating},       EventName{"boil", Event::Boil},
    EventName{"boils", Event::Boil},           EventName{"rolls", Event::Boil},
    EventName{"kocht", Event::Boil},           EventName{"lid on", Event::LidOn},
    EventName{"deckel zu", Event::LidOn},      EventName{"lid off", Event::LidOff},
    EventName{"deckel auf", Event::LidOff}};

bool endsWithHot(std::string_view& text) {
  for (const std::string_view word : {" hot", " heiß", " heiss"}) {
    if (text.size() <= word.size() || !text.ends_with(word)) continue;
    text.remove_suffix(word.size());
    return true;
  }
  return false;
}

}  // namespace

std::string_view withoutBlanks(std::string_view text) {
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return text;
}

std::string_view trimmed(std::string_view cell) {
  cell = withoutBlanks(cell);
  if (cell.size() < 2 || cell.front() != '"' || cell.back() != '"') return cell;
  return withoutBlanks(cell.substr(1, cell.size() - 2));
}

std::optional<Moment> momentFrom(std::string_view cell) {
  Eater eater(trimmed(cell));
  Moment moment{};
  moment.day = dateFrom(eater);
  if (moment.day && !eater.left().empty() && !eater.sign('T') && !eater.sign(' '))
    return std::nullopt;
  moment.secondsOfDay = clockFrom(eater);
  if (!moment.day && !moment.secondsOfDay) return std::nullopt;
  if (moment.day && moment.secondsOfDay) {
    if (const auto offset = offsetFrom(eater)) {
      moment.secondsOfDay = *moment.secondsOfDay - *offset;
      moment.universal = true;
    }
  }
  if (!trimmed(eater.left()).empty()) return std::nullopt;
  if (moment.secondsOfDay && *moment.secondsOfDay > kDay + kHour * 14) return std::nullopt;
  return moment;
}

std::optional<UnitOf> unitFrom(std::string_view text) {
  const std::string low = lowered(trimmed(text));
  std::string_view name = low;
  const bool hot = endsWithHot(name);
  for (const UnitName& one : kUnits) {
    if (one.name != name || (hot && one.unit.kind != Kind::Volume)) continue;
    UnitOf unit = one.unit;
    unit.hot = hot;
    return unit;
  }
  return std::nullopt;
}

std::string_view degreesOf(const UnitOf& unit) {
  if (unit.shift <= 0.0) return "K";
  return unit.factor < 1.0 ? "°F" : "°C";
}

std::optional<CellNumber> numberFrom(std::string_view cell) {
  cell = trimmed(cell);
  // Longer ones are no reading of anything, and the buffer holds these.
  std::array<char, 32> plain{};
  std::size_t size = 0;
  CellNumber number{};
  bool sign = false;
  std::size_t at = 0;
  for (; at < cell.size() && at < plain.size(); ++at) {
    const char c = cell[at];
    if (c == '+' && at == 0) continue;
    if (c == '.' || c == ',') {
      if (sign) return std::nullopt;
      sign = true;
      number.comma = c == ',';
      plain.at(size++) = '.';
    } else if (isDigit(c)) {
      if (sign) number.lastDigit *= 0.1;
      plain.at(size++) = c;
    } else if (c == '-' && at == 0) {
      plain.at(size++) = c;
    } else {
      break;
    }
  }
  const char* end = plain.data() + size;
  const auto read = std::from_chars(plain.data(), end, number.value);
  if (read.ec != std::errc() || read.ptr != end || !std::isfinite(number.value))
    return std::nullopt;
  number.rest = trimmed(cell.substr(at));
  return number;
}

std::optional<Event> eventFrom(std::string_view cell) {
  const std::string low = lowered(trimmed(cell));
  for (const EventName& one : kEvents)
    if (one.name == low) return one.event;
  return std::nullopt;
}

}  // namespace rigs::readings
